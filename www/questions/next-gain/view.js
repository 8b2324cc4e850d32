// @ts-check
/** What to work on next: the budget in a sentence, the best set, every change on one scale, and what a budget buys. */

import { answer as answerPart } from "../../parts/answer.js";
import { folds } from "../../parts/folds.js";
import { html, say, set, strong, uniqueId } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import { sentence } from "../../parts/sentence.js";
import { book } from "../../words/index.js";
import { clause } from "../shared/clause.js";
import { layOut } from "../shared/layout.js";
import { listOf } from "../shared/list.js";
import { nameOf as questionName, titleOf } from "../shared/names.js";
import { odds } from "../shared/odds.js";
import { requestOf } from "../shared/request.js";
import { stopButton } from "../shared/stop-button.js";
import { warningList } from "../shared/warnings.js";
import { budgetChart } from "./budget.js";
import { meaningOf, nameOf } from "./candidates.js";
import { dotPlot } from "./dots.js";
import { eventList } from "./events.js";
import { changeList } from "./list.js";
import { bestSet } from "./search.js";
import { gainsTable, leftOutList, why, whyGist, workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { BestSet, NextGainAnswer as Answer, NextStep } from "../../types/core.d.ts" */

const words = book("next-gain");
const shared = book("shared");
const ID = "next-gain";
const AT = `with.${ID}`;
/** Questions that say more of a position than its size. */
const ELSEWHERE = ["which-position", "leg-room"];
/** So many changes are named in the claim; the rest is counted. */
const NAMED = 2;
/** A search that is done sooner is not worth a word, ms. */
const PATIENCE_MS = 350;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  const { units } = tools;
  const money = tools.number({ path: `${AT}.money`, kind: "ratio", digits: 0, step: 10, label: words("moneyLabel") });
  const hours = tools.number({ path: `${AT}.hours_per_week`, kind: "ratio", step: 0.5, label: words("hoursLabel") });
  const weeks = tools.number({ path: `${AT}.weeks`, kind: "ratio", digits: 0, step: 1, label: words("weeksLabel") });
  const currency = currencyField(tools);
  const counted = html("span");
  const ask = sentence({
    title: titleOf(ID),
    words: words.parts("ask", {
      money,
      currency,
      hours: clause(hours, ` ${words("hoursUnit")}`),
      weeks: clause(weeks, ` ${words("weeksUnit")}`),
      events: { element: counted, note: html("div") },
    }),
    onOpen: () => tools.openSheet(),
  });

  const verdict = answerPart();
  const taken = lines({
    caption: words("inTheSet"),
    headings: [words("change"), words("onAverage"), words("ifItWorks")],
  });
  const working = html("p", { class: "also", hidden: true });
  const search = bestSet(tools, redraw);
  const stop = stopButton(search, { stop: words("stop"), resume: words("goOn") });
  const total = html("p", { class: "also" });
  const nextMoney = html("p", { class: "takes no-print" });
  const nextHours = html("p", { class: "takes no-print" });
  const doubts = warningList(tools);
  const dots = dotPlot({ title: words("dotsTitle"), legend: html("span", {}, words("legend")) });
  const byMoney = budgetChart(tools, "money");
  const byHours = budgetChart(tools, "hours_per_week");
  // Money is what is short for most; on paper one curve is enough.
  byHours.element.classList.add("no-print");
  const elsewhere = html("p", { class: "takes no-print" });
  const caution = html("p", { class: "caution" }, ...words.parts("caution"));

  const list = changeList(tools, () => shown?.answer.candidates.map((gain) => gain.candidate) ?? []);
  const events = eventList(tools);
  const reasons = html("div");
  const leftOut = html("div");
  const table = gainsTable(tools);
  const foldList = folds([
    { id: "list", name: words("list"), body: () => list.element, onToggle: () => redraw() },
    { id: "events", name: words("events"), gist: words("eventsGist"), body: events.element },
    { id: "left-out", name: words("leftOut"), body: leftOut },
    { id: "why", name: words("why"), body: reasons },
    {
      id: "how",
      name: shared("howWorkedOut"),
      gist: words("howGist"),
      body: () => workedOut(tools, shown?.answer.candidates.length ?? 0),
    },
    { id: "table", name: shared("asTable"), gist: words("tableGist"), body: table.element },
    ...tools.lastFolds(ID),
  ]);
  /** @type {() => void} */
  let tellAnswered = () => {};
  /** @type {Promise<void>} */
  const answered = new Promise((resolve) => {
    tellAnswered = resolve;
  });
  layOut(host, {
    ask: ask.element,
    answer: [verdict.element, working, taken.element, total, nextMoney, nextHours, doubts.element],
    picture: [dots.element, byMoney.element, byHours.element],
    notes: [elsewhere, caution],
    folds: foldList.element,
  });
  say(elsewhere, words.parts("elsewhere", { position: link(ELSEWHERE[0]), leg: link(ELSEWHERE[1]) }));

  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let waiting;
  let waited = false;

  /** @param {string} id */
  function link(id) {
    const button = html("button", { type: "button" }, questionName(id));
    button.addEventListener("click", () => tools.go(id));
    return button;
  }

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    if (answer) shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
    const told = [money, hours, weeks, list, events].map((part) => part.update(state, error)).includes(true);
    currency.update(state);
    say(counted, words("myEvents", { count: state.scenario.events.length }));
    ask.update({ known: tools.known(state), wrong: tools.trouble(error, told) });
    if (!answer) return;
    if (!error) search.update(requestOf(question, state));
    redraw();
  }

  function redraw() {
    if (!shown) return;
    const { state, answer } = shown;
    const { candidates, ranked } = answer;
    const found = search.value();
    // A set found for another list says nothing about this one.
    const fits =
      found &&
      found.best.candidates.length + found.leftOut.length === candidates.length &&
      found.best.by_event_s.length === answer.events.length;
    const best = fits ? found.best : null;
    drawWorking();
    for (const element of [taken.element, total, nextMoney, nextHours, byMoney.element, byHours.element])
      element.hidden = !best;
    if (best) drawBest(state, answer, best);
    const chosen = new Set(best?.candidates);
    dots.update({
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
      desc: ranked.length
        ? words("dotsDesc", {
            first: nameAt(ranked[0]),
            average: units.time(candidates[ranked[0]].expected_s.value),
            last: nameAt(ranked[ranked.length - 1]),
            least: units.time(candidates[ranked[ranked.length - 1]].expected_s.value),
          })
        : "",
    });
    list.update(state, null);
    // The search says once more what is said of every change.
    const ofSearch = fits ? found.warnings.filter(({ kind }) => answer.warnings.every((one) => one.kind !== kind)) : [];
    doubts.update([...answer.warnings, ...ofSearch]);
    table.update(state, answer, fits ? found : null);
    const left = fits ? found.leftOut : [];
    foldList.update({
      list: { gist: words("listGist", { count: candidates.length }) },
      "left-out": { hidden: !left.length, gist: words("leftOutGist", { count: left.length }) },
      why: { hidden: !best, ...(best && { gist: whyGist(tools, best) }) },
    });
    say(
      leftOut,
      leftOutList(
        left,
        candidates.map(({ candidate }) => candidate),
      ),
    );
    if (best) say(reasons, why(tools, best));
    if (best || !search.isBusy()) tellAnswered();
  }

  /** @param {number} c */
  const nameAt = (c) => (shown ? nameOf(shown.answer.candidates[c].candidate, c) : "");

  function drawWorking() {
    const stopped = search.state() === "stopped";
    set(working, { "data-searching": search.isBusy() });
    if (!search.isBusy()) {
      clearTimeout(waiting);
      [waiting, waited] = [undefined, false];
    } else {
      waiting ??= setTimeout(() => {
        waited = true;
        drawWorking();
      }, PATIENCE_MS);
    }
    working.hidden = !(waited || stopped);
    if (working.hidden) return;
    stop.update();
    const share = search.share();
    const now = share ? words("searching", { share: units.percent(share) }) : words("waiting");
    say(working, [stopped ? words("stopped") : now, " ", stop.element]);
  }

  /** @param {State} state @param {Answer} answer @param {BestSet} best */
  function drawBest(state, answer, best) {
    const settled = !host.querySelector("[data-dragging], [data-held]");
    const mostFirst = answer.ranked.filter((c) => best.candidates.includes(c));
    const named = mostFirst.slice(0, mostFirst.length > NAMED + 1 ? NAMED : NAMED + 1).map(nameAt);
    const rest = mostFirst.length - named.length;
    const names = listOf(rest ? [...named, words("more", { count: rest })] : named);
    const { short, figure } = units.difference(Math.round(best.expected_s.value) || best.expected_s.value);
    const spread = units.plusMinusTime(best.expected_s.sd).replace(/^±\s*/, "");
    const { weight, words: sure } = odds(best.expected_s, null);
    const none = best.candidates.length === 0;
    verdict.update({
      mark: none ? null : meaningOf(answer.candidates[mostFirst[0]].candidate),
      claim: none ? words("nothing") : words.parts("claim", { names, count: answer.events.length }),
      figure: none ? "0:00" : short,
      spread: none ? null : spread,
      odds: none ? "" : sure,
      weight,
      settled,
      spoken: none ? words("spokenNothing") : words("spoken", { names, figure, spread }),
    });
    taken.update(
      mostFirst.map((c) => {
        const { candidate, expected_s, saves_s } = answer.candidates[c];
        return {
          mark: meaningOf(candidate),
          name: nameOf(candidate, c),
          value: strong(units.time(expected_s.value)),
          difference: words("ifWorks", { figure: units.time(saves_s.value) }),
          soft: true,
        };
      }),
    );
    say(
      total,
      none
        ? ""
        : words.parts("takes", {
            money: inMoney(state, best.money),
            hours: inHours(best.hours),
            weekly: inHoursAWeek(best.hours_per_week),
            all: units.time(best.all_work_s.value),
            average: units.time(best.expected_s.value),
            low: units.differenceWords(best.range_95_s[0]),
            high: units.differenceWords(best.range_95_s[1]),
          }),
    );
    say(
      nextMoney,
      next(best.next_money, best, "nextNoMoney", (more) => inMoney(state, more)),
    );
    say(nextHours, next(best.next_hours, best, "nextNoHours", inHoursAWeek));
    const listed = answer.candidates.map(({ candidate }) => candidate);
    byMoney.update(state, best, listed);
    byHours.update(state, best, listed);
  }

  /** @param {NextStep | null} step @param {BestSet} best @param {"nextNoMoney" | "nextNoHours"} none @param {(more: number) => string} inWords */
  function next(step, best, none, inWords) {
    if (!step) return words(none);
    const namesOf = (/** @type {number[]} */ all, /** @type {number[]} */ but) =>
      listOf(all.filter((c) => !but.includes(c)).map(nameAt));
    const left = namesOf(best.candidates, step.candidates);
    return words.parts(left ? "nextSwaps" : "nextAdds", {
      more: inWords(step.more),
      added: namesOf(step.candidates, best.candidates),
      left,
      gain: units.difference(step.gains_s).figure,
    });
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
      : words("hoursText", { number: units.number(amount, { digits: 1, atLeast: 0 }) });

  /** @param {number} amount */
  const inHoursAWeek = (amount) => words("hoursAWeekText", { number: units.number(amount, { digits: 1, atLeast: 0 }) });

  return {
    update,
    answered,
    destroy() {
      clearTimeout(waiting);
      search.destroy();
      verdict.destroy();
      dots.destroy();
      byMoney.destroy();
      byHours.destroy();
      table.destroy();
    },
  };
}

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
