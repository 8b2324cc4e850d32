//! From what was recorded on the road to a drag area: recordings and what of them is usable, their reduction to laps, steady
//! runs and coast-downs, the joint estimate with its intervals, errors that are common to a whole test, how drag rises
//! within a test, and tests taken together. May import `numerics`, `inputs` and `physics`; it sees no scenario.

pub mod coast_down;
pub mod columns;
pub(crate) mod combine;
pub mod common;
pub mod estimate;
pub mod lap;
pub mod late_rise;
pub mod mixing;
pub mod plan;
pub mod recording;
pub mod rig;
mod scatter;
pub(crate) mod wind_axes;
