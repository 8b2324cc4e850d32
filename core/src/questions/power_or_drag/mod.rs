//! More power, or less drag? What is one worth in the other?
//!
//! The map of power or drag is ridden at 6 × 6 Chebyshev points and read off the polynomial through them.

use serde::{Deserialize, Serialize};

use super::request::{EffortForm, Request, check_number};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::quantity::{Column, Figure};
use crate::numerics::solve::{chebyshev_points, lagrange_weights, root, spaced, within};
use crate::physics::position::Position;
use crate::physics::resistance::tie_aero_share;
use crate::physiology::power_duration::Recovery;
use crate::riding::effort::{Effort, Paced, even_from, paced};
use crate::riding::integrated::{Integrated, Setup, TimeModel, ride, time_s};
use crate::scenario::propagation::{Case, Contribution, Propagation, figure, with_model_error};
use crate::scenario::ride_doubts::{beyond_curve, long_doubts};
use crate::scenario::ride_errors::no_effort;
use crate::uncertainty::draws::{Drawn, Spread};

/// What the question takes.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// More power, as a share: 0.1 is ten percent more.
    pub power_change: f64,
    /// Change of drag area, as a share: −0.1 is ten percent less.
    pub cda_change: f64,
    /// How hard; the best even effort if left out.
    pub effort: EffortForm,
    /// The powers that the map spans, W.
    #[cfg_attr(feature = "types", ts(optional))]
    pub map_power_w: Option<[f64; 2]>,
    /// The drag areas that the map spans, m².
    #[cfg_attr(feature = "types", ts(optional))]
    pub map_cda_m2: Option<[f64; 2]>,
    /// How many draws of the comparison to take; none if left out.
    pub draws: u32,
    /// The seed of the draws.
    pub seed: u32,
}

impl Default for With {
    fn default() -> Self {
        Self {
            power_change: fields::POWER_CHANGE.default,
            cda_change: fields::CDA_CHANGE.default,
            effort: EffortForm::default(),
            map_power_w: None,
            map_cda_m2: None,
            draws: 0,
            seed: 1,
        }
    }
}

/// What one thing is worth in another at the rider's own point: the amounts that cost the same time.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Exchange {
    /// Watts worth 0.001 m² of drag area.
    pub w_per_0_001_m2: f64,
    /// Square metres worth one watt.
    pub m2_per_w: f64,
    /// Watts worth one percent of drag area.
    pub w_per_cda_percent: f64,
    /// Watts worth a kilogram.
    pub w_per_kg: f64,
    /// Square metres worth a kilogram.
    pub m2_per_kg: f64,
    /// Watts worth 0.0001 of the rolling-resistance coefficient.
    pub w_per_0_0001_crr: f64,
    /// Square metres worth 0.0001 of the rolling-resistance coefficient.
    pub m2_per_0_0001_crr: f64,
    /// Seconds that one watt saves.
    pub s_per_w: f64,
    /// Seconds that 0.001 m² saves.
    pub s_per_0_001_m2: f64,
    /// Seconds that one percent of drag area saves.
    pub s_per_cda_percent: f64,
    /// Seconds that a kilogram saves.
    pub s_per_kg: f64,
    /// Seconds that 0.0001 of the rolling-resistance coefficient saves.
    pub s_per_0_0001_crr: f64,
}

/// What more power takes, on the rider's own curve.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Takes {
    /// How long the changed power could be held today, s; `null` if for ever, or not at all.
    pub more_power_held_s: Option<f64>,
    /// How long the power ridden at now could be held, s.
    pub power_held_s: Option<f64>,
    /// Power that the curve allows for this finish time, W.
    pub sustainable_w: f64,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Finish time as the rider is, the model's own error counted.
    pub base_time_s: Figure,
    /// With more power.
    pub more_power_time_s: Figure,
    /// With less drag.
    pub less_drag_time_s: Figure,
    /// How much faster more power is than less drag; negative if slower. The model's own error cancels.
    pub difference_s: Figure,
    /// What more power saves.
    pub more_power_saves_s: Figure,
    /// What less drag saves.
    pub less_drag_saves_s: Figure,
    /// The draws, if any were asked for.
    pub drawn: Option<Drawn>,
    /// The change of drag area worth the change of power; `null` if none within the bounds is.
    pub equal_cda_change: Option<Figure>,
    /// The change of power worth the change of drag area.
    pub equal_power_change: Option<Figure>,
    /// Share of the work on the road that goes into the air.
    pub aero_share: f64,
    /// The share at which the two changes tie on a flat calm road; `null` if one always wins.
    pub tie_aero_share: Option<f64>,
    /// Power as the rider is, with more power, and with less drag.
    pub base_power_w: f64,
    /// Power of the ride with more.
    pub more_power_w: f64,
    /// Power of the ride with less drag; more than the base at even effort, the ride being shorter.
    pub less_drag_power_w: f64,
    /// Drag area as the rider is, when fresh.
    pub base_cda_m2: f64,
    /// Drag area of the ride with less.
    pub less_drag_cda_m2: f64,
    /// What one thing is worth in another.
    pub exchange: Exchange,
    /// What the changes take.
    pub takes: Takes,
    /// How far.
    pub distance_m: f64,
    /// Average speed as the rider is.
    pub base_speed_m_s: f64,
    /// Which inputs carry the doubt of the difference.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// The map of finish times.
    pub columns: Columns,
}

/// Finish times over power and drag area: `time_s` holds a row of powers for each drag area.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Powers, W.
    pub power_w: Column,
    /// Drag areas, m².
    pub cda_m2: Column,
    /// Finish times, s.
    pub time_s: Column,
}

/// The map is ridden at this many Chebyshev points each way and read off the polynomial through them. In logarithms finish
/// time is nearly a plane, so it is met within a hundredth of a second over the usual spans and within a second over
/// any.
const MAP_NODES: usize = 6;
/// Over the usual spans a straight line across a cell is a tenth of a pixel off the curve at most.
const MAP_POINTS: (usize, usize) = (21, 19);
/// How far the map reaches beyond the changes it shows, as a share.
const MAP_MARGIN: f64 = 0.12;
/// The widest drag change in which an equal is looked for.
const EQUAL_CDA: (f64, f64) = (-0.9, 3.0);
/// The widest power change in which an equal is looked for.
const EQUAL_POWER: (f64, f64) = (-0.9, 4.0);

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        scenario,
        with,
        warnings,
    } = request;
    let effort = check(&with)?;
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
        let near = |power_change, cda_change| {
            changed(
                time_model,
                &setup,
                effort,
                power_change,
                cda_change,
                base.power_w,
            )
        };
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
        let more = changed(
            time_model,
            &setup,
            effort,
            with.power_change,
            0.0,
            base.power_w,
        )?;
        Ok(changed(
            time_model,
            &setup,
            effort,
            0.0,
            with.cda_change,
            base.power_w,
        )?
        .time_s
            - more.time_s)
    };
    let drawn = match with.draws {
        0 => None,
        draws => Some(inquiry.drawn(draws, u64::from(with.seed), apart)?),
    };

    let more = changed(
        &Integrated,
        &setup,
        effort,
        with.power_change,
        0.0,
        base.power_w,
    )?;
    let less = changed(
        &Integrated,
        &setup,
        effort,
        0.0,
        with.cda_change,
        base.power_w,
    )?;
    let log = ride(&setup, base.power_w, Recovery::Differential, &[])
        .map_err(|stall| no_effort(stall.into()))?;
    let model = scenario.model_error_share.value;
    let cda_m2 = setup.position.cda_m2;
    Ok(Answer {
        base_time_s: with_model_error(figure(&spread, |o| o[0]), model),
        more_power_time_s: with_model_error(figure(&spread, |o| o[1]), model),
        less_drag_time_s: with_model_error(figure(&spread, |o| o[2]), model),
        difference_s: figure(&spread, difference),
        more_power_saves_s: figure(&spread, |o| o[0] - o[1]),
        less_drag_saves_s: figure(&spread, |o| o[0] - o[2]),
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
        exchange: exchange(&setup, base.power_w)?,
        takes: Takes {
            more_power_held_s: setup
                .power
                .duration_s(base.power_w * (1.0 + with.power_change)),
            power_held_s: setup.power.duration_s(base.power_w),
            sustainable_w: setup.power.sustainable_w(base.time_s),
        },
        distance_m: setup.course.distance_m(),
        base_speed_m_s: setup.course.distance_m() / base.time_s,
        surer: inquiry.contributions(&spread, difference),
        columns: map(&setup, &with, base.power_w),
        warnings: with_doubts(warnings, &setup, effort, base),
    })
}

fn difference(o: &[f64; 3]) -> f64 {
    o[2] - o[1]
}

fn check(with: &With) -> Result<Effort, Error> {
    check_number(
        &fields::POWER_CHANGE,
        "with.power_change",
        with.power_change,
    )?;
    check_number(&fields::CDA_CHANGE, "with.cda_change", with.cda_change)?;
    check_number(&fields::DRAWS, "with.draws", f64::from(with.draws))?;
    check_span(&fields::MAP_POWER_W, "with.map_power_w", with.map_power_w)?;
    check_span(&fields::CDA_M2, "with.map_cda_m2", with.map_cda_m2)?;
    match with.effort.check()? {
        Effort::Time(_) => {
            let message = message::fixed_time_compares_nothing();
            Err(Error::new(Kind::Conflict, "with.effort.kind", message))
        }
        effort => Ok(effort),
    }
}

fn check_span(field: &fields::Field, path: &str, span: Option<[f64; 2]>) -> Result<(), Error> {
    let Some([low, high]) = span else {
        return Ok(());
    };
    check_number(field, path, low)?;
    check_number(field, path, high)?;
    if low < high {
        return Ok(());
    }
    Err(Error::new(
        Kind::Conflict,
        path,
        message::from_low_to_high(path),
    ))
}

/// The same drag areas, all by one factor.
fn with_cda(position: &Position, factor: f64) -> Position {
    let mut changed = position.clone();
    changed.cda_m2 *= factor;
    if let Some(fade) = &mut changed.fade {
        fade.tired_cda_m2 *= factor;
    }
    if let Some(lapses) = &mut changed.lapses {
        lapses.cda_m2 *= factor;
    }
    changed
}

/// The ride with shares more power and drag area, from a guess at the unchanged power: at even effort the whole power
/// curve is raised and the even effort solved anew.
fn changed(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    power_change: f64,
    cda_change: f64,
    guess_w: f64,
) -> Result<Paced, Error> {
    let changed = changed_setup(setup, power_change, cda_change);
    match effort {
        Effort::Power(power_w) => paced(
            time_model,
            &changed,
            Effort::Power(power_w * (1.0 + power_change)),
        ),
        _ => even_from(time_model, &changed, guess_w * (1.0 + power_change)),
    }
    .map_err(no_effort)
}

fn changed_setup(setup: &Setup, power_change: f64, cda_change: f64) -> Setup {
    let mut changed = setup.clone();
    if cda_change != 0.0 {
        changed.position = with_cda(&setup.position, 1.0 + cda_change);
    }
    changed.power = setup.power.scaled(1.0 + power_change, 1.0 + power_change);
    changed
}

fn equal_cda(setup: &Setup, effort: Effort, base: Paced, target_s: f64) -> Option<f64> {
    let excess = |cda_change: f64| {
        changed(&Integrated, setup, effort, 0.0, cda_change, base.power_w)
            .map_or(f64::NAN, |ride| ride.time_s - target_s)
    };
    root(excess, EQUAL_CDA.0, EQUAL_CDA.1, 1e-10).ok()
}

fn equal_power(setup: &Setup, effort: Effort, base: Paced, target_s: f64) -> Option<f64> {
    let excess = |power_change: f64| {
        changed(&Integrated, setup, effort, power_change, 0.0, base.power_w)
            .map_or(f64::NAN, |ride| ride.time_s - target_s)
    };
    root(excess, EQUAL_POWER.0, EQUAL_POWER.1, 1e-10).ok()
}

/// An equal change with its doubt: to first order it moves as the ratio of the two savings.
fn equal_figure(value: f64, spread: &Spread<3>) -> Figure {
    let (power_s, drag_s) = (
        spread.base[0] - spread.base[1],
        spread.base[0] - spread.base[2],
    );
    let relative = |o: &[f64; 3]| (o[0] - o[1]) / power_s - (o[0] - o[2]) / drag_s;
    let sd = spread
        .by_input
        .iter()
        .map(|moved| relative(moved).powi(2))
        .sum::<f64>()
        .sqrt();
    Figure {
        value,
        sd: if sd.is_finite() {
            value.abs() * sd
        } else {
            0.0
        },
    }
}

/// Exchange rates by central differences of finish time at the same power; 0 where bends alone set the time.
fn exchange(setup: &Setup, power_w: f64) -> Result<Exchange, Error> {
    const MOVED: f64 = 0.002;
    let ridden =
        |setup: &Setup, power_w| time_s(setup, power_w).map_err(|stall| no_effort(stall.into()));
    let by_power = (ridden(setup, power_w * (1.0 + MOVED))?
        - ridden(setup, power_w * (1.0 - MOVED))?)
        / (2.0 * MOVED * power_w);
    let slope = |change: &dyn Fn(&mut Setup, f64)| -> Result<f64, Error> {
        let moved = |by: f64| {
            let mut moved = setup.clone();
            change(&mut moved, 1.0 + by);
            ridden(&moved, power_w)
        };
        Ok((moved(MOVED)? - moved(-MOVED)?) / (2.0 * MOVED))
    };
    let cda_m2 = setup.position.cda_m2;
    let by_cda =
        slope(&|moved, factor| moved.position = with_cda(&moved.position, factor))? / cda_m2;
    let by_mass = slope(&|moved, factor| moved.machine.total_mass_kg *= factor)?
        / setup.machine.total_mass_kg;
    let by_rolling = slope(&|moved, factor| moved.machine.rolling_coefficient *= factor)?
        / setup.machine.rolling_coefficient;
    let rate = |one: f64, other: f64| if other == 0.0 { 0.0 } else { one / other };
    Ok(Exchange {
        w_per_0_001_m2: rate(0.001 * by_cda, -by_power),
        m2_per_w: rate(-by_power, by_cda),
        w_per_cda_percent: rate(0.01 * cda_m2 * by_cda, -by_power),
        w_per_kg: rate(by_mass, -by_power),
        m2_per_kg: rate(by_mass, by_cda),
        w_per_0_0001_crr: rate(0.0001 * by_rolling, -by_power),
        m2_per_0_0001_crr: rate(0.0001 * by_rolling, by_cda),
        s_per_w: -by_power,
        s_per_0_001_m2: 0.001 * by_cda,
        s_per_cda_percent: 0.01 * cda_m2 * by_cda,
        s_per_kg: by_mass,
        s_per_0_0001_crr: 0.0001 * by_rolling,
    })
}

fn map(setup: &Setup, with: &With, power_w: f64) -> Columns {
    let around = |value: f64, change: f64, field: &fields::Field| {
        let low = value * (1.0 + change.min(0.0) - MAP_MARGIN);
        let high = value * (1.0 + change.max(0.0) + MAP_MARGIN);
        [
            within(low, field.min, field.max),
            within(high, field.min, field.max),
        ]
    };
    let [low_w, high_w] = with
        .map_power_w
        .unwrap_or_else(|| around(power_w, with.power_change, &fields::MAP_POWER_W));
    let cda_m2 = setup.position.cda_m2;
    let [low_m2, high_m2] = with
        .map_cda_m2
        .unwrap_or_else(|| around(cda_m2, with.cda_change, &fields::CDA_M2));
    let power_nodes = chebyshev_points::<MAP_NODES>(low_w.ln(), high_w.ln());
    let cda_nodes = chebyshev_points::<MAP_NODES>(low_m2.ln(), high_m2.ln());
    let ridden = cda_nodes.map(|node| {
        let moved = setup.in_position(with_cda(&setup.position, node.exp() / cda_m2));
        power_nodes.map(|node| time_s(&moved, node.exp()).map_or(f64::NAN, f64::ln))
    });
    let powers = spaced(low_w, high_w, MAP_POINTS.0);
    let areas = spaced(low_m2, high_m2, MAP_POINTS.1);
    let logarithms = |values: &[f64]| values.iter().map(|value| value.ln()).collect::<Vec<f64>>();
    let power_weights = lagrange_weights(&power_nodes, &logarithms(&powers));
    let mut times = Vec::with_capacity(MAP_POINTS.0 * MAP_POINTS.1);
    for cda_weights in lagrange_weights(&cda_nodes, &logarithms(&areas)) {
        let row: [f64; MAP_NODES] = std::array::from_fn(|p| {
            ridden
                .iter()
                .zip(cda_weights)
                .map(|(times, weight)| weight * times[p])
                .sum()
        });
        times.extend(power_weights.iter().map(|weights| {
            weights
                .iter()
                .zip(row)
                .map(|(w, t)| w * t)
                .sum::<f64>()
                .exp()
        }));
    }
    Columns {
        power_w: powers.into(),
        cda_m2: areas.into(),
        time_s: times.into(),
    }
}

fn with_doubts(
    mut warnings: Vec<Warning>,
    setup: &Setup,
    effort: Effort,
    base: Paced,
) -> Vec<Warning> {
    let sustainable_w = setup.power.sustainable_w(base.time_s);
    // A watt is below what any meter tells.
    if matches!(effort, Effort::Power(_)) && base.power_w > sustainable_w + 1.0 {
        let message = beyond_curve(base.power_w, sustainable_w);
        warnings.push(Warning::of("with.effort.power_w", message));
    }
    long_doubts(setup, effort, base.time_s, &mut warnings);
    warnings
}
