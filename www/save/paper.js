// @ts-check
/** What a printed page holds beside what is on the screen: every input with its source, and the link as text and as a QR code. */

import { html } from "../parts/html.js";
import { nameOf } from "../questions/shared/names.js";
import { book, open } from "../words/index.js";
import { inputsOf, ownInputsOf } from "./inputs.js";
import { qrCode } from "./qr-code.js";

/** @import { State } from "../state/history.js" */
/** @import { Question } from "../questions/index.js" */

const words = book("save");
/** A longer link would fill the page, and nobody types it. */
const MOST_CHARACTERS = 1000;

/**
 * Adds them whenever the page is printed, and takes them away after.
 * @param {HTMLElement} host where the question is
 * @param {() => { state: State, question: Question }} current
 */
export async function keepPaper(host, current) {
  await open("save");
  /** @type {HTMLElement | null} */
  let paper = null;
  addEventListener("beforeprint", () => {
    paper?.remove();
    const { state, question } = current();
    // The story has numbers of its own, on its charts.
    if (question.story) return;
    paper = html(
      "section",
      { class: "paper", "aria-label": words("inputsAndLink") },
      inputsPart(state, question),
      ...linkPart(location.href),
    );
    host.append(paper);
  });
  addEventListener("afterprint", () => {
    paper?.remove();
    paper = null;
  });
}

/** @param {State} state @param {Question} question */
function inputsPart(state, { id, positionFields, comparesAll, alone }) {
  const { positions } = state.scenario;
  const named = (positionFields ?? []).map((name) => Number(state.with[id]?.[name]));
  const compared = comparesAll ? [...positions.keys()] : named.filter((index) => positions[index]);
  const groups = alone
    ? [{ title: nameOf(id), inputs: ownInputsOf(state, id) }]
    : inputsOf(state, compared.length ? [...new Set(compared)] : [state.scenario.riding_position]);
  return html(
    "div",
    {},
    html("h2", {}, words("whatWentIn"), " ", html("span", { class: "soft" }, words("plusMinus"))),
    html(
      "div",
      { class: "inputs" },
      ...groups.flatMap(({ title, inputs }) => [
        html("h3", {}, title),
        ...inputs.map(({ label, value, known }) =>
          html(
            "p",
            {},
            ...(known ? words.parts("inputKnown", { label, value, known }) : words.parts("input", { label, value })),
          ),
        ),
      ]),
    ),
  );
}

/** @param {string} link */
function linkPart(link) {
  if (link.length > MOST_CHARACTERS) return [html("p", { class: "link-part" }, words("linkTooLong"))];
  const code = qrCode(link);
  return [
    ...(code ? [code] : []),
    html("p", { class: "link-part" }, ...words.parts("sameQuestion", { link: html("span", { class: "link" }, link) })),
  ];
}
