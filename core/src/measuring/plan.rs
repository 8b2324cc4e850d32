//! How many runs a test needs.

use crate::numerics::distributions::{Certainty, pairs, runs_per_group, smallest_difference};

/// What a test of two positions takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Planned {
    /// Runs in each position that show the difference, and how often they do; `None` beyond
    /// [`MOST_RUNS`](crate::numerics::distributions::MOST_RUNS).
    pub runs: Option<(u32, f64)>,
    /// The same for pairs of runs that have nothing in common beyond the positions.
    pub pairs: Option<(u32, f64)>,
    /// The smallest difference that so many runs, or those that the rider means to do, show, as a share of the drag area.
    pub smallest_share: Option<f64>,
}

/// Plans a two-sided t-test at the 5 % level: the difference between two positions and the scatter of one run are shares of the
/// drag area.
pub fn planned(difference_share: f64, run_cv_share: f64, power: f64, runs: Option<u32>) -> Planned {
    let certainty = Certainty {
        power,
        ..Certainty::USUAL
    };
    let difference = difference_share / run_cv_share;
    let enough = runs_per_group(difference, certainty).map(|found| (found.runs, found.power));
    Planned {
        runs: enough,
        pairs: pairs(difference, certainty).map(|found| (found.runs, found.power)),
        smallest_share: runs
            .or(enough.map(|(runs, _)| runs))
            .and_then(|runs| smallest_difference(runs, certainty))
            .map(|smallest| smallest * run_cv_share),
    }
}

/// For every number of runs in each position, from 2 to `most`, the smallest difference that they show, as a share of the drag area.
pub fn smallest_shares(run_cv_share: f64, power: f64, most: u32) -> Vec<(f64, f64)> {
    let certainty = Certainty {
        power,
        ..Certainty::USUAL
    };
    (2..=most)
        .filter_map(|runs| {
            Some((
                f64::from(runs),
                smallest_difference(runs, certainty)? * run_cv_share,
            ))
        })
        .collect()
}
