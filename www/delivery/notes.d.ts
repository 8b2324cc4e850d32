/** What each field's default and ranges rest on, by its key, taken from the core by the build. */
import type { Tables } from "../types/core.d.ts";

declare const notes: Tables["notes"];
export default notes;
