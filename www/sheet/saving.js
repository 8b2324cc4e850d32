// @ts-check
/** What saving something by name on this device says: that it is done, why it is not, and what can be done about it. */

import { h } from "../frame/dom.js";
import { book, regionTag } from "../words/index.js";

/** @import { Outcome, Work } from "../state/storage.js" */
/** @typedef {(text: string, ...choices: [label: string, run: () => void][]) => void} Complain */
/** @typedef {{ save: (name: string, work: Work, options: { replace: boolean }) => Outcome }} Named */

const say = book("sheet");

/** A place for what is wrong, with what can be done about it. */
export function complaints() {
  const message = h("p", { class: "wrong", role: "alert", hidden: true });
  const actions = h("p", { class: "row-actions", hidden: true });
  return {
    elements: [message, actions],
    /** @type {Complain} */
    complain(text, ...choices) {
      message.hidden = !text;
      message.textContent = text;
      actions.hidden = !choices.length;
      actions.replaceChildren(...choices.map(([label, run]) => h("button", { type: "button", onclick: run }, label)));
    },
  };
}

/**
 * Saves under a name; one that is taken is asked about.
 * @param {Named} kept @param {string} typed @param {Work} work
 * @param {{ complain: Complain, done: (name: string) => void, replace?: boolean }} options
 */
export function saveAs(kept, typed, work, { complain, done, replace = false }) {
  const name = typed.trim();
  if (!name) return complain(say("nameFirst"));
  const outcome = kept.save(name, work, { replace });
  if (outcome.done) {
    complain("");
    done(name);
  } else if (outcome.because === "full") {
    complain(say("deviceFull"));
  } else if (outcome.because === "newer-layout") {
    complain(say("savedNewer", { name }));
  } else {
    complain(say("savedAlready", { name, when: when(outcome.saved_at) }), [
      say("replace"),
      () => saveAs(kept, name, work, { complain, done, replace: true }),
    ]);
  }
}

/** @param {string | undefined} saved_at */
export function when(saved_at) {
  const date = new Date(saved_at ?? "");
  return Number.isNaN(date.getTime())
    ? ""
    : date.toLocaleString(regionTag(), {
        day: "numeric",
        month: "short",
        year: "numeric",
        hour: "2-digit",
        minute: "2-digit",
      });
}
