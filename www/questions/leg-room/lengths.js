// @ts-check
/** The rider's own lengths: guessed from the height until they are typed. */

import { html, say } from "../../parts/html.js";
import { amountOf } from "../../state/scenario.js";
import { words } from "./texts.js";

/** @import { Field } from "../../parts/sentence.js" */
/** @import { Tools } from "../index.js" */
/** @import { Held } from "../../types/page.d.ts" */
/** @import { State } from "../../state/history.js" */
/** @import { Known } from "../../types/core.d.ts" */
/** @import { CoreError } from "../../core.js" */
/** @import { LegRoomAnswer as Answer } from "../../types/core.d.ts" */

const GUESSED = /** @type {const} */ (["thigh_m", "shank_m", "foot_m", "trunk_m", "upper_arm_m"]);
const ASSUMED = /** @type {const} */ (["hip_above_saddle_m", "foot_pitch_deg", "foot_swing_deg", "ankle_deg"]);
/** A tape over skin finds a joint's centre to about a centimetre. */
const TAPE_SD_M = 0.01;

/** @param {Tools} tools @param {string} at @param {() => Answer | null} answer @param {Field} pedalling what stands before them */
export function ownLengths(tools, at, answer, pedalling) {
  const { store } = tools;
  const rows = [...GUESSED, ...ASSUMED].map((name) => {
    const path = `${at}.${name}`;
    const number = tools.number({
      path,
      value: () => {
        /** @type {Held | undefined} */
        const held = store.at(path);
        if (held !== undefined) return amountOf(held);
        return isGuessed(name) ? (answer()?.lengths[name] ?? null) : (tools.field(path)?.default ?? null);
      },
      changes: (si) => [
        [
          path,
          {
            value: si,
            sd: isGuessed(name) ? TAPE_SD_M : (tools.field(path)?.default_sd ?? 0),
            source: isGuessed(name) ? "measured" : "estimated",
          },
        ],
      ],
    });
    const guess = html("span", { class: "guess" });
    const again = html("button", { type: "button" }, words("lengths.guessAgain"));
    again.addEventListener("click", () => store.set(path, undefined));
    return { name, path, number, guess, again };
  });
  const grid = html(
    "div",
    { class: "own-lengths" },
    ...rows.flatMap(({ name, number, guess, again }) => [
      html("span", {}, words(`lengths.${name}`)),
      number.element,
      html("span", {}, guess, again),
      number.note,
    ]),
  );
  const element = html(
    "div",
    {},
    html("p", { class: "pedalling" }, pedalling.element),
    pedalling.note,
    html("p", {}, words("lengths.how")),
    grid,
  );

  return {
    element,
    gist: () => {
      const count = answer()?.lengths.guessed.length ?? 0;
      return count ? words("lengths.gistGuessed", { count }) : words("lengths.gistTyped");
    },
    /** How well the lengths and the foot's angles are known. */
    known() {
      const count = { measured: 0, estimated: 0, typical: 0 };
      for (const { path } of rows) count[/** @type {Known} */ (store.at(path)?.source ?? "typical")] += 1;
      return count;
    },
    /** Goes to a length, and says whether it is here. @param {string} field */
    focus(field) {
      const row = rows.find(({ name }) => field === `with.${name}`);
      if (!row) return false;
      const fold = element.closest("details");
      if (fold) fold.open = true;
      row.number.focus();
      return true;
    },
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      return rows
        .map(({ path, number, guess, again }) => {
          const typed = store.at(path) !== undefined;
          say(guess, typed ? "" : words("lengths.guess"));
          again.hidden = !typed;
          return number.update(state, error);
        })
        .includes(true);
    },
  };
}

/** @param {string} name @returns {name is typeof GUESSED[number]} */
function isGuessed(name) {
  return /** @type {readonly string[]} */ (GUESSED).includes(name);
}
