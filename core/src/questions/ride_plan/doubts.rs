//! What is doubtful about a plan.

use super::with::{RecoveryForm, With};
use crate::inputs::error::Warning;
use crate::inputs::message;
use crate::riding::effort::Effort;
use crate::riding::integrated::Setup;
use crate::riding::optimal_pacing::{Fastest, PlanRide};
use crate::scenario::ride_doubts::long_doubts;

/// A road that falls more steeply than this is a descent.
const DESCENT_GRADE: f64 = -0.02;
/// An event shorter than this, s, needs a peak power.
const SHORT_S: f64 = 120.0;

/// What is doubtful about a plan; `without_recovery` is the plan of a few powers if nothing of W′ came back.
pub(super) fn doubts(
    setup: &Setup,
    plan: &Fastest<'_>,
    with: &With,
    without_recovery: &PlanRide,
) -> Vec<Warning> {
    let mut warnings = Vec::new();
    let mut warn = |field: &str, message| warnings.push(Warning::of(field, message));
    if !plan.converged {
        warn("with", message::plan_not_settled());
    }
    let segments = &setup.course.segments;
    if segments
        .iter()
        .any(|segment| segment.radius_m.is_some() || segment.slope.0 < DESCENT_GRADE)
    {
        warn("scenario.course", message::effort_not_speed());
    }
    if plan.ride.time_s < SHORT_S && setup.power.peak_w.is_none() {
        warn("scenario.power.peak_w", message::short_overstated());
    }
    let empty = without_recovery
        .passed
        .iter()
        .find(|passed| passed.w_prime_j < -1.0);
    if with.recovery != RecoveryForm::None
        && let Some(empty) = empty
    {
        let message = message::runs_out_without_recovery(empty.distance_m.round());
        warn("with.recovery", message);
    }
    long_doubts(setup, Effort::Even, plan.ride.time_s, &mut warnings);
    warnings
}
