// @ts-check
/** A module from the server. One that is not what these scripts were built with is refused: two versions never work together. */

/** @param {URL} address @param {string} integrity its hash */
export async function checkedModule(address, integrity) {
  const fetched = (/** @type {RequestCache} */ cache) => fetch(address, { cache, integrity });
  // A browser may have kept something else from an unfinished upload.
  const response = await fetched("default").catch(() => fetched("reload"));
  // A server that has no name for what it is gives it all the same.
  return response.headers.get("content-type") === "application/wasm"
    ? WebAssembly.compileStreaming(response)
    : WebAssembly.compile(await response.arrayBuffer());
}
