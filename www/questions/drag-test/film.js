// @ts-check
/** What a film of a position shows, by thirds of its laps, and how drag rises within the test. */

import { html } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { area } from "./digits.js";
import { keepRise } from "./keep-rise.js";
import { positionName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { DragTestAnswer as Answer, FilmForm as FilmForm } from "../../types/core.d.ts" */

const words = book("drag-test");
const AT = "with.drag-test.film";
const SEEN = /** @type {const} */ (["head_up_share", "back_up_share", "hands_moved_share"]);
const THIRDS = [0, 1, 2];

/** @param {Tools} tools */
export function filmPart(tools) {
  const { store } = tools;
  const list = html("div", {});
  const add = html("button", { type: "button" }, words("addFilm"));
  const rises = table({ caption: words("risesCaption") });
  const fades = keepRise(tools);
  const element = html(
    "div",
    {},
    html("p", {}, words("filmLead")),
    list,
    html("p", { class: "row-actions" }, add),
    rises.element,
    fades.element,
  );
  const rows = keyedList(list, (index) => filmRow(tools, index));
  const films = () => /** @type {FilmForm[]} */ (store.at(AT) ?? []);

  add.addEventListener("click", () => {
    const taken = films().map(({ position }) => position);
    const free = store.get().scenario.positions.findIndex((_, place) => !taken.includes(place));
    if (free >= 0) store.set(AT, [...films(), newFilm(free)]);
  });

  return {
    element,
    destroy: rises.destroy,
    /** @param {State} state @param {CoreError | null} error */
    update(state, error) {
      const { film } = state.with["drag-test"];
      add.disabled = film.length >= state.scenario.positions.length;
      const made = rows.update(
        film.map(({ position }, index) => JSON.stringify([index, positionName(state, position)])),
      );
      return made.map((row) => row.update(state, error)).includes(true);
    },
    /** @param {State} state @param {Answer} answer */
    draw(state, { late_rises }) {
      rises.element.hidden = late_rises.length === 0;
      fades.draw(state, late_rises);
      rises.update({
        columns: [words("position"), words("riseKnown"), words("rise")],
        rows: late_rises.map(({ position, known, cda_m2: { value, sd } }) => [
          positionName(state, position),
          words(`rise.${known}`),
          `${area(value, sd, state.units)}${sd === null ? "" : ` ${show.plusMinus("area", sd, state.units)}`}`,
        ]),
      });
    },
  };
}

/** @param {number} position @returns {FilmForm} */
const newFilm = (position) => ({
  position,
  head_up_share: [0, 0, 0],
  back_up_share: [0, 0, 0],
  hands_moved_share: [0, 0, 0],
});

/** @param {Tools} tools @param {number} index */
function filmRow(tools, index) {
  const { store } = tools;
  const name = positionName(store.get(), store.get().with["drag-test"].film[index]?.position ?? 0);
  const range = tools.field("with.film.share");
  const title = html("h3");
  const away = html("button", { type: "button", "aria-label": words("removeFilm", { name }) }, words("remove"));
  away.addEventListener("click", () =>
    store.set(
      AT,
      store.at(AT).filter((/** @type {unknown} */ _, /** @type {number} */ at) => at !== index),
    ),
  );
  const numbers = SEEN.map((seen) =>
    THIRDS.map((third) =>
      tools.number({
        path: `${AT}[${index}].${seen}[${third}]`,
        kind: "share",
        min: range?.min,
        max: range?.max,
        step: 5,
        digits: 0,
        label: words("seenOf", {
          name,
          what: words(`seen.${seen}`),
          third: words(`third.${/** @type {0 | 1 | 2} */ (third)}`),
        }),
      }),
    ),
  );
  const all = numbers.flat();
  const element = html(
    "section",
    { class: "film" },
    title,
    ...SEEN.map((seen, at) =>
      html(
        "p",
        {},
        ...words.parts("filmRow", {
          what: words(`seen.${seen}`),
          first: numbers[at][0].element,
          middle: numbers[at][1].element,
          last: numbers[at][2].element,
        }),
      ),
    ),
    ...all.map(({ note }) => note),
    away,
  );
  return {
    element,
    /** @param {State} state @param {CoreError | null} error */
    update(state, error) {
      const film = state.with["drag-test"].film[index];
      if (!film) return false;
      title.textContent = positionName(state, film.position);
      return all.map((one) => one.update(state, error)).includes(true);
    },
  };
}
