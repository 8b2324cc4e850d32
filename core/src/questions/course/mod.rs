//! What course is this? That of a recording or a route, one in an invented shape, or the scenario's own; cut, turned round, ridden
//! there and back, or repeated, made short enough for a link, and written as a file.

mod answer;
mod with;

use std::rc::Rc;

use super::request::Request;
use crate::inputs::error::{Error, Kind};
use crate::inputs::{fields, message};
use crate::riding::effort::{Effort, paced};
use crate::riding::integrated::Integrated;
use crate::scenario::course_edits::{
    CLOSES_WITHIN_M, CLOSES_WITHIN_SHARE, climb_m, open_by_m, out_and_back, repeated, reversed,
    trimmed,
};
use crate::scenario::course_files::{csv, gpx};
use crate::scenario::course_line::profile_of_simple;
pub use crate::scenario::drawn_course::Preset;
use crate::scenario::recorded_course::{RecordedCourse, Track, recorded_course};
use crate::scenario::{Course, CourseKind, Point, Scenario};
pub use answer::{Answer, Columns};
pub use with::{FileForm, TrackColumns, TrackForm, With};

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why no course can be made.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    with.check()?;
    if scenario.course.kind == CourseKind::Simple {
        scenario.settle_course(Effort::Even)?;
    }
    let recorded = match with.recordings.first() {
        Some(recording) => Some(recorded(recording, with.smooth_m)?),
        None => None,
    };
    let drawn = with.preset.map(|preset| preset.course(&scenario.course));
    let road = match (&recorded, &drawn) {
        (Some(recorded), _) => &recorded.course,
        (None, Some(drawn)) => drawn,
        _ if scenario.course.kind == CourseKind::Profile => &scenario.course,
        _ if with.export.is_some() => &profile_of_simple(&scenario.course),
        _ => return Err(Error::impossible("scenario.course", message::no_profile())),
    };
    let mut edited = Scenario {
        course: Course {
            points: edited(road, &with)?,
            ..road.clone()
        },
        ..Scenario::default()
    };
    let times = with.times as usize;
    warnings.extend(edited.simplify_course(fields::MOST_POINTS_RIDDEN / times.max(1)));
    if times > 1 {
        edited.course.points = laps(&edited.course.points, times)?;
    }
    edited.check().map_err(|error| match recorded {
        Some(_) => Error {
            field: "with.recordings".into(),
            ..error
        },
        None => error,
    })?;
    let mut simplified_slower_s = None;
    if let Some(most) = with.most_points {
        let before_s = even_time_s(&scenario, &edited.course);
        warnings.extend(edited.shorten_course(most as usize));
        let after_s = even_time_s(&scenario, &edited.course);
        simplified_slower_s = before_s.zip(after_s).map(|(before, after)| after - before);
    }
    let points = &edited.course.points;
    Ok(Answer {
        distance_m: edited.course.length_m(),
        climb_m: climb_m(points.iter().map(|point| point.elevation_m)),
        recorded_distance_m: recorded.as_ref().map(|recorded| recorded.distance_m),
        recorded_climb_m: recorded.as_ref().map(|recorded| recorded.recorded_climb_m),
        smoothed_climb_m: recorded.as_ref().map(|recorded| recorded.climb_m),
        has_elevation: recorded
            .as_ref()
            .is_none_or(|recorded| recorded.has_elevation),
        simplified_slower_s,
        has_bearings: points.iter().any(|point| point.bearing_deg.is_some()),
        is_surveyed: recorded.is_some_and(|recorded| recorded.is_surveyed),
        file: with.export.map(|form| match form {
            FileForm::Gpx => gpx(&edited.course, &with.name),
            FileForm::Csv => csv(&edited.course),
        }),
        warnings,
        columns: Columns {
            distance_m: points.iter().map(|point| point.distance_m).collect(),
            elevation_m: points.iter().map(|point| point.elevation_m).collect(),
        },
        course: edited.course,
    })
}

/// How long the best even effort of the scenario takes on a course, s; `None` where it cannot be ridden.
fn even_time_s(scenario: &Scenario, course: &Course) -> Option<f64> {
    let there = Scenario {
        course: course.clone(),
        ..scenario.clone()
    };
    let setup = there.setup_on(there.riding_position, Rc::new(there.course()))?;
    let even = paced(&Integrated, &setup, Effort::Even).ok()?;
    Some(even.time_s)
}

fn recorded(recording: &TrackForm, smooth_m: f64) -> Result<RecordedCourse, Error> {
    let columns = &recording.columns;
    let track = Track {
        latitude_deg: &columns.latitude_deg.0,
        longitude_deg: &columns.longitude_deg.0,
        elevation_m: &columns.elevation_m.0,
        distance_m: &columns.distance_m.0,
        bearing_deg: &columns.bearing_deg.0,
        radius_m: &columns.radius_m.0,
        wind_share: &columns.wind_share.0,
        is_surveyed: recording.is_surveyed,
    };
    recorded_course(&track, smooth_m)
        .map_err(|reason| Error::impossible("with.recordings", reason.message()))
}

/// A course ridden several times.
fn laps(points: &[Point], times: usize) -> Result<Vec<Point>, Error> {
    let open_m = open_by_m(points);
    let length_m = match points {
        [first, .., last] => last.distance_m - first.distance_m,
        _ => 0.0,
    };
    if open_m.abs() > CLOSES_WITHIN_M.min(CLOSES_WITHIN_SHARE * length_m) {
        return Err(Error::impossible(
            "with.times",
            message::lap_open(open_m.abs()),
        ));
    }
    Ok(repeated(points, times))
}

/// The road cut, turned round and ridden there and back, as far as each is asked for.
fn edited(course: &Course, with: &With) -> Result<Vec<Point>, Error> {
    /// A shorter part is no course, m.
    const LEAST_M: f64 = fields::DISTANCE_M.min;
    let length_m = course.length_m();
    let to_m = with.to_m.unwrap_or(length_m).min(length_m);
    if to_m < with.from_m + LEAST_M {
        let message = message::part_too_short(LEAST_M);
        return Err(Error::new(Kind::Conflict, "with.to_m", message));
    }
    let mut road = trimmed(&course.points, with.from_m, to_m);
    if with.reversed {
        road = reversed(&road);
    }
    if with.out_and_back {
        road = out_and_back(&road);
    }
    Ok(road)
}
