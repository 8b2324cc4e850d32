//! What efforts cannot tell, or tell badly.

use super::compared::{ModelName, SHORT_S};
use super::held::Held;
use super::{Basis, Marked, Tested, With};
use crate::inputs::error::{Warning, decimal};
use crate::inputs::fields;
use crate::physiology::models::Model;

/// What there is to doubt.
pub(super) struct Seen<'a> {
    pub with: &'a With,
    pub basis: Basis,
    pub model: Option<ModelName>,
    pub held: &'a Held,
    pub longest_s: Option<f64>,
    pub efforts: &'a [Tested],
    pub position: usize,
    pub events: &'a [Marked],
    /// Whether the efforts that count are of lengths far enough apart to tell CP from W′.
    pub apart: bool,
}

/// With none as long as this, CP comes out too high whatever the model (13 young cyclists; the abstract's authors are not in
/// the record that was read).
const LONG_ENOUGH_S: f64 = 600.0;
/// From here on a two-parameter curve overstates what is held: 60-minute power was 309 W where it says 329 W, above the
/// CP of 323 W (four-and-twenty).
const OVERSTATED_FROM_S: f64 = 2700.0;
/// An effort this many standard deviations below the curve does not look like all that the rider had.
const BELOW_SD: f64 = -2.0;

/// Adds the doubts.
pub(super) fn add(warnings: &mut Vec<Warning>, seen: &Seen<'_>) {
    let mut warn =
        |field: &str, kind, message: &str| warnings.push(Warning::new(field, kind, message));
    let own: Vec<&Tested> = seen
        .efforts
        .iter()
        .filter(|tested| tested.position == seen.position)
        .collect();
    let used = own.iter().filter(|tested| tested.used).count();
    for tested in &own {
        let field = format!("scenario.efforts[{}].power_w", tested.effort);
        let short = seen.model == Some(ModelName::TwoParameter) && tested.duration_s < SHORT_S;
        if !tested.used {
            warn(
                &field,
                "beaten",
                "A longer effort was harder than this one, so it was not all you had: the curve leaves it out.",
            );
        } else if tested.above_sd.is_some_and(|above| above < BELOW_SD) {
            warn(
                &field,
                "not_maximal",
                "This effort lies well below the curve of the others: it does not look like all you had.",
            );
        }
        if short {
            let field = format!("scenario.efforts[{}].duration_s", tested.effort);
            warn(
                &field,
                "short",
                "An effort under two minutes bends a two-parameter curve: CP comes out too high and W′ too low.",
            );
        }
    }
    match (seen.basis, used) {
        (Basis::Given, 0) => {}
        (Basis::Given, _) => warn(
            "scenario.efforts",
            "no_curve",
            "No curve of a rider goes through these efforts; your own CP and W′ are shown.",
        ),
        (Basis::Guessed, 1) => warn(
            "scenario.efforts",
            "one_effort",
            "One effort does not tell CP from W′: W′ is taken as riders usually have it. An effort of another length would tell them apart.",
        ),
        (Basis::Guessed, _) if seen.apart => warn(
            "scenario.efforts",
            "hardly_harder",
            "The shorter efforts are hardly harder than the longer ones, or far too much so, for all of them to be all you had: W′ is taken as riders usually have it.",
        ),
        (Basis::Guessed, _) => warn(
            "scenario.efforts",
            "one_length",
            "Efforts of one length do not tell CP from W′: W′ is taken as riders usually have it. Add one much shorter or longer.",
        ),
        (Basis::Fitted, 2) => warn(
            "scenario.efforts",
            "two_efforts",
            "Two efforts fix a curve but cannot check it; a third of another length would.",
        ),
        (Basis::Fitted, _) => {}
    }
    let reserve_j = match seen.held.model {
        Model::LogDecline | Model::PowerLaw => None,
        _ => seen.held.parameter(1).map(|reserve| reserve.value),
    };
    if seen.basis == Basis::Fitted
        && let Some(reserve_j) = reserve_j
        && !(fields::W_PRIME_J.usual_min..=fields::W_PRIME_J.usual_max).contains(&reserve_j)
    {
        let kilojoules = decimal((reserve_j / 100.0).round() / 10.0);
        let message = if reserve_j < fields::W_PRIME_J.usual_min {
            format!(
                "W′ comes out at {kilojoules} kJ, less than riders have: the shortest effort does not look like all you had. Repeat it before you use these."
            )
        } else {
            format!(
                "W′ comes out at {kilojoules} kJ, more than riders have: the longest effort does not look like all you had. Repeat it before you use these."
            )
        };
        warn("scenario.efforts", "w_prime_implausible", &message);
    }
    let Some(longest_s) = seen.longest_s else {
        return;
    };
    if longest_s < LONG_ENOUGH_S {
        warn(
            "scenario.efforts",
            "all_short",
            "All efforts are under ten minutes: CP comes out too high, whatever the model. One of 12 to 20 minutes helps most.",
        );
    }
    let farthest_s = seen
        .events
        .iter()
        .map(|event| event.time_s)
        .fold(seen.with.hold_s, f64::max);
    if farthest_s > longest_s {
        let minutes = decimal((longest_s / 60.0).round());
        let message =
            format!("Beyond {minutes} minutes, your longest effort, the curve is a guess.");
        warn("with.hold_s", "extrapolated", &message);
    }
    let no_loss = match seen.held.model {
        Model::TwoParameter | Model::ThreeParameter => true,
        Model::OmniDomain {
            long_ride_from_s, ..
        } => long_ride_from_s.is_none(),
        Model::LogDecline | Model::PowerLaw => false,
    };
    if no_loss && farthest_s > OVERSTATED_FROM_S && longest_s < OVERSTATED_FROM_S {
        warn(
            "with.hold_s",
            "hour_overstated",
            "A curve that levels off at CP overstates an hour: in trained riders CP was 323 W and the hour 309 W.",
        );
    }
}
