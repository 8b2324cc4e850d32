// @ts-check
/** Ride files that a rider chose to keep on the device, in the browser's own database, by the mark of their recording. */

const DATABASE = "fasterby-recordings";
const FILES = "files";

/** Whether this browser keeps files at all. */
export const canKeep = () => typeof indexedDB !== "undefined";

/** @returns {Promise<IDBDatabase>} */
function database() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(FILES);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new DOMException("Another page holds it.", "AbortError"));
  });
}

/**
 * @template T @param {IDBTransactionMode} mode @param {(files: IDBObjectStore) => IDBRequest<T>} work
 * @returns {Promise<T>}
 */
async function within(mode, work) {
  const open = await database();
  try {
    return await new Promise((resolve, reject) => {
      const turn = open.transaction(FILES, mode);
      const request = work(turn.objectStore(FILES));
      turn.oncomplete = () => resolve(request.result);
      turn.onabort = () => reject(turn.error);
      turn.onerror = () => reject(turn.error);
    });
  } finally {
    open.close();
  }
}

/** @param {string} mark @param {Blob} file */
export const keep = (mark, file) => within("readwrite", (files) => files.put(file, mark));

/** @param {string} mark @returns {Promise<Blob | undefined>} */
export async function keptFile(mark) {
  if (!canKeep()) return undefined;
  try {
    const file = await within("readonly", (files) => files.get(mark));
    return file instanceof Blob ? file : undefined;
  } catch {
    return undefined;
  }
}

/** How many files are kept, and their bytes; none where the browser keeps none. @returns {Promise<{ count: number, bytes: number }>} */
export async function keptSize() {
  if (!canKeep()) return { count: 0, bytes: 0 };
  try {
    const files = await within("readonly", (all) => all.getAll());
    const sizes = files.map((file) => (file instanceof Blob ? file.size : 0));
    return { count: sizes.length, bytes: sizes.reduce((sum, bytes) => sum + bytes, 0) };
  } catch {
    return { count: 0, bytes: 0 };
  }
}

export const forgetFiles = () => within("readwrite", (files) => files.clear());
