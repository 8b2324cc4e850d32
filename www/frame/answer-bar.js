// @ts-check
/** The answer in the phone's bar while a number is edited or "Your numbers" lies over the page, unless the answer itself is in sight. */

import { html, set } from "../parts/html.js";

/** What is edited. */
const EDITED = "input:not([type='checkbox'], [type='radio'], [type='range']), textarea";
/** Under a keyboard that lies over the page this much at least is hidden; less is the browser's own bars. */
const KEYBOARD_PX = 120;

/** @param {HTMLElement} bar @param {HTMLElement} host where the question is shown @param {HTMLElement} sheet */
export function createAnswerBar(bar, host, sheet) {
  // The answer itself is what is heard.
  const line = html("p", { class: "bar-answer", "aria-hidden": "true", hidden: true });
  bar.append(line);
  let frame = 0;

  /** The answer that what is edited belongs to: a story has one for each step. @returns {HTMLElement | null} */
  function verdict() {
    const step = document.activeElement?.closest(".step");
    return (step ?? host).querySelector(".verdict");
  }

  function isWanted() {
    if (!sheet.hidden) return true;
    return document.activeElement instanceof HTMLElement && document.activeElement.matches(EDITED);
  }

  /** A wide page has none. Its style is asked once for a width, as asking makes the browser work out every style at once. @type {boolean | undefined} */
  let hasBar;

  /** @param {HTMLElement} answer */
  function isInSight(answer) {
    const { top, bottom } = answer.getBoundingClientRect();
    const end = sheet.hidden
      ? (visualViewport?.height ?? innerHeight) - bar.offsetHeight
      : sheet.getBoundingClientRect().top;
    return top >= 0 && bottom <= end;
  }

  function update() {
    hasBar ??= getComputedStyle(bar).display !== "none";
    const answer = isWanted() && hasBar ? verdict() : null;
    const shown = answer !== null && answer.textContent !== "" && !isInSight(answer);
    set(line, { hidden: !shown });
    for (const one of [bar, sheet]) set(one, { "data-answer": shown });
    if (shown)
      line.replaceChildren(...[".claim > :last-child", ".amount", ".pm"].flatMap((part) => copyOf(answer, part)));
  }

  /** A keyboard that lies over the page would hide the bar. */
  function aboveKeyboard() {
    const { height, offsetTop } = /** @type {VisualViewport} */ (visualViewport);
    const hidden_px = innerHeight - height - offsetTop;
    bar.style.bottom = hidden_px > KEYBOARD_PX ? `${hidden_px}px` : "";
    update();
  }

  /** What has the focus, or is in sight, is known once the event is over. */
  function updateLater() {
    cancelAnimationFrame(frame);
    frame = requestAnimationFrame(update);
  }

  addEventListener("resize", () => {
    hasBar = undefined;
  });
  for (const type of ["focusin", "focusout", "scroll"]) document.addEventListener(type, updateLater, { passive: true });
  new MutationObserver(updateLater).observe(sheet, { attributes: true, attributeFilter: ["hidden"] });
  visualViewport?.addEventListener("resize", aboveKeyboard);
  return { update };
}

/** @param {HTMLElement} answer @param {string} part */
function copyOf(answer, part) {
  const found = answer.querySelector(part);
  return found instanceof HTMLElement && !found.hidden ? [found.cloneNode(true), " "] : [];
}
