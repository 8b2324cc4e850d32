//! What should I work on next?
//!
//! The best set of next gain: candidates that move the same numbers make a part (`numerics::subsets`); at best even
//! effort the season's time is ridden at every value a part's sets give a number or, where those are many, at Chebyshev
//! points, so that every set of candidates is known with all its interactions from a few hundred rides. Chances are
//! folded in item by item over the table of all sets, exactly; `numerics::best_set` then compares every set. A
//! candidate's weekly hours are a block of weeks that may begin in any week (`numerics::schedule`): sets that would count
//! are scheduled by a complete search, capped, which on the side of caution leaves out what it could not place, and says
//! so. One that requires another brings nothing where that fails. The set's ± and its 95 % range are those of the mixture
//! of all outcomes (`next_gain/outcomes.rs`). Where finish times cross the kink of the long-ride loss, its two smooth
//! branches are read off and the later taken. Long courses are searched in pieces: each request works out some rides and
//! returns the state with which the next one resumes.

mod changes;
mod outcomes;
mod requires;
mod usual;

use std::rc::Rc;

use serde::{Deserialize, Serialize};

use super::finish_time::{OVERSTATED_FROM_S, hour_overstated};
use super::request::{Request, check_number};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields::{self, Evidence};
use crate::inputs::message;
use crate::inputs::quantity::{Column, Figure, Quantity};
use crate::numerics::best_set::{self, Found, Item, Limits, MOST_ITEMS, on_average};
use crate::numerics::schedule::Block;
use crate::numerics::subsets;
use crate::physics::course::Course;
use crate::physiology::power_duration::{LongRide, PowerDuration};
use crate::riding::effort::{Effort, Paced, TIME_ACCURACY, even_from, even_within, paced};
use crate::riding::integrated::{Integrated, Setup, TimeModel};
use crate::riding::quasi_steady::QuasiSteady;
use crate::scenario::propagation::{Case, Propagation, figure, with_model_error};
use crate::scenario::ride_errors::no_effort;
use crate::scenario::{CourseKind, Scenario};
use crate::uncertainty::draws::Spread;
pub use changes::Change;
use changes::{Move, Parts, Plan};
use outcomes::Member;

/// Which riders the usual candidates are for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// Riders who train already.
    #[default]
    Trained,
    /// Riders who begin.
    New,
}

/// How much of the question is answered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Portion {
    /// All of it.
    #[default]
    All,
    /// What each candidate saves.
    Each,
    /// The best set.
    Best,
}

/// Something to work on or to buy.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Candidate {
    /// The key of a usual candidate, or an empty text.
    pub key: String,
    /// What the rider calls it.
    pub name: String,
    /// What it changes.
    pub changes: Vec<Change>,
    /// The chance that it comes off, 0 to 1, whatever becomes of the others; of one that requires another, once that has
    /// come off.
    pub chance: f64,
    /// What it costs, in the rider's own currency.
    pub money: f64,
    /// Hours that it takes in every week that it runs.
    pub hours_per_week: f64,
    /// For how many weeks on end, beginning in any week of the budget; all of them if left out. One that takes more weeks than
    /// the budget has is not taken.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub weeks: Option<f64>,
    /// Hours that it takes once, spread over any weeks.
    pub hours_once: f64,
    /// Of candidates of one group only one is taken; an empty text for none. Two positions to ride in exclude each other.
    pub group: String,
    /// The candidate without which this one cannot be taken: its key, or its name if it has no key; an empty text for none.
    /// Where that one does not come off this one brings nothing.
    pub requires: String,
    /// What its size rests on.
    pub evidence: Evidence,
    /// The key of a citation, or an empty text.
    pub source: String,
    /// On comfort, handling, or where the size comes from.
    pub note: String,
}

impl Default for Candidate {
    fn default() -> Self {
        Self {
            key: String::new(),
            name: String::new(),
            changes: Vec::new(),
            chance: 1.0,
            money: 0.0,
            hours_per_week: 0.0,
            weeks: None,
            hours_once: 0.0,
            group: String::new(),
            requires: String::new(),
            evidence: Evidence::Assumed,
            source: String::new(),
            note: String::new(),
        }
    }
}

/// What the question takes.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The candidates; usual ones if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub candidates: Option<Vec<Candidate>>,
    /// Which riders the usual ones are for.
    pub standing: Standing,
    /// Money to spend, in the rider's own currency.
    pub money: f64,
    /// Hours to spend every week.
    pub hours_per_week: f64,
    /// For how many weeks.
    pub weeks: f64,
    /// How often each of the scenario's events is ridden; once each if left out.
    pub times_ridden: Vec<f64>,
    /// How much of it to answer.
    pub part: Portion,
    /// The most rides that the search for the best set works out in one request.
    pub rides_at_once: u32,
    /// What earlier askings worked out, as they gave it.
    pub so_far: Vec<f64>,
}

impl Default for With {
    fn default() -> Self {
        Self {
            candidates: None,
            standing: Standing::default(),
            money: fields::MONEY.default,
            hours_per_week: fields::HOURS_PER_WEEK.default,
            weeks: fields::WEEKS.default,
            times_ridden: Vec::new(),
            part: Portion::default(),
            rides_at_once: fields::RIDES_AT_ONCE.default as u32,
            so_far: Vec::new(),
        }
    }
}

/// An event as it is ridden now.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct NextGainEvent {
    /// What the rider calls it.
    pub name: String,
    /// How far it is.
    pub distance_m: f64,
    /// How often it is ridden.
    pub times_ridden: f64,
    /// Finish time as the rider is, at the best even effort, the model's own error counted.
    pub time_s: Figure,
    /// Power of that ride.
    pub power_w: f64,
}

/// What one candidate saves by itself, or where it requires others, what it adds to those. All events together means each as
/// often as it is ridden.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Gain {
    /// The candidate, filled up.
    pub candidate: Candidate,
    /// Hours that it takes in all.
    pub hours: f64,
    /// Seconds it saves over all events if it works; what is uncertain of its size and of the rider is in the sd.
    pub saves_s: Figure,
    /// Seconds it saves on average, its chance and that of what it requires counted; that it may not work is in the sd too.
    pub expected_s: Figure,
    /// Seconds it saves at each event, ridden once, if it works.
    pub by_event_s: Vec<Figure>,
    /// Seconds saved on average for a unit of money; `null` if it costs none.
    pub expected_s_per_money: Option<f64>,
    /// Seconds saved on average for an hour; `null` if it takes none.
    pub expected_s_per_hour: Option<f64>,
}

/// The best set, and how it changes with the budgets.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BestSet {
    /// Its candidates, by their places.
    pub candidates: Vec<usize>,
    /// What it costs.
    pub money: f64,
    /// Hours that it takes in all.
    pub hours: f64,
    /// The fewest hours a week within which all of it fits into the weeks.
    pub hours_per_week: f64,
    /// Seconds it saves on average over all events, every chance counted; that things may not work is in the sd.
    pub expected_s: Figure,
    /// What it saves lies between these 19 times in 20, every chance and what is uncertain of the sizes and of the rider counted.
    pub range_95_s: [f64; 2],
    /// How many outcomes it may have: which of it comes off, and which not.
    pub outcomes: u32,
    /// Seconds it saves if all of it works.
    pub all_work_s: Figure,
    /// What adding up its candidates' own averages would have said.
    pub added_up_s: f64,
    /// Seconds it saves on average at each event, ridden once.
    pub by_event_s: Vec<f64>,
    /// The best for each sum of money, the hours a week and weeks as given.
    pub by_money: BudgetCurve,
    /// The best for each number of hours a week, the money and weeks as given.
    pub by_hours: BudgetCurve,
    /// The least more money that buys more; `null` if none does.
    pub next_money: Option<NextStep>,
    /// The fewest more hours a week that buy more; `null` if none do.
    pub next_hours: Option<NextStep>,
}

/// The best set as one budget grows from nothing: a staircase, each step from where it comes within reach.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BudgetCurve {
    /// Money, or hours a week, from which a step holds.
    pub budget: Vec<f64>,
    /// Seconds that its set saves on average.
    pub expected_s: Vec<f64>,
    /// Its candidates.
    pub candidates: Vec<Vec<usize>>,
}

/// What a little more would buy.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct NextStep {
    /// How much more money, or how many more hours a week, it takes.
    pub more: f64,
    /// How many more seconds its set saves on average.
    pub gains_s: f64,
    /// Its candidates.
    pub candidates: Vec<usize>,
}

/// Why a candidate is not in the best set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// It costs more than the budget's money by itself.
    TooDear,
    /// It takes more weeks than the budget has.
    TooLong,
    /// It takes more hours in a week than the budget has, by itself.
    TooManyHoursAWeek,
    /// It takes more hours in all than the budget has, by itself.
    TooManyHours,
    /// It requires another that is left out.
    NeedsAnother,
    /// Another of its group is taken.
    ExcludedByGroup,
    /// It fits by itself, but too little money is left beside the best set.
    NoMoneyLeft,
    /// It fits by itself, but too few hours are left beside the best set.
    NoHoursLeft,
    /// It saves nothing on average, by itself or beside the best set.
    NotWorthIt,
}

/// A candidate that is not in the best set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LeftOut {
    /// Its place.
    pub candidate: usize,
    /// Why.
    pub why: Why,
    /// The place of the one that it requires, or that excludes it; `null` for other reasons.
    pub other: Option<usize>,
}

/// How far the search for the best set is.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Searched {
    /// Rides worked out.
    pub done: u32,
    /// Rides to work out.
    pub of: u32,
    /// Their times, to be sent with the next request. They hold for other budgets and chances too.
    pub so_far: Vec<f64>,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// The events as they are ridden now.
    pub events: Vec<NextGainEvent>,
    /// What each candidate saves by itself, in the order given; none if only the best set was asked for.
    pub candidates: Vec<Gain>,
    /// The candidates' places, what saves most on average first.
    pub ranked: Vec<usize>,
    /// How far the search is; `null` if it was not asked for.
    pub searched: Option<Searched>,
    /// The best set; `null` until it is found.
    pub best: Option<BestSet>,
    /// The candidates that are not in the best set, in the order given; none until it is found.
    pub left_out: Vec<LeftOut>,
    /// Hours that the budget comes to in all.
    pub budget_hours: f64,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// The candidates' figures, in the order given.
    pub columns: Columns,
}

/// What the candidates save and take; none if only the best set was asked for.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Seconds saved on average.
    pub expected_s: Column,
    /// One standard deviation of that.
    pub expected_sd_s: Column,
    /// Seconds saved if it works.
    pub saves_s: Column,
    /// One standard deviation of that.
    pub saves_sd_s: Column,
    /// What it costs.
    pub money: Column,
    /// Hours that it takes in all.
    pub hours: Column,
}

/// Relative accuracy of the finish times that the search for the best set rides: that of the polynomials they are read off.
const EVEN_ACCURACY: f64 = 1e-7;
/// Sets that save the same to this are worth the same, s.
const TIE_S: f64 = 1e-3;
/// Times of the search at all points together are no more than what one request can carry back.
const MOST_TIMES: usize = 300_000;
/// All rides in one request are taken over about as many stretches: a second or so of work.
const MOST_STRETCHES: f64 = 4e6;
/// The course of all events together has at most about as many points: a second or so of work.
const MOST_POINTS_TOGETHER: usize = 4_000;
/// Up to so many stretches a ride of the search is followed; beyond, it is read off steady speeds, as the draws are.
const MOST_STRETCHES_FOLLOWED: usize = 40;
/// The group of all that name a position to ride in; groups with names come below it.
const POSITION_GROUP: u32 = 1 << 31;
/// Outputs of one event's spread: as the rider is, then with each candidate and those it requires, and with the best set.
const OUTPUTS: usize = MOST_ITEMS + 2;

/// Answers the question.
///
/// What is best is the set that saves most seconds on average over all events, each as often as it is ridden: the finish
/// times of all that may work together are recomputed together, at the best even effort, and weighed by their chances.
/// Every set within the budgets is compared, so the best is exact to [`TIE_S`] for the times of the time model. Those are known at
/// every set of candidates from rides at the points of [`crate::numerics::subsets`], which are the sets themselves where few
/// candidates move a number; where many do, finish time is read off a polynomial in it that meets it within about 1e-7.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    let times_ridden = check(&scenario, &with)?;
    warnings.extend(scenario.simplify_for(times_ridden.len(), MOST_POINTS_TOGETHER));
    let candidates = with
        .candidates
        .clone()
        .unwrap_or_else(|| usual::candidates(with.standing));
    check_candidates(&candidates)?;
    let required = requires::places(&candidates)?;
    // The length of a simple road is among the numbers in every event.
    let first = scenario
        .events
        .first()
        .map_or(fields::DISTANCE_M.default, |event| event.distance_m);
    let plan = Plan::new(&over(&scenario, first), &candidates)?;
    let season = Season::new(&scenario, &plan, times_ridden)?;
    let limits = Limits {
        money: with.money,
        hours_per_week: with.hours_per_week,
        weeks: with.weeks,
    };
    let items = items(&candidates, &required, &plan, with.weeks);
    let (searched, chosen) = match with.part {
        Portion::Each => (None, None),
        Portion::All | Portion::Best => {
            let (searched, chosen) = season.search(&items, &limits, &with)?;
            (Some(searched), chosen)
        }
    };
    let together: &[usize] = chosen.as_ref().map_or(&[], |chosen| &chosen.members);
    let wanted: Vec<usize> = match with.part {
        Portion::Best => together.to_vec(),
        Portion::All | Portion::Each => (0..candidates.len()).collect(),
    };
    let savings = Savings::new(&season, &items, &wanted, together)?;
    let gains = match with.part {
        Portion::Best => Vec::new(),
        Portion::All | Portion::Each => season.gains(&candidates, &items, &savings),
    };
    let mut ranked: Vec<usize> = Vec::new();
    for (c, gain) in gains.iter().enumerate() {
        let at =
            ranked.partition_point(|&other| gains[other].expected_s.value >= gain.expected_s.value);
        ranked.insert(at, c);
    }
    warnings.extend(season.long_ride_doubt()?);
    if chosen.as_ref().is_some_and(|chosen| chosen.cut_short) {
        warnings.push(Warning::of(
            "with.candidates",
            message::schedules_cut_short(),
        ));
    }
    let left_out = chosen
        .as_ref()
        .map(|chosen| chosen.left_out.clone())
        .unwrap_or_default();
    let best = chosen.map(|chosen| season.best_set(chosen, &items, &savings));
    let column = |of: &dyn Fn(&Gain) -> f64| gains.iter().map(of).collect();
    let columns = Columns {
        expected_s: column(&|gain| gain.expected_s.value),
        expected_sd_s: column(&|gain| gain.expected_s.sd),
        saves_s: column(&|gain| gain.saves_s.value),
        saves_sd_s: column(&|gain| gain.saves_s.sd),
        money: column(&|gain| gain.candidate.money),
        hours: column(&|gain| gain.hours),
    };
    Ok(Answer {
        columns,
        events: season.events()?,
        candidates: gains,
        ranked,
        searched,
        best,
        left_out,
        budget_hours: with.hours_per_week * with.weeks,
        warnings,
    })
}

fn check(scenario: &Scenario, with: &With) -> Result<Vec<f64>, Error> {
    check_number(&fields::MONEY, "with.money", with.money)?;
    check_number(
        &fields::HOURS_PER_WEEK,
        "with.hours_per_week",
        with.hours_per_week,
    )?;
    check_number(&fields::WEEKS, "with.weeks", with.weeks)?;
    check_number(
        &fields::RIDES_AT_ONCE,
        "with.rides_at_once",
        f64::from(with.rides_at_once),
    )?;
    for (i, times) in with.times_ridden.iter().enumerate() {
        fields::TIMES_RIDDEN.check(|| format!("with.times_ridden[{i}]"), *times)?;
    }
    match with.times_ridden.len() {
        0 => Ok(vec![1.0; scenario.events.len()]),
        n if n == scenario.events.len() => Ok(with.times_ridden.clone()),
        _ => {
            let message = message::times_for_each_event();
            Err(Error::new(Kind::Conflict, "with.times_ridden", message))
        }
    }
}

fn check_candidates(candidates: &[Candidate]) -> Result<(), Error> {
    if candidates.len() > MOST_ITEMS {
        let message = message::too_many("with.candidates", MOST_ITEMS);
        return Err(Error::new(Kind::TooLarge, "with.candidates", message));
    }
    candidates
        .iter()
        .enumerate()
        .try_for_each(|(c, candidate)| changes::check(candidate, c))
}

/// What the candidates take of a budget of so many weeks.
fn items(
    candidates: &[Candidate],
    required: &[Option<usize>],
    plan: &Plan,
    weeks: f64,
) -> Vec<Item> {
    let item = |(c, candidate): (usize, &Candidate)| {
        let group = candidates
            .iter()
            .position(|other| other.group == candidate.group);
        let named = group
            .filter(|_| !candidate.group.is_empty())
            .map_or(0, |first| 1 << first);
        let rides = plan.moves[c].iter().any(|one| matches!(one, Move::Ride(_)));
        let own_weeks = candidate.weeks.unwrap_or(weeks);
        let block = Block {
            hours_per_week: candidate.hours_per_week,
            weeks: own_weeks,
        };
        // What runs for all weeks has no room in none.
        let no_weeks = weeks <= 0.0 && candidate.weeks.is_none() && candidate.hours_per_week > 0.0;
        Item {
            chance: candidate.chance,
            money: candidate.money,
            hours: candidate.hours_once + candidate.hours_per_week * own_weeks,
            block: (block.hours_per_week > 0.0 && block.weeks > 0.0).then_some(block),
            too_long: own_weeks > weeks || no_weeks,
            groups: named | if rides { POSITION_GROUP } else { 0 },
            needs: required[c],
        }
    };
    candidates.iter().enumerate().map(item).collect()
}

/// One event: the scenario on its road, as it is ridden now.
struct Event {
    scenario: Scenario,
    course: Rc<Course>,
    times_ridden: f64,
    now: Paced,
}

/// The power–duration relation has a kink where the long-ride loss begins. A finish time close to it is the later of those by
/// the relation's two smooth branches, each carried on beyond the kink, which a polynomial can follow.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Branch {
    Whole,
    Short,
    Long,
}

/// A finish time within this factor of the kink may come to lie on either side of it.
const NEAR_KINK: f64 = 1.5;
/// How far the later branch is carried on towards short rides.
const CARRIED_ON: f64 = 20.0;

impl Branch {
    /// The branches of an event.
    fn of(event: &Event, power: &PowerDuration) -> &'static [Self] {
        match power.long_ride {
            Some(long) if (event.now.time_s / long.from_s).ln().abs() < NEAR_KINK.ln() => {
                &[Self::Short, Self::Long]
            }
            _ => &[Self::Whole],
        }
    }

    /// The relation along this branch.
    fn along(self, power: PowerDuration) -> PowerDuration {
        match (self, power.long_ride) {
            (Self::Short, _) => PowerDuration {
                long_ride: None,
                ..power
            },
            // CP − A ln(t/T) is CP + A ln(T/T') − A ln(t/T').
            (Self::Long, Some(long)) => {
                let more_w = long.loss_w * CARRIED_ON.ln();
                PowerDuration {
                    cp_w: power.cp_w + more_w,
                    peak_w: power.peak_w.map(|peak_w| peak_w + more_w),
                    long_ride: Some(LongRide {
                        from_s: long.from_s / CARRIED_ON,
                        ..long
                    }),
                    ..power
                }
            }
            (Self::Whole | Self::Long, _) => power,
        }
    }
}

/// All the rider's events, and what the candidates move in them.
struct Season<'a> {
    scenario: &'a Scenario,
    plan: &'a Plan,
    events: Vec<Event>,
    /// The rides of the search at each point: an event, by its place, along a branch.
    columns: Vec<(usize, Branch)>,
    /// Whether the search follows its rides.
    followed: bool,
    /// Whether the rider's own doubts are worked out: not where that would take long.
    rider_counts: bool,
}

/// What a set of moves saves, and what is uncertain of it.
#[derive(Clone, Default)]
struct Saving {
    by_event_s: Vec<f64>,
    /// How one standard deviation of each of the rider's own numbers moves it, by event.
    rider_s: Vec<Vec<f64>>,
    /// How one standard deviation of each uncertain amount of the moves moves it, by event, beside the amount's candidate and its
    /// place among that one's moves.
    amounts_s: Vec<((usize, usize), Vec<f64>)>,
}

impl Saving {
    /// A weighted sum over the events: what moves one event moves the others with it.
    fn figure(&self, weights: &[f64]) -> Figure {
        let rider = self.rider_moves_s(weights).into_iter();
        let amounts = self
            .amounts_s
            .iter()
            .map(|(_, by_event)| weighed(by_event, weights));
        let sd = rider
            .chain(amounts)
            .map(|moved| moved * moved)
            .sum::<f64>()
            .sqrt();
        Figure {
            value: weighed(&self.by_event_s, weights),
            sd,
        }
    }

    /// How one standard deviation of each of the rider's own numbers moves the weighted sum.
    fn rider_moves_s(&self, weights: &[f64]) -> Vec<f64> {
        let inputs = self.rider_s.first().map_or(0, Vec::len);
        let by_event = |i: usize| {
            self.rider_s
                .iter()
                .map(|by_input| by_input[i])
                .collect::<Vec<f64>>()
        };
        (0..inputs)
            .map(|i| weighed(&by_event(i), weights))
            .collect()
    }

    /// What is saved beyond another saving.
    fn beyond(&self, other: &Self) -> Self {
        let less = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| a - b).collect::<Vec<f64>>();
        let amounts_s = self.amounts_s.iter().map(|(amount, by_event)| {
            let same = other.amounts_s.iter().find(|(theirs, _)| theirs == amount);
            (
                *amount,
                same.map_or_else(|| by_event.clone(), |(_, theirs)| less(by_event, theirs)),
            )
        });
        Self {
            by_event_s: less(&self.by_event_s, &other.by_event_s),
            rider_s: self
                .rider_s
                .iter()
                .zip(&other.rider_s)
                .map(|(a, b)| less(a, b))
                .collect(),
            amounts_s: amounts_s.collect(),
        }
    }
}

/// A weighted sum over the events.
fn weighed(by_event: &[f64], weights: &[f64]) -> f64 {
    by_event
        .iter()
        .zip(weights)
        .map(|(value, weight)| value * weight)
        .sum()
}

/// What some candidates save, each with those that it requires, and the best set together.
struct Savings {
    /// By the candidates' places; none for those that were not wanted.
    lines: Vec<Saving>,
    together: Saving,
}

impl Savings {
    /// The wanted candidates include what they require.
    fn new(
        season: &Season<'_>,
        items: &[Item],
        wanted: &[usize],
        together: &[usize],
    ) -> Result<Self, Error> {
        let mut sets: Vec<Vec<usize>> = wanted
            .iter()
            .map(|&c| best_set::line(items, c).collect())
            .collect();
        if !together.is_empty() {
            sets.push(together.to_vec());
        }
        // A search that goes on asks for none, and none are ridden.
        let mut savings = if sets.is_empty() {
            Vec::new()
        } else {
            season.savings(&sets)?
        };
        let together = if together.is_empty() {
            None
        } else {
            savings.pop()
        }
        .unwrap_or_default();
        let mut lines: Vec<Saving> = items.iter().map(|_| Saving::default()).collect();
        for (&c, saving) in wanted.iter().zip(savings) {
            lines[c] = saving;
        }
        Ok(Self { lines, together })
    }

    /// What a candidate adds to what it requires.
    fn own(&self, items: &[Item], c: usize) -> Saving {
        match items[c].needs {
            Some(required) => self.lines[c].beyond(&self.lines[required]),
            None => self.lines[c].clone(),
        }
    }
}

/// The most stretches that the rider's own doubts are worked out over, all rides together.
const MOST_STRETCHES_IN_DOUBT: usize = 20_000_000;

impl<'a> Season<'a> {
    fn new(scenario: &'a Scenario, plan: &'a Plan, times_ridden: Vec<f64>) -> Result<Self, Error> {
        let event = |(event, times_ridden): (&crate::scenario::Event, f64)| {
            let scenario = over(scenario, event.distance_m);
            let course = Rc::new(scenario.course());
            let setup = scenario
                .setup_on(scenario.riding_position, Rc::clone(&course))
                .ok_or_else(no_position)?;
            let now = paced(&Integrated, &setup, Effort::Even).map_err(no_effort)?;
            let event = Event {
                scenario,
                course,
                times_ridden,
                now,
            };
            let branches = Branch::of(&event, &setup.power);
            Ok((event, branches))
        };
        let events = scenario
            .events
            .iter()
            .zip(times_ridden)
            .map(event)
            .collect::<Result<Vec<_>, Error>>()?;
        let columns = events
            .iter()
            .enumerate()
            .flat_map(|(e, (_, branches))| branches.iter().map(move |&b| (e, b)));
        let columns = columns.collect();
        let events: Vec<Event> = events.into_iter().map(|(event, _)| event).collect();
        let stretches = events
            .first()
            .map_or(1, |event| event.course.segments.len());
        let rides = events.len() * (plan.moves.len() + 1) * 2 * plan.numbers();
        Ok(Self {
            scenario,
            plan,
            events,
            columns,
            followed: stretches <= MOST_STRETCHES_FOLLOWED,
            rider_counts: rides * stretches <= MOST_STRETCHES_IN_DOUBT,
        })
    }

    fn times_ridden(&self) -> Vec<f64> {
        self.events.iter().map(|event| event.times_ridden).collect()
    }

    /// Finish time on an event's road of a changed scenario in a position.
    fn time_s(
        &self,
        time_model: &dyn TimeModel,
        event: &Event,
        moved: &(Scenario, usize),
    ) -> Result<f64, Error> {
        let setup = self.setup(event, moved)?;
        even_from(time_model, &setup, event.now.power_w)
            .map(|paced| paced.time_s)
            .map_err(no_effort)
    }

    /// The ride on an event's road of a changed scenario in a position.
    fn setup(
        &self,
        event: &Event,
        (scenario, position): &(Scenario, usize),
    ) -> Result<Setup, Error> {
        let course = if self.plan.course_moves {
            Rc::new(scenario.course())
        } else {
            Rc::clone(&event.course)
        };
        scenario.setup_on(*position, course).ok_or_else(no_position)
    }

    /// Outputs of an event: the finish time as the rider is, then with each of some sets of moves; spread by what is uncertain
    /// of the rider's own numbers.
    fn spread(&self, event: &Event, sets: &[Vec<Move>]) -> Result<Spread<OUTPUTS>, Error> {
        let outputs =
            |scenario: &Scenario, time_model: &dyn TimeModel| -> Result<[f64; OUTPUTS], Error> {
                let mut outputs = [0.0; OUTPUTS];
                outputs[0] = self.time_s(
                    time_model,
                    event,
                    &(scenario.clone(), scenario.riding_position),
                )?;
                for (output, moves) in outputs[1..].iter_mut().zip(sets) {
                    *output =
                        self.time_s(time_model, event, &self.plan.moved(scenario, moves.iter()))?;
                }
                Ok(outputs)
            };
        if !self.rider_counts {
            return Ok(Spread {
                base: outputs(&event.scenario, &Integrated)?,
                by_input: Vec::new(),
            });
        }
        let mut positions = vec![event.scenario.riding_position];
        positions.extend(sets.iter().flatten().filter_map(|one| match one {
            Move::Ride(position) => Some(*position),
            _ => None,
        }));
        let inquiry = Propagation::new(&event.scenario, &positions, &[]);
        inquiry.spread(|case: &Case<'_>, time_model: &dyn TimeModel| {
            outputs(case.scenario(), time_model)
        })
    }

    fn events(&self) -> Result<Vec<NextGainEvent>, Error> {
        let model = self.scenario.model_error_share.value;
        let event = |(event, named): (&Event, &crate::scenario::Event)| {
            let spread = self.spread(event, &[])?;
            Ok(NextGainEvent {
                name: named.name.clone(),
                distance_m: named.distance_m,
                times_ridden: event.times_ridden,
                time_s: with_model_error(figure(&spread, |o| o[0]), model),
                power_w: event.now.power_w,
            })
        };
        self.events
            .iter()
            .zip(&self.scenario.events)
            .map(event)
            .collect()
    }

    /// What sets of candidates save if all of them work: the values by rides that are followed, what is uncertain by steady
    /// speeds.
    fn savings(&self, sets: &[Vec<usize>]) -> Result<Vec<Saving>, Error> {
        let mut savings: Vec<Saving> = sets.iter().map(|_| Saving::default()).collect();
        let moves_of = |set: &Vec<usize>| -> Vec<Move> {
            set.iter()
                .flat_map(|&c| self.plan.moves[c].iter().copied())
                .collect()
        };
        let all_moves: Vec<Vec<Move>> = sets.iter().map(moves_of).collect();
        for event in &self.events {
            let spread = self.spread(event, &all_moves)?;
            for (k, saving) in savings.iter_mut().enumerate() {
                saving.by_event_s.push(spread.base[0] - spread.base[k + 1]);
                saving
                    .rider_s
                    .push(spread.by_input.iter().map(|o| o[0] - o[k + 1]).collect());
            }
        }
        let time_model = QuasiSteady::default();
        for ((saving, moves), set) in savings.iter_mut().zip(&all_moves).zip(sets) {
            let amounts = set
                .iter()
                .flat_map(|&c| (0..self.plan.moves[c].len()).map(move |i| (c, i)));
            for ((m, one), amount_of) in moves.iter().enumerate().zip(amounts) {
                let Some(amount) = one.amount().filter(|amount| amount.sd > 0.0) else {
                    continue;
                };
                let (low, high) =
                    one.within_reach(amount.value - amount.sd, amount.value + amount.sd);
                let time = |event: &Event, value: f64| {
                    let mut moves = moves.clone();
                    moves[m] = one.with_amount(value);
                    self.time_s(
                        &time_model,
                        event,
                        &self.plan.moved(&event.scenario, moves.iter()),
                    )
                };
                let moved_s =
                    self.events
                        .iter()
                        .map(|event| match (time(event, low), time(event, high)) {
                            (Ok(low_s), Ok(high_s)) if high > low => {
                                (low_s - high_s) * amount.sd / (high - low)
                            }
                            _ => 0.0,
                        });
                saving.amounts_s.push((amount_of, moved_s.collect()));
            }
        }
        Ok(savings)
    }

    fn gains(&self, candidates: &[Candidate], items: &[Item], savings: &Savings) -> Vec<Gain> {
        let times_ridden = self.times_ridden();
        let gain = |(c, candidate): (usize, &Candidate)| {
            let (item, saving) = (&items[c], savings.own(items, c));
            let saves_s = saving.figure(&times_ridden);
            let Figure { value, sd } = saves_s;
            let works: f64 = best_set::line(items, c)
                .map(|one| items[one].chance)
                .product();
            let expected_s = Figure {
                value: works * value,
                sd: (works * sd * sd + works * (1.0 - works) * value * value).sqrt(),
            };
            let only = |at: usize| -> Vec<f64> {
                (0..self.events.len())
                    .map(|e| f64::from(u8::from(e == at)))
                    .collect()
            };
            // A cost next to nothing gives no ratio either.
            let per = |cost: f64| {
                Some(expected_s.value / cost).filter(|ratio| cost > 0.0 && ratio.is_finite())
            };
            Gain {
                candidate: candidate.clone(),
                hours: item.hours,
                saves_s,
                expected_s,
                by_event_s: (0..self.events.len())
                    .map(|e| saving.figure(&only(e)))
                    .collect(),
                expected_s_per_money: per(item.money),
                expected_s_per_hour: per(item.hours),
            }
        };
        candidates.iter().enumerate().map(gain).collect()
    }

    /// What is doubtful about rides of an hour and more.
    fn long_ride_doubt(&self) -> Result<Option<Warning>, Error> {
        for event in self
            .events
            .iter()
            .filter(|event| event.times_ridden > 0.0 && event.now.time_s > OVERSTATED_FROM_S)
        {
            let setup = self.setup(
                event,
                &(event.scenario.clone(), event.scenario.riding_position),
            )?;
            if setup.power.long_ride.is_none() {
                return Ok(Some(hour_overstated()));
            }
        }
        Ok(None)
    }

    /// Works out the rides of the search as far as one request goes, and the best set once they are all there.
    fn search(
        &self,
        items: &[Item],
        limits: &Limits,
        with: &With,
    ) -> Result<(Searched, Option<Chosen>), Error> {
        let parts = Parts::new(self.plan);
        let columns = self.columns.len();
        let points = subsets::points(&parts.parts)
            .filter(|points| points * columns <= MOST_TIMES)
            .ok_or_else(|| {
                Error::new(
                    Kind::TooLarge,
                    "with.candidates",
                    message::too_many_numbers(),
                )
            })?;
        let of = points * columns;
        let mut times = earlier(&with.so_far, of)?;
        let stretches = self
            .events
            .first()
            .map_or(1, |event| event.course.segments.len());
        let rides = (with.rides_at_once as usize).min((MOST_STRETCHES / stretches as f64) as usize);
        // The quasi-steady time model settles as it is asked again.
        let (time_model, accuracy): (Box<dyn TimeModel>, f64) = if self.followed {
            (Box::new(Integrated), EVEN_ACCURACY)
        } else {
            (Box::new(QuasiSteady::default()), TIME_ACCURACY)
        };
        let until = (times.len() + rides.max(1)).min(of);
        // A ride takes about as long as that of the point before, and its own relation says what power that allows.
        let mut before_s: Vec<f64> = self
            .columns
            .iter()
            .map(|(event, _)| self.events[*event].now.time_s)
            .collect();
        while times.len() < until {
            let numbers = subsets::numbers(&parts.parts, times.len() / columns);
            let column = times.len() % columns;
            let (event, branch) = self.columns[column];
            let event = &self.events[event];
            let moved = self.plan.at(&event.scenario, &parts, &numbers);
            let mut setup = self.setup(event, &moved)?;
            setup.power = branch.along(setup.power);
            let guess_w = setup.power.sustainable_w(before_s[column]).max(1.0);
            let ridden =
                even_within(time_model.as_ref(), &setup, guess_w, accuracy).map_err(|_| {
                    Error::impossible("with.candidates", message::cannot_be_ridden_together())
                })?;
            before_s[column] = ridden.time_s;
            times.push(ridden.time_s);
        }
        let chosen = (until == of).then(|| self.chosen(&parts, items, limits, &times));
        Ok((
            Searched {
                done: until as u32,
                of: of as u32,
                so_far: times,
            },
            chosen,
        ))
    }

    /// Finish times of one event at every set of the changes in `of`.
    fn event_times_s(&self, parts: &Parts, times: &[f64], event: usize, of: usize) -> Vec<f64> {
        let mut later: Vec<f64> = Vec::new();
        for (c, _) in self
            .columns
            .iter()
            .enumerate()
            .filter(|(_, column)| column.0 == event)
        {
            let own: Vec<f64> = times
                .iter()
                .skip(c)
                .step_by(self.columns.len())
                .copied()
                .collect();
            let own = subsets::at_sets(&parts.parts, &own, of);
            if later.is_empty() {
                later = own;
            } else {
                later
                    .iter_mut()
                    .zip(own)
                    .for_each(|(later, own)| *later = later.max(own));
            }
        }
        later
    }

    /// Finish times of all events together, each as often as it is ridden, at every set of the changes in `of`.
    fn season_times_s(&self, parts: &Parts, times: &[f64], of: usize) -> Vec<f64> {
        // What is smooth may be added up before it is read off.
        let smooth = |row: &[f64]| -> f64 {
            let whole = self
                .columns
                .iter()
                .zip(row)
                .filter(|((_, branch), _)| *branch == Branch::Whole);
            whole
                .map(|((event, _), time_s)| self.events[*event].times_ridden * time_s)
                .sum()
        };
        let smooth: Vec<f64> = times.chunks_exact(self.columns.len()).map(smooth).collect();
        let mut season = subsets::at_sets(&parts.parts, &smooth, of);
        for (event, _) in self
            .columns
            .iter()
            .filter(|(_, branch)| *branch == Branch::Short)
        {
            let own = self.event_times_s(parts, times, *event, of);
            let weight = self.events[*event].times_ridden;
            season
                .iter_mut()
                .zip(own)
                .for_each(|(sum, time_s)| *sum += weight * time_s);
        }
        season
    }

    fn chosen(&self, parts: &Parts, items: &[Item], limits: &Limits, times: &[f64]) -> Chosen {
        let items: Vec<Item> = parts
            .order
            .iter()
            .map(|&c| in_bits(&items[c], &parts.order))
            .collect();
        let mut worths = self.season_times_s(parts, times, (1 << items.len()) - 1);
        let now_s = worths[0];
        worths.iter_mut().for_each(|worth| *worth = now_s - *worth);
        on_average(&mut worths, &items);
        let Found {
            best,
            curves: [by_money, by_hours],
            cut_short,
        } = best_set::search(&worths, &items, limits, TIE_S);

        let bits = |set: usize| (0..items.len()).filter(move |bit| set >> bit & 1 == 1);
        let members =
            |set: usize| -> Vec<usize> { bits(set).map(|bit| parts.order[bit]).collect() };
        let sorted = |set: usize| -> Vec<usize> {
            let mut members = members(set);
            members.sort_unstable();
            members
        };
        let taken_bits: Vec<usize> = bits(best.set).collect();
        let taken: Vec<Item> = taken_bits
            .iter()
            .map(|&bit| in_bits(&items[bit], &taken_bits))
            .collect();
        let saved_at = |event: usize| {
            let mut own = self.event_times_s(parts, times, event, best.set);
            let now_s = own[0];
            on_average(&mut own, &taken);
            now_s - own.last().copied().unwrap_or(f64::NAN)
        };
        let next = |curve: &[best_set::Choice], k: usize| {
            let step = curve
                .iter()
                .find(|step| !step.keeps_within(limits, k) && step.worth > best.worth + TIE_S)?;
            Some(NextStep {
                more: step.costs[k] - limits.of(k),
                gains_s: step.worth - best.worth,
                candidates: sorted(step.set),
            })
        };
        let curve = |curve: &[best_set::Choice], k: usize| BudgetCurve {
            budget: curve.iter().map(|step| step.costs[k]).collect(),
            expected_s: curve.iter().map(|step| step.worth).collect(),
            candidates: curve.iter().map(|step| sorted(step.set)).collect(),
        };
        let why = |c: usize| {
            let bit = parts.order.iter().position(|&place| place == c)?;
            let (why, other) = why_not(&worths, &items, limits, &best, bit)?;
            Some(LeftOut {
                candidate: c,
                why,
                other: other.map(|bit| parts.order[bit]),
            })
        };
        let outcomes = self.season_times_s(parts, times, best.set);
        Chosen {
            members: members(best.set),
            best,
            saved_s: outcomes.iter().map(|time_s| now_s - time_s).collect(),
            by_event_s: (0..self.events.len()).map(saved_at).collect(),
            added_up_s: taken_bits
                .iter()
                .map(|&bit| by_itself(&worths, &items, bit))
                .sum(),
            next_money: next(&by_money, 0),
            next_hours: next(&by_hours, 1),
            by_money: curve(&by_money, 0),
            by_hours: curve(&by_hours, 1),
            left_out: (0..items.len()).filter_map(why).collect(),
            cut_short,
        }
    }

    /// The best set with what is uncertain of it.
    fn best_set(&self, chosen: Chosen, items: &[Item], savings: &Savings) -> BestSet {
        let weights = self.times_ridden();
        let moved_s = |saving: &Saving, c: usize| -> Vec<f64> {
            let own = saving
                .amounts_s
                .iter()
                .filter(|((candidate, _), _)| *candidate == c);
            own.map(|(_, by_event)| weighed(by_event, &weights))
                .collect()
        };
        let members: Vec<Member> = chosen
            .members
            .iter()
            .map(|&c| {
                let bit = |c: usize| chosen.members.iter().position(|&member| member == c);
                let (alone, all) = (moved_s(&savings.lines[c], c), moved_s(&savings.together, c));
                Member {
                    chance: items[c].chance,
                    needs: items[c].needs.and_then(bit),
                    line: best_set::line(items, c)
                        .filter_map(bit)
                        .map(|bit| 1 << bit)
                        .sum(),
                    rider_s: savings.own(items, c).rider_moves_s(&weights),
                    amounts_s: alone
                        .into_iter()
                        .zip(all)
                        .map(|(alone, all)| [alone, all])
                        .collect(),
                }
            })
            .collect();
        let spread = outcomes::spread(
            &chosen.saved_s,
            &members,
            &savings.together.rider_moves_s(&weights),
        );
        let mut candidates = chosen.members;
        candidates.sort_unstable();
        BestSet {
            candidates,
            money: chosen.best.costs[0],
            hours: chosen.best.hours,
            hours_per_week: chosen.best.costs[1],
            expected_s: Figure {
                value: chosen.best.worth,
                sd: spread.sd,
            },
            range_95_s: spread.range_95,
            outcomes: spread.outcomes,
            all_work_s: savings.together.figure(&weights),
            added_up_s: chosen.added_up_s,
            by_event_s: chosen.by_event_s,
            by_money: chosen.by_money,
            by_hours: chosen.by_hours,
            next_money: chosen.next_money,
            next_hours: chosen.next_hours,
        }
    }
}

/// What the search finds; what is uncertain of it is still to be worked out.
struct Chosen {
    best: best_set::Choice,
    /// The best set's candidates in the order of the bits of `saved_s`.
    members: Vec<usize>,
    /// Seconds saved over all events if just some of the members work, by the set of those.
    saved_s: Vec<f64>,
    by_event_s: Vec<f64>,
    added_up_s: f64,
    by_money: BudgetCurve,
    by_hours: BudgetCurve,
    next_money: Option<NextStep>,
    next_hours: Option<NextStep>,
    left_out: Vec<LeftOut>,
    cut_short: bool,
}

/// An item whose need is named by its place in another order.
fn in_bits(item: &Item, order: &[usize]) -> Item {
    Item {
        needs: item
            .needs
            .and_then(|needed| order.iter().position(|&place| place == needed)),
        ..*item
    }
}

/// What an item adds on average to those that it needs.
fn by_itself(worths: &[f64], items: &[Item], bit: usize) -> f64 {
    let line: usize = best_set::line(items, bit).map(|one| 1 << one).sum();
    worths[line] - worths[line & !(1 << bit)]
}

/// Why an item is not in the best set, and which other one is the reason; `None` if it is in.
fn why_not(
    worths: &[f64],
    items: &[Item],
    limits: &Limits,
    best: &best_set::Choice,
    bit: usize,
) -> Option<(Why, Option<usize>)> {
    let item = &items[bit];
    if best.set >> bit & 1 == 1 {
        return None;
    }
    if by_itself(worths, items, bit) <= TIE_S {
        return Some((Why::NotWorthIt, None));
    }
    if item.too_long {
        return Some((Why::TooLong, None));
    }
    let alone = best_set::takes(
        &[Item {
            needs: None,
            ..*item
        }],
        1,
        limits.weeks,
    )?;
    if !alone.keeps_within(limits, 0) {
        return Some((Why::TooDear, None));
    }
    if !alone.keeps_within(limits, 1) {
        let a_week = item
            .block
            .is_some_and(|block| block.hours_per_week > limits.hours_per_week);
        return Some((
            if a_week {
                Why::TooManyHoursAWeek
            } else {
                Why::TooManyHours
            },
            None,
        ));
    }
    if let Some(needed) = item.needs.filter(|needed| best.set >> needed & 1 == 0) {
        return Some((Why::NeedsAnother, Some(needed)));
    }
    let in_best = |other: &usize| best.set >> other & 1 == 1;
    if let Some(other) = (0..items.len())
        .filter(in_best)
        .find(|&other| items[other].groups & item.groups != 0)
    {
        return Some((Why::ExcludedByGroup, Some(other)));
    }
    let with_it = best.set | 1 << bit;
    let together = best_set::takes(items, with_it, limits.weeks)?;
    let why = match () {
        () if worths[with_it] <= best.worth + TIE_S => Why::NotWorthIt,
        () if !together.keeps_within(limits, 0) => Why::NoMoneyLeft,
        () => Why::NoHoursLeft,
    };
    Some((why, None))
}

/// What earlier askings worked out.
fn earlier(so_far: &[f64], of: usize) -> Result<Vec<f64>, Error> {
    let plausible = |time_s: &f64| time_s.is_finite() && *time_s > 0.0;
    if so_far.len() > of || !so_far.iter().all(plausible) {
        let message = message::not_as_before("with.so_far");
        return Err(Error::new(Kind::Conflict, "with.so_far", message));
    }
    Ok(so_far.to_vec())
}

fn no_position() -> Error {
    Error::impossible("scenario.positions", message::no_such_position())
}

/// The scenario on the same kind of road at another length: slopes and headings stay.
fn over(scenario: &Scenario, distance_m: f64) -> Scenario {
    let mut over = scenario.clone();
    let course = &mut over.course;
    match course.kind {
        CourseKind::Simple => course.distance_m = Some(Quantity::exact(distance_m)),
        CourseKind::Profile => {
            let (Some(first), Some(last)) = (
                course.points.first().copied(),
                course.points.last().copied(),
            ) else {
                return over;
            };
            let scale = distance_m / (last.distance_m - first.distance_m);
            for point in &mut course.points {
                point.distance_m = scale * (point.distance_m - first.distance_m);
                point.elevation_m =
                    first.elevation_m + scale * (point.elevation_m - first.elevation_m);
            }
        }
    }
    over
}
