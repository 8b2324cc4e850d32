// @ts-check
/** Every input behind an answer, in the reader's units, with its ± and how it is known. */

import { kindOf, plusMinus, quantity } from "../units.js";
import { labelOf } from "../frame/words.js";
import { courseLengthM } from "../state/scenario.js";

/** @import { State } from "../state/history.js" */

/** @typedef {{ label: string, value: string, known: string }} Input */
/** @typedef {{ title: string, inputs: Input[] }} InputGroup */

/**
 * @param {State} state
 * @param {number[]} positions those that the question is about
 * @returns {InputGroup[]}
 */
export function inputsOf({ scenario, units }, positions) {
  /** @param {any} part @param {string} path @returns {Input[]} */
  const numbers = (part, path) => Object.entries(part ?? {}).flatMap(([key, held]) => {
    const at = `${path}.${key}`;
    if (Array.isArray(held)) return held.length ? [{ label: labelOf(at), value: `${held.length} rows`, known: "" }] : [];
    if (held && typeof held === "object" && !("value" in held)) return numbers(held, at);
    const value = typeof held === "number" ? held : held?.value;
    if (typeof value !== "number" || !labelOf(at)) return [];
    const kind = kindOf(at);
    const spread = held.sd ? ` ${plusMinus(kind, held.sd, units)}` : "";
    return [{ label: labelOf(at), value: quantity(kind, value, units) + spread, known: held.source ?? "" }];
  });
  const { course, conditions, start } = scenario;
  const road = course.kind === "profile"
    ? [{ label: "Course", value: `${course.points.length} points over ${quantity("distance", courseLengthM(course), units)}`, known: "" }]
    : [...numbers(course, "scenario.course"), { label: "Out and back", value: course.out_and_back ? "yes" : "no", known: "" }];
  const pressure = conditions.pressure_hpa === undefined ? [] : [{ label: "Air pressure is given for", value: conditions.pressure_is === "course" ? "the course" : "sea level", known: "" }];
  return [
    { title: "Rider and bicycle", inputs: [...numbers(scenario.rider, "scenario.rider"), ...numbers(scenario.bike, "scenario.bike")] },
    ...positions.map((index) => ({ title: `Position: ${scenario.positions[index].name}`, inputs: numbers(scenario.positions[index], `scenario.positions[${index}]`) })),
    { title: "Power", inputs: numbers(scenario.power, "scenario.power") },
    { title: "Course", inputs: [...road, ...(typeof start === "string" ? [{ label: "Start", value: start, known: "" }] : numbers(start, "scenario.start"))] },
    { title: "Conditions", inputs: [...numbers(conditions, "scenario.conditions"), ...pressure] },
    { title: "The model", inputs: numbers({ model_error_share: scenario.model_error_share }, "scenario") },
  ];
}
