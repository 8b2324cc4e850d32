// @ts-check
/** Save and open: scenarios kept on this device by name, and as files. */

import { h } from "../frame/dom.js";
import { download, fileName, readScenario, scenarioText } from "../state/files.js";
import { openDialog } from "./dialog.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Kept, deviceStorage } from "../state/storage.js" */

/**
 * @param {Page} page
 * @param {ReturnType<typeof deviceStorage>} storage
 * @param {{ adopt: (work: { question?: string, scenario: any, with?: Record<string, any> }) => string | null, startAfresh: () => void }} work
 *   `adopt` puts checked work in place as one step of undo, or gives the sentence about what is wrong with it
 */
export function openSaved(page, storage, { adopt, startAfresh }) {
  const { store, notify } = page;
  const message = h("p", { class: "wrong", role: "alert", hidden: true });
  const name = h("input", { type: "text", required: true, maxlength: 120, value: store.get().scenario.title ?? "" });
  const actions = h("p", { class: "row-actions", hidden: true });
  const list = h("ul", { class: "saved" });
  const file = h("input", { type: "file", accept: ".json,application/json", hidden: true, onchange: importFile });

  const form = h("form", { class: "row-actions", onsubmit: (/** @type {Event} */ event) => { event.preventDefault(); save(false); } },
    h("label", {}, "Name ", name), h("button", { type: "submit" }, "Save"));

  const dialog = openDialog("Save and open",
    h("p", { class: "soft" }, storage.available()
      ? "Saved in this browser on this device only. Clearing the browser’s data removes it; a file is safer."
      : "This browser keeps nothing for this page. A file or a link does."),
    storage.available() ? form : "", message, actions, list,
    h("h3", {}, "Files"),
    h("p", { class: "row-actions" },
      h("button", { type: "button", onclick: exportFile }, "Export as a file"),
      h("button", { type: "button", onclick: () => file.click() }, "Open a file"), file),
    h("p", { class: "row-actions" }, h("button", { type: "button", onclick: () => { startAfresh(); dialog.close(); notify("All numbers are the typical ones again.", { label: "Undo", run: store.undo }); } }, "Start afresh")),
  );

  /** @param {string} text @param {...[label: string, run: () => void]} choices */
  function complain(text, ...choices) {
    message.hidden = !text;
    message.textContent = text;
    actions.hidden = !choices.length;
    actions.replaceChildren(...choices.map(([label, run]) => h("button", { type: "button", onclick: run }, label)));
  }

  /** @param {boolean} replace */
  function save(replace) {
    const as = name.value.trim();
    if (!as) return complain("Give it a name first.");
    const outcome = storage.save(as, store.get(), { replace });
    if (outcome.done) {
      complain("");
      notify(`Saved on this device as “${as}”.`);
      showList();
    } else if (outcome.because === "full") {
      complain("This device would not keep it: its storage is full or switched off. Export a file instead.");
    } else if (outcome.because === "newer-layout") {
      complain(`“${as}” was saved by a newer version of this page and is left as it is. Save under another name.`);
    } else {
      complain(`There is already a “${as}”, saved ${when(outcome.saved_at)}. Save under another name, or replace it.`, ["Replace it", () => save(true)]);
    }
  }

  /** @param {string} label @param {Kept | null} kept */
  function open(label, kept) {
    if (!kept) return complain(`“${label}” cannot be read by this version of the page; it is left as it is.`);
    const refused = adopt(kept);
    if (refused) return complain(`“${label}” cannot be opened: ${refused}`);
    dialog.close();
    notify(`Opened “${label}”.`, { label: "Undo", run: store.undo });
  }

  async function importFile() {
    const chosen = file.files?.[0];
    file.value = "";
    if (!chosen) return;
    const read = await readScenario(chosen);
    const refused = "message" in read ? read.message : adopt({ scenario: read.scenario });
    if (refused) return complain(`${chosen.name}: ${refused}`);
    dialog.close();
    notify(`Opened ${chosen.name}.`, { label: "Undo", run: store.undo });
  }

  function exportFile() {
    const { scenario } = store.get();
    download(fileName(scenario.title ?? ""), scenarioText(scenario));
  }

  /** @param {string} label @param {string} saved_at @param {() => Kept | null} read @param {(() => void) | null} forget */
  function item(label, saved_at, read, forget) {
    return h("li", {}, h("span", {}, h("b", {}, label), h("span", { class: "soft" }, ` ${when(saved_at)}`)),
      h("span", { class: "row-actions" },
        h("button", { type: "button", "aria-label": `Open ${label}`, onclick: () => open(label, read()) }, "Open"),
        forget && h("button", { type: "button", "aria-label": `Remove ${label}`, onclick: forget }, "Remove")));
  }

  /** @param {string} saved */
  function forget(saved) {
    complain(`Remove “${saved}” from this device? This cannot be undone.`,
      ["Remove it", () => { storage.forget(saved); complain(""); showList(); }], ["Keep it", () => complain("")]);
  }

  function showList() {
    const before = storage.beforeLink();
    list.replaceChildren(
      ...storage.list().map((entry) => item(entry.name, entry.saved_at, () => storage.open(entry.name), () => forget(entry.name))),
      ...(before ? [item("Your numbers before the last link", before.saved_at, storage.beforeLink, null)] : []));
  }
  showList();
}

/** @param {string | undefined} saved_at */
function when(saved_at) {
  const date = new Date(saved_at ?? "");
  return Number.isNaN(date.getTime()) ? "" : date.toLocaleString("en-GB", { day: "numeric", month: "short", year: "numeric", hour: "2-digit", minute: "2-digit" });
}
