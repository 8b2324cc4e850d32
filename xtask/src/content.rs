//! Files as content: listing, reading, writing only what differs, and a fingerprint.

use crate::command::Outcome;
use base64::{Engine, prelude::BASE64_STANDARD};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// 64-bit FNV-1a: tells versions apart; it is no defence against forgery.
pub fn fingerprint<'a>(parts: impl IntoIterator<Item = &'a [u8]>) -> String {
    const OFFSET_BASIS: u64 = 0xcbf2_9ce4_8422_2325;
    const PRIME: u64 = 0x0000_0100_0000_01b3;
    let mut hash = OFFSET_BASIS;
    let mut take = |byte: u8| hash = (hash ^ u64::from(byte)).wrapping_mul(PRIME);
    for part in parts {
        // The length keeps ("ab", "c") and ("a", "bc") apart.
        part.len().to_le_bytes().into_iter().for_each(&mut take);
        part.iter().copied().for_each(&mut take);
    }
    format!("{hash:016x}")
}

/// How browsers are told what a file must be (Subresource Integrity, section 3.1, and CSP Level 3, section 2.3.1).
pub fn integrity(content: &[u8]) -> String {
    format!("sha256-{}", BASE64_STANDARD.encode(Sha256::digest(content)))
}

/// Reads a file whole.
pub fn read(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|error| format!("`{}` cannot be read: {error}.", shown(path)))
}

/// Reads a file of text whole.
pub fn read_text(path: &Path) -> Outcome<String> {
    String::from_utf8(read(path)?).map_err(|_| format!("`{}` is not UTF-8 text.", shown(path)))
}

/// Writes a file, with its folders, unless it already holds just this. Nobody ever reads it half written.
pub fn write(path: &Path, content: &[u8]) -> Outcome {
    if fs::read(path).is_ok_and(|present| present == content) {
        return Ok(());
    }
    let folder = path.parent().unwrap_or(Path::new("."));
    let part = path.with_added_extension("part");
    fs::create_dir_all(folder)
        .and_then(|()| fs::write(&part, content))
        .and_then(|()| fs::rename(&part, path))
        .map_err(|error| format!("`{}` cannot be written: {error}.", shown(path)))
}

/// Every file under `folder` by its path from there, with `/` between names; `node_modules` left out.
pub fn files_under(folder: &Path) -> Outcome<BTreeMap<String, Vec<u8>>> {
    let mut files = BTreeMap::new();
    collect(folder, "", &mut files)?;
    Ok(files)
}

fn collect(folder: &Path, prefix: &str, files: &mut BTreeMap<String, Vec<u8>>) -> Outcome {
    let entries = fs::read_dir(folder)
        .map_err(|error| format!("`{}` cannot be listed: {error}.", shown(folder)))?;
    for entry in entries.flatten() {
        let name = format!("{prefix}{}", entry.file_name().to_string_lossy());
        let path = entry.path();
        if path.is_dir() {
            if !name.ends_with("node_modules") {
                collect(&path, &format!("{name}/"), files)?;
            }
        } else {
            files.insert(name, read(&path)?);
        }
    }
    Ok(())
}

fn shown(path: &Path) -> String {
    let root = crate::paths::root();
    path.strip_prefix(&root)
        .unwrap_or(path)
        .display()
        .to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_fingerprint_of_nothing_is_the_offset_basis() {
        // FNV-1a 64-bit offset basis, from memory.
        assert_eq!(fingerprint([]), "cbf29ce484222325");
    }

    #[test]
    fn the_hash_for_browsers_is_sha_256_in_base_64() {
        // SHA-256 of nothing, from memory: e3b0c442 98fc1c14 ... 7852b855.
        assert_eq!(
            integrity(b""),
            "sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU="
        );
    }

    #[test]
    fn content_and_where_it_is_cut_both_change_the_fingerprint() {
        let parts = |parts: &[&'static str]| fingerprint(parts.iter().map(|part| part.as_bytes()));
        assert_ne!(parts(&["a"]), parts(&["b"]));
        assert_ne!(parts(&["ab", "c"]), parts(&["a", "bc"]));
        assert_eq!(parts(&["ab", "c"]), parts(&["ab", "c"]));
    }
}
