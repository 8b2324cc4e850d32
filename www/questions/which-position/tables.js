// @ts-check
/** Positions by events, and what each position may cost in power before it loses. */

import { html, strong } from "../../parts/html.js";
import { table } from "../../parts/table.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { differs } from "../shared/difference.js";
import { aboutWords, furtherFigure } from "../shared/distance-names.js";
import { choiceName, eventName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { WhichPositionAnswer as Answer, CountedDraws } from "../../types/core.d.ts" */

const words = book("which-position");
/** Of the table of the curves. */
const MOST_ROWS = 13;
/** @param {"value" | "difference" | "spread" | "further" | "wins" | "share"} part what the line says, for a file @param {...(string | Node)} content */
const line = (part, ...content) => html("span", { class: "cell-line", "data-part": part }, ...content);

export function eventTable() {
  const grid = table({ caption: words("eventsCaption"), lined: true });
  return {
    ...grid,
    /** @param {State} state @param {Answer} answer @param {CountedDraws | null} counted */
    update(state, { choices, reference, events }, counted) {
      grid.update({
        columns: [
          words("event"),
          ...choices.map((choice, place) =>
            place === reference
              ? words("comparedWith", { name: choiceName(state, choice) })
              : choiceName(state, choice),
          ),
        ],
        rows: events.map(({ times, best, duration_s, distance_m }, event) => [
          duration_s === undefined
            ? eventName(state, event)
            : words("eventReaches", { event: eventName(state, event), distance: aboutWords(distance_m, state.units) }),
          ...times.map(({ time_s, difference_s, further_m }, place) => {
            const share = counted?.events[event]?.win_share[place];
            const time = show.time(time_s.value);
            return [
              line("value", place === best ? strong(time, "hold") : time),
              ...(place === reference ? [] : [line("difference", ...[differs(difference_s.value)].flat())]),
              ...(place === reference || !(difference_s.sd > 0)
                ? []
                : [line("spread", show.plusMinusTime(difference_s.sd))]),
              ...(place === reference || !further_m ? [] : [line("further", furtherFigure(further_m, state.units))]),
              ...(share === undefined
                ? []
                : [line("wins", words("winsOf", { count: Math.round(100 * share), all: 100 }))]),
            ];
          }),
        ]),
      });
    },
  };
}

/** What the curves say at distances all along the chart. */
export function curveTable() {
  const grid = table({ caption: words("tableCaption"), lined: true });
  return {
    ...grid,
    /** @param {State} state @param {Answer} answer */
    update(state, { choices, reference, columns }) {
      const count = columns.distance_m.length;
      const others = choices.map((_, choice) => choice).filter((choice) => choice !== reference);
      const every = Math.max(1, Math.floor((count - 1) / (MOST_ROWS - 1)));
      const points = Array.from({ length: count }, (_, point) => point).filter((point) => point % every === 0);
      grid.update({
        columns: [words("tableDistance"), ...others.map((choice) => choiceName(state, choices[choice]))],
        rows: points.map((point) => [
          show.quantity("distance", columns.distance_m[point], state.units, { digits: 1 }),
          ...others.map((choice) => {
            const at = choice * count + point;
            return [
              line("difference", ...[differs(columns.difference_s[at])].flat()),
              line("spread", show.plusMinusTime(columns.difference_sd_s[at])),
            ];
          }),
        ]),
      });
    },
  };
}

export function costTable() {
  const grid = table({ caption: words("costsCaption"), lined: true });
  return {
    ...grid,
    /** @param {State} state @param {Answer} answer */
    update(state, { choices, costs, events: all }) {
      // Of very many positions the later events have no costs.
      const events = all.slice(0, 1 + Math.max(0, ...costs.map(({ event }) => event)));
      const watts = (/** @type {number} */ w) => show.quantity("power", w, state.units, { digits: 0 });
      const pairs = [
        ...new Map(costs.map(({ choice, against }) => [`${choice} ${against}`, { choice, against }])).values(),
      ];
      grid.update({
        columns: [words("pair"), words("costsNow"), ...events.map((_, event) => eventName(state, event))],
        rows: pairs.map(({ choice, against }) => {
          const own = costs.filter((cost) => cost.choice === choice && cost.against === against);
          return [
            words("againstOther", {
              one: choiceName(state, choices[choice]),
              other: choiceName(state, choices[against]),
            }),
            watts(own[0].now_w),
            ...events.map((_, event) => {
              const cost = own.find((one) => one.event === event);
              if (!cost) return words("otherWay");
              if (!cost.allowed_w) return words("nothingTies");
              return [
                line("value", strong(watts(cost.allowed_w.value), "power")),
                " ",
                line("spread", show.plusMinus("power", cost.allowed_w.sd, state.units)),
                line("share", words("ofPower", { share: show.percent(cost.allowed_share ?? 0, 1) })),
              ];
            }),
          ];
        }),
      });
    },
  };
}
