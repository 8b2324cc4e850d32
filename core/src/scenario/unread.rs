//! What a first visit asks nothing of, so that the module that it fetches passes it over.

use serde::de::IgnoredAny;
use serde::{Deserialize, Deserializer, Serialize};

/// A part of a scenario that was passed over.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Unread(());

impl Unread {
    /// Nothing of it is written.
    pub fn is_empty(&self) -> bool {
        true
    }
}

impl<'de> Deserialize<'de> for Unread {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        IgnoredAny::deserialize(deserializer).map(|_| Self(()))
    }
}
