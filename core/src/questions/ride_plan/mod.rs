//! How should I spend my effort on this course?

mod answer;
mod columns;
mod doubts;
mod sitting_up;
mod stopped;
mod with;

use super::request::Request;
use crate::inputs::error::{Error, Kind};
use crate::inputs::message;
use crate::physiology::power_duration::Recovery;
use crate::riding::effort::{Effort, Paced, paced, paced_from};
use crate::riding::integrated::{Integrated, Setup, TimeModel};
use crate::riding::optimal_pacing::robust_plan::{
    Difference, OnAverage, Robust, on_average, robust_plan,
};
use crate::riding::optimal_pacing::simple_plan::{self, power_at_w, simple_plan};
use crate::riding::optimal_pacing::{Fastest, PlanRide, Rider, SPENT_J, fastest, ride};
use crate::scenario::propagation::{Case, Propagation, figure, with_model_error};
use crate::scenario::ride_errors::no_effort;
pub use answer::{
    Answer, Columns, Cue, CuedPlan, EvenRide, FastestPlan, Landmark, LeastByForm, LowerPower,
    RidersCompared, TooHard,
};
use doubts::doubts;
use sitting_up::Compared;
pub use sitting_up::{Climb, SittingUp};
pub use stopped::PlanStops;
pub use with::{RecoveryForm, SitUp, With};

/// How much too hard the first ten minutes are ridden, as shares.
const OVERSHOT: [f64; 2] = [0.05, 0.1];
/// How long that lasts, s.
const OVERSHOT_S: f64 = 600.0;
/// By what share critical power is lower than believed.
const LOWER: f64 = 0.03;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    with.check()?;
    scenario.settle_course(Effort::Even)?;
    let riding = scenario.riding_position;
    let own: Vec<_> = with.sit_up.iter().flat_map(SitUp::inputs).collect();
    let propagation = Propagation::new(&scenario, &[riding], &own);
    let whole = propagation.base(|case| case.setup(riding))?;
    let evenly = |setup: &Setup| paced(&Integrated, setup, Effort::Even).map_err(no_effort);
    // The plan is made for the road without its stops, which hardly change what is best between them.
    let setup = whole.without_stops();
    let even = evenly(&setup)?;
    let stops = PlanStops::of(&whole, evenly(&whole)?, even);
    check_powers(&with, even)?;
    let allowed = with.allowed(&setup.position);
    let plan = fastest(&setup, &allowed, even).ok_or_else(no_plan)?;
    let upright = match &allowed.sit_up {
        Some(how) => Some(Compared::new(how, &allowed, &plan, even).ok_or_else(no_plan)?),
        None => None,
    };
    let style = with.style();
    let held =
        |difference: &Difference| difference.rider(&plan.rider, with.after_running_out_share);
    let riders: Vec<Rider> = scenario.typical_riders(riding).iter().map(held).collect();
    let found = simple_plan(&plan, &style).ok_or_else(no_plan)?;
    let robust = robust_plan(&plan.road, &riders, &style, &found).ok_or_else(no_plan)?;
    let (simple, robust) = faster_for_the_believed(&plan, found, robust);

    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 2], Error> {
        let setup = case.setup(riding)?;
        let ride = paced_from(time_model, &setup, Effort::Even, even.power_w).map_err(no_effort)?;
        let gained_s = upright
            .as_ref()
            .map_or(Ok(0.0), |it| it.gained_in_s(case, riding))?;
        Ok([ride.time_s, gained_s])
    };
    let spread = propagation.spread(outputs)?;
    let believed = held(&Difference::default());
    let simple_ride = ridden(&plan, &believed, &simple, |_| 1.0)?;
    let fastest_s = match upright {
        // Somebody who sits up may be slower for it.
        Some(_) => plan.ride.time_s,
        None => plan.ride.time_s.min(even.time_s),
    };
    let cued = |cues: &[simple_plan::Cue], mean: OnAverage| -> Result<CuedPlan, Error> {
        let own = ridden(&plan, &believed, cues, |_| 1.0)?;
        Ok(CuedPlan {
            time_s: own.time_s,
            cues: cues.iter().map(Cue::from).collect(),
            slower_by_s: own.time_s - fastest_s,
            w_prime_least_j: own.w_prime_least_j,
            mean_time_s: mean.time_s,
            run_out_share: mean.run_out_share,
        })
    };
    let overshot = |share: f64| -> Result<TooHard, Error> {
        let harder = |time_s: f64| {
            if time_s < OVERSHOT_S {
                1.0 + share
            } else {
                1.0
            }
        };
        let ridden = ridden(&plan, &believed, &simple, harder)?;
        Ok(too_hard(share, &ridden, simple_ride.time_s))
    };
    let by_form = |recovery: Recovery| -> Result<PlanRide, Error> {
        let rider = Rider {
            recovery,
            ..plan.rider
        };
        ridden(&plan, &rider, &simple, |_| 1.0)
    };
    let without_recovery = by_form(Recovery::None)?;
    warnings.extend(doubts(&setup, &plan, &with, &without_recovery));
    let finish = figure(&spread, |o| o[0]);
    let finish_s = crate::inputs::quantity::Figure {
        value: fastest_s,
        sd: with_model_error(finish, scenario.model_error_share.value).sd,
    };
    let weaker = held(&Difference {
        threshold: -LOWER,
        w_prime: 0.0,
    });
    let answer = Answer {
        stops: None,
        even: even.into(),
        fastest: FastestPlan {
            time_s: fastest_s,
            w_prime_least_j: plan.ride.w_prime_least_j,
            faster_by_s: even.time_s - fastest_s,
            threshold_w: plan.rider.threshold_w,
        },
        simple: cued(&simple, robust.before)?,
        robust: cued(&robust.cues, robust.on_average)?,
        sit_up: upright.map(|it| it.answer(even.power_w, figure(&spread, |o| o[1]).sd)),
        recovery: with.recovery,
        w_prime_least: LeastByForm {
            differential_j: by_form(Recovery::Differential)?.w_prime_least_j,
            none_j: without_recovery.w_prime_least_j,
            linear_j: by_form(Recovery::Linear)?.w_prime_least_j,
        },
        overshoot: [overshot(OVERSHOT[0])?, overshot(OVERSHOT[1])?],
        cp_lower: LowerPower {
            on_plan: too_hard(
                LOWER,
                &ridden(&plan, &weaker, &simple, |_| 1.0)?,
                simple_ride.time_s,
            ),
            even_time_s: weaker_even_s(&setup, even),
        },
        riders: match with.riders {
            0 => None,
            count => {
                let drawn = scenario.drawn_riders(riding, count, u64::from(with.seed));
                let drawn: Vec<Rider> = drawn.iter().map(held).collect();
                Some(compared(&plan, &drawn, &simple, &robust.cues)?)
            }
        },
        finish_s,
        surer: propagation.contributions(&spread, |o| o[0]),
        warnings,
        columns: columns::columns(&plan, &simple, &simple_ride, &robust.cues),
    };
    Ok(answer.stopping(stops))
}

/// The even effort must lie between the least and the greatest power.
fn check_powers(with: &With, even: Paced) -> Result<(), Error> {
    let refused = |field, message| Err(Error::new(Kind::Conflict, field, message));
    if with.greatest_w <= even.power_w {
        let message = message::greatest_below_even(even.power_w.round());
        return refused("with.greatest_w", message);
    }
    if with.least_w >= even.power_w {
        let message = message::least_above_even(even.power_w.round());
        return refused("with.least_w", message);
    }
    Ok(())
}

/// The plan of a few powers and the robust one. Where the robust one is the faster for the rider as believed too, and W′ lasts, it is
/// both: moving its powers found what rounding them had missed.
fn faster_for_the_believed(
    plan: &Fastest<'_>,
    simple: Vec<simple_plan::Cue>,
    robust: Robust,
) -> (Vec<simple_plan::Cue>, Robust) {
    let time_s = |cues: &[simple_plan::Cue]| {
        let ridden = ride(&plan.road, &plan.rider, |cell, _| power_at_w(cues, cell))?;
        (ridden.w_prime_least_j >= -SPENT_J).then_some(ridden.time_s)
    };
    match (time_s(&robust.cues), time_s(&simple)) {
        (Some(robust_s), Some(simple_s)) if robust_s < simple_s => {
            let before = robust.on_average;
            (robust.cues.clone(), Robust { before, ..robust })
        }
        _ => (simple, robust),
    }
}

fn no_plan() -> Error {
    Error::impossible("scenario.course", message::no_plan())
}

/// A plan of a few powers, each times a factor that depends on the time so far.
fn ridden(
    plan: &Fastest<'_>,
    rider: &Rider,
    cues: &[simple_plan::Cue],
    factor: impl Fn(f64) -> f64,
) -> Result<PlanRide, Error> {
    ride(&plan.road, rider, |cell, time_s| {
        factor(time_s) * power_at_w(cues, cell)
    })
    .ok_or_else(no_plan)
}

fn too_hard(share: f64, ride: &PlanRide, planned_s: f64) -> TooHard {
    TooHard {
        share,
        time_s: ride.time_s,
        lost_s: ride.time_s - planned_s,
        runs_out_m: ride.ran_out_m,
    }
}

/// The best even effort of a rider whose critical power is lower than believed, s.
fn weaker_even_s(setup: &Setup, even: Paced) -> Option<f64> {
    let weaker = Setup {
        power: setup.power.scaled(1.0 - LOWER, 1.0),
        ..setup.clone()
    };
    paced_from(&Integrated, &weaker, Effort::Even, even.power_w)
        .ok()
        .map(|ride| ride.time_s)
}

fn compared(
    plan: &Fastest<'_>,
    riders: &[Rider],
    simple: &[simple_plan::Cue],
    robust: &[simple_plan::Cue],
) -> Result<RidersCompared, Error> {
    let simple = on_average(&plan.road, riders, simple).ok_or_else(no_plan)?;
    let robust = on_average(&plan.road, riders, robust).ok_or_else(no_plan)?;
    Ok(RidersCompared {
        riders: riders.len() as u32,
        simple_mean_time_s: simple.time_s,
        simple_run_out_share: simple.run_out_share,
        robust_mean_time_s: robust.time_s,
        robust_run_out_share: robust.run_out_share,
    })
}
