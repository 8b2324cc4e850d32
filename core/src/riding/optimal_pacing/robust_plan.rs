//! A plan for a rider who is not known exactly: the powers that are fastest on average over riders who may be weaker or
//! stronger than believed, some of whom run out.

use super::ride::{Passed, PlanRide, Rider, Way, ride};
use super::road::Road;
use super::simple_plan::{Cue, Style, joined, power_at_w};
use crate::numerics::solve::lagrange_weight;

/// By what shares a rider's threshold and W′ differ from what is believed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Difference {
    /// Of the threshold.
    pub(crate) threshold: f64,
    /// Of W′.
    pub(crate) w_prime: f64,
}

impl Difference {
    /// The rider who differs so, and who holds a share of the threshold after running out.
    pub(crate) fn rider(&self, believed: &Rider, left_share: f64) -> Rider {
        const LEAST: f64 = 0.05;
        Rider {
            threshold_w: believed.threshold_w * (1.0 + self.threshold).max(LEAST),
            w_prime_j: believed.w_prime_j * (1.0 + self.w_prime).max(LEAST),
            left_share,
            ..*believed
        }
    }
}

/// What a plan gives riders on average.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct OnAverage {
    /// Finish time, s.
    pub(crate) time_s: f64,
    /// The share of them who run out.
    pub(crate) run_out_share: f64,
}

/// The plan that is fastest on average.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Robust {
    /// Its powers.
    pub(crate) cues: Vec<Cue>,
    /// What it gives riders on average.
    pub(crate) on_average: OnAverage,
    /// What the plan that it was made from gives them.
    pub(crate) before: OnAverage,
}

/// A plan ridden by several riders. `None` where one comes to a stop.
///
/// Up to where W′ runs out all of them ride alike, so that only the rest of the way is ridden for each.
pub(crate) fn on_average(road: &Road<'_>, riders: &[Rider], cues: &[Cue]) -> Option<OnAverage> {
    let power_w = |cell: usize, _: f64| power_at_w(cues, cell);
    let untiring = Rider {
        left_share: f64::INFINITY,
        ..*riders.first()?
    };
    let together = ride(road, &untiring, power_w)?;
    let parts = together.parts(road);
    let (mut time_s, mut run_out) = (0.0, 0.0);
    for rider in riders {
        let Some((cell, left_j, _)) = together.runs_out(&parts, rider) else {
            time_s += together.time_s;
            continue;
        };
        run_out += 1.0;
        let mut way = Way::begun(Passed {
            w_prime_j: left_j,
            ..*together.passed.get(cell)?
        });
        way.go_on(road, rider, cell, power_w, |_| {})?;
        time_s += way.now.time_s;
    }
    let count = riders.len() as f64;
    Some(OnAverage {
        time_s: time_s / count,
        run_out_share: run_out / count,
    })
}

/// About what [`on_average`] gives, from four rides: what is left of the way after running out is read off three rides that are
/// held all along to the least, a middle and the greatest power that these riders then hold, by the parabola through them. That
/// who runs out is faster at first than who never was is left out, some tenths of a second.
fn about_on_average(road: &Road<'_>, riders: &[Rider], cues: &[Cue]) -> Option<OnAverage> {
    let untiring = Rider {
        left_share: f64::INFINITY,
        ..*riders.first()?
    };
    let together = ride(road, &untiring, |cell, _| power_at_w(cues, cell))?;
    let parts = together.parts(road);
    // On level road; where the rider sits up, more by the same share for all.
    let held_w = |rider: &Rider| rider.left_share * rider.threshold_w;
    let least_w = riders.iter().map(held_w).fold(f64::INFINITY, f64::min);
    let most_w = riders.iter().map(held_w).fold(0.0, f64::max);
    let at_w = [least_w, 0.5 * (least_w + most_w), most_w];
    let alike = most_w - least_w < 1e-6 * most_w;
    let count = if alike { 1 } else { at_w.len() };
    let held = at_w[..count]
        .iter()
        .map(|most_w| {
            ride(road, &untiring, |cell, _| {
                let share = road.cells[cell].threshold_share();
                power_at_w(cues, cell).min(*most_w * share)
            })
        })
        .collect::<Option<Vec<_>>>()?;
    let (mut time_s, mut run_out) = (0.0, 0.0);
    for rider in riders {
        let Some((cell, left_j, above_w)) = together.runs_out(&parts, rider) else {
            time_s += together.time_s;
            continue;
        };
        run_out += 1.0;
        let from = together.passed.get(cell)?;
        // What is left of W′ is spent on the way first.
        let spent_s = if above_w > 0.0 {
            left_j.max(0.0) / above_w
        } else {
            0.0
        };
        let next = together.passed.get(cell + 1)?;
        let share = (spent_s / (next.time_s - from.time_s)).clamp(0.0, 1.0);
        let rest_s = |held: &PlanRide| {
            let (a, b) = (held.passed.get(cell)?, held.passed.get(cell + 1)?);
            Some(held.time_s - a.time_s - share * (b.time_s - a.time_s))
        };
        let rests_s: Vec<f64> = held.iter().map(rest_s).collect::<Option<_>>()?;
        let rest_s: f64 = (0..count)
            .map(|i| lagrange_weight(&at_w[..count], held_w(rider), i) * rests_s[i])
            .sum();
        time_s += from.time_s + share * (next.time_s - from.time_s) + rest_s;
    }
    let count = riders.len() as f64;
    Some(OnAverage {
        time_s: time_s / count,
        run_out_share: run_out / count,
    })
}

/// The fastest plan on average that steps of single powers, and of all together, lead to from a plan, among those on which no
/// more riders run out than on that one. Each round takes every step that saves time, until none does, or after a cap of rounds,
/// at which it is the best so far. The steps are weighed by a quick estimate; a plan that then is not faster is left for the first.
/// `None` where a rider comes to a stop.
///
/// Without the bound on riders who run out, the fastest plans on average spare the beginning and ask so much of the end that
/// most riders run out before the line; how they ride on then is the least known of all.
pub(crate) fn robust_plan(
    road: &Road<'_>,
    riders: &[Rider],
    style: &Style,
    from: &[Cue],
) -> Option<Robust> {
    const ROUNDS: usize = 3;
    let mut best = from.to_vec();
    let first = about_on_average(road, riders, &best)?;
    let mut best_s = first.time_s;
    let steps_w = [-style.round_w, style.round_w];
    for _ in 0..ROUNDS {
        let before_s = best_s;
        let which = std::iter::once(None).chain((0..best.len()).map(Some));
        for which in which {
            for step_w in steps_w {
                let moved = moved(&best, which, step_w, style);
                let Some(then) = about_on_average(road, riders, &moved) else {
                    continue;
                };
                if then.time_s < best_s && then.run_out_share <= first.run_out_share {
                    (best, best_s) = (moved, then.time_s);
                    break;
                }
            }
        }
        if best_s >= before_s {
            break;
        }
    }
    let (before, after) = (
        on_average(road, riders, from)?,
        on_average(road, riders, &best)?,
    );
    let faster = after.time_s < before.time_s;
    Some(Robust {
        cues: if faster { joined(best) } else { from.to_vec() },
        on_average: if faster { after } else { before },
        before,
    })
}

/// A plan with one power, or all of them, moved by a step.
fn moved(cues: &[Cue], which: Option<usize>, step_w: f64, style: &Style) -> Vec<Cue> {
    let (least_w, greatest_w) = style.powers_w;
    let mut moved = cues.to_vec();
    for (i, cue) in moved.iter_mut().enumerate() {
        if which.is_none_or(|which| which == i) {
            cue.power_w = (cue.power_w + step_w).clamp(least_w, greatest_w);
        }
    }
    moved
}
