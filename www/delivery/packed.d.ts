/** WebAssembly of the core, or of the readers of recordings, compressed by gzip; the build for one file puts it into the script. */
declare const packed: Uint8Array<ArrayBuffer>;
export default packed;
