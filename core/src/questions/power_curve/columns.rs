//! Curves over time.

use serde::Serialize;

use super::answer::Marked;
use super::with::With;
use crate::inputs::quantity::Column;
use crate::numerics::solve::spaced_log;
use crate::physiology::efforts::Tests;
use crate::physiology::held::Held;
use crate::physiology::model_comparison::{Compared, ModelName, SHORT_S};
use crate::physiology::models::{Curve, LOG_DECLINE_FROM_S};
use crate::physiology::position_curves::PositionCurve;

/// Curves over time.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Times, s, evenly spaced in their logarithm.
    pub time_s: Column,
    /// Power that can be held, W.
    pub power_w: Column,
    /// The curve's own band of 95 %, W.
    pub curve_low_w: Column,
    /// Its upper edge.
    pub curve_high_w: Column,
    /// Where a test would come out, 19 times in 20, W.
    pub test_low_w: Column,
    /// The upper edge.
    pub test_high_w: Column,
    /// The two-parameter model; empty if it was not fitted, as the following.
    pub two_parameter_w: Column,
    /// The three-parameter model.
    pub three_parameter_w: Column,
    /// The omni-domain model.
    pub omni_domain_w: Column,
    /// The logarithmic decline, at the times past seven minutes, which are the last ones.
    pub log_decline_w: Column,
    /// The power law.
    pub power_law_w: Column,
    /// The curve of every position in `positions`, one after the other.
    pub positions_w: Column,
}

const CURVE_POINTS: usize = 121;

impl Columns {
    /// Of the curve read, every model and every position.
    pub(super) fn new(
        with: &With,
        held: &Held,
        compared: &[Compared],
        tests: &Tests,
        events: &[Marked],
        positions: &[(PositionCurve, Option<Held>)],
    ) -> Self {
        let times = times(with, tests, events);
        let band = |sd_w: &dyn Fn(f64) -> f64, side: f64| -> Column {
            times
                .iter()
                .map(|&t| (held.power_w(t).value + side * held.reach * sd_w(t)).max(0.0))
                .collect()
        };
        let curve_sd = |t: f64| held.power_w(t).sd;
        let test_sd = |t: f64| held.test_sd_w(t);
        let of = |name: ModelName| -> Column {
            let curve = compared
                .iter()
                .find(|one| one.name == name)
                .and_then(|one| one.curve.as_ref());
            let from_s = if name == ModelName::LogDecline {
                LOG_DECLINE_FROM_S
            } else {
                0.0
            };
            let power_w = |curve: &Curve| {
                times
                    .iter()
                    .filter(|&&t| t >= from_s)
                    .map(|&t| curve.power_w(t).0.max(0.0))
                    .collect()
            };
            curve.map(power_w).unwrap_or_default()
        };
        let of_position = |(_, held): &(PositionCurve, Option<Held>)| -> Vec<f64> {
            held.iter()
                .flat_map(|held| times.iter().map(|&t| held.power_w(t).value))
                .collect()
        };
        Self {
            power_w: times.iter().map(|&t| held.power_w(t).value).collect(),
            curve_low_w: band(&curve_sd, -1.0),
            curve_high_w: band(&curve_sd, 1.0),
            test_low_w: band(&test_sd, -1.0),
            test_high_w: band(&test_sd, 1.0),
            two_parameter_w: of(ModelName::TwoParameter),
            three_parameter_w: of(ModelName::ThreeParameter),
            omni_domain_w: of(ModelName::OmniDomain),
            log_decline_w: of(ModelName::LogDecline),
            power_law_w: of(ModelName::PowerLaw),
            positions_w: positions.iter().flat_map(of_position).collect(),
            time_s: times.into(),
        }
    }
}

/// The times that curves are drawn over: a little shorter than the shortest effort (or two minutes), a little longer than
/// the longest effort, event or time asked for (or two hours).
fn times(with: &With, tests: &Tests, events: &[Marked]) -> Vec<f64> {
    let efforts = tests.all.iter().map(|(_, effort)| effort.duration_s);
    let all = efforts.chain([with.hold_s]);
    let shortest_s = all.clone().fold(SHORT_S, f64::min);
    let longest_s = all
        .chain(events.iter().map(|event| event.time_s))
        .fold(7200.0 / 1.15, f64::max);
    spaced_log(
        (0.8 * shortest_s).max(1.0),
        (1.15 * longest_s).min(2e5),
        CURVE_POINTS,
    )
}
