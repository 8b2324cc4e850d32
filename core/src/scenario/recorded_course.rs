//! A course from where somebody rode: length along the ellipsoid, smoothed elevation, the way the road leads, and its bends.
//!
//! The line through the positions is cut into even steps of some metres. Elevation is the mean around each step, over a reach that is the rider's choice, because barometers and maps are uncertain by metres and every wiggle adds to
//! the climb. Headings are taken over the steps around, and the radius of a bend is the length over which the road turns divided by
//! the angle. Then neighbouring steps are joined as for any long course.
//!
//! The points of a surveyed road are no recording: they are the course, as they are.

use super::course_edits::climb_m;
use super::{Course, CourseKind, HeadingForm, Point, Scenario};
use crate::inputs::fields;
use crate::inputs::message::{self, Message};
use crate::physics::air::turn_deg;
use crate::physics::geodesy::step_m;

/// The columns of a recording that say where the road leads; what is missing is not a number.
#[derive(Clone, Copy, Debug)]
pub struct Track<'a> {
    /// Degrees north.
    pub latitude_deg: &'a [f64],
    /// Degrees east.
    pub longitude_deg: &'a [f64],
    /// Metres above sea level.
    pub elevation_m: &'a [f64],
    /// Metres along the road, which count where there are no positions.
    pub distance_m: &'a [f64],
    /// The way a surveyed road leads from here on, degrees.
    pub bearing_deg: &'a [f64],
    /// Radius of the bend from here to the next point of a surveyed road, m.
    pub radius_m: &'a [f64],
    /// The share of the wind that reaches the rider from there to the next point.
    pub wind_share: &'a [f64],
    /// Whether those with a distance are points of a surveyed road.
    pub is_surveyed: bool,
}

/// A course that was made, and what is to be said of it.
#[derive(Clone, Debug, PartialEq)]
pub struct RecordedCourse {
    /// The course.
    pub course: Course,
    /// Its length, m.
    pub distance_m: f64,
    /// The sum of rises of the elevation as it was recorded, m.
    pub recorded_climb_m: f64,
    /// The same once smoothed, m.
    pub climb_m: f64,
    /// Whether elevation is known; a road without is taken as level.
    pub has_elevation: bool,
    /// Whether it is known which way the road leads; without positions it is not, unless it was surveyed.
    pub has_bearings: bool,
    /// Whether it was surveyed, so that nothing was smoothed.
    pub is_surveyed: bool,
}

/// Why a recording gives no course.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoCourse {
    /// It has neither positions nor a distance.
    NoRoad,
    /// It is shorter than a course may be, or longer.
    Length,
}

impl NoCourse {
    /// The sentence that says so.
    pub fn message(self) -> Message {
        match self {
            Self::NoRoad => message::no_road(),
            Self::Length => message::course_length(),
        }
    }
}

/// A course is kept and shared as text: more digits than these say nothing and are carried about all the same.
fn round(point: &mut Point) {
    fn to_tenths(number: f64) -> f64 {
        (10.0 * number).round() / 10.0
    }
    point.distance_m = to_tenths(point.distance_m);
    point.elevation_m = (100.0 * point.elevation_m).round() / 100.0;
    point.bearing_deg = point.bearing_deg.map(to_tenths);
    point.radius_m = point.radius_m.map(to_tenths);
}

/// Length of the even steps, m.
const STEP_M: f64 = 10.0;
/// The most of them: longer courses have longer steps.
const MOST_STEPS: f64 = 40_000.0;
/// A heading is taken over this length on each side, m: positions are uncertain by a few metres.
const HEADING_REACH_M: f64 = 15.0;
/// Wider bends are no bends: nobody brakes for them, m.
const WIDEST_M: f64 = 80.0;
/// Narrower than this is the receiver's error, m.
const NARROWEST_M: f64 = 5.0;
/// The most points of the course.
const MOST_POINTS: usize = 2_000;
/// The most elevation is smoothed over on each side, m.
const MOST_REACH_M: f64 = 2_000.0;

/// A place on the line.
#[derive(Clone, Copy, Debug)]
struct Place {
    along_m: f64,
    north_m: f64,
    east_m: f64,
    elevation_m: f64,
}

/// The course of a track, its elevation smoothed over a reach of this many metres on each side; 0 leaves it as it is.
///
/// # Errors
/// [`NoCourse`] where no road can be made of it.
pub fn recorded_course(track: &Track<'_>, reach_m: f64) -> Result<RecordedCourse, NoCourse> {
    if let Some(points) = surveyed(track) {
        return of_survey(points);
    }
    let (mut line, has_positions) = line(track)?;
    let distance_m = line.last().map_or(0.0, |last| last.along_m);
    check_length(distance_m)?;
    let has_elevation = line.iter().any(|place| place.elevation_m.is_finite());
    bridge_elevation(&mut line);
    let recorded_climb_m = climb_m(line.iter().map(|place| place.elevation_m));
    let steps = (distance_m / STEP_M).ceil().min(MOST_STEPS);
    let step_m = distance_m / steps;
    let even = evenly(&line, steps as usize, step_m);
    let reach = (reach_m.clamp(0.0, MOST_REACH_M) / step_m).round() as usize;
    let smooth: Vec<f64> = (0..even.len())
        .map(|at| local_mean(&even, at, reach))
        .collect();
    let turns = Turns {
        places: &even,
        reach: (HEADING_REACH_M / step_m).ceil() as usize,
        step_m,
    };
    let points = even
        .iter()
        .zip(&smooth)
        .enumerate()
        .map(|(at, (place, &elevation_m))| Point {
            distance_m: place.along_m,
            elevation_m,
            bearing_deg: has_positions.then(|| turns.bearing_deg(at)),
            radius_m: if has_positions {
                turns.radius_m(at)
            } else {
                None
            },
            wind_share: None,
        })
        .collect();
    let mut scenario = Scenario {
        course: Course {
            kind: CourseKind::Profile,
            points,
            heading: (!has_positions).then_some(HeadingForm::Ignore),
            ..Course::default()
        },
        ..Scenario::default()
    };
    scenario.simplify_course(MOST_POINTS);
    scenario.course.points.iter_mut().for_each(round);
    Ok(RecordedCourse {
        course: scenario.course,
        distance_m,
        recorded_climb_m,
        climb_m: climb_m(smooth.into_iter()),
        has_elevation,
        has_bearings: has_positions,
        is_surveyed: false,
    })
}

fn check_length(distance_m: f64) -> Result<(), NoCourse> {
    if (fields::DISTANCE_M.min..=fields::DISTANCE_M.max).contains(&distance_m) {
        Ok(())
    } else {
        Err(NoCourse::Length)
    }
}

/// The points of a surveyed road; `None` where there is none, or where the distances do not go forward, as in a file that another
/// program turned round: then positions tell.
fn surveyed(track: &Track<'_>) -> Option<Vec<Point>> {
    let known = |column: &[f64], at: usize| column.get(at).copied().filter(|x| x.is_finite());
    let mut points: Vec<Point> = Vec::new();
    for at in 0..track.distance_m.len() {
        let (Some(distance_m), elevation_m) = (known(track.distance_m, at), elevation_m(track, at))
        else {
            continue;
        };
        if points
            .last()
            .is_some_and(|before| distance_m <= before.distance_m)
        {
            return None;
        }
        if elevation_m.is_finite() {
            points.push(Point {
                distance_m,
                elevation_m,
                bearing_deg: known(track.bearing_deg, at),
                radius_m: known(track.radius_m, at),
                wind_share: known(track.wind_share, at),
            });
        }
    }
    (track.is_surveyed && points.len() >= 2).then_some(points)
}

/// The course of a surveyed road.
fn of_survey(points: Vec<Point>) -> Result<RecordedCourse, NoCourse> {
    let has_bearings = points.iter().any(|point| point.bearing_deg.is_some());
    let course = Course {
        kind: CourseKind::Profile,
        points,
        heading: (!has_bearings).then_some(HeadingForm::Ignore),
        ..Course::default()
    };
    let distance_m = course.length_m();
    check_length(distance_m)?;
    let climb_m = climb_m(course.points.iter().map(|point| point.elevation_m));
    Ok(RecordedCourse {
        course,
        distance_m,
        recorded_climb_m: climb_m,
        climb_m,
        has_elevation: true,
        has_bearings,
        is_surveyed: true,
    })
}

/// The line through the positions, or along the distances where there are none; each place is further than the one before.
fn line(track: &Track<'_>) -> Result<(Vec<Place>, bool), NoCourse> {
    let count = track.elevation_m.len();
    let at = |column: &[f64], i: usize| column.get(i).copied().unwrap_or(f64::NAN);
    let mut line: Vec<Place> = Vec::new();
    let mut last: Option<(f64, f64)> = None;
    for i in 0..count.max(track.latitude_deg.len()) {
        let position = (at(track.latitude_deg, i), at(track.longitude_deg, i));
        if !(position.0.is_finite() && position.1.is_finite()) {
            continue;
        }
        let elevation_m = elevation_m(track, i);
        let before = line.last().copied();
        let (north_m, east_m) = last.map_or((0.0, 0.0), |last| step_m(last, position));
        let leg_m = north_m.hypot(east_m);
        if before.is_some() && leg_m == 0.0 {
            continue;
        }
        let before = before.unwrap_or(Place {
            along_m: 0.0,
            north_m: 0.0,
            east_m: 0.0,
            elevation_m,
        });
        line.push(Place {
            along_m: before.along_m + leg_m,
            north_m: before.north_m + north_m,
            east_m: before.east_m + east_m,
            elevation_m,
        });
        last = Some(position);
    }
    if line.len() >= 2 {
        return Ok((line, true));
    }
    line.clear();
    let first_m = track.distance_m.iter().copied().find(|x| x.is_finite());
    let first_m = first_m.ok_or(NoCourse::NoRoad)?;
    for (i, &distance_m) in track.distance_m.iter().enumerate() {
        let along_m = distance_m - first_m;
        if along_m.is_finite() && line.last().is_none_or(|before| along_m > before.along_m) {
            line.push(Place {
                along_m,
                north_m: 0.0,
                east_m: 0.0,
                elevation_m: elevation_m(track, i),
            });
        }
    }
    if line.len() < 2 {
        return Err(NoCourse::NoRoad);
    }
    Ok((line, false))
}

/// The elevation of a sample, m; not a number where none was recorded, or one that no road has.
fn elevation_m(track: &Track<'_>, sample: usize) -> f64 {
    let roads_m = fields::POINT_ELEVATION_M.min..=fields::POINT_ELEVATION_M.max;
    let recorded_m = track.elevation_m.get(sample).copied();
    recorded_m
        .filter(|recorded_m| roads_m.contains(recorded_m))
        .unwrap_or(f64::NAN)
}

/// Elevation that is missing becomes that of a straight line between its neighbours; level where there is none.
fn bridge_elevation(line: &mut [Place]) {
    let known: Vec<(f64, f64)> = line
        .iter()
        .filter(|place| place.elevation_m.is_finite())
        .map(|place| (place.along_m, place.elevation_m))
        .collect();
    for place in line
        .iter_mut()
        .filter(|place| !place.elevation_m.is_finite())
    {
        place.elevation_m =
            crate::numerics::solve::interpolate(&known, place.along_m).unwrap_or(0.0);
    }
}

/// Places at even steps along the line.
fn evenly(line: &[Place], steps: usize, step_m: f64) -> Vec<Place> {
    let mut even = Vec::with_capacity(steps + 1);
    let mut at = 1;
    for step in 0..=steps {
        let along_m = step_m * step as f64;
        while at + 1 < line.len() && line[at].along_m < along_m {
            at += 1;
        }
        let (from, to) = (&line[at - 1], &line[at]);
        let share = ((along_m - from.along_m) / (to.along_m - from.along_m)).clamp(0.0, 1.0);
        let between = |a: f64, b: f64| a + share * (b - a);
        even.push(Place {
            along_m,
            north_m: between(from.north_m, to.north_m),
            east_m: between(from.east_m, to.east_m),
            elevation_m: between(from.elevation_m, to.elevation_m),
        });
    }
    even
}

/// The mean of the elevations around a place, as many on either side: where a straight line of least squares through them passes
/// it. Towards the ends there are fewer, so that start and finish stay as high as they are.
fn local_mean(places: &[Place], at: usize, reach: usize) -> f64 {
    let reach = reach.min(at).min(places.len() - 1 - at);
    let around = &places[at - reach..=at + reach];
    around.iter().map(|place| place.elevation_m).sum::<f64>() / around.len() as f64
}

/// Where the road leads, and how it turns.
struct Turns<'a> {
    places: &'a [Place],
    reach: usize,
    step_m: f64,
}

impl Turns<'_> {
    fn bearing_deg(&self, at: usize) -> f64 {
        let from = &self.places[at.saturating_sub(self.reach)];
        let to = &self.places[(at + self.reach).min(self.places.len() - 1)];
        let (north_m, east_m) = (to.north_m - from.north_m, to.east_m - from.east_m);
        east_m.atan2(north_m).to_degrees().rem_euclid(360.0)
    }

    /// The radius of the bend from a place on, where there is one.
    fn radius_m(&self, at: usize) -> Option<f64> {
        let before = at.checked_sub(self.reach)?;
        let after = at + self.reach;
        if after >= self.places.len() {
            return None;
        }
        let turned_deg = turn_deg(self.bearing_deg(before), self.bearing_deg(after));
        let turning_m = 2.0 * self.reach as f64 * self.step_m;
        let radius_m = turning_m / turned_deg.to_radians().abs();
        (radius_m < WIDEST_M).then(|| radius_m.max(NARROWEST_M))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Degrees of latitude in a metre, near enough.
    const DEG_PER_M: f64 = 1.0 / 111_200.0;

    /// A track through points to the north and east, m, at the equator, where both degrees are nearly as long.
    fn course(places_m: &[(f64, f64, f64)], reach_m: f64) -> RecordedCourse {
        let latitude_deg: Vec<f64> = places_m.iter().map(|place| place.0 * DEG_PER_M).collect();
        let longitude_deg: Vec<f64> = places_m.iter().map(|place| place.1 * DEG_PER_M).collect();
        let elevation_m: Vec<f64> = places_m.iter().map(|place| place.2).collect();
        let track = Track {
            latitude_deg: &latitude_deg,
            longitude_deg: &longitude_deg,
            elevation_m: &elevation_m,
            distance_m: &[],
            bearing_deg: &[],
            radius_m: &[],
            wind_share: &[],
            is_surveyed: false,
        };
        recorded_course(&track, reach_m).unwrap()
    }

    #[test]
    fn a_straight_climb_keeps_its_length_slope_and_heading() {
        let places: Vec<_> = (0..=200)
            .map(|i| (0.0, 20.0 * f64::from(i), f64::from(i)))
            .collect();
        let made = course(&places, 100.0);
        // The ellipsoid's degree of longitude there is 0.1 % longer than the one above.
        assert!(
            (made.distance_m / 4000.0 - 1.0).abs() < 2e-3,
            "{}",
            made.distance_m
        );
        assert!((made.climb_m - 200.0).abs() < 1e-6, "{}", made.climb_m);
        let points = &made.course.points;
        assert!(points.len() <= 2000 && points[0].distance_m == 0.0);
        assert!(points.iter().all(|point| point.radius_m.is_none()));
        assert!(
            points
                .iter()
                .all(|point| (point.bearing_deg.unwrap() - 90.0).abs() < 0.1)
        );
    }

    #[test]
    fn a_bend_has_about_the_radius_that_was_ridden() {
        // Straight on to the north, a quarter circle of 40 m to the right, straight on to the east; a point every 2 m.
        const RADIUS_M: f64 = 40.0;
        let mut places: Vec<(f64, f64, f64)> =
            (0..200).map(|i| (2.0 * f64::from(i), 0.0, 50.0)).collect();
        let (north_m, turns) = (400.0, 31);
        for i in 0..=turns {
            let angle = f64::from(i) / f64::from(turns) * std::f64::consts::FRAC_PI_2;
            places.push((
                north_m + RADIUS_M * angle.sin(),
                RADIUS_M * (1.0 - angle.cos()),
                50.0,
            ));
        }
        places.extend((1..200).map(|i| (north_m + RADIUS_M, RADIUS_M + 2.0 * f64::from(i), 50.0)));
        let made = course(&places, 0.0);
        let narrowest = made
            .course
            .points
            .iter()
            .filter_map(|point| point.radius_m)
            .fold(f64::INFINITY, f64::min);
        // Headings over 40 m see a quarter circle of 63 m a little wider.
        assert!(
            (RADIUS_M..1.4 * RADIUS_M).contains(&narrowest),
            "{narrowest}"
        );
        let first = made.course.points[0].bearing_deg.unwrap();
        let last = made.course.points.last().unwrap().bearing_deg.unwrap();
        assert!(
            first.min(360.0 - first) < 0.5 && (last - 90.0).abs() < 0.5,
            "{first} {last}"
        );
    }

    #[test]
    fn the_wider_the_reach_the_less_the_climb() {
        let places: Vec<_> = (0..=300)
            .map(|i| {
                (
                    10.0 * f64::from(i),
                    0.0,
                    100.0 + if i % 2 == 0 { 1.0 } else { -1.0 },
                )
            })
            .collect();
        let climbs: Vec<f64> = [0.0, 50.0, 200.0]
            .map(|reach_m| course(&places, reach_m).climb_m)
            .to_vec();
        assert!(climbs[0] > climbs[1] && climbs[1] > climbs[2], "{climbs:?}");
        assert!((course(&places, 0.0).recorded_climb_m - 300.0).abs() < 1.0);
    }

    #[test]
    fn without_positions_the_distance_counts_and_no_heading_is_known() {
        let distance_m: Vec<f64> = (0..100).map(|i| 10.0 * f64::from(i)).collect();
        let track = Track {
            latitude_deg: &[],
            longitude_deg: &[],
            elevation_m: &[],
            distance_m: &distance_m,
            bearing_deg: &[],
            radius_m: &[],
            wind_share: &[],
            is_surveyed: false,
        };
        let made = recorded_course(&track, 100.0).unwrap();
        assert!(
            (made.distance_m - 990.0).abs() < 1e-9 && !made.has_elevation && !made.has_bearings
        );
        assert!(
            made.course
                .points
                .iter()
                .all(|point| point.bearing_deg.is_none())
        );
        assert_eq!(made.course.heading, Some(HeadingForm::Ignore));
    }

    #[test]
    fn what_is_no_road_is_refused() {
        let nothing = Track {
            latitude_deg: &[],
            longitude_deg: &[],
            elevation_m: &[],
            distance_m: &[],
            bearing_deg: &[],
            radius_m: &[],
            wind_share: &[],
            is_surveyed: false,
        };
        assert_eq!(recorded_course(&nothing, 0.0), Err(NoCourse::NoRoad));
        let short = Track {
            distance_m: &[0.0, 20.0],
            ..nothing
        };
        assert_eq!(recorded_course(&short, 0.0), Err(NoCourse::Length));
        let odd = Track {
            distance_m: &[f64::NAN, f64::INFINITY, 0.0],
            ..nothing
        };
        assert!(recorded_course(&odd, f64::NAN).is_err());
    }
}
