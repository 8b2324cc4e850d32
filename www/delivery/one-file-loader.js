// @ts-check
/** Unpacks the script of the page as one file and runs it; the policy of the file names both scripts by their hash. */

async function unpack() {
  const packed = atob(document.getElementById("packed")?.textContent ?? "");
  const bytes = Uint8Array.from(packed, (sign) => sign.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const textContent = await new Response(unpacked).text();
  document.body.append(Object.assign(document.createElement("script"), { id: "script", textContent }));
}

unpack();
