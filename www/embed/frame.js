// @ts-check
/** The page in a frame: one question from the address after `#`, and its height told to the page around. */

import "./element.js";

const style = new CSSStyleSheet();
style.replaceSync("html, body { margin: 0; } ");
document.adoptedStyleSheets = [style];

const place = document.createElement("faster-by");
const asked = new URLSearchParams(location.search);
place.lang = asked.get("lang") ?? navigator.language;
for (const name of ["units", "theme", "change"]) {
  const value = asked.get(name);
  if (value !== null) place.setAttribute(name, value);
}
const readAddress = () => place.setAttribute("state", location.hash.slice(1) || "power-or-drag");
readAddress();
addEventListener("hashchange", readAddress);
document.body.append(place);

// The height is no secret, and which page is around is not known here.
function tellHeight() {
  const height_px = Math.ceil(place.getBoundingClientRect().height);
  if (parent !== window) parent.postMessage({ type: "fasterby-height", height_px }, "*");
}
new ResizeObserver(tellHeight).observe(place);
addEventListener("message", ({ source, data }) => {
  if (source === parent && data?.type === "fasterby-height-wanted") tellHeight();
});
