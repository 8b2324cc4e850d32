//! What the question takes.

use serde::{Deserialize, Serialize};

use crate::inputs::error::Error;
use crate::inputs::fields::{self, Field};
use crate::inputs::quantity::Quantity;
use crate::physics::position::Position;
use crate::physiology::power_duration::Recovery;
use crate::questions::request::check_number;
use crate::riding::optimal_pacing::Allowed;
use crate::riding::optimal_pacing::simple_plan::Style;
use crate::riding::optimal_pacing::sitting_up::{self, Upright};
use crate::scenario::check_quantity;

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

/// Sitting up on steep climbs.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct SitUp {
    /// On road of this grade or more.
    pub from_grade: f64,
    /// Drag area there, m²: that of the position where it is the larger.
    pub cda_m2: Quantity,
    /// How much more critical power the rider has there than in the position, as a share.
    pub cp_gain_share: Quantity,
}

impl Default for SitUp {
    fn default() -> Self {
        Self {
            from_grade: fields::SIT_UP_FROM_GRADE.default,
            cda_m2: fields::SIT_UP_CDA_M2.typical(),
            cp_gain_share: fields::SIT_UP_CP_GAIN_SHARE.typical(),
        }
    }
}

impl SitUp {
    /// What the rider has who sits up, in a position: a drag area, m², and a gain of critical power that may be moved.
    pub(super) fn upright(position: &Position, cda_m2: f64, cp_gain_share: f64) -> Upright {
        Upright {
            cda_m2: cda_m2.max(position.most_cda_m2()),
            threshold_share: 1.0 + cp_gain_share,
        }
    }

    fn check(&self) -> Result<(), Error> {
        let from_grade = "with.sit_up.from_grade";
        check_number(&fields::SIT_UP_FROM_GRADE, from_grade, self.from_grade)?;
        for (path, quantity, field) in self.inputs() {
            check_quantity(field, path, &quantity)?;
        }
        Ok(())
    }

    /// Its uncertain inputs.
    pub(super) fn inputs(&self) -> [(&'static str, Quantity, &'static Field); 2] {
        let (cda, gain) = (&fields::SIT_UP_CDA_M2, &fields::SIT_UP_CP_GAIN_SHARE);
        [
            ("with.sit_up.cda_m2", self.cda_m2, cda),
            ("with.sit_up.cp_gain_share", self.cp_gain_share, gain),
        ]
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
    /// Sitting up on steep climbs; not at all if left out.
    pub sit_up: Option<SitUp>,
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
            sit_up: None,
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
        if let Some(sit_up) = &self.sit_up {
            sit_up.check()?;
        }
        check_number(
            &fields::AFTER_RUNNING_OUT_SHARE,
            "with.after_running_out_share",
            self.after_running_out_share,
        )?;
        check_number(&fields::RIDERS, "with.riders", f64::from(self.riders))
    }

    /// What the rider will do, in a position.
    pub(super) fn allowed(&self, position: &Position) -> Allowed {
        Allowed {
            recovery: self.recovery.into(),
            least_w: self.least_w,
            greatest_w: self.greatest_w,
            sit_up: self.sit_up.map(|wanted| sitting_up::SitUp {
                from_grade: wanted.from_grade,
                upright: SitUp::upright(position, wanted.cda_m2.value, wanted.cp_gain_share.value),
            }),
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
