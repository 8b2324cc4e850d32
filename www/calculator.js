// @ts-check
/** Puts the pieces of the page together, once the words are there; the core comes when it is asked. */

import { asCoreError, ask, prepareFor, ready, scenarioTables } from "./core.js";
import { siteFold } from "./embed/site-fold.js";
import { createAnswerBar } from "./frame/answer-bar.js";
import { createBar } from "./frame/bar.js";
import { byId } from "./frame/dom.js";
import { sayItFailed, whyLost } from "./frame/failed.js";
import { errorWords } from "./frame/field-words.js";
import { createNavigation } from "./frame/navigation.js";
import { createNotice } from "./frame/notice.js";
import { keepOffline } from "./frame/offline-copy.js";
import { createQuestionView } from "./frame/question-view.js";
import { questionList } from "./frame/rail.js";
import { speakPage } from "./frame/static-words.js";
import { createTools } from "./frame/tools.js";
import { createWork } from "./frame/work.js";
import { createJobs } from "./jobs.js";
import { painted } from "./parts/painted.js";
import { opening, pages, questions } from "./questions/index.js";
import { titleOf } from "./questions/shared/names.js";
import { requestOf } from "./questions/shared/request.js";
import { takeFold } from "./save/fold.js";
import { share } from "./sheet/share.js";
import { sharedEffort } from "./state/effort.js";
import { createStore } from "./state/history.js";
import { scenarioFiller } from "./state/scenario.js";
import * as units from "./units.js";
import { book, open } from "./words/index.js";

/** @import { Scenario, With } from "./types/page.d.ts" */
/** @import { CoreError } from "./core.js" */
/** @import { Page } from "./frame/page.js" */
/** @import { Shown } from "./save/files.js" */
/** @import { Reading } from "./frame/reading.js" */
/** @import { State } from "./state/history.js" */
/** @import { deviceStorage } from "./state/storage.js" */

const say = book("page");

/** @param {ReturnType<typeof deviceStorage>} storage @param {Reading} reading */
export function start(storage, reading) {
  const filler = scenarioFiller(
    scenarioTables(),
    questions.flatMap(({ positions = [] }) => positions),
  );
  const defaultsOf = (/** @type {string} */ id) => find(id).defaults;
  /** A question's own numbers as a new rider finds them. @param {string} id @param {{ distance: string }} units */
  const newOf = (id, { distance }) => ({ ...find(id).defaults, ...(distance === "km" && find(id).metric) });
  const exists = (/** @type {string} */ id) => pages.some((page) => page.id === id);
  const readIn = units.knownUnits(storage.units(), units.usualUnits(navigator.language));
  const store = createStore(
    {
      question: opening.id,
      scenario: filler.newFor(readIn),
      with: /** @type {With} */ (Object.fromEntries(pages.map(({ id }) => [id, newOf(id, readIn)]))),
      from_link: false,
      units: readIn,
    },
    (next, previous) => sharedEffort(next, previous, defaultsOf),
  );
  const notify = createNotice(byId("notice"), store);

  /** @type {Page} */
  const page = {
    store,
    filler,
    field: filler.field,
    check,
    go(id) {
      sheet?.close();
      go(id);
    },
    notify,
    questions: pages,
  };
  const work = createWork(page, storage, { defaultsOf, newOf });
  work.restore();
  store.forgetSteps();

  const navigation = createNavigation({
    store,
    exists,
    defaults: { scenario: filler.defaults(), with: defaultsOf },
    onLink: openLink,
    onTrouble: notify,
    withScenario: (id) => !find(id).story,
  });
  /** @type {ReturnType<typeof import("./sheet/sheet.js").createSheet> | null} */
  let sheet = null;
  /** @type {CoreError | null} */
  let refused = null;
  const offline = keepOffline();
  speakPage();
  let rail = questionList(pages, go);
  byId("questions").replaceChildren(...rail.elements);
  const bar = createBar(
    page,
    {
      undo: store.undo,
      redo: store.redo,
      units: () => withWords(import("./sheet/units-menu.js"), ({ openUnits }) => openUnits(page, reading)),
      saved: () => withWords(import("./sheet/saved.js"), ({ openSaved }) => openSaved(page, storage, work)),
      share: () => share(navigation.linkTo, { state: store.get(), field: filler.field, title: document.title, notify }),
      print: () => navigation.write().finally(print),
      help: () =>
        withWords(import("./sheet/help.js"), ({ openHelp }) =>
          openHelp({ questions: questions.map(({ id }) => titleOf(id)), offline: offline.sentence() }, openSheet),
        ),
      sheet: () => withSheet(({ toggle }) => toggle()),
    },
    go,
  );

  const answerBar = createAnswerBar(
    /** @type {HTMLElement} */ (document.querySelector(".bar")),
    byId("host"),
    byId("sheet"),
  );

  /** @type {Shown | null} */
  let answered = null;
  const take = takeFold(byId("host"), () => answered);
  const tools = createTools({
    store,
    filler,
    go,
    notify,
    openSheet,
    worker: createJobs(),
    opensFiles: true,
    lastFolds: (id) => [
      take.fold(),
      ...siteFold({ link: navigation.link, units: () => store.get().units, title: titleOf(id) }),
    ],
  });
  const view = createQuestionView(byId("host"), {
    store,
    find,
    tools,
    onShown({ id }) {
      document.title = say("documentTitle", { title: titleOf(id) });
      byId("host").dataset.question = id;
      byId("start-link").hidden = id === "start-here";
    },
    onFailed: questionFailed,
    onDrawn({ question, state, answer, error }) {
      if (!error)
        answered = answer && {
          question: question.id,
          title: state.scenario.title,
          own: state.with[question.id],
          request: requestOf(question, state),
          answer,
        };
      take.update();
      rail.update(question.id);
      bar.update(state);
      refused = error;
      sheet?.update(state, error);
      answerBar.update();
    },
  });
  store.subscribe(view.schedule);
  byId("skip").addEventListener("click", (event) => {
    event.preventDefault();
    byId("main").focus();
  });
  navigation.start().then(async () => {
    await painted();
    await view.draw();
    document.documentElement.dataset.started = "";
    // Printing waits for nothing, so what a printed page needs is here before; without it the rest is printed all the same.
    import("./save/paper.js")
      .then(({ keepPaper }) =>
        keepPaper(byId("host"), () => ({ state: store.get(), question: find(store.get().question) })),
      )
      .catch(() => {});
  });

  /** @param {(sheet: ReturnType<typeof import("./sheet/sheet.js").createSheet>) => void} use */
  function withSheet(use) {
    withWords(import("./sheet/sheet.js"), ({ createSheet }) => {
      sheet ??= createSheet(page, byId("sheet"));
      sheet.update(store.get(), refused);
      use(sheet);
    });
  }

  /** @param {string} [path] the field that is asked for */
  function openSheet(path) {
    withSheet(({ open }) => open(path));
  }

  /** What few visits open is fetched when it is asked for, and its words with it. @template T @param {Promise<T>} loading @param {(loaded: T) => void} then */
  function withWords(loading, then) {
    Promise.all([loading, ...["sheet", "core"].map(open)]).then(
      ([loaded]) => then(loaded),
      () => sayLost(say("partLost")),
    );
  }

  let givenNames = namesOf(filler.defaults());
  /** Positions that still bear the name that the page gave them are called so in the language that is spoken now. */
  function nameAnew() {
    const names = namesOf(filler.defaults());
    const state = store.get();
    const positions = state.scenario.positions.map((one) => ({
      ...one,
      name: names[givenNames.indexOf(one.name)] ?? one.name,
    }));
    if (String(names) !== String(givenNames))
      store.replace({ ...state, scenario: { ...state.scenario, positions } }, { undoable: false });
    givenNames = names;
  }

  reading.follow({ notify, remake });
  /** Everything that is said on the page, said again: in another language, or with other decimal marks. */
  async function remake() {
    nameAnew();
    speakPage();
    rail = questionList(pages, go);
    byId("questions").replaceChildren(...rail.elements);
    await view.remake();
    sheet?.remake();
  }

  /** @param {unknown} error @param {() => void} again */
  function questionFailed(error, again) {
    if (!byId("host").querySelector("h1")) return sayItFailed(error);
    sayLost(say("questionLost"), { label: say("tryAgain"), run: again });
  }

  /** @param {string} otherwise @param {import("./frame/failed.js").Action} [again] */
  async function sayLost(otherwise, again) {
    const { message, action } = await whyLost(otherwise, again);
    notify(message, action);
  }

  /** @param {string} id */
  function find(id) {
    return pages.find((page) => page.id === id) ?? opening;
  }

  /** The story leaves the numbers of whoever opens it alone. @param {Parameters<typeof work.openLink>[0]} linked */
  async function openLink(linked) {
    prepareFor(linked.scenario);
    await Promise.all([ready(linked.question), open("core")]);
    const question = find(linked.question);
    const told = question.story ? { ...linked, scenario: store.get().scenario } : linked;
    // The question with the link's numbers may take a while, and the page goes on meanwhile.
    const refused =
      check(told.scenario) ??
      (question.story
        ? null
        : await refusedAside(() =>
            tools.worker.ask(question.id, requestOf(question, work.stateOf(told)), { slot: "link" }),
          ));
    work.openLink(told, refused);
  }

  /** @param {() => Promise<unknown>} asking */
  async function refusedAside(asking) {
    try {
      await asking();
      return null;
    } catch (thrown) {
      return refusedWords(thrown);
    }
  }

  /** @param {string} id */
  async function go(id) {
    navigation.go(id);
    await view.draw();
    if (store.get().question !== id) return;
    const heading = byId("host").querySelector("h1");
    heading?.setAttribute("tabindex", "-1");
    heading?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }

  /** @param {unknown} scenario */
  function check(scenario) {
    try {
      ask("speed-for-watts", { scenario, with: {} });
      return null;
    } catch (thrown) {
      return refusedWords(thrown);
    }
  }

  /** The core's sentence about what is wrong with a request; one that cannot be ridden is still a request. @param {unknown} thrown */
  function refusedWords(thrown) {
    const error = asCoreError(thrown);
    return error.kind === "impossible" ? null : errorWords(error, store.get().units);
  }
}

/** @param {Scenario} scenario @returns {string[]} */
const namesOf = ({ positions }) => positions.map(({ name }) => name);
