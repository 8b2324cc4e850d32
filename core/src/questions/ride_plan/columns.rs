//! Curves of the plans along the road.

use super::answer::Columns;
use crate::physics::course::Segment;
use crate::riding::optimal_pacing::simple_plan::{Cue, power_at_w};
use crate::riding::optimal_pacing::{Fastest, PlanRide};

/// The curves of a fastest plan beside two plans of a few powers.
pub(super) fn columns(
    plan: &Fastest<'_>,
    simple: &[Cue],
    simple_ride: &PlanRide,
    robust: &[Cue],
) -> Columns {
    let passed = &plan.ride.passed;
    let segments = &plan.road.setup.course.segments;
    let last = plan.road.cells.len().saturating_sub(1);
    // At the finish stands what the last piece has.
    let cells = || (0..passed.len()).map(|k| k.min(last));
    Columns {
        distance_m: passed.iter().map(|p| p.distance_m).collect(),
        power_w: passed.iter().map(|p| p.power_w).collect(),
        speed_m_s: passed.iter().map(|p| p.speed_m_s()).collect(),
        w_prime_j: passed.iter().map(|p| p.w_prime_j).collect(),
        time_s: passed.iter().map(|p| p.time_s).collect(),
        grade: cells()
            .filter_map(|k| segments.get(plan.road.cells[k].segment))
            .map(Segment::grade)
            .collect(),
        ahead_s: plan
            .even
            .passed
            .iter()
            .zip(passed)
            .map(|(even, fastest)| even.time_s - fastest.time_s)
            .collect(),
        simple_power_w: cells().map(|k| power_at_w(simple, k)).collect(),
        simple_w_prime_j: simple_ride.passed.iter().map(|p| p.w_prime_j).collect(),
        robust_power_w: cells().map(|k| power_at_w(robust, k)).collect(),
    }
}
