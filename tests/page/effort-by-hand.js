// @ts-check
/** A second reader of typed efforts, which knows the stated rules and nothing of the page's own reader: tests compare the two. */

import { isSpace } from "./number-by-hand.js";

/** @import { Allowed, Effort, Wrong } from "../../www/questions/power-curve/efforts-text.js" */

const HOURS = ["h", "hr", "hrs", "hour", "hours", "std", "stunde", "stunden", "heure", "heures"];
const MINUTES = ["min", "mins", "minute", "minutes", "minuten", "m", "'", "′", "’"];
const SECONDS = [
  "s",
  "sec",
  "secs",
  "second",
  "seconds",
  "sek",
  "sekunde",
  "sekunden",
  "seconde",
  "secondes",
  '"',
  "″",
  "”",
];
const WATTS = ["w", "watt", "watts"];
const INSIDE = ["indoor", "indoors", "inside", "drinnen", "innen", "rolle", "en salle"];
const OUTSIDE = ["outdoor", "outdoors", "outside", "draußen", "draussen", "außen", "dehors"];
/** With their article, whatever the apostrophe. */
const AT_THE = ["", "à l'", "à l’"];
const FILLERS = ["for", "at", "für", "bei", "mit", "pendant", "à"];
const PARTING = ["@", "–", "—", ":", "-"];
const CLEAR_FROM_S = 60;

/**
 * A run of digits, a run of letters, or one other sign.
 * @typedef {{ text: string, kind: "digits" | "letters" | "sign", from: number, to: number, spaced: boolean }} Token
 */

/** @param {string} cell @returns {Token[]} */
function tokensOf(cell) {
  /** @type {Token[]} */
  const tokens = [];
  let from = 0;
  let spaced = true;
  for (const sign of cell) {
    const kind = /^\d$/.test(sign) ? "digits" : /^\p{L}$/u.test(sign) ? "letters" : "sign";
    const to = from + sign.length;
    const last = tokens.at(-1);
    if (isSpace(sign)) spaced = true;
    else if (last && !spaced && kind !== "sign" && last.kind === kind) {
      last.text += sign.toLowerCase();
      last.to = to;
    } else {
      tokens.push({ text: sign.toLowerCase(), kind, from, to, spaced });
      spaced = false;
    }
    from = to;
  }
  return tokens;
}

/** Whether this token stands at once behind the one before, as a letter, a digit or this sign. @param {Token | undefined} token @param {string[]} kinds */
const touches = (token, kinds) =>
  token !== undefined && !token.spaced && (kinds.includes(token.kind) || kinds.includes(token.text));

/** @param {Token[]} tokens @param {number} at */
function numberAt(tokens, at) {
  const [whole, mark, decimals] = tokens.slice(at, at + 3);
  if (whole?.kind !== "digits") return null;
  const isBroken = touches(mark, [".", ","]) && touches(decimals, ["digits"]);
  return isBroken
    ? { value: Number(`${whole.text}.${decimals.text}`), next: at + 3, isWhole: false }
    : { value: Number(whole.text), next: at + 1, isWhole: true };
}

/** Where a name of the list ends, with a point behind it or without, and none of these behind that. @param {Token[]} tokens @param {number} at @param {string[]} names @param {string[]} [never] @returns {number | null} */
function nameAt(tokens, at, names, never = ["letters"]) {
  if (!names.includes(tokens[at]?.text)) return null;
  if (touches(tokens[at + 1], ["."]) && !touches(tokens[at + 2], never)) return at + 2;
  return touches(tokens[at + 1], never) ? null : at + 1;
}

/** @typedef {{ seconds: number, next: number }} Time */

/** Minutes and seconds, hours and minutes with the name of hours, or all three. @param {Token[]} tokens @param {number} at @returns {Time | null} */
function clockAt(tokens, at) {
  const texts = [tokens[at]?.text];
  let next = at + 1;
  while (tokens[at]?.kind === "digits" && touches(tokens[next], [":"]) && touches(tokens[next + 1], ["digits"])) {
    texts.push(tokens[next + 1].text);
    next += 2;
  }
  if (texts.length < 2 || texts.length > 3 || touches(tokens[next], [":"])) return null;
  const last = numberAt(tokens, next - 1);
  if (!last || touches(tokens[last.next], [":"])) return null;
  if (touches(tokens[last.next], [".", ","]) && touches(tokens[last.next + 1], ["digits"])) return null;
  const [lowest, middle, highest] = [last.value, ...texts.slice(0, -1).reverse().map(Number)];
  if (texts[texts.length - 1].length !== 2 || lowest >= 60) return null;
  if (texts.length === 3 && (middle >= 60 || texts[1].length > 2)) return null;
  if (texts.length === 2 && texts[0].length > 3) return null;
  const never = ["letters", "digits", "/"];
  const hour = nameAt(tokens, last.next, HOURS, never);
  const named = hour ?? nameAt(tokens, last.next, MINUTES, never) ?? last.next;
  if (hour !== null && texts.length === 2)
    return last.isWhole ? { seconds: middle * 3600 + lowest * 60, next: hour } : null;
  return { seconds: (highest ?? 0) * 3600 + middle * 60 + lowest, next: named };
}

/** `1h05`, `5'30`: two digits behind hours or minutes are what comes below, unless they have a name of their own. @param {Token[]} tokens @param {number} at @returns {Time | null} */
function cutShortAt(tokens, at) {
  if (tokens[at]?.kind !== "digits") return null;
  const hour = nameAt(tokens, at + 1, HOURS, []);
  const next = hour ?? nameAt(tokens, at + 1, MINUTES, []);
  const below = next === null ? undefined : tokens[next];
  if (next === null || below?.kind !== "digits" || below.text.length !== 2 || Number(below.text) >= 60) return null;
  if (touches(tokens[next + 1], [":", ".", ","])) return null;
  if (nameAt(tokens, next + 1, [...MINUTES, ...SECONDS, ...WATTS]) !== null) return null;
  const size = hour === null ? 60 : 3600;
  return { seconds: Number(tokens[at].text) * size + (Number(below.text) * size) / 60, next: next + 1 };
}

/** Hours, minutes and seconds by their names, in this order. @param {Token[]} tokens @param {number} at @returns {Time | null} */
function speltAt(tokens, at) {
  let [seconds, next] = [0, at];
  for (const [size, names, never] of /** @type {[number, string[], string[]][]} */ ([
    [3600, HOURS, ["letters"]],
    [60, MINUTES, ["letters", "/"]],
    [1, SECONDS, ["letters"]],
  ])) {
    const number = numberAt(tokens, next);
    const behind = number && nameAt(tokens, number.next, names, never);
    if (!number || behind === null) continue;
    seconds += number.value * size;
    next = behind;
  }
  return next === at ? null : { seconds, next };
}

/** @param {Token[]} tokens @param {number} at @param {string[]} kinds @returns {boolean} whether these stand here without spaces */
const standsAt = (tokens, at, kinds) =>
  kinds.every((kind, n) => (n === 0 ? tokens[at]?.kind === kind : touches(tokens[at + n], [kind])));

/** A date of numbers: the day, or null for one that is not in a calendar or not clear. @param {Token[]} tokens @param {number} at @returns {{ date: string | null, next: number } | null} */
function dateAt(tokens, at) {
  const [first, second, third] = [tokens[at]?.text, tokens[at + 2]?.text, tokens[at + 4]?.text];
  const written = (/** @type {string} */ year, /** @type {string} */ month, /** @type {string} */ day) => {
    const days = new Date(Date.UTC(2000, Number(month), 0));
    days.setUTCFullYear(Number(year), Number(month), 0);
    const isDay = Number(month) >= 1 && Number(month) <= 12 && Number(day) >= 1 && Number(day) <= days.getUTCDate();
    return { date: isDay ? `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}` : null, next: at + 5 };
  };
  const by = (/** @type {string} */ one, /** @type {string} */ other) =>
    standsAt(tokens, at, ["digits", one, "digits", other, "digits"]);
  if (by("-", "-") && first.length === 4 && second.length === 2 && third.length === 2)
    return written(first, second, third);
  if (by(".", ".") && first.length <= 2 && second.length <= 2 && third.length === 4)
    return written(third, second, first);
  const unclear = [
    ["-", "-"],
    ["/", "/"],
    ["-", "/"],
    ["/", "-"],
  ].some(([one, other]) => by(one, other));
  return unclear && first.length <= 4 && second.length <= 2 ? { date: null, next: at + 5 } : null;
}

/** Where a phrase that stands here ends, if nothing of these kinds touches it. @param {string} cell @param {Token[]} tokens @param {number} at @param {string} phrase @param {string[]} never @returns {number | null} */
function phraseAt(cell, tokens, at, phrase, never) {
  const { from } = tokens[at];
  const to = from + phrase.length;
  if (!cell.toLowerCase().startsWith(phrase, from)) return null;
  const next = tokens.findIndex((token) => token.from >= to);
  // A token that goes on past the phrase is another word.
  if (tokens.some((token) => token.from < to && token.to > to)) return null;
  if (next < 0) return tokens.length;
  return touches(tokens[next], never) ? null : next;
}

/**
 * Where a line is parted: at tabs, semicolons and bars; without one at commas, but for a decimal mark: that stands behind a digit, though
 * not behind a time on the clock, and before one or two digits and no more.
 * @param {string} line
 */
function cellsOf(line) {
  const isStrong = (/** @type {string} */ sign) => ["\t", ";", "|"].includes(sign);
  const strong = [...line].some(isStrong);
  const isDigitAt = (/** @type {number} */ at) => line[at] >= "0" && line[at] <= "9";
  const isDecimal = (/** @type {number} */ at) => {
    const behindClock = isDigitAt(at - 1) && isDigitAt(at - 2) && line[at - 3] === ":";
    const digits = [1, 2, 3].findIndex((n) => !isDigitAt(at + n));
    return isDigitAt(at - 1) && !behindClock && (digits === 1 || digits === 2);
  };
  const cells = [""];
  for (let at = 0; at < line.length; at += 1) {
    const parts = strong ? isStrong(line[at]) : line[at] === "," && !isDecimal(at);
    if (parts) cells.push("");
    else cells[cells.length - 1] += line[at];
  }
  return cells.map((cell) => cell.trim());
}

/** @param {string} line @param {Allowed} allowed @returns {Effort | { wrong: Wrong }} */
function lineByHand(line, allowed) {
  /** @type {Partial<Effort>} */
  const effort = {};
  for (const cell of cellsOf(line)) {
    const tokens = tokensOf(cell);
    for (let at = 0; at < tokens.length; ) {
      const read = pieceByHand(cell, tokens, at, effort, allowed.positions);
      if (typeof read !== "number") return { wrong: read };
      at = read;
      while (PARTING.includes(tokens[at]?.text)) at += 1;
    }
  }
  const { duration_s, power_w } = effort;
  if (duration_s === undefined) return { wrong: "noTime" };
  if (power_w === undefined) return { wrong: "noPower" };
  const fits = (/** @type {number} */ value, /** @type {{ min: number, max: number }} */ { min, max }) =>
    value >= min && value <= max;
  if (!fits(duration_s, allowed.duration_s)) return { wrong: "timeRange" };
  if (!fits(power_w, allowed.power_w)) return { wrong: "powerRange" };
  return { ...effort, duration_s, power_w };
}

/** Reads a piece into the effort. @param {string} cell @param {Token[]} tokens @param {number} at @param {Partial<Effort>} effort @param {readonly string[]} positions @returns {number | Wrong} where the next one begins, or what is wrong */
function pieceByHand(cell, tokens, at, effort, positions) {
  const date = dateAt(tokens, at);
  if (date) {
    if (date.date === null) return "date";
    if (effort.date !== undefined) return "twoOthers";
    effort.date = date.date;
    return date.next;
  }
  const time = clockAt(tokens, at) ?? cutShortAt(tokens, at) ?? speltAt(tokens, at);
  if (time) {
    if (effort.duration_s !== undefined) return "twoTimes";
    effort.duration_s = time.seconds;
    return time.next;
  }
  const number = numberAt(tokens, at);
  if (number) {
    const perMass = nameAt(tokens, number.next, WATTS, []);
    if (
      perMass !== null &&
      ["/", "per", "pro", "par"].includes(tokens[perMass]?.text) &&
      tokens[perMass + 1]?.text === "kg"
    )
      return "perKilogram";
    const watts = WATTS.includes(tokens[number.next]?.text) && !touches(tokens[number.next + 1], ["letters", "/"]);
    const isBare = !touches(tokens[number.next], ["letters", ":", "/", ".", ",", "-"]);
    if (watts || (isBare && effort.duration_s !== undefined)) {
      if (effort.power_w !== undefined) return "twoPowers";
      effort.power_w = number.value;
      return watts ? number.next + 1 : number.next;
    }
    if (isBare) {
      if (number.value < CLEAR_FROM_S) return "unclearTime";
      effort.duration_s = number.value;
      return number.next;
    }
  }
  for (const [indoors, phrases, withArticle] of /** @type {[boolean, string[], string][]} */ ([
    [true, INSIDE, "intérieur"],
    [false, OUTSIDE, "extérieur"],
  ])) {
    const all = [...phrases, ...AT_THE.map((article) => article + withArticle)];
    const [place] = all.flatMap((phrase) => phraseAt(cell, tokens, at, phrase, ["letters"]) ?? []);
    if (place === undefined) continue;
    if (effort.indoors !== undefined) return "twoOthers";
    effort.indoors = indoors;
    return place;
  }
  const named = positions
    .map((position, index) => ({
      index,
      length: position.length,
      next: phraseAt(cell, tokens, at, position.toLowerCase(), ["letters", "digits"]),
    }))
    .filter(({ next }) => next !== null)
    .sort((one, other) => other.length - one.length);
  if (named.length > 0) {
    if (effort.position !== undefined) return "twoOthers";
    effort.position = named[0].index;
    return /** @type {number} */ (named[0].next);
  }
  return FILLERS.includes(tokens[at].text) && tokens[at + 1]?.spaced ? at + 1 : "unknown";
}

/**
 * @param {string} text @param {Allowed} allowed
 * @returns {{ efforts: Effort[] } | { problems: { line: number, wrong: Wrong }[] }}
 */
export function effortsByHand(text, allowed) {
  const lines = text.split("\n").map((line, index) => ({ line: line.trim(), number: index + 1 }));
  const told = lines.filter(({ line }) => line !== "" && !line.startsWith("#"));
  if (told.length > 0 && !/\d/.test(told[0].line)) told.shift();
  const read = told.map(({ line, number }) => ({ number, ...lineByHand(line, allowed) }));
  const problems = read.flatMap((one) => ("wrong" in one ? [{ line: one.number, wrong: one.wrong }] : []));
  return problems.length > 0
    ? { problems }
    : {
        efforts: read.flatMap((one) => {
          const { number: _, ...effort } = one;
          return "wrong" in effort ? [] : [effort];
        }),
      };
}
