//! A rider on a set-up of the bicycle: leg, trunk and arms over crank, saddle and pads.

use super::leg::{Leg, Linkage, OutOfReach, Seat, Turn, Vector};
use crate::inputs::fields;

/// The rider, in one set of values of the inputs.
#[derive(Clone, Copy, PartialEq)]
pub(crate) struct Body {
    pub(crate) leg: Leg,
    pub(crate) trunk_m: f64,
    pub(crate) upper_arm_m: f64,
    pub(crate) hip_above_saddle_m: f64,
}

impl Body {
    /// The torso above the horizontal with the pads so far below the top of the saddle, rad; `None` where they are further from
    /// the hip than the trunk is long.
    ///
    /// Both joints over the saddle's top: the shoulder an upper arm above the pads, the hip along the seat line.
    pub(crate) fn torso_rad(&self, bar_drop_m: f64, seat_angle_rad: f64) -> Option<f64> {
        let rise_m = self.upper_arm_m - bar_drop_m - self.hip_above_saddle_m * seat_angle_rad.sin();
        let rise = rise_m / self.trunk_m;
        (rise.abs() <= 1.0).then(|| rise.asin())
    }
}

/// A rider on a set-up.
#[derive(Clone, Copy, PartialEq)]
pub(crate) struct Rider {
    pub(crate) body: Body,
    pub(crate) crank_m: f64,
    pub(crate) saddle_height_m: f64,
    pub(crate) seat_angle_rad: f64,
    pub(crate) torso_rad: f64,
    pub(crate) cadence_rad_s: f64,
}

/// Why a rider cannot be set up so.
pub(crate) enum Unfit {
    /// The pads are further from the hip than the trunk is long.
    Torso,
    /// The leg does not reach the pedal all the way round.
    Leg(Box<(Rider, OutOfReach)>),
}

impl Rider {
    /// The leg on its seat.
    pub(crate) fn linkage(&self) -> Linkage {
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

    /// One turn of the leg.
    ///
    /// # Errors
    /// Where it does not reach the pedal.
    pub(crate) fn turn(&self) -> Result<Turn, Unfit> {
        self.linkage()
            .turn()
            .map_err(|missing| Unfit::Leg(Box::new((*self, missing))))
    }

    /// Between torso and thigh where it is least, rad; `None` where the leg does not reach.
    pub(crate) fn tightest_hip_rad(&self) -> Option<f64> {
        self.turn()
            .ok()
            .map(|turn| self.torso_rad - turn.thigh_angle().greatest.1)
    }

    /// The shoulder joint.
    pub(crate) fn shoulder(&self) -> Vector {
        self.linkage().hip() + Vector::at(self.body.trunk_m, self.torso_rad)
    }

    /// The arm pads, straight under it.
    pub(crate) fn pads(&self) -> Vector {
        self.shoulder()
            - Vector {
                x: 0.0,
                y: self.body.upper_arm_m,
            }
    }

    /// The top of the saddle, on the seat line under the hip.
    pub(crate) fn saddle(&self) -> Vector {
        let share = self.saddle_height_m / (self.saddle_height_m + self.body.hip_above_saddle_m);
        share * self.linkage().hip()
    }

    /// The nearest saddle height with which the leg reaches all the way round, in whole millimetres; `None` where no height does.
    pub(crate) fn reachable_saddle_m(&self, too_near: bool) -> Option<f64> {
        const HALVINGS: u32 = 20;
        let at = |saddle_height_m: f64| {
            Self {
                saddle_height_m,
                ..*self
            }
            .linkage()
            .turn()
        };
        let still = |missing: &OutOfReach| missing.too_near == too_near;
        let field = &fields::SADDLE_HEIGHT_M;
        let (mut out, mut inside) = (
            self.saddle_height_m,
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
}
