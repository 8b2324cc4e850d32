// @ts-check
/** Hard efforts as somebody writes them down, a line each, and back to numbers. Knows words of the page's three languages for units and places. */

/** @typedef {{ duration_s: number, power_w: number, position?: number, date?: string, indoors?: boolean }} Effort */
/**
 * What is wrong with a line, for the page to say; `text` is the piece that it is about.
 * @typedef {"noTime" | "noPower" | "twoTimes" | "twoPowers" | "twoOthers" | "perKilogram" | "unclearTime" | "unknown" | "date" | "timeRange" | "powerRange"} Wrong
 */
/** @typedef {{ line: number, wrong: Wrong, text: string }} Problem */
/** @typedef {{ positions: readonly string[], duration_s: { min: number, max: number }, power_w: { min: number, max: number } }} Allowed */

/** A bare number below this could be minutes or seconds: nobody writes a test of a minute down in bare seconds. */
const UNCLEAR_BELOW_S = 60;
const HOUR = "h|hr|hrs|hours?|std|stunden?|heures?";
const MINUTE = "min|mins|minutes?|minuten?|m|['′’]";
const SECOND = 's|sec|secs|seconds?|sek|sekunden?|secondes?|["″”]';
const NUMBER = "\\d+(?:[.,]\\d+)?";
/**
 * A time on the clock, or spelt in hours, minutes and seconds. Two numbers on the clock are minutes and seconds, but hours and minutes where
 * the name of hours follows them; three are hours, minutes below sixty and seconds.
 */
const CLOCK = new RegExp(
  `^(?:(\\d+):(?=[0-5]?\\d:))?(\\d{1,3}):([0-5]\\d(?:[.,]\\d+)?)(?![\\d:]|[.,]\\d)(?:\\s*(?:(${HOUR})|(?:${MINUTE}))\\.?(?![\\p{L}\\p{N}/]))?`,
  "iu",
);
const SPELT = new RegExp(
  `^(?:(${NUMBER})\\s*(?:${HOUR})\\.?(?![\\p{L}])\\s*)?(?:(${NUMBER})\\s*(?:${MINUTE})\\.?(?![\\p{L}/])\\s*)?(?:(${NUMBER})\\s*(?:${SECOND})\\.?(?![\\p{L}]))?`,
  "iu",
);
/** "1h05", "5min30", "5'30": the last unit left out. */
const CUT_SHORT = new RegExp(
  `^(\\d+)\\s*(?:(${HOUR})|(?:${MINUTE}))\\.?\\s*([0-5]\\d)(?![\\p{N}:.,]|\\s*(?:${MINUTE}|${SECOND}|w|watts?)(?![\\p{L}]))`,
  "iu",
);
const PER_KILOGRAM = new RegExp(`^${NUMBER}\\s*(?:w|watts?)\\s*(?:/|per|pro|par)\\s*kg(?![\\p{L}])`, "iu");
const WATTS = new RegExp(`^(${NUMBER})\\s*(?:watts?|w)(?![\\p{L}/])`, "iu");
const BARE = new RegExp(`^(${NUMBER})(?![\\p{L}\\d:/.,-])`, "u");
const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})(?!\d)/;
const DOTTED_DATE = /^(\d{1,2})\.(\d{1,2})\.(\d{4})(?!\d)/;
const OTHER_DATE = /^\d{1,4}[/-]\d{1,2}[/-]\d{1,4}/;
const INDOORS = /^(?:indoors?|inside|drinnen|innen|rolle|(?:à l[’'])?intérieur|en salle)(?![\p{L}])/iu;
const OUTDOORS = /^(?:outdoors?|outside|draußen|draussen|außen|(?:à l[’'])?extérieur|dehors)(?![\p{L}])/iu;

/** What may stand between the pieces and says nothing; a word of it, unless it begins a name or a place. */
const FILLER_SIGNS = /^[\s@–—:-]*/u;
const FILLER_WORD = /^(?:for|at|für|bei|mit|pendant|à)\s+/iu;

/**
 * Efforts from lines such as `4:00 417`, `20 min 342 W`, `1200 s; 342`, `20:00,342,low,2026-05-01,indoors`. Empty lines, lines that
 * begin with # and a first line without a digit are passed over. Either all lines are read, or what is wrong with each is told.
 * @param {string} text @param {Allowed} allowed
 * @returns {{ efforts: Effort[] } | { problems: Problem[] }}
 */
export function readEfforts(text, allowed) {
  /** @type {Effort[]} */
  const efforts = [];
  /** @type {Problem[]} */
  const problems = [];
  let first = true;
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    const bare = line.trim();
    if (!bare || bare.startsWith("#")) continue;
    const heading = first && !/\d/.test(bare);
    first = false;
    if (heading) continue;
    const read = readLine(bare, allowed);
    if ("wrong" in read) problems.push({ line: index + 1, ...read });
    else efforts.push(read);
  }
  return problems.length ? { problems } : { efforts };
}

/** @param {string} line @param {Allowed} allowed @returns {Effort | { wrong: Wrong, text: string }} */
function readLine(line, allowed) {
  /** @type {Partial<Effort>} */
  const effort = {};
  for (const cell of cells(line)) {
    for (let rest = cell.trim(); rest; rest = rest.replace(FILLER_SIGNS, "")) {
      const read = readPiece(rest, effort, allowed.positions);
      if ("wrong" in read) return { wrong: read.wrong, text: (read.text ?? rest).slice(0, 30).trim() };
      rest = rest.slice(read.length);
    }
  }
  const { duration_s, power_w } = effort;
  if (duration_s === undefined) return { wrong: "noTime", text: line.slice(0, 30) };
  if (power_w === undefined) return { wrong: "noPower", text: line.slice(0, 30) };
  if (duration_s < allowed.duration_s.min || duration_s > allowed.duration_s.max)
    return { wrong: "timeRange", text: line.slice(0, 30) };
  if (power_w < allowed.power_w.min || power_w > allowed.power_w.max)
    return { wrong: "powerRange", text: line.slice(0, 30) };
  return { ...effort, duration_s, power_w };
}

/** A line in its cells: by tabs, semicolons and bars, and by commas that are no decimal marks. @param {string} line */
function cells(line) {
  if (/[\t;|]/.test(line)) return line.split(/[\t;|]/);
  return (
    line
      .replace(/,(?=\s)/g, "\t")
      // After a time on the clock or what is no digit, or before anything but one or two digits that end there, a comma parts.
      .replace(/(:\d\d|^|\D),+/g, "$1\t")
      .replace(/,(?!\d{1,2}(?![\d]))/g, "\t")
      .split("\t")
  );
}

/** What is wrong with a piece; the piece is what is left of the cell if it does not say. @param {Wrong} wrong @param {string} [text] */
const problem = (wrong, text) => ({ wrong, ...(text !== undefined && { text }) });

/**
 * Reads one piece at the beginning of a text into the effort, and says how long it was.
 * @param {string} text @param {Partial<Effort>} effort @param {readonly string[]} positions
 * @returns {{ length: number } | { wrong: Wrong, text?: string }}
 */
function readPiece(text, effort, positions) {
  const date = ISO_DATE.exec(text) ?? DOTTED_DATE.exec(text);
  if (date) {
    const [year, month, day] = date[1].length === 4 ? [date[1], date[2], date[3]] : [date[3], date[2], date[1]];
    const written = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
    if (!isDay(written)) return problem("date", date[0]);
    if (effort.date !== undefined) return problem("twoOthers", date[0]);
    effort.date = written;
    return { length: date[0].length };
  }
  const other = OTHER_DATE.exec(text);
  if (other) return problem("date", other[0]);
  const time = timeAt(text);
  if (time) {
    if (effort.duration_s !== undefined) return problem("twoTimes", text.slice(0, time.length));
    effort.duration_s = time.seconds;
    return { length: time.length };
  }
  const perKilogram = PER_KILOGRAM.exec(text);
  if (perKilogram) return problem("perKilogram", perKilogram[0]);
  const watts = WATTS.exec(text);
  const bare = watts ? null : BARE.exec(text);
  if (watts || (bare && effort.duration_s !== undefined)) {
    const found = /** @type {RegExpExecArray} */ (watts ?? bare);
    if (effort.power_w !== undefined) return problem("twoPowers", found[0]);
    effort.power_w = value(found[1]);
    return { length: found[0].length };
  }
  if (bare) {
    const seconds = value(bare[1]);
    if (seconds < UNCLEAR_BELOW_S) return problem("unclearTime", bare[0]);
    effort.duration_s = seconds;
    return { length: bare[0].length };
  }
  const place = INDOORS.exec(text) ?? OUTDOORS.exec(text);
  if (place) {
    if (effort.indoors !== undefined) return problem("twoOthers", place[0]);
    effort.indoors = INDOORS.test(text);
    return { length: place[0].length };
  }
  const named = positionAt(text, positions);
  if (named === null) {
    const filler = FILLER_WORD.exec(text);
    return filler ? { length: filler[0].length } : problem("unknown");
  }
  if (effort.position !== undefined) return problem("twoOthers", text.slice(0, named.length));
  effort.position = named.position;
  return { length: named.length };
}

/** @param {string} text @returns {{ seconds: number, length: number } | null} */
function timeAt(text) {
  const clock = CLOCK.exec(text);
  if (clock) {
    const isHours = clock[1] === undefined && clock[4] !== undefined;
    // Half a minute is written in seconds.
    if (isHours && !/^\d+$/.test(clock[3])) return null;
    const [hours, minutes, seconds] = isHours ? [clock[2], clock[3], "0"] : [clock[1] ?? "0", clock[2], clock[3]];
    return { seconds: value(hours) * 3600 + value(minutes) * 60 + value(seconds), length: clock[0].length };
  }
  const short = CUT_SHORT.exec(text);
  if (short)
    return {
      seconds: value(short[1]) * (short[2] ? 3600 : 60) + value(short[3]) * (short[2] ? 60 : 1),
      length: short[0].length,
    };
  const spelt = SPELT.exec(text);
  if (!spelt?.[0]) return null;
  return {
    seconds: value(spelt[1] ?? "0") * 3600 + value(spelt[2] ?? "0") * 60 + value(spelt[3] ?? "0"),
    length: spelt[0].length,
  };
}

/** The position whose name stands here; the longest, so that "low, new bars" is not "low". @param {string} text @param {readonly string[]} positions */
function positionAt(text, positions) {
  const begins = text.toLowerCase();
  let found = null;
  for (const [position, name] of positions.entries()) {
    const wanted = name.trim().toLowerCase();
    if (
      wanted &&
      begins.startsWith(wanted) &&
      !/^[\p{L}\p{N}]/u.test(begins.slice(wanted.length)) &&
      wanted.length > (found?.length ?? 0)
    )
      found = { position, length: wanted.length };
  }
  return found;
}

/** @param {string} text */
const value = (text) => Number(text.replace(",", "."));

/** @param {string} date */
function isDay(date) {
  const day = new Date(`${date}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(date);
}
