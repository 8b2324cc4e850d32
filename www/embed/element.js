// @ts-check
/** `<faster-by question="power-or-drag">…</faster-by>`: keeps room for a question, and loads it, with all that shows it, when it comes near the window. */

import { languageOf } from "../words/languages.js";
import { roomFor } from "./room.js";

/** How far outside the window a place begins to load. */
const NEAR = "600px";
const ATTRIBUTES = ["question", "scenario", "with", "state", "units", "change", "theme", "lang"];

const BASE = `
:host { display: flow-root; }
:host([hidden]) { display: none; }
.place { all: initial; display: flow-root; font-size: medium; container-type: inline-size; }
.room { display: flow-root; }
.why { font: .875em/1.5 system-ui, sans-serif; }
`;

/** What shows a question, once it is loaded. @type {typeof import("./place.js") | undefined} */
let shows;

/** The language of a place: its own, or that of the page around it, or the visitor's. @param {Element} place */
const languageFor = (place) => languageOf([place.closest("[lang]")?.getAttribute("lang"), ...navigator.languages]);

class FasterBy extends HTMLElement {
  static observedAttributes = ATTRIBUTES;

  #size = new CSSStyleSheet();
  #room = document.createElement("div");
  /** @type {IntersectionObserver | null} */
  #watch = null;
  #near = false;
  #turn = 0;
  /** @type {(() => void) | null} */
  #takeAway = null;

  constructor() {
    super();
    const base = new CSSStyleSheet();
    base.replaceSync(BASE);
    const shadow = this.attachShadow({ mode: "open" });
    shadow.adoptedStyleSheets = [base, this.#size];
    const place = document.createElement("div");
    place.className = "place";
    this.#room.className = "room";
    this.#room.append(document.createElement("slot"));
    place.append(this.#room);
    shadow.append(place);
  }

  connectedCallback() {
    this.#keepRoom();
    this.#watch = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        this.#watch?.disconnect();
        this.#near = true;
        this.#start();
      },
      { rootMargin: NEAR },
    );
    this.#watch.observe(this);
  }

  disconnectedCallback() {
    this.#watch?.disconnect();
    this.#near = false;
    this.#turn += 1;
    shows?.leave(this);
    this.#clear();
  }

  /** @param {string} _name @param {string | null} before @param {string | null} after */
  attributeChangedCallback(_name, before, after) {
    if (before === after || !this.isConnected) return;
    this.#keepRoom();
    if (this.#near) this.#start();
  }

  #keepRoom() {
    const id = this.getAttribute("question") ?? (this.getAttribute("state") ?? "").replace(/^.*#/, "").split("/")[0];
    this.#size.replaceSync(roomFor(id, languageFor(this)));
  }

  #clear() {
    this.#takeAway?.();
    this.#takeAway = null;
  }

  async #start() {
    const turn = ++this.#turn;
    const wanted = () => turn === this.#turn;
    // Several attributes may change at once.
    await null;
    if (!wanted()) return;
    try {
      shows = await import("./place.js");
      if (!wanted()) return;
      await shows.speakFor(this, languageFor(this));
      if (!wanted()) return;
      this.#clear();
      const takeAway = await shows.show(this, this.#room, wanted);
      if (!wanted()) return takeAway();
      this.#takeAway = takeAway;
    } catch (error) {
      if (wanted()) this.#say(error);
    }
  }

  /** The fallback stays, and a line below says why; neither needs the room of a question. @param {unknown} error */
  #say(error) {
    this.#clear();
    this.#size.replaceSync("");
    this.#room.replaceChildren(document.createElement("slot"), ...(shows?.whyNot(error) ?? [notLoaded()]));
  }
}

/** Its words are what could not be loaded, so these stand here, in English. */
function notLoaded() {
  const line = document.createElement("p");
  line.className = "why";
  line.setAttribute("part", "why");
  line.setAttribute("role", "note");
  line.lang = "en";
  line.textContent = "This question could not be loaded. Check the connection and reload the page.";
  return line;
}

if (!customElements.get("faster-by")) customElements.define("faster-by", FasterBy);
