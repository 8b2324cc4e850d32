// @ts-check
/** Start-up: loads the core, puts the pieces together, and says what to do when that fails. */

import { ask, asCoreError, fields, ready, sources } from "./core.js";
import { createBar } from "./frame/bar.js";
import { boundNumber } from "./frame/bound-number.js";
import { byId, h } from "./frame/dom.js";
import { createNavigation } from "./frame/navigation.js";
import { createNotice } from "./frame/notice.js";
import { keepOffline } from "./frame/offline-copy.js";
import { createQuestionView, requestOf } from "./frame/question-view.js";
import { questionList } from "./frame/rail.js";
import { errorWords, labelOf } from "./frame/words.js";
import { createWork } from "./frame/work.js";
import { createJobs } from "./jobs.js";
import { opening, questions } from "./questions/index.js";
import { openHelp } from "./sheet/help.js";
import { openSaved } from "./sheet/saved.js";
import { share } from "./sheet/share.js";
import { createSheet } from "./sheet/sheet.js";
import { openUnits } from "./sheet/units-menu.js";
import { createStore } from "./state/history.js";
import { countKnown, courseLengthM, scenarioFiller } from "./state/scenario.js";
import { deviceStorage } from "./state/storage.js";
import * as units from "./units.js";

/** @import { Page } from "./frame/page.js" */
/** @import { Tools } from "./questions/index.js" */
/** @import { State } from "./state/history.js" */

function start() {
  const filler = scenarioFiller(fields(), questions.flatMap(({ positions = [] }) => positions));
  const citations = new Map(sources().map(({ key, citation }) => [key, citation]));
  const storage = deviceStorage();
  const defaultsOf = (/** @type {string} */ id) => find(id).defaults;
  const exists = (/** @type {string} */ id) => questions.some((question) => question.id === id);
  const store = createStore({
    question: opening.id,
    scenario: filler.defaults(),
    with: Object.fromEntries(questions.map(({ id, defaults }) => [id, defaults])),
    units: units.knownUnits(storage.units(), units.usualUnits(navigator.language)),
  });
  const notify = createNotice(byId("notice"));

  /** @type {Page} */
  const page = { store, filler, field: filler.field, citation: (key) => citations.get(key) ?? "", check, checkQuestion, notify, questions };
  const work = createWork(page, storage, defaultsOf);
  work.restore();
  store.forgetSteps();

  const navigation = createNavigation({
    store, exists, defaults: { scenario: filler.defaults(), with: defaultsOf }, onLink: work.openLink, onTrouble: notify,
  });
  const sheet = createSheet(page, byId("sheet"));
  const offline = keepOffline();
  const rail = questionList(questions, go);
  byId("questions").append(...rail.elements);
  const bar = createBar(page, {
    undo: store.undo,
    redo: store.redo,
    units: () => openUnits(page),
    saved: () => openSaved(page, storage, work),
    share: async () => share(await navigation.link(), { title: document.title, notify }),
    print: () => print(),
    help: () => openHelp({ questions, offline: offline.sentence() }, sheet.open),
    sheet: sheet.toggle,
  }, go);

  /** @type {Tools} */
  const tools = {
    store, units, go, notify,
    openSheet: sheet.open,
    worker: createJobs(),
    number: (options) => boundNumber(page, options),
    known: ({ scenario }, positions) => countKnown(scenario, positions),
    words: (about) => errorWords(about, store.get().units),
    trouble: (error, shown) => (error && !shown ? errorWords(error, store.get().units) : null),
    field: filler.field,
    label: labelOf,
    citation: page.citation,
    newPosition: filler.position,
    courseLengthM,
  };
  const view = createQuestionView(byId("host"), {
    store, find, tools,
    onDrawn(state, error) {
      rail.update(state.question);
      bar.update(state);
      sheet.update(state, error);
    },
  });
  store.subscribe(view.schedule);
  byId("skip").addEventListener("click", (event) => {
    event.preventDefault();
    byId("main").focus();
  });
  navigation.start().then(() => {
    view.draw();
    document.documentElement.dataset.started = "";
  });

  /** @param {string} id */
  function find(id) {
    return questions.find((question) => question.id === id) ?? opening;
  }

  /** @param {string} id */
  function go(id) {
    navigation.go(id);
    view.draw();
    const heading = byId("host").querySelector("h1");
    heading?.setAttribute("tabindex", "-1");
    heading?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }

  /** @param {any} scenario */
  function check(scenario) {
    return refusal(() => ask("finish-time", { scenario, with: { effort: { kind: "even" } } }));
  }

  /** @param {State} state */
  function checkQuestion(state) {
    const open = find(state.question);
    return refusal(() => ask(open.id, requestOf(open, state)));
  }

  /** The core's sentence about what is wrong with a request; one that cannot be ridden is still a request. @param {() => unknown} asking */
  function refusal(asking) {
    try {
      asking();
      return null;
    } catch (thrown) {
      const error = asCoreError(thrown);
      return error.kind === "impossible" ? null : errorWords(error, store.get().units);
    }
  }
}

/** @param {unknown} error */
function sayItFailed(error) {
  console.error(error);
  const why = typeof WebAssembly === "undefined"
    ? "This browser has no WebAssembly, which the calculation needs. Any current browser has it; a “lockdown” or “strict” mode may switch it off for this site."
    : "The calculation could not be loaded. Check the connection and reload the page; if that does not help, try another browser.";
  byId("host").replaceChildren(h("div", { class: "failed", role: "alert" },
    h("h1", {}, "The calculator did not start"), h("p", {}, why),
    h("p", { class: "soft" }, `What the browser says: ${error instanceof Error ? error.message : String(error)}`),
    h("button", { type: "button", onclick: () => location.reload() }, "Reload")));
}

ready().then(() => {
  Object.assign(globalThis, { fasterby: { ask, fields, sources } });
  start();
}).catch(sayItFailed);
