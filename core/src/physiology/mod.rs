//! What a rider can produce and for how long: power–duration, the models that compete to describe it and which of them efforts
//! speak for, what positions cost in power, and W′ balance. May import `numerics`, `inputs` and `physics`.

#[cfg(feature = "all")]
pub(crate) mod efforts;
#[cfg(feature = "all")]
pub(crate) mod held;
#[cfg(feature = "all")]
pub(crate) mod model_comparison;
#[cfg(feature = "all")]
pub mod models;
#[cfg(feature = "all")]
pub(crate) mod position_curves;
pub mod power_duration;
#[cfg(feature = "all")]
pub(crate) mod smooth_branches;
#[cfg(feature = "all")]
pub mod w_prime_forms;
