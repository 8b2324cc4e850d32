//! The columns of a recording: one number a record, in SI units.

use crate::error::Error;
use crate::notes;

/// The most records that are read: 111 hours at one a second, and as many samples as the core takes.
pub const MOST_RECORDS: usize = 400_000;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// Seconds from the first record.
    Time,
    /// Metres from the first record, along the road.
    Distance,
    /// Metres per second over the ground.
    Speed,
    /// Watts.
    Power,
    /// Metres above sea level.
    Elevation,
    /// Degrees north (WGS 84).
    Latitude,
    /// Degrees east (WGS 84).
    Longitude,
    /// Direction of travel, degrees clockwise from north, from 0 to 360.
    Bearing,
    /// Degrees Celsius.
    Temperature,
    /// Turns of the crank a minute.
    Cadence,
    /// Of the bend from here to the next point of a surveyed road, metres.
    Radius,
    /// The share of the wind that reaches the rider from here to the next point of a surveyed road.
    WindShare,
}

const COUNT: usize = 12;

/// Every column with its name, in the order in which they are kept.
pub const COLUMNS: [(Column, &str); COUNT] = [
    (Column::Time, "time_s"),
    (Column::Distance, "distance_m"),
    (Column::Speed, "speed_m_s"),
    (Column::Power, "power_w"),
    (Column::Elevation, "elevation_m"),
    (Column::Latitude, "latitude_deg"),
    (Column::Longitude, "longitude_deg"),
    (Column::Bearing, "bearing_deg"),
    (Column::Temperature, "temperature_c"),
    (Column::Cadence, "cadence_rpm"),
    (Column::Radius, "radius_m"),
    (Column::WindShare, "wind_share"),
];

/// The values of one record; what is missing is not a number.
#[derive(Clone, Debug)]
pub struct Record {
    values: [f64; COUNT],
    /// How many values were given that no ride can have.
    beyond: usize,
    /// Whether the power was one of them.
    is_power_beyond: bool,
}

impl Default for Record {
    fn default() -> Self {
        Self {
            values: [f64::NAN; COUNT],
            beyond: 0,
            is_power_beyond: false,
        }
    }
}

impl Record {
    pub(crate) fn get(&self, column: Column) -> f64 {
        self.values[column as usize]
    }

    /// Sets a value; one that no ride can have is left out and counted.
    pub(crate) fn set(&mut self, column: Column, value: f64) {
        let possible = possible(column, value);
        if possible.is_nan() && !value.is_nan() {
            self.beyond += 1;
            self.is_power_beyond |= column == Column::Power;
        }
        self.values[column as usize] = possible;
    }

    /// How many values were given that no ride can have.
    pub(crate) fn beyond(&self) -> usize {
        self.beyond
    }

    /// Whether the power was one of them.
    pub(crate) fn is_power_beyond(&self) -> bool {
        self.is_power_beyond
    }

    /// Sets a value where there is none yet.
    pub(crate) fn fill(&mut self, column: Column, value: f64) {
        if self.get(column).is_nan() {
            self.set(column, value);
        }
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.values.iter().all(|value| value.is_nan())
    }
}

/// The value itself where a ride can have it, else NaN. The bounds are wide; assumed.
fn possible(column: Column, value: f64) -> f64 {
    let (low, high) = match column {
        Column::Time => (-1e11, 1e11),
        Column::Distance => (-1e9, 1e9),
        Column::Speed => (0.0, 150.0),
        Column::Power => (0.0, 5_000.0),
        Column::Elevation => (-500.0, 20_000.0),
        Column::Latitude => (-90.0, 90.0),
        Column::Longitude => (-180.0, 180.0),
        Column::Bearing => (0.0, 360.0),
        Column::Temperature => (-60.0, 80.0),
        Column::Cadence => (0.0, 300.0),
        Column::Radius => (0.0, 1e6),
        Column::WindShare => (0.0, 1.0),
    };
    if (low..=high).contains(&value) {
        value
    } else {
        f64::NAN
    }
}

/// The columns, all of one length.
#[derive(Clone, Debug, Default)]
pub struct Columns([Vec<f64>; COUNT]);

impl Columns {
    /// The values of a column.
    pub fn get(&self, column: Column) -> &[f64] {
        &self.0[column as usize]
    }

    /// How many records there are.
    pub fn len(&self) -> usize {
        self.get(Column::Time).len()
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// Whether any record has a value in this column.
    pub fn has(&self, column: Column) -> bool {
        self.get(column).iter().any(|value| !value.is_nan())
    }

    pub(crate) fn push(&mut self, record: &Record) -> Result<(), Error> {
        if self.len() >= MOST_RECORDS {
            return Err(Error::of(notes::too_many_records(MOST_RECORDS)).at_record(self.len() + 1));
        }
        for (values, value) in self.0.iter_mut().zip(record.values) {
            values.push(value);
        }
        Ok(())
    }

    pub(crate) fn set(&mut self, column: Column, values: Vec<f64>) {
        self.0[column as usize] = values;
    }

    /// The kept records; those that share a place with the kept one before lend it what it lacks.
    pub(crate) fn keep(&mut self, kept: &[usize], merged: &[(usize, usize)]) {
        for values in &mut self.0 {
            for &(into, from) in merged {
                if values[into].is_nan() {
                    values[into] = values[from];
                }
            }
            for (to, &from) in kept.iter().enumerate() {
                values[to] = values[from];
            }
            values.truncate(kept.len());
        }
    }
}
