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

/// What xtask keeps between runs: tools, virtual environments, the modules as bound. Always here, wherever cargo builds: the
/// page's type checker looks for the modules' types here.
pub fn kept(name: &str) -> PathBuf {
    root().join("target/xtask").join(name)
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
