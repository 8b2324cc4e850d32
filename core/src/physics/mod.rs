//! The physics of a rider on a road, at one moment or at one place: air, forces, drag area, course, and the linkage of the
//! leg. May import `numerics` and `inputs`.

pub mod air;
pub mod course;
#[cfg(feature = "all")]
pub mod leg;
pub mod position;
pub mod resistance;
