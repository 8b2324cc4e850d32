// @ts-check
/** A slider over one turn that can also turn by itself, slowly; it stands still out of sight and where motion is not wanted. */

import { html, say, set } from "./html.js";

/** One turn in slow motion. */
const TURN_MS = 6000;
const WHOLE_DEG = 360;

/**
 * @param {object} options
 * @param {string} options.label
 * @param {string} options.play What the button says while it stands.
 * @param {string} options.pause
 * @param {(degrees: number) => string} options.spoken The slider's value in words.
 * @param {(degrees: number, phase: "moving" | "settled") => void} options.onTurn
 * @param {readonly { name: string, to: () => number | null }[]} [options.jumps] Buttons that go to a place.
 */
export function turner({ label, play, pause, spoken, onTurn, jumps = [] }) {
  const slider = html("input", { type: "range", min: 0, max: WHOLE_DEG - 1, step: 1, "aria-label": label });
  const button = html("button", { type: "button", "aria-pressed": "false" }, play);
  const places = jumps.map(({ name, to }) => {
    const jump = html("button", { type: "button" }, name);
    jump.addEventListener("click", () => {
      const degrees = to();
      if (degrees === null) return;
      stop();
      moveTo(degrees, "settled");
    });
    return jump;
  });
  const element = html(
    "div",
    { class: "turner no-print" },
    slider,
    html("div", { class: "turner-buttons" }, button, ...places),
  );

  const still = matchMedia("(prefers-reduced-motion: reduce)");
  let degrees = 0;
  let wanted = false;
  let inSight = true;
  let frame = 0;
  let last_ms = 0;

  /** @param {number} next @param {"moving" | "settled"} phase */
  function moveTo(next, phase) {
    degrees = ((next % WHOLE_DEG) + WHOLE_DEG) % WHOLE_DEG;
    const whole = Math.round(degrees) % WHOLE_DEG;
    slider.value = String(whole);
    if (phase === "settled") set(slider, { "aria-valuetext": spoken(whole) });
    onTurn(whole, phase);
  }

  /** @param {number} now_ms */
  function step(now_ms) {
    // A pause between two frames, such as a tab that slept, is no turn.
    const passed_ms = Math.min(100, now_ms - last_ms);
    last_ms = now_ms;
    moveTo(degrees + (WHOLE_DEG * passed_ms) / TURN_MS, "moving");
    frame = requestAnimationFrame(step);
  }

  /** Runs while it is wanted and can be seen. */
  function run() {
    const runs = wanted && inSight && !document.hidden && !still.matches;
    set(element, { "data-turning": runs });
    if (runs && !frame) {
      last_ms = performance.now();
      frame = requestAnimationFrame(step);
    } else if (!runs && frame) {
      cancelAnimationFrame(frame);
      frame = 0;
    }
  }

  function stop() {
    wanted = false;
    write();
    run();
  }

  function write() {
    say(button, wanted ? pause : play);
    set(button, { "aria-pressed": String(wanted), hidden: still.matches });
  }

  function onStill() {
    if (still.matches) wanted = false;
    write();
    run();
  }

  button.addEventListener("click", () => {
    wanted = !wanted;
    write();
    run();
    if (!wanted) moveTo(Math.round(degrees), "settled");
  });
  slider.addEventListener("input", () => {
    if (wanted) stop();
    moveTo(Number(slider.value), "settled");
  });
  document.addEventListener("visibilitychange", run);
  still.addEventListener("change", onStill);
  const observer = new IntersectionObserver((entries) => {
    inSight = entries[entries.length - 1].isIntersecting;
    run();
  });
  observer.observe(element);
  write();

  return {
    element,
    /** Where it stands without having been asked to. @param {number} next */
    place: (next) => moveTo(next, "settled"),
    turning: () => wanted,
    stop,
    destroy() {
      wanted = false;
      run();
      observer.disconnect();
      document.removeEventListener("visibilitychange", run);
      still.removeEventListener("change", onStill);
    },
  };
}
