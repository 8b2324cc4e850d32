//! The columns of a recording, and what must hold of them before they are used.

use serde::{Deserialize, Deserializer};

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields::QuantityKind;
use crate::inputs::message;

/// The most samples of one recording.
pub const MOST_SAMPLES: usize = 400_000;
/// Seconds since any beginning lie within ± this, which holds those since 1970 for three hundred years.
const FARTHEST_S: f64 = 1e10;

/// One column: a number for every sample, NaN where nothing was recorded. In JSON that is `null`.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "types",
    derive(ts_rs::TS),
    ts(type = "Float64Array | (number | null)[]")
)]
pub struct Samples(pub Vec<f64>);

impl<'de> Deserialize<'de> for Samples {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let read = Vec::<Option<f64>>::deserialize(deserializer)?;
        Ok(Self(
            read.into_iter()
                .map(|number| number.unwrap_or(f64::NAN))
                .collect(),
        ))
    }
}

/// What was recorded, one number for each sample in every column; a column that was not recorded is empty.
#[derive(Clone, Debug, Default, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS), ts(rename = "RecordedColumns"))]
#[serde(default, deny_unknown_fields)]
pub struct Columns {
    /// When, s; rising from sample to sample.
    pub time_s: Samples,
    /// Speed over the ground, m/s.
    pub speed_m_s: Samples,
    /// Power at the pedals, W.
    pub power_w: Samples,
    /// Height, m.
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Samples>"))]
    pub elevation_m: Samples,
    /// Distance from the start, m. Distances of laps are worked out from speed, so that both have one scale.
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Samples>"))]
    pub distance_m: Samples,
    /// Where the rider heads, degrees clockwise from north.
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Samples>"))]
    pub bearing_deg: Samples,
}

impl Columns {
    /// Checks the columns.
    ///
    /// # Errors
    /// Names, under `path`, the column that is missing, too long or of another length than the times, and the time that is no
    /// number or not after the one before. Any other number that cannot be is taken as not recorded.
    pub fn check(&self, path: &str) -> Result<(), Error> {
        let at = |name: &str| format!("{path}.{name}");
        let times = &self.time_s.0;
        if times.len() > MOST_SAMPLES {
            return Err(Error::too_many(at("time_s"), MOST_SAMPLES));
        }
        if times.len() < 2 {
            let field = at("time_s");
            let message = message::too_few_samples(&field);
            return Err(Error::impossible(field, message));
        }
        let columns = [
            ("speed_m_s", &self.speed_m_s, true),
            ("power_w", &self.power_w, true),
            ("elevation_m", &self.elevation_m, false),
            ("distance_m", &self.distance_m, false),
            ("bearing_deg", &self.bearing_deg, false),
        ];
        for (name, column, required) in columns {
            match column.0.len() {
                0 if required => return Err(Error::missing(at(name))),
                0 => {}
                length if length != times.len() => {
                    let field = at(name);
                    let message = message::column_length(&field, length, times.len());
                    return Err(Error::new(Kind::Conflict, field, message));
                }
                _ => {}
            }
        }
        let mut before = f64::NEG_INFINITY;
        for (i, &time_s) in times.iter().enumerate() {
            let field = || format!("{path}.time_s[{i}]");
            if !time_s.is_finite() {
                let field = field();
                let message = message::not_a_number(&field);
                return Err(Error::new(Kind::NotFinite, field, message));
            }
            if time_s.abs() > FARTHEST_S {
                let kind = QuantityKind::Clock;
                return Err(Error::out_of_range(
                    field(),
                    kind,
                    time_s,
                    -FARTHEST_S,
                    FARTHEST_S,
                ));
            }
            if time_s <= before {
                let field = field();
                let message = message::rows_not_in_order(&field);
                return Err(Error::new(Kind::Conflict, field, message));
            }
            before = time_s;
        }
        Ok(())
    }
}
