//! Times in a table: numbers, dates, and times of day, whose parts the whole table explains.

use crate::columns::Column;
use crate::notes;
use crate::numbers::number_of_table;
use crate::raw::Raw;
use crate::time::{DAY_S, clock_s, date_and_time_s};

/// How many parts a time of day has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Parts {
    Two,
    Three,
}

/// A time of day without a date.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Clock {
    pub record: usize,
    pub parts: Parts,
    /// Two parts as hours and minutes.
    pub time_s: f64,
}

/// Seconds by a number, a date with its time, or a time of day.
pub(crate) fn time(text: &str, separator: u8, scale: f64, clock: &mut Option<Parts>) -> f64 {
    // Beyond this a count of seconds since 1970 is one of milliseconds.
    const MOST_SECONDS: f64 = 1e11;
    if !text.contains(':') {
        let seconds = number_of_table(text, separator) * scale;
        return if seconds.abs() > MOST_SECONDS {
            seconds / 1000.0
        } else {
            seconds
        };
    }
    let dated = date_and_time_s(text);
    if !dated.is_nan() {
        return dated;
    }
    *clock = Some(match text.matches(':').count() {
        1 => Parts::Two,
        _ => Parts::Three,
    });
    clock_s(text)
}

/// Sets times of day, which begin anew past midnight, or, where their two parts are minutes and seconds, go on past the hour.
pub(crate) fn set_clocks(raw: &mut Raw, clocks: &[Clock]) {
    let in_minutes = are_in_minutes(raw, clocks);
    let mut times = raw.columns.get(Column::Time).to_vec();
    let (mut days_s, mut last_s) = (0.0, f64::NAN);
    for clock in clocks {
        let time_s = match clock.parts {
            Parts::Two if in_minutes => clock.time_s / 60.0,
            _ => clock.time_s,
        };
        if last_s - time_s > 0.5 * DAY_S {
            days_s += DAY_S;
        }
        last_s = time_s;
        if let Some(time) = times.get_mut(clock.record) {
            *time = time_s + days_s;
        }
    }
    raw.columns.set(Column::Time, times);
    if in_minutes {
        raw.notes.push(notes::clock_in_minutes());
    }
}

/// Whether times of two parts are minutes and seconds. Their order says so: they go on to three parts, or beyond 23 in the first, or
/// nearly every record has a time of its own, as it has not where a clock tells minutes to a recording of seconds. Against it
/// speaks a distance that nobody rides in so short a time.
fn are_in_minutes(raw: &Raw, clocks: &[Clock]) -> bool {
    const HOURS_OF_A_DAY_S: f64 = 24.0 * 3600.0;
    const FASTEST_M_S: f64 = 40.0;
    let two = |clock: &&Clock| clock.parts == Parts::Two;
    let both: Vec<&Clock> = clocks.iter().filter(two).collect();
    let (Some(first), Some(last)) = (both.first(), both.last()) else {
        return false;
    };
    let beyond = both.iter().any(|clock| clock.time_s >= HOURS_OF_A_DAY_S);
    if beyond || both.len() < clocks.len() {
        return true;
    }
    let steps = both
        .windows(2)
        .filter(|pair| pair[0].time_s != pair[1].time_s);
    let distances = raw.columns.get(Column::Distance);
    let metre = |clock: &Clock| distances.get(clock.record).copied().unwrap_or(f64::NAN);
    let metres = metre(last) - metre(first);
    let seconds = (last.time_s - first.time_s) / 60.0;
    let too_fast = metres / seconds > FASTEST_M_S;
    2 * steps.count() >= both.len() && !too_fast
}
