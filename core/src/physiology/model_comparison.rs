//! Models fitted to the same efforts, and which of them the efforts speak for.

use serde::{Deserialize, Serialize};

use super::models::{Curve, Effort, LOG_DECLINE_FROM_S, Model, Prior, fit};
use crate::inputs::fields;
use crate::numerics::least_squares::NoFit;

/// A model by its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum ModelName {
    /// `P = CP + W′/t`.
    TwoParameter,
    /// `P = CP + W′/(t + W′/(Pmax − CP))`.
    ThreeParameter,
    /// `P = CP + W′/t (1 − exp(−t (Pmax − CP)/W′)) − A ln(t/T)`.
    OmniDomain,
    /// `P = MAP − E ln(t/420 s)`, past seven minutes.
    LogDecline,
    /// `P = S t^(−k)`.
    PowerLaw,
}

/// Every model, in the order in which they are shown.
const MODELS: [ModelName; 5] = [
    ModelName::TwoParameter,
    ModelName::ThreeParameter,
    ModelName::OmniDomain,
    ModelName::LogDecline,
    ModelName::PowerLaw,
];

/// How a model came off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Outcome {
    /// It was fitted to all efforts and is compared.
    Compared,
    /// It was fitted to those past seven minutes only and so cannot be compared.
    Partly,
    /// There are fewer efforts than it has parameters.
    TooFew,
    /// No effort is short enough, or long enough, for what it adds.
    NotReached,
    /// The efforts leave its parameters open.
    Undetermined,
    /// Its parameters came out beyond what riders are.
    Implausible,
}

/// A model with its curve, where it has one.
pub(crate) struct Compared {
    pub(crate) name: ModelName,
    pub(crate) outcome: Outcome,
    pub(crate) curve: Option<Curve>,
    pub(crate) weight: Option<f64>,
}

/// The degrees of freedom that the stated repeatability is worth: eight riders tested twice.
///
/// Source: four-and-twenty.
pub(crate) const KNOWN_FROM: usize = 7;
/// An effort shorter than this takes a peak power to describe, s; two-parameter curves are not for it.
pub(crate) const SHORT_S: f64 = 120.0;
/// Efforts whose lengths differ by less than this factor say nothing of CP and W′ apart.
const SPAN: f64 = 1.3;

/// Whether efforts are of different enough lengths to tell CP from W′.
pub(crate) fn spans(efforts: &[Effort]) -> bool {
    let longest_s = efforts.iter().map(|e| e.duration_s).fold(0.0, f64::max);
    let shortest_s = efforts
        .iter()
        .map(|e| e.duration_s)
        .fold(f64::INFINITY, f64::min);
    longest_s >= SPAN * shortest_s
}

/// Fits every model and weighs those that describe all efforts; long rides lose power from `long_ride_from_s` on.
pub(crate) fn compare(efforts: &[Effort], long_ride_from_s: f64) -> Vec<Compared> {
    let mut all: Vec<Compared> = MODELS
        .iter()
        .map(|&name| attempt(name, efforts, long_ride_from_s))
        .collect();
    let criterion = |one: &Compared| match (one.outcome, &one.curve) {
        (Outcome::Compared, Some(curve)) => curve.information_criterion(),
        _ => f64::INFINITY,
    };
    let least = all.iter().map(criterion).fold(f64::INFINITY, f64::min);
    let evidence: Vec<f64> = all
        .iter()
        .map(|one| (0.5 * (least - criterion(one))).exp())
        .collect();
    let sum: f64 = evidence.iter().filter(|share| share.is_finite()).sum();
    for (one, share) in all.iter_mut().zip(evidence) {
        one.weight = (one.outcome == Outcome::Compared && least.is_finite()).then(|| share / sum);
    }
    all
}

fn attempt(name: ModelName, efforts: &[Effort], from_s: f64) -> Compared {
    let without = |outcome| Compared {
        name,
        outcome,
        curve: None,
        weight: None,
    };
    let shortest_s = efforts
        .iter()
        .map(|e| e.duration_s)
        .fold(f64::INFINITY, f64::min);
    let longest_s = efforts.iter().map(|e| e.duration_s).fold(0.0, f64::max);
    let late: Vec<Effort> = efforts
        .iter()
        .filter(|e| e.duration_s >= LOG_DECLINE_FROM_S)
        .copied()
        .collect();
    let (model, efforts, outcome) = match name {
        ModelName::TwoParameter => (Model::TwoParameter, efforts, Outcome::Compared),
        ModelName::ThreeParameter => (Model::ThreeParameter, efforts, Outcome::Compared),
        ModelName::PowerLaw => (Model::PowerLaw, efforts, Outcome::Compared),
        ModelName::OmniDomain => {
            let peak = shortest_s < SHORT_S;
            let long_ride_from_s = (longest_s > from_s).then_some(from_s);
            if !peak && long_ride_from_s.is_none() {
                return without(Outcome::NotReached);
            }
            (
                Model::OmniDomain {
                    peak,
                    long_ride_from_s,
                },
                efforts,
                Outcome::Compared,
            )
        }
        ModelName::LogDecline if late.len() < 2 => return without(Outcome::NotReached),
        ModelName::LogDecline if late.len() < efforts.len() => {
            (Model::LogDecline, &late[..], Outcome::Partly)
        }
        ModelName::LogDecline => (Model::LogDecline, efforts, Outcome::Compared),
    };
    let priors = loss_prior(model);
    match fit(model, efforts, &priors) {
        Ok(fit) if plausible(model, &fit.parameters) => {
            let curve = Curve::new(model, fit, KNOWN_FROM, priors.len());
            Compared {
                name,
                outcome,
                curve: Some(curve),
                weight: None,
            }
        }
        Ok(_) => without(Outcome::Implausible),
        Err(NoFit::TooFewRows) => without(Outcome::TooFew),
        Err(NoFit::Undetermined | NoFit::NotConverged) => without(Outcome::Undetermined),
    }
}

/// What is known beforehand of the loss in long rides, for a model that has one: riders' usual share of critical power, as
/// uncertain as it is.
fn loss_prior(model: Model) -> Vec<Prior> {
    let Model::OmniDomain {
        peak,
        long_ride_from_s: Some(_),
    } = model
    else {
        return Vec::new();
    };
    let usual = fields::LONG_RIDE_LOSS_SHARE.typical();
    vec![Prior {
        parameter: 2 + usize::from(peak),
        share_of: Some(0),
        value: usual.value,
        sd: usual.sd,
    }]
}

/// Whether the parameters are a rider's: within the bounds of a scenario, and power falls with time.
pub(crate) fn plausible(model: Model, b: &[f64]) -> bool {
    let within = |value: f64, field: &fields::Field| (field.min..=field.max).contains(&value);
    match model {
        Model::TwoParameter => within(b[0], &fields::CP_W) && within(b[1], &fields::W_PRIME_J),
        Model::ThreeParameter => {
            plausible(Model::TwoParameter, b) && within(b[2], &fields::PEAK_W) && b[2] > b[0]
        }
        Model::OmniDomain {
            peak,
            long_ride_from_s,
        } => {
            plausible(Model::TwoParameter, b)
                && (!peak || within(b[2], &fields::PEAK_W) && b[2] > b[0])
                && (long_ride_from_s.is_none()
                    || b.last()
                        .is_some_and(|&a| within(a, &fields::LONG_RIDE_LOSS_W)))
        }
        Model::LogDecline => within(b[0], &fields::EFFORT_POWER_W) && b[1] >= 0.0,
        Model::PowerLaw => b[0] > 0.0 && (0.0..1.0).contains(&b[1]),
    }
}

/// The model that is read where none is asked for: of the forms that rides use (two parameters, or omni-domain), so that what
/// the curve shows is what is ridden. Where an effort was longer than the point from which long rides lose power, it is the
/// one with that loss, which the effort tells of; else the one with more evidence.
pub(crate) fn best(all: &[Compared]) -> Option<&Compared> {
    let knows_loss = |one: &&Compared| one.curve.as_ref().is_some_and(|curve| curve.priors > 0);
    all.iter()
        .find(knows_loss)
        .or_else(|| heaviest(all, |one| is_ridden(one.name)))
}

/// Whether rides use a model.
pub(crate) fn is_ridden(name: ModelName) -> bool {
    matches!(name, ModelName::TwoParameter | ModelName::OmniDomain)
}

fn heaviest(all: &[Compared], among: impl Fn(&Compared) -> bool) -> Option<&Compared> {
    let candidates = all.iter().filter(|one| one.weight.is_some() && among(one));
    candidates.reduce(|best, one| if one.weight > best.weight { one } else { best })
}

/// What is guessed of CP and W′ where the efforts do not tell them apart: with riders' usual W′, and their usual loss in long
/// rides, both as uncertain as they are.
pub(crate) fn guessed(efforts: &[Effort], long_ride_from_s: f64) -> Option<Curve> {
    let usual = fields::W_PRIME_J.typical();
    let model = Model::OmniDomain {
        peak: false,
        long_ride_from_s: Some(long_ride_from_s),
    };
    let mut priors = loss_prior(model);
    priors.push(Prior {
        parameter: 1,
        share_of: None,
        value: usual.value,
        sd: usual.sd,
    });
    let fit = fit(model, efforts, &priors).ok()?;
    plausible(model, &fit.parameters).then(|| Curve::new(model, fit, KNOWN_FROM, priors.len()))
}
