//! Requests that are wrong, huge, or legal at the very edge: every question answers or names the field, and never panics.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::ask_json;
use fasterby_core::fields::{self, FIELDS, Field};
use fasterby_core::questions::{QUESTIONS, Receive, ask};
use fasterby_tests::{answer, refused};
use proptest::prelude::*;
use proptest::test_runner::{RngSeed, TestRunner};
use serde::Serialize;
use serde_json::{Map, Value, json};
use std::collections::{BTreeMap, BTreeSet};

/// An error is for people and for one control of the page, whatever was sent.
const LONGEST_ERROR: usize = 2_000;
/// Stands where a raw token is written into a request.
const HOLE: &str = "\"@hole@\"";
/// What is put in the place of each value: JSON tokens, right and wrong ones.
const TOKENS: &[&str] = &[
    "null",
    "\"x\"",
    "\"\"",
    "-1",
    "0",
    "1e308",
    "-1e308",
    "1e-320",
    "1e999",
    "-1e999",
    "NaN",
    "Infinity",
    "\"NaN\"",
    "[]",
    "{}",
    "true",
    "[1,2]",
    "{\"value\":1e308}",
    "{\"value\":1,\"sd\":-1}",
    "{\"value\":1,\"sd\":1e308}",
    "{\"sd\":1}",
];

/// The requests that the random ones start from: right, and between them holding every field.
fn seeds() -> Vec<(&'static str, Value)> {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/seeds/ask");
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("the seeds")
        .map(|file| file.expect("a seed").path())
        .collect();
    files.sort();
    let read = |path: std::path::PathBuf| {
        let text = std::fs::read_to_string(path).expect("a seed is text");
        let place = usize::from(text.as_bytes()[0] - b'0');
        (
            QUESTIONS[place].id,
            serde_json::from_str(&text[1..]).expect("a seed is JSON"),
        )
    };
    files.into_iter().map(read).collect()
}

/// Where an answer may hold what is no number: a map of finish times has holes where a power does not carry the rider over the
/// course, and a small change of a set-up may put the pedal out of the leg's reach.
const HOLES: [&str; 2] = ["columns.time_s", "changes."];

/// An answer as a tree that tells what is no number from what is left out, as JSON does not.
struct Tree;

impl Receive for Tree {
    type Out = ciborium::Value;
    fn receive<A: Serialize>(self, answer: &A) -> Self::Out {
        ciborium::Value::serialized(answer).expect("an answer is a tree")
    }
}

#[derive(Clone, Debug)]
enum Step {
    Name(String),
    Place(usize),
}

/// Every value of a request by the steps that lead to it, inner ones included, the whole excepted.
fn paths(value: &Value, here: &mut Vec<Step>, all: &mut Vec<Vec<Step>>) {
    let mut visit = |step: Step, inner: &Value| {
        here.push(step);
        all.push(here.clone());
        paths(inner, here, all);
        here.pop();
    };
    match value {
        Value::Object(fields) => fields
            .iter()
            .for_each(|(name, inner)| visit(Step::Name(name.clone()), inner)),
        Value::Array(items) => items
            .iter()
            .enumerate()
            .for_each(|(i, inner)| visit(Step::Place(i), inner)),
        _ => {}
    }
}

fn all_paths(value: &Value) -> Vec<Vec<Step>> {
    let mut all = Vec::new();
    paths(value, &mut Vec::new(), &mut all);
    all
}

fn at<'a>(value: &'a mut Value, path: &[Step]) -> &'a mut Value {
    path.iter().fold(value, |value, step| match step {
        Step::Name(name) => &mut value[name.as_str()],
        Step::Place(i) => &mut value[*i],
    })
}

/// A path as errors write it.
fn written(path: &[Step]) -> String {
    path.iter().fold(String::new(), |text, step| match step {
        Step::Name(name) if text.is_empty() => name.clone(),
        Step::Name(name) => format!("{text}.{name}"),
        Step::Place(i) => format!("{text}[{i}]"),
    })
}

/// The names on a path, as the table of fields has them.
fn without_places(path: &[Step]) -> String {
    let names = path.iter().filter_map(|step| match step {
        Step::Name(name) => Some(name.as_str()),
        Step::Place(_) => None,
    });
    names.collect::<Vec<_>>().join(".")
}

/// The object or list that a path lies in.
fn holder(path: &str) -> &str {
    path.rfind(['.', '[']).map_or("", |end| &path[..end])
}

/// Whether an error at `field` can come of a change at `path`.
fn related(field: &str, path: &str, kind: &Value) -> bool {
    let same = field.is_empty() || field.starts_with(path) || path.starts_with(field);
    // Values that contradict each other are told apart at either of them, points of a profile at the next one.
    let beside = kind == "conflict" && path.starts_with(holder(field))
        || field.contains("course.points[") && path.contains("course.points[");
    // An event whose course is nothing has no length.
    let endless = kind == "missing" && field == format!("{}.distance_m", holder(path));
    // Without its positions a scenario leaves an index of the question's own hanging.
    let hanging = path == "scenario" && field.starts_with("with.");
    // A change that requires another names it from afar.
    let required = field.ends_with(".requires") && path.starts_with("with.candidates");
    same || beside || endless || hanging || required || kind == "impossible"
}

/// The paths of what is no finite number.
fn not_finite(path: &str, value: &ciborium::Value, found: &mut Vec<String>) {
    match value {
        ciborium::Value::Float(number) if !number.is_finite() => found.push(path.to_owned()),
        ciborium::Value::Map(fields) => {
            for (name, inner) in fields {
                let name = name.as_text().expect("fields have names");
                let inside = if path.is_empty() {
                    name.to_owned()
                } else {
                    format!("{path}.{name}")
                };
                not_finite(&inside, inner, found);
            }
        }
        ciborium::Value::Array(items) => items
            .iter()
            .for_each(|inner| not_finite(path, inner, found)),
        _ => {}
    }
}

/// Asks; an answer holds finite numbers only, an error is well formed. Gives the error.
fn asked(question: &str, request: &str) -> Result<(), Value> {
    match ask(question, request, Tree) {
        Ok(answer) => {
            let mut found = Vec::new();
            not_finite("", &answer, &mut found);
            found.retain(|path| !HOLES.iter().any(|hole| path.starts_with(hole)));
            found.dedup();
            assert!(
                found.is_empty(),
                "{question} {request}\nhas what is no number at {found:?}"
            );
            Ok(())
        }
        Err(error) => {
            let text = serde_json::to_string(&error).expect("errors are JSON");
            assert!(
                text.len() <= LONGEST_ERROR,
                "an error of {} bytes",
                text.len()
            );
            let error: Value = serde_json::from_str(&text).expect("errors are JSON");
            assert!(
                error["kind"].is_string() && error["field"].is_string(),
                "{error}"
            );
            assert!(
                error["message"]
                    .as_str()
                    .is_some_and(|words| words.ends_with('.')),
                "{error}"
            );
            Err(error)
        }
    }
}

#[test]
fn what_is_no_number_is_found_wherever_it_stands() {
    #[derive(Serialize)]
    struct Row {
        value: f64,
        left_out: Option<f64>,
    }
    #[derive(Serialize)]
    struct Answer {
        rows: Vec<Row>,
    }
    let found = |value: f64| {
        let mut found = Vec::new();
        let answer = Answer {
            rows: vec![Row {
                value,
                left_out: None,
            }],
        };
        not_finite("", &Tree.receive(&answer), &mut found);
        found
    };
    assert_eq!(found(f64::NAN), ["rows.value"]);
    assert_eq!(found(f64::INFINITY), ["rows.value"]);
    assert!(found(1.0).is_empty());
}

#[test]
fn every_question_has_seeds_that_it_answers() {
    let seeds = seeds();
    for question in QUESTIONS.iter().map(|question| question.id) {
        assert!(
            seeds.iter().filter(|(asks, _)| *asks == question).count() >= 2,
            "{question}"
        );
    }
    for (question, request) in seeds {
        answer(question, &request);
    }
    // The fuzzer that edits them has each, but for the one without a request.
    let edited = include_str!("../fuzz/fuzz_targets/edited.rs");
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/seeds/ask");
    for file in std::fs::read_dir(folder).expect("the seeds") {
        let name = file
            .expect("a seed")
            .file_name()
            .into_string()
            .expect("a name");
        assert!(
            name == "nothing-given" || edited.contains(&format!("/ask/{name}\"")),
            "{name} is not edited"
        );
    }
}

#[test]
fn the_seeds_hold_every_number_of_a_scenario() {
    let seeds = seeds();
    for field in FIELDS
        .iter()
        .filter(|field| !field.key.starts_with("with."))
    {
        let ends = |request: &Value| {
            all_paths(request)
                .iter()
                .any(|steps| without_places(steps) == format!("scenario.{}", field.key))
        };
        assert!(
            seeds.iter().any(|(_, request)| ends(request)),
            "no seed has {}",
            field.key
        );
    }
}

/// A field of a question is tried so often, in several requests and places of a list; with what was answered, once.
const TRIED_OF_A_FIELD: usize = 2;

#[test]
fn any_value_replaced_by_any_other_is_answered_or_refused_at_its_field() {
    let mut wrong = Vec::new();
    let mut tried: BTreeMap<(&str, String), (usize, BTreeSet<&str>)> = BTreeMap::new();
    for (question, request) in seeds() {
        for path in all_paths(&request) {
            let (times, answered) = tried.entry((question, without_places(&path))).or_default();
            *times += 1;
            if *times > TRIED_OF_A_FIELD {
                continue;
            }
            let mut holed = request.clone();
            *at(&mut holed, &path) = json!("@hole@");
            let (text, path) = (holed.to_string(), written(&path));
            for &token in TOKENS {
                if answered.contains(token) {
                    continue;
                }
                let Err(error) = asked(question, &text.replace(HOLE, token)) else {
                    answered.insert(token);
                    continue;
                };
                let field = error["field"].as_str().unwrap_or_default();
                if !related(field, &path, &error["kind"]) {
                    wrong.push(format!("{question}: {path} = {token}: {error}"));
                }
            }
        }
    }
    assert!(
        wrong.is_empty(),
        "{} misnamed:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

#[test]
fn an_unknown_field_is_named_at_every_level() {
    for (question, request) in seeds() {
        let mut objects = all_paths(&request);
        objects.push(Vec::new());
        for path in objects {
            let mut slipped = request.clone();
            let Some(fields) = at(&mut slipped, &path).as_object_mut() else {
                continue;
            };
            fields.insert("slip".into(), json!(1));
            let error = refused(question, &slipped.to_string());
            let mut expected = written(&path);
            expected.push_str(if expected.is_empty() { "slip" } else { ".slip" });
            assert_eq!(
                (&error["kind"], &error["field"]),
                (&json!("unknown_field"), &json!(expected)),
                "{error}"
            );
        }
    }
}

#[test]
fn numbers_that_are_none_are_refused_by_name_or_as_no_json() {
    for question in QUESTIONS.iter().map(|question| question.id) {
        let field = "scenario.rider.total_mass_kg";
        let with_mass =
            |token: &str| format!("{{\"scenario\":{{\"rider\":{{\"total_mass_kg\":{token}}}}}}}");
        for token in ["null", "\"NaN\"", "\"82\"", "[82]", "true", "{}"] {
            let error = refused(question, &with_mass(token));
            assert!(
                error["field"]
                    .as_str()
                    .is_some_and(|named| named.starts_with(field)),
                "{token}: {error}"
            );
        }
        for token in ["-82", "0", "1e308", "-1e308", "29.999", "250.001"] {
            let error = refused(question, &with_mass(token));
            assert_eq!(
                (&error["kind"], &error["field"]),
                (&json!("out_of_range"), &json!(field)),
                "{token}: {error}"
            );
            assert_eq!(
                (&error["min"], &error["max"]),
                (&json!(30.0), &json!(250.0)),
                "{token}: {error}"
            );
        }
        for token in [
            "NaN",
            "Infinity",
            "-Infinity",
            "1e999",
            "0x52",
            "82,",
            "82kg",
            "",
        ] {
            refused(question, &with_mass(token));
        }
    }
}

#[test]
fn no_road_a_road_backwards_and_a_road_round_the_sun_are_out_of_range() {
    for question in QUESTIONS.iter().map(|question| question.id) {
        for distance_m in [0.0, -40_000.0, 99.9, 2_000_001.0, 1e12] {
            let request = json!({ "scenario": { "course": { "distance_m": distance_m } } });
            let error = refused(question, &request.to_string());
            assert_eq!(error["field"], "scenario.course.distance_m", "{error}");
            assert_eq!(error["kind"], "out_of_range", "{error}");
        }
    }
}

#[test]
fn positions_must_be_there_and_not_too_many_and_the_ridden_one_among_them() {
    for question in QUESTIONS.iter().map(|question| question.id) {
        let error = refused(
            question,
            &json!({ "scenario": { "positions": [] } }).to_string(),
        );
        assert_eq!(error["field"], "scenario.positions");
        let crowd = vec![json!({}); fields::MOST_POSITIONS + 1];
        let error = refused(
            question,
            &json!({ "scenario": { "positions": crowd } }).to_string(),
        );
        assert_eq!(
            (&error["kind"], &error["field"]),
            (&json!("too_large"), &json!("scenario.positions"))
        );
        for place in [
            "1",
            "-1",
            "1.5",
            "1e30",
            "18446744073709551615",
            "18446744073709551616",
            "\"0\"",
        ] {
            let error = refused(
                question,
                &format!("{{\"scenario\":{{\"riding_position\":{place}}}}}"),
            );
            assert_eq!(error["field"], "scenario.riding_position", "{error}");
        }
    }
}

#[test]
fn text_that_is_not_a_request_is_refused() {
    let not_requests = [
        "",
        " ",
        "null",
        "0",
        "\"\"",
        "true",
        "{",
        "}",
        "{}{}",
        "{} x",
        "{\"scenario\":null}",
        "{\"with\":1}",
    ];
    for question in QUESTIONS.iter().map(|question| question.id) {
        for text in not_requests {
            refused(question, text);
        }
    }
    for question in [
        "",
        "speed",
        "SPEED-FOR-WATTS",
        "speed-for-watts ",
        "../finish-time",
        "__proto__",
    ] {
        assert_eq!(refused(question, "{}")["kind"], "unknown_question");
    }
}

#[test]
fn a_list_does_not_stand_for_an_object() {
    for question in QUESTIONS.iter().map(|question| question.id) {
        for request in [
            "[]",
            "[{},{}]",
            "{\"scenario\":[]}",
            "{\"with\":[]}",
            "{\"scenario\":{\"rider\":[80]}}",
            "{\"scenario\":{\"positions\":[[\"low\",0.23]]}}",
            "{\"scenario\":{\"course\":{\"kind\":\"profile\",\"points\":[[0,0],[500,0]]}}}",
        ] {
            assert_eq!(
                refused(question, request)["kind"],
                "wrong_type",
                "{request}"
            );
        }
    }
}

#[test]
fn a_request_of_fifty_megabytes_is_refused_unread() {
    let spaces = format!("{}{{}}", " ".repeat(50_000_000));
    let title = format!(
        "{{\"scenario\":{{\"title\":\"{}\"}}}}",
        "x".repeat(50_000_000)
    );
    for question in QUESTIONS.iter().map(|question| question.id) {
        for request in [&spaces, &title] {
            let error = refused(question, request);
            assert_eq!(
                (&error["kind"], &error["field"]),
                (&json!("too_large"), &json!(""))
            );
        }
    }
}

#[test]
fn deep_nesting_is_refused() {
    const DEEP: usize = 100_000;
    for question in QUESTIONS.iter().map(|question| question.id) {
        for (open, close) in [
            ("[", "]"),
            ("{\"scenario\":", "}"),
            ("{\"a\":", "}"),
            ("{\"with\":{\"effort\":", "}}"),
        ] {
            refused(question, &open.repeat(DEEP));
            refused(
                question,
                &format!("{}1{}", open.repeat(DEEP), close.repeat(DEEP)),
            );
        }
        let deep = format!("{}1{}", "[".repeat(DEEP), "]".repeat(DEEP));
        for holder in [
            "{\"scenario\":{\"title\":@}}",
            "{\"with\":{\"effort\":@}}",
            "{\"scenario\":{\"fasterby\":99,\"new\":@}}",
        ] {
            refused(question, &holder.replace('@', &deep));
        }
    }
}

/// A course of points ten metres apart.
fn long_course(points: usize) -> Value {
    let point = |i: usize| json!({ "distance_m": 10 * i, "elevation_m": i % 3 });
    json!({ "kind": "profile", "points": (0..points).map(point).collect::<Vec<_>>() })
}

#[test]
fn as_many_points_as_are_read_are_ridden_and_one_more_is_refused() {
    let effort = json!({ "kind": "power", "power_w": 250 });
    let exact = json!({ "total_mass_kg": 82 });
    let request = |points| json!({ "scenario": { "rider": exact, "course": long_course(points) }, "with": { "effort": effort } });
    answer("finish-time", &request(fields::MOST_POINTS));
    for question in QUESTIONS.iter().map(|question| question.id) {
        let error = refused(
            question,
            &json!({ "scenario": { "course": long_course(fields::MOST_POINTS + 1) } }).to_string(),
        );
        assert_eq!(
            (&error["kind"], &error["field"]),
            (&json!("too_large"), &json!("scenario.course.points")),
            "{error}"
        );
    }
}

#[test]
fn a_profile_that_goes_back_stands_or_leaps_is_refused_at_its_point() {
    let course = |points: &[(f64, f64)]| {
        let points: Vec<Value> = points
            .iter()
            .map(|(d, z)| json!({ "distance_m": d, "elevation_m": z }))
            .collect();
        json!({ "scenario": { "course": { "kind": "profile", "points": points } } }).to_string()
    };
    let cases: [(&[(f64, f64)], &str); 7] = [
        (&[], "scenario.course.points"),
        (&[(0.0, 0.0)], "scenario.course.points"),
        (&[(0.0, 0.0), (50.0, 0.0)], "scenario.course.points"),
        (
            &[(0.0, 0.0), (500.0, 0.0), (400.0, 0.0)],
            "scenario.course.points[2].distance_m",
        ),
        (
            &[(0.0, 0.0), (500.0, 0.0), (500.0, 0.0)],
            "scenario.course.points[2].distance_m",
        ),
        (
            &[(0.0, 0.0), (500.0, 0.0), (600.0, 90.0)],
            "scenario.course.points[2].elevation_m",
        ),
        (
            &[(0.0, 0.0), (500.0, 0.0), (1e9, 0.0)],
            "scenario.course.points[2].distance_m",
        ),
    ];
    for question in QUESTIONS.iter().map(|question| question.id) {
        for (points, field) in cases {
            assert_eq!(refused(question, &course(points))["field"], field);
        }
    }
}

/// JSON leaves open what a key given twice means: the last one counts, or it is refused.
#[test]
fn of_a_key_given_twice_the_last_counts_or_it_is_refused() {
    let cases = [
        (
            "{\"scenario\":{\"title\":5},\"scenario\":{}}",
            "{\"scenario\":{}}",
        ),
        (
            "{\"scenario\":{\"rider\":{},\"rider\":{\"total_mass_kg\":70}}}",
            "{\"scenario\":{\"rider\":{\"total_mass_kg\":70}}}",
        ),
        (
            "{\"scenario\":{\"rider\":{\"total_mass_kg\":{\"value\":70,\"value\":80}}}}",
            "{\"scenario\":{\"rider\":{\"total_mass_kg\":80}}}",
        ),
        (
            "{\"scenario\":{\"start\":{\"speed_m_s\":7,\"speed_m_s\":8}}}",
            "{\"scenario\":{\"start\":{\"speed_m_s\":8}}}",
        ),
    ];
    for question in QUESTIONS.iter().map(|question| question.id) {
        for (twice, last) in cases {
            if ask_json(question, twice).is_ok() {
                assert_eq!(
                    ask_json(question, twice),
                    ask_json(question, last),
                    "{twice}"
                );
            }
        }
    }
}

#[test]
fn a_span_is_two_numbers() {
    for span in [
        "[]",
        "[200]",
        "[200,300,400]",
        "[300,200]",
        "[200,200]",
        "[200,\"300\"]",
        "{}",
        "200",
    ] {
        let error = refused(
            "power-or-drag",
            &format!("{{\"with\":{{\"map_power_w\":{span}}}}}"),
        );
        assert!(
            error["field"]
                .as_str()
                .is_some_and(|field| field.starts_with("with.map_power_w")),
            "{span}: {error}"
        );
    }
}

#[test]
fn a_newer_scenario_is_refused_for_being_newer() {
    for question in QUESTIONS.iter().map(|question| question.id) {
        for scenario in [
            "{\"fasterby\":4}",
            "{\"fasterby\":99,\"novelty\":{\"deep\":[1]}}",
            "{\"rider\":\"of another form\",\"fasterby\":4}",
            "{\"fasterby\":18446744073709551615}",
        ] {
            let error = refused(question, &format!("{{\"scenario\":{scenario}}}"));
            assert_eq!(
                (&error["kind"], &error["field"]),
                (&json!("newer_version"), &json!("scenario.fasterby")),
                "{error}"
            );
        }
        for version in [
            "0",
            "-1",
            "1.5",
            "\"1\"",
            "null",
            "1e30",
            "18446744073709551616",
        ] {
            let error = refused(
                question,
                &format!("{{\"scenario\":{{\"fasterby\":{version}}}}}"),
            );
            assert_eq!(error["field"], "scenario.fasterby", "{error}");
        }
    }
}

#[test]
fn the_first_version_reads_as_it_was() {
    let then =
        r#"{"fasterby":1,"positions":[{"lapses":{"share":0.1,"cda_m2":0.3}},{"lapses":null}]}"#;
    let now = r#"{"fasterby":2,"positions":[{"lapses":[{"share":0.1,"cda_m2":0.3}]},{}]}"#;
    // What is asked of no rider has nothing to read.
    let questions = QUESTIONS.iter().map(|question| question.id);
    for question in questions.filter(|question| *question != "course") {
        let ask = |scenario: &str| {
            ask_json(question, &format!("{{\"scenario\":{scenario}}}")).expect("an answer")
        };
        assert_eq!(ask(then), ask(now));
    }
}

#[test]
fn what_the_second_version_added_is_refused_at_its_field() {
    let many = |thing: &str, count: usize| {
        vec![serde_json::from_str::<Value>(thing).expect("JSON"); count]
    };
    let effort = r#"{"duration_s":240,"power_w":300}"#;
    let cases = [
        (
            json!({ "efforts": [{ "power_w": 300 }] }),
            "scenario.efforts[0].duration_s",
        ),
        (
            json!({ "efforts": [{ "duration_s": 0, "power_w": 300 }] }),
            "scenario.efforts[0].duration_s",
        ),
        (
            json!({ "efforts": [{ "duration_s": 60, "power_w": 1e5 }] }),
            "scenario.efforts[0].power_w",
        ),
        (
            json!({ "efforts": [{ "duration_s": 60, "power_w": 300, "position": 1 }] }),
            "scenario.efforts[0].position",
        ),
        (
            json!({ "efforts": [{ "duration_s": 60, "power_w": 300, "date": "2026-13-01" }] }),
            "scenario.efforts[0].date",
        ),
        (
            json!({ "efforts": [{ "duration_s": 60, "power_w": 300, "date": "1 May, ä" }] }),
            "scenario.efforts[0].date",
        ),
        (
            json!({ "efforts": many(effort, fields::MOST_EFFORTS + 1) }),
            "scenario.efforts",
        ),
        (json!({ "events": [] }), "scenario.events"),
        (
            json!({ "events": [{ "name": "ten" }] }),
            "scenario.events[0].distance_m",
        ),
        (
            json!({ "events": [{ "distance_m": 5 }] }),
            "scenario.events[0].distance_m",
        ),
        (
            json!({ "events": many(r#"{"distance_m":16000}"#, fields::MOST_EVENTS + 1) }),
            "scenario.events",
        ),
        (
            json!({ "power": { "cp_w_prime_correlation": -1 } }),
            "scenario.power.cp_w_prime_correlation",
        ),
        (
            json!({ "positions": [{ "power": { "cp_w": 300, "peak_w": 290 } }] }),
            "scenario.positions[0].power.peak_w",
        ),
        (
            json!({ "positions": [{ "power": { "cp_w": 3 } }] }),
            "scenario.positions[0].power.cp_w",
        ),
        (
            json!({ "positions": [{ "fade": {}, "fade_test": {} }] }),
            "scenario.positions[0].fade_test",
        ),
        (
            json!({ "positions": [{ "fade_test": { "test_s": 1 } }] }),
            "scenario.positions[0].fade_test.test_s",
        ),
        (
            json!({ "positions": [{ "lapses": [{ "share": 0.6 }, { "share": 0.5 }] }] }),
            "scenario.positions[0].lapses",
        ),
        (
            json!({ "positions": [{ "lapses": [{}, { "cda_m2": 3 }] }] }),
            "scenario.positions[0].lapses[1].cda_m2",
        ),
        (
            json!({ "positions": [{ "lapses": many("{}", fields::MOST_LAPSES + 1) }] }),
            "scenario.positions[0].lapses",
        ),
        (
            json!({ "positions": [{ "equipment": [{}, { "lapses": [{ "share": 2 }] }] }] }),
            "scenario.positions[0].equipment[1].lapses[0].share",
        ),
        (
            json!({ "positions": [{ "equipment": [{ "cda_change_m2": 0.3 }] }] }),
            "scenario.positions[0].equipment[0].cda_change_m2",
        ),
        (
            json!({ "positions": [{ "equipment": [{ "lateral_m_s2": 0 }] }] }),
            "scenario.positions[0].equipment[0].lateral_m_s2",
        ),
        (
            json!({ "positions": [{ "equipment": many("{}", fields::MOST_EQUIPMENT + 1) }] }),
            "scenario.positions[0].equipment",
        ),
        (
            json!({ "positions": [{ "equipment": [{}], "worn": 1 }] }),
            "scenario.positions[0].worn",
        ),
    ];
    for question in QUESTIONS.iter().map(|question| question.id) {
        for (scenario, field) in &cases {
            let error = refused(question, &json!({ "scenario": scenario }).to_string());
            assert_eq!(error["field"], *field, "{error}");
        }
    }
}

#[test]
fn long_texts_are_refused_and_never_sent_back_whole() {
    let long = "ä".repeat(500_000);
    let longest = "x".repeat(fields::MOST_TEXT_BYTES);
    for question in QUESTIONS.iter().map(|question| question.id) {
        let error = asked(
            question,
            &json!({ "scenario": { "title": long } }).to_string(),
        )
        .expect_err("too long");
        assert_eq!(
            (&error["kind"], &error["field"]),
            (&json!("too_large"), &json!("scenario.title"))
        );
        let error = asked(
            question,
            &json!({ "scenario": { "positions": [{ "name": long }] } }).to_string(),
        )
        .expect_err("too long");
        assert_eq!(error["field"], "scenario.positions[0].name");
        for request in [
            json!({ "scenario": { "start": long } }),
            json!({ "scenario": { "course": { "kind": long } } }),
            json!({ "scenario": { "rider": { "total_mass_kg": long } } }),
            json!({ "scenario": { "rider": { "total_mass_kg": { "value": 82, "source": long } } } }),
        ] {
            asked(question, &request.to_string()).expect_err("a long text where none belongs");
        }
        asked(&long, "{}").expect_err("a long question");
        let mut request = seeds()
            .into_iter()
            .find(|(asks, _)| *asks == question)
            .expect("a seed")
            .1;
        request["scenario"]["title"] = json!(longest);
        answer(question, &request);
    }
}

#[test]
fn the_long_name_of_an_unknown_field_is_not_sent_back_whole() {
    let long = "ä".repeat(500_000);
    for question in QUESTIONS.iter().map(|question| question.id) {
        for request in [
            json!({ (long.as_str()): 1 }),
            json!({ "with": { (long.as_str()): 1 } }),
            json!({ "scenario": { (long.as_str()): 1 } }),
            json!({ "scenario": { "start": { (long.as_str()): 1 } } }),
            json!({ "scenario": { "rider": { "total_mass_kg": { (long.as_str()): 1 } } } }),
        ] {
            let error = asked(question, &request.to_string()).expect_err("an unknown field");
            assert_eq!(error["kind"], "unknown_field");
        }
    }
}

/// A number at the ends or the middle of its range, now and then with its doubt.
fn extreme(field: &'static Field) -> impl Strategy<Value = Value> {
    let value = prop_oneof![
        3 => Just(field.default),
        1 => Just(field.min),
        1 => Just(field.max),
        1 => Just(field.usual_min),
        1 => Just(field.usual_max),
    ];
    let sd =
        prop_oneof![4 => Just(0.0), 1 => Just(field.default_sd), 1 => Just(field.max - field.min)];
    (value, sd).prop_map(|(value, sd)| {
        if sd == 0.0 {
            json!(value)
        } else {
            json!({ "value": value, "sd": sd })
        }
    })
}

/// A value that is there or not.
fn perhaps<T: std::fmt::Debug>(
    strategy: impl Strategy<Value = T>,
) -> impl Strategy<Value = Option<T>> {
    proptest::option::weighted(0.4, strategy)
}

fn object(fields: Vec<(&'static str, Option<Value>)>) -> Value {
    Value::Object(
        fields
            .into_iter()
            .filter_map(|(name, value)| Some((name.to_owned(), value?)))
            .collect::<Map<_, _>>(),
    )
}

/// An object of the fields below `prefix`, each at an extreme, or left out.
fn extremes(prefix: &'static str) -> BoxedStrategy<Value> {
    let below = FIELDS.iter().filter_map(move |&field| {
        let name = field.key.strip_prefix(prefix)?.strip_prefix('.')?;
        (!name.contains('.')).then(|| {
            perhaps(extreme(field))
                .prop_map(move |value| (name, value))
                .boxed()
        })
    });
    below.collect::<Vec<_>>().prop_map(object).boxed()
}

/// A power curve whose correlation is a plain number.
fn extreme_power() -> impl Strategy<Value = Value> {
    extremes("power").prop_map(|mut power| {
        if let Some(correlation) = power.get_mut("cp_w_prime_correlation")
            && let Some(value) = correlation.get("value").cloned()
        {
            *correlation = value;
        }
        if power.get("altitude_response").is_some() {
            power["altitude_loss"] = json!("published");
        }
        power
    })
}

/// A kind of lapse or two.
fn extreme_lapses() -> impl Strategy<Value = Value> {
    proptest::collection::vec(extremes("positions.lapses"), 1..3).prop_map(Value::Array)
}

/// Pieces of equipment, the first of which is worn.
fn extreme_equipment() -> impl Strategy<Value = Value> {
    let piece = (extremes("positions.equipment"), perhaps(extreme_lapses())).prop_map(
        |(mut piece, lapses)| {
            if let Some(lapses) = lapses {
                piece["lapses"] = lapses;
            }
            piece
        },
    );
    proptest::collection::vec(piece, 1..3).prop_map(Value::Array)
}

fn extreme_position() -> impl Strategy<Value = Value> {
    let yaw_table = proptest::collection::vec(prop_oneof![Just(0.1), Just(1.0), Just(3.0)], 0..4)
        .prop_map(|ratios| {
            let row = |(i, ratio): (usize, f64)| json!({ "yaw_deg": 30 * i, "ratio": ratio });
            ratios.into_iter().enumerate().map(row).collect::<Value>()
        });
    (
        extremes("positions"),
        perhaps(extremes("positions.fade")),
        perhaps(extremes("positions.fade_test")),
        perhaps(extreme_lapses()),
        perhaps(extreme_equipment()),
        perhaps(extreme_power()),
        perhaps(yaw_table),
    )
        .prop_map(
            |(mut position, fade, fade_test, lapses, equipment, power, yaw_table)| {
                let worn = equipment.as_ref().map(|_| json!(0));
                let fade_test = if fade.is_some() { None } else { fade_test };
                let parts = [
                    ("fade", fade),
                    ("fade_test", fade_test),
                    ("lapses", lapses),
                    ("equipment", equipment),
                    ("worn", worn),
                    ("power", power),
                    ("yaw_table", yaw_table),
                ];
                for (name, part) in parts {
                    if let Some(part) = part {
                        position[name] = part;
                    }
                }
                position
            },
        )
}

fn extreme_course() -> impl Strategy<Value = Value> {
    // By its length, or by its time, which is a plain number.
    let duration_s = perhaps(plain(&fields::COURSE_DURATION_S));
    let simple = (extremes("course"), duration_s, any::<bool>()).prop_map(
        |(mut course, duration_s, out_and_back)| {
            course["out_and_back"] = json!(out_and_back);
            if let Some(course) = course.as_object_mut() {
                course.remove("duration_s");
                if let Some(duration_s) = duration_s {
                    course.remove("distance_m");
                    course.insert("duration_s".into(), duration_s);
                }
            }
            course
        },
    );
    let stretch = (
        prop_oneof![Just(0.1), Just(5.0), Just(400.0), Just(30_000.0)],
        prop_oneof![Just(-0.39), Just(0.0), Just(0.01), Just(0.39)],
        proptest::option::of(prop_oneof![Just(2.0), Just(60.0), Just(100_000.0)]),
        proptest::option::of(prop_oneof![Just(-360.0), Just(0.0), Just(90.0)]),
    );
    let profile = proptest::collection::vec(stretch, 1..30).prop_map(|stretches| {
        let (mut distance_m, mut elevation_m) = (0.0f64, 500.0f64);
        let mut points = Vec::new();
        for (length_m, grade, radius_m, bearing_deg) in stretches {
            points.push(json!({ "distance_m": distance_m, "elevation_m": elevation_m, "bearing_deg": bearing_deg, "radius_m": radius_m }));
            distance_m += length_m;
            elevation_m = (elevation_m + grade * length_m).clamp(-500.0, 6000.0);
        }
        points.push(json!({ "distance_m": distance_m + 120.0, "elevation_m": elevation_m }));
        json!({ "kind": "profile", "points": points })
    });
    prop_oneof![2 => simple, 1 => profile]
}

/// Conditions in which humidity or dew point, and roughness or shelter, are given, not both.
fn extreme_conditions() -> impl Strategy<Value = Value> {
    (
        extremes("conditions"),
        any::<bool>(),
        any::<bool>(),
        any::<bool>(),
    )
        .prop_map(|(mut day, humid, open, sea_level)| {
            if let Some(day) = day.as_object_mut() {
                day.remove(if humid {
                    "dew_point_c"
                } else {
                    "relative_humidity"
                });
                day.remove(if open {
                    "shelter_factor"
                } else {
                    "roughness_length_m"
                });
                day.insert(
                    "pressure_is".into(),
                    json!(if sea_level { "sea_level" } else { "course" }),
                );
            }
            day
        })
}

fn extreme_events() -> impl Strategy<Value = Value> {
    let event = prop_oneof![
        extreme_course().prop_map(|course| json!({ "course": course })),
        plain(&fields::EVENT_DISTANCE_M).prop_map(|distance_m| json!({ "distance_m": distance_m })),
        plain(&fields::EVENT_DURATION_S).prop_map(|duration_s| json!({ "duration_s": duration_s })),
    ];
    proptest::collection::vec(event, 1..4).prop_map(Value::from)
}

/// Stops whose distance is a plain number.
fn extreme_stops() -> impl Strategy<Value = Value> {
    (
        perhaps(plain(&fields::STOPS_EVERY_M)),
        perhaps(extreme(&fields::STOPS_TIME_S)),
    )
        .prop_map(|(every_m, time_s)| object(vec![("every_m", every_m), ("time_s", time_s)]))
}

/// Feeding that takes less than the time between.
fn extreme_feeding() -> impl Strategy<Value = Value> {
    let value = |number: Option<&Value>, or: f64| {
        number.map_or(or, |number| {
            number["value"].as_f64().or(number.as_f64()).unwrap_or(or)
        })
    };
    extremes("feeding").prop_filter("it takes less than the time between", move |feeding| {
        let every_s = value(feeding.get("every_s"), fields::FEEDING_EVERY_S.default);
        value(feeding.get("time_s"), fields::FEEDING_TIME_S.default) < every_s
    })
}

fn extreme_scenario() -> impl Strategy<Value = Value> {
    let start = prop_oneof![
        Just(json!("standing")),
        Just(json!("rolling")),
        extremes("start")
    ];
    let parts = (
        extremes("rider"),
        extremes("bike"),
        proptest::collection::vec(extreme_position(), 2),
        extreme_power(),
        extreme_course(),
        extreme_conditions(),
        start,
        (
            perhaps(extreme(&fields::MODEL_ERROR_SHARE)),
            perhaps(extreme_events().boxed()),
            perhaps(extreme_stops().boxed()),
            perhaps(extreme_feeding().boxed()),
        ),
    );
    parts.prop_map(
        |(
            rider,
            bike,
            positions,
            power,
            course,
            conditions,
            start,
            (model_error_share, events, stops, feeding),
        )| {
            let start = if start == json!({}) {
                json!("rolling")
            } else {
                start
            };
            object(vec![
                ("rider", Some(rider)),
                ("bike", Some(bike)),
                ("positions", Some(json!(positions))),
                ("power", Some(power)),
                ("course", Some(course)),
                ("conditions", Some(conditions)),
                ("start", Some(start)),
                ("model_error_share", model_error_share),
                ("events", events),
                ("stops", stops),
                ("feeding", feeding),
            ])
        },
    )
}

fn plain(field: &'static Field) -> impl Strategy<Value = Value> {
    prop_oneof![Just(field.min), Just(field.default), Just(field.max)]
        .prop_map(|value| json!(value))
}

fn extreme_effort() -> impl Strategy<Value = Value> {
    prop_oneof![
        2 => Just(json!({ "kind": "even" })),
        2 => extreme(&fields::POWER_W).prop_map(|power_w| json!({ "kind": "power", "power_w": power_w })),
        1 => plain(&fields::TIME_S).prop_map(|time_s| json!({ "kind": "time", "time_s": time_s })),
    ]
}

/// What a question takes, at its extremes; few draws, since many reach nothing new.
fn extreme_with(question: &str) -> BoxedStrategy<Value> {
    let draws = || prop_oneof![3 => Just(json!(0)), 1 => Just(json!(5))];
    match question {
        "speed-for-watts" => (
            prop_oneof![
                extreme(&fields::POWER_W).prop_map(|value| ("power_w", value)),
                extreme(&fields::SPEED_M_S).prop_map(|value| ("speed_m_s", value)),
            ],
            perhaps(plain(&fields::GRADE)),
            perhaps(plain(&fields::BEARING_DEG)),
        )
            .prop_map(|((name, value), grade, bearing)| {
                object(vec![(name, Some(value)), ("grade", grade), ("bearing_deg", bearing)])
            })
            .boxed(),
        "power-or-drag" => (plain(&fields::POWER_CHANGE), plain(&fields::CDA_CHANGE), extreme_effort(), draws())
            .prop_map(|(power, cda, effort, draws)| {
                json!({ "power_change": power, "cda_change": cda, "effort": effort, "draws": draws })
            })
            .boxed(),
        "finish-time" => (
            extreme_effort(),
            perhaps(prop_oneof![
                plain(&fields::FOR_TIME_S).prop_map(|time_s| ("for_time_s", time_s)),
                plain(&fields::TARGET_TIME_S).prop_map(|time_s| ("target_time_s", time_s)),
            ]),
            perhaps(plain(&fields::SPLIT_EVERY_M)),
        )
            .prop_map(|(effort, time, every)| {
                let (name, time) = time.map_or(("for_time_s", None), |(name, time)| (name, Some(time)));
                object(vec![("effort", Some(effort)), (name, time), ("split_every_m", every)])
            })
            .boxed(),
        "hold-or-fade" => (extreme_effort(), perhaps(prop_oneof![Just(json!(-0.2)), Just(json!(0.2))]), draws())
            .prop_map(|(effort, lower_by, draws)| {
                object(vec![("effort", Some(effort)), ("lower_by_m2", lower_by), ("draws", Some(draws))])
            })
            .boxed(),
        "power-curve" => (
            perhaps(plain(&fields::HOLD_S)),
            plain(&fields::POWER_CHANGE),
            perhaps(plain(&fields::TEST_ERROR_SHARE)),
            perhaps(prop_oneof![
                Just(json!("two-parameter")),
                Just(json!("three-parameter")),
                Just(json!("omni-domain")),
                Just(json!("log-decline")),
                Just(json!("power-law")),
            ]),
        )
            .prop_map(|(hold_s, change, error, model)| {
                let change = ("power_change", Some(change));
                object(vec![("hold_s", hold_s), change, ("test_error_share", error), ("model", model)])
            })
            .boxed(),
        "leg-room" => extreme_legs().boxed(),
        "drag-test" => extreme_tests().boxed(),
        "which-position" => (perhaps(plain(&fields::EVENT_DISTANCE_M)), any::<bool>(), draws())
            .prop_map(|(distance, equipment, draws)| {
                let with = vec![("distance_m", distance), ("equipment", Some(json!(equipment))), ("draws", Some(draws))];
                object(with)
            })
            .boxed(),
        "next-gain" => extreme_changes().boxed(),
        "ride-plan" => extreme_plans().boxed(),
        "course" => extreme_courses().boxed(),
        _ => panic!("{question} has no extremes here"),
    }
}

/// Parts of a track, and of the scenario's course, with every number at an end of its range.
fn extreme_courses() -> impl Strategy<Value = Value> {
    let degrees = prop_oneof![
        6 => Just(json!([0.0, 0.01, 0.02, null, 0.05])),
        1 => Just(json!([89.9, 90.0, 91.0, -1e300, 45.0])),
        1 => Just(json!([])),
    ];
    let metres = prop_oneof![
        1 => Just(json!([0.0, 900.0, 2_000.0, 2_100.0, 1e9])),
        6 => Just(json!([5.0, 5.0, 4.0, 3.0, 2.0])),
        1 => Just(json!([])),
    ];
    let columns = (degrees.clone(), degrees, metres.clone(), metres).prop_map(
        |(latitude, longitude, elevation, distance)| {
            json!([{ "columns": {
                "latitude_deg": latitude, "longitude_deg": longitude, "elevation_m": elevation, "distance_m": distance,
            } }])
        },
    );
    let numbers = (
        perhaps(plain(&fields::SMOOTH_M)),
        prop_oneof![6 => Just(None), 1 => plain(&fields::FROM_M).prop_map(Some)],
        prop_oneof![6 => Just(None), 1 => plain(&fields::TO_M).prop_map(Some)],
        prop_oneof![Just(json!(1)), Just(json!(50))],
    );
    let columns = prop_oneof![5 => columns.prop_map(Some), 1 => Just(None)];
    (columns, numbers, any::<bool>(), any::<bool>()).prop_map(
        |(recordings, (smooth, from, to, times), reversed, back)| {
            object(vec![
                ("recordings", recordings),
                ("smooth_m", smooth),
                ("from_m", from),
                ("to_m", to),
                ("times", Some(times)),
                ("reversed", Some(json!(reversed))),
                ("out_and_back", Some(json!(back))),
            ])
        },
    )
}

/// Plans with every number at an end of its range, under each form of recovery.
fn extreme_plans() -> impl Strategy<Value = Value> {
    let recovery = prop_oneof![
        Just(json!("differential")),
        Just(json!("none")),
        Just(json!("linear")),
    ];
    let powers = (
        perhaps(plain(&fields::LEAST_W)),
        perhaps(plain(&fields::GREATEST_W)),
        perhaps(plain(&fields::ROUND_W)),
    );
    let targets = prop_oneof![Just(json!(1)), Just(json!(8))];
    let share = perhaps(plain(&fields::AFTER_RUNNING_OUT_SHARE));
    let sit_up = (
        plain(&fields::SIT_UP_FROM_GRADE),
        perhaps(extreme(&fields::SIT_UP_CDA_M2)),
        perhaps(extreme(&fields::SIT_UP_CP_GAIN_SHARE)),
    )
        .prop_map(|(from_grade, cda, gain)| {
            object(vec![
                ("from_grade", Some(from_grade)),
                ("cda_m2", cda),
                ("cp_gain_share", gain),
            ])
        });
    (recovery, powers, targets, share, perhaps(sit_up)).prop_map(
        |(recovery, (least, greatest, round), targets, share, sit_up)| {
            object(vec![
                ("recovery", Some(recovery)),
                ("least_w", least),
                ("greatest_w", greatest),
                ("targets", Some(targets)),
                ("round_w", round),
                ("after_running_out_share", share),
                ("sit_up", sit_up),
            ])
        },
    )
}

/// Changes of a few numbers by the most that they may change, and budgets at both ends.
fn extreme_changes() -> impl Strategy<Value = Value> {
    let change = prop_oneof![
        plain(&fields::CDA_CHANGE)
            .prop_map(|share| json!({ "field": "positions.cda_m2", "share": share })),
        plain(&fields::POWER_CHANGE)
            .prop_map(|share| json!({ "field": "power.cp_w", "share": share })),
        prop_oneof![Just(-5.0), Just(5.0)]
            .prop_map(|by| json!({ "field": "rider.total_mass_kg", "by": by })),
    ];
    let candidate = (
        change,
        prop_oneof![Just(0.0), Just(1.0), 0.0..1.0],
        plain(&fields::MONEY),
        perhaps(plain(&fields::WEEKS)),
    )
        .prop_map(|(change, chance, money, weeks)| {
            object(vec![
                ("changes", Some(json!([change]))),
                ("chance", Some(json!(chance))),
                ("money", Some(money)),
                ("weeks", weeks),
            ])
        });
    let budget = (
        plain(&fields::MONEY),
        plain(&fields::HOURS_PER_WEEK),
        plain(&fields::WEEKS),
    );
    (proptest::collection::vec(candidate, 0..4), budget).prop_map(|(candidates, (money, hours, weeks))| {
        json!({ "candidates": candidates, "money": money, "hours_per_week": hours, "weeks": weeks })
    })
}

/// Typed runs and coast-downs in two positions, rules, and a plan.
fn extreme_tests() -> impl Strategy<Value = Value> {
    let run = (
        0_usize..2,
        plain(&fields::SPEED_M_S),
        plain(&fields::POWER_W),
        perhaps(plain(&fields::WIND_HEAD_M_S)),
        perhaps(plain(&fields::GRADE)),
        perhaps(plain(&fields::BEARING_DEG)),
    )
        .prop_map(|(position, speed, power, head, grade, bearing)| {
            object(vec![
                ("position", Some(json!(position))),
                ("speed_m_s", Some(speed)),
                ("power_w", Some(power)),
                ("wind_head_m_s", head),
                ("grade", grade),
                ("bearing_deg", bearing),
            ])
        });
    let coast_down = (
        plain(&fields::SPEED_M_S),
        plain(&fields::SPEED_M_S),
        plain(&fields::COAST_DOWN_S),
    )
        .prop_map(|(from, to, time)| json!({ "from_m_s": from, "to_m_s": to, "time_s": time }));
    let plan = (
        plain(&fields::DIFFERENCE_SHARE),
        plain(&fields::RUN_CV_SHARE),
        plain(&fields::TEST_POWER),
        plain(&fields::SPEED_M_S),
    )
        .prop_map(|(difference, cv, power, speed)| {
            json!({ "difference_share": difference, "run_cv_share": cv, "power": power, "speed_m_s": speed })
        });
    let choices = (
        prop_oneof![Just("fit"), Just("hold")],
        prop_oneof![Just("ignore"), Just("given"), Just("fit")],
    );
    (
        proptest::collection::vec(run, 0..6),
        proptest::option::weighted(0.2, proptest::collection::vec(coast_down, 0..2)),
        perhaps(plain(&fields::SPEED_ERROR_SHARE)),
        perhaps(plan),
        choices,
    )
        .prop_map(|(runs, coast_downs, speed_error, plan, (rolling, wind))| {
            object(vec![
                ("runs", Some(json!(runs))),
                ("coast_downs", coast_downs.map(|all| json!(all))),
                ("speed_error_share", speed_error),
                ("plan", plan),
                ("rolling", Some(json!(rolling))),
                ("wind", Some(json!(wind))),
            ])
        })
}

/// Two set-ups and a rider, most of them usual: legs and bicycles at opposite ends do not meet.
fn extreme_legs() -> impl Strategy<Value = Value> {
    let seldom = |field: &'static Field| proptest::option::weighted(0.12, extreme(field));
    let fit = move || {
        let front = (
            seldom(&fields::BAR_DROP_M),
            seldom(&fields::TORSO_DEG),
            any::<bool>(),
        );
        let rest = (
            seldom(&fields::CRANK_M),
            seldom(&fields::SADDLE_HEIGHT_M),
            seldom(&fields::SEAT_ANGLE_DEG),
            seldom(&fields::CADENCE_RPM),
        );
        (front, rest).prop_map(
            |((drop, torso, by_torso), (crank, saddle, seat, cadence))| {
                object(vec![
                    if by_torso {
                        ("torso_deg", torso)
                    } else {
                        ("bar_drop_m", drop)
                    },
                    ("crank_m", crank),
                    ("saddle_height_m", saddle),
                    ("seat_angle_deg", seat),
                    ("cadence_rpm", cadence),
                ])
            },
        )
    };
    let lengths = (
        seldom(&fields::STATURE_M),
        seldom(&fields::THIGH_M),
        seldom(&fields::SHANK_M),
        seldom(&fields::FOOT_M),
        seldom(&fields::TRUNK_M),
        seldom(&fields::UPPER_ARM_M),
        seldom(&fields::HIP_ABOVE_SADDLE_M),
    );
    let ankle = (
        any::<bool>(),
        seldom(&fields::ANKLE_DEG),
        seldom(&fields::FOOT_PITCH_DEG),
        seldom(&fields::FOOT_SWING_DEG),
    );
    (fit(), fit(), lengths, ankle).prop_map(|(a, b, lengths, (frozen, ankle, pitch, swing))| {
        let (stature, thigh, shank, foot, trunk, arm, hip) = lengths;
        object(vec![
            (
                "model",
                Some(json!(if frozen { "frozen" } else { "ankling" })),
            ),
            ("a", Some(a)),
            ("b", Some(b)),
            ("stature_m", stature),
            ("thigh_m", thigh),
            ("shank_m", shank),
            ("foot_m", foot),
            ("trunk_m", trunk),
            ("upper_arm_m", arm),
            ("hip_above_saddle_m", hip),
            ("ankle_deg", ankle),
            ("foot_pitch_deg", pitch),
            ("foot_swing_deg", swing),
        ])
    })
}

/// Extreme requests tried of each question.
const EXTREMES: u32 = 300;
/// Of the plan of a ride, which takes as long to make as a hundred rides to follow.
const EXTREME_PLANS: u32 = 120;
/// Of positions, each of which is ridden in every event.
const EXTREME_COMPARISONS: u32 = 150;

fn extremes_of(question: &'static str) {
    tried_at_extremes(question, EXTREMES);
}

fn tried_at_extremes(question: &'static str, requests: u32) {
    let config = ProptestConfig {
        cases: requests,
        max_shrink_iters: 400,
        failure_persistence: None,
        rng_seed: RngSeed::Fixed(0x000F_A57E),
        ..ProptestConfig::default()
    };
    let answered = std::cell::Cell::new(0);
    let result = TestRunner::new(config).run(
        &(extreme_scenario(), extreme_with(question)),
        |(scenario, with)| {
            let request = json!({ "scenario": scenario, "with": with }).to_string();
            let checked = std::panic::catch_unwind(|| asked(question, &request));
            match checked {
                Ok(Ok(())) => answered.set(answered.get() + 1),
                Ok(Err(error)) => {
                    let kind = error["kind"].as_str().unwrap_or_default();
                    prop_assert!(
                        ["conflict", "impossible", "out_of_range"].contains(&kind),
                        "{request}\n{error}"
                    );
                    prop_assert!(error["field"] != "", "{request}\n{error}");
                }
                Err(_) => return Err(TestCaseError::fail(request)),
            }
            Ok(())
        },
    );
    if let Err(failure) = result {
        panic!("{question}: {failure}");
    }
    // Enough of them must get past the checks for the physics to have been tried.
    assert!(
        answered.get() >= requests / 10,
        "only {} answered",
        answered.get()
    );
}

#[test]
fn speeds_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("speed-for-watts");
}

#[test]
fn comparisons_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("power-or-drag");
}

#[test]
fn finish_times_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("finish-time");
}

#[test]
fn positions_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("hold-or-fade");
}

#[test]
fn power_curves_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("power-curve");
}

/// Efforts of every length and power, at the ends of their ranges and in between, in any number.
#[test]
fn efforts_of_any_kind_are_answered() {
    let length = prop_oneof![Just(1.0), Just(200_000.0), 1.0..200_000.0, 20.0..4000.0];
    let power = prop_oneof![Just(10.0), Just(3000.0), 10.0..3000.0, 200.0..500.0];
    let sd = prop_oneof![Just(0.0), Just(1e-9), 0.0..2990.0];
    let effort = (length, power, sd, 0..3_usize);
    let efforts = proptest::collection::vec(effort, 0..8);
    let config = ProptestConfig {
        cases: EXTREMES,
        failure_persistence: None,
        rng_seed: RngSeed::Fixed(0x000F_A57E),
        ..ProptestConfig::default()
    };
    let result = TestRunner::new(config).run(&(efforts, extreme_with("power-curve")), |(efforts, with)| {
        let effort = |(duration_s, power_w, sd, position): (f64, f64, f64, usize)| {
            json!({ "duration_s": duration_s, "power_w": { "value": power_w, "sd": sd }, "position": position })
        };
        let efforts: Vec<_> = efforts.into_iter().map(effort).collect();
        let scenario = json!({ "positions": [{}, {}, {}], "efforts": efforts });
        let request = json!({ "scenario": scenario, "with": with }).to_string();
        if let Err(error) = asked("power-curve", &request) {
            return Err(TestCaseError::fail(format!("{request}\n{error}")));
        }
        Ok(())
    });
    if let Err(failure) = result {
        panic!("{failure}");
    }
}

#[test]
fn drag_tests_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("drag-test");
}

#[test]
fn courses_at_the_ends_of_every_range_are_made_or_refused_by_name() {
    extremes_of("course");
}

#[test]
fn plans_at_the_ends_of_every_range_are_made_or_refused_by_name() {
    tried_at_extremes("ride-plan", EXTREME_PLANS);
}

#[test]
fn legs_at_the_ends_of_every_range_are_answered_or_refused_by_name() {
    extremes_of("leg-room");
}

#[test]
fn positions_at_the_ends_of_every_range_are_compared_or_refused_by_name() {
    tried_at_extremes("which-position", EXTREME_COMPARISONS);
}

#[test]
fn changes_at_the_ends_of_every_range_are_weighed_or_refused_by_name() {
    extremes_of("next-gain");
}

#[test]
fn choices_that_are_none_or_too_many_are_refused_at_their_field() {
    let equipped = json!({ "equipment": vec![json!({}); fields::MOST_EQUIPMENT] });
    let scenario = json!({ "positions": [{}, {}, equipped, equipped] });
    for (with, field) in [
        (json!({ "positions": [4] }), "with.positions[0]"),
        (json!({ "positions": [0, 1, 0] }), "with.positions[2]"),
        (json!({}), "with.positions"),
        (
            json!({ "positions": [0], "reference": 1 }),
            "with.reference",
        ),
        (
            json!({ "positions": [0], "reference": 9 }),
            "with.reference",
        ),
        (
            json!({ "positions": [0, 1], "distance_m": 1 }),
            "with.distance_m",
        ),
        (json!({ "positions": [0, 1], "draws": 1e6 }), "with.draws"),
    ] {
        let error = refused(
            "which-position",
            &json!({ "scenario": scenario, "with": with }).to_string(),
        );
        assert_eq!(error["field"], field, "{error}");
    }
}

#[test]
fn a_tally_that_belongs_to_something_else_is_refused() {
    let ask = |positions: usize, so_far: Option<&Value>| {
        let mut with = json!({ "draws": 3 });
        if let Some(so_far) = so_far {
            with["so_far"] = so_far.clone();
        }
        json!({ "scenario": { "positions": vec![json!({}); positions] }, "with": with }).to_string()
    };
    let first: Value =
        serde_json::from_str(&ask_json("which-position", &ask(2, None)).expect("an answer"))
            .expect("JSON");
    let tally = &first["drawn"]["tally"];
    let more: Value =
        serde_json::from_str(&ask_json("which-position", &ask(2, Some(tally))).expect("an answer"))
            .expect("JSON");
    assert_eq!(more["drawn"]["draws"], 6);
    assert_eq!(
        refused("which-position", &ask(3, Some(tally)))["field"],
        "with.so_far"
    );
    for (name, forged) in [
        ("sums", json!([1e308])),
        ("draws", json!(4_294_967_295u32)),
        ("failed", json!(9)),
        ("wins", json!([])),
    ] {
        let mut tally = tally.clone();
        tally[name] = forged;
        let answered = asked("which-position", &ask(2, Some(&tally)));
        assert!(
            name == "draws" || answered.is_err_and(|error| error["field"] == "with.so_far"),
            "{name}"
        );
    }
}

/// A question's fields, as the refusal of an unknown one lists them.
fn fields_of_with(question: &str) -> Vec<String> {
    let error = refused(
        question,
        &json!({ "with": { "no such field": 1 } }).to_string(),
    );
    assert_eq!(
        (&error["kind"], &error["field"]),
        (&json!("unknown_field"), &json!("with.no such field"))
    );
    let known = error["values"]["known"]
        .as_str()
        .expect("the fields are listed");
    known.split(", ").map(str::to_owned).collect()
}

#[test]
fn a_field_of_a_question_that_holds_the_wrong_type_is_refused_by_its_name() {
    let wrong = [
        json!("no such word"),
        json!(true),
        json!(-3),
        json!(0.5),
        json!([[]]),
        json!({ "no such field": 1 }),
    ];
    let mut refusals = 0;
    for question in QUESTIONS.iter().map(|question| question.id) {
        for field in fields_of_with(question) {
            let mut refused_here = 0;
            for value in &wrong {
                let request = json!({ "with": { &field: value } }).to_string();
                let Err(error) = ask_json(question, &request) else {
                    continue;
                };
                let error: Value = serde_json::from_str(&error).expect("errors are JSON");
                let (at, message) = (
                    error["field"].as_str().unwrap_or_default(),
                    error["message"].as_str().unwrap_or_default(),
                );
                assert!(
                    at.starts_with("with.")
                        || error["kind"] == "impossible"
                        || at.starts_with("scenario."),
                    "{question} {request}: {error}"
                );
                if error["kind"] == "wrong_type" {
                    assert!(
                        at.starts_with(&format!("with.{field}")),
                        "{question} {request}: {error}"
                    );
                    assert!(
                        !message.contains("struct ") && !message.contains("Form"),
                        "{question} {request}: {message}"
                    );
                    refused_here += 1;
                }
            }
            // Whatever type a field holds, two of these at least are of another.
            assert!(
                refused_here >= 2,
                "{question}: with.{field} takes nearly anything"
            );
            refusals += refused_here;
        }
    }
    assert!(
        refusals > 100,
        "only {refusals} refusals: the fields were not found"
    );
}

#[test]
fn a_request_may_begin_with_the_mark_of_its_byte_order() {
    for question in QUESTIONS.iter().map(|question| question.id) {
        let plain = ask_json(question, "{}");
        assert_eq!(ask_json(question, "\u{feff}{}"), plain, "{question}");
    }
}

#[test]
fn brackets_without_end_are_refused_at_once() {
    let request = format!(
        "{{\"scenario\":{}{}}}",
        "[".repeat(1_900_000),
        "]".repeat(1_900_000)
    );
    for question in QUESTIONS.iter().map(|question| question.id) {
        assert_eq!(
            refused(question, &request)["kind"],
            "wrong_type",
            "{question}"
        );
    }
}

/// A course of tight bends, each of another radius and heading.
fn bends(points: usize, apart_m: f64) -> Value {
    let point = |i: usize| {
        let mut point = json!({ "distance_m": apart_m * i as f64, "elevation_m": 50.0 + (i as f64).sin(), "bearing_deg": (137 * i) % 360 });
        if i % 2 == 1 {
            point["radius_m"] = json!(5 + i % 30);
        }
        point
    };
    json!({ "kind": "profile", "points": (0..points).map(point).collect::<Vec<_>>() })
}

/// How many points of a course an answer says that it went over.
fn points_ridden(question: &str, request: &Value) -> Vec<usize> {
    let answer = answer(question, request);
    let said = answer["warnings"]
        .as_array()
        .expect("warnings")
        .iter()
        .filter(|warning| warning["kind"] == "simplified");
    said.map(|warning| {
        warning["values"]["after"]
            .as_u64()
            .expect("a number of points") as usize
    })
    .collect()
}

#[test]
fn a_course_of_very_many_points_is_ridden_over_few() {
    let scenario = json!({ "course": bends(fields::MOST_POINTS, 10.0), "positions": [{}, { "cda_m2": 0.24 }] });
    // The leg turns on no road, and a test is ridden on its own.
    for question in QUESTIONS
        .iter()
        .map(|question| question.id)
        .filter(|question| !["leg-room", "drag-test"].contains(question))
    {
        let ridden = points_ridden(question, &json!({ "scenario": scenario }));
        let least = ridden.iter().min().copied().unwrap_or(usize::MAX);
        assert!(
            (10..=fields::MOST_POINTS_RIDDEN).contains(&least),
            "{question} rides over {ridden:?} points"
        );
    }
}

#[test]
fn many_events_and_positions_share_the_points_that_are_ridden() {
    // What all events, and all choices, are ridden over together.
    const MOST_TOGETHER: usize = 6_000;
    let events: Vec<Value> = (0..12)
        .map(|i| json!({ "distance_m": 300_000 - 20_000 * i }))
        .collect();
    let positions: Vec<Value> = (0..6)
        .map(|i| json!({ "cda_m2": 0.3 - 0.005 * f64::from(i) }))
        .collect();
    let scenario =
        json!({ "course": bends(2_400, 100.0), "events": events, "positions": positions });
    for (question, rides) in [("next-gain", 12), ("which-position", 12 * 6)] {
        let ridden = points_ridden(
            question,
            &json!({ "scenario": scenario, "with": if question == "next-gain" { json!({ "part": "each" }) } else { json!({}) } }),
        );
        let least = ridden.iter().min().copied().unwrap_or(usize::MAX);
        assert!(
            least * rides <= MOST_TOGETHER,
            "{question} rides {rides} times over {ridden:?} points"
        );
    }
}

#[test]
fn a_simplified_course_takes_as_long_as_the_surveyed_one() {
    // Smooth hills, bends of some length, surveyed every eight metres: what a real course looks like.
    let point = |i: usize| {
        let along = i as f64;
        let mut point = json!({ "distance_m": 8.0 * along, "elevation_m": 100.0 + 20.0 * (along / 200.0).sin() + 2.0 * (along / 31.0).cos(), "bearing_deg": (0.05 * along + 20.0 * (along / 90.0).sin()).rem_euclid(360.0) });
        if i % 400 < 6 {
            point["radius_m"] = json!(25.0);
        }
        point
    };
    let points: Vec<Value> = (0..6_000).map(point).collect();
    let conditions = json!({ "wind_speed_m_s": 3.0, "wind_from_deg": 240.0 });
    let asked = |points: &[Value]| {
        let scenario =
            json!({ "course": { "kind": "profile", "points": points }, "conditions": conditions });
        answer(
            "finish-time",
            &json!({ "scenario": scenario, "with": { "effort": { "kind": "power", "power_w": 250.0 } } }),
        )
    };
    let whole = asked(&points);
    assert!(whole["warnings"].to_string().contains("simplified"));
    let short = asked(&points[..2_400]);
    assert!(!short["warnings"].to_string().contains("simplified"));
    let simplified = answer_simplified(&points[..2_400], &conditions);
    let (exact_s, simpler_s) = (
        short["time_s"]["value"].as_f64().expect("a time"),
        simplified,
    );
    // A second in an hour: well below what any course is surveyed to.
    const TOLERANCE: f64 = 3e-4;
    assert!(
        (simpler_s / exact_s - 1.0).abs() < TOLERANCE,
        "{simpler_s} s, {exact_s} s as surveyed"
    );
}

/// Finish time over a course with a quarter of the points.
fn answer_simplified(points: &[Value], conditions: &Value) -> f64 {
    let scenario =
        json!({ "course": { "kind": "profile", "points": points }, "conditions": conditions });
    let mut scenario: fasterby_core::scenario::Scenario =
        serde_json::from_value(scenario).expect("a scenario");
    assert!(scenario.simplify_course(points.len() / 4).is_some());
    assert!(scenario.course.points.len() <= points.len() / 4);
    let course = std::rc::Rc::new(scenario.course());
    let setup = scenario.setup_on(0, course).expect("a position");
    fasterby_core::integrated::time_s(&setup, 250.0).expect("a ride")
}
