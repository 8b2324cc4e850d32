// @ts-check
/** The list of questions: a rail on a wide screen, a menu elsewhere. */

import { uniqueId } from "../parts/html.js";
import { GROUPS } from "../questions/index.js";
import { nameOf, titleOf } from "../questions/shared/names.js";
import { book } from "../words/index.js";
import { h } from "./dom.js";

/** @import { QuestionEntry } from "../questions/index.js" */

const say = book("page");

/**
 * @param {QuestionEntry[]} questions @param {(id: string) => void} go
 * @returns {{ elements: HTMLElement[], update: (current: string) => void }}
 */
export function questionList(questions, go) {
  /** @type {Map<string, HTMLAnchorElement>} */
  const links = new Map();
  const elements = GROUPS.flatMap((group) => {
    const inGroup = questions.filter((question) => question.group === group);
    if (!inGroup.length) return [];
    if (group === "start") return [h("ul", {}, ...inGroup.map(item))];
    const id = uniqueId("group");
    return [
      h("p", { class: "group", id }, say(`groups.${group}`)),
      h("ul", { "aria-labelledby": id }, ...inGroup.map(item)),
    ];
  });

  /** @param {QuestionEntry} question */
  function item({ id }) {
    const line = uniqueId("line");
    const link = h(
      "a",
      {
        href: `#${id}`,
        "aria-describedby": line,
        onclick: (/** @type {MouseEvent} */ event) => {
          if (event.metaKey || event.ctrlKey || event.shiftKey) return;
          event.preventDefault();
          go(id);
        },
      },
      nameOf(id),
    );
    links.set(id, link);
    return h("li", {}, link, h("span", { class: "line", id: line }, titleOf(id)));
  }

  return {
    elements,
    update(current) {
      for (const [id, link] of links) {
        if (id === current) link.setAttribute("aria-current", "page");
        else link.removeAttribute("aria-current");
      }
    },
  };
}
