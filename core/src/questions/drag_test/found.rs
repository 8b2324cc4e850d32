//! The estimate that is shown, with rolling resistance and wind as they were asked for or as the rows allow.

use super::answer::TestWind;
use super::with::{RollingForm, WindForm, With};
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::measuring::estimate::{Estimate, Observation, Rolling, estimate};
use crate::measuring::rig::Rig;
use crate::measuring::wind_axes::wind_axes;
use crate::physics::air::Heading;

/// What the rows give, and which of it is shown.
pub(super) struct Found {
    /// What is shown.
    pub shown: Estimate,
    /// With rolling resistance the other way.
    pub other: Option<Estimate>,
    /// Whether the rows tell what was asked for.
    pub identifiable: bool,
    /// The rolling resistance that the rows give where no tyre has such a one, so that it is held.
    pub impossible_rolling: Option<f64>,
    /// Along which a wind was fitted.
    pub axes: Vec<[f64; 2]>,
}

impl Found {
    /// # Errors
    /// Where no drag area goes with the rows.
    pub(super) fn new(
        used: &[Observation],
        rig: &Rig,
        with: &With,
        warnings: &mut Vec<Warning>,
    ) -> Result<Self, Error> {
        let field = fields::ROLLING_COEFFICIENT.min..=fields::ROLLING_COEFFICIENT.max;
        let held = |axes: &[[f64; 2]]| estimate(used, rig, Rolling::Held, axes);
        let mut axes = match with.wind {
            WindForm::Fit => wind_axes(used),
            _ => Vec::new(),
        };
        let told = |axes: &[[f64; 2]]| held(axes).is_ok_and(|found| found.is_told());
        if with.wind == WindForm::Fit && (axes.is_empty() || !told(&axes)) {
            axes.clear();
            warnings.push(Warning::of("with.wind", message::wind_not_told()));
        }
        let held =
            held(&axes).map_err(|_| Error::impossible("with.laps", message::laps_do_not_fit()))?;
        let fitted = estimate(used, rig, Rolling::Fitted, &axes)
            .ok()
            .filter(Estimate::is_told);
        let impossible = fitted
            .as_ref()
            .map(Estimate::rolling_value)
            .filter(|rolling| !field.contains(rolling));
        let fitted = fitted.filter(|_| impossible.is_none());
        let (shown, other, identifiable) = match (with.rolling, fitted) {
            (RollingForm::Fit, Some(fitted)) => (fitted, Some(held), true),
            (RollingForm::Fit, None) => (held, None, false),
            (RollingForm::Hold, fitted) => (held, fitted, true),
        };
        Ok(Self {
            shown,
            other,
            identifiable,
            impossible_rolling: impossible.filter(|_| with.rolling == RollingForm::Fit),
            axes,
        })
    }

    pub(super) fn rolling(&self) -> Rolling {
        match self.shown.rolling() {
            Some(_) => Rolling::Fitted,
            None => Rolling::Held,
        }
    }

    pub(super) fn wind(&self, with: &With) -> TestWind {
        let ([north, east], sds) = self.shown.wind();
        let fitted = !self.axes.is_empty();
        let worst = sds.iter().flatten().copied().reduce(f64::max);
        TestWind {
            used: match with.wind {
                WindForm::Fit if !fitted => WindForm::Ignore,
                used => used,
            },
            speed_m_s: fitted.then(|| north.hypot(east)),
            from_deg: fitted.then(|| Heading { north, east }.bearing_deg()),
            sd_m_s: worst,
            directions: self.axes.len(),
        }
    }
}
