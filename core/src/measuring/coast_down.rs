//! Rolling freely from one speed to another: how long it takes and how far it goes.
//!
//! `(m+J) dv/dt = −(a + b v²)` with `a = m g (Crr + grade) + bearings` and `b = ½ρ CdA`; in a head wind the same holds of the speed
//! through the air. Legs are still, which is not the drag of pedalling ones.
//!
//! Source: Candau et al. 1999, Med Sci Sports Exerc 31(10), for the method (from memory); the closed form is the integral of `dv/(a + b v²)`.

/// A coast-down with its constants.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Coasting {
    /// What resists a change of speed, kg.
    pub effective_mass_kg: f64,
    /// What does not change with speed, N.
    pub constant_n: f64,
    /// `½ρ CdA`, kg/m.
    pub quadratic_kg_m: f64,
}

impl Coasting {
    /// How long from `from_m_s` down to `to_m_s`, s:
    /// `(m+J)/√(ab) · (atan(v₀√(b/a)) − atan(v₁√(b/a)))`, with artanh where the road pushes (`a < 0`).
    ///
    /// NaN where the rider never gets so slow.
    ///
    /// ```
    /// use fasterby_core::coast_down::Coasting;
    ///
    /// let coasting = Coasting { effective_mass_kg: 86.2, constant_n: 3.334261, quadratic_kg_m: 0.15 };
    /// assert!((coasting.time_s(12.0, 6.0) - 35.5485176866).abs() < 1e-9);
    /// ```
    pub fn time_s(&self, from_m_s: f64, to_m_s: f64) -> f64 {
        let (a, b) = (self.constant_n, self.quadratic_kg_m);
        if a + b * to_m_s * to_m_s <= 0.0 {
            return f64::NAN;
        }
        let per_kg = if a * b > 0.0 {
            let ratio = (b / a).sqrt();
            ((from_m_s * ratio).atan() - (to_m_s * ratio).atan()) / (a * b).abs().sqrt()
                * a.signum()
        } else if b == 0.0 {
            (from_m_s - to_m_s) / a
        } else if a == 0.0 {
            (1.0 / to_m_s - 1.0 / from_m_s) / b
        } else {
            // ∫dv/(b v² − |a|) = −artanh(√(|a|/b)/v)/√(|a| b), above the speed at which the road pushes as much as the air takes.
            let at = |v: f64| ((a.abs() / b).sqrt() / v).atanh();
            (at(to_m_s) - at(from_m_s)) / (a.abs() * b).sqrt()
        };
        self.effective_mass_kg * per_kg
    }

    /// How far, m: `(m+J)/(2b) · ln((a + b v₀²)/(a + b v₁²))`. NaN where the rider never gets so slow.
    pub fn distance_m(&self, from_m_s: f64, to_m_s: f64) -> f64 {
        let (a, b) = (self.constant_n, self.quadratic_kg_m);
        let force = |v: f64| a + b * v * v;
        if force(to_m_s) <= 0.0 {
            return f64::NAN;
        }
        if b == 0.0 {
            return self.effective_mass_kg * (from_m_s.powi(2) - to_m_s.powi(2)) / (2.0 * a);
        }
        self.effective_mass_kg / (2.0 * b) * (force(from_m_s) / force(to_m_s)).ln()
    }
}
