//! What stops on the way do to a plan: they make every finish time later by what they cost the even effort.
//!
//! The plan itself is made for the road without them: they hardly change which power is best between them, and the rest is not
//! credited, so that W′ is after a stop what it was before. Drag area while eating and drinking is the plan's own.

use serde::Serialize;

use super::answer::Answer;
use crate::riding::effort::Paced;
use crate::riding::integrated::Setup;

/// Stops on the way.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PlanStops {
    /// How many there are.
    pub number: usize,
    /// From the start to the first, and from each to the next, m.
    pub every_m: f64,
    /// What they cost together, s: standing, braking and starting again. Every finish time has it.
    pub costs_s: f64,
}

impl PlanStops {
    /// Those of a ride, by its best even effort with them and without.
    pub(super) fn of(setup: &Setup, with: Paced, without: Paced) -> Option<Self> {
        let stops = setup.stops?;
        let number = stops.number(setup.course.distance_m());
        (number > 0).then_some(Self {
            number,
            every_m: stops.every_m,
            costs_s: with.time_s - without.time_s,
        })
    }

    /// How much later a rider comes to a place on the road, s.
    fn later_s(&self, distance_m: f64) -> f64 {
        let passed = ((distance_m / self.every_m).ceil() - 1.0).max(0.0);
        self.costs_s * (passed / self.number as f64).min(1.0)
    }
}

impl Answer {
    /// The same plans with these stops on the way.
    pub(super) fn stopping(mut self, stops: Option<PlanStops>) -> Self {
        let Some(stops) = stops else {
            return self;
        };
        let later_s = stops.costs_s;
        for plan in [&mut self.simple, &mut self.robust] {
            plan.time_s += later_s;
            plan.mean_time_s += later_s;
        }
        for hard in [&mut self.cp_lower.on_plan]
            .into_iter()
            .chain(&mut self.overshoot)
        {
            hard.time_s += later_s;
        }
        if let Some(riders) = &mut self.riders {
            riders.simple_mean_time_s += later_s;
            riders.robust_mean_time_s += later_s;
        }
        if let Some(time_s) = &mut self.cp_lower.even_time_s {
            *time_s += later_s;
        }
        self.even.time_s += later_s;
        self.fastest.time_s += later_s;
        self.finish_s.value += later_s;
        let columns = &mut self.columns;
        let along = columns.distance_m.0.iter().zip(&columns.time_s.0);
        columns.time_s = along
            .map(|(distance_m, time_s)| time_s + stops.later_s(*distance_m))
            .collect();
        self.stops = Some(stops);
        self
    }
}
