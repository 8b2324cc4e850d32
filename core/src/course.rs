//! Where the ride goes: stretches of one slope, heading and bend each.

use crate::air::Heading;
use crate::resistance::slope;

/// A stretch of road of one slope, heading and bend.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// Length along the road, m.
    pub length_m: f64,
    /// Sine and cosine of the slope's angle.
    pub slope: (f64, f64),
    /// The way it leads.
    pub heading: Heading,
    /// Radius of the bend, m, if it bends.
    pub radius_m: Option<f64>,
}

/// A point of a surveyed course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Along the road from the start, m.
    pub distance_m: f64,
    /// Above sea level, m.
    pub elevation_m: f64,
    /// The way the road leads from here on, degrees clockwise from north.
    pub bearing_deg: f64,
    /// Radius of the bend from here to the next point, m.
    pub radius_m: Option<f64>,
}

/// A course from start to finish.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// The stretches in the order ridden.
    pub segments: Vec<Segment>,
}

impl Course {
    /// One grade and bearing; out and back, the second half leads the other way up the opposite grade.
    pub fn simple(distance_m: f64, grade: f64, bearing_deg: f64, out_and_back: bool) -> Self {
        let heading = Heading::new(bearing_deg);
        let leg = |length_m, grade, heading| Segment { length_m, slope: slope(grade), heading, radius_m: None };
        let segments = if out_and_back {
            let half = 0.5 * distance_m;
            vec![leg(half, grade, heading), leg(half, -grade, heading.reversed())]
        } else {
            vec![leg(distance_m, grade, heading)]
        };
        Self { segments }
    }

    /// From surveyed points of strictly ascending distance. The grade of a stretch is its rise over its distance.
    pub fn profile(points: &[Point]) -> Self {
        let segments = points
            .windows(2)
            .map(|pair| {
                let length_m = pair[1].distance_m - pair[0].distance_m;
                Segment {
                    length_m,
                    slope: slope((pair[1].elevation_m - pair[0].elevation_m) / length_m),
                    heading: Heading::new(pair[0].bearing_deg),
                    radius_m: pair[0].radius_m,
                }
            })
            .collect();
        Self { segments }
    }

    /// The whole length, m.
    pub fn distance_m(&self) -> f64 {
        self.segments.iter().map(|segment| segment.length_m).sum()
    }

    /// The same kind of course at another length: every stretch is scaled, slopes and headings stay.
    pub fn scaled_to(&self, distance_m: f64) -> Self {
        let scale = distance_m / self.distance_m();
        let scaled = |segment: &Segment| Segment { length_m: segment.length_m * scale, ..*segment };
        Self { segments: self.segments.iter().map(scaled).collect() }
    }
}
