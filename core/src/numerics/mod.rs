//! Numerical methods without physics: roots, quadrature, interpolation, least squares, distributions, schedules and best
//! sets. Imports nothing of the crate.

#[cfg(feature = "all")]
pub(crate) mod banded;
#[cfg(feature = "all")]
pub(crate) mod best_set;
pub mod distributions;
pub(crate) mod exponential;
pub mod least_squares;
#[cfg(feature = "all")]
pub(crate) mod schedule;
#[cfg(feature = "all")]
pub(crate) mod second_order;
pub mod solve;
#[cfg(feature = "all")]
pub(crate) mod subsets;
