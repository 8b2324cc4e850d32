// @ts-check
/** A chart of the page as a picture of its own: every style written into it, its text still text. */

import { book } from "../words/index.js";

const say = book("save");
const SVG = "http://www.w3.org/2000/svg";
/** Around the chart, in pixels: words may reach a little beyond it. */
const MARGIN_PX = 16;
/** Pixels of the PNG for each of the chart. */
const PNG_SCALE = 2;

/** What the page's styles decide about a shape, and what it is where nothing is written. @type {readonly [property: string, initial: string][]} */
const LOOKS = [
  ["fill", "rgb(0, 0, 0)"],
  ["fill-opacity", "1"],
  ["stroke", "none"],
  ["stroke-width", "1px"],
  ["stroke-dasharray", "none"],
  ["stroke-linecap", "butt"],
  ["stroke-linejoin", "miter"],
  ["stroke-opacity", "1"],
  ["paint-order", "normal"],
  ["opacity", "1"],
  ["shape-rendering", "auto"],
];
const TEXT_LOOKS = [
  "font-family",
  "font-size",
  "font-weight",
  "font-variant-numeric",
  "text-anchor",
  "dominant-baseline",
];
/** What is only there for hands and screen readers. */
const NOT_DRAWN = ".reach, .reader, .reading-cursor, title, desc";
const SHAPES = "path, line, rect, circle, ellipse, polygon, polyline, text, tspan";

/** The chart as an SVG file. @param {SVGSVGElement} chart */
export function svgText(chart) {
  const box = chart.viewBox.baseVal;
  const [width, height] = [box.width + 2 * MARGIN_PX, box.height + 2 * MARGIN_PX];
  const copy = document.createElementNS(SVG, "svg");
  write(copy, {
    xmlns: SVG,
    width,
    height,
    viewBox: `${box.x - MARGIN_PX} ${box.y - MARGIN_PX} ${width} ${height}`,
    role: "img",
  });
  copy.append(
    words("title", chart.getAttribute("aria-label") ?? ""),
    words("desc", chart.querySelector("desc")?.textContent ?? ""),
    shape("rect", {
      x: box.x - MARGIN_PX,
      y: box.y - MARGIN_PX,
      width,
      height,
      fill: colour(getComputedStyle(document.documentElement).backgroundColor),
    }),
    ...Array.from(chart.children).flatMap(drawn),
  );
  return new XMLSerializer().serializeToString(copy);
}

/** An element of the chart with what it inherits from the page's styles, or nothing where it is not seen. @param {Element} element @returns {Element[]} */
function drawn(element) {
  const look = getComputedStyle(element);
  if (element.matches(NOT_DRAWN) || look.display === "none" || look.visibility === "hidden") return [];
  const copy = document.createElementNS(SVG, element.localName);
  for (const { name, value } of Array.from(element.attributes)) {
    if (!/^(class|style|role|tabindex|aria-.*|data-.*|font-.*)$/.test(name)) copy.setAttribute(name, value);
  }
  if (element.matches(SHAPES) && !element.closest("defs")) dress(copy, look, element.matches("text, tspan"));
  const inside = Array.from(element.childNodes).flatMap((node) =>
    node instanceof Element ? drawn(node) : [node.cloneNode()],
  );
  copy.append(...inside);
  return [copy];
}

/** @param {Element} copy @param {CSSStyleDeclaration} look @param {boolean} isText */
function dress(copy, look, isText) {
  for (const [property, initial] of LOOKS) {
    const value = look.getPropertyValue(property);
    const written = /^(fill|stroke)$/.test(property) ? colour(value) : value;
    if (value && value !== initial) copy.setAttribute(property, written);
    else copy.removeAttribute(property);
  }
  for (const property of isText ? TEXT_LOOKS : []) copy.setAttribute(property, look.getPropertyValue(property));
}

/** @type {CanvasRenderingContext2D | null | undefined} */
let dot;
/** @type {Map<string, string>} */
const known = new Map();

/** Any colour of a style sheet, mixed ones too, as other programs read it: #rrggbb. @param {string} value */
function colour(value) {
  if (value === "none" || value.startsWith("url(")) return value;
  const found = known.get(value);
  if (found) return found;
  dot ??= Object.assign(document.createElement("canvas"), { width: 1, height: 1 }).getContext("2d", {
    willReadFrequently: true,
  });
  if (!dot) return value;
  dot.clearRect(0, 0, 1, 1);
  dot.fillStyle = value;
  dot.fillRect(0, 0, 1, 1);
  const [red, green, blue, alpha] = dot.getImageData(0, 0, 1, 1).data;
  const written =
    alpha === 0 ? "none" : `#${[red, green, blue].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
  known.set(value, written);
  return written;
}

/** The same as pixels. @param {SVGSVGElement} chart @returns {Promise<Blob>} */
export async function png(chart) {
  const address = URL.createObjectURL(new Blob([svgText(chart)], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = image.width * PNG_SCALE;
    canvas.height = image.height * PNG_SCALE;
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error(say("noPicture")))), "image/png"),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** @param {string} name @param {Record<string, string | number>} attributes */
function shape(name, attributes) {
  return write(document.createElementNS(SVG, name), attributes);
}

/** @param {string} name @param {string} text */
function words(name, text) {
  const element = document.createElementNS(SVG, name);
  element.textContent = text;
  return element;
}

/** @param {Element} element @param {Record<string, string | number>} attributes */
function write(element, attributes) {
  for (const [name, value] of Object.entries(attributes))
    if (name !== "xmlns") element.setAttribute(name, String(value));
  return element;
}
