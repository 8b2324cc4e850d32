//! This test taken together with those that the scenario holds.

use serde::Serialize;

use super::answer::{CommonError, PositionDrag};
use crate::inputs::error::Warning;
use crate::inputs::fields;
use crate::inputs::message;
use crate::measuring::combine::{Tested, combined, disagreement};
use crate::scenario::{DragTest, Scenario};

/// The scenario counts the power meter's bias for all its drag areas.
const COUNTED_ELSEWHERE: &str = "scenario.bike.power_meter_bias_share";
/// Tests further apart than this many standard deviations are doubted: of two tests of one shape, one pair in twenty is.
const APART: f64 = 1.96;

/// What a position's drag area is from this test and those that the scenario holds of it.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct KeptDrag {
    /// The position.
    pub position: usize,
    /// The drag area of them all, m².
    pub cda_m2: f64,
    /// One standard deviation of it, with what all tests have in common, m². The power meter's bias is not in it: the scenario
    /// counts that for all its drag areas.
    pub sd_m2: f64,
    /// This test as the scenario keeps it.
    pub test: ThisTest,
    /// How many tests that makes.
    pub tests: usize,
}

/// This test of a position as the scenario keeps it.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ThisTest {
    /// m².
    pub cda_m2: f64,
    /// One standard deviation of what is its own, the day's wind and air with it, m².
    pub sd_m2: f64,
    /// One standard deviation of what is common to all tests with the same rider and equipment, m².
    pub shared_sd_m2: f64,
    /// Laps, runs and coast-downs.
    pub rows: usize,
}

/// Whether an error is of the air, wind and road of one day, which all laps of a test share and other tests do not.
fn is_of_the_day(field: &str) -> bool {
    ["scenario.conditions.", "with.runs.", "with.laps."]
        .iter()
        .any(|part| field.starts_with(part))
}

/// What the scenario would keep of each position, where the test tells its own error.
pub(super) fn kept(
    positions: &[PositionDrag],
    common: &[CommonError],
    date: Option<&str>,
    scenario: &Scenario,
    warnings: &mut Vec<Warning>,
) -> Vec<KeptDrag> {
    let share = |wanted: fn(&str) -> bool| {
        common
            .iter()
            .filter(|error| wanted(&error.field))
            .map(|error| error.cda_share * error.cda_share)
            .sum::<f64>()
            .sqrt()
    };
    let day_share = share(is_of_the_day);
    let shared_share = share(|field| field != COUNTED_ELSEWHERE && !is_of_the_day(field));
    let mut all = Vec::new();
    for found in positions {
        let cda_m2 = found.cda_m2.value;
        let Some(sd_m2) = found.cda_m2.sd.filter(|sd_m2| *sd_m2 > 0.0 && cda_m2 > 0.0) else {
            continue;
        };
        let test = ThisTest {
            cda_m2,
            sd_m2: sd_m2.hypot(day_share * cda_m2),
            shared_sd_m2: shared_share * cda_m2,
            rows: found.laps,
        };
        if !can_be_held(&test) {
            continue;
        }
        let before = scenario
            .positions
            .get(found.position)
            .map_or(&[][..], |position| &position.drag_tests);
        let is_other = |test: &&DragTest| date.is_none() || test.date.as_deref() != date;
        let mut tests: Vec<Tested> = before.iter().filter(is_other).map(tested).collect();
        tests.push(Tested {
            cda_m2,
            sd_m2: test.sd_m2,
            shared_sd_m2: test.shared_sd_m2,
        });
        if disagreement(&tests).is_some_and(|apart| apart > APART) {
            let field = format!("scenario.positions[{}].drag_tests", found.position);
            warnings.push(Warning::of(&field, message::drag_tests_disagree()));
        }
        if let Some(together) = combined(&tests) {
            all.push(KeptDrag {
                position: found.position,
                cda_m2: together.cda_m2,
                sd_m2: together.sd_m2.hypot(together.shared_sd_m2),
                test,
                tests: tests.len(),
            });
        }
    }
    all
}

/// Whether the scenario takes it: what was mistyped may give any area.
fn can_be_held(test: &ThisTest) -> bool {
    [
        (&fields::DRAG_TEST_CDA_M2, test.cda_m2),
        (&fields::DRAG_TEST_SD_M2, test.sd_m2),
        (&fields::DRAG_TEST_SHARED_SD_M2, test.shared_sd_m2),
    ]
    .iter()
    .all(|(field, value)| (field.min..=field.max).contains(value))
}

fn tested(test: &DragTest) -> Tested {
    Tested {
        cda_m2: test.cda_m2,
        sd_m2: test.sd_m2,
        shared_sd_m2: test.shared_sd_m2,
    }
}
