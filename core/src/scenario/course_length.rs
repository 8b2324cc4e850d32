//! How long a course is, and the same kind of course at another length.

use super::{Course, CourseKind, Scenario};
use crate::inputs::fields;
use crate::inputs::quantity::Quantity;

impl Course {
    /// Its length, m: from its first point to its last, or as given. Of a course that goes by time, once that is settled.
    pub fn length_m(&self) -> f64 {
        match (self.kind, self.points.first(), self.points.last()) {
            (CourseKind::Profile, Some(first), Some(last)) => last.distance_m - first.distance_m,
            _ => self
                .distance_m
                .map_or(fields::DISTANCE_M.default, |q| q.value),
        }
    }
}

impl Scenario {
    /// Its own course at another length: slopes and headings stay, and so does the mean elevation of its points.
    pub(super) fn course_of_length(&self, distance_m: f64) -> Course {
        let mut course = self.course.clone();
        course.duration_s = None;
        match (course.kind, self.mean_elevation_m()) {
            (CourseKind::Profile, Some(mean_m)) => {
                let scale = distance_m / course.length_m();
                let first_m = course.points.first().map_or(0.0, |first| first.distance_m);
                for point in &mut course.points {
                    point.distance_m = scale * (point.distance_m - first_m);
                    point.elevation_m = mean_m + scale * (point.elevation_m - mean_m);
                }
            }
            _ => course.distance_m = Some(Quantity::exact(distance_m)),
        }
        course
    }
}
