// @ts-check
/** What is doubtful about a test: each sentence names the lap or run that it is about as the lists name it. */

import { capital } from "../../parts/capital.js";
import { piece } from "../shared/shell.js";
import { warningList } from "../shared/warnings.js";
import { askedAt } from "./asked-at.js";
import { rowName } from "./names.js";

/** @import { Tools } from "../index.js" */
/** @import { Piece } from "../shared/shell.js" */
/** @import { DragTestAnswer as Answer, TestRow, Warning } from "../../types/core.d.ts" */

/** What says that this plans a test, which the sentence and the answer say already. */
const ONLY_PLANNED = "nothing_measured";
/** Rows by where they stand in a request. @type {Record<string, TestRow["kind"]>} */
const KINDS = { laps: "lap", runs: "run", coast_downs: "coast_down" };

/** @param {Tools} tools @returns {Piece<Answer>} */
export function doubts(tools) {
  /** Where each lap of the answer stands in the list of laps. @type {readonly number[]} */
  let places = [];
  const list = warningList(tools, (warning) => ofRow(warning, places, tools.words(inTheList(warning, places))));
  return piece(list, (_, { state, answer }) => {
    places = askedAt(state);
    list.update(answer.warnings.filter(({ kind }) => kind !== ONLY_PLANNED));
  });
}

/** The core counts the laps of open rides alone; the list of laps has all of them. @param {Warning} warning @param {readonly number[]} places @returns {Warning} */
function inTheList(warning, places) {
  const { lap } = warning.values;
  const place = typeof lap === "number" ? places[lap - 1] : undefined;
  return place === undefined ? warning : { ...warning, values: { ...warning.values, lap: place + 1 } };
}

/** @param {Warning} warning @param {readonly number[]} places @param {string} sentence */
function ofRow({ field, values }, places, sentence) {
  const [, list = "", index] = /^with\.(laps|runs|coast_downs)\[(\d+)\]/.exec(field) ?? [];
  const kind = KINDS[list];
  if (!kind || "lap" in values) return sentence;
  return `${capital(rowName({ kind, index: Number(index) }, places))}: ${sentence}`;
}
