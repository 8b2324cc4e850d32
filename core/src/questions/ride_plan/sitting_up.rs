//! What sitting up on steep climbs does to a plan.

use serde::Serialize;

use super::with::SitUp;
use crate::inputs::error::Error;
use crate::inputs::quantity::Figure;
use crate::riding::effort::Paced;
use crate::riding::optimal_pacing::sitting_up::{self, gained_at_steady_speeds_s, pays_from_grade};
use crate::riding::optimal_pacing::{Allowed, Fastest, fastest};
use crate::scenario::propagation::Case;

/// A climb on which the rider sits up.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Climb {
    /// Where it begins, m from the start.
    pub from_m: f64,
    /// Where it ends, m.
    pub to_m: f64,
}

/// What sitting up does.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SittingUp {
    /// Where the rider sits up, in the order ridden: on climbs of 200 m and more.
    pub climbs: Vec<Climb>,
    /// Seconds by which the fastest plan that sits up is the faster one against the fastest that does not, with what the inputs
    /// leave in doubt.
    pub faster_by_s: Figure,
    /// The grade from which sitting up is the faster in calm air at the power of the even effort; `null` where it is so
    /// everywhere or nowhere.
    pub pays_from_grade: Option<f64>,
}

/// The plan of a rider who sits up, beside the one without.
pub(super) struct Compared<'a> {
    how: &'a sitting_up::SitUp,
    plan: &'a Fastest<'a>,
    /// Seconds that sitting up gains.
    gained_s: f64,
}

impl<'a> Compared<'a> {
    /// `None` where no plan without sitting up is found.
    pub(super) fn new(
        how: &'a sitting_up::SitUp,
        allowed: &Allowed,
        plan: &'a Fastest<'a>,
        even: Paced,
    ) -> Option<Self> {
        let staying_low = Allowed {
            sit_up: None,
            ..*allowed
        };
        let low = fastest(plan.road.setup, &staying_low, even)?;
        Some(Self {
            how,
            plan,
            gained_s: low.ride.time_s - plan.ride.time_s,
        })
    }

    /// The gain of a rider who may not be as believed, s, at steady speeds: its moves are those of the gain itself to some
    /// percent. The question's own inputs are those of sitting up.
    pub(super) fn gained_in_s(&self, case: &Case<'_>, position: usize) -> Result<f64, Error> {
        let setup = case.setup(position)?;
        let [cda_m2, cp_gain_share] = *case.own else {
            return Ok(0.0);
        };
        let upright = SitUp::upright(&setup.position, cda_m2, cp_gain_share);
        let Fastest { road, ride, .. } = self.plan;
        Ok(gained_at_steady_speeds_s(road, ride, &setup, &upright))
    }

    /// The answer, with one standard deviation of the gain, s.
    pub(super) fn answer(&self, even_w: f64, sd_s: f64) -> SittingUp {
        let setup = self.plan.road.setup;
        let climbs = self.how.climbs_m(&setup.course);
        SittingUp {
            climbs: climbs
                .into_iter()
                .map(|(from_m, to_m)| Climb { from_m, to_m })
                .collect(),
            faster_by_s: Figure {
                value: self.gained_s,
                sd: sd_s,
            },
            pays_from_grade: pays_from_grade(setup, &self.how.upright, even_w),
        }
    }
}
