// @ts-check
/** The sentence: the rider and both set-ups; and, for a fold of its own, how fast they pedal and what the ankle does. */

import { choice } from "../../parts/choice.js";
import { clause } from "../shared/clause.js";
import { words } from "./texts.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { LegRoomAnswer as Answer } from "../../types/core.d.ts" */

const SIDES = /** @type {const} */ (["a", "b"]);
const PARTS = /** @type {const} */ ([
  "crank_m",
  "saddle_height_m",
  "seat_angle_deg",
  "cadence_rpm",
  "bar_drop_m",
  "torso_deg",
]);

/**
 * @param {Tools} tools @param {string} at where the question keeps its numbers
 * @param {() => Answer | null} answer what is on the page, to change between drop and torso angle without moving anybody
 */
export function setUps(tools, at, answer) {
  const { store } = tools;
  const stature = tools.number({ path: `${at}.stature_m`, spread: false });
  const model = choice({
    label: words("model.label"),
    path: `${at}.model`,
    options: [],
    onChange: (value) => store.set(`${at}.model`, value),
  });
  const sides = SIDES.map((side) => {
    const numbers = Object.fromEntries(
      PARTS.map((part) => {
        const path = `${at}.${side}.${part}`;
        return [
          part,
          tools.number({
            path,
            label: words(`number.${side}`, { label: tools.label(path) }),
            meaning: side === "b" ? "hold" : null,
          }),
        ];
      }),
    );
    const given = choice({
      label: words("front.label"),
      options: [],
      onChange: (value) => giveFront(value === "torso"),
    });
    const drop = clause(...words.parts("front.drop", { drop: numbers.bar_drop_m }));
    const torso = clause(...words.parts("front.torso", { torso: numbers.torso_deg }));
    return {
      numbers,
      given,
      drop,
      torso,
      front: clause(...words.parts("front", { choice: given, tail: clause(drop, torso) })),
    };
  });
  const [a, b] = sides;

  /** Gives both front ends the other way, as they are now. @param {boolean} byTorso */
  function giveFront(byTorso) {
    const now = answer();
    const own = store.get().with["leg-room"];
    store.setAll(
      SIDES.map((side) => {
        const { torso_deg, bar_drop_m, ...rest } = own[side];
        const shown = now?.[side];
        const front = byTorso
          ? { torso_deg: shown ? Number(shown.torso_deg.value.toFixed(1)) : 16 }
          : { bar_drop_m: shown ? Number((shown.saddle.y_m - shown.pads.y_m).toFixed(3)) : 0.1 };
        return [`${at}.${side}`, { ...rest, ...front }];
      }),
    );
  }

  return {
    /** How fast the rider pedals, and what the ankle does. */
    pedalling: clause(
      ...words.parts("pedalling", {
        model,
        cadence_a: a.numbers.cadence_rpm,
        cadence_b: b.numbers.cadence_rpm,
      }),
    ),
    words: words.parts("ask", {
      stature,
      front_a: a.front,
      front_b: b.front,
      crank_a: a.numbers.crank_m,
      saddle_a: a.numbers.saddle_height_m,
      seat_a: a.numbers.seat_angle_deg,
      crank_b: b.numbers.crank_m,
      saddle_b: b.numbers.saddle_height_m,
      seat_b: b.numbers.seat_angle_deg,
    }),
    /** @returns {boolean} whether there was something to focus */
    focusStature() {
      stature.focus();
      return true;
    },
    /** @param {State} state @param {CoreError | null} error @returns {boolean} whether the error is shown here */
    update(state, error) {
      const own = state.with["leg-room"];
      const byTorso = own.a.torso_deg !== undefined;
      model.update({
        options: [
          { value: "ankling", name: words("model.ankling") },
          { value: "frozen", name: words("model.frozen") },
        ],
        value: own.model,
      });
      const shown = [stature.update(state, error)];
      for (const { numbers, given, drop, torso } of sides) {
        given.update({
          options: [
            { value: "pads", name: words("front.byPads") },
            { value: "torso", name: words("front.byTorso") },
          ],
          value: byTorso ? "torso" : "pads",
        });
        drop.show(!byTorso);
        torso.show(byTorso);
        for (const part of PARTS)
          if (part !== (byTorso ? "bar_drop_m" : "torso_deg")) shown.push(numbers[part].update(state, error));
      }
      return shown.includes(true);
    },
  };
}
