//! What the readers of the kinds of files give, before anything is repaired.

use crate::columns::{Column, Columns, Record};
use crate::error::Error;
use crate::notes::Message;

/// From when to when a lap was ridden, by the clock of the records; not a number where that is not known.
#[derive(Clone, Copy, Debug)]
pub(crate) struct LapMark {
    pub from_s: f64,
    pub to_s: f64,
}

/// Records as they stand in the file. Times are by any clock, in seconds.
#[derive(Debug, Default)]
pub(crate) struct Raw {
    pub columns: Columns,
    /// The records at which a new part of the track begins, but for the first.
    pub parts: Vec<usize>,
    pub laps: Vec<LapMark>,
    /// How many values were given that no ride can have.
    pub beyond: usize,
    /// How many of them were powers.
    pub powers_beyond: usize,
    /// The records with a distance are points of a surveyed road, which say all of it: nothing of it is worked out from positions.
    pub is_surveyed: bool,
    pub notes: Vec<Message>,
}

impl Raw {
    pub fn push(&mut self, record: &Record) -> Result<(), Error> {
        self.beyond += record.beyond();
        if record.is_empty() {
            return Ok(());
        }
        self.powers_beyond += usize::from(record.is_power_beyond());
        self.columns.push(record)
    }

    /// The next record begins a new part.
    pub fn part(&mut self) {
        let next = self.columns.len();
        if next > 0 && self.parts.last() != Some(&next) {
            self.parts.push(next);
        }
    }

    /// The time of the last record.
    pub fn last_s(&self) -> f64 {
        self.columns
            .get(Column::Time)
            .last()
            .copied()
            .unwrap_or(f64::NAN)
    }

    /// Laps that follow each other, each from its start to the next one's or to its own end.
    pub fn lap(&mut self, mark: LapMark) {
        const MOST_LAPS: usize = 10_000;
        if self.laps.len() < MOST_LAPS {
            self.laps.push(mark);
        }
    }
}
