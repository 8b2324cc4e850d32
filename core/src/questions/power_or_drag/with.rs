//! What the question takes.

use serde::Deserialize;

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields;
use crate::inputs::message;
use crate::numerics::solve::within;
use crate::questions::request::{EffortForm, check_number};
use crate::riding::effort::Effort;

/// What the question takes.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// More power, as a share: 0.1 is ten percent more.
    pub power_change: f64,
    /// Change of drag area, as a share: −0.1 is ten percent less.
    pub cda_change: f64,
    /// How hard; the best even effort if left out.
    pub effort: EffortForm,
    /// The powers that the map spans, W.
    #[cfg_attr(feature = "types", ts(optional))]
    pub map_power_w: Option<[f64; 2]>,
    /// The drag areas that the map spans, m².
    #[cfg_attr(feature = "types", ts(optional))]
    pub map_cda_m2: Option<[f64; 2]>,
    /// How many draws of the comparison to take; none if left out.
    pub draws: u32,
    /// The seed of the draws.
    pub seed: u32,
}

impl Default for With {
    fn default() -> Self {
        Self {
            power_change: fields::POWER_CHANGE.default,
            cda_change: fields::CDA_CHANGE.default,
            effort: EffortForm::default(),
            map_power_w: None,
            map_cda_m2: None,
            draws: 0,
            seed: 1,
        }
    }
}

/// How far the map reaches beyond the changes it shows, as a share.
const MAP_MARGIN: f64 = 0.12;

impl With {
    /// Checks the numbers; gives the effort.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<Effort, Error> {
        check_number(
            &fields::POWER_CHANGE,
            "with.power_change",
            self.power_change,
        )?;
        check_number(&fields::CDA_CHANGE, "with.cda_change", self.cda_change)?;
        check_number(&fields::DRAWS, "with.draws", f64::from(self.draws))?;
        check_span(&fields::MAP_POWER_W, "with.map_power_w", self.map_power_w)?;
        check_span(&fields::CDA_M2, "with.map_cda_m2", self.map_cda_m2)?;
        self.effort.check_comparing()
    }

    /// The powers and the drag areas that the map spans about the ride: the changes with a margin, or what was asked for.
    pub(super) fn map_spans(&self, power_w: f64, cda_m2: f64) -> ([f64; 2], [f64; 2]) {
        let around = |value: f64, change: f64, field: &fields::Field| {
            let low = value * (1.0 + change.min(0.0) - MAP_MARGIN);
            let high = value * (1.0 + change.max(0.0) + MAP_MARGIN);
            [
                within(low, field.min, field.max),
                within(high, field.min, field.max),
            ]
        };
        (
            self.map_power_w
                .unwrap_or_else(|| around(power_w, self.power_change, &fields::MAP_POWER_W)),
            self.map_cda_m2
                .unwrap_or_else(|| around(cda_m2, self.cda_change, &fields::CDA_M2)),
        )
    }
}

fn check_span(field: &fields::Field, path: &str, span: Option<[f64; 2]>) -> Result<(), Error> {
    let Some([low, high]) = span else {
        return Ok(());
    };
    check_number(field, path, low)?;
    check_number(field, path, high)?;
    if low < high {
        return Ok(());
    }
    Err(Error::new(
        Kind::Conflict,
        path,
        message::from_low_to_high(path),
    ))
}
