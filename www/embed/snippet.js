// @ts-check
/** The lines that put the question that is on the page on somebody's own site. */

import { h } from "../frame/dom.js";
import { uniqueId } from "../parts/html.js";
import { book, language } from "../words/index.js";

/** @import { OnScreen } from "./site-fold.js" */

const words = book("embed");

/** @param {string} text */
const escaped = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** The language, where the page speaks another than its usual one. @param {string} name @param {string} [quote] */
const spoken = (name, quote = '"') => (language() === "en" ? "" : `${name}${quote}${language()}${quote}`);

/**
 * The element and its script.
 * @param {URL} home where the page lies
 * @param {{ link: string, units: string[], title: string }} shown
 */
export function elementSnippet(home, { link, units, title }) {
  const state = link.slice(link.indexOf("#") + 1);
  const id = state.split("/")[0];
  const more = state === id ? "" : ` state="${escaped(state)}"`;
  return `<script type="module" src="${escaped(new URL("embed/v1.js", home).href)}"></script>
<faster-by question="${escaped(id)}"${more} units="${escaped(units.join(" "))}"${spoken(" lang=")}><p>${escaped(title)} <a href="${escaped(link)}">${escaped(words("workItOut"))}</a>.</p></faster-by>`;
}

/**
 * The same in a frame, for sites that take no scripts.
 * @param {URL} home
 * @param {{ link: string, units: string[], title: string }} shown
 */
export function frameSnippet(home, { link, units, title }) {
  const state = link.slice(link.indexOf("#"));
  const asked = new URLSearchParams({ ...(language() !== "en" && { lang: language() }), units: units.join(" ") });
  return `<iframe src="${escaped(new URL(`embed/frame.html?${asked}${state}`, home).href)}" title="${escaped(title)}" width="100%" height="1000"></iframe>`;
}

/** @param {URL} home @param {OnScreen} now */
export function snippets(home, now) {
  const element = example(words("withScripts"), words("copyLines"));
  const frame = example(words("inFrame"), words("copyFrame"));
  const write = async () => {
    const shown = { link: await now.link(), units: Object.values(now.units()), title: now.title };
    element.write(elementSnippet(home, shown));
    frame.write(frameSnippet(home, shown));
  };
  write();
  return h(
    "div",
    { class: "snippets", onfocusin: write, onpointerenter: write },
    h("p", {}, words("holdsNumbers")),
    element.element,
    frame.element,
    h(
      "p",
      { class: "soft" },
      words("contentPolicy", {
        directives: `script-src ${home.origin} 'wasm-unsafe-eval'; connect-src ${home.origin}`,
        frame: `frame-src ${home.origin}`,
      }),
    ),
    h("p", { class: "soft" }, words("keepStill", { rule: "faster-by { display: flow-root; min-height: 100vh }" })),
  );

  /** @param {string} label @param {string} button */
  function example(label, button) {
    const id = uniqueId("snippet");
    const text = h("textarea", { id, class: "snippet", readonly: true, rows: 4, spellcheck: "false", wrap: "soft" });
    const done = h("span", { role: "status" });
    const copy = async () => {
      await write();
      text.select();
      try {
        await navigator.clipboard.writeText(text.value);
        done.textContent = words("copied");
      } catch {
        done.textContent = words("selected");
      }
    };
    return {
      element: h(
        "div",
        {},
        h("label", { for: id }, label),
        text,
        h("p", { class: "row-actions" }, h("button", { type: "button", onclick: copy }, button), done),
      ),
      /** @param {string} lines */
      write(lines) {
        if (text.value !== lines) text.value = lines;
      },
    };
  }
}
