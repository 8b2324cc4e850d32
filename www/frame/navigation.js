// @ts-check
/** The address bar and the browser's Back and Forward. Typing replaces the address; only going to another question adds to the history. */

import { decode, encode, LinkError, questionOf } from "../state/address.js";
import { book } from "../words/index.js";

/** @import { State, Store } from "../state/history.js" */
/** @import { JsonObject, Linked } from "../types/page.d.ts" */

/** The address follows once the hands rest: browsers refuse many changes in a row. */
const REST_MS = 400;

const say = book("page");

/**
 * @param {object} page
 * @param {Store} page.store
 * @param {{ scenario: JsonObject, with: (question: string) => JsonObject }} page.defaults
 * @param {(question: string) => boolean} page.exists
 * @param {(question: string) => boolean} page.withScenario whether its links carry the scenario
 * @param {(linked: Linked) => Promise<void>} page.onLink a link with numbers was opened
 * @param {(message: string) => void} page.onTrouble
 */
export function createNavigation({ store, defaults, exists, withScenario, onLink, onTrouble }) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  let latest = 0;
  /** What the page holds while the address is of a link whose question could not be fetched; it stays there for a reload. @type {State | undefined} */
  let unopened;

  /** The hash for what is on the page now. @param {State} [state] */
  function currentHash({ question, scenario, with: details } = store.get()) {
    return encode(
      { question, scenario: withScenario(question) ? scenario : defaults.scenario, with: details[question] },
      { scenario: defaults.scenario, with: defaults.with(question) },
    );
  }

  /** The whole link to a state. @param {State} state */
  const linkTo = async (state) => new URL(await currentHash(state), location.href).href;

  async function write() {
    if (unopened === store.get()) return;
    const turn = ++latest;
    const hash = await currentHash();
    if (turn === latest && (hash !== location.hash || !history.state?.ours))
      history.replaceState({ ours: true }, "", hash);
  }

  /** Opens what an address says. @param {string} hash */
  async function open(hash) {
    const question = questionOf(hash);
    if (!question) return;
    if (!exists(question)) return onTrouble(say("noSuchQuestion", { name: question.slice(0, 40) }));
    const linked = await read(hash);
    if (!linked) return store.go(question);
    try {
      await onLink(linked);
    } catch {
      // Whoever shows the question says that it could not be fetched.
      store.go(question);
      unopened = store.get();
    }
  }

  /** What a link holds; nothing where it holds nothing, or cannot be read. @param {string} hash */
  async function read(hash) {
    try {
      return await decode(hash, defaults);
    } catch (error) {
      onTrouble(error instanceof LinkError ? say("link.refused", { why: error.message }) : say("link.notRead"));
      return null;
    }
  }

  addEventListener("popstate", async ({ state }) => {
    // Our own entries only say which question; the numbers stay what they are now.
    if (state?.ours) store.go(questionOf(location.hash));
    else await open(location.hash);
    write();
  });

  store.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(write, REST_MS);
  });

  return {
    /** Reads the address with which the page was opened. */
    start: async () => {
      await open(location.hash);
      await write();
    },
    /** @param {string} question */
    go(question) {
      if (question === store.get().question) return;
      history.pushState({ ours: true }, "", `#${question}`);
      store.go(question);
    },
    /** Puts what is on the page now into the address, without waiting for a rest. */
    write,
    /** The whole link to what is on the page now. */
    link: () => linkTo(store.get()),
    linkTo,
  };
}
