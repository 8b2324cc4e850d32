// @ts-check
/** What a first visit runs. The build puts this before all that is fetched later, so that it is one part and not dozens of small ones. */

import "../calculator.js";
import "../questions/power-or-drag/view.js";
