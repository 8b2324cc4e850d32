//! The physics of a rider on a road, at one moment or at one place: air, forces, drag area, course, the linkage of the
//! leg and the rider on a set-up. May import `numerics` and `inputs`.

pub mod air;
pub mod course;
#[cfg(feature = "all")]
pub(crate) mod geodesy;
#[cfg(feature = "all")]
pub mod leg;
pub mod position;
#[cfg(feature = "all")]
pub(crate) mod position_comparison;
pub mod resistance;
#[cfg(feature = "all")]
pub(crate) mod set_up;
#[cfg(feature = "all")]
pub(crate) mod set_up_changes;
