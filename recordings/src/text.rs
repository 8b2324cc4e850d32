//! Bytes of a text file as text, in pieces: UTF-8, or UTF-16 with a mark of its byte order.

/// How a text is written in bytes.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Encoding {
    Utf8,
    Utf16 { big_endian: bool },
}

/// Turns pieces of bytes into pieces of text; what is cut in the middle of a sign waits for the next piece.
#[derive(Debug)]
pub(crate) struct Decoder {
    encoding: Encoding,
    held: Vec<u8>,
}

impl Decoder {
    /// Knows the encoding by the first bytes, and leaves out a mark of the byte order.
    pub fn new(first: &[u8]) -> (Self, &[u8]) {
        let utf16 = |big_endian| Encoding::Utf16 { big_endian };
        let (encoding, rest) = match first {
            [0xef, 0xbb, 0xbf, rest @ ..] => (Encoding::Utf8, rest),
            [0xff, 0xfe, rest @ ..] => (utf16(false), rest),
            [0xfe, 0xff, rest @ ..] => (utf16(true), rest),
            [1..=0x7f, 0, 1..=0x7f, 0, ..] => (utf16(false), first),
            [0, 1..=0x7f, 0, 1..=0x7f, ..] => (utf16(true), first),
            _ => (Encoding::Utf8, first),
        };
        let held = Vec::new();
        (Self { encoding, held }, rest)
    }

    /// Adds a piece to a text. `last` says that nothing comes after it.
    pub fn decode(&mut self, piece: &[u8], last: bool, text: &mut String) {
        let mut joined = std::mem::take(&mut self.held);
        let bytes = if joined.is_empty() {
            piece
        } else {
            joined.extend_from_slice(piece);
            &joined
        };
        self.held = match self.encoding {
            Encoding::Utf8 => utf8(bytes, last, text),
            Encoding::Utf16 { big_endian } => utf16(bytes, big_endian, last, text),
        };
    }
}

/// Bytes that are not UTF-8 are taken as signs of Latin-1, which is what older programs write.
fn utf8(mut bytes: &[u8], last: bool, text: &mut String) -> Vec<u8> {
    loop {
        let error = match std::str::from_utf8(bytes) {
            Ok(valid) => {
                text.push_str(valid);
                return Vec::new();
            }
            Err(error) => error,
        };
        let (valid, rest) = bytes.split_at(error.valid_up_to());
        text.push_str(std::str::from_utf8(valid).unwrap_or_default());
        if error.error_len().is_none() && !last {
            return rest.to_vec();
        }
        let Some((&wrong, after)) = rest.split_first() else {
            return Vec::new();
        };
        text.push(char::from(wrong));
        bytes = after;
    }
}

fn utf16(bytes: &[u8], big_endian: bool, last: bool, text: &mut String) -> Vec<u8> {
    let unit = |pair: &[u8; 2]| match big_endian {
        true => u16::from_be_bytes(*pair),
        false => u16::from_le_bytes(*pair),
    };
    let (pairs, odd) = bytes.as_chunks::<2>();
    // A sign may take two units.
    let is_half = |pair: &[u8; 2]| (0xd800..0xdc00).contains(&unit(pair));
    let cut = match pairs.last() {
        Some(pair) if !last && is_half(pair) => pairs.len() - 1,
        _ => pairs.len(),
    };
    text.extend(
        char::decode_utf16(pairs[..cut].iter().map(unit))
            .map(|sign| sign.unwrap_or(char::REPLACEMENT_CHARACTER)),
    );
    let mut held = pairs[cut..].concat();
    held.extend_from_slice(odd);
    held
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The text of bytes that come one by one.
    fn one_by_one(bytes: &[u8]) -> String {
        let (mut decoder, rest) = Decoder::new(bytes);
        let mut text = String::new();
        for byte in rest {
            decoder.decode(&[*byte], false, &mut text);
        }
        decoder.decode(&[], true, &mut text);
        text
    }

    #[test]
    fn a_text_is_the_same_however_its_bytes_are_cut() {
        const TEXT: &str = "<höhe>1 € 🚲</höhe>";
        let little: Vec<u8> = "\u{feff}"
            .encode_utf16()
            .chain(TEXT.encode_utf16())
            .flat_map(u16::to_le_bytes)
            .collect();
        let big: Vec<u8> = TEXT.encode_utf16().flat_map(u16::to_be_bytes).collect();
        let marked = ["\u{feff}", TEXT].concat();
        // Without a mark, UTF-16 is known by the zeros of its first two signs.
        assert_eq!(one_by_one(&big[..2]), "\0<");
        let plain: Vec<u8> = "<gpx>€".encode_utf16().flat_map(u16::to_be_bytes).collect();
        assert_eq!(one_by_one(&plain), "<gpx>€");
        assert_eq!(one_by_one(&little), TEXT);
        assert_eq!(one_by_one(marked.as_bytes()), TEXT);
        assert_eq!(one_by_one(TEXT.as_bytes()), TEXT);
        assert_eq!(one_by_one(b"H\xf6he"), "Höhe");
    }
}
