//! A course that is short enough for a link: of fewer points, whose numbers have no more digits than a survey knows.

use super::{Course, Point, Scenario};
use crate::inputs::error::Warning;

/// What is kept of a distance and of a radius, parts of a metre.
const PER_METRE: f64 = 10.0;
/// What is kept of a height, parts of a metre.
const HEIGHTS_PER_METRE: f64 = 100.0;
/// What is kept of a bearing, parts of a degree.
const PER_DEGREE: f64 = 10.0;
/// What is kept of a share.
const PER_ONE: f64 = 100.0;

impl Scenario {
    /// Leaves a surveyed course at most `most` points, as [`Scenario::simplify_course`] does, and rounds them: distances and radii
    /// to 0.1 m, heights to 0.01 m, bearings to 0.1°, shares to 0.01. A bearing that is that of the point before is left out. Where
    /// rounding would bring points too close or make a stretch too steep, nothing is rounded. The warning says that points were
    /// left out; `None` where they are few enough.
    pub fn shorten_course(&mut self, most: usize) -> Option<Warning> {
        let simplified = self.simplify_course(most);
        let rounded = Scenario {
            course: Course {
                points: rounded(&self.course.points),
                ..self.course.clone()
            },
            ..Scenario::default()
        };
        if rounded.check().is_ok() {
            self.course = rounded.course;
        }
        simplified
    }
}

fn rounded(points: &[Point]) -> Vec<Point> {
    let to = |per: f64| move |value: f64| (value * per).round() / per;
    let mut held_deg = None;
    let short = |point: &Point| {
        let bearing_deg = point.bearing_deg.map(to(PER_DEGREE));
        let turned = bearing_deg.is_some() && bearing_deg != held_deg;
        held_deg = bearing_deg.or(held_deg);
        Point {
            distance_m: to(PER_METRE)(point.distance_m),
            elevation_m: to(HEIGHTS_PER_METRE)(point.elevation_m),
            bearing_deg: bearing_deg.filter(|_| turned),
            radius_m: point.radius_m.map(to(PER_METRE)),
            wind_share: point.wind_share.map(to(PER_ONE)),
        }
    };
    points.iter().map(short).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::CourseKind;

    fn road(between_m: f64) -> Scenario {
        let point = |at: usize| Point {
            distance_m: between_m * at as f64,
            elevation_m: 100.0 + 20.0 * (0.02 * at as f64).sin(),
            bearing_deg: (at < 2_000).then_some(47.123_456),
            ..Point::default()
        };
        Scenario {
            course: Course {
                kind: CourseKind::Profile,
                points: (0..2_400).map(point).collect(),
                ..Course::default()
            },
            ..Scenario::default()
        }
    }

    #[test]
    fn a_shortened_course_has_few_points_few_digits_and_each_bearing_once() {
        let mut scenario = road(10.004_3);
        assert!(scenario.shorten_course(200).is_some());
        let points = &scenario.course.points;
        assert!((100..=200).contains(&points.len()), "{}", points.len());
        assert_eq!(points[0].bearing_deg, Some(47.1));
        assert!(points[1..].iter().all(|point| point.bearing_deg.is_none()));
        let short = |value: f64| format!("{value}").len() <= "12345.67".len();
        assert!(
            points
                .iter()
                .all(|p| short(p.distance_m) && short(p.elevation_m))
        );
        assert!(scenario.shorten_course(200).is_none());
    }

    #[test]
    fn points_that_rounding_would_bring_too_close_stay_as_they_are() {
        let mut scenario = road(0.101);
        let before = scenario.course.points.clone();
        assert!(scenario.shorten_course(2_400).is_none());
        assert_eq!(scenario.course.points, before);
    }
}
