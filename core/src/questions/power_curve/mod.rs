//! What can I hold, for how long?

mod compared;
mod doubts;
mod held;
mod positions;

use std::rc::Rc;

use serde::{Deserialize, Serialize};

use super::request::{Request, check_number};
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::published::PUBLISHED;
use crate::inputs::quantity::{Column, Figure};
use crate::numerics::distributions::{Certainty, MOST_RUNS, NORMAL_REACH_95, runs_per_group};
use crate::numerics::solve::spaced_log;
use crate::physiology::models::{Curve, Effort, Form, LOG_DECLINE_FROM_S, fit_form};
use crate::riding::integrated::{Setup, TimeModel};
use crate::riding::quasi_steady::QuasiSteady;
use crate::scenario::{Scenario, position_index};
use compared::{Compared, best, compare, guessed, is_ridden};
pub use compared::{ModelFit, ModelName, Outcome};
use held::Held;
pub use positions::{ChangeAt, PositionCurve};

/// What the question takes, beside the scenario's efforts.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The position whose curve it is; if left out, the ridden one if it has efforts, else the one with the most.
    #[cfg_attr(feature = "types", ts(optional))]
    pub position: Option<usize>,
    /// The model drawn and read; if left out, the one that the efforts speak for.
    #[cfg_attr(feature = "types", ts(optional))]
    pub model: Option<ModelName>,
    /// For how long, s.
    pub hold_s: f64,
    /// And how much more, as a share of that power.
    pub power_change: f64,
    /// One standard deviation of an effort that was given without one, as a share of its power.
    pub test_error_share: f64,
}

impl Default for With {
    fn default() -> Self {
        Self {
            position: None,
            model: None,
            hold_s: fields::HOLD_S.default,
            power_change: fields::POWER_CHANGE.default,
            test_error_share: fields::TEST_ERROR_SHARE.default,
        }
    }
}

/// What the answer rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// The scenario's own CP and W′: there are no efforts that give a curve.
    Given,
    /// One effort, or several of one length, and riders' usual W′.
    Guessed,
    /// Efforts.
    Fitted,
}

/// An effort beside the curve of its position.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Tested {
    /// Its place in the scenario.
    pub effort: usize,
    /// The position it was ridden in.
    pub position: usize,
    /// How long, s.
    pub duration_s: f64,
    /// Its power, with the standard deviation that it was given or that tests have.
    pub power_w: Figure,
    /// What the curve says; `null` for an effort in another position.
    pub curve_w: Option<f64>,
    /// How far above the curve it lies, in its own standard deviations; `null` where that cannot be said.
    pub above_sd: Option<f64>,
    /// Whether the curve counts it: one that a longer effort beats was not all that the rider had.
    pub used: bool,
}

/// More power, and for how long.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct More {
    /// The power, W.
    pub power_w: f64,
    /// How long it can be held; `null` for ever, or not for a second.
    pub held_s: Option<Figure>,
}

/// One way of writing the two-parameter relation, fitted without weights other than its own.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Forms {
    /// CP, W, of work over time, power over one over time, and time over power.
    pub cp_w: [f64; 3],
    /// W′, J, of the same.
    pub w_prime_j: [f64; 3],
}

/// What goes into the scenario.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Usable {
    /// The model that it is of.
    pub model: ModelName,
    /// CP, W.
    pub cp_w: Figure,
    /// W′, J.
    pub w_prime_j: Figure,
    /// Pmax, W, if short efforts told it.
    pub peak_w: Option<Figure>,
    /// The loss in long rides as a share of CP: the usual one, or what efforts beyond its onset say of it. `null` for a curve
    /// through such efforts that has none, since it is in its CP already.
    pub long_ride_loss_share: Option<Figure>,
    /// How CP and W′ go together.
    pub cp_w_prime_correlation: f64,
}

/// An event of the scenario, as a ride with the curve put into the scenario would go.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Marked {
    /// Its place in the scenario.
    pub event: usize,
    /// How far, m.
    pub distance_m: f64,
    /// How long it takes at the power that the curve gives for just that time.
    pub time_s: f64,
    /// That power.
    pub power_w: Figure,
    /// Whether it is longer than any effort.
    pub beyond: bool,
}

/// A block of training as published, beside the test that would have to show it.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Training {
    /// The published rise of power, as shares, the least and the most.
    pub rise_share: [f64; 2],
    /// What it adds at the time asked for, W.
    pub rise_w: [f64; 2],
    /// How long today's power for that time could then be held, s; `null` for ever.
    pub held_s: [Option<f64>; 2],
    /// Two tests differ by less than this from chance alone, 19 times in 20, as a share.
    pub shown_share: f64,
    /// How many tests before and as many after show the least and the most rise: if it is real, 4 times in 5, and if it is not, 1
    /// time in 20 (a two-sided t-test, [`Certainty::USUAL`]).
    pub tests: [u32; 2],
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// What it rests on.
    pub basis: Basis,
    /// The position that the curve is of.
    pub position: usize,
    /// Every effort.
    pub efforts: Vec<Tested>,
    /// The longest effort that the curve rests on, s.
    pub longest_s: Option<f64>,
    /// The power that can be held for the time asked for: the curve's own doubt.
    pub power_w: Figure,
    /// Between these a test of that length would come out, 19 times in 20, W.
    pub test_w: [f64; 2],
    /// A change of that power, and for how long.
    pub more: More,
    /// The model read; `null` for the scenario's own numbers. Past the onset of the long-ride loss a model that rides use loses
    /// the usual share of CP where no effort is that long, here as in a ride.
    pub model: Option<ModelName>,
    /// Whether one model has nine tenths of the evidence among those compared.
    pub told: bool,
    /// Every model.
    pub models: Vec<ModelFit>,
    /// The two-parameter relation in its three forms; `null` with fewer than three efforts.
    pub forms: Option<Forms>,
    /// What goes into the scenario; `null` where no form that rides use was found.
    pub usable: Option<Usable>,
    /// Every position that has efforts.
    pub positions: Vec<PositionCurve>,
    /// The scenario's events.
    pub events: Vec<Marked>,
    /// What training buys.
    pub training: Training,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over time.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Times, s, evenly spaced in their logarithm.
    pub time_s: Column,
    /// Power that can be held, W.
    pub power_w: Column,
    /// The curve's own band of 95 %, W.
    pub curve_low_w: Column,
    /// Its upper edge.
    pub curve_high_w: Column,
    /// Where a test would come out, 19 times in 20, W.
    pub test_low_w: Column,
    /// The upper edge.
    pub test_high_w: Column,
    /// The two-parameter model; empty if it was not fitted, as the following.
    pub two_parameter_w: Column,
    /// The three-parameter model.
    pub three_parameter_w: Column,
    /// The omni-domain model.
    pub omni_domain_w: Column,
    /// The logarithmic decline, at the times past seven minutes, which are the last ones.
    pub log_decline_w: Column,
    /// The power law.
    pub power_law_w: Column,
    /// The curve of every position in `positions`, one after the other.
    pub positions_w: Column,
}

/// One model speaks for itself when it has this share of the evidence.
const TOLD: f64 = 0.9;
const CURVE_POINTS: usize = 121;

/// The efforts of one position, with their places in the scenario, and those of them that count.
struct Tests {
    position: usize,
    all: Vec<(usize, Effort)>,
    used: Vec<Effort>,
}

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        scenario,
        with,
        mut warnings,
    } = request;
    check_number(&fields::HOLD_S, "with.hold_s", with.hold_s)?;
    check_number(
        &fields::POWER_CHANGE,
        "with.power_change",
        with.power_change,
    )?;
    check_number(
        &fields::TEST_ERROR_SHARE,
        "with.test_error_share",
        with.test_error_share,
    )?;
    let groups = by_position(&scenario, with.test_error_share);
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

    let compared = if spans(&tests.used) {
        compare(&tests.used, &scenario.power)
    } else {
        Vec::new()
    };
    let chosen = match with.model {
        Some(name) => compared
            .iter()
            .find(|one| one.name == name && one.curve.is_some()),
        None => best(&compared),
    };
    let fitted = chosen
        .or(best(&compared))
        .and_then(|one| Some((Some(one.name), one.curve.clone()?)));
    let guess = || {
        Some((
            Some(ModelName::OmniDomain),
            guessed(&tests.used, &scenario.power)?,
        ))
    };
    let (basis, known) = match fitted {
        Some(fitted) => (Basis::Fitted, Some(fitted)),
        None if tests.used.is_empty() => (Basis::Given, None),
        None => match guess() {
            Some(guess) => (Basis::Guessed, Some(guess)),
            None => (Basis::Given, None),
        },
    };
    let own = scenario
        .positions
        .get(position)
        .and_then(|position| position.power.as_ref());
    let (model, curve) = known.unzip();
    let model = model.flatten();
    let longest_s = tests
        .used
        .iter()
        .map(|effort| effort.duration_s)
        .reduce(f64::max)
        .filter(|_| curve.is_some());
    let power = own.unwrap_or(&scenario.power);
    let as_ridden = |curve: &Curve| {
        Held::for_rides(
            curve,
            power,
            longest_s.unwrap_or_default(),
            with.test_error_share,
        )
    };
    let held = match &curve {
        Some(curve) => as_ridden(curve),
        None => Held::given(power, with.test_error_share),
    };
    // A model that rides do not use is only looked at: rides go by the one that is read where none is asked for.
    let ridden = match (basis, model) {
        (Basis::Fitted, Some(name)) if !is_ridden(name) => {
            best(&compared).and_then(|one| Some((one.name, as_ridden(one.curve.as_ref()?))))
        }
        _ => None,
    };
    let (ridden_model, ridden) = ridden.unzip();
    let ridden = ridden.as_ref().unwrap_or(&held);
    let usable = ridden_model
        .or(model)
        .filter(|&name| is_ridden(name))
        .map(|name| usable(name, ridden));
    let events = marked(&scenario, position, ridden, longest_s);
    let power_w = held.power_w(with.hold_s);
    let reach_w = held.reach * held.test_sd_w(with.hold_s);
    let efforts: Vec<Tested> = groups
        .iter()
        .flat_map(|group| tested(group, position, curve.as_ref()))
        .collect();
    let heaviest = compared
        .iter()
        .filter_map(|one| one.weight)
        .fold(0.0, f64::max);
    doubts::add(
        &mut warnings,
        &doubts::Seen {
            with: &with,
            basis,
            model,
            held: &held,
            longest_s,
            efforts: &efforts,
            position,
            events: &events,
            apart: spans(&tests.used),
        },
    );
    let positions = positions::curves(&scenario, &groups, position, with.test_error_share);
    let columns = columns(&with, &held, &compared, tests, &events, &positions);
    Ok(Answer {
        basis,
        position,
        longest_s,
        power_w,
        test_w: [(power_w.value - reach_w).max(0.0), power_w.value + reach_w],
        more: More {
            power_w: power_w.value * (1.0 + with.power_change),
            held_s: held.held_s(with.hold_s, 1.0 + with.power_change, 1.0),
        },
        model,
        told: heaviest >= TOLD,
        models: compared
            .iter()
            .map(|one| one.shown(with.test_error_share))
            .collect(),
        forms: forms(&tests.used),
        usable,
        positions: positions.into_iter().map(|(curve, _)| curve).collect(),
        training: training(&with, &held),
        efforts,
        events,
        warnings,
        columns,
    })
}

/// The efforts by the position they were ridden in, positions ascending.
fn by_position(scenario: &Scenario, test_error_share: f64) -> Vec<Tests> {
    let mut groups: Vec<Tests> = Vec::new();
    for (place, effort) in scenario.efforts.iter().enumerate() {
        let position = effort.position.unwrap_or(scenario.riding_position);
        let power_w = effort.power_w.value;
        let sd_w = if effort.power_w.sd > 0.0 {
            effort.power_w.sd
        } else {
            test_error_share * power_w
        };
        let effort = Effort {
            duration_s: effort.duration_s.value,
            power_w,
            sd_w,
        };
        let at = groups.partition_point(|tests| tests.position < position);
        match groups
            .get_mut(at)
            .filter(|tests| tests.position == position)
        {
            Some(tests) => tests.all.push((place, effort)),
            None => groups.insert(
                at,
                Tests {
                    position,
                    all: vec![(place, effort)],
                    used: Vec::new(),
                },
            ),
        }
    }
    for tests in &mut groups {
        let counts = |effort: &Effort| !tests.all.iter().any(|(_, other)| beats(other, effort));
        tests.used = tests
            .all
            .iter()
            .map(|(_, effort)| *effort)
            .filter(counts)
            .collect();
    }
    groups
}

/// Whether an effort that was longer was surely harder: by two standard deviations of their difference. Efforts of about the
/// same length are repeats of one test; leaving out the worse of them would raise the curve.
fn beats(other: &Effort, effort: &Effort) -> bool {
    const LONGER: f64 = 1.1;
    other.duration_s >= LONGER * effort.duration_s
        && other.power_w - effort.power_w > 2.0 * other.sd_w.hypot(effort.sd_w)
}

fn most_tested(groups: &[Tests], riding: usize) -> usize {
    let tests = groups.iter().find(|tests| tests.position == riding);
    let most = groups.iter().reduce(|most, tests| {
        if tests.all.len() > most.all.len() {
            tests
        } else {
            most
        }
    });
    tests.or(most).map_or(riding, |tests| tests.position)
}

/// Whether efforts are of different enough lengths to tell CP from W′.
fn spans(efforts: &[Effort]) -> bool {
    let longest_s = efforts.iter().map(|e| e.duration_s).fold(0.0, f64::max);
    let shortest_s = efforts
        .iter()
        .map(|e| e.duration_s)
        .fold(f64::INFINITY, f64::min);
    longest_s >= compared::SPAN * shortest_s
}

fn tested(group: &Tests, position: usize, curve: Option<&Curve>) -> Vec<Tested> {
    let one = |&(place, effort): &(usize, Effort)| {
        let used = group.used.contains(&effort);
        let curve = curve.filter(|_| group.position == position);
        let (curve_w, sd_w) = curve.map(|curve| curve.power_w(effort.duration_s)).unzip();
        let above_sd = match (curve, curve_w, sd_w) {
            (Some(curve), ..) if used => curve.studentised(&effort),
            (Some(curve), Some(curve_w), Some(sd_w)) => {
                Some((effort.power_w - curve_w) / sd_w.hypot(curve.variance.sqrt() * effort.sd_w))
            }
            _ => None,
        };
        let power_w = Figure {
            value: effort.power_w,
            sd: effort.sd_w,
        };
        Tested {
            effort: place,
            position: group.position,
            duration_s: effort.duration_s,
            power_w,
            curve_w,
            above_sd,
            used,
        }
    };
    group.all.iter().map(one).collect()
}

fn forms(efforts: &[Effort]) -> Option<Forms> {
    if efforts.len() < 3 || !spans(efforts) {
        return None;
    }
    let fits =
        [Form::WorkTime, Form::InverseTime, Form::Time].map(|form| fit_form(form, efforts).ok());
    let [Some(work), Some(inverse), Some(time)] = fits else {
        return None;
    };
    let all = [&work.parameters, &inverse.parameters, &time.parameters];
    Some(Forms {
        cp_w: all.map(|b| b[0]),
        w_prime_j: all.map(|b| b[1]),
    })
}

fn usable(model: ModelName, held: &Held) -> Usable {
    let (peak, _) = held.places();
    Usable {
        model,
        cp_w: held.parameter(0).unwrap_or_default(),
        w_prime_j: held.parameter(1).unwrap_or_default(),
        peak_w: peak.and_then(|at| held.parameter(at)),
        long_ride_loss_share: held.loss_share(),
        cp_w_prime_correlation: held.correlation(),
    }
}

/// The scenario's events on the scenario's course, each made longer or shorter to its distance, ridden at the power that
/// the curve gives for just the time that it takes.
fn marked(
    scenario: &Scenario,
    position: usize,
    held: &Held,
    longest_s: Option<f64>,
) -> Vec<Marked> {
    let course = Rc::new(scenario.course());
    let Some(mut setup) = scenario.setup_on(position, Rc::clone(&course)) else {
        return Vec::new();
    };
    let time_model = QuasiSteady::default();
    let mut mark = |(event, distance_m): (usize, f64)| {
        setup.course = Rc::new(course.scaled_to(distance_m));
        let time_s = event_time_s(&time_model, &setup, held, distance_m)?;
        let beyond = longest_s.is_some_and(|longest_s| time_s > longest_s);
        Some(Marked {
            event,
            distance_m,
            time_s,
            power_w: held.power_w(time_s),
            beyond,
        })
    };
    scenario
        .events
        .iter()
        .map(|event| event.distance_m)
        .enumerate()
        .filter_map(&mut mark)
        .collect()
}

/// The time `t` of a ride at the power held for `t`: a fixed point, to a millionth. A percent of time moves the power by a
/// few hundredths of a percent, and that the time by a third of it, so that few steps are needed; `None` where they do not
/// settle or the rider stalls.
fn event_time_s(
    time_model: &QuasiSteady,
    setup: &Setup,
    held: &Held,
    distance_m: f64,
) -> Option<f64> {
    const STEPS: usize = 40;
    const SETTLED: f64 = 1e-6;
    let mut time_s = distance_m / 11.0;
    for _ in 0..STEPS {
        let power_w = held.power_w(time_s).value;
        let next_s = if power_w > 0.0 {
            time_model.time_s(setup, power_w).ok()?
        } else {
            return None;
        };
        if (next_s / time_s - 1.0).abs() < SETTLED {
            return Some(next_s);
        }
        time_s = next_s;
    }
    None
}

fn training(with: &With, held: &Held) -> Training {
    let power_w = held.power_w(with.hold_s).value;
    let shown_share = NORMAL_REACH_95 * std::f64::consts::SQRT_2 * with.test_error_share;
    let tests = |rise: f64| {
        runs_per_group(rise / with.test_error_share, Certainty::USUAL)
            .map_or(MOST_RUNS, |enough| enough.runs)
    };
    Training {
        rise_share: PUBLISHED.four_weeks_peak_gain,
        rise_w: PUBLISHED.four_weeks_peak_gain.map(|rise| rise * power_w),
        held_s: PUBLISHED.four_weeks_peak_gain.map(|rise| {
            held.held_s(with.hold_s, 1.0, 1.0 + rise)
                .map(|held| held.value)
        }),
        shown_share,
        tests: PUBLISHED.four_weeks_peak_gain.map(tests),
    }
}

fn columns(
    with: &With,
    held: &Held,
    compared: &[Compared],
    tests: &Tests,
    events: &[Marked],
    positions: &[(PositionCurve, Option<Held>)],
) -> Columns {
    let times = times(with, tests, events);
    let band = |sd_w: &dyn Fn(f64) -> f64, side: f64| -> Column {
        times
            .iter()
            .map(|&t| (held.power_w(t).value + side * held.reach * sd_w(t)).max(0.0))
            .collect()
    };
    let curve_sd = |t: f64| held.power_w(t).sd;
    let test_sd = |t: f64| held.test_sd_w(t);
    let of = |name: ModelName| -> Column {
        let curve = compared
            .iter()
            .find(|one| one.name == name)
            .and_then(|one| one.curve.as_ref());
        let from_s = if name == ModelName::LogDecline {
            LOG_DECLINE_FROM_S
        } else {
            0.0
        };
        let power_w = |curve: &Curve| {
            times
                .iter()
                .filter(|&&t| t >= from_s)
                .map(|&t| curve.power_w(t).0.max(0.0))
                .collect()
        };
        curve.map(power_w).unwrap_or_default()
    };
    let of_position = |(_, held): &(PositionCurve, Option<Held>)| -> Vec<f64> {
        held.iter()
            .flat_map(|held| times.iter().map(|&t| held.power_w(t).value))
            .collect()
    };
    Columns {
        power_w: times.iter().map(|&t| held.power_w(t).value).collect(),
        curve_low_w: band(&curve_sd, -1.0),
        curve_high_w: band(&curve_sd, 1.0),
        test_low_w: band(&test_sd, -1.0),
        test_high_w: band(&test_sd, 1.0),
        two_parameter_w: of(ModelName::TwoParameter),
        three_parameter_w: of(ModelName::ThreeParameter),
        omni_domain_w: of(ModelName::OmniDomain),
        log_decline_w: of(ModelName::LogDecline),
        power_law_w: of(ModelName::PowerLaw),
        positions_w: positions.iter().flat_map(of_position).collect(),
        time_s: times.into(),
    }
}

/// The times that curves are drawn over: a little shorter than the shortest effort (or two minutes), a little longer than
/// the longest effort, event or time asked for (or two hours).
fn times(with: &With, tests: &Tests, events: &[Marked]) -> Vec<f64> {
    let efforts = tests.all.iter().map(|(_, effort)| effort.duration_s);
    let all = efforts.chain([with.hold_s]);
    let shortest_s = all.clone().fold(compared::SHORT_S, f64::min);
    let longest_s = all
        .chain(events.iter().map(|event| event.time_s))
        .fold(7200.0 / 1.15, f64::max);
    spaced_log(
        (0.8 * shortest_s).max(1.0),
        (1.15 * longest_s).min(2e5),
        CURVE_POINTS,
    )
}
