//! What the question takes.

use serde::{Deserialize, Serialize};

use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::physiology::power_duration::Recovery;
use crate::questions::request::check_number;
use crate::riding::optimal_pacing::Allowed;
use crate::riding::optimal_pacing::simple_plan::Style;

/// How W′ comes back below the threshold.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RecoveryForm {
    /// The slower, the fuller it is.
    #[default]
    Differential,
    /// Not at all: the cautious bound.
    None,
    /// Watt for watt: the generous bound.
    Linear,
}

impl From<RecoveryForm> for Recovery {
    fn from(form: RecoveryForm) -> Self {
        match form {
            RecoveryForm::Differential => Self::Differential,
            RecoveryForm::None => Self::None,
            RecoveryForm::Linear => Self::Linear,
        }
    }
}

/// What the question takes.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// How W′ comes back.
    pub recovery: RecoveryForm,
    /// The least power, W; 0 where the rider may coast.
    pub least_w: f64,
    /// The greatest power, W.
    pub greatest_w: f64,
    /// How many powers the plans to be ridden have at most.
    pub targets: u32,
    /// The step to which their powers are rounded, W.
    pub round_w: f64,
    /// What the rider holds after running out, as a share of critical power.
    pub after_running_out_share: f64,
    /// How many riders who differ from the one believed ride both plans; none if left out.
    pub riders: u32,
    /// The seed of these riders.
    pub seed: u32,
}

impl Default for With {
    fn default() -> Self {
        Self {
            recovery: RecoveryForm::default(),
            least_w: fields::LEAST_W.default,
            greatest_w: fields::GREATEST_W.default,
            targets: fields::TARGETS.default as u32,
            round_w: fields::ROUND_W.default,
            after_running_out_share: fields::AFTER_RUNNING_OUT_SHARE.default,
            riders: fields::RIDERS.default as u32,
            seed: 1,
        }
    }
}

impl With {
    /// Checks the numbers.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<(), Error> {
        check_number(&fields::LEAST_W, "with.least_w", self.least_w)?;
        check_number(&fields::GREATEST_W, "with.greatest_w", self.greatest_w)?;
        check_number(&fields::TARGETS, "with.targets", f64::from(self.targets))?;
        check_number(&fields::ROUND_W, "with.round_w", self.round_w)?;
        check_number(
            &fields::AFTER_RUNNING_OUT_SHARE,
            "with.after_running_out_share",
            self.after_running_out_share,
        )?;
        check_number(&fields::RIDERS, "with.riders", f64::from(self.riders))
    }

    /// What the rider will do.
    pub(super) fn allowed(&self) -> Allowed {
        Allowed {
            recovery: self.recovery.into(),
            least_w: self.least_w,
            greatest_w: self.greatest_w,
        }
    }

    /// What the plans to be ridden are like.
    pub(super) fn style(&self) -> Style {
        Style {
            targets: self.targets as usize,
            round_w: self.round_w,
            powers_w: (self.least_w, self.greatest_w),
        }
    }
}
