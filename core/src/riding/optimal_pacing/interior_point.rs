//! A primal–dual interior-point method for the program of the fastest plan.
//!
//! Every constraint has a slack and a multiplier whose product is driven to 0. A Newton step condenses to one linear system in
//! the variables; pieces see only their neighbours, so that it has nine diagonals and is solved in time proportional to the
//! length of the course. Where the system is not positive definite, what can make it so in a piece is left out. Steps keep slacks and multipliers
//! positive and lower an exact penalty function.

use super::program::{Bounds, CONSTRAINTS, Piece, Ridden, SEEN, TIES, UNITS, simple_bounds};
use super::ride::PlanRide;
use super::road::Road;
use crate::numerics::banded::Banded;
use crate::physiology::power_duration::Recovery;

/// The most Newton steps; 30 to 60 are usual. At the cap the plan is as good as it is then: whoever uses it rides it to see.
const MOST_STEPS: usize = 150;
/// The share of its time that a plan may lose at most against the best one in the same pieces, a fifth of it aimed at.
const LOST: f64 = 2e-7;
/// What the constraints may be off in all, in units of the program.
const OFF: f64 = 3e-5;
/// How much of the way to the next bound a step goes at most.
const TO_BOUND: f64 = 0.99;
/// The sides of the system's diagonal, and its middle.
const WIDTH: usize = 5;

/// What is being solved.
pub(super) struct Program<'a, 'b> {
    pub(super) road: &'b mut Road<'a>,
    pub(super) bounds: Bounds,
    pub(super) caps: Vec<f64>,
    pub(super) pieces: Vec<Piece>,
    /// The barrier to begin with, s.
    barrier_s: f64,
    /// About how long the ride takes, s.
    event_s: f64,
    /// Whether the promised accuracy was reached.
    pub(super) converged: bool,
}

/// A step of every piece's variables, slacks and multipliers.
struct Step {
    variables: Vec<f64>,
    slacks: Vec<[f64; CONSTRAINTS]>,
    multipliers: Vec<[f64; CONSTRAINTS]>,
}

impl<'a, 'b> Program<'a, 'b> {
    /// Begins at an even effort, but with little W′ left all along: where it is, W′ comes back soonest, and the optimum is
    /// found from there more often than another local one.
    pub(super) fn new(road: &'b mut Road<'a>, bounds: Bounds, even: &PlanRide) -> Self {
        const INSIDE: f64 = 1e-3;
        const LEFT: f64 = 0.1;
        const BARRIER: f64 = 0.1;
        let plan = even.passed.get(1..).unwrap_or_default();
        let barrier_s = BARRIER * even.time_s / (CONSTRAINTS as f64 * plan.len() as f64);
        let start = &*road;
        let caps: Vec<f64> = (0..plan.len()).map(|k| start.cap(k)).collect();
        let mut pieces: Vec<Piece> = plan
            .iter()
            .zip(&caps)
            .map(|(passed, &cap)| Piece {
                power: passed.power_w / UNITS.0,
                energy: passed.u.min((1.0 - INSIDE) * cap) / UNITS.1,
                balance: LEFT,
                ..Piece::default()
            })
            .collect();
        // What W′, and a unit of kinetic energy, are worth on the flat: time falls with power to the power of about 0.36.
        let mean_w = plan.last().map_or(1.0, |last| last.power_w.max(1.0));
        let balance = 0.36 * bounds.w_prime_j / mean_w;
        let drive = &start.drive;
        let speed = balance * UNITS.1 / (drive.efficiency * bounds.w_prime_j * drive.per_mass);
        for (piece, &cap) in pieces.iter_mut().zip(&caps) {
            let ties = if bounds.recovery == Recovery::Linear {
                2
            } else {
                3
            };
            let guessed = [speed, 0.5 * balance, 0.5 * balance];
            for (i, multiplier) in guessed.into_iter().take(ties).enumerate() {
                piece.multiplier[i] = multiplier;
                piece.slack[i] = barrier_s / multiplier;
            }
            for (i, bound) in simple_bounds(&bounds, cap).into_iter().enumerate() {
                let Some((which, sign, bound)) = bound else {
                    continue;
                };
                let variable = piece.variable(which);
                *variable = sign * (sign * *variable).max(sign * bound + INSIDE);
                let slack = sign * (*variable - bound);
                piece.slack[TIES + i] = slack;
                piece.multiplier[TIES + i] = barrier_s / slack;
            }
        }
        Self {
            road,
            bounds,
            caps,
            pieces,
            barrier_s,
            event_s: even.time_s,
            converged: false,
        }
    }

    /// Energy and balance at the beginning of a piece.
    fn before(pieces: &[Piece], road: &Road<'_>, k: usize) -> (f64, f64) {
        match k.checked_sub(1).and_then(|before| pieces.get(before)) {
            Some(before) => (before.energy, before.balance),
            None => (road.start_u / UNITS.1, 1.0),
        }
    }

    /// What every piece gives. `None` where the rider comes to a stop.
    fn ride(&self, pieces: &[Piece]) -> Option<Vec<Ridden>> {
        let cells = self.road.cells.iter();
        cells
            .zip(pieces)
            .enumerate()
            .map(|(k, (cell, piece))| {
                let energy = Self::before(pieces, &*self.road, k).0;
                Ridden::new(cell, &self.road.drive, &self.bounds, energy, piece.power)
            })
            .collect()
    }

    /// Which of the ties count: without a limit to what comes back, nothing is missing.
    fn counts(&self, constraint: usize) -> bool {
        constraint != 2 || self.bounds.recovery != Recovery::Linear
    }

    /// Solves it, and says whether the promised accuracy was reached.
    pub(super) fn solve(&mut self) {
        let mut barrier_s = self.barrier_s;
        let least_barrier_s = LOST * self.event_s / (CONSTRAINTS as f64 * self.pieces.len() as f64);
        let Some(mut ridden) = self.ride(&self.pieces) else {
            return;
        };
        let mut weights = [0.0f64; TIES];
        for _ in 0..MOST_STEPS {
            let Some(step) = self.newton(&ridden, barrier_s) else {
                return;
            };
            for (piece, moves) in self.pieces.iter().zip(&step.multipliers) {
                for (i, weight) in weights.iter_mut().enumerate() {
                    let multiplier = piece.multiplier[i] + moves[i];
                    *weight = weight
                        .max(1.1 * multiplier.abs())
                        .max(1.1 * piece.multiplier[i]);
                }
            }
            let length = self.longest(&step);
            let Some((share, next)) =
                self.search(&step, &mut ridden, barrier_s, &weights, length.0)
            else {
                if barrier_s <= least_barrier_s {
                    return;
                }
                barrier_s = (0.2 * barrier_s).max(least_barrier_s);
                weights = [0.0; TIES];
                continue;
            };
            let multipliers_by = length.1;
            for (piece, (new, moves)) in self
                .pieces
                .iter_mut()
                .zip(next.into_iter().zip(&step.multipliers))
            {
                let old = piece.multiplier;
                *piece = new;
                for (i, multiplier) in piece.multiplier.iter_mut().enumerate() {
                    *multiplier = old[i] + multipliers_by * moves[i];
                    if piece.slack[i] > 0.0 {
                        let central = barrier_s / piece.slack[i];
                        *multiplier = multiplier.clamp(1e-8 * central, 1e8 * central);
                    }
                }
            }
            let moved = self.follow_time(&mut ridden);
            let (complementarity_s, off) = self.measures(&ridden);
            if off < OFF && moved < OFF && complementarity_s <= 5.0 * least_barrier_s && share > 0.3
            {
                self.converged = true;
                return;
            }
            let mean_s = complementarity_s;
            let eager = if share.min(multipliers_by) > 0.8 {
                0.15
            } else if share.min(multipliers_by) > 0.3 {
                0.4
            } else {
                0.9
            };
            barrier_s = (eager * mean_s.min(1.5 * barrier_s)).max(least_barrier_s);
        }
    }

    /// Takes drag area that changes with time and the threshold, which depends on the finish time, from the plan as it is now.
    /// By how much that moved, as a share.
    fn follow_time(&mut self, ridden: &mut Vec<Ridden>) -> f64 {
        let position = &self.road.setup.position;
        let power = &self.road.setup.power;
        if position.fade.is_none() && power.long_ride.is_none() {
            return 0.0;
        }
        let (mut time_s, mut moved) = (0.0, 0.0f64);
        for (cell, it) in self.road.cells.iter_mut().zip(ridden.iter()) {
            let cda_m2 = cell.cda_between_m2(position, time_s, time_s + it.time.value);
            moved = moved.max((cda_m2 / cell.cda_m2 - 1.0).abs());
            cell.cda_m2 = cda_m2;
            time_s += it.time.value;
        }
        let threshold_w = power.threshold_w(time_s);
        moved = moved.max((threshold_w / self.bounds.threshold_w - 1.0).abs());
        self.bounds.threshold_w = threshold_w;
        if let Some(now) = self.ride(&self.pieces) {
            *ridden = now;
        }
        moved
    }

    /// The mean product of slacks and multipliers, and by how much the ties are off together.
    fn measures(&self, ridden: &[Ridden]) -> (f64, f64) {
        let (mut product, mut count, mut off) = (0.0, 0.0, 0.0);
        for (k, piece) in self.pieces.iter().enumerate() {
            for i in 0..CONSTRAINTS {
                if piece.slack[i] > 0.0 {
                    product += piece.slack[i] * piece.multiplier[i];
                    count += 1.0;
                }
            }
            let balance = Self::before(&self.pieces, &*self.road, k).1;
            for (i, (value, _)) in ridden[k].ties(balance, piece).into_iter().enumerate() {
                if self.counts(i) {
                    off += (value - piece.slack[i]).abs();
                }
            }
        }
        (product / count, off)
    }

    /// The Newton step for a barrier. `None` where no regularisation makes the system definite.
    fn newton(&self, ridden: &[Ridden], barrier_s: f64) -> Option<Step> {
        const RAISED: [f64; 6] = [0.0, 1e-8, 1e-6, 1e-4, 1e-2, 1.0];
        let (matrix, mut variables) = self.system(ridden, barrier_s, false);
        let factor = matrix.factored().or_else(|| {
            let (convex, _) = self.system(ridden, barrier_s, true);
            RAISED.into_iter().find_map(|raised| {
                let mut definite = convex.clone();
                (0..variables.len()).for_each(|i| definite.add(i, i, raised));
                definite.factored()
            })
        })?;
        factor.solve(&mut variables);
        let n = self.pieces.len();
        let (mut slacks, mut multipliers) = (Vec::with_capacity(n), Vec::with_capacity(n));
        for (k, piece) in self.pieces.iter().enumerate() {
            let mut ds = [0.0; CONSTRAINTS];
            let mut dm = [0.0; CONSTRAINTS];
            let balance = Self::before(&self.pieces, &*self.road, k).1;
            for (i, (value, slopes)) in ridden[k].ties(balance, piece).into_iter().enumerate() {
                if self.counts(i) {
                    let moved: f64 = (0..SEEN).map(|j| slopes[j] * seen(&variables, k, j)).sum();
                    ds[i] = moved + value - piece.slack[i];
                }
            }
            let bounds = simple_bounds(&self.bounds, self.caps[k]);
            for (i, bound) in bounds.into_iter().enumerate() {
                if let Some((which, sign, _)) = bound {
                    ds[TIES + i] = sign * variables[3 * k + which];
                }
            }
            for i in 0..CONSTRAINTS {
                let (s, m) = (piece.slack[i], piece.multiplier[i]);
                if s > 0.0 {
                    dm[i] = (barrier_s - m * ds[i]) / s - m;
                }
            }
            slacks.push(ds);
            multipliers.push(dm);
        }
        Some(Step {
            variables,
            slacks,
            multipliers,
        })
    }

    /// The condensed system, `convex` without what can make it indefinite: Hessian of the Lagrangian plus `Jᵀ (λ/s) J`, and `−∇f + Jᵀ (μ/s − (λ/s)(c − s))`.
    fn system(&self, ridden: &[Ridden], barrier_s: f64, convex: bool) -> (Banded<WIDTH>, Vec<f64>) {
        let size = 3 * self.pieces.len();
        let mut matrix = Banded::zeros(size);
        let mut right = vec![0.0; size];
        for (k, piece) in self.pieces.iter().enumerate() {
            let balance = Self::before(&self.pieces, &*self.road, k).1;
            let it = &ridden[k];
            // Energy and power.
            let ([mut uu, mut up, mut pp], [mut wu, mut wp]) = it.curvature(balance, piece);
            if convex {
                (wu, wp) = (0.0, 0.0);
                (uu, pp) = (uu.max(0.0), pp.max(0.0));
                let most = (uu * pp).sqrt();
                up = up.clamp(-most, most);
            }
            let p = 3 * k;
            matrix.add(p, p, pp);
            right[p] -= it.time.y;
            if k > 0 {
                let (u, w) = (p - 2, p - 1);
                matrix.add(u, u, uu);
                matrix.add(u, p, up);
                matrix.add(w, u, wu);
                matrix.add(w, p, wp);
                right[u] -= it.time.x;
            }
            for (i, (value, slopes)) in it.ties(balance, piece).into_iter().enumerate() {
                if !self.counts(i) {
                    continue;
                }
                let (s, m) = (piece.slack[i], piece.multiplier[i]);
                let stiffness = m / s;
                let push = barrier_s / s - stiffness * (value - s);
                for a in 0..SEEN {
                    let Some(row) = place(k, a) else { continue };
                    right[row] += slopes[a] * push;
                    for b in 0..=a {
                        if let Some(column) = place(k, b) {
                            matrix.add(row, column, stiffness * slopes[a] * slopes[b]);
                        }
                    }
                }
            }
            let bounds = simple_bounds(&self.bounds, self.caps[k]);
            for (i, bound) in bounds.into_iter().enumerate() {
                if let Some((which, sign, _)) = bound {
                    let (s, m) = (piece.slack[TIES + i], piece.multiplier[TIES + i]);
                    matrix.add(p + which, p + which, m / s);
                    right[p + which] += sign * barrier_s / s;
                }
            }
        }
        (matrix, right)
    }

    /// The shares of a step that keep slacks and multipliers positive.
    fn longest(&self, step: &Step) -> (f64, f64) {
        let (mut slack_share, mut multiplier_share) = (1.0f64, 1.0f64);
        for (k, piece) in self.pieces.iter().enumerate() {
            for i in 0..CONSTRAINTS {
                let (ds, dm) = (step.slacks[k][i], step.multipliers[k][i]);
                if ds < 0.0 {
                    slack_share = slack_share.min(-TO_BOUND * piece.slack[i] / ds);
                }
                if dm < 0.0 {
                    multiplier_share = multiplier_share.min(-TO_BOUND * piece.multiplier[i] / dm);
                }
            }
        }
        (slack_share, multiplier_share)
    }

    /// The penalty function of a point.
    fn penalty(
        &self,
        pieces: &[Piece],
        ridden: &[Ridden],
        barrier_s: f64,
        weights: &[f64; TIES],
    ) -> f64 {
        let mut sum = 0.0;
        for (k, piece) in pieces.iter().enumerate() {
            sum += ridden[k].time.value;
            for s in piece.slack {
                if s > 0.0 {
                    sum -= barrier_s * s.ln();
                }
            }
            let balance = Self::before(pieces, &*self.road, k).1;
            for (i, (value, _)) in ridden[k].ties(balance, piece).into_iter().enumerate() {
                if self.counts(i) {
                    sum += weights[i] * (value - piece.slack[i]).abs();
                }
            }
        }
        sum
    }

    /// The longest share of a step, halved a few times, that lowers the penalty function; the point that it leads to.
    fn search(
        &self,
        step: &Step,
        ridden: &mut Vec<Ridden>,
        barrier_s: f64,
        weights: &[f64; TIES],
        mut share: f64,
    ) -> Option<(f64, Vec<Piece>)> {
        const HALVINGS: usize = 12;
        const NOISE: f64 = 1e-10;
        let now = self.penalty(&self.pieces, ridden, barrier_s, weights);
        for _ in 0..HALVINGS {
            let mut next = self.pieces.clone();
            for (k, piece) in next.iter_mut().enumerate() {
                piece.power += share * step.variables[3 * k];
                piece.energy += share * step.variables[3 * k + 1];
                piece.balance += share * step.variables[3 * k + 2];
                for (slack, moves) in piece.slack.iter_mut().zip(step.slacks[k]) {
                    *slack += share * moves;
                }
            }
            if let Some(given) = self.ride(&next) {
                self.reset_slacks(&mut next, &given);
                let then = self.penalty(&next, &given, barrier_s, weights);
                if then <= now + NOISE * now.abs() {
                    *ridden = given;
                    return Some((share, next));
                }
            }
            share *= 0.5;
        }
        None
    }

    /// Slacks that are less than what the constraint leaves grow to that, which lowers the penalty.
    fn reset_slacks(&self, pieces: &mut [Piece], ridden: &[Ridden]) {
        for k in 0..pieces.len() {
            let balance = Self::before(pieces, &*self.road, k).1;
            let ties = ridden[k].ties(balance, &pieces[k]);
            for (i, (value, _)) in ties.into_iter().enumerate() {
                if self.counts(i) && value > pieces[k].slack[i] {
                    pieces[k].slack[i] = value;
                }
            }
        }
    }
}

/// The place among all variables of the one that a piece sees as its `j`th.
fn place(k: usize, j: usize) -> Option<usize> {
    (3 * k + j).checked_sub(2)
}

fn seen(variables: &[f64], k: usize, j: usize) -> f64 {
    place(k, j).map_or(0.0, |at| variables[at])
}
