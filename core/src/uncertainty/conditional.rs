//! The spread of outputs, given that a slack is positive: combinations of the inputs without slack are not those that are
//! meant. A saddle was set to its rider's leg, so that lengths with which it would not reach the pedal are not the rider's.
//!
//! To first order the slack is normal about its value. Along the direction of the inputs in which it changes fastest, a
//! standard deviation at a time, outputs are worked out as they are and weighed by the truncated normal distribution; across
//! it, where slack does not change, they move to first order. Where an output goes with the root of the slack, as an angle
//! near a straight knee does, the first part follows what first order would not. `tests/oracle/leg_reach.py` holds it
//! against draws.

use super::draws::UncertainInput;
use crate::numerics::distributions::normal_share;
use crate::numerics::solve::{gauss_points, within};

/// Farther from the value than this many standard deviations nothing is looked at.
const FARTHEST: f64 = 5.0;
/// Panels of five-point quadrature; with them the spread is good to a thousandth.
const PANELS: usize = 4;
/// The step of the moves across, as a share of a standard deviation, and of the distance to where there is no slack.
const STEP: f64 = 0.1;
const STEP_OF_SLACK: f64 = 0.3;

/// The slack, to first order.
pub(crate) struct Slack {
    /// Its value over its standard deviation.
    margin: f64,
    /// By how much of its standard deviation each input goes for one of the slack.
    direction: Vec<f64>,
}

/// What outputs do, given that there is slack.
pub(crate) struct ConditionalSpread<const N: usize> {
    slack: Slack,
    /// Along its direction.
    along: Vec<Node<N>>,
    /// How one standard deviation of each input moves the outputs.
    moves: Vec<[f64; N]>,
}

/// Outputs somewhere along the direction of slack.
struct Node<const N: usize> {
    /// By how many standard deviations of the slack.
    by_sd: f64,
    /// How likely it is there; all add up to 1.
    weight: f64,
    outputs: [f64; N],
}

/// The values with every input moved by so many of its standard deviations, inside its hard range.
fn moved(inputs: &[UncertainInput], by_sd: impl Fn(usize) -> f64) -> Vec<f64> {
    let value = |(i, input): (usize, &UncertainInput)| {
        within(input.value + by_sd(i) * input.sd, input.min, input.max)
    };
    inputs.iter().enumerate().map(value).collect()
}

/// How far apart two values of an input are, a step up and down about `mean`, in its standard deviations: less at an end of its
/// hard range.
fn span(input: &UncertainInput, mean: f64, step: f64) -> f64 {
    let at = |by_sd: f64| within(input.value + by_sd * input.sd, input.min, input.max);
    (at(mean + step) - at(mean - step)) / input.sd
}

/// A difference for each standard deviation; nothing moves what cannot move.
fn per_span(difference: f64, span: f64) -> f64 {
    if span > 0.0 { difference / span } else { 0.0 }
}

impl Slack {
    /// From the slack as a function of the inputs' values. `None` where nothing that is uncertain moves it.
    pub(crate) fn new(inputs: &[UncertainInput], slack: impl Fn(&[f64]) -> f64) -> Option<Self> {
        let values: Vec<f64> = inputs.iter().map(|input| input.value).collect();
        let slack_here = slack(&values);
        let slack_moves: Vec<f64> = inputs
            .iter()
            .enumerate()
            .map(|(i, input)| {
                let at = |sd: f64| slack(&moved(inputs, |j| if i == j { sd } else { 0.0 }));
                per_span(at(STEP) - at(-STEP), span(input, 0.0, STEP))
            })
            .collect();
        let slack_sd = slack_moves
            .iter()
            .map(|moves| moves * moves)
            .sum::<f64>()
            .sqrt();
        if slack_sd.is_nan() || slack_sd <= 0.0 {
            return None;
        }
        Some(Self {
            margin: slack_here / slack_sd,
            direction: slack_moves.iter().map(|moves| moves / slack_sd).collect(),
        })
    }

    /// Whether there is this slack less often than the other.
    pub(crate) fn is_rarer(&self, other: &Self) -> bool {
        self.margin < other.margin
    }
}

impl<const N: usize> ConditionalSpread<N> {
    /// From outputs as a function of the inputs' values; one that cannot be worked out is not a number.
    pub(crate) fn new(
        inputs: &[UncertainInput],
        slack: Slack,
        outputs: impl Fn(&[f64]) -> [f64; N],
    ) -> Self {
        let Slack { margin, direction } = &slack;
        // From the end at which there is just slack, by the square of a variable: the root becomes smooth.
        let from = (-*margin).max(-FARTHEST);
        let end = (FARTHEST - from).sqrt();
        let mut along = Vec::with_capacity(5 * PANELS);
        for panel in 0..PANELS {
            let edge = |panel: usize| end * panel as f64 / PANELS as f64;
            for (root, width) in gauss_points(edge(panel), edge(panel + 1)) {
                let by_sd = from + root * root;
                let outputs = outputs(&moved(inputs, |i| by_sd * direction[i]));
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
        let step = STEP.min(STEP_OF_SLACK * (mean - from));
        let moves = inputs
            .iter()
            .enumerate()
            .map(|(i, input)| {
                let at = |sd: f64| {
                    let by_sd = |j: usize| mean * direction[j] + if i == j { sd } else { 0.0 };
                    outputs(&moved(inputs, by_sd))
                };
                let (high, low) = (at(step), at(-step));
                let span = span(input, mean * direction[i], step);
                std::array::from_fn(|output| per_span(high[output] - low[output], span))
            })
            .collect();
        Self {
            slack,
            along,
            moves,
        }
    }

    /// The share of the combinations of the inputs in which there is slack.
    pub(crate) fn share(&self) -> f64 {
        normal_share(self.slack.margin)
    }

    /// One standard deviation of a linear combination of outputs, given that there is slack. Not a number where no such
    /// combination can be worked out.
    pub(crate) fn sd(&self, output: &dyn Fn(&[f64; N]) -> f64) -> f64 {
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
            .zip(&self.slack.direction)
            .map(|(moves, share)| moves * share)
            .sum();
        let across: f64 = moves
            .iter()
            .zip(&self.slack.direction)
            .map(|(moves, share)| (moves - in_line * share).powi(2))
            .sum();
        (along + across).sqrt()
    }
}
