// @ts-check
/** The rider's work between visits: restored, saved as it changes, never lost to a link, never mixed up between tabs. */

import { isObject } from "../parts/json.js";
import { patched } from "../state/address.js";
import { same } from "../state/scenario.js";
import { book } from "../words/index.js";

/** @import { Page } from "./page.js" */
/** @import { deviceStorage } from "../state/storage.js" */
/** @import { State } from "../state/history.js" */
/** @import { Json, JsonObject, Linked, Work } from "../types/page.d.ts" */

const REST_MS = 500;

const say = book("page");

/**
 * @param {Page} page
 * @param {ReturnType<typeof deviceStorage>} storage
 * @param {object} own of a question by its id: its defaults, against which work is read, and what a new rider finds
 * @param {(question: string) => JsonObject} own.defaultsOf
 * @param {(question: string, units: { distance: string }) => JsonObject} own.newOf
 */
export function createWork({ store, filler, check, notify, questions }, storage, { defaultsOf, newOf }) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let kept = store.get();
  /** Whether the last work on the device is the rider's own and stands nowhere else. */
  let lastIsOnly = false;
  const said = new Set();

  /** Says something once a visit. @param {"work.newer" | "work.notKept" | "work.otherTab"} what */
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
    if (!changed || (lastIsOnly && state.from_link)) return;
    const outcome = storage.keepLast(state);
    if (outcome.done) return;
    sayOnce(outcome.because === "newer-layout" ? "work.newer" : "work.notKept");
  }

  /**
   * Puts work from a file, a link or the device in place, as one step of undo.
   * @param {Work} work
   * @returns {string | null} the sentence about what is wrong with it; then nothing was changed
   */
  function adopt({ question, scenario, with: details }) {
    const refused = check(scenario);
    if (refused) return refused;
    store.replace({ ...stateWith({ question, scenario, with: usable(details ?? {}) }), from_link: false });
    return null;
  }

  /** The state with work in it whose scenario has been checked. @param {Work} work @returns {State} */
  function stateWith({ question, scenario, with: details }) {
    const state = store.get();
    /** @type {Record<string, JsonObject>} */
    const next = { ...state.with };
    for (const [id, given] of Object.entries(details ?? {}))
      if (Object.hasOwn(next, id) && isObject(given))
        next[id] = { ...defaultsOf(id), ...patched(defaultsOf(id), given) };
    const filled = filler.fill(scenario);
    for (const { id, positionFields = [] } of questions) {
      for (const name of positionFields)
        if (Number(next[id][name]) >= filled.positions.length) next[id] = { ...next[id], [name]: 0 };
    }
    return {
      ...state,
      question: question !== undefined && Object.hasOwn(next, question) ? question : state.question,
      scenario: filled,
      with: /** @type {State["with"]} */ (next),
    };
  }

  /** The rider's own numbers that stood on the page last, as one step of undo. */
  function bringBackOwn() {
    const own = storage.recent().find(({ from_link }) => !from_link);
    if (!own || adopt(own)) store.undo();
  }

  /** A question's own numbers as far as each is of the kind that it is by default: nobody has looked at the rest. @param {JsonObject} details */
  function usable(details) {
    /** @type {JsonObject} */
    const kept = {};
    for (const [id, given] of Object.entries(details))
      if (Object.hasOwn(store.get().with, id) && isObject(given)) kept[id] = ofKind(given, defaultsOf(id));
    return kept;
  }

  /** The numbers that are of the kind that they are by default. @param {JsonObject} given @param {JsonObject} usual */
  function ofKind(given, usual) {
    const fits = (/** @type {[string, Json]} */ [name, value]) =>
      !Object.hasOwn(usual, name) || kind(value) === kind(usual[name]) || isNumber(value, usual[name]);
    return Object.fromEntries(Object.entries(given).filter(fits));
  }

  /** @param {Json} value */
  function kind(value) {
    return Array.isArray(value) ? "list" : value === null ? "nothing" : typeof value;
  }

  /** A number stands for one with its spread, and the other way round. @param {Json} value @param {Json} usual */
  function isNumber(value, usual) {
    return (
      (typeof value === "number" && isObject(usual) && typeof usual.value === "number") ||
      (isObject(value) && typeof value.value === "number" && typeof usual === "number")
    );
  }

  store.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(keep, REST_MS);
  });
  addEventListener("pagehide", keep);
  storage.onOtherTab(({ what, name }) => {
    if (what === "last") sayOnce("work.otherTab");
    else notify(say("work.otherTabSaved", { name: name ?? "" }));
  });

  return {
    adopt,
    /** Brings back what was on the page at the last visit. */
    restore() {
      const last = storage.last();
      if (!last) return;
      const refused = adopt(last);
      if (refused) {
        storage.keepRecent(last);
        notify(say("work.lastUnusable", { why: refused }));
      } else if (last.from_link) {
        store.replace({ ...store.get(), from_link: true }, { undoable: false });
      }
      kept = store.get();
    },
    /**
     * Opens a link: the rider's own numbers are kept aside, and Undo brings them back.
     * @param {Linked} linked
     * @param {string | null} refusedBefore what is wrong with it, as far as that is known
     */
    openLink({ question, scenario, with: details, otherDefaults }, refusedBefore) {
      const own = store.get();
      const linked = { question, scenario, with: { [question]: details } };
      const refused = refusedBefore ?? adopt(linked);
      if (refused) {
        store.go(question);
        return notify(say("link.unusable", { why: refused }));
      }
      const opened = { ...store.get(), from_link: true };
      store.replace(opened, { undoable: false });
      if (same(opened.scenario, own.scenario) && same(opened.with, own.with))
        return store.replace({ ...opened, from_link: own.from_link === true }, { undoable: false });
      clearTimeout(timer);
      kept = opened;
      const hadOwn = ![filler.defaults(), filler.metricDefaults()].some((fresh) => same(own.scenario, fresh));
      if (hadOwn && !storage.keepRecent(own).done) {
        lastIsOnly = !own.from_link;
        sayOnce("work.notKept");
      }
      if (hadOwn)
        notify(say(otherDefaults ? "link.openedChanged" : "link.opened"), {
          label: say("link.back"),
          run: own.from_link ? bringBackOwn : store.undo,
        });
      else if (otherDefaults) notify(say("link.changed"));
    },
    /** The state with a link in it whose scenario has been checked. @param {Omit<Linked, "otherDefaults">} linked */
    stateOf: ({ question, scenario, with: details }) =>
      stateWith({ question, scenario, with: { [question]: details } }),
    startAfresh() {
      const state = store.get();
      const fresh = /** @type {State["with"]} */ (
        Object.fromEntries(Object.keys(state.with).map((id) => [id, newOf(id, state.units)]))
      );
      store.replace({ ...state, scenario: filler.newFor(state.units), with: fresh, from_link: false });
    },
  };
}
