// @ts-check
/** "Take it with you": a fold at the end of every question. What makes the files is loaded when the fold is first opened. */

import { html } from "../parts/html.js";

/** @import { Fold } from "../parts/folds.js" */
/** @import { Shown } from "./files.js" */

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
      /** @param {boolean} open */
      const onToggle = async (open) => {
        list = null;
        if (!open) return;
        try {
          const { saveList } = await import("./save-list.js");
          if (!body.isConnected) return;
          body.replaceChildren();
          list = saveList(body, host, current).update;
          list();
        } catch (error) {
          console.error(error);
          body.replaceChildren(html("p", { class: "soft" }, "This part of the page could not be loaded. Check the connection, close this and open it again."));
        }
      };
      return { id: "take", name: "Take it with you", gist: "Pictures, tables and every figure as files, made on this device.", body, onToggle };
    },
    /** Follows what the question has drawn. */
    update: () => list?.(),
  };
}
