//! Is a faster shape worth it if I can't hold it?

use serde::{Deserialize, Serialize};

use super::request::{EffortForm, Request, check_number};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::quantity::{Column, Figure, Quantity};
use crate::numerics::solve::{root, spaced, within};
use crate::physics::position::{Fade, Lapses, Position};
use crate::riding::effort::{Effort, Paced, even_from, paced};
use crate::riding::integrated::{Integrated, Setup, TimeModel};
use crate::scenario::propagation::{Case, Contribution, Propagation, figure, with_model_error};
use crate::scenario::ride_doubts::{beyond_curve, long_doubts};
use crate::scenario::ride_errors::no_effort;
use crate::scenario::{check_quantity, position_index};
use crate::uncertainty::draws::Drawn;

/// What the question takes.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The low position, by its place in the scenario.
    pub low: usize,
    /// The one that is held.
    pub steady: usize,
    /// By how much the low position's fresh drag area is below the steady one's, m², if that is what was measured: a
    /// difference from one test is surer than the difference of two drag areas. What is uncertain of the steady drag area is
    /// then common to all.
    #[cfg_attr(feature = "types", ts(optional))]
    pub lower_by_m2: Option<Quantity>,
    /// How hard; the best even effort if left out.
    pub effort: EffortForm,
    /// How many draws of the comparison to take; none if left out.
    pub draws: u32,
    /// The seed of the draws.
    pub seed: u32,
}

impl Default for With {
    fn default() -> Self {
        Self {
            low: 0,
            steady: 1,
            lower_by_m2: None,
            effort: EffortForm::default(),
            draws: 0,
            seed: 1,
        }
    }
}

/// Where the two positions tie, the rest staying as it is; `null` where they do not.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BreakEven {
    /// Share of the ride that the low position must be held, the rest being ridden at its lost drag area.
    pub held_share: Option<f64>,
    /// The earliest that it may begin to go, going as slowly as it does, s.
    pub begins_s: Option<f64>,
    /// The highest drag area that it may end at, m².
    pub tired_cda_m2: Option<f64>,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Finish time in the low position as it is held.
    pub low_time_s: Figure,
    /// Finish time in the steady one.
    pub steady_time_s: Figure,
    /// How much faster the low position is; negative if slower. The model's own error cancels.
    pub difference_s: Figure,
    /// Finish time in the low position if it were held to the end.
    pub low_held_time_s: Figure,
    /// How much faster it would then be.
    pub held_difference_s: Figure,
    /// The draws, if any were asked for.
    pub drawn: Option<Drawn>,
    /// Where they tie.
    pub break_even: BreakEven,
    /// The share of the ride that the low position is held for now, in equal effect on the mean drag area.
    pub held_share: Option<f64>,
    /// When the low position's drag area passes the steady one's, s.
    pub passes_s: Option<f64>,
    /// Seconds gained while it is the lower, to first order.
    pub gained_s: Option<f64>,
    /// Seconds given back after that, to first order.
    pub given_back_s: Option<f64>,
    /// Power in the low position.
    pub low_power_w: f64,
    /// Power in the steady one.
    pub steady_power_w: f64,
    /// Fresh drag area of the low position.
    pub low_cda_m2: f64,
    /// Mean drag area of the low position over its ride.
    pub low_mean_cda_m2: f64,
    /// Mean drag area of the steady one.
    pub steady_mean_cda_m2: f64,
    /// How far.
    pub distance_m: f64,
    /// Which inputs carry the doubt of the difference.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over the ride and over the share held.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Times of the ride, s.
    pub time_s: Column,
    /// Drag area of the low position then, m².
    pub low_cda_m2: Column,
    /// Drag area of the steady one then, m².
    pub steady_cda_m2: Column,
    /// Shares of the ride held, from 0 to 1; none if the position is never lost.
    pub share: Column,
    /// How much faster the low position is then, s.
    pub difference_s: Column,
    /// One standard deviation of that, s.
    pub difference_sd_s: Column,
}

const TIME_POINTS: usize = 121;
const SHARE_POINTS: usize = 11;
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
    let held = Position {
        fade: None,
        lapses: None,
        ..low_setup.position.clone()
    };
    let held_ride = paced(&Integrated, &low_setup.in_position(held), effort).map_err(no_effort)?;

    let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 4], Error> {
        let effort = case.effort(effort);
        let (low, steady) = pair(case)?;
        let held = Position {
            fade: None,
            lapses: None,
            ..low.position.clone()
        };
        let lost = low.in_position(lost(&low.position).unwrap_or_else(|| held.clone()));
        let time_s = |setup: &Setup, guess_w| {
            near(time_model, setup, effort, guess_w).map(|ride| ride.time_s)
        };
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
        let low_s = near(time_model, &low, effort, low_ride.power_w)?.time_s;
        Ok(near(time_model, &steady, effort, steady_ride.power_w)?.time_s - low_s)
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
    let area = Area::between(&low_setup.position, &steady_setup.position, low_ride.time_s);
    let won_s = steady_ride.time_s - low_ride.time_s;
    let held_won_s = steady_ride.time_s - held_ride.time_s;
    let seconds_per_area = held_won_s / (area.fresh * low_ride.time_s);
    let gained_s =
        (seconds_per_area.is_finite() && area.fresh > 0.0).then_some(seconds_per_area * area.below);
    let model = scenario.model_error_share.value;
    let held_columns = share_columns(&tie, &spread);
    Ok(Answer {
        low_time_s: with_model_error(figure(&spread, |o| o[0]), model),
        steady_time_s: with_model_error(figure(&spread, |o| o[1]), model),
        difference_s: figure(&spread, |o| o[1] - o[0]),
        low_held_time_s: with_model_error(figure(&spread, |o| o[2]), model),
        held_difference_s: figure(&spread, |o| o[1] - o[2]),
        drawn,
        break_even: BreakEven {
            held_share: tie.held_share(),
            begins_s: tie.begins_s(),
            tired_cda_m2: tie.tired_cda_m2(),
        },
        held_share: held_share_now(&low_setup.position, low_ride.time_s),
        passes_s: passes(&low_setup.position, &steady_setup.position, low_ride.time_s),
        gained_s,
        given_back_s: gained_s.map(|gained_s| gained_s - won_s),
        low_power_w: low_ride.power_w,
        steady_power_w: steady_ride.power_w,
        low_cda_m2: low_setup.position.cda_m2,
        low_mean_cda_m2: low_setup.position.mean_cda_m2(low_ride.time_s),
        steady_mean_cda_m2: steady_setup.position.mean_cda_m2(steady_ride.time_s),
        distance_m: low_setup.course.distance_m(),
        surer: inquiry.contributions(&spread, |o| o[1] - o[0]),
        warnings: with_doubts(warnings, &low_setup, effort, low_ride),
        columns: columns(
            &low_setup.position,
            &steady_setup.position,
            low_ride,
            held_columns,
        ),
    })
}

fn check(with: &With) -> Result<Effort, Error> {
    check_number(&fields::DRAWS, "with.draws", f64::from(with.draws))?;
    if let Some(lower_by_m2) = &with.lower_by_m2 {
        check_quantity(&fields::LOWER_BY_M2, "with.lower_by_m2", lower_by_m2)?;
    }
    match with.effort.check()? {
        Effort::Time(_) => {
            let message = message::fixed_time_compares_nothing();
            Err(Error::new(Kind::Conflict, "with.effort.kind", message))
        }
        effort => Ok(effort),
    }
}

/// The low position where a difference from the steady one was measured: its fresh drag area follows the steady one's, and
/// what it is once lost moves with them, since one test's error of scale is common to all drag areas.
fn below(low: &Position, steady_m2: f64, kept_m2: f64, lower_by_m2: f64) -> Position {
    let moved = |cda_m2: f64| {
        within(
            cda_m2 + steady_m2 - kept_m2,
            fields::CDA_M2.min,
            fields::CDA_M2.max,
        )
    };
    let fade = low.fade.map(|fade| Fade {
        tired_cda_m2: moved(fade.tired_cda_m2),
        ..fade
    });
    let lapses = low.lapses.map(|lapses| Lapses {
        cda_m2: moved(lapses.cda_m2),
        ..lapses
    });
    Position {
        cda_m2: moved(kept_m2 - lower_by_m2),
        fade,
        lapses,
        ..low.clone()
    }
}

/// The effort, an even one from a guess at its power.
fn near(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    guess_w: f64,
) -> Result<Paced, Error> {
    match effort {
        Effort::Even => even_from(time_model, setup, guess_w),
        _ => paced(time_model, setup, effort),
    }
    .map_err(no_effort)
}

/// The position as it is once lost, all the way.
fn lost(position: &Position) -> Option<Position> {
    position
        .lost_cda_m2()
        .map(|lost_m2| position.held_for_share(0.0, lost_m2))
}

/// The low position against a steady finish time.
struct Tie<'a> {
    low: &'a Setup,
    effort: Effort,
    guess_w: f64,
    steady_s: f64,
}

impl Tie<'_> {
    /// How much slower a changed low position is than the steady one, s.
    fn behind_s(&self, position: Position) -> f64 {
        near(
            &Integrated,
            &self.low.in_position(position),
            self.effort,
            self.guess_w,
        )
        .map_or(f64::NAN, |ride| ride.time_s - self.steady_s)
    }

    fn held_share(&self) -> Option<f64> {
        let position = &self.low.position;
        let lost_m2 = position.lost_cda_m2()?;
        root(
            |share| self.behind_s(position.held_for_share(share, lost_m2)),
            0.0,
            1.0,
            1e-11,
        )
        .ok()
    }

    fn begins_s(&self) -> Option<f64> {
        let fade = self.low.position.fade?;
        let ramp_s = fade.complete_s - fade.begins_s;
        let begun_at = |begins_s: f64| {
            self.faded(Fade {
                begins_s,
                complete_s: begins_s + ramp_s,
                ..fade
            })
        };
        root(
            |begins_s| self.behind_s(begun_at(begins_s)),
            0.0,
            self.steady_s,
            1e-11,
        )
        .ok()
    }

    fn tired_cda_m2(&self) -> Option<f64> {
        let fade = self.low.position.fade?;
        if fade.begins_s >= self.steady_s {
            return None;
        }
        let tired_at = |tired_cda_m2: f64| {
            self.faded(Fade {
                tired_cda_m2,
                ..fade
            })
        };
        root(
            |cda_m2| self.behind_s(tired_at(cda_m2)),
            fields::CDA_M2.min,
            fields::CDA_M2.max,
            1e-12,
        )
        .ok()
    }

    fn faded(&self, fade: Fade) -> Position {
        Position {
            fade: Some(fade),
            ..self.low.position.clone()
        }
    }
}

/// Areas between two drag areas over a ride, m² s.
struct Area {
    /// What the fresh low position is below the steady one's mean, m².
    fresh: f64,
    /// While the low one is the lower.
    below: f64,
}

impl Area {
    fn between(low: &Position, steady: &Position, time_s: f64) -> Self {
        const SLICES: usize = 600;
        let slice_s = time_s / SLICES as f64;
        let below = (0..SLICES)
            .map(|i| (i as f64 + 0.5) * slice_s)
            .map(|t| (steady.cda_at_m2(t) - low.cda_at_m2(t)).max(0.0) * slice_s)
            .sum();
        Self {
            fresh: steady.mean_cda_m2(time_s) - low.cda_m2,
            below,
        }
    }
}

fn held_share_now(low: &Position, time_s: f64) -> Option<f64> {
    let lost_m2 = low.lost_cda_m2()?;
    let share = 1.0 - (low.mean_cda_m2(time_s) - low.cda_m2) / (lost_m2 - low.cda_m2);
    share.is_finite().then_some(share)
}

fn passes(low: &Position, steady: &Position, time_s: f64) -> Option<f64> {
    root(
        |t| low.cda_at_m2(t) - steady.cda_at_m2(t),
        0.0,
        time_s,
        1e-9,
    )
    .ok()
}

/// The difference against the share held, with its doubt between that of the position lost and that of it held.
fn share_columns(
    tie: &Tie<'_>,
    spread: &crate::uncertainty::draws::Spread<4>,
) -> (Vec<f64>, Vec<f64>, Vec<f64>) {
    let position = &tie.low.position;
    let Some(lost_m2) = position.lost_cda_m2() else {
        return (Vec::new(), Vec::new(), Vec::new());
    };
    let shares = spaced(0.0, 1.0, SHARE_POINTS);
    let differences = shares
        .iter()
        .map(|&share| -tie.behind_s(position.held_for_share(share, lost_m2)))
        .collect();
    let sds = shares
        .iter()
        .map(|&share| figure(spread, |o| o[1] - share * o[2] - (1.0 - share) * o[3]).sd)
        .collect();
    (shares, differences, sds)
}

fn columns(
    low: &Position,
    steady: &Position,
    ride: Paced,
    held: (Vec<f64>, Vec<f64>, Vec<f64>),
) -> Columns {
    let times = spaced(0.0, ride.time_s, TIME_POINTS);
    Columns {
        low_cda_m2: times.iter().map(|&t| low.cda_at_m2(t)).collect(),
        steady_cda_m2: times.iter().map(|&t| steady.cda_at_m2(t)).collect(),
        time_s: times.into(),
        share: held.0.into(),
        difference_s: held.1.into(),
        difference_sd_s: held.2.into(),
    }
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
        && fade.begins_s >= ride.time_s
    {
        warn("with.low", message::after_finish());
    }
    let sustainable_w = low.power.sustainable_w(ride.time_s);
    // A watt is below what any meter tells.
    if matches!(effort, Effort::Power(_)) && ride.power_w > sustainable_w + 1.0 {
        warn(
            "with.effort.power_w",
            beyond_curve(ride.power_w, sustainable_w),
        );
    }
    long_doubts(low, effort, ride.time_s, &mut warnings);
    warnings
}
