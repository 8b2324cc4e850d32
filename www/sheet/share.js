// @ts-check
/** Sharing: the link holds every number after its `#`, so nothing is uploaded. */

import { h } from "../frame/dom.js";
import { openDialog } from "./dialog.js";

/** @import { Notify } from "../frame/notice.js" */

/** Longer links are cut by some mail and message programs. */
const LONG_LINK = 8000;

/** @param {string} link @param {{ title: string, notify: Notify }} page */
export async function share(link, { title, notify }) {
  const caution = link.length > LONG_LINK ? " It is long; some programs cut such links, a file does not." : "";
  const own = location.protocol === "file:" ? " It leads to the file on this device: somebody else needs the file too." : "";
  if (navigator.share && matchMedia("(pointer: coarse)").matches) {
    try {
      await navigator.share({ title, url: link });
      return;
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return;
    }
  }
  try {
    await navigator.clipboard.writeText(link);
    notify(`Link copied. All your numbers are in the link itself; nothing was sent anywhere.${own}${caution}`);
  } catch {
    const field = h("input", { type: "text", readonly: true, value: link, "aria-label": "Link", class: "link" });
    openDialog("Share", h("p", {}, `Copy this link. All your numbers are in it; nothing is sent anywhere.${own}${caution}`), field);
    field.select();
  }
}
