// @ts-check
/** A second reader of numbers, which knows the stated grammar and nothing of the page's own reader: tests compare the two. */

export const isDigit = (/** @type {string | undefined} */ sign) => sign !== undefined && sign >= "0" && sign <= "9";
export const isSpace = (/** @type {string | undefined} */ sign) => sign !== undefined && sign.trim() === "";

/**
 * The grammar of numbers, read from left to right: an optional sign, then runs of digits with single signs between them, then a unit.
 * @param {string} typed @param {number} digits @param {string} mark how the language writes decimals
 * @returns {{ value: number, unit: string } | null} the unit in small letters without blanks and a point behind, whatever it is
 */
export function numberByHand(typed, digits, mark) {
  const signs = [...typed.trim()];
  let at = 0;
  const negative = signs[at] === "-" || signs[at] === "\u2212";
  if (negative || signs[at] === "+") at += 1;
  while (isSpace(signs[at])) at += 1;
  /** Runs of digits, and what stands between them. @type {string[]} */
  const runs = [""];
  /** @type {string[]} */
  const between = [];
  while (at < signs.length) {
    const sign = signs[at];
    if (isDigit(sign)) runs[runs.length - 1] += sign;
    else if (sign === "," || sign === ".") {
      between.push(sign);
      runs.push("");
    } else if (isSpace(sign)) {
      let next = at;
      while (isSpace(signs[next])) next += 1;
      // Spaces before a unit part nothing.
      if (!isDigit(signs[next]) && signs[next] !== "," && signs[next] !== ".") break;
      between.push(next - at === 1 ? " " : "spaces");
      runs.push("");
      at = next - 1;
    } else break;
    at += 1;
  }
  const rest = signs.slice(at).filter((sign) => !isSpace(sign));
  if (rest.at(-1) === ".") rest.pop();
  const groupsOf = (/** @type {string[]} */ parts) =>
    parts.length > 1 &&
    parts[0].length >= 1 &&
    parts[0].length <= 3 &&
    parts[0][0] !== "0" &&
    parts.slice(1).every((part) => part.length === 3);
  const allSame = new Set(between).size <= 1;
  const kind = between[0];
  let text = null;
  if (!between.length) text = runs[0];
  else if (
    allSame &&
    kind !== "spaces" &&
    groupsOf(runs) &&
    (kind === " " || runs.length > 2 || (digits === 0 && kind !== mark))
  )
    text = runs.join("");
  else if (between.at(-1) === "," || between.at(-1) === ".") {
    const whole = runs.slice(0, -1);
    const parting = new Set(between.slice(0, -1));
    const alone = whole.length === 1;
    const grouped =
      parting.size === 1 && !parting.has("spaces") && !parting.has(between[between.length - 1]) && groupsOf(whole);
    if (alone || grouped) text = `${whole.join("")}.${runs[runs.length - 1]}`;
  }
  if (text === null || text === "" || text === ".") return null;
  const value = Number(negative ? `-${text}` : text);
  if (!Number.isFinite(value)) return null;
  return { value, unit: rest.join("").toLowerCase() };
}
