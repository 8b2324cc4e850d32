//! A ride at a power for each piece of the road, followed as it is: bends, brakes, W′ balance, and a rider who runs out.

use super::cell::Cell;
use super::road::Road;
use crate::physiology::power_duration::{Recovery, w_prime_balance_j};

/// The rider on a plan.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Rider {
    /// How W′ comes back.
    pub(crate) recovery: Recovery,
    /// W′, J.
    pub(crate) w_prime_j: f64,
    /// The power above which W′ is spent, W.
    pub(crate) threshold_w: f64,
    /// The share of the threshold that the rider holds at most, from where W′ has run out to the finish.
    pub(crate) left_share: f64,
}

impl Rider {
    /// The power above which W′ is spent on a piece, W.
    fn threshold_on_w(&self, cell: &Cell<'_>) -> f64 {
        self.threshold_w * cell.threshold_share()
    }

    /// The most that the rider holds on a piece once W′ has run out, W.
    fn left_on_w(&self, cell: &Cell<'_>) -> f64 {
        self.left_share * self.threshold_on_w(cell)
    }
}

/// A ride as it went.
#[derive(Clone, Debug, Default)]
pub(crate) struct PlanRide {
    /// Finish time, s.
    pub(crate) time_s: f64,
    /// The least W′ balance, J.
    pub(crate) w_prime_least_j: f64,
    /// Where W′ ran out while the plan asked for more, m.
    pub(crate) ran_out_m: Option<f64>,
    /// At the beginning of each piece and at the finish.
    pub(crate) passed: Vec<Passed>,
}

/// The rider as one piece ends and the next begins.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Passed {
    /// From the start, m.
    pub(crate) distance_m: f64,
    /// Since the start, s.
    pub(crate) time_s: f64,
    /// Kinetic energy per effective mass, m²/s².
    pub(crate) u: f64,
    /// W′ balance, J.
    pub(crate) w_prime_j: f64,
    /// The mean power on the piece that begins here, W; at the finish that of the last piece.
    pub(crate) power_w: f64,
}

impl Passed {
    /// The rider at the start, with all of W′.
    pub(crate) fn at_start(road: &Road<'_>, rider: &Rider) -> Self {
        Self {
            u: road.start_u,
            w_prime_j: rider.w_prime_j,
            ..Self::default()
        }
    }

    /// Over the ground, m/s.
    pub(crate) fn speed_m_s(&self) -> f64 {
        (2.0 * self.u).sqrt()
    }
}

/// A balance this far below 0, J, still counts as nothing left: less than is kept of any plan.
const ROUNDING_J: f64 = 1.0;

/// Rides a course, at a power that may depend on the piece and on the time so far. `None` where the rider comes to a stop.
///
/// A rider whose `left_share` is finite runs out where the plan asks for more than is left, and holds no more than that share of
/// the threshold from there to the finish; any other follows the plan, and the balance goes below 0.
pub(crate) fn ride(
    road: &Road<'_>,
    rider: &Rider,
    power_w: impl Fn(usize, f64) -> f64,
) -> Option<PlanRide> {
    let mut passed = Vec::with_capacity(road.cells.len() + 1);
    let mut way = Way::begun(Passed::at_start(road, rider));
    way.go_on(road, rider, 0, power_w, |now| passed.push(now))?;
    let power_w = passed.last().map_or(0.0, |last| last.power_w);
    passed.push(Passed { power_w, ..way.now });
    Some(PlanRide {
        time_s: way.now.time_s,
        w_prime_least_j: way.least_j,
        ran_out_m: way.ran_out_m,
        passed,
    })
}

/// A ride on its way.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Way {
    /// The rider where the ride has come to.
    pub(crate) now: Passed,
    least_j: f64,
    /// Where W′ ran out, m.
    pub(crate) ran_out_m: Option<f64>,
}

impl Way {
    /// A ride that has come to a state without running out.
    pub(crate) fn begun(now: Passed) -> Self {
        Self {
            now,
            least_j: now.w_prime_j,
            ran_out_m: None,
        }
    }

    /// Goes on from the beginning of a piece to the finish, and tells of the rider at the beginning of each.
    pub(crate) fn go_on(
        &mut self,
        road: &Road<'_>,
        rider: &Rider,
        from: usize,
        power_w: impl Fn(usize, f64) -> f64,
        mut passed: impl FnMut(Passed),
    ) -> Option<()> {
        for (k, cell) in road.cells.iter().enumerate().skip(from) {
            self.now.distance_m = cell.from_m;
            let asked_w = power_w(k, self.now.time_s);
            let given_w = match self.ran_out_m {
                Some(_) => asked_w.min(rider.left_on_w(cell)),
                None => asked_w,
            };
            let (mut next, mut used_w) = through(road, rider, cell, &self.now, given_w)?;
            let runs_out = next.w_prime_j < -ROUNDING_J && self.ran_out_m.is_none();
            if runs_out && rider.left_share.is_finite() {
                // What is left is spent, evenly over the piece; the rest of the ride is that of a rider who has run out.
                let used_up_j = self.now.w_prime_j.max(0.0);
                let share = used_up_j / (used_up_j - next.w_prime_j);
                self.ran_out_m = Some(cell.from_m + share * cell.length_m);
                let after_w = asked_w.min(rider.left_on_w(cell));
                let mixed_w = share * given_w + (1.0 - share) * after_w;
                (next, used_w) = through(road, rider, cell, &self.now, mixed_w)?;
                next.w_prime_j = next.w_prime_j.max(0.0);
            }
            self.now.power_w = used_w;
            passed(self.now);
            self.least_j = self.least_j.min(next.w_prime_j);
            self.now = next;
        }
        self.now.distance_m = road.setup.course.distance_m();
        Some(())
    }
}

/// A part of a ride on which the rider pushes one power, sitting up all along or not at all.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Part {
    /// That power, W.
    power_w: f64,
    /// The threshold over that in the position itself.
    threshold_share: f64,
    /// The first piece.
    from: usize,
    /// The piece after the last.
    to: usize,
}

impl Part {
    /// How far the power is above a rider's threshold, W.
    pub(crate) fn above_w(&self, rider: &Rider) -> f64 {
        self.power_w - rider.threshold_w * self.threshold_share
    }
}

impl PlanRide {
    /// The parts of a ride on a road.
    pub(crate) fn parts(&self, road: &Road<'_>) -> Vec<Part> {
        const ALIKE: f64 = 1e-9;
        let mut parts: Vec<Part> = Vec::new();
        for (k, (passed, cell)) in self.passed.iter().zip(&road.cells).enumerate() {
            let (power_w, threshold_share) = (passed.power_w, cell.threshold_share());
            match parts.last_mut() {
                Some(part)
                    if (part.power_w - power_w).abs() < ALIKE
                        && (part.threshold_share - threshold_share).abs() < ALIKE =>
                {
                    part.to = k + 1;
                }
                _ => parts.push(Part {
                    power_w,
                    threshold_share,
                    from: k,
                    to: k + 1,
                }),
            }
        }
        parts
    }

    /// The piece on which another rider would run out on the same powers, what is left at its beginning, J, and how far the power
    /// is above this rider's threshold there, W; `None` where W′ lasts. The parts are those of [`Self::parts`].
    pub(crate) fn runs_out(&self, parts: &[Part], rider: &Rider) -> Option<(usize, f64, f64)> {
        let (recovery, w_prime_j) = (rider.recovery, rider.w_prime_j);
        let mut balance_j = w_prime_j;
        for part in parts {
            let (from, to) = (part.from, part.to);
            let (begins_s, ends_s) = (self.passed[from].time_s, self.passed[to].time_s);
            let above_w = part.above_w(rider);
            let after = |time_s: f64| {
                w_prime_balance_j(recovery, balance_j, w_prime_j, above_w, time_s - begins_s)
            };
            let next_j = after(ends_s);
            if next_j < -ROUNDING_J {
                // The balance falls evenly on the part, to nothing at a time on this piece.
                let empty_s = begins_s + balance_j.max(0.0) / above_w;
                let pieces = &self.passed[from..to];
                let on = from + pieces.partition_point(|p| p.time_s <= empty_s).max(1) - 1;
                return Some((on, after(self.passed[on].time_s), above_w));
            }
            balance_j = next_j;
        }
        None
    }
}

/// Several pieces at one power, from a state to that at their end, and the least balance on the way, J: where bends leave less than
/// that power, the balance may fall and rise. `None` where the rider comes to a stop.
pub(crate) fn ride_on(
    road: &Road<'_>,
    rider: &Rider,
    cells: std::ops::Range<usize>,
    mut now: Passed,
    power_w: f64,
) -> Option<(Passed, f64)> {
    let mut least_j = f64::INFINITY;
    for cell in road.cells.get(cells)? {
        now = through(road, rider, cell, &now, power_w)?.0;
        now.distance_m = cell.from_m + cell.length_m;
        least_j = least_j.min(now.w_prime_j);
    }
    Some((now, least_j))
}

/// One piece at one power: where it leads, and the mean power that the bends leave.
fn through(
    road: &Road<'_>,
    rider: &Rider,
    cell: &Cell<'_>,
    from: &Passed,
    power_w: f64,
) -> Option<(Passed, f64)> {
    let spent = |balance_j: f64, power_w: f64, time_s: f64| {
        w_prime_balance_j(
            rider.recovery,
            balance_j,
            rider.w_prime_j,
            power_w - rider.threshold_on_w(cell),
            time_s,
        )
    };
    let Some(limit) = cell.limit else {
        let (u, time_s) = cell.through(&road.drive, from.u, power_w)?;
        let next = Passed {
            time_s: from.time_s + time_s,
            u,
            w_prime_j: spent(from.w_prime_j, power_w, time_s),
            ..Passed::default()
        };
        return Some((next, power_w));
    };
    let (mut next, mut work_j) = (*from, 0.0);
    cell.under_limit(
        &road.drive,
        &limit,
        from.u,
        power_w,
        |u, time_s, power_w| {
            next.u = u;
            next.time_s += time_s;
            next.w_prime_j = spent(next.w_prime_j, power_w, time_s);
            work_j += power_w * time_s;
        },
    )?;
    let took_s = next.time_s - from.time_s;
    Some((
        next,
        if took_s > 0.0 {
            work_j / took_s
        } else {
            power_w
        },
    ))
}
