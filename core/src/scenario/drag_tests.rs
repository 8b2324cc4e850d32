//! The tests of a drag area that a position holds. A first visit asks nothing of them, so the module that it fetches passes them over.

#[cfg(feature = "all")]
pub(super) use all::check;
#[cfg(feature = "all")]
pub use all::{DragTest, DragTestMethod};

/// The tests of a position, oldest first.
#[cfg(feature = "all")]
pub(super) type DragTests = Vec<DragTest>;

#[cfg(not(feature = "all"))]
pub(super) use super::unread::Unread as DragTests;

#[cfg(feature = "all")]
mod all {
    use serde::{Deserialize, Serialize};

    use crate::inputs::error::Error;
    use crate::inputs::fields::{self, Field};
    use crate::scenario::check_date;

    /// What a test of the drag area rests on.
    #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
    #[cfg_attr(feature = "types", derive(ts_rs::TS))]
    #[serde(rename_all = "snake_case")]
    pub enum DragTestMethod {
        /// Laps of a recording.
        #[default]
        Laps,
        /// Runs at constant speed.
        Runs,
        /// Coast-downs.
        CoastDowns,
        /// More than one of these.
        Mixed,
    }

    /// A test of a position's drag area, as it was kept.
    #[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
    #[cfg_attr(feature = "types", derive(ts_rs::TS))]
    #[serde(deny_unknown_fields)]
    pub struct DragTest {
        /// The day, as `2026-05-01`.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "types", ts(optional))]
        pub date: Option<String>,
        /// What it rests on.
        #[serde(default)]
        pub method: DragTestMethod,
        /// How many laps, runs and coast-downs.
        #[serde(default)]
        pub rows: usize,
        /// The drag area that it gave, m².
        pub cda_m2: f64,
        /// One standard deviation of what is its own, m².
        pub sd_m2: f64,
        /// One standard deviation of what it has in common with other tests by the same rider and equipment, m².
        #[serde(default)]
        pub shared_sd_m2: f64,
        /// Of the air, °C.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "types", ts(optional))]
        pub temperature_c: Option<f64>,
        /// As forecast or measured that day, m/s.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "types", ts(optional))]
        pub wind_speed_m_s: Option<f64>,
    }

    /// What must hold of the tests at a path.
    ///
    /// # Errors
    /// Names the first number that cannot be.
    pub(in crate::scenario) fn check(tests: &[DragTest], path: &str) -> Result<(), Error> {
        if tests.len() > fields::MOST_DRAG_TESTS {
            return Err(Error::too_many(path, fields::MOST_DRAG_TESTS));
        }
        tests
            .iter()
            .enumerate()
            .try_for_each(|(i, test)| check_one(test, &format!("{path}[{i}]")))
    }

    fn check_one(test: &DragTest, path: &str) -> Result<(), Error> {
        check_date(&test.date, || format!("{path}.date"))?;
        let numbers: [(&str, &Field, Option<f64>); 5] = [
            ("cda_m2", &fields::DRAG_TEST_CDA_M2, Some(test.cda_m2)),
            ("sd_m2", &fields::DRAG_TEST_SD_M2, Some(test.sd_m2)),
            (
                "shared_sd_m2",
                &fields::DRAG_TEST_SHARED_SD_M2,
                Some(test.shared_sd_m2),
            ),
            ("temperature_c", &fields::TEMPERATURE_C, test.temperature_c),
            (
                "wind_speed_m_s",
                &fields::WIND_SPEED_M_S,
                test.wind_speed_m_s,
            ),
        ];
        numbers.iter().try_for_each(|(name, field, value)| {
            value.map_or(Ok(()), |value| {
                field.check(|| format!("{path}.{name}"), value)
            })
        })
    }
}
