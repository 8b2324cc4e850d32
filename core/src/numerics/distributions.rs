//! Shares of the normal and of Student's t distribution, central and noncentral, and how many runs show a difference. No physics.

use std::f64::consts::{FRAC_1_SQRT_2, TAU};

use crate::numerics::least_squares::student_t;
use crate::numerics::solve::{gauss_points, root, within};

/// A standard normal deviate is beyond this once in 1e15.
const FARTHEST: f64 = 8.0;
/// Panels of five-point Gauss–Legendre quadrature: enough for 1e-12 over [`FARTHEST`] and over a quarter turn.
const PANELS: usize = 24;

/// 95 % of a normal distribution lies within so many standard deviations of its mean: 1.95996, the two-sided quantile.
pub(crate) const NORMAL_REACH_95: f64 = 1.959_963_984_540_054;

/// The share of a standard normal distribution below `z`, by quadrature to 1e-12.
///
/// ```
/// // 95 % of a normal distribution lies within 1.96 standard deviations.
/// let share = fasterby_core::distributions::normal_share(1.96);
/// assert!((share - 0.975).abs() < 1e-4);
/// ```
pub fn normal_share(z: f64) -> f64 {
    0.5 + integral(normal_density, within(z, -FARTHEST, FARTHEST))
}

/// The chance of a normal distribution about 0 with this standard deviation to lie below a value; certain where that is 0.
#[cfg(feature = "all")]
pub(crate) fn chance_below(value: f64, sd: f64) -> f64 {
    if sd > 0.0 {
        normal_share(value / sd)
    } else {
        f64::from(u8::from(value >= 0.0))
    }
}

/// The mean of a normal variable with what is below 0 taken as 0: `E max(0, x) = m Φ(m/s) + s φ(m/s)`.
#[cfg(feature = "all")]
pub(crate) fn mean_above_nought(mean: f64, sd: f64) -> f64 {
    if sd > 0.0 {
        let z = mean / sd;
        mean * normal_share(z) + sd * normal_density(z)
    } else {
        mean.max(0.0)
    }
}

fn normal_density(x: f64) -> f64 {
    (-0.5 * x * x).exp() / TAU.sqrt()
}

/// The integral of a smooth function from 0 to `end`.
fn integral(f: impl Fn(f64) -> f64, end: f64) -> f64 {
    let panel = end / PANELS as f64;
    let sum = |i: usize| {
        let points = gauss_points(panel * i as f64, panel * (i + 1) as f64);
        points.iter().map(|&(x, weight)| weight * f(x)).sum::<f64>()
    };
    (0..PANELS).map(sum).sum()
}

/// Owen's T function: the share of two independent standard normal deviates of which the first is above `h` and the second
/// between 0 and `a` times the first.
///
/// `T(h, a) = 1/2π ∫ exp(−h²/(2 cos²θ)) dθ` from 0 to `atan a`.
fn owens_t(h: f64, a: f64) -> f64 {
    integral(
        |angle: f64| (-0.5 * (h / angle.cos()).powi(2)).exp(),
        a.atan(),
    ) / TAU
}

/// The share of a noncentral t distribution below `t`: of `(Z + δ)/√(V/ν)`, where Z is standard normal, V is χ² with ν degrees
/// of freedom, and δ is the noncentrality. With δ = 0 it is Student's t.
///
/// A finite sum for whole degrees of freedom (Owen 1968, Technometrics 10(3), from memory). It agrees with SciPy to 1e-10 for 1 to
/// 500 degrees of freedom and noncentralities from 0 to 20 (`tests/oracle/data/noncentral_t.csv`). Its terms are as many as the
/// degrees of freedom; no degrees of freedom count as one.
pub fn noncentral_t_share(t: f64, degrees_of_freedom: u32, noncentrality: f64) -> f64 {
    let nu = degrees_of_freedom.max(1);
    let (slope, rest) = (
        t / f64::from(nu).sqrt(),
        f64::from(nu) / (f64::from(nu) + t * t),
    );
    let reach = noncentrality * rest.sqrt();
    let zeroth = slope * rest.sqrt() * normal_density(reach) * normal_share(slope * reach);
    let first = rest
        * (slope * noncentrality * zeroth + slope * normal_density(noncentrality) / TAU.sqrt());
    // Owen's M₀, M₁, M₂, …: of every two neighbours only those of the parity of ν count, up to M of ν − 2.
    let (mut before, mut last, mut factor) = (zeroth, first, 1.0);
    let odd = nu % 2 == 1;
    let mut sum = match (odd, nu) {
        (true, 1) => 0.0,
        (true, _) => first,
        (false, _) => zeroth,
    };
    for k in 2..nu.saturating_sub(1) {
        let order = f64::from(k);
        if k > 2 {
            factor = 1.0 / ((order - 2.0) * factor);
        }
        let next = (order - 1.0) / order * rest * (factor * slope * noncentrality * last + before);
        (before, last) = (last, next);
        if (k % 2 == 1) == odd {
            sum += next;
        }
    }
    let share = if odd {
        normal_share(-reach) + 2.0 * owens_t(reach, slope) + 2.0 * sum
    } else {
        normal_share(-noncentrality) + TAU.sqrt() * sum
    };
    within(share, 0.0, 1.0)
}

/// The share of Student's t distribution below `t`, for degrees of freedom that need not be whole: between neighbours by a straight
/// line in `1/ν`, which is within 0.002. Below one they count as one.
#[cfg(feature = "all")]
pub(crate) fn student_t_share(t: f64, degrees_of_freedom: f64) -> f64 {
    between_whole(degrees_of_freedom, |nu| {
        noncentral_t_share(t, nu as u32, 0.0)
    })
}

/// The two-sided quantile of Student's t ([`student_t`]) for degrees of freedom that need not be whole: likewise, within 2 % from
/// two degrees of freedom on; between one and two it is too wide by up to 18 %.
#[cfg(feature = "all")]
pub(crate) fn student_t_of(share: f64, degrees_of_freedom: f64) -> f64 {
    between_whole(degrees_of_freedom, |nu| student_t(share, nu))
}

/// A function of whole degrees of freedom between them, by a straight line in `1/ν`.
#[cfg(feature = "all")]
fn between_whole(degrees_of_freedom: f64, of: impl Fn(usize) -> f64) -> f64 {
    let nu = degrees_of_freedom.max(1.0);
    let low = nu.floor();
    let at_low = of(low as usize);
    // Sums of leverages miss whole numbers by rounding.
    if nu - low < 1e-9 {
        return at_low;
    }
    let share = (1.0 / low - 1.0 / nu) / (1.0 / low - 1.0 / (low + 1.0));
    at_low + share * (of(low as usize + 1) - at_low)
}

/// The share of the F distribution below `ratio`: of the ratio of two variances with these degrees of freedom, which need not be
/// whole. It is the incomplete beta function `I(ν₁/2, ν₂/2)` at `ν₁F/(ν₁F + ν₂)`, with `x = sin²θ` the integral of
/// `sin^(ν₁−1)θ cos^(ν₂−1)θ`, by quadrature on either side of `θ`: to 1e-6 for 1 to 500 degrees of freedom.
#[cfg(feature = "all")]
pub(crate) fn f_share(ratio: f64, above: f64, below: f64) -> f64 {
    let quarter = 0.5 * std::f64::consts::PI;
    let end = (above * ratio.max(0.0) / below).sqrt().atan();
    let logarithm =
        |angle: f64| (above - 1.0) * angle.sin().ln() + (below - 1.0) * angle.cos().ln();
    // Where it is largest, by which it is divided so that it does not underflow.
    let top = logarithm(
        ((above - 1.0).max(1e-9) / (below - 1.0).max(1e-9))
            .sqrt()
            .atan(),
    );
    let density = |angle: f64| (logarithm(angle) - top).exp();
    let part = |from: f64, to: f64| integral(|angle| density(from + angle), to - from);
    let (low, high) = (part(0.0, end), part(end, quarter));
    low / (low + high)
}

/// The share of new values of a normal distribution below `value`, where only the mean and the standard deviation of a sample of
/// `count` are known: Student's t of `(value − mean)/(sd √(1 + 1/count))` with `count − 1` degrees of freedom.
pub fn predicted_share(value: f64, mean: f64, sd: f64, count: u32) -> f64 {
    let n = f64::from(count.max(2));
    noncentral_t_share(
        (value - mean) / (sd * (1.0 + 1.0 / n).sqrt()),
        count.max(2) - 1,
        0.0,
    )
}

/// How often a two-sided t-test may be wrong.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Certainty {
    /// The share of tests that show a difference where there is none: the level α.
    pub false_alarm: f64,
    /// The share of tests that show the difference where it is real: the power, 1 − β.
    pub power: f64,
}

impl Certainty {
    /// What is customary: 1 false alarm in 20, and 4 real differences in 5 found. Common practice, no source.
    pub const USUAL: Self = Self {
        false_alarm: 0.05,
        power: 0.8,
    };
}

/// The least number of runs that is enough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Enough {
    /// Runs in each group, or pairs of runs.
    pub runs: u32,
    /// The share of such tests that show the difference: at least the power that was asked for.
    pub power: f64,
}

/// No more runs than this are looked for.
pub const MOST_RUNS: u32 = 20_000;

/// The power of a two-sided t-test of two groups of independent runs, `n` in each: `2n − 2` degrees of freedom and a
/// noncentrality of `difference · √(n/2)`. `difference` is in standard deviations of one run.
pub fn power_of_groups(runs: u32, difference: f64, false_alarm: f64) -> f64 {
    let runs = runs.max(2);
    two_sided_power(
        2 * runs - 2,
        difference * (0.5 * f64::from(runs)).sqrt(),
        false_alarm,
    )
}

/// The power of a two-sided t-test of `n` differences within pairs of runs: `n − 1` degrees of freedom, and a difference within a
/// pair that scatters √2 times as much as one run. `difference` is in standard deviations of one run.
pub fn power_of_pairs(pairs: u32, difference: f64, false_alarm: f64) -> f64 {
    let pairs = pairs.max(2);
    two_sided_power(
        pairs - 1,
        difference * FRAC_1_SQRT_2 * f64::from(pairs).sqrt(),
        false_alarm,
    )
}

fn two_sided_power(degrees_of_freedom: u32, noncentrality: f64, false_alarm: f64) -> f64 {
    let critical = student_t(1.0 - false_alarm, degrees_of_freedom as usize);
    let below = |t: f64| noncentral_t_share(t, degrees_of_freedom, noncentrality);
    1.0 - below(critical) + below(-critical)
}

/// The least number of independent runs in each of two groups that shows a difference between them. `difference` is in standard
/// deviations of one run: the relative difference over the coefficient of variation.
///
/// `None` where [`MOST_RUNS`] are not enough, as for no difference.
///
/// ```
/// use fasterby_core::distributions::{Certainty, pairs, runs_per_group};
///
/// // A drag area that repeats to 1.5 % from run to run: what shows a difference of 1 %, and of 5 %?
/// let [small, large] = [0.01, 0.05].map(|difference| difference / 0.015);
/// assert_eq!(runs_per_group(small, Certainty::USUAL).map(|enough| enough.runs), Some(37));
/// assert_eq!(runs_per_group(large, Certainty::USUAL).map(|enough| enough.runs), Some(3));
/// // Run by turns and compared in pairs:
/// assert_eq!(pairs(large, Certainty::USUAL).map(|enough| enough.runs), Some(4));
/// ```
pub fn runs_per_group(difference: f64, certainty: Certainty) -> Option<Enough> {
    fewest(certainty.power, |runs| {
        power_of_groups(runs, difference, certainty.false_alarm)
    })
}

/// The least number of pairs of runs, one of each kind, that shows a difference between the kinds. `difference` is in standard
/// deviations of one run, which are taken to be independent within a pair; what both runs of a pair have in common makes fewer
/// pairs do.
///
/// `None` where [`MOST_RUNS`] are not enough, as for no difference.
pub fn pairs(difference: f64, certainty: Certainty) -> Option<Enough> {
    fewest(certainty.power, |runs| {
        power_of_pairs(runs, difference, certainty.false_alarm)
    })
}

/// The smallest difference that so many runs in each of two groups show, in standard deviations of one run: the inverse of
/// [`power_of_groups`], to 1e-9. One run counts as two.
///
/// `None` for a power that no difference reaches, or one below the level itself.
pub fn smallest_difference(runs: u32, certainty: Certainty) -> Option<f64> {
    let runs = runs.clamp(2, MOST_RUNS);
    let degrees = 2 * runs - 2;
    let critical = student_t(1.0 - certainty.false_alarm, degrees as usize);
    let short = |difference: f64| {
        let noncentrality = difference * (0.5 * f64::from(runs)).sqrt();
        let below = |t: f64| noncentral_t_share(t, degrees, noncentrality);
        1.0 - below(critical) + below(-critical) - certainty.power
    };
    // Beyond this a single run of each shows it.
    const LARGEST: f64 = 1e3;
    let mut enough = (2.0 / f64::from(runs)).sqrt();
    while short(enough) < 0.0 && enough < LARGEST {
        enough *= 2.0;
    }
    root(short, 0.0, enough, 1e-9).ok()
}

/// The least number from 2 to [`MOST_RUNS`] whose power is enough; power grows with the number.
fn fewest(power: f64, power_of: impl Fn(u32) -> f64) -> Option<Enough> {
    // What is too few, doubled until it is enough; then halved in between.
    let (mut few, mut enough) = (1, 2);
    while power_of(enough) < power {
        if enough == MOST_RUNS {
            return None;
        }
        (few, enough) = (enough, (2 * enough).min(MOST_RUNS));
    }
    while enough - few > 1 {
        let middle = few + (enough - few) / 2;
        if power_of(middle) < power {
            few = middle
        } else {
            enough = middle
        }
    }
    let power = power_of(enough);
    power.is_finite().then_some(Enough {
        runs: enough,
        power,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[cfg(feature = "all")]
    fn shares_of_the_f_distribution_are_those_of_scipy() {
        // scipy.stats.f.cdf.
        const SCIPY: [(f64, f64, f64, f64); 6] = [
            (1.0, 1.0, 1.0, 0.5),
            (3.5, 2.5, 7.0, 0.917_295_327_6),
            (0.2, 10.0, 4.0, 0.017_832_647_5),
            (1.2, 200.0, 150.0, 0.880_727_983_2),
            (4.0, 6.0, 6.0, 0.942_08),
            (9.6, 3.3, 12.8, 0.998_848_996_6),
        ];
        for (ratio, above, below, want) in SCIPY {
            let got = f_share(ratio, above, below);
            // What the quadrature promises.
            assert!(
                (got - want).abs() < 1e-6,
                "F {ratio} {above} {below}: {got}"
            );
        }
    }

    #[test]
    #[cfg(feature = "all")]
    fn students_t_between_whole_degrees_of_freedom_is_near_that_of_scipy() {
        // scipy.stats.t.ppf(0.975, nu).
        for (nu, want, within) in [
            (2.5, 3.574_654_8, 0.02),
            (3.3, 3.024_874_5, 0.01),
            (5.7, 2.478_471_3, 0.001),
            (12.4, 2.171_043_1, 0.001),
        ] {
            let got = student_t_of(0.95, nu);
            assert!((got / want - 1.0).abs() < within, "{nu}: {got}");
        }
        assert_eq!(student_t_of(0.95, 6.0), student_t(0.95, 6));
    }

    /// Runs per group, pairs, and the power of each to three digits, by a run's coefficient of variation and the difference,
    /// both in percent. Worked out with SciPy's noncentral t and confirmed with statsmodels.
    const RUNS: [(f64, f64, [u32; 2], [f64; 2]); 9] = [
        (1.0, 1.0, [17, 18], [0.807, 0.807]),
        (1.0, 2.0, [6, 7], [0.876, 0.874]),
        (1.0, 5.0, [3, 3], [0.993, 0.847]),
        (1.5, 1.0, [37, 38], [0.808, 0.808]),
        (1.5, 2.0, [10, 11], [0.805, 0.804]),
        (1.5, 5.0, [3, 4], [0.857, 0.866]),
        (3.0, 1.0, [143, 144], [0.802, 0.802]),
        (3.0, 2.0, [37, 38], [0.808, 0.808]),
        (3.0, 5.0, [7, 8], [0.816, 0.815]),
    ];
    /// The smallest difference that is shown with 4, 5, … runs in each group, in standard deviations of a run. Worked out
    /// the same way.
    const RESOLVED: [(u32, f64); 7] = [
        (4, 2.3808),
        (5, 2.0244),
        (6, 1.7955),
        (8, 1.5066),
        (10, 1.3249),
        (12, 1.1968),
        (20, 0.9091),
    ];

    #[test]
    fn the_table_of_runs_is_met_in_numbers_and_in_power() {
        for (cv, difference, runs, power) in RUNS {
            let got =
                [runs_per_group, pairs].map(|of| of(difference / cv, Certainty::USUAL).unwrap());
            assert_eq!(got.map(|enough| enough.runs), runs, "{cv} {difference}");
            for (got, want) in got.iter().zip(power) {
                // Half of the last digit that is printed.
                assert!(
                    (got.power - want).abs() <= 0.0005,
                    "{cv} {difference}: {got:?}"
                );
            }
        }
    }

    #[test]
    fn the_smallest_difference_that_is_shown_has_the_power_asked_for() {
        for (runs, difference) in RESOLVED {
            let power = |by: f64| power_of_groups(runs, difference + by, 0.05);
            // Half of the last digit that is printed.
            assert!(power(-0.00005) <= 0.8 && power(0.00005) >= 0.8, "{runs}");
            let smallest = smallest_difference(runs, Certainty::USUAL).unwrap();
            assert!(
                (smallest - difference).abs() <= 0.00005,
                "{runs}: {smallest}"
            );
        }
    }

    #[test]
    fn a_share_of_the_normal_distribution_is_right() {
        // Abramowitz and Stegun 1964, Table 26.1.
        for (z, share) in [
            (0.0, 0.5),
            (1.0, 0.841_344_746_07),
            (-2.0, 0.022_750_131_95),
            (3.0, 0.998_650_101_97),
        ] {
            assert!((normal_share(z) - share).abs() < 1e-11, "{z}");
        }
        assert!(normal_share(-50.0) < 1e-12 && normal_share(50.0) > 1.0 - 1e-12);
    }

    #[test]
    fn no_difference_and_no_number_take_more_runs_than_there_are() {
        for difference in [0.0, 1e-9, f64::NAN] {
            assert_eq!(
                runs_per_group(difference, Certainty::USUAL),
                None,
                "{difference}"
            );
            assert_eq!(pairs(difference, Certainty::USUAL), None, "{difference}");
        }
        assert_eq!(
            runs_per_group(1e6, Certainty::USUAL).map(|enough| enough.runs),
            Some(2)
        );
    }

    #[test]
    fn a_prediction_from_five_is_less_sure_than_a_known_distribution() {
        // Two standard deviations above the mean: Student's t of 2/√1.2 with 4 degrees of freedom, 0.9290 (SciPy 1.17.1).
        let share = predicted_share(2.0, 0.0, 1.0, 5);
        assert!(
            (share - 0.929_0).abs() < 0.000_05 && share < normal_share(2.0),
            "{share}"
        );
    }
}
