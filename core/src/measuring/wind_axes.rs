//! Along which axes laps of different headings tell a wind.

use super::estimate::{Observation, Seen};

/// A component is told where the mean heading of laps in one position scatters along it by at least this variance: out and back
/// has 1, closed laps have 0; assumed.
const LEAST_VARIANCE: f64 = 0.05;

/// None, one or two unit vectors (north, east), at right angles to each other.
pub(crate) fn wind_axes(observations: &[Observation]) -> Vec<[f64; 2]> {
    let mean_headings: Vec<(usize, [f64; 2])> = observations
        .iter()
        .filter_map(|observation| match &observation.seen {
            Seen::Stretch(sums) if sums.has_headings() && sums.square_sum > 0.0 => {
                let mean = sums.wind.first.map(|sum| sum / sums.square_sum);
                Some((observation.position, mean))
            }
            _ => None,
        })
        .collect();
    let count = mean_headings.len() as f64;
    let (mut nn, mut ne, mut ee) = (0.0, 0.0, 0.0);
    for (position, heading) in &mean_headings {
        let own = mean_headings.iter().filter(|(other, _)| other == position);
        let (sum, rows) = own.fold(([0.0; 2], 0.0), |(sum, rows), (_, h)| {
            ([sum[0] + h[0], sum[1] + h[1]], rows + 1.0)
        });
        let apart: [f64; 2] = std::array::from_fn(|i| heading[i] - sum[i] / rows);
        nn += apart[0] * apart[0] / count;
        ne += apart[0] * apart[1] / count;
        ee += apart[1] * apart[1] / count;
    }
    // The principal axes of the scatter.
    let angle = 0.5 * (2.0 * ne).atan2(nn - ee);
    let (sin, cos) = angle.sin_cos();
    let half = 0.5 * (nn + ee);
    let apart = (0.5 * (nn - ee)).hypot(ne);
    [(half + apart, [cos, sin]), (half - apart, [-sin, cos])]
        .into_iter()
        .filter(|(variance, _)| *variance >= LEAST_VARIANCE)
        .map(|(_, axis)| axis)
        .collect()
}
