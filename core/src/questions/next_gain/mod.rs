//! What should I work on next?

mod answer;
mod candidate;
mod requires;
mod usual;
mod with;

use std::collections::BTreeSet;

use super::request::Request;
use crate::inputs::error::{Error, Warning};
use crate::inputs::message;
use crate::inputs::quantity::Figure;
use crate::numerics::best_set::{self, Item, Limits};
use crate::scenario::propagation::{figure, with_model_error};
use crate::scenario::ride_doubts::overstated_hour;
pub use crate::scenario::season::best::{BestSet, BudgetCurve, NextStep};
pub use crate::scenario::season::changes::Change;
pub use crate::scenario::season::left_out::{LeftOut, Why};
pub use crate::scenario::season::measuring::Measuring;
use crate::scenario::season::parts::Parts;
use crate::scenario::season::plan::Plan;
use crate::scenario::season::savings::Savings;
use crate::scenario::season::{RiddenEvent, Season, over_first_event};
use crate::scenario::{Event, Scenario};
pub use answer::{Answer, Columns, Gain, NextGainEvent, Searched};
pub use candidate::Candidate;
use candidate::{check_candidates, items};
pub use usual::Standing;
pub use with::{Portion, With};

/// The course of all events together has at most about as many points: a second or so of work.
const MOST_POINTS_TOGETHER: usize = 2_600;

/// Answers the question.
///
/// What is best is the set that saves most seconds on average over all events, each as often as it is ridden: the finish
/// times of all that may work together are recomputed together, at the best even effort, and weighed by their chances.
/// Every set within the budgets is compared, so the best is exact to a thousandth of a second for the times of the time model.
/// Those are known at every set of candidates from rides at the points of [`crate::numerics::subsets`], which are the sets
/// themselves where few candidates move a number; where many do, finish time is read off a polynomial in it that meets it
/// within about 1e-7.
///
/// # Errors
/// Names the field that is wrong, or says why the ride cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    let times_ridden = with.check(&scenario)?;
    warnings.extend(scenario.event_doubts());
    warnings.extend(scenario.simplify_for(1, MOST_POINTS_TOGETHER));
    scenario.settle_events()?;
    let candidates = with
        .candidates
        .clone()
        .unwrap_or_else(|| usual::candidates(with.standing));
    check_candidates(&candidates)?;
    let required = requires::places(&candidates)?;
    let changes: Vec<&[Change]> = candidates.iter().map(|one| &one.changes[..]).collect();
    let plan = Plan::new(&over_first_event(&scenario), &changes)?;
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
            let parts = Parts::new(&plan);
            let times = season.search(&parts, &with.so_far, with.rides_at_once as usize)?;
            let chosen = times
                .is_complete()
                .then(|| season.chosen(&parts, &items, &limits, &times.times_s));
            (Some(Searched::from(times)), chosen)
        }
    };
    let together: &[usize] = chosen.as_ref().map_or(&[], |chosen| &chosen.members);
    let measurable = season.measurable();
    let wanted: Vec<usize> = match (with.part, &chosen) {
        (Portion::Best, None) => Vec::new(),
        (Portion::Best, Some(_)) => with_required(&items, together.iter().chain(&measurable)),
        (Portion::All | Portion::Each, _) => (0..candidates.len()).collect(),
    };
    let savings = Savings::new(&season, &items, &wanted, together)?;
    let gains = match with.part {
        Portion::Best => Vec::new(),
        Portion::All | Portion::Each => gains(&season, &candidates, &items, &savings),
    };
    let long_rides = season
        .events
        .iter()
        .filter(|event| event.times_ridden > 0.0)
        .find_map(|event| overstated_hour(event.now.time_s, &event.power));
    warnings.extend(long_rides);
    warnings.extend(scenario.beyond_fixed_times(None));
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
    let measuring = chosen.as_ref().map_or_else(Vec::new, |chosen| {
        season.worth_of_measuring(chosen, &measurable, &items, &savings)
    });
    let best = chosen.map(|chosen| season.best_set(chosen, &items, &savings));
    Ok(Answer {
        columns: Columns::new(&gains),
        events: events(&season, &scenario)?,
        ranked: ranked(&gains),
        candidates: gains,
        searched,
        best,
        left_out,
        measuring,
        budget_hours: with.hours_per_week * with.weeks,
        warnings,
    })
}

/// Some candidates and all that they require, each once.
fn with_required<'a>(items: &[Item], candidates: impl Iterator<Item = &'a usize>) -> Vec<usize> {
    let all: BTreeSet<usize> = candidates.flat_map(|&c| best_set::line(items, c)).collect();
    all.into_iter().collect()
}

/// The events as they are ridden now.
fn events(season: &Season<'_>, scenario: &Scenario) -> Result<Vec<NextGainEvent>, Error> {
    let model = scenario.model_error_share.value;
    let event = |(event, named): (&RiddenEvent, &Event)| {
        let (spread, _) = season.spread(event, &[])?;
        Ok(NextGainEvent {
            name: named.name.clone(),
            distance_m: named.length_m(),
            duration_s: named.duration_s,
            times_ridden: event.times_ridden,
            time_s: with_model_error(figure(&spread, |o| o[0]), model),
            power_w: event.now.power_w,
        })
    };
    season
        .events
        .iter()
        .zip(&scenario.events)
        .map(event)
        .collect()
}

/// What each candidate saves by itself, or adds to what it requires.
fn gains(
    season: &Season<'_>,
    candidates: &[Candidate],
    items: &[Item],
    savings: &Savings,
) -> Vec<Gain> {
    let times_ridden = season.times_ridden();
    let events = season.events.len();
    let gain = |(c, candidate): (usize, &Candidate)| {
        let (item, saving) = (&items[c], savings.own(items, c));
        let works: f64 = best_set::line(items, c)
            .map(|one| items[one].chance)
            .product();
        let expected_s = saving.on_average(&times_ridden, works);
        let only =
            |at: usize| -> Vec<f64> { (0..events).map(|e| f64::from(u8::from(e == at))).collect() };
        // A cost next to nothing gives no ratio either.
        let per = |cost: f64| {
            Some(expected_s.value / cost).filter(|ratio| cost > 0.0 && ratio.is_finite())
        };
        let by_event_s: Vec<Figure> = (0..events).map(|e| saving.figure(&only(e))).collect();
        Gain {
            candidate: candidate.clone(),
            hours: item.hours,
            saves_s: saving.figure(&times_ridden),
            expected_s,
            further_by_event_m: season.further_m(|e| by_event_s[e]),
            by_event_s,
            expected_s_per_money: per(item.money),
            expected_s_per_hour: per(item.hours),
        }
    };
    candidates.iter().enumerate().map(gain).collect()
}

/// The candidates' places, what saves most on average first.
fn ranked(gains: &[Gain]) -> Vec<usize> {
    let mut ranked: Vec<usize> = Vec::new();
    for (c, gain) in gains.iter().enumerate() {
        let at =
            ranked.partition_point(|&other| gains[other].expected_s.value >= gain.expected_s.value);
        ranked.insert(at, c);
    }
    ranked
}
