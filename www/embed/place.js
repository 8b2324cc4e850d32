// @ts-check
/** One question in a place on another page: loaded, shown, and taken away again. */

import { ready, scenarioTables } from "../core.js";
import { h } from "../frame/dom.js";
import { createNotice } from "../frame/notice.js";
import { createQuestionView } from "../frame/question-view.js";
import { createTools } from "../frame/tools.js";
import { createJobs } from "../jobs.js";
import { painted } from "../parts/painted.js";
import { measureIn } from "../parts/text-size.js";
import { questions } from "../questions/index.js";
import { requestOf } from "../questions/shared/request.js";
import { encode } from "../state/address.js";
import { createStore } from "../state/history.js";
import { scenarioFiller } from "../state/scenario.js";
import { book, languageTag, open } from "../words/index.js";
import { GivenError, questionGiven, stateFrom } from "./given.js";
import { fixNumbers, guardFixed, limited, limitsFrom, locked } from "./limits.js";
import { GROUND, placeStyle, REM } from "./style.js";

/** @import { State } from "../state/history.js" */

export { leave, speakFor } from "./spoken.js";

const words = book("embed");
/** The address of the whole page. */
const PAGE = new URL("../", import.meta.url);
const REST_MS = 400;

/** Pieces that a host page may style, as `::part(answer)` and so on. @type {[part: string, selector: string][]} */
const PARTS = [
  ["sentence", ".ask"],
  ["answer", ".answer"],
  ["charts", ".picture"],
  ["notes", ".notes"],
  ["folds", ".folds"],
];

/**
 * @param {HTMLElement} element whose attributes say what to show
 * @param {HTMLElement} room inside its shadow root
 * @param {() => boolean} wanted whether it still is, after waiting
 * @returns {Promise<() => void>} takes it away
 * @throws {Error} with why it cannot be shown
 */
export async function show(element, room, wanted) {
  const attribute = (/** @type {string} */ name) => element.getAttribute(name);
  const given = {
    question: attribute("question"),
    scenario: attribute("scenario"),
    with: attribute("with"),
    state: attribute("state"),
    units: attribute("units"),
    lang: element.closest("[lang]")?.getAttribute("lang") ?? null,
  };
  const question = questionGiven(given, questions);
  const [sheet] = await Promise.all([placeStyle(), ready(question.id), ...["page", "units", "core"].map(open)]);
  const filler = scenarioFiller(
    scenarioTables(),
    questions.flatMap(({ positions = [] }) => positions),
  );
  const first = await stateFrom(given, question, { questions, filler });
  if (!wanted()) return () => {};

  const shadow = /** @type {ShadowRoot} */ (room.getRootNode());
  if (!shadow.adoptedStyleSheets.includes(sheet)) shadow.adoptedStyleSheets.push(sheet);
  const theme = attribute("theme");
  const may = limitsFrom(attribute("change"));
  const status = h("p", { class: "notice", role: "status", hidden: true });
  const host = h("div");
  const back = h("button", { type: "button", hidden: true, onclick: () => store.replace(first) }, words("backToStart"));
  const whole = h("a", { target: "_blank", rel: "noopener", href: PAGE.href }, words("allNumbers"));
  const ground = h(
    "div",
    {
      class: GROUND,
      part: "page",
      lang: languageTag(),
      ...((theme === "light" || theme === "dark") && { "data-theme": theme }),
    },
    host,
    h("div", { class: "foot", part: "foot" }, back, whole),
    status,
  );
  if (may && locked(may)) ground.setAttribute("data-locked", "");
  room.style.setProperty(REM, getComputedStyle(room).fontSize);

  const store = createStore(first);
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let told = first;
  let gone = false;

  const tools = createTools({
    store: limited(store, may),
    filler,
    notify: createNotice(status),
    // A worker from another origin is refused everywhere; the few milliseconds are spent here.
    worker: createJobs(() => {
      throw new Error("No worker here.");
    }),
    go: openWhole,
    openSheet: openWhole,
    lastFolds: () => [],
  });
  const view = createQuestionView(host, {
    store,
    find: () => question,
    tools,
    onDrawn,
    onFailed(error) {
      throw error;
    },
  });

  function openWhole() {
    whole.click();
  }

  /** @param {import("../frame/question-view.js").Drawn} drawn */
  function onDrawn({ state, error, answer }) {
    fixNumbers(host, may);
    back.hidden = state === first;
    if (error || gone || (state === told && state !== first)) return;
    told = state;
    element.dispatchEvent(
      new CustomEvent("answer", {
        bubbles: true,
        detail: structuredClone({ question: question.id, request: requestOf(question, state), answer }),
      }),
    );
  }

  async function writeLink() {
    const { scenario, with: details } = store.get();
    const hash = await encode(
      { question: question.id, scenario, with: details[question.id] },
      { scenario: filler.defaults(), with: question.defaults },
    );
    whole.href = new URL(hash, PAGE).href;
  }

  guardFixed(ground);
  ground.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    if (key === "y" || event.shiftKey) store.redo();
    else store.undo();
  });
  store.subscribe(() => {
    if (gone) return;
    view.schedule();
    clearTimeout(timer);
    timer = setTimeout(writeLink, REST_MS);
  });

  // Charts are drawn for the width that they find; nothing is seen to move meanwhile.
  ground.style.visibility = "hidden";
  room.replaceChildren(ground);
  measureIn(getComputedStyle(ground).fontFamily);
  await view.draw();
  underHostHeading(host);
  for (const [part, selector] of PARTS) host.querySelector(selector)?.setAttribute("part", part);
  writeLink();
  await painted();
  ground.style.visibility = "";

  return () => {
    gone = true;
    clearTimeout(timer);
    view.destroy();
    if (ground.parentNode === room) room.replaceChildren(document.createElement("slot"));
  };
}

/** A line that says why a question cannot be shown; null without its words. What a browser says of a failure is no sentence for a reader. @param {unknown} error */
export function whyNot(error) {
  if (!words.has("cannotShow")) return null;
  if (!(error instanceof GivenError)) console.error(error);
  const why = error instanceof GivenError ? error.message : words("notLoaded");
  return [h("p", { class: "why", part: "why", role: "note", lang: languageTag() }, words("cannotShow", { why }))];
}

/** On another page the question is one section among others, and its pieces are no landmarks. @param {HTMLElement} host */
function underHostHeading(host) {
  for (const heading of host.querySelectorAll("h1, h2"))
    heading.setAttribute("aria-level", heading.localName === "h1" ? "2" : "3");
  for (const section of host.querySelectorAll("section")) section.setAttribute("role", "group");
}
