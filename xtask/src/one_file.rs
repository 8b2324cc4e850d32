//! The whole page as one HTML file that opens from a disk: style, icon, script and core written into it, nothing fetched.
//! Style and script are packed; a small script unpacks them and puts them into the page, where the policy knows both by their hash.

use crate::command::Outcome;
use crate::content::integrity;
use base64::{Engine, prelude::BASE64_STANDARD};
use serde_json::json;

/// What is written into the page.
pub struct Parts<'a> {
    pub style: &'a str,
    /// Unpacks style and script and puts them into the page.
    pub loader: &'a str,
    pub script: &'a str,
    /// What [`together`] makes of style and script, compressed by gzip.
    pub packed: &'a [u8],
    pub icon: &'a [u8],
}

/// `page` is the site's own `index.html`.
pub fn one_file(page: &str, parts: &Parts<'_>) -> Outcome<String> {
    let icon = format!(
        "data:image/svg+xml;base64,{}",
        BASE64_STANDARD.encode(parts.icon)
    );
    // At these an HTML parser ends what it reads, or reads on differently.
    if ["<!--", "</script"]
        .iter()
        .any(|mark| parts.loader.contains(mark))
    {
        return Err(
            "The loader holds `<!--` or `</script`, which would break the page as one file.".into(),
        );
    }
    let policy = format!(
        "default-src 'none'; script-src '{}' '{}' 'wasm-unsafe-eval'; style-src '{}'; img-src data: blob:; \
         worker-src blob:; base-uri 'none'; form-action 'none'",
        integrity(parts.loader.as_bytes()),
        integrity(parts.script.as_bytes()),
        integrity(parts.style.as_bytes()),
    );
    let replacements = [
        (
            element_with(page, "http-equiv=\"Content-Security-Policy\"")?,
            meta("Content-Security-Policy", &policy),
        ),
        (
            element_with(page, "rel=\"icon\"")?,
            format!("<link rel=\"icon\" href=\"{icon}\">"),
        ),
        (element_with(page, "rel=\"manifest\"")?, String::new()),
        // Its first bytes tell how its signs are written.
        (element_with(page, "charset=\"utf-8\"")?, String::new()),
        (element_with(page, "rel=\"stylesheet\"")?, String::new()),
        (element_with(page, "src=\"start.js\"")?, String::new()),
        // From a disk, `./` would be the folder.
        ("href=\"./\"", "href=\"\"".into()),
        // At the end, as a script without `src` runs where it stands.
        (
            "</body>",
            format!(
                "{}\n<script>{}</script>\n</body>",
                packed(parts.packed),
                parts.loader
            ),
        ),
    ];
    replacements
        .iter()
        .try_fold(page.to_string(), |page, (from, to)| {
            replaced(&page, from, to)
        })
}

/// Style and script as one text, which `one-file-loader.js` takes apart.
pub fn together(style: &str, script: &str) -> String {
    json!({ "style": style, "script": script }).to_string()
}

/// Fifteen bits of data are one sign from here on: none of these is half of a pair, and an HTML parser leaves all as they are.
const FIRST_SIGN: u32 = 0x100;
const BITS_A_SIGN: u32 = 15;

/// Compressed bytes as data that no browser runs. The last sign may have room for a byte more, so their number is told.
fn packed(compressed: &[u8]) -> String {
    format!(
        "<script id=\"packed\" type=\"application/gzip\" data-bytes=\"{}\">{}</script>",
        compressed.len(),
        signs(compressed)
    )
}

/// Compresses as hard as the form allows, which any browser unpacks: a twentieth shorter than usual, for seconds of work.
pub fn dense_gzip(content: &[u8]) -> Vec<u8> {
    let mut compressed = Vec::new();
    // Reading from and writing into memory does not fail.
    zopfli::compress(
        zopfli::Options::default(),
        zopfli::Format::Gzip,
        content,
        &mut compressed,
    )
    .ok();
    compressed
}

/// Bytes as text with fifteen bits in each sign, the highest first. `one-file-loader.js` reads it.
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

/// The page as it lies on a disk: two bytes a sign, little end first, which hold nearly twice the data that the signs of UTF-8
/// do for their length. The mark at the beginning says so, and counts for more than what a host says of the file.
pub fn two_bytes_a_sign(page: &str) -> Vec<u8> {
    let mark = "\u{feff}".encode_utf16();
    mark.chain(page.encode_utf16())
        .flat_map(u16::to_le_bytes)
        .collect()
}

fn meta(name: &str, content: &str) -> String {
    format!("<meta http-equiv=\"{name}\" content=\"{content}\">")
}

/// The element whose opening tag holds a mark, without children: a script to its end tag, any other to the end of its tag.
fn element_with<'a>(page: &'a str, mark: &str) -> Outcome<&'a str> {
    let find = || {
        let at = page.find(mark)?;
        let begins = page[..at].rfind('<')?;
        let ends = if page[begins..].starts_with("<script") {
            "</script>"
        } else {
            ">"
        };
        let length = page[begins..].find(ends)? + ends.len();
        page.get(begins..begins + length)
    };
    find().ok_or_else(|| missing(mark))
}

fn replaced(page: &str, from: &str, to: &str) -> Outcome<String> {
    let (before, after) = page.split_once(from).ok_or_else(|| missing(from))?;
    Ok([before, to, after].concat())
}

fn missing(what: &str) -> String {
    format!(
        "`index.html` has no `{what}`, so the page cannot be made one file: see xtask/src/one_file.rs."
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::content::read_text;
    use crate::paths;

    fn made(script: &str) -> Outcome<String> {
        made_with("unpack()", script)
    }

    fn made_with(loader: &str, script: &str) -> Outcome<String> {
        let page = read_text(&paths::www().join("index.html"))?;
        let packed = &dense_gzip(together("p{}", script).as_bytes());
        one_file(
            &page,
            &Parts {
                style: "p{}",
                loader,
                script,
                packed,
                icon: b"<svg/>",
            },
        )
    }

    #[test]
    fn nothing_of_it_lies_in_another_file() {
        let page = made("start()").unwrap();
        assert!(!page.contains(" src="));
        assert!(
            page.split("href=\"")
                .skip(1)
                .all(|rest| ["\"", "#", "data:"].iter().any(|own| rest.starts_with(own)))
        );
        assert!(page.contains("<script>unpack()</script>"));
        assert!(page.contains(&packed(&dense_gzip(
            br#"{"script":"start()","style":"p{}"}"#
        ))));
    }

    #[test]
    fn its_policy_allows_its_own_script_and_style_and_no_connection() {
        let page = made_with("", "").unwrap();
        // SHA-256 of nothing, from memory: e3b0c442 98fc1c14 ... 7852b855.
        let hash = "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='";
        assert!(page.contains(&format!("script-src {hash} {hash} 'wasm-unsafe-eval'")));
        assert!(
            !page.contains("connect-src")
                && !page.contains("'self'")
                && !page.contains("unsafe-inline")
        );
    }

    #[test]
    fn a_script_that_would_end_early_is_refused_and_a_packed_one_does_not() {
        assert!(made_with("a='</script>'", "").is_err());
        assert!(made_with("a='<!--'", "").is_err());
        assert!(made("a='</script><!--'").is_ok());
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

    #[test]
    fn the_number_of_bytes_is_told_where_the_last_sign_has_room_for_more() {
        // Sixteen bits need two signs, which would hold three bytes.
        assert!(packed(&[1, 2]).contains("data-bytes=\"2\">"));
    }

    #[test]
    fn the_file_begins_with_the_mark_of_its_signs() {
        assert_eq!(
            two_bytes_a_sign("<\u{8001}"),
            [0xff, 0xfe, b'<', 0, 0x01, 0x80]
        );
    }

    #[test]
    fn a_page_that_lacks_what_is_replaced_is_refused_by_its_name() {
        let parts = Parts {
            style: "",
            loader: "",
            script: "",
            packed: b"",
            icon: b"",
        };
        assert!(
            one_file("<html></html>", &parts)
                .unwrap_err()
                .contains("Content-Security-Policy")
        );
    }
}
