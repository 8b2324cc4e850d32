//! More power, or less drag? What is one worth in the other?

mod answer;
mod with;

use super::request::Request;
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::quantity::Figure;
use crate::physics::resistance::tie_aero_share;
use crate::physiology::power_duration::Recovery;
use crate::riding::changes::{changed, equal_cda, equal_power};
use crate::riding::effort::{Effort, Paced, paced};
pub use crate::riding::exchange::Exchange;
use crate::riding::exchange::exchange;
use crate::riding::fixed_time::FixedTime;
use crate::riding::integrated::{Integrated, Setup, TimeModel, ride};
use crate::riding::time_map::time_map;
use crate::scenario::propagation::{Case, Propagation, figure, with_model_error};
use crate::scenario::ride_doubts::{above_curve, long_doubts};
use crate::scenario::ride_errors::no_effort;
use crate::uncertainty::draws::Spread;
pub use answer::{Answer, Columns, InFixedTime, Takes};
pub use with::With;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        warnings,
    } = request;
    let effort = with.check()?;
    scenario.settle_course(effort)?;
    let riding = scenario.riding_position;
    let own: Vec<_> = with
        .effort
        .power_w
        .iter()
        .map(|&q| ("with.effort.power_w", q, &fields::POWER_W))
        .collect();
    let inquiry = Propagation::new(&scenario, &[riding], &own);
    let setup = inquiry.base(|case| case.setup(riding))?;
    let base = paced(&Integrated, &setup, effort).map_err(no_effort)?;

    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 3], Error> {
        let setup = case.setup(riding)?;
        let effort = case.effort(effort);
        let near = |power, cda| near(time_model, &setup, effort, (power, cda), base.power_w);
        let (as_is, more, less) = (
            near(0.0, 0.0)?,
            near(with.power_change, 0.0)?,
            near(0.0, with.cda_change)?,
        );
        Ok([as_is.time_s, more.time_s, less.time_s])
    };
    let spread = inquiry.spread(outputs)?;
    let apart = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<f64, Error> {
        let setup = case.setup(riding)?;
        let effort = case.effort(effort);
        let near = |power, cda| near(time_model, &setup, effort, (power, cda), base.power_w);
        let more = near(with.power_change, 0.0)?;
        Ok(near(0.0, with.cda_change)?.time_s - more.time_s)
    };
    let drawn = match with.draws {
        0 => None,
        draws => Some(inquiry.drawn(draws, u64::from(with.seed), apart)?),
    };

    let near = |power, cda| near(&Integrated, &setup, effort, (power, cda), base.power_w);
    let more = near(with.power_change, 0.0)?;
    let less = near(0.0, with.cda_change)?;
    let log = ride(&setup, base.power_w, Recovery::Differential, &[])
        .map_err(|stall| no_effort(stall.into()))?;
    let model = scenario.model_error_share.value;
    let cda_m2 = setup.position.cda_m2;
    let (powers_w, areas_m2) = with.map_spans(base.power_w, cda_m2);
    let in_fixed_time = scenario
        .course
        .duration_s
        .and_then(|duration_s| {
            let fixed = FixedTime::new(&setup, effort, base, duration_s).ok()?;
            Some((duration_s, fixed))
        })
        .map(|(duration_s, fixed)| {
            let more_power_further_m = fixed.further_m(figure(&spread, |o| o[0] - o[1]));
            let less_drag_further_m = fixed.further_m(figure(&spread, |o| o[0] - o[2]));
            // The seconds between the two changes are gained or lost at about the speed of the ride as it is.
            let apart = fixed.further_m(Figure {
                value: 0.0,
                ..figure(&spread, difference)
            });
            InFixedTime {
                duration_s,
                more_power_further_m,
                less_drag_further_m,
                difference_m: Figure {
                    value: more_power_further_m.value - less_drag_further_m.value,
                    ..apart
                },
            }
        });
    Ok(Answer {
        base_time_s: with_model_error(figure(&spread, |o| o[0]), model),
        more_power_time_s: with_model_error(figure(&spread, |o| o[1]), model),
        less_drag_time_s: with_model_error(figure(&spread, |o| o[2]), model),
        difference_s: figure(&spread, difference),
        more_power_saves_s: figure(&spread, |o| o[0] - o[1]),
        less_drag_saves_s: figure(&spread, |o| o[0] - o[2]),
        in_fixed_time,
        drawn,
        equal_cda_change: equal_cda(&setup, effort, base, more.time_s)
            .map(|value| equal_figure(value, &spread)),
        equal_power_change: equal_power(&setup, effort, base, less.time_s)
            .map(|value| equal_figure(value, &spread)),
        aero_share: log.energy.aero_share(),
        tie_aero_share: tie_aero_share(with.power_change, -with.cda_change),
        base_power_w: base.power_w,
        more_power_w: more.power_w,
        less_drag_power_w: less.power_w,
        base_cda_m2: cda_m2,
        less_drag_cda_m2: cda_m2 * (1.0 + with.cda_change),
        exchange: exchange(&setup, base.power_w).map_err(|stall| no_effort(stall.into()))?,
        takes: Takes {
            more_power_held_s: setup
                .power
                .duration_s(base.power_w * (1.0 + with.power_change)),
            power_held_s: setup.power.duration_s(base.power_w),
            sustainable_w: setup.sustainable_w(base.time_s),
        },
        distance_m: setup.course.distance_m(),
        base_speed_m_s: setup.course.distance_m() / base.time_s,
        surer: inquiry.contributions(&spread, difference),
        columns: time_map(&setup, powers_w, areas_m2).into(),
        warnings: with_doubts(warnings, &setup, effort, base),
    })
}

fn difference(o: &[f64; 3]) -> f64 {
    o[2] - o[1]
}

/// The ride with shares more power and drag area, from a guess at the unchanged power.
fn near(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    (power_change, cda_change): (f64, f64),
    guess_w: f64,
) -> Result<Paced, Error> {
    changed(time_model, setup, effort, power_change, cda_change, guess_w).map_err(no_effort)
}

/// An equal change with its doubt: to first order it moves as the ratio of the two savings.
fn equal_figure(value: f64, spread: &Spread<3>) -> Figure {
    let sd = spread.ratio_sd_share(|o| o[0] - o[1], |o| o[0] - o[2]);
    Figure {
        value,
        sd: if sd.is_finite() {
            value.abs() * sd
        } else {
            0.0
        },
    }
}

fn with_doubts(
    mut warnings: Vec<Warning>,
    setup: &Setup,
    effort: Effort,
    base: Paced,
) -> Vec<Warning> {
    warnings.extend(above_curve(setup, effort, base));
    long_doubts(setup, effort, base.time_s, &mut warnings);
    warnings
}
