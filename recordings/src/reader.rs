//! Bytes of a file in pieces, of whichever kind it is by its content.

use crate::csv::CsvReader;
use crate::error::Error;
use crate::fit_messages::is_fit;
use crate::recording::Recording;
use crate::text::Decoder;
use crate::xml::XmlReader;
use crate::{Kind, fit, notes};

/// The largest file that is read, unpacked.
pub const MOST_BYTES: u64 = 64 << 20;
/// By so many bytes a file is known.
const KNOWN_BY: usize = 512;
/// What is read at once.
const PIECE: usize = 64 << 10;

/// Reads a recording from the bytes of a file, which come in pieces of any length.
///
/// Memory holds the columns, at most [`MOST_RECORDS`](crate::MOST_RECORDS) records, and of a text at most a megabyte; FIT
/// files, which are compact, are held whole.
#[derive(Debug, Default)]
pub struct Reader {
    bytes: u64,
    held: Vec<u8>,
    state: State,
}

#[derive(Debug, Default)]
enum State {
    #[default]
    Unknown,
    Fit(Vec<u8>),
    Text(Decoder, Text),
}

#[derive(Debug)]
enum Text {
    Xml(Box<XmlReader>),
    Csv(Box<CsvReader>),
}

impl Text {
    fn feed(&mut self, text: &str, last: bool) -> Result<(), Error> {
        match self {
            Self::Xml(xml) => xml.feed(text, last),
            Self::Csv(csv) => csv.feed(text, last),
        }
    }
}

impl Reader {
    /// Takes the next piece.
    ///
    /// # Errors
    /// What cannot be read, or is larger than is read; nothing may be pushed after that.
    pub fn push(&mut self, piece: &[u8]) -> Result<(), Error> {
        self.bytes += piece.len() as u64;
        if self.bytes > MOST_BYTES {
            return Err(Error::too_large());
        }
        self.held.extend_from_slice(piece);
        let wanted = if matches!(self.state, State::Unknown) {
            KNOWN_BY
        } else {
            PIECE
        };
        if self.held.len() >= wanted {
            self.read(false)
        } else {
            Ok(())
        }
    }

    /// Reads to the end of the file.
    ///
    /// # Errors
    /// What cannot be read. A file that breaks off after some records is read as far as it goes, with a note.
    pub fn finish(mut self) -> Result<Recording, Error> {
        self.read(true)?;
        let (kind, raw) = match self.state {
            State::Unknown => return Err(Error::of(notes::empty())),
            State::Fit(bytes) => (Kind::Fit, fit::read(&bytes)?),
            State::Text(_, Text::Xml(xml)) => xml.finish()?,
            State::Text(_, Text::Csv(csv)) => (Kind::Csv, csv.finish()?),
        };
        Recording::of(kind, raw)
    }

    fn read(&mut self, last: bool) -> Result<(), Error> {
        let held = std::mem::take(&mut self.held);
        let mut piece = held.as_slice();
        if matches!(self.state, State::Unknown) {
            if held.is_empty() {
                return Ok(());
            }
            (self.state, piece) = known(&held)?;
        }
        match &mut self.state {
            State::Unknown => Ok(()),
            State::Fit(bytes) => {
                bytes.extend_from_slice(piece);
                Ok(())
            }
            State::Text(decoder, text) => {
                let mut decoded = String::with_capacity(piece.len());
                decoder.decode(piece, last, &mut decoded);
                text.feed(&decoded, last)
            }
        }
    }
}

/// What begins so, and what of it is content.
fn known(bytes: &[u8]) -> Result<(State, &[u8]), Error> {
    if is_fit(bytes) {
        return Ok((State::Fit(Vec::new()), bytes));
    }
    if bytes.starts_with(b"PK\x03\x04") {
        return Err(Error::of(notes::zip_archive()));
    }
    if bytes.starts_with(&[0x1f, 0x8b]) {
        return Err(Error::of(notes::packed_twice()));
    }
    let (decoder, content) = Decoder::new(bytes);
    let mut text = String::new();
    Decoder::new(bytes).0.decode(content, false, &mut text);
    let is_control = |sign: char| sign.is_control() && !sign.is_whitespace();
    let text = text.trim_start();
    if text.contains(is_control) {
        return Err(Error::of(notes::unknown_kind()));
    }
    if text.is_empty() && bytes.len() < KNOWN_BY {
        return Err(Error::of(notes::empty()));
    }
    let text = if text.starts_with('<') {
        Text::Xml(Box::default())
    } else {
        Text::Csv(Box::default())
    };
    Ok((State::Text(decoder, text), content))
}
