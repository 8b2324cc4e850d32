//! What does this fit do to my hip? Two set-ups of one rider, side by side.

mod reach;

use std::f64::consts::TAU;

use serde::{Deserialize, Serialize};

use super::request::Request;
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields::{self, Field};
use crate::inputs::message::{self, Message};
use crate::inputs::quantity::{Column, Figure, Known, Quantity};
use crate::numerics::solve::{root_bracketed, spaced};
use crate::physics::leg::{Ankle, CrankState, Leg, Linkage, OutOfReach, Seat, Turn, Vector};
use crate::scenario::propagation::{Contribution, contributions, figure};
use crate::scenario::{Input, check_quantity};
use crate::uncertainty::draws::{Spread, UncertainInput, propagate};
use reach::{Moving, Reaching, given_reach};

/// How the ankle is taken to move. The two read some ten degrees apart: compare within one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum AnkleModel {
    /// Its angle stays.
    Frozen,
    /// The foot pitches a little over the turn.
    #[default]
    Ankling,
}

/// One set-up of bicycle and rider.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct SetUp {
    /// Axle to pedal axle, m.
    pub crank_m: Quantity,
    /// The crank's axle to the top of the saddle along the seat line, m.
    pub saddle_height_m: Quantity,
    /// Of the line from the crank's axle to the hip joint's centre, degrees above the horizontal.
    pub seat_angle_deg: Quantity,
    /// Top of the saddle down to the arm pads, m; the typical drop if there is no torso angle either.
    #[cfg_attr(feature = "types", ts(optional))]
    pub bar_drop_m: Option<Quantity>,
    /// Or, instead of it, hip joint to shoulder joint, degrees above the horizontal.
    #[cfg_attr(feature = "types", ts(optional))]
    pub torso_deg: Option<Quantity>,
    /// Turns of the crank a minute.
    pub cadence_rpm: Quantity,
}

impl Default for SetUp {
    fn default() -> Self {
        Self {
            crank_m: fields::CRANK_M.chosen(),
            saddle_height_m: fields::SADDLE_HEIGHT_M.chosen(),
            seat_angle_deg: fields::SEAT_ANGLE_DEG.chosen(),
            bar_drop_m: None,
            torso_deg: None,
            cadence_rpm: fields::CADENCE_RPM.chosen(),
        }
    }
}

/// What the question takes. A length that is left out is guessed from the stature.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// What the ankle does.
    pub model: AnkleModel,
    /// The set-up to compare with.
    pub a: SetUp,
    /// The other one.
    pub b: SetUp,
    /// Standing height, m.
    pub stature_m: Quantity,
    /// Hip joint to knee, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub thigh_m: Option<Quantity>,
    /// Knee to ankle, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub shank_m: Option<Quantity>,
    /// Ankle to pedal axle, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub foot_m: Option<Quantity>,
    /// Hip joint to shoulder joint, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub trunk_m: Option<Quantity>,
    /// Shoulder joint to arm pads, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub upper_arm_m: Option<Quantity>,
    /// The hip joint's centre beyond the top of the saddle along the seat line, m.
    pub hip_above_saddle_m: Quantity,
    /// For the frozen ankle: between shank and the line from ankle to pedal, degrees.
    pub ankle_deg: Quantity,
    /// For the moving one: how far that line points down in the mean, degrees.
    pub foot_pitch_deg: Quantity,
    /// And how far it swings to either side, degrees.
    pub foot_swing_deg: Quantity,
}

impl Default for With {
    fn default() -> Self {
        Self {
            model: AnkleModel::default(),
            a: SetUp::default(),
            b: SetUp {
                crank_m: Quantity::exact(0.165),
                saddle_height_m: Quantity::exact(0.725),
                bar_drop_m: Some(Quantity::exact(0.12)),
                ..SetUp::default()
            },
            stature_m: fields::STATURE_M.typical(),
            thigh_m: None,
            shank_m: None,
            foot_m: None,
            trunk_m: None,
            upper_arm_m: None,
            hip_above_saddle_m: fields::HIP_ABOVE_SADDLE_M.typical(),
            ankle_deg: fields::ANKLE_DEG.typical(),
            foot_pitch_deg: fields::FOOT_PITCH_DEG.typical(),
            foot_swing_deg: fields::FOOT_SWING_DEG.typical(),
        }
    }
}

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

macro_rules! columns {
    ($($name:ident: $a:ident $b:ident $what:literal;)*) => {
        /// Curves over one turn.
        #[derive(Clone, Debug, Serialize)]
        #[cfg_attr(feature = "types", derive(ts_rs::TS))]
        pub struct Columns {
            /// Crank angle from top dead centre, degrees.
            pub crank_deg: Column,
            $(
                #[doc = concat!($what, " of the first set-up")]
                pub $a: Column,
                #[doc = concat!($what, " of the second set-up")]
                pub $b: Column,
            )*
        }

        impl Columns {
            fn new(crank_deg: Vec<f64>, a: &Curves, b: &Curves) -> Self {
                let along = |curves: &Curves, of: fn(&Curves, &CrankState) -> f64| -> Column {
                    curves.moments.iter().map(|at| of(curves, at)).collect()
                };
                Self {
                    crank_deg: crank_deg.into(),
                    $($a: along(a, Curves::$name), $b: along(b, Curves::$name),)*
                }
            }
        }
    };
}

columns! {
    hip_deg: a_hip_deg b_hip_deg "Hip angle, degrees,";
    knee_deg: a_knee_deg b_knee_deg "Knee angle, degrees,";
    thigh_deg_s: a_thigh_deg_s b_thigh_deg_s "Angular velocity of the thigh, positive towards the chest, degrees a second,";
    thigh_deg_s2: a_thigh_deg_s2 b_thigh_deg_s2 "Angular acceleration of the thigh, degrees a second squared,";
    pedal_x_m: a_pedal_x_m b_pedal_x_m "The pedal forward of the axle, m,";
    pedal_y_m: a_pedal_y_m b_pedal_y_m "The pedal above the axle, m,";
    ankle_x_m: a_ankle_x_m b_ankle_x_m "The ankle forward of the axle, m,";
    ankle_y_m: a_ankle_y_m b_ankle_y_m "The ankle above the axle, m,";
    knee_x_m: a_knee_x_m b_knee_x_m "The knee forward of the axle, m,";
    knee_y_m: a_knee_y_m b_knee_y_m "The knee above the axle, m,";
}

/// One set-up at every crank angle of the curves.
struct Curves {
    moments: Vec<CrankState>,
    torso_rad: f64,
    cadence_rad_s: f64,
}

impl Curves {
    fn hip_deg(&self, at: &CrankState) -> f64 {
        (self.torso_rad - at.thigh_rad).to_degrees()
    }
    fn knee_deg(&self, at: &CrankState) -> f64 {
        at.knee_rad.to_degrees()
    }
    fn thigh_deg_s(&self, at: &CrankState) -> f64 {
        (at.thigh_rates[0] * self.cadence_rad_s).to_degrees()
    }
    fn thigh_deg_s2(&self, at: &CrankState) -> f64 {
        (at.thigh_rates[1] * self.cadence_rad_s * self.cadence_rad_s).to_degrees()
    }
    fn pedal_x_m(&self, at: &CrankState) -> f64 {
        at.pedal.x
    }
    fn pedal_y_m(&self, at: &CrankState) -> f64 {
        at.pedal.y
    }
    fn ankle_x_m(&self, at: &CrankState) -> f64 {
        at.ankle.x
    }
    fn ankle_y_m(&self, at: &CrankState) -> f64 {
        at.ankle.y
    }
    fn knee_x_m(&self, at: &CrankState) -> f64 {
        at.knee.x
    }
    fn knee_y_m(&self, at: &CrankState) -> f64 {
        at.knee.y
    }
}

/// How uncertain a length guessed from the stature is, as a share of it; assumed.
const GUESS_SHARE_SD: f64 = 0.03;
/// Changes that fitters think in, m.
const SMALL_CRANK_M: f64 = -0.005;
const SMALL_SADDLE_M: f64 = 0.01;
const SMALL_SEAT_ANGLE_DEG: f64 = 1.0;
/// How much lower the pads are in [`Answer::give_back`], m.
pub const SMALL_DROP_M: f64 = 0.01;
/// From this share of combinations that reach on, the rest is not worth a word.
const SURELY_REACHES: f64 = 0.98;
/// A knee straighter than this makes the rates change with every millimetre, degrees.
const NEARLY_STRAIGHT_DEG: f64 = 170.0;
const CURVE_POINTS: usize = 361;
/// How closely a change that levels two hips is found, m or degrees.
const LEVEL_ACCURACY: f64 = 1e-10;

/// An input of the question.
struct Number {
    path: String,
    field: &'static Field,
    quantity: Quantity,
    /// For a length that was not given, its share of the stature; the quantity is then how far off that the rider is.
    guess: Option<f64>,
}

const NUMBERS: usize = 20;
const FIRST_OF_FITS: usize = 10;
const NUMBERS_OF_A_FIT: usize = 5;

/// The question's inputs, always in the same order.
fn numbers(with: &With) -> Result<[Number; NUMBERS], Error> {
    let given = |field: &'static Field, quantity: Quantity| Number {
        path: field.key.to_owned(),
        field,
        quantity,
        guess: None,
    };
    let length = |field: &'static Field, length_m: Option<Quantity>, share: f64| match length_m {
        Some(length_m) => given(field, length_m),
        None => Number {
            guess: Some(share),
            ..given(field, Quantity::typical(1.0, GUESS_SHARE_SD))
        },
    };
    let [a0, a1, a2, a3, a4] = numbers_of("a", &with.a)?;
    let [b0, b1, b2, b3, b4] = numbers_of("b", &with.b)?;
    Ok([
        given(&fields::STATURE_M, with.stature_m),
        length(&fields::THIGH_M, with.thigh_m, 0.245),
        length(&fields::SHANK_M, with.shank_m, 0.246),
        length(&fields::FOOT_M, with.foot_m, 0.085),
        length(&fields::TRUNK_M, with.trunk_m, 0.288),
        length(&fields::UPPER_ARM_M, with.upper_arm_m, 0.186),
        given(&fields::HIP_ABOVE_SADDLE_M, with.hip_above_saddle_m),
        given(&fields::ANKLE_DEG, with.ankle_deg),
        given(&fields::FOOT_PITCH_DEG, with.foot_pitch_deg),
        given(&fields::FOOT_SWING_DEG, with.foot_swing_deg),
        a0,
        a1,
        a2,
        a3,
        a4,
        b0,
        b1,
        b2,
        b3,
        b4,
    ])
}

fn numbers_of(name: &str, fit: &SetUp) -> Result<[Number; NUMBERS_OF_A_FIT], Error> {
    let number = |field: &'static Field, quantity: Quantity| Number {
        path: field.key.replacen("with", &format!("with.{name}"), 1),
        field,
        quantity,
        guess: None,
    };
    let front = match (fit.bar_drop_m, fit.torso_deg) {
        (Some(_), Some(_)) => {
            let other = format!("with.{name}.bar_drop_m");
            return Err(Error::not_both(format!("with.{name}.torso_deg"), &other));
        }
        (None, Some(torso_deg)) => number(&fields::TORSO_DEG, torso_deg),
        (drop_m, None) => number(
            &fields::BAR_DROP_M,
            drop_m.unwrap_or(fields::BAR_DROP_M.chosen()),
        ),
    };
    Ok([
        number(&fields::CRANK_M, fit.crank_m),
        number(&fields::SADDLE_HEIGHT_M, fit.saddle_height_m),
        number(&fields::SEAT_ANGLE_DEG, fit.seat_angle_deg),
        front,
        number(&fields::CADENCE_RPM, fit.cadence_rpm),
    ])
}

/// The rider, in one set of values of the inputs.
#[derive(Clone, Copy)]
struct Body {
    leg: Leg,
    trunk_m: f64,
    upper_arm_m: f64,
    hip_above_saddle_m: f64,
}

/// A rider on a set-up.
#[derive(Clone, Copy)]
struct Rider {
    body: Body,
    crank_m: f64,
    saddle_height_m: f64,
    seat_angle_rad: f64,
    torso_rad: f64,
    cadence_rad_s: f64,
}

/// Why a rider cannot be set up so.
enum Unfit {
    /// The pads are further from the hip than the trunk is long.
    Torso,
    /// The leg does not reach the pedal all the way round.
    Leg(Box<(Rider, OutOfReach)>),
}

impl Rider {
    fn linkage(&self) -> Linkage {
        let hip_m = self.saddle_height_m + self.body.hip_above_saddle_m;
        Linkage::new(
            self.body.leg,
            Seat {
                crank_m: self.crank_m,
                hip_m,
                angle_rad: self.seat_angle_rad,
            },
        )
    }

    fn turn(&self) -> Result<Turn, Unfit> {
        self.linkage()
            .turn()
            .map_err(|missing| Unfit::Leg(Box::new((*self, missing))))
    }

    fn outputs(&self) -> Result<[f64; OUTPUTS], Unfit> {
        let turn = self.turn()?;
        let (knee, rate) = (turn.knee_angle(), turn.thigh_rate());
        let [rising, falling] =
            [rate.greatest.1, rate.least.1].map(|rate| rate * self.cadence_rad_s);
        let hip = self.torso_rad - turn.thigh_angle().greatest.1;
        Ok([
            hip,
            knee.greatest.1,
            knee.least.1,
            self.torso_rad,
            rising,
            falling,
        ]
        .map(f64::to_degrees))
    }

    fn tightest_hip_rad(&self) -> Option<f64> {
        self.turn()
            .ok()
            .map(|turn| self.torso_rad - turn.thigh_angle().greatest.1)
    }

    /// With one part changed; `None` where that leaves a hard range or the trunk's length.
    fn changed(self, part: SetUpPart, by: f64) -> Option<Self> {
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

/// The two riders that the values of the inputs make.
struct Making<'a> {
    model: AnkleModel,
    numbers: &'a [Number; NUMBERS],
}

impl Making<'_> {
    fn body(&self, values: &[f64; NUMBERS]) -> Body {
        let length = |i: usize| {
            self.numbers[i]
                .guess
                .map_or(values[i], |share| share * values[0] * values[i])
        };
        let ankle = match self.model {
            AnkleModel::Frozen => Ankle::Frozen {
                angle_rad: values[7].to_radians(),
            },
            AnkleModel::Ankling => Ankle::Moving {
                pitch_rad: values[8].to_radians(),
                swing_rad: values[9].to_radians(),
            },
        };
        Body {
            leg: Leg {
                thigh_m: length(1),
                shank_m: length(2),
                foot_m: length(3),
                ankle,
            },
            trunk_m: length(4),
            upper_arm_m: length(5),
            hip_above_saddle_m: values[6],
        }
    }

    fn riders(&self, values: &[f64; NUMBERS]) -> Result<[Rider; 2], (usize, Unfit)> {
        let body = self.body(values);
        let rider = |side: usize| {
            let first = FIRST_OF_FITS + side * NUMBERS_OF_A_FIT;
            let seat_angle_rad = values[first + 2].to_radians();
            let front = values[first + 3];
            let torso_rad =
                if std::ptr::eq(self.numbers[first + 3].field, &raw const fields::TORSO_DEG) {
                    front.to_radians()
                } else {
                    // Both joints over the saddle's top: the shoulder an upper arm above the pads, the hip along the seat line.
                    let rise_m =
                        body.upper_arm_m - front - body.hip_above_saddle_m * seat_angle_rad.sin();
                    let rise = rise_m / body.trunk_m;
                    if rise.abs() > 1.0 {
                        return Err((side, Unfit::Torso));
                    }
                    rise.asin()
                };
            Ok(Rider {
                body,
                crank_m: values[first],
                saddle_height_m: values[first + 1],
                seat_angle_rad,
                torso_rad,
                cadence_rad_s: values[first + 4] * TAU / 60.0,
            })
        };
        Ok([rider(0)?, rider(1)?])
    }
}

/// What is followed through the doubt, for each side: hip, straightest and most bent knee, and torso in degrees, thigh up and
/// down in degrees a second.
const OUTPUTS: usize = 6;
type Outputs = [f64; 2 * OUTPUTS];

fn outputs(making: &Making<'_>, values: &[f64; NUMBERS]) -> Result<Outputs, (usize, Unfit)> {
    let mut outputs = [0.0; 2 * OUTPUTS];
    for (side, rider) in making.riders(values)?.iter().enumerate() {
        let own = rider.outputs().map_err(|unfit| (side, unfit))?;
        outputs[side * OUTPUTS..][..OUTPUTS].copy_from_slice(&own);
    }
    Ok(outputs)
}

/// The thigh's greatest angular velocity either way, as a linear combination about the values themselves.
fn fastest(base: &Outputs, side: usize) -> impl Fn(&Outputs) -> f64 {
    let (rising, falling) = (side * OUTPUTS + 4, side * OUTPUTS + 5);
    let falls = -base[falling] > base[rising];
    move |outputs| {
        if falls {
            -outputs[falling]
        } else {
            outputs[rising]
        }
    }
}

/// Answers the question. The scenario is checked and otherwise left alone.
///
/// # Errors
/// Names the field that is wrong, or says where in the turn the leg does not reach the pedal.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request { with, .. } = request;
    // What is doubtful about a scenario has nothing to do with a leg.
    let mut warnings = Vec::new();
    let numbers = numbers(&with)?;
    for Number {
        path,
        field,
        quantity,
        ..
    } in numbers.iter().filter(|number| number.guess.is_none())
    {
        check_quantity(field, path, quantity)?;
        warnings.extend(field.doubt(path, quantity.value));
    }
    let making = Making {
        model: with.model,
        numbers: &numbers,
    };
    let values: [f64; NUMBERS] = std::array::from_fn(|i| numbers[i].quantity.value);

    let (inputs, places, spread) = spread(&making, &values).map_err(unfit)?;
    let uncertain: Vec<UncertainInput> = inputs.iter().map(|input| input.uncertain).collect();
    let moving = Moving {
        making: &making,
        values: &values,
        places: &places,
        uncertain: &uncertain,
    };
    let reaching = [Reaching::new(&moving, 0), Reaching::new(&moving, 1)];
    let both = Reaching::rarer(reaching[0].as_ref(), reaching[1].as_ref());
    let [first, second] = making.riders(&values).map_err(unfit)?;
    let (first_turn, second_turn) = (reached(0, &first)?, reached(1, &second)?);
    let sides = [
        side(0, &first, &first_turn, &spread, reaching[0].as_ref()),
        side(1, &second, &second_turn, &spread, reaching[1].as_ref()),
    ];
    for (name, side) in ["a", "b"].into_iter().zip(&sides) {
        if side.straightest_knee_deg.value > NEARLY_STRAIGHT_DEG {
            let field = format!("with.{name}.saddle_height_m");
            warnings.push(Warning::of(field, message::nearly_straight()));
        }
        if side.reach_share < SURELY_REACHES {
            let of_hundred = (100.0 * (1.0 - side.reach_share)).round() as usize;
            warnings.push(Warning::of(
                format!("with.{name}.saddle_height_m"),
                message::may_not_reach(of_hundred),
            ));
        }
    }
    let crank_deg = spaced(0.0, 360.0, CURVE_POINTS);
    let curves = |rider: &Rider, turn: &Turn| Curves {
        moments: crank_deg
            .iter()
            .map(|degrees| turn.linkage().at(degrees.to_radians()))
            .collect(),
        torso_rad: rider.torso_rad,
        cadence_rad_s: rider.cadence_rad_s,
    };
    let (first_curves, second_curves) =
        (curves(&first, &first_turn), curves(&second, &second_turn));
    let hip_rad = first.torso_rad - first_turn.thigh_angle().greatest.1;
    let hip_difference = |o: &Outputs| o[OUTPUTS] - o[0];
    let apart =
        |output: &dyn Fn(&Outputs) -> f64| given_reach(both, figure(&spread, output), output);
    let surer = scaled(
        contributions(&inputs, &spread, hip_difference),
        figure(&spread, hip_difference),
        apart(&hip_difference),
    );
    let [a, b] = sides;
    let second_hip = |o: &Outputs| o[OUTPUTS];
    let surer_hip = scaled(
        contributions(&inputs, &spread, second_hip),
        figure(&spread, second_hip),
        b.tightest_hip_deg,
    );
    Ok(Answer {
        a,
        b,
        difference: SetUpDifference {
            tightest_hip_deg: apart(&hip_difference),
            straightest_knee_deg: apart(&|o| o[OUTPUTS + 1] - o[1]),
            most_bent_knee_deg: apart(&|o| o[OUTPUTS + 2] - o[2]),
            torso_deg: apart(&|o| o[OUTPUTS + 3] - o[3]),
            fastest_thigh_deg_s: {
                let (of_first, of_second) = (fastest(&spread.base, 0), fastest(&spread.base, 1));
                apart(&|o| of_second(o) - of_first(o))
            },
        },
        changes: changes(&first, &spread.base),
        give_back: first
            .changed(SetUpPart::Pads, SMALL_DROP_M)
            .map_or(NO_WAYS, |lower| ways(&lower, hip_rad)),
        level: ways(&second, hip_rad),
        lengths: lengths(&making, &values),
        surer,
        surer_hip,
        warnings,
        columns: Columns::new(crank_deg, &first_curves, &second_curves),
    })
}

/// Contributions to a spread as those to the same output given that the leg reaches.
fn scaled(contributions: Vec<Contribution>, spread: Figure, given: Figure) -> Vec<Contribution> {
    let scale = if spread.sd > 0.0 {
        given.sd / spread.sd
    } else {
        1.0
    };
    let one = |one: Contribution| Contribution {
        moves: scale * one.moves,
        left: scale * one.left,
        ..one
    };
    contributions.into_iter().map(one).collect()
}

/// The uncertain inputs, their places among the numbers, and what they do to the angles of both set-ups.
type UncertainAngles = (Vec<Input>, Vec<usize>, Spread<{ 2 * OUTPUTS }>);

/// Outputs at the values, and how every uncertain input, by its place among them, moves them.
fn spread(making: &Making<'_>, values: &[f64; NUMBERS]) -> Result<UncertainAngles, (usize, Unfit)> {
    let idle = |i: usize| match making.model {
        AnkleModel::Frozen => i == 8 || i == 9,
        AnkleModel::Ankling => i == 7,
    };
    let moving: Vec<usize> = (0..NUMBERS)
        .filter(|&i| making.numbers[i].quantity.sd > 0.0 && !idle(i))
        .collect();
    let inputs: Vec<Input> = moving
        .iter()
        .map(|&i| {
            let Number {
                path,
                field,
                quantity,
                guess,
            } = &making.numbers[i];
            let (min, max) = if guess.is_some() {
                (0.5, 1.5)
            } else {
                (field.min, field.max)
            };
            let uncertain = UncertainInput {
                value: quantity.value,
                sd: quantity.sd,
                min,
                max,
                correlation: 0.0,
            };
            Input {
                path: path.clone(),
                known: if guess.is_some() {
                    Known::Typical
                } else {
                    quantity.source
                },
                uncertain,
            }
        })
        .collect();
    let uncertain: Vec<UncertainInput> = inputs.iter().map(|input| input.uncertain).collect();
    let spread = propagate(&uncertain, |moved| {
        let mut all = *values;
        for (&i, &value) in moving.iter().zip(moved) {
            all[i] = value;
        }
        outputs(making, &all)
    })?;
    Ok((inputs, moving, spread))
}

fn reached(side: usize, rider: &Rider) -> Result<Turn, Error> {
    rider.turn().map_err(|reason| unfit((side, reason)))
}

fn side(
    side: usize,
    rider: &Rider,
    turn: &Turn,
    spread: &Spread<{ 2 * OUTPUTS }>,
    reaching: Option<&Reaching>,
) -> SetUpAnswer {
    let given =
        |output: &dyn Fn(&Outputs) -> f64| given_reach(reaching, figure(spread, output), output);
    let of = |output: usize| given(&|o| o[side * OUTPUTS + output]);
    let per_s = |rate: f64| (rate * rider.cadence_rad_s).to_degrees();
    let per_s2 = |rate: f64| (rate * rider.cadence_rad_s * rider.cadence_rad_s).to_degrees();
    let (thigh, knee) = (turn.thigh_angle(), turn.knee_angle());
    let (rate, second) = (turn.thigh_rate(), turn.thigh_second_rate());
    let fastest_at = if -rate.least.1 > rate.greatest.1 {
        rate.least.0
    } else {
        rate.greatest.0
    };
    let hip = turn.linkage().hip();
    let shoulder = hip + Vector::at(rider.body.trunk_m, rider.torso_rad);
    let saddle_share =
        rider.saddle_height_m / (rider.saddle_height_m + rider.body.hip_above_saddle_m);
    SetUpAnswer {
        tightest_hip_deg: of(0),
        tightest_at_deg: thigh.greatest.0.to_degrees(),
        widest_hip_deg: (rider.torso_rad - thigh.least.1).to_degrees(),
        straightest_knee_deg: of(1),
        straightest_at_deg: knee.greatest.0.to_degrees(),
        most_bent_knee_deg: of(2),
        most_bent_at_deg: knee.least.0.to_degrees(),
        torso_deg: of(3),
        fastest_thigh_deg_s: given(&fastest(&spread.base, side)),
        fastest_at_deg: fastest_at.to_degrees(),
        rising_deg_s: per_s(rate.greatest.1),
        rising_at_deg: rate.greatest.0.to_degrees(),
        falling_deg_s: per_s(rate.least.1),
        falling_at_deg: rate.least.0.to_degrees(),
        rising_deg_s2: per_s2(second.greatest.1),
        rising_s2_at_deg: second.greatest.0.to_degrees(),
        falling_deg_s2: per_s2(second.least.1),
        falling_s2_at_deg: second.least.0.to_degrees(),
        hip: hip.into(),
        saddle: (saddle_share * hip).into(),
        shoulder: shoulder.into(),
        pads: (shoulder
            - Vector {
                x: 0.0,
                y: rider.body.upper_arm_m,
            })
        .into(),
        reach_share: reaching.map_or(1.0, Reaching::share),
    }
}

/// What small changes do to a rider whose outputs are the first ones of `base`.
fn changes(rider: &Rider, base: &Outputs) -> Vec<SetUpChange> {
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
                base[0],
            ),
            straightest_knee_deg: less(&|_, turn| turn.knee_angle().greatest.1, base[1]),
            fastest_thigh_deg_s: less(
                &|rider, turn| {
                    let rate = turn.thigh_rate();
                    rate.greatest.1.max(-rate.least.1) * rider.cadence_rad_s
                },
                fastest(base, 0)(base),
            ),
        }
    };
    small.into_iter().map(change).collect()
}

const NO_WAYS: SetUpWays = SetUpWays {
    crank_change_m: None,
    saddle_change_m: None,
    seat_angle_change_deg: None,
    bar_drop_change_m: None,
};

/// Each part's change that alone brings a rider's tightest hip angle to `hip_rad`, within what a bicycle allows.
fn ways(rider: &Rider, hip_rad: f64) -> SetUpWays {
    SetUpWays {
        crank_change_m: way(rider, hip_rad, SetUpPart::CrankAndSaddle, -0.04),
        saddle_change_m: way(rider, hip_rad, SetUpPart::Saddle, 0.06),
        seat_angle_change_deg: way(rider, hip_rad, SetUpPart::SeatAngle, 10.0),
        bar_drop_change_m: way(rider, hip_rad, SetUpPart::Pads, -0.15),
    }
}

/// The change of one part up to `most` in the direction that opens the hip, or as far in the other. Steps first find where the
/// hip passes the value, since beyond some step the leg may no longer reach.
fn way(rider: &Rider, hip_rad: f64, part: SetUpPart, most: f64) -> Option<f64> {
    const STEPS: u32 = 12;
    let over = |by: f64| {
        let changed = rider.changed(part, by)?;
        Some(changed.tightest_hip_rad()? - hip_rad)
    };
    let mut before = (0.0, over(0.0)?);
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

fn lengths(making: &Making<'_>, values: &[f64; NUMBERS]) -> SegmentLengths {
    let Body {
        leg,
        trunk_m,
        upper_arm_m,
        ..
    } = making.body(values);
    let guessed = making
        .numbers
        .iter()
        .filter(|number| number.guess.is_some());
    SegmentLengths {
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

/// A set-up that cannot be, as an error at the control that would put it right.
fn unfit((side, reason): (usize, Unfit)) -> Error {
    let name = ["a", "b"][side];
    match reason {
        Unfit::Torso => Error::impossible(
            format!("with.{name}.bar_drop_m"),
            message::trunk_too_short(),
        ),
        Unfit::Leg(leg) => {
            let (rider, missing) = *leg;
            let whole = |radians: f64| radians.to_degrees().round();
            let [from, to, at] = [missing.from_rad, missing.to_rad, missing.worst_rad].map(whole);
            let missing_m = (missing.missing_m * 1000.0).round().max(1.0) / 1000.0;
            let limit_m = reachable_saddle_m(&rider, missing.too_near);
            let (why, limited): (_, fn(Message, f64) -> Message) = if missing.too_near {
                (
                    message::leg_too_long(from, to, missing_m, at),
                    message::saddle_at_least,
                )
            } else {
                (
                    message::leg_too_short(from, to, missing_m, at),
                    message::saddle_at_most,
                )
            };
            let message = match limit_m {
                Some(limit_m) => limited(why, limit_m),
                None => why,
            };
            Error::impossible(format!("with.{name}.saddle_height_m"), message)
        }
    }
}

/// The nearest saddle height with which the leg reaches all the way round, in whole millimetres; `None` where no height does.
fn reachable_saddle_m(rider: &Rider, too_near: bool) -> Option<f64> {
    const HALVINGS: u32 = 20;
    let at = |saddle_height_m: f64| {
        Rider {
            saddle_height_m,
            ..*rider
        }
        .linkage()
        .turn()
    };
    let still = |missing: &OutOfReach| missing.too_near == too_near;
    let field = &fields::SADDLE_HEIGHT_M;
    let (mut out, mut inside) = (
        rider.saddle_height_m,
        if too_near { field.max } else { field.min },
    );
    if at(inside).is_err_and(|missing| still(&missing)) {
        return None;
    }
    for _ in 0..HALVINGS {
        let middle = 0.5 * (out + inside);
        if at(middle).is_err_and(|missing| still(&missing)) {
            out = middle;
        } else {
            inside = middle;
        }
    }
    let millimetres = inside * 1000.0;
    let whole_m = (if too_near {
        millimetres.ceil()
    } else {
        millimetres.floor()
    }) / 1000.0;
    at(whole_m).is_ok().then_some(whole_m)
}
