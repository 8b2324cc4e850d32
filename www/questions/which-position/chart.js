// @ts-check
/** How much faster each position is than the one it is compared with, against distance. */

import { html } from "../../parts/html.js";
import { lineChart, valueAt } from "../../parts/line-chart.js";
import * as show from "../../units.js";
import { book } from "../../words/index.js";
import { onScreen } from "../shared/on-screen.js";
import { choiceName, eventName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { WhichPositionAnswer as Answer } from "../../types/core.d.ts" */

const words = book("which-position");
const shared = book("shared");
const STROKES = /** @type {const} */ (["solid", "dashed", "dotted"]);
/** A chart with more curves than this is not read. */
const MOST_CURVES = 6;

/** @param {Tools} tools @param {string} at where the question keeps its own part */
export function differenceChart({ store }, at) {
  const unit = () => ({ unit: show.unitOf("distance", store.get().units).symbol });
  const percent = (/** @type {number} */ share) => show.percent(share, 1);
  const chart = lineChart({
    title: words("chartTitle"),
    x: { name: words("chartX", unit()), kind: "log", format: (x) => show.number(x) },
    y: { name: words("chartY"), format: percent },
    handles: {
      you: {
        label: words("chartHandle"),
        moves: [`${at}.distance_m`],
        directions: "x",
        onMove: ({ x }, phase) => {
          if (phase === "commit") store.settle();
          else
            store.setAll(
              [
                [`${at}.distance_m`, Math.round(show.fromDisplay("distance", x, store.get().units))],
                [`${at}.for_time_s`, undefined],
              ],
              { merge: `${at}.distance_m` },
            );
        },
      },
    },
    reader: words("chartReader"),
  });

  return {
    element: chart.element,
    destroy: chart.destroy,
    /** @param {State} state @param {Answer} answer @param {boolean} settled */
    update(state, answer, settled) {
      const { units } = state;
      const { columns, choices, reference, reading, crossovers } = answer;
      const far = (/** @type {number} */ m) => show.toDisplay("distance", m, units);
      const farText = (/** @type {number} */ shown) =>
        show.quantity("distance", show.fromDisplay("distance", shown, units), units, { digits: shown < 20 ? 1 : 0 });
      const xs = Float64Array.from(columns.distance_m, far);
      chart.element.hidden = xs.length < 2 || choices.length < 2;
      if (chart.element.hidden) return;

      const count = xs.length;
      const row = (/** @type {Float64Array} */ of, /** @type {number} */ choice) =>
        of.subarray(choice * count, (choice + 1) * count);
      const best = reading?.best ?? answer.events[0].best;
      const others = choices.map((_, choice) => choice).filter((choice) => choice !== reference);
      // The one that matters most is drawn last and has its band.
      const banded = best === reference ? (others.find((choice) => choice === runnerUp(answer)) ?? others[0]) : best;
      const drawn = [...others.filter((choice) => choice !== banded).slice(0, MOST_CURVES - 1), banded];
      const series = drawn.map((choice, place) => {
        const ys = row(columns.difference_share, choice);
        const sds = row(columns.difference_sd_share, choice);
        const name = choiceName(state, choices[choice]);
        const band = choice === banded ? { low: ys.map((y, i) => y - sds[i]), high: ys.map((y, i) => y + sds[i]) } : {};
        return {
          name,
          xs,
          ys,
          ...band,
          label: name,
          meaning: choice === banded ? /** @type {const} */ ("hold") : null,
          stroke: choice === banded ? STROKES[0] : STROKES[(place % 2) + 1],
        };
      });
      const all = drawn
        .flatMap((choice) => [...row(columns.difference_share, choice)])
        .concat(...series.flatMap(({ low, high }) => [low ?? [], high ?? []].map((side) => [...side])));
      const domain = /** @type {const} */ ([Math.min(0, ...all) * 1.08 - 0.002, Math.max(0, ...all) * 1.08 + 0.002]);
      const referenceName = choiceName(state, choices[reference]);
      const readAt = reading ? far(reading.distance_m) : null;
      const [first, last] = [xs[0], xs[count - 1]];
      const curve = /** @type {typeof series[number]} */ (series.at(-1));

      chart.update({
        ease: settled,
        desc: words("chartDescription", {
          reference: referenceName,
          list: series.map(({ name }) => name).join(", "),
          crossings: crossovers.length,
          count: crossovers.length,
        }),
        x: { name: words("chartX", unit()), domain: [first, last], read: farText },
        y: { domain, read: (share) => show.percent(Math.abs(share), 1) },
        series,
        levels: [{ y: 0, above: words("levelIs", { reference: referenceName }), shortAbove: referenceName }],
        points: [
          ...crossovers
            .filter(({ choice }) => drawn.includes(choice))
            .map(({ distance_m, choice }) => ({
              x: far(distance_m.value),
              y: 0,
              label: farText(far(distance_m.value)),
              shape: /** @type {const} */ ("dot"),
              meaning: choice === banded ? /** @type {const} */ ("hold") : null,
            })),
          ...state.scenario.events
            .map((event, index) => {
              const x = far(answer.events[index].distance_m);
              // On a course of its own it need not lie on the curve.
              const y = event.course ? shareAt(answer.events[index]) : valueAt(curve, x);
              const shape = /** @type {"dot" | "none"} */ (event.course ? "dot" : "none");
              return { x, y, drop: true, shape, label: eventName(state, index) };
            })
            .filter(({ x }) => x >= first && x <= last),
        ],
        handles:
          readAt !== null && readAt >= first && readAt <= last
            ? {
                you: {
                  x: readAt,
                  y: valueAt(curve, readAt),
                  label: farText(readAt),
                  spoken: words("chartSpoken", { distance: farText(readAt), list: said(readAt) }),
                  step: { x: readAt < 20 ? 0.5 : 1 },
                  rangeX: /** @type {const} */ ([first, last]),
                },
              }
            : {},
        read: (x) => ({
          spoken: words("chartSpoken", { distance: farText(x), list: said(x) }),
          words: words.parts("chartSpoken", { distance: html("b", {}, farText(x)), list: said(x) }),
          points: series.map((one) => ({ y: valueAt(one, x), meaning: one.meaning })),
        }),
        reading: [words("chartReading", { reference: referenceName }), " ", onScreen(shared("dragRing"))],
      });

      /** By what share the choice with the band is faster than the reference at an event. @param {Answer["events"][number]} event */
      function shareAt({ times }) {
        return times[banded].difference_s.value / times[reference].time_s.value;
      }

      /** What every curve says at a distance, in seconds. @param {number} x */
      function said(x) {
        return drawn
          .map((choice, place) =>
            words("chartSays", {
              name: series[place].name,
              differs: show.differenceWords(valueAt({ name: "", xs, ys: row(columns.difference_s, choice) }, x)),
            }),
          )
          .join(", ");
      }
    },
  };
}

/** The fastest choice at the distance read, besides the best. @param {Answer} answer */
function runnerUp({ reading, events }) {
  const { times, best } = reading ?? events[0];
  return times.reduce(
    (/** @type {number | null} */ found, { time_s }, choice) =>
      choice !== best && (found === null || time_s.value < times[found].time_s.value) ? choice : found,
    null,
  );
}
