//! What holds the rider back, and the steady speed that a power buys.
//!
//! Forces along the road, newtons, against the rider positive:
//!
//! - air `½ ρ CdA k(β) s(Va) Va²`, with `k = cos β` unless a yaw table says otherwise, `s = (Va / Va₀)^n`;
//! - tyres `m g Crr cos θ`; hill `m g sin θ`, `θ = atan(grade)`; bearings `b₀ + b₁ v`.
//!
//! Pedal power times drivetrain efficiency equals force times speed in the steady state.
//!
//! Source: martin-1998 for the balance; crosswinds-2021 for the need of a convention in crosswind.
//!
//! Steady speed: Newton's method from above inside a bracket; with a yaw table the highest crossing is searched first,
//! because `v F(v)` may pass the power more than once.
//!
//! Yaw tables are tunnel tables: ratios of the axial drag area to that at zero yaw. Beyond the last row the ratio is held
//! to 45°, then falls with the cosine to nothing at 90°; from behind drag lies along the wind, as without a table.
//! Assumed, warned about.

use crate::numerics::solve::{interpolate_with_slope, root_bracketed};
use crate::physics::air::{RoadWind, apparent_wind};

/// Rider and bicycle as one body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Machine {
    /// Everything that moves, kg.
    pub total_mass_kg: f64,
    /// What the turning wheels add to the mass when speed changes, kg.
    pub rotating_mass_kg: f64,
    /// Rolling-resistance coefficient Crr.
    pub rolling_coefficient: f64,
    /// Share of pedal power that reaches the road.
    pub drivetrain_efficiency: f64,
    /// Constant part of bearing drag, N.
    pub bearing_drag_n: f64,
    /// Part of bearing drag that grows with speed, N s/m.
    pub bearing_drag_n_s_per_m: f64,
    /// The most propulsive force, N.
    pub launch_force_n: f64,
    /// The most sideways acceleration in a bend, m/s².
    pub lateral_m_s2: f64,
    /// Deceleration before a bend, m/s².
    pub braking_m_s2: f64,
    /// Gravity, m/s².
    pub gravity_m_s2: f64,
}

impl Machine {
    /// Mass that resists a change of speed, kg.
    pub fn effective_mass_kg(&self) -> f64 {
        self.total_mass_kg + self.rotating_mass_kg
    }
}

/// How drag area changes with yaw and air speed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DragShape {
    /// Rows of (yaw in degrees, axial drag area over that at zero yaw), ascending; none means drag along the apparent wind.
    pub yaw_table: Vec<(f64, f64)>,
    /// Exponent n of `(Va / reference)^n`, above −2.
    pub speed_exponent: f64,
    /// Air speed at which the drag area was measured, m/s.
    pub reference_airspeed_m_s: f64,
}

/// Yaw as far as which the last row of a table is held, degrees; assumed. Beyond it the ratio falls with the cosine to
/// nothing at 90°; from behind, drag lies along the apparent wind as it does without a table.
const YAW_HELD_DEG: f64 = 45.0;

impl DragShape {
    /// The ratio `k(β)` of axial drag area to that at zero yaw, and its slope by yaw in radians. Yaw in radians, 0 to π.
    fn axial_ratio(&self, yaw: f64) -> (f64, f64) {
        let Some(&(last_deg, last)) = self.yaw_table.last() else {
            return (yaw.cos(), -yaw.sin());
        };
        let degrees = yaw.to_degrees();
        let held_deg = last_deg.max(YAW_HELD_DEG);
        if degrees > held_deg {
            let scale = if degrees < 90.0 {
                last / held_deg.to_radians().cos()
            } else {
                1.0
            };
            return (scale * yaw.cos(), -scale * yaw.sin());
        }
        let (ratio, slope_per_deg) =
            interpolate_with_slope(&self.yaw_table, degrees).unwrap_or((last, 0.0));
        (ratio, slope_per_deg.to_degrees())
    }

    /// Whether drag lies along the apparent wind at every air speed.
    fn is_plain(&self) -> bool {
        self.yaw_table.is_empty() && self.speed_exponent == 0.0
    }

    /// The largest yaw of the table, degrees, if there is one.
    pub fn last_yaw_deg(&self) -> Option<f64> {
        self.yaw_table.last().map(|row| row.0)
    }
}

/// One stretch of road on which nothing but speed, drag area and time change.
#[derive(Clone, Copy, Debug)]
pub struct Stretch<'a> {
    shape: &'a DragShape,
    plain: bool,
    half_density: f64,
    wind: RoadWind,
    rolling_n: f64,
    climbing_n: f64,
    bearing_n: f64,
    bearing_n_s_per_m: f64,
}

/// Forces along the road by cause, N, against the rider positive.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Forces {
    /// Of the air.
    pub air_n: f64,
    /// Of the tyres.
    pub rolling_n: f64,
    /// Of the hill.
    pub climbing_n: f64,
    /// Of the wheel bearings.
    pub bearings_n: f64,
}

impl Forces {
    /// Their sum, N.
    pub fn total_n(&self) -> f64 {
        self.air_n + self.rolling_n + self.climbing_n + self.bearings_n
    }
}

impl<'a> Stretch<'a> {
    /// A stretch of this slope (sine and cosine of `θ`) and wind in air of this density, kg/m³.
    pub fn new(
        machine: &Machine,
        shape: &'a DragShape,
        density_kg_m3: f64,
        wind: RoadWind,
        (sin, cos): (f64, f64),
    ) -> Self {
        let weight_n = machine.total_mass_kg * machine.gravity_m_s2;
        Self {
            shape,
            plain: shape.is_plain(),
            half_density: 0.5 * density_kg_m3,
            wind,
            rolling_n: weight_n * machine.rolling_coefficient * cos,
            climbing_n: weight_n * sin,
            bearing_n: machine.bearing_drag_n,
            bearing_n_s_per_m: machine.bearing_drag_n_s_per_m,
        }
    }

    /// Force of the air along the road, N.
    #[inline(always)]
    pub fn air_n(&self, speed_m_s: f64, cda_m2: f64) -> f64 {
        if !self.plain {
            return self.shaped_air_and_slope(speed_m_s, cda_m2).0;
        }
        let along = self.air_along_m_s(speed_m_s);
        self.half_density * cda_m2 * along * self.apparent_m_s(along)
    }

    /// Force of the air along the road, N, and its slope by ground speed, N s/m.
    #[inline(always)]
    pub fn air_and_slope(&self, speed_m_s: f64, cda_m2: f64) -> (f64, f64) {
        if !self.plain {
            return self.shaped_air_and_slope(speed_m_s, cda_m2);
        }
        let along = self.air_along_m_s(speed_m_s);
        let apparent = self.apparent_m_s(along);
        let q = self.half_density * cda_m2;
        let steepening = if apparent > 0.0 {
            along * along / apparent
        } else {
            0.0
        };
        (q * apparent * along, q * (apparent + steepening))
    }

    /// The sum of all forces, N, with its slope and its curvature by ground speed. With a yaw table, which has kinks, or a speed
    /// exponent the curvature is that between speeds a little lower and a little higher.
    #[cfg(feature = "all")]
    #[inline(always)]
    pub(crate) fn total_to_second_order(&self, speed_m_s: f64, cda_m2: f64) -> (f64, f64, f64) {
        const APART_M_S: f64 = 0.2;
        let (force, slope) = self.total_and_slope(speed_m_s, cda_m2);
        if !self.plain {
            let slope_at = |v: f64| self.air_and_slope(v, cda_m2).1;
            let bend = slope_at(speed_m_s + APART_M_S) - slope_at(speed_m_s - APART_M_S);
            return (force, slope, bend / (2.0 * APART_M_S));
        }
        let along = self.air_along_m_s(speed_m_s);
        let apparent = self.apparent_m_s(along);
        let share = if apparent > 0.0 {
            along / apparent
        } else {
            0.0
        };
        // d²/da² of a √(a² + c²).
        let curvature = self.half_density * cda_m2 * share * (3.0 - share * share);
        (force, slope, curvature)
    }

    /// [`Self::air_and_slope`] with a yaw table or a speed exponent.
    #[inline(never)]
    fn shaped_air_and_slope(&self, speed_m_s: f64, cda_m2: f64) -> (f64, f64) {
        let along = self.air_along_m_s(speed_m_s);
        let cross = self.wind.cross_m_s;
        let apparent = self.apparent_m_s(along);
        if apparent == 0.0 {
            return (0.0, 0.0);
        }
        let q = self.half_density * cda_m2;
        let n = self.shape.speed_exponent;
        let scaled = if n == 0.0 {
            q
        } else {
            q * (apparent / self.shape.reference_airspeed_m_s).powf(n)
        };
        let (k, k_slope) = if self.shape.yaw_table.is_empty() {
            (along / apparent, -cross.abs() / apparent)
        } else {
            self.shape.axial_ratio(cross.abs().atan2(along))
        };
        let force = scaled * k * apparent * apparent;
        let slope = scaled * ((2.0 + n) * k * along - k_slope * cross.abs());
        (force, slope)
    }

    /// Apparent wind for an air speed along the road, m/s.
    #[inline(always)]
    fn apparent_m_s(&self, along: f64) -> f64 {
        let cross = self.wind.cross_m_s;
        if cross == 0.0 {
            along.abs()
        } else {
            (along * along + cross * cross).sqrt()
        }
    }

    /// All forces by cause, N.
    pub fn forces(&self, speed_m_s: f64, cda_m2: f64) -> Forces {
        self.forces_with_air(speed_m_s, self.air_n(speed_m_s, cda_m2))
    }

    /// All forces by cause, N, where that of the air is known.
    pub fn forces_with_air(&self, speed_m_s: f64, air_n: f64) -> Forces {
        Forces {
            air_n,
            rolling_n: self.rolling_n,
            climbing_n: self.climbing_n,
            bearings_n: self.bearing_n + self.bearing_n_s_per_m * speed_m_s,
        }
    }

    /// The sum of all forces, N.
    #[inline(always)]
    pub fn total_n(&self, speed_m_s: f64, cda_m2: f64) -> f64 {
        self.air_n(speed_m_s, cda_m2) + self.total_without_air_n(speed_m_s)
    }

    /// The sum of all forces but the air's, N.
    #[inline(always)]
    pub fn total_without_air_n(&self, speed_m_s: f64) -> f64 {
        self.rolling_n + self.climbing_n + self.bearing_n + self.bearing_n_s_per_m * speed_m_s
    }

    /// The sum of all forces, N, and its slope by ground speed, N s/m.
    #[inline(always)]
    pub fn total_and_slope(&self, speed_m_s: f64, cda_m2: f64) -> (f64, f64) {
        let (air, slope) = self.air_and_slope(speed_m_s, cda_m2);
        (
            air + self.total_without_air_n(speed_m_s),
            slope + self.bearing_n_s_per_m,
        )
    }

    /// Air speed along the road, m/s; negative where the wind overtakes the rider.
    #[inline(always)]
    pub fn air_along_m_s(&self, speed_m_s: f64) -> f64 {
        speed_m_s + self.wind.head_m_s
    }

    /// Yaw at this speed, radians, 0 to π.
    pub fn yaw(&self, speed_m_s: f64) -> f64 {
        apparent_wind(speed_m_s, self.wind).1.abs()
    }

    /// The steady speed, m/s, at this power on the road (pedal power times drivetrain efficiency, not negative): the
    /// highest speed at which `v F(v)` equals it. 0 if nothing moves the rider.
    ///
    /// Newton's method from above, held inside a bracket by bisection; accurate to 1e-14 of the speed. After 100 steps
    /// it returns the middle of the bracket, by then as narrow as rounding allows.
    pub fn speed_m_s(&self, road_power_w: f64, cda_m2: f64) -> f64 {
        if road_power_w <= 0.0 && self.total_n(0.0, cda_m2) >= 0.0 {
            return 0.0;
        }
        if !self.shape.yaw_table.is_empty() {
            return self.highest_speed_m_s(road_power_w, cda_m2);
        }
        let (mut low, mut high) = (0.0, f64::INFINITY);
        let mut v = 12.0;
        for _ in 0..100 {
            let (force, slope) = self.total_and_slope(v, cda_m2);
            let excess = v * force - road_power_w;
            if excess < 0.0 {
                low = v
            } else {
                high = v
            }
            let step = excess / (force + v * slope);
            let newton = v - step;
            if step.abs() <= 1e-14 * v {
                return newton;
            }
            v = if newton > low && newton < high && newton < 4.0 * v {
                newton
            } else if high.is_finite() {
                0.5 * (low + high)
            } else {
                2.0 * v
            };
        }
        v
    }

    /// As [`Self::speed_m_s`], for a yaw table, with which `v F(v)` may pass the power more than once.
    fn highest_speed_m_s(&self, road_power_w: f64, cda_m2: f64) -> f64 {
        let excess = |v: f64| v * self.total_n(v, cda_m2) - road_power_w;
        let mut top = 12.0;
        while excess(top) < 0.0 && top < 1e6 {
            top *= 2.0;
        }
        let (low, high) = self
            .crossings(top, road_power_w, cda_m2)
            .next()
            .unwrap_or((0.0, top));
        root_bracketed(excess, (low, excess(low)), (high, excess(high)), 1e-14)
            .unwrap_or(0.5 * (low + high))
    }

    /// The brackets from `top` down in which `v F(v)` passes the power, in 200 steps.
    fn crossings(
        &self,
        top: f64,
        road_power_w: f64,
        cda_m2: f64,
    ) -> impl Iterator<Item = (f64, f64)> + '_ {
        const STEPS: i32 = 200;
        let excess = move |v: f64| v * self.total_n(v, cda_m2) - road_power_w;
        (0..STEPS).rev().filter_map(move |i| {
            let (low, high) = (
                top * f64::from(i) / f64::from(STEPS),
                top * f64::from(i + 1) / f64::from(STEPS),
            );
            ((excess(low) < 0.0) != (excess(high) < 0.0)).then_some((low, high))
        })
    }

    /// How many steady speeds there are between standstill and twice the highest one.
    pub fn steady_speeds(&self, road_power_w: f64, cda_m2: f64) -> usize {
        let top = 2.0 * self.speed_m_s(road_power_w, cda_m2);
        self.crossings(top, road_power_w, cda_m2).count()
    }
}

/// By how many percent steady speed changes when an input changes by one percent.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Elasticity {
    /// Of power.
    pub power: f64,
    /// Of drag area.
    pub cda: f64,
    /// Of mass.
    pub mass: f64,
    /// Of the rolling-resistance coefficient.
    pub rolling: f64,
    /// Of air density.
    pub density: f64,
}

/// Elasticities of steady speed where `P = v F(v) / η`, by implicit differentiation:
/// `ε_P = F / (F + v F′)`, `ε_x = −F_x / (F + v F′)`. `None` where the speed is at a turning point.
pub fn elasticity(stretch: &Stretch<'_>, speed_m_s: f64, cda_m2: f64) -> Option<Elasticity> {
    let forces = stretch.forces(speed_m_s, cda_m2);
    let (total, slope) = stretch.total_and_slope(speed_m_s, cda_m2);
    let stiffness = total + speed_m_s * slope;
    (stiffness.is_normal()).then(|| Elasticity {
        power: total / stiffness,
        cda: -forces.air_n / stiffness,
        mass: -(forces.rolling_n + forces.climbing_n) / stiffness,
        rolling: -forces.rolling_n / stiffness,
        density: -forces.air_n / stiffness,
    })
}

/// Sine and cosine of `atan(grade)`.
pub fn slope(grade: f64) -> (f64, f64) {
    let cos = 1.0 / (1.0 + grade * grade).sqrt();
    (grade * cos, cos)
}

/// The aero share of road load at which more power and less drag give the same speed on a flat calm road:
/// the root of `f y (1 + x − x/y)³ = x (1 − f)³` for a power change `x` and a drag cut `y`, both as shares.
/// 0.9033 for ten percent each. `None` where one of the two wins at every share.
///
/// At speed ratio r, `f r³ + (1 − f) r = 1 + x` and `(1 − y) f r³ + (1 − f) r = 1`; r is eliminated.
pub fn tie_aero_share(power_change: f64, cda_cut: f64) -> Option<f64> {
    let (x, y) = (power_change, cda_cut);
    let lever = 1.0 + x - x / y;
    if !(x > 0.0 && y > 0.0 && lever >= 0.0) {
        return None;
    }
    let f = |share: f64| share * y * lever.powi(3) - x * (1.0 - share).powi(3);
    crate::numerics::solve::root(f, 0.0, 1.0, 1e-15).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn machine() -> Machine {
        Machine {
            total_mass_kg: 85.0,
            rotating_mass_kg: 1.5,
            rolling_coefficient: 0.004,
            drivetrain_efficiency: 0.975,
            bearing_drag_n: 0.0,
            bearing_drag_n_s_per_m: 0.0,
            launch_force_n: 250.0,
            lateral_m_s2: 4.0,
            braking_m_s2: 3.0,
            gravity_m_s2: 9.80665,
        }
    }

    #[test]
    fn the_slope_of_the_air_force_is_its_derivative() {
        let tables = [vec![], vec![(0.0, 1.0), (10.0, 0.97), (20.0, 1.02)]];
        for yaw_table in tables {
            for speed_exponent in [-0.3, 0.0, 0.1] {
                let shape = DragShape {
                    yaw_table: yaw_table.clone(),
                    speed_exponent,
                    reference_airspeed_m_s: 12.0,
                };
                for (head_m_s, cross_m_s) in [(3.0, 2.0), (-14.0, 3.0), (0.0, 0.5), (2.0, 0.0)] {
                    let wind = RoadWind {
                        head_m_s,
                        cross_m_s,
                    };
                    let stretch = Stretch::new(&machine(), &shape, 1.2, wind, slope(0.0));
                    let step = 1e-6;
                    let by_difference = (stretch.air_n(11.0 + step, 0.25)
                        - stretch.air_n(11.0 - step, 0.25))
                        / (2.0 * step);
                    let (_, by_formula) = stretch.air_and_slope(11.0, 0.25);
                    assert!((by_difference - by_formula).abs() < 1e-6 * by_formula.abs().max(1.0));
                }
            }
        }
    }

    #[test]
    fn a_ten_percent_cut_and_a_ten_percent_gain_tie_at_the_published_share() {
        assert!((tie_aero_share(0.1, 0.1).unwrap() - 0.903_332_057_676_7).abs() < 1e-12);
        assert!((tie_aero_share(0.1, 1.0 - 1.0 / 1.1).unwrap() - 1.0).abs() < 1e-4);
        assert_eq!(tie_aero_share(0.2, 0.01), None);
    }

    #[test]
    fn a_rider_without_power_rolls_downhill_and_stands_on_the_flat() {
        let shape = DragShape {
            reference_airspeed_m_s: 12.0,
            ..DragShape::default()
        };
        let down = Stretch::new(&machine(), &shape, 1.2, RoadWind::default(), slope(-0.04));
        let flat = Stretch::new(&machine(), &shape, 1.2, RoadWind::default(), slope(0.0));
        assert!((down.speed_m_s(0.0, 0.25) - 14.138_451_374_52).abs() < 1e-9);
        assert_eq!(flat.speed_m_s(0.0, 0.25), 0.0);
    }

    /// A speed found is right to this share of the power.
    const CLOSE: f64 = 1e-9;

    #[test]
    fn a_calm_road_has_one_steady_speed() {
        let (machine, shape) = (machine(), DragShape::default());
        for grade in [-0.04, 0.0, 0.05] {
            let stretch = Stretch::new(&machine, &shape, 1.2, RoadWind::default(), slope(grade));
            assert_eq!(stretch.steady_speeds(200.0, 0.25), 1, "{grade}");
        }
    }

    #[test]
    fn where_drag_falls_with_yaw_the_highest_of_several_speeds_is_ridden() {
        let machine = machine();
        // Made up: so much less drag at a narrow yaw that riding faster may take less power.
        let shape = DragShape {
            yaw_table: vec![(0.0, 0.2), (8.0, 0.2), (10.0, 3.0), (90.0, 3.0)],
            ..DragShape::default()
        };
        let wind = RoadWind {
            head_m_s: 0.0,
            cross_m_s: 1.2,
        };
        let stretch = Stretch::new(&machine, &shape, 1.2, wind, slope(0.0));
        let mut several = 0;
        for watts in (20..500).step_by(5).map(f64::from) {
            let found_m_s = stretch.speed_m_s(watts, 0.25);
            let power_w = |v: f64| v * stretch.total_n(v, 0.25);
            assert!(
                (power_w(found_m_s) / watts - 1.0).abs() < CLOSE,
                "{watts} W"
            );
            let above = (1..2000).map(|i| found_m_s * (1.0 + 0.001 * f64::from(i)));
            assert!(above.into_iter().all(|v| power_w(v) > watts), "{watts} W");
            several += usize::from(stretch.steady_speeds(watts, 0.25) > 1);
        }
        assert!(several > 0, "some power has several speeds");
    }
}
