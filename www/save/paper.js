// @ts-check
/** What a printed page holds beside what is on the screen: every input with its source, and the link as text and as a QR code. */

import { html } from "../parts/html.js";
import { inputsOf } from "./inputs.js";
import { qrCode } from "./qr-code.js";

/** @import { State } from "../state/history.js" */
/** @import { Question } from "../questions/index.js" */

/** A longer link would fill the page, and nobody types it. */
const MOST_CHARACTERS = 1000;

/**
 * Adds them whenever the page is printed, and takes them away after.
 * @param {HTMLElement} host where the question is
 * @param {() => { state: State, question: Question }} current
 */
export function keepPaper(host, current) {
  /** @type {HTMLElement | null} */
  let paper = null;
  addEventListener("beforeprint", () => {
    paper?.remove();
    const { state, question } = current();
    // The story has numbers of its own, on its charts.
    if (question.story) return;
    paper = html("section", { class: "paper", "aria-label": "Inputs and link" }, inputsPart(state, question), ...linkPart(location.href));
    host.append(paper);
  });
  addEventListener("afterprint", () => {
    paper?.remove();
    paper = null;
  });
}

/** @param {State} state @param {Question} question */
function inputsPart(state, { id, positionFields }) {
  const compared = (positionFields ?? []).map((name) => Number(state.with[id]?.[name])).filter((index) => state.scenario.positions[index]);
  const groups = inputsOf(state, compared.length ? [...new Set(compared)] : [state.scenario.riding_position]);
  return html("div", {}, html("h2", {}, "What went in ", html("span", { class: "soft" }, "(± is one standard deviation; a number without one is taken as exact)")), html("div", { class: "inputs" }, ...groups.flatMap(({ title, inputs }) => [
    html("h3", {}, title),
    ...inputs.map(({ label, value, known }) => html("p", {}, `${label} `, html("b", {}, value), known ? `, ${known}` : "")),
  ])));
}

/** @param {string} link */
function linkPart(link) {
  if (link.length > MOST_CHARACTERS) return [html("p", { class: "link-part" }, "The link to these numbers is too long for paper. Share it, or save the question as a file.")];
  const code = qrCode(link);
  return [...(code ? [code] : []), html("p", { class: "link-part" }, "The same question with these numbers, to change and ask again: ", html("span", { class: "link" }, link))];
}
