//! XML in pieces: each piece is read as far as it holds whole tags, and what is left waits for the next.
//!
//! No entity of a file's own is ever expanded, nothing is fetched, and names are matched without their prefixes.

use crate::error::Error;
use crate::notes;
use crate::raw::Raw;
use crate::trackpoint::{Element, Track};
use crate::{Kind, gpx, tcx};
use quick_xml::Reader;
use quick_xml::events::{BytesStart, Event};

/// How deep a file may nest.
pub const MOST_DEPTH: usize = 64;
/// A tag, comment or text longer than this is no part of a recording.
const LONGEST_PIECE: usize = 1_000_000;
/// No number or time is longer.
const LONGEST_LEAF: usize = 64;

/// The line that is read, counted only when it is asked for.
pub(crate) type Line<'a> = &'a dyn Fn() -> usize;

fn line_breaks(text: &str) -> usize {
    text.matches('\n').count()
}

/// Reads a GPX or TCX file.
#[derive(Debug, Default)]
pub(crate) struct XmlReader {
    pending: String,
    /// Of what was read: bytes, and line breaks.
    byte: usize,
    line: usize,
    open: Vec<Element>,
    leaf: String,
    track: Option<Track>,
    /// The file is damaged from here on.
    broken: bool,
}

impl XmlReader {
    /// Reads as much as is whole.
    pub fn feed(&mut self, text: &str, last: bool) -> Result<(), Error> {
        if self.broken {
            return Ok(());
        }
        self.pending.push_str(text);
        let pending = std::mem::take(&mut self.pending);
        let read = self.read(&pending, last)?;
        self.byte += read;
        self.line += line_breaks(&pending[..read]);
        let rest = pending.get(read..).unwrap_or_default();
        self.broken = rest.len() > LONGEST_PIECE || (last && !rest.trim().is_empty());
        rest.clone_into(&mut self.pending);
        Ok(())
    }

    /// Reads events, and says where the last whole one ends.
    fn read(&mut self, text: &str, last: bool) -> Result<usize, Error> {
        let mut reader = Reader::from_str(text);
        let config = reader.config_mut();
        config.allow_dangling_amp = true;
        config.allow_unmatched_ends = true;
        config.check_end_names = false;
        let mut read = 0;
        // What is an error now may be the beginning of something that is not whole yet.
        while let Ok(event) = reader.read_event() {
            let end = usize::try_from(reader.buffer_position())
                .unwrap_or(text.len())
                .min(text.len());
            let may_go_on = end == text.len() && !last && matches!(event, Event::Text(_));
            if may_go_on || matches!(event, Event::Eof) {
                break;
            }
            let base = self.line + 1;
            self.take(&event, &|| base + line_breaks(&text[..read]))?;
            read = end;
        }
        Ok(if text.is_char_boundary(read) { read } else { 0 })
    }

    fn take(&mut self, event: &Event<'_>, line: Line<'_>) -> Result<(), Error> {
        match event {
            Event::Start(tag) => self.start(tag, line),
            Event::Empty(tag) => {
                self.start(tag, line)?;
                self.end(line)
            }
            Event::End(tag) => {
                let element = self.element(tag.local_name().as_ref());
                // A tag that was never closed ends with the one around it; one that was never opened ends nothing.
                if let Some(at) = self.open.iter().rposition(|open| *open == element) {
                    while self.open.len() > at {
                        self.end(line)?;
                    }
                }
                Ok(())
            }
            Event::Text(text) => {
                self.add(text);
                Ok(())
            }
            Event::CData(text) => {
                self.add(text);
                Ok(())
            }
            Event::GeneralRef(name) => {
                let sign = match &**name {
                    "lt" => '<',
                    "gt" => '>',
                    "amp" => '&',
                    "apos" => '\'',
                    "quot" => '"',
                    _ => name
                        .resolve_char_ref()
                        .ok()
                        .flatten()
                        .unwrap_or(char::REPLACEMENT_CHARACTER),
                };
                self.add(sign.encode_utf8(&mut [0; 4]));
                Ok(())
            }
            _ => Ok(()),
        }
    }

    fn element(&self, name: &str) -> Element {
        match self.track.as_ref().map(|track| track.kind) {
            Some(Kind::Gpx) => gpx::element(name),
            _ => tcx::element(name),
        }
    }

    fn start(&mut self, tag: &BytesStart<'_>, line: Line<'_>) -> Result<(), Error> {
        let name = tag.local_name();
        let name = name.as_ref();
        if self.track.is_none() {
            let kind = match name {
                "gpx" => Kind::Gpx,
                "TrainingCenterDatabase" => Kind::Tcx,
                other => return Err(Error::of(notes::other_xml(other)).at_line(line() as u64)),
            };
            self.track = Some(Track::new(kind));
        }
        if self.open.len() >= MOST_DEPTH {
            let line = line();
            return Err(Error::of(notes::too_deep(MOST_DEPTH, line))
                .at_line(line as u64)
                .at_byte(self.byte as u64));
        }
        let element = self.element(name);
        self.leaf.clear();
        self.open.push(element);
        let attribute = |wanted: &str| {
            let mut attributes = tag.attributes();
            // Looking for names that stand twice takes time that grows with the square of their number.
            attributes.with_checks(false);
            attributes
                .flatten()
                .find(|attribute| attribute.key.as_ref() == wanted)
                .map(|attribute| attribute.value.into_owned())
        };
        if let Some(track) = &mut self.track {
            track.start(element, attribute);
        }
        Ok(())
    }

    fn add(&mut self, text: &str) {
        if self.open.last().is_some_and(|element| element.has_text()) {
            let room = LONGEST_LEAF.saturating_sub(self.leaf.len());
            self.leaf.push_str(&text[..text.floor_char_boundary(room)]);
        }
    }

    fn end(&mut self, line: Line<'_>) -> Result<(), Error> {
        let Some(element) = self.open.pop() else {
            return Ok(());
        };
        let outcome = match &mut self.track {
            Some(track) => track.end(element, &self.open, &self.leaf, line),
            None => Ok(()),
        };
        self.leaf.clear();
        outcome
    }

    /// What was read.
    pub fn finish(self) -> Result<(Kind, Raw), Error> {
        let (byte, line) = (self.byte, self.line + 1);
        let at = |error: Error| error.at_byte(byte as u64).at_line(line as u64);
        let is_cut = self.broken || !self.open.is_empty();
        let Some(track) = self.track else {
            return Err(at(Error::of(notes::not_xml(line, byte))));
        };
        let (kind, mut raw) = track.finish();
        if is_cut {
            if raw.columns.is_empty() {
                return Err(at(Error::of(if self.pending.len() > LONGEST_PIECE {
                    notes::too_long_piece(line)
                } else {
                    notes::cut_before_records(byte)
                })));
            }
            raw.notes.push(notes::cut(byte, raw.columns.len()));
        }
        Ok((kind, raw))
    }
}
