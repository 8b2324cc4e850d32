//! Relations between power and duration that compete for the same efforts, and fits of them.
//!
//! Power curves are fitted to power, each effort weighted by its own sd or by how well tests repeat. That published
//! repeatability counts as seven residuals of the stated size beside the efforts' own (eight riders tested twice), in the
//! variance, in the degrees of freedom of the bands and in Akaike's criterion alike; so two efforts have a band, and five
//! that scatter more widen it. An effort that a longer one surely beats is left out. Where the efforts do not tell CP
//! from W′, usual values with their sds stand in as rows of the same fit. Rides use the two-parameter or the omni-domain
//! form, so only these go into a scenario.

use crate::numerics::least_squares::{Fit, NoFit, least_squares};
use crate::physiology::power_duration::{LongRide, PowerDuration};

/// A hard effort: the power that was held for a time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Effort {
    /// How long, s.
    pub duration_s: f64,
    /// Mean power, W.
    pub power_w: f64,
    /// One standard deviation of the power, were the effort repeated, W.
    pub sd_w: f64,
}

/// From when the logarithmic decline holds, s.
pub const LOG_DECLINE_FROM_S: f64 = 420.0;

/// A relation between power and duration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Model {
    /// `P = CP + W′/t`; parameters CP (W), W′ (J). Useful from about 2 to 15 min.
    ///
    /// Source: gaesser-1995; monod-1965.
    TwoParameter,
    /// `P = CP + W′/(t + W′/(Pmax − CP))`; parameters CP, W′, Pmax (W). Seconds to about half an hour.
    ///
    /// Source: gaesser-1995 (form); morton-1996.
    ThreeParameter,
    /// `P = CP + W′/t · (1 − exp(−t (Pmax − CP)/W′)) − A ln(t/T)`, the last term for `t > T`; parameters CP, W′, then Pmax
    /// if `peak`, then A (W) if `long_ride_from_s`, which is T. Seconds to hours.
    ///
    /// Source: puchowicz-2020 (from memory).
    OmniDomain {
        /// Whether there is a peak power.
        peak: bool,
        /// From when long rides lose power, s.
        long_ride_from_s: Option<f64>,
    },
    /// `P = MAP − E ln(t/420 s)` for `t > 420 s`; parameters MAP (W), E (W for each e-fold of time). 7 min to hours.
    ///
    /// Source: peronnet-1987 (change point; the form is from memory).
    LogDecline,
    /// `P = S t^(−k)`, t in seconds; parameters S (W at 1 s), k.
    ///
    /// Source: drake-2024 (that it fits well; the form is from memory).
    PowerLaw,
}

impl Model {
    /// The number of parameters.
    pub fn parameters(self) -> usize {
        match self {
            Self::TwoParameter | Self::LogDecline | Self::PowerLaw => 2,
            Self::ThreeParameter => 3,
            Self::OmniDomain {
                peak,
                long_ride_from_s,
            } => 2 + usize::from(peak) + usize::from(long_ride_from_s.is_some()),
        }
    }

    /// The power that can be held for `time_s` (above 0), W, and its derivative by each of the parameters `b`.
    pub fn power_w(self, b: &[f64], time_s: f64, derivatives: &mut [f64]) -> f64 {
        match self {
            Self::TwoParameter => {
                derivatives.copy_from_slice(&[1.0, 1.0 / time_s]);
                b[0] + b[1] / time_s
            }
            Self::ThreeParameter => {
                let above_w = b[2] - b[0];
                let whole = time_s * above_w + b[1];
                let share = (b[1] / whole).powi(2);
                derivatives.copy_from_slice(&[
                    1.0 - share,
                    time_s * (above_w / whole).powi(2),
                    share,
                ]);
                b[0] + b[1] * above_w / whole
            }
            Self::OmniDomain {
                peak,
                long_ride_from_s,
            } => {
                let above_w = if peak { b[2] - b[0] } else { f64::INFINITY };
                let left = (-time_s * above_w / b[1]).exp();
                let rising = if peak { left * above_w / b[1] } else { 0.0 };
                derivatives[0] = 1.0 - left;
                derivatives[1] = (1.0 - left) / time_s - rising;
                if peak {
                    derivatives[2] = left;
                }
                let lost = long_ride_from_s.map_or(0.0, |from_s| (time_s / from_s).ln().max(0.0));
                let loss_w = match (long_ride_from_s, derivatives.last_mut(), b.last()) {
                    (Some(_), Some(last), Some(loss_w)) => {
                        *last = -lost;
                        loss_w * lost
                    }
                    _ => 0.0,
                };
                b[0] + b[1] / time_s * (1.0 - left) - loss_w
            }
            Self::LogDecline => {
                let lost = (time_s / LOG_DECLINE_FROM_S).ln();
                derivatives.copy_from_slice(&[1.0, -lost]);
                b[0] - b[1] * lost
            }
            Self::PowerLaw => {
                let falls = time_s.powf(-b[1]);
                derivatives.copy_from_slice(&[falls, -b[0] * falls * time_s.ln()]);
                b[0] * falls
            }
        }
    }

    /// Parameters to begin a fit from.
    fn start(self, efforts: &[Effort]) -> Vec<f64> {
        let (cp_w, w_prime_j) = line(efforts);
        let most_w = efforts.iter().map(|e| e.power_w).fold(0.0, f64::max);
        match self {
            Self::TwoParameter => vec![cp_w, w_prime_j],
            Self::ThreeParameter => vec![cp_w, w_prime_j, 1.5 * most_w],
            Self::OmniDomain {
                peak,
                long_ride_from_s,
            } => {
                let mut start = vec![cp_w, w_prime_j];
                start.extend(peak.then_some(1.2 * most_w));
                start.extend(long_ride_from_s.map(|_| 0.05 * cp_w));
                start
            }
            Self::LogDecline => vec![cp_w, 0.1 * cp_w],
            Self::PowerLaw => vec![most_w * 2.0, 0.1],
        }
    }
}

/// The straight line through power over 1/t, kept to what a rider can be: a start, not a fit.
fn line(efforts: &[Effort]) -> (f64, f64) {
    let n = efforts.len().max(1) as f64;
    let mean = |of: &dyn Fn(&Effort) -> f64| efforts.iter().map(of).sum::<f64>() / n;
    let (x, y) = (mean(&|e| 1.0 / e.duration_s), mean(&|e| e.power_w));
    let across = mean(&|e| (1.0 / e.duration_s - x) * (e.power_w - y));
    let spread = mean(&|e| (1.0 / e.duration_s - x).powi(2));
    let least_w = efforts
        .iter()
        .map(|e| e.power_w)
        .fold(f64::INFINITY, f64::min);
    let w_prime_j = if spread > 0.0 {
        (across / spread).max(1000.0)
    } else {
        15_000.0
    };
    (
        (y - w_prime_j * x).min(0.98 * least_w).max(0.3 * least_w),
        w_prime_j,
    )
}

/// What is known of a parameter without the efforts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prior {
    /// Its place among the model's parameters.
    pub parameter: usize,
    /// The parameter that it is known as a share of; none for what is known by itself.
    pub share_of: Option<usize>,
    /// Its value.
    pub value: f64,
    /// One standard deviation.
    pub sd: f64,
}

/// Fits a model to efforts, each power weighted by its sd, with what is known beforehand as rows of their own.
///
/// # Errors
/// See [`NoFit`].
pub fn fit(model: Model, efforts: &[Effort], priors: &[Prior]) -> Result<Fit, NoFit> {
    let row = |b: &[f64], i: usize, d: &mut [f64]| match efforts.get(i) {
        Some(effort) => {
            let power_w = model.power_w(b, effort.duration_s, d);
            d.iter_mut().for_each(|slope| *slope /= effort.sd_w);
            (power_w - effort.power_w) / effort.sd_w
        }
        None => {
            let prior = &priors[i - efforts.len()];
            d.fill(0.0);
            let whole = prior.share_of.map_or(1.0, |of| b[of]);
            let share = b[prior.parameter] / whole;
            d[prior.parameter] = 1.0 / (whole * prior.sd);
            if let Some(of) = prior.share_of {
                d[of] = -share / (whole * prior.sd);
            }
            (share - prior.value) / prior.sd
        }
    };
    least_squares(&model.start(efforts), efforts.len() + priors.len(), &row)
}

/// A relation fitted to efforts, with its doubt.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// The relation.
    pub model: Model,
    /// Its parameters and their covariance for efforts as sure as stated.
    pub fit: Fit,
    /// The variance of an effort in units of the stated one.
    pub variance: f64,
    /// The degrees of freedom of that variance.
    pub degrees_of_freedom: usize,
    /// How many rows of the fit are not efforts but what is known beforehand of a parameter.
    pub priors: usize,
}

impl Curve {
    /// The fit with its scatter: what was stated of an effort's sd counts as `known_from` residuals of that size, beside the
    /// residuals of the fit itself: `s² = (ν₀ + S)/(ν₀ + n − p)`, with as many degrees of freedom. None known: the residual
    /// variance.
    pub fn new(model: Model, fit: Fit, known_from: usize, priors: usize) -> Self {
        let degrees_of_freedom = known_from + fit.degrees_of_freedom();
        let variance = (known_from as f64 + fit.sum_of_squares) / degrees_of_freedom.max(1) as f64;
        Self {
            model,
            fit,
            variance,
            degrees_of_freedom,
            priors,
        }
    }

    /// The power that can be held for `time_s`, W, and one standard deviation of the curve there (delta method).
    pub fn power_w(&self, time_s: f64) -> (f64, f64) {
        let mut derivatives = vec![0.0; self.model.parameters()];
        let power_w = self
            .model
            .power_w(&self.fit.parameters, time_s, &mut derivatives);
        (power_w, self.sd(&derivatives))
    }

    /// One standard deviation of a function of the parameters with this gradient.
    pub fn sd(&self, gradient: &[f64]) -> f64 {
        (self.variance * self.fit.unit_variance(gradient)).sqrt()
    }

    /// One standard deviation of a parameter.
    pub fn parameter_sd(&self, parameter: usize) -> f64 {
        (self.variance * self.fit.unit_covariance(parameter, parameter)).sqrt()
    }

    /// The covariance of two parameters.
    pub fn covariance(&self, i: usize, j: usize) -> f64 {
        self.variance * self.fit.unit_covariance(i, j)
    }

    /// One standard deviation of another effort of this length, as sure as `sd_w`, about the curve: what a test would show.
    pub fn test_sd_w(&self, time_s: f64, sd_w: f64) -> f64 {
        self.power_w(time_s).1.hypot(self.variance.sqrt() * sd_w)
    }

    /// The residual of an effort that was fitted in units of its own standard deviation, its pull on the curve counted
    /// (studentised); `None` for one that the curve must pass through.
    pub fn studentised(&self, effort: &Effort) -> Option<f64> {
        let mut derivatives = vec![0.0; self.model.parameters()];
        let power_w = self
            .model
            .power_w(&self.fit.parameters, effort.duration_s, &mut derivatives);
        derivatives
            .iter_mut()
            .for_each(|slope| *slope /= effort.sd_w);
        let free = 1.0 - self.fit.unit_variance(&derivatives);
        // Below this it is rounding.
        const FREE: f64 = 1e-6;
        (free > FREE)
            .then(|| (effort.power_w - power_w) / (effort.sd_w * (self.variance * free).sqrt()))
    }

    /// Akaike's criterion for small samples, up to a constant that models of the same efforts share:
    /// `N ln((ν₀ + S)/N) + 2K + 2K(K + 1)/(N − K − 1)` with `N = ν₀ + n` and `K = p + 1`; infinite where `N ≤ K + 1`.
    /// With none known beforehand (`ν₀ = 0`) it is the usual one. A parameter that is known beforehand adds a row and a parameter,
    /// neither of which counts, so that models with and without it are compared on the same efforts.
    ///
    /// Source: Hurvich and Tsai 1989, Burnham and Anderson 2002 (from memory); that what is known counts as residuals is our
    /// own choice.
    pub fn information_criterion(&self) -> f64 {
        let known_from = self.degrees_of_freedom - self.fit.degrees_of_freedom();
        let n = (known_from + self.fit.rows - self.priors) as f64;
        let k = (self.fit.parameters.len() - self.priors) as f64 + 1.0;
        if n <= k + 1.0 {
            return f64::INFINITY;
        }
        n * ((known_from as f64 + self.fit.sum_of_squares) / n).ln()
            + 2.0 * k
            + 2.0 * k * (k + 1.0) / (n - k - 1.0)
    }

    /// The relation as rides take it; `None` for a form that rides do not use.
    pub fn power_duration(&self) -> Option<PowerDuration> {
        let b = &self.fit.parameters;
        match self.model {
            Model::TwoParameter => Some(PowerDuration {
                cp_w: b[0],
                w_prime_j: b[1],
                peak_w: None,
                long_ride: None,
            }),
            Model::OmniDomain {
                peak,
                long_ride_from_s,
            } => Some(PowerDuration {
                cp_w: b[0],
                w_prime_j: b[1],
                peak_w: if peak { b.get(2).copied() } else { None },
                long_ride: long_ride_from_s
                    .zip(b.last())
                    .map(|(from_s, &loss_w)| LongRide { loss_w, from_s }),
            }),
            _ => None,
        }
    }
}

/// The ways of writing the same relation, each of which weights the efforts' errors differently.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// `P t = W′ + CP t`, a straight line; weights the long efforts. Parameters CP, W′.
    WorkTime,
    /// `P = CP + W′/t`, a straight line in 1/t; weights the short efforts. Parameters CP, W′.
    InverseTime,
    /// `t = W′/(P − CP)`, times as long as they are. Parameters CP, W′.
    Time,
    /// The same, each time as sure as its own share.
    RelativeTime,
    /// The same in `ln t`.
    LogTime,
    /// `t = W′/(P − CP) − W′/(Pmax − CP)`. Parameters CP, W′, Pmax.
    ThreeParameterTime,
    /// The same, each time as sure as its own share.
    ThreeParameterRelativeTime,
    /// `ln P = ln S − k ln t`, a straight line. Parameters ln S, −k.
    LogPower,
}

/// Fits one way of writing a relation, without weights other than its own.
///
/// Source: gaesser-1995 for the forms.
///
/// # Errors
/// See [`NoFit`].
pub fn fit_form(form: Form, efforts: &[Effort]) -> Result<Fit, NoFit> {
    let row = |b: &[f64], i: usize, d: &mut [f64]| {
        let Effort {
            duration_s: t,
            power_w: p,
            ..
        } = efforts[i];
        // A time only exists above CP.
        let above_w = |cp_w: f64| if p > cp_w { p - cp_w } else { f64::NAN };
        match form {
            Form::WorkTime => {
                d.copy_from_slice(&[t, 1.0]);
                b[0] * t + b[1] - p * t
            }
            Form::InverseTime => {
                d.copy_from_slice(&[1.0, 1.0 / t]);
                b[0] + b[1] / t - p
            }
            Form::Time | Form::RelativeTime => {
                let sd = if form == Form::Time { 1.0 } else { t };
                let above_w = above_w(b[0]);
                d.copy_from_slice(&[b[1] / above_w.powi(2) / sd, 1.0 / above_w / sd]);
                (b[1] / above_w - t) / sd
            }
            Form::LogTime => {
                let above_w = above_w(b[0]);
                d.copy_from_slice(&[1.0 / above_w, 1.0 / b[1]]);
                (b[1] / above_w / t).ln()
            }
            Form::ThreeParameterTime | Form::ThreeParameterRelativeTime => {
                let sd = if form == Form::ThreeParameterTime {
                    1.0
                } else {
                    t
                };
                let (above_w, most_w) = (above_w(b[0]), b[2] - b[0]);
                let per_j = 1.0 / above_w - 1.0 / most_w;
                let by_cp = b[1] * (1.0 / above_w.powi(2) - 1.0 / most_w.powi(2));
                d.copy_from_slice(&[by_cp / sd, per_j / sd, b[1] / most_w.powi(2) / sd]);
                (b[1] * per_j - t) / sd
            }
            Form::LogPower => {
                d.copy_from_slice(&[1.0, t.ln()]);
                b[0] + b[1] * t.ln() - p.ln()
            }
        }
    };
    let start = match form {
        Form::ThreeParameterTime | Form::ThreeParameterRelativeTime => {
            Model::ThreeParameter.start(efforts)
        }
        Form::LogPower => vec![6.0, -0.1],
        _ => Model::TwoParameter.start(efforts),
    };
    least_squares(&start, efforts.len(), &row)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Central differences of a smooth function keep about this much of a derivative.
    const DIFFERENCES: f64 = 1e-6;

    #[test]
    fn derivatives_are_those_of_the_power() {
        let models = [
            (Model::TwoParameter, vec![250.0, 20e3]),
            (Model::ThreeParameter, vec![250.0, 20e3, 900.0]),
            (
                Model::OmniDomain {
                    peak: true,
                    long_ride_from_s: Some(1800.0),
                },
                vec![250.0, 20e3, 900.0, 20.0],
            ),
            (
                Model::OmniDomain {
                    peak: false,
                    long_ride_from_s: Some(1800.0),
                },
                vec![250.0, 20e3, 20.0],
            ),
            (Model::LogDecline, vec![330.0, 25.0]),
            (Model::PowerLaw, vec![1000.0, 0.19]),
        ];
        for (model, b) in models {
            let (mut derivatives, mut unused) = (vec![0.0; b.len()], vec![0.0; b.len()]);
            assert_eq!(model.parameters(), b.len());
            for time_s in [20.0, 300.0, 5400.0] {
                model.power_w(&b, time_s, &mut derivatives);
                for j in 0..b.len() {
                    let step = 1e-5 * b[j];
                    let mut moved = |by: f64| {
                        let mut moved = b.clone();
                        moved[j] += by;
                        model.power_w(&moved, time_s, &mut unused)
                    };
                    let slope = (moved(step) - moved(-step)) / (2.0 * step);
                    let near =
                        (slope - derivatives[j]).abs() <= DIFFERENCES * slope.abs().max(1e-3);
                    assert!(
                        near,
                        "{model:?} {j} at {time_s}: {} for {slope}",
                        derivatives[j]
                    );
                }
            }
        }
    }
}
