//! Why a file is refused, and where the fault lies.

use crate::notes::{self, Message};
use crate::reader::MOST_BYTES;
use std::fmt;

/// Where in a file; what is not known is left out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Place {
    /// How many bytes of the file lie before, at most.
    pub byte: Option<u64>,
    /// The line of a text, from 1.
    pub line: Option<u64>,
    /// The record, from 1.
    pub record: Option<u64>,
}

/// A file that is not read.
#[derive(Clone, Debug, PartialEq)]
pub struct Error {
    /// What is wrong.
    pub message: Message,
    /// Where.
    pub place: Place,
}

impl Error {
    pub(crate) fn of(message: Message) -> Self {
        Self {
            message,
            place: Place::default(),
        }
    }

    /// A file of more than [`MOST_BYTES`](crate::MOST_BYTES).
    pub fn too_large() -> Self {
        Self::of(notes::too_large(MOST_BYTES as usize)).at_byte(MOST_BYTES)
    }

    /// A compressed file whose content cannot be unpacked; whoever unpacks it before this crate says so.
    pub fn packing_broken() -> Self {
        Self::of(notes::packing_broken())
    }

    /// A file that is gone, or that the system does not let be read.
    pub fn file_gone() -> Self {
        Self::of(notes::file_gone())
    }

    pub(crate) fn at_byte(mut self, byte: u64) -> Self {
        self.place.byte = Some(byte);
        self
    }

    pub(crate) fn at_line(mut self, line: u64) -> Self {
        self.place.line = Some(line);
        self
    }

    pub(crate) fn at_record(mut self, record: usize) -> Self {
        self.place.record = Some(record as u64);
        self
    }
}

impl fmt::Display for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message.fmt(f)
    }
}

impl std::error::Error for Error {}
