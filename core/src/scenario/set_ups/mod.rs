//! Two set-ups of one rider: the inputs that both are made from, and the angles that come of what is uncertain of them.

pub(crate) mod angles;

use std::f64::consts::TAU;

use serde::Deserialize;

use crate::inputs::fields::{self, Field};
use crate::inputs::quantity::Quantity;
use crate::physics::leg::{Ankle, Leg};
use crate::physics::set_up::{Body, Rider, Unfit};

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

/// An input that the two set-ups are made from.
pub(crate) struct Number {
    pub(crate) path: String,
    pub(crate) field: &'static Field,
    pub(crate) quantity: Quantity,
    /// For a length that was not given, its share of the stature; the quantity is then how far off that the rider is.
    pub(crate) guess: Option<f64>,
}

/// How many there are: ten of the rider, then those of each set-up.
pub(crate) const NUMBERS: usize = 20;
const FIRST_OF_FITS: usize = 10;
pub(crate) const NUMBERS_OF_A_FIT: usize = 5;

/// The two set-ups, whose riders the values of the inputs make.
pub(crate) struct SetUps<'a> {
    pub(crate) model: AnkleModel,
    pub(crate) numbers: &'a [Number; NUMBERS],
}

impl SetUps<'_> {
    /// The rider with these values of the inputs.
    pub(crate) fn body(&self, values: &[f64; NUMBERS]) -> Body {
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

    /// The rider on either set-up with these values.
    ///
    /// # Errors
    /// The side on which the rider does not fit, and why.
    pub(crate) fn riders(&self, values: &[f64; NUMBERS]) -> Result<[Rider; 2], (usize, Unfit)> {
        let body = self.body(values);
        let rider = |side: usize| {
            let first = FIRST_OF_FITS + side * NUMBERS_OF_A_FIT;
            let seat_angle_rad = values[first + 2].to_radians();
            let front = values[first + 3];
            let torso_rad =
                if std::ptr::eq(self.numbers[first + 3].field, &raw const fields::TORSO_DEG) {
                    front.to_radians()
                } else {
                    body.torso_rad(front, seat_angle_rad)
                        .ok_or((side, Unfit::Torso))?
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
