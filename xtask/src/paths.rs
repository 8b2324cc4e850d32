//! Where things are.

use std::path::{Path, PathBuf};

/// The top of the project.
pub fn root() -> PathBuf {
    let xtask = std::env::var_os("CARGO_MANIFEST_DIR")
        .map(PathBuf::from)
        .filter(|folder| folder.ends_with("xtask"))
        .unwrap_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")));
    xtask.parent().map(Path::to_path_buf).unwrap_or(xtask)
}

/// Cargo's own folder for what it builds.
pub fn target() -> PathBuf {
    root().join(std::env::var_os("CARGO_TARGET_DIR").unwrap_or_else(|| "target".into()))
}

/// What xtask keeps between runs: tools, virtual environments, the package as bound.
pub fn kept(name: &str) -> PathBuf {
    target().join("xtask").join(name)
}

/// The page's source.
pub fn www() -> PathBuf {
    root().join("www")
}

/// The built page.
pub fn dist() -> PathBuf {
    root().join("dist")
}

/// A program that `npm ci` installed for the page.
pub fn node_program(name: &str) -> PathBuf {
    www().join("node_modules/.bin").join(name)
}
