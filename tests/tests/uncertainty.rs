//! What a ± contains: errors that are shared, wind that was read in a forecast, a power meter's bias, and errors whose effect
//! is even. Figures come from drawing each ride's true inputs again and again.

#![cfg(not(target_arch = "wasm32"))]

use std::rc::Rc;

use fasterby_core::draws::monte_carlo;
use fasterby_core::effort::{Effort, paced};
use fasterby_core::integrated::Integrated;
use fasterby_core::scenario::Scenario;
use fasterby_tests::{answer, refused};
use serde_json::{Value, json};

const MILE_M: f64 = 1609.344;

/// A scenario whose every number is exact, but for what is given.
fn exact(given: &Value) -> Value {
    let mut scenario = json!({
        "rider": { "total_mass_kg": 82 },
        "bike": { "rolling_coefficient": 0.004, "drivetrain_efficiency": 0.975, "rotating_mass_kg": 1.5 },
        "positions": [{ "cda_m2": 0.24 }],
        "power": { "cp_w": 250, "w_prime_j": 17000, "long_ride_loss_share": 0.09 },
        "course": { "distance_m": 25.0 * MILE_M, "out_and_back": true },
        "conditions": { "temperature_c": 15, "relative_humidity": 0.5 },
    });
    merge(&mut scenario, given);
    scenario
}

fn merge(into: &mut Value, from: &Value) {
    match (into, from) {
        (Value::Object(into), Value::Object(from)) => {
            from.iter()
                .for_each(|(key, value)| merge(into.entry(key).or_insert(Value::Null), value));
        }
        (into, from) => *into = from.clone(),
    }
}

/// One standard deviation of the finish time of the best even effort, from the inputs alone, s.
fn sd_s(given: &Value) -> f64 {
    finish(given)["input_sd_s"].as_f64().expect("a number")
}

fn finish(given: &Value) -> Value {
    answer("finish-time", &json!({ "scenario": exact(given) }))
}

/// Mean move and standard deviation of the finish time over draws of rides that are followed, s.
fn drawn_s(given: &Value) -> (f64, f64) {
    const DRAWS: u32 = 3000;
    let scenario: Scenario = serde_json::from_value(exact(given)).expect("a scenario");
    let conditions = scenario.conditions.clone().with_forecast_uncertainty();
    let scenario = Scenario {
        conditions,
        ..scenario
    };
    let rides = scenario.as_worn(&[0]);
    let inputs: Vec<_> = scenario
        .uncertain_inputs(&rides)
        .iter()
        .map(|input| input.uncertain)
        .collect();
    let time_s = |scenario: &Scenario| {
        let setup = scenario
            .setup_on(0, Rc::new(scenario.course()))
            .expect("a position");
        paced(&Integrated, &setup, Effort::Even)
            .expect("a ride")
            .time_s
    };
    let base_s = time_s(&scenario);
    let mut moved = scenario.clone();
    let drawn = monte_carlo(&inputs, DRAWS, 5, |values| {
        moved.set_uncertain_inputs(&scenario, &rides, values);
        Ok::<_, ()>(time_s(&moved) - base_s)
    });
    (drawn.mean, drawn.sd)
}

/// Four standard errors of a standard deviation over 3,000 draws are 5 %; the rest is what a second-order expansion leaves out.
const SPREAD: f64 = 0.1;

/// A squared error spreads as widely as four times as few draws would tell of a plain one, and a cosine is not quite a parabola.
const EVEN_SPREAD: f64 = 0.2;

fn is_near(got: f64, want: f64, share: f64, what: &str) {
    assert!(
        (got / want - 1.0).abs() <= share,
        "{what}: {got} for {want}"
    );
}

#[test]
fn a_way_to_lose_time_never_makes_a_finish_time_surer() {
    let course = json!({ "distance_m": 50.0 * MILE_M, "out_and_back": true });
    let with = |position: Value| json!({ "course": course, "positions": [position] });
    let cda = json!({ "value": 0.24, "sd": 0.04 });
    let plain_s = sd_s(&with(json!({ "cda_m2": cda })));
    // 401 s, computed independently for this ride.
    is_near(plain_s, 401.0, 0.03, "without a fade");
    for sd in [0.0, 0.005, 0.02, 0.04] {
        for tired in [0.245, 0.264, 0.3] {
            let fade = json!({ "tired_cda_m2": { "value": tired, "sd": sd }, "begins_s": 1500, "complete_s": 3000 });
            let faded_s = sd_s(&with(json!({ "cda_m2": cda, "fade": fade })));
            assert!(
                faded_s >= plain_s,
                "tired {tired} ± {sd}: {faded_s} s beside {plain_s} s"
            );
            let lapses = json!([{ "share": 0.3, "cda_m2": { "value": tired, "sd": sd } }]);
            let lapsed_s = sd_s(&with(json!({ "cda_m2": cda, "lapses": lapses })));
            assert!(
                lapsed_s >= plain_s,
                "lapses at {tired} ± {sd}: {lapsed_s} s beside {plain_s} s"
            );
        }
    }
    let test = json!({ "first_third_cda_m2": 0.24, "last_third_cda_m2": 0.25, "test_s": 1800 });
    assert!(sd_s(&with(json!({ "cda_m2": cda, "fade_test": test }))) >= plain_s);
}

#[test]
fn a_wider_error_of_the_rise_makes_a_faded_ride_less_sure() {
    let faded_s = |sd: f64| {
        let fade = json!({ "tired_cda_m2": { "value": 0.27, "sd": sd }, "begins_s": 0, "complete_s": 600 });
        sd_s(&json!({ "positions": [{ "cda_m2": { "value": 0.24, "sd": 0.01 }, "fade": fade }] }))
    };
    assert!(faded_s(0.01) > faded_s(0.005) && faded_s(0.005) > faded_s(0.0));
}

#[test]
fn a_forecast_wind_without_its_own_error_is_uncertain() {
    let wind = |more: Value| {
        let mut given = json!({ "conditions": { "wind_speed_m_s": 5, "wind_from_deg": 0 } });
        merge(&mut given, &more);
        given
    };
    let out_and_back = wind(json!({}));
    let one_way = wind(json!({ "course": { "out_and_back": false } }));
    for (name, given) in [("out and back", &out_and_back), ("one way", &one_way)] {
        is_near(sd_s(given), drawn_s(given).1, SPREAD, name);
    }
    // ± 30 % of speed alone were found to add 57 s and 279 s; direction and roughness come on top.
    assert!(sd_s(&out_and_back) > 57.0 * 0.9 && sd_s(&one_way) > 279.0 * 0.9);
    let first = finish(&out_and_back)["surer"][0]["field"].clone();
    assert_eq!(first, "scenario.conditions.wind_speed_m_s");
    assert_eq!(
        sd_s(&wind(json!({ "conditions": { "wind_is": "roadside" } }))),
        0.0
    );
    assert_eq!(sd_s(&json!({})), 0.0, "a calm stays a calm");
    let own = wind(json!({ "conditions": { "wind_speed_m_s": { "value": 5, "sd": 0.1 } } }));
    assert!(sd_s(&own) < sd_s(&out_and_back));
}

#[test]
fn a_wind_direction_counts_where_its_effect_is_even() {
    let given = json!({ "conditions": {
        "wind_is": "roadside", "wind_speed_m_s": 5, "wind_from_deg": { "value": 0, "sd": 20 },
    } });
    let (mean_s, drawn_sd_s) = drawn_s(&given);
    assert!(
        mean_s < 0.0,
        "a wind that is not quite along the road costs less: {mean_s} s"
    );
    is_near(
        sd_s(&given),
        drawn_sd_s,
        EVEN_SPREAD,
        "direction out and back",
    );
    let surer = finish(&given)["surer"].clone();
    assert_eq!(surer[0]["field"], "scenario.conditions.wind_from_deg");
    assert!(surer[0]["share"].as_f64().unwrap() > 0.99);
}

#[test]
fn a_meter_that_measured_power_and_drag_alike_hardly_moves_a_ride() {
    let measured = |value: f64, sd: f64| json!({ "value": value, "sd": sd, "source": "measured" });
    let bias = json!({ "value": 0, "sd": 0.03, "source": "typical" });
    let power = json!({ "cp_w": measured(250.0, 0.001) });
    let both = json!({ "bike": { "power_meter_bias_share": bias }, "power": power, "positions": [{ "cda_m2": measured(0.24, 1e-6) }] });
    let power_alone = json!({ "bike": { "power_meter_bias_share": bias }, "power": power });
    let neither = json!({ "bike": { "power_meter_bias_share": bias } });
    assert_eq!(sd_s(&neither), 0.0);
    // 3 % of power are about 1 % of the time; what is left where both are measured is rolling resistance.
    let alone_s = sd_s(&power_alone);
    assert!(alone_s > 25.0, "{alone_s}");
    assert!(sd_s(&both) < 0.15 * alone_s, "{} of {alone_s}", sd_s(&both));
}

#[test]
fn a_meter_that_reads_high_means_a_slower_ride() {
    let cp = json!({ "value": 250, "sd": 1, "source": "measured" });
    let time_s = |bias: f64| {
        let given = json!({ "bike": { "power_meter_bias_share": bias }, "power": { "cp_w": cp } });
        finish(&given)["time_s"]["value"].as_f64().unwrap()
    };
    assert!(time_s(0.03) > time_s(0.0) && time_s(0.0) > time_s(-0.03));
}

/// The published 60-minute power of trained riders is 0.90 of their 20-minute power (four-and-twenty).
const HOUR_OVER_TWENTY: std::ops::RangeInclusive<f64> = 0.885..=0.915;

#[test]
fn weak_and_strong_riders_lose_the_same_share_in_an_hour() {
    for cp_w in [150.0, 200.0, 250.0, 350.0, 430.0] {
        let power_w = |hold_s: f64| {
            let power =
                json!({ "cp_w": cp_w, "w_prime_j": 68.0 * cp_w, "long_ride_loss_share": 0.09 });
            let request = json!({ "scenario": { "power": power }, "with": { "hold_s": hold_s } });
            answer("power-curve", &request)["power_w"]["value"]
                .as_f64()
                .unwrap()
        };
        let share = power_w(3600.0) / power_w(1200.0);
        assert!(HOUR_OVER_TWENTY.contains(&share), "{cp_w} W: {share}");
    }
}

#[test]
fn a_loss_in_watts_stays_in_watts_and_a_share_goes_with_critical_power() {
    let time_s = |power: Value| {
        let request = json!({ "scenario": { "power": power } });
        answer("finish-time", &request)["time_s"]["value"]
            .as_f64()
            .unwrap()
    };
    let watts = time_s(json!({ "cp_w": 200, "long_ride_loss_w": 18 }));
    assert_eq!(
        watts,
        time_s(json!({ "cp_w": 200, "long_ride_loss_share": 0.09 }))
    );
    assert!(
        time_s(json!({ "cp_w": 300, "long_ride_loss_w": 18 }))
            < time_s(json!({ "cp_w": 300, "long_ride_loss_share": 0.09 }))
    );
    let both = json!({ "scenario": { "power": { "long_ride_loss_w": 18, "long_ride_loss_share": 0.09 } } });
    let error = refused("finish-time", &both.to_string());
    assert_eq!(
        (&error["kind"], &error["field"]),
        (
            &json!("conflict"),
            &json!("scenario.power.long_ride_loss_w")
        )
    );
    for version in [1, 2, 3] {
        let scenario = json!({ "fasterby": version, "power": { "long_ride_loss_w": 18 } });
        answer("finish-time", &json!({ "scenario": scenario }));
    }
}

/// Efforts of published and invented riders: inside the onset of the long-ride loss, at it, and beyond.
const EFFORTS: [&[(f64, f64)]; 5] = [
    &[(240.0, 417.0), (1200.0, 342.0), (3600.0, 309.0)],
    &[(180.0, 370.0), (720.0, 300.0), (2400.0, 272.0)],
    &[(240.0, 320.0), (1200.0, 265.0)],
    &[(1200.0, 286.0)],
    &[
        (30.0, 700.0),
        (180.0, 372.0),
        (300.0, 343.0),
        (720.0, 300.0),
        (1200.0, 286.0),
    ],
];

#[test]
fn the_power_curve_shows_what_a_ride_with_it_uses() {
    for tests in EFFORTS {
        let efforts: Vec<Value> = tests
            .iter()
            .map(|(s, w)| json!({ "duration_s": s, "power_w": w }))
            .collect();
        for model in [
            None,
            Some("two-parameter"),
            Some("omni-domain"),
            Some("power-law"),
            Some("three-parameter"),
        ] {
            let scenario = json!({ "efforts": efforts });
            let curve = answer(
                "power-curve",
                &json!({ "scenario": scenario, "with": { "model": model } }),
            );
            let usable = &curve["usable"];
            if usable.is_null() {
                continue;
            }
            let mut power = json!({
                "cp_w": usable["cp_w"]["value"], "w_prime_j": usable["w_prime_j"]["value"],
                "long_ride_loss_share": usable["long_ride_loss_share"]["value"], "peak_w": usable["peak_w"]["value"],
            });
            power
                .as_object_mut()
                .unwrap()
                .retain(|_, value| !value.is_null());
            for event in curve["events"].as_array().unwrap() {
                let course = json!({ "distance_m": event["distance_m"] });
                let request = json!({ "scenario": { "power": power, "course": course } });
                let ridden_w = answer("finish-time", &request)["power_w"]["value"]
                    .as_f64()
                    .unwrap();
                let shown = (
                    event["power_w"]["value"].as_f64().unwrap(),
                    event["power_w"]["sd"].as_f64().unwrap(),
                );
                // The marks are read off steady speeds, which miss the seconds of the start: tenths of a watt.
                assert!(
                    (ridden_w - shown.0).abs() < 0.5,
                    "{tests:?} {model:?}: ridden at {ridden_w}, shown {shown:?}"
                );
                assert!((ridden_w - shown.0).abs() < shown.1);
            }
        }
    }
}

#[test]
fn a_band_widens_beyond_the_longest_effort_as_much_as_the_loss_is_uncertain() {
    let efforts =
        json!([{ "duration_s": 240, "power_w": 320 }, { "duration_s": 1200, "power_w": 265 }]);
    let at = |hold_s: f64| {
        let request = json!({ "scenario": { "efforts": efforts }, "with": { "hold_s": hold_s } });
        let power = answer("power-curve", &request)["power_w"].clone();
        (
            power["value"].as_f64().unwrap(),
            power["sd"].as_f64().unwrap(),
        )
    };
    let ((_, early_sd_w), (late_w, late_sd_w)) = (at(1200.0), at(4.0 * 3600.0));
    // 4 % of 251 W for each of 2.08 e-folds are 21 W.
    assert!(
        late_sd_w > 21.0 && late_sd_w > 3.0 * early_sd_w,
        "{late_sd_w} beside {early_sd_w}"
    );
    assert!((200.0..212.0).contains(&late_w), "{late_w}");
}

/// Two ways to the same spread agree to this share: a lapse for a ten-thousandth of the ride is not quite none, and a range is
/// worked out about a slightly different mean.
const NEARLY: f64 = 1e-3;

#[test]
fn the_band_over_the_share_held_ends_at_a_position_that_is_lost_and_at_one_that_is_held() {
    let area = |value: f64, sd: f64| json!({ "value": value, "sd": sd, "source": "estimated" });
    let asked = |way: Value| {
        let low = json!({ "name": "low", "cda_m2": area(0.226, 0.01) });
        let steady = json!({ "name": "mine", "cda_m2": area(0.24, 0.01) });
        let mut positions = json!([low, steady]);
        merge(&mut positions[0], &way);
        answer(
            "hold-or-fade",
            &json!({ "scenario": exact(&json!({ "positions": positions })) }),
        )
    };
    let fade = asked(
        json!({ "fade": { "tired_cda_m2": area(0.27, 0.02), "begins_s": 1500, "complete_s": 3000 } }),
    );
    let lapsed =
        |share: f64| asked(json!({ "lapses": { "share": share, "cda_m2": area(0.27, 0.02) } }));
    let sds: Vec<f64> =
        serde_json::from_value(fade["columns"]["difference_sd_s"].clone()).expect("a column");
    let (lost_s, held_s) = (sds.first().expect("a point"), sds.last().expect("a point"));
    let sd_of = |answer: &Value| answer["difference_s"]["sd"].as_f64().expect("a number");
    is_near(*lost_s, sd_of(&lapsed(0.9999)), NEARLY, "lost all along");
    is_near(*held_s, sd_of(&lapsed(0.0001)), NEARLY, "held all along");
    is_near(
        *held_s,
        fade["held_difference_s"]["sd"].as_f64().expect("a number"),
        NEARLY,
        "held, by its own name",
    );
}

#[test]
fn what_is_left_once_a_number_is_known_is_the_error_of_a_rider_who_knows_it() {
    let area = |sd: f64| json!({ "positions": [{ "cda_m2": { "value": 0.24, "sd": sd, "source": "estimated" } }] });
    let with_power = |mut given: Value| {
        merge(
            &mut given,
            &json!({ "power": { "cp_w": { "value": 250, "sd": 20, "source": "estimated" } } }),
        );
        given
    };
    let unsure = finish(&with_power(area(0.02)));
    let of_area = |one: &&Value| one["field"] == "scenario.positions[0].cda_m2";
    let area_row = unsure["surer"]
        .as_array()
        .expect("a list")
        .iter()
        .find(of_area)
        .expect("the drag area")
        .clone();
    let (left_s, share) = (
        area_row["left"].as_f64().expect("left"),
        area_row["share"].as_f64().expect("a share"),
    );
    let (all_s, known_s) = (
        unsure["input_sd_s"].as_f64().expect("a number"),
        sd_s(&with_power(area(0.0))),
    );
    is_near(left_s, known_s, NEARLY, "left");
    is_near(share, 1.0 - (known_s / all_s).powi(2), NEARLY, "the share");
}

/// Two-sided 95 % quantile and chances of the standard normal distribution: NIST/SEMATECH e-Handbook of Statistical Methods,
/// table 1.3.6.7.1 (cumulative distribution function), to its five decimals.
const REACH_95: f64 = 1.959_963_985;
const CHANCE_AT_1: f64 = 0.84134;
const TO_THE_TABLE: f64 = 5e-6;

#[test]
fn a_figure_crosses_with_its_95_per_cent_range_and_the_chance_that_it_is_positive() {
    let shown = |value: f64, sd: f64| {
        serde_json::to_value(fasterby_core::quantity::Figure { value, sd }).expect("JSON")
    };
    let number = |figure: &Value, name: &str| figure[name].as_f64().expect("a number");
    let ahead = shown(3.0, 3.0);
    assert!((number(&ahead, "low_95") - (3.0 - 3.0 * REACH_95)).abs() < 1e-8);
    assert!((number(&ahead, "high_95") - (3.0 + 3.0 * REACH_95)).abs() < 1e-8);
    assert!((number(&ahead, "chance_positive") - CHANCE_AT_1).abs() < TO_THE_TABLE);
    assert!(
        (number(&shown(-3.0, 3.0), "chance_positive") - (1.0 - CHANCE_AT_1)).abs() < TO_THE_TABLE
    );
    for (value, chance) in [(2.0, 1.0), (0.0, 0.5), (-2.0, 0.0)] {
        let exact = shown(value, 0.0);
        assert_eq!(
            (number(&exact, "low_95"), number(&exact, "high_95")),
            (value, value)
        );
        assert_eq!(number(&exact, "chance_positive"), chance);
    }
}
