//! Plans of effort along the two roads whose fastest plans were worked out by direct collocation on meshes of every width.

use fasterby_core::air::{Moisture, density_kg_m3};
use fasterby_tests::{answer, value};
use serde_json::{Value, json};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// The collocation's own meshes differ by less than this from each other, s.
const COLLOCATION_S: f64 = 0.02;
/// The accuracy promised for a ride.
pub const RIDE: f64 = 1e-5;

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
pub fn windy() -> Value {
    let course = json!({ "kind": "simple", "distance_m": 20000, "grade": 0, "bearing_deg": 0, "out_and_back": true });
    collocated(course, 4.0)
}

/// 10 km: 3 level, 2 up at 5 %, 2 down, 3 level.
pub fn hilly() -> Value {
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

pub fn number(of: &Value) -> f64 {
    value(of).expect("a number")
}

pub fn plan(scenario: Value, with: Value) -> Value {
    answer("ride-plan", &json!({ "scenario": scenario, "with": with }))
}

#[test]
fn the_fastest_plan_is_that_of_direct_collocation() {
    // Radau collocation over 12.5 m with IPOPT, re-integrated (worked out for this project; `oracle/pacing.py` does it again).
    for (scenario, recovery, fastest_s) in [
        (windy(), "differential", 1761.3305),
        (windy(), "none", 1761.3305),
        (windy(), "linear", 1761.3305),
        (hilly(), "differential", 915.9052),
        (hilly(), "none", 920.5272),
        (hilly(), "linear", 908.8745),
    ] {
        let got = plan(scenario, json!({ "recovery": recovery }));
        let got_s = number(&got["fastest"]["time_s"]);
        assert!(
            (got_s - fastest_s).abs() < COLLOCATION_S,
            "{recovery}: {got_s} for {fastest_s}"
        );
    }
}

#[test]
fn the_even_effort_beside_it_is_the_one_of_the_reference() {
    // The same source: (P - 280) T(P) = 18000.
    for (scenario, power_w, time_s) in [
        (windy(), 290.1985197314, 1764.9620213503),
        (hilly(), 299.1450998037, 940.1883607084),
    ] {
        let got = plan(scenario, json!({}));
        let (got_w, got_s) = (
            number(&got["even"]["power_w"]),
            number(&got["even"]["time_s"]),
        );
        assert!(
            (got_w / power_w - 1.0).abs() < RIDE,
            "{got_w} for {power_w}"
        );
        assert!((got_s / time_s - 1.0).abs() < RIDE, "{got_s} for {time_s}");
    }
}
