// @ts-check
/** The one script of the page as one file: in a document it is the page, elsewhere its worker. */

if (typeof document === "undefined") import("../worker.js");
else import("../app.js");
