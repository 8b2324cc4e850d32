// @ts-check
/** Rows that stay as long as their key does, so that a change elsewhere in the list takes neither focus nor text from them. */

/** @template {{ element: HTMLElement, destroy?: () => void }} Row @param {HTMLElement} host @param {(index: number, before: Row | undefined) => Row} make a row, and the one that stood there */
export function keyedList(host, make) {
  /** @type {string[]} */
  let keys = [];
  /** @type {Row[]} */
  let rows = [];
  return {
    rows: () => rows,
    /** Makes the rows whose keys are new, drops those whose keys are gone. @param {readonly string[]} wanted each key once */
    update(wanted) {
      const before = new Map(keys.map((key, index) => [key, rows[index]]));
      rows = wanted.map((key, index) => before.get(key) ?? make(index, rows[index]));
      for (const row of before.values()) if (!rows.includes(row)) row.destroy?.();
      keys = [...wanted];
      const elements = rows.map(({ element }) => element);
      for (const child of [...host.children]) if (!elements.some((element) => element === child)) child.remove();
      elements.forEach((element, index) => {
        if (host.children[index] !== element) host.insertBefore(element, host.children[index] ?? null);
      });
      return rows;
    },
    destroy() {
      for (const row of rows) row.destroy?.();
    },
  };
}
