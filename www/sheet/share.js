// @ts-check
/** Sharing: the link holds every number after its `#`, so nothing is uploaded. */

import { openDialog } from "../frame/dialog.js";
import { h } from "../frame/dom.js";
import { book } from "../words/index.js";

/** @import { Notify } from "../frame/notice.js" */
/** @import { State } from "../state/history.js" */
/** @import { Field } from "../types/core.d.ts" */
/** @import { LinkTo } from "./short-link.js" */

/** Longer links are cut by some mail and message programs. A course in the link is made shorter instead. */
const LONG_LINK = 8000;

const say = book("page");

/** @param {LinkTo} linkTo @param {{ state: State, field: (path: string) => Field | undefined, title: string, notify: Notify }} page */
export async function share(linkTo, { state, field, title, notify }) {
  const whole = await linkTo(state);
  const { link, said } = whole.length > LONG_LINK ? await shortened(whole) : { link: whole, said: [] };
  const cautions = [
    ...said,
    ...(location.protocol === "file:" ? [say("share.ownFile")] : []),
    ...(link.length > LONG_LINK ? [say("share.long")] : []),
  ];
  if (navigator.share && matchMedia("(pointer: coarse)").matches) {
    try {
      await navigator.share({ title, url: link });
      if (said.length) notify(said.join(" "));
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

  /** The link with fewer points of the course, where that helps. @param {string} whole @returns {Promise<{ link: string, said: string[] }>} */
  async function shortened(whole) {
    const mostPoints = field("with.most_points");
    try {
      const { shortLink } = await import("./short-link.js");
      const short = mostPoints && (await shortLink(linkTo, state, mostPoints, LONG_LINK));
      if (short) return short;
    } catch {
      // What makes it shorter cannot be fetched, or such a course cannot be made: the whole link is still one.
    }
    return { link: whole, said: [] };
  }
}
