//! What is known of a rider's power and duration, whatever it was made from: fitted efforts, or given numbers.

use super::models::{Curve, Model};
use crate::inputs::quantity::{Figure, Quantity};
use crate::numerics::least_squares::student_t;
use crate::numerics::solve::{root, within};

/// A relation between power and duration with the covariance of its parameters.
pub(crate) struct Held {
    pub(crate) model: Model,
    pub(crate) parameters: Vec<f64>,
    /// Row by row.
    pub(crate) covariance: Vec<f64>,
    /// By how many standard deviations a band of 95 % reaches.
    pub(crate) reach: f64,
    /// One standard deviation of an effort about the curve, as a share of its power.
    pub(crate) test_share: f64,
}

/// The share of what is meant that a band holds.
const BAND: f64 = 0.95;
/// Durations are looked for between these, s: from a second to eleven days.
const DURATIONS_S: (f64, f64) = (1.0, 1e6);

impl Held {
    /// From a fit; `test_share` is the stated standard deviation of an effort as a share of its power.
    pub(crate) fn fitted(curve: &Curve, test_share: f64) -> Self {
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

    /// The same with a loss in long rides as its last parameter, in watts: a share of the first, `A = s CP`, whose error is its own:
    /// `cov(A, x) = s cov(CP, x)` and `var(A) = CP² var(s) + s² var(CP)`.
    pub(crate) fn with_loss(self, loss: Quantity, model: Model) -> Self {
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

    /// The power that can be held for a time; not below 0.
    pub(crate) fn power_w(&self, time_s: f64) -> Figure {
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
    pub(crate) fn test_sd_w(&self, time_s: f64) -> f64 {
        let power_w = self.power_w(time_s);
        power_w.sd.hypot(self.test_share * power_w.value)
    }

    /// A parameter.
    pub(crate) fn parameter(&self, at: usize) -> Option<Figure> {
        let p = self.parameters.len();
        Some(Figure {
            value: *self.parameters.get(at)?,
            sd: self.covariance.get(at * p + at)?.max(0.0).sqrt(),
        })
    }

    /// The places of Pmax and of the long-ride loss among the parameters.
    pub(crate) fn places(&self) -> (Option<usize>, Option<usize>) {
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
    pub(crate) fn loss_share(&self) -> Option<Figure> {
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
    pub(crate) fn correlation(&self) -> f64 {
        let p = self.parameters.len();
        let sd = |at: usize| self.covariance[at * p + at].max(0.0).sqrt();
        let both = sd(0) * sd(1);
        // What a scenario takes at most.
        const MOST: f64 = 0.999;
        if both > 0.0 {
            within(self.covariance[1] / both, -MOST, MOST)
        } else {
            0.0
        }
    }

    /// How long the power for `hold_s`, times a factor, can be held when the whole curve is raised by another; `None` for
    /// ever, or not for a second. Both powers are of one curve, so that what is common to them cancels: by the implicit
    /// function, `dt/db = (c dP(hold)/db − dP(t)/db)/P′(t)` with `c` the one factor over the other.
    pub(crate) fn held_s(
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
