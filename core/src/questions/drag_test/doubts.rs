//! What is legal but doubtful about a test.

use super::answer::{CommonError, RowLeftOut, TestRow};
use super::found::Found;
use super::rows::Rows;
use super::with::{WindForm, With};
use crate::inputs::error::Warning;
use crate::inputs::fields;
use crate::inputs::message::{self, in_thousandths};

/// A wind that was left out is worth a word where 1 m/s of it moves the drag area by this share; assumed.
const WIND_MATTERS: f64 = 0.01;
/// Two speeds far enough apart to tell drag from rolling resistance within about 1.6 % where each is ridden five times.
const SLOW_LAP_M_S: f64 = 8.0;
const FAST_LAP_M_S: f64 = 12.0;
/// Laps of careful tests scatter by 1 to 3 % of their energy; common practice, no source.
const MOST_SCATTER: f64 = 0.05;

/// Whether a doubt about the scenario concerns a test, which is not ridden on the scenario's course nor at its power.
pub(super) fn is_of_the_test(warning: &Warning) -> bool {
    const PARTS: [&str; 3] = ["scenario.rider.", "scenario.bike.", "scenario.conditions."];
    warning.kind == "unusual" && PARTS.iter().any(|part| warning.field.starts_with(part))
}

/// Rows that were left out for what is in them.
pub(super) fn left_out(rows: &Rows, warnings: &mut Vec<Warning>) {
    for row in rows.all.iter().map(|tested| &tested.row) {
        let number = row.index + 1;
        let message = match row.left_out {
            Some(RowLeftOut::Braking) => message::lap_braked(number, row.braking_s),
            Some(RowLeftOut::Stopped) => message::lap_stopped(number, row.stopped_s),
            Some(RowLeftOut::Dropout) => message::lap_dropout(number, row.dropout_s),
            Some(RowLeftOut::Excluded) | None => continue,
        };
        warnings.push(Warning::of(row.kind.path(row.index), message));
    }
}

/// What is doubtful about the estimate.
pub(super) fn doubts(
    found: &Found,
    rows: &[TestRow],
    common: &[CommonError],
    with: &With,
    warnings: &mut Vec<Warning>,
) {
    let shown = &found.shown;
    if !found.identifiable {
        let message = message::rolling_not_told(shown.rolling_value(), SLOW_LAP_M_S, FAST_LAP_M_S);
        warnings.push(Warning::of("with.rolling", message));
    }
    if shown.degrees_of_freedom() == 0 {
        warnings.push(Warning::of("with.laps", message::no_spare_laps()));
    }
    if let Some(share) = shown.scatter_share().filter(|&share| share > MOST_SCATTER) {
        let message = message::laps_scatter(in_thousandths(share), MOST_SCATTER);
        warnings.push(Warning::of("with.laps", message));
    }
    for row in rows.iter().filter(|row| row.outlier) {
        let message = message::outlying_lap(row.residual_w.unwrap_or(0.0));
        warnings.push(Warning::of(row.kind.path(row.index), message));
    }
    if with.wind == WindForm::Ignore
        && let Some(wind) = common
            .iter()
            .find(|error| error.field == "scenario.conditions.wind_speed_m_s")
        && wind.cda_share.abs() >= WIND_MATTERS
    {
        let share = in_thousandths(wind.cda_share.abs());
        let message = message::ignored_wind_matters(share, wind.sd);
        warnings.push(Warning::of("with.wind", message));
    }
    for place in 0..shown.positions.len() {
        warnings.extend(fields::CDA_M2.doubt("with.laps", shown.cda_m2(place).value));
    }
}
