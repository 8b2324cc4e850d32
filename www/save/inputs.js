// @ts-check
/** Every input behind an answer, in the reader's units, with its ± and how it is known. */

import { labelOf } from "../frame/field-words.js";
import { kindOf } from "../frame/kinds.js";
import { courseLengthM } from "../state/scenario.js";
import { plusMinus, quantity } from "../units.js";
import { book } from "../words/index.js";

/** @import { Units } from "../units.js" */
/** @import { State } from "../state/history.js" */

const words = book("save");

/** @typedef {{ label: string, value: string, known: string }} Input */
/** @typedef {{ title: string, inputs: Input[] }} InputGroup */

/**
 * @param {State} state
 * @param {number[]} positions those that the question is about
 * @returns {InputGroup[]}
 */
export function inputsOf({ scenario, units }, positions) {
  const numbers = (/** @type {object | undefined} */ part, /** @type {string} */ path) => numbersOf(part, path, units);
  const { course, conditions, start, stops, feeding } = scenario;
  const road =
    course.kind === "profile"
      ? [
          {
            label: words("course"),
            value: words("pointsOver", {
              count: course.points?.length ?? 0,
              distance: quantity("distance", courseLengthM(course), units),
            }),
            known: "",
          },
          ...numbers({ duration_s: course.duration_s }, "scenario.course"),
        ]
      : [
          ...numbers(course, "scenario.course"),
          { label: words("outAndBack"), value: words(course.out_and_back ? "yes" : "no"), known: "" },
        ];
  const pressure =
    conditions.pressure_hpa === undefined
      ? []
      : [
          {
            label: words("pressureFor"),
            value: words(conditions.pressure_is === "course" ? "theCourse" : "seaLevel"),
            known: "",
          },
        ];
  return [
    {
      title: words("riderAndBicycle"),
      inputs: [...numbers(scenario.rider, "scenario.rider"), ...numbers(scenario.bike, "scenario.bike")],
    },
    ...positions.map((index) => ({
      title: words("position", { name: scenario.positions[index].name }),
      inputs: numbers(scenario.positions[index], `scenario.positions[${index}]`),
    })),
    { title: words("power"), inputs: numbers(scenario.power, "scenario.power") },
    {
      title: words("course"),
      inputs: [
        ...road,
        ...(typeof start === "string"
          ? [{ label: words("start"), value: words(start === "rolling" ? "rolling" : "standing"), known: "" }]
          : numbers(start, "scenario.start")),
        ...numbers(stops, "scenario.stops"),
        ...numbers(feeding, "scenario.feeding"),
      ],
    },
    { title: words("conditions"), inputs: [...numbers(conditions, "scenario.conditions"), ...pressure] },
    { title: words("theModel"), inputs: numbers({ model_error_share: scenario.model_error_share }, "scenario") },
  ];
}

/** Numbers of a question's own that its sentence does not show. @param {State} state @param {string} id @returns {Input[]} */
export function ownInputsOf({ with: questions, units }, id) {
  const single = Object.fromEntries(
    Object.entries(questions[id]).filter(([, held]) => held && typeof held === "object" && "value" in held),
  );
  return numbersOf(single, `with.${id}`, units);
}

/** @param {object | undefined} part @param {string} path @param {Units} units @returns {Input[]} */
function numbersOf(part, path, units) {
  return Object.entries(part ?? {}).flatMap(([key, held]) => {
    const at = `${path}.${key}`;
    if (Array.isArray(held))
      return held.length ? [{ label: labelOf(at), value: words("rows", { count: held.length }), known: "" }] : [];
    if (held && typeof held === "object" && !("value" in held)) return numbersOf(held, at, units);
    const value = typeof held === "number" ? held : held?.value;
    if (typeof value !== "number" || !labelOf(at)) return [];
    const kind = kindOf(at);
    const spread = held.sd ? ` ${plusMinus(kind, held.sd, units)}` : "";
    return [{ label: labelOf(at), value: quantity(kind, value, units) + spread, known: knownWords(held.source) }];
  });
}

/** @param {unknown} source how a number is known */
function knownWords(source) {
  return source === "typical" || source === "estimated" || source === "measured" ? words(source) : "";
}
