//! What must hold of two set-ups: each change that is said to keep the hip open does, and what an ankle model leaves out adds
//! no doubt.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::{answer, refused, value};
use serde_json::{Value, json};

/// The core finds the changes to a thousandth of a degree or so.
const LEVEL_DEG: f64 = 0.01;

/// A present set-up and a lower one, the front ends given by the torso's angle, which then stays.
fn with(torso: bool) -> Value {
    let set_up = |crank_m: f64, torso_deg: f64, drop_m: f64| {
        let mut set_up =
            json!({ "crank_m": crank_m, "saddle_height_m": 0.7, "seat_angle_deg": 76 });
        if torso {
            set_up["torso_deg"] = json!(torso_deg);
        } else {
            set_up["bar_drop_m"] = json!(drop_m);
        }
        set_up
    };
    json!({ "stature_m": 1.75, "a": set_up(0.17, 16.0, 0.1), "b": set_up(0.17, 15.0, 0.11) })
}

fn hip_deg(answer: &Value, side: &str) -> f64 {
    value(&answer[side]["tightest_hip_deg"]).expect("an angle")
}

fn number(of: &Value) -> f64 {
    of.as_f64().expect("a number")
}

fn moved(with: &mut Value, part: &str, by: f64) {
    with["b"][part] = json!(number(&with["b"][part]) + by);
}

#[test]
fn each_change_that_keeps_the_hip_as_open_does_so_by_itself() {
    for (torso, way, parts) in [
        (
            true,
            "crank_change_m",
            &[("crank_m", 1.0), ("saddle_height_m", -1.0)][..],
        ),
        (true, "saddle_change_m", &[("saddle_height_m", 1.0)][..]),
        (false, "bar_drop_change_m", &[("bar_drop_m", 1.0)][..]),
    ] {
        let before = answer("leg-room", &json!({ "with": with(torso) }));
        let wanted_deg = hip_deg(&before, "a");
        assert!(
            wanted_deg - hip_deg(&before, "b") > 0.5,
            "the new set-up is the tighter one"
        );
        let by = number(&before["level"][way]);
        let mut changed = with(torso);
        for (part, share) in parts {
            moved(&mut changed, part, share * by);
        }
        let after = answer("leg-room", &json!({ "with": changed }));
        let left_deg = hip_deg(&after, "b") - wanted_deg;
        assert!(
            left_deg.abs() < LEVEL_DEG,
            "{way} by {by} leaves {left_deg}°"
        );
    }
}

#[test]
fn what_an_ankle_model_leaves_out_adds_no_doubt() {
    for (model, used, idle) in [
        ("frozen", "ankle_deg", ["foot_pitch_deg", "foot_swing_deg"]),
        ("ankling", "foot_pitch_deg", ["ankle_deg", "ankle_deg"]),
    ] {
        let sd_deg = |field: &str, sd: f64| {
            let mut with = with(true);
            with["model"] = json!(model);
            let usual = match field {
                "ankle_deg" => 130.0,
                "foot_pitch_deg" => 45.0,
                _ => 12.0,
            };
            with[field] = json!({ "value": usual, "sd": sd, "source": "estimated" });
            let answer = answer("leg-room", &json!({ "with": with }));
            number(&answer["a"]["tightest_hip_deg"]["sd"])
        };
        for field in idle {
            assert_eq!(sd_deg(field, 0.5), sd_deg(field, 5.0), "{model}: {field}");
        }
        assert!(sd_deg(used, 5.0) > sd_deg(used, 0.5), "{model}: {used}");
    }
}

/// The saddle is named in whole millimetres.
const MILLIMETRE_M: f64 = 0.001;

#[test]
fn a_saddle_out_of_reach_is_told_the_nearest_that_is_not() {
    let mut asked = with(false);
    asked["b"]["saddle_height_m"] = json!(0.95);
    let error = refused("leg-room", &json!({ "with": asked }).to_string());
    assert_eq!(error["field"], "with.b.saddle_height_m");
    let limit_m = number(&error["values"]["limit"]["value"]);

    asked["b"]["saddle_height_m"] = json!(limit_m);
    answer("leg-room", &json!({ "with": asked }));
    asked["b"]["saddle_height_m"] = json!(limit_m + MILLIMETRE_M);
    refused("leg-room", &json!({ "with": asked }).to_string());
}
