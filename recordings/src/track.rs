//! The way that was ridden as a line on level ground.

use crate::columns::{Column, Columns};
use crate::geodesy::step_m;

/// The outline has at most about so many points, more than a picture shows.
const OUTLINE_POINTS: usize = 600;

/// A record that has a position, in metres north and east of the first.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Point {
    pub time_s: f64,
    pub distance_m: f64,
    pub north_m: f64,
    pub east_m: f64,
}

/// The records that have a position, in order.
pub(crate) struct Track {
    pub points: Vec<Point>,
}

impl Track {
    /// Distances are those along the positions, so that every record with a position has one.
    pub fn of(columns: &Columns) -> Self {
        let [time, latitude, longitude] =
            [Column::Time, Column::Latitude, Column::Longitude].map(|column| columns.get(column));
        let mut points: Vec<Point> = Vec::new();
        let mut before = None;
        for ((&time_s, &lat), &lon) in time.iter().zip(latitude).zip(longitude) {
            if time_s.is_nan() || lat.is_nan() || lon.is_nan() {
                continue;
            }
            let (north, east) = before.map_or((0.0, 0.0), |from| step_m(from, (lat, lon)));
            let last = points.last().copied().unwrap_or(Point {
                time_s,
                distance_m: 0.0,
                north_m: 0.0,
                east_m: 0.0,
            });
            before = Some((lat, lon));
            points.push(Point {
                time_s,
                distance_m: last.distance_m + north.hypot(east),
                north_m: last.north_m + north,
                east_m: last.east_m + east,
            });
        }
        Self { points }
    }

    /// A part of its points, evenly taken, the last one too.
    pub fn outline(&self) -> Vec<Point> {
        let every = self.points.len().div_ceil(OUTLINE_POINTS).max(1);
        let last = self.points.len().saturating_sub(1);
        let taken = |&(i, _): &(usize, &Point)| i % every == 0 || i == last;
        let points = self.points.iter().enumerate();
        points.filter(taken).map(|(_, point)| *point).collect()
    }
}
