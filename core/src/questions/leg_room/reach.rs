//! The uncertainty of angles, given that the leg reaches the pedal: the saddle was set to this leg, so that lengths with which it
//! would not reach are not the rider's.
//!
//! The slack of a leg is how much longer its links are than the way to the pedal at its farthest. To first order it is normal
//! about its value, and it reaches where it is positive. Along the direction of the inputs in which slack changes fastest, a
//! standard deviation at a time, outputs are worked out as they are and weighed by the truncated normal distribution; across
//! it, where slack does not change, they move to first order. Near a straight knee an angle goes with the root of the slack, which
//! the first part follows and first order would not. `tests/oracle/leg_reach.py` holds it against draws.

use super::{Making, NUMBERS, OUTPUTS, Outputs, Rider};
use crate::inputs::quantity::Figure;
use crate::numerics::distributions::normal_share;
use crate::numerics::solve::{gauss_points, within};
use crate::uncertainty::draws::UncertainInput;

/// Farther from the value than this many standard deviations nothing is looked at.
const FARTHEST: f64 = 5.0;
/// Panels of five-point quadrature; with them the spread is good to a thousandth.
const PANELS: usize = 4;
/// The step of the moves across, as a share of a standard deviation, and of the distance to where the leg no longer reaches.
const STEP: f64 = 0.1;
const STEP_OF_REACH: f64 = 0.3;

/// One side's leg reaching, and what its outputs do then.
pub(super) struct Reaching {
    /// The slack over its standard deviation.
    margin: f64,
    /// By how much of its standard deviation each input goes for one of the slack.
    direction: Vec<f64>,
    /// Along that direction.
    along: Vec<Node>,
    /// How one standard deviation of each input moves the outputs.
    moves: Vec<Outputs>,
}

/// Outputs somewhere along the direction of slack.
struct Node {
    /// By how many standard deviations of the slack.
    by_sd: f64,
    /// How likely it is there; all add up to 1.
    weight: f64,
    outputs: Outputs,
}

/// The inputs that are not exact: their places among all values, and what they are drawn from.
pub(super) struct Moving<'a> {
    pub making: &'a Making<'a>,
    pub values: &'a [f64; NUMBERS],
    pub places: &'a [usize],
    pub uncertain: &'a [UncertainInput],
}

impl Moving<'_> {
    /// The values with every input moved by so many of its standard deviations, inside its hard range.
    fn moved(&self, by_sd: impl Fn(usize) -> f64) -> [f64; NUMBERS] {
        let mut values = *self.values;
        for (i, (&place, input)) in self.places.iter().zip(self.uncertain).enumerate() {
            values[place] = within(input.value + by_sd(i) * input.sd, input.min, input.max);
        }
        values
    }

    /// How far apart two values of an input are, a step up and down about `mean`, in its standard deviations: less at an end of its
    /// hard range.
    fn span(&self, i: usize, mean: f64, step: f64) -> f64 {
        let input = &self.uncertain[i];
        let at = |by_sd: f64| within(input.value + by_sd * input.sd, input.min, input.max);
        (at(mean + step) - at(mean - step)) / input.sd
    }

    fn slack_m(&self, side: usize, values: &[f64; NUMBERS]) -> f64 {
        self.making
            .riders(values)
            .map_or(f64::NAN, |riders| match riders[side].linkage().turn() {
                Ok(turn) => turn.slack_m(),
                Err(missing) => -missing.missing_m,
            })
    }
}

/// Outputs of both sides, those of a side that cannot be being no number.
fn outputs_of_each(making: &Making<'_>, values: &[f64; NUMBERS]) -> Outputs {
    let mut outputs = [f64::NAN; 2 * OUTPUTS];
    if let Ok(riders) = making.riders(values) {
        for (side, rider) in outputs.chunks_exact_mut(OUTPUTS).zip(&riders) {
            if let Ok(own) = Rider::outputs(rider) {
                side.copy_from_slice(&own);
            }
        }
    }
    outputs
}

/// A difference for each standard deviation; nothing moves what cannot move.
fn per_span(difference: f64, span: f64) -> f64 {
    if span > 0.0 { difference / span } else { 0.0 }
}

impl Reaching {
    /// `None` where nothing that is not exact moves the slack.
    pub(super) fn new(moving: &Moving<'_>, side: usize) -> Option<Self> {
        let slack_m = moving.slack_m(side, moving.values);
        let slack_moves: Vec<f64> = (0..moving.uncertain.len())
            .map(|i| {
                let at = |sd: f64| {
                    moving.slack_m(side, &moving.moved(|j| if i == j { sd } else { 0.0 }))
                };
                per_span(at(STEP) - at(-STEP), moving.span(i, 0.0, STEP))
            })
            .collect();
        let slack_sd_m = slack_moves
            .iter()
            .map(|moves| moves * moves)
            .sum::<f64>()
            .sqrt();
        if slack_sd_m.is_nan() || slack_sd_m <= 0.0 {
            return None;
        }
        let margin = slack_m / slack_sd_m;
        let direction: Vec<f64> = slack_moves.iter().map(|moves| moves / slack_sd_m).collect();

        // From the end at which the leg just reaches, by the square of a variable: the root becomes smooth.
        let from = (-margin).max(-FARTHEST);
        let end = (FARTHEST - from).sqrt();
        let mut along = Vec::with_capacity(5 * PANELS);
        for panel in 0..PANELS {
            let edge = |panel: usize| end * panel as f64 / PANELS as f64;
            for (root, width) in gauss_points(edge(panel), edge(panel + 1)) {
                let by_sd = from + root * root;
                let outputs =
                    outputs_of_each(moving.making, &moving.moved(|i| by_sd * direction[i]));
                along.push(Node {
                    by_sd,
                    weight: 2.0 * root * width * (-0.5 * by_sd * by_sd).exp(),
                    outputs,
                });
            }
        }
        let sum: f64 = along.iter().map(|node| node.weight).sum();
        along.iter_mut().for_each(|node| node.weight /= sum);
        let mean: f64 = along.iter().map(|node| node.weight * node.by_sd).sum();
        let step = STEP.min(STEP_OF_REACH * (mean - from));
        let moves = (0..moving.uncertain.len())
            .map(|i| {
                let at = |sd: f64| {
                    let by_sd = |j: usize| mean * direction[j] + if i == j { sd } else { 0.0 };
                    outputs_of_each(moving.making, &moving.moved(by_sd))
                };
                let (high, low) = (at(step), at(-step));
                let span = moving.span(i, mean * direction[i], step);
                std::array::from_fn(|output| per_span(high[output] - low[output], span))
            })
            .collect();
        Some(Self {
            margin,
            direction,
            along,
            moves,
        })
    }

    /// The share of the combinations of the inputs with which the leg reaches.
    pub(super) fn share(&self) -> f64 {
        normal_share(self.margin)
    }

    /// Of two sides the one that reaches less often; both legs are of one rider, so that where it reaches the other does.
    pub(super) fn rarer<'a>(one: Option<&'a Self>, other: Option<&'a Self>) -> Option<&'a Self> {
        match (one, other) {
            (Some(one), Some(other)) => Some(if one.margin < other.margin {
                one
            } else {
                other
            }),
            (one, other) => one.or(other),
        }
    }

    /// One standard deviation of a linear combination of outputs, given that the leg reaches. Not a number where no such
    /// combination can be worked out.
    fn sd(&self, output: &dyn Fn(&Outputs) -> f64) -> f64 {
        let (mut sum, mut first, mut second) = (0.0, 0.0, 0.0);
        for Node {
            weight, outputs, ..
        } in &self.along
        {
            let value = output(outputs);
            if value.is_finite() {
                sum += weight;
                first += weight * value;
                second += weight * value * value;
            }
        }
        let along = (second / sum - (first / sum).powi(2)).max(0.0);
        let moves: Vec<f64> = self.moves.iter().map(output).collect();
        let in_line: f64 = moves
            .iter()
            .zip(&self.direction)
            .map(|(moves, share)| moves * share)
            .sum();
        let across: f64 = moves
            .iter()
            .zip(&self.direction)
            .map(|(moves, share)| (moves - in_line * share).powi(2))
            .sum();
        (along + across).sqrt()
    }
}

/// A figure with the standard deviation that it has given that the leg reaches, where that could be worked out.
pub(super) fn given_reach(
    reaching: Option<&Reaching>,
    unconditional: Figure,
    output: impl Fn(&Outputs) -> f64,
) -> Figure {
    let sd = reaching.map_or(f64::NAN, |reaching| reaching.sd(&output));
    Figure {
        sd: if sd.is_finite() { sd } else { unconditional.sd },
        ..unconditional
    }
}
