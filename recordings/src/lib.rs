//! Recordings of rides, read from the bytes of a file into columns in SI units: FIT activities, GPX, TCX and CSV.
//!
//! Pure Rust without input or output: bytes come in pieces through [`Reader::push`], and [`Reader::finish`] gives the
//! [`Recording`]. What was missing or repaired is told in its notes; what cannot be read is an [`Error`] that says where.
//! What a recording lacks is not a number in its columns, never zero.
//!
//! ```
//! use fasterby_recordings::{Column, Reader};
//! let mut reader = Reader::default();
//! reader.push(b"time_s,speed_m_s,power_w\n0,10,250\n1,10.5,\n")?;
//! let recording = reader.finish()?;
//! assert_eq!(recording.columns.get(Column::Speed), [10.0, 10.5]);
//! assert!(recording.columns.get(Column::Power)[1].is_nan());
//! # Ok::<(), fasterby_recordings::Error>(())
//! ```
//!
//! Files use many units; this crate is where they become SI. It computes nothing about riders: that is the core's.

#![forbid(unsafe_code)]

mod bearing;
mod climb;
mod clock;
mod columns;
mod csv;
mod csv_clock;
mod csv_headings;
mod distance;
mod error;
mod fit;
mod fit_messages;
mod geodesy;
mod gpx;
mod loops;
mod notes;
mod numbers;
mod raw;
mod reader;
mod recording;
mod speed;
mod stops;
mod tcx;
mod text;
mod time;
mod track;
mod trackpoint;
mod xml;

pub use columns::MOST_RECORDS;
pub use columns::{COLUMNS, Column, Columns};
pub use error::{Error, Place};
pub use geodesy::distance_m;
pub use notes::{MESSAGES, Message, Sentence, Value};
pub use reader::{MOST_BYTES, Reader};
pub use recording::{OutlinePoint, Recording, Span, Summary};
pub use xml::MOST_DEPTH;

/// The kinds of files that are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The Flexible and Interoperable Data Transfer protocol, which is its owner's.
    Fit,
    /// The GPS Exchange Format, versions 1.0 and 1.1.
    Gpx,
    /// Training Center XML, version 2.
    Tcx,
    /// Values separated by commas, semicolons or tabs, with a line of headings.
    Csv,
}

impl Kind {
    /// Its usual extension.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Fit => "fit",
            Self::Gpx => "gpx",
            Self::Tcx => "tcx",
            Self::Csv => "csv",
        }
    }
}
