//! Files as web servers send them: gzip for any client, brotli for those that take it.

use flate2::{Compression, write::GzEncoder};
use std::io::Write;

/// What hosts of static files use for files that they compress once.
const BROTLI_QUALITY: i32 = 11;
const BROTLI_WINDOW_BITS: i32 = 22;

/// As dense as the library makes it.
pub fn gzip(content: &[u8]) -> Vec<u8> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    // Writing into memory does not fail.
    encoder.write_all(content).ok();
    encoder.finish().unwrap_or_default()
}

/// As dense as the form allows.
pub fn brotli(content: &[u8]) -> Vec<u8> {
    let parameters = brotli::enc::BrotliEncoderParams {
        quality: BROTLI_QUALITY,
        lgwin: BROTLI_WINDOW_BITS,
        ..Default::default()
    };
    let mut compressed = Vec::new();
    // Reading from and writing into memory does not fail.
    brotli::BrotliCompress(&mut &content[..], &mut compressed, &parameters).ok();
    compressed
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read;

    #[test]
    fn what_was_compressed_comes_back_and_is_shorter() {
        let content = "metres per second, ".repeat(100).into_bytes();
        let (gzipped, packed) = (gzip(&content), brotli(&content));
        let mut back = Vec::new();
        assert!(
            flate2::read::GzDecoder::new(&gzipped[..])
                .read_to_end(&mut back)
                .is_ok()
        );
        assert_eq!(back, content);
        let mut back = Vec::new();
        assert!(brotli::BrotliDecompress(&mut &packed[..], &mut back).is_ok());
        assert_eq!(back, content);
        assert!(packed.len() < gzipped.len() && gzipped.len() < content.len());
    }
}
