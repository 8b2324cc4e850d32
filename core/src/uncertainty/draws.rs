//! How the doubt in the inputs reaches the answer: first-order propagation for the live figure, and seeded Monte Carlo
//! with the same draws on both sides of a comparison, so that what is common cancels.

use std::cmp::Ordering;
use std::collections::BinaryHeap;
use std::f64::consts::SQRT_2;

use serde::Serialize;

use crate::numerics::solve::within;

/// An input that is not known exactly: its value, one standard deviation and hard range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UncertainInput {
    /// The value.
    pub value: f64,
    /// One standard deviation, positive.
    pub sd: f64,
    /// The least value it can have.
    pub min: f64,
    /// The greatest value it can have.
    pub max: f64,
    /// How its error goes with that of the input before it: their coefficient of correlation, 0 if they are independent.
    pub correlation: f64,
}

impl UncertainInput {
    /// The share of its own error that is left once the input before it is known.
    fn independent(&self) -> f64 {
        (1.0 - self.correlation * self.correlation).sqrt()
    }
}

/// Outputs at the values themselves, and how far one standard deviation of each input moves each output.
#[derive(Clone, Debug, PartialEq)]
pub struct Spread<const N: usize> {
    /// Outputs at the values.
    pub base: [f64; N],
    /// For each input, the signed change of each output that its error brings; of an input that is correlated with the one
    /// before it, the part of its error that is its own, the common part being with that one. Then, for each input again,
    /// what the curvature of the output in that input adds ([`moves`]). Squares of all of them add up to the variance.
    pub by_input: Vec<[f64; N]>,
}

impl<const N: usize> Spread<N> {
    /// One standard deviation of the ratio of two linear combinations of outputs, as a share of it, to first order.
    pub(crate) fn ratio_sd_share(
        &self,
        over: impl Fn(&[f64; N]) -> f64,
        under: impl Fn(&[f64; N]) -> f64,
    ) -> f64 {
        let (over_here, under_here) = (over(&self.base), under(&self.base));
        self.by_input
            .iter()
            .map(|moved| (over(moved) / over_here - under(moved) / under_here).powi(2))
            .sum::<f64>()
            .sqrt()
    }

    /// One standard deviation of an output.
    pub fn sd(&self, output: usize) -> f64 {
        self.by_input
            .iter()
            .map(|moved| moved[output] * moved[output])
            .sum::<f64>()
            .sqrt()
    }
}

/// Propagation of errors: each input is moved one standard deviation up and down, the rest held. See [`moves`].
///
/// # Errors
/// Whatever `f` returns at the values. A move at which `f` fails counts from the other side alone, or not at all.
///
/// ```
/// use fasterby_core::draws::{UncertainInput, propagate};
///
/// let input = UncertainInput { value: 10.0, sd: 2.0, min: 0.0, max: 100.0, correlation: 0.0 };
/// let spread = propagate(&[input], |x| Ok::<_, ()>([3.0 * x[0]])).expect("values");
/// assert_eq!((spread.base, spread.sd(0)), ([30.0], 6.0));
/// ```
pub fn propagate<const N: usize, E>(
    inputs: &[UncertainInput],
    mut f: impl FnMut(&[f64]) -> Result<[f64; N], E>,
) -> Result<Spread<N>, E> {
    let array =
        |outputs: &Vec<f64>| std::array::from_fn(|n| outputs.get(n).copied().unwrap_or(f64::NAN));
    let moves = moves(inputs, &mut |values: &[f64]| f(values).map(Vec::from))?;
    Ok(Spread {
        base: array(&moves.base),
        by_input: moves.by_input.iter().map(array).collect(),
    })
}

/// An input has been moved to both sides where the two moves together are two standard deviations, but for rounding.
const BOTH_SIDES: f64 = 2.0 - 1e-9;

/// [`Spread`] of as many outputs as there happen to be.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sensitivities {
    /// Outputs at the values.
    pub base: Vec<f64>,
    /// For each input, the signed change of each output, as in [`Spread::by_input`].
    pub by_input: Vec<Vec<f64>>,
}

impl Sensitivities {
    /// One standard deviation of a linear combination of outputs: inputs add in quadrature.
    #[cfg(feature = "all")]
    pub fn sd(&self, output: impl Fn(&[f64]) -> f64) -> f64 {
        self.by_input
            .iter()
            .map(|moved| output(moved).powi(2))
            .sum::<f64>()
            .sqrt()
    }
}

/// Gives outputs for values of the inputs.
type Outputs<'a, E> = dyn FnMut(&[f64]) -> Result<Vec<f64>, E> + 'a;

/// Propagation of errors to as many outputs as `f` gives.
///
/// With `y₊`, `y₋` and `y₀` an output with an input one standard deviation above, below and at its value, the slope is
/// `a = (y₊ − y₋)/2` and the curvature `b = (y₊ + y₋)/2 − y₀`. For a normal error the output `y₀ + a z + b z²` has the variance
/// `a² + 2 b²`: rows of `a`, then rows of `√2 b`, whose squares add up to it, also for a difference of outputs. So an output
/// that is even in an error (the wind's direction on a course out and back) is uncertain too. Exact for outputs quadratic in
/// each input without cross terms. A move that would leave the hard range stops at its end; its slope is scaled up, and its
/// curvature left out, since the two sides differ in length. The curvature of correlated inputs counts as if they were not.
///
/// # Errors
/// As [`propagate`].
pub fn moves<E>(inputs: &[UncertainInput], f: &mut Outputs<'_, E>) -> Result<Sensitivities, E> {
    let mut values: Vec<f64> = inputs.iter().map(|input| input.value).collect();
    let base = f(&values)?;
    let mut by_input: Vec<Vec<f64>> = Vec::with_capacity(2 * inputs.len());
    let mut curvatures: Vec<Vec<f64>> = Vec::with_capacity(inputs.len());
    for (i, input) in inputs.iter().enumerate() {
        let mut moved_to = |value: f64| {
            let held = std::mem::replace(&mut values[i], value);
            let moved = f(&values);
            values[i] = held;
            moved.map_or_else(|_| (input.value, base.clone()), |outputs| (value, outputs))
        };
        let high = moved_to((input.value + input.sd).min(input.max));
        let low = moved_to((input.value - input.sd).max(input.min));
        let width = high.0 - low.0;
        let scale = if width > 0.0 { input.sd / width } else { 0.0 };
        let mut moves: Vec<f64> = high
            .1
            .iter()
            .zip(&low.1)
            .map(|(high, low)| scale * (high - low))
            .collect();
        let both_sides = width >= BOTH_SIDES * input.sd;
        let curvature = |(at, (high, low)): (&f64, (&f64, &f64))| {
            if both_sides {
                SQRT_2 * (0.5 * (high + low) - at)
            } else {
                0.0
            }
        };
        curvatures.push(
            base.iter()
                .zip(high.1.iter().zip(&low.1))
                .map(curvature)
                .collect(),
        );
        if let Some(before) = by_input.last_mut() {
            before
                .iter_mut()
                .zip(&moves)
                .for_each(|(common, moves)| *common += input.correlation * moves);
        }
        let own = input.independent();
        moves.iter_mut().for_each(|moves| *moves *= own);
        by_input.push(moves);
    }
    by_input.append(&mut curvatures);
    Ok(Sensitivities { base, by_input })
}

/// What many draws say of a difference.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Drawn {
    /// How many draws there were.
    pub draws: u32,
    /// How many could not be ridden, and are left out of the rest.
    pub failed: u32,
    /// Share of draws in which the difference is positive.
    pub share_positive: f64,
    /// Mean of the difference.
    pub mean: f64,
    /// Standard deviation of the difference.
    pub sd: f64,
    /// The value that 2.5 % of draws lie below.
    pub low_95: f64,
    /// The middle draw.
    pub median: f64,
    /// The value that 97.5 % of draws lie below.
    pub high_95: f64,
}

/// Draws the error of every input in standard deviations: normal, and correlated as the inputs say.
pub fn draw_errors(inputs: &[UncertainInput], normal: &mut Normal, errors: &mut [f64]) {
    let mut before = 0.0;
    for (error, input) in errors.iter_mut().zip(inputs) {
        before = input.correlation * before + input.independent() * normal.draw();
        *error = before;
    }
}

/// The inputs with these errors, in standard deviations, held in their hard ranges.
pub fn with_errors(inputs: &[UncertainInput], errors: &[f64], values: &mut [f64]) {
    for ((value, input), error) in values.iter_mut().zip(inputs).zip(errors) {
        *value = within(input.value + input.sd * error, input.min, input.max);
    }
}

/// Seeded Monte Carlo of one output, the inputs drawn by [`draw_errors`].
///
/// The same seed gives the same draws on every platform (the generator is pure integer arithmetic; the logarithm and
/// cosine that shape it may differ in the last digit).
pub fn monte_carlo<E>(
    inputs: &[UncertainInput],
    draws: u32,
    seed: u64,
    mut f: impl FnMut(&[f64]) -> Result<f64, E>,
) -> Drawn {
    let mut normal = Normal::new(seed);
    let (mut errors, mut values) = (vec![0.0; inputs.len()], vec![0.0; inputs.len()]);
    let results: BinaryHeap<Ordered> = (0..draws)
        .filter_map(|_| {
            draw_errors(inputs, &mut normal, &mut errors);
            with_errors(inputs, &errors, &mut values);
            f(&values)
                .ok()
                .filter(|result| result.is_finite())
                .map(Ordered)
        })
        .collect();
    summarise(draws, &results.into_sorted_vec())
}

/// A finite number, ordered by size. A heap orders them here because it is a tenth of the code of a sort.
#[derive(PartialEq)]
struct Ordered(f64);

impl Eq for Ordered {}

impl PartialOrd for Ordered {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Ordered {
    fn cmp(&self, other: &Self) -> Ordering {
        self.0.total_cmp(&other.0)
    }
}

fn summarise(draws: u32, ascending: &[Ordered]) -> Drawn {
    let kept = ascending.len();
    if kept == 0 {
        return Drawn {
            draws,
            failed: draws,
            ..Drawn::default()
        };
    }
    let n = kept as f64;
    let mean = ascending.iter().map(|x| x.0).sum::<f64>() / n;
    let variance = ascending
        .iter()
        .map(|x| (x.0 - mean) * (x.0 - mean))
        .sum::<f64>()
        / (n - 1.0).max(1.0);
    let at = |share: f64| ascending[((share * n) as usize).min(kept - 1)].0;
    Drawn {
        draws,
        failed: draws - kept as u32,
        share_positive: ascending.iter().filter(|x| x.0 > 0.0).count() as f64 / n,
        mean,
        sd: variance.sqrt(),
        low_95: at(0.025),
        median: at(0.5),
        high_95: at(0.975),
    }
}

/// Normal deviates by the Box–Muller transform, two at a time.
#[derive(Clone, Debug)]
pub struct Normal {
    uniform: fastrand::Rng,
    spare: Option<f64>,
}

impl Normal {
    /// A sequence of deviates; the same seed gives the same.
    pub fn new(seed: u64) -> Self {
        Self {
            uniform: fastrand::Rng::with_seed(seed),
            spare: None,
        }
    }

    /// The next deviate.
    pub fn draw(&mut self) -> f64 {
        if let Some(spare) = self.spare.take() {
            return spare;
        }
        // 1 − u lies in (0, 1], so the logarithm is finite.
        let radius = (-2.0 * (1.0 - self.uniform.f64()).ln()).sqrt();
        let (sin, cos) = (std::f64::consts::TAU * self.uniform.f64()).sin_cos();
        self.spare = Some(radius * sin);
        radius * cos
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const INPUTS: [UncertainInput; 2] = [
        UncertainInput {
            value: 10.0,
            sd: 2.0,
            min: 0.0,
            max: 100.0,
            correlation: 0.0,
        },
        UncertainInput {
            value: 1.0,
            sd: 3.0,
            min: -100.0,
            max: 100.0,
            correlation: 0.0,
        },
    ];

    fn sum(x: &[f64]) -> Result<[f64; 1], ()> {
        Ok([2.0 * x[0] + x[1]])
    }

    #[test]
    fn a_linear_function_spreads_exactly() {
        let spread = propagate(&INPUTS, sum).unwrap();
        assert_eq!(spread.base, [21.0]);
        assert!((spread.sd(0) - 5.0).abs() < 1e-12);
    }

    #[test]
    fn a_function_that_is_even_in_an_error_spreads_as_draws_of_it_do() {
        // y = 4 z² + 3 z' has the variance 2 · 4² + 3².
        let even = |x: &[f64]| Ok::<_, ()>([(x[0] - 10.0).powi(2) + x[1]]);
        let spread = propagate(&INPUTS, even).unwrap();
        assert!((spread.sd(0) - 41f64.sqrt()).abs() < 1e-12, "{spread:?}");
        let drawn = monte_carlo(&INPUTS, 40_000, 7, |x| even(x).map(|[y]| y));
        // The sd of a squared normal error has four times the standard error of a normal one's, 1/√(2n).
        assert!(
            (drawn.sd / 41f64.sqrt() - 1.0).abs() < 4.0 * 4.0 / 283.0,
            "{drawn:?}"
        );
    }

    #[test]
    fn an_input_at_the_end_of_its_range_has_no_curvature_from_one_side() {
        let at_end = [UncertainInput {
            min: 10.0,
            ..INPUTS[0]
        }];
        let spread = propagate(&at_end, |x| Ok::<_, ()>([2.0 * x[0]])).unwrap();
        assert!((spread.sd(0) - 4.0).abs() < 1e-12, "{spread:?}");
    }

    #[test]
    fn draws_agree_with_propagation_for_a_linear_function() {
        let drawn = monte_carlo(&INPUTS, 40_000, 7, |x| sum(x).map(|[y]| y));
        // Four standard errors of a mean and of a standard deviation over 40,000 draws.
        assert!((drawn.mean - 21.0).abs() < 4.0 * 5.0 / 200.0, "{drawn:?}");
        assert!((drawn.sd - 5.0).abs() < 4.0 * 5.0 / 283.0, "{drawn:?}");
        assert_eq!(drawn.failed, 0);
    }

    #[test]
    fn errors_that_go_together_spread_by_their_covariance() {
        for correlation in [-0.999, -0.9, 0.5] {
            let inputs = [
                INPUTS[0],
                UncertainInput {
                    correlation,
                    ..INPUTS[1]
                },
            ];
            // Variances 4² and 3² of the two terms, and twice their covariance.
            let variance: f64 = 16.0 + 9.0 + 2.0 * correlation * 4.0 * 3.0;
            let spread = propagate(&inputs, sum).unwrap();
            assert!(
                (spread.sd(0) - variance.sqrt()).abs() < 1e-12,
                "{correlation}"
            );
            let drawn = monte_carlo(&inputs, 40_000, 7, |x| sum(x).map(|[y]| y));
            // Four standard errors of a standard deviation over 40,000 draws.
            assert!(
                (drawn.sd / variance.sqrt() - 1.0).abs() < 4.0 / 283.0,
                "{correlation} {drawn:?}"
            );
        }
    }

    #[test]
    fn one_seed_gives_one_answer() {
        let once = monte_carlo(&INPUTS, 100, 1, |x| sum(x).map(|[y]| y));
        assert_eq!(once, monte_carlo(&INPUTS, 100, 1, |x| sum(x).map(|[y]| y)));
        assert_ne!(once, monte_carlo(&INPUTS, 100, 2, |x| sum(x).map(|[y]| y)));
    }

    #[test]
    fn draws_that_fail_are_counted_and_left_out() {
        let drawn = monte_carlo(&INPUTS, 1000, 3, |x| {
            if x[1] > 1.0 { Err(()) } else { Ok(x[1]) }
        });
        assert!(drawn.failed > 400 && drawn.failed < 600);
        assert_eq!(monte_carlo(&INPUTS, 5, 3, |_| Err::<f64, ()>(())).failed, 5);
    }
}
