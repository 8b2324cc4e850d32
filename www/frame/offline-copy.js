// @ts-check
/** Asks the browser to keep the page on the device, and knows what to say about it. */

import { serviceWorker } from "#delivery";
import { book } from "../words/index.js";

const say = book("page");

/** Keeps the texts of a language on the device too. @param {string} language */
export function keepLanguage(language) {
  if (serviceWorker && navigator.serviceWorker)
    navigator.serviceWorker.ready.then(({ active }) => active?.postMessage({ language })).catch(() => {});
}

/** @returns {{ sentence: () => string }} */
export function keepOffline() {
  /** @type {"offline.newer" | "offline.kept" | "offline.notKept" | null} */
  let state = null;
  if (serviceWorker && /^https?:$/.test(location.protocol) && "serviceWorker" in navigator) {
    navigator.serviceWorker.register(serviceWorker).then(
      (registration) => {
        const tell = () => {
          if (registration.waiting && registration.active) state = "offline.newer";
          else if (registration.active) state = "offline.kept";
        };
        tell();
        navigator.serviceWorker.ready.then(tell);
        registration.addEventListener("updatefound", () =>
          registration.installing?.addEventListener("statechange", tell),
        );
      },
      () => {
        state = "offline.notKept";
      },
    );
  }
  return { sentence: () => (state ? say(state) : "") };
}
