// @ts-check
/**
 * Unpacks style and script of the page as one file; the policy of the file names them by their hash. All at once, so that nothing is
 * seen before its style is there. What cannot be unpacked leaves the sentence that says so.
 */

import { unpackedParts } from "./packed-parts.js";

const [style, script] = unpackedParts("page").map((part) => new TextDecoder().decode(part));
document.head.append(Object.assign(document.createElement("style"), { textContent: style }));
document.body.append(Object.assign(document.createElement("script"), { id: "script", textContent: script }));
