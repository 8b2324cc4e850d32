/** The core's own table of messages in English, taken from the core by the build. */
import type { Tables } from "../types/core.d.ts";

declare const messages: Tables["messages"];
export default messages;
