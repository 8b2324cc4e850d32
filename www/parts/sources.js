// @ts-check
/** Where the figures come from. */

import { html } from "./html.js";

/** @typedef {{ key: string, text: string, url?: string | null, used?: string }} Source `used` says what it is used for. */

/**
 * @param {readonly Source[]} list
 */
export function sourceList(list) {
  const element = html("ul", { class: "sources" });
  /** @param {readonly Source[]} next */
  function update(next) {
    element.replaceChildren(
      ...next.map((source) => {
        const words = source.url
          ? html("a", { href: source.url, rel: "noreferrer", lang: "en" }, source.text)
          : html("span", { lang: "en" }, source.text);
        return html(
          "li",
          { "data-source": source.key },
          words,
          ...(source.used ? [html("span", { class: "soft" }, ` ${source.used}`)] : []),
        );
      }),
    );
  }
  update(list);
  return { element, update };
}
