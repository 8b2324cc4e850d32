//! Road physics, power–duration and the questions of Fasterby.
//!
//! One folder per layer; a layer imports only those before it: `numerics`, `inputs`, `physics`, `physiology`, `riding`,
//! `uncertainty`, `measuring`, `scenario`, `questions`. There is no input or output here, no clock, no randomness without a seed, and no
//! panic that an input can reach.
//!
//! ```
//! let answer = fasterby_core::ask_json("finish-time", "{}").expect("an empty request takes every default");
//! assert!(answer.contains("\"time_s\""));
//! ```

#![forbid(unsafe_code)]
#![warn(unreachable_pub)]

mod inputs;
#[cfg(feature = "all")]
mod measuring;
mod numerics;
mod physics;
mod physiology;
pub mod questions;
mod riding;
pub mod scenario;
mod uncertainty;

pub use inputs::{error, fields, message, published, quantity, sources};
#[cfg(feature = "all")]
pub use measuring::{
    coast_down, columns, common, estimate, lap, late_rise, mixing, plan, recording, rig,
};
pub use numerics::{distributions, least_squares, solve};
#[cfg(feature = "all")]
pub use physics::leg;
pub use physics::{air, course, position, resistance};
pub use physiology::power_duration;
#[cfg(feature = "all")]
pub use physiology::{models, w_prime_forms};
pub use questions::{Receive, ask, ask_json, ask_with_columns};
#[cfg(feature = "all")]
pub use riding::stops;
pub use riding::{effort, integrated, quasi_steady};
pub use uncertainty::draws;
#[cfg(feature = "all")]
pub use uncertainty::value_of_information;
