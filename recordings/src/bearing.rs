//! The direction of travel from positions.

use crate::columns::Column;
use crate::geodesy::step_m;
use crate::raw::Raw;

/// A direction is taken over at least this distance, since positions are uncertain by a few metres.
const LEAST_STEP_M: f64 = 5.0;

/// Fills the column of bearings: each record has that of the step in which it lies.
pub(crate) fn fill_in(raw: &mut Raw) {
    let columns = &raw.columns;
    let positions: Vec<(f64, f64)> = columns
        .get(Column::Latitude)
        .iter()
        .copied()
        .zip(columns.get(Column::Longitude).iter().copied())
        .collect();
    let mut bearings = vec![f64::NAN; positions.len()];
    let mut anchor: Option<usize> = None;
    for (at, position) in positions.iter().enumerate() {
        if position.0.is_nan() {
            continue;
        }
        let Some(from) = anchor else {
            anchor = Some(at);
            continue;
        };
        let (north_m, east_m) = step_m(positions[from], *position);
        if north_m * north_m + east_m * east_m >= LEAST_STEP_M * LEAST_STEP_M {
            let bearing_deg = east_m.atan2(north_m).to_degrees();
            let bearing_deg = if bearing_deg < 0.0 {
                bearing_deg + 360.0
            } else {
                bearing_deg
            };
            bearings[from..at].fill(bearing_deg);
            bearings[at] = bearing_deg;
            anchor = Some(at);
        }
    }
    raw.columns.set(Column::Bearing, bearings);
}
