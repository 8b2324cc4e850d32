//! The best set of things under two budgets, their chances counted. It knows no ride: it takes what every set is worth.
//!
//! A set is a number whose bits say which items are in it. Every set is looked at, none is passed over by a rule of thumb,
//! so the best is the best of them all.

/// The most items: all their sets are tabulated.
pub const MOST_ITEMS: usize = 20;
/// Sums of costs in another order may differ in their last digits.
const ROUNDING: f64 = 1e-9;

/// Something that can be bought.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Item {
    /// The chance that it works, 0 to 1, whatever becomes of the others.
    pub chance: f64,
    /// What it takes of each budget, not below 0.
    pub costs: [f64; 2],
    /// The groups it is in, one bit each: two of one group exclude each other.
    pub groups: u32,
}

/// A set with its worth and what it takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choice {
    /// The items in it, one bit each.
    pub set: usize,
    /// What it is worth.
    pub worth: f64,
    /// What it takes of each budget.
    pub costs: [f64; 2],
}

/// What the search finds.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The best set within both budgets.
    pub best: Choice,
    /// For each budget, the best set as that budget grows from nothing, the other held at its limit: where a better one
    /// comes within reach. Costs and worth ascend.
    pub curves: [Vec<Choice>; 2],
}

/// Turns what every set is worth if all of it works into what it is worth on average: with `f(ω)` the worth if just `ω` works,
/// `E(S) = Σ_{ω ⊆ S} f(ω) Π_{i∈ω} pᵢ Π_{i∈S∖ω} (1 − pᵢ)`, exact to rounding.
///
/// One item at a time: a set with it is worth `p` of itself and `1 − p` of itself without it. `worths` has `2^n` entries.
pub fn on_average(worths: &mut [f64], items: &[Item]) {
    for (i, item) in items.iter().enumerate() {
        for block in worths.chunks_exact_mut(2 << i) {
            let (without, with) = block.split_at_mut(1 << i);
            for (with, without) in with.iter_mut().zip(without) {
                *with = item.chance * *with + (1.0 - item.chance) * *without;
            }
        }
    }
}

/// The best set within both limits, and how the best grows with each. `worths[S]` is what set `S` is worth, that of no item
/// being 0. Among sets worth the same to `tie` the one that takes least is best: of the first budget, then of the second,
/// then in number. A step of a curve is worth more than `tie`.
pub fn search(worths: &[f64], items: &[Item], limits: [f64; 2], tie: f64) -> Found {
    let sums = Sums::new(items);
    let within = |cost: f64, limit: f64| cost <= limit + ROUNDING * limit.abs().max(1.0);
    let mut most = 0.0_f64;
    let mut curves = [Steps::default(), Steps::default()];
    for (set, &worth) in worths.iter().enumerate() {
        let Some(costs) = sums.of(set) else { continue };
        let fits = [within(costs[0], limits[0]), within(costs[1], limits[1])];
        for (k, steps) in curves.iter_mut().enumerate() {
            if fits[1 - k] {
                steps.take(Choice { set, worth, costs }, k);
            }
        }
        if fits[0] && fits[1] && worth > most {
            most = worth;
        }
    }
    let mut best = Choice { set: 0, worth: 0.0, costs: [0.0; 2] };
    let cheaper = |a: &Choice, b: &Choice| {
        let key = |c: &Choice| [c.costs[0], c.costs[1], f64::from(c.set.count_ones()), -c.worth];
        key(a).iter().zip(key(b)).map(|(a, b)| a - b).find(|d| d.abs() > ROUNDING).is_some_and(|d| d < 0.0)
    };
    let mut none_yet = true;
    for (set, &worth) in worths.iter().enumerate().filter(|&(_, &worth)| worth >= most - tie) {
        let Some(costs) = sums.of(set) else { continue };
        let choice = Choice { set, worth, costs };
        if within(costs[0], limits[0]) && within(costs[1], limits[1]) && (none_yet || cheaper(&choice, &best)) {
            best = choice;
            none_yet = false;
        }
    }
    Found { best, curves: curves.map(|steps| steps.apart(tie)) }
}

/// What every set takes, from the sums of its lower and upper half.
struct Sums {
    half: usize,
    lower: Vec<Sum>,
    upper: Vec<Sum>,
}

#[derive(Clone, Copy)]
struct Sum {
    costs: [f64; 2],
    groups: u32,
    excluded: bool,
}

impl Sums {
    fn new(items: &[Item]) -> Self {
        let half = items.len() / 2;
        let (lower, upper) = items.split_at(half);
        Self { half, lower: sums(lower), upper: sums(upper) }
    }

    /// What a set takes; `None` if two of its items exclude each other.
    fn of(&self, set: usize) -> Option<[f64; 2]> {
        let (lower, upper) = (&self.lower[set & ((1 << self.half) - 1)], &self.upper[set >> self.half]);
        let excluded = lower.excluded || upper.excluded || lower.groups & upper.groups != 0;
        (!excluded).then(|| [lower.costs[0] + upper.costs[0], lower.costs[1] + upper.costs[1]])
    }
}

fn sums(items: &[Item]) -> Vec<Sum> {
    let mut sums = vec![Sum { costs: [0.0; 2], groups: 0, excluded: false }];
    for item in items {
        for at in 0..sums.len() {
            let before = sums[at];
            sums.push(Sum {
                costs: [before.costs[0] + item.costs[0], before.costs[1] + item.costs[1]],
                groups: before.groups | item.groups,
                excluded: before.excluded || before.groups & item.groups != 0,
            });
        }
    }
    sums
}

/// Sets of which none is both cheaper and worth more than another, by ascending cost.
#[derive(Default)]
struct Steps(Vec<Choice>);

impl Steps {
    fn take(&mut self, choice: Choice, k: usize) {
        let steps = &mut self.0;
        let after = steps.partition_point(|step| step.costs[k] <= choice.costs[k]);
        if after > 0 && steps[after - 1].worth >= choice.worth {
            return;
        }
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
        Item { chance, costs: [money, hours], groups: 0 }
    }

    /// A worth with interactions of every order, from a seed.
    fn worths(random: &mut fastrand::Rng, n: usize) -> Vec<f64> {
        let gains: Vec<f64> = (0..n).map(|_| random.f64() * 30.0 - 4.0).collect();
        let sum = |set: usize| (0..n).filter(|i| set >> i & 1 == 1).map(|i| gains[i]).sum::<f64>();
        (0..1 << n).map(|set| sum(set) - 0.004 * sum(set).powi(2)).collect()
    }

    /// The average over what works, written out.
    fn written_out(worths: &[f64], items: &[Item], set: usize) -> f64 {
        let outcomes = (0..worths.len()).filter(|outcome| outcome & !set == 0);
        outcomes
            .map(|outcome| {
                let chance: f64 = items
                    .iter()
                    .enumerate()
                    .filter(|(i, _)| set >> i & 1 == 1)
                    .map(|(i, item)| if outcome >> i & 1 == 1 { item.chance } else { 1.0 - item.chance })
                    .product();
                chance * worths[outcome]
            })
            .sum()
    }

    fn takes(items: &[Item], set: usize, k: usize) -> f64 {
        items.iter().enumerate().filter(|(i, _)| set >> i & 1 == 1).map(|(_, item)| item.costs[k]).sum()
    }

    fn allowed(items: &[Item], set: usize) -> bool {
        let members: Vec<&Item> = items.iter().enumerate().filter(|(i, _)| set >> i & 1 == 1).map(|(_, i)| i).collect();
        members.iter().enumerate().all(|(i, a)| members[..i].iter().all(|b| a.groups & b.groups == 0))
    }

    #[test]
    fn the_best_set_is_that_of_an_exhaustive_search_over_sets_and_outcomes() {
        let mut random = fastrand::Rng::with_seed(5);
        for _ in 0..300 {
            let n = random.usize(1..8);
            let groups = |random: &mut fastrand::Rng| if random.bool() { 1 << random.u32(0..2) } else { 0 };
            let items: Vec<Item> = (0..n)
                .map(|_| Item {
                    groups: groups(&mut random),
                    ..item(random.f64(), f64::from(random.u32(0..5)) * 20.0, random.f64() * 9.0)
                })
                .collect();
            let limits = [random.f64() * 150.0, random.f64() * 25.0];
            let plain = worths(&mut random, n);
            let mut average = plain.clone();
            on_average(&mut average, &items);
            let found = search(&average, &items, limits, TIE);
            let mut most = 0.0_f64;
            for (set, average) in average.iter().enumerate() {
                let worth = written_out(&plain, &items, set);
                assert!((worth - average).abs() < 1e-9, "{worth} {average}");
                if allowed(&items, set) && takes(&items, set, 0) <= limits[0] && takes(&items, set, 1) <= limits[1] {
                    most = most.max(worth);
                }
            }
            assert!((found.best.worth - most).abs() < 1e-8, "{} for {most}", found.best.worth);
            assert!(allowed(&items, found.best.set));
            for (k, curve) in found.curves.iter().enumerate() {
                assert_eq!(curve[0].costs[k], 0.0);
                assert!(curve.windows(2).all(|w| w[0].costs[k] < w[1].costs[k] && w[0].worth < w[1].worth));
                let at_limit = curve.iter().rev().find(|step| step.costs[k] <= limits[k]).unwrap();
                assert!((at_limit.worth - found.best.worth).abs() < 1e-8);
            }
        }
    }

    #[test]
    fn nothing_is_bought_that_is_worth_nothing() {
        let items = [item(1.0, 10.0, 0.0), item(1.0, 0.0, 0.0)];
        let found = search(&[0.0, 0.0, 0.0, 0.0], &items, [100.0, 100.0], TIE);
        assert_eq!(found.best.set, 0);
    }

    #[test]
    fn without_a_budget_only_what_is_free_is_taken() {
        let items = [item(1.0, 10.0, 0.0), item(0.5, 0.0, 0.0), item(1.0, 0.0, 1.0)];
        let mut worths = vec![0.0, 50.0, 8.0, 58.0, 9.0, 59.0, 17.0, 67.0];
        on_average(&mut worths, &items);
        let found = search(&worths, &items, [0.0, 0.0], TIE);
        assert_eq!((found.best.set, found.best.worth), (0b010, 4.0));
    }
}
