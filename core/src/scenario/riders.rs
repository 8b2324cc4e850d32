//! Riders who may be weaker or stronger than believed: critical power and W′ drawn from their uncertainty.

use super::{Position, Power, Scenario};
use crate::inputs::quantity::Quantity;
use crate::numerics::distributions::normal_share;
use crate::numerics::solve::root;
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

    /// A few riders who stand for all of them: the errors of their thresholds are the middles of as many ranges that are equally
    /// likely, and those of W′ beside that spread as evenly.
    pub(crate) fn typical_riders(&self, position: usize) -> Vec<Difference> {
        const RIDERS: u32 = 60;
        // Steps of the golden section leave the largest gaps smallest.
        const STEP: f64 = 0.618_033_988_749_895;
        let doubt = Doubt::of(self, self.positions.get(position));
        (0..RIDERS)
            .map(|rider| {
                let evenly = (f64::from(rider) + 0.5) / f64::from(RIDERS);
                let other = (0.5 + STEP * f64::from(rider)).fract();
                doubt.difference(normal_at(evenly), normal_at(other))
            })
            .collect()
    }
}

/// The number of standard deviations that a share of a normal distribution lies below, to 1e-9; the share is between 0 and 1.
fn normal_at(share: f64) -> f64 {
    const FARTHEST: f64 = 8.0;
    root(|z| normal_share(z) - share, -FARTHEST, FARTHEST, 1e-9).unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_riders_who_stand_for_all_have_their_mean_spread_and_correlation() {
        let mut scenario = Scenario::default();
        scenario.power.cp_w = Quantity::typical(250.0, 6.25);
        scenario.power.w_prime_j = Quantity::typical(18_000.0, 1_800.0);
        scenario.power.cp_w_prime_correlation = -0.9;
        let riders = scenario.typical_riders(0);
        let mean = |of: &dyn Fn(&Difference) -> f64| {
            riders.iter().map(of).sum::<f64>() / riders.len() as f64
        };
        let (threshold_sd, w_prime_sd) = (0.025, 0.1);
        assert!(mean(&|d| d.threshold).abs() < 0.01 * threshold_sd);
        assert!(mean(&|d| d.w_prime).abs() < 0.05 * w_prime_sd);
        // Sixty of them have tails a little shorter than the distribution's.
        let spread = |of: &dyn Fn(&Difference) -> f64| mean(&|d| of(d).powi(2)).sqrt();
        assert!((spread(&|d| d.threshold) / threshold_sd - 1.0).abs() < 0.02);
        assert!((spread(&|d| d.w_prime) / w_prime_sd - 1.0).abs() < 0.05);
        let together = mean(&|d| d.threshold * d.w_prime);
        let correlation = together / (spread(&|d| d.threshold) * spread(&|d| d.w_prime));
        assert!((correlation + 0.9).abs() < 0.03, "{correlation}");
    }
}
