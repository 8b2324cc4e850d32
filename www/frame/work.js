// @ts-check
/** The rider's work between visits: restored, saved as it changes, never lost to a link, never mixed up between tabs. */

import { patched } from "../state/address.js";
import { same } from "../state/scenario.js";
import { book } from "../words/index.js";

/** @import { Page } from "./page.js" */
/** @import { deviceStorage } from "../state/storage.js" */
/** @import { State } from "../state/history.js" */

const REST_MS = 500;

const say = book("page");

/**
 * @param {Page} page
 * @param {ReturnType<typeof deviceStorage>} storage
 * @param {(question: string) => any} defaultsOf a question's own defaults
 */
export function createWork({ store, filler, check, checkQuestion, notify, questions }, storage, defaultsOf) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let kept = store.get();
  const said = new Set();

  /** Says something once a visit. @param {"work.newer" | "work.not_kept" | "work.other_tab"} what */
  function sayOnce(what) {
    if (said.has(what)) return;
    said.add(what);
    notify(say(what));
  }

  function keep() {
    clearTimeout(timer);
    const state = store.get();
    if (state.units !== kept.units) storage.keepUnits(state.units);
    const changed = state.scenario !== kept.scenario || state.with !== kept.with || state.question !== kept.question;
    kept = state;
    if (!changed) return;
    const outcome = storage.keepLast(state);
    if (outcome.done) return;
    sayOnce(outcome.because === "newer-layout" ? "work.newer" : "work.not_kept");
  }

  /**
   * Puts work from a file, a link or the device in place, as one step of undo.
   * @param {{ question?: string, scenario: any, with?: Record<string, any> }} work
   * @returns {string | null} the sentence about what is wrong with it; then nothing was changed
   */
  function adopt({ question, scenario, with: details }) {
    const refused = check(scenario);
    if (refused) return refused;
    store.replace(stateWith({ question, scenario, with: details }));
    return null;
  }

  /** The state with work in it whose scenario has been checked. @param {{ question?: string, scenario: any, with?: Record<string, any> }} work @returns {State} */
  function stateWith({ question, scenario, with: details }) {
    const state = store.get();
    const next = { ...state.with };
    for (const [id, given] of Object.entries(details ?? {})) if (Object.hasOwn(next, id)) next[id] = { ...defaultsOf(id), ...patched(defaultsOf(id), given) };
    const filled = filler.fill(scenario);
    for (const { id, positionFields = [] } of questions) {
      for (const name of positionFields) if (next[id][name] >= filled.positions.length) next[id] = { ...next[id], [name]: 0 };
    }
    return { ...state, question: question !== undefined && Object.hasOwn(next, question) ? question : state.question, scenario: filled, with: next };
  }

  store.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(keep, REST_MS);
  });
  addEventListener("pagehide", keep);
  storage.onOtherTab(({ what, name }) => {
    if (what === "last") sayOnce("work.other_tab");
    else notify(say("work.other_tab_saved", { name: name ?? "" }));
  });

  return {
    adopt,
    /** Brings back what was on the page at the last visit. */
    restore() {
      const last = storage.last();
      if (!last) return;
      const refused = adopt(last);
      if (refused) {
        storage.keepBeforeLink(last);
        notify(say("work.last_unusable", { why: refused }));
      }
      kept = store.get();
    },
    /**
     * Opens a link: the rider's own numbers are kept aside, and Undo brings them back.
     * @param {{ question: string, scenario: any, with: any, otherDefaults: boolean }} linked
     */
    openLink({ question, scenario, with: details, otherDefaults }) {
      const own = store.get();
      const linked = { question, scenario, with: { [question]: details } };
      const refused = check(scenario) ?? checkQuestion(stateWith(linked)) ?? adopt(linked);
      if (refused) {
        store.go(question);
        return notify(say("link.unusable", { why: refused }));
      }
      const opened = store.get();
      if (same(opened.scenario, own.scenario) && same(opened.with, own.with)) return;
      clearTimeout(timer);
      kept = opened;
      const hadOwn = !same(own.scenario, filler.defaults());
      if (hadOwn) storage.keepBeforeLink(own);
      if (hadOwn) notify(say(otherDefaults ? "link.opened_changed" : "link.opened"), { label: say("link.back"), run: store.undo });
      else if (otherDefaults) notify(say("link.changed"));
    },
    startAfresh() {
      const state = store.get();
      /** @type {State["with"]} */
      const fresh = Object.fromEntries(Object.keys(state.with).map((id) => [id, defaultsOf(id)]));
      store.replace({ ...state, scenario: filler.defaults(), with: fresh });
    },
  };
}
