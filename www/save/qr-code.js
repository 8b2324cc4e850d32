// @ts-check
/** A link as a QR code (ISO/IEC 18004), drawn as one path. */

import { encode } from "uqr";
import { svg } from "../parts/svg.js";
import { book } from "../words/index.js";

const words = book("save");
/** The standard asks for four light modules all round. */
const QUIET_ZONE = 4;
/** Beyond this many modules a side, a printed code the size of a matchbox no longer reads reliably. Common practice, no source. */
const MOST_MODULES = 125;

/** @param {string} link @returns {SVGSVGElement | null} null where the link is too long for one */
export function qrCode(link) {
  /** @type {{ size: number, data: boolean[][] }} */
  let code;
  try {
    code = encode(link, { ecc: "L", border: QUIET_ZONE });
  } catch {
    return null;
  }
  if (code.size > MOST_MODULES) return null;
  const dark = code.data.flatMap((row, y) => row.map((on, x) => (on ? `M${x} ${y}h1v1h-1z` : ""))).join("");
  return svg(
    "svg",
    {
      class: "qr",
      viewBox: `0 0 ${code.size} ${code.size}`,
      role: "img",
      "aria-label": words("qrCode"),
      "shape-rendering": "crispEdges",
    },
    svg("rect", { width: code.size, height: code.size, fill: "#fff" }),
    svg("path", { d: dark, fill: "#000" }),
  );
}
