//! What is said of rides so long that a power curve without a long-ride loss overstates them.

use crate::inputs::error::Warning;
use crate::inputs::message;
use crate::physiology::power_duration::PowerDuration;

/// From here on a power curve without a long-ride loss says too much, s.
const OVERSTATED_FROM_S: f64 = 3000.0;

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
