// @ts-check
/** How hard, as the core takes it. */

/** @import { EffortKind } from "../../types/core.d.ts" */

/**
 * An effort as the core takes it: what belongs to another kind is left behind. What is no effort goes to the core as it is, which says so.
 * @param {{ kind: EffortKind, power_w?: unknown, time_s?: unknown }} effort
 */
export function effortOf(effort) {
  if (!effort || typeof effort !== "object" || Array.isArray(effort)) return effort;
  const { power_w, time_s, ...rest } = effort;
  return { ...rest, ...(rest.kind === "power" && { power_w }), ...(rest.kind === "time" && { time_s }) };
}
