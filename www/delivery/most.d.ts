/** The most of each that the core takes, taken from it by the build. */
import type { Tables } from "../types/core.d.ts";

declare const most: Tables["most"];
export default most;
