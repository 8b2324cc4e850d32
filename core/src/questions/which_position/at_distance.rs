//! All choices over one distance.

use serde::Serialize;

use crate::inputs::quantity::Figure;
use crate::riding::effort::{Effort, Paced};
use crate::riding::fixed_time::FixedTime;
use crate::riding::integrated::Setup;
use crate::scenario::Scenario;
use crate::scenario::comparison::{Comparison, faster_by};
use crate::scenario::propagation::with_model_error;
use crate::uncertainty::draws::Sensitivities;

/// What a choice gives over a distance.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ChoiceTime {
    /// Finish time.
    pub time_s: Figure,
    /// How much faster than the reference; negative if slower. The model's own error cancels.
    pub difference_s: Figure,
    /// How much further it gets than the reference at an event that goes by time; negative if less far.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub further_m: Option<Figure>,
    /// Power of the best even effort.
    pub power_w: f64,
    /// Drag area averaged over the ride, m².
    pub mean_cda_m2: f64,
}

/// All choices over a distance.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct AtDistance {
    /// How far: over the scenario's course, or over an event's own.
    pub distance_m: f64,
    /// The time of an event that goes by time; the distance is then that which the rider covers in it in the ridden position.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub duration_s: Option<f64>,
    /// The fastest choice, by its place in `choices`.
    pub best: usize,
    /// By how much it is faster than the next, in seconds; `null` if there is no other.
    pub ahead_s: Option<Figure>,
    /// In a fixed time, how much further it gets than the next, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub ahead_m: Option<Figure>,
    /// What each choice gives.
    pub times: Vec<ChoiceTime>,
}

impl AtDistance {
    /// The row of known_rides that begins at `row`, as the answer tells it.
    pub(super) fn new(
        comparison: &Comparison<'_>,
        spread: &Sensitivities,
        row: usize,
        distance_m: f64,
        reference: usize,
        setups: &[Setup],
        scenario: &Scenario,
    ) -> Self {
        let model = scenario.model_error_share.value;
        let times: Vec<ChoiceTime> = setups
            .iter()
            .enumerate()
            .map(|(choice, setup)| {
                let ride = comparison.known_rides[row + choice].ride;
                let time = Figure {
                    value: ride.time_s,
                    sd: spread.sd(|moved| moved[row + choice]),
                };
                ChoiceTime {
                    time_s: with_model_error(time, model),
                    difference_s: faster_by(spread, row + reference, row + choice),
                    further_m: None,
                    power_w: ride.power_w,
                    mean_cda_m2: setup.mean_cda_m2(ride.time_s),
                }
            })
            .collect();
        let best = fastest(&times, None).unwrap_or(reference);
        let ahead_s =
            fastest(&times, Some(best)).map(|next| faster_by(spread, row + next, row + best));
        Self {
            distance_m,
            duration_s: None,
            best,
            ahead_s,
            ahead_m: None,
            times,
        }
    }

    /// The same at an event that goes by time, with how much further each choice gets in it than the reference.
    pub(super) fn in_fixed_time(
        mut self,
        duration_s: f64,
        reference: usize,
        setups: &[Setup],
    ) -> Self {
        let fixed: Vec<Option<FixedTime>> = setups
            .iter()
            .zip(&self.times)
            .map(|(setup, choice)| {
                let ride = Paced {
                    power_w: choice.power_w,
                    time_s: choice.time_s.value,
                };
                FixedTime::new(setup, Effort::Even, ride, duration_s).ok()
            })
            .collect();
        self.duration_s = Some(duration_s);
        for (choice, own) in self.times.iter_mut().zip(&fixed) {
            choice.further_m = own
                .zip(fixed[reference])
                .map(|(own, other)| own.further_than_m(&other, choice.difference_s));
        }
        let next = fastest(&self.times, Some(self.best)).and_then(|next| fixed[next]);
        self.ahead_m = fixed[self.best]
            .zip(next)
            .zip(self.ahead_s)
            .map(|((best, next), ahead_s)| best.further_than_m(&next, ahead_s));
        self
    }
}

/// The place of the fastest choice, but for one.
fn fastest(times: &[ChoiceTime], but: Option<usize>) -> Option<usize> {
    times
        .iter()
        .enumerate()
        .filter(|(choice, _)| Some(*choice) != but)
        .min_by(|a, b| a.1.time_s.value.total_cmp(&b.1.time_s.value))
        .map(|(choice, _)| choice)
}
