//! Sitting up on steep climbs, in plans of effort: what must not change, what must rise and fall, and how sure the gain is.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::{answer, value};
use serde_json::{Value, json};

/// W′ balance keeps its bounds to a joule.
const BOUND_J: f64 = 1.0;
/// What the solver may lose of a finish time of an hour, s: 1e-6 of it.
const SOLVED_S: f64 = 0.004;

fn number(of: &Value) -> f64 {
    value(of).expect("a number")
}

/// Stretches of so many metres at these grades.
fn road(stretches: &[(f64, f64)]) -> Value {
    let mut at = (0.0, 200.0);
    let mut points = vec![at];
    for (length_m, grade) in stretches {
        at = (at.0 + length_m, at.1 + length_m * grade);
        points.push(at);
    }
    let points: Vec<Value> = points
        .iter()
        .map(|(distance_m, elevation_m)| json!({ "distance_m": distance_m, "elevation_m": elevation_m, "bearing_deg": 0 }))
        .collect();
    json!({ "kind": "profile", "points": points })
}

/// Two climbs, of 7 and of 9 %.
fn two_climbs() -> Value {
    road(&[
        (4000.0, 0.0),
        (2500.0, 0.07),
        (2500.0, -0.06),
        (1000.0, 0.01),
        (1500.0, 0.09),
        (1500.0, -0.08),
        (5000.0, 0.0),
    ])
}

fn rider(course: Value, cda_m2: f64) -> Value {
    json!({
        "positions": [{ "name": "low", "cda_m2": cda_m2 }],
        "power": { "cp_w": 290, "w_prime_j": 17000 },
        "conditions": { "wind_speed_m_s": 0 },
        "course": course,
    })
}

fn plan(scenario: &Value, with: Value) -> Value {
    answer("ride-plan", &json!({ "scenario": scenario, "with": with }))
}

fn sitting_up(scenario: &Value, cda_m2: f64, cp_gain_share: f64) -> Value {
    let sit_up = json!({ "from_grade": 0.06, "cda_m2": cda_m2, "cp_gain_share": cp_gain_share });
    plan(scenario, json!({ "sit_up": sit_up }))
}

fn fastest_s(got: &Value) -> f64 {
    number(&got["fastest"]["time_s"])
}

#[test]
fn sitting_up_without_gain_or_loss_changes_nothing() {
    let rider = rider(two_climbs(), 0.24);
    let low = plan(&rider, json!({}));
    // No drag area upright is less than in the position itself.
    for cda_m2 in [0.24, 0.15] {
        let same = sitting_up(&rider, cda_m2, 0.0);
        assert_eq!(same["fastest"], low["fastest"], "{cda_m2}");
        assert_eq!(same["simple"], low["simple"], "{cda_m2}");
        assert_eq!(number(&same["sit_up"]["faster_by_s"]["value"]), 0.0);
    }
}

#[test]
fn a_road_without_a_steep_climb_is_ridden_low() {
    let rider = rider(
        road(&[(5000.0, 0.0), (2000.0, 0.05), (5000.0, -0.01)]),
        0.24,
    );
    let up = sitting_up(&rider, 0.33, 0.05);
    assert_eq!(up["sit_up"]["climbs"], json!([]));
    assert_eq!(up["fastest"], plan(&rider, json!({}))["fastest"]);
}

#[test]
fn more_critical_power_upright_is_faster_and_more_drag_is_slower() {
    let rider = rider(two_climbs(), 0.24);
    let times_s = |asked: [(f64, f64); 3]| {
        asked.map(|(cda_m2, gain)| fastest_s(&sitting_up(&rider, cda_m2, gain)))
    };
    let by_gain = times_s([(0.33, 0.0), (0.33, 0.03), (0.33, 0.08)]);
    assert!(
        by_gain.is_sorted_by(|a, b| b + SOLVED_S < *a),
        "{by_gain:?}"
    );
    let by_drag = times_s([(0.27, 0.03), (0.33, 0.03), (0.45, 0.03)]);
    assert!(
        by_drag.is_sorted_by(|a, b| a + SOLVED_S < *b),
        "{by_drag:?}"
    );
}

#[test]
fn what_it_gains_is_the_difference_of_the_two_plans_and_w_prime_lasts() {
    let rider = rider(two_climbs(), 0.24);
    for recovery in ["differential", "none", "linear"] {
        let low = plan(&rider, json!({ "recovery": recovery }));
        let up = plan(
            &rider,
            json!({ "recovery": recovery, "sit_up": { "cp_gain_share": 0.05 } }),
        );
        let gained_s = fastest_s(&low) - fastest_s(&up);
        let said_s = number(&up["sit_up"]["faster_by_s"]["value"]);
        assert!(
            (gained_s - said_s).abs() < 1e-9,
            "{recovery}: {gained_s} {said_s}"
        );
        assert_eq!(
            up["sit_up"]["climbs"],
            json!([{ "from_m": 4000.0, "to_m": 6500.0 }, { "from_m": 10000.0, "to_m": 11500.0 }])
        );
        for plan in ["fastest", "simple", "robust"] {
            let least_j = number(&up[plan]["w_prime_least_j"]);
            assert!(
                plan == "robust" || least_j > -BOUND_J,
                "{recovery}, {plan}: {least_j}"
            );
        }
        let slower_s = number(&up["simple"]["time_s"]) - fastest_s(&up);
        assert!(slower_s > -SOLVED_S, "{recovery}: {slower_s}");
    }
}

#[test]
fn it_pays_from_the_grade_that_is_named() {
    /// The plan's power is not quite that of the even effort.
    const APART: f64 = 0.004;
    let on_climb = |grade: f64| {
        let rider = rider(road(&[(4000.0, grade)]), 0.24);
        let sit_up = json!({ "from_grade": 0.01, "cda_m2": 0.32, "cp_gain_share": 0.03 });
        plan(&rider, json!({ "sit_up": sit_up }))["sit_up"].clone()
    };
    let from_grade = number(&on_climb(0.06)["pays_from_grade"]);
    for (grade, pays) in [(from_grade - APART, false), (from_grade + APART, true)] {
        let gained_s = number(&on_climb(grade)["faster_by_s"]["value"]);
        assert_eq!(gained_s > 0.0, pays, "{grade}: {gained_s} s");
    }
}

#[test]
fn the_doubt_of_the_gain_is_that_of_plans_made_anew() {
    /// Forty draws know a standard deviation to an eighth of it; the steady speeds differ by some percent besides.
    const SHARE: f64 = 0.3;
    const DRAWS: usize = 40;
    let (cda_sd, up_sd, gain_sd) = (0.008, 0.02, 0.015);
    let mut random = fastrand::Rng::with_seed(3);
    let mut normal = || (0..12).map(|_| random.f64()).sum::<f64>() - 6.0;
    let gains_s: Vec<f64> = (0..DRAWS)
        .map(|_| {
            let rider = rider(two_climbs(), 0.24 + cda_sd * normal());
            let up = sitting_up(&rider, 0.33 + up_sd * normal(), 0.05 + gain_sd * normal());
            number(&up["sit_up"]["faster_by_s"]["value"])
        })
        .collect();
    let mean_s = gains_s.iter().sum::<f64>() / DRAWS as f64;
    let variance = gains_s
        .iter()
        .map(|gain| (gain - mean_s).powi(2))
        .sum::<f64>();
    let drawn_s = (variance / (DRAWS - 1) as f64).sqrt();

    let mut uncertain = rider(two_climbs(), 0.24);
    uncertain["positions"][0]["cda_m2"] = json!({ "value": 0.24, "sd": cda_sd });
    let sit_up = json!({
        "from_grade": 0.06,
        "cda_m2": { "value": 0.33, "sd": up_sd },
        "cp_gain_share": { "value": 0.05, "sd": gain_sd },
    });
    let up = plan(&uncertain, json!({ "sit_up": sit_up }));
    let said_s = number(&up["sit_up"]["faster_by_s"]["sd"]);
    assert!(
        (said_s / drawn_s - 1.0).abs() < SHARE,
        "{said_s} for {drawn_s}"
    );
}
