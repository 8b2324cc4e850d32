// @ts-check
/** `embed/frame.js`, the script of the page in a frame. */

import { runNewest } from "./newest.js";

runNewest("frame.js", new URL("../", import.meta.url));
