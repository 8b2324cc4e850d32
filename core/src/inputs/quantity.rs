//! A number with its standard deviation and where it came from.

use std::fmt;

use serde::de::{self, IgnoredAny, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize};

use crate::numerics::distributions::{NORMAL_REACH_95, normal_share};

/// How an input is known.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Known {
    /// What riders usually have; nobody has looked at this one.
    Typical,
    /// Judged for this rider or this day.
    #[default]
    Estimated,
    /// Measured for this rider or this day.
    Measured,
}

/// An input: a plain number is exact, an object carries its standard deviation and how it is known.
///
/// In JSON: `0.235`, or `{ "value": 0.235, "sd": 0.008, "source": "estimated" }`.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Quantity {
    /// The value, in the SI unit of the field's name.
    pub value: f64,
    /// One standard deviation, in the same unit; 0 for a number that was chosen.
    pub sd: f64,
    /// How it is known.
    pub source: Known,
}

impl Quantity {
    /// A number that was chosen, so that nothing about it is uncertain.
    pub const fn exact(value: f64) -> Self {
        Self {
            value,
            sd: 0.0,
            source: Known::Measured,
        }
    }

    /// Whether it was measured, with an error of its own: a number that was chosen has none.
    pub fn is_measured(&self) -> bool {
        self.source == Known::Measured && self.sd > 0.0
    }

    /// What riders usually have.
    pub const fn typical(value: f64, sd: f64) -> Self {
        Self {
            value,
            sd,
            source: Known::Typical,
        }
    }
}

impl From<f64> for Quantity {
    fn from(value: f64) -> Self {
        Self::exact(value)
    }
}

impl<'de> Deserialize<'de> for Quantity {
    // Once, rather than again in every struct that has quantities.
    #[inline(never)]
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(QuantityVisitor)
    }
}

struct QuantityVisitor;

const QUANTITY_FIELDS: &[&str] = &["value", "sd", "source"];

impl<'de> Visitor<'de> for QuantityVisitor {
    type Value = Quantity;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a number, or { value, sd, source }")
    }

    fn visit_f64<E: de::Error>(self, value: f64) -> Result<Quantity, E> {
        Ok(Quantity::exact(value))
    }

    fn visit_i64<E: de::Error>(self, value: i64) -> Result<Quantity, E> {
        Ok(Quantity::exact(value as f64))
    }

    fn visit_u64<E: de::Error>(self, value: u64) -> Result<Quantity, E> {
        Ok(Quantity::exact(value as f64))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Quantity, A::Error> {
        let (mut value, mut sd, mut source) = (None, 0.0, Known::default());
        while let Some(key) = map.next_key::<std::borrow::Cow<'de, str>>()? {
            match key.as_ref() {
                "value" => value = Some(map.next_value()?),
                "sd" => sd = map.next_value()?,
                "source" => source = map.next_value()?,
                other => {
                    let unknown = de::Error::unknown_field(other, QUANTITY_FIELDS);
                    map.next_value::<IgnoredAny>()?;
                    return Err(unknown);
                }
            }
        }
        Ok(Quantity {
            value: value.ok_or_else(|| de::Error::missing_field("value"))?,
            sd,
            source,
        })
    }
}

/// A result with one standard deviation, its error taken as normal. It crosses with its 95 % range and the chance that it is
/// positive, so that nobody who shows it works anything out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[serde(into = "ShownFigure")]
#[cfg_attr(feature = "types", derive(ts_rs::TS), ts(as = "ShownFigure"))]
pub struct Figure {
    /// The value, in the SI unit of the field's name.
    pub value: f64,
    /// One standard deviation, in the same unit.
    pub sd: f64,
}

/// A figure as it crosses the boundary.
#[derive(Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS), ts(rename = "Figure"))]
struct ShownFigure {
    /// The value, in the SI unit of the field's name.
    value: f64,
    /// One standard deviation, in the same unit.
    sd: f64,
    /// The true value lies above this 39 times in 40.
    low_95: f64,
    /// The true value lies below this 39 times in 40.
    high_95: f64,
    /// The chance that the true value is positive, 0 to 1.
    chance_positive: f64,
}

impl From<Figure> for ShownFigure {
    fn from(Figure { value, sd }: Figure) -> Self {
        Self {
            value,
            sd,
            low_95: value - NORMAL_REACH_95 * sd,
            high_95: value + NORMAL_REACH_95 * sd,
            chance_positive: chance_positive(value, sd, normal_share),
        }
    }
}

/// The chance that the true value is positive, by the distribution of its error in standard deviations; even where a value
/// of nought is exact.
pub(crate) fn chance_positive(value: f64, sd: f64, share_below: impl FnOnce(f64) -> f64) -> f64 {
    match sd > 0.0 {
        true => share_below(value / sd),
        false if value == 0.0 => 0.5,
        false => f64::from(value > 0.0),
    }
}

/// A column of numbers: a curve's abscissae or ordinates. It reaches the page as a `Float64Array`.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS), ts(type = "Float64Array"))]
pub struct Column(pub Vec<f64>);

impl From<Vec<f64>> for Column {
    fn from(numbers: Vec<f64>) -> Self {
        Self(numbers)
    }
}

impl FromIterator<f64> for Column {
    fn from_iter<I: IntoIterator<Item = f64>>(numbers: I) -> Self {
        Self(numbers.into_iter().collect())
    }
}

impl Figure {
    /// What it is more than another whose error is independent.
    #[cfg(feature = "all")]
    pub(crate) fn less(self, other: Self) -> Self {
        Self {
            value: self.value - other.value,
            sd: self.sd.hypot(other.sd),
        }
    }

    /// Its ratio to another whose error is independent, to first order.
    #[cfg(feature = "all")]
    pub(crate) fn over(self, other: Self) -> Self {
        let value = self.value / other.value;
        Self {
            value,
            sd: value * (self.sd / self.value).hypot(other.sd / other.value),
        }
    }
}
