//! Courses of a few points in an invented shape, to begin from where no road was surveyed.

use std::f64::consts::TAU;

use serde::Deserialize;

use super::course_edits::held;
use super::{Course, CourseKind, Point};
use crate::inputs::fields;

/// An invented shape of a road. Its slopes are assumed (common practice, no source); on a long course they are gentler, so that no
/// hill is higher than 500 m and no wave than 200 m.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Preset {
    /// Level, in 11 points.
    Flat,
    /// Two waves, each a cosine, in 13 points; the steepest stretch rises by 2 %.
    Rolling,
    /// Level, one climb of 5 % to the middle, the same descent, level again, in 11 points; each slope takes a quarter of the length.
    OneClimb,
    /// Away from the start and back on the same road, in 11 points, with a hill in the shape of a cosine whose top is at the turn;
    /// the steepest stretch rises by 1 %. The turn has no radius, so that it is ridden at full speed.
    OutAndBack,
}

/// The heights of a preset as shares of its highest, at distances as shares of its length.
struct Shape {
    points: Vec<(f64, f64)>,
    steepest: f64,
    highest_m: f64,
}

impl Preset {
    fn shape(self) -> Shape {
        let evenly = |stretches: usize, height: &dyn Fn(f64) -> f64| {
            let share = |at: usize| at as f64 / stretches as f64;
            let points = (0..=stretches).map(|at| (share(at), height(share(at))));
            points.collect()
        };
        let waves = |count: f64| move |share: f64| 0.5 - 0.5 * (TAU * count * share).cos();
        match self {
            Self::Flat => Shape {
                points: evenly(10, &|_| 0.0),
                steepest: 0.0,
                highest_m: 0.0,
            },
            Self::Rolling => Shape {
                points: evenly(12, &waves(2.0)),
                steepest: 0.02,
                highest_m: 200.0,
            },
            Self::OneClimb => Shape {
                points: [0.0, 1.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.5, 12.0]
                    .map(|twelfths: f64| {
                        (
                            twelfths / 12.0,
                            (1.0 - (twelfths - 6.0).abs() / 3.0).max(0.0),
                        )
                    })
                    .to_vec(),
                steepest: 0.05,
                highest_m: 500.0,
            },
            Self::OutAndBack => Shape {
                points: evenly(10, &waves(1.0)),
                steepest: 0.01,
                highest_m: 200.0,
            },
        }
    }

    /// The course of this shape, as long as another one. It begins at the height and in the direction of that one: 0 m, and north,
    /// where it says neither. It takes no account of the wind where that one takes none, and goes by time where that one does.
    pub fn course(self, like: &Course) -> Course {
        let length_m = like.length_m();
        let start = start_of(like);
        let Shape {
            points,
            steepest,
            highest_m,
        } = self.shape();
        // The steepest stretch, as shares of the highest over the length.
        let slope = points
            .windows(2)
            .map(|pair| (pair[1].1 - pair[0].1) / (pair[1].0 - pair[0].0))
            .fold(0.0, f64::max);
        let top_m = if slope > 0.0 {
            highest_m.min(steepest * length_m / slope)
        } else {
            0.0
        };
        let bearing_deg = |share: f64| {
            let back = self == Self::OutAndBack && share >= 0.5;
            start
                .bearing_deg
                .map(|bearing_deg| (bearing_deg + if back { 180.0 } else { 0.0 }) % 360.0)
        };
        Course {
            kind: CourseKind::Profile,
            points: points
                .iter()
                .map(|&(share, height)| Point {
                    distance_m: share * length_m,
                    elevation_m: start.elevation_m + height * top_m,
                    bearing_deg: bearing_deg(share),
                    ..Point::default()
                })
                .collect(),
            duration_s: like.duration_s,
            heading: like.heading,
            ..Course::default()
        }
    }
}

/// Where a course begins, with the way it leads there.
fn start_of(course: &Course) -> Point {
    let given = match course.kind {
        CourseKind::Profile => held(&course.points).first().copied(),
        CourseKind::Simple => Some(Point {
            bearing_deg: course.bearing_deg.map(|bearing_deg| bearing_deg.value),
            ..Point::default()
        }),
    };
    let start = given.unwrap_or_default();
    Point {
        bearing_deg: start.bearing_deg.or(Some(fields::BEARING_DEG.default)),
        ..start
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scenario::course_edits::climb_m;

    /// Rounding of sums and products of heights, m.
    const ROUNDING_M: f64 = 1e-6;

    fn of_length(distance_m: f64) -> Course {
        Course {
            distance_m: Some(distance_m.into()),
            bearing_deg: Some(250.0.into()),
            ..Course::default()
        }
    }

    #[test]
    fn a_drawn_course_goes_by_time_where_the_one_before_it_does() {
        let lasting = Course {
            duration_s: Some(43_200.0),
            ..of_length(400_000.0)
        };
        assert_eq!(Preset::Rolling.course(&lasting).duration_s, Some(43_200.0));
        assert_eq!(
            Preset::Rolling.course(&of_length(400_000.0)).duration_s,
            None
        );
    }

    fn steepest(course: &Course) -> f64 {
        let slope = |pair: &[Point]| {
            (pair[1].elevation_m - pair[0].elevation_m) / (pair[1].distance_m - pair[0].distance_m)
        };
        course.points.windows(2).map(slope).fold(0.0, f64::max)
    }

    #[test]
    fn each_shape_is_as_long_and_as_steep_and_climbs_as_much_as_it_says() {
        // The climbs follow from the slopes: of one cosine in stretches of a sixth or a tenth of a wave, the steepest one rises by
        // half, and by (cos 72° − cos 108°)/2, of its height.
        let tenth = 72.0_f64.to_radians().cos();
        let expected = [
            (Preset::Flat, 11, 0.0, 0.0),
            (
                Preset::Rolling,
                13,
                0.02,
                2.0 * 0.02 * 24_000.0 / 12.0 / 0.5,
            ),
            (Preset::OneClimb, 11, 0.05, 0.05 * 24_000.0 / 4.0),
            (Preset::OutAndBack, 11, 0.01, 0.01 * 2_400.0 / tenth),
        ];
        for (preset, count, slope, climb) in expected {
            let course = preset.course(&of_length(24_000.0));
            assert_eq!(course.points.len(), count, "{preset:?}");
            assert!((course.length_m() - 24_000.0).abs() < ROUNDING_M);
            assert!((steepest(&course) - slope).abs() < 1e-9, "{preset:?}");
            let climbs_m = climb_m(course.points.iter().map(|point| point.elevation_m));
            assert!(
                (climbs_m - climb).abs() < ROUNDING_M,
                "{preset:?}: {climbs_m}"
            );
        }
    }

    #[test]
    fn the_way_back_leads_back_and_every_other_road_leads_on() {
        let ways = |preset: Preset| -> Vec<f64> {
            let course = preset.course(&of_length(40_000.0));
            course.points.iter().filter_map(|p| p.bearing_deg).collect()
        };
        assert_eq!(ways(Preset::Rolling), [250.0; 13]);
        let both = ways(Preset::OutAndBack);
        assert_eq!(both[..5], [250.0; 5]);
        assert_eq!(both[5..], [70.0; 6]);
    }

    #[test]
    fn on_a_very_long_course_hills_are_no_higher_than_stated() {
        for (preset, highest_m) in [
            (Preset::Rolling, 200.0),
            (Preset::OneClimb, 500.0),
            (Preset::OutAndBack, 200.0),
        ] {
            let course = preset.course(&of_length(fields::DISTANCE_M.max));
            let top_m = course.points.iter().map(|point| point.elevation_m);
            let top_m = top_m.fold(0.0, f64::max);
            assert!(
                (top_m - highest_m).abs() < ROUNDING_M,
                "{preset:?}: {top_m}"
            );
        }
    }
}
