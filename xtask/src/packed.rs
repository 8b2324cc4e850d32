//! Parts of the page as one file as it carries them: packed by LZMA, a fifth smaller than what browsers unpack by themselves, and
//! written as text that no browser runs. `www/delivery/packed-parts.js` reads it.

use crate::command::Outcome;
use lzma_rust2::{LzmaOptions, LzmaWriter};
use std::io::Write;

/// Neither text nor WebAssembly repeats in steps of two or four bytes, which is what it is usually packed for.
const POSITION_BITS: u32 = 0;
/// The most that the library takes, and the densest.
const PACKING_LEVEL: u32 = 9;

/// Fifteen bits of data are one sign from here on: none of these is half of a pair, and an HTML parser leaves all as they are.
const FIRST_SIGN: u32 = 0x100;
const BITS_A_SIGN: u32 = 15;

/// Packs as densely as the form allows.
pub fn lzma(content: &[u8]) -> Outcome<Vec<u8>> {
    let options = LzmaOptions {
        pb: POSITION_BITS,
        nice_len: LzmaOptions::NICE_LEN_MAX,
        ..LzmaOptions::with_preset(PACKING_LEVEL)
    };
    let packed = || {
        let mut writer =
            LzmaWriter::new_use_header(Vec::new(), &options, Some(content.len() as u64))?;
        writer.write_all(content)?;
        writer.finish()
    };
    packed().map_err(|error| format!("The page as one file could not be packed: {error}."))
}

/// An element that holds `packed`, which is what [`lzma`] makes of all parts one behind the other, and tells how long each part is.
pub fn element(name: &str, parts: &[&[u8]], packed: &[u8]) -> String {
    let lengths: Vec<_> = parts.iter().map(|part| part.len().to_string()).collect();
    format!(
        "<script id=\"packed-{name}\" type=\"application/x-lzma\" data-lengths=\"{}\">{}</script>",
        lengths.join(" "),
        signs(packed)
    )
}

/// Bytes as text with fifteen bits in each sign, the highest first. The last sign is filled up with zeros, maybe by a whole byte.
fn signs(bytes: &[u8]) -> String {
    // Every sum of 15 bits and the first sign is a letter or a mark of Unicode's lowest plane.
    let sign = |held: u32| char::from_u32(FIRST_SIGN + (held & 0x7fff)).unwrap_or_default();
    let mut text = String::with_capacity(bytes.len() * 8 / 5);
    let (mut held, mut bits) = (0_u32, 0);
    for &byte in bytes {
        held = held << 8 | u32::from(byte);
        bits += 8;
        if bits >= BITS_A_SIGN {
            bits -= BITS_A_SIGN;
            text.push(sign(held >> bits));
            held &= (1 << bits) - 1;
        }
    }
    if bits > 0 {
        text.push(sign(held << (BITS_A_SIGN - bits)));
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use lzma_rust2::LzmaReader;
    use std::io::Read;

    /// More than the content takes to unpack.
    const MOST_KIB: u32 = 1 << 20;

    #[test]
    fn what_was_packed_comes_back_and_is_shorter() {
        let content = "metres per second, ".repeat(100).into_bytes();
        let packed = lzma(&content).unwrap();
        let mut back = Vec::new();
        LzmaReader::new_mem_limit(&packed[..], MOST_KIB, None)
            .unwrap()
            .read_to_end(&mut back)
            .unwrap();
        assert_eq!(back, content);
        assert!(packed.len() < content.len() / 10);
    }

    #[test]
    fn the_length_is_told_before_the_content() {
        // Bytes 5 to 12 of the form, the lowest first; without a length they would all be 255.
        assert_eq!(lzma(&[7; 300]).unwrap()[5..13], [44, 1, 0, 0, 0, 0, 0, 0]);
    }

    #[test]
    fn an_element_tells_the_length_of_each_part() {
        let element = element("page", &[b"ab", b"", b"cde"], &[0, 2]);
        assert_eq!(
            element,
            "<script id=\"packed-page\" type=\"application/x-lzma\" data-lengths=\"2 0 3\">\u{101}\u{100}</script>"
        );
    }

    #[test]
    fn bytes_become_text_that_an_html_parser_keeps() {
        assert_eq!(signs(&[]), "");
        // 1010101 01100110 0|0...: the last sign is filled up with zeros.
        assert_eq!(signs(&[0b1010_1010, 0b1100_1100]), "\u{5666}\u{100}");
        let all: Vec<u8> = (0..=255).collect();
        let text = signs(&all);
        assert!(
            text.chars()
                .all(|sign| (0x100..0x8100).contains(&u32::from(sign)))
        );
        assert_eq!(text.chars().count(), (256 * 8_usize).div_ceil(15));
    }
}
