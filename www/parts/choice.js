// @ts-check
/** One of a list, standing in a sentence. */

import { html, say, set, uniqueId } from "./html.js";
/** @import { Meaning } from "./html.js" */

/** @typedef {{ value: string, name: string, disabled?: boolean }} Option */

/**
 * @param {object} options
 * @param {string} options.label Its accessible name.
 * @param {string} [options.path]
 * @param {readonly Option[]} options.options
 * @param {Meaning | null} [options.meaning]
 * @param {(value: string) => void} options.onChange
 */
export function choice({ label, path, options, meaning = null, onChange }) {
  const noteId = uniqueId("wrong");
  const select = html("select", { "aria-label": label, "data-path": path });
  const element = html("span", { class: meaning ? `num choice ${meaning}` : "num choice" }, select);
  const note = html("p", { class: "wrong", id: noteId, hidden: true });
  let offered = "";

  /** @param {readonly Option[]} list */
  function offer(list) {
    const key = JSON.stringify(list);
    if (key === offered) return;
    offered = key;
    const kept = select.value;
    select.replaceChildren(
      ...list.map((one) => html("option", { value: one.value, disabled: one.disabled }, one.name)),
    );
    if (list.some((one) => one.value === kept)) select.value = kept;
    sizeToText();
  }

  function sizeToText() {
    const name = select.selectedOptions[0]?.textContent ?? "";
    element.style.setProperty("--ch", String(Math.max(2, name.length)));
  }

  select.addEventListener("change", () => {
    sizeToText();
    onChange(select.value);
  });
  offer(options);

  return {
    element,
    input: select,
    note,
    /** @param {{ value?: string, options?: readonly Option[] }} next */
    update(next) {
      if (next.options) offer(next.options);
      if (next.value !== undefined && next.value !== select.value) select.value = next.value;
      sizeToText();
    },
    /** @param {string | null} message */
    wrong(message) {
      set(element, { "data-wrong": message !== null });
      set(select, {
        "aria-invalid": message === null ? null : "true",
        "aria-describedby": message === null ? null : noteId,
      });
      set(note, { hidden: message === null });
      say(note, message === null ? [] : [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, message)]);
    },
    focus() {
      select.focus();
    },
  };
}
