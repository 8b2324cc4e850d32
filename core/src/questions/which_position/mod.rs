//! Which position for which distance?

use std::rc::Rc;

use serde::{Deserialize, Serialize};

use super::request::{Request, check_number, no_effort};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields;
use crate::inputs::published::{MeanAndSd, PUBLISHED};
use crate::inputs::quantity::{Column, Figure, Known, Quantity};
use crate::numerics::distributions::predicted_share;
use crate::numerics::solve::{interpolate, root, spaced_log, within};
use crate::physics::course::Course;
use crate::physics::position::{Fade, Lapses, Position};
use crate::riding::effort::{
    KnownEffort, Paced, TIME_ACCURACY, even_from, even_within, power_for_time_from_w,
};
use crate::riding::integrated::{Integrated, Setup};
use crate::riding::quasi_steady::{PIECE_M, QuasiSteady};
use crate::scenario::propagation::{Case, Propagation, with_model_error};
use crate::scenario::{Input, Ridden, Scenario, position_index};
use crate::uncertainty::draws::{Normal, Sensitivities, draw_errors, moves, with_errors};
use crate::uncertainty::value_of_information::{Direction, Shape, Tally};

/// How much of the question is answered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Wanted {
    /// All of it.
    #[default]
    All,
    /// The draws alone, for whoever has the rest already.
    Draws,
}

/// What the question takes. Every ride is the best even effort in its position.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The positions to compare, by their places; all of them if left out.
    pub positions: Vec<usize>,
    /// Whether each piece of a position's equipment is a choice of its own, beside the position without any.
    pub equipment: bool,
    /// The position that the others are compared with, as it is worn; the ridden one if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub reference: Option<usize>,
    /// A distance to read the answer at, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub distance_m: Option<f64>,
    /// How the errors of the positions' drag areas go together, from 0 to 1: nearly 1 for guesses about one rider, or where one
    /// test measured them all, since its error of scale is common to them.
    pub cda_correlation: f64,
    /// How much of it to answer.
    pub part: Wanted,
    /// How many draws of the comparison to take; none if left out.
    pub draws: u32,
    /// The seed of the draws.
    pub seed: u32,
    /// The tally of draws that an earlier answer to the same request counted, to go on from.
    #[cfg_attr(feature = "types", ts(optional))]
    pub so_far: Option<Tally>,
}

impl Default for With {
    fn default() -> Self {
        Self {
            positions: Vec::new(),
            equipment: true,
            reference: None,
            distance_m: None,
            cda_correlation: fields::CDA_CORRELATION.default,
            part: Wanted::default(),
            draws: 0,
            seed: 1,
            so_far: None,
        }
    }
}

/// One of the choices: a position, and what is worn in it.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PositionChoice {
    /// The position, by its place in the scenario.
    pub position: usize,
    /// What is worn, by its place in the position's equipment; `null` for nothing.
    pub worn: Option<usize>,
    /// Drag area when fresh, m².
    pub cda_m2: f64,
    /// Critical power, W.
    pub cp_w: f64,
}

/// What a choice gives over a distance.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ChoiceTime {
    /// Finish time.
    pub time_s: Figure,
    /// How much faster than the reference; negative if slower. The model's own error cancels.
    pub difference_s: Figure,
    /// Power of the best even effort.
    pub power_w: f64,
    /// Drag area averaged over the ride, m².
    pub mean_cda_m2: f64,
}

/// All choices over a distance.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct AtDistance {
    /// How far.
    pub distance_m: f64,
    /// The fastest choice, by its place in `choices`.
    pub best: usize,
    /// By how much it is faster than the next, in seconds; `null` if there is no other.
    pub ahead_s: Option<Figure>,
    /// What each choice gives.
    pub times: Vec<ChoiceTime>,
}

/// A distance at which a choice and the reference are equally fast.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Crossover {
    /// The choice, by its place in `choices`.
    pub choice: usize,
    /// Where they cross, m. One standard deviation of it is that of the difference over its slope there.
    pub distance_m: Figure,
    /// Whether the choice is the faster one beyond it.
    pub faster_beyond: bool,
}

/// What a position may cost in critical power before it loses against another.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PositionCost {
    /// The position with the smaller drag area, by its place in `choices`.
    pub choice: usize,
    /// The other, by its place in `choices`.
    pub against: usize,
    /// The event, by its place in the scenario.
    pub event: usize,
    /// How many watts its critical power may lie below the other's; `null` where no number of them ties.
    pub allowed_w: Option<Figure>,
    /// The same as a share of the other's critical power.
    pub allowed_share: Option<f64>,
    /// How many watts it lies below now.
    pub now_w: f64,
    /// By what share its drag area, fresh and without equipment, is below the other's; 0 or less if it is not.
    pub cda_cut: f64,
    /// What lower bars cost the riders of `polanco-2020` as a share of power, with the spread between them, scaled from the cut of
    /// that test to `cda_cut`: that the cost grows in proportion is assumed. `null` where there is no cut.
    pub polanco_cost: Option<Figure>,
    /// The share of further riders like them who would pay less than `allowed_share` at that scaled cost.
    pub polanco_share: Option<f64>,
    /// The share of further riders like those of `faulkner-2021` who would pay less than `allowed_w`. Their cut is not published, so
    /// that nothing can be scaled: it is given only for a cut of the size that lower bars bring, and holds only for a torso brought
    /// down to about 12°.
    pub faulkner_share: Option<f64>,
}

/// What lower bars may cost before they lose against the reference: for the published cut in drag area, and one standard
/// deviation of it less and more (`polanco-2020`).
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LowerBars {
    /// The event, by its place in the scenario.
    pub event: usize,
    /// The cut in drag area as a share.
    pub cda_cut: f64,
    /// What it may cost in critical power, W; `null` where nothing ties.
    pub allowed_w: Option<f64>,
    /// The same as a share.
    pub allowed_share: Option<f64>,
}

/// A published cost in power of a lower position.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PublishedCost {
    /// The key of the citation.
    pub source: &'static str,
    /// The mean, as a share of power or in watts.
    pub mean: f64,
    /// The standard deviation between riders.
    pub sd: f64,
    /// Whether it is a share of power; watts if not.
    pub is_share: bool,
    /// How many riders were tested.
    pub riders: u32,
    /// The cut in drag area that came with it, as a share; `null` where it is not published.
    pub cda_cut: Option<f64>,
}

/// What a lower position cost the riders of two studies.
fn published_costs() -> [PublishedCost; 2] {
    let lower_bars = PUBLISHED.lower_bars_power_cost;
    let low_torso = PUBLISHED.low_torso_cost_w;
    [
        PublishedCost {
            source: "polanco-2020",
            mean: lower_bars.mean,
            sd: lower_bars.sd,
            is_share: true,
            riders: PUBLISHED.lower_bars_riders,
            cda_cut: Some(PUBLISHED.lower_bars_cda_cut.mean),
        },
        PublishedCost {
            source: "faulkner-2021",
            mean: low_torso.mean,
            sd: low_torso.sd,
            is_share: false,
            riders: PUBLISHED.low_torso_riders,
            cda_cut: None,
        },
    ]
}

/// Cuts in drag area that a lowered torso may bring: those of `polanco-2020` give or take two standard deviations. That a torso
/// at 12° is among them is assumed.
fn is_cut_of_a_lowered_torso(cda_cut: f64) -> bool {
    let MeanAndSd { mean, sd } = PUBLISHED.lower_bars_cda_cut;
    (mean - 2.0 * sd..=mean + 2.0 * sd).contains(&cda_cut)
}

/// What is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Measured {
    /// One input, the whole of it: of a drag area the error that it shares with the others too.
    Input,
    /// The difference of two positions' drag areas, as one test of both gives it.
    Difference,
}

/// How much better the choice would be if something were measured exactly before it, all else as uncertain as it is.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Worth {
    /// What is measured.
    pub what: Measured,
    /// The paths in the request: of the input, or of both drag areas.
    pub fields: Vec<String>,
    /// How it is known; of two, the less sure.
    pub source: Known,
    /// Seconds that knowing it would save over all events on the mean, by choosing better.
    pub worth_s: f64,
    /// The same at each event.
    pub by_event_s: Vec<f64>,
}

/// What the draws say of one event.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CountedEvent {
    /// For each choice, the share of draws in which it is the fastest.
    pub win_share: Vec<f64>,
    /// Seconds that knowing everything would save on the mean, by choosing better.
    pub worth_of_all_s: f64,
}

/// What the draws say.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CountedDraws {
    /// How many draws there were.
    pub draws: u32,
    /// How many could not be ridden, and are left out of the rest.
    pub failed: u32,
    /// What they say of each event.
    pub events: Vec<CountedEvent>,
    /// What single measurements would be worth, the most first; none that is worth nothing.
    pub worth: Vec<Worth>,
    /// To go on from: `with.so_far` of the next request.
    pub tally: Tally,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// The choices.
    pub choices: Vec<PositionChoice>,
    /// The one that the others are compared with, by its place in `choices`.
    pub reference: usize,
    /// What they give at each event of the scenario. This and all else that is not of the draws is empty if they alone were
    /// asked for.
    pub events: Vec<AtDistance>,
    /// And at the distance asked for, where it can be ridden.
    pub reading: Option<AtDistance>,
    /// Where choices and the reference cross, by choice and then by distance.
    pub crossovers: Vec<Crossover>,
    /// What each position may cost before it loses against another: every pair as it is worn; those with the reference if
    /// there are very many, and then at the first events only.
    pub costs: Vec<PositionCost>,
    /// What lower bars than the reference's may cost.
    pub lower_bars: Vec<LowerBars>,
    /// What lower positions cost the riders of published tests.
    pub published: [PublishedCost; 2],
    /// The draws, if any were asked for.
    pub drawn: Option<CountedDraws>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves against distance: a row for each choice after the other.
#[derive(Clone, Debug, Default, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Distances, m, as far as every choice can be ridden.
    pub distance_m: Column,
    /// How much faster than the reference each choice is there, s; choice by choice.
    pub difference_s: Column,
    /// One standard deviation of that, s; choice by choice.
    pub difference_sd_s: Column,
    /// The difference as a share of the reference's time; choice by choice.
    pub difference_share: Column,
    /// One standard deviation of that; choice by choice.
    pub difference_sd_share: Column,
}

/// The most choices that are compared.
pub const MOST_CHOICES: usize = 24;
/// The distances that the curves span at least, m.
const CURVE_M: (f64, f64) = (5_000.0, 200_000.0);
/// Points of the curves: on a course of few segments, and of many.
const CURVE_POINTS: (usize, usize) = (33, 13);
/// Points at which the doubt of the curves is worked out.
const DOUBT_POINTS: (usize, usize) = (7, 4);
/// From so many segments on a course is one of many.
const MANY_SEGMENTS: usize = 60;
/// The most pairs of positions and events whose cost is worked out.
const MOST_COSTS: usize = 120;
/// The most pairs of positions whose difference is weighed as a measurement; of more, only those with the reference.
const MOST_DIFFERENCES: usize = 15;
/// The course of all choices and events together has at most about as many points: a second or so of work.
const MOST_POINTS_TOGETHER: usize = 6_000;
/// The most stretches that the draws of one request are taken over: a second or so of work.
const MOST_STRETCHES_DRAWN: f64 = 1e7;
/// Beyond this the power curve needs to know what long rides lose, s.
pub(super) const LONG_S: f64 = 3000.0;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or the event that cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    check_number(&fields::DRAWS, "with.draws", f64::from(with.draws))?;
    if let Some(distance_m) = with.distance_m {
        check_number(&fields::EVENT_DISTANCE_M, "with.distance_m", distance_m)?;
    }
    check_number(
        &fields::CDA_CORRELATION,
        "with.cda_correlation",
        with.cda_correlation,
    )?;
    let (rides, reference) = choices(&scenario, &with)?;
    warnings
        .extend(scenario.simplify_for(rides.len() * scenario.events.len(), MOST_POINTS_TOGETHER));
    let together = Together::new(&scenario, &rides, with.cda_correlation);
    let inquiry = Propagation::of_rides(&together.scenario, rides.clone(), &together.own());
    let setups = inquiry.base(|case| setups(case, &rides))?;
    let measurements = together.measurements(inquiry.inputs(), rides[reference].position);
    let mut board = Board {
        inquiry: &inquiry,
        rides: &rides,
        together: &together,
        measurements: &measurements,
        spots: Vec::new(),
    };

    for (event, at) in scenario.events.iter().enumerate() {
        for (choice, setup) in setups.iter().enumerate() {
            let spot =
                Spot::new(choice, setup, at.distance_m).map_err(|error| at_event(error, event))?;
            board.spots.push(spot);
        }
    }
    let count = rides.len();
    let shape = Shape {
        occasions: scenario.events.len(),
        choices: count,
        measurements: measurements.len(),
    };
    let drawn = match (with.draws, with.so_far) {
        (0, None) => None,
        (draws, so_far) => Some(board.counted(shape, reference, draws, with.seed, so_far)?),
    };
    let choices = rides
        .iter()
        .zip(&setups)
        .map(|(ride, setup)| choice(*ride, setup))
        .collect();
    if with.part == Wanted::Draws {
        return Ok(Answer::of_draws(choices, reference, drawn, warnings));
    }
    let reading_at = board.spots.len();
    let reading_m = with
        .distance_m
        .filter(|&distance_m| board.row(&setups, distance_m));
    let curve = Curve::new(&setups, &scenario, reference);
    let crossovers = curve.crossovers(&setups, reference);
    let doubts_at = board.spots.len();
    let doubt_points = if is_many(&setups) {
        DOUBT_POINTS.1
    } else {
        DOUBT_POINTS.0
    };
    let doubt_m: Vec<f64> = curve
        .span()
        .map_or(Vec::new(), |(from_m, to_m)| {
            spaced_log(from_m, to_m, doubt_points)
        })
        .into_iter()
        .filter(|&distance_m| board.row(&setups, distance_m))
        .collect();
    let crossed_at = board.spots.len();
    let crossovers: Vec<Crossing> = crossovers
        .into_iter()
        .filter(|crossing| board.pair(&setups, crossing, reference))
        .collect();
    let spread = board.moves()?;

    let over = |row: usize, distance_m: f64| {
        board.over(&spread, row, distance_m, reference, &setups, &scenario)
    };
    let events: Vec<AtDistance> = scenario
        .events
        .iter()
        .enumerate()
        .map(|(event, at)| over(event * count, at.distance_m))
        .collect();
    warnings.extend(long_ride_doubt(&setups, &board.spots));
    Ok(Answer {
        choices,
        reference,
        reading: reading_m.map(|distance_m| over(reading_at, distance_m)),
        crossovers: crossovers
            .iter()
            .enumerate()
            .map(|(i, crossing)| crossing.figure(&spread, crossed_at + 2 * i))
            .collect(),
        costs: costs(
            &scenario,
            &inquiry,
            &setups,
            &rides,
            reference,
            &board.spots,
            &spread,
        ),
        lower_bars: lower_bars(&scenario, &setups, reference, &board.spots),
        published: published_costs(),
        drawn,
        warnings,
        columns: curve.columns(&spread, doubts_at, &doubt_m, reference, count),
        events,
    })
}

impl Answer {
    fn of_draws(
        choices: Vec<PositionChoice>,
        reference: usize,
        drawn: Option<CountedDraws>,
        warnings: Vec<Warning>,
    ) -> Self {
        Self {
            choices,
            reference,
            events: Vec::new(),
            reading: None,
            crossovers: Vec::new(),
            costs: Vec::new(),
            lower_bars: Vec::new(),
            published: published_costs(),
            drawn,
            warnings,
            columns: Columns::default(),
        }
    }
}

/// The choices in the order of the scenario, and which of them is the reference.
fn choices(scenario: &Scenario, with: &With) -> Result<(Vec<Ridden>, usize), Error> {
    let all: Vec<usize> = (0..scenario.positions.len()).collect();
    let named = if with.positions.is_empty() {
        &all
    } else {
        &with.positions
    };
    let mut rides: Vec<Ridden> = Vec::new();
    for (i, &index) in named.iter().enumerate() {
        let position = position_index(scenario, index, &format!("with.positions[{i}]"))?;
        if named[..i].contains(&position) {
            let message = format!("with.positions names position {position} twice.");
            return Err(Error::new(
                Kind::Conflict,
                format!("with.positions[{i}]"),
                message,
            ));
        }
        let pieces = scenario
            .positions
            .get(position)
            .map_or(0, |position| position.equipment.len());
        if with.equipment {
            rides.push(Ridden {
                position,
                worn: None,
            });
            rides.extend((0..pieces).map(|worn| Ridden {
                position,
                worn: Some(worn),
            }));
        } else {
            rides.extend(scenario.as_worn(&[position]));
        }
        if rides.len() > MOST_CHOICES {
            let message = format!(
                "There are more than {MOST_CHOICES} choices: name fewer positions to compare."
            );
            return Err(Error::new(Kind::TooLarge, "with.positions", message));
        }
    }
    let reference = match with.reference {
        Some(reference) => position_index(scenario, reference, "with.reference")?,
        None if rides
            .iter()
            .any(|ride| ride.position == scenario.riding_position) =>
        {
            scenario.riding_position
        }
        None => rides.first().map_or(0, |ride| ride.position),
    };
    let place = scenario
        .as_worn(&[reference])
        .first()
        .and_then(|worn| rides.iter().position(|ride| ride == worn))
        .ok_or_else(|| {
            Error::new(
                Kind::Conflict,
                "with.reference",
                "with.reference is not among with.positions.",
            )
        })?;
    Ok((rides, place))
}

fn setups(case: &Case<'_>, rides: &[Ridden]) -> Result<Vec<Setup>, Error> {
    rides.iter().map(|&ride| case.setup_in(ride)).collect()
}

fn is_many(setups: &[Setup]) -> bool {
    setups
        .first()
        .is_some_and(|setup| setup.course.segments.len() > MANY_SEGMENTS)
}

fn choice(ride: Ridden, setup: &Setup) -> PositionChoice {
    let Ridden { position, worn } = ride;
    PositionChoice {
        position,
        worn,
        cda_m2: setup.position.cda_m2,
        cp_w: setup.power.cp_w,
    }
}

/// What cannot be ridden, named at the event.
fn at_event(error: Error, event: usize) -> Error {
    let field = format!("scenario.events[{event}].distance_m");
    let message = format!("{} This is at event {}.", error.message, event + 1);
    Error {
        field,
        message,
        ..error
    }
}

/// The course of a setup at another length.
fn at_length(setup: &Setup, distance_m: f64) -> Setup {
    Setup {
        course: Rc::new(setup.course.scaled_to(distance_m)),
        ..setup.clone()
    }
}

/// The best even effort over a distance, followed to the line: two rides are enough where about its time is known.
fn followed(setup: &Setup, distance_m: f64, about_s: f64, accuracy: f64) -> Result<Paced, Error> {
    let there = at_length(setup, distance_m);
    even_within(
        &Integrated,
        &there,
        there.power.sustainable_w(about_s.max(1.0)),
        accuracy,
    )
    .map_err(no_effort)
}

/// About the time of a distance before any ride is known, s.
fn about_s(distance_m: f64) -> f64 {
    distance_m / 11.0
}

/// How time grows with distance, about: a guess to begin with.
const TIME_BY_DISTANCE: f64 = 1.03;
/// Relative accuracy of the curves' times, a thousandth of a second in some hours.
const CURVE_ACCURACY: f64 = 1e-7;

/// A choice over a distance: its ride followed to the line, and what finds rides near it.
struct Spot {
    choice: usize,
    distance_m: f64,
    course: Rc<Course>,
    ride: Paced,
    known: KnownEffort,
    time_model: QuasiSteady,
    /// What the followed ride takes more than the one of steady speeds, s.
    left_out_s: f64,
    /// About how many pieces the ride of steady speeds is made of.
    pieces: f64,
}

impl Spot {
    fn new(choice: usize, setup: &Setup, distance_m: f64) -> Result<Self, Error> {
        let there = at_length(setup, distance_m);
        let ride = followed(setup, distance_m, about_s(distance_m), TIME_ACCURACY)?;
        let time_model = QuasiSteady::default();
        let known = KnownEffort::new(&time_model, &there, ride.power_w).map_err(no_effort)?;
        let left_out_s = ride.time_s - known.time_s(&time_model, &there).map_err(no_effort)?;
        let fades = if there.position.fade.is_some() {
            distance_m / PIECE_M
        } else {
            0.0
        };
        let pieces = there.course.segments.len() as f64 + fades;
        Ok(Self {
            choice,
            distance_m,
            course: there.course,
            ride,
            known,
            time_model,
            left_out_s,
            pieces,
        })
    }
}

/// The part of the drag areas' doubt that is common to all positions, kept apart from what is each one's own.
struct Together {
    /// The scenario, its drag areas with their own part of the doubt.
    scenario: Scenario,
    /// How far one standard deviation of the common part moves each position's drag areas, m².
    moves_m2: Vec<f64>,
}

impl Together {
    fn new(scenario: &Scenario, rides: &[Ridden], correlation: f64) -> Self {
        let mut own = scenario.clone();
        let mut moves_m2 = vec![0.0; own.positions.len()];
        for (i, position) in own.positions.iter_mut().enumerate() {
            // What is exact stays so, and a position that is not compared has no part in this.
            if rides.iter().any(|ride| ride.position == i) {
                moves_m2[i] = correlation.sqrt() * position.cda_m2.sd;
                position.cda_m2.sd *= (1.0 - correlation).sqrt();
            }
        }
        Self {
            scenario: own,
            moves_m2,
        }
    }

    /// As an input of the question's own, in standard deviations.
    fn own(&self) -> Vec<(&'static str, Quantity, &'static fields::Field)> {
        let uncertain = self.moves_m2.iter().any(|&moves| moves > 0.0);
        let common = Quantity {
            value: 0.0,
            sd: 1.0,
            source: Known::Estimated,
        };
        if uncertain {
            vec![("with.cda_correlation", common, &fields::COMMON_ERROR)]
        } else {
            Vec::new()
        }
    }

    /// What could be measured: every input of the scenario, a drag area with its common and its own part, and the difference of
    /// every two drag areas.
    fn measurements(&self, inputs: &[Input], reference: usize) -> Vec<Measurement> {
        let cda_of = |position: usize| format!("scenario.positions[{position}].cda_m2");
        // How far the errors of a position's drag area move it, the common one first.
        let moves = |place: usize, position: usize| {
            [
                (0, self.moves_m2[position]),
                (place, inputs[place].uncertain.sd),
            ]
        };
        let mut areas: Vec<(usize, usize)> = Vec::new();
        let mut found: Vec<Measurement> = Vec::new();
        for (place, input) in inputs.iter().enumerate() {
            // The common part of all drag areas cannot be measured by itself.
            if !input.path.starts_with("scenario.") {
                continue;
            }
            let position =
                (0..self.moves_m2.len()).find(|&position| input.path == cda_of(position));
            areas.extend(position.map(|position| (place, position)));
            let direction = match position {
                Some(position) => {
                    Direction::new(&moves(place, position)).unwrap_or(Direction::of(place))
                }
                None => Direction::of(place),
            };
            found.push(Measurement {
                what: Measured::Input,
                fields: vec![input.path.clone()],
                source: input.known,
                direction,
            });
        }
        let many = areas.len() * areas.len().saturating_sub(1) / 2 > MOST_DIFFERENCES;
        for (i, &(place, position)) in areas.iter().enumerate() {
            for &(other_place, other) in &areas[i + 1..] {
                if many && position != reference && other != reference {
                    continue;
                }
                let ([common, own], [other_common, other_own]) =
                    (moves(place, position), moves(other_place, other));
                let apart = [
                    (0, common.1 - other_common.1),
                    own,
                    (other_own.0, -other_own.1),
                ];
                found.extend(Direction::new(&apart).map(|direction| Measurement {
                    what: Measured::Difference,
                    fields: vec![cda_of(position), cda_of(other)],
                    source: less_sure(inputs[place].known, inputs[other_place].known),
                    direction,
                }));
            }
        }
        found
    }

    /// Sensitivities every drag area of every position by the common error of a case.
    fn shift(&self, case: &Case<'_>, rides: &[Ridden], setups: &mut [Setup]) {
        let Some(&error) = case.own.first() else {
            return;
        };
        for (ride, setup) in rides.iter().zip(setups) {
            let by_m2 = error * self.moves_m2.get(ride.position).copied().unwrap_or(0.0);
            let factor = within(
                setup.position.cda_m2 + by_m2,
                fields::CDA_M2.min,
                fields::CDA_M2.max,
            ) / setup.position.cda_m2;
            if factor != 1.0 {
                setup.position = with_cda(&setup.position, factor);
            }
        }
    }
}

/// Something that could be measured before choosing.
struct Measurement {
    what: Measured,
    fields: Vec<String>,
    source: Known,
    direction: Direction,
}

fn less_sure(one: Known, other: Known) -> Known {
    let either = |known: Known| one == known || other == known;
    [Known::Typical, Known::Estimated]
        .into_iter()
        .find(|&known| either(known))
        .unwrap_or(Known::Measured)
}

/// The rides that are compared.
struct Board<'a> {
    inquiry: &'a Propagation<'a>,
    rides: &'a [Ridden],
    together: &'a Together,
    measurements: &'a [Measurement],
    spots: Vec<Spot>,
}

/// The choices at the values of all inputs, and their times: an input of one position leaves the others there.
struct AtRest {
    setups: Vec<Setup>,
    times_s: Vec<f64>,
}

impl Board<'_> {
    /// Adds every choice over a distance; adds none where one of them cannot be ridden.
    fn row(&mut self, setups: &[Setup], distance_m: f64) -> bool {
        let row: Result<Vec<Spot>, Error> = setups
            .iter()
            .enumerate()
            .map(|(choice, setup)| Spot::new(choice, setup, distance_m))
            .collect();
        row.map(|row| self.spots.extend(row)).is_ok()
    }

    /// Adds the reference and the choice where they cross.
    fn pair(&mut self, setups: &[Setup], crossing: &Crossing, reference: usize) -> bool {
        let pair: Option<Vec<Spot>> = [reference, crossing.choice]
            .into_iter()
            .map(|choice| Spot::new(choice, setups.get(choice)?, crossing.distance_m).ok())
            .collect();
        pair.map(|pair| self.spots.extend(pair)).is_some()
    }

    /// Every choice in a case.
    fn setups(&self, case: &Case<'_>) -> Result<Vec<Setup>, Error> {
        let mut setups = setups(case, self.rides)?;
        self.together.shift(case, self.rides, &mut setups);
        Ok(setups)
    }

    /// Finish times of every spot, by steady speeds; of choices that are as they were at rest the times are known.
    fn times_s(
        &self,
        case: &Case<'_>,
        mut setups: Vec<Setup>,
        at_rest: Option<&AtRest>,
    ) -> Result<Vec<f64>, Error> {
        let course_moves = self.inquiry.course_moves();
        let at_rest = at_rest.filter(|_| !course_moves);
        let resting = |(choice, setup): (usize, &Setup)| {
            at_rest.filter(|rest| rest.setups.get(choice) == Some(setup))
        };
        let known: Vec<Option<&AtRest>> = setups.iter().enumerate().map(resting).collect();
        let time_s = |(i, spot): (usize, &Spot)| {
            if let Some(rest) = known.get(spot.choice).copied().flatten() {
                return Ok(rest.times_s[i]);
            }
            let setup = setups
                .get_mut(spot.choice)
                .ok_or_else(|| Error::impossible("", "There is no such choice."))?;
            setup.course = match course_moves {
                true => Rc::new(case.course().scaled_to(spot.distance_m)),
                false => Rc::clone(&spot.course),
            };
            spot.known
                .time_s(&spot.time_model, setup)
                .map_err(no_effort)
        };
        self.spots.iter().enumerate().map(time_s).collect()
    }

    /// How the inputs move every spot's finish time: the values followed, their moves by steady speeds.
    fn moves(&self) -> Result<Sensitivities, Error> {
        let mut moved = self.together.scenario.clone();
        let mut at_rest: Option<AtRest> = None;
        let mut times_s = |values: &[f64]| {
            self.inquiry.at(&mut moved, values, |case| {
                let setups = self.setups(case)?;
                if at_rest.is_some() {
                    return self.times_s(case, setups, at_rest.as_ref());
                }
                let times_s = self.times_s(case, setups.clone(), None)?;
                at_rest = Some(AtRest {
                    setups,
                    times_s: times_s.clone(),
                });
                Ok(times_s)
            })
        };
        let spread = moves(&self.inquiry.uncertain_inputs(), &mut times_s)?;
        Ok(Sensitivities {
            base: self.spots.iter().map(|spot| spot.ride.time_s).collect(),
            ..spread
        })
    }

    /// Draws of every choice at every event, added to those so far. Each draw has a seed of its own, so that draws in parts are
    /// the draws at once. Where the course has very many stretches fewer are taken than asked for, and the answer says so.
    fn counted(
        &self,
        shape: Shape,
        reference: usize,
        draws: u32,
        seed: u32,
        so_far: Option<Tally>,
    ) -> Result<CountedDraws, Error> {
        let mut tally = so_far.unwrap_or_else(|| Tally::new(shape));
        if !tally.fits(shape) {
            let message = "with.so_far does not belong to these choices, events and numbers.";
            return Err(Error::new(Kind::Conflict, "with.so_far", message));
        }
        let inputs = self.inquiry.uncertain_inputs();
        let (mut errors, mut values) = (vec![0.0; inputs.len()], vec![0.0; inputs.len()]);
        let mut moved = self.together.scenario.clone();
        let mut gains = vec![0.0; self.spots.len()];
        let mut measured = vec![0.0; self.measurements.len()];
        for _ in 0..draws.min(self.most_draws()) {
            draw_errors(
                &inputs,
                &mut Normal::new(seed_of(seed, tally.draws)),
                &mut errors,
            );
            with_errors(&inputs, &errors, &mut values);
            let drawn = self.inquiry.at(&mut moved, &values, |case| {
                self.times_s(case, self.setups(case)?, None)
            });
            let ridden = drawn.is_ok_and(|times_s| {
                self.gains(&times_s, shape.choices, reference, &mut gains);
                true
            });
            for (error, measurement) in measured.iter_mut().zip(self.measurements) {
                *error = measurement.direction.error(&errors);
            }
            tally.add(shape, &measured, ridden.then_some(&gains[..]));
        }
        Ok(self.told(shape, tally))
    }

    fn gains(&self, times_s: &[f64], choices: usize, reference: usize, gains: &mut [f64]) {
        let time_s = |i: usize| times_s[i] + self.spots[i].left_out_s;
        for (i, gain) in gains.iter_mut().enumerate() {
            *gain = time_s(i - i % choices + reference) - time_s(i);
        }
    }

    fn told(&self, shape: Shape, tally: Tally) -> CountedDraws {
        let events = (0..shape.occasions)
            .map(|event| CountedEvent {
                win_share: tally.win_shares(shape, event),
                worth_of_all_s: tally.worth_of_all(shape, event),
            })
            .collect();
        let mut worth: Vec<Worth> = Vec::new();
        for (
            i,
            Measurement {
                what,
                fields,
                source,
                ..
            },
        ) in self.measurements.iter().enumerate()
        {
            let by_event_s: Vec<f64> = (0..shape.occasions)
                .map(|event| tally.worth_of(shape, event, i))
                .collect();
            let worth_s: f64 = by_event_s.iter().sum();
            if worth_s > 0.0 {
                let at = worth.partition_point(|more| more.worth_s >= worth_s);
                worth.insert(
                    at,
                    Worth {
                        what: *what,
                        fields: fields.clone(),
                        source: *source,
                        worth_s,
                        by_event_s,
                    },
                );
            }
        }
        CountedDraws {
            draws: tally.draws,
            failed: tally.failed,
            events,
            worth,
            tally,
        }
    }

    fn most_draws(&self) -> u32 {
        let pieces: f64 = self.spots.iter().map(|spot| spot.pieces).sum();
        (MOST_STRETCHES_DRAWN / pieces).max(1.0) as u32
    }

    /// The row of spots that begins at `row`, as the answer tells it.
    fn over(
        &self,
        spread: &Sensitivities,
        row: usize,
        distance_m: f64,
        reference: usize,
        setups: &[Setup],
        scenario: &Scenario,
    ) -> AtDistance {
        let model = scenario.model_error_share.value;
        let times: Vec<ChoiceTime> = setups
            .iter()
            .enumerate()
            .map(|(choice, setup)| {
                let ride = self.spots[row + choice].ride;
                let time = Figure {
                    value: ride.time_s,
                    sd: sd(spread, |moved| moved[row + choice]),
                };
                ChoiceTime {
                    time_s: with_model_error(time, model),
                    difference_s: difference(spread, row + reference, row + choice),
                    power_w: ride.power_w,
                    mean_cda_m2: setup.position.mean_cda_m2(ride.time_s),
                }
            })
            .collect();
        let fastest = |but: Option<usize>| {
            let others = times
                .iter()
                .enumerate()
                .filter(|(choice, _)| Some(*choice) != but);
            others
                .min_by(|a, b| a.1.time_s.value.total_cmp(&b.1.time_s.value))
                .map(|(choice, _)| choice)
        };
        let best = fastest(None).unwrap_or(reference);
        let ahead_s = fastest(Some(best)).map(|next| difference(spread, row + next, row + best));
        AtDistance {
            distance_m,
            best,
            ahead_s,
            times,
        }
    }
}

/// A seed for each draw; odd factors with well-mixed bits keep neighbouring draws apart.
fn seed_of(seed: u32, draw: u32) -> u64 {
    u64::from(seed).wrapping_mul(0x9E37_79B9_7F4A_7C15)
        ^ u64::from(draw).wrapping_mul(0xD1B5_4A32_D192_ED03)
}

fn sd(spread: &Sensitivities, output: impl Fn(&[f64]) -> f64) -> f64 {
    spread
        .by_input
        .iter()
        .map(|moved| output(moved).powi(2))
        .sum::<f64>()
        .sqrt()
}

/// How much faster the second of two spots is.
fn difference(spread: &Sensitivities, first: usize, second: usize) -> Figure {
    Figure {
        value: spread.base[first] - spread.base[second],
        sd: sd(spread, |moved| moved[first] - moved[second]),
    }
}

/// Finish times of every choice against distance.
struct Curve {
    distances_m: Vec<f64>,
    /// A row of choices for each distance.
    times_s: Vec<Vec<f64>>,
}

/// Where a choice and the reference are equally fast.
struct Crossing {
    choice: usize,
    distance_m: f64,
    /// How the choice's lead grows with distance there, s/m.
    slope_s_per_m: f64,
}

impl Curve {
    fn new(setups: &[Setup], scenario: &Scenario, reference: usize) -> Self {
        let points = if is_many(setups) {
            CURVE_POINTS.1
        } else {
            CURVE_POINTS.0
        };
        let events = || scenario.events.iter().map(|event| event.distance_m);
        let (shortest, longest) = (
            events().fold(CURVE_M.0, f64::min),
            events().fold(CURVE_M.1, f64::max),
        );
        let mut curve = Self {
            distances_m: Vec::new(),
            times_s: Vec::new(),
        };
        if setups.get(reference).is_none() {
            return curve;
        }
        for distance_m in spaced_log(shortest, longest, points) {
            let about_s = |choice: usize| match (curve.distances_m.last(), curve.times_s.last()) {
                (Some(before_m), Some(before_s)) => {
                    before_s[choice] * (distance_m / before_m).powf(TIME_BY_DISTANCE)
                }
                _ => about_s(distance_m),
            };
            let ridden = |(choice, setup)| {
                followed(setup, distance_m, about_s(choice), CURVE_ACCURACY).map(|ride| ride.time_s)
            };
            let times_s: Result<Vec<f64>, Error> = setups.iter().enumerate().map(ridden).collect();
            let Ok(times_s) = times_s else { break };
            curve.distances_m.push(distance_m);
            curve.times_s.push(times_s);
        }
        curve
    }

    fn span(&self) -> Option<(f64, f64)> {
        Some((*self.distances_m.first()?, *self.distances_m.last()?))
    }

    fn crossovers(&self, setups: &[Setup], reference: usize) -> Vec<Crossing> {
        let Some(kept) = setups.get(reference) else {
            return Vec::new();
        };
        let mut crossings = Vec::new();
        for (choice, setup) in setups.iter().enumerate() {
            let leads: Vec<f64> = self
                .times_s
                .iter()
                .map(|row| row[reference] - row[choice])
                .collect();
            for (i, (ends_m, ends_s)) in self
                .distances_m
                .windows(2)
                .zip(leads.windows(2))
                .enumerate()
            {
                if ends_s[0] * ends_s[1] >= 0.0 {
                    continue;
                }
                let lead_s = |ln_m: f64| {
                    let distance_m = ln_m.exp();
                    let about_s = self.times_s[i][reference]
                        * (distance_m / ends_m[0]).powf(TIME_BY_DISTANCE);
                    let time_s = |setup| {
                        followed(setup, distance_m, about_s, TIME_ACCURACY).map(|ride| ride.time_s)
                    };
                    time_s(kept)
                        .and_then(|kept_s| Ok(kept_s - time_s(setup)?))
                        .unwrap_or(f64::NAN)
                };
                // Where the curve is so near to nought that its accuracy counts, its end is the crossing.
                let nearer_m = if ends_s[0].abs() < ends_s[1].abs() {
                    ends_m[0]
                } else {
                    ends_m[1]
                };
                let ln_m = root(lead_s, ends_m[0].ln(), ends_m[1].ln(), 1e-11)
                    .unwrap_or_else(|_| nearer_m.ln());
                const MOVED: f64 = 0.005;
                let distance_m = ln_m.exp();
                let slope_s_per_m =
                    (lead_s(ln_m + MOVED) - lead_s(ln_m - MOVED)) / (2.0 * MOVED * distance_m);
                if slope_s_per_m.is_finite() && slope_s_per_m != 0.0 {
                    crossings.push(Crossing {
                        choice,
                        distance_m,
                        slope_s_per_m,
                    });
                }
            }
        }
        crossings
    }

    fn columns(
        self,
        spread: &Sensitivities,
        doubts_at: usize,
        doubt_m: &[f64],
        reference: usize,
        count: usize,
    ) -> Columns {
        let mut columns = Columns::default();
        for choice in 0..count {
            let doubts: Vec<(f64, f64)> = doubt_m
                .iter()
                .enumerate()
                .map(|(i, distance_m)| {
                    let row = doubts_at + i * count;
                    (
                        distance_m.ln(),
                        difference(spread, row + reference, row + choice).sd,
                    )
                })
                .collect();
            for (distance_m, times_s) in self.distances_m.iter().zip(&self.times_s) {
                let (lead_s, sd_s) = (
                    times_s[reference] - times_s[choice],
                    interpolate(&doubts, distance_m.ln()).unwrap_or(0.0),
                );
                columns.difference_s.0.push(lead_s);
                columns.difference_sd_s.0.push(sd_s);
                columns.difference_share.0.push(lead_s / times_s[reference]);
                columns
                    .difference_sd_share
                    .0
                    .push(sd_s / times_s[reference]);
            }
        }
        columns.distance_m = self.distances_m.into();
        columns
    }
}

impl Crossing {
    fn figure(&self, spread: &Sensitivities, pair: usize) -> Crossover {
        let lead = difference(spread, pair, pair + 1);
        let distance_m = Figure {
            value: self.distance_m,
            sd: lead.sd / self.slope_s_per_m.abs(),
        };
        Crossover {
            choice: self.choice,
            distance_m,
            faster_beyond: self.slope_s_per_m > 0.0,
        }
    }
}

/// The position with the smaller drag area over an event, the other, and by what share it is smaller when fresh and without
/// equipment.
struct Pair {
    choice: usize,
    against: usize,
    cda_cut: f64,
}

/// What every pair of positions may cost, as they are worn.
fn costs(
    scenario: &Scenario,
    inquiry: &Propagation<'_>,
    setups: &[Setup],
    rides: &[Ridden],
    reference: usize,
    spots: &[Spot],
    spread: &Sensitivities,
) -> Vec<PositionCost> {
    let worn: Vec<usize> = (0..rides.len())
        .filter(|&choice| {
            rides
                .get(choice)
                .is_some_and(|ride| scenario.as_worn(&[ride.position]).contains(ride))
        })
        .collect();
    let others = worn.len().saturating_sub(1);
    let many = worn.len() * others / 2 * scenario.events.len() > MOST_COSTS;
    // Of very many positions even those pairs are too many: then only the first events have theirs.
    let most_events = if many {
        MOST_COSTS / others.max(1)
    } else {
        MOST_COSTS
    };
    let mut costs = Vec::new();
    for (i, &one) in worn.iter().enumerate() {
        for &other in &worn[..i] {
            if many && one != reference && other != reference {
                continue;
            }
            for event in 0..scenario.events.len().min(most_events) {
                let row = event * setups.len();
                let mean_m2 = |choice: usize| {
                    setups[choice]
                        .position
                        .mean_cda_m2(spots[row + choice].ride.time_s)
                };
                let (choice, against) = if mean_m2(one) < mean_m2(other) {
                    (one, other)
                } else {
                    (other, one)
                };
                let fresh_m2 =
                    |choice: usize| scenario.positions[rides[choice].position].cda_m2.value;
                let cda_cut = 1.0 - fresh_m2(choice) / fresh_m2(against);
                let pair = Pair {
                    choice,
                    against,
                    cda_cut,
                };
                costs.push(cost(inquiry, setups, rides, spots, spread, row, pair));
            }
        }
    }
    costs
}

fn cost(
    inquiry: &Propagation<'_>,
    setups: &[Setup],
    rides: &[Ridden],
    spots: &[Spot],
    spread: &Sensitivities,
    row: usize,
    Pair {
        choice,
        against,
        cda_cut,
    }: Pair,
) -> PositionCost {
    let there = at_length(&setups[choice], spots[row].distance_m);
    let (cp_w, other_cp_w) = (there.power.cp_w, setups[against].power.cp_w);
    let allowed = tie_factor(
        &there,
        spots[row + against].ride.time_s,
        spots[row + choice].ride.power_w,
    )
    .map(|factor| {
        let own = format!("scenario.positions[{}].", rides[choice].position);
        let is_own_power = |path: &str| path.strip_prefix(&own).is_some_and(is_power);
        let moved = spread
            .by_input
            .iter()
            .zip(inquiry.inputs())
            .filter(|(_, input)| !is_own_power(&input.path));
        let apart_s = moved
            .map(|(moved, _)| (moved[row + choice] - moved[row + against]).powi(2))
            .sum::<f64>()
            .sqrt();
        Figure {
            value: other_cp_w - factor * cp_w,
            sd: apart_s / seconds_per_watt(&there, factor),
        }
    });
    let allowed_share = allowed.map(|allowed_w| allowed_w.value / other_cp_w);
    let scale = cda_cut / PUBLISHED.lower_bars_cda_cut.mean;
    let polanco_cost = (scale > 0.0).then_some(Figure {
        value: scale * PUBLISHED.lower_bars_power_cost.mean,
        sd: scale * PUBLISHED.lower_bars_power_cost.sd,
    });
    PositionCost {
        choice,
        against,
        event: row / setups.len(),
        allowed_w: allowed.filter(|figure| figure.sd.is_finite()),
        allowed_share,
        now_w: other_cp_w - cp_w,
        cda_cut,
        polanco_cost,
        polanco_share: polanco_cost.zip(allowed_share).map(|(cost, share)| {
            predicted_share(share, cost.value, cost.sd, PUBLISHED.lower_bars_riders)
        }),
        faulkner_share: allowed
            .filter(|_| is_cut_of_a_lowered_torso(cda_cut))
            .map(|watts| {
                let MeanAndSd { mean, sd } = PUBLISHED.low_torso_cost_w;
                predicted_share(watts.value, mean, sd, PUBLISHED.low_torso_riders)
            }),
    }
}

/// Whether a position's input says what it costs in power.
fn is_power(name: &str) -> bool {
    name.starts_with("cp_factor")
        || name.starts_with("w_prime_factor")
        || name.starts_with("power.")
}

/// The factor on critical power, peak and long-ride loss with which the best even effort of a setup takes a given time; its W′
/// stays.
///
/// The power for the time, then the root of `sustainable power at that time − it`, both to 1e-11.
fn tie_factor(setup: &Setup, time_s: f64, guess_w: f64) -> Option<f64> {
    const FACTORS: (f64, f64) = (0.01, 20.0);
    let power_w = power_for_time_from_w(&Integrated, setup, time_s, guess_w).ok()?;
    let excess = |factor: f64| setup.power.scaled(factor, 1.0).sustainable_w(time_s) - power_w;
    root(excess, FACTORS.0, FACTORS.1, 1e-12).ok()
}

/// Seconds that one watt of critical power saves, by central differences.
fn seconds_per_watt(setup: &Setup, factor: f64) -> f64 {
    const MOVED: f64 = 0.005;
    let time_s = |by: f64| {
        let moved = Setup {
            power: setup.power.scaled(factor * by, 1.0),
            ..setup.clone()
        };
        even_from(&Integrated, &moved, moved.power.cp_w).map_or(f64::NAN, |ride| ride.time_s)
    };
    (time_s(1.0 - MOVED) - time_s(1.0 + MOVED)) / (2.0 * MOVED * factor * setup.power.cp_w)
}

fn lower_bars(
    scenario: &Scenario,
    setups: &[Setup],
    reference: usize,
    spots: &[Spot],
) -> Vec<LowerBars> {
    let Some(kept) = setups.get(reference) else {
        return Vec::new();
    };
    let MeanAndSd { mean: cut, sd } = PUBLISHED.lower_bars_cda_cut;
    let cuts = [cut - sd, cut, cut + sd];
    let over = |(event, distance_m): (usize, f64)| {
        cuts.map(|cda_cut| {
            let position = with_cda(&kept.position, 1.0 - cda_cut);
            let lower = Setup {
                position,
                ..at_length(kept, distance_m)
            };
            let Paced { power_w, time_s } = spots[event * setups.len() + reference].ride;
            let allowed_share =
                tie_factor(&lower, time_s, power_w * (1.0 - cda_cut)).map(|factor| 1.0 - factor);
            let allowed_w = allowed_share.map(|share| share * kept.power.cp_w);
            LowerBars {
                event,
                cda_cut,
                allowed_w,
                allowed_share,
            }
        })
    };
    scenario
        .events
        .iter()
        .map(|event| event.distance_m)
        .enumerate()
        .flat_map(over)
        .collect()
}

/// Every drag area of a position by a factor.
fn with_cda(position: &Position, factor: f64) -> Position {
    Position {
        cda_m2: factor * position.cda_m2,
        fade: position.fade.map(|fade| Fade {
            tired_cda_m2: factor * fade.tired_cda_m2,
            ..fade
        }),
        lapses: position.lapses.map(|lapses| Lapses {
            cda_m2: factor * lapses.cda_m2,
            ..lapses
        }),
        ..position.clone()
    }
}

fn long_ride_doubt(setups: &[Setup], spots: &[Spot]) -> Option<Warning> {
    let overstated = |spot: &&Spot| {
        spot.ride.time_s > LONG_S
            && setups
                .get(spot.choice)
                .is_some_and(|setup| setup.power.long_ride.is_none())
    };
    spots.iter().find(overstated).map(|_| hour_overstated())
}

/// What is said of rides longer than [`LONG_S`] where the power curve has no long-ride loss.
pub(super) fn hour_overstated() -> Warning {
    let message = "Without a long-ride loss the power curve overstates what can be held for an hour, by 5 % or more.";
    Warning::new(
        "scenario.power.long_ride_loss_w",
        "hour_overstated",
        message,
    )
}
