//! Draws are read off steady speeds; here they are held against rides that are followed to the line.

#![cfg(not(target_arch = "wasm32"))]

use std::rc::Rc;

use fasterby_core::draws::{Drawn, monte_carlo};
use fasterby_core::effort::{Effort, paced};
use fasterby_core::integrated::{Integrated, TimeModel};
use fasterby_core::quasi_steady::QuasiSteady;
use fasterby_core::scenario::Scenario;
use fasterby_tests::answer;
use serde_json::{Value, json};

const DRAWS: u32 = 600;
/// The two clocks see the same draws, so nothing but the transients differs between them: a percent or two of the spread.
const SPREAD: f64 = 0.03;
/// A share of draws moves only by the draws that lie within the clocks' difference of a tie.
const SHARE: f64 = 0.01;

/// How much faster ten percent more power is than ten percent less drag, in draws of one scenario by one time_model.
fn drawn(scenario: &Scenario, effort: Effort, time_model: &dyn TimeModel, left_out: f64) -> Drawn {
    let rides = scenario.as_worn(&[0]);
    let inputs: Vec<_> = scenario
        .uncertain_inputs(&rides)
        .iter()
        .map(|input| input.uncertain)
        .collect();
    let mut moved = scenario.clone();
    monte_carlo(&inputs, DRAWS, 11, |values| {
        moved.set_uncertain_inputs(scenario, &rides, values);
        Ok::<_, ()>(apart(&moved, effort, time_model) + left_out)
    })
}

fn apart(scenario: &Scenario, effort: Effort, time_model: &dyn TimeModel) -> f64 {
    let course = Rc::new(scenario.course());
    let mut more = scenario
        .setup_on(0, Rc::clone(&course))
        .expect("a position");
    let mut less = scenario.setup_on(0, course).expect("a position");
    more.power = more.power.scaled(1.1, 1.1);
    less.position.cda_m2 *= 0.9;
    let raised = match effort {
        Effort::Power(power_w) => Effort::Power(1.1 * power_w),
        other => other,
    };
    let time_s =
        |setup, effort| paced(time_model, setup, effort).map_or(f64::NAN, |paced| paced.time_s);
    time_s(&less, effort) - time_s(&more, raised)
}

fn agree(scenario: &Value, effort: Effort) {
    let scenario: Scenario = serde_json::from_value(scenario.clone()).expect("a scenario");
    let quick = QuasiSteady::default();
    let left_out = apart(&scenario, effort, &Integrated) - apart(&scenario, effort, &quick);
    let full = drawn(&scenario, effort, &Integrated, 0.0);
    let quick = drawn(&scenario, effort, &quick, left_out);
    assert!(
        (quick.sd / full.sd - 1.0).abs() < SPREAD,
        "{quick:?} {full:?}"
    );
    assert!(
        (quick.mean - full.mean).abs() < SPREAD * full.sd,
        "{quick:?} {full:?}"
    );
    assert!(
        (quick.share_positive - full.share_positive).abs() <= SHARE,
        "{quick:?} {full:?}"
    );
}

fn hills() -> Value {
    let point = |i: u32| {
        let share = f64::from(i) / 80.0;
        json!({ "distance_m": 32_000.0 * share, "elevation_m": 100.0 + 60.0 * (20.0 * share).sin(), "bearing_deg": 300.0 * share - 150.0 })
    };
    json!({ "kind": "profile", "points": (0..=80).map(point).collect::<Vec<_>>() })
}

#[test]
fn steady_draws_spread_as_followed_ones_do() {
    let wind = json!({ "wind_speed_m_s": { "value": 4.0, "sd": 1.5 }, "wind_from_deg": 250.0 });
    let fade = json!([{ "fade": {}, "lapses": {} }]);
    agree(&json!({}), Effort::Power(250.0));
    agree(
        &json!({ "course": { "out_and_back": true, "bearing_deg": 70.0 }, "conditions": wind }),
        Effort::Even,
    );
    agree(
        &json!({ "course": hills(), "conditions": wind }),
        Effort::Power(250.0),
    );
    agree(
        &json!({ "course": hills(), "conditions": wind, "positions": fade }),
        Effort::Even,
    );
    let (stops, feeding) = (json!({ "every_m": 9000 }), json!({ "every_s": 600 }));
    agree(
        &json!({ "course": hills(), "conditions": wind, "positions": fade, "stops": stops, "feeding": feeding }),
        Effort::Even,
    );
    agree(
        &json!({ "course": { "distance_m": 90_000 }, "stops": {}, "feeding": {} }),
        Effort::Power(250.0),
    );
}

#[test]
fn a_clock_that_stalls_says_where() {
    let wall = json!({ "course": { "grade": 0.4, "distance_m": 1000.0 }, "bike": { "launch_force_n": 100.0 } });
    let scenario: Scenario = serde_json::from_value(wall).expect("a scenario");
    let setup = scenario
        .setup_on(0, Rc::new(scenario.course()))
        .expect("a position");
    let stall = Integrated.time_s(&setup, 200.0).expect_err("a stall");
    assert_eq!(stall.distance_m, 0.0);
    // m g sin θ + Crr m g cos θ + bearings, for 82 kg on 40 %: more than the launch force.
    let theta = 0.4f64.atan();
    let push_n = 82.0 * 9.80665 * (theta.sin() + 0.004 * theta.cos()) + 0.091;
    assert!(
        (stall.push_n.expect("a push") - push_n).abs() < 1e-6,
        "{stall:?}"
    );
}

#[test]
fn a_ride_that_begins_at_a_crawl_rolls_on_downhill() {
    let begun = |speed_m_s: f64| {
        let hill = json!({ "course": { "grade": -0.02, "distance_m": 1000.0 }, "start": { "speed_m_s": speed_m_s } });
        let scenario: Scenario = serde_json::from_value(hill).expect("a scenario");
        let setup = scenario
            .setup_on(0, Rc::new(scenario.course()))
            .expect("a position");
        // So little power that the launch force is never the limit.
        Integrated.time_s(&setup, 20.0).expect("a ride")
    };
    let (slow_s, slower_s) = (begun(0.3), begun(0.1));
    assert!(slow_s < slower_s, "{slow_s} {slower_s}");
    // Gravity alone, m g sin θ − Crr m g, gives 0.155 m/s² and both rides go on far faster: what the start costs is small.
    assert!(slower_s - slow_s < 2.0, "{slow_s} {slower_s}");
}

#[test]
fn a_course_of_very_many_points_gets_fewer_draws_and_says_how_many() {
    let point = |i: u32| json!({ "distance_m": 10 * i, "elevation_m": 50 });
    let course = json!({ "kind": "profile", "points": (0..20_000).map(point).collect::<Vec<_>>() });
    let with = json!({ "draws": 100_000, "effort": { "kind": "power", "power_w": 250 } });
    let got = answer(
        "power-or-drag",
        &json!({ "scenario": { "course": course }, "with": with }),
    );
    let drawn = got["drawn"]["draws"].as_u64().expect("a count");
    assert!((100..20_000).contains(&drawn), "{drawn} draws");
}
