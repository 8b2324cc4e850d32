//! How rows scatter about an estimate: all alike, or each position in its own way.
//!
//! One variance for all rows is the better estimate while positions repeat alike. Where they clearly do not, an interval that
//! pools them is too wide for the steady position and too narrow for the other; then each has its own variance
//! `s²ₖ = Σr²/Σ(1 − h)`, that of a figure `g` is `V = Σ s²ₖ qₖ` with `qₖ = Σ (Jᵢ (JᵀJ)⁻¹ g)²` over the position's rows, and its
//! degrees of freedom are `V²/Σ((s²ₖ qₖ)²/νₖ)`, `νₖ = Σ(1 − h)`. For two means this is Welch's test.
//!
//! Sources: Welch 1947, Biometrika 34(1/2); Satterthwaite 1946, Biometrics Bulletin 2(6) (both from memory).

use crate::numerics::distributions::f_share;
use crate::numerics::least_squares::Fit;

/// Positions are taken to scatter unlike each other where so few tests whose positions scatter alike would seem to. Assumed: a rare
/// false alarm, since one variance for all does little harm until variances differ several times.
const FALSE_ALARM: f64 = 0.01;
/// A position with fewer rows to spare than this does not say how it scatters; all rows together speak for it.
const LEAST_DEGREES: f64 = 1.5;
/// Scatter below this share of the energy is rounding.
const ROUNDING: f64 = 1e-9;

/// One row at the estimate.
#[derive(Clone, Debug)]
pub(super) struct FittedRow {
    /// The place of its position.
    pub place: usize,
    /// Its derivatives by each parameter.
    pub slopes: Vec<f64>,
    /// Its residual, as a share of the energy.
    pub share: f64,
    /// How much it decides its own place, 0 to 1.
    pub leverage: f64,
}

/// Variance and degrees of freedom of the rows of one position.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scatter {
    /// As a squared share of the energy.
    pub variance: f64,
    /// Rows to spare; not a whole number, since positions share what is fitted beside their drag areas.
    pub degrees: f64,
}

/// How much one row scatters in each place where they do so unlike each other; `None` where they are alike or cannot say.
pub(super) fn unlike(rows: &[FittedRow], fit: &Fit, places: usize) -> Option<Vec<Scatter>> {
    let mut sums = vec![(0.0, 0.0); places];
    for row in rows {
        sums[row.place].0 += row.share * row.share;
        sums[row.place].1 += 1.0 - row.leverage;
    }
    let telling: Vec<(f64, f64)> = sums
        .iter()
        .copied()
        .filter(|(_, degrees)| *degrees >= LEAST_DEGREES)
        .collect();
    let all = telling
        .iter()
        .fold((0.0, 0.0), |all, own| (all.0 + own.0, all.1 + own.1));
    if telling.len() < 2 || all.0 <= ROUNDING * ROUNDING * all.1 {
        return None;
    }
    let least_likely = telling
        .iter()
        .map(|own| chance_of_unlike(*own, (all.0 - own.0, all.1 - own.1)))
        .fold(1.0, f64::min);
    // Of two positions, one against the other and the other against the one are one comparison.
    let comparisons = match telling.len() {
        2 => 1,
        more => more,
    };
    if least_likely * comparisons as f64 >= FALSE_ALARM {
        return None;
    }
    let pooled = Scatter {
        variance: fit.residual_variance(),
        degrees: fit.degrees_of_freedom() as f64,
    };
    let own = |&(squares, degrees): &(f64, f64)| match degrees >= LEAST_DEGREES {
        true => Scatter {
            variance: squares / degrees,
            degrees,
        },
        false => pooled,
    };
    Some(sums.iter().map(own).collect())
}

/// How often positions that scatter alike would differ at least as much, in either sense: each is a sum of squares and its degrees
/// of freedom.
fn chance_of_unlike(one: (f64, f64), other: (f64, f64)) -> f64 {
    let ratio = (one.0 / one.1) / (other.0 / other.1);
    let below = f_share(ratio, one.1, other.1);
    2.0 * below.min(1.0 - below)
}

/// The variance of a figure with this gradient and its degrees of freedom, each place scattering in its own way.
pub(super) fn variance_of(
    gradient: &[f64],
    rows: &[FittedRow],
    fit: &Fit,
    scatters: &[Scatter],
) -> Scatter {
    let parameters = gradient.len();
    let along: Vec<f64> = (0..parameters)
        .map(|i| {
            (0..parameters)
                .map(|j| fit.unit_covariance(i, j) * gradient[j])
                .sum()
        })
        .collect();
    let mut weights = vec![0.0; scatters.len()];
    for row in rows {
        let weight: f64 = row.slopes.iter().zip(&along).map(|(s, a)| s * a).sum();
        weights[row.place] += weight * weight;
    }
    let (mut variance, mut spread) = (0.0, 0.0);
    for (scatter, weight) in scatters.iter().zip(weights) {
        let part = scatter.variance * weight;
        variance += part;
        spread += part * part / scatter.degrees;
    }
    Scatter {
        variance,
        degrees: match spread > 0.0 {
            true => variance * variance / spread,
            false => fit.degrees_of_freedom() as f64,
        },
    }
}
