// @ts-check
/** The guided story for newcomers. Its own numbers are held like a question's; its steps are fetched when it is first opened. */

import { html, say } from "../parts/html.js";
import { titleOf } from "../questions/shared/names.js";

/** @import { Question, Tools, View } from "../questions/index.js" */
/** @import { State } from "../state/history.js" */

/** @type {Question} */
export const story = {
  id: "start-here",
  group: "start",
  story: true,
  defaults: { speed_m_s: 8, power_w: 235, cda_m2: 0.24, power_change: 0.1, cda_change: -0.1, begins_s: 900, grade: 0, headwind_m_s: 0 },
  load: async () => ({ create }),
};

/** @param {HTMLElement} host @param {Tools} tools @returns {View} */
function create(host, tools) {
  const waiting = html("p", { class: "starting", role: "status" }, "Loading the story.");
  host.replaceChildren(html("h1", {}, titleOf(story.id)), waiting);
  /** @type {View | null} */
  let steps = null;
  /** @type {State | null} */
  let latest = null;
  let gone = false;

  import("./story.js").then(({ createStory }) => {
    if (gone) return;
    steps = createStory(host, tools);
    if (latest) steps.update(latest, null, null);
  }).catch((error) => {
    console.error(error);
    say(waiting, "The story could not be loaded. Check the connection and reload the page; the questions work without it.");
  });

  return {
    update(state) {
      latest = state;
      steps?.update(state, null, null);
    },
    destroy() {
      gone = true;
      steps?.destroy();
    },
  };
}
