/** The citations, taken from the core by the build. */
import type { Tables } from "../types/core.d.ts";

declare const sources: Tables["sources"];
export default sources;
