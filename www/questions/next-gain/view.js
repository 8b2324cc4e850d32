// @ts-check
/** What to work on next: the budget in a sentence, the best set, every change on one scale, and what a budget buys. */

import { answer as answerPart } from "../../parts/answer.js";
import { html, say, set, strong, uniqueId } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { caution } from "../shared/caution.js";
import { clause } from "../shared/clause.js";
import { aboutWords, eventWords, furtherWords } from "../shared/distance-names.js";
import { listOf } from "../shared/list.js";
import { nameOf as questionName } from "../shared/names.js";
import { odds } from "../shared/odds.js";
import { passagePiece, piece, questionShell } from "../shared/shell.js";
import { stopButton } from "../shared/stop-button.js";
import { warningList } from "../shared/warnings.js";
import { budgetChart } from "./budget.js";
import { meaningOf, nameOf } from "./candidates.js";
import { dotPlot } from "./dots.js";
import { eventList } from "./events.js";
import { changeList } from "./list.js";
import { listsOnPaper } from "./paper.js";
import { bestSet } from "./search.js";
import { gainsTable, leftOutList, why, whyGist, workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Words } from "../../parts/html.js" */
/** @import { FoldPiece, Piece, Pieces, Shell, Shown } from "../shared/shell.js" */
/** @typedef {ReturnType<typeof bestSet>} Search */
/** @import { BestSet, NextGainAnswer as Answer } from "../../types/core.d.ts" */

const words = book("next-gain");
const shared = book("shared");
const ID = "next-gain";
const AT = `with.${ID}`;
/** Questions that say more of a position than its size. */
const ELSEWHERE = ["which-position", "leg-room"];
/** The question that compares with and without. */
const MEASURED_BY = "drag-test";
/** What knowing adds is not worth a sentence below this. */
const LEAST_WORTH_S = 1;
/** So many changes are named in the claim; the rest is counted. */
const NAMED = 2;
/** A search that is done sooner is not worth a word, ms. */
const PATIENCE_MS = 350;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const search = bestSet(tools, page.redraw);
  const list = changeList(tools, () => listed(page.answer()));
  const events = eventList(tools);
  const { answered, tell } = firstVerdict(search);
  return page.show({
    ...asked(tools, [list, events]),
    answer: [
      verdict(search),
      working(search),
      taken(search),
      paragraphOfBest(search, "also", (shown, best) => takes(shown.state, best)),
      paragraphOfBest(search, "also", inFixedTimes),
      paragraphOfBest(search, "takes no-print", (shown, best) => nextStep(shown, best, "money")),
      paragraphOfBest(search, "takes no-print", (shown, best) => nextStep(shown, best, "hours")),
      measureFirst(tools, search),
      warnings(tools, search),
    ],
    picture: [dots(search), budget(tools, search, "money"), budget(tools, search, "hours_per_week"), tell],
    notes: [{ element: elsewhere(tools) }, caution(words.parts("caution")), onPaper(page)],
    folds: foldsOf(tools, page, search, { list, events }),
    work: search,
    answered,
  });
}

/** The sentence, and the lists that are edited below. @param {Tools} tools @param {Pieces<Answer>["fields"]} lists */
function asked(tools, lists) {
  const money = tools.number({ path: `${AT}.money`, kind: "ratio", digits: 0, step: 10, label: words("moneyLabel") });
  const hours = tools.number({ path: `${AT}.hours_per_week`, kind: "ratio", step: 0.5, label: words("hoursLabel") });
  const weeks = tools.number({ path: `${AT}.weeks`, kind: "ratio", digits: 0, step: 1, label: words("weeksLabel") });
  const currency = currencyField(tools);
  const [counted, hoursUnit, weeksUnit] = [html("span"), html("span"), html("span")];
  return {
    words: () =>
      words.parts("ask", {
        money,
        currency,
        hours: clause(hours, " ", hoursUnit),
        weeks: clause(weeks, " ", weeksUnit),
        events: { element: counted, note: html("div") },
      }),
    fields: [money, hours, weeks, ...lists],
    follow(/** @type {State} */ state) {
      currency.update(state);
      say(counted, words("myEvents", { count: state.scenario.events.length }));
      say(hoursUnit, words("hoursUnit", { count: state.with[ID].hours_per_week }));
      say(weeksUnit, words("weeksUnit", { count: state.with[ID].weeks }));
    },
  };
}

/** @param {Answer | null} answer */
const listed = (answer) => answer?.candidates.map(({ candidate }) => candidate) ?? [];

/** What was found, if it is about this answer: a set found for another list says nothing about it. @param {Search} search @param {Answer} answer */
function foundFor(search, { candidates, events }) {
  const found = search.value();
  if (!found) return null;
  const { best, leftOut } = found;
  const fits =
    best.candidates.length + leftOut.length === candidates.length && best.by_event_s.length === events.length;
  return fits ? found : null;
}

/** The changes of the best set, the largest saving first. @param {Answer} answer @param {BestSet} best */
const mostFirst = ({ ranked }, best) => ranked.filter((c) => best.candidates.includes(c));

/** @param {Answer} answer @param {number} c */
const nameAt = ({ candidates }, c) => nameOf(candidates[c].candidate, c);

/** There only while there is a best set. @template {{ element: HTMLElement, destroy?: () => void }} Part @param {Search} search @param {Part} part @param {(part: Part, shown: Shown<Answer>, best: BestSet) => void} draw @returns {Piece<Answer>} */
function ofBest(search, part, draw) {
  return piece(part, (_, shown) => {
    const best = foundFor(search, shown.answer)?.best;
    part.element.hidden = !best;
    if (best) draw(part, shown, best);
  });
}

/** @param {Search} search @param {string} name its class @param {(shown: Shown<Answer>, best: BestSet) => Words} text @returns {Piece<Answer>} */
const paragraphOfBest = (search, name, text) =>
  ofBest(search, { element: html("p", { class: name }) }, ({ element }, shown, best) =>
    say(element, text(shown, best)),
  );

/** Tells that the first verdict is there, or will not come. @param {Search} search @returns {{ answered: Promise<void>, tell: Piece<Answer> }} */
function firstVerdict(search) {
  /** @type {() => void} */
  let resolve = () => {};
  /** @type {Promise<void>} */
  const answered = new Promise((settle) => {
    resolve = settle;
  });
  return {
    answered,
    tell: {
      draw({ answer }) {
        if (foundFor(search, answer) || !search.isBusy()) resolve();
      },
    },
  };
}

/** @param {Search} search @returns {Piece<Answer>} */
function verdict(search) {
  return piece(answerPart(), (part, { answer, settled }) => {
    const best = foundFor(search, answer)?.best;
    if (!best) return;
    const order = mostFirst(answer, best);
    const named = order.slice(0, order.length > NAMED + 1 ? NAMED : NAMED + 1).map((c) => nameAt(answer, c));
    const rest = order.length - named.length;
    const names = listOf(rest ? [...named, words("more", { count: rest })] : named);
    const { short, figure } = units.difference(Math.round(best.expected_s.value) || best.expected_s.value);
    const spread = units.plusMinusTime(best.expected_s.sd).replace(/^±\s*/, "");
    const { weight, words: sure } = odds(best.expected_s, null);
    const none = best.candidates.length === 0;
    part.update({
      mark: none ? null : meaningOf(answer.candidates[order[0]].candidate),
      claim: none ? words("nothing") : words.parts("claim", { names, count: answer.events.length }),
      figure: none ? "0:00" : short,
      spread: none ? null : spread,
      odds: none ? "" : sure,
      weight,
      settled,
      spoken: none ? words("spokenNothing") : words("spoken", { names, figure, spread }),
    });
  });
}

/** How far the search is, with the button that stops it. @param {Search} search @returns {Piece<Answer>} */
function working(search) {
  const element = html("p", { class: "also", hidden: true });
  const stop = stopButton(search, { stop: words("stop"), resume: words("goOn") });
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let waiting;
  let waited = false;

  function rest() {
    clearTimeout(waiting);
    [waiting, waited] = [undefined, false];
  }

  function draw() {
    const stopped = search.state() === "stopped";
    set(element, { "data-searching": search.isBusy() });
    if (!search.isBusy()) rest();
    else
      waiting ??= setTimeout(() => {
        waited = true;
        draw();
      }, PATIENCE_MS);
    element.hidden = !(waited || stopped);
    if (element.hidden) return;
    stop.update();
    const share = search.share();
    const now = share ? words("searching", { share: units.percent(share) }) : words("waiting");
    say(element, [stopped ? words("stopped") : now, " ", stop.element]);
  }

  return { element, draw, destroy: rest };
}

/** @param {Search} search */
function taken(search) {
  const part = lines({
    caption: words("inTheSet"),
    headings: [words("change"), words("onAverage"), words("ifItWorks")],
  });
  return ofBest(search, part, (_, { answer }, best) =>
    part.update(
      mostFirst(answer, best).map((c) => {
        const { candidate, expected_s, saves_s } = answer.candidates[c];
        return {
          mark: meaningOf(candidate),
          name: nameOf(candidate, c),
          value: strong(units.time(expected_s.value)),
          difference: words("ifWorks", { figure: units.time(saves_s.value) }),
          soft: true,
        };
      }),
    ),
  );
}

/** What the best set takes and gives. @param {State} state @param {BestSet} best @returns {Words} */
function takes(state, best) {
  if (best.candidates.length === 0) return "";
  return words.parts("takes", {
    money: inMoney(state, best.money),
    hours: inHours(best.hours),
    weekly: inHoursAWeek(best.hours_per_week),
    all: units.time(best.all_work_s.value),
    average: units.time(best.expected_s.value),
    low: units.differenceWords(best.range_95_s[0]),
    high: units.differenceWords(best.range_95_s[1]),
  });
}

/** How far the events that go by time take the rider today, and with the best set. @param {Shown<Answer>} shown @param {BestSet} best @returns {Words} */
function inFixedTimes({ state, answer: { events } }, { by_event_s, further_by_event_m: further = [] }) {
  return further.flatMap((further_m, at) =>
    further_m === null || !state.scenario.events[at]
      ? []
      : [
          ...words.parts("inFixedTime", {
            event: eventWords(state.scenario.events[at], state.units),
            now: aboutWords(events[at].distance_m, state.units),
            differs: units.differenceWords(by_event_s[at]),
            further: furtherWords(further_m, state.units),
          }),
          " ",
        ],
  );
}

/** What the next piece of a budget would bring. @param {Shown<Answer>} shown @param {BestSet} best @param {"money" | "hours"} of */
function nextStep({ state, answer }, best, of) {
  const step = of === "money" ? best.next_money : best.next_hours;
  if (!step) return words(of === "money" ? "nextNoMoney" : "nextNoHours");
  const namesOf = (/** @type {number[]} */ all, /** @type {number[]} */ but) =>
    listOf(all.filter((c) => !but.includes(c)).map((c) => nameAt(answer, c)));
  const left = namesOf(best.candidates, step.candidates);
  return words.parts(left ? "nextSwaps" : "nextAdds", {
    more: of === "money" ? inMoney(state, step.more) : inHoursAWeek(step.more),
    added: namesOf(step.candidates, best.candidates),
    left,
    gain: units.difference(step.gains_s).figure,
  });
}

/** What to measure before it is chosen: where knowing what it saves adds more than having it. @param {Tools} tools @param {Search} search @returns {Piece<Answer>} */
function measureFirst({ go }, search) {
  const open = html("button", { type: "button" }, questionName(MEASURED_BY));
  open.addEventListener("click", () => go(MEASURED_BY));
  return piece({ element: html("p", { class: "takes no-print" }) }, ({ element }, { answer }) => {
    const first = foundFor(search, answer)?.measuring.find(
      ({ worth_s, buying_s }) => worth_s >= LEAST_WORTH_S && worth_s > buying_s,
    );
    element.hidden = !first;
    if (!first) return;
    say(
      element,
      words.parts(first.buying_s > 0 ? "measureFirst" : "measureLeftOut", {
        name: nameAt(answer, first.candidate),
        open,
        worth: units.time(first.worth_s),
        buying: units.time(first.buying_s),
      }),
    );
  });
}

/** The search says once more what is said of every change. @param {Tools} tools @param {Search} search @returns {Piece<Answer>} */
function warnings(tools, search) {
  return piece(warningList(tools), (list, { answer }) => {
    const ofSearch = foundFor(search, answer)?.warnings ?? [];
    list.update([
      ...answer.warnings,
      ...ofSearch.filter(({ kind }) => answer.warnings.every((one) => one.kind !== kind)),
    ]);
  });
}

/** Every change on one scale. @param {Search} search @returns {Piece<Answer>} */
function dots(search) {
  const plot = dotPlot({ title: words("dotsTitle"), legend: html("span", {}, words("legend")) });
  return piece(plot, (_, { answer }) => {
    const { candidates, ranked } = answer;
    const chosen = new Set(foundFor(search, answer)?.best.candidates);
    const average = (/** @type {number | undefined} */ c) =>
      c === undefined ? "" : units.time(candidates[c].expected_s.value);
    const [first, last] = [ranked[0], ranked.at(-1)];
    plot.update({
      dots: ranked.map((c) => {
        const { candidate, expected_s, saves_s } = candidates[c];
        return {
          name: nameOf(candidate, c),
          average: expected_s.value,
          works: saves_s.value,
          sd: saves_s.sd,
          figure: units.time(expected_s.value),
          meaning: meaningOf(candidate),
          chosen: chosen.has(c),
        };
      }),
      axisName: words("dotsAxis"),
      format: units.time,
      desc:
        last === undefined
          ? ""
          : words("dotsDesc", {
              first: nameAt(answer, first),
              average: average(first),
              last: nameAt(answer, last),
              least: average(last),
            }),
    });
  });
}

/** @param {Tools} tools @param {Search} search @param {"money" | "hours_per_week"} of */
function budget(tools, search, of) {
  const chart = budgetChart(tools, of);
  // Money is what is short for most; on paper one curve is enough.
  if (of === "hours_per_week") chart.element.classList.add("no-print");
  return ofBest(search, chart, (_, { state, answer }, best) => chart.update(state, best, listed(answer)));
}

/** @param {Tools} tools */
function elsewhere({ go }) {
  const link = (/** @type {string} */ id) => {
    const button = html("button", { type: "button" }, questionName(id));
    button.addEventListener("click", () => go(id));
    return button;
  };
  const parts = words.parts("elsewhere", { position: link(ELSEWHERE[0]), leg: link(ELSEWHERE[1]) });
  return html("p", { class: "takes no-print" }, ...parts);
}

/** @param {Shell<Answer>} page */
function onPaper(page) {
  return listsOnPaper(() => {
    const shown = page.shown();
    return shown && { state: shown.state, candidates: listed(shown.answer) };
  });
}

/** @param {Tools} tools @param {Shell<Answer>} page @param {Search} search @param {{ list: ReturnType<typeof changeList>, events: ReturnType<typeof eventList> }} lists @returns {FoldPiece<Answer>[]} */
function foldsOf(tools, page, search, { list, events }) {
  const leftOutOf = (/** @type {Answer} */ answer) => foundFor(search, answer)?.leftOut ?? [];
  const bestOf = (/** @type {Answer} */ answer) => foundFor(search, answer)?.best;
  return [
    {
      id: "list",
      name: words("list"),
      gist: ({ answer }) => words("listGist", { count: answer.candidates.length }),
      body: () => list.element,
      onToggle: () => list.update(tools.store.get(), null),
    },
    { id: "events", name: words("events"), gist: words("eventsGist"), body: events.element },
    {
      id: "left-out",
      name: words("leftOut"),
      gist: ({ answer }) => words("leftOutGist", { count: leftOutOf(answer).length }),
      hidden: ({ answer }) => !leftOutOf(answer).length,
      body: passagePiece(({ answer }) => leftOutList(leftOutOf(answer), listed(answer))),
    },
    {
      id: "why",
      name: words("why"),
      gist: ({ answer }) => whyGist(bestOf(answer)),
      hidden: ({ answer }) => !bestOf(answer),
      body: passagePiece(({ answer }) => why(bestOf(answer))),
    },
    {
      id: "how",
      name: shared("howWorkedOut"),
      gist: words("howGist"),
      body: () => workedOut(listed(page.answer()).length),
    },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("tableGist"),
      body: piece(gainsTable(), (table, { state, answer }) => table.update(state, answer, foundFor(search, answer))),
    },
  ];
}

/** @param {State} state @param {number} amount */
function inMoney(state, amount) {
  const { currency: unit } = state.with[ID];
  return `${units.number(amount, { group: true })}${unit ? `\u00a0${unit}` : ""}`;
}

/** @param {number} amount */
const inHours = (amount) =>
  amount === 1
    ? words("hours", { count: 1 })
    : words("hoursText", { number: units.number(amount, { digits: 1, atLeast: 0 }), count: amount });

/** @param {number} amount */
const inHoursAWeek = (amount) =>
  words("hoursAWeekText", { number: units.number(amount, { digits: 1, atLeast: 0 }), count: amount });

/** A currency is a label: the rider types what they call theirs. @param {Tools} tools */
function currencyField({ store }) {
  const path = `${AT}.currency`;
  const input = html("input", {
    type: "text",
    id: uniqueId("currency"),
    maxlength: 12,
    autocomplete: "off",
    "aria-label": words("currencyLabel"),
    placeholder: words("currencyHint"),
  });
  input.addEventListener("input", () => store.set(path, input.value.trim(), { merge: path }));
  input.addEventListener("change", () => store.settle());
  return {
    element: html("span", { class: "num text" }, input),
    note: html("div"),
    /** @param {State} state */
    update({ with: { [ID]: own } }) {
      if (document.activeElement !== input) input.value = own.currency ?? "";
      input.style.setProperty("--ch", String(Math.max(3, input.value.length || input.placeholder.length)));
    },
  };
}
