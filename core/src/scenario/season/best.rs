//! The best set of a season's candidates, how it changes with the budgets, and what is uncertain of it.

use serde::Serialize;

use super::Season;
use super::left_out::{LeftOut, by_itself, in_bits, why_not};
use super::parts::Parts;
use super::savings::{Saving, Savings, weighed};
use crate::inputs::quantity::Figure;
use crate::numerics::best_set::{self, Found, Item, Limits, on_average};
use crate::uncertainty::outcomes::{self, Member};

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
    /// What those seconds come to at each event that goes by time: how much further, m; left out where none does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub further_by_event_m: Option<Vec<Option<f64>>>,
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

/// Sets that save the same to this are worth the same, s.
pub(super) const TIE_S: f64 = 1e-3;

/// What the search finds; what is uncertain of it is still to be worked out.
pub(crate) struct Chosen {
    best: best_set::Choice,
    /// The best set's candidates in the order of the bits of `saved_s`.
    pub(crate) members: Vec<usize>,
    /// Seconds saved over all events if just some of the members work, by the set of those.
    saved_s: Vec<f64>,
    by_event_s: Vec<f64>,
    added_up_s: f64,
    by_money: BudgetCurve,
    by_hours: BudgetCurve,
    next_money: Option<NextStep>,
    next_hours: Option<NextStep>,
    pub(crate) left_out: Vec<LeftOut>,
    /// By the candidates' places, the seconds that the best set with each saves beyond the best without it; `None` for one that fits
    /// no set.
    pub(super) buying_s: Vec<Option<f64>>,
    pub(crate) cut_short: bool,
}

impl Season<'_> {
    /// The best set within the limits, once every ride of the search is worked out.
    pub(crate) fn chosen(
        &self,
        parts: &Parts,
        items: &[Item],
        limits: &Limits,
        times: &[f64],
    ) -> Chosen {
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
        let otherwise = best_set::otherwise(&worths, &items, limits, best.set);
        let buying_s = |c: usize| {
            let bit = parts.order.iter().position(|&place| place == c)?;
            let margin_s = best.worth - otherwise[bit]?;
            let taken = best.set >> bit & 1 == 1;
            Some(if taken { margin_s } else { -margin_s })
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
            buying_s: (0..items.len()).map(buying_s).collect(),
            cut_short,
        }
    }

    /// The best set with what is uncertain of it.
    pub(crate) fn best_set(&self, chosen: Chosen, items: &[Item], savings: &Savings) -> BestSet {
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
        let further = self.further_m(|e| Figure {
            value: chosen.by_event_s[e],
            sd: 0.0,
        });
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
            further_by_event_m: further.map(|by_event| {
                let value = |one: Option<Figure>| one.map(|figure| figure.value);
                by_event.into_iter().map(value).collect()
            }),
            by_event_s: chosen.by_event_s,
            by_money: chosen.by_money,
            by_hours: chosen.by_hours,
            next_money: chosen.next_money,
            next_hours: chosen.next_hours,
        }
    }
}
