//! What the question answers.

use serde::Serialize;

use crate::inputs::error::Warning;
use crate::inputs::quantity::Column;
use crate::scenario::Course;

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// The course, as a scenario holds it.
    pub course: Course,
    /// Its length, m.
    pub distance_m: f64,
    /// The sum of its rises, m.
    pub climb_m: f64,
    /// The whole recorded road's length, m; `null` without a recording.
    pub recorded_distance_m: Option<f64>,
    /// The sum of that road's rises as they were recorded, m; `null` without a recording.
    pub recorded_climb_m: Option<f64>,
    /// The same once its elevation is smoothed, m; `null` without a recording.
    pub smoothed_climb_m: Option<f64>,
    /// Whether elevation is known; a road without is taken as level.
    pub has_elevation: bool,
    /// Whether it is known which way the road leads.
    pub has_bearings: bool,
    /// How much longer the best even effort of the scenario takes over the course of `most_points` than over the one before, s, the
    /// difference of two answers of `finish-time`; `null` where none were asked for, or where that ride cannot be ridden.
    pub simplified_slower_s: Option<f64>,
    /// Whether the recording holds points of a surveyed road, which were taken as they are.
    pub is_surveyed: bool,
    /// The text of the file that was asked for; `null` without.
    pub file: Option<String>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// The course's points.
    pub columns: Columns,
}

/// The course's points.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// From the start, m.
    pub distance_m: Column,
    /// Above sea level, m.
    pub elevation_m: Column,
}
