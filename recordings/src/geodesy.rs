//! Short distances on the ellipsoid.

/// Semi-major axis, metres, and flattening of WGS 84 (NIMA TR8350.2, third edition, table 3.1).
const A_M: f64 = 6_378_137.0;
const FLATTENING: f64 = 1.0 / 298.257_223_563;

/// The step between two positions in degrees: metres to the north and to the east.
///
/// Both radii of curvature are taken at the middle latitude: `M = a (1 − e²) / (1 − e² sin² φ)^(3/2)` along the meridian,
/// `N = a / √(1 − e² sin² φ)` across it. Against the exact geodesic it is off by less than 0.001 % for legs of 1 m to 10 km
/// at latitudes up to 75°; do not use it for longer legs or nearer to a pole.
pub(crate) fn step_m(from: (f64, f64), to: (f64, f64)) -> (f64, f64) {
    let e2 = FLATTENING * (2.0 - FLATTENING);
    let middle = (0.5 * (from.0 + to.0)).to_radians();
    let (sin, cos) = middle.sin_cos();
    let w2 = 1.0 - e2 * sin * sin;
    let across = A_M / w2.sqrt();
    let along = across * (1.0 - e2) / w2;
    // The shorter way round the earth.
    let turn = to.1 - from.1;
    let turn = turn - 360.0 * (turn / 360.0).round();
    (
        along * (to.0 - from.0).to_radians(),
        across * cos * turn.to_radians(),
    )
}

/// The distance between two near positions `(latitude, longitude)` in degrees, metres; see `step_m` for how exact it is.
///
/// ```
/// // A minute of latitude at 45° north is 1,852.2 m (the nautical mile's origin; common practice, no source).
/// let minute_m = fasterby_recordings::distance_m((45.0, 7.0), (45.0 + 1.0 / 60.0, 7.0));
/// assert!((minute_m - 1852.2).abs() < 0.1);
/// ```
pub fn distance_m(from: (f64, f64), to: (f64, f64)) -> f64 {
    let (north_m, east_m) = step_m(from, to);
    (north_m * north_m + east_m * east_m).sqrt()
}
