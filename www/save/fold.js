// @ts-check
/** "Take it with you": a fold at the end of every question. What makes the files is loaded when the fold is first opened. */

import { lostNotice } from "../frame/failed.js";
import { html } from "../parts/html.js";
import { book, open } from "../words/index.js";

/** @import { Fold } from "../parts/folds.js" */
/** @import { Shown } from "./files.js" */

const words = book("shared");

/**
 * @param {HTMLElement} host where the questions are shown, one at a time
 * @param {() => Shown | null} current what is answered there now
 */
export function takeFold(host, current) {
  /** Lists again what the open question has to save; null while its fold is closed. @type {(() => void) | null} */
  let list = null;

  return {
    /** The fold for a question that is about to be shown. @returns {Fold} */
    fold() {
      list = null;
      const body = html("div", { class: "take" });
      /** @param {boolean} opened */
      const onToggle = async (opened) => {
        list = null;
        if (!opened) return;
        try {
          const [{ saveList }] = await Promise.all([import("./save-list.js"), open("save")]);
          if (!body.isConnected) return;
          body.replaceChildren();
          list = saveList(body, host, current).update;
          list();
        } catch (error) {
          console.error(error);
          body.replaceChildren(...(await lostNotice(words("notLoaded"))));
        }
      };
      return { id: "take", name: words("take"), gist: words("takeGist"), body, onToggle };
    },
    /** Follows what the question has drawn. */
    update: () => list?.(),
  };
}
