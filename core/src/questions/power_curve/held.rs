//! What is known of a rider's power and duration, whatever it was made from: fitted efforts, or the scenario's own numbers.

use crate::inputs::fields;
use crate::inputs::quantity::{Figure, Quantity};
use crate::numerics::distributions::NORMAL_REACH_95;
use crate::numerics::least_squares::student_t;
use crate::numerics::solve::root;
use crate::physiology::models::{Curve, Model};
use crate::scenario::Power;

/// A relation between power and duration with the covariance of its parameters.
pub(super) struct Held {
    pub model: Model,
    pub parameters: Vec<f64>,
    /// Row by row.
    pub covariance: Vec<f64>,
    /// By how many standard deviations a band of 95 % reaches.
    pub reach: f64,
    /// One standard deviation of an effort about the curve, as a share of its power.
    pub test_share: f64,
}

/// The share of what is meant that a band holds.
const BAND: f64 = 0.95;
/// Durations are looked for between these, s: from a second to eleven days.
const DURATIONS_S: (f64, f64) = (1.0, 1e6);

impl Held {
    /// From a fit; `test_share` is the stated standard deviation of an effort as a share of its power.
    pub(super) fn fitted(curve: &Curve, test_share: f64) -> Self {
        let p = curve.model.parameters();
        Self {
            model: curve.model,
            parameters: curve.fit.parameters.clone(),
            covariance: (0..p * p)
                .map(|at| curve.covariance(at / p, at % p))
                .collect(),
            reach: student_t(BAND, curve.degrees_of_freedom),
            test_share: curve.variance.sqrt() * test_share,
        }
    }

    /// From a fit as rides use it: beyond the point from which long rides lose power it loses the share of critical power that the
    /// scenario says, or the usual one. A fit to efforts beyond that point contains the loss already and stays as it is.
    pub(super) fn for_rides(curve: &Curve, power: &Power, longest_s: f64, test_share: f64) -> Self {
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

    /// The same with a loss in long rides as its last parameter, in watts: a share of the first, `A = s CP`, whose error is its own:
    /// `cov(A, x) = s cov(CP, x)` and `var(A) = CP² var(s) + s² var(CP)`.
    fn with_loss(self, loss: Quantity, model: Model) -> Self {
        let p = self.parameters.len();
        let cp_w = self.parameters[0];
        let covariance = |i: usize, j: usize| match (i.min(j), i.max(j)) {
            (i, j) if j < p => self.covariance[i * p + j],
            (i, _) if i < p => loss.value * self.covariance[i],
            _ => (cp_w * loss.sd).powi(2) + loss.value.powi(2) * self.covariance[0],
        };
        let more = p + 1;
        Self {
            covariance: (0..more * more)
                .map(|at| covariance(at / more, at % more))
                .collect(),
            parameters: self
                .parameters
                .iter()
                .copied()
                .chain([loss.value * cp_w])
                .collect(),
            model,
            ..self
        }
    }

    /// From the scenario's own numbers.
    pub(super) fn given(power: &Power, test_share: f64) -> Self {
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

    /// The power that can be held for a time; not below 0.
    pub(super) fn power_w(&self, time_s: f64) -> Figure {
        let mut derivatives = vec![0.0; self.parameters.len()];
        let power_w = self
            .model
            .power_w(&self.parameters, time_s, &mut derivatives);
        Figure {
            value: power_w.max(0.0),
            sd: self.sd(&derivatives),
        }
    }

    /// One standard deviation of a test of this length about what is known.
    pub(super) fn test_sd_w(&self, time_s: f64) -> f64 {
        let power_w = self.power_w(time_s);
        power_w.sd.hypot(self.test_share * power_w.value)
    }

    /// A parameter.
    pub(super) fn parameter(&self, at: usize) -> Option<Figure> {
        let p = self.parameters.len();
        Some(Figure {
            value: *self.parameters.get(at)?,
            sd: self.covariance.get(at * p + at)?.max(0.0).sqrt(),
        })
    }

    /// The places of Pmax and of the long-ride loss among the parameters.
    pub(super) fn places(&self) -> (Option<usize>, Option<usize>) {
        match self.model {
            Model::OmniDomain {
                peak,
                long_ride_from_s,
            } => (
                peak.then_some(2),
                long_ride_from_s.map(|_| 2 + usize::from(peak)),
            ),
            _ => (None, None),
        }
    }

    /// The loss in long rides as a share of critical power: `s = A/CP`, `var(s) = (var(A) − 2 s cov(A, CP) + s² var(CP))/CP²`.
    pub(super) fn loss_share(&self) -> Option<Figure> {
        let at = self.places().1?;
        let p = self.parameters.len();
        let cp_w = self.parameters[0];
        let share = self.parameters.get(at)? / cp_w;
        let mut gradient = vec![0.0; p];
        gradient[0] = -share / cp_w;
        gradient[at] = 1.0 / cp_w;
        Some(Figure {
            value: share,
            sd: self.sd(&gradient),
        })
    }

    /// How the first two parameters go together, kept to what a scenario takes.
    pub(super) fn correlation(&self) -> f64 {
        let p = self.parameters.len();
        let sd = |at: usize| self.covariance[at * p + at].max(0.0).sqrt();
        let both = sd(0) * sd(1);
        // What a scenario takes at most.
        const MOST: f64 = 0.999;
        if both > 0.0 {
            crate::numerics::solve::within(self.covariance[1] / both, -MOST, MOST)
        } else {
            0.0
        }
    }

    /// How long the power for `hold_s`, times a factor, can be held when the whole curve is raised by another; `None` for
    /// ever, or not for a second. Both powers are of one curve, so that what is common to them cancels: by the implicit
    /// function, `dt/db = (c dP(hold)/db − dP(t)/db)/P′(t)` with `c` the one factor over the other.
    pub(super) fn held_s(
        &self,
        hold_s: f64,
        power_factor: f64,
        curve_factor: f64,
    ) -> Option<Figure> {
        let p = self.parameters.len();
        let (mut here, mut there) = (vec![0.0; p], vec![0.0; p]);
        let factor = power_factor / curve_factor;
        let wanted_w = factor * self.model.power_w(&self.parameters, hold_s, &mut here);
        let mut left_w =
            |ln_t: f64| self.model.power_w(&self.parameters, ln_t.exp(), &mut there) - wanted_w;
        let ln_t = root(&mut left_w, DURATIONS_S.0.ln(), DURATIONS_S.1.ln(), 1e-13).ok()?;
        // Near the cube root of a rounding, where a central difference is best.
        const STEP: f64 = 1e-5;
        let by_ln_t = (left_w(ln_t + STEP) - left_w(ln_t - STEP)) / (2.0 * STEP);
        left_w(ln_t);
        let value = ln_t.exp();
        let gradient: Vec<f64> = here
            .iter()
            .zip(&there)
            .map(|(here, there)| (factor * here - there) * value / by_ln_t)
            .collect();
        Some(Figure {
            value,
            sd: self.sd(&gradient),
        })
    }

    fn sd(&self, gradient: &[f64]) -> f64 {
        let p = gradient.len();
        let row = |i: usize| {
            (0..p)
                .map(|j| self.covariance[i * p + j] * gradient[j])
                .sum::<f64>()
        };
        (0..p)
            .map(|i| gradient[i] * row(i))
            .sum::<f64>()
            .max(0.0)
            .sqrt()
    }
}
