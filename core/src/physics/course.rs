//! Where the ride goes: stretches of one slope, heading and bend each.
//!
//! A turn of an out-and-back course is a level half circle between its halves, a bend like any other, which keeps its
//! length where the course is stretched. It is absent unless given, so that a scenario's time stays what it was.

use crate::physics::air::Heading;
use crate::physics::resistance::slope;

/// A stretch of road of one slope, heading and bend.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// Length along the road, m.
    pub length_m: f64,
    /// Sine and cosine of the slope's angle.
    pub slope: (f64, f64),
    /// The way it leads; `None` where that is not known, and the wind is left out there.
    pub heading: Option<Heading>,
    /// Radius of the bend, m, if it bends.
    pub radius_m: Option<f64>,
    /// The share of the wind along the course that reaches the rider here: 1 in the open, less beside hedges or in a wood.
    pub wind_share: f64,
    /// Whether it keeps its length where the course is made longer or shorter, as a turn in the road does.
    pub keeps_length: bool,
}

impl Segment {
    /// Rise over horizontal length.
    pub fn grade(&self) -> f64 {
        self.slope.0 / self.slope.1
    }
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
    /// The share of the wind that reaches the rider from here to the next point.
    pub wind_share: f64,
}

/// A course from start to finish.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// The stretches in the order ridden.
    pub segments: Vec<Segment>,
    /// No stretch is longer, m, at whatever length the course has: infinite unless it was cut into pieces.
    pub longest_m: f64,
}

impl Course {
    fn of(segments: Vec<Segment>) -> Self {
        Self {
            segments,
            longest_m: f64::INFINITY,
        }
    }

    /// One grade and bearing; out and back, the second half leads the other way up the opposite grade.
    pub fn simple(distance_m: f64, grade: f64, bearing_deg: f64, out_and_back: bool) -> Self {
        let heading = Heading::new(bearing_deg);
        let leg = |length_m, grade, heading| Segment {
            length_m,
            slope: slope(grade),
            heading: Some(heading),
            radius_m: None,
            wind_share: 1.0,
            keeps_length: false,
        };
        let segments = if out_and_back {
            let half = 0.5 * distance_m;
            vec![
                leg(half, grade, heading),
                leg(half, -grade, heading.reversed()),
            ]
        } else {
            vec![leg(distance_m, grade, heading)]
        };
        Self::of(segments)
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
                    heading: Some(Heading::new(pair[0].bearing_deg)),
                    radius_m: pair[0].radius_m,
                    wind_share: pair[0].wind_share,
                    keeps_length: false,
                }
            })
            .collect();
        Self::of(segments)
    }

    /// An out-and-back course with a level half circle of this radius, m, where it turns. It takes its length from both
    /// halves, no more than half of either, so that the whole stays as long. Any other course stays as it is.
    pub fn turning(self, radius_m: f64) -> Self {
        let [out, back] = self.segments[..] else {
            return self;
        };
        let arc_m = (std::f64::consts::PI * radius_m).min(0.5 * self.distance_m());
        let shorter = |leg: Segment| Segment {
            length_m: leg.length_m - 0.5 * arc_m,
            ..leg
        };
        // Half way round, the road leads to the side.
        let heading = out.heading.map(|Heading { north, east }| Heading {
            north: -east,
            east: north,
        });
        let arc = Segment {
            length_m: arc_m,
            slope: slope(0.0),
            heading,
            radius_m: Some(radius_m),
            wind_share: 1.0,
            keeps_length: true,
        };
        Self::of(vec![shorter(out), arc, shorter(back)])
    }

    /// The road from the start to the first of these places, from there to the next, and so on to the line. The places are ascending
    /// distances from the start, m, some metres apart at least; one within a metre of the end of a stretch counts as there.
    #[cfg(feature = "all")]
    pub(crate) fn between(&self, places_m: impl Iterator<Item = f64>) -> Vec<Vec<Segment>> {
        const THERE_M: f64 = 1.0;
        let mut places_m = places_m.peekable();
        let mut parts = Vec::new();
        let mut part = Vec::new();
        let mut come_m = 0.0;
        for segment in &self.segments {
            let mut left = *segment;
            while let Some(place_m) =
                places_m.next_if(|place_m| *place_m < come_m + left.length_m - THERE_M)
            {
                let length_m = place_m - come_m;
                part.push(Segment { length_m, ..left });
                parts.push(std::mem::take(&mut part));
                left.length_m -= length_m;
                come_m = place_m;
            }
            part.push(left);
            come_m += left.length_m;
            if places_m
                .next_if(|place_m| *place_m < come_m + THERE_M)
                .is_some()
            {
                parts.push(std::mem::take(&mut part));
            }
        }
        parts.push(part);
        parts
    }

    /// The same road with the wind left out: no stretch says which way it leads.
    pub fn without_headings(mut self) -> Self {
        self.segments
            .iter_mut()
            .for_each(|segment| segment.heading = None);
        self
    }

    /// The same road with no stretch longer than this, m, for what changes along the way by itself, as weather does.
    pub fn in_pieces(self, longest_m: f64) -> Self {
        let pieces = |segment: Segment| {
            let count = (segment.length_m / longest_m).ceil().max(1.0);
            let piece = Segment {
                length_m: segment.length_m / count,
                ..segment
            };
            std::iter::repeat_n(piece, count as usize)
        };
        Self {
            segments: self.segments.into_iter().flat_map(pieces).collect(),
            longest_m,
        }
    }

    /// The share of its length that leads each way, by sectors of the same width, clockwise, the first with its middle at north.
    /// Empty where no stretch says which way it leads.
    #[cfg(feature = "all")]
    pub(crate) fn heading_shares(&self, sectors: usize) -> Vec<f64> {
        let mut lengths_m = vec![0.0; sectors];
        let mut known_m = 0.0;
        for segment in &self.segments {
            if let Some(heading) = segment.heading {
                let turns = heading.bearing_deg() / 360.0;
                let sector = (turns * sectors as f64).round() as usize % sectors;
                lengths_m[sector] += segment.length_m;
                known_m += segment.length_m;
            }
        }
        if known_m > 0.0 {
            lengths_m
                .iter()
                .map(|length_m| length_m / known_m)
                .collect()
        } else {
            Vec::new()
        }
    }

    /// The whole length, m.
    pub fn distance_m(&self) -> f64 {
        self.segments.iter().map(|segment| segment.length_m).sum()
    }

    /// The same kind of course at another length: every stretch is scaled but for turns, slopes and headings stay. Where turns
    /// would take up more than half of it, they are scaled too. A course that was cut into pieces is cut again where they would be
    /// too long.
    pub fn scaled_to(&self, distance_m: f64) -> Self {
        let turns = self.segments.iter().filter(|segment| segment.keeps_length);
        let kept_m: f64 = turns.map(|segment| segment.length_m).sum();
        let kept_m = if 2.0 * kept_m < distance_m {
            kept_m
        } else {
            0.0
        };
        let scale = (distance_m - kept_m) / (self.distance_m() - kept_m);
        let scaled = |segment: &Segment| {
            let scale = if segment.keeps_length && kept_m > 0.0 {
                1.0
            } else {
                scale
            };
            Segment {
                length_m: segment.length_m * scale,
                ..*segment
            }
        };
        let longer = Self::of(self.segments.iter().map(scaled).collect());
        longer.in_pieces(self.longest_m)
    }
}
