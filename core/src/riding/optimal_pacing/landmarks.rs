//! Places that a rider can recognise on the road: where it begins to climb or to fall, where it turns, and the marks of a
//! distance.

use super::road::Road;
use crate::physics::air::Heading;

/// What a place is known by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Landmark {
    /// The start.
    Start,
    /// The road begins to climb, or to climb more steeply.
    Climb,
    /// The road begins to fall, or to fall more steeply.
    Descent,
    /// A climb or a descent ends on level road.
    Level,
    /// The road leads another way.
    Turn,
    /// Nothing but its distance.
    Distance,
}

/// A place where a plan may change its power.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Place {
    /// The piece of road that begins there.
    pub(crate) cell: usize,
    /// What it is known by.
    pub(crate) landmark: Landmark,
    /// The mean grade of the road from there.
    pub(crate) grade: f64,
}

/// The road before and after a place is looked at over this length, m.
const LOOKED_AT_M: f64 = 300.0;
/// A change of grade that a rider notices.
const NOTICED_GRADE: f64 = 0.015;
/// Road of a grade less than this counts as level.
const LEVEL_GRADE: f64 = 0.01;
/// A change of heading that a rider notices: the cosine of 60°.
const NOTICED_TURN: f64 = 0.5;
/// No more landmarks, and no more marks of distance, than this.
const MOST: usize = 70;
/// The least length between marks of distance, m.
const MARKS_M: f64 = 500.0;

/// The road from or up to a place.
struct Stretch {
    grade: f64,
    heading: Option<Heading>,
}

/// The places of a road in the order ridden, the start first.
pub(crate) fn places(road: &Road<'_>) -> Vec<Place> {
    let count = road.cells.len();
    let mut noticed: Vec<(f64, Place)> = (1..count)
        .filter(|&cell| road.cells[cell].segment != road.cells[cell - 1].segment)
        .filter_map(|cell| notice(road, cell))
        .collect();
    keep_clearest(road, &mut noticed);
    let mut places: Vec<Place> = noticed.into_iter().map(|(_, place)| place).collect();
    let length_m = road.setup.course.distance_m();
    let apart_m = MARKS_M * (length_m / MARKS_M / MOST as f64).ceil().max(1.0);
    let mut mark_m = apart_m;
    while mark_m < length_m - 0.5 * apart_m {
        let cell = nearest(road, mark_m);
        let near = |place: &Place| {
            (road.cells[place.cell].from_m - road.cells[cell].from_m).abs() < LOOKED_AT_M
        };
        if cell > 0 && !places.iter().any(near) {
            places.push(Place {
                cell,
                landmark: Landmark::Distance,
                grade: after(road, cell).grade,
            });
        }
        mark_m += apart_m;
    }
    places.push(Place {
        cell: 0,
        landmark: Landmark::Start,
        grade: after(road, 0).grade,
    });
    places.sort_unstable_by_key(|place| place.cell);
    places
}

/// Whether a place is one that a rider notices, and how clear it is.
fn notice(road: &Road<'_>, cell: usize) -> Option<(f64, Place)> {
    let (before, after) = (before(road, cell), after(road, cell));
    let steeper = after.grade - before.grade;
    let turned = match (before.heading, after.heading) {
        (Some(a), Some(b)) => a.north * b.north + a.east * b.east,
        _ => 1.0,
    };
    let landmark = if steeper.abs() >= NOTICED_GRADE {
        match steeper {
            _ if after.grade.abs() < LEVEL_GRADE => Landmark::Level,
            up if up > 0.0 => Landmark::Climb,
            _ => Landmark::Descent,
        }
    } else if turned <= NOTICED_TURN {
        Landmark::Turn
    } else {
        return None;
    };
    let clearness = steeper.abs() / NOTICED_GRADE + 0.5 * (1.0 - turned);
    let place = Place {
        cell,
        landmark,
        grade: after.grade,
    };
    Some((clearness, place))
}

/// Leaves the clearest of those that lie close together, and the clearest of all.
fn keep_clearest(road: &Road<'_>, noticed: &mut Vec<(f64, Place)>) {
    noticed.sort_unstable_by(|a, b| b.0.total_cmp(&a.0));
    let mut kept: Vec<(f64, Place)> = Vec::new();
    for (clearness, place) in noticed.drain(..) {
        let from_m = road.cells[place.cell].from_m;
        let near = |(_, other): &(f64, Place)| {
            (road.cells[other.cell].from_m - from_m).abs() < LOOKED_AT_M
        };
        if kept.len() < MOST && !kept.iter().any(near) {
            kept.push((clearness, place));
        }
    }
    *noticed = kept;
}

/// The piece that begins nearest to a distance.
fn nearest(road: &Road<'_>, distance_m: f64) -> usize {
    let after = road
        .cells
        .partition_point(|cell| cell.from_m < distance_m)
        .min(road.cells.len() - 1);
    let before = after.saturating_sub(1);
    let away = |cell: usize| (road.cells[cell].from_m - distance_m).abs();
    if away(before) < away(after) {
        before
    } else {
        after
    }
}

fn before(road: &Road<'_>, cell: usize) -> Stretch {
    looked_at(road, (0..cell).rev())
}

fn after(road: &Road<'_>, cell: usize) -> Stretch {
    looked_at(road, cell..road.cells.len())
}

/// The mean grade and heading of the first pieces of some.
fn looked_at(road: &Road<'_>, cells: impl Iterator<Item = usize>) -> Stretch {
    let (mut length_m, mut climb_m, mut north, mut east) = (0.0, 0.0, 0.0, 0.0);
    let mut headed = false;
    for cell in cells {
        let cell = &road.cells[cell];
        let Some(segment) = road.setup.course.segments.get(cell.segment) else {
            break;
        };
        let taken_m = cell.length_m.min(LOOKED_AT_M - length_m);
        length_m += taken_m;
        climb_m += taken_m * segment.slope.0;
        if let Some(heading) = segment.heading {
            headed = true;
            north += taken_m * heading.north;
            east += taken_m * heading.east;
        }
        if length_m >= LOOKED_AT_M {
            break;
        }
    }
    let long = north.hypot(east);
    Stretch {
        grade: climb_m / length_m.max(1.0),
        heading: (headed && long > 0.0).then(|| Heading {
            north: north / long,
            east: east / long,
        }),
    }
}
