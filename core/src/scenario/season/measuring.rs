//! What it would be worth to measure what a change saves before it is bought.

use serde::Serialize;

use super::best::{Chosen, TIE_S};
use super::savings::{Savings, weighed};
use super::{Season, changes::Move};
use crate::inputs::fields;
use crate::numerics::best_set::{self, Item};
use crate::numerics::distributions::mean_above_nought;

/// A candidate whose saving can be measured before it is bought: all that it changes is drag area or rolling resistance, which test
/// laps compare.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Measuring {
    /// Its place.
    pub candidate: usize,
    /// Seconds that knowing beforehand whether it works and what it saves would add on average to what the best set saves, since it
    /// would then be bought just where it pays.
    pub worth_s: f64,
    /// Seconds that the best set with it saves on average beyond the best without it; below 0 for one that is left out.
    pub buying_s: f64,
}

impl Season<'_> {
    /// The places of the candidates that can be measured.
    pub(crate) fn measurable(&self) -> Vec<usize> {
        let is_measured = |one: &Move| match *one {
            Move::Add(target, _) | Move::Scale(target, _) => {
                let field = self.plan.field_of(target);
                [&fields::CDA_M2, &fields::ROLLING_COEFFICIENT]
                    .iter()
                    .any(|measured| std::ptr::eq(*measured, field))
            }
            Move::Ride(_) => false,
        };
        (0..self.plan.moves.len())
            .filter(|&c| self.plan.moves[c].iter().all(is_measured))
            .collect()
    }

    /// What measuring each of some candidates is worth, the most first; those for which it is worth nothing are left out.
    ///
    /// With `d` what the best set saves beyond the best that decides otherwise about the candidate, and `t` what it saves less
    /// what it saves on average, the set with it saves `t` more than was believed. Where it is in the best set the measurement is
    /// worth `E max(0, d + t) − d`, else `E max(0, t − d)`. To first order `t` is the same beside whatever else is bought; it is
    /// normal about what it saves if it works, and nothing where it does not.
    pub(crate) fn worth_of_measuring(
        &self,
        chosen: &Chosen,
        candidates: &[usize],
        items: &[Item],
        savings: &Savings,
    ) -> Vec<Measuring> {
        let weights = self.times_ridden();
        let worth = |c: usize| -> Option<Measuring> {
            let buying_s = chosen.buying_s[c]?;
            let own = savings.own(items, c);
            let saves_s = weighed(&own.by_event_s, &weights);
            let own_amounts = own.amounts_s.iter().filter(|((of, _), _)| *of == c);
            let sd_s = own_amounts
                .map(|(_, by_event)| weighed(by_event, &weights).powi(2))
                .sum::<f64>()
                .sqrt();
            // What it requires may not work: then neither does it, measured or not.
            let required: f64 = best_set::line(items, c)
                .skip(1)
                .map(|one| items[one].chance)
                .product();
            let chance = items[c].chance;
            let if_bought = |saved_s: f64, sd_s: f64| {
                mean_above_nought(
                    buying_s + required * (saved_s - chance * saves_s),
                    required * sd_s,
                )
            };
            let known = chance * if_bought(saves_s, sd_s) + (1.0 - chance) * if_bought(0.0, 0.0);
            Some(Measuring {
                candidate: c,
                worth_s: known - buying_s.max(0.0),
                buying_s,
            })
        };
        let mut worths: Vec<Measuring> = candidates
            .iter()
            .filter_map(|&c| worth(c))
            .filter(|one| one.worth_s > TIE_S)
            .collect();
        worths.sort_by(|a, b| b.worth_s.total_cmp(&a.worth_s));
        worths
    }
}
