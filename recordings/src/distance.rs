//! Distance along the road: the device's own, or worked out from positions or from speed.

use crate::columns::Column;
use crate::geodesy::distance_m;
use crate::notes;
use crate::raw::Raw;

/// Steps between positions that are faster than this are told; nobody rides so fast.
const FASTEST_M_S: f64 = 40.0;

/// Fills the column of distance from what the device gave or from positions, from zero at its first value. The records are
/// still all there, in the order of the file: one without a time has its place on the road all the same.
pub(crate) fn repair(raw: &mut Raw) {
    without_zeros(raw);
    let own = raw.columns.get(Column::Distance);
    let is_given = own.iter().filter(|value| !value.is_nan()).take(2).count() == 2;
    let has_positions = raw.columns.has(Column::Latitude) && raw.columns.has(Column::Longitude);
    let metres = if is_given {
        let (metres, note_counts) = of_device(own);
        let notes = [
            notes::distance_reset as fn(usize) -> _,
            notes::distance_back,
        ];
        for (count, note) in note_counts.into_iter().zip(notes) {
            if count > 0 {
                raw.notes.push(note(count));
            }
        }
        metres
    } else if has_positions {
        raw.notes.push(notes::distance_from_positions());
        of_positions(raw)
    } else {
        return;
    };
    raw.columns.set(Column::Distance, metres);
}

/// Fills the column from speed where it is still empty; wants records in order of time.
pub(crate) fn or_from_speed(raw: &mut Raw) {
    if raw.columns.has(Column::Distance) {
        return;
    }
    if !raw.columns.has(Column::Speed) || !raw.columns.has(Column::Time) {
        raw.notes.push(notes::no_distance());
        return;
    }
    let metres = of_speed(
        raw.columns.get(Column::Time),
        raw.columns.get(Column::Speed),
    );
    raw.columns.set(Column::Distance, metres);
    raw.notes.push(notes::distance_from_speed());
}

/// Where a receiver has no fix, some devices write latitude 0 and longitude 0, which lies in the sea.
fn without_zeros(raw: &mut Raw) {
    let (mut latitude, mut longitude) = (
        raw.columns.get(Column::Latitude).to_vec(),
        raw.columns.get(Column::Longitude).to_vec(),
    );
    let mut zeros = 0;
    for (north, east) in latitude.iter_mut().zip(&mut longitude) {
        if *north == 0.0 && *east == 0.0 {
            zeros += 1;
        }
        if (*north == 0.0 && *east == 0.0) || north.is_nan() || east.is_nan() {
            (*north, *east) = (f64::NAN, f64::NAN);
        }
    }
    if zeros > 0 {
        raw.notes.push(notes::at_zero(zeros));
    }
    raw.columns.set(Column::Latitude, latitude);
    raw.columns.set(Column::Longitude, longitude);
}

/// A device's distance that neither begins anew nor goes back, and how often it did each.
fn of_device(own: &[f64]) -> (Vec<f64>, [usize; 2]) {
    let (mut carried, mut last_own, mut last, mut resets, mut backs) = (f64::NAN, 0.0, 0.0, 0, 0);
    let follow = |&value: &f64| {
        if value.is_nan() {
            return f64::NAN;
        }
        if carried.is_nan() {
            carried = -value;
        } else if value < 0.5 * last_own {
            resets += 1;
            carried = last - value;
        } else if value + carried < last {
            backs += 1;
        }
        last_own = value;
        last = f64::max(last, value + carried);
        last
    };
    let metres = own.iter().map(follow).collect();
    (metres, [resets, backs])
}

/// Legs between positions, but not from one part of the track to the next.
fn of_positions(raw: &mut Raw) -> Vec<f64> {
    let columns = &raw.columns;
    let positions = columns
        .get(Column::Latitude)
        .iter()
        .zip(columns.get(Column::Longitude));
    let times = columns.get(Column::Time);
    let mut parts = raw.parts.iter().peekable();
    let mut last: Option<((f64, f64), f64)> = None;
    let (mut metres, mut left_out_m, mut jumps) = (0.0, 0.0, 0);
    let mut begins_part = false;
    let mut column = Vec::with_capacity(times.len());
    for (at, (&north, &east)) in positions.enumerate() {
        begins_part |= parts.next_if(|part| **part == at).is_some();
        if north.is_nan() {
            column.push(f64::NAN);
            continue;
        }
        if let Some((before, before_s)) = last {
            let leg_m = distance_m(before, (north, east));
            if begins_part {
                left_out_m += leg_m;
            } else {
                metres += leg_m;
                jumps += usize::from(leg_m > FASTEST_M_S * (times[at] - before_s));
            }
        }
        begins_part = false;
        last = Some(((north, east), times[at]));
        column.push(metres);
    }
    if left_out_m > 0.0 {
        raw.notes
            .push(notes::parts_left_out(raw.parts.len() + 1, left_out_m));
    }
    if jumps > 0 {
        raw.notes.push(notes::jumps(jumps));
    }
    column
}

/// Speed over time by the trapezoidal rule; a record without a speed counts as the one before.
fn of_speed(time_s: &[f64], speed_m_s: &[f64]) -> Vec<f64> {
    let (mut metres, mut last_s, mut last_m_s) = (0.0, f64::NAN, f64::NAN);
    let step = |(&time, &speed): (&f64, &f64)| {
        let now_m_s = if speed.is_nan() { last_m_s } else { speed };
        let mean_m_s = if last_m_s.is_nan() {
            now_m_s
        } else {
            0.5 * (now_m_s + last_m_s)
        };
        let leg_m = mean_m_s * (time - last_s);
        if !leg_m.is_nan() {
            metres += leg_m;
        }
        (last_s, last_m_s) = (time, now_m_s);
        metres
    };
    time_s.iter().zip(speed_m_s).map(step).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_distance_that_begins_anew_is_carried_on() {
        let (metres, counts) = of_device(&[5.0, 15.0, 25.0, 0.0, 10.0, 9.5, f64::NAN, 20.0]);
        assert_eq!(metres[..6], [0.0, 10.0, 20.0, 20.0, 30.0, 30.0]);
        assert!(metres[6].is_nan());
        assert_eq!(metres[7], 40.0);
        assert_eq!(counts, [1, 1]);
    }
}
