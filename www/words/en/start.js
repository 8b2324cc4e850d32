// @ts-check
/** A page that could not be loaded whole. These texts are in its first script in every language. */

export default /** @type {const} */ ({
  title: "The calculator did not start",
  newer: "A newer version of the calculator is there. Reload the page to open it; your numbers are kept.",
  incomplete:
    "Parts of the page are missing on its server, perhaps because a new version is being put there. Reload the page in a few minutes.",
  unreachable: "The page could not be loaded. Check the connection and reload it.",
  reload: "Reload",
});
