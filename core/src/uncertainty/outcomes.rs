//! What may come of a set of candidates: each comes off or not, and what is uncertain of the rest spreads each such outcome.
//!
//! The saving is a mixture of normal distributions, one for each set ω of members that may work: with its chance `p`, mean `m`
//! and variance `v`, `var = Σ p (v + (m − Σ p m)²)`.

use crate::numerics::distributions::normal_share;
use crate::numerics::solve::root;

/// A member of the set.
#[derive(Clone, Debug, Default)]
pub(crate) struct Member {
    /// The chance that it comes off, once what it needs does.
    pub chance: f64,
    /// The place of the member that it needs.
    pub needs: Option<usize>,
    /// The members that it cannot work without and itself, one bit each.
    pub line: usize,
    /// How one standard deviation of each of the rider's own numbers moves what it adds to those that it needs.
    pub rider_s: Vec<f64>,
    /// How one standard deviation of each of its own amounts moves the saving, where only what it needs works beside it, and
    /// where all members work.
    pub amounts_s: Vec<[f64; 2]>,
}

/// A saving's standard deviation and the range that holds it 19 times in 20.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Spread {
    /// One standard deviation.
    pub sd: f64,
    /// What 2.5 % and 97.5 % of all that may happen lie below.
    pub range_95: [f64; 2],
    /// How many outcomes there are.
    pub outcomes: u32,
}

/// Outcomes are merged into so many normal distributions where there are more, each keeping its mean and variance.
const MOST_NORMALS: usize = 256;

/// The spread of a saving over its outcomes. `saved_s[ω]` is what is saved if just the members in ω work, and `together_s` how
/// one standard deviation of each of the rider's own numbers moves it if all do.
///
/// The moves are known for each member by itself and for all together. In between, what members do to each other's moves is
/// shared out by how much they save: it is of second order, and so the error of that is of third.
pub(crate) fn spread(saved_s: &[f64], members: &[Member], together_s: &[f64]) -> Spread {
    let chances = chances(members, saved_s.len());
    let variances = variances(saved_s, members, together_s);
    let outcomes = || {
        chances
            .iter()
            .zip(saved_s)
            .zip(&variances)
            .map(|((&chance, &mean), &v)| (chance, mean, v))
    };
    let mean: f64 = outcomes().map(|(chance, mean, _)| chance * mean).sum();
    let variance: f64 = outcomes()
        .map(|(chance, m, v)| chance * (v + (m - mean) * (m - mean)))
        .sum();
    let sd = variance.max(0.0).sqrt();
    let normals = merged(outcomes().filter(|(chance, ..)| *chance > 0.0).collect());
    let range_95 = [0.025, 0.975].map(|share| quantile(&normals, share, mean, sd));
    Spread {
        sd,
        range_95,
        outcomes: how_many(members),
    }
}

/// Places of the members, what is needed first.
fn needed_first(members: &[Member]) -> Vec<usize> {
    let mut order: Vec<usize> = Vec::new();
    for (i, member) in members.iter().enumerate() {
        let at = order
            .partition_point(|&other| members[other].line.count_ones() <= member.line.count_ones());
        order.insert(at, i);
    }
    order
}

/// How many sets of members hold what each of theirs needs.
fn how_many(members: &[Member]) -> u32 {
    // For each member, in how many ways those that need it may come off once it has.
    let mut ways = vec![1_u32; members.len()];
    let mut all = 1;
    for i in needed_first(members).into_iter().rev() {
        let own = ways[i] + 1;
        match members[i].needs {
            Some(needed) => ways[needed] *= own,
            None => all *= own,
        }
    }
    all
}

/// The chance of every outcome.
fn chances(members: &[Member], outcomes: usize) -> Vec<f64> {
    let mut chances = vec![0.0; outcomes];
    chances[0] = 1.0;
    let mut done = 0;
    for i in needed_first(members) {
        let Member { chance, needs, .. } = members[i];
        for outcome in (0..outcomes).filter(|outcome| outcome & !done == 0) {
            if needs.is_none_or(|needed| outcome >> needed & 1 == 1) {
                chances[outcome | 1 << i] = chance * chances[outcome];
                chances[outcome] *= 1.0 - chance;
            }
        }
        done |= 1 << i;
    }
    chances
}

/// Sums of some numbers over every set of them.
fn sums(numbers: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut sums = vec![0.0];
    for number in numbers {
        for at in 0..sums.len() {
            sums.push(sums[at] + number);
        }
    }
    sums
}

/// The variance of every outcome.
fn variances(saved_s: &[f64], members: &[Member], together_s: &[f64]) -> Vec<f64> {
    let adds = |(i, member): (usize, &Member)| {
        let with = saved_s.get(member.line).copied().unwrap_or_default();
        let without = saved_s
            .get(member.line & !(1 << i))
            .copied()
            .unwrap_or_default();
        (with - without).abs()
    };
    let adds: Vec<f64> = members.iter().enumerate().map(adds).collect();
    let added = sums(adds.iter().copied());
    let squares = sums(adds.iter().map(|add| add * add));
    let all = added.len() - 1;
    // How much of what all members do to each other those of an outcome do: as many of the products of two.
    let pairs = |outcome: usize| added[outcome] * added[outcome] - squares[outcome];
    let share = |outcome: usize| {
        if pairs(all) > 0.0 {
            pairs(outcome) / pairs(all)
        } else {
            0.0
        }
    };

    // (Σᵢ rᵢ + share · c)² summed over the rider's numbers, by products of the moves.
    let product = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| a * b).sum::<f64>();
    let common: Vec<f64> = (0..together_s.len())
        .map(|x| {
            together_s[x]
                - members
                    .iter()
                    .map(|member| member.rider_s.get(x).copied().unwrap_or(0.0))
                    .sum::<f64>()
        })
        .collect();
    let with_common = sums(
        members
            .iter()
            .map(|member| product(&member.rider_s, &common)),
    );
    let of_common = product(&common, &common);
    let mut own = vec![0.0];
    for (i, member) in members.iter().enumerate() {
        let itself = product(&member.rider_s, &member.rider_s);
        let with_others = sums(
            members[..i]
                .iter()
                .map(|other| product(&member.rider_s, &other.rider_s)),
        );
        own.extend(
            (0..own.len())
                .map(|at| own[at] + itself + 2.0 * with_others[at])
                .collect::<Vec<_>>(),
        );
    }

    // The amounts' moves a + b · added, squared and summed.
    let lines = |member: &Member| -> [f64; 3] {
        let alone = added[member.line & all];
        let mut squared = [0.0; 3];
        for &[first, last] in &member.amounts_s {
            let slope = if added[all] > alone {
                (last - first) / (added[all] - alone)
            } else {
                0.0
            };
            let start = first - slope * alone;
            squared[0] += start * start;
            squared[1] += 2.0 * start * slope;
            squared[2] += slope * slope;
        }
        squared
    };
    let lines: Vec<[f64; 3]> = members.iter().map(lines).collect();
    let [constant, linear, square] = [0, 1, 2].map(|k| sums(lines.iter().map(|line| line[k])));
    let variance = |at: usize| {
        let share = share(at);
        let rider = own[at] + 2.0 * share * with_common[at] + share * share * of_common;
        let amounts = constant[at] + added[at] * (linear[at] + added[at] * square[at]);
        rider.max(0.0) + amounts.max(0.0)
    };
    (0..=all).map(variance).collect()
}

/// Normal distributions by chance, mean and variance, neighbours merged where they are very many.
fn merged(normals: Vec<(f64, f64, f64)>) -> Vec<(f64, f64, f64)> {
    if normals.len() <= MOST_NORMALS {
        return normals;
    }
    let least = normals
        .iter()
        .map(|normal| normal.1)
        .fold(f64::INFINITY, f64::min);
    let most = normals
        .iter()
        .map(|normal| normal.1)
        .fold(f64::NEG_INFINITY, f64::max);
    let mut merged = vec![(0.0, 0.0, 0.0); MOST_NORMALS];
    for (chance, mean, variance) in normals {
        let at = (mean - least) / (most - least).max(f64::MIN_POSITIVE) * MOST_NORMALS as f64;
        let sum = &mut merged[(at as usize).min(MOST_NORMALS - 1)];
        *sum = (
            sum.0 + chance,
            sum.1 + chance * mean,
            sum.2 + chance * (variance + mean * mean),
        );
    }
    let normal = |(chance, sum, squares): (f64, f64, f64)| {
        let mean = sum / chance;
        (chance, mean, (squares / chance - mean * mean).max(0.0))
    };
    merged
        .into_iter()
        .filter(|sum| sum.0 > 0.0)
        .map(normal)
        .collect()
}

/// What a share of the mixture lies below.
fn quantile(normals: &[(f64, f64, f64)], share: f64, mean: f64, sd: f64) -> f64 {
    /// Ends of the search, in standard deviations of each part.
    const FARTHEST: f64 = 6.0;
    const ACCURACY_S: f64 = 1e-4;
    if sd <= ACCURACY_S {
        return mean;
    }
    let below = |x: f64| -> f64 {
        let part = |&(chance, mean, variance): &(f64, f64, f64)| {
            let off = x - mean;
            let sd = variance.sqrt();
            match () {
                () if off >= FARTHEST * sd => chance,
                () if off <= -FARTHEST * sd => 0.0,
                () => chance * normal_share(off / sd),
            }
        };
        normals.iter().map(part).sum::<f64>() - share
    };
    let ends = |sign: f64| {
        normals
            .iter()
            .map(move |&(_, mean, v)| mean + sign * (FARTHEST * v.sqrt() + ACCURACY_S))
    };
    let (low, high) = (
        ends(-1.0).fold(f64::INFINITY, f64::min),
        ends(1.0).fold(f64::NEG_INFINITY, f64::max),
    );
    let found = root(below, low, high, ACCURACY_S).unwrap_or(mean);
    // An outcome that is sure of its size may hold the share by itself.
    let certain = normals
        .iter()
        .filter(|&&(_, _, variance)| variance == 0.0)
        .map(|normal| normal.1);
    certain
        .into_iter()
        .find(|mean| (mean - found).abs() <= 2.0 * ACCURACY_S)
        .unwrap_or(found)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::uncertainty::draws::Normal;

    fn members(of: &[(f64, Option<usize>)]) -> Vec<Member> {
        let line = |mut at: usize| {
            let mut line = 1 << at;
            while let Some(needed) = of[at].1 {
                line |= 1 << needed;
                at = needed;
            }
            line
        };
        of.iter()
            .enumerate()
            .map(|(i, &(chance, needs))| Member {
                chance,
                needs,
                line: line(i),
                ..Member::default()
            })
            .collect()
    }

    /// The spread of a sum of parts, drawn: each comes off or not, its own amount normal, all scaled by one number of the
    /// rider's, and worth a little less beside the others.
    #[test]
    fn the_spread_is_that_of_draws() {
        const CLOSE: f64 = 0.01;
        const LESS: f64 = 0.002;
        let sizes = [30.0, 12.0, 18.0, 25.0, 8.0];
        let sds = [10.0, 6.0, 9.0, 4.0, 8.0];
        const RIDER_SD: f64 = 0.1;
        let mut members = members(&[
            (0.6, None),
            (0.35, Some(0)),
            (0.5, None),
            (0.8, None),
            (0.7, Some(3)),
        ]);
        let worth = |sum: f64, scale: f64| (sum - LESS * sum * sum) * scale;
        let saved: Vec<f64> = sums(sizes.iter().copied())
            .into_iter()
            .map(|sum| worth(sum, 1.0))
            .collect();
        let slope = |sum: f64| 1.0 - 2.0 * LESS * sum;
        let all: f64 = sizes.iter().sum();
        for (i, member) in members.iter_mut().enumerate() {
            let line: f64 = (0..5)
                .filter(|other| member.line >> other & 1 == 1)
                .map(|other| sizes[other])
                .sum();
            member.rider_s = vec![RIDER_SD * (worth(line, 1.0) - worth(line - sizes[i], 1.0))];
            member.amounts_s = vec![[sds[i] * slope(line), sds[i] * slope(all)]];
        }
        let got = spread(&saved, &members, &[RIDER_SD * worth(all, 1.0)]);
        let (mut random, mut normal) = (fastrand::Rng::with_seed(8), Normal::new(8));
        let mut drawn: Vec<f64> = (0..200_000)
            .map(|_| {
                let off: Vec<bool> = members
                    .iter()
                    .map(|member| random.f64() < member.chance)
                    .collect();
                let works =
                    |i: &usize| off[*i] && members[*i].needs.is_none_or(|needed| off[needed]);
                let sum: f64 = (0..5)
                    .filter(works)
                    .map(|i| sizes[i] + sds[i] * normal.draw())
                    .sum();
                worth(sum, 1.0 + RIDER_SD * normal.draw())
            })
            .collect();
        drawn.sort_unstable_by(f64::total_cmp);
        let n = drawn.len() as f64;
        let mean = drawn.iter().sum::<f64>() / n;
        let sd = (drawn.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / n).sqrt();
        assert!(
            (got.sd / sd - 1.0).abs() < 2.0 * CLOSE,
            "{} for {sd}",
            got.sd
        );
        for (end, share) in got.range_95.into_iter().zip([0.025, 0.975]) {
            let want = drawn[(share * n) as usize];
            assert!(
                (end - want).abs() < 3.0 * CLOSE * sd,
                "{end} for {want}, sd {sd}"
            );
        }
    }

    #[test]
    fn chances_of_all_outcomes_make_one_and_none_lacks_what_it_needs() {
        let members = members(&[(0.3, Some(2)), (0.5, None), (0.25, None), (0.9, Some(0))]);
        let chances = chances(&members, 16);
        assert!((chances.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        for (outcome, &chance) in chances.iter().enumerate() {
            let lacks = members.iter().enumerate().any(|(i, m)| {
                outcome >> i & 1 == 1 && m.needs.is_some_and(|needed| outcome >> needed & 1 == 0)
            });
            assert_eq!(chance == 0.0, lacks, "{outcome}");
        }
        assert_eq!(
            how_many(&members),
            chances.iter().filter(|&&chance| chance > 0.0).count() as u32
        );
        assert!((chances[0b1101] - 0.25 * 0.3 * 0.9 * 0.5).abs() < 1e-12);
    }

    #[test]
    fn very_many_outcomes_are_merged_without_a_trace() {
        // Twelve alike, so that the 4096 outcomes are but thirteen normal distributions; a little apart, so that they are not.
        let mut members = members(&[(0.5, None); 12]);
        members
            .iter_mut()
            .for_each(|member| member.amounts_s = vec![[4.0, 4.0]]);
        let saved = sums((0..12).map(|i| 10.0 + 1e-3 * f64::from(i)));
        let got = spread(&saved, &members, &[]);
        let sd = (12.0_f64 * (0.5 * 16.0 + 0.25 * 100.0)).sqrt();
        assert!((got.sd - sd).abs() < 0.01, "{}", got.sd);
        let mut choose = 1.0;
        let mut normals = Vec::new();
        for works in 0..=12 {
            normals.push((
                choose / 4096.0,
                10.0 * f64::from(works),
                16.0 * f64::from(works),
            ));
            choose *= f64::from(12 - works) / f64::from(works + 1);
        }
        for (end, share) in got.range_95.into_iter().zip([0.025, 0.975]) {
            let want = quantile(&normals, share, 60.0, sd);
            assert!((end - want).abs() < 0.05, "{end} for {want}");
        }
    }
}
