// @ts-check
/** A number that stands in a sentence and can be typed, stepped with the arrow keys or dragged sideways. */

import { book } from "../words/index.js";
import { html, say, set, uniqueId } from "./html.js";
import { keepStill } from "./keep-still.js";
import {
  numberText,
  plusOrMinus,
  readNumber,
  readTime,
  readTimeOfDay,
  sdText,
  timeOfDayText,
  timeText,
} from "./number-text.js";

/** @import { Meaning } from "./html.js" */
/** @import { Reading } from "./number-text.js" */

/** @typedef {"typing" | "step" | "drag" | "commit"} Phase */
/** @typedef {"measured" | "estimated" | "typical" | null} Known */

/**
 * @typedef {object} Shown What the field shows, in display units.
 * @property {number} value
 * @property {number | null} [sd]
 * @property {Known} [known] `null` for an exact number.
 * @property {number} [min]
 * @property {number} [max]
 * @property {string} [unit] As shown after the digits; "" for none.
 * @property {string} [unitWords] The unit as it is spoken: "watts".
 * @property {Record<string, (value: number) => number>} [otherUnits] Other units that may be typed, each turned into this one.
 * @property {(text: string) => number | undefined} [spelt] Reads what may be typed in words, such as "SW", in display units.
 * @property {number} digits Decimals shown.
 * @property {number} step One press of an arrow key.
 */

/**
 * @typedef {object} NumberOptions
 * @property {string} label What the number is, as its accessible name: "Drag area CdA".
 * @property {string} [path] Where it lives in the scenario; becomes `data-path`, so that an error can find its field.
 * @property {Meaning | null} [meaning]
 * @property {boolean} [signed] Whether a positive value wears its plus sign.
 * @property {"number" | "time" | "time-of-day"} [kind] A time is held in seconds and typed as 59:04 or 1:02:03; a time of day, from midnight, as 7:30.
 * @property {(value: number, phase: Phase) => void} onInput Called with values in range only.
 */

const words = book("page");

/** What is read and written in hours and minutes. @type {{ [kind in "number" | "time" | "time-of-day"]?: { text: (value: number) => string, read: (text: string) => Reading, needs: "number.needsTime" | "number.needsTimeOfDay" } }} */
const TIMES = {
  time: { text: timeText, read: readTime, needs: "number.needsTime" },
  "time-of-day": { text: timeOfDayText, read: readTimeOfDay, needs: "number.needsTimeOfDay" },
};

const DRAG_THRESHOLD_PX = 4;
const PX_PER_STEP = 6;
const MANY_STEPS = 10;
/** Decimals beyond the field's own that are kept when they were typed. */
const EXTRA_DECIMALS = 2;

/**
 * `note` is the line that says what is wrong; it is empty until something is, and the caller puts it under the sentence.
 * @param {NumberOptions} options
 * @param {Shown} shown
 */
export function numberField({ label, path, meaning = null, signed = false, kind = "number", onInput }, shown) {
  const noteId = uniqueId("wrong");
  const input = html("input", {
    autocomplete: "off",
    spellcheck: "false",
    enterkeyhint: "done",
    role: "spinbutton",
    "aria-label": label,
    "data-path": path,
  });
  const unit = html("span", { class: "unit", "aria-hidden": "true" });
  const spread = html("span", { class: "pm", "aria-hidden": "true" });
  const element = html("span", { class: meaning ? `num ${meaning}` : "num" }, input, unit, spread);
  const note = html("p", { class: "wrong", id: noteId, hidden: true });

  let extraDecimals = 0;
  let restoreTo = NaN;
  /** @type {string | null} */
  let ownComplaint = null;
  /** @type {string | null} */
  let outsideComplaint = null;
  let typing = false;
  /** Whether the next frame writes the text. */
  let waiting = false;

  const valueText = (/** @type {number} */ value, extra = 0) =>
    Number.isFinite(value)
      ? (TIMES[kind]?.text(value) ?? numberText(value, { digits: shown.digits + extra, signed }))
      : "";
  /** An end of a range that is smaller than the field's last decimal would read as nought. @param {number} end */
  const extraFor = (end) =>
    end === 0 || TIMES[kind] ? 0 : Math.max(0, 1 - Math.floor(Math.log10(Math.abs(end))) - shown.digits);
  const withUnit = (/** @type {number} */ value) => `${valueText(value)}${shown.unit ? `\u00a0${shown.unit}` : ""}`;

  function writeText() {
    const text = valueText(shown.value, extraDecimals);
    if (input.value === text) return;
    // A new text in a focused field is laid out at once: its room is made first.
    sizeTo(text);
    input.value = text;
  }

  /** Whether all of the text is selected, so that it will be typed over. */
  function isSelected() {
    const { selectionStart, selectionEnd, value } = input;
    return selectionStart === 0 && selectionEnd === value.length;
  }

  /** Written last, the page is laid out once for it and for all that follows from it. */
  function writeLast() {
    if (!typing && !waiting) writeText();
  }

  function writeInFrame() {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      // It was not when the wait began.
      const selected = isSelected();
      writeLast();
      if (selected) input.select();
    });
  }

  /** @param {string} text */
  function sizeTo(text) {
    element.style.setProperty("--ch", String(Math.max(1, text.length)));
  }

  function writeAround() {
    const sd = shown.sd && shown.sd > 0 ? (kind === "time" ? timeText(shown.sd) : sdText(shown.sd)) : null;
    say(unit, shown.unit ?? "");
    set(unit, { hidden: !shown.unit });
    say(spread, sd === null ? "" : plusOrMinus(sd));
    set(spread, { hidden: sd === null });
    set(element, { "data-known": shown.known ?? null });
    const spoken = [
      `${valueText(shown.value, extraDecimals)} ${shown.unitWords ?? shown.unit ?? ""}`.trim(),
      sd === null ? "" : words("spoken.plusOrMinus", { sd }),
      shown.known ? words(`spoken.${shown.known}`) : "",
    ]
      .filter(Boolean)
      .join(", ");
    set(input, {
      // Some phones have no minus, and none has a colon or letters, beside the digits.
      inputmode: TIMES[kind] || signed || shown.spelt || (shown.min ?? 0) < 0 ? "text" : "decimal",
      "aria-valuenow": Number.isFinite(shown.value) ? shown.value : null,
      "aria-valuemin": shown.min,
      "aria-valuemax": shown.max,
      "aria-valuetext": spoken,
    });
  }

  function writeComplaint() {
    const complaint = ownComplaint ?? outsideComplaint;
    set(element, { "data-wrong": complaint !== null });
    set(input, {
      "aria-invalid": complaint === null ? null : "true",
      "aria-describedby": complaint === null ? null : noteId,
    });
    set(note, { hidden: complaint === null });
    say(note, complaint === null ? [] : [html("b", { "aria-hidden": "true" }, "!"), html("span", {}, complaint)]);
  }

  /** @param {string | null} complaint */
  function complain(complaint) {
    ownComplaint = complaint;
    writeComplaint();
  }

  /** @param {number} value */
  function outOfRange(value) {
    const { min, max } = shown;
    if ((min === undefined || value >= min) && (max === undefined || value <= max)) return null;
    const complaint =
      min === undefined
        ? words("number.atMost", { label, max: withUnit(/** @type {number} */ (max)) })
        : max === undefined
          ? words("number.atLeast", { label, min: withUnit(min) })
          : words("number.range", { label, min: valueText(min, extraFor(min)), max: withUnit(max) });
    return Number.isFinite(shown.value)
      ? words("number.still", { complaint, value: valueText(shown.value) })
      : complaint;
  }

  /** @returns {Reading} */
  function read() {
    const value = shown.spelt?.(input.value);
    if (value !== undefined) return { value, decimals: 0 };
    return (
      TIMES[kind]?.read(input.value) ??
      readNumber(input.value, { unit: shown.unit ?? "", digits: shown.digits, otherUnits: shown.otherUnits })
    );
  }

  /** @param {Reading} reading */
  function complaintAbout(reading) {
    if (reading.wrong === "other-unit")
      return words("number.otherUnit", { label, unit: shown.unitWords ?? shown.unit ?? "" });
    if (reading.value === undefined) return words(TIMES[kind]?.needs ?? "number.needsNumber", { label });
    return outOfRange(reading.value);
  }

  /**
   * @param {number} value
   * @param {Phase} phase
   */
  function emit(value, phase) {
    // The same value again brings no new answer, so what is wrong with it stands.
    if (!isSame(value, shown.value)) outsideComplaint = null;
    shown.value = value;
    complain(null);
    writeAround();
    onInput(value, phase);
  }

  /** @param {number} value */
  function clamp(value) {
    return Math.min(shown.max ?? Infinity, Math.max(shown.min ?? -Infinity, value));
  }

  /**
   * @param {number} from
   * @param {number} steps
   */
  function stepped(from, steps) {
    const { step } = shown;
    const snapped = Math.round((from + steps * step) / step) * step;
    return clamp(Number(snapped.toFixed(shown.digits + EXTRA_DECIMALS)));
  }

  /**
   * @param {number} value
   * @param {Phase} phase
   */
  function moveTo(value, phase) {
    if (!Number.isFinite(value)) return;
    typing = false;
    extraDecimals = 0;
    emit(value, phase);
    if (isSelected()) writeText();
    else writeInFrame();
  }

  function settleTyping() {
    if (!typing) return;
    const reading = read();
    if (complaintAbout(reading) !== null) return;
    typing = false;
    extraDecimals = Math.min(EXTRA_DECIMALS, Math.max(0, (reading.decimals ?? 0) - shown.digits));
    emit(/** @type {number} */ (reading.value), "commit");
    writeText();
  }

  function restore() {
    if (!Number.isFinite(restoreTo)) return;
    const changed = restoreTo !== shown.value;
    typing = false;
    extraDecimals = 0;
    if (changed) emit(restoreTo, "commit");
    else complain(null);
    writeText();
  }

  input.addEventListener("focus", () => {
    restoreTo = shown.value;
    input.select();
  });
  input.addEventListener("input", () => {
    typing = true;
    sizeTo(input.value);
    const reading = read();
    const complaint = complaintAbout(reading);
    if (complaint === null) emit(/** @type {number} */ (reading.value), "typing");
    else complain(complaint);
  });
  input.addEventListener("blur", settleTyping);
  input.addEventListener("keydown", (event) => {
    const many = event.shiftKey ? MANY_STEPS : 1;
    /** @type {Record<string, number>} */
    const steps = { ArrowUp: many, ArrowDown: -many, PageUp: MANY_STEPS, PageDown: -MANY_STEPS };
    if (event.key in steps) {
      event.preventDefault();
      moveTo(stepped(shown.value, steps[event.key]), "step");
    } else if (event.key === "Enter") {
      settleTyping();
      input.select();
    } else if (event.key === "Escape") {
      restore();
      input.select();
    }
  });
  input.addEventListener("keyup", (event) => {
    if (/^(Arrow(Up|Down)|Page(Up|Down))$/.test(event.key) && Number.isFinite(shown.value))
      onInput(shown.value, "commit");
  });

  makeDraggable({
    element,
    input,
    begin: () => {
      restoreTo = shown.value;
      return shown.value;
    },
    move: (start, steps) => {
      const value = stepped(start, steps);
      if (value !== shown.value) moveTo(value, "drag");
    },
    end: () => onInput(shown.value, "commit"),
    cancel: restore,
  });

  writeText();
  writeAround();

  return {
    element,
    input,
    note,
    /**
     * Shows the store's value. Text that is being typed is left alone unless the value was changed from elsewhere.
     * @param {Partial<Shown>} next
     */
    update(next) {
      const changed = next.value !== undefined && !isSame(next.value, shown.value);
      const dressed =
        (next.unit !== undefined && next.unit !== shown.unit) ||
        (next.digits !== undefined && next.digits !== shown.digits);
      shown = { ...shown, ...next };
      if (changed || dressed) {
        typing = false;
        extraDecimals = 0;
        complain(null);
      }
      queueMicrotask(writeLast);
      writeAround();
    },
    /**
     * Says what is wrong with the value, or that nothing is.
     * @param {string | null} message
     */
    wrong(message) {
      if (message === outsideComplaint) return;
      outsideComplaint = message;
      writeComplaint();
    },
    focus() {
      input.focus();
    },
  };
}

/**
 * Whether two values are one but for the rounding of a conversion there and back.
 * @param {number} a
 * @param {number} b
 */
function isSame(a, b) {
  return Object.is(a, b) || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}

/**
 * Sideways dragging that leaves taps, text selection and vertical scrolling alone.
 * @param {object} drag
 * @param {HTMLElement} drag.element
 * @param {HTMLInputElement} drag.input
 * @param {() => number} drag.begin
 * @param {(start: number, steps: number) => void} drag.move
 * @param {() => void} drag.end
 * @param {() => void} drag.cancel
 */
function makeDraggable({ element, input, begin, move, end, cancel }) {
  /** @type {{ pointer: number, x_px: number, y_px: number, value: number, letGo: (() => void) | null } | null} Once it is moving, it can be let go. */
  let held = null;

  function release() {
    const letGo = held?.letGo ?? null;
    held = null;
    letGo?.();
    element.removeAttribute("data-dragging");
    document.removeEventListener("keydown", onEscape);
    return letGo !== null;
  }

  /** @param {KeyboardEvent} event */
  function onEscape(event) {
    if (event.key !== "Escape" || !held) return;
    release();
    cancel();
  }

  element.addEventListener("pointerdown", (event) => {
    const editing = input.matches(":focus") && event.target === input;
    if (event.button !== 0 || !event.isPrimary || editing) return;
    // A mouse would begin to select text; focus is given on release instead, when it turns out not to be a drag.
    if (event.pointerType !== "touch") event.preventDefault();
    held = { pointer: event.pointerId, x_px: event.clientX, y_px: event.clientY, value: begin(), letGo: null };
  });
  // A text field would scroll its own text sideways under the finger.
  element.addEventListener(
    "touchmove",
    (event) => {
      if (held?.letGo && event.cancelable) event.preventDefault();
    },
    { passive: false },
  );
  // After a tap beside the digits the browser would take the focus away again.
  element.addEventListener("mousedown", (event) => {
    if (event.target !== input) event.preventDefault();
  });
  element.addEventListener("pointermove", (event) => {
    if (!held || event.pointerId !== held.pointer) return;
    const moved_px = event.clientX - held.x_px;
    if (!held.letGo) {
      const upward_px = Math.abs(event.clientY - held.y_px);
      if (Math.max(Math.abs(moved_px), upward_px) < DRAG_THRESHOLD_PX) return;
      // A finger that goes up or down scrolls the page.
      if (upward_px >= Math.abs(moved_px)) {
        if (event.pointerType === "touch") release();
        return;
      }
      held.letGo = keepStill(element, element.parentElement?.closest("p, li, td, div") ?? element);
      element.setPointerCapture(event.pointerId);
      element.setAttribute("data-dragging", "");
      document.addEventListener("keydown", onEscape);
    }
    move(held.value, Math.round(moved_px / PX_PER_STEP) * (event.shiftKey ? MANY_STEPS : 1));
  });
  element.addEventListener("pointerup", (event) => {
    if (!held || event.pointerId !== held.pointer) return;
    if (release()) end();
    else if (!input.matches(":focus")) input.focus();
  });
  for (const type of /** @type {const} */ (["pointercancel", "lostpointercapture"])) {
    element.addEventListener(type, (event) => {
      // The text field loses the finger to the number as a drag begins; that is no end.
      if (event.target === element && event.pointerId === held?.pointer && release()) end();
    });
  }
}
