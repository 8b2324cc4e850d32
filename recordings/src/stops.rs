//! Where nothing was recorded, and where the rider stood still.

use crate::columns::Column;
use crate::notes;
use crate::raw::Raw;
use crate::recording::Span;

/// Slower than this is standing: receivers wander by this much.
const STANDING_M_S: f64 = 0.5;
/// Shorter stops are not told.
const SHORTEST_STOP_S: f64 = 5.0;
/// A step is a gap if it is longer than this and than five usual ones.
const SHORTEST_GAP_S: f64 = 10.0;
const USUAL_STEPS: f64 = 5.0;

/// The stops in order of time; gaps, still points and what is missing are noted.
pub(crate) fn stops(raw: &mut Raw) -> Vec<Span> {
    let columns = &raw.columns;
    let (time_s, speed_m_s, distance_m) = (
        columns.get(Column::Time),
        columns.get(Column::Speed),
        columns.get(Column::Distance),
    );
    let gap_s = shortest_gap_s(time_s);
    let mut stops: Vec<Span> = Vec::new();
    let mut add = |from_s: f64, to_s: f64| match stops.last_mut() {
        Some(last) if last.to_s >= from_s => last.to_s = to_s,
        _ => stops.push(Span { from_s, to_s }),
    };
    let (mut gaps, mut longest_s) = (0, 0.0);
    for at in 1..time_s.len() {
        let step_s = time_s[at] - time_s[at - 1];
        let is_gap = step_s > gap_s;
        if is_gap {
            gaps += 1;
            longest_s = f64::max(longest_s, step_s);
        }
        let moved_m = distance_m[at] - distance_m[at - 1];
        let stands = if is_gap {
            moved_m < STANDING_M_S * step_s
        } else {
            speed_m_s[at - 1] < STANDING_M_S
        };
        if stands {
            add(time_s[at - 1], time_s[at]);
        }
    }
    stops.retain(|stop| stop.to_s - stop.from_s >= SHORTEST_STOP_S);
    let still = still_points(
        columns.get(Column::Latitude),
        columns.get(Column::Longitude),
    );
    if gaps > 0 {
        raw.notes.push(notes::gaps(gaps, longest_s));
    }
    if still > 0 {
        raw.notes.push(notes::still(still));
    }
    stops
}

fn shortest_gap_s(time_s: &[f64]) -> f64 {
    let mut steps: Vec<f64> = time_s.windows(2).map(|pair| pair[1] - pair[0]).collect();
    if steps.is_empty() {
        return SHORTEST_GAP_S;
    }
    let middle = steps.len() / 2;
    let usual_s = *steps.select_nth_unstable_by(middle, f64::total_cmp).1;
    SHORTEST_GAP_S.max(USUAL_STEPS * usual_s)
}

fn still_points(latitude: &[f64], longitude: &[f64]) -> usize {
    let pairs = latitude.windows(2).zip(longitude.windows(2));
    pairs
        .filter(|(north, east)| north[0] == north[1] && east[0] == east[1])
        .count()
}
