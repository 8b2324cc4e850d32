//! Curves over one turn of the crank.

use serde::Serialize;

use crate::inputs::quantity::Column;
use crate::physics::leg::{CrankState, Turn};
use crate::physics::set_up::Rider;

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
            /// Both set-ups at every crank angle.
            pub(super) fn new(crank_deg: Vec<f64>, a: &Curves, b: &Curves) -> Self {
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
pub(super) struct Curves {
    moments: Vec<CrankState>,
    torso_rad: f64,
    cadence_rad_s: f64,
}

impl Curves {
    /// A rider at every crank angle of a turn.
    pub(super) fn new(rider: &Rider, turn: &Turn, crank_deg: &[f64]) -> Self {
        Self {
            moments: crank_deg
                .iter()
                .map(|degrees| turn.linkage().at(degrees.to_radians()))
                .collect(),
            torso_rad: rider.torso_rad,
            cadence_rad_s: rider.cadence_rad_s,
        }
    }
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
