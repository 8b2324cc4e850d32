//! Blocks of weeks under a weekly limit: the fewest hours a week within which some blocks can all be placed. No physics.
//!
//! A block takes the same hours in each week of an unbroken run of weeks, and may begin at any time. Blocks that run at the
//! same time add up. This is the scheduling of jobs that share one resource (strip packing with blocks that may be cut
//! across), which has no quick exact rule; so few blocks are placed by a complete search that is quick as a rule and capped.

/// So many hours in each of so many weeks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Block {
    /// Hours in each week, positive.
    pub hours_per_week: f64,
    /// How many weeks, positive and no more than there are.
    pub weeks: f64,
}

/// What a search for a schedule comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Placed {
    /// There is one; these are the hours of its fullest week.
    Within(f64),
    /// There is none.
    Nowhere,
    /// None was found before the steps were used up.
    CutShort,
}

/// The most blocks of one search.
pub(crate) const MOST_BLOCKS: usize = 20;
/// Sums of hours or weeks in another order may differ in their last digits.
const ROUNDING: f64 = 1e-9;

fn at_most(a: f64, b: f64) -> bool {
    a <= b + ROUNDING * b.abs().max(1.0)
}

/// Hours a week that the blocks need whatever the schedule: the largest of their sum spread evenly, the hours of any one,
/// and those of all that are longer than half of the weeks together, which meet in the middle.
pub(crate) fn least_possible(blocks: &[Block], weeks: f64) -> f64 {
    let area: f64 = blocks
        .iter()
        .map(|block| block.hours_per_week * block.weeks)
        .sum();
    let long: f64 = blocks
        .iter()
        .filter(|block| 2.0 * block.weeks > weeks)
        .map(|block| block.hours_per_week)
        .sum();
    let one = blocks
        .iter()
        .map(|block| block.hours_per_week)
        .fold(0.0, f64::max);
    if area > 0.0 {
        (area / weeks).max(long).max(one)
    } else {
        0.0
    }
}

/// Looks for a schedule in which no week takes more than `limit` hours, in no more than `steps` steps, which are counted down.
///
/// Complete: if any schedule exists, moving its blocks to earlier weeks until none can be moved gives one in which each
/// begins at once or when another ends that was in its way, and all of those are tried.
pub(crate) fn place(blocks: &[Block], weeks: f64, limit: f64, steps: &mut u32) -> Placed {
    let mut longest_first: Vec<Block> = Vec::with_capacity(blocks.len());
    for block in blocks {
        let at = longest_first.partition_point(|other| {
            (other.weeks, other.hours_per_week) >= (block.weeks, block.hours_per_week)
        });
        longest_first.insert(at, *block);
    }
    if !at_most(least_possible(blocks, weeks), limit) || blocks.len() > MOST_BLOCKS {
        return Placed::Nowhere;
    }
    let all = (1 << blocks.len()) - 1;
    let begin = Partial {
        now: 0.0,
        used: 0.0,
        fullest: 0.0,
        running: 0,
        waiting: all,
        ready: all,
        ends: [0.0; MOST_BLOCKS],
    };
    let mut search = Search {
        blocks: &longest_first,
        weeks,
        limit,
        steps,
    };
    search.go_on(&begin, 0)
}

/// The fewest hours a week within which the blocks can be placed, or what is known of it: none does with less than the
/// first, and a schedule within the second exists. They differ only if the steps were used up.
pub(crate) fn least(blocks: &[Block], weeks: f64, steps: &mut u32) -> (f64, f64) {
    let low = least_possible(blocks, weeks);
    let mut high: f64 = blocks.iter().map(|block| block.hours_per_week).sum();
    let mut limit = low;
    while high > low + ROUNDING * low.max(1.0) {
        match place(blocks, weeks, limit, steps) {
            Placed::Within(fullest) => high = fullest,
            Placed::Nowhere if limit > low => return (high, high),
            Placed::Nowhere => {}
            Placed::CutShort => return (low, high),
        }
        // Fullest weeks are sums of some blocks' hours, so the next lower one is well below.
        limit = high - 4.0 * ROUNDING * high.max(1.0);
    }
    (high, high)
}

/// A schedule up to some week.
#[derive(Clone, Copy)]
struct Partial {
    now: f64,
    used: f64,
    fullest: f64,
    /// Blocks that have begun and not ended, one bit each.
    running: u32,
    /// Blocks that have not begun.
    waiting: u32,
    /// Those of them that could not have begun just before now.
    ready: u32,
    ends: [f64; MOST_BLOCKS],
}

struct Search<'a> {
    blocks: &'a [Block],
    weeks: f64,
    limit: f64,
    steps: &'a mut u32,
}

fn members(mut set: u32) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        let next = (set != 0).then(|| set.trailing_zeros() as usize)?;
        set &= set - 1;
        Some(next)
    })
}

impl Search<'_> {
    /// Begins blocks from number `from` on now, in every way, and goes on to when the next one ends.
    fn go_on(&mut self, at: &Partial, from: usize) -> Placed {
        if at.waiting == 0 {
            return Placed::Within(at.fullest);
        }
        if *self.steps == 0 {
            return Placed::CutShort;
        }
        *self.steps -= 1;
        if !self.has_room(at) {
            return Placed::Nowhere;
        }
        for b in members(at.waiting & at.ready).filter(|&b| b >= from) {
            let block = self.blocks[b];
            // Of blocks that are alike the first begins first.
            let alike = members(at.waiting)
                .take_while(|&other| other < b)
                .any(|other| self.blocks[other] == block);
            if alike || !at_most(at.used + block.hours_per_week, self.limit) {
                continue;
            }
            let mut begun = *at;
            begun.used += block.hours_per_week;
            begun.fullest = begun.fullest.max(begun.used);
            begun.running |= 1 << b;
            begun.waiting &= !(1 << b);
            begun.ends[b] = at.now + block.weeks;
            match self.go_on(&begun, b + 1) {
                Placed::Nowhere => {}
                found => return found,
            }
        }
        let next = members(at.running)
            .map(|b| at.ends[b])
            .fold(f64::INFINITY, f64::min);
        if next.is_infinite() {
            return Placed::Nowhere;
        }
        let mut later = Partial {
            now: next,
            used: 0.0,
            ready: 0,
            running: 0,
            ..*at
        };
        for b in members(at.running).filter(|&b| at.ends[b] > next + ROUNDING) {
            later.running |= 1 << b;
            later.used += self.blocks[b].hours_per_week;
        }
        for b in members(at.waiting)
            .filter(|&b| !at_most(at.used + self.blocks[b].hours_per_week, self.limit))
        {
            later.ready |= 1 << b;
        }
        self.go_on(&later, 0)
    }

    /// Whether what waits may still find room, as far as sums tell.
    fn has_room(&self, at: &Partial) -> bool {
        let left = self.weeks - at.now;
        let middle = at.now + 0.5 * left;
        let (mut area, mut in_the_middle) = (0.0, 0.0);
        for b in members(at.waiting) {
            let block = self.blocks[b];
            if !at_most(block.weeks, left) {
                return false;
            }
            area += block.hours_per_week * block.weeks;
            if 2.0 * block.weeks > left + ROUNDING * left.max(1.0) {
                in_the_middle += block.hours_per_week;
            }
        }
        for b in members(at.running) {
            let hours_per_week = self.blocks[b].hours_per_week;
            area += hours_per_week * (at.ends[b] - at.now);
            if at.ends[b] > middle + ROUNDING * left.max(1.0) {
                in_the_middle += hours_per_week;
            }
        }
        at_most(area, self.limit * left) && at_most(in_the_middle, self.limit)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLENTY: u32 = 1_000_000;

    fn block(hours_per_week: f64, weeks: f64) -> Block {
        Block {
            hours_per_week,
            weeks,
        }
    }

    #[test]
    fn no_schedule_does_with_less_than_the_even_spread_the_longest_together_or_any_one() {
        let even = [block(2.0, 6.0), block(3.0, 4.0)];
        assert_eq!(least_possible(&even, 12.0), 3.0);
        let many = [
            block(2.0, 6.0),
            block(2.0, 6.0),
            block(2.0, 6.0),
            block(2.0, 6.0),
        ];
        assert_eq!(least_possible(&many, 12.0), 4.0);
        let long = [block(2.0, 7.0), block(3.0, 8.0)];
        assert_eq!(least_possible(&long, 12.0), 5.0);
        assert_eq!(least_possible(&[], 12.0), 0.0);
    }

    /// The hours of the fullest week when every block is tried at every week.
    fn tried_everywhere(blocks: &[Block], weeks: usize, used: &mut Vec<f64>) -> f64 {
        let Some((first, rest)) = blocks.split_first() else {
            return used.iter().copied().fold(0.0, f64::max);
        };
        let own = first.weeks as usize;
        let mut least = f64::INFINITY;
        for start in 0..=weeks - own {
            used[start..start + own]
                .iter_mut()
                .for_each(|hours| *hours += first.hours_per_week);
            least = least.min(tried_everywhere(rest, weeks, used));
            used[start..start + own]
                .iter_mut()
                .for_each(|hours| *hours -= first.hours_per_week);
        }
        least
    }

    #[test]
    fn the_least_hours_are_those_of_every_schedule_tried() {
        let mut random = fastrand::Rng::with_seed(12);
        for _ in 0..2000 {
            let weeks = random.usize(1..=8);
            let n = random.usize(1..=5);
            let blocks: Vec<Block> = (0..n)
                .map(|_| {
                    block(
                        0.5 * f64::from(random.u32(1..9)),
                        random.usize(1..=weeks) as f64,
                    )
                })
                .collect();
            let want = tried_everywhere(&blocks, weeks, &mut vec![0.0; weeks]);
            let (low, high) = least(&blocks, weeks as f64, &mut { PLENTY });
            assert!(
                (low - want).abs() < 1e-6 && (high - want).abs() < 1e-6,
                "{low} {high} {want} {weeks} {blocks:?}"
            );
            for limit in [want - 0.25, want, want + 0.25] {
                let fits = matches!(
                    place(&blocks, weeks as f64, limit, &mut { PLENTY }),
                    Placed::Within(_)
                );
                assert_eq!(fits, limit >= want, "{limit} {want} {weeks} {blocks:?}");
            }
        }
    }

    #[test]
    fn blocks_of_parts_of_weeks_follow_each_other() {
        let blocks = [block(2.0, 2.5), block(2.0, 3.5), block(1.0, 6.0)];
        assert_eq!(least(&blocks, 6.0, &mut { PLENTY }), (3.0, 3.0));
    }

    #[test]
    fn a_search_that_is_cut_short_says_so_and_names_hours_that_do() {
        let blocks = [
            block(3.0, 3.0),
            block(2.0, 5.0),
            block(1.5, 4.0),
            block(2.5, 2.0),
        ];
        assert_eq!(place(&blocks, 7.0, 4.5, &mut 1), Placed::CutShort);
        let (low, high) = least(&blocks, 7.0, &mut 1);
        assert!(low < high && high == 9.0, "{low} {high}");
    }
}
