//! What a gain of time over a distance means where the time is fixed: how much further the rider gets in it.
//!
//! Around the distance `D` that a ride covers in its time `T`, time grows as a power of distance, `t ∝ d^β`, at the ride's kind of
//! effort: at the best even effort a longer ride is ridden more gently, so that β is a little more than 1. A ride over `D` in a
//! time `t` then gets `D (T/t)^(1/β)` far in `T`. β is read off two rides a fiftieth shorter and longer, by steady speeds; it is
//! taken to be the same for the rides that are compared.
//! That is within 2 % of what solving the other ride for its own distance gives, for times up to a tenth apart (checked in
//! `tests/tests/fixed_times.rs`).

use std::rc::Rc;

use crate::inputs::quantity::Figure;
use crate::numerics::exponential::pow;
use crate::riding::effort::{Effort, NoEffort, Paced, paced_from};
use crate::riding::integrated::Setup;
use crate::riding::quasi_steady::QuasiSteady;

/// A ride over the distance that goes with a fixed time, and rides about as long.
#[derive(Clone, Copy, Debug)]
pub(crate) struct FixedTime {
    /// The time that is fixed, s.
    pub(crate) duration_s: f64,
    /// The distance that the times are over, m.
    distance_m: f64,
    /// `dlnT/dlnD`.
    exponent: f64,
}

impl FixedTime {
    /// Of a ride of a setup over its course, which took about `duration_s`.
    ///
    /// # Errors
    /// [`NoEffort`] where the rides beside it cannot be ridden.
    pub(crate) fn new(
        setup: &Setup,
        effort: Effort,
        ride: Paced,
        duration_s: f64,
    ) -> Result<Self, NoEffort> {
        const FURTHER: f64 = 1.02;
        let time_model = QuasiSteady::default();
        let distance_m = setup.course.distance_m();
        let time_over_s = |distance_m: f64| -> Result<f64, NoEffort> {
            let there = Setup {
                course: Rc::new(setup.course.scaled_to(distance_m)),
                ..setup.clone()
            };
            Ok(paced_from(&time_model, &there, effort, ride.power_w)?.time_s)
        };
        let (shorter_s, longer_s) = (
            time_over_s(distance_m / FURTHER)?,
            time_over_s(distance_m * FURTHER)?,
        );
        Ok(Self {
            duration_s,
            distance_m,
            exponent: (longer_s / shorter_s).ln() / (2.0 * FURTHER.ln()),
        })
    }

    /// How far a ride gets in the fixed time that takes `time_s` over the distance, m.
    fn reached_m(&self, time_s: f64) -> f64 {
        self.distance_m * pow(self.duration_s / time_s, 1.0 / self.exponent)
    }

    /// How much further a ride gets in the fixed time than another that takes `time_s` over the distance, if it is faster by so
    /// much; negative if it is slower. Its sd is that of the difference times the speed with which distance is gained there; the
    /// distance itself is fixed.
    pub(crate) fn further_m(&self, time_s: f64, faster_s: Figure) -> Figure {
        let faster_time_s = time_s - faster_s.value;
        let reached_m = self.reached_m(faster_time_s);
        let speed_m_s = reached_m / (self.exponent * faster_time_s);
        Figure {
            value: reached_m - self.reached_m(time_s),
            sd: faster_s.sd * speed_m_s,
        }
    }
}
