//! What the question takes.

use serde::Deserialize;

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields;
use crate::inputs::message;
use crate::questions::request::{EffortForm, check_number};

/// What the question takes.
#[derive(Clone, Copy, Debug, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// How hard; the best even effort if left out.
    pub effort: EffortForm,
    /// The event that is ridden, by its place in the scenario; if left out, the scenario's course.
    #[cfg_attr(feature = "types", ts(optional))]
    pub event: Option<usize>,
    /// Instead of the course's length: how far in this time, s, on a course of this kind?
    #[cfg_attr(feature = "types", ts(optional))]
    pub for_time_s: Option<f64>,
    /// A finish time whose chance is wanted, s; for an even effort or a given power over the course.
    #[cfg_attr(feature = "types", ts(optional))]
    pub target_time_s: Option<f64>,
    /// Another start of the same day to compare with, s after midnight; the later forecast's time if left out, or the first one's
    /// for a ride that starts then. Only where the weather changes.
    #[cfg_attr(feature = "types", ts(optional))]
    pub other_start_at_s: Option<f64>,
    /// Distance between splits, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub split_every_m: Option<f64>,
}

const MOST_SPLITS: f64 = 200.0;

impl With {
    /// The time that is fixed instead of the distance, s: the one asked for, or else that of a course that goes by time, unless a
    /// finish time is given or its chance is wanted. Those are of the distance that is covered in that time today.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn fixed_s(&self, of_course_s: Option<f64>) -> Result<Option<f64>, Error> {
        let Some(fixed_s) = self.for_time_s else {
            let over_a_distance = self.target_time_s.is_some() || self.effort.time_s.is_some();
            return Ok(of_course_s.filter(|_| !over_a_distance));
        };
        check_number(&fields::FOR_TIME_S, "with.for_time_s", fixed_s)?;
        if self.effort.time_s.is_some() {
            let message = message::time_fixed_twice("with.for_time_s");
            return Err(Error::new(Kind::Conflict, "with.for_time_s", message));
        }
        Ok(Some(fixed_s))
    }

    /// The finish time whose chance is wanted, s.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn target_s(&self) -> Result<Option<f64>, Error> {
        let Some(target_s) = self.target_time_s else {
            return Ok(None);
        };
        check_number(&fields::TARGET_TIME_S, "with.target_time_s", target_s)?;
        if self.for_time_s.is_some() || self.effort.time_s.is_some() {
            let message = message::chance_of_given_time("with.target_time_s");
            return Err(Error::new(Kind::Conflict, "with.target_time_s", message));
        }
        Ok(Some(target_s))
    }

    /// Where the splits of a ride are, m: at even distances and at the finish.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn splits_at_m(&self, distance_m: f64) -> Result<Vec<f64>, Error> {
        let every_m = self.split_every_m.unwrap_or(fields::SPLIT_EVERY_M.default);
        check_number(&fields::SPLIT_EVERY_M, "with.split_every_m", every_m)?;
        let every_m = every_m.max(distance_m / MOST_SPLITS);
        // A last split a stride before the line would only repeat the finish.
        let count = ((distance_m - 1.0) / every_m).floor().max(0.0) as usize;
        let mut at_m: Vec<f64> = (1..=count).map(|i| i as f64 * every_m).collect();
        at_m.push(distance_m);
        Ok(at_m)
    }
}
