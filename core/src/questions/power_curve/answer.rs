//! What the question answers.

use serde::Serialize;

use super::columns::Columns;
use super::model_fit::ModelFit;
use super::training::Training;
use crate::inputs::error::Warning;
use crate::inputs::quantity::Figure;
use crate::physiology::efforts::Tests;
use crate::physiology::held::Held;
use crate::physiology::model_comparison::{ModelName, spans};
use crate::physiology::models::{Curve, Effort, Form, fit_form};
use crate::physiology::position_curves::{Basis, PositionCurve};

/// An effort beside the curve of its position.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Tested {
    /// Its place in the scenario.
    pub effort: usize,
    /// The position it was ridden in.
    pub position: usize,
    /// How long, s.
    pub duration_s: f64,
    /// Its power, with the standard deviation that it was given or that tests have.
    pub power_w: Figure,
    /// What the curve says; `null` for an effort in another position.
    pub curve_w: Option<f64>,
    /// How far above the curve it lies, in its own standard deviations; `null` where that cannot be said.
    pub above_sd: Option<f64>,
    /// Whether the curve counts it: one that a longer effort beats was not all that the rider had.
    pub used: bool,
}

impl Tested {
    /// The efforts of one position beside the curve of another or its own.
    pub(super) fn of(group: &Tests, position: usize, curve: Option<&Curve>) -> Vec<Self> {
        let one = |&(place, effort): &(usize, Effort)| {
            let used = group.used.contains(&effort);
            let curve = curve.filter(|_| group.position == position);
            let (curve_w, sd_w) = curve.map(|curve| curve.power_w(effort.duration_s)).unzip();
            let above_sd = match (curve, curve_w, sd_w) {
                (Some(curve), ..) if used => curve.studentised(&effort),
                (Some(curve), Some(curve_w), Some(sd_w)) => Some(
                    (effort.power_w - curve_w) / sd_w.hypot(curve.variance.sqrt() * effort.sd_w),
                ),
                _ => None,
            };
            let power_w = Figure {
                value: effort.power_w,
                sd: effort.sd_w,
            };
            Self {
                effort: place,
                position: group.position,
                duration_s: effort.duration_s,
                power_w,
                curve_w,
                above_sd,
                used,
            }
        };
        group.all.iter().map(one).collect()
    }
}

/// More power, and for how long.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct More {
    /// The power, W.
    pub power_w: f64,
    /// How long it can be held; `null` for ever, or not for a second.
    pub held_s: Option<Figure>,
}

/// One way of writing the two-parameter relation, fitted without weights other than its own.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Forms {
    /// CP, W, of work over time, power over one over time, and time over power.
    pub cp_w: [f64; 3],
    /// W′, J, of the same.
    pub w_prime_j: [f64; 3],
}

impl Forms {
    /// Of three efforts or more.
    pub(super) fn of(efforts: &[Effort]) -> Option<Self> {
        if efforts.len() < 3 || !spans(efforts) {
            return None;
        }
        let fits = [Form::WorkTime, Form::InverseTime, Form::Time]
            .map(|form| fit_form(form, efforts).ok());
        let [Some(work), Some(inverse), Some(time)] = fits else {
            return None;
        };
        let all = [&work.parameters, &inverse.parameters, &time.parameters];
        Some(Self {
            cp_w: all.map(|b| b[0]),
            w_prime_j: all.map(|b| b[1]),
        })
    }
}

/// What goes into the scenario.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Usable {
    /// The model that it is of.
    pub model: ModelName,
    /// CP, W.
    pub cp_w: Figure,
    /// W′, J.
    pub w_prime_j: Figure,
    /// Pmax, W, if short efforts told it.
    pub peak_w: Option<Figure>,
    /// The loss in long rides as a share of CP: the usual one, or what efforts beyond its onset say of it. `null` for a curve
    /// through such efforts that has none, since it is in its CP already.
    pub long_ride_loss_share: Option<Figure>,
    /// How CP and W′ go together.
    pub cp_w_prime_correlation: f64,
}

impl Usable {
    /// Of a model that rides use.
    pub(super) fn of(model: ModelName, held: &Held) -> Self {
        let (peak, _) = held.places();
        Self {
            model,
            cp_w: held.parameter(0).unwrap_or_default(),
            w_prime_j: held.parameter(1).unwrap_or_default(),
            peak_w: peak.and_then(|at| held.parameter(at)),
            long_ride_loss_share: held.loss_share(),
            cp_w_prime_correlation: held.correlation(),
        }
    }
}

/// An event of the scenario, as a ride with the curve put into the scenario would go.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Marked {
    /// Its place in the scenario.
    pub event: usize,
    /// How far, m.
    pub distance_m: f64,
    /// How long it takes at the power that the curve gives for just that time.
    pub time_s: f64,
    /// That power.
    pub power_w: Figure,
    /// Whether it is longer than any effort.
    pub beyond: bool,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// What it rests on.
    pub basis: Basis,
    /// The position that the curve is of.
    pub position: usize,
    /// Every effort.
    pub efforts: Vec<Tested>,
    /// The longest effort that the curve rests on, s.
    pub longest_s: Option<f64>,
    /// The power that can be held for the time asked for: the curve's own doubt.
    pub power_w: Figure,
    /// Between these a test of that length would come out, 19 times in 20, W.
    pub test_w: [f64; 2],
    /// A change of that power, and for how long.
    pub more: More,
    /// The model read; `null` for the scenario's own numbers. Past the onset of the long-ride loss a model that rides use loses
    /// the usual share of CP where no effort is that long, here as in a ride.
    pub model: Option<ModelName>,
    /// Whether one model has nine tenths of the evidence among those compared.
    pub told: bool,
    /// Every model.
    pub models: Vec<ModelFit>,
    /// The two-parameter relation in its three forms; `null` with fewer than three efforts.
    pub forms: Option<Forms>,
    /// What goes into the scenario; `null` where no form that rides use was found.
    pub usable: Option<Usable>,
    /// Every position that has efforts.
    pub positions: Vec<PositionCurve>,
    /// The scenario's events.
    pub events: Vec<Marked>,
    /// What training buys.
    pub training: Training,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}
