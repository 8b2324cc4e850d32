//! The whole page as one HTML file that opens from a disk: style, icon, script and core written into it, nothing fetched.
//! All but the icon is packed; a small script unpacks style and script and puts them into the page, where the policy knows both by
//! their hash.

use crate::command::Outcome;
use crate::content::integrity;
use base64::{Engine, prelude::BASE64_STANDARD};

/// What is written into the page.
pub struct Parts<'a> {
    pub style: &'a str,
    /// Unpacks style and script and puts them into the page.
    pub loader: &'a str,
    pub script: &'a str,
    /// Elements that hold style, script and modules, as `packed.rs` makes them.
    pub packed: &'a str,
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
                parts.packed, parts.loader
            ),
        ),
    ];
    replacements
        .iter()
        .try_fold(page.to_string(), |page, (from, to)| {
            replaced(&page, from, to)
        })
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

    const PACKED: &str = "<script type=\"application/x-lzma\">\u{100}</script>";

    fn made(script: &str) -> Outcome<String> {
        made_with("unpack()", script)
    }

    fn made_with(loader: &str, script: &str) -> Outcome<String> {
        let page = read_text(&paths::www().join("index.html"))?;
        one_file(
            &page,
            &Parts {
                style: "p{}",
                loader,
                script,
                packed: PACKED,
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
        assert!(page.contains(&format!("{PACKED}\n<script>unpack()</script>")));
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
            packed: "",
            icon: b"",
        };
        assert!(
            one_file("<html></html>", &parts)
                .unwrap_err()
                .contains("Content-Security-Policy")
        );
    }
}
