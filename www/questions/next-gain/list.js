// @ts-check
/** The list of changes, each with what it changes, its chance, money and hours: edited, added to, taken from. */

import { citation } from "../../citations.js";
import { choice } from "../../parts/choice.js";
import { html, say } from "../../parts/html.js";
import { keyedList } from "../../parts/keyed-list.js";
import { amountOf } from "../../state/scenario.js";
import { book } from "../../words/index.js";
import { calledBy, KINDS, kindOf, meaningOf, nameOf, noteOf, takesOf } from "./candidates.js";

/** @import { Tools } from "../index.js" */
/** @import { State } from "../../state/history.js" */
/** @import { CoreError } from "../../core.js" */
/** @import { BoundNumberOptions } from "../../frame/bound-number.js" */
/** @import { Candidate, Change } from "../../types/core.d.ts" */

/** @typedef {{ element: HTMLElement, update: (state: State, error: CoreError | null) => boolean }} Row */

const words = book("next-gain");
const AT = "with.next-gain";
const MOST = 20;
/** Sizes are told with these of the number fields' options, whatever the scenario holds. */
const WIDEST = { min: -1e6, max: 1e6 };

/** @param {Tools} tools @param {() => readonly Candidate[]} usual the list while the rider has none of their own */
export function changeList(tools, usual) {
  const { store } = tools;
  const cards = html("div", { class: "changes" });
  const full = html("p", { class: "soft", hidden: true }, words("full"));
  /** Whether the last of them is new, and not yet opened. */
  let added = false;
  const add = button(words("add"), () => {
    added = true;
    put([...list(), fresh()]);
  });
  const element = html(
    "div",
    {},
    html("p", {}, ...words.parts("listLead")),
    cards,
    full,
    html(
      "p",
      { class: "row-actions" },
      add,
      button(words("usualTrained"), () => start("trained")),
      button(words("usualNew"), () => start("new")),
    ),
  );
  const made = keyedList(
    cards,
    /** @returns {ReturnType<typeof card>} */
    (c, before) => {
      const one = card(store.get(), c);
      one.element.open = before?.element.open ?? false;
      return one;
    },
  );

  /** @returns {readonly Candidate[]} */
  const list = () => store.at(`${AT}.candidates`) ?? usual();

  /** @param {readonly Candidate[]} candidates @param {string} [merge] */
  function put(candidates, merge) {
    store.set(`${AT}.candidates`, candidates, merge ? { merge } : {});
  }

  /** A list that is one of the usual ones again. @param {string} standing */
  function start(standing) {
    store.setAll([
      [`${AT}.standing`, standing],
      [`${AT}.candidates`, undefined],
    ]);
  }

  /** @returns {Candidate} */
  function fresh() {
    return /** @type {Candidate} */ ({
      key: "",
      name: "",
      changes: [changeOf(KINDS[0].id)],
      chance: 0.7,
      money: 0,
      hours_per_week: 0,
      hours_once: 0,
      group: "",
      requires: "",
      evidence: "assumed",
      source: "",
      note: "",
    });
  }

  /** @param {number} c @param {Partial<Candidate>} part @param {string} [merge] */
  function edit(c, part, merge) {
    const [before, after] = [calledBy(list()[c]), calledBy({ ...list()[c], ...part })];
    // Those that require it go on to do so under its new name.
    const follow = (/** @type {Candidate} */ one) =>
      before && one.requires === before ? { ...one, requires: after } : one;
    put(
      list().map((one, at) => (at === c ? { ...one, ...part } : follow(one))),
      merge && `${AT}.${c}.${merge}`,
    );
  }

  /** @param {number} c */
  function remove(c) {
    const gone = calledBy(list()[c]);
    put(
      list()
        .filter((_, at) => at !== c)
        .map((one) => (gone && one.requires === gone ? { ...one, requires: "" } : one)),
    );
  }

  /** Those that a candidate may require: they have a name, and do not come after it themselves. @param {number} c */
  function requirable(c) {
    const all = list();
    const comesAfter = (/** @type {Candidate | undefined} */ one) => {
      for (let steps = 0; one && steps < all.length; steps += 1) {
        if (one === all[c]) return true;
        const { requires } = one;
        one = requires ? all.find((other) => calledBy(other) === requires) : undefined;
      }
      return false;
    };
    const options = all.map((one, at) => ({
      value: calledBy(one),
      name: nameOf(one, at),
      open: calledBy(one) !== "" && !comesAfter(one),
    }));
    return [{ value: "", name: words("requiresNone") }, ...options.filter(({ open }) => open)];
  }

  /** @param {number} c @param {number} i @param {Change | null} change @param {string} [merge] */
  function editChange(c, i, change, merge) {
    const changes = list()[c].changes.flatMap((one, at) => (at === i ? (change ? [change] : []) : [one]));
    // What was read somewhere is not what the rider puts in its place.
    edit(c, { changes, evidence: "assumed", source: "" }, merge);
  }

  /** @param {string} id of a kind, or `position N` @returns {Change} */
  function changeOf(id) {
    const kind = KINDS.find((one) => one.id === id);
    if (!kind) return /** @type {Change} */ ({ use_position: Number(id.split(" ")[1]) });
    const amount = { value: kind.start, sd: kind.sd, source: /** @type {const} */ ("estimated") };
    return /** @type {Change} */ (
      kind.share ? { field: kind.field, share: amount } : { field: kind.field, by: amount }
    );
  }

  /** What decides which controls each has. @param {State} state */
  const structure = ({ scenario }) =>
    list().map(({ changes }, c) =>
      JSON.stringify([
        c,
        changes.map((change) => kindOf(change)?.id ?? change),
        scenario.positions.map(({ name }) => name),
      ]),
    );

  /** @param {State} state @param {number} c */
  function card(state, c) {
    const title = html("span", { class: "fold-name" });
    const gist = html("span", { class: "soft" });
    const about = html("p", { class: "row-hint" });
    const name = text(words("name"), (value) => edit(c, { name: value, key: "" }, "name"));
    const group = text(words("group"), (value) => edit(c, { group: value }, "group"));
    const note = text(words("note"), (value) => edit(c, { note: value, key: "" }, "note"));
    const effects = list()[c].changes.map((_, i) => effect(state, c, i));
    const rows = [
      ...effects,
      number(
        words("chance"),
        { path: `${AT}.candidates[${c}].chance`, kind: "share", step: 5 },
        () => list()[c]?.chance,
        (chance) => edit(c, { chance }, "chance"),
      ),
      number(
        words("money"),
        { path: `${AT}.candidates[${c}].money`, kind: "ratio", digits: 0, step: 10 },
        () => list()[c]?.money,
        (money) => edit(c, { money }, "money"),
      ),
      number(
        words("hoursOnce"),
        { path: `${AT}.candidates[${c}].hours_once`, kind: "ratio", step: 0.5 },
        () => list()[c]?.hours_once,
        (hours_once) => edit(c, { hours_once }, "once"),
      ),
      number(
        words("hoursPerWeek"),
        { path: `${AT}.candidates[${c}].hours_per_week`, kind: "ratio", step: 0.5 },
        () => list()[c]?.hours_per_week,
        (hours_per_week) => edit(c, { hours_per_week }, "weekly"),
      ),
      number(
        words("weeks"),
        { path: `${AT}.candidates[${c}].weeks`, kind: "ratio", digits: 0, step: 1 },
        () => list()[c]?.weeks ?? store.at(`${AT}.weeks`),
        (weeks) => edit(c, { weeks }, "weeks"),
      ),
    ];
    const requires = choice({
      label: words("requires"),
      path: `${AT}.candidates[${c}].requires`,
      options: requirable(c),
      onChange: (value) => edit(c, { requires: value }),
    });
    const texts = { name, group, note };
    const element = html(
      "details",
      { class: "position" },
      html("summary", {}, title, gist),
      name.element,
      ...effects.map((row) => row.element),
      html(
        "p",
        { class: "row-actions" },
        button(words("addEffect"), () => edit(c, { changes: [...list()[c].changes, changeOf("powerShare")] })),
      ),
      html("div", { class: "pairs" }, ...rows.slice(effects.length).map((row) => row.element)),
      group.element,
      html("p", { class: "row-hint" }, words("groupHint")),
      html(
        "div",
        { class: "row" },
        html("span", { class: "row-label" }, words("requires")),
        html("span", { class: "row-controls" }, requires.element),
      ),
      html("p", { class: "row-hint" }, words("requiresHint")),
      note.element,
      about,
      html(
        "p",
        { class: "row-actions" },
        button(words("remove"), () => remove(c)),
      ),
    );
    return {
      element,
      rows,
      head: () => {
        const one = list()[c];
        say(title, html("span", { class: meaningOf(one) }, nameOf(one, c)));
        say(gist, takesOf(one, store.at(AT).currency));
        requires.update({ value: one.requires ?? "", options: requirable(c) });
        for (const [key, field] of Object.entries(texts))
          field.show(key === "name" ? nameOf(one, c) : key === "note" ? noteOf(one) : one.group);
        say(about, [
          words(one.evidence),
          ...(one.source ? [" ", html("span", { lang: "en" }, citation(one.source))] : []),
        ]);
      },
    };
  }

  /** One thing that a candidate changes. @param {State} state @param {number} c @param {number} i @returns {Row} */
  function effect(state, c, i) {
    const change = list()[c].changes[i];
    const kind = kindOf(change);
    const path = `${AT}.candidates[${c}].changes[${i}]`;
    const positions = state.scenario.positions.map(({ name }, at) => ({
      value: `position ${at}`,
      name: words("ridePosition", { name: name || words("positionNumber", { number: at + 1 }) }),
    }));
    const known = KINDS.map(({ id }) => ({ value: id, name: words(/** @type {`kinds.${"mass"}`} */ (`kinds.${id}`)) }));
    const own = kind?.id ?? (change.use_position === undefined ? "other" : `position ${change.use_position}`);
    const other = own === "other" ? [{ value: "other", name: words("other", { field: change.field ?? "" }) }] : [];
    const pick = choice({
      label: words("whatItChanges"),
      path,
      options: [...known, ...positions, ...other],
      onChange: (id) => editChange(c, i, changeOf(id)),
    });
    pick.update({ value: own });
    const amountName = change.share === undefined ? "by" : "share";
    const held = () => list()[c]?.changes[i]?.[amountName];
    const look =
      kind?.share || amountName === "share"
        ? { kind: /** @type {const} */ ("share"), step: 0.5 }
        : {
            ...WIDEST,
            kind: kind?.kind ?? /** @type {const} */ ("ratio"),
            ...(kind?.digits !== undefined && { digits: kind.digits }),
            ...(kind?.step !== undefined && { step: kind.step }),
          };
    const sizes =
      change.use_position === undefined
        ? [
            number(
              words("size"),
              { path: `${path}.${amountName}`, signed: true, ...look },
              () => amountOf(held()),
              (value) =>
                editChange(
                  c,
                  i,
                  { ...list()[c].changes[i], [amountName]: { sd: 0, source: "estimated", ...held(), value } },
                  `${i}`,
                ),
            ),
            number(
              words("spread"),
              { path: `${path}.${amountName}.sd`, ...look, min: 0, signed: false, kind: look.kind },
              () => held()?.sd ?? 0,
              (sd) =>
                editChange(
                  c,
                  i,
                  {
                    ...list()[c].changes[i],
                    [amountName]: { source: "estimated", ...held(), value: amountOf(held()), sd },
                  },
                  `${i}.sd`,
                ),
              "±",
            ),
          ]
        : [];
    const remove = list()[c].changes.length > 1 ? [button(words("removeEffect"), () => editChange(c, i, null))] : [];
    return {
      element: html(
        "div",
        { class: "row" },
        html("span", { class: "row-label" }, words("whatItChanges")),
        html("span", { class: "row-controls" }, pick.element),
        html("div", { class: "pairs" }, ...sizes.map((row) => row.element)),
        ...remove,
      ),
      update: (now, error) => sizes.map((row) => row.update(now, error)).includes(true),
    };
  }

  /** @param {string} label @param {Partial<BoundNumberOptions> & { path: string }} options @param {() => number | undefined} value @param {(si: number) => void} onChange @param {string} [sign] @returns {Row} */
  function number(label, options, value, onChange, sign) {
    const field = tools.number({
      ...options,
      label,
      spread: false,
      value: () => value() ?? null,
      changes: (si) => {
        // The whole list is the rider's own from the first edit on.
        onChange(si);
        return [];
      },
    });
    return {
      element: html(
        "div",
        { class: "row" },
        html("span", { class: "row-label" }, label),
        html("span", { class: "row-controls" }, ...(sign ? [sign] : []), field.element),
        field.note,
      ),
      update: (state, error) => field.update(state, error),
    };
  }

  /** @param {string} label @param {(value: string) => void} onInput */
  function text(label, onInput) {
    const input = html("input", { type: "text", maxlength: 80 });
    input.addEventListener("input", () => onInput(input.value));
    input.addEventListener("change", () => store.settle());
    return {
      element: html("label", { class: "row" }, html("span", { class: "row-label" }, label), input),
      /** @param {string} value */
      show: (value) => {
        if (document.activeElement !== input) input.value = value;
      },
    };
  }

  /** @param {readonly { element: HTMLDetailsElement }[]} shown */
  function openLast(shown) {
    added = false;
    const element = shown[shown.length - 1].element;
    element.open = true;
    element.querySelector("input")?.focus();
  }

  return {
    element,
    list,
    /** @param {State} state @param {CoreError | null} error @returns {boolean} */
    update(state, error) {
      // Nobody has opened it yet.
      if (!element.isConnected) return false;
      const shown = made.update(structure(state));
      add.disabled = list().length >= MOST;
      full.hidden = !add.disabled;
      for (const one of shown) one.head();
      if (added) openLast(shown);
      return shown.flatMap(({ rows }) => rows.map((row) => row.update(state, error))).includes(true);
    },
  };
}

/** @param {string} label @param {() => void} onClick */
function button(label, onClick) {
  const element = html("button", { type: "button" }, label);
  element.addEventListener("click", onClick);
  return element;
}
