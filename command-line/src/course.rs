//! A course on the command line: a recording's road as scenarios hold it, alone on standard output.

use crate::Outcome;
use crate::read::{REFUSED, recording_of, refusal};
use fasterby_core::error::Error;
use fasterby_core::scenario::recorded_course::{NoCourse, RecordedCourse, Track, recorded_course};
use fasterby_recordings::{Column, Recording};
use serde_json::json;
use std::io::Write;
use std::path::Path;
use std::process::ExitCode;

/// Elevation is smoothed over so many metres on each side unless told otherwise; assumed.
pub const SMOOTHED_M: f64 = 100.0;

/// Prints the course of a file, or why there is none; what is to be said of it goes to standard error.
pub fn course(path: &Path, smooth_m: f64) -> Outcome<ExitCode> {
    let Some(read) = recording_of(path)? else {
        return Ok(ExitCode::from(REFUSED));
    };
    let (text, code) = match read.map(|recording| made(&recording, smooth_m)) {
        Ok(Ok(made)) => {
            eprintln!("{}", said(&made));
            (json!(made.course), ExitCode::SUCCESS)
        }
        Ok(Err(reason)) => (no_course(reason), ExitCode::from(REFUSED)),
        Err(error) => (refusal(&error), ExitCode::from(REFUSED)),
    };
    writeln!(std::io::stdout(), "{text}")
        .map_err(|error| format!("The course cannot be written to standard output: {error}."))?;
    Ok(code)
}

fn made(recording: &Recording, smooth_m: f64) -> Result<RecordedCourse, NoCourse> {
    let column = |column| recording.columns.get(column);
    let track = Track {
        latitude_deg: column(Column::Latitude),
        longitude_deg: column(Column::Longitude),
        elevation_m: column(Column::Elevation),
        distance_m: column(Column::Distance),
        bearing_deg: column(Column::Bearing),
        radius_m: column(Column::Radius),
        wind_share: column(Column::WindShare),
        is_surveyed: recording.is_surveyed,
    };
    recorded_course(&track, smooth_m)
}

fn said(made: &RecordedCourse) -> String {
    let climbs = if made.is_surveyed {
        format!("{:.0} m as surveyed", made.climb_m)
    } else {
        let (recorded_m, smoothed_m) = (made.recorded_climb_m, made.climb_m);
        format!("{recorded_m:.0} m as recorded and {smoothed_m:.0} m smoothed")
    };
    let mut said = format!(
        "{} points over {:.0} m; it climbs {climbs}.",
        made.course.points.len(),
        made.distance_m,
    );
    if !made.has_elevation {
        said.push_str(" Without elevation it is taken as level.");
    }
    if !made.has_bearings {
        said.push_str(" No heading is known, and the wind is left out.");
    }
    said
}

fn no_course(reason: NoCourse) -> serde_json::Value {
    let mut error = json!(Error::impossible("", reason.message()));
    error["kind"] = json!("recording");
    error
}

#[cfg(test)]
mod tests {
    use super::*;
    use fasterby_recordings::Reader;

    fn read(text: &str) -> Recording {
        let mut reader = Reader::default();
        reader.push(text.as_bytes()).expect("bytes");
        reader.finish().expect("a recording")
    }

    #[test]
    fn a_route_without_times_makes_a_course() {
        // A thousandth of a degree of latitude is 110.6 m at the equator (WGS 84, common practice).
        let points: String = (0..20)
            .map(|i| {
                format!(
                    "<rtept lat=\"{}\" lon=\"8\"><ele>{}</ele></rtept>",
                    0.001 * f64::from(i),
                    10 + i
                )
            })
            .collect();
        let made = made(
            &read(&format!("<gpx version=\"1.1\"><rte>{points}</rte></gpx>")),
            0.0,
        )
        .expect("a course");
        assert!(
            (made.distance_m / (19.0 * 110.574) - 1.0).abs() < 2e-3,
            "{}",
            made.distance_m
        );
        let course = json!(made.course);
        assert_eq!(course["kind"], "profile");
        assert!((made.climb_m - 19.0).abs() < 1e-6);
    }

    #[test]
    fn a_surveyed_road_is_taken_as_it_is() {
        let table = "distance_m,elevation_m,bearing_deg,radius_m\n0,12,350,\n400,52,,9\n430,12,100,\n900,12,,\n";
        let made = made(&read(table), SMOOTHED_M).expect("a course");
        assert!(said(&made).contains("climbs 40 m as surveyed"));
        let points = &made.course.points;
        assert_eq!(points.len(), 4);
        assert_eq!(
            (points[1].elevation_m, points[1].radius_m),
            (52.0, Some(9.0))
        );
        assert_eq!(
            (points[0].bearing_deg, points[1].bearing_deg),
            (Some(350.0), None)
        );
    }

    #[test]
    fn a_table_without_a_road_is_refused_by_name() {
        let reason = made(&read("time_s,power_w\n0,200\n1,210\n"), 0.0).unwrap_err();
        assert_eq!(no_course(reason)["text"], "no_road");
    }
}
