//! A profile cut to a part of it, turned round, ridden there and back, or ridden several times.

use std::f64::consts::PI;

use super::Point;
use crate::inputs::fields::{self, CLOSEST_POINTS_M};

/// A lap that ends this much higher or lower than it began does not close, m: barometers drift by a few metres in an hour (common
/// practice, no source).
pub const CLOSES_WITHIN_M: f64 = 10.0;
/// Nor does a short one that is higher or lower by more than this share of its length: to spread that would change its slopes (assumed).
pub const CLOSES_WITHIN_SHARE: f64 = 0.005;

/// The part between two distances from its start, m; elevations there are those of straight lines between the points. Its
/// distances begin at 0.
pub fn trimmed(points: &[Point], from_m: f64, to_m: f64) -> Vec<Point> {
    let points = held(points);
    let inside = |point: &&Point| {
        point.distance_m > from_m + CLOSEST_POINTS_M && point.distance_m < to_m - CLOSEST_POINTS_M
    };
    let mut part: Vec<Point> = at(&points, from_m).into_iter().collect();
    part.extend(points.iter().filter(inside));
    part.extend(at(&points, to_m));
    for point in &mut part {
        point.distance_m -= from_m;
    }
    part
}

/// The road the other way: every stretch leads back, in bends of the same radius.
pub fn reversed(points: &[Point]) -> Vec<Point> {
    let points = held(points);
    let end_m = points.last().map_or(0.0, |last| last.distance_m);
    let count = points.len();
    (0..count)
        .map(|k| {
            let here = points[count - 1 - k];
            // What holds from a point on is what held up to it on the way there; after the last one, nothing does.
            let stretch = (k + 1 < count).then(|| points[count - 2 - k]);
            Point {
                distance_m: end_m - here.distance_m,
                elevation_m: here.elevation_m,
                bearing_deg: stretch
                    .and_then(|stretch| stretch.bearing_deg)
                    .map(|bearing_deg| (bearing_deg + 180.0) % 360.0),
                radius_m: stretch.and_then(|stretch| stretch.radius_m),
                wind_share: stretch.and_then(|stretch| stretch.wind_share),
            }
        })
        .collect()
}

/// The road there, half a circle of the usual radius, and the road back.
pub fn out_and_back(points: &[Point]) -> Vec<Point> {
    let mut there = held(points);
    let Some(far) = there.pop() else {
        return Vec::new();
    };
    let radius_m = fields::TURN_RADIUS_M.default;
    there.push(Point {
        radius_m: Some(radius_m),
        ..far
    });
    let back_from_m = far.distance_m + PI * radius_m;
    there.extend(reversed(points).into_iter().map(|point| Point {
        distance_m: back_from_m + point.distance_m,
        ..point
    }));
    there
}

/// The road ridden several times. What a lap does not close by is spread along it.
pub fn repeated(points: &[Point], times: usize) -> Vec<Point> {
    let points = held(points);
    let (Some(first), Some(last)) = (points.first(), points.last()) else {
        return Vec::new();
    };
    let length_m = last.distance_m;
    let open_m = last.elevation_m - first.elevation_m;
    let closed = |point: &Point, lap: usize| Point {
        distance_m: point.distance_m + lap as f64 * length_m,
        elevation_m: if times > 1 {
            point.elevation_m - open_m * point.distance_m / length_m
        } else {
            point.elevation_m
        },
        ..*point
    };
    // The last point of a lap is the first of the next.
    let laps = (0..times).flat_map(|lap| {
        let ends = points.len() - usize::from(lap + 1 < times);
        points[..ends].iter().map(move |point| closed(point, lap))
    });
    laps.collect()
}

/// How much higher a road ends than it begins, m.
pub fn open_by_m(points: &[Point]) -> f64 {
    match (points.first(), points.last()) {
        (Some(first), Some(last)) => last.elevation_m - first.elevation_m,
        _ => 0.0,
    }
}

/// The sum of all rises, m.
pub fn climb_m(elevations_m: impl Iterator<Item = f64>) -> f64 {
    let mut before = None;
    let mut climb_m = 0.0;
    for elevation_m in elevations_m {
        climb_m += before.map_or(0.0, |before: f64| (elevation_m - before).max(0.0));
        before = Some(elevation_m);
    }
    climb_m
}

/// The points with distances from 0 on, each with the bearing that holds from there.
pub fn held(points: &[Point]) -> Vec<Point> {
    let start_m = points.first().map_or(0.0, |first| first.distance_m);
    let mut bearing_deg = None;
    let with_bearing = |point: &Point| {
        bearing_deg = point.bearing_deg.or(bearing_deg);
        Point {
            distance_m: point.distance_m - start_m,
            bearing_deg,
            ..*point
        }
    };
    points.iter().map(with_bearing).collect()
}

/// The place at a distance on points that hold their bearings.
fn at(points: &[Point], distance_m: f64) -> Option<Point> {
    let after = points.partition_point(|point| point.distance_m <= distance_m);
    let before = points.get(after.checked_sub(1)?)?;
    let Some(next) = points.get(after) else {
        return Some(*before);
    };
    let share = (distance_m - before.distance_m) / (next.distance_m - before.distance_m);
    Some(Point {
        distance_m,
        elevation_m: before.elevation_m + share * (next.elevation_m - before.elevation_m),
        ..*before
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hill() -> Vec<Point> {
        let point = |distance_m, elevation_m, bearing_deg, radius_m| Point {
            distance_m,
            elevation_m,
            bearing_deg,
            radius_m,
            wind_share: radius_m.map(|_| 0.5),
        };
        vec![
            point(100.0, 10.0, Some(350.0), None),
            point(1_100.0, 60.0, None, Some(30.0)),
            point(1_200.0, 60.0, Some(80.0), None),
            point(3_100.0, 12.0, None, None),
        ]
    }

    fn elevations_m(points: &[Point]) -> impl Iterator<Item = f64> + '_ {
        points.iter().map(|point| point.elevation_m)
    }

    #[test]
    fn a_part_begins_at_0_and_keeps_what_holds_there() {
        let part = trimmed(&hill(), 500.0, 2_000.0);
        let distances_m: Vec<f64> = part.iter().map(|point| point.distance_m).collect();
        assert_eq!(distances_m, [0.0, 500.0, 600.0, 1_500.0]);
        assert_eq!(part[0].elevation_m, 35.0);
        assert_eq!(part[0].bearing_deg, Some(350.0));
        assert_eq!(part[1].radius_m, Some(30.0));
        assert!((part[3].elevation_m - (60.0 - 48.0 * 900.0 / 1_900.0)).abs() < 1e-9);
    }

    #[test]
    fn turned_round_twice_a_road_is_as_it_was() {
        let there = held(&hill());
        let again = reversed(&reversed(&hill()));
        for (a, b) in there.iter().zip(&again).take(3) {
            assert!((a.distance_m - b.distance_m).abs() < 1e-9);
            assert_eq!(a.elevation_m, b.elevation_m);
            assert_eq!(a.bearing_deg, b.bearing_deg);
            assert_eq!(a.radius_m, b.radius_m);
            assert_eq!(a.wind_share, b.wind_share);
        }
        let back = reversed(&hill());
        assert_eq!(back[0].bearing_deg, Some(260.0));
        assert_eq!(back[1].radius_m, Some(30.0));
        assert_eq!(back[2].bearing_deg, Some(170.0));
    }

    #[test]
    fn there_and_back_climbs_what_the_way_there_climbs_and_falls() {
        let both = out_and_back(&hill());
        assert!((climb_m(elevations_m(&both)) - 50.0 - 48.0).abs() < 1e-9);
        assert_eq!(open_by_m(&both), 0.0);
        assert!(
            both.windows(2)
                .all(|pair| pair[1].distance_m - pair[0].distance_m >= CLOSEST_POINTS_M)
        );
    }

    #[test]
    fn laps_close_and_climb_alike() {
        let laps = repeated(&hill(), 3);
        assert_eq!(laps.len(), 3 * 3 + 1);
        assert_eq!(open_by_m(&laps), 0.0);
        assert!((laps.last().unwrap().distance_m - 9_000.0).abs() < 1e-9);
        let once = climb_m(elevations_m(&laps[..4]));
        assert!((climb_m(elevations_m(&laps)) - 3.0 * once).abs() < 1e-9);
        assert_eq!(repeated(&hill(), 1).last().unwrap().elevation_m, 12.0);
    }
}
