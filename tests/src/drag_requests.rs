//! Requests of `drag-test` made from the simulated test ride.

use fasterby_core::air::{Moisture, density_kg_m3};
use serde_json::{Value, json};

use crate::loop_ride::{DENSITY_KG_M3, Recorded};

/// Every lap in one position.
pub const ONE_POSITION: [usize; 8] = [0; 8];
/// Laps in two positions, each at both powers, in an order that a steady drift does not favour.
pub const TWO_POSITIONS: [usize; 8] = [0, 0, 1, 1, 1, 1, 0, 0];

/// Standard normal numbers from a seed, by the method of Box and Muller.
pub fn normals(seed: u64) -> impl FnMut() -> f64 {
    let mut random = fastrand::Rng::with_seed(seed);
    move || {
        let radius = (-2.0 * (1.0 - random.f64()).ln()).sqrt();
        radius * (std::f64::consts::TAU * random.f64()).cos()
    }
}

/// The scenario of the golden ride.
pub fn scenario() -> Value {
    let moisture = Moisture::RelativeHumidity(0.5);
    let density = |hpa: f64| density_kg_m3(20.0, 100.0 * hpa, moisture);
    let (mut low, mut high) = (900.0, 1100.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if density(middle) < DENSITY_KG_M3 {
            low = middle
        } else {
            high = middle
        }
    }
    json!({
        "rider": { "total_mass_kg": { "value": 85.0, "sd": 1.0 } },
        "bike": { "rolling_coefficient": { "value": 0.004, "sd": 0.0005 }, "drivetrain_efficiency": { "value": 0.976, "sd": 0.01 },
                  "rotating_mass_kg": 1.2, "bearing_drag_n": 0.0, "bearing_drag_n_s_per_m": 0.0,
                  "power_meter_bias_share": { "value": 0.0, "sd": 0.01 } },
        "conditions": { "temperature_c": { "value": 20.0, "sd": 1.0 }, "pressure_hpa": { "value": low, "sd": 1.0 }, "pressure_is": "course",
                        "relative_humidity": 0.5, "altitude_m": 0.0 },
    })
}

/// The columns of a ride as a request has them.
pub fn columns(ride: &Recorded) -> Value {
    json!({ "time_s": ride.time_s, "speed_m_s": ride.speed_m_s, "power_w": ride.power_w,
            "elevation_m": ride.elevation_m, "distance_m": ride.distance_m, "bearing_deg": ride.bearing_deg })
}

/// The main test, its laps by turns in positions of a pattern.
pub fn request(ride: &Recorded, positions: [usize; 8]) -> Value {
    let laps: Vec<Value> = ride
        .ends_s
        .windows(2)
        .zip(positions)
        .map(|(ends, position)| json!({ "recording": 0, "from_s": ends[0], "to_s": ends[1], "position": position, "closed": true }))
        .collect();
    json!({ "scenario": scenario(), "with": { "recordings": [{ "columns": columns(ride) }], "laps": laps } })
}
