// @ts-check
/** Sharing: the link holds every number after its `#`, so nothing is uploaded. */

import { openDialog } from "../frame/dialog.js";
import { h } from "../frame/dom.js";
import { book } from "../words/index.js";

/** @import { Notify } from "../frame/notice.js" */

/** Longer links are cut by some mail and message programs. */
const LONG_LINK = 8000;

const say = book("page");

/** @param {string} link @param {{ title: string, notify: Notify }} page */
export async function share(link, { title, notify }) {
  const cautions = [
    ...(location.protocol === "file:" ? [say("share.ownFile")] : []),
    ...(link.length > LONG_LINK ? [say("share.long")] : []),
  ];
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
    notify([say("share.copied"), ...cautions].join(" "));
  } catch {
    const field = h("input", {
      type: "text",
      readonly: true,
      value: link,
      "aria-label": say("share.link"),
      class: "link",
    });
    openDialog(say("share"), h("p", {}, [say("share.copy"), ...cautions].join(" ")), field);
    field.select();
  }
}
