//! Metres climbed, from an elevation that is smoothed along the road.
//!
//! Barometers and maps are uncertain by metres, and every wiggle adds to a sum of rises: the choice of the smoothing moves the
//! climb by 10 to 50 %. Here the elevation is taken every 10 m and a straight line is fitted through 200 m around each place.

const STEP_M: f64 = 10.0;
/// On each side.
const REACH_STEPS: usize = 10;
/// Longer roads have no climb: nobody rides them.
const MOST_STEPS: usize = 300_000;

/// The sum of rises along the road, metres; not a number where elevation or distance is missing.
pub(crate) fn climb_m(distance_m: &[f64], elevation_m: &[f64]) -> f64 {
    let heights = resampled(distance_m, elevation_m);
    if heights.len() < 2 {
        return f64::NAN;
    }
    let smooth: Vec<f64> = (0..heights.len())
        .map(|at| local_line(&heights, at))
        .collect();
    smooth
        .windows(2)
        .map(|pair| f64::max(0.0, pair[1] - pair[0]))
        .sum()
}

/// Elevation every ten metres by linear interpolation. Where the rider did not move, only the first elevation counts.
fn resampled(distance_m: &[f64], elevation_m: &[f64]) -> Vec<f64> {
    let known = distance_m.iter().copied().zip(elevation_m.iter().copied());
    let mut known = known.filter(|(distance, elevation)| !distance.is_nan() && !elevation.is_nan());
    let Some((first_m, mut low)) = known.next() else {
        return Vec::new();
    };
    let (mut from_m, mut heights) = (first_m, vec![low]);
    for (to_m, high) in known {
        if to_m <= from_m {
            continue;
        }
        loop {
            let wanted_m = first_m + STEP_M * heights.len() as f64;
            if wanted_m > to_m {
                break;
            }
            if heights.len() > MOST_STEPS {
                return Vec::new();
            }
            heights.push(low + (high - low) * (wanted_m - from_m) / (to_m - from_m));
        }
        (from_m, low) = (to_m, high);
    }
    heights
}

/// The value at its own place of the straight line of least squares through the neighbours, which are fewer at the ends.
fn local_line(heights: &[f64], at: usize) -> f64 {
    let from = at.saturating_sub(REACH_STEPS);
    let to = (at + REACH_STEPS + 1).min(heights.len());
    let n = (to - from) as f64;
    let (mut x, mut y, mut xx, mut xy) = (0.0, 0.0, 0.0, 0.0);
    for (i, height) in heights[from..to].iter().enumerate() {
        let place = (from + i) as f64 - at as f64;
        x += place;
        y += height;
        xx += place * place;
        xy += place * height;
    }
    let spread = n * xx - x * x;
    if spread > 0.0 {
        (y * xx - x * xy) / spread
    } else {
        y / n
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_steady_slope_climbs_by_its_height_and_a_descent_by_nothing() {
        let distance: Vec<f64> = (0..=1000).map(|i| f64::from(i) * 3.0).collect();
        let up: Vec<f64> = distance.iter().map(|x| 100.0 + 0.05 * x).collect();
        let down: Vec<f64> = up.iter().rev().copied().collect();
        // Rounding only: a line is its own local regression.
        assert!((climb_m(&distance, &up) - 150.0).abs() < 1e-9);
        assert!(climb_m(&distance, &down) < 1e-9);
    }

    #[test]
    fn without_elevation_or_distance_there_is_no_climb() {
        assert!(climb_m(&[0.0, 10.0], &[f64::NAN, f64::NAN]).is_nan());
        assert!(climb_m(&[], &[]).is_nan());
        assert!(climb_m(&[0.0, 1e9], &[0.0, 1.0]).is_nan());
    }
}
