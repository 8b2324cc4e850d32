//! What each position's own efforts say, and what a position costs in power.

use serde::Serialize;

use super::efforts::Tests;
use super::held::Held;
use super::model_comparison::{KNOWN_FROM, best, compare, guessed, plausible, spans};
use super::models::{Curve, Effort, Model, Prior, fit};
use crate::inputs::quantity::Figure;

/// What the answer rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// The scenario's own CP and W′: there are no efforts that give a curve.
    Given,
    /// One effort, or several of one length, and riders' usual W′.
    Guessed,
    /// Efforts.
    Fitted,
}

/// A position's own curve, and what it costs beside the one asked for.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PositionCurve {
    /// Which.
    pub position: usize,
    /// How many efforts were ridden in it.
    pub efforts: usize,
    /// What its curve rests on; guessed where its W′ is taken from the position asked for, or from riders at large.
    pub basis: Basis,
    /// CP, W; `null` without a curve.
    pub cp_w: Option<Figure>,
    /// W′, J.
    pub w_prime_j: Option<Figure>,
    /// CP less that of the position asked for, W; `null` for that one itself.
    pub cp_change_w: Option<Figure>,
    /// CP over that of the position asked for.
    pub cp_factor: Option<Figure>,
    /// Power less that of the position asked for, at some times.
    pub at: Vec<ChangeAt>,
}

/// A change of power at a time.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ChangeAt {
    /// The time, s.
    pub time_s: f64,
    /// The change, W; negative for a position that costs power.
    pub change_w: Figure,
    /// The change as a share of the power in the position asked for.
    pub change_share: f64,
    /// Whether it is beyond the efforts of either.
    pub beyond: bool,
}

/// Five minutes, twenty, and an hour.
const TIMES_S: [f64; 3] = [300.0, 1200.0, 3600.0];
/// How well the W′ of one position is known from another's, as a share: our own choice, wider than the repeatability of W′.
const W_PRIME_SHARE: f64 = 0.1;

/// Every position that has efforts, with its curve, in the form that rides use. The errors of efforts in different positions are
/// taken as independent.
pub(crate) fn curves(
    groups: &[Tests],
    asked: usize,
    long_ride_from_s: f64,
    test_share: f64,
) -> Vec<(PositionCurve, Option<Held>)> {
    let base = groups.iter().find(|tests| tests.position == asked);
    let base_curve = base.and_then(|tests| own_curve(tests, long_ride_from_s, None));
    let longest_s = |tests: &Tests| tests.used.iter().map(|e| e.duration_s).fold(0.0, f64::max);
    let one = |tests: &Tests| {
        let itself = tests.position == asked;
        let found = if itself {
            base_curve.clone()
        } else {
            own_curve(tests, long_ride_from_s, base_curve.as_ref())
        };
        let basis = found.as_ref().map_or(Basis::Given, |(basis, _)| *basis);
        let held = found.map(|(_, curve)| Held::fitted(&curve, test_share));
        let (cp_w, w_prime_j) = (
            held.as_ref().and_then(|h| h.parameter(0)),
            held.as_ref().and_then(|h| h.parameter(1)),
        );
        let base_held = base_curve
            .as_ref()
            .filter(|_| !itself)
            .map(|(_, curve)| Held::fitted(curve, test_share));
        let base_cp_w = base_held.as_ref().and_then(|held| held.parameter(0));
        let both_cp = cp_w.zip(base_cp_w);
        let reached_s = base.map_or(0.0, longest_s).min(longest_s(tests));
        let at = match (&held, &base_held) {
            (Some(held), Some(base)) => {
                let change = |time_s: f64| {
                    let (there, here) = (held.power_w(time_s), base.power_w(time_s));
                    let change_w = there.less(here);
                    let change_share = if here.value > 0.0 {
                        change_w.value / here.value
                    } else {
                        0.0
                    };
                    ChangeAt {
                        time_s,
                        change_w,
                        change_share,
                        beyond: time_s > reached_s,
                    }
                };
                TIMES_S.map(change).to_vec()
            }
            _ => Vec::new(),
        };
        let curve = PositionCurve {
            position: tests.position,
            efforts: tests.all.len(),
            basis,
            cp_w,
            w_prime_j,
            cp_change_w: both_cp.map(|(there, here)| there.less(here)),
            cp_factor: both_cp.map(|(there, here)| there.over(here)),
            at,
        };
        (curve, held)
    };
    groups.iter().map(one).collect()
}

/// The curve that a position's efforts give, in the form that rides use.
fn own_curve(
    tests: &Tests,
    long_ride_from_s: f64,
    base: Option<&(Basis, Curve)>,
) -> Option<(Basis, Curve)> {
    if tests.used.is_empty() {
        return None;
    }
    if spans(&tests.used) {
        let compared = compare(&tests.used, long_ride_from_s);
        if let Some(curve) = best(&compared).and_then(|one| one.curve.clone()) {
            return Some((Basis::Fitted, curve));
        }
    }
    let like_base = base.and_then(|(_, base)| like(&tests.used, base));
    like_base
        .or_else(|| guessed(&tests.used, long_ride_from_s))
        .map(|curve| (Basis::Guessed, curve))
}

/// A curve through efforts of one length with the W′ of another position.
///
/// Source: kordi-2019: position lowers CP and leaves W′ alone.
fn like(efforts: &[Effort], base: &Curve) -> Option<Curve> {
    let w_prime_j = base.power_duration()?.w_prime_j;
    let sd = base.parameter_sd(1).hypot(W_PRIME_SHARE * w_prime_j);
    let prior = Prior {
        parameter: 1,
        share_of: None,
        value: w_prime_j,
        sd,
    };
    let fit = fit(Model::TwoParameter, efforts, &[prior]).ok()?;
    let curve = Curve::new(Model::TwoParameter, fit, KNOWN_FROM, 1);
    plausible(curve.model, &curve.fit.parameters).then_some(curve)
}
