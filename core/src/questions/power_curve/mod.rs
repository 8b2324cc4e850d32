//! What can I hold, for how long?

mod answer;
mod chosen;
mod columns;
mod doubts;
mod model_fit;
mod training;
mod with;

use std::rc::Rc;

use super::request::Request;
use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::physiology::efforts::{Tests, most_tested};
use crate::physiology::held::Held;
pub use crate::physiology::model_comparison::{ModelName, Outcome};
use crate::physiology::model_comparison::{compare, spans};
use crate::physiology::position_curves::curves;
pub use crate::physiology::position_curves::{Basis, ChangeAt, PositionCurve};
use crate::riding::effort::reached_holding;
use crate::riding::held_power::time_at_held_power_s;
use crate::riding::integrated::Integrated;
use crate::scenario::{Scenario, position_index};
pub use answer::{Answer, Forms, Marked, More, Tested, Usable};
use chosen::Chosen;
pub use columns::Columns;
pub use model_fit::ModelFit;
pub use training::Training;
pub use with::With;

/// One model speaks for itself when it has this share of the evidence.
const TOLD: f64 = 0.9;

/// All events' courses together have at most so many points: each as many as any ride.
const MOST_POINTS_TOGETHER: usize = fields::MOST_EVENTS * fields::MOST_POINTS_RIDDEN;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    with.check()?;
    warnings.extend(scenario.event_doubts());
    warnings.extend(scenario.simplify_for(1, MOST_POINTS_TOGETHER));
    let groups = scenario.tests_by_position(with.test_error_share);
    let position = match with.position {
        Some(position) => position_index(&scenario, position, "with.position")?,
        None => most_tested(&groups, scenario.riding_position),
    };
    let none = Tests {
        position,
        all: Vec::new(),
        used: Vec::new(),
    };
    let tests = groups
        .iter()
        .find(|tests| tests.position == position)
        .unwrap_or(&none);

    let long_ride_from_s = scenario.power.long_ride_from_s.value;
    let compared = if spans(&tests.used) {
        compare(&tests.used, long_ride_from_s)
    } else {
        Vec::new()
    };
    let chosen = Chosen::new(&scenario, &with, tests, &compared);
    let (held, longest_s) = (&chosen.held, chosen.longest_s);
    let events = marked(&scenario, position, chosen.ridden(), longest_s);
    let power_w = held.power_w(with.hold_s);
    let reach_w = held.reach * held.test_sd_w(with.hold_s);
    let efforts: Vec<Tested> = groups
        .iter()
        .flat_map(|group| Tested::of(group, position, chosen.curve.as_ref()))
        .collect();
    let heaviest = compared
        .iter()
        .filter_map(|one| one.weight)
        .fold(0.0, f64::max);
    doubts::add(
        &mut warnings,
        &doubts::Seen {
            with: &with,
            basis: chosen.basis,
            model: chosen.model,
            held,
            longest_s,
            efforts: &efforts,
            position,
            events: &events,
            apart: spans(&tests.used),
        },
    );
    let positions = curves(&groups, position, long_ride_from_s, with.test_error_share);
    let columns = Columns::new(&with, held, &compared, tests, &events, &positions);
    Ok(Answer {
        basis: chosen.basis,
        position,
        longest_s,
        power_w,
        test_w: [(power_w.value - reach_w).max(0.0), power_w.value + reach_w],
        more: More {
            power_w: power_w.value * (1.0 + with.power_change),
            held_s: held.held_s(with.hold_s, 1.0 + with.power_change, 1.0),
        },
        model: chosen.model,
        told: heaviest >= TOLD,
        models: compared
            .iter()
            .map(|one| ModelFit::new(one, with.test_error_share))
            .collect(),
        forms: Forms::of(&tests.used),
        usable: chosen.usable(),
        positions: positions.into_iter().map(|(curve, _)| curve).collect(),
        training: Training::new(&with, held),
        efforts,
        events,
        warnings,
        columns,
    })
}

/// The scenario's events on their own courses, or on the scenario's made longer or shorter, ridden at the power that
/// the curve gives for just the time that it takes.
fn marked(
    scenario: &Scenario,
    position: usize,
    held: &Held,
    longest_s: Option<f64>,
) -> Vec<Marked> {
    let beyond = |time_s: f64| longest_s.is_some_and(|longest_s| time_s > longest_s);
    let mark = |event: usize| {
        let there = scenario.on_event(event)?;
        let setup = there.setup_on(position, Rc::new(there.course()))?;
        if let Some(fixed_s) = there.course.duration_s {
            let held_w = |riding_s| held.power_w(riding_s).value;
            let (riding_s, distance_m) =
                reached_holding(&Integrated, &setup, held_w, fixed_s).ok()?;
            return Some(Marked {
                event,
                distance_m,
                time_s: fixed_s,
                power_w: held.power_w(riding_s),
                beyond: beyond(riding_s),
            });
        }
        let distance_m = setup.course.distance_m();
        let time_s = time_at_held_power_s(
            &Integrated,
            &setup,
            |time_s| held.power_w(time_s).value,
            distance_m / 11.0,
        )?;
        let riding_s = setup.riding_s(time_s);
        Some(Marked {
            event,
            distance_m,
            time_s,
            power_w: held.power_w(riding_s),
            beyond: beyond(riding_s),
        })
    };
    (0..scenario.events.len()).filter_map(mark).collect()
}
