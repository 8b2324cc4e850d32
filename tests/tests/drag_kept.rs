//! What a drag test leaves behind: each lap's own drag area, what a position keeps of it beside older tests, and the plan's curve.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::{Receive, ask, ask_with_columns};
use fasterby_tests::drag_requests::{ONE_POSITION, request, scenario};
use fasterby_tests::loop_ride::LoopRide;
use fasterby_tests::{answer, refused};
use serde::Serialize;
use serde_json::{Value, json};

/// Sums of a few dozen numbers, worked out in another order.
const ROUNDING: f64 = 1e-12;

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or(f64::NAN)
}

fn near(got: f64, want: f64) {
    assert!((got - want).abs() < ROUNDING, "{got} is not {want}");
}

/// Six runs in one position that scatter a little.
fn tested(scenario: &Value, date: Option<&str>) -> Value {
    let runs: Vec<Value> = [240.0, 243.0, 241.5, 239.0, 242.0, 240.5]
        .iter()
        .map(|power_w| json!({ "speed_m_s": 11.0, "power_w": power_w }))
        .collect();
    let mut with = json!({ "runs": runs, "rolling": "hold" });
    if let Some(date) = date {
        with["date"] = json!(date);
    }
    answer("drag-test", &json!({ "scenario": scenario, "with": with }))
}

fn with_tests(tests: Value) -> Value {
    let mut held = scenario();
    held["positions"] = json!([{ "name": "low", "cda_m2": 0.25, "drag_tests": tests }]);
    held
}

#[test]
fn the_mean_of_the_laps_own_drag_areas_is_that_of_their_position() {
    let got = tested(&scenario(), None);
    let rows = got["laps"].as_array().unwrap();
    let mean = rows.iter().map(|row| number(&row["cda_m2"])).sum::<f64>() / rows.len() as f64;
    // Runs at one speed weigh alike, but for their energy, which differs by a hundredth.
    assert!((mean / number(&got["positions"][0]["cda_m2"]["value"]) - 1.0).abs() < 1e-3);
    for row in rows {
        let more = number(&row["cda_m2"]) > number(&got["positions"][0]["cda_m2"]["value"]);
        assert_eq!(more, number(&row["residual_w"]) > 0.0, "{row}");
    }
}

#[test]
fn a_first_test_is_kept_with_what_all_its_laps_share_but_the_meter() {
    let got = tested(&with_tests(json!([])), Some("2026-05-01"));
    let kept = &got["kept"][0];
    let found = &got["positions"][0]["cda_m2"];
    near(number(&kept["cda_m2"]), number(&found["value"]));
    let shares = got["common"].as_array().unwrap().iter();
    let all: f64 = shares
        .filter(|error| error["field"] != "scenario.bike.power_meter_bias_share")
        .map(|error| number(&error["cda_share"]).powi(2))
        .sum();
    let whole = (number(&found["sd"]).powi(2) + all * number(&found["value"]).powi(2)).sqrt();
    near(number(&kept["sd_m2"]), whole);
    assert_eq!(kept["tests"], 1);
}

#[test]
fn an_older_test_is_weighed_and_one_of_the_same_day_is_replaced() {
    let older =
        json!([{ "date": "2026-04-01", "cda_m2": 0.26, "sd_m2": 0.004, "shared_sd_m2": 0.006 }]);
    let alone = tested(&with_tests(json!([])), Some("2026-05-01"));
    let both = tested(&with_tests(older.clone()), Some("2026-05-01"));
    let own = &alone["kept"][0]["test"];
    let [first, second] = [number(&own["sd_m2"]), 0.004].map(|sd: f64| 1.0 / (sd * sd));
    let weighed = (first * number(&own["cda_m2"]) + second * 0.26) / (first + second);
    near(number(&both["kept"][0]["cda_m2"]), weighed);
    assert_eq!(both["kept"][0]["tests"], 2);
    let again = tested(&with_tests(older), Some("2026-04-01"));
    assert_eq!(again["kept"], alone["kept"]);
}

#[test]
fn tests_that_are_far_apart_are_doubted() {
    let warned = |cda_m2: f64| {
        let older = json!([{ "date": "2026-04-01", "cda_m2": cda_m2, "sd_m2": 0.002 }]);
        let got = tested(&with_tests(older), None);
        let warnings = got["warnings"].as_array().unwrap();
        warnings
            .iter()
            .any(|warning| warning["text"] == "drag_tests_disagree")
    };
    let own = number(&tested(&with_tests(json!([])), None)["kept"][0]["test"]["cda_m2"]);
    assert!(!warned(own + 0.001));
    assert!(warned(own + 0.2));
}

#[test]
fn a_kept_test_that_cannot_be_is_refused_by_name() {
    for (name, value) in [
        ("cda_m2", json!(2.0)),
        ("sd_m2", json!(0.0)),
        ("shared_sd_m2", json!(-0.001)),
        ("date", json!("1 May")),
        ("method", json!("guessed")),
        ("colour", json!("red")),
    ] {
        let mut test = json!({ "cda_m2": 0.25, "sd_m2": 0.003 });
        test[name] = value;
        let asked = json!({ "scenario": with_tests(json!([test])) });
        let error = refused("drag-test", &asked.to_string());
        let field = format!("scenario.positions[0].drag_tests[0].{name}");
        assert_eq!(error["field"], field.as_str(), "{error}");
    }
    let many = vec![json!({ "cda_m2": 0.25, "sd_m2": 0.003 }); 41];
    let asked = json!({ "scenario": with_tests(json!(many)) });
    let error = refused("drag-test", &asked.to_string());
    assert_eq!(error["field"], "scenario.positions[0].drag_tests");
}

#[test]
fn the_curve_of_a_plan_falls_and_meets_the_plan() {
    let plan = json!({ "difference_share": 0.02, "run_cv_share": 0.015, "power": 0.8 });
    let got = answer("drag-test", &json!({ "with": { "plan": plan } }));
    let [runs, shares] = ["runs", "smallest_share"].map(|name| {
        let column = got["columns"][name].as_array().unwrap();
        column.iter().map(number).collect::<Vec<f64>>()
    });
    assert!(shares.windows(2).all(|pair| pair[1] < pair[0]));
    let needed = number(&got["plan"]["runs_per_position"]);
    let first = runs.iter().zip(&shares).find(|(_, share)| **share <= 0.02);
    assert_eq!(first.map(|(runs, _)| *runs), Some(needed));
}

/// An answer as a tree, by any way.
struct Tree;

impl Receive for Tree {
    type Out = Value;
    fn receive<A: Serialize>(self, answer: &A) -> Value {
        serde_json::to_value(answer).expect("answers are data")
    }
}

#[test]
fn columns_beside_the_text_give_the_answer_that_columns_in_it_give() {
    let in_text = request(&LoopRide::MAIN.ride(), ONE_POSITION);
    let mut beside = in_text.clone();
    let mut columns = Vec::new();
    let recorded = beside["with"]["recordings"][0]["columns"]
        .as_object_mut()
        .unwrap();
    for column in recorded.values_mut() {
        let numbers = column.as_array().unwrap().iter().map(number).collect();
        *column = json!({ "column": columns.len() });
        columns.push(numbers);
    }
    let want = ask("drag-test", &in_text.to_string(), Tree).expect("an answer");
    let got =
        ask_with_columns("drag-test", &beside.to_string(), &columns, Tree).expect("an answer");
    // Numbers read from a text may be off in their last digit.
    const LAST_DIGIT: f64 = 1e-11;
    let cda_m2 = |answer: &Value| number(&answer["positions"][0]["cda_m2"]["value"]);
    assert!((cda_m2(&got) / cda_m2(&want) - 1.0).abs() < LAST_DIGIT);
    assert_eq!(got["warnings"], want["warnings"]);
    // Where no columns come with it, it is a mistake like any other.
    let error = refused("drag-test", &beside.to_string());
    assert!(
        error["field"]
            .as_str()
            .unwrap()
            .starts_with("with.recordings[0].columns")
    );
}
