//! What is said of rides, checked against other rides: exchange rates, the model's error as power, the power held for just the
//! ride's time, and a start that runs over several points.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::{answer, value};
use serde_json::{Value, json};

/// Central differences of a smooth function over steps of a fifth of a percent are right to about the square of that.
const SMALL_STEPS: f64 = 1e-4;
/// The same figure from the same rides.
const SAME: f64 = 1e-9;
/// How far the quick time model is from the ride integrated along a flat calm course.
const QUICK_MODEL: f64 = 2e-3;
/// Rides are integrated to 1e-5.
const INTEGRATED: f64 = 1e-5;

fn number(of: &Value) -> f64 {
    value(of).unwrap_or_else(|| panic!("{of} is no number"))
}

fn finish_s(scenario: &Value, power_w: f64) -> f64 {
    let with = json!({ "effort": { "kind": "power", "power_w": power_w } });
    number(
        &answer(
            "finish-time",
            &json!({ "scenario": scenario, "with": with }),
        )["time_s"],
    )
}

#[test]
fn exchange_rates_are_those_of_rides_with_a_little_more_and_less() {
    let (power_w, cda_m2, mass_kg, rolling) = (250.0, 0.24, 80.0, 0.004);
    let scenario = |cda_m2: f64, mass_kg: f64, rolling: f64| {
        json!({
            "positions": [{ "cda_m2": cda_m2 }],
            "rider": { "total_mass_kg": mass_kg },
            "bike": { "rolling_coefficient": rolling },
            "course": { "distance_m": 40_000, "grade": 0.01 },
        })
    };
    let as_it_is = scenario(cda_m2, mass_kg, rolling);
    let with = json!({ "effort": { "kind": "power", "power_w": power_w } });
    let told = answer(
        "power-or-drag",
        &json!({ "scenario": as_it_is, "with": with }),
    );
    let rate = |name: &str| number(&told["exchange"][name]);
    let slope =
        |time_s: &dyn Fn(f64) -> f64, step: f64| (time_s(step) - time_s(-step)) / (2.0 * step);
    let by_power = -slope(&|by| finish_s(&as_it_is, power_w + by), 0.2);
    let by_cda = slope(
        &|by| finish_s(&scenario(cda_m2 + by, mass_kg, rolling), power_w),
        2e-4,
    );
    let by_mass = slope(
        &|by| finish_s(&scenario(cda_m2, mass_kg + by, rolling), power_w),
        0.05,
    );
    let by_rolling = slope(
        &|by| finish_s(&scenario(cda_m2, mass_kg, rolling + by), power_w),
        4e-6,
    );
    for (name, wanted) in [
        ("s_per_w", by_power),
        ("s_per_0_001_m2", 0.001 * by_cda),
        ("s_per_cda_percent", 0.01 * cda_m2 * by_cda),
        ("s_per_kg", by_mass),
        ("s_per_0_0001_crr", 0.0001 * by_rolling),
        ("w_per_0_001_m2", 0.001 * by_cda / by_power),
        ("w_per_cda_percent", 0.01 * cda_m2 * by_cda / by_power),
        ("w_per_kg", by_mass / by_power),
        ("m2_per_w", by_power / by_cda),
        ("m2_per_kg", by_mass / by_cda),
        ("w_per_0_0001_crr", 0.0001 * by_rolling / by_power),
        ("m2_per_0_0001_crr", 0.0001 * by_rolling / by_cda),
    ] {
        let found = rate(name);
        assert!(
            (found / wanted - 1.0).abs() < SMALL_STEPS,
            "{name}: {found} for {wanted}"
        );
    }
}

#[test]
fn the_models_error_in_power_is_half_of_what_an_earlier_and_a_later_finish_differ_by() {
    let share = 0.03;
    let for_time = |time_s: f64| {
        let with = json!({ "effort": { "kind": "time", "time_s": time_s } });
        answer(
            "finish-time",
            &json!({ "scenario": { "model_error_share": share }, "with": with }),
        )
    };
    let target_s = 3600.0;
    let power_w = |time_s: f64| number(&for_time(time_s)["power_w"]);
    let wanted_w = 0.5 * (power_w(target_s * (1.0 - share)) - power_w(target_s * (1.0 + share)));
    let found_w = number(&for_time(target_s)["model_sd_w"]);
    assert!(
        (found_w / wanted_w - 1.0).abs() < SAME,
        "{found_w} for {wanted_w}"
    );
}

#[test]
fn the_power_curve_rides_an_event_at_what_is_held_for_just_its_time() {
    let scenario = json!({
        "efforts": [{ "duration_s": 180, "power_w": 372 }, { "duration_s": 1200, "power_w": 286 }],
        "events": [{ "distance_m": 16_000 }],
        "course": { "distance_m": 16_000 },
        "start": "rolling",
    });
    let told = answer("power-curve", &json!({ "scenario": scenario }));
    let event = &told["events"][0];
    let (time_s, power_w) = (number(&event["time_s"]), number(&event["power_w"]));
    let ridden_s = finish_s(&scenario, power_w);
    assert!(
        (time_s / ridden_s - 1.0).abs() < QUICK_MODEL,
        "{time_s} for {ridden_s}"
    );
}

#[test]
fn a_start_runs_on_over_points_as_over_one_stretch() {
    let scenario = |points: &[f64]| {
        let points: Value = points
            .iter()
            .map(|distance_m| json!({ "distance_m": distance_m, "elevation_m": 0.01 * distance_m, "bearing_deg": 90 }))
            .collect();
        json!({
            "course": { "kind": "profile", "points": points },
            "bike": { "launch_force_n": 60 },
            "start": "standing",
        })
    };
    // At 60 N a rider of this power is pushed along for some 400 m.
    let whole_s = finish_s(&scenario(&[0.0, 5000.0]), 900.0);
    let in_pieces_s = finish_s(&scenario(&[0.0, 20.0, 45.0, 90.0, 5000.0]), 900.0);
    assert!(
        (in_pieces_s / whole_s - 1.0).abs() < INTEGRATED,
        "{in_pieces_s} for {whole_s}"
    );
}
