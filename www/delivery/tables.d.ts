/** The core's bounds and citations, taken from it by the build. */
export const fields: import("../state/scenario.js").Field[];
export const sources: { key: string; citation: string; read: string; figure: string }[];
