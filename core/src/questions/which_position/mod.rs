//! Which position for which distance?

use serde::{Deserialize, Serialize};

use super::request::{Request, check_number};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::published::{MeanAndSd, PUBLISHED};
use crate::inputs::quantity::{Column, Figure, Known};
use crate::numerics::distributions::predicted_share;
use crate::numerics::solve::{interpolate, spaced_log};
use crate::riding::crossovers::{Crossing, TimesByDistance, is_many};
use crate::riding::effort::Paced;
use crate::riding::integrated::Setup;
use crate::riding::known_ride::{KnownRide, at_length};
use crate::riding::tie::{seconds_per_watt, tie_factor};
use crate::scenario::comparison::{Comparison, setups};
use crate::scenario::long_ride_doubt::overstated_hour;
use crate::scenario::propagation::{Propagation, with_model_error};
use crate::scenario::ride_errors::no_effort;
pub use crate::scenario::shared_drag_error::Measured;
use crate::scenario::shared_drag_error::{Measurement, SharedDragError};
use crate::scenario::{Ridden, Scenario, position_index};
use crate::uncertainty::draws::Sensitivities;
use crate::uncertainty::value_of_information::{Shape, Tally};

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
/// Points at which the doubt of the curves is worked out.
const DOUBT_POINTS: (usize, usize) = (7, 4);
/// The most pairs of positions and events whose cost is worked out.
const MOST_COSTS: usize = 120;
/// The course of all choices and events together has at most about as many points: a second or so of work.
const MOST_POINTS_TOGETHER: usize = 6_000;

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
    let shared_error = SharedDragError::new(&scenario, &rides, with.cda_correlation);
    let propagation =
        Propagation::of_rides(&shared_error.scenario, rides.clone(), &shared_error.own());
    let setups = propagation.base(|case| setups(case, &rides))?;
    let measurements = shared_error.measurements(propagation.inputs(), rides[reference].position);
    let mut comparison = Comparison {
        propagation: &propagation,
        rides: &rides,
        shared_error: &shared_error,
        measurements: &measurements,
        known_rides: Vec::new(),
    };

    for (event, at) in scenario.events.iter().enumerate() {
        for (choice, setup) in setups.iter().enumerate() {
            let known = KnownRide::new(choice, setup, at.distance_m)
                .map_err(|reason| at_event(no_effort(reason), event))?;
            comparison.known_rides.push(known);
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
        (draws, so_far) => {
            let tally = comparison.counted(shape, reference, draws, with.seed, so_far)?;
            Some(comparison.counted_draws(shape, tally))
        }
    };
    let choices = rides
        .iter()
        .zip(&setups)
        .map(|(ride, setup)| choice(*ride, setup))
        .collect();
    if with.part == Wanted::Draws {
        return Ok(Answer::of_draws(choices, reference, drawn, warnings));
    }
    let reading_at = comparison.known_rides.len();
    let reading_m = with
        .distance_m
        .filter(|&distance_m| comparison.row(&setups, distance_m));
    let events_m: Vec<f64> = scenario
        .events
        .iter()
        .map(|event| event.distance_m)
        .collect();
    let curve = TimesByDistance::new(&setups, &events_m, reference);
    let crossovers = curve.crossovers(&setups, reference);
    let doubts_at = comparison.known_rides.len();
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
        .filter(|&distance_m| comparison.row(&setups, distance_m))
        .collect();
    let crossed_at = comparison.known_rides.len();
    let crossovers: Vec<Crossing> = crossovers
        .into_iter()
        .filter(|crossing| comparison.pair(&setups, crossing, reference))
        .collect();
    let spread = comparison.moves()?;

    let over = |row: usize, distance_m: f64| {
        comparison.over(&spread, row, distance_m, reference, &setups, &scenario)
    };
    let events: Vec<AtDistance> = scenario
        .events
        .iter()
        .enumerate()
        .map(|(event, at)| over(event * count, at.distance_m))
        .collect();
    warnings.extend(long_ride_doubt(&setups, &comparison.known_rides));
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
            &propagation,
            &setups,
            &rides,
            reference,
            &comparison.known_rides,
            &spread,
        ),
        lower_bars: lower_bars(&scenario, &setups, reference, &comparison.known_rides),
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
            let message = message::position_twice(position);
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
            let message = message::too_many_choices(MOST_CHOICES);
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
                message::reference_left_out(),
            )
        })?;
    Ok((rides, place))
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
    Error {
        field,
        message: message::at_event(error.message, event + 1),
        ..error
    }
}

impl Comparison<'_> {
    fn counted_draws(&self, shape: Shape, tally: Tally) -> CountedDraws {
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

    /// The row of known_rides that begins at `row`, as the answer tells it.
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
                let ride = self.known_rides[row + choice].ride;
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

fn sd(spread: &Sensitivities, output: impl Fn(&[f64]) -> f64) -> f64 {
    spread
        .by_input
        .iter()
        .map(|moved| output(moved).powi(2))
        .sum::<f64>()
        .sqrt()
}

/// How much faster the second of two known_rides is.
fn difference(spread: &Sensitivities, first: usize, second: usize) -> Figure {
    Figure {
        value: spread.base[first] - spread.base[second],
        sd: sd(spread, |moved| moved[first] - moved[second]),
    }
}

impl TimesByDistance {
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
    propagation: &Propagation<'_>,
    setups: &[Setup],
    rides: &[Ridden],
    reference: usize,
    known_rides: &[KnownRide],
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
        scenario.events.len()
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
                        .mean_cda_m2(known_rides[row + choice].ride.time_s)
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
                costs.push(cost(
                    propagation,
                    setups,
                    rides,
                    known_rides,
                    spread,
                    row,
                    pair,
                ));
            }
        }
    }
    costs
}

fn cost(
    propagation: &Propagation<'_>,
    setups: &[Setup],
    rides: &[Ridden],
    known_rides: &[KnownRide],
    spread: &Sensitivities,
    row: usize,
    Pair {
        choice,
        against,
        cda_cut,
    }: Pair,
) -> PositionCost {
    let there = at_length(&setups[choice], known_rides[row].distance_m);
    let (cp_w, other_cp_w) = (there.power.cp_w, setups[against].power.cp_w);
    let allowed = tie_factor(
        &there,
        known_rides[row + against].ride.time_s,
        known_rides[row + choice].ride.power_w,
    )
    .map(|factor| {
        let own = format!("scenario.positions[{}].", rides[choice].position);
        let is_own_power = |path: &str| path.strip_prefix(&own).is_some_and(is_power);
        let moved = spread
            .by_input
            .iter()
            .zip(propagation.inputs())
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

fn lower_bars(
    scenario: &Scenario,
    setups: &[Setup],
    reference: usize,
    known_rides: &[KnownRide],
) -> Vec<LowerBars> {
    let Some(kept) = setups.get(reference) else {
        return Vec::new();
    };
    let MeanAndSd { mean: cut, sd } = PUBLISHED.lower_bars_cda_cut;
    let cuts = [cut - sd, cut, cut + sd];
    let over = |(event, distance_m): (usize, f64)| {
        cuts.map(|cda_cut| {
            let position = kept.position.clone().times(1.0 - cda_cut);
            let lower = Setup {
                position,
                ..at_length(kept, distance_m)
            };
            let Paced { power_w, time_s } = known_rides[event * setups.len() + reference].ride;
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

fn long_ride_doubt(setups: &[Setup], known_rides: &[KnownRide]) -> Option<Warning> {
    known_rides
        .iter()
        .find_map(|known| overstated_hour(known.ride.time_s, &setups.get(known.choice)?.power))
}
