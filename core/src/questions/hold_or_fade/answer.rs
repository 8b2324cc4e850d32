//! What the question answers.

use serde::Serialize;

use super::columns::Columns;
use crate::inputs::error::Warning;
use crate::inputs::quantity::Figure;
use crate::scenario::propagation::Contribution;
use crate::uncertainty::draws::Drawn;

/// Where the two positions tie, the rest staying as it is; `null` where they do not.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BreakEven {
    /// Share of the ride that the low position must be held, the rest being ridden at its lost drag area.
    pub held_share: Option<f64>,
    /// The earliest that it may begin to go, going as slowly as it does, s.
    pub begins_s: Option<f64>,
    /// The highest drag area that it may end at, m².
    pub tired_cda_m2: Option<f64>,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Finish time in the low position as it is held.
    pub low_time_s: Figure,
    /// Finish time in the steady one.
    pub steady_time_s: Figure,
    /// How much faster the low position is; negative if slower. The model's own error cancels.
    pub difference_s: Figure,
    /// How much further the low position gets in the time of a course that goes by time.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub further_m: Option<Figure>,
    /// Finish time in the low position if it were held to the end.
    pub low_held_time_s: Figure,
    /// How much faster it would then be.
    pub held_difference_s: Figure,
    /// The draws, if any were asked for.
    pub drawn: Option<Drawn>,
    /// Where they tie.
    pub break_even: BreakEven,
    /// The share of the ride that the low position is held for now, in equal effect on the mean drag area.
    pub held_share: Option<f64>,
    /// When the low position's drag area passes the steady one's, s.
    pub passes_s: Option<f64>,
    /// Seconds gained while it is the lower, to first order.
    pub gained_s: Option<f64>,
    /// Seconds given back after that, to first order.
    pub given_back_s: Option<f64>,
    /// Power in the low position.
    pub low_power_w: f64,
    /// Power in the steady one.
    pub steady_power_w: f64,
    /// Fresh drag area of the low position.
    pub low_cda_m2: f64,
    /// Mean drag area of the low position over its ride.
    pub low_mean_cda_m2: f64,
    /// Mean drag area of the steady one.
    pub steady_mean_cda_m2: f64,
    /// How far: on a course that goes by time, as far as the rider gets in the ridden position.
    pub distance_m: f64,
    /// The time that the course goes by, if it does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub duration_s: Option<f64>,
    /// Which inputs carry the doubt of the difference.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}
