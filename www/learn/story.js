// @ts-check
/** The eight steps in their order, the story in short, and the end. Fetched when the story is first opened. */

import { html } from "../parts/html.js";
import { painted } from "../parts/painted.js";
import { titleOf } from "../questions/shared/names.js";
import { citations } from "../questions/shared/worked-out.js";
import * as units from "../units.js";
import { book } from "../words/index.js";
import { ID } from "./beginning.js";
import { howLong } from "./how-long.js";
import { inShort } from "./in-short.js";
import { lostAtTheEnd } from "./lost-at-the-end.js";
import { askAhead, numbersOf } from "./rider.js";
import { tenAgainstTen } from "./ten-against-ten.js";
import { threeChanges } from "./three-changes.js";
import { uphillAndWind } from "./uphill-and-wind.js";
import { wallOfAir } from "./wall-of-air.js";
import { whereToPush } from "./where-to-push.js";
import { whereWattsGo } from "./where-watts-go.js";
import { yourTurn } from "./your-turn.js";

/** @import { Tools, View } from "../questions/index.js" */
/** @import { State } from "../state/history.js" */
/** @import { Step } from "./step.js" */

const words = book("learn");
const page = book("page");
/** What the story quotes. */
const SOURCES = [
  "dynamic-parameter",
  "four-and-twenty",
  "laursen-2002",
  "polanco-2020",
  "faulkner-2021",
  "martin-1998",
  "brownlie-2009",
  "skiba-2015",
];

/** So many steps are made with the story itself, each of the others in a task of its own: a slow device shows the beginning and hears a press meanwhile. */
const AT_ONCE = 2;

function promised() {
  let isShown = () => {};
  const shown = new Promise((/** @type {(value?: undefined) => void} */ resolve) => {
    isShown = resolve;
  });
  return { shown, isShown };
}

const nextTask = () => new Promise((resolve) => setTimeout(resolve));

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
export function create(host, tools) {
  const mass = units.quantity(
    "mass",
    tools.field("scenario.rider.total_mass_kg")?.default ?? 0,
    tools.store.get().units,
  );
  const told = [
    wallOfAir,
    whereWattsGo,
    howLong,
    tenAgainstTen,
    lostAtTheEnd,
    uphillAndWind,
    whereToPush,
    threeChanges,
    inShort,
  ];
  const steps = told.slice(0, AT_ONCE).map((step) => step(tools));
  let gone = false;
  const end = yourTurn(tools);
  host.replaceChildren(
    html("h1", {}, titleOf(ID)),
    html("p", { class: "about" }, page("about")),
    html("p", { class: "also" }, words("lead", { mass })),
    ...steps.map(({ element }) => element),
    end.element,
    html(
      "div",
      { class: "step passage" },
      html("p", {}, words("coda", { yourNumbers: page("yourNumbers") })),
      citations(SOURCES),
    ),
  );

  /** Steps that are out of sight follow a change one a frame, so that the one in hand is drawn at once. @type {Step[]} */
  let behind = [];
  let frame = 0;
  const beginning = promised();
  /** Whether what takes long has been worked out beside the page. */
  let isPrepared = false;
  /** @type {State} */
  let latest = tools.store.get();

  function followBehind() {
    if (isPrepared && behind.length) frame ||= requestAnimationFrame(catchUp);
  }

  function catchUp() {
    frame = 0;
    behind.shift()?.update(latest, numbersOf(latest));
    followBehind();
  }

  async function makeRest() {
    for (const step of told.slice(AT_ONCE)) {
      await nextTask();
      if (gone) return;
      const made = step(tools);
      // As the page opens, the steps are shown one after the other.
      made.element.toggleAttribute("data-later", end.element.hasAttribute("data-later"));
      end.element.before(made.element);
      steps.push(made);
      behind.push(made);
      followBehind();
    }
    prepare();
  }

  /** The beginning is read before the rest of the core is fetched for what takes long. */
  async function prepare() {
    if (steps[0].element.hasAttribute("data-later")) await beginning.shown;
    await painted();
    if (gone) return;
    await askAhead(numbersOf(latest), tools.worker).catch(() => {});
    if (gone) return;
    isPrepared = true;
    followBehind();
  }

  function catchUpAtOnce() {
    while (behind.length) catchUp();
  }
  addEventListener("beforeprint", catchUpAtOnce);

  return {
    whole: makeRest(),
    reveal: beginning.isShown,
    update(state) {
      latest = state;
      const numbers = numbersOf(state);
      behind = steps.filter(({ element }) => !inSight(element));
      for (const step of steps) if (!behind.includes(step)) step.update(state, numbers);
      end.update(state, numbers);
      followBehind();
    },
    destroy() {
      gone = true;
      cancelAnimationFrame(frame);
      removeEventListener("beforeprint", catchUpAtOnce);
      for (const step of steps) step.destroy();
    },
  };
}

/** @param {HTMLElement} element */
function inSight(element) {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
}
