//! The curve of a plan.

use serde::Serialize;

use super::with::PlanForm;
use crate::measuring::plan::smallest_shares;

/// How many runs show how small a difference.
#[derive(Clone, Debug, Default, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Runs in each position.
    pub runs: Vec<f64>,
    /// The smallest difference that they show as often as asked for, as a share of the drag area.
    pub smallest_share: Vec<f64>,
}

/// The most runs in each position that the plan's curve goes to.
const CURVE_RUNS: u32 = 60;

/// What so many runs in each position show.
pub(super) fn curve(plan: &PlanForm) -> Columns {
    let (runs, smallest_share) = smallest_shares(plan.run_cv_share, plan.power, CURVE_RUNS)
        .into_iter()
        .unzip();
    Columns {
        runs,
        smallest_share,
    }
}
