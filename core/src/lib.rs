//! Road physics, power–duration and the questions of Fasterby.
//!
//! Lower rooms know nothing of the upper ones: `quantity bounds error sources solve fit statistics blocks budget subsets`, then `air resistance`, then
//! `power_duration position course`, then `ride steady_ride effort`, then `draws information`, then `scenario`, then `questions`. There is no
//! input or output here, no clock, no randomness without a seed, and no panic that an input can reach.

#![forbid(unsafe_code)]

pub mod air;
#[cfg(feature = "all")]
pub mod blocks;
pub mod bounds;
#[cfg(feature = "all")]
pub mod budget;
pub mod course;
pub mod draws;
pub mod effort;
pub mod error;
pub mod fit;
#[cfg(feature = "all")]
pub mod information;
#[cfg(feature = "all")]
pub mod kinematics;
pub mod position;
pub mod power_duration;
#[cfg(feature = "all")]
pub mod power_models;
pub mod quantity;
pub mod questions;
pub mod resistance;
pub mod ride;
pub mod scenario;
pub mod solve;
pub mod sources;
pub mod statistics;
pub mod steady_ride;
#[cfg(feature = "all")]
pub mod subsets;
#[cfg(feature = "all")]
pub mod w_prime_forms;

pub use questions::{Receive, ask, ask_json};
