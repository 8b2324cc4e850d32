//! FIT activities. The library reads the protocol; here its messages become records, laps and pauses.
//!
//! Message and field numbers are those of the protocol's global profile (from memory, tried on real files).

use crate::columns::{Column, Record};
use crate::error::Error;
use crate::notes;
use crate::raw::{LapMark, Raw};
use rustyfit::proto::{Message, Value};
use rustyfit::{Decoder, DecoderError, DecoderEvent, StreamingIterator};

/// How a FIT file begins: the length of its header, four bytes on the length of what follows, and these from the eighth.
pub(crate) const MARK: &[u8] = b".FIT";
const SHORT_HEADER: usize = 12;
const LONG_HEADER: usize = 14;
/// Seconds from 1970-01-01 to 1989-12-31, where the protocol's time begins.
const EPOCH_S: f64 = 631_065_600.0;
const DEGREES_A_SEMICIRCLE: f64 = 180.0 / 2_147_483_648.0;
/// More described fields than any recording has: a file of nothing else keeps the library busy for long.
const MOST_DESCRIBED: usize = 1_000;

const LAP: u16 = 19;
const RECORD: u16 = 20;
const EVENT: u16 = 21;
const FIELD_DESCRIPTION: u16 = 206;
const TIMESTAMP: u8 = 253;

/// Reads the whole of a file.
pub(crate) fn read(mut bytes: Vec<u8>) -> Result<Raw, Error> {
    let was_closed = close(&mut bytes);
    let mut builder = Builder::default();
    let mut rest = bytes.as_slice();
    // Files that are damaged are read as far as they go.
    let mut decoder = Decoder::builder()
        .checksum(false)
        .expand_components(false)
        .build();
    let mut headers = 0_usize;
    let mut is_broken = false;
    {
        let mut stream = decoder.stream(&mut rest);
        while let Some(event) = stream.next() {
            match event {
                Ok(DecoderEvent::Message(message)) => builder.take(message)?,
                Ok(DecoderEvent::FileHeader(_)) => {
                    headers += 1;
                    builder.begin();
                }
                Ok(_) => {}
                Err(DecoderError::UnexpectedEof) if !was_closed => break,
                Err(_) => {
                    is_broken = true;
                    break;
                }
            }
        }
    }
    let byte = bytes.len() - rest.len();
    builder.finish(byte, is_broken, was_closed, headers)
}

/// A device that lost its power leaves the length at zero; then all that is there is read. Says whether it was given.
fn close(bytes: &mut [u8]) -> bool {
    match bytes.get_mut(4..8) {
        Some(length) if length == [0; 4] => {
            length.copy_from_slice(&u32::MAX.to_le_bytes());
            false
        }
        _ => true,
    }
}

/// Whether these bytes begin a FIT file.
pub(crate) fn is_fit(bytes: &[u8]) -> bool {
    bytes.get(8..SHORT_HEADER) == Some(MARK)
        && matches!(usize::from(bytes[0]), SHORT_HEADER | LONG_HEADER)
}

/// A developer's field that means a column.
#[derive(Clone, Copy, Debug)]
struct Described {
    developer: u8,
    number: u8,
    column: Column,
}

#[derive(Debug, Default)]
struct Builder {
    raw: Raw,
    described: Vec<Described>,
    described_in_all: usize,
    /// Distance that is counted in turns of 256 m.
    turns_m: f64,
    last_turn_m: f64,
    bytes_hint: usize,
    used_described: bool,
}

impl Builder {
    /// Another recording begins, of which several may lie in one file.
    fn begin(&mut self) {
        self.raw.part();
        self.described.clear();
        (self.turns_m, self.last_turn_m) = (0.0, f64::NAN);
    }

    fn take(&mut self, message: &Message) -> Result<(), Error> {
        self.bytes_hint += 1;
        match message.num.0 {
            RECORD => return self.record(message),
            LAP => self.lap(message),
            EVENT => self.event(message),
            FIELD_DESCRIPTION => {
                self.described_in_all += 1;
                if self.described_in_all > MOST_DESCRIBED {
                    return Err(Error::of(notes::too_many_fields(self.bytes_hint)));
                }
                self.describe(message);
            }
            _ => {}
        }
        Ok(())
    }

    fn record(&mut self, message: &Message) -> Result<(), Error> {
        let mut record = Record::default();
        let mut speed = [f64::NAN; 3];
        let mut elevation = [f64::NAN; 2];
        let mut cadence = [f64::NAN; 2];
        for field in &message.fields {
            let value = number(&field.value);
            match field.num {
                TIMESTAMP => record.set(Column::Time, value + EPOCH_S),
                0 => record.set(Column::Latitude, value * DEGREES_A_SEMICIRCLE),
                1 => record.set(Column::Longitude, value * DEGREES_A_SEMICIRCLE),
                2 => elevation[1] = value / 5.0 - 500.0,
                4 => cadence[0] = value,
                5 => record.set(Column::Distance, value / 100.0),
                6 => speed[1] = value / 1000.0,
                7 => record.set(Column::Power, value),
                8 => {
                    if let Some((speed_m_s, distance_m)) = self.speed_and_distance(&field.value) {
                        speed[2] = speed_m_s;
                        record.fill(Column::Distance, distance_m);
                    }
                }
                13 => record.set(Column::Temperature, value),
                53 => cadence[1] = value / 128.0,
                73 => speed[0] = value / 1000.0,
                78 => elevation[0] = value / 5.0 - 500.0,
                _ => {}
            }
        }
        speed
            .into_iter()
            .for_each(|value| record.fill(Column::Speed, value));
        elevation
            .into_iter()
            .for_each(|value| record.fill(Column::Elevation, value));
        let fraction = if cadence[1].is_nan() { 0.0 } else { cadence[1] };
        record.set(Column::Cadence, cadence[0] + fraction);
        for field in &message.developer_fields {
            let of = |known: &&Described| {
                known.developer == field.developer_data_index && known.number == field.num
            };
            if let Some(known) = self.described.iter().find(of)
                && record.get(known.column).is_nan()
            {
                let value = number(&field.value);
                self.used_described |= !value.is_nan() && known.column == Column::Power;
                record.set(known.column, value);
            }
        }
        self.raw.push(&record)
    }

    /// Three bytes: twelve bits of speed in hundredths of m/s, twelve of distance in sixteenths of a metre, which begin anew
    /// after 256 m. The library leaves them as they are.
    fn speed_and_distance(&mut self, value: &Value) -> Option<(f64, f64)> {
        let Value::ArrayUint8(bytes) = value else {
            return None;
        };
        let [low, middle, high] = bytes.first_chunk::<3>()?.map(u16::from);
        if [low, middle, high] == [0xff; 3] {
            return None;
        }
        let speed_m_s = f64::from(low | (middle & 0x0f) << 8) / 100.0;
        let distance_m = f64::from(middle >> 4 | high << 4) / 16.0;
        const TURN_M: f64 = 256.0;
        if distance_m < self.last_turn_m {
            self.turns_m += TURN_M;
        }
        self.last_turn_m = distance_m;
        Some((speed_m_s, self.turns_m + distance_m))
    }

    fn lap(&mut self, message: &Message) {
        let field = |wanted: u8| {
            let found = message.fields.iter().find(|field| field.num == wanted);
            found.map_or(f64::NAN, |field| number(&field.value))
        };
        let (from_s, lasts_s) = (field(2) + EPOCH_S, field(7) / 1000.0);
        let ends_s = from_s + lasts_s;
        let to_s = if ends_s.is_nan() {
            field(TIMESTAMP) + EPOCH_S
        } else {
            ends_s
        };
        self.raw.lap(LapMark { from_s, to_s });
    }

    /// Where the timer starts again, a new part begins.
    fn event(&mut self, message: &Message) {
        let is = |wanted: u8, value: f64| {
            message
                .fields
                .iter()
                .any(|field| field.num == wanted && number(&field.value) == value)
        };
        const TIMER: f64 = 0.0;
        const START: f64 = 0.0;
        if is(0, TIMER) && is(1, START) {
            self.raw.part();
        }
    }

    /// A developer's field is known by the field of the profile that it stands for, or by its name.
    fn describe(&mut self, message: &Message) {
        let field = |wanted: u8| {
            message
                .fields
                .iter()
                .find(|field| field.num == wanted)
                .map(|field| &field.value)
        };
        let whole = |wanted: u8| field(wanted).map_or(f64::NAN, number);
        let of_records = |value: f64| value.is_nan() || value == f64::from(RECORD);
        let native = whole(15);
        let column = if native == 7.0 {
            Some(Column::Power)
        } else if native == 4.0 {
            Some(Column::Cadence)
        } else if native.is_nan() && field(3).is_some_and(|name| is_named(name, "power")) {
            Some(Column::Power)
        } else {
            None
        };
        if let (Some(column), true) = (column, of_records(whole(14))) {
            self.described.push(Described {
                developer: whole(0) as u8,
                number: whole(1) as u8,
                column,
            });
        }
    }

    fn finish(
        mut self,
        byte: usize,
        is_broken: bool,
        was_closed: bool,
        headers: usize,
    ) -> Result<Raw, Error> {
        let records = self.raw.columns.len();
        let place = |error: Error| error.at_byte(byte as u64);
        if records == 0 {
            return Err(place(Error::of(if is_broken {
                notes::cut_before_records(byte)
            } else {
                notes::no_records()
            })));
        }
        if !was_closed {
            self.raw.notes.push(notes::not_closed());
        } else if is_broken {
            self.raw.notes.push(notes::cut(byte, records));
        }
        if headers > 1 && self.raw.parts.iter().any(|part| *part < records) {
            self.raw.notes.push(notes::not_one_piece());
        }
        if self.used_described {
            self.raw.notes.push(notes::power_by_name());
        }
        Ok(self.raw)
    }
}

/// Whether a text of the file is this word, in any case.
fn is_named(value: &Value, word: &str) -> bool {
    let is_word = |text: &str| {
        text.trim_end_matches('\0')
            .trim()
            .eq_ignore_ascii_case(word)
    };
    match value {
        Value::String(text) => is_word(text),
        Value::ArrayString(texts) => texts.first().is_some_and(|text| is_word(text)),
        _ => false,
    }
}

/// A value as a number. Each type has one value, its largest, that says that there is none.
fn number(value: &Value) -> f64 {
    let unless = |is_none: bool, value: f64| if is_none { f64::NAN } else { value };
    match value {
        Value::Int8(v) => unless(*v == i8::MAX, f64::from(*v)),
        Value::Uint8(v) => unless(*v == u8::MAX, f64::from(*v)),
        Value::Int16(v) => unless(*v == i16::MAX, f64::from(*v)),
        Value::Uint16(v) => unless(*v == u16::MAX, f64::from(*v)),
        Value::Int32(v) => unless(*v == i32::MAX, f64::from(*v)),
        Value::Uint32(v) => unless(*v == u32::MAX, f64::from(*v)),
        Value::Int64(v) => unless(*v == i64::MAX, *v as f64),
        Value::Uint64(v) => unless(*v == u64::MAX, *v as f64),
        Value::Float32(v) => unless(!v.is_finite(), f64::from(*v)),
        Value::Float64(v) => unless(!v.is_finite(), *v),
        Value::ArrayUint8(v) => v.first().map_or(f64::NAN, |v| number(&Value::Uint8(*v))),
        Value::ArrayUint16(v) => v.first().map_or(f64::NAN, |v| number(&Value::Uint16(*v))),
        Value::ArrayUint32(v) => v.first().map_or(f64::NAN, |v| number(&Value::Uint32(*v))),
        _ => f64::NAN,
    }
}
