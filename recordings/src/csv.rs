//! Tables with a line of headings, values separated by commas, semicolons or tabs.

use crate::columns::{Column, Record};
use crate::csv_clock::{Clock, Parts, set_clocks, time};
use crate::csv_headings::{KNOWN, Meaning, meaning};
use crate::error::Error;
use crate::notes;
use crate::numbers::number_of_table;
use crate::raw::{LapMark, Raw};
use crate::time::date_s;
use csv_core::ReadFieldResult;

/// Separators by how surely they are meant where they part the headings: commas may also be decimal marks.
const SEPARATORS: [u8; 3] = [b';', b'\t', b','];
/// How many lines may stand before the headings, and in how many bytes.
const MOST_LINES_BEFORE: usize = 30;
const MOST_BYTES_BEFORE: usize = 64_000;
const LONGEST_FIELD: usize = 128;

/// Reads a table in pieces.
#[derive(Debug, Default)]
pub(crate) struct CsvReader {
    /// Until the headings are found.
    before: String,
    table: Option<Table>,
}

impl CsvReader {
    pub fn feed(&mut self, text: &str, last: bool) -> Result<(), Error> {
        if let Some(table) = &mut self.table {
            return table.read(text.as_bytes(), false);
        }
        self.before.push_str(text);
        if !last && self.before.len() < MOST_BYTES_BEFORE {
            return Ok(());
        }
        let before = std::mem::take(&mut self.before);
        let Some((mut table, rest)) = headings(&before) else {
            return Err(Error::of(notes::no_known_columns(KNOWN)).at_line(1));
        };
        table.read(rest.as_bytes(), false)?;
        self.table = Some(table);
        Ok(())
    }

    pub fn finish(self) -> Result<Raw, Error> {
        match self.table {
            Some(table) => table.finish(),
            None => Err(Error::of(notes::empty())),
        }
    }
}

/// The first line that names at least two columns, and what follows it.
fn headings(text: &str) -> Option<(Table, &str)> {
    let mut rest = text;
    for line_number in 1..=MOST_LINES_BEFORE {
        let (line, after) = match rest.find(['\n', '\r']) {
            Some(at) if rest[at..].starts_with("\r\n") => (&rest[..at], &rest[at + 2..]),
            Some(at) => (&rest[..at], &rest[at + 1..]),
            None => (rest, ""),
        };
        for separator in SEPARATORS {
            let cells = line.split(char::from(separator));
            let mut meanings: Vec<Option<Meaning>> = cells
                .map(|cell| meaning(cell.trim().trim_matches('"')))
                .collect();
            only_first_of_each(&mut meanings);
            let is_surveyed = is_surveyed(&mut meanings);
            let values = meanings
                .iter()
                .flatten()
                .filter(|known| matches!(known, Meaning::Value { .. }));
            if values.count() >= 2 {
                let mut table = Table::new(separator, meanings, line_number);
                table.raw.is_surveyed = is_surveyed;
                return Some((table, after));
            }
        }
        if after.is_empty() {
            return None;
        }
        rest = after;
    }
    None
}

fn only_first_of_each(meanings: &mut [Option<Meaning>]) {
    let mut seen = Vec::new();
    for known in meanings {
        let what = match known {
            Some(Meaning::Value { column, .. }) => Some(*column as usize),
            Some(Meaning::Date) => Some(usize::MAX),
            Some(Meaning::Lap) => Some(usize::MAX - 1),
            None => None,
        };
        if let Some(what) = what {
            if seen.contains(&what) {
                *known = None;
            }
            seen.push(what);
        }
    }
}

/// Whether a table is of a surveyed road: it goes by distance and says how high the road is, neither when nor where somebody was.
/// Bearings and radii are those of such a road alone.
fn is_surveyed(meanings: &mut [Option<Meaning>]) -> bool {
    let is = |known: &Option<Meaning>, wanted: &[Column]| matches!(known, Some(Meaning::Value { column, .. }) if wanted.contains(column));
    let has = |wanted: Column| meanings.iter().any(|known| is(known, &[wanted]));
    let surveyed = has(Column::Distance)
        && has(Column::Elevation)
        && ![Column::Time, Column::Latitude, Column::Speed]
            .map(has)
            .contains(&true);
    for known in meanings {
        if !surveyed && is(known, &[Column::Bearing, Column::Radius, Column::WindShare]) {
            *known = None;
        }
    }
    surveyed
}

#[derive(Debug)]
struct Table {
    reader: csv_core::Reader,
    separator: u8,
    meanings: Vec<Option<Meaning>>,
    line_of_headings: u64,
    /// The value that is being read, and which of its line it is.
    field: [u8; LONGEST_FIELD],
    length: usize,
    is_too_long: bool,
    place: usize,
    row: Row,
    raw: Raw,
    clocks: Vec<Clock>,
    /// The lap that is being ridden, and the record at which it began.
    lap: Option<(Vec<u8>, usize)>,
    /// Laps that are over, by the record at which they began and the first after them.
    laps: Vec<(usize, usize)>,
    unreadable: Fault,
    uneven: Fault,
}

#[derive(Debug, Default)]
struct Row {
    record: Record,
    date_s: f64,
    clock: Option<Parts>,
    lap: Vec<u8>,
}

/// How often something was wrong, and at which line first.
#[derive(Debug, Default)]
struct Fault {
    count: usize,
    line: usize,
}

impl Fault {
    fn at(&mut self, line: u64) {
        if self.count == 0 {
            self.line = line as usize;
        }
        self.count += 1;
    }
}

impl Table {
    fn new(separator: u8, meanings: Vec<Option<Meaning>>, line: usize) -> Self {
        Self {
            reader: csv_core::ReaderBuilder::new().delimiter(separator).build(),
            separator,
            meanings,
            line_of_headings: line as u64,
            field: [0; LONGEST_FIELD],
            length: 0,
            is_too_long: false,
            place: 0,
            row: Row::default(),
            raw: Raw::default(),
            clocks: Vec::new(),
            lap: None,
            laps: Vec::new(),
            unreadable: Fault::default(),
            uneven: Fault::default(),
        }
    }

    fn line(&self) -> u64 {
        self.line_of_headings + self.reader.line()
    }

    /// Reads a piece, or, with an empty one, to the end of the table.
    fn read(&mut self, mut input: &[u8], is_end: bool) -> Result<(), Error> {
        // The library takes an empty input for the end: it must not see one where a piece ends with a value.
        while is_end || !input.is_empty() {
            let line = self.line();
            let (result, read, written) = self
                .reader
                .read_field(input, &mut self.field[self.length..]);
            input = &input[read..];
            self.length += written;
            match result {
                ReadFieldResult::InputEmpty => {}
                ReadFieldResult::OutputFull => {
                    self.is_too_long = true;
                    self.length = 0;
                }
                ReadFieldResult::Field { record_end } => {
                    self.value(line);
                    if record_end {
                        self.end_of_line(line)?;
                    }
                }
                ReadFieldResult::End => break,
            }
        }
        Ok(())
    }

    fn value(&mut self, line: u64) {
        let bytes = if self.is_too_long {
            b"?".as_slice()
        } else {
            &self.field[..self.length]
        };
        let text = std::str::from_utf8(bytes).unwrap_or("?");
        match self.meanings.get(self.place).copied().flatten() {
            Some(Meaning::Value {
                column,
                scale,
                offset,
                ..
            }) if !text.trim().is_empty() => {
                let value = match column {
                    Column::Time => time(text, self.separator, scale, &mut self.row.clock),
                    _ => number_of_table(text, self.separator) * scale + offset,
                };
                if value.is_nan() {
                    self.unreadable.at(line);
                }
                self.row.record.set(column, value);
            }
            Some(Meaning::Date) => self.row.date_s = date_s(text),
            Some(Meaning::Lap) => self.row.lap = bytes.to_vec(),
            _ => {}
        }
        self.place += 1;
        self.length = 0;
        self.is_too_long = false;
    }

    fn end_of_line(&mut self, line: u64) -> Result<(), Error> {
        if std::mem::take(&mut self.place) != self.meanings.len() {
            self.uneven.at(line);
        }
        let mut row = std::mem::take(&mut self.row);
        let record = self.raw.columns.len();
        if let Some(parts) = row.clock {
            let time_s = row.record.get(Column::Time);
            if row.date_s > 0.0 {
                row.record.set(Column::Time, time_s + row.date_s);
            } else if !time_s.is_nan() {
                self.clocks.push(Clock {
                    record,
                    parts,
                    time_s,
                });
            }
        }
        if !row.lap.is_empty() && self.lap.as_ref().is_none_or(|(lap, _)| *lap != row.lap) {
            self.end_lap(record);
            self.lap = Some((row.lap, record));
        }
        self.raw.push(&row.record)
    }

    fn end_lap(&mut self, after: usize) {
        if let Some((_, from)) = self.lap.take() {
            self.laps.push((from, after));
        }
    }

    fn finish(mut self) -> Result<Raw, Error> {
        self.read(&[], true)?;
        if self.raw.columns.is_empty() {
            return Err(Error::of(notes::no_records()).at_line(self.line_of_headings));
        }
        set_clocks(&mut self.raw, &self.clocks);
        self.end_lap(self.raw.columns.len());
        let times = self.raw.columns.get(Column::Time);
        let time_s = |record: usize| times.get(record).copied().unwrap_or(self.raw.last_s());
        let marks: Vec<LapMark> = self
            .laps
            .iter()
            .map(|&(from, after)| LapMark {
                from_s: time_s(from),
                to_s: time_s(after),
            })
            .collect();
        marks.into_iter().for_each(|mark| self.raw.lap(mark));
        for (fault, note) in [
            (&self.unreadable, notes::unreadable as fn(usize, usize) -> _),
            (&self.uneven, notes::uneven_lines),
        ] {
            if fault.count > 0 {
                self.raw.notes.push(note(fault.count, fault.line));
            }
        }
        for known in self.meanings.iter().flatten() {
            if let Meaning::Value {
                column,
                guess: true,
                ..
            } = known
            {
                guess_unit(&mut self.raw, *column);
            }
        }
        Ok(self.raw)
    }
}

/// Speeds that are too high for m/s are taken as km/h, distances that are too short for metres as km.
fn guess_unit(raw: &mut Raw, column: Column) {
    let (times, values) = (raw.columns.get(Column::Time), raw.columns.get(column));
    let (scale, note) = if column == Column::Speed {
        // Half of a ride on a bicycle is slower than this, about 61 km/h.
        const FASTEST_MEDIAN_M_S: f64 = 17.0;
        let mut moving: Vec<f64> = values
            .iter()
            .copied()
            .filter(|value| *value > 1.0)
            .collect();
        let middle = moving.len() / 2;
        if moving.is_empty()
            || *moving.select_nth_unstable_by(middle, f64::total_cmp).1 < FASTEST_MEDIAN_M_S
        {
            return;
        }
        (1.0 / 3.6, notes::speed_as_km_h())
    } else {
        // Nobody rides slower than this on average.
        const SLOWEST_M_S: f64 = 0.3;
        let span = |values: &[f64]| {
            let mut known = values.iter().copied().filter(|value| !value.is_nan());
            let first = known.next().unwrap_or(f64::NAN);
            known.next_back().unwrap_or(f64::NAN) - first
        };
        let mean_m_s = span(values) / span(times);
        if mean_m_s.is_nan()
            || !(0.0..SLOWEST_M_S).contains(&mean_m_s)
            || mean_m_s * 1000.0 < SLOWEST_M_S
        {
            return;
        }
        (1000.0, notes::distance_as_km())
    };
    let scaled = values.iter().map(|value| value * scale).collect();
    raw.columns.set(column, scaled);
    raw.notes.push(note);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_is_the_same_wherever_a_piece_ends() {
        const TABLE: &str = "time_s,power_w,lap\r\n0,200,1\n1,,1\n2,\"210\",2\n3,220,2";
        let columns = |pieces: &[&str]| {
            let (mut table, rest) = headings(TABLE).expect("headings");
            assert_eq!(rest, pieces.concat());
            for piece in pieces {
                table.read(piece.as_bytes(), false).expect("it is in order");
            }
            let raw = table.finish().expect("it is in order");
            assert!(raw.notes.is_empty());
            format!("{:?} {:?}", raw.columns, raw.laps)
        };
        let rest = &TABLE[TABLE.find('0').expect("a first value")..];
        let whole = columns(&[rest]);
        for cut in 0..=rest.len() {
            assert_eq!(columns(&[&rest[..cut], &rest[cut..]]), whole, "{cut}");
        }
    }
}
