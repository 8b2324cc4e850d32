// @ts-check
/** The one script of the page as one file: in a document it is the page, elsewhere a worker, which its name tells. */

if (typeof document !== "undefined") import("../app.js");
else if (self.name === "recordings") import("../recordings/worker.js");
else import("../worker.js");
