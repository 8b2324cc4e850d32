// @ts-check
/** Save and open: scenarios kept on this device by name, and as files. */

import { openDialog } from "../frame/dialog.js";
import { h } from "../frame/dom.js";
import { hand } from "../save/files.js";
import { fileName, readScenario, scenarioText } from "../state/files.js";
import { book } from "../words/index.js";
import { complaints, saveAs, when } from "./saving.js";

/** @import { Page } from "../frame/page.js" */
/** @import { Work } from "../types/page.d.ts" */
/** @import { Kept, deviceStorage } from "../state/storage.js" */

const say = book("sheet");
const words = book("page");

/**
 * @param {Page} page
 * @param {ReturnType<typeof deviceStorage>} storage
 * @param {{ adopt: (work: Work) => string | null, startAfresh: () => void }} work
 *   `adopt` puts checked work in place as one step of undo, or gives the sentence about what is wrong with it
 */
export function openSaved(page, storage, { adopt, startAfresh }) {
  const { store, notify } = page;
  const { elements: wrong, complain } = complaints();
  const name = h("input", { type: "text", required: true, maxlength: 120, value: store.get().scenario.title ?? "" });
  const list = h("ul", { class: "saved" });
  const file = h("input", { type: "file", accept: ".json,application/json", hidden: true, onchange: importFile });

  const form = h(
    "form",
    {
      class: "row-actions",
      onsubmit: (/** @type {Event} */ event) => {
        event.preventDefault();
        saveAs(storage, name.value, store.get(), { complain, done: saved });
      },
    },
    h("label", {}, `${say("name")} `, name),
    h("button", { type: "submit" }, words("save")),
  );

  const dialog = openDialog(
    words("saveAndOpen"),
    h("p", { class: "soft" }, say(storage.available() ? "savedHere" : "notSavedHere")),
    storage.available() ? form : "",
    ...wrong,
    list,
    h("h3", {}, say("files")),
    h(
      "p",
      { class: "row-actions" },
      h("button", { type: "button", onclick: exportFile }, say("export")),
      h("button", { type: "button", onclick: () => file.click() }, say("openFile")),
      file,
    ),
    h(
      "p",
      { class: "row-actions" },
      h(
        "button",
        {
          type: "button",
          onclick: () => {
            startAfresh();
            dialog.close();
            notify(say("afreshDone"), { label: words("undo"), run: store.undo });
          },
        },
        say("afresh"),
      ),
    ),
  );

  /** @param {string} as */
  function saved(as) {
    notify(say("savedAs", { name: as }));
    showList();
  }

  /** @param {string} label @param {Kept | null} kept */
  function open(label, kept) {
    if (!kept) return complain(say("cannotRead", { name: label }));
    const refused = adopt(kept);
    if (refused) return complain(say("cannotOpen", { name: label, why: refused }));
    dialog.close();
    notify(say("opened", { name: label }), { label: words("undo"), run: store.undo });
  }

  async function importFile() {
    const chosen = file.files?.[0];
    file.value = "";
    if (!chosen) return;
    const read = await readScenario(chosen);
    const refused = "message" in read ? read.message : adopt(read);
    if (refused) return complain(say("fileRefused", { name: chosen.name, why: refused }));
    dialog.close();
    notify(say("openedFile", { name: chosen.name }), { label: words("undo"), run: store.undo });
  }

  function exportFile() {
    const { scenario } = store.get();
    hand(fileName(scenario.title ?? ""), new Blob([scenarioText(scenario)], { type: "application/json" }));
  }

  /** @param {string} label @param {string} saved_at @param {() => Kept | null} read @param {(() => void) | null} forget */
  function item(label, saved_at, read, forget) {
    return h(
      "li",
      {},
      h("span", {}, h("b", {}, label), h("span", { class: "soft" }, ` ${when(saved_at)}`)),
      h(
        "span",
        { class: "row-actions" },
        h(
          "button",
          { type: "button", "aria-label": say("openNamed", { name: label }), onclick: () => open(label, read()) },
          say("open"),
        ),
        forget &&
          h(
            "button",
            { type: "button", "aria-label": say("removeNamed", { name: label }), onclick: forget },
            say("remove"),
          ),
      ),
    );
  }

  /** @param {string} saved */
  function forget(saved) {
    complain(
      say("removeSure", { name: saved }),
      [
        say("removeIt"),
        () => {
          storage.forget(saved);
          complain("");
          showList();
        },
      ],
      [say("keepIt"), () => complain("")],
    );
  }

  function showList() {
    list.replaceChildren(
      ...storage.list().map((entry) =>
        item(
          entry.name,
          entry.saved_at,
          () => storage.open(entry.name),
          () => forget(entry.name),
        ),
      ),
      ...storage.recent().map((kept) => item(recentName(kept), kept.saved_at, () => kept, null)),
    );
  }
  showList();
}

/** What work that a link took the place of is called: whose it is, and its title. @param {Kept} kept */
function recentName({ from_link, scenario }) {
  const title = typeof scenario.title === "string" ? scenario.title : "";
  const name = say(from_link ? "recentLink" : "beforeLink");
  return title ? `${name}: \u2068${title}\u2069` : name;
}
