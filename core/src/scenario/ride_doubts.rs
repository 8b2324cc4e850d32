//! What is doubtful about a ride, whichever question rides it.

use crate::inputs::error::Warning;
use crate::inputs::message::{self, Message};
use crate::physiology::power_duration::PowerDuration;
use crate::riding::effort::{Effort, Paced};
use crate::riding::integrated::Setup;

/// From here on a power curve without a long-ride loss says too much, s.
const OVERSTATED_FROM_S: f64 = 3000.0;
/// From here on a power curve is a guess, s: three times as long as the published powers that its long-ride loss rests on
/// (four-and-twenty).
const FAR_FROM_S: f64 = 3.0 * 3600.0;

/// The warning for a ride of this time at the curve's watts, where the curve has no long-ride loss.
pub(crate) fn overstated_hour(time_s: f64, power: &PowerDuration) -> Option<Warning> {
    let overstated = time_s > OVERSTATED_FROM_S && power.long_ride.is_none();
    overstated.then(|| {
        Warning::of(
            "scenario.power.long_ride_loss_w",
            message::hour_overstated(),
        )
    })
}

/// What is said of a ride at the power curve's watts that is longer than the curve knows.
pub(crate) fn long_doubts(setup: &Setup, effort: Effort, time_s: f64, warnings: &mut Vec<Warning>) {
    if matches!(effort, Effort::Power(_)) {
        return;
    }
    let time_s = setup.riding_s(time_s);
    warnings.extend(overstated_hour(time_s, &setup.power));
    warnings.extend(far_beyond(time_s));
}

/// The warning for a ride at the power curve's watts that is far longer than any effort behind such curves.
pub(crate) fn far_beyond(time_s: f64) -> Option<Warning> {
    let hours = (time_s / 3600.0).round() as usize;
    (time_s > FAR_FROM_S).then(|| Warning::of("scenario.power", message::far_beyond(hours)))
}

/// The warning for a given power above the curve's.
pub(crate) fn above_curve(setup: &Setup, effort: Effort, ride: Paced) -> Option<Warning> {
    let sustainable_w = setup.sustainable_w(ride.time_s);
    // A watt is below what any meter tells.
    let above = matches!(effort, Effort::Power(_)) && ride.power_w > sustainable_w + 1.0;
    above.then(|| {
        Warning::of(
            "with.effort.power_w",
            beyond_curve(ride.power_w, sustainable_w),
        )
    })
}

/// What is said of a power above the curve's.
pub(crate) fn beyond_curve(power_w: f64, sustainable_w: f64) -> Message {
    message::beyond_curve(power_w.round(), sustainable_w.round())
}
