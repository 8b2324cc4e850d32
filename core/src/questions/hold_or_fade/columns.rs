//! Curves over the ride and over the share held.

use serde::Serialize;

use crate::inputs::quantity::Column;
use crate::numerics::solve::spaced;
use crate::physics::position::Position;
use crate::riding::fade_tie::Tie;
use crate::scenario::propagation::figure;
use crate::uncertainty::draws::Spread;

/// Curves over the ride and over the share held.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Times of the ride, s.
    pub time_s: Column,
    /// Drag area of the low position then, m².
    pub low_cda_m2: Column,
    /// Drag area of the steady one then, m².
    pub steady_cda_m2: Column,
    /// Shares of the ride held, from 0 to 1; none if the position is never lost.
    pub share: Column,
    /// How much faster the low position is then, s.
    pub difference_s: Column,
    /// One standard deviation of that, s.
    pub difference_sd_s: Column,
}

const TIME_POINTS: usize = 121;
const SHARE_POINTS: usize = 11;

impl Columns {
    /// Over the ride in the low position, and by share held.
    pub(super) fn new(
        low: &Position,
        steady: &Position,
        riding_s: f64,
        held: (Vec<f64>, Vec<f64>, Vec<f64>),
    ) -> Self {
        let times = spaced(0.0, riding_s, TIME_POINTS);
        Self {
            low_cda_m2: times.iter().map(|&t| low.cda_at_m2(t)).collect(),
            steady_cda_m2: times.iter().map(|&t| steady.cda_at_m2(t)).collect(),
            time_s: times.into(),
            share: held.0.into(),
            difference_s: held.1.into(),
            difference_sd_s: held.2.into(),
        }
    }
}

/// The difference against the share held, with its doubt between that of the position lost and that of it held.
pub(super) fn share_columns(tie: &Tie<'_>, spread: &Spread<4>) -> (Vec<f64>, Vec<f64>, Vec<f64>) {
    let position = &tie.low.position;
    let Some(lost_m2) = position.lost_cda_m2() else {
        return (Vec::new(), Vec::new(), Vec::new());
    };
    let shares = spaced(0.0, 1.0, SHARE_POINTS);
    let differences = shares
        .iter()
        .map(|&share| -tie.behind_s(position.held_for_share(share, lost_m2)))
        .collect();
    let sds = shares
        .iter()
        .map(|&share| figure(spread, |o| o[1] - share * o[2] - (1.0 - share) * o[3]).sd)
        .collect();
    (shares, differences, sds)
}
