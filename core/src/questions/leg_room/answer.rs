//! What the question answers.

use serde::Serialize;

#[cfg(doc)]
use super::SMALL_DROP_M;
use super::columns::Columns;
use crate::inputs::error::Warning;
use crate::inputs::quantity::Figure;
use crate::physics::leg::{Turn, Vector};
use crate::physics::set_up::{Body, Rider};
use crate::physics::set_up_changes::{SetUpChange, SetUpWays};
use crate::scenario::propagation::Contribution;
use crate::scenario::set_ups::angles::{OUTPUTS, UncertainAngles, fastest};
use crate::scenario::set_ups::{NUMBERS, SetUps};

/// A point in the plane of the leg, the crank's axle at the origin, m.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PlanePoint {
    /// Forward.
    pub x_m: f64,
    /// Up.
    pub y_m: f64,
}

impl From<Vector> for PlanePoint {
    fn from(Vector { x: x_m, y: y_m }: Vector) -> Self {
        Self { x_m, y_m }
    }
}

/// What one set-up does. Crank angles run from top dead centre.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SetUpAnswer {
    /// Torso above the horizontal.
    pub torso_deg: Figure,
    /// Between torso and thigh where it is least.
    pub tightest_hip_deg: Figure,
    /// Where that is.
    pub tightest_at_deg: f64,
    /// Between torso and thigh where it is greatest.
    pub widest_hip_deg: f64,
    /// The knee where it is straightest, 180° being straight.
    pub straightest_knee_deg: Figure,
    /// Where that is.
    pub straightest_at_deg: f64,
    /// The knee where it is most bent.
    pub most_bent_knee_deg: Figure,
    /// Where that is.
    pub most_bent_at_deg: f64,
    /// The thigh's greatest angular velocity, either way, in degrees a second.
    pub fastest_thigh_deg_s: Figure,
    /// Where that is.
    pub fastest_at_deg: f64,
    /// The greatest towards the chest.
    pub rising_deg_s: f64,
    /// Where that is.
    pub rising_at_deg: f64,
    /// The greatest away from it, negative.
    pub falling_deg_s: f64,
    /// Where that is.
    pub falling_at_deg: f64,
    /// The thigh's greatest angular acceleration towards the chest, degrees a second squared.
    pub rising_deg_s2: f64,
    /// Where that is.
    pub rising_s2_at_deg: f64,
    /// The greatest away from it, negative.
    pub falling_deg_s2: f64,
    /// Where that is.
    pub falling_s2_at_deg: f64,
    /// The hip joint's centre.
    pub hip: PlanePoint,
    /// The top of the saddle under it.
    pub saddle: PlanePoint,
    /// The shoulder joint.
    pub shoulder: PlanePoint,
    /// The arm pads.
    pub pads: PlanePoint,
    /// The share of the combinations of what is not known exactly with which the leg reaches the pedal all the way round. Every ±
    /// is of those: the saddle was set to this leg.
    pub reach_share: f64,
}

/// The second set-up less the first.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SetUpDifference {
    /// Of the tightest hip angle: positive where the second opens the hip.
    pub tightest_hip_deg: Figure,
    /// Of the straightest knee.
    pub straightest_knee_deg: Figure,
    /// Of the most bent knee.
    pub most_bent_knee_deg: Figure,
    /// Of the thigh's greatest angular velocity.
    pub fastest_thigh_deg_s: Figure,
    /// Of the torso angle.
    pub torso_deg: Figure,
}

/// The lengths worked with.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SegmentLengths {
    /// Hip joint to knee.
    pub thigh_m: f64,
    /// Knee to ankle.
    pub shank_m: f64,
    /// Ankle to pedal axle.
    pub foot_m: f64,
    /// Hip joint to shoulder joint.
    pub trunk_m: f64,
    /// Shoulder joint to arm pads.
    pub upper_arm_m: f64,
    /// Which of them are guessed from the stature.
    pub guessed: Vec<&'static str>,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// The first set-up.
    pub a: SetUpAnswer,
    /// The second.
    pub b: SetUpAnswer,
    /// The second less the first. What is uncertain of the rider's lengths is common to both and largely cancels.
    pub difference: SetUpDifference,
    /// What small changes to the first set-up do.
    pub changes: Vec<SetUpChange>,
    /// What gives back the hip angle that pads lower by [`SMALL_DROP_M`] take from the first set-up.
    pub give_back: SetUpWays,
    /// What would make the second set-up's hip as open as the first's.
    pub level: SetUpWays,
    /// The rider's lengths.
    pub lengths: SegmentLengths,
    /// Which inputs carry the doubt of the difference in the tightest hip angle.
    pub surer: Vec<Contribution>,
    /// Which inputs carry the doubt of the second set-up's tightest hip angle itself.
    pub surer_hip: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

impl SetUpAnswer {
    /// What one side's rider does in a turn of the leg.
    pub(super) fn new(side: usize, rider: &Rider, turn: &Turn, angles: &UncertainAngles) -> Self {
        let of = |output: usize| angles.of_side(side, &|o| o[side * OUTPUTS + output]);
        let per_s = |rate: f64| (rate * rider.cadence_rad_s).to_degrees();
        let per_s2 = |rate: f64| (rate * rider.cadence_rad_s * rider.cadence_rad_s).to_degrees();
        let (thigh, knee) = (turn.thigh_angle(), turn.knee_angle());
        let (rate, second) = (turn.thigh_rate(), turn.thigh_second_rate());
        let fastest_at = if -rate.least.1 > rate.greatest.1 {
            rate.least.0
        } else {
            rate.greatest.0
        };
        Self {
            tightest_hip_deg: of(0),
            tightest_at_deg: thigh.greatest.0.to_degrees(),
            widest_hip_deg: (rider.torso_rad - thigh.least.1).to_degrees(),
            straightest_knee_deg: of(1),
            straightest_at_deg: knee.greatest.0.to_degrees(),
            most_bent_knee_deg: of(2),
            most_bent_at_deg: knee.least.0.to_degrees(),
            torso_deg: of(3),
            fastest_thigh_deg_s: angles.of_side(side, &fastest(angles.base(), side)),
            fastest_at_deg: fastest_at.to_degrees(),
            rising_deg_s: per_s(rate.greatest.1),
            rising_at_deg: rate.greatest.0.to_degrees(),
            falling_deg_s: per_s(rate.least.1),
            falling_at_deg: rate.least.0.to_degrees(),
            rising_deg_s2: per_s2(second.greatest.1),
            rising_s2_at_deg: second.greatest.0.to_degrees(),
            falling_deg_s2: per_s2(second.least.1),
            falling_s2_at_deg: second.least.0.to_degrees(),
            hip: turn.linkage().hip().into(),
            saddle: rider.saddle().into(),
            shoulder: rider.shoulder().into(),
            pads: rider.pads().into(),
            reach_share: angles.reach_share(side),
        }
    }
}

impl SegmentLengths {
    /// Those of these values of the inputs.
    pub(super) fn new(set_ups: &SetUps<'_>, values: &[f64; NUMBERS]) -> Self {
        let Body {
            leg,
            trunk_m,
            upper_arm_m,
            ..
        } = set_ups.body(values);
        let guessed = set_ups
            .numbers
            .iter()
            .filter(|number| number.guess.is_some());
        Self {
            thigh_m: leg.thigh_m,
            shank_m: leg.shank_m,
            foot_m: leg.foot_m,
            trunk_m,
            upper_arm_m,
            guessed: guessed
                .map(|number| number.field.key.trim_start_matches("with."))
                .collect(),
        }
    }
}
