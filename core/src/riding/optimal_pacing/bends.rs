//! A piece of road under the limit of the bends: ridden freely as far as the limit allows, along it from there on.

use super::cell::{Cell, Drive};
use crate::riding::integrated::bends::Limit;

/// Steps of a piece along a limit.
const STEPS: usize = 3;
/// The accuracy of the place where the rider meets the limit, as a share of a step.
const MEETS: f64 = 1e-4;

impl Cell<'_> {
    /// Rides the piece at one power but never above the limit, and reports each step: the energy after it (m²/s²), its time, s,
    /// and its mean power, W. `None` where the rider comes to a stop.
    pub(super) fn under_limit(
        &self,
        drive: &Drive,
        limit: &Limit,
        from_u: f64,
        power_w: f64,
        mut step: impl FnMut(f64, f64, f64),
    ) -> Option<()> {
        let mut u = from_u.min(limit.at(self.from_m));
        // Speed only rises or only falls on a piece, and the limit only falls.
        let (free_u, free_s) = self.through(drive, u, power_w)?;
        if free_u.max(u) <= limit.at(self.from_m + self.length_m) {
            step(free_u, free_s, power_w);
            return Some(());
        }
        let mut behind_m = 0.0;
        let pieces = STEPS.max(self.steps as usize / 2);
        for i in 1..=pieces {
            let end_m = self.length_m * i as f64 / pieces as f64;
            while behind_m < end_m {
                let h = end_m - behind_m;
                let here_m = self.from_m + behind_m;
                let free = |h: f64| self.part(behind_m, h).through(drive, u, power_w);
                let (after, time_s) = free(h)?;
                if after <= limit.at(here_m + h) {
                    (u, behind_m) = (after, end_m);
                    step(u, time_s, power_w);
                    continue;
                }
                // How far the rider goes freely before the limit is met.
                let (mut low, mut high) = (0.0, 1.0);
                while high - low > MEETS {
                    let middle = 0.5 * (low + high);
                    let (after, _) = free(middle * h)?;
                    if after <= limit.at(here_m + middle * h) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                if low > 0.0 {
                    let (_, time_s) = free(low * h)?;
                    behind_m += low * h;
                    u = limit.at(self.from_m + behind_m);
                    step(u, time_s, power_w);
                }
                let (after, time_s, used_w) = self.along(drive, limit, (behind_m, end_m), power_w);
                (u, behind_m) = (after, end_m);
                step(u, time_s, used_w);
            }
        }
        Some(())
    }

    /// A part of the piece.
    fn part(&self, from_m: f64, length_m: f64) -> Self {
        Self {
            from_m: self.from_m + from_m,
            length_m,
            steps: 1 + self.steps / 6,
            graded: self.graded && from_m == 0.0,
            ..*self
        }
    }

    /// Along the limit: energy after it, time, and the power that this takes, which is none where the rider brakes.
    fn along(
        &self,
        drive: &Drive,
        limit: &Limit,
        (from_m, to_m): (f64, f64),
        power_w: f64,
    ) -> (f64, f64, f64) {
        let (before, after) = (limit.at(self.from_m + from_m), limit.at(self.from_m + to_m));
        let length_m = to_m - from_m;
        let mean_m_s = 0.5 * ((2.0 * before).sqrt() + (2.0 * after).sqrt());
        let gained_n = (after - before) / length_m / drive.per_mass;
        let needed_n = self.stretch.total_n(mean_m_s, self.cda_m2) + gained_n;
        let used_w = (needed_n * mean_m_s / drive.efficiency)
            .max(0.0)
            .min(power_w);
        (after, length_m / mean_m_s, used_w)
    }
}
