// @ts-check
/** How hard, as the core takes it. */

/** @import { EffortKind } from "../../types/core.d.ts" */

/** An effort as the core takes it: what belongs to another kind is left behind. @param {{ kind: EffortKind, power_w?: unknown, time_s?: unknown }} effort */
export function effortOf({ kind, power_w, time_s }) {
  return { kind, ...(kind === "power" && { power_w }), ...(kind === "time" && { time_s }) };
}
