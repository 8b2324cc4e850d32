//! Stops and feeding: against a ride followed in small steps of time, and what holds of them whatever the ride.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::{answer, refused, value};
use serde_json::{Value, json};

/// A ride followed in steps of a tenth of a second begins to brake up to a step too late, and so is within a step at each stop.
const FOLLOWED: f64 = 2e-5;
/// Sums of the same figures in another order end at rounding.
const ROUNDING: f64 = 1e-9;
/// A best even effort is found to this share of its time.
const EVEN: f64 = 1e-9;

fn scenario(distance_m: f64, stops: Value, feeding: Value) -> Value {
    let mut scenario = json!({
        "course": { "distance_m": distance_m },
        "positions": [{ "cda_m2": { "value": 0.25, "sd": 0.01 } }],
        "conditions": { "wind_speed_m_s": 0, "pressure_hpa": 1000, "pressure_is": "course", "relative_humidity": 0 },
    });
    if !stops.is_null() {
        scenario["stops"] = stops;
    }
    if !feeding.is_null() {
        scenario["feeding"] = feeding;
    }
    scenario
}

fn ride(scenario: &Value, with: Value) -> Value {
    answer(
        "finish-time",
        &json!({ "scenario": scenario, "with": with }),
    )
}

fn at_power(scenario: &Value) -> Value {
    let with = json!({ "effort": { "kind": "power", "power_w": 240 } });
    ride(scenario, with)
}

fn evenly(scenario: &Value) -> Value {
    ride(scenario, json!({}))
}

fn time_s(answer: &Value) -> f64 {
    value(&answer["time_s"]).expect("a time")
}

fn number(answer: &Value, name: &str) -> f64 {
    answer[name].as_f64().expect("a number")
}

fn is_close(got: f64, want: f64, share: f64) {
    assert!((got / want - 1.0).abs() < share, "{got} for {want}");
}

/// Finish time at 240 W on the flat in calm air, in steps of a tenth of a second: from rest, braking to a standstill at each stop.
fn followed_s(distance_m: f64, every_m: f64, standing_s: f64, cda_m2: f64, density: f64) -> f64 {
    const STEP_S: f64 = 0.1;
    let (mass_kg, rotating_kg, rolling) = (82.0, 1.5, 0.004);
    let (road_power_w, launch_n, braking_m_s2) = (240.0 * 0.975, 250.0_f64, 3.0);
    let acceleration = |v: f64| {
        let air_n = 0.5 * density * cda_m2 * v * v;
        let other_n = mass_kg * 9.80665 * rolling + 0.091 + 0.0087 * v;
        (launch_n.min(road_power_w / v) - air_n - other_n) / (mass_kg + rotating_kg)
    };
    let (mut time_s, mut at_m, mut v) = (0.0, 0.0, 0.0);
    let mut stop_m = every_m;
    loop {
        let middle_m_s: f64 = v + 0.5 * STEP_S * acceleration(v);
        let next_m = at_m + STEP_S * middle_m_s;
        if next_m >= distance_m {
            return time_s + (distance_m - at_m) / middle_m_s;
        }
        let next_m_s = v + STEP_S * acceleration(middle_m_s);
        (time_s, at_m, v) = (time_s + STEP_S, next_m, next_m_s);
        let braking_m = 0.5 * v * v / braking_m_s2;
        if stop_m < distance_m && at_m + braking_m >= stop_m {
            // What is left beyond the braking is ridden at the speed reached; it is less than nothing by less than a step.
            time_s += (stop_m - braking_m - at_m) / v + v / braking_m_s2 + standing_s;
            (at_m, v) = (stop_m, 0.0);
            stop_m += every_m;
        }
    }
}

#[test]
fn a_ride_with_stops_and_feeding_takes_as_long_as_one_followed_in_small_steps() {
    for (distance_m, every_m, standing_s) in [
        (100_000.0, 30_000.0, 90.0),
        (40_000.0, 3_000.0, 20.0),
        (60_000.0, 20_000.0, 0.0),
    ] {
        let stops = json!({ "every_m": every_m, "time_s": standing_s });
        let feeding = json!({ "every_s": 600, "time_s": 30, "cda_m2": 0.35 });
        let got = at_power(&scenario(distance_m, stops, feeding));
        // A twentieth of the time at 0.35 m² and the rest at 0.25 m².
        let cda_m2 = 0.95 * 0.25 + 0.05 * 0.35;
        is_close(number(&got, "mean_cda_m2"), cda_m2, ROUNDING);
        let density = number(&got, "density_kg_m3");
        let want_s = followed_s(distance_m, every_m, standing_s, cda_m2, density);
        is_close(time_s(&got), want_s, FOLLOWED);
    }
}

#[test]
fn a_stop_costs_its_standing_and_about_the_time_of_braking_and_gathering_speed() {
    let without = at_power(&scenario(100_000.0, Value::Null, Value::Null));
    let with = at_power(&scenario(
        100_000.0,
        json!({ "every_m": 40_000, "time_s": { "value": 100, "sd": 30 } }),
        Value::Null,
    ));
    let cost = &with["stops"];
    assert_eq!(cost["number"], 2);
    assert_eq!(value(&cost["standing_s"]), Some(200.0));
    // Its error is common to both stops.
    is_close(number(&cost["standing_s"], "sd"), 60.0, ROUNDING);
    let again_s = value(&cost["starting_again_s"]).expect("seconds");
    is_close(time_s(&with), time_s(&without) + 200.0 + again_s, ROUNDING);
    // Braking from 10 or 11 m/s at 3 m/s² takes 2 s more than riding on, gathering speed 8 to 25 s.
    assert!((16.0..60.0).contains(&again_s), "{again_s}");
    assert_eq!(value(&cost["sitting_up_s"]), Some(0.0));
}

#[test]
fn what_stops_and_feeding_cost_adds_up_to_what_the_ride_takes_longer() {
    let feeding = json!({ "time_s": { "value": 12, "sd": 6 } });
    let stops = json!({ "every_m": 25_000 });
    let without_s = time_s(&evenly(&scenario(120_000.0, Value::Null, Value::Null)));
    let with = evenly(&scenario(120_000.0, stops, feeding));
    let cost = &with["stops"];
    let part = |name: &str| value(&cost[name]).expect("seconds");
    let parts_s = part("standing_s") + part("starting_again_s") + part("sitting_up_s");
    is_close(part("costs_s"), parts_s, ROUNDING);
    is_close(time_s(&with), without_s + parts_s, EVEN);
    for name in ["standing_s", "starting_again_s", "sitting_up_s"] {
        assert!(part(name) > 0.0, "{cost}");
        assert!(number(&cost[name], "sd") > 0.0, "{cost}");
    }
}

#[test]
fn a_ride_too_short_for_a_stop_and_feeding_that_takes_no_time_change_nothing() {
    // Numbers that are so far from the usual ones are warned of, which is all that differs.
    let unwarned = |mut answer: Value| {
        answer["warnings"].take();
        answer
    };
    let plain = unwarned(evenly(&scenario(40_000.0, Value::Null, Value::Null)));
    let with = |every_m: f64| {
        let stops = json!({ "every_m": every_m, "time_s": 600 });
        let feeding = json!({ "every_s": 900, "time_s": 0, "cda_m2": 0.4 });
        let mut with = unwarned(evenly(&scenario(40_000.0, stops, feeding)));
        assert_eq!(with["stops"].take()["number"], 0);
        with
    };
    // Not even on the longest course of the curve over other distances, which has no stop before 2,000 km.
    assert_eq!(with(2_000_000.0), plain);
    // A stop at the line is the finish.
    for name in ["time_s", "power_w", "splits", "energy_j"] {
        assert_eq!(with(40_000.0)[name], plain[name]);
    }
}

#[test]
fn more_stops_and_more_feeding_never_make_a_ride_faster_or_surer() {
    let of = |every_m: f64, every_s: f64| {
        let stops = json!({ "every_m": every_m });
        let feeding = json!({ "every_s": every_s });
        let got = evenly(&scenario(150_000.0, stops, feeding));
        (time_s(&got), number(&got["time_s"], "sd"))
    };
    let (mut before_s, mut before_sd) = {
        let got = evenly(&scenario(150_000.0, Value::Null, Value::Null));
        (time_s(&got), number(&got["time_s"], "sd"))
    };
    for (every_m, every_s) in [
        (200_000.0, 36_000.0),
        (100_000.0, 7_200.0),
        (60_000.0, 3_600.0),
        (40_000.0, 1_800.0),
        (20_000.0, 900.0),
        (10_000.0, 300.0),
    ] {
        let (now_s, now_sd) = of(every_m, every_s);
        assert!(now_s > before_s, "{now_s} after {before_s}");
        assert!(now_sd > before_sd, "{now_sd} after {before_sd}");
        (before_s, before_sd) = (now_s, now_sd);
    }
}

#[test]
fn sitting_up_is_never_less_drag_than_the_position_has() {
    let low = json!({ "every_s": 600, "time_s": 60, "cda_m2": 0.15 });
    let plain_s = time_s(&at_power(&scenario(80_000.0, Value::Null, Value::Null)));
    let fed_s = time_s(&at_power(&scenario(80_000.0, Value::Null, low)));
    is_close(fed_s, plain_s, ROUNDING);
}

#[test]
fn standing_is_no_riding_for_power_for_a_position_that_fades_and_for_w_prime() {
    let long = |standing_s: f64| {
        let mut scenario = scenario(
            80_000.0,
            json!({ "every_m": 30_000, "time_s": standing_s }),
            Value::Null,
        );
        scenario["power"] = json!({ "cp_w": 250, "w_prime_j": 18_000, "long_ride_loss_share": 0.09, "long_ride_from_s": 1800 });
        scenario["positions"][0]["fade"] =
            json!({ "tired_cda_m2": 0.3, "begins_s": 2000, "complete_s": 7000 });
        evenly(&scenario)
    };
    let (short, long) = (long(10.0), long(3_010.0));
    is_close(time_s(&long), time_s(&short) + 6_000.0, EVEN);
    for name in ["power_w", "mean_cda_m2", "sustainable_w", "w_prime_left_j"] {
        let of = |answer: &Value| value(&answer[name]).unwrap_or_else(|| number(answer, name));
        // The balance at the line is nearly nothing: what rounding leaves of 18 kJ.
        assert!(
            (of(&long) - of(&short)).abs() < 1e-3,
            "{name}: {} and {}",
            long[name],
            short[name]
        );
    }
}

#[test]
fn weather_goes_by_the_clock_while_the_rider_stands() {
    let windy = |standing_s: f64, changes: bool| {
        let stops = json!({ "every_m": 20_000, "time_s": standing_s });
        let mut scenario = scenario(30_000.0, stops, Value::Null);
        let later = json!({ "first_at_s": 30_000, "at_s": 33_600, "start_at_s": 30_000, "wind_speed_m_s": 6, "wind_from_deg": 0, "temperature_c": 20 });
        scenario["course"]["bearing_deg"] = json!(0);
        let day = &mut scenario["conditions"];
        day["temperature_c"] = json!(20);
        day["wind_speed_m_s"] = json!(if changes { 0.5 } else { 6.0 });
        day["wind_from_deg"] = json!(0);
        day["wind_is"] = json!("roadside");
        if changes {
            day["later"] = later;
        }
        time_s(&at_power(&scenario)) - standing_s
    };
    // After an hour at the stop the last third is ridden in the later, stronger wind; without it, in less.
    assert!(windy(3_600.0, true) > windy(0.0, true) + 20.0);
    is_close(windy(3_600.0, false), windy(0.0, false), ROUNDING);
}

/// The wind falls while the rider stands, which no braking or starting again has a part in.
#[test]
fn what_the_weather_changes_by_while_the_rider_stands_is_told_by_itself() {
    // Braking and starting again take nearly as long in any wind.
    const NEARLY: f64 = 0.5;
    let cost = |later: Value| {
        let stops = json!({ "every_m": 20_000, "time_s": 1_800 });
        let mut scenario = scenario(90_000.0, stops, Value::Null);
        scenario["course"]["bearing_deg"] = json!(0);
        let day = &mut scenario["conditions"];
        day["temperature_c"] = json!(20);
        day["wind_speed_m_s"] = json!(6);
        day["wind_from_deg"] = json!(0);
        if !later.is_null() {
            day["later"] = later;
        }
        let told = at_power(&scenario);
        let part = |name: &str| value(&told["stops"][name]).expect("seconds");
        let parts = [
            "standing_s",
            "starting_again_s",
            "later_weather_s",
            "sitting_up_s",
        ]
        .map(part);
        is_close(part("costs_s"), parts.iter().sum(), ROUNDING);
        parts
    };
    let steady = cost(Value::Null);
    let calming = cost(
        json!({ "first_at_s": 30_000, "at_s": 48_000, "start_at_s": 30_000, "wind_speed_m_s": 1, "wind_from_deg": 0, "temperature_c": 20 }),
    );
    assert_eq!(steady[2], 0.0);
    assert!(calming[2] < -60.0, "{calming:?}");
    is_close(calming[1], steady[1], NEARLY);
}

#[test]
fn how_far_in_a_fixed_time_leaves_the_standing_out() {
    let far_m = |stops: Value| {
        let got = ride(
            &scenario(50_000.0, stops, Value::Null),
            json!({ "for_time_s": 10_800 }),
        );
        value(&got["distance_m"]).expect("a distance")
    };
    let (without_m, with_m) = (
        far_m(Value::Null),
        far_m(json!({ "every_m": 40_000, "time_s": 300 })),
    );
    // Two stops of 300 s at about 10 m/s, and what starting again takes.
    let lost_m = without_m - with_m;
    assert!((5_500.0..8_500.0).contains(&lost_m), "{lost_m}");
}

#[test]
fn every_question_that_rides_counts_them() {
    let rides = |stops: Value, feeding: Value| {
        let mut scenario = scenario(90_000.0, stops, feeding);
        scenario["positions"] = json!([
            { "cda_m2": { "value": 0.25, "sd": 0.01 } },
            { "cda_m2": 0.23, "fade": { "tired_cda_m2": 0.26, "begins_s": 3000, "complete_s": 6000 } },
        ]);
        scenario["events"] = json!([{ "distance_m": 90_000 }]);
        let ask = |question: &str, with: Value| {
            answer(question, &json!({ "scenario": scenario, "with": with }))
        };
        let even = json!({ "effort": { "kind": "even" } });
        let candidate =
            json!({ "name": "lighter", "changes": [{ "field": "rider.total_mass_kg", "by": -1 }] });
        [
            value(&ask("finish-time", json!({}))["time_s"]),
            value(&ask("power-or-drag", even.clone())["base_time_s"]),
            value(&ask("hold-or-fade", json!({ "low": 1, "steady": 0, "effort": { "kind": "even" } }))["steady_time_s"]),
            value(&ask("which-position", json!({}))["events"][0]["times"][0]["time_s"]),
            value(&ask("next-gain", json!({ "candidates": [candidate], "times_ridden": [1], "money": 0, "hours_per_week": 0 }))
                ["events"][0]["time_s"]),
            ask("ride-plan", json!({}))["even"]["time_s"].as_f64(),
        ]
        .map(|time_s| time_s.expect("a time"))
    };
    let without = rides(Value::Null, Value::Null);
    let with = rides(
        json!({ "every_m": 30_000, "time_s": 120 }),
        json!({ "every_s": 1200, "time_s": 15 }),
    );
    // All of them ride the same best even effort, the ride plan with what the stops cost it added.
    const ALIKE: f64 = 1e-6;
    for (question, (with_s, without_s)) in with.into_iter().zip(without).enumerate() {
        is_close(without_s, without[0], ALIKE);
        is_close(with_s, with[0], ALIKE);
        assert!(with_s > without_s + 240.0, "question {question}");
    }
}

#[test]
fn a_plan_with_stops_is_later_by_them_and_otherwise_the_same() {
    let plan = |stops: Value| {
        let scenario = scenario(90_000.0, stops, Value::Null);
        answer("ride-plan", &json!({ "scenario": scenario, "with": {} }))
    };
    let without = plan(Value::Null);
    let with = plan(json!({ "every_m": 30_000, "time_s": { "value": 120, "sd": 30 } }));
    let costs_s = number(&with["stops"], "costs_s");
    assert_eq!(with["stops"]["number"], 2);
    assert!((250.0..310.0).contains(&costs_s), "{costs_s}");
    assert_eq!(with["simple"]["cues"], without["simple"]["cues"]);
    let later_s = |name: &str| number(&with[name], "time_s") - number(&without[name], "time_s");
    for name in ["even", "fastest", "simple", "robust"] {
        assert!((later_s(name) - costs_s).abs() < 1e-6, "{name}");
    }
    let column = |answer: &Value, name: &str| -> Vec<f64> {
        serde_json::from_value(answer["columns"][name].clone()).expect("a column")
    };
    let distances_m = column(&with, "distance_m");
    let times = column(&with, "time_s")
        .into_iter()
        .zip(column(&without, "time_s"));
    for (distance_m, (with_s, without_s)) in distances_m.into_iter().zip(times) {
        let passed = f64::from(u8::from(distance_m > 30_000.0) + u8::from(distance_m > 60_000.0));
        let want_s = 0.5 * passed * costs_s;
        assert!((with_s - without_s - want_s).abs() < 1e-6, "{distance_m}");
    }
}

#[test]
fn what_is_wrong_with_stops_and_feeding_is_named() {
    for (scenario, field) in [
        (
            json!({ "stops": { "every_m": 5 } }),
            "scenario.stops.every_m",
        ),
        (
            json!({ "stops": { "time_s": -1 } }),
            "scenario.stops.time_s",
        ),
        (
            json!({ "stops": { "time_s": { "value": 60, "sd": -1 } } }),
            "scenario.stops.time_s.sd",
        ),
        (
            json!({ "stops": { "every_m": { "value": 50_000 } } }),
            "scenario.stops.every_m",
        ),
        (
            json!({ "stops": { "every_s": 600 } }),
            "scenario.stops.every_s",
        ),
        (
            json!({ "feeding": { "every_s": 60, "time_s": 60 } }),
            "scenario.feeding.every_s",
        ),
        (
            json!({ "feeding": { "cda_m2": 3 } }),
            "scenario.feeding.cda_m2",
        ),
        (json!({ "feeding": [] }), "scenario.feeding"),
    ] {
        let request = json!({ "scenario": scenario }).to_string();
        assert_eq!(refused("finish-time", &request)["field"], field);
    }
}
