//! Plans of effort along a course: against direct collocation, an independent ride of the plan, riders who are not as believed,
//! and requests that ask for nonsense.

use fasterby_core::air::{Moisture, density_kg_m3};
use fasterby_tests::{answer, refused, value};
use serde_json::{Value, json};
use wasm_bindgen_test::wasm_bindgen_test;

#[cfg(target_arch = "wasm32")]
wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);

/// The collocation's own meshes differ by less than this from each other, s.
const COLLOCATION_S: f64 = 0.02;
/// The accuracy promised for a ride.
const RIDE: f64 = 1e-5;
/// W′ balance keeps its bounds to a joule.
const BOUND_J: f64 = 1.0;

/// The pressure, hPa, at which dry air of 20 °C has a density of 1.2 kg/m³.
fn pressure_hpa() -> f64 {
    let density = |hpa: f64| density_kg_m3(20.0, 100.0 * hpa, Moisture::RelativeHumidity(0.0));
    // Nearly proportional: a few rounds leave nothing.
    (0..6).fold(1000.0, |hpa, _| hpa * 1.2 / density(hpa))
}

/// The rider of the collocation's problem on a course, in a wind from the north at rider height.
fn collocated(course: Value, wind_m_s: f64) -> Value {
    json!({
        "fasterby": 3,
        "rider": { "total_mass_kg": 82 },
        "bike": { "rolling_coefficient": 0.004, "drivetrain_efficiency": 0.975, "rotating_mass_kg": 0,
                  "bearing_drag_n": 0, "bearing_drag_n_s_per_m": 0 },
        "positions": [{ "name": "low", "cda_m2": 0.25 }],
        "power": { "cp_w": 280, "w_prime_j": 18000 },
        "course": course,
        "conditions": { "temperature_c": 20, "pressure_hpa": pressure_hpa(), "pressure_is": "course", "relative_humidity": 0,
                        "wind_speed_m_s": wind_m_s, "wind_from_deg": 0, "shelter_factor": 1 },
        "start": { "speed_m_s": 8 }
    })
}

/// 20 km, half of them against 4 m/s of wind and half with it.
fn windy() -> Value {
    let course = json!({ "kind": "simple", "distance_m": 20000, "grade": 0, "bearing_deg": 0, "out_and_back": true });
    collocated(course, 4.0)
}

/// 10 km: 3 level, 2 up at 5 %, 2 down, 3 level.
fn hilly() -> Value {
    let point = |distance_m: f64, elevation_m: f64| json!({ "distance_m": distance_m, "elevation_m": elevation_m, "bearing_deg": 0 });
    let points = [
        point(0.0, 0.0),
        point(3000.0, 0.0),
        point(5000.0, 100.0),
        point(7000.0, 0.0),
        point(10_000.0, 0.0),
    ];
    collocated(json!({ "kind": "profile", "points": points }), 0.0)
}

fn number(of: &Value) -> f64 {
    value(of).expect("a number")
}

#[wasm_bindgen_test(unsupported = test)]
fn the_fastest_plan_is_that_of_direct_collocation() {
    for (scenario, recovery, fastest_s) in [
        (windy(), "differential", 1761.3305),
        (windy(), "none", 1761.3305),
        (windy(), "linear", 1761.3305),
        (hilly(), "differential", 915.9052),
        (hilly(), "none", 920.5272),
        (hilly(), "linear", 908.8745),
    ] {
        let asked = json!({ "scenario": scenario, "with": { "recovery": recovery } });
        let got = answer("ride-plan", &asked);
        println!("{}", serde_json::to_string_pretty(&json!({"even": got["even"], "fastest": got["fastest"], "simple": got["simple"], "robust": got["robust"], "over": got["overshoot"], "lower": got["cp_lower"], "w": got["w_prime_least"], "warn": got["warnings"]})).unwrap());
        let got_s = number(&got["fastest"]["time_s"]);
        assert!((got_s - fastest_s).abs() < COLLOCATION_S, "{recovery}: {got_s} for {fastest_s}");
    }
}
