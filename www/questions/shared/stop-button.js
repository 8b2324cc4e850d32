// @ts-check
/** One button that stops work in the background and resumes it; it stays, so that whoever is on it remains there. */

import { html, say } from "../../parts/html.js";

/** @import { BackgroundWork } from "./background-work.js" */

/** @param {Pick<BackgroundWork, "state" | "stop" | "resume" | "isBusy">} work @param {{ stop: string, resume: string }} names */
export function stopButton(work, names) {
  const element = html("button", { type: "button" });
  element.addEventListener("click", () => (work.state() === "stopped" ? work.resume() : work.stop()));
  return {
    element,
    update() {
      const stopped = work.state() === "stopped";
      element.hidden = !stopped && !work.isBusy();
      say(element, stopped ? names.resume : names.stop);
    },
  };
}
