// @ts-check
/** The page of "What does this fit do to my hip?". */

import { answer as answerPart } from "../../parts/answer.js";
import { folds } from "../../parts/folds.js";
import { html, say } from "../../parts/html.js";
import { ruler } from "../../parts/ruler.js";
import { sentence } from "../../parts/sentence.js";
import { table } from "../../parts/table.js";
import { book } from "../../words/index.js";
import { layOut } from "../shared/layout.js";
import { titleOf } from "../shared/names.js";
import { firstOrder } from "../shared/odds.js";
import { surerNote } from "../shared/surer.js";
import { warningList } from "../shared/warnings.js";
import { changesTable, keepTheHip } from "./changes.js";
import { ownLengths } from "./lengths.js";
import { setUps } from "./set-ups.js";
import { angle, crankAngle, LEVEL_DEG, millimetres, turning, words } from "./texts.js";
import { turnViews } from "./turn.js";
import { why, workedOut } from "./worked-out.js";

/** @import { Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Figure, LegRoomAnswer as Answer } from "../../types/core.d.ts" */

const shared = book("shared");
const ID = "leg-room";
const AT = `with.${ID}`;
const PRICE = "which-position";
/** A row of the table every so many degrees. */
const ROW_DEG = 15;
const STRAIGHT_DEG = 180;

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
export function create(host, tools) {
  const { store, units } = tools;
  /** @type {{ state: State, answer: Answer } | null} */
  let shown = null;
  const latest = () => shown?.answer ?? null;

  const setting = setUps(tools, AT, latest);
  const ask = sentence({ title: titleOf(ID), words: setting.words, onOpen: () => tools.openSheet() });

  const verdict = answerPart();
  const balance = ruler({
    left: { words: words("ruler.left"), mark: "hold", meaning: "hold" },
    right: { words: words("ruler.right"), mark: "hold", meaning: "hold" },
  });
  const results = table({ caption: "" });
  results.element.classList.add("compact");
  const sure = html("p", { class: "takes" });
  const doubts = warningList(tools);

  const turn = turnViews(tools);
  const keep = keepTheHip();
  const changes = changesTable();
  const lengths = ownLengths(tools, AT, latest);
  const surer = surerNote(tools, {
    open: (field) => (field === "with.stature_m" ? setting.focusStature() : lengths.focus(field)),
  });
  const knee = html("p", { class: "takes" });
  const price = html("p", { class: "takes no-print" });
  const openPrice = html("button", { type: "button" }, words("price.open"));
  openPrice.addEventListener("click", () => tools.go(PRICE));
  say(price, words.parts("price", { open: openPrice }));

  const reasons = html("div");
  const everywhere = table({ caption: "", thin: true });
  const foldList = folds([
    { id: "why", name: shared("why"), gist: words("why.gist"), body: reasons },
    { id: "lengths", name: words("lengths"), body: lengths.element },
    { id: "how", name: shared("howWorkedOut"), gist: words("how.gist"), body: () => workedOut(tools, store.get()) },
    { id: "table", name: shared("asTable"), gist: words("table.gist"), body: everywhere.element },
    ...tools.lastFolds(ID),
  ]);
  layOut(host, {
    ask: ask.element,
    answer: [verdict.element, balance.element, results.element, sure, doubts.element],
    picture: [...turn.elements, changes.element],
    notes: [
      ...keep.elements,
      knee,
      html("p", { class: "takes no-print" }, ...words.parts("takes")),
      price,
      surer.element,
      html("p", { class: "caution" }, ...words.parts("caution")),
    ],
    folds: foldList.element,
  });

  /** @param {State} state @param {Answer | null} answer @param {CoreError | null} error */
  function update(state, answer, error) {
    const wrong = error && withLimit(error, state);
    const told = setting.update(state, wrong);
    if (answer) shown = error && shown ? { state: { ...shown.state, units: state.units }, answer } : { state, answer };
    const alsoTold = lengths.update(state, wrong);
    ask.update({ known: lengths.known(), wrong: tools.trouble(wrong, told || alsoTold) });
    if (shown) redraw(shown);
  }

  /** Where the leg does not reach: the figures of the core's sentence, with the nearest saddle at which it would. @param {CoreError} error @param {State} state @returns {CoreError} */
  function withLimit(error, { units: shownUnits }) {
    const { kind, min, max, message } = error;
    const limit = kind === "impossible" ? (max ?? min) : undefined;
    if (limit === undefined) return error;
    const [from, to, missing, at] = message.match(/\d+/g) ?? [];
    const where = {
      from: `${from}°`,
      to: `${to}°`,
      at: `${at}°`,
      missing: `${missing}\u00a0mm`,
      limit: millimetres(limit, shownUnits),
    };
    return { ...error, message: words(max === undefined ? "wrong.too-near" : "wrong.too-far", where) };
  }

  /** @param {{ state: State, answer: Answer }} shown */
  function redraw({ state, answer }) {
    const settled = !host.querySelector("[data-dragging], [data-held]");
    drawVerdict(state, answer.difference.tightest_hip_deg, settled);
    drawResults(state, answer);
    doubts.update(answer.warnings);
    turn.update(state, answer, settled);
    keep.update(state, answer);
    changes.update(state, answer);
    const short = (/** @type {Figure} */ { value }) => angle(STRAIGHT_DEG - value, state.units, { digits: 0 });
    say(
      knee,
      words.parts("knee", {
        short: short(answer.a.straightest_knee_deg),
        short_new: short(answer.b.straightest_knee_deg),
      }),
    );
    surer.update(answer.surer, {
      sd: answer.difference.tightest_hip_deg.sd,
      plusMinus: (sd) => units.plusMinus("joint_angle", sd, state.units),
      of: "hip",
    });
    say(reasons, why(tools, state, answer));
    drawTable(state, answer);
    foldList.update({ lengths: { gist: lengths.gist() } });
  }

  /** @param {State} state @param {Figure} opens @param {boolean} settled */
  function drawVerdict(state, { value, sd }, settled) {
    const level = Math.abs(value) < LEVEL_DEG;
    const way = value < 0 ? "closes" : "opens";
    const figure = angle(Math.abs(value), state.units);
    const spread = sd > 0 ? units.spreadText("joint_angle", sd, state.units) : null;
    const certain = level
      ? { weight: /** @type {const} */ ("sure"), words: "" }
      : firstOrder(value, sd, (count) =>
          words(value < 0 ? "verdict.one-in-opens" : "verdict.one-in-closes", { count }),
        );
    const spoken = level
      ? words("verdict.spoken-level")
      : spread === null
        ? words(`verdict.spoken-exact-${way}`, { figure })
        : words(`verdict.spoken-${way}`, { figure, spread: `${spread}°` });
    verdict.update({
      mark: "hold",
      claim: words.parts(level ? "verdict.level" : `verdict.${way}`),
      figure,
      spread: spread === null ? null : `${spread}°`,
      odds: certain.words,
      weight: certain.weight,
      settled,
      spoken,
    });
    balance.update({
      value,
      sd,
      format: (deg) => angle(deg, state.units, { digits: Number.isInteger(deg) ? 0 : 1 }),
      ease: settled,
      spoken: words("ruler.spoken", { change: spoken }),
    });
  }

  /** @param {State} state @param {Answer} answer */
  function drawResults({ units: shownUnits }, { a, b, difference, lengths: { guessed } }) {
    const degrees = (/** @type {Figure} */ { value }) => angle(value, shownUnits);
    const more = (/** @type {Figure} */ { value }) => angle(value, shownUnits, { signed: true });
    results.update({
      caption: words("results.caption"),
      columns: [words("results.measure"), words("results.now"), words("results.new"), words("results.change")],
      rows: [
        [
          words("results.hip"),
          degrees(a.tightest_hip_deg),
          degrees(b.tightest_hip_deg),
          more(difference.tightest_hip_deg),
        ],
        [words("results.torso"), degrees(a.torso_deg), degrees(b.torso_deg), more(difference.torso_deg)],
        [
          words("results.knee-straight"),
          degrees(a.straightest_knee_deg),
          degrees(b.straightest_knee_deg),
          more(difference.straightest_knee_deg),
        ],
        [
          words("results.knee-bent"),
          degrees(a.most_bent_knee_deg),
          degrees(b.most_bent_knee_deg),
          more(difference.most_bent_knee_deg),
        ],
        [
          words("results.thigh"),
          turning(a.fastest_thigh_deg_s.value, shownUnits),
          turning(b.fastest_thigh_deg_s.value, shownUnits),
          turning(difference.fastest_thigh_deg_s.value, shownUnits, { signed: true }),
        ],
      ],
    });
    sure.hidden = b.tightest_hip_deg.sd === 0;
    say(
      sure,
      words(guessed.length ? "results.sure-guessed" : "results.sure-typed", {
        hip: units.plusMinus("joint_angle", b.tightest_hip_deg.sd, shownUnits),
        knee: units.plusMinus("joint_angle", b.straightest_knee_deg.sd, shownUnits),
      }),
    );
  }

  /** @param {State} state @param {Answer} answer */
  function drawTable(state, { columns }) {
    const every = Array.from(columns.crank_deg.keys()).filter(
      (index) => index % ROW_DEG === 0 && index < columns.crank_deg.length - 1,
    );
    const one = (/** @type {number} */ value) => units.number(value, { digits: 1 });
    const whole = (/** @type {number} */ value) => units.number(value, { digits: 0 });
    everywhere.update({
      caption: words("table.caption"),
      columns: [
        words("table.crank"),
        words("table.hip_a"),
        words("table.hip_b"),
        words("table.knee_a"),
        words("table.knee_b"),
        words("table.thigh_a"),
        words("table.thigh_b"),
      ],
      rows: every.map((i) => [
        crankAngle(columns.crank_deg[i], state.units),
        one(columns.a_hip_deg[i]),
        one(columns.b_hip_deg[i]),
        one(columns.a_knee_deg[i]),
        one(columns.b_knee_deg[i]),
        whole(columns.a_thigh_deg_s[i]),
        whole(columns.b_thigh_deg_s[i]),
      ]),
    });
  }

  return {
    update,
    destroy() {
      turn.destroy();
      changes.destroy();
      results.destroy();
      everywhere.destroy();
      verdict.destroy();
      balance.destroy();
    },
  };
}
