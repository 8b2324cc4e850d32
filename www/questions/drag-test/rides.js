// @ts-check
/** The recorded rides of a test: opening them, keeping them on the device if the rider asks for it, and a box for each. */

import most from "fasterby-most";
import { html, say, set } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { rideOf } from "../../recordings/asked-laps.js";
import { heldFiles, heldRecording } from "../../recordings/held.js";
import { canKeep, forgetFiles, keep, keptFile, keptSize } from "../../recordings/kept.js";
import { book } from "../../words/index.js";
import { opener, sizeWords } from "./opener.js";
import { lapOf, rideBox } from "./ride.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { Recording } from "../../recordings/read.js" */
/** @import { TestRow as Row } from "../../types/core.d.ts" */
/** @import { LapForm } from "../../types/page.d.ts" */

const words = book("drag-test");
const AT = "with.drag-test";

/** @param {Tools} tools */
export function ridesEditor(tools) {
  const { store } = tools;
  const boxes = html("div", { class: "rides" });
  const open = opener(tools, opened);
  const keeping = keepPart(tools);
  const element = html("div", { "data-changes": `${AT}.laps` }, open.element, keeping.element, boxes);
  const rows = keyedList(boxes, (index) => rideBox(tools, index, () => remove(index)));
  /** Marks whose kept file has been looked for. @type {Set<string>} */
  const looked = new Set();

  /** @param {string} mark @param {Recording} recording */
  function opened(mark, recording) {
    keeping.opened(mark);
    const { rides, laps } = store.get().with["drag-test"];
    if (rides.includes(mark)) {
      if (!looked.has(mark)) tools.notify(words("openAlready"));
      return seeAgain();
    }
    if (rides.length >= most.recordings) return tools.notify(words("mostRides", { count: most.recordings }));
    const own = firstLaps(recording, rides.length);
    store.setAll([
      [`${AT}.rides`, [...rides, mark]],
      [`${AT}.laps`, [...laps, ...own].slice(0, most.drag_rows)],
    ]);
    tools.notify(words("opened", { count: own.length }));
  }

  /** The numbers are as they were; what they are of is there now. */
  function seeAgain() {
    store.replace({ ...store.get() }, { undoable: false });
  }

  /** @param {number} ride */
  function remove(ride) {
    const { rides, laps } = store.get().with["drag-test"];
    const left = laps.flatMap((/** @type {LapForm} */ lap) => {
      const at = rideOf(lap);
      return at === ride ? [] : [{ ...lap, recording: at > ride ? at - 1 : at }];
    });
    store.setAll([
      [`${AT}.rides`, rides.filter((_, at) => at !== ride)],
      [`${AT}.laps`, left],
    ]);
    tools.notify(words("rideRemoved"), { label: words("undo"), run: () => store.undo() });
    open.focus();
  }

  /** What is kept on the device is opened without being asked for. @param {readonly string[]} marks */
  function openKept(marks) {
    for (const mark of marks.filter((one) => !looked.has(one) && !heldRecording(one))) {
      looked.add(mark);
      keptFile(mark).then((file) => file && open.read([{ file, mark }]));
    }
  }

  return {
    element,
    destroy() {
      open.destroy();
      rows.destroy();
    },
    /** @param {State} state @param {CoreError | null} error @param {ReadonlyMap<number, Row>} answered */
    update(state, error, answered) {
      const { rides } = state.with["drag-test"];
      openKept(rides);
      const made = rows.update(rides.map((mark, index) => JSON.stringify([index, mark])));
      return made.map((box) => box.update(state, error, answered)).includes(true);
    },
  };
}

/** A ride comes with its rounds; without any, with the laps of its device. @param {Recording} recording @param {number} ride @returns {LapForm[]} */
function firstLaps({ rounds, laps }, ride) {
  const spans = rounds.length ? rounds : laps.length > 1 ? laps : [];
  return spans.map((span) => lapOf(span, ride));
}

/** Files stay on the device only where the rider wants that. @param {Tools} tools */
function keepPart({ notify }) {
  const wanted = html("input", { type: "checkbox" });
  const forget = html("button", { type: "button" });
  const element = html(
    "p",
    { class: "keep-files soft" },
    html("label", { class: "check" }, wanted, words("keepFiles")),
    " ",
    forget,
  );
  async function tell() {
    const { count, bytes } = await keptSize();
    set(forget, { hidden: count === 0 });
    say(forget, words("forgetFiles", { count, size: sizeWords(bytes) }));
    if (count > 0) wanted.checked = true;
    element.hidden = !canKeep() || (heldFiles().length === 0 && count === 0);
  }

  async function keepThese(files = heldFiles()) {
    try {
      for (const [mark, file] of files) await keep(mark, file);
    } catch {
      wanted.checked = false;
      notify(words("notKept"));
    }
    await tell();
  }

  wanted.addEventListener("change", () => {
    if (wanted.checked) keepThese();
    else forgetAll();
  });
  forget.addEventListener("click", forgetAll);

  async function forgetAll() {
    try {
      await forgetFiles();
      wanted.checked = false;
      notify(words("forgotten"));
    } catch {
      notify(words("notForgotten"));
    }
    await tell();
  }

  tell();
  return {
    element,
    /** @param {string} opened its mark */
    opened(opened) {
      if (wanted.checked) keepThese(heldFiles().filter(([mark]) => mark === opened));
      else tell();
    },
  };
}
