//! A course cut into pieces that are ridden at one power each.

use super::cell::{Cell, Drive};
use crate::physics::course::Segment;
use crate::riding::integrated::bends::{AT_ANY_SPEED, Limit, limits};
use crate::riding::integrated::{Setup, Start};

/// A course cut into pieces, and how it is begun.
#[derive(Clone, Debug)]
pub(crate) struct Road<'a> {
    /// What the ride depends on besides.
    pub(crate) setup: &'a Setup,
    /// What turns power into motion.
    pub(crate) drive: Drive,
    /// The pieces in the order ridden.
    pub(crate) cells: Vec<Cell<'a>>,
    /// Kinetic energy per effective mass at the start, m²/s².
    pub(crate) start_u: f64,
}

/// Pieces are a share of the course, but no shorter and no longer than these, m. With so many pieces the best plan in pieces is
/// within 0.005 s of the best one of all on the courses of the reference.
const PIECES: f64 = 400.0;
const LENGTHS_M: (f64, f64) = (25.0, 125.0);
/// A very long course has so many pieces besides those of its own stretches.
const MOST_PIECES: f64 = 3000.0;
/// Lengths of the first pieces of a stretch on which the rider gathers speed, as shares of a usual one.
const GATHERING: [f64; 4] = [0.125, 0.125, 0.25, 0.5];
/// Pieces before a bend that is braked for, m: braking takes a few of them.
const BRAKING_M: f64 = 8.0;
/// The most of them before one bend, and before all bends of a course together.
const MOST_BRAKING: (f64, f64) = (12.0, 1500.0);
/// Nobody brakes from faster than this, m/s.
const FASTEST_M_S: f64 = 25.0;

impl<'a> Road<'a> {
    /// The course of a setup, ridden at about the steady speeds of a power, W.
    pub(crate) fn new(setup: &'a Setup, power_w: f64) -> Self {
        let drive = Drive::new(&setup.machine);
        let segments = &setup.course.segments;
        let bends = segments
            .iter()
            .filter(|segment| segment.radius_m.is_some())
            .count();
        let limits = limits(&setup.machine, segments, 0.0, AT_ANY_SPEED);
        let (most, together) = MOST_BRAKING;
        let most_braking = (together / bends.max(1) as f64).clamp(1.0, most).floor();
        let distance_m = setup.course.distance_m();
        let length_m = (distance_m / PIECES)
            .clamp(LENGTHS_M.0, LENGTHS_M.1)
            .max(distance_m / MOST_PIECES);
        let mut road = Self {
            setup,
            drive,
            cells: Vec::new(),
            start_u: 0.0,
        };
        let road_power_w = power_w * drive.efficiency;
        let mut gathers = !matches!(setup.start, Start::Rolling);
        let mut from_m = 0.0;
        for (i, segment) in segments.iter().enumerate() {
            let stretch = setup.stretch(segment, 0.0);
            let cda_m2 = setup.position.cda_at_m2(0.0);
            let steady_m_s = stretch.speed_m_s(road_power_w, cda_m2);
            if i == 0 {
                let start_m_s = match setup.start {
                    Start::Standing => 0.0,
                    Start::Speed(speed_m_s) => speed_m_s,
                    Start::Rolling => steady_m_s,
                };
                road.start_u = 0.5 * start_m_s * start_m_s;
            }
            let limit = limits.get(i).copied();
            let cell = Cell {
                from_m,
                length_m: segment.length_m,
                segment: i,
                stretch,
                cda_m2,
                upright: None,
                limit,
                steps: 1,
                graded: false,
            };
            for length_m in lengths_m(segment, limit, length_m, gathers, most_braking) {
                road.cells.push(Cell {
                    from_m,
                    length_m,
                    ..cell
                });
                from_m += length_m;
            }
            // Out of a bend that held the rider back, speed is gathered again.
            gathers = limit.is_some_and(|limit| limit.at(from_m) < 0.5 * steady_m_s * steady_m_s);
        }
        road
    }

    /// The most kinetic energy that the bends allow at the end of a piece.
    pub(crate) fn cap(&self, cell: usize) -> f64 {
        let Some(next) = self.cells.get(cell + 1) else {
            return self.cells.last().map_or(f64::INFINITY, end_cap);
        };
        let own = self.cells.get(cell).map_or(f64::INFINITY, end_cap);
        let entry = next
            .limit
            .map_or(f64::INFINITY, |limit| limit.at(next.from_m));
        own.min(entry)
    }

    /// Drag area, m², the weather and the steps of every piece, for a rider who comes to its beginning at a time, s, and at an energy, m²/s²,
    /// with a power, W.
    pub(crate) fn prepare(&mut self, passed: impl Fn(usize) -> (f64, f64, f64)) {
        let position = &self.setup.position;
        let mut now = passed(0);
        for i in 0..self.cells.len() {
            let (time_s, u, power_w) = now;
            now = passed(i + 1);
            let cell = &mut self.cells[i];
            if self.setup.weather_change.is_some()
                && let Some(segment) = self.setup.course.segments.get(cell.segment)
            {
                cell.stretch = self.setup.stretch(segment, 0.5 * (time_s + now.0));
            }
            cell.cda_m2 = cell.cda_between_m2(position, time_s, now.0);
            cell.choose_steps(&self.drive, (2.0 * u).sqrt(), power_w);
        }
    }
}

fn end_cap(cell: &Cell<'_>) -> f64 {
    cell.limit
        .map_or(f64::INFINITY, |limit| limit.at(cell.from_m + cell.length_m))
}

/// The lengths of the pieces of a stretch.
fn lengths_m(
    segment: &Segment,
    limit: Option<Limit>,
    usual_m: f64,
    gathers: bool,
    most_braking: f64,
) -> Vec<f64> {
    let mut left_m = segment.length_m;
    let braked_m = limit
        .map_or(0.0, |limit| limit.braked_m(FASTEST_M_S))
        .min(left_m);
    // A bend is ridden at its own speed: no piece of it needs to be short.
    let braking = if segment.radius_m.is_none() {
        (braked_m / BRAKING_M).floor().min(most_braking)
    } else {
        0.0
    };
    left_m -= braking * BRAKING_M;
    let mut lengths = Vec::new();
    if gathers {
        for share in GATHERING {
            let next_m = share * usual_m;
            if left_m > 1.5 * next_m {
                lengths.push(next_m);
                left_m -= next_m;
            }
        }
    }
    let count = (left_m / usual_m).ceil();
    lengths.extend((0..count as usize).map(|_| left_m / count));
    lengths.extend((0..braking as usize).map(|_| BRAKING_M));
    lengths
}
