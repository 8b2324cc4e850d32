// @ts-check
/** The page's own style, made to hold for a place on another page: the place stands for the document, its width for the window's. */

/** The class of the element that stands for the document. */
export const GROUND = "ground-of-question";
/** The length that stands for `rem`, so that text follows the reader's setting and not the host page's. */
export const REM = "--rem";

/** Colours and the typeface that a host page may set, as `--faster-by-paper` and so on. */
const OPEN = ["paper", "well", "rule", "edge", "ink", "soft", "power", "drag", "hold", "ground", "face"];
/** A media query counts `rem` in the browser's own size. */
const MEDIA_REM_PX = 16;

/** What a place needs beyond the page's style. The chances get longer once draws are there; they have room for that. */
const OWN = `
.${GROUND} { padding: var(--faster-by-padding, 1.25rem); min-height: inherit; text-align: start; direction: ltr; }
.known > button, .about { display: none; }
.num[data-fixed] { padding: 0; background: none; border-bottom-color: transparent; cursor: auto; }
.num[data-fixed]::after { display: none; }
.num[data-fixed] select { padding-right: 0; opacity: 1; color: inherit; cursor: auto; }
[data-locked] .handle { pointer-events: none; cursor: auto; }
[data-locked] .hand-hint { display: none; }
.odds { display: flex; align-items: flex-end; min-height: 3.9em; }
.notice { position: sticky; left: auto; bottom: .5rem; transform: none; max-width: 100%; }
.foot { display: flex; flex-wrap: wrap; justify-content: space-between; gap: .5rem 1.5rem; margin-top: 1rem; font-size: .875rem; color: var(--soft); }
.foot button { min-height: 2.75rem; padding: 0 .75rem; background: none; border: 1px solid var(--edge); border-radius: .375rem; color: var(--ink); cursor: pointer; }
.foot a { display: inline-flex; align-items: center; min-height: 2.75rem; color: var(--ink); }
`;

/** @type {Promise<CSSStyleSheet> | undefined} */
let loading;

/** The sheet, fetched once for all places of a page. A sheet made by a script needs no leave from the host page's content policy. */
export function placeStyle() {
  loading ??= fetch(new URL("style.css", import.meta.url), { credentials: "omit" }).then(async (response) => {
    const isStyle = response.ok && response.headers.get("content-type")?.startsWith("text/css");
    if (!isStyle) throw new Error(`The style gave ${response.status}, ${response.headers.get("content-type")}.`);
    return new CSSStyleSheet().replace(forPlace(`${await response.text()}${OWN}`));
  });
  loading.catch(() => {
    loading = undefined;
  });
  return loading;
}

/** @param {string} css @returns {string} */
export function forPlace(css) {
  return css
    .replace(/@page\s*\{[^}]*\}/g, "")
    .replace(
      /@media([^{,]*-width[^{,]*)\{/g,
      (_, query) =>
        `@container ${query.replace(/\)and/g, ") and").replace(/([\d.]+)rem/g, (/** @type {string} */ _whole, /** @type {string} */ rem) => `${Number(rem) * MEDIA_REM_PX}px`)}{`,
    )
    .replace(/:root/g, `.${GROUND}`)
    .replace(/(^|[{}\s])(?:html|body)(?=\s*\{)/g, `$1.${GROUND}`)
    .replace(new RegExp(`--(${OPEN.join("|")}):([^;}]+)`, "g"), "--$1:var(--faster-by-$1,$2)")
    .replace(/(-?\d*\.?\d+)vw\b/g, "$1cqi")
    .replace(/@media[^{]*\{|(-?\d*\.?\d+)rem\b/g, (whole, rem) =>
      rem === undefined ? whole : `calc(${rem}*var(${REM}))`,
    );
}
