// @ts-check
/** Help: what the page is, its words, its cautions, what is not known, and where the numbers go (nowhere). */

import { oneFile } from "#delivery";
import { h } from "../frame/dom.js";
import { openDialog } from "./dialog.js";

/** @type {[term: string, meaning: string][]} */
const WORDS = [
  ["Drag area, CdA", "How big you are to the air, in square metres: the drag coefficient times the frontal area. Lower is faster."],
  ["Rolling resistance, Crr", "The share of the weight on the tyres that pulls back as they roll. It depends on tyre, pressure, warmth and road."],
  ["Critical power, CP", "The power above which effort runs down a limited reserve. Below it, riding can last long, though not for ever."],
  ["W′ (W prime)", "That reserve: the work that can be done above critical power, in kilojoules."],
  ["Power–duration", "How the power you can hold falls as the effort gets longer."],
  ["Apparent wind, yaw", "The wind you feel: your own speed and the weather’s together. Yaw is the angle it comes from, seen from the bicycle."],
  ["Air density", "How heavy the air is. Warm, damp and thin air is faster; altitude matters most."],
  ["Fade, lapse", "A position fades when it is lost as the ride goes on, and lapses when you leave it for a while."],
  ["± ", "One standard deviation: two times in three the truth lies within it, nineteen in twenty within twice it."],
  ["Measured, estimated, typical", "How a number is known: measured for you, judged for you, or what riders usually have."],
];

const CAUTIONS = [
  "Look where you are going. A head held low sees neither the car that has stopped nor the hole in the road, and no time saved is worth it.",
  "Test and train positions away from traffic first; in traffic, keep your hands where you can brake.",
  "Crosswinds and gusts can take the front wheel, more so with deep rims. The page knows a steady wind only.",
  "Descents and bends here are sums, not advice: surface, sight and other people set the speed.",
  "Tests to exhaustion are maximal efforts. If you are unused to them, unwell, or have a heart condition, ask a doctor first.",
  "Change a fit in small steps. Pain or numbness is a reason to stop and see a professional.",
  "The rules of the event and the law of the road come before anything on this page.",
];

const NOT_KNOWN = [
  "Your own numbers, until they are measured. Most of the ± comes from there.",
  "How fast a position fades: no published figure was found, so the fade is yours to give.",
  "Gusts, passing traffic, and the shelter of hedges along the way.",
  "A finish time carries the model’s own error, about 2 %. A difference between two choices on the same ride is surer, because most of that error is in both.",
];

/**
 * @param {{ questions: string[], offline: string }} page `offline` is a sentence about working without a network
 * @param {(path?: string) => void} openSheet
 */
export function openHelp({ questions, offline }, openSheet) {
  const list = (/** @type {string[]} */ lines) => h("ul", { class: "bullets" }, ...lines.map((line) => h("li", {}, line)));
  const dialog = openDialog("Help",
    h("p", {}, "Fasterby answers what-if questions about riding alone against the clock: what is worth more, what it costs, and how sure that is. Each question is a sentence whose numbers you can change. Everything else it needs is under ",
      h("button", { type: "button", class: "link-button", onclick: () => { dialog.close(); openSheet(); } }, "Your numbers"), "."),
    h("p", {}, `The questions so far: ${questions.join(" ")}`),
    h("h3", {}, "Changing a number"),
    h("p", {}, "Type it, or use the arrow keys (with Shift for ten steps), or drag it sideways. Escape takes back what you typed. A solid line under a number means measured, a dashed one estimated, a dotted one typical, a thin one chosen. Undo and Redo cover every change (Ctrl or ⌘ with Z, with Shift to redo)."),
    h("h3", {}, "Words"),
    h("dl", {}, ...WORDS.flatMap(([term, meaning]) => [h("dt", {}, term), h("dd", {}, meaning)])),
    h("h3", {}, "Ride safely"), list(CAUTIONS),
    h("h3", {}, "What is not known"), list(NOT_KNOWN),
    h("h3", {}, "Where your numbers go"),
    h("p", {}, "Nowhere. Everything is worked out on this device. There is no account, no counting of visitors, and nothing is sent. A link you share holds your numbers after its # sign, a part of the address that browsers do not send to any server. ", offline),
    ...(oneFile ? [h("p", {}, h("a", { href: oneFile.href, download: "fasterby.html" }, "Save this page as one file"),
      " (half a megabyte). It opens from a folder or a memory stick, with no network and no server.")] : []),
  );
}
