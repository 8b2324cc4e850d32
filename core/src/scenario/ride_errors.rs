//! Rides that cannot be ridden, as errors that name a field of the request.

use crate::inputs::error::{Error, decimal};
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
            format!(
                "The rider comes to a stop after {} m: the road there takes a push of {} N, more than the greatest push of this rider and gear.",
                decimal(distance_m.round()),
                decimal(push_n.round())
            ),
        ),
        NoEffort::Stalls(stall) => Error::impossible(
            "scenario.course",
            format!(
                "The rider comes to a stop after {} m: too little power for this road and wind.",
                decimal(stall.distance_m.round())
            ),
        ),
        NoEffort::OutOfReach => Error::impossible(
            "with.effort.time_s",
            "No power from 1 to 2500 W gives this time on this course.",
        ),
        NoEffort::NothingSustainable => Error::impossible(
            "scenario.power",
            "This power curve falls to nothing before the finish.",
        ),
    }
}
