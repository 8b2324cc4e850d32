//! How long will it take, or how far in a fixed time?

use std::rc::Rc;

use serde::{Deserialize, Serialize};

use super::request::{EffortForm, Request, check_number};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields;
use crate::inputs::message::{self, Message};
use crate::inputs::quantity::{Column, Figure};
use crate::numerics::distributions::normal_share;
use crate::numerics::solve::{spaced, spaced_log};
use crate::physics::air::STANDARD_DENSITY_KG_M3;
use crate::physics::course::Course;
use crate::physiology::power_duration::Recovery;
use crate::riding::effort::{
    Effort, Paced, distance_in_time_m, even_from, paced, power_for_time_w,
};
use crate::riding::integrated::{self, Integrated, Ride, Setup, TimeModel, ride, time_s};
use crate::scenario::long_ride_doubt::overstated_hour;
use crate::scenario::propagation::{Case, Contribution, Propagation, figure};
use crate::scenario::ride_errors::no_effort;
use crate::scenario::{CourseKind, Scenario};

/// What the question takes.
#[derive(Clone, Copy, Debug, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// How hard; the best even effort if left out.
    pub effort: EffortForm,
    /// Instead of the course's length: how far in this time, s, on a course of this kind?
    #[cfg_attr(feature = "types", ts(optional))]
    pub for_time_s: Option<f64>,
    /// A finish time whose chance is wanted, s; for an even effort or a given power over the course.
    #[cfg_attr(feature = "types", ts(optional))]
    pub target_time_s: Option<f64>,
    /// Distance between splits, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub split_every_m: Option<f64>,
}

/// The ride at one distance.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Split {
    /// From the start, m.
    pub distance_m: f64,
    /// Since the start, s.
    pub time_s: f64,
    /// Mean speed since the split before, m/s.
    pub speed_m_s: f64,
    /// W′ balance, J.
    pub w_prime_balance_j: f64,
}

/// W′ left at the finish by each form of recovery, J.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WPrimeForms {
    /// The form used: recovery slows as W′ fills.
    pub differential_j: f64,
    /// Nothing comes back.
    pub no_recovery_j: f64,
    /// All comes back, watt for watt.
    pub linear_j: f64,
}

/// Energy of the ride by where it went, J.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EnergyByCause {
    /// Work at the pedals: the sum of all others.
    pub pedal: f64,
    /// Lost in the drivetrain.
    pub drivetrain: f64,
    /// Into the air.
    pub air: f64,
    /// Into the tyres.
    pub rolling: f64,
    /// Into height.
    pub climbing: f64,
    /// Into the wheel bearings.
    pub bearings: f64,
    /// Into the brakes.
    pub braking: f64,
    /// Into speed.
    pub kinetic: f64,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Finish time with all its doubt: the inputs' and the model's own.
    pub time_s: Figure,
    /// The chance that the finish time is at most the target, 0 to 1: of a normal distribution with that time's value and spread.
    /// `null` without a target.
    pub chance_of_target: Option<f64>,
    /// The inputs' share of that doubt, one standard deviation, s.
    pub input_sd_s: f64,
    /// The model's own share, one standard deviation, s.
    pub model_sd_s: f64,
    /// The inputs' share of the doubt of the distance, for a fixed time, m.
    pub input_sd_m: f64,
    /// The model's own share of it, m.
    pub model_sd_m: f64,
    /// The inputs' share of the doubt of the power, for a target time or an even effort, W.
    pub input_sd_w: f64,
    /// The model's own share of it, for a target time, W.
    pub model_sd_w: f64,
    /// How far.
    pub distance_m: Figure,
    /// The power ridden at.
    pub power_w: Figure,
    /// The power that this rider's curve allows for this time.
    pub sustainable_w: f64,
    /// Distance over time.
    pub average_speed_m_s: Figure,
    /// W′ balance at the finish; below 0 if the ride asks for more than the rider has.
    pub w_prime_left_j: f64,
    /// The least W′ balance on the way.
    pub w_prime_least_j: f64,
    /// W′ balance at the finish by each form of recovery.
    pub w_prime_forms: WPrimeForms,
    /// The ride at even distances and at the finish.
    pub splits: Vec<Split>,
    /// Where the work went.
    pub energy_j: EnergyByCause,
    /// Share of the work on the road that went into the air.
    pub aero_share: f64,
    /// Drag area averaged over the ride.
    pub mean_cda_m2: f64,
    /// Density of the air.
    pub density_kg_m3: f64,
    /// Wind at rider height.
    pub rider_wind_m_s: f64,
    /// Finish time at the same power in still air of the same density, if there is wind.
    pub still_time_s: Option<f64>,
    /// Finish time at the same power in the standard atmosphere's air at sea level, the wind as it is.
    pub standard_time_s: Option<f64>,
    /// Which inputs carry the doubt of what was asked for: the time, the distance, or the power that a target time needs.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over distance: of the ride, and of other distances on a course of this kind.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Distances along the ride, m.
    pub along_m: Column,
    /// Speed there, m/s.
    pub along_speed_m_s: Column,
    /// W′ balance there, J.
    pub along_w_prime_j: Column,
    /// Lengths of course, evenly spaced in their logarithm, m.
    pub distance_m: Column,
    /// Time of the best even effort over each, s.
    pub time_s: Column,
    /// Its power, W.
    pub power_w: Column,
}

const ALONG_POINTS: usize = 121;
/// Points of the curve over distance: fewer where each costs a ride over many stretches.
const DISTANCE_POINTS: (usize, usize) = (41, 13);
const MANY_SEGMENTS: usize = 60;
const MOST_SPLITS: f64 = 200.0;
/// A yaw table that ends too early is worth a word from this share of the time on: less is the first metres or a lull.
const BEYOND_TABLE_SHARE: f64 = 0.02;
/// From here on a power curve is a guess, s: three times as long as the published powers that its long-ride loss rests on
/// (four-and-twenty).
const FAR_FROM_S: f64 = 3.0 * 3600.0;
/// The distances of the curve, m: from a short hill climb to a day's ride.
const CURVE_M: (f64, f64) = (2_000.0, 400_000.0);

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        scenario,
        with,
        mut warnings,
    } = request;
    let effort = with.effort.check()?;
    let fixed_s = fixed_time(&with)?;
    let target_s = target_time(&with)?;
    let riding = scenario.riding_position;
    let own: Vec<_> = with
        .effort
        .power_w
        .iter()
        .map(|&q| ("with.effort.power_w", q, &fields::POWER_W))
        .collect();
    let inquiry = Propagation::new(&scenario, &[riding], &own);

    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 3], Error> {
        let effort = own_effort(case, effort);
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
    let split_m = split_distances(&with, distance_m)?;
    let full =
        |form, at: &[f64]| ride(&setup, power_w, form, at).map_err(|stall| no_effort(stall.into()));
    let along = full(Recovery::Differential, &along_m)?;
    let at_splits = full(Recovery::Differential, &split_m)?;
    let w_prime_forms = WPrimeForms {
        differential_j: along.w_prime_left_j,
        no_recovery_j: full(Recovery::None, &[])?.w_prime_left_j,
        linear_j: full(Recovery::Linear, &[])?.w_prime_left_j,
    };
    let sustainable_w = setup.power.sustainable_w(finish_s);
    doubts(
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
    let model_sd_w = model(
        Asked::Power,
        model_sd_of_power(&setup, effort, model_error_share),
    );
    let joined = |figure: Figure, model_sd: f64| Figure {
        sd: figure.sd.hypot(model_sd),
        ..figure
    };
    let (time_figure, distance_figure) =
        (joined(by_time, model_sd_s), joined(by_distance, model_sd_m));
    let curve = curve(&setup);
    Ok(Answer {
        time_s: time_figure,
        chance_of_target: target_s.map(|target_s| chance(target_s - finish_s, time_figure.sd)),
        input_sd_s: by_time.sd,
        model_sd_s,
        input_sd_m: by_distance.sd,
        model_sd_m,
        input_sd_w: by_power.sd,
        model_sd_w,
        distance_m: distance_figure,
        power_w: joined(by_power, model_sd_w),
        sustainable_w,
        average_speed_m_s: average_speed(distance_figure, time_figure),
        w_prime_left_j: along.w_prime_left_j,
        w_prime_least_j: along.w_prime_least_j,
        w_prime_forms,
        splits: splits(&at_splits),
        energy_j: by_cause(&along.energy),
        aero_share: aero_share(&along.energy),
        mean_cda_m2: setup.position.mean_cda_m2(finish_s),
        density_kg_m3: setup.density_kg_m3,
        rider_wind_m_s: scenario.rider_wind_m_s(),
        still_time_s: still_time(&setup, power_w),
        standard_time_s: time_s(
            &Setup {
                density_kg_m3: STANDARD_DENSITY_KG_M3,
                ..setup.clone()
            },
            power_w,
        )
        .ok(),
        surer: inquiry.contributions(&spread, |o| o[asked as usize]),
        warnings,
        columns: Columns {
            along_speed_m_s: along.samples.iter().map(|s| s.speed_m_s).collect(),
            along_w_prime_j: along.samples.iter().map(|s| s.w_prime_balance_j).collect(),
            along_m: along_m.into(),
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

/// What the model's own error of a finish time means for the power that a target time needs, W.
fn model_sd_of_power(setup: &Setup, effort: Effort, model_error_share: f64) -> f64 {
    let Effort::Time(target_s) = effort else {
        return 0.0;
    };
    let needed_w = |time_s: f64| power_for_time_w(&Integrated, setup, time_s);
    match (
        needed_w(target_s * (1.0 - model_error_share)),
        needed_w(target_s * (1.0 + model_error_share)),
    ) {
        (Ok(more_w), Ok(less_w)) => 0.5 * (more_w - less_w),
        _ => 0.0,
    }
}

/// The effort with a given power moved as the case says.
pub(super) fn own_effort(case: &Case<'_>, effort: Effort) -> Effort {
    match (effort, case.own.first()) {
        (Effort::Power(_), Some(&power_w)) => Effort::Power(power_w),
        _ => effort,
    }
}

fn fixed_time(with: &With) -> Result<Option<f64>, Error> {
    let Some(fixed_s) = with.for_time_s else {
        return Ok(None);
    };
    check_number(&fields::FOR_TIME_S, "with.for_time_s", fixed_s)?;
    if with.effort.time_s.is_some() {
        let message = message::time_fixed_twice("with.for_time_s");
        return Err(Error::new(Kind::Conflict, "with.for_time_s", message));
    }
    Ok(Some(fixed_s))
}

fn target_time(with: &With) -> Result<Option<f64>, Error> {
    let Some(target_s) = with.target_time_s else {
        return Ok(None);
    };
    check_number(&fields::TARGET_TIME_S, "with.target_time_s", target_s)?;
    if with.for_time_s.is_some() || with.effort.time_s.is_some() {
        let message = message::chance_of_given_time("with.target_time_s");
        return Err(Error::new(Kind::Conflict, "with.target_time_s", message));
    }
    Ok(Some(target_s))
}

/// The chance of a normal distribution about 0 to lie below a value.
fn chance(below: f64, sd: f64) -> f64 {
    if sd > 0.0 {
        normal_share(below / sd)
    } else {
        f64::from(u8::from(below >= 0.0))
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
    let power_w = match effort {
        Effort::Power(power_w) => power_w,
        _ => setup.power.sustainable_w(time_s),
    };
    let distance_m = distance_in_time_m(time_model, setup, power_w, time_s).map_err(no_effort)?;
    Ok((Paced { power_w, time_s }, distance_m))
}

fn average_speed(distance: Figure, time: Figure) -> Figure {
    let value = distance.value / time.value;
    Figure {
        value,
        sd: value * (distance.sd / distance.value).hypot(time.sd / time.value),
    }
}

fn split_distances(with: &With, distance_m: f64) -> Result<Vec<f64>, Error> {
    let every_m = with.split_every_m.unwrap_or(fields::SPLIT_EVERY_M.default);
    check_number(&fields::SPLIT_EVERY_M, "with.split_every_m", every_m)?;
    let every_m = every_m.max(distance_m / MOST_SPLITS);
    // A last split a stride before the line would only repeat the finish.
    let count = ((distance_m - 1.0) / every_m).floor().max(0.0) as usize;
    let mut at_m: Vec<f64> = (1..=count).map(|i| i as f64 * every_m).collect();
    at_m.push(distance_m);
    Ok(at_m)
}

fn splits(ride: &Ride) -> Vec<Split> {
    let finish = integrated::Sample {
        distance_m: ride.distance_m,
        time_s: ride.time_s,
        speed_m_s: 0.0,
        w_prime_balance_j: ride.w_prime_left_j,
    };
    let (mut before_m, mut before_s) = (0.0, 0.0);
    let passed = ride
        .samples
        .iter()
        .filter(|sample| sample.distance_m < ride.distance_m - 0.5);
    passed
        .copied()
        .chain([finish])
        .map(|sample| {
            let speed_m_s = (sample.distance_m - before_m) / (sample.time_s - before_s);
            (before_m, before_s) = (sample.distance_m, sample.time_s);
            let integrated::Sample {
                distance_m,
                time_s,
                w_prime_balance_j,
                ..
            } = sample;
            Split {
                distance_m,
                time_s,
                speed_m_s,
                w_prime_balance_j,
            }
        })
        .collect()
}

fn by_cause(energy: &integrated::Energy) -> EnergyByCause {
    EnergyByCause {
        pedal: energy.pedal_j,
        drivetrain: energy.drivetrain_j,
        air: energy.air_j,
        rolling: energy.rolling_j,
        climbing: energy.climbing_j,
        bearings: energy.bearings_j,
        braking: energy.braking_j,
        kinetic: energy.kinetic_j,
    }
}

/// Share of the work against road load that went into the air.
pub(super) fn aero_share(energy: &integrated::Energy) -> f64 {
    let load_j = energy.air_j + energy.rolling_j + energy.climbing_j + energy.bearings_j;
    if load_j == 0.0 {
        0.0
    } else {
        energy.air_j / load_j
    }
}

fn still_time(setup: &Setup, power_w: f64) -> Option<f64> {
    let calm = crate::physics::air::Wind::default();
    let blown = setup
        .course
        .segments
        .iter()
        .any(|segment| segment.heading.is_some());
    if setup.wind == calm || !blown {
        return None;
    }
    time_s(
        &Setup {
            wind: calm,
            ..setup.clone()
        },
        power_w,
    )
    .ok()
}

fn doubts(
    setup: &Setup,
    effort: Effort,
    ride: &Ride,
    power_w: f64,
    sustainable_w: f64,
    warnings: &mut Vec<Warning>,
) {
    let mut warn = |field: &str, message| warnings.push(Warning::of(field, message));
    // A watt is below what any meter tells.
    if !matches!(effort, Effort::Even) && power_w > sustainable_w + 1.0 {
        warn("with.effort", beyond_curve(power_w, sustainable_w));
    }
    if matches!(effort, Effort::Even) && ride.time_s < 120.0 && setup.power.peak_w.is_none() {
        warn("scenario.power.peak_w", message::short_overstated());
    }
    if let Some(last_deg) = setup.position.shape.last_yaw_deg()
        && ride.beyond_table_share > BEYOND_TABLE_SHARE
    {
        warn("scenario.positions", message::beyond_table(last_deg));
    }
    long_doubts(setup, effort, ride.time_s, warnings);
    climb_doubt(&setup.course, warnings);
}

/// What is said of a ride at the power curve's watts that is longer than the curve knows.
pub(super) fn long_doubts(setup: &Setup, effort: Effort, time_s: f64, warnings: &mut Vec<Warning>) {
    if matches!(effort, Effort::Power(_)) {
        return;
    }
    warnings.extend(overstated_hour(time_s, &setup.power));
    if time_s > FAR_FROM_S {
        let hours = (time_s / 3600.0).round() as usize;
        warnings.push(Warning::of("scenario.power", message::far_beyond(hours)));
    }
}

/// What a turn would cost where an out-and-back course has none.
fn turn_doubt(scenario: &Scenario, setup: &Setup, power_w: f64, warnings: &mut Vec<Warning>) {
    let course = &scenario.course;
    if course.kind != CourseKind::Simple
        || course.out_and_back != Some(true)
        || course.turn_radius_m.is_some()
    {
        return;
    }
    let radius_m = fields::TURN_RADIUS_M.default;
    let turning = Setup {
        course: Rc::new(setup.course.as_ref().clone().turning(radius_m)),
        ..setup.clone()
    };
    if let (Ok(straight_s), Ok(turned_s)) = (time_s(setup, power_w), time_s(&turning, power_w)) {
        let seconds = (turned_s - straight_s).round() as usize;
        warnings.push(Warning::of(
            "scenario.course.turn_radius_m",
            message::turn_not_counted(radius_m, seconds),
        ));
    }
}

/// What is said of a power above the curve's.
pub(super) fn beyond_curve(power_w: f64, sustainable_w: f64) -> Message {
    message::beyond_curve(power_w.round(), sustainable_w.round())
}

/// Air thins with height, which one density for the whole course leaves out.
fn climb_doubt(course: &Course, warnings: &mut Vec<Warning>) {
    const MUCH_M: f64 = 200.0;
    let (mut height, mut low, mut high) = (0.0f64, 0.0f64, 0.0f64);
    for segment in &course.segments {
        height += segment.length_m * segment.slope.0;
        (low, high) = (low.min(height), high.max(height));
    }
    if high - low > MUCH_M {
        let message = message::one_density((high - low).round());
        warnings.push(Warning::of("scenario.course", message));
    }
}

/// The best even effort against distance, as far as the power curve carries it.
#[derive(Default)]
struct Curve {
    distances_m: Vec<f64>,
    times_s: Vec<f64>,
    powers_w: Vec<f64>,
}

fn curve(setup: &Setup) -> Curve {
    let points = if setup.course.segments.len() > MANY_SEGMENTS {
        DISTANCE_POINTS.1
    } else {
        DISTANCE_POINTS.0
    };
    let own_m = setup.course.distance_m();
    let mut scaled = setup.clone();
    let mut guess_w = setup.power.sustainable_w(CURVE_M.0 / 11.0);
    let mut curve = Curve::default();
    for distance_m in spaced_log(
        CURVE_M.0.min(0.5 * own_m),
        CURVE_M.1.max(1.5 * own_m),
        points,
    ) {
        scaled.course = Rc::new(setup.course.scaled_to(distance_m));
        let Ok(paced) = even_from(&Integrated, &scaled, guess_w) else {
            break;
        };
        guess_w = paced.power_w;
        curve.distances_m.push(distance_m);
        curve.times_s.push(paced.time_s);
        curve.powers_w.push(paced.power_w);
    }
    curve
}
