// @ts-check
/** The course kept: on this device by name, or as a file. The core writes the files. */

import { asCoreError, ask, ready } from "../core.js";
import { h } from "../frame/dom.js";
import { errorWords } from "../frame/field-words.js";
import { fileName, hand } from "../save/files.js";
import { aboutCourse } from "../state/scenario.js";
import { deviceStorage } from "../state/storage.js";
import { book } from "../words/index.js";
import { complaints, saveAs, when } from "./saving.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Kept } from "../state/storage.js" */
/** @import { CourseAnswer, FileForm } from "../types/core.d.ts" */

const say = book("sheet");
const words = book("page");
const QUESTION = "course";
/** @type {Record<FileForm, string>} */
const TYPES = { gpx: "application/gpx+xml", csv: "text/csv" };

/** @param {Page} page */
export function courseKeeping({ store, check, notify }) {
  const storage = deviceStorage();
  const { courses } = storage;
  const { elements: wrong, complain } = complaints();
  const name = h("input", { type: "text", maxlength: 120 });
  let proposed = "";
  const list = h("ul", { class: "saved" });
  const keep = h("button", { type: "submit" }, say("course.keep"));
  keep.hidden = !storage.available();
  const form = h(
    "form",
    {
      class: "row-actions",
      onsubmit: (/** @type {Event} */ event) => {
        event.preventDefault();
        if (storage.available()) saveAs(courses, name.value, workOf(), { complain, done: kept });
      },
    },
    h("label", {}, `${say("course.name")} `, name),
    keep,
  );
  const element = h(
    "div",
    { class: "course-edits" },
    h("h4", { class: "part-name" }, say("course.keeping")),
    form,
    storage.available() ? "" : h("p", { class: "row-hint" }, say("course.notKept")),
    ...wrong,
    list,
    h("p", { class: "row-hint" }, say("course.files")),
    h("p", { class: "row-actions" }, fileButton("gpx"), fileButton("csv")),
  );

  /** The course in use, as work that holds nothing else. */
  const workOf = () => ({ question: "", scenario: { course: store.get().scenario.course }, with: {} });

  /** @param {string} as */
  function kept(as) {
    notify(say("savedAs", { name: as }));
    showList();
  }

  /** @param {FileForm} form */
  function fileButton(form) {
    return h("button", { type: "button", onclick: () => write(form) }, say(`course.${form}`));
  }

  /** @param {FileForm} form */
  async function write(form) {
    complain("");
    try {
      await ready(QUESTION);
      const title = name.value.trim();
      const request = { scenario: aboutCourse(store.get().scenario), with: { export: form, name: title } };
      const { file, has_bearings, warnings } = /** @type {CourseAnswer} */ (
        /** @type {unknown} */ (ask(QUESTION, request))
      );
      hand(fileName(QUESTION, "", form, title), new Blob([file ?? ""], { type: TYPES[form] }));
      const said = [
        ...warnings
          .filter(({ text }) => text === "simplified")
          .map((warning) => errorWords(warning, store.get().units)),
        ...(form === "gpx" && !has_bearings ? [say("course.straight")] : []),
      ];
      if (said.length) notify(said.join(" "));
    } catch (thrown) {
      complain(say("course.notWritten", { why: errorWords(asCoreError(thrown), store.get().units) }));
    }
  }

  /** @param {string} called */
  function use(called) {
    complain("");
    const held = courses.open(called)?.scenario.course;
    if (!held) return complain(say("cannotRead", { name: called }));
    const refused = check({ ...store.get().scenario, course: held });
    if (refused) return complain(say("cannotOpen", { name: called, why: refused }));
    store.set("scenario.course", held);
    name.value = called;
    notify(say("course.used", { name: called }), { label: words("undo"), run: store.undo });
  }

  /** @param {string} called */
  function forget(called) {
    const held = courses.open(called);
    courses.forget(called);
    showList();
    keep.focus();
    notify(say("course.removed", { name: called }), { label: words("undo"), run: () => bringBack(called, held) });
  }

  /** @param {string} called @param {Kept | null} held */
  function bringBack(called, held) {
    if (held) saveAs(courses, called, held, { complain, done: showList });
  }

  function showList() {
    const entries = courses.list();
    list.hidden = !entries.length;
    list.replaceChildren(...entries.map(item));
  }

  /** @param {{ name: string, saved_at: string }} entry */
  function item({ name: called, saved_at }) {
    /** @param {"use" | "remove"} what @param {() => void} run */
    const button = (what, run) =>
      h(
        "button",
        { type: "button", "aria-label": say(`course.${what}Named`, { name: called }), onclick: run },
        say(`course.${what}`),
      );
    return h(
      "li",
      {},
      h("span", {}, h("b", {}, called), h("span", { class: "soft" }, ` ${when(saved_at)}`)),
      h(
        "span",
        { class: "row-actions" },
        button("use", () => use(called)),
        button("remove", () => forget(called)),
      ),
    );
  }

  showList();
  return {
    element,
    /** Proposes a name where none was typed: that of a file, without its ending. @param {string} file */
    propose(file) {
      if (name.value !== proposed) return;
      proposed = file.replace(/\.[^.]*$/, "").slice(0, name.maxLength);
      name.value = proposed;
    },
  };
}
