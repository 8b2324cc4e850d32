// @ts-check
/** The page of "What does this fit do to my hip?". */

import { answer as answerPart } from "../../parts/answer.js";
import { html, say } from "../../parts/html.js";
import { ruler } from "../../parts/ruler.js";
import { table } from "../../parts/table.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { caution } from "../shared/caution.js";
import { firstOrder } from "../shared/odds.js";
import { paragraphPiece, passagePiece, piece, questionShell } from "../shared/shell.js";
import { surerNote } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { changesTable, keepTheHip } from "./changes.js";
import { ownLengths } from "./lengths.js";
import { setUps } from "./set-ups.js";
import { angle, crankAngle, LEVEL_DEG, turning, words } from "./texts.js";
import { turnViews } from "./turn.js";
import { why, workedOut } from "./worked-out.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @import { Figure, LegRoomAnswer as Answer } from "../../types/core.d.ts" */

const shared = book("shared");
const ID = "leg-room";
const AT = `with.${ID}`;
const PRICE = "which-position";
/** A row of the table every so many degrees. */
const ROW_DEG = 15;
const STRAIGHT_DEG = 180;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const setting = setUps(tools, AT, page.answer);
  const lengths = ownLengths(tools, AT, page.answer, setting.pedalling);
  const keep = keepTheHip();
  return page.show({
    words: () => setting.words,
    fields: [setting, lengths],
    known: lengths.known,
    answer: [verdict(), balance(), results(), certainty(), doubts(tools)],
    picture: [
      piece(turnViews(), (turn, { state, answer, settled }) => turn.update(state, answer, settled)),
      piece(changesTable(), (changes, { state, answer }) => changes.update(state, answer)),
    ],
    notes: [
      piece(keep, (_, { state, answer }) => keep.update(state, answer)),
      paragraphPiece("takes", knee),
      { element: html("p", { class: "takes no-print" }, ...words.parts("takes")) },
      { element: price(tools) },
      surer(tools, (field) => (field === "with.stature_m" ? setting.focusStature() : lengths.focus(field))),
      caution(words.parts("caution")),
    ],
    folds: foldsOf(tools, lengths),
  });
}

/** @param {Tools} tools */
function price({ go }) {
  const open = html("button", { type: "button" }, words("price.open"));
  open.addEventListener("click", () => go(PRICE));
  return html("p", { class: "takes no-print" }, ...words.parts("price", { open }));
}

/** @param {Tools} tools @param {(field: string) => boolean} open @returns {Piece<Answer>} */
function surer(tools, open) {
  const note = surerNote(tools, { open });
  return piece(note, (_, { state, answer }) =>
    note.update(answer.surer, {
      sd: answer.difference.tightest_hip_deg.sd,
      plusMinus: (sd) => units.plusMinus("joint_angle", sd, state.units),
      of: "hip",
    }),
  );
}

/** How straight the knees come. @param {Shown<Answer>} shown */
function knee({ state, answer }) {
  const short = (/** @type {Figure} */ { value }) => angle(STRAIGHT_DEG - value, state.units, { digits: 0 });
  return words.parts("knee", {
    short: short(answer.a.straightest_knee_deg),
    short_new: short(answer.b.straightest_knee_deg),
  });
}

/** The change of the hip as it is told. @param {Shown<Answer>} shown */
function toldOf({ state, answer }) {
  const change = answer.difference.tightest_hip_deg;
  const { value, sd } = change;
  const level = Math.abs(value) < LEVEL_DEG;
  const way = value < 0 ? /** @type {const} */ ("closes") : /** @type {const} */ ("opens");
  const figure = angle(Math.abs(value), state.units);
  const spread = sd > 0 ? `${units.spreadText("joint_angle", sd, state.units)}°` : null;
  const spoken = level
    ? words("verdict.spoken.level")
    : spread === null
      ? words(`verdict.spokenExact.${way}`, { figure })
      : words(`verdict.spoken.${way}`, { figure, spread });
  return { change, level, way, figure, spread, spoken };
}

/** @returns {Piece<Answer>} */
function verdict() {
  return piece(answerPart(), (part, shown) => {
    const { change, level, way, figure, spread, spoken } = toldOf(shown);
    const certain = level
      ? { weight: /** @type {const} */ ("sure"), words: "" }
      : firstOrder(change, (count) =>
          words(change.value < 0 ? "verdict.oneInOpens" : "verdict.oneInCloses", { count }),
        );
    part.update({
      mark: "hold",
      claim: words.parts(level ? "verdict.level" : `verdict.${way}`),
      figure,
      spread,
      odds: certain.words,
      weight: certain.weight,
      settled: shown.settled,
      spoken,
    });
  });
}

/** @returns {Piece<Answer>} */
function balance() {
  const part = ruler({
    left: { words: words("ruler.left"), mark: "hold", meaning: "hold" },
    right: { words: words("ruler.right"), mark: "hold", meaning: "hold" },
  });
  return piece(part, (_, shown) => {
    const { change, spoken } = toldOf(shown);
    part.update({
      difference: change,
      format: (deg) => angle(deg, shown.state.units, { digits: Number.isInteger(deg) ? 0 : 1 }),
      ease: shown.settled,
      spoken: words("ruler.spoken", { change: spoken }),
    });
  });
}

/** Both set-ups in figures. @returns {Piece<Answer>} */
function results() {
  const part = table({ caption: "" });
  part.element.classList.add("compact");
  return piece(part, (_, { state: { units: shown }, answer: { a, b, difference } }) => {
    const degrees = (/** @type {Figure} */ { value }) => angle(value, shown);
    const more = (/** @type {Figure} */ { value }) => angle(value, shown, { signed: true });
    const angles = /** @type {const} */ ([
      ["results.hip", "tightest_hip_deg"],
      ["results.torso", "torso_deg"],
      ["results.kneeStraight", "straightest_knee_deg"],
      ["results.kneeBent", "most_bent_knee_deg"],
    ]);
    part.update({
      caption: words("results.caption"),
      columns: [words("results.measure"), words("results.now"), words("results.new"), words("results.change")],
      rows: [
        ...angles.map(([name, key]) => [words(name), degrees(a[key]), degrees(b[key]), more(difference[key])]),
        [
          words("results.thigh"),
          turning(a.fastest_thigh_deg_s.value, shown),
          turning(b.fastest_thigh_deg_s.value, shown),
          turning(difference.fastest_thigh_deg_s.value, shown, { signed: true }),
        ],
      ],
    });
  });
}

/** How well the angles are known. @returns {Piece<Answer>} */
function certainty() {
  return piece({ element: html("p", { class: "takes" }) }, ({ element }, { state, answer: { b, lengths } }) => {
    const plusMinus = (/** @type {Figure} */ { sd }) => units.plusMinus("joint_angle", sd, state.units);
    element.hidden = b.tightest_hip_deg.sd === 0;
    say(
      element,
      words(lengths.guessed.length ? "results.sureGuessed" : "results.sureTyped", {
        hip: plusMinus(b.tightest_hip_deg),
        knee: plusMinus(b.straightest_knee_deg),
      }),
    );
  });
}

/** @param {Tools} tools @param {ReturnType<typeof ownLengths>} lengths @returns {FoldPiece<Answer>[]} */
function foldsOf(tools, lengths) {
  return [
    {
      id: "why",
      name: shared("why"),
      gist: words("why.gist"),
      body: passagePiece(({ state, answer }) => why(state, answer)),
    },
    { id: "lengths", name: words("lengths"), gist: () => lengths.gist(), body: lengths.element },
    {
      id: "how",
      name: shared("howWorkedOut"),
      gist: words("how.gist"),
      body: () => workedOut(tools, tools.store.get()),
    },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("table.gist"),
      body: piece(table({ caption: "", thin: true }), (turn, shown) => turn.update(turnTable(shown))),
    },
  ];
}

/** One turn of the crank. @param {Shown<Answer>} shown */
function turnTable({ state, answer: { columns } }) {
  const every = Array.from(columns.crank_deg.keys()).filter(
    (index) => index % ROW_DEG === 0 && index < columns.crank_deg.length - 1,
  );
  const one = (/** @type {number} */ value) => units.number(value, { digits: 1 });
  const whole = (/** @type {number} */ value) => units.number(value, { digits: 0 });
  return {
    caption: words("table.caption"),
    columns: [
      words("table.crank"),
      words("table.hipA"),
      words("table.hipB"),
      words("table.kneeA"),
      words("table.kneeB"),
      words("table.thighA"),
      words("table.thighB"),
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
  };
}
