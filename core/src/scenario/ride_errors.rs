//! Rides that cannot be ridden, as errors that name a field of the request.

use crate::inputs::error::Error;
use crate::inputs::message;
use crate::riding::effort::NoEffort;
use crate::riding::integrated::Stall;

/// An effort without an answer, as an error.
pub(crate) fn no_effort(reason: NoEffort) -> Error {
    match reason {
        NoEffort::Stalls(Stall {
            push_n: Some(push_n),
            distance_m,
        }) => Error::impossible(
            "scenario.bike.launch_force_n",
            message::stops_at_steep(distance_m.round(), push_n.round()),
        ),
        NoEffort::Stalls(stall) => {
            Error::impossible("scenario.course", message::stops(stall.distance_m.round()))
        }
        NoEffort::OutOfReach => {
            Error::impossible("with.effort.time_s", message::time_out_of_reach())
        }
        NoEffort::NothingSustainable => {
            Error::impossible("scenario.power", message::nothing_sustainable())
        }
    }
}
