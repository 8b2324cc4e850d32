//! What a drag test is doubted by: each case leaves a mark on the answer, and a careful test leaves none.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::answer;
use fasterby_tests::drag_requests::{ONE_POSITION, TWO_POSITIONS, normals, request, scenario};
use fasterby_tests::loop_ride::{DENSITY_KG_M3, LoopRide, Noise, Recorded};
use serde_json::{Value, json};

const MASS_KG: f64 = 85.0;
const GRAVITY: f64 = 9.80665;
const EFFICIENCY: f64 = 0.976;
/// What a linear problem without noise leaves.
const ROUNDING: f64 = 1e-9;

fn near(what: &str, got: f64, want: f64, allowed: f64) {
    assert!(
        (got - want).abs() <= allowed,
        "{what}: {got}, expected {want} ± {allowed}"
    );
}

/// The names of what is doubted.
fn doubts(answer: &Value) -> Vec<String> {
    let warnings = answer["warnings"].as_array().expect("warnings");
    let name = |warning: &Value| warning["text"].as_str().expect("a name").to_owned();
    warnings.iter().map(name).collect()
}

fn is_doubted(answer: &Value, name: &str) -> bool {
    doubts(answer).iter().any(|doubt| doubt == name)
}

/// What is said under a name.
fn values<'a>(answer: &'a Value, name: &str) -> &'a Value {
    let warnings = answer["warnings"].as_array().expect("warnings");
    let found = warnings.iter().find(|warning| warning["text"] == name);
    &found.unwrap_or_else(|| panic!("no {name} in {warnings:?}"))["values"]
}

/// Power at the pedals on a level road, W.
fn power_w(cda_m2: f64, rolling: f64, speed_m_s: f64, through_m_s: f64) -> f64 {
    let air_n = 0.5 * DENSITY_KG_M3 * cda_m2 * through_m_s.abs() * through_m_s;
    (air_n + MASS_KG * GRAVITY * rolling) * speed_m_s / EFFICIENCY
}

fn calm_run(position: usize, cda_m2: f64, rolling: f64, speed_m_s: f64) -> Value {
    let power_w = power_w(cda_m2, rolling, speed_m_s, speed_m_s);
    json!({ "position": position, "speed_m_s": speed_m_s, "power_w": power_w })
}

fn of_runs(runs: Vec<Value>, more: Value) -> Value {
    let mut with = json!({ "runs": runs });
    let fields = with.as_object_mut().expect("an object");
    fields.extend(more.as_object().expect("an object").clone());
    answer(
        "drag-test",
        &json!({ "scenario": scenario(), "with": with }),
    )
}

fn noisy(seed: u64) -> Recorded {
    LoopRide::MAIN
        .ride()
        .noisy(&Noise::MAIN, &mut normals(seed))
}

fn common<'a>(list: &'a Value, field: &str) -> Option<&'a Value> {
    let mut errors = list.as_array().expect("common errors").iter();
    errors.find(|error| error["field"] == field)
}

#[test]
fn a_careful_test_is_doubted_by_nothing() {
    let got = answer("drag-test", &request(&noisy(31), TWO_POSITIONS));
    assert_eq!(doubts(&got), [""; 0]);
}

#[test]
fn a_wind_that_was_fitted_is_no_rise_of_drag() {
    // Four runs into 2 m/s, then four with it, all with one drag area.
    let run = |i: usize| {
        let (bearing, head) = if i < 4 { (0.0, 2.0) } else { (180.0, -2.0) };
        let speed = [9.0, 11.0][i % 2];
        // A tenth of a watt more or less by turns, since a fit without any residual has nothing to say.
        let power_w = power_w(0.25, 0.004, speed, speed + head) + [0.1, -0.1, -0.1, 0.1][i % 4];
        json!({ "speed_m_s": speed, "power_w": power_w, "bearing_deg": bearing })
    };
    let got = of_runs(
        (0..8).map(run).collect(),
        json!({ "wind": "fit", "rolling": "hold" }),
    );
    let rise = got["late_rises"][0]["cda_m2"]["value"]
        .as_f64()
        .expect("a rise");
    // Taken as calm, 2 m/s from ahead and then from behind would look like a fall of more than 0.1 m².
    near("rise", rise, 0.0, 0.001);
    let wind_m_s = got["wind"]["speed_m_s"].as_f64().expect("a wind");
    near("wind", wind_m_s, 2.0, 0.01);
}

#[test]
fn laps_named_in_another_order_rise_as_they_were_ridden() {
    let forward = request(&noisy(32), ONE_POSITION);
    let mut backward = forward.clone();
    backward["with"]["laps"]
        .as_array_mut()
        .expect("laps")
        .reverse();
    let rise = |asked: &Value| {
        answer("drag-test", asked)["late_rises"][0]["cda_m2"]["value"]
            .as_f64()
            .expect("a rise")
    };
    near("rise", rise(&backward), rise(&forward), ROUNDING);
}

#[test]
fn a_rolling_resistance_that_no_tyre_has_is_held_and_an_unusual_one_is_doubted() {
    let with_rolling = |rolling: f64| {
        let speeds = [8.0, 8.1, 12.0, 12.1, 8.05, 12.05];
        let runs = speeds.map(|speed| calm_run(0, 0.27, rolling, speed));
        of_runs(runs.to_vec(), json!({}))
    };
    for impossible in [-0.002, 0.0002, 0.035] {
        let got = with_rolling(impossible);
        assert_eq!(got["identifiable"], false, "{impossible}");
        assert_eq!(got["rolling_coefficient"]["held"], true);
        assert_eq!(got["rolling_coefficient"]["value"], 0.004);
        let said = values(&got, "rolling_impossible");
        near(
            "said",
            said["rolling"]["value"].as_f64().unwrap(),
            impossible,
            1e-6,
        );
        assert!(!is_doubted(&got, "rolling_not_told"));
    }
    let unusual = with_rolling(0.012);
    assert_eq!(unusual["identifiable"], true);
    assert_eq!(values(&unusual, "unusual")["is"]["value"], 0.012);
    let usual = with_rolling(0.0045);
    assert_eq!(usual["identifiable"], true);
    assert!(!is_doubted(&usual, "unusual"));
}

#[test]
fn a_lap_that_does_not_come_back_is_doubted_by_its_heights_and_by_its_bearings() {
    let ride = LoopRide {
        hilly: false,
        ..LoopRide::MAIN
    }
    .ride();
    let mut half = request(&ride, ONE_POSITION);
    let (from, to) = (ride.ends_s[2], ride.ends_s[3]);
    half["with"]["laps"][2]["to_s"] = json!(0.5 * (from + to));
    let got = answer("drag-test", &half);
    // Half a circle leads its diameter over half its circumference, 2/π; half the time is a little more or less than half the way.
    let share = values(&got, "lap_leads_away")["share"]["value"].as_f64();
    near("share", share.unwrap(), std::f64::consts::FRAC_2_PI, 0.05);
    let told = got["warnings"].as_array().unwrap();
    let fields: Vec<&Value> = told
        .iter()
        .filter(|w| w["text"] == "lap_leads_away")
        .map(|w| &w["field"])
        .collect();
    assert_eq!(fields, ["with.laps[2].closed"]);

    let mut climbing = request(&ride, ONE_POSITION);
    let heights: Vec<f64> = ride.distance_m.iter().map(|m| 0.005 * m).collect();
    climbing["with"]["recordings"][0]["columns"]["elevation_m"] = json!(heights);
    let got = answer("drag-test", &climbing);
    // Five in a thousand over 1.6 km.
    near(
        "height",
        values(&got, "lap_ends_elsewhere")["height"]["value"]
            .as_f64()
            .unwrap(),
        8.0,
        0.05,
    );
    half["with"]["laps"][2]["closed"] = json!(false);
    assert!(!is_doubted(&answer("drag-test", &half), "lap_leads_away"));
}

#[test]
fn a_difference_keeps_what_does_not_cancel_between_speeds() {
    // Crr taken 0.0005 too high: −3.430 % of 0.25 m² at 9 m/s, −2.296 % at 11 m/s (the published table's formula m g/F_air).
    let runs = |speeds: [f64; 2]| -> Vec<Value> {
        (0..8)
            .map(|i| calm_run(i % 2, 0.25, 0.004, speeds[i % 2] + 0.001 * (i / 2) as f64))
            .collect()
    };
    let unlike = of_runs(runs([9.0, 11.0]), json!({ "rolling": "hold" }));
    let kept = common(
        &unlike["differences"][0]["common"],
        "scenario.bike.rolling_coefficient",
    )
    .expect("Crr");
    near(
        "kept",
        kept["cda_m2"].as_f64().unwrap(),
        0.25 * (0.034_30 - 0.022_96),
        2e-6,
    );
    assert_eq!(kept["sd"], 0.0005);
    assert!(is_doubted(&unlike, "difference_keeps_errors"));

    let mut powers = normals(33);
    let alike: Vec<Value> = runs([10.0, 10.0])
        .into_iter()
        .map(|mut run| {
            run["power_w"] = json!(run["power_w"].as_f64().unwrap() * (1.0 + 0.005 * powers()));
            run
        })
        .collect();
    let alike = of_runs(alike, json!({ "rolling": "hold" }));
    assert!(!is_doubted(&alike, "difference_keeps_errors"));
    let kept = &alike["differences"][0]["common"];
    let kept = common(kept, "scenario.bike.rolling_coefficient").expect("Crr");
    near("cancelled", kept["cda_m2"].as_f64().unwrap(), 0.0, 2e-6);
}

/// The scenario's wind, met at the height at which it was measured.
fn windy(wind: Value) -> Value {
    let mut scenario = scenario();
    let day = scenario["conditions"].as_object_mut().expect("conditions");
    day.extend(wind.as_object().expect("a wind").clone());
    day.insert("wind_height_m".into(), json!(1.2));
    day.insert("rider_height_m".into(), json!(1.2));
    scenario
}

#[test]
fn a_run_with_a_bearing_meets_the_scenarios_wind_unless_it_has_its_own() {
    let run = |bearing: f64, head: f64, across: f64| {
        let through = 10.0 + head;
        let air_n = 0.5 * DENSITY_KG_M3 * 0.25 * through.hypot(across) * through;
        let power_w = (air_n + MASS_KG * GRAVITY * 0.004) * 10.0 / EFFICIENCY;
        json!({ "speed_m_s": 10.0, "power_w": power_w, "bearing_deg": bearing })
    };
    let mut own = run(0.0, 0.5, 0.0);
    own["wind_head_m_s"] = json!(0.5);
    let runs = [
        run(0.0, 2.0, 0.0),
        run(180.0, -2.0, 0.0),
        run(90.0, 0.0, 2.0),
        own,
    ];
    let scenario = windy(json!({ "wind_speed_m_s": 2.0, "wind_from_deg": 0.0 }));
    let got = answer(
        "drag-test",
        &json!({ "scenario": scenario, "with": { "runs": runs, "rolling": "hold" } }),
    );
    let cda = got["positions"][0]["cda_m2"]["value"].as_f64().unwrap();
    near("CdA", cda, 0.25, ROUNDING);
    for row in got["laps"].as_array().expect("rows") {
        near("residual", row["residual_w"].as_f64().unwrap(), 0.0, 1e-6);
    }
    // A run of which nobody knows the wind is told of.
    assert!(!is_doubted(&got, "run_wind_needs_bearing"));
    let bare = answer(
        "drag-test",
        &json!({ "scenario": scenario, "with": { "runs": [calm_run(0, 0.25, 0.004, 10.0)], "rolling": "hold" } }),
    );
    assert!(is_doubted(&bare, "run_wind_needs_bearing"));
}

#[test]
fn every_wind_that_is_not_measured_is_a_common_error() {
    const SPEED: &str = "scenario.conditions.wind_speed_m_s";
    const FROM: &str = "scenario.conditions.wind_from_deg";
    let ride = LoopRide::MAIN.ride();
    let with = |wind: Value, change: &dyn Fn(&mut Value)| {
        let mut asked = request(&ride, ONE_POSITION);
        asked["scenario"] = windy(wind);
        asked["with"]["rolling"] = json!("hold");
        change(&mut asked);
        answer("drag-test", &asked)
    };
    let nothing = |_: &mut Value| ();
    // A calm that nobody measured is 1 m/s from the worst side. From 0.3 radians off the start it is known to move this loop's drag
    // area by −2.2 to +2.6 %, Crr held; the worst side does no less.
    let calm = with(json!({ "wind_speed_m_s": 0.0 }), &nothing);
    let error = common(&calm["common"], SPEED).expect("a wind");
    let share = error["cda_share"].as_f64().unwrap().abs();
    assert!((0.022..0.035).contains(&share), "calm: {share}");
    assert_eq!(error["sd"], 1.0);
    assert!(is_doubted(&calm, "calm_not_measured"));
    let measured = json!({ "wind_speed_m_s": { "value": 0.0, "sd": 0.2 }, "wind_is": "roadside" });
    let measured = with(measured, &nothing);
    let error = common(&measured["common"], SPEED).expect("a wind");
    near("measured", error["sd"].as_f64().unwrap(), 0.2, ROUNDING);
    assert!(!is_doubted(&measured, "calm_not_measured"));
    // A forecast without a ± is uncertain by 30 % and 20°.
    let forecast = json!({ "wind_speed_m_s": 2.0, "wind_from_deg": 30.0 });
    let blown = with(forecast.clone(), &nothing);
    let sd = |field: &str| common(&blown["common"], field).expect("a wind")["sd"].as_f64();
    near("speed", sd(SPEED).unwrap(), 0.6, ROUNDING);
    near("from", sd(FROM).unwrap(), 20.0, ROUNDING);
    // One lap with its own wind leaves the others in the scenario's.
    let one_own = with(forecast, &|asked| {
        asked["with"]["laps"][0]["wind_speed_m_s"] = json!(2.1);
        asked["with"]["laps"][0]["wind_from_deg"] = json!(30.0);
    });
    let share = |answer: &Value, field: &str| {
        common(&answer["common"], field).expect("a wind")["cda_share"]
            .as_f64()
            .unwrap()
    };
    let kept = share(&one_own, SPEED) / share(&blown, SPEED);
    // Seven laps of eight.
    near("kept", kept, 7.0 / 8.0, 0.06);
    assert!(share(&one_own, "with.laps.wind_speed_m_s").abs() > 0.0);
}

#[test]
fn typed_runs_share_an_error_of_wind_and_of_grade() {
    let got = of_runs(
        vec![calm_run(0, 0.25, 0.004, 11.0)],
        json!({ "rolling": "hold" }),
    );
    let share = |field: &str| {
        let error = common(&got["common"], field).expect("an error");
        error["cda_share"].as_f64().expect("a share")
    };
    // The published table at 11 m/s: half a metre per second from ahead that was missed is +9.30 %; here it was taken too high, so
    // that CdA comes out lower, by 1 − (11/11.5)², or, the other way, higher by (11/10.5)² − 1.
    near(
        "wind",
        share("with.runs.wind_head_m_s"),
        1.0 - (11.0_f64 / 10.5).powi(2),
        1e-6,
    );
    near("grade", share("with.runs.grade"), -0.045_93, 1e-5);
    // Out and back on one road, an error of the wind or of the grade is of either sign.
    let both_ways: Vec<Value> = [1.0, -1.0]
        .into_iter()
        .map(|way| {
            let mut run = json!({ "speed_m_s": 11.0, "power_w": 0.0, "wind_head_m_s": way * 0.3, "grade": way * 0.002 });
            let climb_w = MASS_KG * GRAVITY * way * 0.002 * 11.0 / EFFICIENCY;
            run["power_w"] = json!(power_w(0.25, 0.004, 11.0, 11.0 + way * 0.3) + climb_w);
            run
        })
        .collect();
    let got = of_runs(both_ways, json!({ "rolling": "hold" }));
    for field in ["with.runs.wind_head_m_s", "with.runs.grade"] {
        let error = common(&got["common"], field).expect("an error");
        let share = error["cda_share"].as_f64().expect("a share");
        // What is left is of second order, and what unlike weights of both ways leave.
        near(field, share, 0.0, 0.02);
    }
}

/// Runs at one speed whose drag areas scatter by their own share in each position.
fn scattering(shares: [f64; 2], counts: [usize; 2], seed: u64) -> Value {
    let mut normal = normals(seed);
    let mut runs = Vec::new();
    for i in 0..counts[0].max(counts[1]) {
        for position in if i % 2 == 0 { [0, 1] } else { [1, 0] } {
            if i < counts[position] {
                let mut run = calm_run(position, 0.25, 0.004, 11.0);
                let power = run["power_w"].as_f64().unwrap();
                run["power_w"] = json!(power * (1.0 + shares[position] * normal()));
                runs.push(run);
            }
        }
    }
    of_runs(runs, json!({ "rolling": "hold" }))
}

#[test]
fn positions_that_scatter_unlike_have_intervals_of_their_own() {
    let unlike = scattering([0.002, 0.03], [8, 8], 34);
    assert!(is_doubted(&unlike, "positions_scatter_unlike"));
    let sd = |answer: &Value, i: usize| {
        answer["positions"][i]["cda_m2"]["sd"]
            .as_f64()
            .expect("a sd")
    };
    let ratio = sd(&unlike, 1) / sd(&unlike, 0);
    assert!((6.0..30.0).contains(&ratio), "{ratio}");
    // Welch's test: the reach of the range is that of about seven degrees of freedom, not of fourteen.
    let difference = &unlike["differences"][0]["cda_m2"];
    let reach = (difference["high_95"].as_f64().unwrap() - difference["value"].as_f64().unwrap())
        / difference["sd"].as_f64().unwrap();
    // scipy.stats.t.ppf(0.975, 7) is 2.3646, and of 7.2 degrees 2.3515.
    assert!((2.34..2.37).contains(&reach), "{reach}");
    let alike = scattering([0.01, 0.01], [8, 8], 35);
    assert!(!is_doubted(&alike, "positions_scatter_unlike"));
    near("pooled", sd(&alike, 1) / sd(&alike, 0), 1.0, 0.01);
}

#[test]
fn positions_ridden_in_blocks_are_doubted() {
    let in_order = |order: &[usize]| {
        let mut normal = normals(36);
        let runs = order
            .iter()
            .map(|&position| {
                let mut run = calm_run(position, 0.25, 0.004, 11.0);
                run["power_w"] = json!(run["power_w"].as_f64().unwrap() * (1.0 + 0.01 * normal()));
                run
            })
            .collect();
        is_doubted(
            &of_runs(runs, json!({ "rolling": "hold" })),
            "positions_in_blocks",
        )
    };
    assert!(in_order(&[0, 0, 1, 1]));
    assert!(in_order(&[0, 0, 0, 0, 1, 1, 1, 1]));
    assert!(in_order(&[1, 1, 1, 0, 0, 0]));
    assert!(!in_order(&[0, 1, 1, 0]));
    assert!(!in_order(&[0, 1, 0, 1]));
    assert!(!in_order(&[0, 0, 1, 1, 1, 1, 0, 0]));
    // The order is that of the ride, whatever that of the request.
    let mut blocks = request(&noisy(37), [0, 0, 0, 0, 1, 1, 1, 1]);
    assert!(is_doubted(
        &answer("drag-test", &blocks),
        "positions_in_blocks"
    ));
    let laps = blocks["with"]["laps"].as_array_mut().expect("laps");
    laps.swap(0, 6);
    laps.swap(1, 7);
    assert!(is_doubted(
        &answer("drag-test", &blocks),
        "positions_in_blocks"
    ));
}

#[test]
fn recorded_heights_that_contradict_the_altitude_are_told_where_density_follows_from_it() {
    let ride = LoopRide::MAIN.ride();
    let at = |height_m: f64, pressure: Value| {
        let mut asked = request(&ride, ONE_POSITION);
        let heights: Vec<f64> = ride.elevation_m.iter().map(|h| h + height_m).collect();
        asked["with"]["recordings"][0]["columns"]["elevation_m"] = json!(heights);
        asked["scenario"]["conditions"]["pressure_hpa"] = json!(1013.25);
        asked["scenario"]["conditions"]["pressure_is"] = pressure;
        answer("drag-test", &asked)
    };
    let high = at(400.0, json!("sea_level"));
    let share = values(&high, "recorded_altitude_differs")["share"]["value"].as_f64();
    // The standard atmosphere at 400 m has 0.9541 of the pressure at sea level (ISO 2533: 966.1 hPa), at one temperature.
    near("share", share.unwrap(), 0.046, 0.002);
    assert!(!is_doubted(
        &at(40.0, json!("sea_level")),
        "recorded_altitude_differs"
    ));
    assert!(!is_doubted(
        &at(400.0, json!("course")),
        "recorded_altitude_differs"
    ));
}

#[test]
fn a_meter_that_says_nothing_at_a_speed_that_is_kept_is_a_dropout_and_coasting_is_none() {
    let flat = LoopRide {
        hilly: false,
        ..LoopRide::MAIN
    };
    for ride in [flat.ride(), LoopRide::MAIN.ride()] {
        let at = ride.time_s.partition_point(|&t| t < ride.ends_s[1]) + 40;
        let mut silent = request(&ride, ONE_POSITION);
        (0..8).for_each(|i| {
            silent["with"]["recordings"][0]["columns"]["power_w"][at + i] = json!(0.0)
        });
        let got = answer("drag-test", &silent);
        assert_eq!(got["laps"][1]["left_out"], "dropout");
        // Said in tenths of a second.
        assert_eq!(values(&got, "lap_dropout")["time"]["value"], 7.0);
        assert_eq!(got["laps"][2]["left_out"], Value::Null);
    }
    // Without pedalling the rider of this ride loses 0.25 m/s² at 11 m/s.
    let mut coasting = flat.ride();
    let at = coasting.time_s.partition_point(|&t| t < coasting.ends_s[1]) + 40;
    for i in 0..8 {
        coasting.power_w[at + i] = 0.0;
        coasting.speed_m_s[at + i] -= 0.25 * i as f64;
    }
    for k in 8..60 {
        coasting.speed_m_s[at + k] -= 0.25 * 7.0 * (60 - k) as f64 / 52.0;
    }
    let got = answer("drag-test", &request(&coasting, ONE_POSITION));
    assert_eq!(got["laps"][1]["left_out"], Value::Null);
}

#[test]
fn a_gap_is_as_long_as_the_digits_of_its_times_say() {
    let ride = LoopRide::MAIN.ride();
    let mut asked = request(&ride, ONE_POSITION);
    let at = ride.time_s.partition_point(|&t| t < ride.ends_s[0]) + 40;
    let columns = &mut asked["with"]["recordings"][0]["columns"];
    // Four samples are not there, so that the next comes after five seconds; its time is written a little late.
    for column in [
        "time_s",
        "speed_m_s",
        "power_w",
        "elevation_m",
        "distance_m",
        "bearing_deg",
    ] {
        let samples = columns[column].as_array_mut().expect("samples");
        samples.drain(at + 1..at + 5);
    }
    columns["time_s"][at + 1] = json!(ride.time_s[at + 5] + 0.000_4);
    assert_eq!(
        answer("drag-test", &asked)["laps"][0]["left_out"],
        Value::Null
    );
    asked["with"]["recordings"][0]["columns"]["time_s"][at + 1] = json!(ride.time_s[at + 5] + 0.1);
    assert_eq!(
        answer("drag-test", &asked)["laps"][0]["left_out"],
        "dropout"
    );
}

#[test]
fn a_film_of_nothing_ridden_and_a_recording_given_twice_are_told() {
    let mut asked = request(&noisy(38), ONE_POSITION);
    asked["with"]["film"] = json!([{ "position": 3, "head_up_share": [0.0, 0.1, 0.2] }]);
    let again = asked["with"]["recordings"][0].clone();
    asked["with"]["recordings"]
        .as_array_mut()
        .unwrap()
        .push(again);
    let got = answer("drag-test", &asked);
    assert_eq!(values(&got, "film_without_laps")["position"], 4);
    assert_eq!(
        *values(&got, "recording_twice"),
        json!({ "recording": 2, "first": 1 })
    );
    let speed = asked["with"]["recordings"][1]["columns"]["speed_m_s"][5].as_f64();
    asked["with"]["recordings"][1]["columns"]["speed_m_s"][5] = json!(speed.unwrap() + 0.01);
    assert!(!is_doubted(&answer("drag-test", &asked), "recording_twice"));
}

#[test]
fn doubts_are_told_in_no_more_digits_than_they_have_use_for() {
    let ride = noisy(39);
    let mut asked = request(&ride, ONE_POSITION);
    let (from, to) = (ride.ends_s[3], ride.ends_s[4]);
    for (i, time_s) in ride.time_s.iter().enumerate() {
        if (from..to).contains(time_s) {
            asked["with"]["recordings"][0]["columns"]["power_w"][i] = json!(ride.power_w[i] * 1.08);
        }
    }
    let got = answer("drag-test", &asked);
    let watts = values(&got, "outlying_lap")["watts"]["value"]
        .as_f64()
        .unwrap();
    near("tenths", 10.0 * watts, (10.0 * watts).round(), 1e-9);
}
