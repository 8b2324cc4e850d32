//! Two positions over one ride: which has the smaller drag area, and when.

use super::position::{Fade, Lapses, Position};
use crate::inputs::fields;
use crate::numerics::solve::{root, within};

/// The low position where a difference from the steady one was measured: its fresh drag area follows the steady one's, and
/// what it is once lost moves with them, since one test's error of scale is common to all drag areas.
pub(crate) fn below(low: &Position, steady_m2: f64, kept_m2: f64, lower_by_m2: f64) -> Position {
    let moved = |cda_m2: f64| {
        within(
            cda_m2 + steady_m2 - kept_m2,
            fields::CDA_M2.min,
            fields::CDA_M2.max,
        )
    };
    let fade = low.fade.map(|fade| Fade {
        tired_cda_m2: moved(fade.tired_cda_m2),
        ..fade
    });
    let lapses = low.lapses.map(|lapses| Lapses {
        cda_m2: moved(lapses.cda_m2),
        ..lapses
    });
    Position {
        cda_m2: moved(kept_m2 - lower_by_m2),
        fade,
        lapses,
        ..low.clone()
    }
}

/// Areas between two drag areas over a ride, m² s.
pub(crate) struct Area {
    /// What the fresh low position is below the steady one's mean, m².
    pub(crate) fresh: f64,
    /// While the low one is the lower.
    pub(crate) below: f64,
}

impl Area {
    /// Over a ride of this time, by the midpoint rule.
    pub(crate) fn between(low: &Position, steady: &Position, time_s: f64) -> Self {
        const SLICES: usize = 600;
        let slice_s = time_s / SLICES as f64;
        let below = (0..SLICES)
            .map(|i| (i as f64 + 0.5) * slice_s)
            .map(|t| (steady.cda_at_m2(t) - low.cda_at_m2(t)).max(0.0) * slice_s)
            .sum();
        Self {
            fresh: steady.mean_cda_m2(time_s) - low.cda_m2,
            below,
        }
    }
}

/// The share of a ride for which a position is held, in equal effect on its mean drag area; `None` where it is never lost.
pub(crate) fn held_share(low: &Position, time_s: f64) -> Option<f64> {
    let lost_m2 = low.lost_cda_m2()?;
    let share = 1.0 - (low.mean_cda_m2(time_s) - low.cda_m2) / (lost_m2 - low.cda_m2);
    share.is_finite().then_some(share)
}

/// When a position's drag area passes another's, s.
pub(crate) fn passes_s(low: &Position, steady: &Position, time_s: f64) -> Option<f64> {
    root(
        |t| low.cda_at_m2(t) - steady.cda_at_m2(t),
        0.0,
        time_s,
        1e-9,
    )
    .ok()
}
