//! What a gain of time over a distance means where the time is fixed: how much further the rider gets in it.
//!
//! Around the distance `D` that a ride is over, time grows as a power of distance, `t ∝ d^β`, at the ride's kind of effort: at the
//! best even effort a longer ride is ridden more gently, and in a position that goes it is ridden at more drag, so that β is a little
//! more than 1. A ride over `D` in a time `t` then gets `D (T/t)^(1/β)` far in the fixed time `T`. β is read off two rides a fiftieth
//! shorter and longer, by steady speeds: each ride's own where two setups are compared, that of the ride as it is where a change to it is.
//! That is within 2 % of what solving the other ride for its own distance gives, for times up to a tenth apart (checked in
//! `tests/tests/fixed_times.rs`). Both times are without what the rider stands on the way, which is as long for both.

use std::rc::Rc;

use crate::inputs::quantity::Figure;
use crate::numerics::exponential::pow;
use crate::riding::effort::{Effort, NoEffort, Paced, paced_from};
use crate::riding::integrated::Setup;
use crate::riding::quasi_steady::QuasiSteady;

/// A ride over the distance that goes with a fixed time, and rides about as long.
#[derive(Clone, Copy, Debug)]
pub(crate) struct FixedTime {
    /// What is ridden of the time that is fixed, s.
    ridden_s: f64,
    /// The distance that the ride is over, m.
    distance_m: f64,
    /// What riding over that takes, s.
    time_s: f64,
    /// `dlnT/dlnD`.
    exponent: f64,
}

impl FixedTime {
    /// Of a ride of a setup over its course, which took about `duration_s`.
    ///
    /// # Errors
    /// [`NoEffort`] where the rides beside it cannot be ridden, or the rider stands for all of the time.
    pub(crate) fn new(
        setup: &Setup,
        effort: Effort,
        ride: Paced,
        duration_s: f64,
    ) -> Result<Self, NoEffort> {
        const FURTHER: f64 = 1.02;
        let time_model = QuasiSteady::default();
        let distance_m = setup.course.distance_m();
        // Where the ride ends at a stop, time goes on while the rider stands there: of much of it nothing is known.
        const MOST: f64 = 2.0;
        let ridden_s = setup.riding_s(ride.time_s);
        let standing_s = ride.time_s - ridden_s;
        if standing_s >= duration_s || duration_s - standing_s > MOST * ridden_s {
            return Err(NoEffort::OutOfReach);
        }
        let unbroken = setup.without_stops();
        let time_over_s = |distance_m: f64| -> Result<f64, NoEffort> {
            let there = Setup {
                course: Rc::new(unbroken.course.scaled_to(distance_m)),
                ..unbroken.clone()
            };
            Ok(paced_from(&time_model, &there, effort, ride.power_w)?.time_s)
        };
        let (shorter_s, longer_s) = (
            time_over_s(distance_m / FURTHER)?,
            time_over_s(distance_m * FURTHER)?,
        );
        Ok(Self {
            ridden_s: duration_s - standing_s,
            distance_m,
            time_s: ride.time_s - standing_s,
            exponent: (longer_s / shorter_s).ln() / (2.0 * FURTHER.ln()),
        })
    }

    /// How far a ride gets in the fixed time that takes `time_s` over the distance, m.
    fn reached_in_m(&self, time_s: f64) -> f64 {
        self.distance_m * pow(self.ridden_s / time_s, 1.0 / self.exponent)
    }

    /// How much further the ride gets in the fixed time if it is faster by so much; negative if it is slower. Its sd is that of the
    /// difference times the speed with which distance is gained there; the distance itself is fixed.
    pub(crate) fn further_m(&self, faster_s: Figure) -> Figure {
        // A gain that takes all of the time, as an average over what may come off could, leaves no ride.
        const LEAST_LEFT: f64 = 0.001;
        let time_s = (self.time_s - faster_s.value).max(LEAST_LEFT * self.time_s);
        let reached_m = self.reached_in_m(time_s);
        Figure {
            value: reached_m - self.reached_in_m(self.time_s),
            sd: faster_s.sd * reached_m / (self.exponent * time_s),
        }
    }

    /// How much further the ride gets in the fixed time than another one, whose time over the same distance is longer by so much.
    #[cfg(feature = "all")]
    pub(crate) fn further_than_m(&self, other: &Self, faster_s: Figure) -> Figure {
        let reached_m = self.reached_in_m(self.time_s);
        Figure {
            value: reached_m - other.reached_in_m(other.time_s),
            sd: faster_s.sd * reached_m / (self.exponent * self.time_s),
        }
    }
}
