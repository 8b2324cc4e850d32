//! Rounds of a loop, found by where the rider comes past again.

use crate::recording::Span;
use crate::track::{Point, Track};

/// So many places along the ride are tried as the line at which rounds are counted.
const PLACES: usize = 80;
/// The line reaches so far to either side of the track, metres: GPS is out by a few; assumed.
const REACH_M: f64 = 20.0;
/// A shorter round is none, metres: a turn in the road, or somebody who waits at the line; assumed.
const SHORTEST_M: f64 = 150.0;
/// Rounds of one loop differ in length by less than this share; assumed.
const ALIKE: f64 = 0.03;
/// The heading at a place is taken over so many metres to either side.
const HEADING_M: f64 = 8.0;

/// The rounds of the loop that covers most of the ride, each from the line to the line again. Empty without positions, and where
/// the rider does not come past the same place in the same direction at least twice by a way of one length.
pub(crate) fn loops(track: &Track) -> Vec<Span> {
    let Some(end_m) = track.points.last().map(|point| point.distance_m) else {
        return Vec::new();
    };
    let place = |i: usize| end_m * (i as f64 + 0.5) / PLACES as f64;
    let longest = (0..PLACES)
        .filter_map(|i| track.line_at(place(i)))
        .map(|line| alike(&track.passings(&line)))
        .max_by(|one, other| covered_m(one).total_cmp(&covered_m(other)));
    let rounds = longest.filter(|rounds| rounds.len() >= 2);
    rounds
        .unwrap_or_default()
        .iter()
        .map(|(from, to)| Span {
            from_s: from.time_s,
            to_s: to.time_s,
        })
        .collect()
}

/// A line across the track.
struct Line {
    at: Point,
    /// Along the track, of length 1: to the north, to the east.
    along: (f64, f64),
}

/// When the line was passed.
#[derive(Clone, Copy)]
struct Passing {
    time_s: f64,
    distance_m: f64,
}

impl Track {
    /// The line across the track at a distance; `None` where the rider goes nowhere.
    fn line_at(&self, distance_m: f64) -> Option<Line> {
        let near = |distance_m: f64| {
            let at = self
                .points
                .partition_point(|point| point.distance_m < distance_m);
            self.points.get(at.min(self.points.len() - 1)).copied()
        };
        let at = near(distance_m)?;
        let (from, to) = (near(distance_m - HEADING_M)?, near(distance_m + HEADING_M)?);
        let (north, east) = (to.north_m - from.north_m, to.east_m - from.east_m);
        let length = north.hypot(east);
        (length > HEADING_M).then_some(Line {
            at,
            along: (north / length, east / length),
        })
    }

    /// Where the track passes a line in its direction, at least a shortest round apart.
    fn passings(&self, line: &Line) -> Vec<Passing> {
        let seen = |point: &Point| {
            let (north, east) = (
                point.north_m - line.at.north_m,
                point.east_m - line.at.east_m,
            );
            let along = north * line.along.0 + east * line.along.1;
            let across = east * line.along.0 - north * line.along.1;
            (along, across)
        };
        let mut found: Vec<Passing> = Vec::new();
        for pair in self.points.windows(2) {
            let ((before, _), (after, across)) = (seen(&pair[0]), seen(&pair[1]));
            if !(before < 0.0 && after >= 0.0 && across.abs() <= REACH_M) {
                continue;
            }
            let share = before / (before - after);
            let between = |from: f64, to: f64| from + share * (to - from);
            let passing = Passing {
                time_s: between(pair[0].time_s, pair[1].time_s),
                distance_m: between(pair[0].distance_m, pair[1].distance_m),
            };
            let far_enough = |last: &Passing| passing.distance_m - last.distance_m >= SHORTEST_M;
            if found.last().is_none_or(far_enough) {
                found.push(passing);
            }
        }
        found
    }
}

type Round = (Passing, Passing);

/// The rounds that are as long as the one in the middle of all.
fn alike(passings: &[Passing]) -> Vec<Round> {
    let rounds: Vec<Round> = passings.windows(2).map(|pair| (pair[0], pair[1])).collect();
    let mut lengths: Vec<f64> = rounds.iter().map(length_m).collect();
    if lengths.is_empty() {
        return Vec::new();
    }
    let middle = lengths.len() / 2;
    let middle = *lengths.select_nth_unstable_by(middle, f64::total_cmp).1;
    let is_alike = |round: &Round| (length_m(round) / middle - 1.0).abs() < ALIKE;
    rounds.into_iter().filter(is_alike).collect()
}

fn length_m((from, to): &Round) -> f64 {
    to.distance_m - from.distance_m
}

/// How far rounds go together; one alone shows no loop.
fn covered_m(rounds: &[Round]) -> f64 {
    match rounds.len() {
        0 | 1 => 0.0,
        _ => rounds.iter().map(length_m).sum(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::columns::{Column, Columns, Record};

    /// A degree of latitude, metres, near enough for a track of a few hundred metres.
    const DEGREE_M: f64 = 111_200.0;

    /// A ride at 10 m/s past points given in metres north and east, a record each second.
    fn ridden(way: &[(f64, f64)]) -> Track {
        let mut columns = Columns::default();
        let mut time_s = 0.0;
        for pair in way.windows(2) {
            let ((n0, e0), (n1, e1)) = (pair[0], pair[1]);
            let steps = ((n1 - n0).hypot(e1 - e0) / 10.0).round().max(1.0) as usize;
            for step in 0..steps {
                let share = step as f64 / steps as f64;
                let mut record = Record::default();
                record.set(Column::Time, time_s);
                record.set(Column::Latitude, (n0 + share * (n1 - n0)) / DEGREE_M);
                record.set(Column::Longitude, (e0 + share * (e1 - e0)) / DEGREE_M);
                assert!(columns.push(&record).is_ok());
                time_s += 1.0;
            }
        }
        Track::of(&columns)
    }

    const SQUARE: [(f64, f64); 4] = [(0.0, 0.0), (300.0, 0.0), (300.0, 200.0), (0.0, 200.0)];

    fn rounds_of_a_square(count: usize) -> Vec<(f64, f64)> {
        let mut way: Vec<(f64, f64)> = vec![(-400.0, -50.0)];
        (0..count).for_each(|_| way.extend(SQUARE));
        way.extend([(0.0, 0.0), (150.0, -300.0)]);
        way
    }

    #[test]
    fn rounds_of_a_square_are_each_its_hundred_seconds() {
        let found = loops(&ridden(&rounds_of_a_square(5)));
        assert!((4..=5).contains(&found.len()), "{found:?}");
        for round in &found {
            assert!((round.to_s - round.from_s - 100.0).abs() < 1.5, "{round:?}");
        }
    }

    #[test]
    fn a_road_ridden_there_and_back_is_no_loop() {
        let found = loops(&ridden(&[(0.0, 0.0), (1000.0, 0.0), (0.0, 0.0)]));
        assert!(found.is_empty(), "{found:?}");
    }

    #[test]
    fn nothing_is_found_where_nothing_is_known_or_nobody_moves() {
        assert!(loops(&Track::of(&Columns::default())).is_empty());
        assert!(loops(&ridden(&[(0.0, 0.0), (0.0, 0.0), (0.0, 0.0)])).is_empty());
    }
}
