// @ts-check
/** More power, or less drag: the sentence, the answer, the map, and what each takes. */

import { answer as answerPart } from "../../parts/answer.js";
import { strong } from "../../parts/html.js";
import { lines } from "../../parts/lines.js";
import * as units from "../../units.js";
import { book } from "../../words/index.js";
import { savingsThatAddUp } from "../shared/adding-up.js";
import { caution } from "../shared/caution.js";
import { courseChoice } from "../shared/course-choice.js";
import { differenceRuler, differs } from "../shared/difference.js";
import { distanceChoice } from "../shared/distance-choice.js";
import { furtherFigure, rideName } from "../shared/distance-names.js";
import { draws } from "../shared/draws.js";
import { effortChoice } from "../shared/effort-choice.js";
import { odds, spokenAnswer } from "../shared/odds.js";
import { shortPercent } from "../shared/published.js";
import { paragraphPiece, passagePiece, piece, questionShell } from "../shared/shell.js";
import { surerNote } from "../shared/surer.js";
import { doubts } from "../shared/warnings.js";
import { weather } from "../shared/weather.js";
import { exchangeTable } from "./exchange.js";
import { tradeMap } from "./map.js";
import { takesGist, takesInBrief, takesInFull } from "./takes.js";
import { timesTable } from "./times.js";
import { why, whyGist } from "./why.js";

/** @import { Question, Tools, View } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { FoldPiece, Piece, Shell, Shown } from "../shared/shell.js" */
/** @typedef {ReturnType<typeof draws>} Draws */
/** @import { Figure, PowerOrDragAnswer as Answer } from "../../types/core.d.ts" */

const words = book("power-or-drag");
const shared = book("shared");
const ID = "power-or-drag";
const AT = `with.${ID}`;

/** @param {HTMLElement} host @param {Tools} tools @param {Question} question @returns {View} */
export function create(host, tools, question) {
  /** @type {Shell<Answer>} */
  const page = questionShell(host, tools, question);
  const drawn = draws(tools, ID, page.redraw);
  return page.show({
    ...asked(tools, page),
    answer: [
      verdict(drawn),
      paragraphPiece("demands", demands),
      paragraphPiece("also", inFixedTime),
      balance(drawn),
      threeTimes(),
      doubts(tools),
    ],
    picture: [
      piece(tradeMap(tools, AT, page.answer), (map, { state, answer, settled }) =>
        map.update(state, answer, { saved: savingsOf(answer), settled, ...changesOf(state) }),
      ),
      piece(takesInBrief(), (takes, { state, answer }) =>
        takes.update(state, answer, Math.round(answer.base_time_s.value) - savingsOf(answer).first_s),
      ),
    ],
    notes: [
      paragraphPiece("also", worth),
      piece(surerNote(tools), (surer, { answer }) =>
        surer.update(answer.surer, {
          sd: answer.difference_s.sd,
          plusMinus: units.plusMinusTime,
          of: "difference",
        }),
      ),
      caution(words.parts("caution")),
    ],
    folds: foldsOf(tools, page),
    work: drawn,
  });
}

/** What both changes come to where the course goes by time. @param {Shown<Answer>} shown */
function inFixedTime({ state, answer: { distance_m, in_fixed_time: inside } }) {
  if (!inside) return "";
  return words("inFixedTime", {
    ride: rideName({ distance_m, duration_s: inside.duration_s }, state.units),
    power: furtherFigure(inside.more_power_further_m, state.units),
    drag: furtherFigure(inside.less_drag_further_m, state.units),
  });
}

/** The sentence. @param {Tools} tools @param {Shell<Answer>} page */
function asked(tools, page) {
  const suggest = () => ({ power_w: Math.round(page.answer()?.base_power_w ?? 235) });
  const fields = {
    distance: distanceChoice(tools),
    course: courseChoice(tools),
    effort: effortChoice(tools, { at: `${AT}.effort`, suggest }),
    cda: tools.number({
      path: ({ scenario }) => `scenario.positions[${scenario.riding_position}].cda_m2`,
      meaning: "drag",
    }),
    day: weather(tools),
    power: tools.number({ path: `${AT}.power_change`, meaning: "power", label: words("morePowerBy"), min: 0 }),
    drag: tools.number({
      path: `${AT}.cda_change`,
      meaning: "drag",
      label: words("lessDragBy"),
      negative: true,
      max: 0,
    }),
  };
  return { words: () => words.parts("ask", fields), fields: Object.values(fields) };
}

/** @param {Tools} tools @param {Shell<Answer>} page @returns {FoldPiece<Answer>[]} */
function foldsOf(tools, page) {
  const exchange = exchangeTable();
  return [
    {
      id: "why",
      name: shared("why"),
      gist: ({ answer }) => whyGist(answer),
      body: passagePiece(({ state, answer }) => why(answer, state.with[ID].power_change, state.with[ID].cda_change)),
    },
    {
      id: "takes",
      name: words("takes"),
      gist: ({ answer }) => takesGist(answer),
      body: piece(takesInFull(tools), (takes, { state, answer }) => takes.update(state, answer)),
    },
    {
      id: "exchange",
      name: words("exchange"),
      gist: ({ state, answer }) => exchange.gist(state, answer),
      body: piece(exchange, (table, { state, answer }) => table.update(state, answer)),
    },
    {
      id: "how",
      name: shared("howWorkedOut"),
      gist: words("howGist"),
      body: async () => (await import("./worked-out.js")).workedOut(),
    },
    {
      id: "table",
      name: shared("asTable"),
      gist: words("timesGist"),
      body: piece(timesTable(tools, ID), (times, { state, answer }) =>
        times.update(times.element.closest("details")?.open ? state : null, answer),
      ),
      onToggle: page.redraw,
    },
  ];
}

/** @param {Answer} answer */
const savingsOf = ({ difference_s, more_power_saves_s, less_drag_saves_s }) =>
  savingsThatAddUp(difference_s.value, more_power_saves_s.value, less_drag_saves_s.value);

/** Both changes in words. @param {State} state */
function changesOf({ with: { [ID]: own } }) {
  return {
    morePower: words("powerChange", { percent: shortPercent(own.power_change) }),
    lessDrag: words("dragChange", { percent: shortPercent(-own.cda_change) }),
  };
}

/** What the one is ahead of the other, as what the other is ahead of the one. @param {Figure} difference @returns {Figure} */
const opposite = ({ value, sd, low_95, high_95, chance_positive }) => ({
  value: -value,
  sd,
  low_95: -high_95,
  high_95: -low_95,
  chance_positive: 1 - chance_positive,
});

/** The difference as it is told. @param {Answer} answer */
function toldOf(answer) {
  const { difference_s } = answer;
  const { way, short, figure } = units.difference(savingsOf(answer).difference_s || difference_s.value);
  const spread = units.plusMinusTime(difference_s.sd).replace(/^±\s*/, "");
  return { level: way === "level", short, figure, spread, powerAhead: difference_s.value >= 0 };
}

/** @param {Draws} drawn @returns {Piece<Answer>} */
function verdict(drawn) {
  return piece(answerPart(), (part, { answer, settled }) => {
    const { difference_s } = answer;
    const { level, short, figure, spread, powerAhead } = toldOf(answer);
    const taken = drawn.value();
    const meaning = powerAhead ? "power" : "drag";
    const chances = odds(
      powerAhead ? difference_s : opposite(difference_s),
      taken && !powerAhead ? { ...taken, share_positive: 1 - taken.share_positive } : taken,
    );
    const ahead = powerAhead
      ? words.parts("powerIsFaster", { power: strong(words("morePowerFirst"), meaning) })
      : words.parts("dragIsFaster", { drag: strong(words("lessDragFirst"), meaning) });
    part.update({
      mark: level ? null : meaning,
      claim: level ? words("twoAreLevel") : ahead,
      figure: short,
      spread: difference_s.sd > 0 ? spread : null,
      odds: chances.words,
      weight: chances.weight,
      settled,
      spoken: level
        ? words("spokenLevel")
        : spokenAnswer(words(powerAhead ? "spokenPower" : "spokenDrag", { figure, spread }), chances.words),
    });
  });
}

/** @param {Draws} drawn @returns {Piece<Answer>} */
function balance(drawn) {
  const ends = /** @type {const} */ ({
    left: { words: words("lessDrag"), mark: "drag", meaning: "drag" },
    right: { words: words("morePower"), mark: "power", meaning: "power" },
  });
  return differenceRuler(ends, drawn, (/** @type {Answer} */ answer) => {
    const { figure, spread, powerAhead } = toldOf(answer);
    return words(powerAhead ? "rulerPower" : "rulerDrag", { figure, spread });
  });
}

/** What each of the two asks of the rider. @param {Shown<Answer>} shown */
function demands({ state, answer }) {
  const { more_power_w, base_power_w, base_cda_m2, less_drag_cda_m2 } = answer;
  return words.parts("demands", {
    power: strong(units.quantity("power", more_power_w - base_power_w, state.units, { digits: 0 }), "power"),
    area: strong(units.quantity("area", base_cda_m2 - less_drag_cda_m2, state.units), "drag"),
  });
}

/** @returns {Piece<Answer>} */
function threeTimes() {
  return piece(lines({ caption: words("threeTimes") }), (results, { state, answer }) => {
    const saved = savingsOf(answer);
    const base_s = Math.round(answer.base_time_s.value);
    results.update([
      {
        mark: "you",
        name: words("asYouAre"),
        value: units.time(base_s),
        difference: units.plusMinusTime(answer.base_time_s.sd),
        soft: true,
      },
      {
        mark: "power",
        name: units.quantity("power", answer.more_power_w, state.units, { digits: 0 }),
        value: units.time(base_s - saved.first_s),
        difference: differs(saved.first_s),
      },
      {
        mark: "drag",
        name: units.quantity("area", answer.less_drag_cda_m2, state.units),
        value: units.time(base_s - saved.second_s),
        difference: differs(saved.second_s),
      },
    ]);
  });
}

/** @param {Shown<Answer>} shown */
function worth({ state, answer }) {
  const { exchange: rates, equal_power_change, base_power_w, aero_share, tie_aero_share } = answer;
  const { cda_change } = state.with[ID];
  const watts = (/** @type {number} */ value) =>
    strong(units.quantity("power", value, state.units, { digits: value < 10 ? 1 : 0 }));
  const more = equal_power_change && cda_change < 0 ? equal_power_change.value * base_power_w : null;
  return [
    ...(more === null
      ? words.parts("onePercent", { watts: watts(rates.w_per_cda_percent) })
      : words.parts("onePercentAnd", {
          watts: watts(rates.w_per_cda_percent),
          percent: shortPercent(-cda_change),
          more: watts(more),
        })),
    " ",
    // Down a hill the air takes more than the rider gives.
    ...words.parts(aero_share <= 1 ? "airTakes" : "airTakesAll", { share: strong(units.percent(aero_share)) }),
    " ",
    ...(tie_aero_share ? words.parts("tiesAt", { tie: units.percent(tie_aero_share) }) : [words("neverTies")]),
  ];
}
