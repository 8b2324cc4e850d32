//! A recording in order, with what was missing or repaired.

use crate::columns::{Column, Columns};
use crate::error::Error;
use crate::notes::{self, Message};
use crate::raw::{LapMark, Raw};
use crate::{Kind, bearing, climb, clock, distance, loops, speed, stops, track::Track};

/// From when to when, seconds from the first record.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Its beginning.
    pub from_s: f64,
    /// Its end.
    pub to_s: f64,
}

/// A recording of a ride.
#[derive(Clone, Debug)]
pub struct Recording {
    /// The kind of file.
    pub kind: Kind,
    /// How many records the file holds, those included that were left out or joined.
    pub records: usize,
    /// The records that are kept, in order of time.
    pub columns: Columns,
    /// The laps of the file.
    pub laps: Vec<Span>,
    /// The rounds of a loop, found where the rider comes past again; empty where there is none.
    pub rounds: Vec<Span>,
    /// The way that was ridden, in some hundred places; empty without positions.
    pub outline: Vec<OutlinePoint>,
    /// Where the rider stood still for five seconds or longer.
    pub stops: Vec<Span>,
    /// What was missing or repaired.
    pub notes: Vec<Message>,
    /// The file holds points of a surveyed road: their distances, elevations, bearings and radii are the road's own.
    pub is_surveyed: bool,
    /// Along the road, metres, those records included that were left out for their time.
    distance_m: f64,
}

/// A place on the outline of a ride.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutlinePoint {
    /// Seconds from the first record.
    pub time_s: f64,
    /// Metres east of the first position.
    pub east_m: f64,
    /// Metres north of the first position.
    pub north_m: f64,
}

/// A recording in a few figures; what is not known is not a number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Summary {
    /// From the first record to the last, seconds.
    pub elapsed_s: f64,
    /// Along the road, metres.
    pub distance_m: f64,
    /// The sum of smoothed rises, metres.
    pub climb_m: f64,
    /// The mean of the records that have a power, zeros included, watts.
    pub mean_power_w: f64,
}

impl Recording {
    pub(crate) fn of(kind: Kind, mut raw: Raw) -> Result<Self, Error> {
        let records = raw.columns.len();
        if records == 0 {
            return Err(Error::of(notes::no_records()));
        }
        distance::repair(&mut raw);
        let in_file_m = last(raw.columns.get(Column::Distance));
        let first_s = clock::repair(&mut raw);
        distance::or_from_speed(&mut raw);
        let in_time_m = last(raw.columns.get(Column::Distance));
        let distance_m = if in_file_m.is_nan() {
            in_time_m
        } else {
            in_file_m
        };
        speed::fill_in(&mut raw);
        if !raw.is_surveyed {
            bearing::fill_in(&mut raw);
        }
        let stops = stops::stops(&mut raw);
        what_is_missing(&mut raw);
        let laps = laps(&raw, first_s);
        let track = Track::of(&raw.columns);
        Ok(Self {
            kind,
            records,
            rounds: loops::loops(&track),
            outline: outline(&track),
            columns: raw.columns,
            laps,
            stops,
            notes: raw.notes,
            is_surveyed: raw.is_surveyed,
            distance_m,
        })
    }

    /// The recording in a few figures.
    pub fn summary(&self) -> Summary {
        let column = |column| self.columns.get(column);
        let powers = column(Column::Power)
            .iter()
            .copied()
            .filter(|power| !power.is_nan());
        let (sum_w, count) =
            powers.fold((0.0, 0.0), |(sum, count), power| (sum + power, count + 1.0));
        Summary {
            elapsed_s: last(column(Column::Time)),
            distance_m: self.distance_m,
            climb_m: climb::climb_m(column(Column::Distance), column(Column::Elevation)),
            mean_power_w: if count > 0.0 { sum_w / count } else { f64::NAN },
        }
    }
}

/// The last value of a column that is a number.
fn last(values: &[f64]) -> f64 {
    values
        .iter()
        .rev()
        .copied()
        .find(|value| !value.is_nan())
        .unwrap_or(f64::NAN)
}

fn outline(track: &Track) -> Vec<OutlinePoint> {
    let point = |point: &crate::track::Point| OutlinePoint {
        time_s: point.time_s,
        east_m: point.east_m,
        north_m: point.north_m,
    };
    track.outline().iter().map(point).collect()
}

/// The laps by the clock of the records, as far as they lie in it.
fn laps(raw: &Raw, first_s: f64) -> Vec<Span> {
    let end_s = last(raw.columns.get(Column::Time));
    let span = |mark: &LapMark| {
        let inside = |time_s: f64| (time_s - first_s).max(0.0).min(end_s);
        let is_known = !(mark.from_s.is_nan() || mark.to_s.is_nan() || first_s.is_nan());
        is_known
            .then(|| Span {
                from_s: inside(mark.from_s),
                to_s: inside(mark.to_s),
            })
            .filter(|lap| lap.to_s > lap.from_s)
    };
    raw.laps.iter().filter_map(span).collect()
}

fn what_is_missing(raw: &mut Raw) {
    for (column, note) in [
        (Column::Power, notes::no_power as fn() -> _),
        (Column::Elevation, notes::no_elevation),
        (Column::Latitude, notes::no_positions),
    ] {
        if !raw.columns.has(column) {
            raw.notes.push(note());
        }
    }
    if raw.beyond > 0 {
        raw.notes.push(notes::beyond_a_ride(raw.beyond));
    }
    let powers = raw.columns.get(Column::Power);
    let none = powers.iter().filter(|power| power.is_nan()).count();
    // Those that were there and could not be are told of already.
    let missing = none.saturating_sub(raw.powers_beyond);
    if missing > 0 && none < powers.len() {
        raw.notes.push(notes::power_missing(missing));
    }
}
