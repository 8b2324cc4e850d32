//! Riders who may be weaker or stronger than believed: critical power and W′ drawn from their uncertainty.

use super::{Position, Power, Scenario};
use crate::inputs::quantity::Quantity;
use crate::riding::optimal_pacing::robust_plan::Difference;
use crate::uncertainty::draws::Normal;

/// How uncertain the threshold and W′ of a position are, as shares, and how their errors go together.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Doubt {
    threshold: f64,
    w_prime: f64,
    correlation: f64,
}

impl Doubt {
    fn of(scenario: &Scenario, position: Option<&Position>) -> Self {
        let own = position.and_then(|position| position.power.as_ref());
        let power: &Power = own.unwrap_or(&scenario.power);
        let factors = position.filter(|_| own.is_none());
        let share = |tested: &Quantity, factor: Option<&Quantity>| {
            let of = |quantity: &Quantity| quantity.sd / quantity.value;
            of(tested).hypot(factor.map_or(0.0, of))
        };
        Self {
            threshold: share(&power.cp_w, factors.map(|position| &position.cp_factor)),
            w_prime: share(
                &power.w_prime_j,
                factors.map(|position| &position.w_prime_factor),
            ),
            correlation: power.cp_w_prime_correlation,
        }
    }

    fn difference(&self, threshold: f64, other: f64) -> Difference {
        let independent = (1.0 - self.correlation * self.correlation).max(0.0).sqrt();
        Difference {
            threshold: self.threshold * threshold,
            w_prime: self.w_prime * (self.correlation * threshold + independent * other),
        }
    }
}

impl Scenario {
    /// Riders drawn from the uncertainty of critical power and W′ in a position; the same seed gives the same.
    pub(crate) fn drawn_riders(&self, position: usize, count: u32, seed: u64) -> Vec<Difference> {
        let doubt = Doubt::of(self, self.positions.get(position));
        let mut normal = Normal::new(seed);
        let mut next = || (normal.draw(), normal.draw());
        (0..count)
            .map(|_| {
                let (threshold, other) = next();
                doubt.difference(threshold, other)
            })
            .collect()
    }

    /// A few riders who stand for all of them: in pairs of opposite errors, so that their mean is the rider as believed, and with
    /// the spread of all.
    pub(crate) fn typical_riders(&self, position: usize) -> Vec<Difference> {
        const PAIRS: usize = 12;
        const SEED: u64 = 18;
        let doubt = Doubt::of(self, self.positions.get(position));
        let mut normal = Normal::new(SEED);
        let drawn: Vec<(f64, f64)> = (0..PAIRS).map(|_| (normal.draw(), normal.draw())).collect();
        let spread = |of: fn(&(f64, f64)) -> f64| {
            let squares: f64 = drawn.iter().map(|pair| of(pair).powi(2)).sum();
            (squares / PAIRS as f64).sqrt()
        };
        let (threshold_sd, other_sd) = (spread(|pair| pair.0), spread(|pair| pair.1));
        drawn
            .iter()
            .flat_map(|&(threshold, other)| {
                let (threshold, other) = (threshold / threshold_sd, other / other_sd);
                [
                    doubt.difference(threshold, other),
                    doubt.difference(-threshold, -other),
                ]
            })
            .collect()
    }
}
