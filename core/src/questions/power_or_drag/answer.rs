//! What the question answers.

use serde::Serialize;

use crate::inputs::error::Warning;
use crate::inputs::quantity::{Column, Figure};
use crate::riding::exchange::Exchange;
use crate::riding::time_map::TimeMap;
use crate::scenario::propagation::Contribution;
use crate::uncertainty::draws::Drawn;

/// What more power takes, on the rider's own curve.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Takes {
    /// How long the changed power could be held today, s; `null` if for ever, or not at all.
    pub more_power_held_s: Option<f64>,
    /// How long the power ridden at now could be held, s.
    pub power_held_s: Option<f64>,
    /// Power that the curve allows for this finish time, W.
    pub sustainable_w: f64,
}

/// What the changes come to where the time is fixed; the times of the answer are over the distance that is covered in it today.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct InFixedTime {
    /// The time, s.
    pub duration_s: f64,
    /// How much further more power gets.
    pub more_power_further_m: Figure,
    /// How much further less drag gets.
    pub less_drag_further_m: Figure,
    /// How much further more power gets than less drag.
    pub difference_m: Figure,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Finish time as the rider is, the model's own error counted.
    pub base_time_s: Figure,
    /// With more power.
    pub more_power_time_s: Figure,
    /// With less drag.
    pub less_drag_time_s: Figure,
    /// How much faster more power is than less drag; negative if slower. The model's own error cancels.
    pub difference_s: Figure,
    /// What more power saves.
    pub more_power_saves_s: Figure,
    /// What less drag saves.
    pub less_drag_saves_s: Figure,
    /// What that comes to on a course that goes by time.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub in_fixed_time: Option<InFixedTime>,
    /// The draws, if any were asked for.
    pub drawn: Option<Drawn>,
    /// The change of drag area worth the change of power; `null` if none within the bounds is.
    pub equal_cda_change: Option<Figure>,
    /// The change of power worth the change of drag area.
    pub equal_power_change: Option<Figure>,
    /// Share of the work on the road that goes into the air.
    pub aero_share: f64,
    /// The share at which the two changes tie on a flat calm road; `null` if one always wins.
    pub tie_aero_share: Option<f64>,
    /// Power as the rider is, with more power, and with less drag.
    pub base_power_w: f64,
    /// Power of the ride with more.
    pub more_power_w: f64,
    /// Power of the ride with less drag; more than the base at even effort, the ride being shorter.
    pub less_drag_power_w: f64,
    /// Drag area as the rider is, when fresh.
    pub base_cda_m2: f64,
    /// Drag area of the ride with less.
    pub less_drag_cda_m2: f64,
    /// What one thing is worth in another.
    pub exchange: Exchange,
    /// What the changes take.
    pub takes: Takes,
    /// How far.
    pub distance_m: f64,
    /// Average speed as the rider is.
    pub base_speed_m_s: f64,
    /// Which inputs carry the doubt of the difference.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// The map of finish times.
    pub columns: Columns,
}

/// Finish times over power and drag area: `time_s` holds a row of powers for each drag area.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Powers, W.
    pub power_w: Column,
    /// Drag areas, m².
    pub cda_m2: Column,
    /// Finish times, s.
    pub time_s: Column,
}

impl From<TimeMap> for Columns {
    fn from(map: TimeMap) -> Self {
        Self {
            power_w: map.powers_w.into(),
            cda_m2: map.areas_m2.into(),
            time_s: map.times_s.into(),
        }
    }
}
