//! What the question takes.

use serde::Deserialize;

use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::physiology::model_comparison::ModelName;
use crate::questions::request::check_number;

/// What the question takes, beside the scenario's efforts.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The position whose curve it is; if left out, the ridden one if it has efforts, else the one with the most.
    #[cfg_attr(feature = "types", ts(optional))]
    pub position: Option<usize>,
    /// The model drawn and read; if left out, the one that the efforts speak for.
    #[cfg_attr(feature = "types", ts(optional))]
    pub model: Option<ModelName>,
    /// For how long, s.
    pub hold_s: f64,
    /// And how much more, as a share of that power.
    pub power_change: f64,
    /// One standard deviation of an effort that was given without one, as a share of its power.
    pub test_error_share: f64,
}

impl Default for With {
    fn default() -> Self {
        Self {
            position: None,
            model: None,
            hold_s: fields::HOLD_S.default,
            power_change: fields::POWER_CHANGE.default,
            test_error_share: fields::TEST_ERROR_SHARE.default,
        }
    }
}

impl With {
    /// Checks the numbers.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<(), Error> {
        check_number(&fields::HOLD_S, "with.hold_s", self.hold_s)?;
        check_number(
            &fields::POWER_CHANGE,
            "with.power_change",
            self.power_change,
        )?;
        check_number(
            &fields::TEST_ERROR_SHARE,
            "with.test_error_share",
            self.test_error_share,
        )
    }
}
