// @ts-check
/** Asks the browser to keep the page on the device, and knows what to say about it. */

import { serviceWorker } from "#delivery";

/** @returns {{ sentence: () => string }} */
export function keepOffline() {
  let sentence = "";
  if (serviceWorker && /^https?:$/.test(location.protocol) && "serviceWorker" in navigator) {
    navigator.serviceWorker.register(serviceWorker).then(
      (registration) => {
        const tell = () => {
          if (registration.waiting && registration.active) sentence = "A newer version is ready; it opens the next time, once every tab of this page has been closed.";
          else if (registration.active) sentence = "The page is kept on this device and works without a network.";
        };
        tell();
        navigator.serviceWorker.ready.then(tell);
        registration.addEventListener("updatefound", () => registration.installing?.addEventListener("statechange", tell));
      },
      () => { sentence = "This browser does not keep the page for use without a network."; },
    );
  }
  return { sentence: () => sentence };
}
