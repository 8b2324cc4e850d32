//! Why a candidate is not in the best set.

use serde::Serialize;

use super::best::TIE_S;
use crate::numerics::best_set::{self, Item, Limits};

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

/// An item whose need is named by its place in another order.
pub(super) fn in_bits(item: &Item, order: &[usize]) -> Item {
    Item {
        needs: item
            .needs
            .and_then(|needed| order.iter().position(|&place| place == needed)),
        ..*item
    }
}

/// What an item adds on average to those that it needs.
pub(super) fn by_itself(worths: &[f64], items: &[Item], bit: usize) -> f64 {
    let line: usize = best_set::line(items, bit).map(|one| 1 << one).sum();
    worths[line] - worths[line & !(1 << bit)]
}

/// Why an item is not in the best set, and which other one is the reason; `None` if it is in.
pub(super) fn why_not(
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
