//! The positions of a saved file: what riders write down of each, how it is lost, and what is worn in it.

use std::fmt;

use serde::de::value::MapAccessDeserializer;
use serde::de::{MapAccess, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize};

use super::Power;
use super::drag_tests::DragTests;
use crate::inputs::fields;
use crate::inputs::quantity::Quantity;

/// A position on the bicycle.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Position {
    /// What the rider calls it.
    pub name: String,
    /// Drag area when fresh, m².
    pub cda_m2: Quantity,
    /// Critical power in it over that of the power tests.
    pub cp_factor: Quantity,
    /// W′ in it over that of the power tests.
    pub w_prime_factor: Quantity,
    /// What the rider can push in it, from tests ridden in it; stands in place of the factors.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub power: Option<Power>,
    /// Axial drag area by yaw, over that at zero yaw.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub yaw_table: Vec<YawRow>,
    /// How drag area changes with air speed.
    pub speed_exponent: Quantity,
    /// The air speed at which drag area was measured, m/s.
    pub reference_airspeed_m_s: Quantity,
    /// How it is lost.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub fade: Option<Fade>,
    /// How it is lost, as a filmed test gives it; in place of `fade`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub fade_test: Option<FadeTest>,
    /// How often it is left, by kinds; the first version's one kind is read too.
    #[serde(deserialize_with = "lapses", skip_serializing_if = "Vec::is_empty")]
    pub lapses: Vec<Lapse>,
    /// Choices of what is worn or ridden with it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub equipment: Vec<Equipment>,
    /// The one in use, by its place in `equipment`; none if left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub worn: Option<usize>,
    /// The tests that its drag area comes from, oldest first. They are told, and weighed against a new one; `cda_m2` counts.
    #[serde(skip_serializing_if = "DragTests::is_empty")]
    #[cfg_attr(feature = "types", ts(as = "Vec<super::DragTest>"))]
    pub drag_tests: DragTests,
    /// In a draw: by what factor the fresh drag area is off, and with it what it is when tired and in lapses, since the error
    /// is one of scale. 1 outside draws; never written.
    #[serde(skip)]
    #[cfg_attr(feature = "types", ts(skip))]
    pub drag_scale: f64,
}

impl Default for Position {
    fn default() -> Self {
        Self {
            name: String::new(),
            cda_m2: fields::CDA_M2.typical(),
            cp_factor: fields::CP_FACTOR.typical(),
            w_prime_factor: fields::W_PRIME_FACTOR.typical(),
            power: None,
            yaw_table: Vec::new(),
            speed_exponent: fields::SPEED_EXPONENT.typical(),
            reference_airspeed_m_s: fields::REFERENCE_AIRSPEED_M_S.typical(),
            fade: None,
            fade_test: None,
            lapses: Vec::new(),
            equipment: Vec::new(),
            worn: None,
            drag_tests: DragTests::default(),
            drag_scale: 1.0,
        }
    }
}

/// One row of a yaw table.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct YawRow {
    /// Angle between the bicycle and the apparent wind, degrees.
    pub yaw_deg: f64,
    /// Axial drag area over that at zero yaw.
    pub ratio: f64,
}

/// A position that is lost.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Fade {
    /// Drag area once it is lost, m². Its standard deviation is that of the rise above the fresh one: the fresh one's own
    /// error is common to both, as a share.
    pub tired_cda_m2: Quantity,
    /// When it begins to go, s.
    pub begins_s: Quantity,
    /// When it has gone, s.
    pub complete_s: Quantity,
}

impl Default for Fade {
    fn default() -> Self {
        Self {
            tired_cda_m2: fields::FADE_TIRED_CDA_M2.typical(),
            begins_s: fields::FADE_BEGINS_S.typical(),
            complete_s: fields::FADE_COMPLETE_S.typical(),
        }
    }
}

/// How a position is lost, from the first and last thirds of a steady test.
///
/// Drag area is taken to rise evenly over the test, so that each third's mean is what it was in that third's middle, at a
/// sixth and five sixths of `test_s`, and the whole rise is one and a half times the difference of the two. Only the rise is
/// taken from the test: it starts from the position's own `cda_m2`, and stays at its end after `test_s`. An error of scale in
/// the test is common to both thirds and so does little.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct FadeTest {
    /// Mean drag area over the first third, m².
    pub first_third_cda_m2: Quantity,
    /// Mean drag area over the last third, m².
    pub last_third_cda_m2: Quantity,
    /// How long the test was, s.
    pub test_s: Quantity,
}

impl Default for FadeTest {
    fn default() -> Self {
        Self {
            first_third_cda_m2: fields::FADE_TEST_FIRST_THIRD_CDA_M2.typical(),
            last_third_cda_m2: fields::FADE_TEST_LAST_THIRD_CDA_M2.typical(),
            test_s: fields::FADE_TEST_S.typical(),
        }
    }
}

/// A share of the time out of the position, for one reason.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Lapse {
    /// What the rider calls it.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// Share of the time, 0 to 1.
    pub share: Quantity,
    /// Drag area in it, m². Its standard deviation is that of the difference from the fresh one, whose own error is common to
    /// both, as a share.
    pub cda_m2: Quantity,
}

impl Default for Lapse {
    fn default() -> Self {
        Self {
            name: String::new(),
            share: fields::LAPSES_SHARE.typical(),
            cda_m2: fields::LAPSES_CDA_M2.typical(),
        }
    }
}

/// A helmet, a wheel, a suit: what it changes in a position.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Equipment {
    /// What the rider calls it.
    pub name: String,
    /// What it adds to every drag area of the position, m²; its own lapses have theirs.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub cda_change_m2: Option<Quantity>,
    /// What it adds to the mass, kg.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub mass_change_kg: Option<Quantity>,
    /// Axial drag area by yaw, in place of the position's.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub yaw_table: Vec<YawRow>,
    /// How often and how the position is left with it, in place of the position's.
    #[serde(deserialize_with = "lapses", skip_serializing_if = "Vec::is_empty")]
    pub lapses: Vec<Lapse>,
    /// The most sideways acceleration in a bend, m/s², in place of the bicycle's.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub lateral_m_s2: Option<Quantity>,
}

/// Lapses by kinds, or one kind as the first version wrote it.
fn lapses<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<Lapse>, D::Error> {
    struct OneOrMore;
    impl<'de> Visitor<'de> for OneOrMore {
        type Value = Vec<Lapse>;
        fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            f.write_str("a list of lapses")
        }
        fn visit_unit<E>(self) -> Result<Vec<Lapse>, E> {
            Ok(Vec::new())
        }
        fn visit_map<A: MapAccess<'de>>(self, one: A) -> Result<Vec<Lapse>, A::Error> {
            Lapse::deserialize(MapAccessDeserializer::new(one)).map(|lapse| vec![lapse])
        }
        fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Vec<Lapse>, A::Error> {
            let mut lapses = Vec::new();
            while let Some(lapse) = list.next_element()? {
                lapses.push(lapse);
            }
            Ok(lapses)
        }
    }
    deserializer.deserialize_any(OneOrMore)
}
