//! How long will it take, or how far in a fixed time?

mod answer;
mod day;
mod doubts;
mod stops;
mod with;

use std::rc::Rc;

use super::request::Request;
use super::request::on_event;
use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::inputs::quantity::Figure;
use crate::numerics::distributions::chance_below;
use crate::numerics::solve::spaced;
use crate::physics::air::{STANDARD_DENSITY_KG_M3, Weather, Wind};
use crate::physiology::power_duration::Recovery;
use crate::riding::effort::{Effort, Paced, paced, power_error_w, reached};
use crate::riding::even_efforts::even_efforts;
use crate::riding::integrated::{Integrated, Setup, TimeModel, ride, time_s};
use crate::scenario::propagation::{Case, Propagation, figure};
use crate::scenario::ride_errors::no_effort;
pub use answer::{Answer, Columns, EnergyByCause, Split, WPrimeForms};
pub use day::{Day, DayColumns, ForecastError, OtherStart};
use doubts::{doubts, turn_doubt};
pub use stops::StopsCost;
use stops::stops_cost;
pub use with::With;

const ALONG_POINTS: usize = 121;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    if let Some(event) = request.with.event {
        return on_event(request, event, on_course);
    }
    on_course(request)
}

fn on_course(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    let effort = with.effort.check()?;
    let target_s = with.target_s()?;
    let fixed_s = with.fixed_s(scenario.course.duration_s)?;
    scenario.settle_course(effort)?;
    let riding = scenario.riding_position;
    let own: Vec<_> = with
        .effort
        .power_w
        .iter()
        .map(|&q| ("with.effort.power_w", q, &fields::POWER_W))
        .collect();
    let inquiry = Propagation::new(&scenario, &[riding], &own);

    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 3], Error> {
        let effort = case.effort(effort);
        let setup = case.setup(riding)?;
        let (paced, distance_m) = solve(time_model, &setup, effort, fixed_s)?;
        Ok([paced.time_s, paced.power_w, distance_m])
    };
    let spread = inquiry.spread(outputs)?;
    let [finish_s, power_w, distance_m] = spread.base;

    let mut setup = inquiry.base(|case| case.setup(riding))?;
    if fixed_s.is_some() {
        setup.course = Rc::new(setup.course.scaled_to(distance_m));
    }
    let along_m = spaced(0.0, distance_m, ALONG_POINTS);
    let split_m = with.splits_at_m(distance_m)?;
    let full =
        |form, at: &[f64]| ride(&setup, power_w, form, at).map_err(|stall| no_effort(stall.into()));
    let along = full(Recovery::Differential, &along_m)?;
    let at_splits = full(Recovery::Differential, &split_m)?;
    let w_prime_forms = WPrimeForms {
        differential_j: along.w_prime_left_j,
        no_recovery_j: full(Recovery::None, &[])?.w_prime_left_j,
        linear_j: full(Recovery::Linear, &[])?.w_prime_left_j,
    };
    let sustainable_w = setup.sustainable_w(finish_s);
    doubts(
        &scenario,
        &setup,
        effort,
        &along,
        power_w,
        sustainable_w,
        &mut warnings,
    );
    turn_doubt(&scenario, &setup, power_w, &mut warnings);

    let model_error_share = scenario.model_error_share.value;
    let (by_time, by_power, by_distance) = (
        figure(&spread, |o| o[0]),
        figure(&spread, |o| o[1]),
        figure(&spread, |o| o[2]),
    );
    let asked = Asked::of(effort, fixed_s);
    let model = |answer, sd: f64| if asked == answer { sd } else { 0.0 };
    let model_sd_s = model(Asked::Time, model_error_share * finish_s);
    let model_sd_m = model(Asked::Distance, model_error_share * distance_m);
    let model_sd_w = match effort {
        Effort::Time(target_s) => model(
            Asked::Power,
            power_error_w(&Integrated, &setup, target_s, model_error_share),
        ),
        _ => 0.0,
    };
    let joined = |figure: Figure, model_sd: f64| Figure {
        sd: figure.sd.hypot(model_sd),
        ..figure
    };
    let (time_figure, distance_figure) =
        (joined(by_time, model_sd_s), joined(by_distance, model_sd_m));
    let curve = even_efforts(&setup);
    let day = day::day(&day::Ridden {
        inquiry: &inquiry,
        scenario: &scenario,
        with: &with,
        setup: &setup,
        effort,
        samples: &along.samples,
        time: (asked == Asked::Time).then_some(&spread),
    })?;
    let stops = match asked {
        Asked::Time => stops_cost(&inquiry, &scenario, effort, power_w)?,
        _ => None,
    };
    Ok(Answer {
        day,
        stops,
        time_s: time_figure,
        chance_of_target: target_s
            .map(|target_s| chance_below(target_s - finish_s, time_figure.sd)),
        input_sd_s: by_time.sd,
        model_sd_s,
        input_sd_m: by_distance.sd,
        model_sd_m,
        input_sd_w: by_power.sd,
        model_sd_w,
        distance_m: distance_figure,
        power_w: joined(by_power, model_sd_w),
        sustainable_w,
        average_speed_m_s: distance_figure.over(time_figure),
        w_prime_left_j: along.w_prime_left_j,
        w_prime_least_j: along.w_prime_least_j,
        w_prime_forms,
        splits: Split::of(&at_splits),
        energy_j: along.energy.into(),
        aero_share: along.energy.aero_share(),
        mean_cda_m2: setup.mean_cda_m2(finish_s),
        density_kg_m3: setup.density_kg_m3,
        rider_wind_m_s: scenario.rider_wind_m_s(),
        still_time_s: still_time(&setup, power_w),
        standard_time_s: time_s(
            &setup.in_other_weather(|weather| Weather {
                density_kg_m3: STANDARD_DENSITY_KG_M3,
                ..weather
            }),
            power_w,
        )
        .ok(),
        surer: inquiry.contributions(&spread, |o| o[asked as usize]),
        warnings,
        columns: Columns {
            along_speed_m_s: along.samples.iter().map(|s| s.speed_m_s).collect(),
            along_w_prime_j: along.samples.iter().map(|s| s.w_prime_balance_j).collect(),
            along_m: along_m.into(),
            average_speed_m_s: curve.average_speeds_m_s().into(),
            distance_m: curve.distances_m.into(),
            time_s: curve.times_s.into(),
            power_w: curve.powers_w.into(),
        },
    })
}

/// What was asked for, in the order of the outputs.
#[derive(Clone, Copy, PartialEq)]
enum Asked {
    Time,
    Power,
    Distance,
}

impl Asked {
    fn of(effort: Effort, fixed_s: Option<f64>) -> Self {
        match (effort, fixed_s) {
            (_, Some(_)) => Self::Distance,
            (Effort::Time(_), None) => Self::Power,
            _ => Self::Time,
        }
    }
}

/// The power, time and distance of an effort: over the course, or in a fixed time.
fn solve(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    fixed_s: Option<f64>,
) -> Result<(Paced, f64), Error> {
    let Some(time_s) = fixed_s else {
        return Ok((
            paced(time_model, setup, effort).map_err(no_effort)?,
            setup.course.distance_m(),
        ));
    };
    reached(time_model, setup, effort, time_s).map_err(no_effort)
}

/// In still air, if there is wind.
fn still_time(setup: &Setup, power_w: f64) -> Option<f64> {
    let calm = Wind::default();
    let blown = setup
        .course
        .segments
        .iter()
        .any(|segment| segment.heading.is_some());
    let always_calm = setup.weather_change.is_none() && setup.wind == calm;
    if always_calm || !blown {
        return None;
    }
    let still = setup.in_other_weather(|weather| Weather {
        wind: calm,
        ..weather
    });
    time_s(&still, power_w).ok()
}
