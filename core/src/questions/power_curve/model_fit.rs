//! A model's fit as it is answered.

use serde::Serialize;

use crate::inputs::quantity::Figure;
use crate::physiology::model_comparison::{Compared, ModelName, Outcome};
use crate::physiology::models::{Curve, Model};

/// A model's fit.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ModelFit {
    /// Which.
    pub model: ModelName,
    /// How it came off; the rest is `null` where it did not.
    pub outcome: Outcome,
    /// CP, W.
    pub cp_w: Option<Figure>,
    /// W′, J.
    pub w_prime_j: Option<Figure>,
    /// Pmax, W.
    pub peak_w: Option<Figure>,
    /// A, W for each e-fold of time.
    pub long_ride_loss_w: Option<Figure>,
    /// MAP, W.
    pub seven_minute_w: Option<Figure>,
    /// E, W for each e-fold of time.
    pub decline_w: Option<Figure>,
    /// S, W.
    pub one_second_w: Option<Figure>,
    /// k.
    pub exponent: Option<Figure>,
    /// How CP and W′ go together: their coefficient of correlation.
    pub correlation: Option<f64>,
    /// The scatter of the efforts about it, as a share of power; `null` where none is left over.
    pub scatter_share: Option<f64>,
    /// Akaike's criterion, up to a constant common to all.
    pub criterion: Option<f64>,
    /// The weight of the evidence for it among those compared; they add up to 1.
    pub weight: Option<f64>,
}

impl ModelFit {
    /// A model as it came off.
    pub(super) fn new(compared: &Compared, test_share: f64) -> Self {
        let curve = compared.curve.as_ref();
        let figure = |model: &[ModelName], at: usize| {
            let curve = curve.filter(|_| model.contains(&compared.name))?;
            Some(Figure {
                value: *curve.fit.parameters.get(at)?,
                sd: curve.parameter_sd(at),
            })
        };
        let hyperbolas = [
            ModelName::TwoParameter,
            ModelName::ThreeParameter,
            ModelName::OmniDomain,
        ];
        let (peak, loss) = match curve.map(|curve| curve.model) {
            Some(Model::ThreeParameter) => (Some(2), None),
            Some(Model::OmniDomain {
                peak,
                long_ride_from_s,
            }) => (
                peak.then_some(2),
                long_ride_from_s.map(|_| 2 + usize::from(peak)),
            ),
            _ => (None, None),
        };
        let correlation = |curve: &Curve| {
            curve.covariance(0, 1) / (curve.parameter_sd(0) * curve.parameter_sd(1))
        };
        let scatter = |curve: &Curve| {
            (curve.fit.degrees_of_freedom() > 0)
                .then(|| curve.fit.residual_variance().sqrt() * test_share)
        };
        Self {
            model: compared.name,
            outcome: compared.outcome,
            cp_w: figure(&hyperbolas, 0),
            w_prime_j: figure(&hyperbolas, 1),
            peak_w: peak.and_then(|at| figure(&hyperbolas, at)),
            long_ride_loss_w: loss.and_then(|at| figure(&hyperbolas, at)),
            seven_minute_w: figure(&[ModelName::LogDecline], 0),
            decline_w: figure(&[ModelName::LogDecline], 1),
            one_second_w: figure(&[ModelName::PowerLaw], 0),
            exponent: figure(&[ModelName::PowerLaw], 1),
            correlation: curve
                .filter(|_| hyperbolas.contains(&compared.name))
                .map(correlation),
            scatter_share: curve.and_then(scatter),
            criterion: curve
                .filter(|_| compared.outcome == Outcome::Compared)
                .map(Curve::information_criterion)
                .filter(|criterion| criterion.is_finite()),
            weight: compared.weight,
        }
    }
}
