// @ts-check
/** Unpacks style and script of the page as one file; the policy of the file names them by their hash. */

const FIRST_SIGN = 0x100;
const BITS_A_SIGN = 15;

/** So many bytes from text that holds fifteen bits in each sign, the highest first. @param {string} text @param {number} count */
function bytesOf(text, count) {
  const bytes = new Uint8Array(count);
  let held = 0;
  let bits = 0;
  let length = 0;
  for (let i = 0; i < text.length; i += 1) {
    held = (held << BITS_A_SIGN) | (text.charCodeAt(i) - FIRST_SIGN);
    bits += BITS_A_SIGN;
    while (bits >= 8 && length < count) {
      bits -= 8;
      bytes[length] = held >> bits;
      length += 1;
      held &= (1 << bits) - 1;
    }
  }
  return bytes;
}

/** What `together` of `xtask/src/one_file.rs` wrote. @returns {Promise<{ style: string, script: string }>} */
async function unpacked() {
  const held = document.getElementById("packed");
  const packed = bytesOf(held?.textContent ?? "", Number(held?.dataset.bytes));
  return new Response(new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"))).json();
}

/** Nothing is seen before its style is there, and the script finds the page as it is seen; what cannot be unpacked leaves the sentence that says so. */
async function start() {
  document.body.hidden = true;
  const { style, script } = await unpacked().finally(() => {
    document.body.hidden = false;
  });
  document.head.append(Object.assign(document.createElement("style"), { textContent: style }));
  document.body.append(Object.assign(document.createElement("script"), { id: "script", textContent: script }));
}

start();
