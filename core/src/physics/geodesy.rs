//! Short steps on the earth's ellipsoid.

/// Semi-major axis, m, and flattening of WGS 84. Source: wgs-84.
const A_M: f64 = 6_378_137.0;
const FLATTENING: f64 = 1.0 / 298.257_223_563;

/// The step between two near positions `(latitude, longitude)` in degrees: metres to the north and to the east.
///
/// `M = a (1 − e²) / (1 − e² sin² φ)^(3/2)` along the meridian and `N = a / √(1 − e² sin² φ)` across it, both at the middle
/// latitude. For steps up to 10 km at latitudes up to 75° it is within 0.001 % of the geodesic; not for longer ones.
///
/// Source: wgs-84 for the ellipsoid; the radii are those of any textbook (from memory), checked against geodesics in
/// `tests/oracle/geodesics.py`.
pub(crate) fn step_m(from: (f64, f64), to: (f64, f64)) -> (f64, f64) {
    let e2 = FLATTENING * (2.0 - FLATTENING);
    let (sin, cos) = (0.5 * (from.0 + to.0)).to_radians().sin_cos();
    let shrunk = 1.0 - e2 * sin * sin;
    let across_m = A_M / shrunk.sqrt();
    let along_m = across_m * (1.0 - e2) / shrunk;
    // The shorter way round the earth.
    let turn_deg = to.1 - from.1;
    let turn_deg = turn_deg - 360.0 * (turn_deg / 360.0).round();
    (
        along_m * (to.0 - from.0).to_radians(),
        across_m * cos * turn_deg.to_radians(),
    )
}

/// Where such a step to the north and to the east, m, leads from a position.
///
/// [`step_m`] solved for its end, which depends on the middle latitude: each of four rounds takes the middle of the one before. For
/// a step of 10 km a round is a thousand times nearer than the last, so that the end is within a micrometre.
pub(crate) fn after_step(from: (f64, f64), north_m: f64, east_m: f64) -> (f64, f64) {
    const ROUNDS: usize = 4;
    const TRIED_DEG: f64 = 0.001;
    let mut to = from;
    for _ in 0..ROUNDS {
        let middle = 0.5 * (from.0 + to.0);
        // What a short step about the middle latitude measures on the ground.
        let (along_m, across_m) = step_m(
            (middle - 0.5 * TRIED_DEG, 0.0),
            (middle + 0.5 * TRIED_DEG, TRIED_DEG),
        );
        to = (
            from.0 + north_m / along_m * TRIED_DEG,
            from.1 + east_m / across_m * TRIED_DEG,
        );
    }
    to
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_minute_of_latitude_and_of_longitude_are_as_long_as_the_ellipsoid_says() {
        // At 45°: M = 6,367,382 m and N cos φ = 4,517,591 m (worked out from the formulas in another program).
        let minute = 1.0 / 60.0;
        let (north_m, _) = step_m((45.0 - 0.5 * minute, 7.0), (45.0 + 0.5 * minute, 7.0));
        assert!(
            (north_m - 6_367_381.8f64 * minute.to_radians()).abs() < 1e-3,
            "{north_m}"
        );
        let (_, east_m) = step_m((45.0, 7.0), (45.0, 7.0 + minute));
        assert!(
            (east_m - 4_517_590.9f64 * minute.to_radians()).abs() < 1e-3,
            "{east_m}"
        );
    }

    #[test]
    fn a_step_leads_where_it_was_measured_to() {
        const NEAR_M: f64 = 1e-6;
        for (from, north_m, east_m) in [
            ((0.0, -30.0), 0.0, 1e4),
            ((47.0, 8.0), -7e3, 7e3),
            ((-74.0, 100.0), 1e4, -10.0),
        ] {
            let (back_north_m, back_east_m) = step_m(from, after_step(from, north_m, east_m));
            assert!((back_north_m - north_m).abs() < NEAR_M, "{back_north_m}");
            assert!((back_east_m - east_m).abs() < NEAR_M, "{back_east_m}");
        }
    }

    #[test]
    fn a_step_over_the_date_line_is_short() {
        let (_, east_m) = step_m((0.0, 179.9999), (0.0, -179.9999));
        assert!((east_m - 22.26).abs() < 0.01, "{east_m}");
    }
}
