//! What it would be worth to measure something before choosing: the value of information, from draws of what each choice gives.
//! No physics.

use std::f64::consts::TAU;

use serde::{Deserialize, Serialize};

/// Terms of the curve that is fitted to what a measured error does: orthonormal Hermite polynomials of degree 1 to 3.
const TERMS: usize = 3;
/// A fitted term smaller than this many of its standard errors counts as nothing.
const STANDARD_ERRORS: f64 = 3.0;
/// Half the width, in standard deviations, and the number of steps over which a mean over an error is summed.
const GRID: (f64, usize) = (5.0, 400);

/// How many occasions there are to choose on, among how many choices, and how many measurements are weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shape {
    /// Occasions.
    pub occasions: usize,
    /// Choices on each.
    pub choices: usize,
    /// Measurements.
    pub measurements: usize,
}

impl Shape {
    fn cells(self) -> usize {
        self.occasions * self.choices
    }
}

/// What a measurement tells: a linear combination of the inputs' errors, scaled to be a standard normal error itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Direction {
    /// Inputs by their places, and the weight of each; the squares of the weights add up to 1.
    weights: Vec<(usize, f64)>,
}

impl Direction {
    /// A measurement of one input alone.
    pub fn of(input: usize) -> Self {
        Self {
            weights: vec![(input, 1.0)],
        }
    }

    /// A measurement of something that one standard deviation of each of these inputs moves by so much, in a unit of its own. The
    /// errors of the inputs must be independent of each other. `None` where nothing moves it.
    pub fn new(moves: &[(usize, f64)]) -> Option<Self> {
        let sd = moves
            .iter()
            .map(|(_, moves)| moves * moves)
            .sum::<f64>()
            .sqrt();
        (sd > 0.0).then(|| Self {
            weights: moves
                .iter()
                .map(|&(input, moves)| (input, moves / sd))
                .collect(),
        })
    }

    /// The error of what is measured, in its standard deviations, for errors of the inputs in theirs.
    pub fn error(&self, errors: &[f64]) -> f64 {
        self.weights
            .iter()
            .map(|&(input, weight)| weight * errors.get(input).copied().unwrap_or(0.0))
            .sum()
    }
}

/// Counts and sums over draws. Those of two lots of draws add up, so that long work can be done in parts.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Tally {
    /// How many draws there were.
    pub draws: u32,
    /// How many of them failed, and are left out of the rest.
    pub failed: u32,
    /// For each occasion and choice, in how many it was the best; shared where several are.
    pub wins: Vec<f64>,
    /// For each occasion, the sum of what the best of each draw gives.
    pub best: Vec<f64>,
    /// For each occasion and choice, the sum of what it gives.
    pub sums: Vec<f64>,
    /// And of its square.
    pub squares: Vec<f64>,
    /// For each measurement and term, the sum of the term.
    pub terms: Vec<f64>,
    /// For each measurement, term, occasion and choice, the sum of the term times what the choice gives.
    pub products: Vec<f64>,
}

impl Tally {
    /// Nothing counted yet.
    pub fn new(shape: Shape) -> Self {
        let cells = shape.cells();
        Self {
            draws: 0,
            failed: 0,
            wins: vec![0.0; cells],
            best: vec![0.0; shape.occasions],
            sums: vec![0.0; cells],
            squares: vec![0.0; cells],
            terms: vec![0.0; TERMS * shape.measurements],
            products: vec![0.0; TERMS * shape.measurements * cells],
        }
    }

    /// Whether it is of this shape and holds numbers only.
    pub fn fits(&self, shape: Shape) -> bool {
        let empty = Self::new(shape);
        let lists = |tally: &Self| {
            [
                &tally.wins,
                &tally.best,
                &tally.sums,
                &tally.squares,
                &tally.terms,
                &tally.products,
            ]
            .map(Vec::len)
        };
        let numbers = [
            &self.wins,
            &self.best,
            &self.sums,
            &self.squares,
            &self.terms,
            &self.products,
        ];
        lists(self) == lists(&empty)
            && self.failed <= self.draws
            && numbers
                .into_iter()
                .flatten()
                .all(|number| number.is_finite())
    }

    /// Counts one draw: the errors of what is measured in standard deviations, and for each occasion what each choice gives, more being
    /// better; `None` for a draw that failed.
    pub fn add(&mut self, shape: Shape, errors: &[f64], gains: Option<&[f64]>) {
        self.draws = self.draws.saturating_add(1);
        let Some(gains) = gains.filter(|gains| gains.iter().all(|gain| gain.is_finite())) else {
            self.failed = self.failed.saturating_add(1);
            return;
        };
        let occasions = gains
            .chunks(shape.choices)
            .zip(self.wins.chunks_mut(shape.choices))
            .zip(&mut self.best);
        for ((gains, wins), sum) in occasions {
            let best = largest(gains);
            let shared = 1.0 / gains.iter().filter(|&&gain| gain == best).count() as f64;
            wins.iter_mut()
                .zip(gains)
                .filter(|(_, gain)| **gain == best)
                .for_each(|(wins, _)| *wins += shared);
            *sum += best;
        }
        self.sums
            .iter_mut()
            .zip(gains)
            .for_each(|(sum, gain)| *sum += gain);
        self.squares
            .iter_mut()
            .zip(gains)
            .for_each(|(sum, gain)| *sum += gain * gain);
        let terms = errors.iter().flat_map(|&error| hermite(error));
        let rows = self.products.chunks_mut(gains.len().max(1));
        for ((sum, products), term) in self.terms.iter_mut().zip(rows).zip(terms) {
            *sum += term;
            products
                .iter_mut()
                .zip(gains)
                .for_each(|(product, gain)| *product += term * gain);
        }
    }

    /// How many draws count.
    pub fn kept(&self) -> f64 {
        f64::from(self.draws.saturating_sub(self.failed))
    }

    /// For each choice, the share of draws in which it is the best on an occasion.
    pub fn win_shares(&self, shape: Shape, occasion: usize) -> Vec<f64> {
        let kept = self.kept().max(1.0);
        self.on(shape, &self.wins, occasion)
            .iter()
            .map(|wins| wins / kept)
            .collect()
    }

    /// What it would be worth on an occasion to know every input before choosing: the mean of the best of each draw less the
    /// best of the means.
    pub fn worth_of_all(&self, shape: Shape, occasion: usize) -> f64 {
        let kept = self.kept();
        let mean_best = self.best.get(occasion).map_or(0.0, |sum| sum / kept);
        let best_mean = largest(self.on(shape, &self.sums, occasion)) / kept;
        if kept > 0.0 {
            (mean_best - best_mean).max(0.0)
        } else {
            0.0
        }
    }

    /// What one exact measurement would be worth on an occasion before choosing, all else as uncertain as it is: the expected value of
    /// partial perfect information.
    ///
    /// What each choice gives on the mean, given the measured error `z`, is fitted by a cubic in `z` over the draws (orthonormal
    /// Hermite polynomials, whose coefficients are covariances); its best choice is averaged over the normal distribution of `z`, less the
    /// best of the plain means. Terms within three of their standard errors (`sd/√draws` of what the choice gives) are left out,
    /// so that a measurement that tells nothing is worth nothing; what is found is good to about as much.
    pub fn worth_of(&self, shape: Shape, occasion: usize, measurement: usize) -> f64 {
        let kept = self.kept();
        if kept < 2.0 {
            return 0.0;
        }
        let sums = self.on(shape, &self.sums, occasion);
        let squares = self.on(shape, &self.squares, occasion);
        let curves: Vec<[f64; TERMS + 1]> = (0..shape.choices)
            .map(|choice| {
                let mean = sums[choice] / kept;
                let variance = (squares[choice] / kept - mean * mean).max(0.0);
                let least = STANDARD_ERRORS * (variance / kept).sqrt();
                let coefficient = |term: usize| {
                    let row = measurement * TERMS + term;
                    let product =
                        self.products[row * shape.cells() + occasion * shape.choices + choice];
                    let covariance = product / kept - mean * self.terms[row] / kept;
                    if covariance.abs() < least {
                        0.0
                    } else {
                        covariance
                    }
                };
                [mean, coefficient(0), coefficient(1), coefficient(2)]
            })
            .collect();
        let best_mean = curves
            .iter()
            .map(|curve| curve[0])
            .fold(f64::NEG_INFINITY, f64::max);
        let (half, steps) = GRID;
        let step = 2.0 * half / steps as f64;
        let mut expected = 0.0;
        for i in 0..=steps {
            let z = -half + step * i as f64;
            let [h1, h2, h3] = hermite(z);
            let gives = |curve: &[f64; TERMS + 1]| {
                curve[0] - best_mean + curve[1] * h1 + curve[2] * h2 + curve[3] * h3
            };
            let best = curves.iter().map(gives).fold(f64::NEG_INFINITY, f64::max);
            expected += step * (-0.5 * z * z).exp() / TAU.sqrt() * best;
        }
        expected.max(0.0).min(self.worth_of_all(shape, occasion))
    }

    fn on<'a>(&self, shape: Shape, cells: &'a [f64], occasion: usize) -> &'a [f64] {
        cells
            .get(occasion * shape.choices..(occasion + 1) * shape.choices)
            .unwrap_or(&[])
    }
}

fn largest(of: &[f64]) -> f64 {
    of.iter().copied().fold(f64::NEG_INFINITY, f64::max)
}

/// Hermite polynomials that are orthonormal under the standard normal distribution.
fn hermite(z: f64) -> [f64; TERMS] {
    [
        z,
        (z * z - 1.0) / 2f64.sqrt(),
        z * (z * z - 3.0) / 6f64.sqrt(),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::uncertainty::draws::Normal;

    const SHAPE: Shape = Shape {
        occasions: 1,
        choices: 2,
        measurements: 2,
    };
    const DRAWS: u32 = 20_000;

    /// One choice gives nothing for sure; the other `mean` and what the two inputs' errors bring.
    fn tallied(mean: f64, moves: [f64; 2]) -> Tally {
        let mut tally = Tally::new(SHAPE);
        let mut normal = Normal::new(5);
        for _ in 0..DRAWS {
            let errors = [normal.draw(), normal.draw()];
            let gain = mean + moves[0] * errors[0] + moves[1] * errors[1];
            tally.add(SHAPE, &errors, Some(&[0.0, gain]));
        }
        tally
    }

    /// The loss integral `E[max(0, x)] − max(0, mean)` of a normal x by quadrature.
    fn exact(mean: f64, sd: f64) -> f64 {
        const STEPS: i32 = 40_000;
        let width = 16.0 / f64::from(STEPS);
        let density = |z: f64| (-0.5 * z * z).exp() / TAU.sqrt();
        let sum: f64 = (0..STEPS)
            .map(|i| -8.0 + width * (f64::from(i) + 0.5))
            .map(|z| density(z) * (mean + sd * z).max(0.0))
            .sum();
        sum * width - mean.max(0.0)
    }

    #[test]
    fn what_is_known_is_worth_the_loss_that_it_saves() {
        for (mean, moves) in [(1.0, [3.0, 1.0]), (0.0, [2.0, 2.0]), (-4.0, [3.0, 0.5])] {
            let tally = tallied(mean, moves);
            // Four standard errors of a mean over the draws.
            let allowed = 4.0 * moves[0].hypot(moves[1]) / f64::from(DRAWS).sqrt();
            let (got, all) = (
                tally.worth_of_all(SHAPE, 0),
                exact(mean, moves[0].hypot(moves[1])),
            );
            assert!((got - all).abs() < allowed, "{mean}: {got} for {all}");
            for (input, moved) in moves.into_iter().enumerate() {
                let (got, want) = (tally.worth_of(SHAPE, 0, input), exact(mean, moved));
                assert!(
                    (got - want).abs() < allowed,
                    "{mean} {input}: {got} for {want}"
                );
            }
        }
    }

    /// Two drag areas with errors of one standard deviation that correlate, each wrong by a part common to both and a part of its
    /// own; the choice is between them, and what counts is their difference.
    #[test]
    fn a_shared_error_makes_one_value_worth_little_and_the_difference_all() {
        const SHAPE: Shape = Shape {
            occasions: 1,
            choices: 2,
            measurements: 3,
        };
        const MEAN: f64 = 0.4;
        for correlation in [0.0_f64, 0.5, 0.95] {
            let (common, own) = (correlation.sqrt(), (1.0 - correlation).sqrt());
            let measured = [
                Direction::new(&[(0, common), (1, own)]).unwrap(),
                Direction::new(&[(0, common), (2, own)]).unwrap(),
                Direction::new(&[(1, own), (2, -own)]).unwrap(),
            ];
            let mut tally = Tally::new(SHAPE);
            let mut normal = Normal::new(11);
            for _ in 0..DRAWS {
                let errors = [normal.draw(), normal.draw(), normal.draw()];
                let gain = MEAN + own * (errors[1] - errors[2]);
                tally.add(
                    SHAPE,
                    &measured.each_ref().map(|one| one.error(&errors)),
                    Some(&[0.0, gain]),
                );
            }
            // Given one value's error, the difference of bivariate normal values moves by 1 − ρ of it; its own sd is √(2(1 − ρ)).
            let apart = (2.0 * (1.0 - correlation)).sqrt();
            // Four standard errors of a mean over the draws.
            let allowed = 4.0 * apart / f64::from(DRAWS).sqrt();
            for (place, moved) in [1.0 - correlation, 1.0 - correlation, apart]
                .into_iter()
                .enumerate()
            {
                let (got, want) = (tally.worth_of(SHAPE, 0, place), exact(MEAN, moved));
                assert!(
                    (got - want).abs() < allowed,
                    "{correlation} {place}: {got} for {want}"
                );
            }
        }
    }

    #[test]
    fn nothing_is_measured_where_nothing_moves() {
        assert_eq!(Direction::new(&[(0, 0.0), (1, 0.0)]), None);
        assert_eq!(Direction::new(&[]), None);
    }

    #[test]
    fn an_input_that_does_nothing_is_worth_nothing() {
        assert_eq!(tallied(0.5, [2.0, 0.0]).worth_of(SHAPE, 0, 1), 0.0);
    }

    #[test]
    fn draws_that_fail_are_counted_and_left_out() {
        let mut tally = tallied(1.0, [1.0, 1.0]);
        let before = tally.win_shares(SHAPE, 0);
        tally.add(SHAPE, &[0.0, 0.0], None);
        tally.add(SHAPE, &[0.0, 0.0], Some(&[0.0, f64::NAN]));
        assert_eq!((tally.failed, tally.draws), (2, DRAWS + 2));
        assert_eq!(tally.win_shares(SHAPE, 0), before);
    }

    #[test]
    fn a_tally_of_another_shape_does_not_fit() {
        let tally = Tally::new(SHAPE);
        assert!(tally.fits(SHAPE));
        assert!(!tally.fits(Shape {
            choices: 3,
            ..SHAPE
        }));
        assert!(
            !Tally {
                sums: vec![f64::NAN, 0.0],
                ..tally
            }
            .fits(SHAPE)
        );
    }
}
