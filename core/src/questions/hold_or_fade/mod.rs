//! Is a faster shape worth it if I can't hold it?

mod answer;
mod columns;
mod with;

use super::request::{Request, on_event};
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::physics::position_comparison::{Area, below, held_share, passes_s};
use crate::riding::effort::{Effort, Paced, paced, paced_from};
use crate::riding::fade_tie::Tie;
use crate::riding::fixed_time::FixedTime;
use crate::riding::integrated::{Integrated, Setup, TimeModel};
use crate::scenario::position_index;
use crate::scenario::propagation::{Case, Propagation, figure, with_model_error};
use crate::scenario::ride_doubts::{above_curve, long_doubts};
use crate::scenario::ride_errors::no_effort;
pub use answer::{Answer, BreakEven};
pub use columns::Columns;
use columns::share_columns;
pub use with::With;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    match request.with.event {
        Some(event) => on_event(request, event, on_course),
        None => on_course(request),
    }
}

fn on_course(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        warnings,
    } = request;
    let effort = with.check()?;
    scenario.settle_course(effort)?;
    let low = position_index(&scenario, with.low, "with.low")?;
    let steady = position_index(&scenario, with.steady, "with.steady")?;
    let mut own = Vec::new();
    own.extend(
        with.effort
            .power_w
            .map(|q| ("with.effort.power_w", q, &fields::POWER_W)),
    );
    own.extend(
        with.lower_by_m2
            .map(|q| ("with.lower_by_m2", q, &fields::LOWER_BY_M2)),
    );
    let inquiry = Propagation::new(&scenario, &[low, steady], &own);
    let kept_m2 = scenario
        .positions
        .get(steady)
        .map_or(0.0, |position| position.cda_m2.value);
    let pair = |case: &Case<'_>| -> Result<(Setup, Setup), Error> {
        let (mut low, steady) = (case.setup(low)?, case.setup(steady)?);
        if with.lower_by_m2.is_some()
            && let Some(&lower_by_m2) = case.own.last()
        {
            low.position = below(&low.position, steady.position.cda_m2, kept_m2, lower_by_m2);
        }
        Ok((low, steady))
    };
    let (low_setup, steady_setup) = inquiry.base(pair)?;
    let low_ride = paced(&Integrated, &low_setup, effort).map_err(no_effort)?;
    let steady_ride = paced(&Integrated, &steady_setup, effort).map_err(no_effort)?;
    let held = low_setup.position.held();
    let held_ride = paced(&Integrated, &low_setup.in_position(held), effort).map_err(no_effort)?;

    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 4], Error> {
        let effort = case.effort(effort);
        let (low, steady) = pair(case)?;
        let held = low.position.held();
        let lost = low.in_position(low.position.lost().unwrap_or_else(|| held.clone()));
        let time_s = |setup: &Setup, guess_w| near_s(time_model, setup, effort, guess_w);
        Ok([
            time_s(&low, low_ride.power_w)?,
            time_s(&steady, steady_ride.power_w)?,
            time_s(&low.in_position(held), low_ride.power_w)?,
            time_s(&lost, low_ride.power_w)?,
        ])
    };
    let spread = inquiry.spread(outputs)?;
    let apart = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<f64, Error> {
        let effort = case.effort(effort);
        let (low, steady) = pair(case)?;
        let time_s = |setup: &Setup, guess_w| near_s(time_model, setup, effort, guess_w);
        let low_s = time_s(&low, low_ride.power_w)?;
        Ok(time_s(&steady, steady_ride.power_w)? - low_s)
    };
    let drawn = match with.draws {
        0 => None,
        draws => Some(inquiry.drawn(draws, u64::from(with.seed), apart)?),
    };

    let tie = Tie {
        low: &low_setup,
        effort,
        guess_w: low_ride.power_w,
        steady_s: steady_ride.time_s,
    };
    // Eating and drinking are none of either position's doing.
    let (low_alone, steady_alone) = (low_setup.position.unfed(), steady_setup.position.unfed());
    let riding_s = low_setup.riding_s(low_ride.time_s);
    let area = Area::between(&low_alone, &steady_alone, riding_s);
    let won_s = steady_ride.time_s - low_ride.time_s;
    let held_won_s = steady_ride.time_s - held_ride.time_s;
    let seconds_per_area = held_won_s / (area.fresh * riding_s);
    let gained_s =
        (seconds_per_area.is_finite() && area.fresh > 0.0).then_some(seconds_per_area * area.below);
    let model = scenario.model_error_share.value;
    let difference_s = figure(&spread, |o| o[1] - o[0]);
    let duration_s = scenario.course.duration_s;
    let in_time = |setup: &Setup, ride: Paced| {
        duration_s.and_then(|fixed_s| FixedTime::new(setup, effort, ride, fixed_s).ok())
    };
    let further_m = in_time(&low_setup, low_ride)
        .zip(in_time(&steady_setup, steady_ride))
        .map(|(low, steady)| low.further_than_m(&steady, difference_s));
    let held_columns = share_columns(&tie, &spread);
    Ok(Answer {
        low_time_s: with_model_error(figure(&spread, |o| o[0]), model),
        steady_time_s: with_model_error(figure(&spread, |o| o[1]), model),
        difference_s,
        duration_s,
        further_m,
        low_held_time_s: with_model_error(figure(&spread, |o| o[2]), model),
        held_difference_s: figure(&spread, |o| o[1] - o[2]),
        drawn,
        break_even: BreakEven {
            held_share: tie.held_share(),
            begins_s: tie.begins_s(),
            tired_cda_m2: tie.tired_cda_m2(),
        },
        held_share: held_share(&low_alone, riding_s),
        passes_s: passes_s(&low_alone, &steady_alone, riding_s),
        gained_s,
        given_back_s: gained_s.map(|gained_s| gained_s - won_s),
        low_power_w: low_ride.power_w,
        steady_power_w: steady_ride.power_w,
        low_cda_m2: low_setup.position.cda_m2,
        low_mean_cda_m2: low_setup.mean_cda_m2(low_ride.time_s),
        steady_mean_cda_m2: steady_setup.mean_cda_m2(steady_ride.time_s),
        distance_m: low_setup.course.distance_m(),
        surer: inquiry.contributions(&spread, |o| o[1] - o[0]),
        warnings: with_doubts(warnings, &low_setup, effort, low_ride),
        columns: Columns::new(&low_alone, &steady_alone, riding_s, held_columns),
    })
}

/// Finish time of an effort, an even one from a guess at its power.
fn near_s(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    guess_w: f64,
) -> Result<f64, Error> {
    paced_from(time_model, setup, effort, guess_w)
        .map(|ride| ride.time_s)
        .map_err(no_effort)
}

fn with_doubts(
    mut warnings: Vec<Warning>,
    low: &Setup,
    effort: Effort,
    ride: Paced,
) -> Vec<Warning> {
    let mut warn = |field: &str, message| warnings.push(Warning::of(field, message));
    if low.position.lost_cda_m2().is_none() {
        warn("with.low", message::never_lost());
    }
    if let Some(fade) = low.position.fade
        && fade.begins_s >= low.riding_s(ride.time_s)
    {
        warn("with.low", message::after_finish());
    }
    warnings.extend(above_curve(low, effort, ride));
    long_doubts(low, effort, ride.time_s, &mut warnings);
    warnings
}
