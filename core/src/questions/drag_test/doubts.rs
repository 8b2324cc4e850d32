//! What is legal but doubtful about an estimate.

use super::answer::{CommonError, TestRow};
use super::differences::DragDifference;
use super::found::Found;
use super::wind_errors::WIND_SPEED;
use super::with::{WindForm, With};
use crate::inputs::error::Warning;
use crate::inputs::fields;
use crate::inputs::message::{self, in_tenths, in_thousandths};
use crate::measuring::estimate::Observation;
use crate::measuring::mixing::drift_share;
use crate::scenario::{Scenario, WindIs};

/// A wind that was left out is worth a word where 1 m/s of it moves the drag area by this share; assumed.
const WIND_MATTERS: f64 = 0.01;
/// Two speeds far enough apart to tell drag from rolling resistance within about 1.6 % where each is ridden five times.
const SLOW_LAP_M_S: f64 = 8.0;
const FAST_LAP_M_S: f64 = 12.0;
/// Laps of careful tests scatter by 1 to 3 % of their energy; common practice, no source.
const MOST_SCATTER: f64 = 0.05;
/// Where a steady drift could make up this share of a difference, it at least doubles the variance that the difference has in truth;
/// assumed.
const MOST_DRIFT: f64 = 0.5;
/// What common errors leave in a difference is worth a word where it is larger than this times its own standard deviation; assumed.
const MOST_COMMON: f64 = 1.0;
/// A difference smaller than this, m², is nothing that a rider acts on; assumed.
const LEAST_LEFT_M2: f64 = 0.000_5;

/// Whether a doubt about the scenario concerns a test, which is not ridden on the scenario's course nor at its power.
pub(super) fn is_of_the_test(warning: &Warning) -> bool {
    const PARTS: [&str; 3] = ["scenario.rider.", "scenario.bike.", "scenario.conditions."];
    warning.kind == "unusual" && PARTS.iter().any(|part| warning.field.starts_with(part))
}

/// What an estimate is doubted by.
pub(super) struct Told<'a> {
    pub found: &'a Found,
    pub rows: &'a [TestRow],
    /// What is estimated from, in the order in which it was ridden.
    pub ridden: &'a [Observation],
    pub common: &'a [CommonError],
    pub differences: &'a [DragDifference],
    pub scenario: &'a Scenario,
    pub with: &'a With,
}

/// What is doubtful about the estimate.
pub(super) fn doubts(told: &Told<'_>, warnings: &mut Vec<Warning>) {
    rolling(told.found, warnings);
    scatter(told, warnings);
    warnings.extend(wind(told));
    order(told, warnings);
    warnings.extend(not_cancelled(told.differences));
    let shown = &told.found.shown;
    for place in 0..shown.positions.len() {
        // No more digits than a warning has use for.
        let cda_m2 = 1e-4 * (1e4 * shown.cda_m2(place).value).round();
        warnings.extend(fields::CDA_M2.doubt("with.laps", cda_m2));
    }
}

/// A coefficient as exactly as it is told.
fn to_its_digits(coefficient: f64) -> f64 {
    (1e5 * coefficient).round() / 1e5
}

fn rolling(found: &Found, warnings: &mut Vec<Warning>) {
    let rolling = to_its_digits(found.shown.rolling_value());
    let field = &fields::ROLLING_COEFFICIENT;
    if let Some(impossible) = found.impossible_rolling {
        let is = to_its_digits(impossible);
        let message = message::rolling_impossible(is, field.min, field.max, rolling);
        warnings.push(Warning::of("with.rolling", message));
    } else if !found.identifiable {
        let message = message::rolling_not_told(rolling, SLOW_LAP_M_S, FAST_LAP_M_S);
        warnings.push(Warning::of("with.rolling", message));
    } else if found.shown.rolling().is_some() {
        warnings.extend(field.doubt("with.rolling", rolling));
    }
}

fn scatter(told: &Told<'_>, warnings: &mut Vec<Warning>) {
    let shown = &told.found.shown;
    if shown.degrees_of_freedom() == 0 {
        warnings.push(Warning::of("with.laps", message::no_spare_laps()));
    }
    if let Some(share) = shown.scatter_share().filter(|&share| share > MOST_SCATTER) {
        let message = message::laps_scatter(in_thousandths(share), MOST_SCATTER);
        warnings.push(Warning::of("with.laps", message));
    }
    if let Some(shares) = shown.unlike_scatter_shares() {
        let least = shares.iter().copied().fold(f64::INFINITY, f64::min);
        let most = shares.iter().copied().fold(0.0, f64::max);
        let message =
            message::positions_scatter_unlike(in_thousandths(least), in_thousandths(most));
        warnings.push(Warning::of("with.laps", message));
    }
    for row in told.rows.iter().filter(|row| row.outlier) {
        let message = message::outlying_lap(in_tenths(row.residual_w.unwrap_or(0.0).abs()));
        warnings.push(Warning::of(row.kind.path(row.index), message));
    }
}

/// A wind that was left out, or a calm that nobody measured, where it matters.
fn wind(told: &Told<'_>) -> Option<Warning> {
    let error = told.common.iter().find(|error| error.field == WIND_SPEED)?;
    if error.cda_share.abs() < WIND_MATTERS {
        return None;
    }
    let (share, wind_m_s) = (in_thousandths(error.cda_share.abs()), in_tenths(error.sd));
    let day = &told.scenario.conditions;
    let guessed_calm = day.wind_speed_m_s.value == 0.0 && day.wind_is == WindIs::Forecast;
    let message = match told.with.wind {
        WindForm::Ignore => message::ignored_wind_matters(share, wind_m_s),
        WindForm::Given if guessed_calm => message::calm_not_measured(share, wind_m_s),
        WindForm::Given | WindForm::Fit => return None,
    };
    Some(Warning::of("with.wind", message))
}

/// Positions that were ridden one after the other, so that a drift looks like their difference.
fn order(told: &Told<'_>, warnings: &mut Vec<Warning>) {
    let order: Vec<usize> = told.ridden.iter().map(|row| row.position).collect();
    let in_blocks = |pair: &&DragDifference| drift_share(&order, pair.a, pair.b) > MOST_DRIFT;
    if let Some(pair) = told.differences.iter().find(in_blocks) {
        let message = message::positions_in_blocks(pair.a + 1, pair.b + 1);
        warnings.push(Warning::of("with.laps", message));
    }
}

/// A difference in which common errors do not cancel.
fn not_cancelled(differences: &[DragDifference]) -> Option<Warning> {
    let left_m2 = |pair: &DragDifference| {
        let squares = pair.common.iter().map(|error| error.cda_m2 * error.cda_m2);
        squares.sum::<f64>().sqrt()
    };
    let matters = |pair: &&DragDifference| {
        let own = pair.cda_m2.sd;
        own.is_some_and(|sd| left_m2(pair) > (MOST_COMMON * sd).max(LEAST_LEFT_M2))
    };
    let pair = differences.iter().find(matters)?;
    let left_m2 = 1e-4 * (1e4 * left_m2(pair)).round();
    let message = message::difference_keeps_errors(pair.a + 1, pair.b + 1, left_m2);
    Some(Warning::of("with.laps", message))
}
