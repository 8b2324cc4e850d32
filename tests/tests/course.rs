//! The question `course`: the road of a recording, and a course cut, turned round, ridden there and back, repeated, or written as a file.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::ask_json;
use fasterby_recordings::{COLUMNS, Column, Reader, Recording};
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

/// To spread the height of a short hill along it would leave no hill.
#[test]
fn a_short_hill_is_no_lap_though_a_long_road_that_ends_as_much_higher_is() {
    let twice = |length_m: f64| {
        let points = json!([
            { "distance_m": 0, "elevation_m": 0, "bearing_deg": 0 },
            { "distance_m": length_m, "elevation_m": 9 },
        ]);
        let course_ = json!({ "kind": "profile", "points": points });
        course(&json!({ "scenario": { "course": course_ }, "with": { "times": 2 } }))
    };
    assert!(twice(20_000.0).is_ok());
    let refused = twice(500.0).expect_err("no lap");
    assert_eq!(refused["text"], json!("lap_open"));
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
    for most in [9, 2_501] {
        let with = json!({ "recordings": [track()], "most_points": most });
        refused(json!({ "with": with }), "with.most_points", "out_of_range");
    }
    // The core takes the four shapes that it names.
    refused(
        json!({ "with": { "preset": "two_climbs" } }),
        "with.preset",
        "unknown_word",
    );
}

#[test]
fn a_drawn_course_is_as_long_as_the_one_before_and_begins_as_it_did() {
    // Sums of thousands of metres, m.
    const ROUNDING_M: f64 = 1e-6;
    // The climbs that the shapes state for 9 km: two waves whose steepest sixth of 0.75 km rises by half a wave at 2 %, a quarter of the
    // way at 5 %, and half a wave whose steepest tenth rises by cos 72° of it at 1 %.
    let tenth = 72.0_f64.to_radians().cos();
    let expected = [
        ("flat", 11, 0.0),
        ("rolling", 13, 2.0 * 0.02 * 750.0 / 0.5),
        ("one_climb", 11, 0.05 * 9_000.0 / 4.0),
        ("out_and_back", 11, 0.01 * 900.0 / tenth),
    ];
    let simple = json!({ "distance_m": 9_000, "bearing_deg": 10 });
    for (before, start_m) in [(profile(), 80.0), (simple, 0.0)] {
        for (preset, count, climb_m) in expected {
            let request = json!({ "scenario": { "course": before }, "with": { "preset": preset } });
            let got = course(&request).expect("a course");
            assert_eq!(number(&got["distance_m"]), 9_000.0);
            assert!(
                (number(&got["climb_m"]) - climb_m).abs() < ROUNDING_M,
                "{preset}"
            );
            let points = got["course"]["points"].as_array().expect("points");
            assert_eq!(points.len(), count, "{preset}");
            assert_eq!(number(&points[0]["elevation_m"]), start_m);
            assert_eq!(number(&points[0]["bearing_deg"]), 10.0);
            assert!(time_s(&got["course"], 3.0) > 0.0);
        }
    }
}

#[test]
fn a_course_for_a_link_is_slower_by_the_difference_of_two_finish_times() {
    // Both rides are solved to 1e-9 of their time.
    const SOLVED_S: f64 = 1e-4;
    let points: Vec<Value> = (0..2_400_u32)
        .map(|i| {
            let along = f64::from(i);
            json!({
                "distance_m": 12.345_678 * along,
                "elevation_m": 210.0 + 30.0 * (0.01 * along).sin() + 2.0 * (0.37 * along).sin(),
                "bearing_deg": 40.0 + 60.0 * (0.004 * along).sin(),
            })
        })
        .collect();
    let long = json!({ "kind": "profile", "points": points });
    let scenario = |course: &Value| {
        json!({
            "course": course,
            "conditions": { "wind_speed_m_s": 5, "wind_from_deg": 100 },
            "rider": { "total_mass_kg": 91 },
        })
    };
    let request = json!({ "scenario": scenario(&long), "with": { "most_points": 60 } });
    let got = course(&request).expect("a course");
    let short = &got["course"];
    let count = short["points"].as_array().expect("points").len();
    assert!((20..=60).contains(&count), "{count}");
    let even_s = |course: &Value| {
        let request = json!({ "scenario": scenario(course) });
        let answer = ask_json("finish-time", &request.to_string()).expect("a finish time");
        let answer: Value = serde_json::from_str(&answer).expect("JSON");
        number(&answer["time_s"]["value"])
    };
    let slower_s = number(&got["simplified_slower_s"]);
    assert!((slower_s - (even_s(short) - even_s(&long))).abs() < SOLVED_S);
    // With so few points the wiggles of the road are gone: it is another ride.
    assert!(slower_s.abs() > 0.1, "{slower_s}");
    let with = json!({ "scenario": scenario(&long), "with": {} });
    assert!(course(&with).expect("a course")["simplified_slower_s"].is_null());
}

/// What the core writes of a course.
fn written(course_: &Value, form: &str, name: &str) -> String {
    let with = json!({ "export": form, "name": name });
    let got = course(&json!({ "scenario": { "course": course_ }, "with": with })).expect("a file");
    got["file"].as_str().expect("a text").to_owned()
}

fn read(file: &str) -> Recording {
    let mut reader = Reader::default();
    reader.push(file.as_bytes()).expect("bytes");
    reader.finish().expect("a recording")
}

/// What the page and the command line make of a recording, unless told otherwise.
fn course_of(recording: &Recording) -> Value {
    let wanted = [
        "latitude_deg",
        "longitude_deg",
        "elevation_m",
        "distance_m",
        "bearing_deg",
        "radius_m",
        "wind_share",
    ];
    let columns: serde_json::Map<String, Value> = COLUMNS
        .iter()
        .filter(|(_, name)| wanted.contains(name))
        .map(|&(column, name)| (name.to_owned(), json!(recording.columns.get(column))))
        .collect();
    let recordings = json!([{ "columns": columns, "is_surveyed": recording.is_surveyed }]);
    course(&json!({ "with": { "recordings": recordings } })).expect("a course")
}

/// Courses whose files must give them again, by what is hard about them.
fn courses_to_write() -> [(&'static str, Value); 8] {
    let hilly: Vec<Value> = (0..=200)
        .map(|i| {
            let along = 100.0 * f64::from(i);
            json!({ "distance_m": along, "elevation_m": 300.0 + 60.0 * (along / 700.0).sin() + 8.0 * (along / 90.0).cos() })
        })
        .collect();
    let windy: Vec<Value> = (0..=80)
        .map(|i| {
            let along = 250.0 * f64::from(i);
            json!({ "distance_m": along, "elevation_m": 20.0, "bearing_deg": (37 * i) % 360 - 180 })
        })
        .collect();
    let bends: Vec<Value> = (0..=120)
        .map(|i| {
            let mut point = json!({ "distance_m": 50 * i, "elevation_m": 100.0 + f64::from(i % 9), "bearing_deg": 30 * i % 360 });
            if i % 4 == 1 {
                point["radius_m"] = json!(8 + i % 20);
                point["wind_share"] = json!(0.125 * f64::from(i % 8));
            }
            point
        })
        .collect();
    let turned =
        course(&json!({ "scenario": { "course": profile() }, "with": { "out_and_back": true } }))
            .expect("a course")["course"]
            .clone();
    let profile_of = |points: Vec<Value>| json!({ "kind": "profile", "points": points });
    [
        ("flat", json!({ "kind": "simple", "distance_m": 40_000 })),
        (
            "flat out and back",
            json!({ "kind": "simple", "distance_m": 40_000, "bearing_deg": 70, "out_and_back": true, "turn_radius_m": 5 }),
        ),
        (
            "a slope out and back",
            json!({ "kind": "simple", "distance_m": 16_000, "grade": 0.02, "out_and_back": true }),
        ),
        (
            "wind left out as chosen",
            json!({ "kind": "simple", "distance_m": 16_000, "bearing_deg": 40, "heading": "ignore" }),
        ),
        ("hilly", profile_of(hilly)),
        ("windy", profile_of(windy)),
        ("bends", profile_of(bends)),
        ("a profile there and back", turned),
    ]
}

#[test]
fn a_course_that_is_written_and_read_takes_as_long_as_before() {
    // What a course loses as a file may not show: numbers are shown in tenths of a second.
    const SAME_S: f64 = 0.1;
    for (what, before) in courses_to_write() {
        for form in ["gpx", "csv"] {
            let recording = read(&written(&before, form, "Thursday"));
            assert!(recording.is_surveyed, "{what} {form}");
            let after = course_of(&recording);
            assert_eq!(after["is_surveyed"], true, "{what} {form}");
            for wind_m_s in [0.0, 5.0] {
                let (before_s, after_s) = (
                    time_s(&before, wind_m_s),
                    time_s(&after["course"], wind_m_s),
                );
                assert!(
                    (after_s - before_s).abs() < SAME_S,
                    "{what} {form} {wind_m_s} m/s: {before_s} s, {after_s} s"
                );
            }
        }
    }
}

#[test]
fn the_points_of_a_profile_come_back_to_the_millimetre() {
    // Half of the last digit that is written, and what adding up tenths of metres rounds off.
    const NEAR: f64 = 0.000_6;
    let (_, before) = &courses_to_write()[6];
    for form in ["gpx", "csv"] {
        let after = course_of(&read(&written(before, form, "")));
        let points = |course: &Value| course["points"].as_array().expect("points").clone();
        let pairs: Vec<(Value, Value)> = points(before)
            .into_iter()
            .zip(points(&after["course"]))
            .collect();
        assert_eq!(pairs.len(), 121);
        for (before, after) in pairs {
            for field in [
                "distance_m",
                "elevation_m",
                "bearing_deg",
                "radius_m",
                "wind_share",
            ] {
                let same = match (before[field].as_f64(), after[field].as_f64()) {
                    (Some(before), Some(after)) => (before - after).abs() < NEAR,
                    (before, after) => before == after,
                };
                assert!(same, "{form} {field}: {before} {after}");
            }
        }
    }
}

#[test]
fn a_program_that_keeps_the_line_alone_keeps_its_length_and_its_climb() {
    // The length that courses of files are held to.
    const LENGTH_SHARE: f64 = 0.002;
    const CLIMB_SHARE: f64 = 0.02;
    for (what, before) in courses_to_write() {
        let file = written(&before, "gpx", "");
        let line: String = file
            .split("<extensions>")
            .map(|part| {
                part.split_once("</extensions>")
                    .map_or(part, |(_, after)| after)
            })
            .collect();
        let recording = read(&line);
        assert!(!recording.is_surveyed);
        let after = course_of(&recording);
        let with = json!({ "export": "csv" });
        let before =
            course(&json!({ "scenario": { "course": before }, "with": with })).expect("one");
        let (length_m, climb_m) = (number(&before["distance_m"]), number(&before["climb_m"]));
        assert!(
            (number(&after["distance_m"]) / length_m - 1.0).abs() < LENGTH_SHARE,
            "{what}"
        );
        let recorded_m = number(&after["recorded_climb_m"]);
        assert!(
            (recorded_m - climb_m).abs() <= CLIMB_SHARE * climb_m + 0.1,
            "{what}: {recorded_m} {climb_m}"
        );
    }
}

#[test]
fn a_track_says_what_was_invented_and_takes_any_name() {
    let courses = courses_to_write();
    let (hilly, windy) = (&courses[4].1, &courses[5].1);
    let file = written(hilly, "gpx", "<Up> & \u{7}down");
    assert!(
        file.contains("<name>&lt;Up&gt; &amp; down</name>"),
        "{}",
        &file[..400]
    );
    assert!(file.contains("invented place") && file.contains("does not say which way it leads"));
    assert!(!written(windy, "gpx", "").contains("does not say which way it leads"));
    assert!(!read(&file).columns.has(Column::Bearing));
}

#[test]
fn a_surveyed_road_that_was_turned_round_is_read_from_its_positions() {
    // Another program's doing: its points in the other order.
    let file = written(&courses_to_write()[5].1, "gpx", "");
    let (head, rest) = file.split_once("<trkpt").expect("points");
    let (points, tail) = rest.split_once("</trkseg>").expect("an end");
    let mut points: Vec<&str> = points.split("<trkpt").collect();
    points.reverse();
    let after = course_of(&read(&format!(
        "{head}<trkpt{}</trkseg>{tail}",
        points.join("<trkpt")
    )));
    assert_eq!(after["is_surveyed"], false);
    const LENGTH_SHARE: f64 = 0.002;
    assert!((number(&after["distance_m"]) / 20_000.0 - 1.0).abs() < LENGTH_SHARE);
}

#[test]
fn a_table_of_a_ride_is_no_surveyed_road() {
    let ride =
        read("time_s,distance_m,elevation_m,bearing_deg\n0,0,10,NW\n1,10,11,NW\n2,20,12,NW\n");
    assert!(!ride.is_surveyed && !ride.columns.has(Column::Bearing));
    assert!(ride.notes.iter().all(|note| note.text != "unreadable"));
}

#[test]
fn what_cannot_be_written_is_refused_by_name() {
    let refused = |course_: Value, with: Value| {
        let request = json!({ "scenario": { "course": course_ }, "with": with });
        course(&request).expect_err("an error")["field"].clone()
    };
    let steep = json!({ "kind": "simple", "distance_m": 2_000_000, "grade": 0.3 });
    let field = refused(steep, json!({ "export": "csv" }));
    assert!(
        field
            .as_str()
            .is_some_and(|field| field.starts_with("scenario.course.points[")),
        "{field}"
    );
    assert_eq!(
        refused(
            profile(),
            json!({ "export": "gpx", "name": "x".repeat(100_000) })
        ),
        "with.name"
    );
    assert_eq!(
        refused(profile(), json!({ "export": "pdf" })),
        "with.export"
    );
    assert_eq!(
        refused(json!({ "kind": "simple" }), json!({})),
        "scenario.course"
    );
}

#[test]
fn a_course_of_very_many_points_is_written_as_it_is_ridden() {
    const SAME_S: f64 = 0.1;
    // As many points as a course holds, over nearly as many kilometres as it may be long.
    let points: Vec<Value> = (0..20_000_u32)
        .map(|i| json!({ "distance_m": 100 * i, "elevation_m": i % 9, "bearing_deg": 17 * (i % 1_000) % 360 }))
        .collect();
    let before = json!({ "kind": "profile", "points": points });
    let request = json!({ "scenario": { "course": before }, "with": { "export": "gpx" } });
    let answer = course(&request).expect("a file");
    assert!(
        answer["warnings"]
            .as_array()
            .expect("a list")
            .iter()
            .any(|warning| warning["text"] == "simplified")
    );
    let after = course_of(&read(answer["file"].as_str().expect("a text")));
    assert_eq!(number(&after["distance_m"]), 1_999_900.0);
    assert!((time_s(&after["course"], 4.0) - time_s(&before, 4.0)).abs() < SAME_S);
}
