//! The best set of things under two budgets, their chances counted. It knows no ride: it takes what every set is worth.
//!
//! A set is a number whose bits say which items are in it. Every set is looked at, none is passed over by a rule of thumb,
//! so the best is the best of them all.
//!
//! The budgets are money, and hours a week for so many weeks. Hours that an item takes once may be spread over any weeks; its
//! weekly hours come in a block ([`crate::numerics::schedule`]), which may begin in any week. So a set fits if its blocks can be placed
//! within the hours of a week, and all its hours are no more than those of all weeks together.

use crate::numerics::schedule::{self, Block, Placed};

/// The most items: all their sets are tabulated.
pub(crate) const MOST_ITEMS: usize = 20;
/// Sums of costs in another order may differ in their last digits.
const ROUNDING: f64 = 1e-9;
/// The most steps of the search for a schedule of one set's blocks.
const MOST_STEPS: u32 = 50_000;
/// The most steps for all sets together. What is then not known to fit counts as not fitting.
const MOST_STEPS_IN_ALL: u32 = 1_000_000;

/// Something that can be bought.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Item {
    /// The chance that it works, 0 to 1, once what it needs does, whatever becomes of the others.
    pub chance: f64,
    /// The money that it takes, not below 0.
    pub money: f64,
    /// The hours that it takes in all, those of its block among them, not below 0.
    pub hours: f64,
    /// Its weekly hours.
    pub block: Option<Block>,
    /// Whether it takes more weeks than there are.
    pub too_long: bool,
    /// The groups it is in, one bit each: two of one group exclude each other.
    pub groups: u32,
    /// The place of the item without which it cannot be taken, and brings nothing. None of these lead back to itself.
    pub needs: Option<usize>,
}

/// What there is to spend.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Limits {
    /// Money.
    pub money: f64,
    /// Hours in each week.
    pub hours_per_week: f64,
    /// How many weeks.
    pub weeks: f64,
}

/// A set with its worth and what it takes.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Choice {
    /// The items in it, one bit each.
    pub set: usize,
    /// What it is worth.
    pub worth: f64,
    /// The least of each budget within which it fits: money, and hours a week.
    pub costs: [f64; 2],
    /// The hours that it takes in all.
    pub hours: f64,
}

/// What the search finds.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Found {
    /// The best set within both budgets.
    pub best: Choice,
    /// For money and for hours a week, the best set as that budget grows from nothing, the other and the weeks held: where a
    /// better one comes within reach. Costs and worth ascend.
    pub curves: [Vec<Choice>; 2],
    /// Whether some sets were passed over because their schedules would have taken too long to search. All that is found fits.
    pub cut_short: bool,
}

/// Turns what every set is worth if all of it works into what it is worth on average: with `f(ω)` the worth if just `ω` works,
/// `E(S) = Σ_{ω ⊆ S} f(ω) Π_{i∈ω} pᵢ Π_{i∈S∖ω} (1 − pᵢ)`, exact to rounding. Where items need others, ω runs over the sets
/// that hold what each of theirs needs, and the last product over those items of `S∖ω` whose need is met in ω.
///
/// One item at a time, those that need others first: a set with it is worth `p` of itself and `1 − p` of itself without it and
/// all that need it. `worths` has `2^n` entries.
pub(crate) fn on_average(worths: &mut [f64], items: &[Item]) {
    for i in needing_first(items) {
        let chance = items[i].chance;
        let without_it = !needing(items, i);
        if without_it == !(1 << i) {
            for block in worths.chunks_exact_mut(2 << i) {
                let (without, with) = block.split_at_mut(1 << i);
                for (with, without) in with.iter_mut().zip(without) {
                    *with = chance * *with + (1.0 - chance) * *without;
                }
            }
            continue;
        }
        for set in (0..worths.len()).filter(|set| set >> i & 1 == 1) {
            worths[set] = chance * worths[set] + (1.0 - chance) * worths[set & without_it];
        }
    }
}

/// How many items stand before this one in the line of what it needs.
fn depth(items: &[Item], i: usize) -> usize {
    line(items, i).count() - 1
}

/// An item, what it needs, what that needs, and so on; it ends also where the needs wrongly lead back.
pub(crate) fn line(items: &[Item], i: usize) -> impl Iterator<Item = usize> + '_ {
    std::iter::successors(Some(i), |&i| items.get(i)?.needs).take(items.len().max(1))
}

/// The items' places, those that need others before those.
fn needing_first(items: &[Item]) -> Vec<usize> {
    let mut order: Vec<usize> = Vec::new();
    for i in 0..items.len() {
        let at = order.partition_point(|&other| depth(items, other) >= depth(items, i));
        order.insert(at, i);
    }
    order
}

/// An item and all that need it, one bit each.
fn needing(items: &[Item], i: usize) -> usize {
    (0..items.len())
        .filter(|&other| line(items, other).any(|one| one == i))
        .map(|other| 1 << other)
        .sum()
}

/// Whether a cost keeps within a limit.
fn within(cost: f64, limit: f64) -> bool {
    cost <= limit + ROUNDING * limit.abs().max(1.0)
}

/// What a set takes; `None` if it cannot be had at all: two of its items exclude each other, one lacks what it needs, or is
/// too long. Of the hours a week, those that are known to do.
pub(crate) fn takes(items: &[Item], set: usize, weeks: f64) -> Option<Choice> {
    let sum = Sums::new(items, weeks).of(set)?;
    let own = items.iter().enumerate().filter(|(i, _)| set >> i & 1 == 1);
    let blocks: Vec<Block> = own.filter_map(|(_, item)| item.block).collect();
    let (_, scheduled) = schedule::least(&blocks, weeks, &mut { MOST_STEPS });
    let hours_per_week = scheduled.max(sum.least_hours_per_week);
    Some(Choice {
        set,
        worth: 0.0,
        costs: [sum.money, hours_per_week],
        hours: sum.hours,
    })
}

impl Choice {
    /// Whether it keeps within one budget: money (0) or hours a week (1).
    pub(crate) fn keeps_within(&self, limits: &Limits, k: usize) -> bool {
        within(self.costs[k], limits.of(k))
    }
}

impl Limits {
    /// Money (0) or hours a week (1).
    pub(crate) fn of(&self, k: usize) -> f64 {
        if k == 0 {
            self.money
        } else {
            self.hours_per_week
        }
    }
}

/// The best set within all limits, and how the best grows with each budget. `worths[S]` is what set `S` is worth, that of no
/// item being 0. Among sets worth the same to `tie` the one that takes least is best: of money, then of hours, then in number.
/// A step of a curve is worth more than `tie`.
pub(crate) fn search(worths: &[f64], items: &[Item], limits: &Limits, tie: f64) -> Found {
    let sums = Sums::new(items, limits.weeks);
    let mut schedules = Schedules::new(items, limits.weeks);
    let mut most = 0.0_f64;
    let mut curves = [Steps::default(), Steps::default()];
    for (set, &worth) in worths.iter().enumerate() {
        let Some(sum) = sums.of(set) else { continue };
        let affordable = within(sum.money, limits.money);
        let mut choice = Choice {
            set,
            worth,
            costs: [sum.money, sum.least_hours_per_week],
            hours: sum.hours,
        };
        // A schedule is looked for only where the set would count.
        let counts = within(choice.costs[1], limits.hours_per_week)
            && (affordable && worth > most || !curves[0].hold_better(&choice, 0));
        if counts && schedules.fits(&sum, limits.hours_per_week) {
            curves[0].take(choice, 0);
            if affordable && worth > most {
                most = worth;
            }
        }
        if affordable && choice.costs[1].is_finite() && !curves[1].hold_better(&choice, 1) {
            choice.costs[1] = schedules.least(&sum);
            curves[1].take(choice, 1);
        }
    }
    let mut best: Option<Choice> = None;
    let cheaper = |a: &Choice, b: &Choice| {
        let key = |c: &Choice| [c.costs[0], c.hours, f64::from(c.set.count_ones()), -c.worth];
        key(a)
            .iter()
            .zip(key(b))
            .map(|(a, b)| a - b)
            .find(|d| d.abs() > ROUNDING)
            .is_some_and(|d| d < 0.0)
    };
    for (set, &worth) in worths
        .iter()
        .enumerate()
        .filter(|&(_, &worth)| worth >= most - tie)
    {
        let Some(sum) = sums.of(set).filter(|sum| within(sum.money, limits.money)) else {
            continue;
        };
        let choice = Choice {
            set,
            worth,
            costs: [sum.money, sum.least_hours_per_week],
            hours: sum.hours,
        };
        let counts = within(choice.costs[1], limits.hours_per_week)
            && best.is_none_or(|best| cheaper(&choice, &best));
        if counts && schedules.fits(&sum, limits.hours_per_week) {
            best = Some(Choice {
                costs: [sum.money, schedules.least(&sum).min(limits.hours_per_week)],
                ..choice
            });
        }
    }
    Found {
        best: best.unwrap_or_default(),
        curves: curves.map(|steps| steps.apart(tie)),
        cut_short: schedules.cut_short,
    }
}

/// For each item the most that a set within the limits is worth which decides otherwise about it than the best set: lacks it where
/// that holds it, or else holds it. `None` where it fits into no set.
pub(crate) fn otherwise(
    worths: &[f64],
    items: &[Item],
    limits: &Limits,
    best: usize,
) -> Vec<Option<f64>> {
    let sums = Sums::new(items, limits.weeks);
    let mut schedules = Schedules::new(items, limits.weeks);
    let mut fits = |set: usize| {
        sums.of(set).is_some_and(|sum| {
            within(sum.money, limits.money)
                && within(sum.least_hours_per_week, limits.hours_per_week)
                && schedules.fits(&sum, limits.hours_per_week)
        })
    };
    // An item that does not fit with just what it needs fits into no set; the best set still fits with less in it.
    let mut most: Vec<Option<f64>> = (0..items.len())
        .map(|i| {
            let alone = line(items, i).fold(0, |set, one| set | 1 << one);
            let set = if best >> i & 1 == 1 {
                best & !needing(items, i)
            } else {
                alone
            };
            fits(set).then(|| worths[set])
        })
        .collect();
    let least_of =
        |most: &[Option<f64>]| most.iter().flatten().copied().fold(f64::INFINITY, f64::min);
    let mut least = least_of(&most);
    for (set, &worth) in worths.iter().enumerate() {
        if worth <= least {
            continue;
        }
        let better = |i: usize, most: &[Option<f64>]| {
            (set ^ best) >> i & 1 == 1 && most[i].is_some_and(|most| worth > most)
        };
        if !(0..items.len()).any(|i| better(i, &most)) || !fits(set) {
            continue;
        }
        for i in 0..items.len() {
            if better(i, &most) {
                most[i] = Some(worth);
            }
        }
        least = least_of(&most);
    }
    most
}

/// What every set takes, from the sums of its lower and upper half.
struct Sums {
    half: usize,
    weeks: f64,
    lower: Vec<Sum>,
    upper: Vec<Sum>,
}

#[derive(Clone, Copy)]
struct Sum {
    money: f64,
    hours: f64,
    /// Hours a week that the set takes at least, whatever the schedule.
    least_hours_per_week: f64,
    /// Hours a week of blocks longer than half of the weeks, which meet in the middle.
    long: f64,
    /// Hours a week of all blocks.
    weekly: f64,
    /// The blocks, one bit each in the order of the items that have one.
    blocks: usize,
    groups: u32,
    needs: usize,
    excluded: bool,
}

const NOTHING: Sum = Sum {
    money: 0.0,
    hours: 0.0,
    least_hours_per_week: 0.0,
    long: 0.0,
    weekly: 0.0,
    blocks: 0,
    groups: 0,
    needs: 0,
    excluded: false,
};

impl Sum {
    fn and(&self, other: &Self, weeks: f64) -> Self {
        let (hours, long) = (self.hours + other.hours, self.long + other.long);
        let spread_evenly = if hours > 0.0 { hours / weeks } else { 0.0 };
        let one = self.least_hours_per_week.max(other.least_hours_per_week);
        Self {
            money: self.money + other.money,
            hours,
            least_hours_per_week: spread_evenly.max(long).max(one),
            long,
            weekly: self.weekly + other.weekly,
            blocks: self.blocks | other.blocks,
            groups: self.groups | other.groups,
            needs: self.needs | other.needs,
            excluded: self.excluded || other.excluded || self.groups & other.groups != 0,
        }
    }
}

impl Sums {
    fn new(items: &[Item], weeks: f64) -> Self {
        let half = items.len() / 2;
        let mut next_block = 1_usize;
        let of_item = |item: &Item| {
            let block = item.block.map_or(0, |_| next_block);
            next_block <<= block.count_ones();
            let hours_per_week = item.block.map_or(0.0, |block| block.hours_per_week);
            let long = item.block.is_some_and(|block| 2.0 * block.weeks > weeks);
            Sum {
                money: item.money,
                hours: item.hours,
                least_hours_per_week: hours_per_week,
                long: if long { hours_per_week } else { 0.0 },
                weekly: hours_per_week,
                blocks: block,
                groups: item.groups,
                needs: item.needs.map_or(0, |needed| 1 << needed),
                excluded: item.too_long,
            }
        };
        let own: Vec<Sum> = items.iter().map(of_item).collect();
        let (lower, upper) = own.split_at(half);
        Self {
            half,
            weeks,
            lower: sums(lower, weeks),
            upper: sums(upper, weeks),
        }
    }

    /// What a set takes; `None` if it cannot be had.
    fn of(&self, set: usize) -> Option<Sum> {
        let (lower, upper) = (
            &self.lower[set & ((1 << self.half) - 1)],
            &self.upper[set >> self.half],
        );
        let excluded = lower.excluded || upper.excluded || lower.groups & upper.groups != 0;
        (!excluded && (lower.needs | upper.needs) & !set == 0).then(|| lower.and(upper, self.weeks))
    }
}

fn sums(items: &[Sum], weeks: f64) -> Vec<Sum> {
    let mut sums = vec![NOTHING];
    for item in items {
        for at in 0..sums.len() {
            sums.push(sums[at].and(item, weeks));
        }
    }
    sums
}

/// What is known of the schedules of every set of blocks.
struct Schedules {
    weeks: f64,
    blocks: Vec<Block>,
    /// For each set of blocks the hours a week that it is known to take at least, and hours within which a schedule is known; 0
    /// where nothing is known.
    known: Vec<(f64, f64)>,
    steps_left: u32,
    cut_short: bool,
}

impl Schedules {
    fn new(items: &[Item], weeks: f64) -> Self {
        let blocks: Vec<Block> = items.iter().filter_map(|item| item.block).collect();
        let known = vec![(0.0, 0.0); 1 << blocks.len()];
        Self {
            weeks,
            blocks,
            known,
            steps_left: MOST_STEPS_IN_ALL,
            cut_short: false,
        }
    }

    /// What is known of the blocks of a set.
    fn look_up(&mut self, sum: &Sum) -> (f64, f64) {
        let (mut low, mut high) = self.known[sum.blocks];
        if high == 0.0 {
            high = sum.weekly;
        }
        // A set takes no less than a part of it.
        let mut left = sum.blocks;
        while left != 0 {
            low = low.max(self.known[sum.blocks & !(left & left.wrapping_neg())].0);
            left &= left - 1;
        }
        self.known[sum.blocks] = (low.min(high), high);
        self.known[sum.blocks]
    }

    /// Runs a search for schedules of some blocks within what is left of the steps.
    fn searched<T>(&mut self, set: usize, search: impl FnOnce(&[Block], &mut u32) -> T) -> T {
        let own = self
            .blocks
            .iter()
            .enumerate()
            .filter(|(b, _)| set >> b & 1 == 1);
        let own: Vec<Block> = own.map(|(_, block)| *block).collect();
        let allowed = self.steps_left.min(MOST_STEPS);
        let mut left = allowed;
        let found = search(&own, &mut left);
        self.steps_left -= allowed - left;
        found
    }

    /// Whether a set is known to fit within so many hours a week.
    fn fits(&mut self, sum: &Sum, hours_per_week: f64) -> bool {
        let (low, high) = self.look_up(sum);
        if within(high, hours_per_week) || !within(low, hours_per_week) {
            return within(high, hours_per_week);
        }
        let weeks = self.weeks;
        let placed = self.searched(sum.blocks, |own, steps| {
            schedule::place(own, weeks, hours_per_week, steps)
        });
        let known = &mut self.known[sum.blocks];
        match placed {
            Placed::Within(fullest) => known.1 = fullest,
            // Just more than the limit is needed.
            Placed::Nowhere => {
                known.0 =
                    (hours_per_week + 4.0 * ROUNDING * hours_per_week.abs().max(1.0)).min(high)
            }
            Placed::CutShort => {
                self.cut_short = true;
                known.0 = high;
            }
        }
        matches!(placed, Placed::Within(_))
    }

    /// The least hours a week within which a set is known to fit.
    fn least(&mut self, sum: &Sum) -> f64 {
        let (low, high) = self.look_up(sum);
        if !within(high, low.max(sum.least_hours_per_week)) {
            let weeks = self.weeks;
            let (low, found) =
                self.searched(sum.blocks, |own, steps| schedule::least(own, weeks, steps));
            self.cut_short |= low < found;
            let high = found.min(high);
            self.known[sum.blocks] = (high, high);
        }
        self.known[sum.blocks].1.max(sum.least_hours_per_week)
    }
}

/// Sets of which none is both cheaper and worth more than another, by ascending cost.
#[derive(Default)]
struct Steps(Vec<Choice>);

impl Steps {
    /// Whether one is there that costs no more and is worth as much.
    fn hold_better(&self, choice: &Choice, k: usize) -> bool {
        let after = self
            .0
            .partition_point(|step| step.costs[k] <= choice.costs[k]);
        after > 0 && self.0[after - 1].worth >= choice.worth
    }

    fn take(&mut self, choice: Choice, k: usize) {
        if self.hold_better(&choice, k) {
            return;
        }
        let steps = &mut self.0;
        let from = steps.partition_point(|step| step.costs[k] < choice.costs[k]);
        let beaten = steps[from..].partition_point(|step| step.worth <= choice.worth);
        steps.splice(from..from + beaten, [choice]);
    }

    /// The steps that are worth more than `tie` beyond the one before, from the set of nothing on.
    fn apart(self, tie: f64) -> Vec<Choice> {
        let mut kept: Vec<Choice> = Vec::new();
        for step in self.0 {
            if kept.last().is_none_or(|last| step.worth > last.worth + tie) {
                kept.push(step);
            }
        }
        kept
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const TIE: f64 = 1e-9;

    fn item(chance: f64, money: f64, hours: f64) -> Item {
        Item {
            chance,
            money,
            hours,
            ..Item::default()
        }
    }

    fn limits(money: f64, hours_per_week: f64, weeks: f64) -> Limits {
        Limits {
            money,
            hours_per_week,
            weeks,
        }
    }

    /// A worth with interactions of every order, from a seed.
    fn worths(random: &mut fastrand::Rng, n: usize) -> Vec<f64> {
        let gains: Vec<f64> = (0..n).map(|_| random.f64() * 30.0 - 4.0).collect();
        let sum = |set: usize| {
            (0..n)
                .filter(|i| set >> i & 1 == 1)
                .map(|i| gains[i])
                .sum::<f64>()
        };
        (0..1 << n)
            .map(|set| sum(set) - 0.004 * sum(set).powi(2))
            .collect()
    }

    fn members(set: usize) -> impl Iterator<Item = usize> {
        (0..MOST_ITEMS).filter(move |i| set >> i & 1 == 1)
    }

    fn closed(items: &[Item], set: usize) -> bool {
        members(set).all(|i| items[i].needs.is_none_or(|needed| set >> needed & 1 == 1))
    }

    /// The average over what works, written out: each item comes off or not; where what it needs does not, it brings nothing.
    fn written_out(worths: &[f64], items: &[Item], set: usize) -> f64 {
        let outcomes = (0..worths.len()).filter(|outcome| outcome & !set == 0);
        outcomes
            .map(|comes_off| {
                let chance = |i: usize| {
                    if comes_off >> i & 1 == 1 {
                        items[i].chance
                    } else {
                        1.0 - items[i].chance
                    }
                };
                let works = |i: &usize| {
                    let mut at = Some(*i);
                    while let Some(one) = at {
                        if comes_off >> one & 1 == 0 {
                            return false;
                        }
                        at = items[one].needs;
                    }
                    true
                };
                let outcome: usize = members(set).filter(works).map(|i| 1 << i).sum();
                members(set).map(chance).product::<f64>() * worths[outcome]
            })
            .sum()
    }

    fn takes_of(items: &[Item], set: usize, of: impl Fn(&Item) -> f64) -> f64 {
        members(set).map(|i| of(&items[i])).sum()
    }

    fn allowed(items: &[Item], set: usize) -> bool {
        let own: Vec<&Item> = members(set).map(|i| &items[i]).collect();
        let apart = own
            .iter()
            .enumerate()
            .all(|(i, a)| own[..i].iter().all(|b| a.groups & b.groups == 0));
        apart && closed(items, set) && own.iter().all(|item| !item.too_long)
    }

    /// Whether blocks fit when each is tried at every week.
    fn placed(blocks: &[Block], used: &mut Vec<f64>, limit: f64) -> bool {
        let Some((first, rest)) = blocks.split_first() else {
            return used.iter().all(|&hours| hours <= limit + 1e-9);
        };
        let own = first.weeks as usize;
        (0..=used.len() - own).any(|start| {
            used[start..start + own]
                .iter_mut()
                .for_each(|hours| *hours += first.hours_per_week);
            let fits = placed(rest, used, limit);
            used[start..start + own]
                .iter_mut()
                .for_each(|hours| *hours -= first.hours_per_week);
            fits
        })
    }

    fn random_items(random: &mut fastrand::Rng, n: usize, weeks: u32) -> Vec<Item> {
        (0..n)
            .map(|i| {
                let once = random.f64() * 9.0;
                let block = (random.u8(0..3) > 0).then(|| Block {
                    hours_per_week: 0.5 * f64::from(random.u32(1..7)),
                    weeks: f64::from(random.u32(1..=weeks)),
                });
                Item {
                    hours: once + block.map_or(0.0, |block| block.hours_per_week * block.weeks),
                    block,
                    too_long: random.u8(0..12) == 0,
                    groups: if random.bool() {
                        1 << random.u32(0..2)
                    } else {
                        0
                    },
                    needs: (i > 0 && random.u8(0..3) == 0).then(|| random.usize(0..i)),
                    ..item(random.f64(), f64::from(random.u32(0..5)) * 20.0, 0.0)
                }
            })
            .collect()
    }

    #[test]
    fn the_best_set_is_that_of_an_exhaustive_search_over_sets_outcomes_and_schedules() {
        let mut random = fastrand::Rng::with_seed(5);
        for _ in 0..300 {
            let n = random.usize(1..7);
            let weeks = random.u32(1..=6);
            let items = random_items(&mut random, n, weeks);
            let limits = limits(random.f64() * 150.0, random.f64() * 8.0, f64::from(weeks));
            let plain = worths(&mut random, n);
            let mut average = plain.clone();
            on_average(&mut average, &items);
            let found = search(&average, &items, &limits, TIE);
            assert!(!found.cut_short);
            let fits = |set: usize, hours_per_week: f64| {
                let blocks: Vec<Block> = members(set).filter_map(|i| items[i].block).collect();
                takes_of(&items, set, |item| item.hours) <= hours_per_week * limits.weeks + 1e-9
                    && placed(&blocks, &mut vec![0.0; weeks as usize], hours_per_week)
            };
            let affordable = |set: usize| takes_of(&items, set, |item| item.money) <= limits.money;
            let possible: Vec<usize> = (0..1 << n).filter(|&set| allowed(&items, set)).collect();
            for &set in &possible {
                let worth = written_out(&plain, &items, set);
                assert!(
                    (worth - average[set]).abs() < 1e-9,
                    "{worth} {}",
                    average[set]
                );
            }
            let most = |fits: &dyn Fn(usize) -> bool| {
                possible
                    .iter()
                    .filter(|&&set| fits(set))
                    .map(|&set| average[set])
                    .fold(0.0, f64::max)
            };
            let best = most(&|set| affordable(set) && fits(set, limits.hours_per_week));
            assert!(
                (found.best.worth - best).abs() < 1e-8,
                "{} for {best}",
                found.best.worth
            );
            assert!(allowed(&items, found.best.set) && fits(found.best.set, limits.hours_per_week));
            for (i, otherwise) in otherwise(&average, &items, &limits, found.best.set)
                .into_iter()
                .enumerate()
            {
                let most = possible
                    .iter()
                    .filter(|&&set| (set ^ found.best.set) >> i & 1 == 1)
                    .filter(|&&set| affordable(set) && fits(set, limits.hours_per_week))
                    .map(|&set| average[set])
                    .reduce(f64::max);
                assert_eq!(
                    otherwise.map(|worth| (1e8 * worth).round()),
                    most.map(|worth| (1e8 * worth).round()),
                    "item {i}"
                );
            }
            let [by_money, by_hours] = &found.curves;
            for (k, curve) in found.curves.iter().enumerate() {
                assert_eq!(curve[0].costs[k], 0.0);
                assert!(
                    curve
                        .windows(2)
                        .all(|w| w[0].costs[k] < w[1].costs[k] && w[0].worth < w[1].worth)
                );
                let at_limit = curve
                    .iter()
                    .rev()
                    .find(|step| step.keeps_within(&limits, k))
                    .unwrap();
                assert!((at_limit.worth - found.best.worth).abs() < 1e-8);
            }
            for step in by_money {
                let most = most(&|set| {
                    takes_of(&items, set, |item| item.money) <= step.costs[0]
                        && fits(set, limits.hours_per_week)
                });
                assert!(
                    (step.worth - most).abs() < 1e-8,
                    "{} for {most}",
                    step.worth
                );
            }
            for step in by_hours {
                let most = most(&|set| affordable(set) && fits(set, step.costs[1]));
                assert!(
                    (step.worth - most).abs() < 1e-8,
                    "{} for {most} at {}",
                    step.worth,
                    step.costs[1]
                );
            }
        }
    }

    #[test]
    fn nothing_is_bought_that_is_worth_nothing() {
        let items = [item(1.0, 10.0, 0.0), item(1.0, 0.0, 0.0)];
        let found = search(
            &[0.0, 0.0, 0.0, 0.0],
            &items,
            &limits(100.0, 100.0, 1.0),
            TIE,
        );
        assert_eq!(found.best.set, 0);
    }

    #[test]
    fn without_a_budget_only_what_is_free_is_taken() {
        let items = [
            item(1.0, 10.0, 0.0),
            item(0.5, 0.0, 0.0),
            item(1.0, 0.0, 1.0),
        ];
        let mut worths = vec![0.0, 50.0, 8.0, 58.0, 9.0, 59.0, 17.0, 67.0];
        on_average(&mut worths, &items);
        for none in [limits(0.0, 0.0, 10.0), limits(0.0, 10.0, 0.0)] {
            let found = search(&worths, &items, &none, TIE);
            assert_eq!((found.best.set, found.best.worth), (0b010, 4.0));
        }
    }

    #[test]
    fn what_needs_another_brings_nothing_without_it() {
        // The second needs the first; the third needs the second.
        let needs = |needed: Option<usize>, chance: f64| Item {
            needs: needed,
            ..item(chance, 0.0, 0.0)
        };
        let items = [needs(None, 0.5), needs(Some(0), 0.4), needs(Some(1), 0.3)];
        let mut worths = vec![0.0, 10.0, 99.0, 20.0, 99.0, 99.0, 99.0, 40.0];
        on_average(&mut worths, &items);
        let all = 0.5 * (0.6 * 10.0 + 0.4 * (0.7 * 20.0 + 0.3 * 40.0));
        assert!((worths[0b111] - all).abs() < 1e-12, "{}", worths[0b111]);
        let found = search(&worths, &items, &limits(0.0, 0.0, 0.0), TIE);
        assert_eq!(found.best.set, 0b111);
    }

    #[test]
    fn twenty_blocks_of_all_lengths_end_within_the_steps_and_what_is_found_fits() {
        let mut random = fastrand::Rng::with_seed(3);
        for _ in 0..2 {
            let blocks: Vec<Block> = (0..20)
                .map(|_| Block {
                    hours_per_week: 0.5 + random.f64() * 3.0,
                    weeks: 1.0 + random.f64() * 9.0,
                })
                .collect();
            let items: Vec<Item> = blocks
                .iter()
                .map(|&block| Item {
                    block: Some(block),
                    hours: block.hours_per_week * block.weeks,
                    ..item(1.0, 0.0, 0.0)
                })
                .collect();
            let gains: Vec<f64> = (0..20).map(|_| 1.0 + random.f64() * 30.0).collect();
            let worths: Vec<f64> = (0..1 << 20)
                .map(|set| members(set).map(|i| gains[i]).sum())
                .collect();
            let limits = limits(0.0, 4.0, 12.0);
            let found = search(&worths, &items, &limits, TIE);
            assert!(found.best.worth > 0.0 && found.best.keeps_within(&limits, 1));
            let own: Vec<Block> = members(found.best.set).map(|i| blocks[i]).collect();
            assert!(matches!(
                schedule::place(&own, 12.0, 4.0 + 1e-6, &mut { MOST_STEPS }),
                Placed::Within(_)
            ));
        }
    }
}
