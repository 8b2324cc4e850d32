//! The question `course`: the road of a recording, and a course cut, turned round, ridden there and back, or repeated.

use fasterby_core::ask_json;
use serde_json::{Value, json};

fn course(request: &Value) -> Result<Value, Value> {
    let read = |text: String| serde_json::from_str(&text).expect("JSON");
    ask_json("course", &request.to_string())
        .map(read)
        .map_err(read)
}

fn number(of: &Value) -> f64 {
    of.as_f64().unwrap_or_else(|| panic!("{of} is a number"))
}

/// Finish time at constant watts on a course, in wind or calm, s.
fn time_s(course: &Value, wind_m_s: f64) -> f64 {
    let conditions = json!({ "wind_speed_m_s": wind_m_s, "wind_from_deg": 40 });
    let request = json!({
        "scenario": { "course": course, "conditions": conditions },
        "with": { "effort": { "kind": "power", "power_w": 240 } },
    });
    let answer = ask_json("finish-time", &request.to_string()).expect("a finish time");
    let answer: Value = serde_json::from_str(&answer).expect("JSON");
    number(&answer["time_s"]["value"])
}

/// A road that leads north and then east over a hill.
fn track() -> Value {
    let along = |i: usize| 0.001 * i as f64;
    let latitude: Vec<f64> = (0..60).map(|i| 47.0 + along(i.min(30))).collect();
    let longitude: Vec<f64> = (0_usize..60)
        .map(|i| 8.0 + along(i.saturating_sub(30)))
        .collect();
    let elevation: Vec<f64> = (0..60)
        .map(|i| 400.0 + 40.0 * (0.11 * i as f64).sin())
        .collect();
    json!({ "columns": { "latitude_deg": latitude, "longitude_deg": longitude, "elevation_m": elevation } })
}

fn profile() -> Value {
    json!({ "kind": "profile", "points": [
        { "distance_m": 500, "elevation_m": 80, "bearing_deg": 10 },
        { "distance_m": 3_000, "elevation_m": 140, "radius_m": 25 },
        { "distance_m": 3_060, "elevation_m": 140, "bearing_deg": 100 },
        { "distance_m": 9_500, "elevation_m": 82 },
    ] })
}

#[test]
fn a_track_becomes_a_course_of_its_length() {
    // On WGS 84 a thousandth of a degree is 111.18 m north and 76.05 m east at 47.03° (series of the meridian arc and of the
    // parallel; common practice).
    const SHARE: f64 = 0.002;
    let got = course(&json!({ "with": { "recordings": [track()], "smooth_m": 0 } })).expect("one");
    let expected_m = 30.0 * 111.18 + 29.0 * 76.05;
    assert!((number(&got["distance_m"]) / expected_m - 1.0).abs() < SHARE);
    assert_eq!(
        got["distance_m"],
        got["columns"]["distance_m"]
            .as_array()
            .expect("a column")
            .last()
            .expect("one")
            .clone()
    );
    assert_eq!(got["course"]["kind"], "profile");
    assert_eq!(got["has_bearings"], true);
    // Two thirds of a wave of 40 m up and down again: what is left of the climb after 60 m of the sine.
    let smoothed =
        course(&json!({ "with": { "recordings": [track()], "smooth_m": 1_000 } })).expect("one");
    assert!(number(&smoothed["climb_m"]) < number(&got["climb_m"]));
    assert_eq!(smoothed["recorded_climb_m"], got["recorded_climb_m"]);
}

#[test]
fn the_parts_of_a_course_take_as_long_as_the_whole_but_for_their_starts() {
    let whole = course(&json!({ "scenario": { "course": profile() } })).expect("one");
    assert_eq!(number(&whole["distance_m"]), 9_000.0);
    assert_eq!(number(&whole["climb_m"]), 60.0);
    let part = |from_m: f64, to_m: f64| {
        let with = json!({ "from_m": from_m, "to_m": to_m });
        course(&json!({ "scenario": { "course": profile() }, "with": with })).expect("a part")
    };
    let (first, second) = (part(0.0, 5_000.0), part(5_000.0, 9_000.0));
    // A start from rest costs less than half a minute.
    let lost_s = time_s(&first["course"], 4.0) + time_s(&second["course"], 4.0)
        - time_s(&whole["course"], 4.0);
    assert!((0.0..30.0).contains(&lost_s), "{lost_s} s");
}

#[test]
fn the_other_way_what_was_head_wind_is_tail_wind_and_twice_is_as_before() {
    let turned = |course_: &Value| {
        let request = json!({ "scenario": { "course": course_ }, "with": { "reversed": true } });
        course(&request).expect("a course")["course"].clone()
    };
    let back = turned(&profile());
    let again = turned(&back);
    const SAME_S: f64 = 1e-6;
    assert!((time_s(&again, 5.0) - time_s(&profile(), 5.0)).abs() < SAME_S);
    assert!((time_s(&back, 5.0) - time_s(&profile(), 5.0)).abs() > 10.0);
    assert_eq!(number(&back["points"][0]["bearing_deg"]), 280.0);
}

#[test]
fn laps_and_there_and_back_are_as_long_as_their_parts() {
    let asked = |with: Value| course(&json!({ "scenario": { "course": profile() }, "with": with }));
    // Half a circle of the usual 5 m.
    let turn_m = std::f64::consts::PI * 5.0;
    let both = asked(json!({ "out_and_back": true })).expect("a course");
    assert!((number(&both["distance_m"]) - 18_000.0 - turn_m).abs() < 1e-9);
    assert!((number(&both["climb_m"]) - 60.0 - 58.0).abs() < 1e-9);
    let laps = asked(json!({ "out_and_back": true, "times": 3 })).expect("a course");
    assert!((number(&laps["distance_m"]) - 3.0 * (18_000.0 + turn_m)).abs() < 1e-9);
    // Two metres between both ends are spread along a lap; a hundred are refused.
    assert!(asked(json!({ "times": 4 })).is_ok());
    let open = asked(json!({ "times": 4, "to_m": 4_000 })).expect_err("no lap");
    assert_eq!(
        (&open["field"], &open["text"]),
        (&json!("with.times"), &json!("lap_open"))
    );
}

#[test]
fn what_gives_no_course_is_refused_by_name() {
    let refused = |request: Value, field: &str, text: &str| {
        let error = course(&request).expect_err("an error");
        assert_eq!(
            (&error["field"], &error["text"]),
            (&json!(field), &json!(text)),
            "{request}"
        );
    };
    refused(json!({}), "scenario.course", "no_profile");
    refused(
        json!({ "with": { "recordings": [{}] } }),
        "with.recordings",
        "no_road",
    );
    refused(
        json!({ "with": { "recordings": [track(), track()] } }),
        "with.recordings",
        "too_many",
    );
    let short = json!({ "columns": { "distance_m": [0, 40] } });
    refused(
        json!({ "with": { "recordings": [short] } }),
        "with.recordings",
        "course_length",
    );
    let uneven = json!({ "columns": { "distance_m": [0, 4_000], "elevation_m": [3] } });
    refused(
        json!({ "with": { "recordings": [uneven] } }),
        "with.recordings[0].columns.elevation_m",
        "columns_differ",
    );
    let with = json!({ "recordings": [track()], "from_m": 3_000, "to_m": 3_050 });
    refused(json!({ "with": with }), "with.to_m", "part_too_short");
    let with = json!({ "recordings": [track()], "times": 51 });
    refused(json!({ "with": with }), "with.times", "out_of_range");
}
