// @ts-check
/** Unpacks a compressed file. */

const GZIP_MARK = [0x1f, 0x8b];

/** Whether a file is compressed. @param {Blob} file */
export async function isPacked(file) {
  const first = new Uint8Array(await file.slice(0, GZIP_MARK.length).arrayBuffer());
  return GZIP_MARK.every((byte, at) => first[at] === byte);
}

/**
 * What a compressed file holds, as far as it is read: a small file may hold more than fits into memory.
 * @param {Blob} file @param {number} most unpacking ends with the piece that passes so many bytes
 */
export function unpacked(file, most) {
  let bytes = 0;
  /** @type {TransformStream<Uint8Array<ArrayBuffer>, Uint8Array<ArrayBuffer>>} */
  const counted = new TransformStream({
    transform(piece, controller) {
      bytes += piece.length;
      controller.enqueue(piece);
      if (bytes > most) controller.terminate();
    },
  });
  return new Response(file.stream().pipeThrough(new DecompressionStream("gzip")).pipeThrough(counted)).blob();
}
