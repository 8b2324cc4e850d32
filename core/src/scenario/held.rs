//! What a scenario's own numbers say of power and duration, and a fitted curve as rides use it.

use super::Power;
use crate::inputs::fields;
use crate::inputs::quantity::Quantity;
use crate::numerics::distributions::NORMAL_REACH_95;
use crate::physiology::held::Held;
use crate::physiology::models::{Curve, Model};

impl Held {
    /// From a fit as rides use it: beyond the point from which long rides lose power it loses the share of critical power that the
    /// scenario says, or the usual one. A fit to efforts beyond that point contains the loss already and stays as it is.
    pub(crate) fn for_rides(curve: &Curve, power: &Power, longest_s: f64, test_share: f64) -> Self {
        let held = Self::fitted(curve, test_share);
        let from_s = power.long_ride_from_s.value;
        let peak = match curve.model {
            Model::TwoParameter => false,
            Model::OmniDomain {
                peak,
                long_ride_from_s: None,
            } => peak,
            _ => return held,
        };
        if longest_s > from_s {
            return held;
        }
        let loss = power
            .long_ride_loss_share
            .unwrap_or(fields::LONG_RIDE_LOSS_SHARE.typical());
        held.with_loss(
            loss,
            Model::OmniDomain {
                peak,
                long_ride_from_s: Some(from_s),
            },
        )
    }

    /// From the scenario's own numbers.
    pub(crate) fn given(power: &Power, test_share: f64) -> Self {
        let without = Self::given_without_share(power, test_share);
        match (power.long_ride_loss_share, without.model) {
            (Some(loss), Model::OmniDomain { peak, .. }) => {
                let from_s = power.long_ride_from_s.value;
                without.with_loss(
                    loss,
                    Model::OmniDomain {
                        peak,
                        long_ride_from_s: Some(from_s),
                    },
                )
            }
            _ => without,
        }
    }

    fn given_without_share(power: &Power, test_share: f64) -> Self {
        let optional = [power.peak_w, power.long_ride_loss_w];
        let quantities: Vec<Quantity> = [power.cp_w, power.w_prime_j]
            .into_iter()
            .chain(optional.into_iter().flatten())
            .collect();
        let p = quantities.len();
        let covariance = |i: usize, j: usize| {
            let together = match (i.min(j), i.max(j)) {
                (i, j) if i == j => 1.0,
                (0, 1) => power.cp_w_prime_correlation,
                _ => 0.0,
            };
            together * quantities[i].sd * quantities[j].sd
        };
        Self {
            model: Model::OmniDomain {
                peak: power.peak_w.is_some(),
                long_ride_from_s: power.long_ride_loss_w.map(|_| power.long_ride_from_s.value),
            },
            parameters: quantities.iter().map(|quantity| quantity.value).collect(),
            covariance: (0..p * p).map(|at| covariance(at / p, at % p)).collect(),
            reach: NORMAL_REACH_95,
            test_share,
        }
    }
}
