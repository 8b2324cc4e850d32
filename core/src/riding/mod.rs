//! A whole ride along a course: the integrated ride, the quasi-steady time model that is quick enough for draws, and the best
//! even effort. May import the layers from `numerics` to `physiology`.

pub mod effort;
pub mod integrated;
pub mod quasi_steady;
