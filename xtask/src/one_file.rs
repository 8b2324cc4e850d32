//! The whole page as one HTML file that opens from a disk: style, icon, script and core written into it, nothing fetched.

use crate::command::Outcome;
use base64::{Engine, prelude::BASE64_STANDARD};
use sha2::{Digest, Sha256};

/// What is written into the page.
pub struct Parts<'a> {
    pub style: &'a str,
    pub script: &'a str,
    pub icon: &'a [u8],
}

/// `page` is the site's own `index.html`.
pub fn one_file(page: &str, parts: &Parts<'_>) -> Outcome<String> {
    let icon = format!("data:image/svg+xml;base64,{}", BASE64_STANDARD.encode(parts.icon));
    // At these an HTML parser ends what it reads, or reads on differently.
    if ["<!--", "</script"].iter().any(|mark| parts.script.contains(mark)) || parts.style.contains("</style") {
        return Err("The bundle holds `<!--`, `</script` or `</style`, which would break the page as one file.".into());
    }
    let policy = format!(
        "default-src 'none'; script-src '{}' 'wasm-unsafe-eval'; style-src '{}'; img-src data: blob:; \
         worker-src blob:; base-uri 'none'; form-action 'none'",
        source_hash(parts.script),
        source_hash(parts.style),
    );
    let replacements = [
        (line_with(page, "http-equiv=\"Content-Security-Policy\"")?, meta("Content-Security-Policy", &policy)),
        (line_with(page, "rel=\"icon\"")?, format!("<link rel=\"icon\" href=\"{icon}\">")),
        (line_with(page, "rel=\"manifest\"")?, String::new()),
        (line_with(page, "rel=\"stylesheet\"")?, format!("<style>{}</style>", parts.style)),
        (line_with(page, "src=\"app.js\"")?, String::new()),
        // From a disk, `./` would be the folder.
        ("href=\"./\"", "href=\"\"".into()),
        // At the end, as a script without `src` runs where it stands.
        ("</body>", format!("<script id=\"script\">{}</script>\n</body>", parts.script)),
    ];
    replacements.iter().try_fold(page.to_string(), |page, (from, to)| replaced(&page, from, to))
}

fn meta(name: &str, content: &str) -> String {
    format!("<meta http-equiv=\"{name}\" content=\"{content}\">")
}

/// How a content security policy names an inline script or style (CSP Level 3, section 2.3.1).
fn source_hash(content: &str) -> String {
    format!("sha256-{}", BASE64_STANDARD.encode(Sha256::digest(content)))
}

fn line_with<'a>(page: &'a str, mark: &str) -> Outcome<&'a str> {
    page.lines().find(|line| line.contains(mark)).ok_or_else(|| missing(mark))
}

fn replaced(page: &str, from: &str, to: &str) -> Outcome<String> {
    let (before, after) = page.split_once(from).ok_or_else(|| missing(from))?;
    Ok([before, to, after].concat())
}

fn missing(what: &str) -> String {
    format!("`index.html` has no `{what}`, so the page cannot be made one file: see xtask/src/one_file.rs.")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::content::read_text;
    use crate::paths;

    fn made(script: &str) -> Outcome<String> {
        let page = read_text(&paths::www().join("index.html"))?;
        one_file(&page, &Parts { style: "p{}", script, icon: b"<svg/>" })
    }

    #[test]
    fn nothing_of_it_lies_in_another_file() {
        let page = made("start()").unwrap();
        assert!(!page.contains(" src="));
        assert!(page.split("href=\"").skip(1).all(|rest| ["\"", "#", "data:"].iter().any(|own| rest.starts_with(own))));
        assert!(page.contains("<style>p{}</style>"));
        assert!(page.contains("<script id=\"script\">start()</script>"));
    }

    #[test]
    fn its_policy_allows_its_own_script_and_style_and_no_connection() {
        let page = made("").unwrap();
        // SHA-256 of nothing, from memory: e3b0c442 98fc1c14 ... 7852b855.
        assert!(page.contains("script-src 'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=' 'wasm-unsafe-eval'"));
        assert!(!page.contains("connect-src") && !page.contains("'self'") && !page.contains("unsafe-inline"));
    }

    #[test]
    fn a_script_that_would_end_early_is_refused() {
        assert!(made("a='</script>'").is_err());
        assert!(made("a='<!--'").is_err());
    }

    #[test]
    fn a_page_that_lacks_what_is_replaced_is_refused_by_its_name() {
        let parts = Parts { style: "", script: "", icon: b"" };
        assert!(one_file("<html></html>", &parts).unwrap_err().contains("Content-Security-Policy"));
    }
}
