//! What the question takes.

use serde::Deserialize;

use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::inputs::quantity::Quantity;
use crate::questions::request::{EffortForm, check_number};
use crate::riding::effort::Effort;
use crate::scenario::check_quantity;

/// What the question takes.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The low position, by its place in the scenario.
    pub low: usize,
    /// The one that is held.
    pub steady: usize,
    /// The event that is ridden, by its place in the scenario; if left out, the scenario's course.
    #[cfg_attr(feature = "types", ts(optional))]
    pub event: Option<usize>,
    /// By how much the low position's fresh drag area is below the steady one's, m², if that is what was measured: a
    /// difference from one test is surer than the difference of two drag areas. What is uncertain of the steady drag area is
    /// then common to all.
    #[cfg_attr(feature = "types", ts(optional))]
    pub lower_by_m2: Option<Quantity>,
    /// How hard; the best even effort if left out.
    pub effort: EffortForm,
    /// How many draws of the comparison to take; none if left out.
    pub draws: u32,
    /// The seed of the draws.
    pub seed: u32,
}

impl Default for With {
    fn default() -> Self {
        Self {
            low: 0,
            steady: 1,
            event: None,
            lower_by_m2: None,
            effort: EffortForm::default(),
            draws: 0,
            seed: 1,
        }
    }
}

impl With {
    /// Checks the numbers; gives the effort.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<Effort, Error> {
        check_number(&fields::DRAWS, "with.draws", f64::from(self.draws))?;
        if let Some(lower_by_m2) = &self.lower_by_m2 {
            check_quantity(&fields::LOWER_BY_M2, "with.lower_by_m2", lower_by_m2)?;
        }
        self.effort.check_comparing()
    }
}
