//! What changes of single parts do to a set-up, and which of them bring its hip angle to a value.

use serde::Serialize;

use super::leg::Turn;
use super::set_up::Rider;
use crate::inputs::fields::{self, Field};
use crate::numerics::solve::root_bracketed;

/// A change of one part of a set-up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SetUpPart {
    /// Crank length, the saddle going the other way by as much, so that the reach to the pedal stays.
    CrankAndSaddle,
    /// Crank length, the saddle staying.
    Crank,
    /// Saddle height, the torso's angle staying: the pads go with it.
    Saddle,
    /// Seat angle, the torso's angle staying.
    SeatAngle,
    /// Height of the pads.
    Pads,
}

/// What a small change to the first set-up does; `null` where the leg then no longer reaches.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SetUpChange {
    /// What is changed.
    pub part: SetUpPart,
    /// By how much: m, or degrees of the seat angle. Longer, higher, further forward and lower pads are positive.
    pub by: f64,
    /// Change of the tightest hip angle.
    pub tightest_hip_deg: Option<f64>,
    /// Change of the straightest knee.
    pub straightest_knee_deg: Option<f64>,
    /// Change of the thigh's greatest angular velocity.
    pub fastest_thigh_deg_s: Option<f64>,
}

/// Changes of which each alone brings the tightest hip angle to another value; `null` where none does within reach.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SetUpWays {
    /// Of the crank, the saddle going the other way by as much, m.
    pub crank_change_m: Option<f64>,
    /// Of the saddle's height, m.
    pub saddle_change_m: Option<f64>,
    /// Of the seat angle, degrees.
    pub seat_angle_change_deg: Option<f64>,
    /// Of the drop to the pads, m.
    pub bar_drop_change_m: Option<f64>,
}

/// Changes that fitters think in, m.
const SMALL_CRANK_M: f64 = -0.005;
const SMALL_SADDLE_M: f64 = 0.01;
const SMALL_SEAT_ANGLE_DEG: f64 = 1.0;
/// How much lower the pads are in what gives back a hip angle, m.
pub const SMALL_DROP_M: f64 = 0.01;
/// How closely a change that levels two hips is found, m or degrees.
const LEVEL_ACCURACY: f64 = 1e-10;

impl Rider {
    /// With one part changed; `None` where that leaves a hard range or the trunk's length.
    pub(crate) fn changed(self, part: SetUpPart, by: f64) -> Option<Self> {
        let longer = |rider: Self, by: f64| Self {
            crank_m: rider.crank_m + by,
            ..rider
        };
        let higher = |rider: Self, by: f64| Self {
            saddle_height_m: rider.saddle_height_m + by,
            ..rider
        };
        let rider = match part {
            SetUpPart::CrankAndSaddle => higher(longer(self, by), -by),
            SetUpPart::Crank => longer(self, by),
            SetUpPart::Saddle => higher(self, by),
            SetUpPart::SeatAngle => Self {
                seat_angle_rad: self.seat_angle_rad + by.to_radians(),
                ..self
            },
            SetUpPart::Pads => {
                let rise = self.torso_rad.sin() - by / self.body.trunk_m;
                (rise.abs() <= 1.0).then_some(Self {
                    torso_rad: rise.asin(),
                    ..self
                })?
            }
        };
        let inside = |field: &Field, value: f64| (field.min..=field.max).contains(&value);
        let legal = inside(&fields::CRANK_M, rider.crank_m)
            && inside(&fields::SADDLE_HEIGHT_M, rider.saddle_height_m)
            && inside(&fields::SEAT_ANGLE_DEG, rider.seat_angle_rad.to_degrees());
        legal.then_some(rider)
    }
}

/// What small changes do to a rider, whose tightest hip angle, straightest knee and fastest thigh these are.
pub(crate) fn small_changes(
    rider: &Rider,
    tightest_hip_deg: f64,
    straightest_knee_deg: f64,
    fastest_thigh_deg_s: f64,
) -> Vec<SetUpChange> {
    let small = [
        (SetUpPart::CrankAndSaddle, SMALL_CRANK_M),
        (SetUpPart::Crank, SMALL_CRANK_M),
        (SetUpPart::Saddle, SMALL_SADDLE_M),
        (SetUpPart::SeatAngle, SMALL_SEAT_ANGLE_DEG),
        (SetUpPart::Pads, SMALL_DROP_M),
    ];
    let change = |(part, by): (SetUpPart, f64)| {
        let changed = rider
            .changed(part, by)
            .and_then(|changed| Some((changed, changed.turn().ok()?)));
        let less = |of: &dyn Fn(&Rider, &Turn) -> f64, before: f64| {
            changed
                .as_ref()
                .map(|(rider, turn)| of(rider, turn).to_degrees() - before)
        };
        SetUpChange {
            part,
            by,
            tightest_hip_deg: less(
                &|rider, turn| rider.torso_rad - turn.thigh_angle().greatest.1,
                tightest_hip_deg,
            ),
            straightest_knee_deg: less(
                &|_, turn| turn.knee_angle().greatest.1,
                straightest_knee_deg,
            ),
            fastest_thigh_deg_s: less(
                &|rider, turn| {
                    let rate = turn.thigh_rate();
                    rate.greatest.1.max(-rate.least.1) * rider.cadence_rad_s
                },
                fastest_thigh_deg_s,
            ),
        }
    };
    small.into_iter().map(change).collect()
}

/// None within reach.
pub(crate) const NO_WAYS: SetUpWays = SetUpWays {
    crank_change_m: None,
    saddle_change_m: None,
    seat_angle_change_deg: None,
    bar_drop_change_m: None,
};

/// Each part's change that alone brings a rider's tightest hip angle to `hip_rad`, within what a bicycle allows.
pub(crate) fn ways(rider: &Rider, hip_rad: f64) -> SetUpWays {
    let Ok(turn) = rider.turn() else {
        return NO_WAYS;
    };
    let thigh_rad = turn.thigh_angle().greatest.1;
    let way = |part, most| way(rider, hip_rad, thigh_rad, part, most);
    SetUpWays {
        crank_change_m: way(SetUpPart::CrankAndSaddle, -0.04),
        saddle_change_m: way(SetUpPart::Saddle, 0.06),
        seat_angle_change_deg: way(SetUpPart::SeatAngle, 10.0),
        bar_drop_change_m: way(SetUpPart::Pads, -0.15),
    }
}

/// The change of one part up to `most` in the direction that opens the hip, or as far in the other, of a rider whose thigh now comes
/// up to `thigh_rad`. Steps first find where the hip passes the value, since beyond some step the leg may no longer reach.
fn way(rider: &Rider, hip_rad: f64, thigh_rad: f64, part: SetUpPart, most: f64) -> Option<f64> {
    const STEPS: u32 = 12;
    let over = |by: f64| {
        let changed = rider.changed(part, by)?;
        let tightest_rad = match part {
            // The leg stays as it is.
            SetUpPart::Pads => changed.torso_rad - thigh_rad,
            _ => changed.tightest_hip_rad()?,
        };
        Some(tightest_rad - hip_rad)
    };
    let mut before = (0.0, rider.torso_rad - thigh_rad - hip_rad);
    if before.1 == 0.0 {
        return Some(0.0);
    }
    let step = -before.1.signum() * most / f64::from(STEPS);
    for steps in 1..=STEPS {
        let by = f64::from(steps) * step;
        let here = (by, over(by)?);
        if here.1.signum() != before.1.signum() {
            return root_bracketed(
                |by| over(by).unwrap_or(f64::NAN),
                before,
                here,
                LEVEL_ACCURACY,
            )
            .ok();
        }
        before = here;
    }
    None
}
