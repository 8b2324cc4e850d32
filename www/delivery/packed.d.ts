/** The core's WebAssembly, compressed by gzip; the build for one file puts it into the script. */
declare const packed: Uint8Array<ArrayBuffer>;
export default packed;
