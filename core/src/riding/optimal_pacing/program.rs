//! The fastest plan as a nonlinear program: its variables, what they give, and the constraints on them.
//!
//! Each piece `k` has three variables: its power `P`, and at its end kinetic energy `u` and W′ balance `w`. With `Φ(u, P)` the
//! energy and `t(u, P)` the time that riding a piece gives, the program is to minimise `Σ t` under
//!
//! - `u′ ≤ Φ(u, P)`: no more speed than the power gives; less, where the brakes are used;
//! - `w′ ≤ w − x`, `x = (P − threshold) t / W′`: what is spent above the threshold;
//! - `w′ ≤ 1 − (1 − w) eˣ` (differential) or `w′ ≤ w` (none): what comes back below it; above it the first is the tighter one,
//!   with `1 + x` in place of `eˣ`;
//! - `0 ≤ w ≤ 1`, `u` under the limit of the bends, and `P` between the least and the greatest power.
//!
//! Since power is constant on a piece, the balance is monotone there: what holds at its ends holds all along.

use super::cell::{Cell, Drive};
use crate::numerics::second_order::{Number, SecondOrder};
use crate::physiology::power_duration::Recovery;

/// One unit of the program's powers, W, and energies, m²/s²: with them the numbers are near 1.
pub(super) const UNITS: (f64, f64) = (100.0, 50.0);
/// Constraints of a piece: speed, spent, recovered; power at least and at most; balance at least and at most; energy at most and
/// at least.
pub(super) const CONSTRAINTS: usize = 9;
/// Those that tie pieces together.
pub(super) const TIES: usize = 3;
/// Variables that a piece sees: energy and balance at its beginning, power, energy and balance at its end.
pub(super) const SEEN: usize = 5;
/// The least speed of a plan, m/s.
const LEAST_M_S: f64 = 0.5;

/// What bounds a plan.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bounds {
    pub(super) recovery: Recovery,
    pub(super) w_prime_j: f64,
    pub(super) threshold_w: f64,
    pub(super) least_w: f64,
    pub(super) greatest_w: f64,
}

/// The variables of a piece, and its slacks and multipliers, in units of the program.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Piece {
    pub(super) power: f64,
    pub(super) energy: f64,
    pub(super) balance: f64,
    pub(super) slack: [f64; CONSTRAINTS],
    pub(super) multiplier: [f64; CONSTRAINTS],
}

/// What riding a piece gives, by energy at its beginning and power.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ridden {
    pub(super) energy: SecondOrder,
    pub(super) time: SecondOrder,
    /// What is spent, as a share of W′.
    pub(super) spent: SecondOrder,
    /// What is left of the share of W′ that is missing.
    pub(super) missing: SecondOrder,
}

impl Ridden {
    /// `None` where the rider comes to a stop.
    pub(super) fn new(
        cell: &Cell<'_>,
        drive: &Drive,
        bounds: &Bounds,
        energy: f64,
        power: f64,
    ) -> Option<Self> {
        let u = SecondOrder {
            x: UNITS.1,
            ..SecondOrder::x(UNITS.1 * energy)
        };
        let p = SecondOrder {
            y: UNITS.0,
            ..SecondOrder::y(UNITS.0 * power)
        };
        let (after, time) = cell.through(drive, u, p)?;
        let threshold_w = bounds.threshold_w * cell.threshold_share();
        let above = p - SecondOrder::constant(threshold_w);
        let spent = (above * time).times(1.0 / bounds.w_prime_j);
        let x = spent.value;
        let missing = match (bounds.recovery, x < 0.0) {
            (Recovery::Differential, true) => spent.chain(x.exp(), x.exp(), x.exp()),
            (Recovery::Differential, false) => spent.chain(1.0 + x, 1.0, 0.0),
            _ => SecondOrder::constant(1.0),
        };
        Some(Self {
            energy: after.times(1.0 / UNITS.1),
            time,
            spent,
            missing,
        })
    }

    /// The values of the constraints that tie pieces together, and their slopes by what the piece sees.
    pub(super) fn ties(&self, balance: f64, piece: &Piece) -> [(f64, [f64; SEEN]); TIES] {
        let Self {
            energy,
            spent,
            missing,
            ..
        } = self;
        let short = 1.0 - balance;
        [
            (
                energy.value - piece.energy,
                [energy.x, 0.0, energy.y, -1.0, 0.0],
            ),
            (
                balance - spent.value - piece.balance,
                [-spent.x, 1.0, -spent.y, 0.0, -1.0],
            ),
            (
                1.0 - short * missing.value - piece.balance,
                [
                    -short * missing.x,
                    missing.value,
                    -short * missing.y,
                    0.0,
                    -1.0,
                ],
            ),
        ]
    }

    /// The second derivatives of the Lagrangian by energy and power (`xx`, `xy`, `yy`), and by balance with each of them.
    pub(super) fn curvature(&self, balance: f64, piece: &Piece) -> ([f64; 3], [f64; 2]) {
        let [speed, spent, back, ..] = piece.multiplier;
        let back_short = back * (1.0 - balance);
        let sum = |time: f64, energy: f64, x: f64, missing: f64| {
            time - speed * energy + spent * x + back_short * missing
        };
        let (t, e, x, m) = (&self.time, &self.energy, &self.spent, &self.missing);
        (
            [
                sum(t.xx, e.xx, x.xx, m.xx),
                sum(t.xy, e.xy, x.xy, m.xy),
                sum(t.yy, e.yy, x.yy, m.yy),
            ],
            [-back * m.x, -back * m.y],
        )
    }
}

/// The simple bounds of a piece: for each constraint after the ties, which variable (0 power, 1 energy, 2 balance), the sign
/// with which it enters, and the bound; `None` where there is none.
pub(super) fn simple_bounds(
    bounds: &Bounds,
    cap: f64,
) -> [Option<(usize, f64, f64)>; CONSTRAINTS - TIES] {
    let energy_at_most = cap / UNITS.1;
    [
        Some((0, 1.0, bounds.least_w / UNITS.0)),
        Some((0, -1.0, bounds.greatest_w / UNITS.0)),
        Some((2, 1.0, 0.0)),
        (bounds.recovery == Recovery::Linear).then_some((2, -1.0, 1.0)),
        energy_at_most
            .is_finite()
            .then_some((1, -1.0, energy_at_most)),
        Some((1, 1.0, 0.5 * LEAST_M_S * LEAST_M_S / UNITS.1)),
    ]
}

impl Piece {
    /// A variable by its number.
    pub(super) fn variable(&mut self, which: usize) -> &mut f64 {
        match which {
            0 => &mut self.power,
            1 => &mut self.energy,
            _ => &mut self.balance,
        }
    }
}
