//! Weather that changes on the way, and shelter along the road: against rides followed in small steps of time, and against days whose
//! weather stays.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::{answer, refused, value};
use serde_json::{Value, json};

/// The same ride by another way to write it ends at rounding, with its course cut into pieces.
const SAME: f64 = 1e-9;
/// A stretch has the weather of its middle; over a kilometre that is this close to weather that changes all along it.
const ALONG: f64 = 2e-5;

fn conditions(wind_m_s: f64, from_deg: f64, temperature_c: f64, later: Value) -> Value {
    let mut day = json!({
        "temperature_c": temperature_c, "wind_speed_m_s": wind_m_s, "wind_from_deg": from_deg, "wind_is": "roadside",
        "shelter_factor": 1, "pressure_hpa": 1000, "pressure_is": "course", "relative_humidity": 0,
    });
    if !later.is_null() {
        day["later"] = later;
    }
    day
}

/// From 7 to 10 o'clock.
fn later(wind_m_s: f64, from_deg: f64, temperature_c: f64, start_at_s: f64) -> Value {
    json!({
        "first_at_s": 25_200, "at_s": 36_000, "start_at_s": start_at_s,
        "wind_speed_m_s": wind_m_s, "wind_from_deg": from_deg, "temperature_c": temperature_c,
    })
}

fn road(distance_m: f64, out_and_back: bool) -> Value {
    json!({ "kind": "simple", "distance_m": distance_m, "bearing_deg": 90, "out_and_back": out_and_back })
}

fn scenario(course: &Value, conditions: &Value) -> Value {
    json!({ "course": course, "conditions": conditions, "start": "rolling" })
}

fn ridden(scenario: &Value) -> Value {
    answer(
        "finish-time",
        &json!({ "scenario": scenario, "with": { "effort": { "kind": "power", "power_w": 250 } } }),
    )
}

fn time_s(scenario: &Value) -> f64 {
    value(&ridden(scenario)["time_s"]).expect("a time")
}

fn refused_json(question: &str, request: &Value) -> Value {
    refused(question, &request.to_string())
}

fn is_close(got: f64, want: f64, share: f64) {
    assert!((got / want - 1.0).abs() < share, "{got} for {want}");
}

#[test]
fn before_the_change_and_after_it_the_weather_stays() {
    let road = road(20_000.0, true);
    let change = |start_at_s| {
        let day = conditions(3.0, 60.0, 12.0, later(6.0, 120.0, 22.0, start_at_s));
        time_s(&scenario(&road, &day))
    };
    let stays = |wind_m_s, from_deg, temperature_c| {
        let day = conditions(wind_m_s, from_deg, temperature_c, Value::Null);
        time_s(&scenario(&road, &day))
    };
    is_close(change(0.0), stays(3.0, 60.0, 12.0), SAME);
    is_close(change(36_000.0), stays(6.0, 120.0, 22.0), SAME);
    let between = change(28_800.0);
    assert!((stays(6.0, 120.0, 22.0) - between).abs() > 1.0);
    assert!((stays(3.0, 60.0, 12.0) - between).abs() > 1.0);
}

#[test]
fn weather_that_is_the_same_later_changes_nothing() {
    let road = road(40_000.0, false);
    let changes = conditions(4.0, 75.0, 15.0, later(4.0, 75.0, 15.0, 30_000.0));
    let stays = conditions(4.0, 75.0, 15.0, Value::Null);
    is_close(
        time_s(&scenario(&road, &changes)),
        time_s(&scenario(&road, &stays)),
        SAME,
    );
}

/// Density of dry air at 1000 hPa, by the ideal gas with the compressibility of the air's own tables within 1e-3 of a percent of
/// its change with temperature; the ride below takes the page's own figure at both ends instead.
fn density_kg_m3(temperature_c: f64) -> f64 {
    let day = conditions(0.0, 0.0, temperature_c, Value::Null);
    ridden(&scenario(&road(1_000.0, false), &day))["density_kg_m3"]
        .as_f64()
        .expect("a density")
}

/// A ride at 250 W along a straight road to the east, in steps of a tenth of a second, in wind and air that change evenly with time.
fn followed_s(
    distance_m: f64,
    turn_at_m: f64,
    head_m_s: impl Fn(f64) -> f64,
    density_kg_m3: impl Fn(f64) -> f64,
) -> f64 {
    const STEP_S: f64 = 0.1;
    let (mass_kg, rotating_kg, rolling) = (82.0, 1.5, 0.004);
    let (cda_m2, road_power_w) = (0.28, 250.0 * 0.975);
    let acceleration = |time_s: f64, at_m: f64, v: f64| {
        let head = head_m_s(time_s) * if at_m < turn_at_m { 1.0 } else { -1.0 };
        let air_n = 0.5 * density_kg_m3(time_s) * cda_m2 * (v + head) * (v + head).abs();
        let other_n = mass_kg * 9.80665 * rolling + 0.091 + 0.0087 * v;
        (road_power_w / v - air_n - other_n) / (mass_kg + rotating_kg)
    };
    // The steady speed of the first metres.
    let (mut low, mut high) = (0.1, 40.0);
    for _ in 0..100 {
        let middle = 0.5 * (low + high);
        if acceleration(0.0, 0.0, middle) > 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    let (mut time_s, mut at_m, mut v) = (0.0, 0.0, low);
    loop {
        let first = acceleration(time_s, at_m, v);
        let middle_m_s = v + 0.5 * STEP_S * first;
        let second = acceleration(time_s + 0.5 * STEP_S, at_m, middle_m_s);
        let next_m = at_m + STEP_S * middle_m_s;
        if next_m >= distance_m {
            return time_s + (distance_m - at_m) / middle_m_s;
        }
        (time_s, at_m, v) = (time_s + STEP_S, next_m, v + STEP_S * second);
    }
}

#[test]
fn a_ride_through_changing_weather_takes_as_long_as_one_followed_in_small_steps() {
    let densities = (density_kg_m3(10.0), density_kg_m3(25.0));
    for (distance_m, out_and_back, start_at_s) in [
        (40_000.0, false, 25_200.0),
        (40_000.0, true, 25_200.0),
        (40_000.0, true, 27_000.0),
        (160_000.0, false, 24_000.0),
    ] {
        let course = road(distance_m, out_and_back);
        // From a following wind to one ahead, straight along the road.
        let mut day = conditions(2.0, 270.0, 10.0, later(5.0, 90.0, 25.0, start_at_s));
        day["wind_height_m"] = json!(10);
        let scenario = json!({
            "course": course, "conditions": day, "start": "rolling",
            "rider": { "total_mass_kg": 82 },
            "bike": { "rolling_coefficient": 0.004, "drivetrain_efficiency": 0.975, "rotating_mass_kg": 1.5 },
            "positions": [{ "cda_m2": 0.28 }],
        });
        let share = |time_s: f64| ((start_at_s + time_s - 25_200.0) / 10_800.0).clamp(0.0, 1.0);
        let want = followed_s(
            distance_m,
            if out_and_back {
                0.5 * distance_m
            } else {
                f64::INFINITY
            },
            |time_s| -2.0 + 7.0 * share(time_s),
            |time_s| densities.0 + (densities.1 - densities.0) * share(time_s),
        );
        is_close(time_s(&scenario), want, ALONG);
    }
}

fn sheltered(share: Option<f64>) -> Value {
    let point = |i: u32| {
        let mut point = json!({ "distance_m": 5_000 * i, "elevation_m": 0, "bearing_deg": 90 });
        if let Some(share) = share {
            point["wind_share"] = json!(share);
        }
        point
    };
    json!({ "kind": "profile", "points": (0..=4).map(point).collect::<Vec<_>>() })
}

#[test]
fn shelter_lets_its_share_of_the_wind_through() {
    let blown = |share, wind_m_s| {
        let day = conditions(wind_m_s, 70.0, 15.0, Value::Null);
        time_s(&scenario(&sheltered(share), &day))
    };
    is_close(blown(Some(1.0), 6.0), blown(None, 6.0), SAME);
    is_close(blown(Some(0.5), 6.0), blown(None, 3.0), SAME);
    is_close(blown(Some(0.0), 6.0), blown(None, 0.0), SAME);
}

#[test]
fn a_later_forecast_is_as_uncertain_as_the_first() {
    let road = road(30_000.0, false);
    let forecast = |first: (f64, f64), then: Value| {
        let mut day = conditions(first.0, first.1, 15.0, then);
        day["wind_is"] = json!("forecast");
        let sd = ridden(&scenario(&road, &day))["input_sd_s"].as_f64();
        sd.expect("a spread")
    };
    let stays = forecast((5.0, 100.0), Value::Null);
    is_close(
        forecast((5.0, 100.0), later(5.0, 100.0, 15.0, 30_000.0)),
        stays,
        1e-3,
    );
    // Once it has changed, the later wind is uncertain by the same shares.
    let changed = forecast((2.0, 30.0), later(5.0, 100.0, 15.0, 36_000.0));
    is_close(changed, stays, 1e-3);
}

#[test]
fn a_calm_first_forecast_is_said_to_tell_nothing_of_the_later_error() {
    let day = conditions(0.0, 0.0, 15.0, later(5.0, 90.0, 15.0, 30_000.0));
    let answer = ridden(&scenario(&road(10_000.0, false), &day));
    let warned = answer["warnings"].as_array().expect("warnings");
    assert!(
        warned
            .iter()
            .any(|warning| warning["kind"] == "calm_at_first"),
        "{warned:?}"
    );
}

#[test]
fn what_cannot_be_of_a_day_is_named() {
    for (name, wrong, kind) in [
        ("at_s", json!(25_200), "conflict"),
        ("first_at_s", json!(-1), "out_of_range"),
        ("start_at_s", json!(1e6), "out_of_range"),
        ("wind_speed_m_s", json!(-1), "out_of_range"),
        ("temperature_c", json!(99), "out_of_range"),
        ("pressure_hpa", json!(1), "out_of_range"),
    ] {
        let mut then = later(5.0, 90.0, 15.0, 30_000.0);
        then[name] = wrong;
        let day = conditions(3.0, 0.0, 15.0, then);
        let error = refused_json(
            "finish-time",
            &json!({ "scenario": scenario(&road(10_000.0, false), &day) }),
        );
        assert_eq!(error["field"], format!("scenario.conditions.later.{name}"));
        assert_eq!(error["kind"], kind, "{name}");
    }
    let mut course = sheltered(None);
    course["points"][1]["wind_share"] = json!(1.5);
    let error = refused_json("finish-time", &json!({ "scenario": { "course": course } }));
    assert_eq!(error["field"], "scenario.course.points[1].wind_share");
}

#[test]
fn every_question_that_rides_meets_the_change() {
    let road = road(30_000.0, true);
    for (question, figure) in [
        ("power-or-drag", "/base_time_s/value"),
        ("hold-or-fade", "/low_time_s/value"),
        ("which-position", "/events/0"),
        ("next-gain", "/events/0/time_s/value"),
        ("ride-plan", "/even/time_s"),
    ] {
        let asked = |then: Value| {
            let day = conditions(5.0, 90.0, 5.0, then);
            let mut scenario = scenario(&road, &day);
            scenario["positions"] = json!([{}, { "cda_m2": 0.25 }]);
            let answer = answer(question, &json!({ "scenario": scenario }));
            answer.pointer(figure).expect("the figure").clone()
        };
        let changes = later(1.0, 90.0, 25.0, 25_200.0);
        assert_ne!(asked(Value::Null), asked(changes), "{question}");
    }
}

#[test]
fn the_plan_and_the_finish_time_agree_on_an_even_effort() {
    // What W' balance and the pieces of a plan leave between the two, as without a change of weather.
    const AGREE: f64 = 2e-4;
    let day = conditions(2.0, 80.0, 10.0, later(6.0, 120.0, 22.0, 26_000.0));
    let scenario = scenario(&road(40_000.0, false), &day);
    let plan = answer("ride-plan", &json!({ "scenario": scenario }));
    let even = answer("finish-time", &json!({ "scenario": scenario }));
    is_close(
        value(&plan["even"]["time_s"]).expect("a time"),
        value(&even["time_s"]).expect("a time"),
        AGREE,
    );
}

fn day_of(scenario: &Value, with: Value) -> Value {
    answer(
        "finish-time",
        &json!({ "scenario": scenario, "with": with }),
    )["day"]
        .clone()
}

fn numbers(of: &Value) -> Vec<f64> {
    let list = of.as_array().expect("a list").iter();
    list.map(|number| number.as_f64().expect("a number"))
        .collect()
}

#[test]
fn another_start_is_the_ride_of_a_day_that_starts_then() {
    let road = road(40_000.0, true);
    let starting = |start_at_s| {
        let day = conditions(3.0, 60.0, 12.0, later(6.0, 120.0, 22.0, start_at_s));
        scenario(&road, &day)
    };
    let planned = starting(28_800.0);
    let time_at = |start_at_s| {
        let ridden = answer("finish-time", &json!({ "scenario": starting(start_at_s) }));
        value(&ridden["time_s"]).expect("a time")
    };
    for start_at_s in [25_200.0, 32_000.0, 36_000.0] {
        let day = day_of(&planned, json!({ "other_start_at_s": start_at_s }));
        let other = &day["other_start"];
        assert_eq!(other["start_at_s"], start_at_s);
        is_close(
            value(&other["time_s"]).expect("a time"),
            time_at(start_at_s),
            SAME,
        );
        let slower_s = value(&other["slower_s"]).expect("a difference");
        let want_s = time_at(start_at_s) - time_at(28_800.0);
        assert!((slower_s - want_s).abs() < 1e-4, "{slower_s} for {want_s}");
    }
    let day = day_of(&planned, json!({}));
    assert_eq!(day["other_start"]["start_at_s"], 36_000.0);
    let (starts_s, times_s) = (
        numbers(&day["columns"]["start_at_s"]),
        numbers(&day["columns"]["start_time_s"]),
    );
    assert_eq!(starts_s.len(), 13);
    for (start_at_s, time_s) in starts_s.into_iter().zip(times_s) {
        is_close(time_s, time_at(start_at_s), SAME);
    }
}

#[test]
fn the_same_start_is_no_slower_and_nothing_is_uncertain_about_it() {
    let day = conditions(3.0, 60.0, 12.0, later(6.0, 120.0, 22.0, 30_000.0));
    let day = day_of(
        &scenario(&road(20_000.0, true), &day),
        json!({ "other_start_at_s": 30_000 }),
    );
    let slower = &day["other_start"]["slower_s"];
    assert_eq!(value(slower), Some(0.0));
    // The quick rides start from the speeds of the last one, which repeats to this.
    const REPEATS_S: f64 = 1e-3;
    assert!(slower["sd"].as_f64().expect("a spread") < REPEATS_S);
}

#[test]
fn the_head_wind_along_the_road_is_that_of_its_stretches_and_of_the_time() {
    // Straight into the wind and back before it, and it freshens from 2 to 6 m/s.
    let day = conditions(2.0, 90.0, 15.0, later(6.0, 90.0, 15.0, 25_200.0));
    let told = answer(
        "finish-time",
        &json!({ "scenario": scenario(&road(40_000.0, true), &day) }),
    );
    let winds_m_s = numbers(&told["day"]["columns"]["along_head_wind_m_s"]);
    let finish_s = value(&told["time_s"]).expect("a time");
    assert_eq!(winds_m_s.len(), numbers(&told["columns"]["along_m"]).len());
    is_close(winds_m_s[0], 2.0, SAME);
    let at_finish = 2.0 + 4.0 * finish_s / 10_800.0;
    is_close(winds_m_s[winds_m_s.len() - 1], -at_finish, SAME);
    assert_eq!(numbers(&told["day"]["heading_shares"])[4], 0.5);
    assert_eq!(numbers(&told["day"]["heading_shares"])[12], 0.5);
}

#[test]
fn what_each_error_of_the_forecast_costs_adds_up_to_what_all_of_them_do() {
    // Each moves the time nearly by itself, so that squares add up.
    const TOGETHER: f64 = 1e-3;
    let mut day = conditions(4.0, 60.0, 15.0, Value::Null);
    day["wind_is"] = json!("forecast");
    day["temperature_c"] = json!({ "value": 15, "sd": 3 });
    let exact = |value: f64| json!({ "value": value, "sd": 0 });
    let scenario = json!({
        "course": road(30_000.0, false), "conditions": day, "start": "rolling",
        "rider": { "total_mass_kg": exact(80.0) },
        "bike": {
            "rolling_coefficient": exact(0.004), "drivetrain_efficiency": exact(0.975),
            "rotating_mass_kg": exact(1.5), "bearing_drag_n": exact(0.09), "bearing_drag_n_s_per_m": exact(0.009),
            "launch_force_n": exact(250.0), "lateral_m_s2": exact(4.0), "braking_m_s2": exact(3.0),
        },
        "positions": [{ "cda_m2": exact(0.27) }],
    });
    let asked =
        json!({ "scenario": scenario, "with": { "effort": { "kind": "power", "power_w": 250 } } });
    let told = answer("finish-time", &asked);
    let errors = told["day"]["forecast_errors"].as_array().expect("errors");
    let fields: Vec<&str> = errors
        .iter()
        .filter_map(|error| error["field"].as_str())
        .collect();
    for field in ["wind_speed_m_s", "wind_from_deg", "temperature_c"] {
        let path = format!("scenario.conditions.{field}");
        assert!(fields.contains(&path.as_str()), "{fields:?}");
    }
    let costs_s = errors
        .iter()
        .map(|error| error["costs_s"].as_f64().expect("a cost"));
    let together_s = costs_s.map(|cost_s| cost_s * cost_s).sum::<f64>().sqrt();
    is_close(
        together_s,
        told["input_sd_s"].as_f64().expect("a spread"),
        TOGETHER,
    );
}

#[test]
fn a_start_has_another_only_where_the_weather_changes() {
    let day = conditions(3.0, 60.0, 12.0, Value::Null);
    let error = refused_json(
        "finish-time",
        &json!({ "scenario": scenario(&road(20_000.0, true), &day), "with": { "other_start_at_s": 30_000 } }),
    );
    assert_eq!(error["field"], "scenario.conditions.later");
    let calm = scenario(
        &road(20_000.0, true),
        &conditions(0.0, 0.0, 15.0, Value::Null),
    );
    assert!(day_of(&calm, json!({})).is_null());
}

/// The road is cut into pieces where the weather changes; a turn costs what it does anywhere.
#[test]
fn a_turn_that_is_not_counted_costs_as_much_in_weather_that_changes() {
    let turn_s = |later: Value| -> f64 {
        let day = conditions(2.0, 0.0, 15.0, later);
        let told = ridden(&scenario(&road(30_000.0, true), &day));
        let warnings = told["warnings"].as_array().expect("warnings");
        let turn = warnings
            .iter()
            .find(|warning| warning["text"] == "turn_not_counted")
            .expect("a turn");
        turn["values"]["seconds"].as_f64().expect("seconds")
    };
    let steady_s = turn_s(Value::Null);
    assert!(steady_s > 1.0, "{steady_s}");
    assert_eq!(turn_s(later(2.0, 0.0, 15.0, 25_200.0)), steady_s);
}
