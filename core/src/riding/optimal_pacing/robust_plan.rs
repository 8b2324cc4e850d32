//! A plan for a rider who is not known exactly: the powers that are fastest on average over riders who may be weaker or
//! stronger than believed, some of whom run out.

use super::ride::{Rider, ride};
use super::road::Road;
use super::simple_plan::{Cue, Style, power_at_w};

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

/// A plan ridden by several riders. `None` where one comes to a stop.
pub(crate) fn on_average(road: &Road<'_>, riders: &[Rider], cues: &[Cue]) -> Option<OnAverage> {
    let (mut time_s, mut run_out) = (0.0, 0.0);
    for rider in riders {
        let ridden = ride(road, rider, |cell, _| power_at_w(cues, cell))?;
        time_s += ridden.time_s;
        run_out += f64::from(u8::from(ridden.ran_out_m.is_some()));
    }
    let count = riders.len() as f64;
    Some(OnAverage {
        time_s: time_s / count,
        run_out_share: run_out / count,
    })
}

/// The best plan on average that steps of single powers, and of all together, lead to from a plan: each round takes the best of
/// them, until none saves time or after a cap of rounds, at which it is the best so far.
pub(crate) fn robust_plan(
    road: &Road<'_>,
    riders: &[Rider],
    style: &Style,
    from: &[Cue],
) -> Option<Vec<Cue>> {
    const ROUNDS: usize = 8;
    let mut best = from.to_vec();
    let mut best_s = on_average(road, riders, &best)?.time_s;
    let mut together = true;
    for _ in 0..ROUNDS {
        let before_s = best_s;
        let single = 0..best.len();
        let moves: Vec<Option<usize>> = if together {
            vec![None]
        } else {
            single.map(Some).collect()
        };
        for which in moves {
            for step_w in [-style.round_w, style.round_w] {
                let moved = moved(&best, which, step_w, style);
                let moved_s = on_average(road, riders, &moved)?.time_s;
                if moved_s < best_s {
                    (best, best_s) = (moved, moved_s);
                    break;
                }
            }
        }
        if best_s >= before_s {
            if !together {
                break;
            }
            together = false;
        }
    }
    Some(best)
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
