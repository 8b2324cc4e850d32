// @ts-check
/** The eight steps in their order, the story in short, and the end. Fetched when the story is first opened. */

import { html } from "../parts/html.js";
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
  const steps = told.map((step) => step(tools));
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
  /** Whether what takes long has been worked out beside the page. */
  let isPrepared = false;
  askAhead(numbersOf(tools.store.get()), tools.worker).finally(() => {
    isPrepared = true;
    followBehind();
  });
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

  function catchUpAtOnce() {
    while (behind.length) catchUp();
  }
  addEventListener("beforeprint", catchUpAtOnce);

  return {
    update(state) {
      latest = state;
      const numbers = numbersOf(state);
      behind = steps.filter(({ element }) => !inSight(element));
      for (const step of steps) if (!behind.includes(step)) step.update(state, numbers);
      end.update(state, numbers);
      followBehind();
    },
    destroy() {
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
