//! How drag rises from the beginning of a test to its end, in one position: measured by its laps, or guessed from a film.

use super::estimate::{Interval, Observation, Seen};
use super::rig::Rig;
use crate::inputs::quantity::Quantity;
use crate::numerics::least_squares::least_squares;

/// Fewer laps than this do not show a rise.
pub const LEAST_LAPS: usize = 4;
/// From the middle of the first third of a test to that of the last.
const BETWEEN_THIRDS: f64 = 2.0 / 3.0;

/// The drag area in the last third of a position's laps less that in the first, m²: the slope of a weighted straight line through
/// the drag areas of its laps in the order in which they were ridden. Crr and the wind that is added to that of the laps are those of
/// the estimate. `None` with fewer than [`LEAST_LAPS`].
pub fn measured_rise(
    laps: &[Observation],
    rig: &Rig,
    rolling: f64,
    wind: [f64; 2],
) -> Option<Interval> {
    let points: Vec<(f64, f64)> = laps
        .iter()
        .filter_map(|lap| match &lap.seen {
            Seen::Stretch(sums) => {
                let equation = rig.equation(sums, wind);
                let cda_m2 = (equation.loss_j - rolling * equation.rolling) / equation.air;
                Some((cda_m2, equation.scale_j / equation.air))
            }
            Seen::CoastDown(_) => None,
        })
        .filter(|(cda_m2, sd)| cda_m2.is_finite() && *sd > 0.0)
        .collect();
    if points.len() < LEAST_LAPS {
        return None;
    }
    let last = (points.len() - 1) as f64;
    let fit = least_squares(&[0.25, 0.1], points.len(), &|b, i, slopes| {
        let (cda_m2, sd) = points[i];
        // The slope is that between the thirds.
        let along = (i as f64 / last - 0.5) / BETWEEN_THIRDS;
        slopes.copy_from_slice(&[1.0 / sd, along / sd]);
        (b[0] + b[1] * along - cda_m2) / sd
    })
    .ok()?;
    Some(Interval::of(&fit, 1))
}

/// What a film shows of one position: shares of the time in the first, the middle and the last third of the ride.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filmed {
    /// With the head up.
    pub head_up_share: [f64; 3],
    /// With the back raised or rounded up.
    pub back_up_share: [f64; 3],
    /// With the hands off their place.
    pub hands_moved_share: [f64; 3],
}

/// How much more drag area a raised head has, as a share: two head positions differed by up to 6.4 % (beaumont-2018); the mean
/// of what riders do is assumed to be half of it.
const HEAD_UP: (f64, f64) = (0.03, 0.02);
/// A raised back; assumed.
const BACK_UP: (f64, f64) = (0.08, 0.04);
/// Hands off the bars' ends, elbows apart; assumed.
const HANDS_MOVED: (f64, f64) = (0.12, 0.06);

/// The drag area in the last third less that in the first, m², as a guess from a film.
pub fn assumed_rise(filmed: &Filmed, cda_m2: f64) -> Quantity {
    let seen = [
        (filmed.head_up_share, HEAD_UP),
        (filmed.back_up_share, BACK_UP),
        (filmed.hands_moved_share, HANDS_MOVED),
    ];
    let (mut rise, mut variance) = (0.0, 0.0_f64);
    for ([first, _, last], (more, sd)) in seen {
        rise += (last - first) * more;
        variance += ((last - first) * sd).powi(2);
    }
    Quantity::typical(cda_m2 * rise, cda_m2 * variance.sqrt())
}
