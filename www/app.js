// @ts-check
/** Start-up: loads what the page opens with, then starts it, and says so where that fails. */

import { start } from "./calculator.js";
import { ask, fields, prepareFor, ready } from "./core.js";
import { sayItFailed } from "./frame/failed.js";
import { booksOf } from "./frame/question-view.js";
import { openReading } from "./frame/reading.js";
import { decimalMark } from "./parts/number-text.js";
import { opening, pages } from "./questions/index.js";
import { questionOf } from "./state/address.js";
import { deviceStorage } from "./state/storage.js";
import { open } from "./words/index.js";

const likely = pages.find(({ id }) => id === questionOf(location.hash)) ?? opening;
const storage = deviceStorage();
const last = storage.last();
prepareFor(last?.scenario);
const readingOpened = openReading(storage);
const wordsOpened = readingOpened.then(() => Promise.all(["page", "units"].map(open)));
Promise.allSettled([likely.load(), readingOpened.then(() => Promise.all(booksOf(likely).map(open)))]);
// A browser takes its time over its first number in any language; here nobody waits for it.
setTimeout(decimalMark);
// Only work that was kept has to be looked over by the core before anything of it is shown.
Promise.all([wordsOpened, ...(last ? [ready(likely.id), open("core")] : [])])
  .then(async () => {
    Object.assign(globalThis, { fasterby: { ask, fields } });
    start(storage, await readingOpened);
  })
  .catch((error) => wordsOpened.finally(() => sayItFailed(error)).catch(() => {}));
