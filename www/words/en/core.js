// @ts-check
/** What the core says: its own table of messages. What a field's default rests on stands in its table of fields. */

import messages from "fasterby-messages";

/** @type {Record<string, string>} */
export default Object.fromEntries(messages.map(({ id, english }) => [id, english]));
