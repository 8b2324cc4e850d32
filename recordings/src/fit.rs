//! FIT activities: what their messages say of a ride, as records, laps and pauses.
//!
//! Message and field numbers are those of the protocol's global profile (from memory, tried on real files).

use crate::columns::{Column, Record};
use crate::error::Error;
use crate::fit_messages::{Field, Message, Messages, Next};
use crate::notes;
use crate::raw::{LapMark, Raw};

/// Seconds from 1970-01-01 to 1989-12-31, where the protocol's time begins.
const EPOCH_S: f64 = 631_065_600.0;
const DEGREES_A_SEMICIRCLE: f64 = 180.0 / 2_147_483_648.0;
/// More developers' fields of power and cadence than a ride has; those after them are left alone.
const MOST_DESCRIBED: usize = 16;

const LAP: u16 = 19;
const RECORD: u16 = 20;
const EVENT: u16 = 21;
const FIELD_DESCRIPTION: u16 = 206;

/// Reads the whole of a file; one that is damaged as far as it goes.
pub(crate) fn read(bytes: &[u8]) -> Result<Raw, Error> {
    let mut builder = Builder::default();
    let mut messages = Messages::new(bytes);
    let mut headers = 0_usize;
    let is_broken = loop {
        match messages.step() {
            Next::Header => {
                headers += 1;
                builder.begin();
            }
            Next::Message(message) => builder.take(&message)?,
            Next::End => break false,
            Next::Broken => break true,
        }
    };
    builder.finish(messages.at, is_broken, messages.was_closed, headers)
}

/// A developer's field that means a column.
#[derive(Clone, Copy, Debug)]
struct Described {
    developer: u8,
    number: u8,
    /// Its base type.
    kind: u8,
    column: Column,
    /// Its value is `number / scale - offset`.
    scale: f64,
    offset: f64,
}

#[derive(Debug, Default)]
struct Builder {
    raw: Raw,
    described: Vec<Described>,
    /// Distance that is counted in turns of 256 m.
    turns_m: f64,
    last_turn_m: f64,
    used_described: bool,
}

impl Builder {
    /// Another recording begins, of which several may lie in one file.
    fn begin(&mut self) {
        self.raw.part();
        self.described.clear();
        (self.turns_m, self.last_turn_m) = (0.0, f64::NAN);
    }

    fn take(&mut self, message: &Message<'_>) -> Result<(), Error> {
        match message.number() {
            RECORD => return self.record(message),
            LAP => self.lap(message),
            EVENT => self.event(message),
            FIELD_DESCRIPTION => self.describe(message),
            _ => {}
        }
        Ok(())
    }

    fn record(&mut self, message: &Message<'_>) -> Result<(), Error> {
        let mut record = Record::default();
        let mut speed = [f64::NAN; 3];
        let mut elevation = [f64::NAN; 2];
        let mut cadence = [f64::NAN; 2];
        record.set(Column::Time, message.time_s() + EPOCH_S);
        for field in message.fields() {
            let value = field.value();
            match field.number {
                0 => record.set(Column::Latitude, value * DEGREES_A_SEMICIRCLE),
                1 => record.set(Column::Longitude, value * DEGREES_A_SEMICIRCLE),
                2 => elevation[1] = value / 5.0 - 500.0,
                4 => cadence[0] = value,
                5 => record.set(Column::Distance, value / 100.0),
                6 => speed[1] = value / 1000.0,
                7 => record.set(Column::Power, value),
                8 => {
                    if let Some((speed_m_s, distance_m)) = self.speed_and_distance(field.bytes) {
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
        for field in message.developer_fields() {
            self.developed(&field, &mut record);
        }
        self.raw.push(&record)
    }

    /// What a developer's field says, where the profile's own fields say nothing.
    fn developed(&mut self, field: &Field<'_>, record: &mut Record) {
        let is_of =
            |known: &&Described| (known.developer, known.number) == (field.kind, field.number);
        let Some(known) = self.described.iter().find(is_of) else {
            return;
        };
        if record.get(known.column).is_nan() {
            let value = field.value_as(known.kind) / known.scale - known.offset;
            self.used_described |= !value.is_nan() && known.column == Column::Power;
            record.set(known.column, value);
        }
    }

    /// Three bytes: twelve bits of speed in hundredths of m/s, twelve of distance in sixteenths of a metre, which begin anew
    /// after 256 m.
    fn speed_and_distance(&mut self, bytes: &[u8]) -> Option<(f64, f64)> {
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

    fn lap(&mut self, message: &Message<'_>) {
        let from_s = message.value(2) + EPOCH_S;
        let ends_s = from_s + message.value(7) / 1000.0;
        let to_s = if ends_s.is_nan() {
            message.time_s() + EPOCH_S
        } else {
            ends_s
        };
        self.raw.lap(LapMark { from_s, to_s });
    }

    /// Where the timer starts again, a new part begins.
    fn event(&mut self, message: &Message<'_>) {
        const TIMER: f64 = 0.0;
        const START: f64 = 0.0;
        if message.value(0) == TIMER && message.value(1) == START {
            self.raw.part();
        }
    }

    /// A developer's field is known by the field of the profile that it stands for, or by its name.
    fn describe(&mut self, message: &Message<'_>) {
        let of = message.value(14);
        let native = message.value(15);
        let is_power = || message.field(3).is_some_and(|name| name.is_named("power"));
        let column = match native {
            7.0 => Column::Power,
            4.0 => Column::Cadence,
            _ if native.is_nan() && is_power() => Column::Power,
            _ => return,
        };
        let is_of_records = of.is_nan() || of == f64::from(RECORD);
        if is_of_records && self.described.len() < MOST_DESCRIBED {
            let given = |number: u8, usual: f64| {
                let value = message.value(number);
                if value.is_nan() { usual } else { value }
            };
            self.described.push(Described {
                developer: message.value(0) as u8,
                number: message.value(1) as u8,
                kind: message.value(2) as u8,
                column,
                scale: given(6, 1.0).max(1.0),
                offset: given(7, 0.0),
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_developers_field_of_power_is_read_as_it_is_described() {
        // Developer 0 describes its field 5: 16 bits without a sign, tenths of a watt, for field 7 of message 20.
        let described: &[u8] = &[
            0x40, 0, 0, 206, 0, 6, 0, 1, 2, 1, 1, 2, 2, 1, 2, 6, 1, 2, 14, 2, 0x84, 15, 1,
            2, //
            0, 0, 5, 0x84, 10, 20, 0, 7,
        ];
        let record: &[u8] = &[
            0x61, 0, 0, 20, 0, 1, 253, 4, 0x86, 1, 5, 2, 0, //
            1, 100, 0, 0, 0, 0xc4, 0x09,
        ];
        let body = [described, record].concat();
        let length = (body.len() as u32).to_le_bytes();
        let file = [
            &[12, 0x20, 0, 0],
            length.as_slice(),
            b".FIT",
            &body,
            &[0, 0],
        ]
        .concat();
        let raw = read(&file).expect("it is in order");
        assert_eq!(raw.columns.get(Column::Power), [250.0]);
        assert_eq!(raw.columns.get(Column::Time), [EPOCH_S + 100.0]);
        assert_eq!(raw.notes, [notes::power_by_name()]);
    }
}
