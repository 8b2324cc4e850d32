//! What training buys, beside the test that would have to show it.

use serde::Serialize;

use super::with::With;
use crate::inputs::published::PUBLISHED;
use crate::numerics::distributions::{Certainty, MOST_RUNS, NORMAL_REACH_95, runs_per_group};
use crate::physiology::held::Held;

/// A block of training as published, beside the test that would have to show it.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Training {
    /// The published rise of power, as shares, the least and the most.
    pub rise_share: [f64; 2],
    /// What it adds at the time asked for, W.
    pub rise_w: [f64; 2],
    /// How long today's power for that time could then be held, s; `null` for ever.
    pub held_s: [Option<f64>; 2],
    /// Two tests differ by less than this from chance alone, 19 times in 20, as a share.
    pub shown_share: f64,
    /// How many tests before and as many after show the least and the most rise: if it is real, 4 times in 5, and if it is not, 1
    /// time in 20 (a two-sided t-test, [`Certainty::USUAL`]).
    pub tests: [u32; 2],
}

impl Training {
    /// At the time asked for.
    pub(super) fn new(with: &With, held: &Held) -> Self {
        let power_w = held.power_w(with.hold_s).value;
        let shown_share = NORMAL_REACH_95 * std::f64::consts::SQRT_2 * with.test_error_share;
        let tests = |rise: f64| {
            runs_per_group(rise / with.test_error_share, Certainty::USUAL)
                .map_or(MOST_RUNS, |enough| enough.runs)
        };
        Self {
            rise_share: PUBLISHED.four_weeks_peak_gain,
            rise_w: PUBLISHED.four_weeks_peak_gain.map(|rise| rise * power_w),
            held_s: PUBLISHED.four_weeks_peak_gain.map(|rise| {
                held.held_s(with.hold_s, 1.0, 1.0 + rise)
                    .map(|held| held.value)
            }),
            shown_share,
            tests: PUBLISHED.four_weeks_peak_gain.map(tests),
        }
    }
}
