//! Sitting up where the road climbs steeply: more drag area, and more critical power.

use super::cell::Cell;
use super::ride::PlanRide;
use super::road::Road;
use crate::numerics::solve::root;
use crate::physics::air::Wind;
use crate::physics::course::{Course, Segment};
use crate::physics::position::Position;
use crate::physics::resistance::slope;
use crate::riding::integrated::Setup;

/// What a rider who sits up has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Upright {
    /// Drag area, m².
    pub(crate) cda_m2: f64,
    /// The threshold over that in the position itself.
    pub(crate) threshold_share: f64,
}

/// Sitting up on every climb that is steep enough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct SitUp {
    /// On road of this grade or more.
    pub(crate) from_grade: f64,
    /// What the rider has there.
    pub(crate) upright: Upright,
}

/// The rider does not sit up for a shorter climb, and stays up over a part less steep that is no longer than this, m, if all of the
/// climb is then still as steep as asked: about half a minute; assumed.
const SHORTEST_M: f64 = 200.0;
/// A grade less than that asked for by no more than this is as steep: both are rounded.
const AS_STEEP: f64 = 1e-6;

impl SitUp {
    /// Where the rider sits up: where each of the climbs begins and ends, m from the start.
    pub(crate) fn climbs_m(&self, course: &Course) -> Vec<(f64, f64)> {
        let mut climbs: Vec<Climb> = Vec::new();
        let (mut from_m, mut rise_m) = (0.0, 0.0);
        for segment in &course.segments {
            let here = Climb {
                from_m,
                to_m: from_m + segment.length_m,
                from_rise_m: rise_m,
                to_rise_m: rise_m + segment.length_m * segment.grade(),
            };
            (from_m, rise_m) = (here.to_m, here.to_rise_m);
            if !self.is_steep(&here) {
                continue;
            }
            match climbs.last_mut() {
                Some(last)
                    if here.from_m - last.to_m <= SHORTEST_M
                        && self.is_steep(&last.until(&here)) =>
                {
                    *last = last.until(&here);
                }
                _ => climbs.push(here),
            }
        }
        climbs
            .into_iter()
            .map(|climb| (climb.from_m, climb.to_m))
            .filter(|(from_m, to_m)| to_m - from_m >= SHORTEST_M)
            .collect()
    }

    fn is_steep(&self, climb: &Climb) -> bool {
        climb.to_rise_m - climb.from_rise_m
            >= (self.from_grade - AS_STEEP) * (climb.to_m - climb.from_m)
    }
}

/// A part of the road, by its ends.
#[derive(Clone, Copy)]
struct Climb {
    from_m: f64,
    to_m: f64,
    /// Height of both ends over the start, m.
    from_rise_m: f64,
    to_rise_m: f64,
}

impl Climb {
    /// All from the beginning of this to the end of a later part.
    fn until(&self, later: &Self) -> Self {
        Self {
            from_m: self.from_m,
            from_rise_m: self.from_rise_m,
            ..*later
        }
    }
}

/// Seconds that sitting up gains on the climbs of a ride that does so, at the steady speeds of its efforts there: each is as hard
/// for the rider low as it is upright. In the setup and with the drag area and the threshold of somebody who may not be as
/// believed.
pub(crate) fn gained_at_steady_speeds_s(
    road: &Road<'_>,
    ride: &PlanRide,
    setup: &Setup,
    upright: &Upright,
) -> f64 {
    let on = |(cell, passed): (&Cell<'_>, &super::ride::Passed)| {
        let believed = cell.upright?;
        let segment = setup.course.segments.get(cell.segment)?;
        let stretch = setup.stretch(segment, passed.time_s);
        let low_w = setup.machine.drivetrain_efficiency * passed.power_w / believed.threshold_share;
        let low_m_s = stretch.speed_m_s(low_w, setup.position.cda_at_m2(passed.time_s));
        let up_m_s = stretch.speed_m_s(low_w * upright.threshold_share, upright.cda_m2);
        Some(cell.length_m * (1.0 / low_m_s - 1.0 / up_m_s))
    };
    road.cells.iter().zip(&ride.passed).filter_map(on).sum()
}

/// The grade from which sitting up is the faster in calm air, at a power, W, that the rider holds low; `None` where that is no
/// grade between 0 and 30 %.
pub(crate) fn pays_from_grade(setup: &Setup, upright: &Upright, power_w: f64) -> Option<f64> {
    const STEEPEST: f64 = 0.3;
    const CLOSE: f64 = 1e-5;
    let calm = Setup {
        wind: Wind::new(0.0, 0.0),
        weather_change: None,
        ..setup.clone()
    };
    let road_power_w = calm.machine.drivetrain_efficiency * power_w;
    let slower_by_m_s = |grade: f64| {
        let segment = Segment {
            length_m: 1.0,
            slope: slope(grade),
            heading: None,
            radius_m: None,
            wind_share: 1.0,
            keeps_length: false,
        };
        let stretch = calm.stretch(&segment, 0.0);
        let low_m_s = stretch.speed_m_s(road_power_w, calm.position.cda_at_m2(0.0));
        low_m_s - stretch.speed_m_s(road_power_w * upright.threshold_share, upright.cda_m2)
    };
    root(slower_by_m_s, 0.0, STEEPEST, CLOSE).ok()
}

impl Road<'_> {
    /// Makes the rider sit up on the climbs.
    pub(super) fn sit_up(&mut self, sit_up: &SitUp) {
        let climbs = sit_up.climbs_m(&self.setup.course);
        for cell in &mut self.cells {
            let middle_m = cell.from_m + 0.5 * cell.length_m;
            let is_climb = |(from_m, to_m): &(f64, f64)| (*from_m..*to_m).contains(&middle_m);
            if climbs.iter().any(is_climb) {
                cell.upright = Some(sit_up.upright);
                cell.cda_m2 = sit_up.upright.cda_m2;
            }
        }
    }
}

impl Cell<'_> {
    /// Drag area of a rider who is on the piece between two times, m²: at one time, that of this time.
    pub(super) fn cda_between_m2(&self, position: &Position, from_s: f64, to_s: f64) -> f64 {
        match self.upright {
            Some(upright) => upright.cda_m2,
            None if to_s > from_s => position.mean_cda_between_m2(from_s, to_s),
            None => position.cda_at_m2(from_s),
        }
    }

    /// The threshold on the piece over that in the position itself.
    pub(super) fn threshold_share(&self) -> f64 {
        self.upright.map_or(1.0, |upright| upright.threshold_share)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::course::Point;

    /// Stretches of so many metres at these grades, one after the other.
    fn road(stretches: &[(f64, f64)]) -> Course {
        let mut at = (0.0, 0.0);
        let mut points = vec![at];
        for (length_m, grade) in stretches {
            at = (at.0 + length_m, at.1 + length_m * grade);
            points.push(at);
        }
        let points: Vec<Point> = points
            .into_iter()
            .map(|(distance_m, elevation_m)| Point {
                distance_m,
                elevation_m,
                bearing_deg: 0.0,
                radius_m: None,
                wind_share: 1.0,
            })
            .collect();
        Course::profile(&points)
    }

    fn climbs_m(stretches: &[(f64, f64)]) -> Vec<(f64, f64)> {
        let sit_up = SitUp {
            from_grade: 0.06,
            upright: Upright {
                cda_m2: 0.33,
                threshold_share: 1.03,
            },
        };
        sit_up.climbs_m(&road(stretches))
    }

    #[test]
    fn the_rider_sits_up_on_climbs_that_are_steep_and_long_enough() {
        let steep = (300.0, 0.08);
        let level = (500.0, 0.0);
        assert_eq!(climbs_m(&[level, steep, level]), [(500.0, 800.0)]);
        assert_eq!(climbs_m(&[level, (150.0, 0.08), level]), []);
        assert_eq!(climbs_m(&[level, (500.0, 0.05), level]), []);
        // Just as steep as asked for, at whatever height above the sea.
        let (level, climb) = ((1000.0, 0.0123), (500.0, 0.06));
        assert_eq!(climbs_m(&[level, climb, level]), [(1000.0, 1500.0)]);
    }

    #[test]
    fn the_rider_stays_up_where_it_is_less_steep_for_a_moment() {
        let steep = (150.0, 0.07);
        assert_eq!(
            climbs_m(&[steep, (100.0, 0.03), steep]),
            [(0.0, 400.0)],
            "a short part in between"
        );
        assert_eq!(
            climbs_m(&[(300.0, 0.07), (250.0, 0.03), (300.0, 0.07)]),
            [(0.0, 300.0), (550.0, 850.0)],
            "a long one"
        );
        let steps = [(20.0, 0.07), (180.0, 0.0)].repeat(20);
        assert_eq!(climbs_m(&steps), [], "steps of a road that hardly climbs");
    }
}
