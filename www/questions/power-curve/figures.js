// @ts-check
/** Names and figures that several parts of the power curve say. */

import * as show from "../../units.js";
import { book } from "../../words/index.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { Figure, ModelFit, PowerCurveAnswer as Answer } from "../../types/core.d.ts" */
/** @import { Kind } from "../../units.js" */

const words = book("power-curve");

/** @param {ModelFit["model"]} model */
export const modelName = (model) => words(`model.${model}`);

/** @param {State} state @param {number} index */
export function positionName({ scenario }, index) {
  return scenario.positions[index]?.name || words("position", { number: index + 1 });
}

/** The numbers of a model that it has, as name, value and ±. @param {State} state @param {ModelFit} fit @returns {{ key: "criticalPower" | "wPrime" | "peak" | "longRideLoss" | "sevenMinute" | "decline" | "oneSecond" | "exponent", name: string, value: string, spread: string }[]} */
export function modelNumbers({ units }, fit) {
  /** @type {["criticalPower" | "wPrime" | "peak" | "longRideLoss" | "sevenMinute" | "decline" | "oneSecond" | "exponent", Figure | null, Kind][]} */
  const all = [
    ["criticalPower", fit.cp_w, "power"],
    ["wPrime", fit.w_prime_j, "work"],
    ["peak", fit.peak_w, "power"],
    ["longRideLoss", fit.long_ride_loss_w, "power"],
    ["sevenMinute", fit.seven_minute_w, "power"],
    ["decline", fit.decline_w, "power"],
    ["oneSecond", fit.one_second_w, "power"],
    ["exponent", fit.exponent, "ratio"],
  ];
  return all.flatMap(([key, figure, kind]) =>
    figure === null
      ? []
      : [
          {
            key,
            name: words(key),
            value: show.quantity(kind, figure.value, units, { digits: kind === "power" ? 0 : kind === "work" ? 1 : 3 }),
            spread: show.plusMinus(kind, figure.sd, units),
          },
        ],
  );
}

/** "43 in 100". @param {number} weight */
export const inHundred = (weight) => words("inHundred", { count: show.number(100 * weight) });

/** The compared models, the one with most evidence first. @param {Answer} answer */
export function byEvidence({ models }) {
  return models.filter((fit) => fit.weight !== null).toSorted((a, b) => (b.weight ?? 0) - (a.weight ?? 0));
}
