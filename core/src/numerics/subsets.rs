//! A smooth function of a few numbers at every set of changes to them, from few evaluations.
//!
//! Changes that move the same numbers make a [`Part`]; parts do not share numbers. In each number the function is asked at
//! every value that a set of changes can give it or, where those are more, at Chebyshev points between the least and the
//! greatest, and read off the polynomial through them. Parts and numbers are combined in full (a tensor grid), so
//! changes act together at every order: nothing is added up. No physics.

use crate::numerics::solve::{chebyshev_point, lagrange_weight};

/// Values of one number that sets of changes give it, and where the function is asked.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Axis {
    /// The value that each set of the part's changes gives the number.
    pub values: Vec<f64>,
    /// Where the function is asked, ascending.
    pub nodes: Vec<f64>,
}

/// The polynomial through the nodes is met within about this share of the function, if its nearest singularity in the
/// number's logarithm is a unit away.
const ACCURACY: f64 = 1e-7;
/// The most nodes of a polynomial.
const MOST_NODES: usize = 12;

impl Axis {
    /// For a number in which the function may have steps and kinks: it is asked at every value.
    pub(crate) fn every(values: Vec<f64>) -> Self {
        let mut nodes = values.clone();
        nodes.sort_unstable_by(f64::total_cmp);
        nodes.dedup_by(|a, b| close(*a, *b));
        Self { values, nodes }
    }

    /// For a number of one sign in which the function is smooth: it is asked at as many Chebyshev points as its span needs,
    /// if they are fewer than the values.
    pub(crate) fn smooth(values: Vec<f64>) -> Self {
        let exact = Self::every(values);
        let (Some(&least), Some(&most)) = (exact.nodes.first(), exact.nodes.last()) else {
            return exact;
        };
        const FEWEST: usize = 3;
        if least * most <= 0.0 || exact.nodes.len() <= FEWEST {
            return exact;
        }
        let half_span = 0.5 * (most / least).ln().abs();
        let needed = (ACCURACY.ln() / (0.5 * half_span).ln()).ceil();
        if half_span > 1.0 || needed > MOST_NODES as f64 || needed as usize >= exact.nodes.len() {
            return exact;
        }
        let n = (needed as usize).max(FEWEST);
        Self {
            nodes: (0..n).map(|i| chebyshev_point(least, most, i, n)).collect(),
            values: exact.values,
        }
    }

    /// The weights of the nodes at the value of a set.
    fn weights(&self, set: usize, weights: &mut Vec<f64>) {
        let value = self.values.get(set).copied().unwrap_or(f64::NAN);
        let above = self.nodes.partition_point(|&node| node < value);
        let same = |i: &usize| self.nodes.get(*i).is_some_and(|&node| close(node, value));
        weights.clear();
        match [above, above.wrapping_sub(1)].iter().find(|i| same(i)) {
            Some(&hit) => {
                weights.extend((0..self.nodes.len()).map(|i| f64::from(u8::from(i == hit))))
            }
            None => weights
                .extend((0..self.nodes.len()).map(|i| lagrange_weight(&self.nodes, value, i))),
        }
    }
}

/// Products of the same shares in another order differ in their last digits.
fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * b.abs().max(1e-3)
}

/// Changes that move the same numbers.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Part {
    /// How many changes.
    pub changes: usize,
    axes: Vec<Axis>,
    points: usize,
}

impl Part {
    /// From the numbers that the changes move; the values of an axis are listed by set, `2^changes` of them.
    pub(crate) fn new(changes: usize, axes: Vec<Axis>) -> Self {
        let grid = axes
            .iter()
            .try_fold(1_usize, |all, axis| all.checked_mul(axis.nodes.len()));
        Self {
            changes,
            axes,
            points: grid.unwrap_or(usize::MAX).min(1 << changes),
        }
    }

    /// How many points the function is asked at.
    pub(crate) fn points(&self) -> usize {
        self.points
    }

    /// Whether the points are the sets themselves, a grid having more.
    fn is_direct(&self) -> bool {
        self.points == 1 << self.changes
    }

    /// The values of the numbers at a point.
    fn numbers(&self, mut at: usize) -> Vec<f64> {
        if self.is_direct() {
            return self.axes.iter().map(|axis| axis.values[at]).collect();
        }
        let along = |axis: &Axis| {
            let own = at % axis.nodes.len();
            at /= axis.nodes.len();
            axis.nodes[own]
        };
        self.axes.iter().map(along).collect()
    }

    /// The weights of the points at a set.
    fn weights(&self, set: usize, scratch: &mut Scratch) {
        let Scratch {
            weights,
            axis: along,
            outer,
        } = scratch;
        weights.clear();
        if self.is_direct() {
            weights.resize(self.points, 0.0);
            weights[set] = 1.0;
            return;
        }
        weights.push(1.0);
        for axis in &self.axes {
            axis.weights(set, along);
            std::mem::swap(weights, outer);
            weights.clear();
            weights.extend(along.iter().flat_map(|b| outer.iter().map(move |a| a * b)));
        }
    }
}

/// Room that is used again.
#[derive(Default)]
struct Scratch {
    weights: Vec<f64>,
    axis: Vec<f64>,
    outer: Vec<f64>,
}

/// How many points a function of all parts is asked at; `None` if that is beyond counting.
pub(crate) fn points(parts: &[Part]) -> Option<usize> {
    parts
        .iter()
        .try_fold(1_usize, |all, part| all.checked_mul(part.points))
}

/// The numbers at a point of all parts, part by part; the last part's points follow each other.
pub(crate) fn numbers(parts: &[Part], at: usize) -> Vec<Vec<f64>> {
    let mut left = at;
    let mut numbers: Vec<Vec<f64>> = parts
        .iter()
        .rev()
        .map(|part| {
            let own = left % part.points;
            left /= part.points;
            part.numbers(own)
        })
        .collect();
    numbers.reverse();
    numbers
}

/// The function at every set of the changes in `of`, from its values at all points. The first part's changes are the lowest
/// bits; the answer is in the order of the bits of `of`.
pub(crate) fn at_sets(parts: &[Part], at_points: &[f64], of: usize) -> Vec<f64> {
    // For each set of the parts that are done, rows of points of those still to come.
    let mut values = at_points.to_vec();
    let (mut done, mut first) = (1, 0);
    let mut taken = Vec::new();
    let mut scratch = Scratch::default();
    for part in parts {
        let own = of >> first & ((1 << part.changes) - 1);
        let sets = 1_usize << own.count_ones();
        let still = values.len() / done / part.points;
        if !part.is_direct() || sets < part.points {
            let mut next = vec![0.0; sets * done * still];
            for nth in 0..sets {
                part.weights(spread_out(nth, own), &mut scratch);
                for before in 0..done {
                    let rows =
                        &values[before * part.points * still..(before + 1) * part.points * still];
                    let at = (before * sets + nth) * still;
                    let sum = &mut next[at..at + still];
                    for (row, &weight) in rows.chunks_exact(still).zip(&scratch.weights) {
                        if weight != 0.0 {
                            sum.iter_mut()
                                .zip(row)
                                .for_each(|(sum, value)| *sum += weight * value);
                        }
                    }
                }
            }
            values = next;
        }
        taken.push(own.count_ones());
        done *= sets;
        first += part.changes;
    }
    in_order_of_bits(&taken, &values)
}

/// The bits of `nth` on the places of those of `own`.
fn spread_out(nth: usize, own: usize) -> usize {
    let places = (0..usize::BITS).filter(|place| own >> place & 1 == 1);
    places
        .enumerate()
        .map(|(bit, place)| (nth >> bit & 1) << place)
        .sum()
}

/// From the order in which the last part's sets follow each other to that in which the first part's do.
fn in_order_of_bits(taken: &[u32], values: &[f64]) -> Vec<f64> {
    let mut left: u32 = taken.iter().sum();
    // Each bit in turn doubles the sets: those without it, then as many with it, which stand further on.
    let mut order = Vec::with_capacity(values.len());
    order.push(0);
    for &own in taken {
        left -= own;
        for place in left..left + own {
            let without = order.len();
            order.extend_from_within(..);
            order[without..].iter_mut().for_each(|at| *at += 1 << place);
        }
    }
    order.into_iter().map(|at: usize| values[at]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The polynomials' promise, with a factor for constants.
    const CLOSE: f64 = 1e-7;

    fn products(start: f64, shares: &[f64]) -> Vec<f64> {
        (0..1_usize << shares.len())
            .map(|set| {
                shares
                    .iter()
                    .enumerate()
                    .filter(|(i, _)| set >> i & 1 == 1)
                    .fold(start, |v, (_, share)| v * (1.0 + share))
            })
            .collect()
    }

    /// Like a finish time: in drag, in power, with a step besides.
    fn time(drag: f64, power: f64, step: f64) -> f64 {
        3600.0 * (0.9 * drag / power + 0.1 / power).powf(1.0 / 3.0)
            + if step > 0.5 { -7.0 } else { 0.0 }
    }

    fn example() -> (Vec<Part>, Vec<f64>, impl Fn(usize) -> f64) {
        let drags = products(1.0, &[-0.03, -0.02, -0.05, -0.01, -0.04]);
        let powers = products(1.0, &[0.0, 0.01, 0.0, 0.05, 0.02]);
        let steps = vec![0.0, 1.0, 0.0, 1.0];
        let parts = vec![
            Part::new(
                5,
                vec![Axis::smooth(drags.clone()), Axis::smooth(powers.clone())],
            ),
            Part::new(2, vec![Axis::every(steps.clone())]),
        ];
        let at = (0..points(&parts).unwrap())
            .map(|i| {
                let numbers = numbers(&parts, i);
                time(numbers[0][0], numbers[0][1], numbers[1][0])
            })
            .collect();
        (parts, at, move |set: usize| {
            time(drags[set & 31], powers[set & 31], steps[set >> 5])
        })
    }

    #[test]
    fn every_set_is_met_with_all_its_interactions() {
        let (parts, at, direct) = example();
        assert!(at.len() < 80, "{}", at.len());
        for (set, value) in at_sets(&parts, &at, 0b111_1111).into_iter().enumerate() {
            assert!(
                (value / direct(set) - 1.0).abs() < CLOSE,
                "{set}: {value} for {}",
                direct(set)
            );
        }
    }

    #[test]
    fn numbers_too_far_apart_for_one_polynomial_are_asked_at_each() {
        // From 1 to more than a hundred: the logarithm's half span is above 2.
        let wide = products(1.0, &[1.5, 2.0, 0.7, 1.2, 0.9, 1.1]);
        assert_eq!(Axis::smooth(wide.clone()), Axis::every(wide));
    }

    #[test]
    fn sets_of_some_changes_are_those_among_all() {
        let (parts, at, direct) = example();
        let of = 0b101_1010;
        for (nth, value) in at_sets(&parts, &at, of).into_iter().enumerate() {
            let want = direct(spread_out(nth, of));
            assert!(
                (value / want - 1.0).abs() < CLOSE,
                "{nth}: {value} for {want}"
            );
        }
    }
}
