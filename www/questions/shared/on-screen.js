// @ts-check
/** Words for the screen alone. */

import { html } from "../../parts/html.js";

/** Words that help on a screen and mean nothing on paper. @param {string} text */
export const onScreen = (text) => html("span", { class: "no-print hand-hint" }, text);
