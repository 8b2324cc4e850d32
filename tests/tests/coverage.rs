//! Whether a range of 95 % contains the truth as often as it says: riders whose true numbers are drawn from what is stated of
//! them, ridden to the line with those, beside the range that the answer gave without knowing them.

#![cfg(not(target_arch = "wasm32"))]

use std::rc::Rc;

use fasterby_core::draws::{Normal, draw_errors, with_errors};
use fasterby_core::effort::{Effort, paced};
use fasterby_core::integrated::{Integrated, Setup};
use fasterby_core::scenario::Scenario;
use fasterby_tests::answer;
use serde_json::{Value, json};

/// How many riders are simulated of each question.
const RIDERS: u32 = 2000;
/// What is promised; chance alone moves a share of 2,000 by 0.5 % one way or the other.
const COVERAGE: std::ops::RangeInclusive<f64> = 0.93..=0.97;
/// A range of 95 % reaches this many standard deviations to either side.
const REACH: f64 = 1.959_963_984_540_054;
/// Riders for whom a question is answered before true numbers are drawn again.
const TRUTHS: u32 = 20;

/// A rider with typical and measured numbers, a position that is lost, and a forecast.
fn rider(random: &mut fastrand::Rng) -> Value {
    let mut between = |low: f64, high: f64| low + (high - low) * random.f64();
    let cp_w = between(170.0, 380.0);
    let cda_m2 = between(0.2, 0.3);
    let cda_share = between(0.02, 0.12);
    let low_m2 = cda_m2 - between(0.005, 0.02);
    let fade = json!({ "tired_cda_m2": { "value": low_m2 + between(0.01, 0.03), "sd": 0.006 }, "begins_s": { "value": 1200.0, "sd": 200.0 }, "complete_s": { "value": 2600.0, "sd": 200.0 } });
    json!({
        "rider": { "total_mass_kg": { "value": between(60.0, 100.0), "sd": 1.5 } },
        "positions": [
            { "cda_m2": { "value": cda_m2, "sd": cda_share * cda_m2 }, "lapses": [{ "share": { "value": 0.06, "sd": 0.02 }, "cda_m2": { "value": cda_m2 + 0.04, "sd": 0.01 } }] },
            { "cda_m2": { "value": low_m2, "sd": cda_share * low_m2 }, "cp_factor": { "value": 0.98, "sd": 0.01 }, "fade": fade },
        ],
        "power": {
            "cp_w": { "value": cp_w, "sd": between(0.015, 0.05) * cp_w }, "w_prime_j": { "value": between(12e3, 24e3), "sd": 2500.0 },
            "long_ride_loss_share": { "value": 0.09, "sd": 0.04 }, "cp_w_prime_correlation": -0.7,
        },
        "events": [{ "distance_m": between(15e3, 90e3) }],
        "course": { "distance_m": between(15e3, 90e3), "out_and_back": between(0.0, 1.0) < 0.6, "bearing_deg": between(0.0, 360.0) },
        "conditions": { "wind_speed_m_s": between(0.0, 6.0), "wind_from_deg": between(0.0, 360.0) },
    })
}

/// The same on a day that changes, with a start between its two forecasts.
fn rider_on_a_changing_day(random: &mut fastrand::Rng) -> Value {
    let mut rider = rider(random);
    let mut between = |low: f64, high: f64| low + (high - low) * random.f64();
    let day = &mut rider["conditions"];
    day["wind_speed_m_s"] = json!(between(1.0, 6.0));
    day["temperature_c"] = json!({ "value": between(5.0, 15.0), "sd": 2.0 });
    day["later"] = json!({
        "first_at_s": 25_200, "at_s": 36_000, "start_at_s": between(25_200.0, 30_000.0),
        "wind_speed_m_s": between(0.0, 8.0), "wind_from_deg": between(0.0, 360.0), "temperature_c": between(10.0, 25.0),
    });
    rider
}

/// The same who stops and eats on the way.
fn rider_who_stops(random: &mut fastrand::Rng) -> Value {
    let mut rider = rider(random);
    let mut between = |low: f64, high: f64| low + (high - low) * random.f64();
    let standing_s = between(30.0, 400.0);
    let feeding_s = between(5.0, 20.0);
    rider["stops"] = json!({ "every_m": between(8e3, 40e3), "time_s": { "value": standing_s, "sd": 0.3 * standing_s } });
    rider["feeding"] = json!({
        "every_s": between(300.0, 1800.0), "time_s": { "value": feeding_s, "sd": 0.3 * feeding_s },
        "cda_m2": { "value": between(0.36, 0.42), "sd": 0.02 },
    });
    rider
}

/// How often the true value lies in the range that `asked` gives of it.
fn coverage(
    seed: u64,
    asked: impl Fn(&Value) -> (f64, f64),
    truth_of: impl Fn(&Scenario) -> Option<f64>,
) -> f64 {
    coverage_of(rider, seed, asked, truth_of)
}

/// The same for riders made in another way.
fn coverage_of(
    rider: impl Fn(&mut fastrand::Rng) -> Value,
    seed: u64,
    asked: impl Fn(&Value) -> (f64, f64),
    truth_of: impl Fn(&Scenario) -> Option<f64>,
) -> f64 {
    let mut random = fastrand::Rng::with_seed(seed);
    let mut normal = Normal::new(seed);
    let (mut held, mut count) = (0_u32, 0_u32);
    for _ in 0..RIDERS / TRUTHS {
        let request = rider(&mut random);
        let (value, sd) = asked(&request);
        let scenario: Scenario = serde_json::from_value(request).expect("a scenario");
        let conditions = scenario.conditions.clone().with_forecast_uncertainty();
        let scenario = Scenario {
            conditions,
            ..scenario
        };
        let rides = scenario.as_worn(&[0, 1]);
        let inputs: Vec<_> = scenario
            .uncertain_inputs(&rides)
            .iter()
            .map(|input| input.uncertain)
            .collect();
        let (mut errors, mut values) = (vec![0.0; inputs.len()], vec![0.0; inputs.len()]);
        let mut moved = scenario.clone();
        for _ in 0..TRUTHS {
            draw_errors(&inputs, &mut normal, &mut errors);
            with_errors(&inputs, &errors, &mut values);
            moved.set_uncertain_inputs(&scenario, &rides, &values);
            let Some(truth) = truth_of(&moved) else {
                continue;
            };
            count += 1;
            held += u32::from((truth - value).abs() <= REACH * sd);
        }
    }
    f64::from(held) / f64::from(count)
}

fn setup(scenario: &Scenario, position: usize) -> Setup {
    scenario
        .setup_on(position, Rc::new(scenario.course()))
        .expect("a position")
}

fn time_s(setup: &Setup, effort: Effort) -> Option<f64> {
    paced(&Integrated, setup, effort)
        .ok()
        .map(|ride| ride.time_s)
}

fn figure(answer: &Value, name: &str) -> (f64, f64) {
    (
        answer[name]["value"].as_f64().expect("a value"),
        answer[name]["sd"].as_f64().expect("a sd"),
    )
}

fn holds(what: &str, share: f64) {
    println!("{what}: {:.1} %", 100.0 * share);
    assert!(
        COVERAGE.contains(&share),
        "{what}: the range held the truth in {share} of the rides"
    );
}

#[test]
fn the_range_of_a_finish_time_contains_the_truth() {
    let asked = |scenario: &Value| {
        let answer = answer("finish-time", &json!({ "scenario": scenario }));
        (
            figure(&answer, "time_s").0,
            answer["input_sd_s"].as_f64().expect("a sd"),
        )
    };
    holds(
        "finish time",
        coverage(1, asked, |scenario| {
            time_s(&setup(scenario, 0), Effort::Even)
        }),
    );
}

#[test]
fn the_ranges_of_a_day_that_changes_contain_the_truth() {
    const OTHER_START_S: f64 = 36_000.0;
    let ask = |scenario: &Value| {
        let with = json!({ "other_start_at_s": OTHER_START_S });
        answer(
            "finish-time",
            &json!({ "scenario": scenario, "with": with }),
        )
    };
    let starting_later = |scenario: &Scenario| {
        let mut other = scenario.clone();
        if let Some(later) = &mut other.conditions.later {
            later.start_at_s = OTHER_START_S;
        }
        time_s(&setup(&other, 0), Effort::Even)
    };
    let as_planned = |scenario: &Scenario| time_s(&setup(scenario, 0), Effort::Even);
    let finish = |scenario: &Value| {
        let answer = ask(scenario);
        (
            figure(&answer, "time_s").0,
            answer["input_sd_s"].as_f64().expect("a sd"),
        )
    };
    holds(
        "finish time on a day that changes",
        coverage_of(rider_on_a_changing_day, 11, finish, as_planned),
    );
    let slower = |scenario: &Value| figure(&ask(scenario)["day"]["other_start"], "slower_s");
    holds(
        "another start on that day",
        coverage_of(rider_on_a_changing_day, 12, slower, |scenario| {
            Some(starting_later(scenario)? - as_planned(scenario)?)
        }),
    );
}

#[test]
fn the_ranges_of_a_ride_with_stops_contain_the_truth() {
    let ask = |scenario: &Value| answer("finish-time", &json!({ "scenario": scenario }));
    let finish = |scenario: &Value| {
        let answer = ask(scenario);
        (
            figure(&answer, "time_s").0,
            answer["input_sd_s"].as_f64().expect("a sd"),
        )
    };
    let truth = |scenario: &Scenario| time_s(&setup(scenario, 0), Effort::Even);
    holds(
        "finish time with stops",
        coverage_of(rider_who_stops, 13, finish, truth),
    );
    let costs = |scenario: &Value| figure(&ask(scenario)["stops"], "costs_s");
    let cost = |scenario: &Scenario| {
        let without = Scenario {
            stops: None,
            feeding: None,
            ..scenario.clone()
        };
        Some(truth(scenario)? - truth(&without)?)
    };
    holds(
        "what stops and feeding cost",
        coverage_of(rider_who_stops, 14, costs, cost),
    );
}

#[test]
fn the_range_of_power_against_drag_contains_the_truth() {
    let asked = |scenario: &Value| {
        let with =
            json!({ "power_change": 0.05, "cda_change": -0.08, "effort": { "kind": "even" } });
        figure(
            &answer(
                "power-or-drag",
                &json!({ "scenario": scenario, "with": with }),
            ),
            "difference_s",
        )
    };
    let truth = |scenario: &Scenario| {
        let setup = setup(scenario, 0);
        let more = Setup {
            power: setup.power.scaled(1.05, 1.05),
            ..setup.clone()
        };
        let less = Setup {
            position: setup.position.clone().times(0.92),
            ..setup.clone()
        };
        Some(time_s(&less, Effort::Even)? - time_s(&more, Effort::Even)?)
    };
    holds("power or drag", coverage(2, asked, truth));
}

#[test]
fn the_range_of_a_position_that_is_lost_contains_the_truth() {
    let asked = |scenario: &Value| {
        let with = json!({ "low": 1, "steady": 0, "effort": { "kind": "even" } });
        figure(
            &answer(
                "hold-or-fade",
                &json!({ "scenario": scenario, "with": with }),
            ),
            "difference_s",
        )
    };
    let truth = |scenario: &Scenario| {
        Some(
            time_s(&setup(scenario, 0), Effort::Even)? - time_s(&setup(scenario, 1), Effort::Even)?,
        )
    };
    holds("hold or fade", coverage(3, asked, truth));
}

#[test]
fn the_range_of_one_position_against_another_contains_the_truth() {
    let asked = |scenario: &Value| {
        let answer = answer(
            "which-position",
            &json!({ "scenario": scenario, "with": { "reference": 0 } }),
        );
        let difference = &answer["events"][0]["times"][1]["difference_s"];
        (
            difference["value"].as_f64().expect("a value"),
            difference["sd"].as_f64().expect("a sd"),
        )
    };
    let truth = |scenario: &Scenario| {
        let course = Rc::new(scenario.course().scaled_to(scenario.events[0].length_m()));
        let at = |position| {
            scenario
                .setup_on(position, Rc::clone(&course))
                .expect("a position")
        };
        Some(time_s(&at(0), Effort::Even)? - time_s(&at(1), Effort::Even)?)
    };
    holds("which position", coverage(4, asked, truth));
}

/// Changes that come off or not: what is changed, by how much and its sd, and how likely it comes off.
const CHANGES: [(&str, f64, f64, f64); 4] = [
    ("power.cp_w", 8.0, 4.0, 0.75),
    ("rider.total_mass_kg", -1.5, 0.5, 0.9),
    ("bike.rolling_coefficient", -0.0005, 0.0002, 0.8),
    ("bike.drivetrain_efficiency", 0.006, 0.003, 0.6),
];

#[test]
fn the_range_of_the_best_sets_saving_contains_the_truth() {
    let candidates = CHANGES.map(|(field, by, sd, chance)| {
        json!({
            "name": field, "chance": chance,
            "changes": [{ "field": field, "by": { "value": by, "sd": sd } }],
        })
    });
    let asked = |scenario: &Value| {
        let with = json!({ "candidates": candidates, "times_ridden": [1], "money": 0, "hours_per_week": 0 });
        let answer = answer("next-gain", &json!({ "scenario": scenario, "with": with }));
        let best = &answer["best"];
        let chosen = best["candidates"].as_array().expect("a set").len();
        assert_eq!(
            chosen,
            CHANGES.len(),
            "what asks for nothing and helps is chosen"
        );
        figure(best, "expected_s")
    };
    let luck = std::cell::RefCell::new((fastrand::Rng::with_seed(5), Normal::new(6)));
    let truth = |scenario: &Scenario| {
        let (random, normal) = &mut *luck.borrow_mut();
        let mut changed = scenario.clone();
        let inputs = [
            &mut changed.power.cp_w,
            &mut changed.rider.total_mass_kg,
            &mut changed.bike.rolling_coefficient,
            &mut changed.bike.drivetrain_efficiency,
        ];
        for (input, (_, by, sd, chance)) in inputs.into_iter().zip(CHANGES) {
            let change = by + sd * normal.draw();
            if random.f64() < chance {
                input.value += change;
            }
        }
        let course = Rc::new(scenario.course().scaled_to(scenario.events[0].length_m()));
        let over = |scenario: &Scenario| {
            let setup = scenario
                .setup_on(0, Rc::clone(&course))
                .expect("a position");
            time_s(&setup, Effort::Even)
        };
        Some(over(scenario)? - over(&changed)?)
    };
    holds("best set", coverage(5, asked, truth));
}
