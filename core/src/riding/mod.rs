//! A whole ride along a course: the integrated ride, the quasi-steady time model that is quick enough for draws, the best even
//! effort, and what compares rides in different setups. May import the layers from `numerics` to `physiology`.

pub(crate) mod changes;
#[cfg(feature = "all")]
pub(crate) mod crossovers;
pub mod effort;
#[cfg(feature = "all")]
pub(crate) mod even_efforts;
pub(crate) mod exchange;
#[cfg(feature = "all")]
pub(crate) mod fade_tie;
pub(crate) mod fixed_time;
#[cfg(feature = "all")]
pub(crate) mod held_power;
pub mod integrated;
#[cfg(feature = "all")]
pub(crate) mod known_ride;
#[cfg(not(feature = "all"))]
mod no_stops;
#[cfg(feature = "all")]
pub(crate) mod optimal_pacing;
pub mod quasi_steady;
#[cfg(feature = "all")]
pub mod stops;
#[cfg(feature = "all")]
pub(crate) mod tie;
pub(crate) mod time_map;
