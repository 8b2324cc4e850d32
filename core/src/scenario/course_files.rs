//! A course as a file: a table of its points, or a track that other programs can draw, with the points in it.
//!
//! Both hold the points themselves, so that reading them gives the course again. The track's own line is drawn from distances and
//! bearings; a program that keeps the line alone loses how narrow bends are and which place is a point.

use super::course_line::{LinePoint, line};
use super::{Course, Point};

/// What GPX 1.1 calls its own words, and ours for what it has none for.
const GPX: &str = "http://www.topografix.com/GPX/1/1";
const OURS: &str = "urn:fasterby:road:1";
/// Sentences of the track's description.
const ORIGIN: &str =
    "The line begins at an invented place, since a course says how far and which way, not where.";
const STRAIGHT: &str =
    " It runs straight to the east, since the course does not say which way it leads.";

/// What a point says, in SI units.
const NAMES: [&str; 5] = [
    "distance_m",
    ELEVATION,
    "bearing_deg",
    "radius_m",
    "wind_share",
];
const ELEVATION: &str = "elevation_m";

/// A table of a profile's points in SI units, values separated by commas; what a point does not say is empty.
pub fn csv(course: &Course) -> String {
    let mut text = NAMES.join(",");
    for point in points(course) {
        text.push('\n');
        text += &numbers(&point).join(",");
    }
    text + "\n"
}

/// A profile as a track of GPX 1.1. Each of its points says in its extensions what the road is from there on.
pub fn gpx(course: &Course, name: &str) -> String {
    let points = points(course);
    let straight = match points.iter().find_map(|point| point.bearing_deg) {
        Some(_) => "",
        None => STRAIGHT,
    };
    let mut text = format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
         <gpx version=\"1.1\" creator=\"Fasterby\" xmlns=\"{GPX}\" xmlns:ours=\"{OURS}\">\n\
         <trk><name>{}</name><desc>{ORIGIN}{straight}</desc><trkseg>\n",
        escaped(name)
    );
    for place in line(&points) {
        text += &track_point(&place);
    }
    text + "</trkseg></trk>\n</gpx>\n"
}

fn track_point(place: &LinePoint) -> String {
    // A hundred-millionth of a degree is a millimetre on the ground.
    let mut text = format!(
        "<trkpt lat=\"{}\" lon=\"{}\"><ele>{}</ele>",
        decimal(place.latitude_deg, 8),
        decimal(place.longitude_deg, 8),
        thousandths(place.elevation_m)
    );
    if let Some(point) = &place.point {
        text += "<extensions><ours:road";
        for (name, number) in NAMES.iter().zip(numbers(point)) {
            if *name != ELEVATION && !number.is_empty() {
                text += &format!(" {name}=\"{number}\"");
            }
        }
        text += "/></extensions>";
    }
    text + "</trkpt>\n"
}

/// A point's numbers as they are written.
fn numbers(point: &Point) -> [String; 5] {
    let bearing_deg = point
        .bearing_deg
        .map(|bearing_deg| bearing_deg.rem_euclid(360.0));
    [
        Some(point.distance_m),
        Some(point.elevation_m),
        bearing_deg,
        point.radius_m,
        point.wind_share,
    ]
    .map(|number| number.map_or_else(String::new, thousandths))
}

/// Millimetres and thousandths of a degree: no road is known better.
fn thousandths(number: f64) -> String {
    decimal(number, 3)
}

/// A number with so many decimals at most. By whole numbers, since the standard library's exact decimals are as long as all of this
/// file; they hold whatever a course may.
fn decimal(number: f64, decimals: usize) -> String {
    let scale = 10_u64.pow(decimals as u32);
    let whole = (number * scale as f64).round() as i64;
    let sign = if whole < 0 { "-" } else { "" };
    let (before, after) = (whole.unsigned_abs() / scale, whole.unsigned_abs() % scale);
    let text = format!("{sign}{before}.{after:0decimals$}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// The points of a profile, without bearings where the wind is left out as chosen.
fn points(course: &Course) -> Vec<Point> {
    let mut points = course.points.clone();
    if course.heading.is_some() {
        points.iter_mut().for_each(|point| point.bearing_deg = None);
    }
    points
}

/// A text as XML holds it, without the signs that XML may not hold.
fn escaped(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for sign in text.chars() {
        match sign {
            '&' => escaped += "&amp;",
            '<' => escaped += "&lt;",
            '>' => escaped += "&gt;",
            _ if sign.is_control() || matches!(sign, '\u{fffe}' | '\u{ffff}') => {}
            _ => escaped.push(sign),
        }
    }
    escaped
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_names_are_written_plainly() {
        assert_eq!(thousandths(-0.000_1), "0");
        assert_eq!(thousandths(0.1 + 0.2), "0.3");
        assert_eq!(thousandths(12_345.678_9), "12345.679");
        assert_eq!(decimal(-30.000_000_04, 8), "-30.00000004");
        assert_eq!(thousandths(1_200.0), "1200");
        assert_eq!(escaped("a <b> & \u{7}c"), "a &lt;b&gt; &amp; c");
    }
}
