// @ts-check
/** The answer: which position has less drag and by how much, or one position's drag area, or how many runs a test takes. */

import { answer as answerPart } from "../../parts/answer.js";
import { strong } from "../../parts/html.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { firstOrder, spokenAnswer } from "../shared/odds.js";
import { piece } from "../shared/shell.js";
import { contest } from "./contest.js";
import { area, areaDigits } from "./digits.js";
import { positionName } from "./names.js";

/** @import { Piece, Shown } from "../shared/shell.js" */
/** @import { DragTestAnswer as Answer } from "../../types/core.d.ts" */
/** @typedef {Omit<import("../../parts/answer.js").Answer, "settled" | "spoken">} Said */

const words = book("drag-test");
/** Chances are told by the hundred. */
const ALL = 100;

/** @returns {Piece<Answer>} */
export function verdict() {
  return piece(answerPart(), (part, shown) => {
    const { said, claim } = shown.answer.positions.length
      ? (difference(shown) ?? single(shown))
      : shown.answer.laps.length
        ? noneUsable()
        : planned(shown);
    part.update({ ...said, settled: shown.settled, spoken: spokenAnswer(claim, said.odds ?? "") });
  });
}

/** @returns {{ said: Said, claim: string }} */
function noneUsable() {
  const claim = words("noneUsable");
  return { said: { mark: "drag", claim, figure: words("none"), weight: "open" }, claim };
}

/** @param {Shown<Answer>} shown @returns {{ said: Said, claim: string }} */
function planned({ state, answer: { plan } }) {
  const { difference_share, power } = state.with["drag-test"].plan;
  const values = { difference: show.percent(difference_share, 1), count: Math.round(power * ALL), all: ALL };
  const runs = plan?.runs_per_position ?? null;
  if (runs === null)
    return {
      said: { mark: "drag", claim: words("planNone", values), figure: words("tooMany"), weight: "open" },
      claim: words("planNone", values),
    };
  return {
    said: {
      mark: "drag",
      claim: words.parts("planClaim", { ...values, difference: strong(values.difference, "drag") }),
      figure: show.number(runs),
      unit: words("runsEach"),
      odds: words("planOdds", values),
      weight: "sure",
    },
    claim: words("planSpoken", { ...values, runs }),
  };
}

/** @param {Shown<Answer>} shown @returns {{ said: Said, claim: string } | null} */
function difference({ state, answer }) {
  const found = contest(answer);
  if (!found) return null;
  const { value, sd, chance_positive } = found.more;
  const names = { low: positionName(state, found.low), next: positionName(state, found.next) };
  const sure =
    sd === null || chance_positive === null
      ? { weight: /** @type {const} */ ("open"), words: words("noSpare") }
      : firstOrder({ value, sd, chance_positive }, (count, likelier) =>
          words("otherWay", { count, likelier, all: ALL }),
        );
  const figure = show.number(value, { digits: areaDigits(sd) });
  const isLevel = show.round(value, areaDigits(sd)) === 0;
  return {
    said: {
      mark: "drag",
      claim: words.parts(isLevel ? "claimLevel" : "claim", { ...names, low: strong(names.low, "drag") }),
      figure,
      unit: show.unitOf("area", state.units).symbol,
      spread: sd === null ? null : show.spreadText("area", sd, state.units),
      odds: sure.words,
      weight: sure.weight,
    },
    claim: words(isLevel ? "claimLevel" : "spoken", { ...names, figure: area(value, sd, state.units) }),
  };
}

/** @param {Shown<Answer>} shown @returns {{ said: Said, claim: string }} */
function single({ state, answer: { positions } }) {
  const [{ position, cda_m2 }] = positions;
  const name = positionName(state, position);
  const { value, sd, low_95, high_95 } = cda_m2;
  const figure = show.number(value, { digits: areaDigits(sd) });
  const between = (/** @type {number} */ m2) => show.number(m2, { digits: areaDigits(sd) });
  return {
    said: {
      mark: "drag",
      claim: words.parts("oneClaim", { name: strong(name, "drag") }),
      figure,
      unit: show.unitOf("area", state.units).symbol,
      spread: sd === null ? null : show.spreadText("area", sd, state.units),
      odds:
        low_95 === null || high_95 === null
          ? words("noSpare")
          : words("oneRange", { low: between(low_95), high: between(high_95) }),
      weight: sd === null ? "open" : "sure",
    },
    claim: words("oneSpoken", { name, figure: area(value, sd, state.units) }),
  };
}
