//! The core against SciPy and CoolProp: the rows that `tests/oracle` computed independently of this code.

use fasterby_core::air::{Moisture, RoadWind, density_kg_m3};
use fasterby_core::distributions::{Certainty, noncentral_t_share, pairs, runs_per_group};
use fasterby_core::leg::{Ankle, Extremes, Leg, Linkage, Seat};
use fasterby_core::resistance::{DragShape, Machine, Stretch, slope};
use fasterby_tests::{Row, Table, answer, value};
use serde_json::Value;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Steady speeds agree with SciPy's root to this share: both end at rounding, on a curve of conditioning below a hundred.
const STEADY_SPEED: f64 = 1e-9;
/// The accuracy promised for density against the formula's own digits.
const DENSITY: f64 = 1e-9;
/// CIPM-2007 and the real-gas mixture of CoolProp differ by no more than this from 0 to 40 °C; below 0 °C CoolProp's
/// humidity is over ice.
const DENSITY_OF_REAL_GAS: f64 = 1e-4;

/// The accuracy promised for a share of the noncentral t distribution, and so of a power; SciPy's own is some 1e-13.
const T_SHARE: f64 = 1e-10;
/// Both arithmetics lose a few digits where the knee is nearly straight; the third rate loses the most.
const LEG: f64 = 1e-9;
/// An extreme lies where the next rate vanishes, and that is known to rounding.
const LEG_PLACE_DEG: f64 = 1e-7;

fn yaw_table(text: &str) -> Vec<(f64, f64)> {
    text.split(';')
        .filter(|row| !row.is_empty())
        .map(|row| row.split_once(':').expect("yaw:ratio"))
        .map(|(yaw, ratio)| (yaw.parse().expect("a yaw"), ratio.parse().expect("a ratio")))
        .collect()
}

fn machine(row: &Row<'_>) -> Machine {
    Machine {
        total_mass_kg: row.number("total_mass_kg"),
        rotating_mass_kg: 0.0,
        rolling_coefficient: row.number("rolling_coefficient"),
        drivetrain_efficiency: row.number("drivetrain_efficiency"),
        bearing_drag_n: row.number("bearing_drag_n"),
        bearing_drag_n_s_per_m: row.number("bearing_drag_n_s_per_m"),
        launch_force_n: 250.0,
        lateral_m_s2: 4.0,
        braking_m_s2: 3.0,
        gravity_m_s2: 9.80665,
    }
}

#[test]
fn a_thousand_steady_speeds_agree_with_scipy() {
    for row in Table::new(include_str!("../oracle/data/steady.csv")).rows() {
        let machine = machine(&row);
        let shape = DragShape {
            yaw_table: yaw_table(row.text("yaw_table")),
            speed_exponent: row.number("speed_exponent"),
            reference_airspeed_m_s: row.number("reference_airspeed_m_s"),
        };
        let wind = RoadWind {
            head_m_s: row.number("headwind_m_s"),
            cross_m_s: row.number("crosswind_m_s"),
        };
        let stretch = Stretch::new(
            &machine,
            &shape,
            row.number("density_kg_m3"),
            wind,
            slope(row.number("grade")),
        );
        let cda_m2 = row.number("cda_m2");
        let speed = stretch.speed_m_s(
            row.number("power_w") * machine.drivetrain_efficiency,
            cda_m2,
        );
        let want = row.number("speed_m_s");
        assert!(
            (speed / want - 1.0).abs() <= STEADY_SPEED,
            "{}: {speed} for {want}",
            row.text("case")
        );
        let power = 12.0 * stretch.total_n(12.0, cda_m2) / machine.drivetrain_efficiency;
        let want = row.number("power_at_12_w");
        assert!(
            (power - want).abs() <= STEADY_SPEED * want.abs().max(1.0),
            "{}: {power} for {want}",
            row.text("case")
        );
    }
}

#[test]
fn densities_agree_with_the_formula_and_with_coolprop() {
    for row in Table::new(include_str!("../oracle/data/density.csv")).rows() {
        let temperature_c = row.number("temperature_c");
        let humidity = Moisture::RelativeHumidity(row.number("relative_humidity"));
        let density = density_kg_m3(temperature_c, row.number("pressure_pa"), humidity);
        let own = density / row.number("density_kg_m3") - 1.0;
        assert!(own.abs() <= DENSITY, "{}: {own:e}", row.text("case"));
        if temperature_c >= 0.0 {
            let real = density / row.number("coolprop_density_kg_m3") - 1.0;
            assert!(
                real.abs() <= DENSITY_OF_REAL_GAS,
                "{}: {real:e}",
                row.text("case")
            );
        }
    }
}

/// Compares what a case expects with the answer, number by number, each by the case's own absolute tolerance.
fn compare(
    case: &str,
    path: &str,
    expected: &Value,
    tolerance: &Value,
    got: &Value,
    wrong: &mut Vec<String>,
) {
    if let Value::Object(fields) = expected {
        for (name, inner) in fields {
            compare(
                case,
                &format!("{path}.{name}"),
                inner,
                &tolerance[name],
                &got[name],
                wrong,
            );
        }
        return;
    }
    if let Value::Array(items) = expected {
        assert_eq!(
            got.as_array().map(Vec::len),
            Some(items.len()),
            "{case}: {path} is {got}"
        );
        for (i, inner) in items.iter().enumerate() {
            compare(
                case,
                &format!("{path}[{i}]"),
                inner,
                &tolerance[i],
                &got[i],
                wrong,
            );
        }
        return;
    }
    match (value(expected), value(got)) {
        (None, None) if expected == got => {}
        (Some(want), Some(got)) => {
            let allowed = tolerance.as_f64().expect("a tolerance beside every number");
            if (got - want).abs() > allowed {
                wrong.push(format!(
                    "{case}: {path} is {got}, expected {want} ± {allowed}"
                ));
            }
        }
        _ => wrong.push(format!("{case}: {path} is {got}, expected {expected}")),
    }
}

fn agree(data: &str) {
    let data: Value = serde_json::from_str(data).expect("the oracle writes JSON");
    let cases = data["cases"].as_array().expect("a list of cases");
    assert!(!cases.is_empty());
    let mut wrong = Vec::new();
    for case in cases {
        let name = case["name"].as_str().expect("a name");
        let got = answer(
            case["question"].as_str().expect("a question"),
            &case["request"],
        );
        compare(
            name,
            "",
            &case["expected"],
            &case["tolerance"],
            &got,
            &mut wrong,
        );
    }
    assert!(
        wrong.is_empty(),
        "{} of {} cases:\n{}",
        wrong.len(),
        cases.len(),
        wrong.join("\n")
    );
}

#[test]
fn fastest_plans_agree_with_direct_collocation() {
    agree(include_str!("../oracle/data/pacing.json"));
}

#[test]
fn rides_agree_with_an_eighth_order_integration() {
    agree(include_str!("../oracle/data/rides.json"));
}

#[test]
fn even_efforts_and_break_evens_agree_with_a_brute_force_search() {
    agree(include_str!("../oracle/data/even.json"));
}

/// The oracle's times are good to 1e-5 of themselves, and distance grows with time by no more than its own share.
const DISTANCE_SHARE: f64 = 2e-5;

#[test]
fn rides_asked_for_by_the_time_that_the_search_found_go_as_far() {
    let data: Value = serde_json::from_str(include_str!("../oracle/data/even.json"))
        .expect("the oracle writes JSON");
    let cases = data["cases"].as_array().expect("a list of cases");
    let mut asked = 0;
    for case in cases
        .iter()
        .filter(|case| case["question"] == "power-or-drag")
    {
        let mut request = case["request"].clone();
        let course = &mut request["scenario"]["course"];
        let Some(distance_m) = value(&course["distance_m"]) else {
            continue;
        };
        course["distance_m"] = Value::Null;
        course["duration_s"] = case["expected"]["base_time_s"].clone();
        let got = answer("power-or-drag", &request);
        let reached_m = value(&got["distance_m"]).expect("a distance");
        assert!(
            (reached_m / distance_m - 1.0).abs() <= DISTANCE_SHARE,
            "{}: {reached_m} m, not {distance_m} m",
            case["name"]
        );
        asked += 1;
    }
    assert!(asked > 5, "only {asked} rides have a distance");
}

#[test]
fn fitted_power_curves_agree_with_scipy() {
    agree(include_str!("../oracle/data/power_curve.json"));
}

#[test]
fn drag_areas_from_runs_agree_with_scipy() {
    agree(include_str!("../oracle/data/drag.json"));
}

#[test]
fn savings_of_changes_together_and_the_best_set_agree_with_a_brute_force_search() {
    agree(include_str!("../oracle/data/gains.json"));
}

#[test]
fn legs_agree_with_thirty_digit_arithmetic() {
    for row in Table::new(include_str!("../oracle/data/linkage.csv")).rows() {
        let case = row.text("case");
        let radians = |name: &str| row.number(name).to_radians();
        let ankle = match row.optional("ankle_deg") {
            Some(degrees) => Ankle::Frozen {
                angle_rad: degrees.to_radians(),
            },
            None => Ankle::Moving {
                pitch_rad: radians("foot_pitch_deg"),
                swing_rad: radians("foot_swing_deg"),
            },
        };
        let [thigh_m, shank_m, foot_m, crank_m, hip_m] =
            ["thigh_m", "shank_m", "foot_m", "crank_m", "hip_m"].map(|name| row.number(name));
        let leg = Leg {
            thigh_m,
            shank_m,
            foot_m,
            ankle,
        };
        let linkage = Linkage::new(
            leg,
            Seat {
                crank_m,
                hip_m,
                angle_rad: radians("seat_angle_deg"),
            },
        );
        let compare = |name: &str, got: f64| {
            let want = row.number(name);
            assert!(
                (got - want).abs() <= LEG * want.abs().max(1.0),
                "{case}: {name} is {got}, expected {want}"
            );
        };

        let at = linkage.at(radians("crank_deg"));
        compare("thigh_deg", at.thigh_rad.to_degrees());
        compare("knee_deg", at.knee_rad.to_degrees());
        for (name, rate) in ["thigh_rate", "thigh_second_rate", "thigh_third_rate"]
            .into_iter()
            .zip(at.thigh_rates)
        {
            compare(name, rate);
        }

        let turn = linkage
            .turn()
            .unwrap_or_else(|missing| panic!("{case}: {missing:?}"));
        let compare_extremes = |name: &str, Extremes { least, greatest }: Extremes| {
            for (which, (place, value)) in [("least", least), ("greatest", greatest)] {
                compare(
                    &format!("{which}_{name}"),
                    if name.ends_with("_deg") {
                        value.to_degrees()
                    } else {
                        value
                    },
                );
                let want = row.number(&format!("{which}_{name}_at_deg"));
                let apart = (place.to_degrees() - want + 180.0).rem_euclid(360.0) - 180.0;
                assert!(
                    apart.abs() <= LEG_PLACE_DEG,
                    "{case}: {which} {name} lies {apart}° from {want}°"
                );
            }
        };
        compare_extremes("thigh_deg", turn.thigh_angle());
        compare_extremes("knee_deg", turn.knee_angle());
        compare_extremes("thigh_rate", turn.thigh_rate());
        compare_extremes("thigh_second_rate", turn.thigh_second_rate());
    }
}

/// A spread over 60,000 draws is known to 0.3 %; what slack is not normal in, and outputs not linear across it, make up the rest.
const SPREAD_GIVEN_REACH: f64 = 0.015;
/// Less than this nobody reads off: between set-ups of almost the same reach it is a few draws at a nearly straight knee.
const SMALL_SPREAD: [(&str, f64); 2] = [("_deg", 0.02), ("_deg_s", 0.6)];
/// Slack is taken as normal.
const REACH_SHARE: f64 = 0.01;

#[test]
fn angles_spread_as_in_the_draws_in_which_the_leg_reaches() {
    let data: Value = serde_json::from_str(include_str!("../oracle/data/leg_reach.json"))
        .expect("the oracle writes JSON");
    for case in data["cases"].as_array().expect("a list of cases") {
        let got = answer("leg-room", &case["request"]);
        for side in ["a", "b", "difference"] {
            for (name, want) in case["expected"][side].as_object().expect("outputs") {
                let want = want.as_f64().expect("a number");
                if name == "reach_share" {
                    let share = got[side][name].as_f64().expect("a share");
                    assert!(
                        (share - want).abs() < REACH_SHARE,
                        "{}: {side} reaches in {share}, {want} drawn",
                        case["name"]
                    );
                    continue;
                }
                let sd = got[side][name]["sd"].as_f64().expect("a spread");
                let small = SMALL_SPREAD
                    .iter()
                    .find(|(end, _)| name.ends_with(end))
                    .map_or(0.0, |&(_, small)| small);
                let allowed = small.max(SPREAD_GIVEN_REACH * want);
                assert!(
                    (sd - want).abs() < allowed,
                    "{}: {side} {name} ± {sd}, ± {want} drawn",
                    case["name"]
                );
            }
        }
    }
}

#[test]
fn shares_of_the_noncentral_t_distribution_agree_with_scipy() {
    for row in Table::new(include_str!("../oracle/data/noncentral_t.csv")).rows() {
        let degrees = row.number("degrees_of_freedom") as u32;
        let got = noncentral_t_share(row.number("t"), degrees, row.number("noncentrality"));
        let want = row.number("share");
        assert!(
            (got - want).abs() <= T_SHARE,
            "{}: {got}, expected {want}",
            row.text("case")
        );
    }
}

#[test]
fn the_runs_that_show_a_difference_agree_with_scipy() {
    for row in Table::new(include_str!("../oracle/data/runs.csv")).rows() {
        let effect = row.number("difference") / row.number("cv");
        for (name, got) in [
            ("runs", runs_per_group(effect, Certainty::USUAL)),
            ("pairs", pairs(effect, Certainty::USUAL)),
        ] {
            let case = row.text("case");
            let got = got.unwrap_or_else(|| panic!("{case}: no number of {name}"));
            assert_eq!(f64::from(got.runs), row.number(name), "{case}: {name}");
            let want = row.number(&format!("{name}_power"));
            assert!(
                (got.power - want).abs() <= T_SHARE,
                "{case}: {name} have {}, expected {want}",
                got.power
            );
        }
    }
}

#[test]
fn what_measuring_is_worth_agrees_with_an_integral_over_the_errors() {
    let data: Value = serde_json::from_str(include_str!("../oracle/data/worth.json"))
        .expect("the oracle writes JSON");
    for case in data["cases"].as_array().expect("a list of cases") {
        let got = answer("which-position", &case["request"]);
        let allowed_s = case["tolerance"]["worth_s"].as_f64().expect("a tolerance");
        let listed = got["drawn"]["worth"].as_array().expect("a list");
        for want in case["expected"]["worth"].as_array().expect("a list") {
            let same = |worth: &&Value| {
                ["what", "fields"]
                    .iter()
                    .all(|name| worth[*name] == want[*name])
            };
            // What is worth nothing is not listed.
            let got_s = listed
                .iter()
                .find(same)
                .map_or(0.0, |worth| worth["worth_s"].as_f64().expect("a number"));
            let want_s = want["worth_s"].as_f64().expect("a number");
            let name = format!("{}: {} {}", case["name"], want["what"], want["fields"]);
            assert!(
                (got_s - want_s).abs() <= allowed_s,
                "{name} is {got_s} s, expected {want_s} ± {allowed_s}"
            );
        }
    }
}

#[test]
fn positions_agree_with_a_brute_force_search() {
    let data: Value = serde_json::from_str(include_str!("../oracle/data/positions.json"))
        .expect("the oracle writes JSON");
    let tolerance = |name: &str| data["tolerance"][name].as_f64().expect("a tolerance");
    let number = |of: &Value| value(of).unwrap_or_else(|| panic!("no number: {of}"));
    for case in data["cases"].as_array().expect("a list of cases") {
        let name = case["name"].as_str().expect("a name");
        let got = answer("which-position", &case["request"]);
        let close = |what: &str, got: &Value, want: &Value, allowed: f64| {
            let (got, want) = (number(got), number(want));
            assert!(
                (got - want).abs() <= allowed,
                "{name}: {what} is {got}, expected {want} ± {allowed:e}"
            );
        };
        let expected = &case["expected"];
        for (event, times) in expected["times_s"]
            .as_array()
            .expect("events")
            .iter()
            .enumerate()
        {
            for (choice, want) in times.as_array().expect("choices").iter().enumerate() {
                let time = &got["events"][event]["times"][choice]["time_s"];
                close("time", time, want, tolerance("time_s") * number(want));
            }
        }
        let crossovers = expected["crossovers"].as_array().expect("crossovers");
        assert_eq!(
            got["crossovers"].as_array().expect("crossovers").len(),
            crossovers.len(),
            "{name}"
        );
        for (got, want) in got["crossovers"]
            .as_array()
            .expect("crossovers")
            .iter()
            .zip(crossovers)
        {
            assert_eq!(
                (&got["choice"], &got["faster_beyond"]),
                (&want["choice"], &want["faster_beyond"]),
                "{name}"
            );
            close(
                "crossover",
                &got["distance_m"],
                &want["distance_m"],
                number(&want["tolerance"]) * number(&want["distance_m"]),
            );
        }
        for want in expected["costs"].as_array().expect("costs") {
            let same = |cost: &&Value| {
                ["choice", "against", "event"]
                    .iter()
                    .all(|name| cost[*name] == want[*name])
            };
            let cost = got["costs"]
                .as_array()
                .expect("costs")
                .iter()
                .find(same)
                .expect("this cost");
            let cp_w = number(&got["choices"][0]["cp_w"]);
            close(
                "what it may cost",
                &cost["allowed_w"],
                &want["allowed_w"],
                tolerance("allowed_w") * cp_w,
            );
        }
    }
}
