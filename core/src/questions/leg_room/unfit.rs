//! Set-ups that cannot be, as errors that name a field of the request.

use crate::inputs::error::Error;
use crate::inputs::message::{self, Message};
use crate::physics::set_up::Unfit;

/// A set-up that cannot be, as an error at the control that would put it right.
pub(super) fn unfit((side, reason): (usize, Unfit)) -> Error {
    let name = ["a", "b"][side];
    match reason {
        Unfit::Torso => Error::impossible(
            format!("with.{name}.bar_drop_m"),
            message::trunk_too_short(),
        ),
        Unfit::Leg(leg) => {
            let (rider, missing) = *leg;
            let whole = |radians: f64| radians.to_degrees().round();
            let [from, to, at] = [missing.from_rad, missing.to_rad, missing.worst_rad].map(whole);
            let missing_m = (missing.missing_m * 1000.0).round().max(1.0) / 1000.0;
            let limit_m = rider.reachable_saddle_m(missing.too_near);
            let (why, limited): (_, fn(Message, f64) -> Message) = if missing.too_near {
                (
                    message::leg_too_long(from, to, missing_m, at),
                    message::saddle_at_least,
                )
            } else {
                (
                    message::leg_too_short(from, to, missing_m, at),
                    message::saddle_at_most,
                )
            };
            let message = match limit_m {
                Some(limit_m) => limited(why, limit_m),
                None => why,
            };
            Error::impossible(format!("with.{name}.saddle_height_m"), message)
        }
    }
}
