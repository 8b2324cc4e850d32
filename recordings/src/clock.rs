//! Times that go forward: what a device's clock did is undone, and records of one time are joined.

use crate::columns::Column;
use crate::notes;
use crate::raw::Raw;
use crate::time::DAY_S;

/// A record with an earlier time than the one before is an error of its own where, among this many records after it, one is later than
/// both; otherwise the clock was set.
const LOOK_AHEAD: usize = 30;
/// Nobody pauses a recording for longer: the clock was set.
const LONGEST_PAUSE_S: f64 = 7.0 * DAY_S;
/// Where the clock was set, the next record is taken to follow after this.
const USUAL_STEP_S: f64 = 1.0;

/// Puts the records in order of time, which then counts from the first. Without times, all records stay as they are.
///
/// Gives the time of the first record by the clock of the file.
pub(crate) fn repair(raw: &mut Raw) -> f64 {
    let times = raw.columns.get(Column::Time);
    let timed = times.iter().filter(|time| !time.is_nan()).count();
    // Where most records have no time, those that have one say nothing of the ride.
    if 2 * timed < times.len() {
        let none = vec![f64::NAN; times.len()];
        raw.columns.set(Column::Time, none);
        raw.notes.push(notes::no_times());
        return f64::NAN;
    }
    let mut clock = Clock::default();
    for at in 0..times.len() {
        clock.take(times, at);
    }
    let Clock {
        kept,
        kept_s,
        merged,
        untimed,
        slipped,
        set,
        ..
    } = clock;
    let merged_count = merged.len();
    raw.columns.keep(&kept, &merged);
    // A part begins at the first kept record from its own on.
    let place = |part: &usize| kept.partition_point(|record| record < part);
    let mut parts: Vec<usize> = raw
        .parts
        .iter()
        .map(place)
        .filter(|part| (1..kept.len()).contains(part))
        .collect();
    parts.dedup();
    raw.parts = parts;
    let first_s = kept.first().map_or(f64::NAN, |_| kept_s[0]);
    raw.columns.set(
        Column::Time,
        kept_s.iter().map(|time| time - first_s).collect(),
    );
    for (count, note) in [
        (untimed, notes::untimed as fn(usize) -> _),
        (merged_count, notes::same_time),
        (slipped, notes::clock_slipped),
        (set, notes::clock_set),
    ] {
        if count > 0 {
            raw.notes.push(note(count));
        }
    }
    first_s
}

#[derive(Default)]
struct Clock {
    kept: Vec<usize>,
    kept_s: Vec<f64>,
    /// Into which record which other one goes.
    merged: Vec<(usize, usize)>,
    ahead_s: f64,
    untimed: usize,
    slipped: usize,
    set: usize,
}

impl Clock {
    fn take(&mut self, times: &[f64], at: usize) {
        let time_s = times[at] + self.ahead_s;
        if time_s.is_nan() {
            self.untimed += 1;
            return;
        }
        if let (Some(&last), Some(&last_s)) = (self.kept.last(), self.kept_s.last()) {
            let step_s = time_s - last_s;
            if step_s == 0.0 {
                self.merged.push((last, at));
                return;
            }
            if step_s < 0.0 {
                let after = times.iter().skip(at).take(LOOK_AHEAD);
                if after.into_iter().any(|time| time + self.ahead_s > last_s) {
                    self.slipped += 1;
                    return;
                }
            }
            if !(0.0..=LONGEST_PAUSE_S).contains(&step_s) {
                self.set += 1;
                self.ahead_s += USUAL_STEP_S - step_s;
            }
        }
        self.kept.push(at);
        self.kept_s.push(times[at] + self.ahead_s);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::columns::Record;

    fn repaired(times: &[f64]) -> (Vec<f64>, Vec<&'static str>) {
        let mut raw = Raw::default();
        for time in times {
            let mut record = Record::default();
            record.set(Column::Time, *time);
            record.set(Column::Power, 200.0);
            raw.push(&record).unwrap();
        }
        repair(&mut raw);
        let said = raw.notes.iter().map(|note| note.text).collect();
        (raw.columns.get(Column::Time).to_vec(), said)
    }

    #[test]
    fn a_slip_of_one_record_leaves_it_out() {
        assert_eq!(
            repaired(&[10.0, 11.0, 5.0, 12.0]),
            (vec![0.0, 1.0, 2.0], vec!["clock_slipped"])
        );
    }

    #[test]
    fn a_clock_that_was_set_carries_on() {
        let mut times: Vec<f64> = (0..50).map(|i| 1e9 + f64::from(i)).collect();
        times.extend((0..50).map(|i| 5e8 + f64::from(i)));
        let (time_s, said) = repaired(&times);
        assert_eq!(time_s, (0..100).map(f64::from).collect::<Vec<_>>());
        assert_eq!(said, ["clock_set"]);
    }

    #[test]
    fn records_of_one_time_are_joined_and_those_without_are_left_out() {
        assert_eq!(
            repaired(&[1.0, 1.0, f64::NAN, 2.0]),
            (vec![0.0, 1.0], vec!["untimed", "same_time"])
        );
    }
}
