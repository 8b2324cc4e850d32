//! Every two positions of a test compared.

use serde::Serialize;

use super::answer::TestFigure;
use crate::measuring::estimate::Estimate;

/// What the drag area of one position has beyond another's.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct DragDifference {
    /// The position that is compared with.
    pub a: usize,
    /// The other one.
    pub b: usize,
    /// The drag area of `b` less that of `a`, m²: what both share has cancelled.
    pub cda_m2: TestFigure,
    /// What of the common errors does not cancel in it, in the order of the answer's `common`: next to nothing where both positions
    /// were ridden on one road at the same speeds.
    pub common: Vec<DifferenceError>,
}

/// What an error that the whole test has in common leaves in a difference.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct DifferenceError {
    /// The input's path in the request.
    pub field: String,
    /// One standard deviation of it, in its unit.
    pub sd: f64,
    /// By how much the difference comes out higher where the input was taken that much too high, m².
    pub cda_m2: f64,
}

/// Every two of its positions compared; `common` says what a common error leaves in the difference of two places.
pub(super) fn differences(
    estimate: &Estimate,
    common: impl Fn(usize, usize) -> Vec<DifferenceError>,
) -> Vec<DragDifference> {
    let found = &estimate.positions;
    let pair = |first: usize, second: usize| DragDifference {
        a: found[first],
        b: found[second],
        cda_m2: estimate.difference_m2(second, first).into(),
        common: common(first, second),
    };
    (0..found.len())
        .flat_map(|first| (first + 1..found.len()).map(move |second| (first, second)))
        .map(|(first, second)| pair(first, second))
        .collect()
}
