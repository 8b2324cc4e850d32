//! How uncertain inputs make an answer uncertain: sensitivities, Monte Carlo draws, the spread given a condition or over
//! outcomes, and what a measurement is worth. It sees any function of the inputs, and no physics; may import `numerics`.

#[cfg(feature = "all")]
pub(crate) mod conditional;
pub mod draws;
#[cfg(feature = "all")]
pub(crate) mod outcomes;
#[cfg(feature = "all")]
pub mod value_of_information;
