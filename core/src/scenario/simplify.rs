//! Fewer points of a long surveyed course, for questions that ride it many times.

use super::{Course, CourseKind, Point, Scenario};
use crate::inputs::error::Warning;
use crate::inputs::fields;
use crate::inputs::message::{self, Message};
use crate::physics::air::turn_deg;

/// How far the simplified road may leave the surveyed one.
#[derive(Clone, Copy)]
struct Tolerance {
    elevation_m: f64,
    bearing_deg: f64,
    ln_radius: f64,
    bends_are_kept: bool,
    longest_m: f64,
}

/// What is tried first; each further attempt allows twice as much.
const FIRST: Tolerance = Tolerance {
    elevation_m: 0.02,
    bearing_deg: 0.5,
    ln_radius: 0.05,
    bends_are_kept: true,
    longest_m: f64::INFINITY,
};
/// The last of so many attempts allows ten metres, any bearing and any radius. All are made with bends apart from straight
/// road, and where that is not enough again with both joined; only then is any elevation allowed.
const ATTEMPTS: u32 = 10;
/// No stretch is made longer than so many times the mean length that is needed, so that the points that are left are spread
/// over the course. Two neighbours together are longer than that, which leaves two thirds of the points allowed, or fewer.
const LONGEST: f64 = 3.0;
/// With fewer points there is no shape to keep.
const LEAST: usize = 10;

impl Tolerance {
    fn all(longest_m: f64) -> impl Iterator<Item = Self> {
        let attempt = move |attempt: u32| {
            let wider = f64::from(1_u32 << (attempt % ATTEMPTS));
            Self {
                elevation_m: wider * FIRST.elevation_m,
                bearing_deg: wider * FIRST.bearing_deg,
                ln_radius: wider * FIRST.ln_radius,
                bends_are_kept: attempt < ATTEMPTS,
                longest_m,
            }
        };
        let any = Self {
            elevation_m: f64::INFINITY,
            ..attempt(2 * ATTEMPTS - 1)
        };
        (0..2 * ATTEMPTS).map(attempt).chain([any])
    }
}

impl Scenario {
    /// Leaves a surveyed course at most `most` points (ten at least): neighbouring stretches are joined where elevation,
    /// bearing and radius stay within a tolerance, the least of a series that is enough. Length and the elevation of the
    /// points that stay are as surveyed. The warning says that points were left out; `None` where they are few enough.
    pub fn simplify_course(&mut self, most: usize) -> Option<Warning> {
        let simplified = self.course.simplify(most)?;
        Some(Warning::of(
            format!("{}.points", self.course_path()),
            simplified,
        ))
    }
}

impl Course {
    fn simplify(&mut self, most: usize) -> Option<Message> {
        let most = most.max(LEAST);
        let points = &mut self.points;
        let before = points.len();
        let (CourseKind::Profile, true) = (self.kind, before > most) else {
            return None;
        };
        hold_bearings(points);
        let length_m = points.last()?.distance_m - points.first()?.distance_m;
        let fewer = Tolerance::all(LONGEST * length_m / most as f64)
            .map(|tolerance| joined(points, tolerance))
            .find(|fewer| fewer.len() <= most)?;
        let after = fewer.len();
        *points = fewer;
        Some(message::simplified(before, after))
    }
}

impl Scenario {
    /// The same for a question that rides every event in some positions, on the scenario's course or the events' own, which have
    /// `together` points at most over all rides: a quarter as many with a yaw table, whose rides take longer, and never so few
    /// that the shape of a road is lost.
    #[cfg(feature = "all")]
    pub fn simplify_for(&mut self, positions: usize, together: usize) -> Vec<Warning> {
        const LEAST_POINTS: usize = 24;
        let with_table = self
            .positions
            .iter()
            .any(|position| !position.yaw_table.is_empty());
        let together = if with_table { together / 4 } else { together };
        let rides = positions * self.events.len();
        let most = (together / rides.max(1)).clamp(LEAST_POINTS, fields::MOST_POINTS_RIDDEN);
        let mut warnings = Vec::from_iter(self.simplify_course(most));
        for (place, event) in self.events.iter_mut().enumerate() {
            let simplified = event.course.as_mut().and_then(|own| own.simplify(most));
            warnings.extend(simplified.map(|simplified| {
                Warning::new(
                    format!("scenario.events[{place}].course.points"),
                    simplified.text,
                    message::at_event(simplified, place + 1),
                )
            }));
        }
        warnings
    }
}

/// Gives every point the bearing that the road has there: the last one given, or the first before any was. A course without
/// bearings stays without.
fn hold_bearings(points: &mut [Point]) {
    let mut held = points.iter().find_map(|point| point.bearing_deg);
    for point in points {
        held = point.bearing_deg.or(held);
        point.bearing_deg = held;
    }
}

/// The way the road leads from a point; any one where the course has none.
fn bearing_deg(point: &Point) -> f64 {
    point.bearing_deg.unwrap_or_default()
}

fn wind_share(point: &Point) -> f64 {
    point.wind_share.unwrap_or(fields::POINT_WIND_SHARE.default)
}

/// One stretch that is being made of several.
struct Joined {
    first: Point,
    bearing_deg: f64,
    /// The slopes from the first point that pass every point so far within the tolerance.
    slopes: (f64, f64),
    length_m: f64,
    bends_m: f64,
    /// The integral over the bends of `1/√radius`, to which their riding time is proportional.
    slowness: f64,
    /// The integral of the bearing as a vector.
    heading: (f64, f64),
    /// The integral of the share of the wind.
    windy_m: f64,
}

impl Joined {
    fn new(first: Point) -> Self {
        Self {
            first,
            bearing_deg: bearing_deg(&first),
            slopes: (f64::NEG_INFINITY, f64::INFINITY),
            length_m: 0.0,
            bends_m: 0.0,
            slowness: 0.0,
            heading: (0.0, 0.0),
            windy_m: 0.0,
        }
    }

    /// Whether the stretch from `from` to `to` can be joined.
    fn takes(&self, from: &Point, to: &Point, tolerance: Tolerance) -> bool {
        let apart = turn_deg(self.bearing_deg, bearing_deg(from));
        let alike = match (self.first.radius_m, from.radius_m) {
            (Some(own_m), Some(other_m)) => (own_m / other_m).ln().abs() <= tolerance.ln_radius,
            (None, None) => true,
            _ => !tolerance.bends_are_kept,
        };
        let slope =
            (to.elevation_m - self.first.elevation_m) / (to.distance_m - self.first.distance_m);
        let short = to.distance_m - self.first.distance_m <= tolerance.longest_m;
        let sheltered = !tolerance.bends_are_kept || wind_share(&self.first) == wind_share(from);
        short
            && alike
            && sheltered
            && apart.abs() <= tolerance.bearing_deg
            && (self.slopes.0..=self.slopes.1).contains(&slope)
    }

    fn take(&mut self, from: &Point, to: &Point, tolerance: Tolerance) {
        let length_m = to.distance_m - from.distance_m;
        let (sin, cos) = bearing_deg(from).to_radians().sin_cos();
        self.heading = (
            self.heading.0 + length_m * sin,
            self.heading.1 + length_m * cos,
        );
        self.length_m += length_m;
        self.windy_m += length_m * wind_share(from);
        if let Some(radius_m) = from.radius_m {
            self.bends_m += length_m;
            self.slowness += length_m / radius_m.sqrt();
        }
        let away_m = to.distance_m - self.first.distance_m;
        let rise_m = to.elevation_m - self.first.elevation_m;
        self.slopes.0 = self.slopes.0.max((rise_m - tolerance.elevation_m) / away_m);
        self.slopes.1 = self.slopes.1.min((rise_m + tolerance.elevation_m) / away_m);
    }

    /// The point that the joined stretch begins at.
    fn point(&self) -> Point {
        let (sin, cos) = self.heading;
        // Bearings that cancel lead nowhere; the first one stands for them.
        let turned = sin.hypot(cos) > 1e-6 * self.length_m;
        let mean_deg = if turned {
            sin.atan2(cos).to_degrees()
        } else {
            self.bearing_deg
        };
        Point {
            bearing_deg: self.first.bearing_deg.map(|_| mean_deg),
            radius_m: (2.0 * self.bends_m > self.length_m)
                .then(|| (self.bends_m / self.slowness).powi(2)),
            wind_share: (self.windy_m < self.length_m).then(|| self.windy_m / self.length_m),
            ..self.first
        }
    }
}

fn joined(points: &[Point], tolerance: Tolerance) -> Vec<Point> {
    let (Some(&first), Some(&last)) = (points.first(), points.last()) else {
        return Vec::new();
    };
    let mut fewer = Vec::new();
    let mut now = Joined::new(first);
    for pair in points.windows(2) {
        let (from, to) = (&pair[0], &pair[1]);
        if now.length_m > 0.0 && !now.takes(from, to, tolerance) {
            fewer.push(now.point());
            now = Joined::new(*from);
        }
        now.take(from, to, tolerance);
    }
    fewer.push(now.point());
    fewer.push(last);
    fewer
}
