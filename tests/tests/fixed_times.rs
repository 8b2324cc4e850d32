//! Courses and events that go by time: the distance is what is covered in it today, and what is gained over it is told in metres.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::fields;
use fasterby_tests::{answer, refused, value};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed, TestRunner};
use serde_json::{Value, json};

/// A distance in a time is solved for to 1e-11 of itself, and the best even effort over it to 1e-14; where the weather changes, the road
/// is cut into pieces at a length that is right to a few thousandths.
const SETTLED: f64 = 1e-9;
const SETTLED_IN_CHANGING_WEATHER: f64 = 1e-5;
/// How much further is read off how time grows with distance, taken to be alike for both rides.
const FURTHER: f64 = 0.02;
/// Two positions' speeds differ by less than this, and so does what a second comes to at either.
const SPEEDS_APART: f64 = 0.05;

/// A time at the power that is held for it is settled to a millionth, a fixed time to rounding.
const ON_CURVE: f64 = 3e-6;

/// Of two rides that are all but alike: what is not worth telling.
const A_LENGTH_M: f64 = 2.0;

const TWELVE_HOURS_S: f64 = 43_200.0;
const DAY_S: f64 = 86_400.0;

fn number(of: &Value) -> f64 {
    value(of).unwrap_or_else(|| panic!("{of} is no number"))
}

fn assert_close(got: f64, want: f64, within: f64, what: &str) {
    assert!(
        (got - want).abs() <= within * want.abs(),
        "{what}: {got}, {want}"
    );
}

/// Two positions, the second of which is the faster, and power that falls in long rides.
fn rider() -> Value {
    json!({
        "positions": [
            { "cda_m2": { "value": 0.25, "sd": 0.005 } },
            { "cda_m2": { "value": 0.235, "sd": 0.005 } },
        ],
        "power": { "long_ride_loss_share": { "value": 0.08, "sd": 0.02 } },
        "conditions": { "wind_speed_m_s": 3, "wind_from_deg": 220 },
    })
}

fn with(part: &str, held: Value) -> Value {
    let mut scenario = rider();
    scenario[part] = held;
    scenario
}

fn asked(question: &str, scenario: &Value, with: Value) -> Value {
    answer(question, &json!({ "scenario": scenario, "with": with }))
}

fn courses() -> [Value; 3] {
    [
        json!({}),
        json!({ "grade": 0.003, "bearing_deg": 30, "out_and_back": true, "turn_radius_m": 8 }),
        json!({ "kind": "profile", "points": [
            { "distance_m": 0, "elevation_m": 50, "bearing_deg": 20 },
            { "distance_m": 9000, "elevation_m": 130, "bearing_deg": 140 },
            { "distance_m": 20000, "elevation_m": 60, "bearing_deg": 260, "radius_m": 300 },
            { "distance_m": 21000, "elevation_m": 50 },
        ] }),
    ]
}

/// How far the rider of a scenario gets in a time on its course.
fn reached_m(scenario: &Value, duration_s: f64, effort: &Value) -> f64 {
    let with = json!({ "for_time_s": duration_s, "effort": effort });
    number(&asked("finish-time", scenario, with)["distance_m"])
}

#[test]
fn an_event_that_goes_by_time_takes_that_time_over_its_distance() {
    for course in courses() {
        for duration_s in [3600.0, TWELVE_HOURS_S, DAY_S] {
            let mut scenario = with("course", course.clone());
            scenario["events"] = json!([{ "duration_s": duration_s }, { "distance_m": 30_000 }]);
            for question in ["which-position", "next-gain", "power-curve"] {
                let mut scenario = scenario.clone();
                // The curve that is read off efforts, not the scenario's, where there are any.
                scenario["efforts"] = json!([]);
                let there = &asked(question, &scenario, json!({}))["events"][0];
                let distance_m = number(&there["distance_m"]);
                if question == "power-curve" {
                    assert_eq!(number(&there["time_s"]), duration_s);
                    continue;
                }
                assert_eq!(there["duration_s"], json!(duration_s), "{question}");
                // Ridden as an event of that distance.
                scenario["events"] = json!([{ "distance_m": distance_m }]);
                let ridden = &asked("which-position", &scenario, json!({}))["events"][0];
                let time_s = number(&ridden["times"][0]["time_s"]);
                assert_close(time_s, duration_s, SETTLED, question);
                let other_way_m = reached_m(&scenario, duration_s, &json!({}));
                assert_close(distance_m, other_way_m, SETTLED, question);
            }
        }
    }
}

/// Riders, roads and winds as they come, the second position up to a tenth faster.
fn any_rider() -> impl Strategy<Value = (Value, f64)> {
    let of_rider = (0.18..0.35, 0.9..1.0, 150.0..400.0, 0.0..0.12, any::<bool>());
    let of_road = (-0.002..0.01, any::<bool>(), 0.0..6.0, 0.0..360.0);
    (of_rider, of_road, 1800.0..DAY_S).prop_map(|(rider, road, duration_s)| {
        let (cda_m2, lower, cp_w, loss, fades) = rider;
        let (grade, out_and_back, wind_m_s, from_deg) = road;
        let tired = json!({ "tired_cda_m2": 1.1 * cda_m2, "begins_s": 0.3 * duration_s, "complete_s": 0.8 * duration_s });
        let mut one = json!({ "cda_m2": cda_m2 });
        if fades {
            one["fade"] = tired;
        }
        let scenario = json!({
            "positions": [one, { "cda_m2": lower * cda_m2 }],
            "power": { "cp_w": cp_w, "long_ride_loss_share": loss },
            "course": { "grade": grade, "out_and_back": out_and_back, "bearing_deg": 10 },
            "conditions": { "wind_speed_m_s": wind_m_s, "wind_from_deg": from_deg },
            "events": [{ "duration_s": duration_s }],
        });
        (scenario, duration_s)
    })
}

#[test]
fn any_rider_s_event_takes_its_time_and_tells_how_much_further_a_position_gets() {
    let config = Config {
        cases: 150,
        failure_persistence: None,
        rng_seed: RngSeed::Fixed(0x000F_1CED),
        ..Config::default()
    };
    let told = TestRunner::new(config).run(&any_rider(), |(scenario, duration_s)| {
        let there = asked("which-position", &scenario, json!({}))["events"][0].clone();
        let time_s = number(&there["times"][0]["time_s"]);
        prop_assert!(
            (time_s / duration_s - 1.0).abs() <= SETTLED,
            "{time_s}, {duration_s}"
        );
        let mut lower = scenario.clone();
        lower["riding_position"] = json!(1);
        let [now_m, lower_m] =
            [&scenario, &lower].map(|one| reached_m(one, duration_s, &json!({})));
        let further_m = number(&there["times"][1]["further_m"]);
        let solved_m = lower_m - now_m;
        let allowed_m = FURTHER * solved_m.abs() + A_LENGTH_M;
        prop_assert!(
            (further_m - solved_m).abs() <= allowed_m,
            "{further_m}, {solved_m}: {scenario}"
        );
        Ok(())
    });
    if let Err(failure) = told {
        panic!("{failure}");
    }
}

#[test]
fn where_the_weather_changes_it_does_too() {
    let later = json!({ "first_at_s": 28_800, "at_s": 50_000, "start_at_s": 28_800, "wind_speed_m_s": 6, "wind_from_deg": 20, "temperature_c": 24 });
    let mut scenario = with("course", courses()[1].clone());
    scenario["conditions"]["later"] = later;
    scenario["events"] = json!([{ "duration_s": TWELVE_HOURS_S }]);
    let chance = asked(
        "finish-time",
        &scenario,
        json!({ "event": 0, "target_time_s": DAY_S }),
    );
    assert_close(
        number(&chance["time_s"]),
        TWELVE_HOURS_S,
        SETTLED_IN_CHANGING_WEATHER,
        "finish-time",
    );
    let there = &asked("which-position", &scenario, json!({}))["events"][0];
    assert_close(
        number(&there["times"][0]["time_s"]),
        TWELVE_HOURS_S,
        SETTLED_IN_CHANGING_WEATHER,
        "which-position",
    );
}

/// Read at a time, positions are compared as at an event of that time on the same road.
#[test]
fn positions_are_read_at_a_time_as_at_an_event_of_it() {
    for course in courses() {
        let mut scenario = with("course", course);
        scenario["events"] = json!([{ "duration_s": TWELVE_HOURS_S }]);
        let asked_at = json!({ "for_time_s": TWELVE_HOURS_S, "distance_m": 1000 });
        let got = asked("which-position", &scenario, asked_at);
        let (read, event) = (&got["reading"], &got["events"][0]);
        assert_eq!(read["duration_s"], event["duration_s"]);
        for (what, read, event) in [
            ("distance", &read["distance_m"], &event["distance_m"]),
            (
                "time",
                &read["times"][1]["time_s"],
                &event["times"][1]["time_s"],
            ),
            (
                "further",
                &read["times"][1]["further_m"],
                &event["times"][1]["further_m"],
            ),
        ] {
            assert_close(number(read), number(event), SETTLED, what);
        }
        // Of two, what one gains is what the other lacks.
        let further = &read["times"][1]["further_m"];
        let ahead = &read["ahead_m"];
        assert_close(number(ahead), number(further).abs(), SETTLED, "ahead");
        assert_close(
            number(&ahead["sd"]),
            number(&further["sd"]),
            SPEEDS_APART,
            "its ±",
        );
    }
    // That the power curve is a guess for so long is said without an event of that time, too.
    let read = asked(
        "which-position",
        &rider(),
        json!({ "for_time_s": TWELVE_HOURS_S }),
    );
    assert!(
        read["warnings"].to_string().contains("far_beyond"),
        "{}",
        read["warnings"]
    );
    let nowhere = json!({ "scenario": rider(), "with": { "for_time_s": 1 } });
    let error = refused("which-position", &nowhere.to_string());
    assert_eq!(error["field"], "with.for_time_s", "{error}");
}

/// Weather is that of pieces of the road, which a short course has few of: half a day on it is as far as on a long one.
#[test]
fn in_changing_weather_the_length_of_the_course_does_not_matter_to_how_far_or_to_an_event() {
    let later = json!({ "first_at_s": 28_800, "at_s": 50_000, "start_at_s": 28_800, "wind_speed_m_s": 6, "wind_from_deg": 40, "temperature_c": 24 });
    let of_length = |distance_m: f64| {
        let mut scenario = with("course", json!({ "distance_m": distance_m }));
        scenario["conditions"]["later"] = later.clone();
        scenario["events"] = json!([{ "distance_m": 300_000 }]);
        let compared = asked("which-position", &scenario, json!({}));
        let event_s = number(&compared["events"][0]["times"][0]["time_s"]);
        (reached_m(&scenario, TWELVE_HOURS_S, &json!({})), event_s)
    };
    let (short, long) = (of_length(500.0), of_length(400_000.0));
    assert_close(short.0, long.0, SETTLED_IN_CHANGING_WEATHER, "how far");
    assert_close(short.1, long.1, SETTLED_IN_CHANGING_WEATHER, "an event");
}

#[test]
fn a_course_of_an_event_s_own_is_made_longer_to_its_time() {
    for own in courses() {
        let own_distance = own.get("kind").is_none();
        let by_event = json!([{ "duration_s": TWELVE_HOURS_S, "course": own }]);
        let mut by_course = own.clone();
        by_course["duration_s"] = json!(TWELVE_HOURS_S);
        let by_course = json!([{ "course": by_course }]);
        let on = |events: Value| {
            asked("which-position", &with("events", events), json!({}))["events"][0].clone()
        };
        let (one, other) = (on(by_event), on(by_course));
        assert_eq!(one, other);
        assert_close(
            number(&one["times"][0]["time_s"]),
            TWELVE_HOURS_S,
            SETTLED,
            "its own course",
        );
        // As on the scenario's own course.
        let mut scenario = with("course", own);
        scenario["events"] = json!([{ "duration_s": TWELVE_HOURS_S }]);
        let usual = &asked("which-position", &scenario, json!({}))["events"][0];
        if own_distance {
            assert_close(
                number(&one["distance_m"]),
                number(&usual["distance_m"]),
                SETTLED,
                "as the scenario's",
            );
        }
    }
}

#[test]
fn how_much_further_agrees_with_solving_the_other_ride_for_its_own_distance() {
    for course in courses() {
        let mut scenario = with("course", course);
        scenario["events"] = json!([{ "duration_s": TWELVE_HOURS_S }]);
        let there = asked("which-position", &scenario, json!({}))["events"][0].clone();
        let mut lower = scenario.clone();
        lower["riding_position"] = json!(1);
        let (now_m, lower_m) = (
            reached_m(&scenario, TWELVE_HOURS_S, &json!({})),
            reached_m(&lower, TWELVE_HOURS_S, &json!({})),
        );
        let further_m = number(&there["times"][1]["further_m"]);
        assert_close(further_m, lower_m - now_m, FURTHER, "which-position");
        assert_eq!(number(&there["times"][0]["further_m"]), 0.0);
        // Its doubt is that of the seconds at the speed of the ride.
        let (sd_m, sd_s) = (
            &there["times"][1]["further_m"]["sd"],
            &there["times"][1]["difference_s"]["sd"],
        );
        let speed_m_s = sd_m.as_f64().expect("metres") / sd_s.as_f64().expect("seconds");
        assert_close(
            speed_m_s,
            lower_m / TWELVE_HOURS_S,
            0.1,
            "the speed gained at",
        );

        let fitter = json!([{ "changes": [{ "field": "power.cp_w", "by": 20 }] }]);
        let gains = asked("next-gain", &scenario, json!({ "candidates": fitter }));
        let gained_m = number(&gains["candidates"][0]["further_by_event_m"][0]);
        let mut fitter = scenario.clone();
        let cp_w = fields::CP_W.default;
        fitter["power"]["cp_w"] = json!(cp_w + 20.0);
        let fitter_m = reached_m(&fitter, TWELVE_HOURS_S, &json!({}));
        assert_close(gained_m, fitter_m - now_m, FURTHER, "next-gain");
        // The best set is this one, and its average counts its chance.
        let best_m = number(&gains["best"]["further_by_event_m"][0]);
        assert_close(best_m, gained_m, FURTHER, "the best set");
    }
}

/// Of twelve hours a rider who stops every 50 km stands for a quarter of an hour, and eats for most of an hour more.
#[test]
fn the_standing_on_the_way_is_part_of_a_fixed_time_and_is_not_ridden() {
    let mut unbroken = with("course", json!({ "duration_s": TWELVE_HOURS_S }));
    unbroken["events"] = json!([{ "duration_s": TWELVE_HOURS_S }]);
    let mut scenario = unbroken.clone();
    scenario["stops"] = json!({ "every_m": 50_000, "time_s": 120 });
    scenario["feeding"] = json!({ "every_s": 1200, "time_s": 20, "cda_m2": 0.33 });
    let compared = asked("which-position", &scenario, json!({}));
    let there = &compared["events"][0];
    let distance_m = number(&there["distance_m"]);
    let [whole_m, broken_m] = [&unbroken, &scenario]
        .map(|scenario| number(&asked("finish-time", scenario, json!({}))["distance_m"]));
    assert!(broken_m < whole_m - 5000.0, "{broken_m}, {whole_m}");
    assert_close(distance_m, broken_m, SETTLED, "the event and the course");
    let ridden = json!({ "scenario": {
        "positions": scenario["positions"], "power": scenario["power"], "conditions": scenario["conditions"],
        "stops": scenario["stops"], "feeding": scenario["feeding"],
        "course": { "distance_m": distance_m },
    }, "with": {} });
    let time_s = number(&answer("finish-time", &ridden)["time_s"]);
    assert_close(time_s, TWELVE_HOURS_S, SETTLED, "over that distance");

    let mut lower = scenario.clone();
    lower["riding_position"] = json!(1);
    let lower_m = reached_m(&lower, TWELVE_HOURS_S, &json!({}));
    let further_m = number(&there["times"][1]["further_m"]);
    assert_close(further_m, lower_m - broken_m, FURTHER, "further");

    let mut curve = scenario.clone();
    curve["efforts"] = json!([]);
    let on_curve_m = number(&asked("power-curve", &curve, json!({}))["events"][0]["distance_m"]);
    assert_close(on_curve_m, broken_m, ON_CURVE, "on the power curve");
    curve["events"] = json!([{ "distance_m": distance_m }]);
    let on_curve_s = number(&asked("power-curve", &curve, json!({}))["events"][0]["time_s"]);
    assert_close(
        on_curve_s,
        TWELVE_HOURS_S,
        ON_CURVE,
        "a distance on the power curve",
    );
}

#[test]
fn downhill_a_rider_gets_somewhere_in_a_fixed_time_without_power() {
    let mut scenario = with("course", json!({ "grade": -0.04 }));
    scenario["start"] = json!("rolling");
    let rolled_m = reached_m(&scenario, 600.0, &json!({ "kind": "power", "power_w": 0 }));
    assert!(rolled_m > 5000.0, "{rolled_m}");
}

#[test]
fn of_a_time_that_is_all_standing_nothing_is_said_of_how_much_further() {
    let scenario = json!({
        "positions": [{}, { "cp_factor": 1.2 }],
        "course": { "duration_s": 200_000 },
        "stops": { "every_m": 1000, "time_s": 36_000 },
        "start": "rolling",
    });
    let effort = json!({ "kind": "power", "power_w": 250 });
    let compared = asked("hold-or-fade", &scenario, json!({ "effort": effort }));
    assert!(compared["further_m"].is_null(), "{}", compared["further_m"]);
    assert!(number(&compared["steady_time_s"]) > 0.0);
}

#[test]
fn a_course_that_goes_by_time_is_as_long_as_the_rider_gets_in_it() {
    for course in courses() {
        let scenario = with("course", course.clone());
        let mut lasting = course;
        lasting["duration_s"] = json!(TWELVE_HOURS_S);
        let timed = with("course", lasting);
        let given = json!({ "kind": "power", "power_w": 190 });
        for effort in [json!({}), given] {
            let now_m = reached_m(&scenario, TWELVE_HOURS_S, &effort);
            let finish = asked("finish-time", &timed, json!({ "effort": effort }));
            assert_close(number(&finish["distance_m"]), now_m, SETTLED, "finish-time");
            assert!(finish["distance_m"]["sd"].as_f64() > Some(0.0));

            let held = asked("hold-or-fade", &timed, json!({ "effort": effort }));
            assert_close(number(&held["distance_m"]), now_m, SETTLED, "hold-or-fade");
            assert_close(
                number(&held["low_time_s"]),
                TWELVE_HOURS_S,
                SETTLED,
                "hold-or-fade",
            );
            let mut lower = scenario.clone();
            lower["riding_position"] = json!(1);
            let lower_m = reached_m(&lower, TWELVE_HOURS_S, &effort);
            assert_close(
                number(&held["further_m"]),
                now_m - lower_m,
                FURTHER,
                "hold-or-fade",
            );

            let changes = json!({ "effort": effort, "power_change": 0.02, "cda_change": -0.02 });
            let traded = asked("power-or-drag", &timed, changes);
            assert_close(
                number(&traded["base_time_s"]),
                TWELVE_HOURS_S,
                SETTLED,
                "power-or-drag",
            );
            let inside = &traded["in_fixed_time"];
            assert_eq!(number(&inside["duration_s"]), TWELVE_HOURS_S);
            let mut slippery = scenario.clone();
            slippery["positions"][0]["cda_m2"] = json!(0.98 * 0.25);
            let slippery_m = reached_m(&slippery, TWELVE_HOURS_S, &effort);
            let less_drag_m = number(&inside["less_drag_further_m"]);
            assert_close(less_drag_m, slippery_m - now_m, FURTHER, "power-or-drag");
            let more_power_m = number(&inside["more_power_further_m"]);
            assert_close(
                number(&inside["difference_m"]),
                more_power_m - less_drag_m,
                FURTHER,
                "the difference",
            );
        }
        let plan = asked("ride-plan", &timed, json!({}));
        assert_close(
            number(&plan["even"]["time_s"]),
            TWELVE_HOURS_S,
            SETTLED,
            "ride-plan",
        );
    }
}

#[test]
fn a_finish_time_or_its_chance_is_of_the_distance_that_is_covered_today() {
    let timed = with("course", json!({ "duration_s": TWELVE_HOURS_S }));
    let quicker_s = TWELVE_HOURS_S - 600.0;
    let chance = asked("finish-time", &timed, json!({ "target_time_s": quicker_s }));
    assert_close(
        number(&chance["time_s"]),
        TWELVE_HOURS_S,
        SETTLED,
        "its chance",
    );
    assert!(chance["chance_of_target"].as_f64() < Some(0.5));
    let effort = json!({ "kind": "time", "time_s": quicker_s });
    let harder = asked("finish-time", &timed, json!({ "effort": effort }));
    let even = asked("finish-time", &timed, json!({}));
    assert!(number(&harder["power_w"]) > number(&even["power_w"]));
    // What the question itself asks for comes first.
    let hour = asked("finish-time", &timed, json!({ "for_time_s": 3600 }));
    assert_eq!(number(&hour["time_s"]), 3600.0);
}

#[test]
fn one_event_of_a_time_is_ridden_as_the_course_is() {
    let timed = with(
        "events",
        json!([{ "distance_m": 20_000 }, { "duration_s": TWELVE_HOURS_S }]),
    );
    for question in ["finish-time", "hold-or-fade"] {
        let event = asked(question, &timed, json!({ "event": 1 }));
        let course = with("course", json!({ "duration_s": TWELVE_HOURS_S }));
        assert_eq!(event, asked(question, &course, json!({})), "{question}");
    }
}

#[test]
fn a_scenario_without_fixed_times_says_nothing_of_them() {
    for question in [
        "finish-time",
        "hold-or-fade",
        "power-or-drag",
        "which-position",
        "next-gain",
    ] {
        let text = asked(question, &rider(), json!({})).to_string();
        for word in ["duration_s\"", "further", "in_fixed_time"] {
            assert!(!text.contains(word), "{question} says {word}");
        }
    }
}

#[test]
fn what_is_a_guess_for_so_long_is_said() {
    let says = |question: &str, scenario: &Value| {
        asked(question, scenario, json!({}))["warnings"]
            .to_string()
            .contains("far_beyond")
    };
    let day = with(
        "events",
        json!([{ "duration_s": DAY_S }, { "distance_m": 20_000 }]),
    );
    for question in ["which-position", "next-gain"] {
        assert!(says(question, &day), "{question}");
        let hour = with("events", json!([{ "duration_s": 3600 }]));
        assert!(!says(question, &hour), "{question}");
    }
    let course = with("course", json!({ "duration_s": DAY_S }));
    for question in ["finish-time", "hold-or-fade", "power-or-drag"] {
        assert!(says(question, &course), "{question}");
    }
}

/// Slopes stay where a surveyed road is stretched, so that its hills are stretched to heights that nobody climbs.
#[test]
fn of_a_surveyed_road_stretched_to_a_time_no_height_is_told_that_it_has_not() {
    let says = |scenario: &Value, with: Value| {
        let ridden = asked("finish-time", scenario, with);
        let warnings = ridden["warnings"].as_array().expect("warnings").clone();
        warnings.iter().any(|one| one["text"] == "one_density")
    };
    let road = courses()[2].clone();
    let half_a_day = json!({ "for_time_s": TWELVE_HOURS_S });
    assert!(!says(&with("course", road.clone()), half_a_day));
    let mut lasting = road.clone();
    lasting["duration_s"] = json!(TWELVE_HOURS_S);
    assert!(!says(&with("course", lasting), json!({})));
    let mut high = road;
    high["points"][1]["elevation_m"] = json!(400);
    assert!(says(&with("course", high), json!({})));
}

#[test]
fn what_is_wrong_with_a_time_is_named() {
    let cases = [
        (
            json!({ "events": [{ "duration_s": 43_200, "distance_m": 40_000 }] }),
            "conflict",
            "scenario.events[0].duration_s",
        ),
        (
            json!({ "events": [{ "duration_s": 43_200, "course": { "duration_s": 43_200 } }] }),
            "conflict",
            "scenario.events[0].duration_s",
        ),
        (
            json!({ "events": [{ "distance_m": 40_000, "course": { "duration_s": 43_200 } }] }),
            "conflict",
            "scenario.events[0].distance_m",
        ),
        (
            json!({ "events": [{ "course": { "duration_s": 43_200, "distance_m": 40_000 } }] }),
            "conflict",
            "scenario.events[0].course.duration_s",
        ),
        (
            json!({ "course": { "duration_s": 43_200, "distance_m": 40_000 } }),
            "conflict",
            "scenario.course.duration_s",
        ),
        (
            json!({ "events": [{ "duration_s": 59 }] }),
            "out_of_range",
            "scenario.events[0].duration_s",
        ),
        (
            json!({ "events": [{ "duration_s": 200_001 }] }),
            "out_of_range",
            "scenario.events[0].duration_s",
        ),
        (
            json!({ "events": [{ "duration_s": "12:00" }] }),
            "wrong_type",
            "scenario.events[0].duration_s",
        ),
        (
            json!({ "course": { "duration_s": -1 } }),
            "out_of_range",
            "scenario.course.duration_s",
        ),
        (
            json!({ "events": [{}] }),
            "missing",
            "scenario.events[0].distance_m",
        ),
    ];
    for (scenario, kind, field) in cases {
        for question in [
            "which-position",
            "next-gain",
            "finish-time",
            "power-or-drag",
        ] {
            let error = refused(question, &json!({ "scenario": scenario }).to_string());
            assert_eq!(
                (&error["kind"], &error["field"]),
                (&json!(kind), &json!(field)),
                "{error}"
            );
        }
    }
    // A wall cannot be ridden up for a hundred metres in a minute.
    let wall = json!({ "grade": 0.4, "duration_s": 60 });
    let error = refused(
        "finish-time",
        &json!({ "scenario": { "course": wall } }).to_string(),
    );
    assert_eq!(error["field"], "scenario.course.duration_s");
    let event = json!({ "course": { "grade": 0.4 }, "events": [{ "duration_s": 60 }] });
    for (question, with) in [
        ("which-position", json!({})),
        ("next-gain", json!({})),
        ("finish-time", json!({ "event": 0 })),
    ] {
        let error = refused(
            question,
            &json!({ "scenario": event, "with": with }).to_string(),
        );
        assert_eq!(error["field"], "scenario.events[0].duration_s", "{error}");
    }
}
/// A stop is at the end of the road if the road ends within a metre of it, m.
const AT_A_STOP_M: f64 = 1.01;

/// Where time is up at a stop, the road ends there: nobody rides on from it, and whatever is told of the ride is of one that comes there.
#[test]
fn a_ride_whose_time_is_up_while_the_rider_stands_ends_at_that_stop() {
    let standing_s = 600.0;
    let mut ended_at_a_stop = 0;
    for every_m in (0..20).map(|step| 46_000.0 + 200.0 * f64::from(step)) {
        let mut scenario = with("course", json!({ "duration_s": TWELVE_HOURS_S }));
        scenario["stops"] = json!({ "every_m": every_m, "time_s": standing_s });
        let ridden = asked("finish-time", &scenario, json!({}));
        let distance_m = number(&ridden["distance_m"]);
        let past_m = distance_m % every_m;
        let splits = ridden["splits"].as_array().expect("splits");
        let came_s = number(&splits.last().expect("a split")["time_s"]);
        let spent_s = if past_m < AT_A_STOP_M {
            ended_at_a_stop += 1;
            assert!(
                (0.0..standing_s).contains(&(TWELVE_HOURS_S - came_s)),
                "{every_m}: {came_s}"
            );
            came_s
        } else {
            assert_close(came_s, TWELVE_HOURS_S, SETTLED, "at the end");
            TWELVE_HOURS_S
        };
        // Its power is what can be held for as long as it rides, to the standing that the time ends in.
        let riding_s = spent_s
            - standing_s
                * (distance_m / every_m)
                    .floor()
                    .min((distance_m - AT_A_STOP_M) / every_m)
                    .floor();
        let held_w = number(&ridden["sustainable_w"]);
        assert_close(
            number(&ridden["power_w"]),
            held_w,
            1e-9,
            &format!("{every_m}, {riding_s} s"),
        );
    }
    assert!(ended_at_a_stop > 0);
}
