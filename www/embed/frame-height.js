// @ts-check
/** For the page around a frame: gives each frame of ours the height that it asks for. */

const ORIGIN = new URL(import.meta.url).origin;
const MOST_PX = 20_000;

addEventListener("message", ({ origin, source, data }) => {
  if (origin !== ORIGIN || data?.type !== "fasterby-height") return;
  const { height_px } = data;
  if (!Number.isInteger(height_px) || height_px < 0 || height_px > MOST_PX) return;
  const frame = [...document.querySelectorAll("iframe")].find(({ contentWindow }) => contentWindow === source);
  if (frame) frame.height = String(height_px);
});

// Those that told it before there was somebody to listen tell it again.
for (const { src, contentWindow } of document.querySelectorAll("iframe")) {
  if (src.startsWith(`${ORIGIN}/`)) contentWindow?.postMessage({ type: "fasterby-height-wanted" }, "*");
}
