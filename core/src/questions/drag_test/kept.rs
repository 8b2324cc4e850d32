//! This test taken together with those that the scenario holds.

use super::answer::{CommonError, KeptDrag, PositionDrag, ThisTest};
use crate::inputs::error::Warning;
use crate::inputs::message;
use crate::measuring::combine::{Tested, combined, disagreement};
use crate::scenario::{DragTest, Scenario};

/// The scenario counts the power meter's bias for all its drag areas.
const COUNTED_ELSEWHERE: &str = "scenario.bike.power_meter_bias_share";
/// Tests further apart than this many standard deviations are doubted: one pair in twenty is.
const APART: f64 = 1.96;

/// What the scenario would keep of each position, where the test tells its own error.
pub(super) fn kept(
    positions: &[PositionDrag],
    common: &[CommonError],
    date: Option<&str>,
    scenario: &Scenario,
    warnings: &mut Vec<Warning>,
) -> Vec<KeptDrag> {
    let shared_share = common
        .iter()
        .filter(|error| error.field != COUNTED_ELSEWHERE)
        .map(|error| error.cda_share * error.cda_share)
        .sum::<f64>()
        .sqrt();
    let mut all = Vec::new();
    for found in positions {
        let cda_m2 = found.cda_m2.value;
        let Some(sd_m2) = found.cda_m2.sd.filter(|sd_m2| *sd_m2 > 0.0 && cda_m2 > 0.0) else {
            continue;
        };
        let test = ThisTest {
            cda_m2,
            sd_m2,
            shared_sd_m2: shared_share * cda_m2,
            rows: found.laps,
        };
        let before = scenario
            .positions
            .get(found.position)
            .map_or(&[][..], |position| &position.drag_tests);
        let is_other = |test: &&DragTest| date.is_none() || test.date.as_deref() != date;
        let mut tests: Vec<Tested> = before.iter().filter(is_other).map(tested).collect();
        tests.push(Tested {
            cda_m2,
            sd_m2,
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

fn tested(test: &DragTest) -> Tested {
    Tested {
        cda_m2: test.cda_m2,
        sd_m2: test.sd_m2,
        shared_sd_m2: test.shared_sd_m2,
    }
}
