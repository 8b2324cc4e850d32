//! Speed where the device recorded none.

use crate::columns::Column;
use crate::notes;
use crate::raw::Raw;

/// Fills the column of speed from distance and time, where no record has one: from the record before to the one after.
pub(crate) fn fill_in(raw: &mut Raw) {
    let columns = &raw.columns;
    if columns.has(Column::Speed) || !columns.has(Column::Time) || !columns.has(Column::Distance) {
        return;
    }
    let (time_s, distance_m) = (columns.get(Column::Time), columns.get(Column::Distance));
    let speed_m_s = (0..time_s.len())
        .map(|at| {
            let (from, to) = (at.saturating_sub(1), (at + 1).min(time_s.len() - 1));
            let speed_m_s = (distance_m[to] - distance_m[from]) / (time_s[to] - time_s[from]);
            if speed_m_s.is_finite() {
                speed_m_s
            } else {
                f64::NAN
            }
        })
        .collect();
    raw.columns.set(Column::Speed, speed_m_s);
    raw.notes.push(notes::speed_from_distance());
}
