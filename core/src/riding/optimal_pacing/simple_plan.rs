//! A plan that a person can ride: a few powers, each from a place that can be recognised.
//!
//! The places are those by which the fastest plan's power is described best, by dynamic programming over all choices. The powers
//! bring the rider to the end of each part with as much of W′ left as the fastest plan does there, if that runs out nowhere on
//! it; those balances are then varied while that saves time. Last, powers are rounded, up or down, in the fastest way that W′ lasts
//! for, and what that leaves of W′ is spent by a harder end of a part.

use super::landmarks::{Landmark, Place, places};
use super::left_over::spent;
use super::ride::{Passed, Rider, ride_on};
use super::road::Road;
use super::{Fastest, SPENT_J, WORTH_A_CUE_S};

/// A power, W, and where it begins.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Cue {
    /// Where it begins.
    pub(crate) place: Place,
    /// How far that is from the start, m.
    pub(crate) from_m: f64,
    /// The power from there on, W.
    pub(crate) power_w: f64,
}

/// What a plan of cues is to be.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Style {
    /// How many powers at most.
    pub(crate) targets: usize,
    /// The step to which powers are rounded, W.
    pub(crate) round_w: f64,
    /// The least and the greatest power, W.
    pub(crate) powers_w: (f64, f64),
}

/// A part shorter than this, s, is over before a rider has settled into it; assumed.
pub(super) const SHORTEST_S: f64 = 60.0;
/// How much worse a place without a landmark is, as a share of what one power for the whole course leaves.
const WITHOUT_LANDMARK: f64 = 0.004;

/// The power of a piece of road on a plan of cues, W.
pub(crate) fn power_at_w(cues: &[Cue], cell: usize) -> f64 {
    let begun = cues.partition_point(|cue| cue.place.cell <= cell);
    cues.get(begun.saturating_sub(1))
        .map_or(0.0, |cue| cue.power_w)
}

/// A plan without cues that change nothing.
pub(crate) fn joined(mut cues: Vec<Cue>) -> Vec<Cue> {
    cues.dedup_by_key(|cue| cue.power_w);
    cues
}

/// The best plan of a few powers, or of one where that is faster or nearly so. `None` where not even one lasts.
pub(crate) fn simple_plan(fastest: &Fastest<'_>, style: &Style) -> Option<Vec<Cue>> {
    let places = places(&fastest.road);
    let parts = |begins| Parts {
        fastest,
        road: &fastest.road,
        rider: &fastest.rider,
        style,
        begins,
    };
    let one = parts(places.iter().copied().take(1).collect());
    let several = parts(begins(fastest, &places, style.targets)).moved(&places);
    let balances_j = several.varied(several.balances_j());
    let spent = |cues| spent(&fastest.road, &fastest.rider, style, &places, cues);
    let worth_s = |(time_s, cues): &(f64, Vec<Cue>)| time_s + WORTH_A_CUE_S * cues.len() as f64;
    let best = [several.rounded(&balances_j), one.rounded(&[0.0])]
        .into_iter()
        .filter_map(|plan| plan.and_then(|(_, cues)| spent(cues)))
        .min_by(|a, b| worth_s(a).total_cmp(&worth_s(b)))?;
    Some(best.1)
}

/// Where the parts begin: the places by which the fastest plan's power is described best.
fn begins(fastest: &Fastest<'_>, places: &[Place], targets: usize) -> Vec<Place> {
    // Time, work and work times power up to each place and to the finish.
    let passed = &fastest.ride.passed;
    let mut sums = vec![(0.0, 0.0, 0.0); places.len() + 1];
    let (mut at, mut now) = (0, (0.0, 0.0, 0.0));
    for (k, pair) in passed.windows(2).enumerate() {
        while places.get(at).is_some_and(|place| place.cell == k) {
            sums[at] = now;
            at += 1;
        }
        let (time_s, power_w) = (pair[1].time_s - pair[0].time_s, pair[0].power_w);
        now.0 += time_s;
        now.1 += time_s * power_w;
        now.2 += time_s * power_w * power_w;
    }
    sums[places.len()] = now;
    let left = |from: usize, to: usize| {
        let (a, b) = (&sums[from], &sums[to]);
        let (time_s, work_j) = (b.0 - a.0, b.1 - a.1);
        if time_s < SHORTEST_S && (from > 0 || to < places.len()) {
            return f64::INFINITY;
        }
        (b.2 - a.2 - work_j * work_j / time_s).max(0.0)
    };
    let whole = left(0, places.len());
    let cost = |from: usize, to: usize| {
        let plain = from > 0 && places[from].landmark == Landmark::Distance;
        left(from, to) + if plain { WITHOUT_LANDMARK * whole } else { 0.0 }
    };
    // best[n][to]: the least cost of `n + 1` parts up to a place, and where the last of them begins.
    let mut best: Vec<Vec<(f64, usize)>> = vec![
        (0..=places.len())
            .map(|to| (cost_of_first(to, &left), 0))
            .collect(),
    ];
    for n in 1..targets.min(places.len()) {
        let row = (0..=places.len())
            .map(|to| {
                (1..to)
                    .map(|from| (best[n - 1][from].0 + cost(from, to), from))
                    .fold((f64::INFINITY, 0), |a, b| if b.0 < a.0 { b } else { a })
            })
            .collect();
        best.push(row);
    }
    let (mut n, mut least) = (0, f64::INFINITY);
    for (i, row) in best.iter().enumerate() {
        // Another part must describe something.
        if row[places.len()].0 < least - 1e-3 * whole {
            (n, least) = (i, row[places.len()].0);
        }
    }
    let (mut begins, mut to) = (Vec::new(), places.len());
    loop {
        let from = best[n][to].1;
        begins.push(places[from]);
        if n == 0 {
            break;
        }
        (n, to) = (n - 1, from);
    }
    begins.reverse();
    begins
}

fn cost_of_first(to: usize, left: &impl Fn(usize, usize) -> f64) -> f64 {
    if to == 0 { f64::INFINITY } else { left(0, to) }
}

/// The parts of a plan.
#[derive(Clone)]
struct Parts<'a> {
    fastest: &'a Fastest<'a>,
    road: &'a Road<'a>,
    rider: &'a Rider,
    style: &'a Style,
    begins: Vec<Place>,
}

impl Parts<'_> {
    /// What the fastest plan has left at the end of each part, J; nothing at the line.
    fn balances_j(&self) -> Vec<f64> {
        let parts = self.begins.len();
        (0..parts)
            .map(|part| {
                let passed = self.fastest.ride.passed.get(self.end(part));
                let at_line = part + 1 == parts;
                passed.map_or(0.0, |p| if at_line { 0.0 } else { p.w_prime_j })
            })
            .collect()
    }

    /// The same parts, each beginning one place sooner or later where that saves time.
    fn moved(mut self, places: &[Place]) -> Self {
        let Some((_, mut time_s)) = self.powers_w(&self.balances_j()) else {
            return self;
        };
        for part in 1..self.begins.len() {
            let at = places.iter().position(|place| *place == self.begins[part]);
            let near = [at.and_then(|at| at.checked_sub(1)), at.map(|at| at + 1)];
            for place in near.into_iter().flatten().filter_map(|at| places.get(at)) {
                let after = self.begins[part - 1].cell < place.cell;
                if !after || place.cell >= self.end(part) {
                    continue;
                }
                let mut other = self.clone();
                other.begins[part] = *place;
                if let Some((_, other_s)) = other.powers_w(&other.balances_j())
                    && other_s < time_s
                {
                    (self, time_s) = (other, other_s);
                    break;
                }
            }
        }
        self
    }

    /// The piece of road after the last one of a part.
    fn end(&self, part: usize) -> usize {
        let next = self.begins.get(part + 1);
        next.map_or(self.road.cells.len(), |place| place.cell)
    }

    fn ride(&self, part: usize, from: Passed, power_w: f64) -> Option<(Passed, f64)> {
        let cells = self.begins[part].cell..self.end(part);
        ride_on(self.road, self.rider, cells, from, power_w)
    }

    /// The power that ends a part with a balance, J, and runs out nowhere on it, or as near to that as the least and the greatest
    /// power do; by secant steps inside a bracket, to a joule or so. `None` where the rider comes to a stop or runs out.
    fn power_w(
        &self,
        part: usize,
        from: Passed,
        balance_j: f64,
        guess_w: f64,
    ) -> Option<(f64, Passed)> {
        const STEPS: usize = 14;
        const CLOSE_J: f64 = 1.0;
        let (mut low_w, mut high_w) = self.style.powers_w;
        let mut power_w = guess_w.clamp(low_w, high_w);
        let mut lasts: Option<(f64, Passed)> = None;
        let mut before: Option<(f64, f64)> = None;
        for _ in 0..STEPS {
            let (next, least_j) = self.ride(part, from, power_w)?;
            let spare_j = if least_j < -SPENT_J {
                least_j
            } else {
                next.w_prime_j - balance_j
            };
            if spare_j > -CLOSE_J {
                lasts = Some((power_w, next));
            }
            if spare_j.abs() < CLOSE_J {
                break;
            }
            if spare_j > 0.0 {
                low_w = power_w;
            } else {
                high_w = power_w;
            }
            let slope_s = match before {
                Some((other_w, other_j)) if (other_j - spare_j) * (power_w - other_w) > 0.0 => {
                    (other_j - spare_j) / (power_w - other_w)
                }
                _ => next.time_s - from.time_s,
            };
            before = Some((power_w, spare_j));
            let secant_w = power_w + spare_j / slope_s;
            let inside = secant_w > low_w && secant_w < high_w;
            power_w = if inside {
                secant_w
            } else {
                0.5 * (low_w + high_w)
            };
            if high_w - low_w < 1e-3 {
                break;
            }
        }
        match lasts {
            Some(lasts) => Some(lasts),
            // Not even the steps tried last; the least power may.
            None => {
                let least_w = self.style.powers_w.0;
                let (next, least_j) = self.ride(part, from, least_w)?;
                (least_j >= -SPENT_J).then_some((least_w, next))
            }
        }
    }

    /// The powers that end each part with a balance, J, and the finish time, s. `None` where the rider stops or runs out.
    fn powers_w(&self, balances_j: &[f64]) -> Option<(Vec<f64>, f64)> {
        let mut now = Passed::at_start(self.road, self.rider);
        let mut powers_w = Vec::with_capacity(balances_j.len());
        for (part, &balance_j) in balances_j.iter().enumerate() {
            let (power_w, next) = self.power_w(part, now, balance_j, self.rider.threshold_w)?;
            powers_w.push(power_w);
            now = next;
        }
        Some((powers_w, now.time_s))
    }

    /// The finish time, s, and the plan of the powers that end each part with a balance, J, rounded.
    fn rounded(&self, balances_j: &[f64]) -> Option<(f64, Vec<Cue>)> {
        let (exact_w, _) = self.powers_w(balances_j)?;
        let mut rounded = Rounded {
            parts: self,
            exact_w: &exact_w,
            so_far_w: Vec::new(),
            best: None,
        };
        rounded.go_on(Passed::at_start(self.road, self.rider));
        let (time_s, powers_w) = rounded.best?;
        let cues = self
            .begins
            .iter()
            .zip(powers_w)
            .map(|(&place, power_w)| Cue {
                place,
                from_m: self.road.cells[place.cell].from_m,
                power_w,
            });
        Some((time_s, joined(cues.collect())))
    }

    /// Balances that save time: each but the last is moved up or down for as long as that does, by steps that halve.
    fn varied(&self, mut balances_j: Vec<f64>) -> Vec<f64> {
        const SHARES: [f64; 4] = [0.12, 0.06, 0.03, 0.015];
        const MOST_MOVES: usize = 6;
        let Some((_, mut time_s)) = self.powers_w(&balances_j) else {
            return balances_j;
        };
        for share in SHARES {
            for part in 0..balances_j.len().saturating_sub(1) {
                for sign in [1.0, -1.0] {
                    let step_j = sign * share * self.rider.w_prime_j;
                    let mut moves = 0;
                    while moves < MOST_MOVES {
                        let mut moved = balances_j.clone();
                        moved[part] = (moved[part] + step_j).clamp(0.0, self.rider.w_prime_j);
                        match self.powers_w(&moved) {
                            Some((_, moved_s)) if moved_s < time_s => {
                                (balances_j, time_s) = (moved, moved_s);
                            }
                            _ => break,
                        }
                        moves += 1;
                    }
                    if moves > 0 {
                        break;
                    }
                }
            }
        }
        balances_j
    }
}

/// The fastest of all ways to round the powers up or down that W′ lasts for.
struct Rounded<'a> {
    parts: &'a Parts<'a>,
    exact_w: &'a [f64],
    so_far_w: Vec<f64>,
    best: Option<(f64, Vec<f64>)>,
}

impl Rounded<'_> {
    fn go_on(&mut self, now: Passed) {
        let part = self.so_far_w.len();
        let Some(&exact_w) = self.exact_w.get(part) else {
            if self.best.as_ref().is_none_or(|best| now.time_s < best.0) {
                self.best = Some((now.time_s, self.so_far_w.clone()));
            }
            return;
        };
        let style = self.parts.style;
        let down_w = style.round_w * (exact_w / style.round_w + 1e-9).floor();
        for power_w in [down_w, down_w + style.round_w] {
            let power_w = power_w.clamp(style.powers_w.0, style.powers_w.1);
            let Some((next, least_j)) = self.parts.ride(part, now, power_w) else {
                continue;
            };
            if least_j >= -SPENT_J {
                self.so_far_w.push(power_w);
                self.go_on(next);
                self.so_far_w.pop();
            }
        }
    }
}
