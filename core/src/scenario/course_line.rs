//! A course as a line on the earth. It says how far and which way, not where, so that its line begins at an invented place.

use super::course_edits::held;
use super::{Course, CourseKind, Point, Scenario};
use crate::physics::air::{Heading, turn_deg};
use crate::physics::course::Segment;
use crate::physics::geodesy::after_step;

/// Where every line begins, degrees north and east: at sea, far from any road. Not 0 and 0, which receivers write where they know
/// no place.
const ORIGIN_DEG: (f64, f64) = (0.0, -30.0);
/// The way of a road of which it is not known, degrees.
pub(crate) const UNKNOWN_BEARING_DEG: f64 = 90.0;
/// The longest straight piece, m, for programs that draw it or measure it otherwise.
const LONGEST_M: f64 = 1_000.0;
/// The most that the line turns at once in a bend, degrees.
const MOST_TURN_DEG: f64 = 10.0;

/// A place on the line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct LinePoint {
    /// Degrees north.
    pub latitude_deg: f64,
    /// Degrees east.
    pub longitude_deg: f64,
    /// Above sea level, m.
    pub elevation_m: f64,
    /// The point of the course that lies there; `None` between points.
    pub point: Option<Point>,
}

/// A simple course as the points between which it is straight. It says nothing of its elevation: they lie at sea level in the mean.
pub(crate) fn profile_of_simple(course: &Course) -> Course {
    let scenario = Scenario {
        course: course.clone(),
        ..Scenario::default()
    };
    let segments = scenario.course().segments;
    let mut here = Point::default();
    // The elevation along the road, integrated.
    let mut sum_m2 = 0.0;
    let mut points = Vec::with_capacity(segments.len() + 1);
    for segment in &segments {
        let rise_m = rise_m(segment);
        points.push(Point {
            bearing_deg: segment.heading.map(Heading::bearing_deg),
            radius_m: segment.radius_m,
            ..here
        });
        sum_m2 += segment.length_m * (here.elevation_m + 0.5 * rise_m);
        here.distance_m += segment.length_m;
        here.elevation_m += rise_m;
    }
    points.push(here);
    let mean_m = sum_m2 / here.distance_m;
    points
        .iter_mut()
        .for_each(|point| point.elevation_m -= mean_m);
    Course {
        kind: CourseKind::Profile,
        points,
        heading: course.heading,
        ..Course::default()
    }
}

fn rise_m(segment: &Segment) -> f64 {
    let (sin, cos) = segment.slope;
    segment.length_m * sin / cos
}

/// The line through points of ascending distance: straight on along each one's bearing, and in a bend evenly round to the next
/// one's. Its pieces are as long together as the road.
pub(crate) fn line(points: &[Point]) -> Vec<LinePoint> {
    let held = held(points);
    let bearing_deg = |at: usize| held[at].bearing_deg.unwrap_or(UNKNOWN_BEARING_DEG);
    let mut place = ORIGIN_DEG;
    let mut line = Vec::with_capacity(points.len());
    let mut push = |place: (f64, f64), elevation_m: f64, point: Option<Point>| {
        line.push(LinePoint {
            latitude_deg: place.0,
            longitude_deg: place.1,
            elevation_m,
            point,
        });
    };
    for (at, pair) in held.windows(2).enumerate() {
        let (from, to) = (pair[0], pair[1]);
        push(place, from.elevation_m, Some(points[at]));
        let turn_deg = match from.radius_m {
            Some(_) => turn_deg(bearing_deg(at), bearing_deg(at + 1)),
            None => 0.0,
        };
        let length_m = to.distance_m - from.distance_m;
        let pieces = (length_m / LONGEST_M)
            .max(turn_deg.abs() / MOST_TURN_DEG)
            .ceil()
            .max(1.0);
        let piece_m = length_m / pieces;
        for piece in 1..=pieces as usize {
            let share = piece as f64 / pieces;
            let way_deg = bearing_deg(at) + turn_deg * (share - 0.5 / pieces);
            let (sin, cos) = way_deg.to_radians().sin_cos();
            place = after_step(place, piece_m * cos, piece_m * sin);
            if share < 1.0 {
                let elevation_m = from.elevation_m + share * (to.elevation_m - from.elevation_m);
                push(place, elevation_m, None);
            }
        }
    }
    if let Some(&last) = points.last() {
        push(place, last.elevation_m, Some(last));
    }
    line
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::geodesy::step_m;

    fn point(distance_m: f64, bearing_deg: f64, radius_m: Option<f64>) -> Point {
        Point {
            distance_m,
            elevation_m: 0.1 * distance_m,
            bearing_deg: Some(bearing_deg),
            radius_m,
            wind_share: None,
        }
    }

    #[test]
    fn a_line_is_as_long_as_its_road_and_turns_round_in_a_bend() {
        const NEAR_M: f64 = 1e-3;
        let road = [
            point(0.0, 0.0, None),
            point(2_500.0, 0.0, Some(50.0)),
            point(2_500.0 + 25.0 * std::f64::consts::PI, 90.0, None),
            point(3_000.0, 90.0, None),
        ];
        let line = line(&road);
        let at = |point: &LinePoint| (point.latitude_deg, point.longitude_deg);
        let length_m: f64 = line
            .windows(2)
            .map(|pair| step_m(at(&pair[0]), at(&pair[1])))
            .map(|(north_m, east_m)| north_m.hypot(east_m))
            .sum();
        assert!((length_m - 3_000.0).abs() < NEAR_M, "{length_m}");
        assert_eq!(line.iter().filter(|place| place.point.is_some()).count(), 4);
        // A quarter circle ends as far to the side as ahead.
        let bend = line
            .iter()
            .position(|place| place.point == Some(road[1]))
            .unwrap();
        let after = line
            .iter()
            .position(|place| place.point == Some(road[2]))
            .unwrap();
        let (ahead_m, aside_m) = step_m(at(&line[bend]), at(&line[after]));
        assert!((ahead_m - aside_m).abs() < NEAR_M, "{ahead_m} {aside_m}");
        // Nine chords of a quarter circle are 0.1 % shorter than it; drawn as long as it, they reach further by as much.
        assert!((ahead_m / 50.0 - 1.0).abs() < 2e-3, "{ahead_m}");
    }

    #[test]
    fn a_simple_course_lies_at_sea_level_in_the_mean() {
        use crate::inputs::quantity::Quantity;
        let course = Course {
            distance_m: Some(Quantity::exact(10_000.0)),
            grade: Some(Quantity::exact(0.02)),
            out_and_back: Some(true),
            ..Course::default()
        };
        let heights: Vec<f64> = profile_of_simple(&course)
            .points
            .iter()
            .map(|point| point.elevation_m)
            .collect();
        assert_eq!(heights, [-50.0, 50.0, -50.0]);
    }
}
