//! A change to a scenario, and what it moves once its numbers are found.

use serde::{Deserialize, Serialize};

use crate::inputs::fields;
use crate::inputs::quantity::Quantity;

/// One thing that a candidate changes: a number by an amount or by a share of itself, or the position ridden.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Change {
    /// The number, by its path in the scenario such as `bike.rolling_coefficient`. Without an index, as in
    /// `positions.cda_m2`, that of every position. A drag area takes with it what it is once lost and in lapses; critical
    /// power that of a position's own tests.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub field: Option<String>,
    /// By how much, in the number's own unit.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub by: Option<Quantity>,
    /// By what share of itself.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub share: Option<Quantity>,
    /// The position to ride in, by its place in the scenario.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub use_position: Option<usize>,
}

/// What a change does, its numbers found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Move {
    /// Adds to the numbers of a target.
    Add(usize, Quantity),
    /// Multiplies the numbers of a target by one more than a share.
    Scale(usize, Quantity),
    /// Rides in another position.
    Ride(usize),
}

impl Move {
    /// The amount, if it can be uncertain.
    pub(crate) fn amount(&self) -> Option<Quantity> {
        match *self {
            Self::Add(_, amount) | Self::Scale(_, amount) => Some(amount),
            Self::Ride(_) => None,
        }
    }

    /// The same with another amount.
    pub(crate) fn with_amount(&self, value: f64) -> Self {
        match *self {
            Self::Add(target, amount) => Self::Add(target, Quantity { value, ..amount }),
            Self::Scale(target, amount) => Self::Scale(target, Quantity { value, ..amount }),
            Self::Ride(position) => Self::Ride(position),
        }
    }

    /// Two amounts that it may have: a share leaves something.
    pub(crate) fn within_reach(&self, low: f64, high: f64) -> (f64, f64) {
        match self {
            Self::Scale(..) => (low.max(fields::CHANGE_SHARE.min), high),
            _ => (low, high),
        }
    }

    pub(super) fn coordinate(&self) -> Coordinate {
        match *self {
            Self::Add(target, _) => Coordinate::Added(target),
            Self::Scale(target, _) => Coordinate::Times(target),
            Self::Ride(_) => Coordinate::Position,
        }
    }
}

/// Something about the scenario that changes move. A number moved by both amounts and shares is
/// `(value + amounts) × (1 + share) × (1 + share) …`, in whatever order they come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Coordinate {
    Added(usize),
    Times(usize),
    Position,
}
