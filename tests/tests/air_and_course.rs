//! What the course says of the air, of the wind's direction and of its turn, and what is said where it says nothing.

#![cfg(not(target_arch = "wasm32"))]

use std::rc::Rc;

use fasterby_core::air::standard_pressure_pa;
use fasterby_core::integrated::{Integrated, TimeModel};
use fasterby_core::quasi_steady::QuasiSteady;
use fasterby_core::scenario::Scenario;
use fasterby_tests::{answer, refused, value};
use serde_json::{Value, json};

/// The same ride by another way to write it ends at rounding.
const SAME: f64 = 1e-9;

fn level(elevation_m: f64, bearings: &[Option<f64>]) -> Value {
    let point = |(i, bearing_deg): (usize, &Option<f64>)| {
        let mut point = json!({ "distance_m": 10_000 * i, "elevation_m": elevation_m });
        if let Some(bearing_deg) = bearing_deg {
            point["bearing_deg"] = json!(bearing_deg);
        }
        point
    };
    json!({ "kind": "profile", "points": bearings.iter().enumerate().map(point).collect::<Vec<_>>() })
}

/// A question that compares positions needs two.
fn two() -> Value {
    json!([{}, { "cda_m2": 0.25 }])
}

const NO_BEARING: [Option<f64>; 5] = [None; 5];

fn ridden(scenario: &Value) -> Value {
    answer("finish-time", &json!({ "scenario": scenario }))
}

fn time_s(scenario: &Value) -> f64 {
    value(&ridden(scenario)["time_s"]).expect("a time")
}

fn kinds(answer: &Value) -> Vec<&str> {
    answer["warnings"]
        .as_array()
        .expect("warnings")
        .iter()
        .filter_map(|warning| warning["kind"].as_str())
        .collect()
}

fn says(scenario: &Value, kind: &str) -> bool {
    kinds(&ridden(scenario)).contains(&kind)
}

#[test]
fn air_is_as_thin_as_the_course_is_high() {
    let high = json!({ "course": level(1600.0, &NO_BEARING) });
    let given =
        json!({ "course": level(1600.0, &NO_BEARING), "conditions": { "altitude_m": 1600 } });
    assert_eq!(
        ridden(&high)["density_kg_m3"],
        ridden(&given)["density_kg_m3"]
    );
    let low = json!({ "course": level(0.0, &NO_BEARING) });
    assert!(time_s(&high) < 0.95 * time_s(&low));
}

#[test]
fn an_altitude_that_is_given_counts_and_is_doubted_where_the_course_lies_elsewhere() {
    let with = |elevation_m: f64, altitude_m: f64| json!({ "course": level(elevation_m, &NO_BEARING), "conditions": { "altitude_m": altitude_m } });
    assert_eq!(
        ridden(&with(1600.0, 0.0))["density_kg_m3"],
        ridden(&json!({}))["density_kg_m3"]
    );
    assert!(says(&with(1600.0, 0.0), "altitude_differs"));
    assert!(!says(&with(90.0, 0.0), "altitude_differs"));
    // A pressure on the spot says it all.
    let pressure =
        json!({ "pressure_hpa": 0.01 * standard_pressure_pa(0.0), "pressure_is": "course" });
    let spot = json!({ "course": level(1600.0, &NO_BEARING), "conditions": pressure });
    let density = |scenario: &Value| {
        ridden(scenario)["density_kg_m3"]
            .as_f64()
            .expect("a density")
    };
    assert!((density(&spot) / density(&json!({})) - 1.0).abs() < SAME);
}

#[test]
fn the_altitude_of_a_profile_is_its_mean_along_the_road() {
    let points = json!([
        { "distance_m": 0, "elevation_m": 0 },
        { "distance_m": 10_000, "elevation_m": 400 },
        { "distance_m": 40_000, "elevation_m": 400 }
    ]);
    let scenario = json!({ "course": { "kind": "profile", "points": points } });
    let scenario: Scenario = serde_json::from_value(scenario).expect("a scenario");
    assert!((scenario.altitude_m() - (0.25 * 200.0 + 0.75 * 400.0)).abs() < SAME);
}

#[test]
fn without_bearings_the_wind_is_left_out_and_said_to_be() {
    let wind = json!({ "wind_speed_m_s": 5, "roughness_length_m": 0.03 });
    let calm = json!({ "course": level(0.0, &NO_BEARING) });
    let blown = json!({ "course": level(0.0, &NO_BEARING), "conditions": wind });
    assert_eq!(time_s(&blown), time_s(&calm));
    assert!(says(&blown, "no_bearings") && !says(&calm, "no_bearings"));
    let ignored =
        json!({ "course": { "distance_m": 40_000, "heading": "ignore" }, "conditions": wind });
    assert!((time_s(&ignored) / time_s(&calm) - 1.0).abs() < SAME);
    assert!(says(&ignored, "wind_ignored"));
    // A spot whose direction is given has its wind, whatever the course leaves out.
    let spot = |with: Value| {
        answer(
            "speed-for-watts",
            &json!({ "scenario": blown, "with": with }),
        )
    };
    assert_eq!(value(&spot(json!({}))["headwind_m_s"]), Some(0.0));
    let north = spot(json!({ "bearing_deg": 0 }));
    assert!(
        value(&north["headwind_m_s"]).is_some_and(|head| head > 2.0)
            && !kinds(&north).contains(&"no_bearings")
    );
}

#[test]
fn a_bearing_holds_until_the_next_and_before_the_first() {
    let wind = json!({ "wind_speed_m_s": 5 });
    let with = |bearings: &[Option<f64>]| {
        time_s(&json!({ "course": level(0.0, bearings), "conditions": wind }))
    };
    let all = with(&[
        Some(40.0),
        Some(40.0),
        Some(130.0),
        Some(130.0),
        Some(130.0),
    ]);
    assert_eq!(with(&[None, Some(40.0), Some(130.0), None, None]), all);
}

#[test]
fn thin_and_hot_air_come_with_a_word_on_power_in_every_question_that_rides() {
    let day = |day: Value| json!({ "scenario": { "conditions": day, "positions": two() } });
    for question in [
        "finish-time",
        "power-or-drag",
        "hold-or-fade",
        "speed-for-watts",
        "which-position",
        "next-gain",
        "power-curve",
    ] {
        let high = answer(question, &day(json!({ "altitude_m": 2000 })));
        assert!(kinds(&high).contains(&"thin_air"), "{question}");
        assert!(
            kinds(&answer(question, &day(json!({ "temperature_c": 35 })))).contains(&"heat"),
            "{question}"
        );
        let mild = answer(
            question,
            &day(json!({ "altitude_m": 500, "temperature_c": 28 })),
        );
        assert!(
            !kinds(&mild)
                .iter()
                .any(|kind| ["thin_air", "heat"].contains(kind)),
            "{question}"
        );
    }
    let barometer = answer(
        "finish-time",
        &day(json!({ "pressure_hpa": 800, "pressure_is": "course" })),
    );
    assert!(kinds(&barometer).contains(&"thin_air"));
    assert!(
        kinds(&answer("leg-room", &day(json!({ "altitude_m": 2000 }))))
            .iter()
            .all(|kind| *kind != "thin_air")
    );
}

#[test]
fn the_published_loss_takes_power_where_it_is_switched_on_and_names_itself() {
    let with = |power: Value| json!({ "conditions": { "altitude_m": 2200 }, "power": power });
    let (none, lost) = (
        ridden(&with(json!({}))),
        ridden(&with(json!({ "altitude_loss": "published" }))),
    );
    let power_w = |answer: &Value| value(&answer["power_w"]).expect("a power");
    // Over the hour W′ gives little, so that more than the five minutes' 10.3 % is gone.
    let share = 1.0 - power_w(&lost) / power_w(&none);
    assert!((0.11..0.14).contains(&share), "{share}");
    assert!(kinds(&lost).contains(&"altitude_counted") && !kinds(&lost).contains(&"thin_air"));
    let carries = |answer: &Value| {
        answer["surer"]
            .as_array()
            .expect("a list")
            .iter()
            .any(|one| one["field"] == "scenario.power.altitude_response")
    };
    assert!(carries(&lost) && !carries(&none));
    let half = ridden(&with(
        json!({ "altitude_loss": "published", "altitude_response": 0.5 }),
    ));
    assert!(power_w(&half) > power_w(&lost) && power_w(&half) < power_w(&none));
    // A position's own tests were ridden where the others were, unless it says otherwise.
    let own = |power: Value| {
        let day = json!({ "altitude_m": 2200 });
        ridden(
            &json!({ "conditions": day, "power": power, "positions": [{ "power": { "cp_w": 250 } }] }),
        )
    };
    assert!(
        power_w(&own(json!({ "altitude_loss": "published" }))) < 0.9 * power_w(&own(json!({})))
    );
    let lower =
        json!({ "conditions": { "altitude_m": 150 }, "power": { "altitude_loss": "published" } });
    assert_eq!(
        time_s(&lower),
        time_s(&json!({ "conditions": { "altitude_m": 150 } }))
    );
}

#[test]
fn a_turn_costs_what_braking_and_getting_back_to_speed_take() {
    let course = |turn: Value| json!({ "course": { "out_and_back": true, "turn_radius_m": turn } });
    let without = json!({ "course": { "out_and_back": true } });
    let lost_s = time_s(&course(json!(5))) - time_s(&without);
    assert!((8.0..16.0).contains(&lost_s), "{lost_s} s");
    let wide_s = time_s(&course(json!(15))) - time_s(&without);
    assert!(
        wide_s > 0.0 && wide_s < 0.8 * lost_s,
        "{wide_s} s on 15 m, {lost_s} s on 5 m"
    );
    assert!(says(&without, "turn_not_counted") && !says(&course(json!(5)), "turn_not_counted"));
    let answer = ridden(&without);
    let said = answer["warnings"]
        .as_array()
        .and_then(|warnings| {
            warnings
                .iter()
                .find(|one| one["text"] == "turn_not_counted")
        })
        .expect("the warning");
    assert_eq!(said["values"]["seconds"], json!(lost_s.round() as u64));
    let profile = json!({ "course": { "kind": "profile", "turn_radius_m": 5, "points": level(0.0, &NO_BEARING)["points"] } });
    assert_eq!(
        refused("finish-time", &json!({ "scenario": profile }).to_string())["field"],
        "scenario.course.turn_radius_m"
    );
}

#[test]
fn a_turn_stays_as_long_where_the_course_is_stretched() {
    let at = |distance_m: f64, turn: bool| {
        let turn = if turn { json!(5) } else { Value::Null };
        json!({ "course": { "distance_m": distance_m, "out_and_back": true, "turn_radius_m": turn } })
    };
    let scenario: Scenario = serde_json::from_value(at(10_000.0, true)).expect("a scenario");
    let stretched = scenario.course().scaled_to(80_000.0);
    assert!((stretched.distance_m() - 80_000.0).abs() < 1e-6);
    let turn_m = 5.0 * std::f64::consts::PI;
    assert!((stretched.segments[1].length_m - turn_m).abs() < SAME);

    // A turn that would be most of the way shrinks with it.
    let tiny = scenario.course().scaled_to(20.0);
    assert!((tiny.distance_m() - 20.0).abs() < 1e-6);
    assert!(tiny.segments[1].length_m < 0.1 * turn_m);
}

/// What the quick time_model says a turn costs is read off one relaxation; a seventh is less than a radius is known.
const QUICK_TURN: f64 = 0.15;

#[test]
fn both_clocks_know_what_a_turn_costs() {
    let setup = |radius_m: Option<f64>| {
        let turn = radius_m.map_or(Value::Null, |radius_m| json!(radius_m));
        let scenario = json!({ "course": { "out_and_back": true, "turn_radius_m": turn } });
        let scenario: Scenario = serde_json::from_value(scenario).expect("a scenario");
        scenario
            .setup_on(0, Rc::new(scenario.course()))
            .expect("a position")
    };
    for radius_m in [3.0, 5.0, 10.0] {
        let lost_s = |time_model: &dyn TimeModel| {
            let time_s = |radius_m| time_model.time_s(&setup(radius_m), 250.0).expect("a ride");
            time_s(Some(radius_m)) - time_s(None)
        };
        let (followed_s, quick_s) = (lost_s(&Integrated), lost_s(&QuasiSteady::default()));
        assert!(
            (quick_s / followed_s - 1.0).abs() < QUICK_TURN,
            "{radius_m} m: {quick_s} s for {followed_s} s"
        );
    }
}

#[test]
fn the_chance_of_a_target_is_that_of_a_normal_distribution() {
    let ask = |with: Value| answer("finish-time", &json!({ "scenario": {}, "with": with }));
    let plain = ask(json!({}));
    assert!(plain["chance_of_target"].is_null());
    let (time_s, sd_s) = (
        plain["time_s"]["value"].as_f64().expect("s"),
        plain["time_s"]["sd"].as_f64().expect("s"),
    );
    // Abramowitz and Stegun 1964, Table 26.1.
    for (z, share) in [
        (-1.0, 0.158_655_254),
        (0.0, 0.5),
        (0.5, 0.691_462_461),
        (2.0, 0.977_249_868),
    ] {
        let chance = ask(json!({ "target_time_s": time_s + z * sd_s }))["chance_of_target"]
            .as_f64()
            .expect("a chance");
        assert!((chance - share).abs() < 1e-6, "{z}: {chance}");
    }
    for with in [
        json!({ "target_time_s": 3600, "for_time_s": 3600 }),
        json!({ "target_time_s": 3600, "effort": { "kind": "time", "time_s": 3600 } }),
    ] {
        let error = refused("finish-time", &json!({ "with": with }).to_string());
        assert_eq!(
            (&error["kind"], &error["field"]),
            (&json!("conflict"), &json!("with.target_time_s"))
        );
    }
}

#[test]
fn without_any_spread_a_target_is_met_or_missed() {
    let exact = json!({
        "rider": { "total_mass_kg": 82 }, "positions": [{ "cda_m2": 0.24 }], "model_error_share": 0,
        "bike": { "rolling_coefficient": 0.004, "drivetrain_efficiency": 0.975, "rotating_mass_kg": 1.5 },
        "conditions": { "temperature_c": 15, "relative_humidity": 0.5 },
    });
    let power = json!({ "kind": "power", "power_w": 250 });
    let chance = |target_s: f64| {
        let with = json!({ "effort": power, "target_time_s": target_s });
        answer("finish-time", &json!({ "scenario": exact, "with": with }))["chance_of_target"]
            .clone()
    };
    assert_eq!((chance(4500.0), chance(3000.0)), (json!(1.0), json!(0.0)));
}

#[test]
fn a_yaw_table_that_a_rider_leaves_only_while_pulling_away_is_not_too_short() {
    let ride = |start: &str, wind_m_s: f64| {
        let table = json!([{ "yaw_deg": 0, "ratio": 1 }, { "yaw_deg": 20, "ratio": 0.95 }]);
        json!({
            "positions": [{ "yaw_table": table }], "start": start, "course": { "out_and_back": true },
            "conditions": { "wind_speed_m_s": wind_m_s, "wind_from_deg": 60 },
        })
    };
    for start in ["standing", "rolling"] {
        assert!(!says(&ride(start, 5.0), "beyond_table"), "{start}");
        assert!(says(&ride(start, 12.0), "beyond_table"), "{start}");
    }
}

#[test]
fn rides_longer_than_a_power_curve_knows_are_doubted_in_every_question_that_rides_them() {
    let hundred = json!({ "course": { "distance_m": 160_934.4 }, "positions": two() });
    for question in ["finish-time", "power-or-drag", "hold-or-fade"] {
        let got = answer(question, &json!({ "scenario": hundred }));
        assert!(
            kinds(&got).contains(&"far_beyond") && kinds(&got).contains(&"hour_overstated"),
            "{question}"
        );
        let given = json!({ "scenario": hundred, "with": { "effort": { "kind": "power", "power_w": 200 } } });
        assert!(
            !kinds(&answer(question, &given)).contains(&"far_beyond"),
            "{question}"
        );
    }
    for hours in [12, 24] {
        let got = answer(
            "finish-time",
            &json!({ "with": { "for_time_s": 3600 * hours } }),
        );
        assert!(kinds(&got).contains(&"far_beyond"), "{hours} h");
    }
    assert!(!says(&json!({}), "far_beyond"));
}

#[test]
fn a_hill_too_steep_for_the_launch_force_says_so() {
    let steep = json!({ "rider": { "total_mass_kg": 120 }, "course": { "grade": 0.3, "distance_m": 1000 } });
    let error = refused("finish-time", &json!({ "scenario": steep }).to_string());
    assert_eq!(error["field"], "scenario.bike.launch_force_n");
    let push_n = error["values"]["push"]["value"].as_f64().expect("a push");
    assert!((340.0..350.0).contains(&push_n), "{error}");
    let weak =
        json!({ "scenario": steep, "with": { "effort": { "kind": "power", "power_w": 0 } } });
    assert_eq!(
        refused("finish-time", &weak.to_string())["field"],
        "scenario.bike.launch_force_n"
    );
    let flat = json!({ "with": { "effort": { "kind": "power", "power_w": 0 } } });
    assert_eq!(
        refused("finish-time", &flat.to_string())["field"],
        "scenario.course"
    );
}

#[test]
fn a_comparison_at_a_power_above_the_curve_says_so_and_one_below_does_not() {
    let said = |question: &str, power_w: f64| {
        let positions = json!([{ "cda_m2": 0.25 }, { "cda_m2": 0.24, "fade": { "begins_s": 900, "complete_s": 2400, "tired_cda_m2": 0.26 } }]);
        let mut with = json!({ "effort": { "kind": "power", "power_w": power_w } });
        if question == "hold-or-fade" {
            with["low"] = json!(1);
            with["steady"] = json!(0);
        }
        let answer = answer(
            question,
            &json!({ "scenario": { "positions": positions }, "with": with }),
        );
        kinds(&answer).contains(&"beyond_curve")
    };
    for question in ["power-or-drag", "hold-or-fade"] {
        assert!(said(question, 400.0), "{question}");
        assert!(!said(question, 150.0), "{question}");
    }
}
