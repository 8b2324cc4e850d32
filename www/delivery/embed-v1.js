// @ts-check
/** `embed/v1.js`, the script that other sites name: defines the element `<faster-by>`. */

import { runNewest } from "./newest.js";

runNewest("element.js", new URL("../", import.meta.url));
