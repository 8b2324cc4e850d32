//! What must hold for every rider, road and day: random ones from the table of bounds, the same on every run.

#![cfg(not(target_arch = "wasm32"))]

use std::rc::Rc;

use fasterby_core::air::{
    Moisture, RoadWind, Weather, WeatherChange, Wind, course_pressure_pa, density_kg_m3,
    dew_point_c, saturation_vapour_pressure_pa,
};
use fasterby_core::course::{Course, Point, Segment};
use fasterby_core::effort::{Effort, paced, power_for_time_w};
use fasterby_core::fields::{self, Field};
use fasterby_core::integrated::{Energy, Integrated, Ride, Setup, Start, TimeModel, ride, time_s};
use fasterby_core::leg::{Ankle, Leg, Linkage, Seat, Turn};
use fasterby_core::position::{Fade, Lapses, Position};
use fasterby_core::power_duration::{LongRide, PowerDuration, Recovery, w_prime_balance_j};
use fasterby_core::quasi_steady::QuasiSteady;
use fasterby_core::resistance::{DragShape, Machine, Stretch, elasticity, slope, tie_aero_share};
use fasterby_core::stops::Stops;
use fasterby_tests::{answer, value};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::test_runner::{RngSeed, TestCaseResult, TestRunner};
use serde_json::{Value, json};

/// Random cases of each property.
const CASES: u32 = 256;
/// Cases of a property that takes thousands of rides each.
const FEW_CASES: u32 = 24;

/// The accuracy promised for a steady speed.
const STEADY: f64 = 1e-9;
/// Power that a solved speed takes, as a share of all power that flows: speed is solved to rounding.
const BALANCE: f64 = 1e-10;
/// A closed form against the solver, both to rounding.
const CLOSED_FORM: f64 = 1e-12;
/// Densities by two ways to the same vapour pressure, each solved to rounding.
const SAME_DENSITY: f64 = 1e-12;
/// Energy of a ride is summed with the weights of its steps, so that it closes to their rounding.
const ENERGY: f64 = 1e-9;
/// Where a rider meets a bend's limit is found to a tenth of a millimetre; what is pushed over that is missing from the brakes.
const MET_A_LIMIT_M: f64 = 1e-4;
/// A cut in the road ends one step and begins another: it moves the time by what the steps leave out, which is held to the
/// accuracy promised of a ride.
const CUT: f64 = 1e-5;
/// At a steady speed a cut changes nothing but the order of a sum.
const STEADY_CUT: f64 = 1e-12;
/// Two rides that differ by less than the ride's own error are as fast as each other.
const AS_FAST: f64 = 1e-7;
/// An even effort is solved to 1e-14 of its power and time.
const FIXED_POINT: f64 = 1e-9;
/// What an even effort may leave of W′ or overdraw it by, as a share: the fixed point's error times the event's length.
const EMPTY: f64 = 1e-6;
/// Two finish times of the same ride reached from other guesses, s.
const SAME_TIME_S: f64 = 1e-5;
/// Share of a spread that hangs on what was asked before: the steady time_model starts from the speeds of its last ride.
const SAME_SPREAD: f64 = 5e-5;
/// How closely a time_model of steady speeds follows the move of a finish time: about a percent, several on short roads.
const STEADY_CLOCK: f64 = 0.06;
/// A time_model of steady speeds has no memory that its answers show, beyond the accuracy of its two steps of Newton's method.
const SAME_CLOCK: f64 = 1e-5;
/// The map is a polynomial through rides, said to follow them within a hundredth of a second; where a fade begins near the
/// finish they have a corner.
const MAP_S: f64 = 0.3;
/// How far the middle of the draws may lie from the value, s, besides a share of their own scatter.
const MIDDLE_S: f64 = 0.05;
/// Standard deviations by first order and by 4,000 draws: 1.1 % is the draws' own error (three of them are allowed), the
/// rest the curvature that first order leaves out.
const FIRST_ORDER: f64 = 0.1;
/// How far the mean of draws may lie from the value, in standard deviations: what curvature moves it, most of all that of the
/// direction of a forecast wind.
const MEAN_BESIDE: f64 = 0.3;

/// Angles of a leg by two ways, rad, and rates per radian: rounding, drawn out where the knee is nearly straight.
const SAME_LEG: f64 = 1e-8;
/// A change that levels two hips is found to a tenth of a nanometre; hips are compared in degrees.
const LEVEL_DEG: f64 = 1e-5;
/// A mean over so many crank angles of a smooth periodic function is its integral, but for a knee that is nearly straight.
const MEAN_RATE: f64 = 1e-9;

fn check_cases<S: Strategy>(
    cases: u32,
    strategy: S,
    property: impl Fn(S::Value) -> TestCaseResult,
) {
    let config = ProptestConfig {
        cases,
        failure_persistence: None,
        rng_seed: RngSeed::Fixed(0x000F_A57E),
        max_global_rejects: 20 * cases,
        ..ProptestConfig::default()
    };
    if let Err(failure) = TestRunner::new(config).run(&strategy, property) {
        panic!("{failure}");
    }
}

fn check<S: Strategy>(strategy: S, property: impl Fn(S::Value) -> TestCaseResult) {
    check_cases(CASES, strategy, property);
}

fn is_close(got: f64, want: f64, share: f64) -> TestCaseResult {
    prop_assert!(
        (got - want).abs() <= share * want.abs(),
        "{got} for {want}, {:e} apart",
        got / want - 1.0
    );
    Ok(())
}

/// Anywhere in a field's hard range.
fn any_of(field: &'static Field) -> impl Strategy<Value = f64> {
    field.min..=field.max
}

/// Anywhere in a field's usual range.
fn usual(field: &'static Field) -> impl Strategy<Value = f64> {
    field.usual_min..=field.usual_max
}

fn any_machine() -> impl Strategy<Value = Machine> {
    let numbers = (
        any_of(&fields::TOTAL_MASS_KG),
        any_of(&fields::ROTATING_MASS_KG),
        any_of(&fields::ROLLING_COEFFICIENT),
        any_of(&fields::DRIVETRAIN_EFFICIENCY),
        any_of(&fields::BEARING_DRAG_N),
        any_of(&fields::BEARING_DRAG_N_S_PER_M),
        any_of(&fields::LAUNCH_FORCE_N),
        any_of(&fields::LATERAL_M_S2),
        any_of(&fields::BRAKING_M_S2),
    );
    numbers.prop_map(
        |(
            mass,
            rotating,
            rolling,
            efficiency,
            bearing,
            bearing_slope,
            launch,
            lateral,
            braking,
        )| {
            Machine {
                total_mass_kg: mass,
                rotating_mass_kg: rotating,
                rolling_coefficient: rolling,
                drivetrain_efficiency: efficiency,
                bearing_drag_n: bearing,
                bearing_drag_n_s_per_m: bearing_slope,
                launch_force_n: launch,
                lateral_m_s2: lateral,
                braking_m_s2: braking,
                gravity_m_s2: 9.80665,
            }
        },
    )
}

fn usual_machine() -> impl Strategy<Value = Machine> {
    let numbers = (
        usual(&fields::TOTAL_MASS_KG),
        usual(&fields::ROTATING_MASS_KG),
        usual(&fields::ROLLING_COEFFICIENT),
        usual(&fields::LATERAL_M_S2),
        usual(&fields::BRAKING_M_S2),
        usual(&fields::LAUNCH_FORCE_N),
    );
    numbers.prop_map(
        |(mass, rotating, rolling, lateral, braking, launch)| Machine {
            total_mass_kg: mass,
            rotating_mass_kg: rotating,
            rolling_coefficient: rolling,
            drivetrain_efficiency: fields::DRIVETRAIN_EFFICIENCY.default,
            bearing_drag_n: fields::BEARING_DRAG_N.default,
            bearing_drag_n_s_per_m: fields::BEARING_DRAG_N_S_PER_M.default,
            launch_force_n: launch,
            lateral_m_s2: lateral,
            braking_m_s2: braking,
            gravity_m_s2: 9.80665,
        },
    )
}

fn air() -> impl Strategy<Value = f64> {
    let state = (
        any_of(&fields::TEMPERATURE_C),
        any_of(&fields::PRESSURE_HPA),
        any_of(&fields::RELATIVE_HUMIDITY),
    );
    state.prop_map(|(temperature_c, pressure_hpa, humidity)| {
        density_kg_m3(
            temperature_c,
            100.0 * pressure_hpa,
            Moisture::RelativeHumidity(humidity),
        )
    })
}

fn plain_shape() -> DragShape {
    DragShape {
        yaw_table: Vec::new(),
        speed_exponent: 0.0,
        reference_airspeed_m_s: 12.0,
    }
}

/// Drag along the apparent wind, with any exponent.
fn untabled_shape() -> impl Strategy<Value = DragShape> {
    (
        any_of(&fields::SPEED_EXPONENT),
        any_of(&fields::REFERENCE_AIRSPEED_M_S),
    )
        .prop_map(|(exponent, reference)| DragShape {
            yaw_table: Vec::new(),
            speed_exponent: exponent,
            reference_airspeed_m_s: reference,
        })
}

fn any_shape() -> impl Strategy<Value = DragShape> {
    let rows = vec((1.0f64..15.0, usual(&fields::YAW_RATIO)), 0..5).prop_map(|steps| {
        let mut yaw_deg = 0.0;
        let row = |(step, ratio): (f64, f64)| {
            yaw_deg += step;
            (yaw_deg, ratio)
        };
        let rows: Vec<_> = steps.into_iter().map(row).collect();
        if rows.is_empty() {
            rows
        } else {
            [vec![(0.0, 1.0)], rows].concat()
        }
    });
    (untabled_shape(), rows).prop_map(|(shape, yaw_table)| DragShape { yaw_table, ..shape })
}

/// A rider on a stretch of road.
#[derive(Clone, Debug)]
struct Steady {
    machine: Machine,
    shape: DragShape,
    density_kg_m3: f64,
    wind: RoadWind,
    grade: f64,
    power_w: f64,
    cda_m2: f64,
}

impl Steady {
    fn stretch(&self) -> Stretch<'_> {
        Stretch::new(
            &self.machine,
            &self.shape,
            self.density_kg_m3,
            self.wind,
            slope(self.grade),
        )
    }

    fn speed_m_s(&self) -> f64 {
        self.stretch().speed_m_s(
            self.power_w * self.machine.drivetrain_efficiency,
            self.cda_m2,
        )
    }

    fn with(&self, change: impl FnOnce(&mut Self)) -> Self {
        let mut changed = self.clone();
        change(&mut changed);
        changed
    }
}

fn wind() -> impl Strategy<Value = RoadWind> {
    (any_of(&fields::WIND_SPEED_M_S), 0.0f64..360.0).prop_map(|(speed_m_s, from_deg)| {
        let (sin, cos) = from_deg.to_radians().sin_cos();
        RoadWind {
            head_m_s: speed_m_s * cos,
            cross_m_s: speed_m_s * sin,
        }
    })
}

fn steady(shape: impl Strategy<Value = DragShape>) -> impl Strategy<Value = Steady> {
    let parts = (
        any_machine(),
        shape,
        air(),
        prop_oneof![Just(RoadWind::default()), wind()],
        any_of(&fields::GRADE),
        1.0..=fields::POWER_W.max,
        any_of(&fields::CDA_M2),
    );
    parts.prop_map(
        |(machine, shape, density_kg_m3, wind, grade, power_w, cda_m2)| Steady {
            machine,
            shape,
            density_kg_m3,
            wind,
            grade,
            power_w,
            cda_m2,
        },
    )
}

#[test]
fn the_power_that_a_solved_speed_takes_is_the_power_given() {
    check(steady(any_shape()), |case| {
        let speed_m_s = case.speed_m_s();
        let forces = case.stretch().forces(speed_m_s, case.cda_m2);
        let needed_w = speed_m_s * forces.total_n();
        let given_w = case.power_w * case.machine.drivetrain_efficiency;
        let parts_n = [
            forces.air_n,
            forces.rolling_n,
            forces.climbing_n,
            forces.bearings_n,
        ];
        let flows_w = given_w + speed_m_s * parts_n.map(f64::abs).iter().sum::<f64>();
        prop_assert!(
            speed_m_s > 0.0 && (needed_w - given_w).abs() <= BALANCE * flows_w,
            "{needed_w} for {given_w}"
        );
        Ok(())
    });
}

#[test]
fn a_rider_twice_as_large_in_power_drag_and_mass_is_as_fast() {
    check((steady(any_shape()), 0.2f64..5.0), |(case, k)| {
        let larger = case.with(|c| {
            c.power_w *= k;
            c.cda_m2 *= k;
            c.machine.total_mass_kg *= k;
            c.machine.bearing_drag_n *= k;
            c.machine.bearing_drag_n_s_per_m *= k;
        });
        is_close(larger.speed_m_s(), case.speed_m_s(), STEADY)
    });
}

#[test]
fn only_the_products_of_density_and_drag_area_and_of_efficiency_and_power_count() {
    check(
        (
            steady(any_shape()),
            0.2f64..5.0,
            any_of(&fields::DRIVETRAIN_EFFICIENCY),
        ),
        |(case, k, efficiency)| {
            let other = case.with(|c| {
                c.density_kg_m3 *= k;
                c.cda_m2 /= k;
                c.power_w *= c.machine.drivetrain_efficiency / efficiency;
                c.machine.drivetrain_efficiency = efficiency;
            });
            is_close(other.speed_m_s(), case.speed_m_s(), STEADY)
        },
    );
}

#[test]
fn where_only_the_air_resists_speed_is_the_cube_root_of_power_over_drag() {
    check(steady(Just(plain_shape())), |case| {
        let in_vacuum_of_tyres = case.with(|c| {
            c.machine.rolling_coefficient = 0.0;
            c.machine.bearing_drag_n = 0.0;
            c.machine.bearing_drag_n_s_per_m = 0.0;
            c.wind = RoadWind::default();
            c.grade = 0.0;
        });
        let road_w = case.power_w * case.machine.drivetrain_efficiency;
        let want = (2.0 * road_w / (case.density_kg_m3 * case.cda_m2)).cbrt();
        is_close(in_vacuum_of_tyres.speed_m_s(), want, CLOSED_FORM)
    });
}

#[test]
fn without_crosswind_a_yaw_table_changes_nothing_for_air_from_ahead() {
    let table = vec![(0.0, 1.0), (20.0, 0.9), (45.0, 1.1)];
    check(
        (steady(untabled_shape()), 0.0..=fields::WIND_SPEED_M_S.max),
        move |(case, head_m_s)| {
            let plain = case.with(|c| {
                c.wind = RoadWind {
                    head_m_s,
                    cross_m_s: 0.0,
                }
            });
            let tabled = plain.with(|c| c.shape.yaw_table = table.clone());
            is_close(tabled.speed_m_s(), plain.speed_m_s(), STEADY)
        },
    );
}

#[test]
fn wind_from_the_left_is_as_wind_from_the_right() {
    check(steady(any_shape()), |case| {
        let mirrored = case.with(|c| c.wind.cross_m_s = -c.wind.cross_m_s);
        prop_assert_eq!(mirrored.speed_m_s(), case.speed_m_s());
        Ok(())
    });
}

#[test]
fn more_power_is_faster_on_every_road_in_every_wind() {
    check((steady(any_shape()), 1.001f64..2.0), |(case, more)| {
        let (before, after) = (
            case.speed_m_s(),
            case.with(|c| c.power_w *= more).speed_m_s(),
        );
        prop_assert!(after > before, "{after} for {before}");
        Ok(())
    });
}

#[test]
fn on_the_flat_and_uphill_mass_tyres_thick_air_and_headwind_are_slower() {
    check(
        (steady(untabled_shape()), 0.0f64..20.0, 1.001f64..2.0),
        |(case, head_m_s, more)| {
            let case = case.with(|c| {
                c.grade = c.grade.abs();
                c.wind = RoadWind {
                    head_m_s,
                    cross_m_s: 0.0,
                };
            });
            let before = case.speed_m_s();
            let heavier = case.with(|c| c.machine.total_mass_kg *= more).speed_m_s();
            let stickier = case
                .with(|c| c.machine.rolling_coefficient *= more)
                .speed_m_s();
            let thicker = case.with(|c| c.density_kg_m3 *= more).speed_m_s();
            let larger = case.with(|c| c.cda_m2 *= more).speed_m_s();
            let windier = case.with(|c| c.wind.head_m_s += more).speed_m_s();
            for after in [heavier, stickier, thicker, larger, windier] {
                prop_assert!(after < before, "{after} for {before}");
            }
            Ok(())
        },
    );
}

#[test]
fn mass_is_faster_exactly_where_the_road_falls_by_more_than_the_tyres_hold() {
    check((steady(untabled_shape()), 1.01f64..2.0), |(case, more)| {
        let (before, after) = (
            case.speed_m_s(),
            case.with(|c| c.machine.total_mass_kg *= more).speed_m_s(),
        );
        let pulls = -case.grade - case.machine.rolling_coefficient;
        prop_assert_eq!(
            after > before,
            pulls > 0.0,
            "{} for {} where {} pulls",
            after,
            before,
            pulls
        );
        Ok(())
    });
}

/// No proof is known; it held in every row of the tables. Drag area is the same at every speed and yaw here.
#[test]
fn there_and_back_in_wind_or_over_a_hill_never_beats_a_calm_flat_road() {
    check(steady(Just(plain_shape())), |case| {
        let calm = case.with(|c| {
            c.wind = RoadWind::default();
            c.grade = 0.0;
        });
        let pace = |case: Steady| 1.0 / case.speed_m_s();
        let windy = pace(calm.with(|c| c.wind = case.wind))
            + pace(calm.with(|c| {
                c.wind = RoadWind {
                    head_m_s: -case.wind.head_m_s,
                    cross_m_s: -case.wind.cross_m_s,
                };
            }));
        let hilly =
            pace(calm.with(|c| c.grade = case.grade)) + pace(calm.with(|c| c.grade = -case.grade));
        let flat = 2.0 * pace(calm);
        prop_assert!(windy >= flat * (1.0 - STEADY), "in wind {windy} for {flat}");
        prop_assert!(
            hilly >= flat * (1.0 - STEADY),
            "over the hill {hilly} for {flat}"
        );
        Ok(())
    });
}

#[test]
fn elasticities_of_power_drag_and_mass_add_up_to_none() {
    check(steady(any_shape()), |case| {
        let without_bearings = case.with(|c| {
            c.machine.bearing_drag_n = 0.0;
            c.machine.bearing_drag_n_s_per_m = 0.0;
        });
        let speed_m_s = without_bearings.speed_m_s();
        let Some(e) = elasticity(
            &without_bearings.stretch(),
            speed_m_s,
            without_bearings.cda_m2,
        ) else {
            return Ok(());
        };
        let largest = e.power.abs().max(e.cda.abs()).max(e.mass.abs());
        prop_assert!(
            (e.power + e.cda + e.mass).abs() <= STEADY * largest,
            "{e:?}"
        );
        prop_assert_eq!(e.cda, e.density);
        Ok(())
    });
}

#[test]
fn two_changes_tie_at_the_share_of_the_air_that_is_said() {
    check(
        (0.001..=fields::POWER_CHANGE.max, 0.001f64..0.5),
        |(more, less)| {
            let Some(share) = tie_aero_share(more, less) else {
                return Ok(());
            };
            prop_assume!(share > 1e-6 && share < 1.0 - 1e-6);
            // A flat calm road at 10 m/s on which the air takes this share of 30 N.
            let machine = Machine {
                rolling_coefficient: 1.0 - share,
                ..flat_machine(30.0 / 9.80665)
            };
            let case = Steady {
                machine,
                shape: plain_shape(),
                density_kg_m3: 1.2,
                wind: RoadWind::default(),
                grade: 0.0,
                power_w: 300.0,
                cda_m2: 30.0 * share / (0.5 * 1.2 * 100.0),
            };
            let stronger = case.with(|c| c.power_w *= 1.0 + more).speed_m_s();
            let sleeker = case.with(|c| c.cda_m2 *= 1.0 - less).speed_m_s();
            is_close(stronger, sleeker, STEADY)
        },
    );
}

fn flat_machine(total_mass_kg: f64) -> Machine {
    Machine {
        total_mass_kg,
        rotating_mass_kg: 0.0,
        rolling_coefficient: 0.0,
        drivetrain_efficiency: 1.0,
        bearing_drag_n: 0.0,
        bearing_drag_n_s_per_m: 0.0,
        launch_force_n: 250.0,
        lateral_m_s2: 4.0,
        braking_m_s2: 3.0,
        gravity_m_s2: 9.80665,
    }
}

#[test]
fn density_from_a_dew_point_is_density_from_the_humidity_that_gives_it() {
    let state = (
        any_of(&fields::TEMPERATURE_C),
        any_of(&fields::PRESSURE_HPA),
        0.001f64..=1.0,
    );
    check(state, |(temperature_c, pressure_hpa, humidity)| {
        let dew_point = dew_point_c(temperature_c, humidity);
        let vapour_pa = saturation_vapour_pressure_pa(dew_point);
        is_close(
            vapour_pa,
            humidity * saturation_vapour_pressure_pa(temperature_c),
            STEADY,
        )?;
        let by = |moisture| density_kg_m3(temperature_c, 100.0 * pressure_hpa, moisture);
        is_close(
            by(Moisture::DewPointC(dew_point)),
            by(Moisture::RelativeHumidity(humidity)),
            SAME_DENSITY,
        )
    });
}

#[test]
fn air_is_thinner_when_warmer_damper_or_of_less_pressure() {
    let state = (
        usual(&fields::TEMPERATURE_C),
        any_of(&fields::PRESSURE_HPA),
        0.0f64..0.9,
    );
    check(state, |(temperature_c, pressure_hpa, humidity)| {
        let density = |temperature_c, hpa: f64, humidity| {
            density_kg_m3(
                temperature_c,
                100.0 * hpa,
                Moisture::RelativeHumidity(humidity),
            )
        };
        let now = density(temperature_c, pressure_hpa, humidity);
        prop_assert!(density(temperature_c + 1.0, pressure_hpa, humidity) < now);
        prop_assert!(density(temperature_c, pressure_hpa, humidity + 0.1) < now);
        prop_assert!(density(temperature_c, pressure_hpa - 1.0, humidity) < now);
        Ok(())
    });
}

#[test]
fn pressure_at_the_course_is_below_that_at_sea_level_exactly_above_the_sea() {
    let place = (
        any_of(&fields::PRESSURE_HPA),
        any_of(&fields::ALTITUDE_M),
        any_of(&fields::TEMPERATURE_C),
    );
    check(place, |(sea_level_hpa, altitude_m, temperature_c)| {
        prop_assert_eq!(
            course_pressure_pa(sea_level_hpa, 0.0, temperature_c),
            sea_level_hpa
        );
        let course_hpa = course_pressure_pa(sea_level_hpa, altitude_m, temperature_c);
        prop_assert_eq!(course_hpa < sea_level_hpa, altitude_m > 0.0);
        Ok(())
    });
}

/// Stretches of a random course: length, grade, bearing and perhaps a bend.
fn stretches(
    grades: impl Strategy<Value = f64>,
    bends: f64,
) -> impl Strategy<Value = Vec<(f64, f64, f64, Option<f64>)>> {
    let bend = (0.0f64..1.0, 10.0f64..500.0)
        .prop_map(move |(chance, radius_m)| (chance < bends).then_some(radius_m));
    vec((20.0f64..4_000.0, grades, 0.0f64..360.0, bend), 1..12)
}

fn profile(stretches: &[(f64, f64, f64, Option<f64>)]) -> Course {
    let (mut distance_m, mut elevation_m) = (0.0, 300.0);
    let mut points = Vec::new();
    for &(length_m, grade, bearing_deg, radius_m) in stretches {
        points.push(Point {
            distance_m,
            elevation_m,
            bearing_deg,
            radius_m,
            // Some are sheltered.
            wind_share: 1.0 - 8.0 * grade.abs().min(0.1),
        });
        distance_m += length_m;
        elevation_m += grade * length_m;
    }
    points.push(Point {
        distance_m,
        elevation_m,
        bearing_deg: 0.0,
        radius_m: None,
        wind_share: 1.0,
    });
    Course::profile(&points)
}

fn gentle_grades() -> impl Strategy<Value = f64> {
    -0.06f64..0.06
}

/// Drag area by yaw as tunnels give it: it changes by a tenth over several degrees.
fn gentle_shape() -> impl Strategy<Value = DragShape> {
    let rows = vec(0.9f64..1.1, 0..5).prop_map(|ratios| {
        let row = |(i, ratio): (usize, f64)| (6.0 * i as f64, if i == 0 { 1.0 } else { ratio });
        ratios.into_iter().enumerate().map(row).collect()
    });
    (rows, -0.2f64..0.2).prop_map(|(yaw_table, speed_exponent)| DragShape {
        yaw_table,
        speed_exponent,
        reference_airspeed_m_s: fields::REFERENCE_AIRSPEED_M_S.default,
    })
}

/// A position, that may fade and lapse to a larger drag area.
fn any_position() -> impl Strategy<Value = Position> {
    let fade = option::of((
        usual(&fields::FADE_TIRED_CDA_M2),
        0.0f64..3_000.0,
        1.0f64..3_000.0,
    ));
    let lapses = option::of((usual(&fields::LAPSES_SHARE), usual(&fields::LAPSES_CDA_M2)));
    (usual(&fields::CDA_M2), fade, lapses, gentle_shape()).prop_map(
        |(cda_m2, fade, lapses, shape)| Position {
            cda_m2,
            shape,
            cp_factor: 1.0,
            w_prime_factor: 1.0,
            fade: fade.map(|(tired_cda_m2, begins_s, lasts_s)| Fade {
                tired_cda_m2: tired_cda_m2.max(cda_m2),
                begins_s,
                complete_s: begins_s + lasts_s,
            }),
            lapses: lapses.map(|(share, cda_m2)| Lapses { share, cda_m2 }),
            feeding: None,
        },
    )
}

fn power_curve() -> impl Strategy<Value = PowerDuration> {
    let long_ride = option::of((
        usual(&fields::LONG_RIDE_LOSS_W),
        usual(&fields::LONG_RIDE_FROM_S),
    ));
    (usual(&fields::CP_W), usual(&fields::W_PRIME_J), long_ride).prop_map(
        |(cp_w, w_prime_j, long_ride)| PowerDuration {
            cp_w,
            w_prime_j,
            peak_w: None,
            long_ride: long_ride.map(|(loss_w, from_s)| LongRide {
                loss_w: loss_w.min(0.1 * cp_w),
                from_s,
            }),
        },
    )
}

fn start() -> impl Strategy<Value = Start> {
    prop_oneof![
        Just(Start::Standing),
        Just(Start::Rolling),
        (1.0f64..15.0).prop_map(Start::Speed)
    ]
}

fn setup(
    course: impl Strategy<Value = Course>,
    start: impl Strategy<Value = Start>,
) -> impl Strategy<Value = Setup> {
    (
        usual_machine(),
        any_position(),
        course,
        weather(),
        start,
        power_curve(),
    )
        .prop_map(|(machine, position, course, weather, start, power)| Setup {
            machine,
            position,
            course: Rc::new(course),
            density_kg_m3: weather.density_kg_m3,
            wind: weather.wind,
            weather_change: None,
            start,
            stops: None,
            power,
        })
}

/// A ride in weather that stays or changes, or one with stops.
fn any_day() -> impl Strategy<Value = Setup> {
    prop_oneof![any_setup(), changing_setup(), stopping_setup()]
}

/// A ride with stops and feeding, also where a stretch begins or ends, or in a bend.
fn stopping_setup() -> impl Strategy<Value = Setup> {
    let days = prop_oneof![any_setup(), changing_setup()];
    let feeding = (0.0f64..0.1, usual(&fields::FEEDING_CDA_M2));
    (days, 100.0f64..5_000.0, 0.0f64..600.0, feeding).prop_map(
        |(mut setup, every_m, standing_s, (share, cda_m2))| {
            setup.position.feeding = Some(Lapses { share, cda_m2 });
            Setup {
                stops: Some(Stops {
                    every_m,
                    standing_s,
                }),
                ..setup
            }
        },
    )
}

#[test]
fn a_stop_more_is_never_faster_than_its_standing() {
    check((stopping_setup(), ride_power()), |(stopping, power_w)| {
        let moving = Setup {
            stops: None,
            ..stopping.clone()
        };
        let (with_s, without_s) = (finish_s(&stopping, power_w)?, finish_s(&moving, power_w)?);
        let standing_s = stopping.standing_s();
        // In weather that changes a rider who comes later may be lucky.
        prop_assume!(stopping.weather_change.is_none());
        let least_s = (without_s + standing_s) * (1.0 - AS_FAST);
        prop_assert!(
            with_s >= least_s,
            "{with_s} for {without_s} and {standing_s}"
        );
        Ok(())
    });
}

/// A ride on which the weather changes.
fn changing_setup() -> impl Strategy<Value = Setup> {
    (
        any_setup(),
        weather(),
        weather(),
        -3_600.0f64..3_600.0,
        60.0f64..7_200.0,
    )
        .prop_map(|(setup, before, after, from_s, lasts_s)| {
            let change = WeatherChange {
                from_s,
                until_s: from_s + lasts_s,
                before,
                after,
            };
            let at_start = change.at(0.0);
            Setup {
                density_kg_m3: at_start.density_kg_m3,
                wind: at_start.wind,
                weather_change: Some(change),
                ..setup
            }
        })
}

fn weather() -> impl Strategy<Value = Weather> {
    (air(), 0.0f64..5.0, 0.0f64..360.0).prop_map(|(density_kg_m3, speed_m_s, from_deg)| Weather {
        wind: Wind::new(speed_m_s, from_deg),
        density_kg_m3,
    })
}

fn any_setup() -> impl Strategy<Value = Setup> {
    setup(
        stretches(gentle_grades(), 0.2).prop_map(|stretches| profile(&stretches)),
        start(),
    )
}

fn ride_power() -> impl Strategy<Value = f64> {
    120.0f64..450.0
}

/// The ride, or the case is left out where the rider stalls.
fn ridden(setup: &Setup, power_w: f64, at_m: &[f64]) -> Result<Ride, TestCaseError> {
    ride(setup, power_w, Recovery::Differential, at_m)
        .map_err(|_| TestCaseError::reject("the rider stalls"))
}

fn finish_s(setup: &Setup, power_w: f64) -> Result<f64, TestCaseError> {
    time_s(setup, power_w).map_err(|_| TestCaseError::reject("the rider stalls"))
}

#[test]
fn work_at_the_pedals_is_the_sum_of_where_it_went() {
    check((any_day(), ride_power()), |(setup, power_w)| {
        let Energy {
            pedal_j,
            drivetrain_j,
            air_j,
            rolling_j,
            climbing_j,
            bearings_j,
            braking_j,
            kinetic_j,
        } = ridden(&setup, power_w, &[])?.energy;
        let spent = [
            drivetrain_j,
            air_j,
            rolling_j,
            climbing_j,
            bearings_j,
            braking_j,
            kinetic_j,
        ];
        let gross_j = pedal_j + spent.map(f64::abs).iter().sum::<f64>();
        prop_assert!(
            (pedal_j - spent.iter().sum::<f64>()).abs() <= ENERGY * gross_j,
            "{pedal_j} for {spent:?}"
        );
        let found_j =
            MET_A_LIMIT_M * setup.machine.launch_force_n * setup.course.segments.len() as f64;
        prop_assert!(
            braking_j >= -found_j - ENERGY * gross_j,
            "brakes gave {braking_j}"
        );
        Ok(())
    });
}

#[test]
fn height_gained_and_speed_gained_are_those_of_the_course() {
    check((any_day(), ride_power()), |(setup, power_w)| {
        let ride = ridden(&setup, power_w, &[setup.course.distance_m()])?;
        let rise_m: f64 = setup
            .course
            .segments
            .iter()
            .map(|segment| segment.length_m * segment.slope.0)
            .sum();
        let gross_m: f64 = setup
            .course
            .segments
            .iter()
            .map(|segment| (segment.length_m * segment.slope.0).abs())
            .sum();
        let weight_n = setup.machine.total_mass_kg * setup.machine.gravity_m_s2;
        let climbing_j = ride.energy.climbing_j;
        prop_assert!(
            (climbing_j - weight_n * rise_m).abs() <= ENERGY * weight_n * gross_m.max(1.0),
            "{climbing_j}"
        );
        let rolled_m: f64 = setup
            .course
            .segments
            .iter()
            .map(|segment| segment.length_m * segment.slope.1)
            .sum();
        is_close(
            ride.energy.rolling_j,
            weight_n * setup.machine.rolling_coefficient * rolled_m,
            ENERGY,
        )?;
        is_close(ride.distance_m, setup.course.distance_m(), ENERGY)
    });
}

#[test]
fn a_stretch_cut_into_parts_takes_as_long() {
    let uncut = stretches(gentle_grades(), 0.0);
    let setups = uncut.prop_flat_map(|uncut| {
        let course = profile(&uncut);
        (setup(Just(course), start()), Just(uncut))
    });
    check(
        (setups, ride_power(), 2usize..6),
        |((whole, uncut), power_w, parts)| {
            let part =
                |&(length_m, grade, bearing_deg, radius_m): &(f64, f64, f64, Option<f64>)| {
                    std::iter::repeat_n(
                        (length_m / parts as f64, grade, bearing_deg, radius_m),
                        parts,
                    )
                };
            let cut_up: Vec<_> = uncut.iter().flat_map(part).collect();
            let cut = Setup {
                course: Rc::new(profile(&cut_up)),
                ..whole.clone()
            };
            is_close(finish_s(&cut, power_w)?, finish_s(&whole, power_w)?, CUT)
        },
    );
}

#[test]
fn a_steady_stretch_cut_into_parts_takes_exactly_as_long() {
    let uniform = (500.0f64..50_000.0, gentle_grades(), 0.0f64..360.0);
    let setups = uniform.prop_flat_map(|(length_m, grade, bearing_deg)| {
        (
            setup(
                Just(profile(&[(length_m, grade, bearing_deg, None)])),
                Just(Start::Rolling),
            ),
            2usize..200,
        )
    });
    check((setups, ride_power()), |((setup, parts), power_w)| {
        let mut whole = setup;
        whole.position.fade = None;
        let segment = whole.course.segments[0];
        let part = Segment {
            length_m: segment.length_m / parts as f64,
            ..segment
        };
        let cut = Setup {
            course: Rc::new(Course {
                longest_m: f64::INFINITY,
                segments: vec![part; parts],
            }),
            ..whole.clone()
        };
        let want_s = finish_s(&whole, power_w)?;
        is_close(finish_s(&cut, power_w)?, want_s, STEADY_CUT * parts as f64)
    });
}

#[test]
fn more_power_never_finishes_later() {
    check(
        (any_setup(), ride_power(), 1.01f64..1.5),
        |(setup, power_w, more)| {
            let (before, after) = (
                finish_s(&setup, power_w)?,
                finish_s(&setup, power_w * more)?,
            );
            prop_assert!(after <= before * (1.0 + AS_FAST), "{after} for {before}");
            Ok(())
        },
    );
}

#[test]
fn more_drag_never_finishes_earlier_in_still_air() {
    check(
        (any_setup(), ride_power(), 1.01f64..1.5),
        |(windy, power_w, more)| {
            let still = Setup {
                wind: Wind::default(),
                ..windy
            };
            let mut larger = still.clone();
            larger.position.cda_m2 *= more;
            if let Some(fade) = &mut larger.position.fade {
                fade.tired_cda_m2 *= more;
            }
            let (before, after) = (finish_s(&still, power_w)?, finish_s(&larger, power_w)?);
            prop_assert!(after >= before * (1.0 - AS_FAST), "{after} for {before}");
            Ok(())
        },
    );
}

#[test]
fn more_mass_never_finishes_earlier_where_nothing_falls_or_pushes() {
    let uphill = setup(
        stretches(0.0f64..0.06, 0.0).prop_map(|stretches| profile(&stretches)),
        Just(Start::Standing),
    );
    check(
        (uphill, ride_power(), 1.01f64..1.5),
        |(setup, power_w, more)| {
            // A following wind may push, and a fade may pass while a rider is slow.
            let mut light = Setup {
                wind: Wind::default(),
                ..setup
            };
            light.position.fade = None;
            let mut heavy = light.clone();
            heavy.machine.total_mass_kg *= more;
            // More mass on a rising road keeps more speed over its foot, so each stretch begins from rest.
            for segment in &light.course.segments {
                let alone = |setup: &Setup| {
                    let course = Rc::new(Course {
                        longest_m: f64::INFINITY,
                        segments: vec![*segment],
                    });
                    finish_s(
                        &Setup {
                            course,
                            ..setup.clone()
                        },
                        power_w,
                    )
                };
                let (before, after) = (alone(&light)?, alone(&heavy)?);
                prop_assert!(after >= before * (1.0 - AS_FAST), "{after} for {before}");
            }
            Ok(())
        },
    );
}

#[test]
fn a_ride_of_everything_twice_as_large_takes_as_long() {
    check(
        (any_setup(), ride_power(), 0.5f64..2.0),
        |(setup, power_w, k)| {
            let mut larger = setup.clone();
            let machine = &mut larger.machine;
            machine.total_mass_kg *= k;
            machine.rotating_mass_kg *= k;
            machine.bearing_drag_n *= k;
            machine.bearing_drag_n_s_per_m *= k;
            machine.launch_force_n *= k;
            larger.position.cda_m2 *= k;
            if let Some(fade) = &mut larger.position.fade {
                fade.tired_cda_m2 *= k;
            }
            if let Some(lapses) = &mut larger.position.lapses {
                lapses.cda_m2 *= k;
            }
            is_close(
                finish_s(&larger, power_w * k)?,
                finish_s(&setup, power_w)?,
                AS_FAST,
            )
        },
    );
}

#[test]
fn wind_and_road_turned_together_change_nothing() {
    let courses = stretches(gentle_grades(), 0.2);
    let setups = courses
        .prop_flat_map(|stretches| (setup(Just(profile(&stretches)), start()), Just(stretches)));
    check(
        (setups, ride_power(), 0.0f64..360.0),
        |((setup, stretches), power_w, turn_deg)| {
            let turned_road: Vec<_> = stretches
                .iter()
                .map(|&(l, g, b, r)| (l, g, b + turn_deg, r))
                .collect();
            let (north, east) = (setup.wind.from_north_m_s, setup.wind.from_east_m_s);
            let wind = Wind::new(north.hypot(east), east.atan2(north).to_degrees() + turn_deg);
            let turned = Setup {
                course: Rc::new(profile(&turned_road)),
                wind,
                ..setup.clone()
            };
            is_close(
                finish_s(&turned, power_w)?,
                finish_s(&setup, power_w)?,
                AS_FAST,
            )
        },
    );
}

#[test]
fn distance_and_time_only_grow_and_no_bend_is_taken_too_fast() {
    check((any_day(), ride_power()), |(setup, power_w)| {
        let (mut at_m, mut limits, mut end_m) = (Vec::new(), Vec::new(), 0.0);
        for segment in &setup.course.segments {
            for share in [0.25, 0.5, 0.75] {
                at_m.push(end_m + share * segment.length_m);
                let radius_m = segment.radius_m.unwrap_or(f64::INFINITY);
                limits.push((setup.machine.lateral_m_s2 * radius_m).sqrt());
            }
            end_m += segment.length_m;
        }
        let ride = ridden(&setup, power_w, &at_m)?;
        prop_assert_eq!(ride.samples.len(), at_m.len());
        let mut before_s = 0.0;
        for (sample, limit_m_s) in ride.samples.iter().zip(limits) {
            prop_assert!(
                sample.time_s > before_s && sample.time_s < ride.time_s,
                "{sample:?}"
            );
            prop_assert!(
                sample.speed_m_s <= limit_m_s * (1.0 + ENERGY),
                "{sample:?} in a bend for {limit_m_s} m/s"
            );
            before_s = sample.time_s;
        }
        is_close(ride.time_s, finish_s(&setup, power_w)?, CLOSED_FORM)
    });
}

#[test]
fn w_prime_balance_never_passes_w_prime_and_the_cautious_form_never_passes_the_generous() {
    check((any_setup(), ride_power()), |(setup, power_w)| {
        let w_prime_j = setup.power.w_prime_j;
        let at_m: Vec<f64> = (0..=40)
            .map(|i| setup.course.distance_m() * f64::from(i) / 40.0)
            .collect();
        let by = |form| {
            ride(&setup, power_w, form, &at_m)
                .map_err(|_| TestCaseError::reject("the rider stalls"))
        };
        let (cautious, middle, generous) = (
            by(Recovery::None)?,
            by(Recovery::Differential)?,
            by(Recovery::Linear)?,
        );
        for ride in [&cautious, &middle, &generous] {
            prop_assert!(
                ride.samples
                    .iter()
                    .all(|sample| sample.w_prime_balance_j <= w_prime_j)
            );
            let least_j = ride
                .samples
                .iter()
                .map(|sample| sample.w_prime_balance_j)
                .fold(w_prime_j, f64::min);
            prop_assert!(ride.w_prime_least_j <= least_j + ENERGY * w_prime_j);
            prop_assert!(ride.w_prime_least_j <= ride.w_prime_left_j);
        }
        // Overdrawn, the differential form gives back more than watt for watt.
        prop_assume!(generous.w_prime_least_j >= 0.0 && middle.w_prime_least_j >= 0.0);
        prop_assert!(cautious.w_prime_left_j <= middle.w_prime_left_j + ENERGY * w_prime_j);
        prop_assert!(middle.w_prime_left_j <= generous.w_prime_left_j + ENERGY * w_prime_j);
        Ok(())
    });
}

#[test]
fn w_prime_spent_in_two_parts_is_spent_in_one() {
    let state = (
        usual(&fields::W_PRIME_J),
        0.0f64..=1.0,
        -300.0f64..300.0,
        1.0f64..600.0,
        0.0f64..=1.0,
    );
    check(state, |(w_prime_j, full, above_w, dt_s, cut)| {
        for form in [Recovery::Differential, Recovery::None, Recovery::Linear] {
            let after =
                |balance_j, dt_s| w_prime_balance_j(form, balance_j, w_prime_j, above_w, dt_s);
            let (once, twice) = (
                after(full * w_prime_j, dt_s),
                after(after(full * w_prime_j, cut * dt_s), (1.0 - cut) * dt_s),
            );
            prop_assert!(
                (once - twice).abs() <= ENERGY * (w_prime_j + once.abs()),
                "{form:?}: {once} and {twice}"
            );
            prop_assert!(once <= w_prime_j * (1.0 + ENERGY), "{form:?}: {once}");
        }
        Ok(())
    });
}

/// Roads long enough that an even effort is near critical power, without bends: in a bend the power drops.
fn long_setup() -> impl Strategy<Value = Setup> {
    let course =
        vec((1_000.0f64..8_000.0, -0.02f64..0.02, 0.0f64..360.0), 2..12).prop_map(|stretches| {
            let bare: Vec<_> = stretches
                .into_iter()
                .map(|(length, grade, bearing)| (length, grade, bearing, None))
                .collect();
            profile(&bare)
        });
    setup(course, Just(Start::Rolling))
}

#[test]
fn an_even_effort_is_the_power_that_the_curve_allows_for_its_time() {
    check(any_day(), |setup| {
        let Ok(even) = paced(&Integrated, &setup, Effort::Even) else {
            return Err(TestCaseError::reject("no even effort"));
        };
        is_close(
            setup.sustainable_w(finish_s(&setup, even.power_w)?),
            even.power_w,
            FIXED_POINT,
        )?;
        is_close(even.time_s, finish_s(&setup, even.power_w)?, FIXED_POINT)
    });
}

#[test]
fn an_even_effort_ends_empty_and_an_easier_one_does_not() {
    check((long_setup(), 0.5f64..0.999), |(setup, easier)| {
        let Ok(even) = paced(&Integrated, &setup, Effort::Even) else {
            return Err(TestCaseError::reject("no even effort"));
        };
        let w_prime_j = setup.power.w_prime_j;
        let left_j = ridden(&setup, even.power_w, &[])?.w_prime_left_j;
        prop_assert!(
            left_j.abs() <= EMPTY * w_prime_j,
            "{left_j} J left of {w_prime_j}"
        );
        let spare = ridden(&setup, easier * even.power_w, &[])?;
        prop_assert!(
            spare.w_prime_least_j >= -EMPTY * w_prime_j,
            "{} J",
            spare.w_prime_least_j
        );
        Ok(())
    });
}

#[test]
fn the_power_for_a_finish_time_is_the_power_that_gave_it() {
    check((any_day(), ride_power()), |(setup, power_w)| {
        let time_s = finish_s(&setup, power_w)?;
        // Where bends set the pace a little time costs much power, and the time alone is what can be asked for.
        let again_w = power_for_time_w(&Integrated, &setup, time_s)
            .map_err(|_| TestCaseError::reject("out of reach"))?;
        is_close(finish_s(&setup, again_w)?, time_s, FIXED_POINT)
    });
}

#[test]
fn a_clock_of_steady_speeds_moves_as_rides_do() {
    let long = long_setup().prop_filter("long", |setup| setup.course.distance_m() > 10_000.0);
    check(
        (long, 160.0f64..400.0, 0.01f64..0.05),
        |(setup, power_w, more)| {
            let time_model = QuasiSteady::default();
            let by = |time_model: &dyn TimeModel, watts| {
                time_model
                    .time_s(&setup, watts)
                    .map_err(|_| TestCaseError::reject("the rider stalls"))
            };
            let moved = |time_model: &dyn TimeModel| {
                Ok::<f64, TestCaseError>(
                    by(time_model, power_w)? - by(time_model, power_w * (1.0 + more))?,
                )
            };
            // The time_model starts from the speeds of its last ride.
            by(&time_model, power_w)?;
            is_close(moved(&time_model)?, moved(&Integrated)?, STEADY_CLOCK)
        },
    );
}

#[test]
fn a_clock_of_steady_speeds_asked_twice_says_the_same() {
    check((long_setup(), 160.0f64..400.0), |(setup, power_w)| {
        let time_model = QuasiSteady::default();
        let by = || {
            time_model
                .time_s(&setup, power_w)
                .map_err(|_| TestCaseError::reject("the rider stalls"))
        };
        let first_s = by()?;
        is_close(by()?, first_s, SAME_CLOCK)
    });
}

#[test]
fn sustainable_power_falls_with_time_and_its_duration_is_the_way_back() {
    check(
        (power_curve(), 10.0f64..20_000.0, 1.001f64..3.0),
        |(curve, time_s, later)| {
            let power_w = curve.sustainable_w(time_s);
            prop_assert!(curve.sustainable_w(time_s * later) < power_w);
            let back_s = curve
                .duration_s(power_w)
                .ok_or_else(|| TestCaseError::fail("no duration"))?;
            // Near critical power the curve is flat: a rounding of power is many of time.
            is_close(curve.sustainable_w(back_s), power_w, FIXED_POINT)
        },
    );
}

/// A scenario with two positions and modest doubts, as a request writes it.
fn scenario() -> impl Strategy<Value = Value> {
    let unsure = |field: &'static Field, share: f64| {
        usual(field).prop_map(
            move |value| json!({ "value": value, "sd": share * value, "source": "estimated" }),
        )
    };
    let position = || {
        let parts = (unsure(&fields::CDA_M2, 0.02), 0.9f64..1.0);
        parts.prop_map(|(cda_m2, cp_factor)| json!({ "cda_m2": cda_m2, "cp_factor": cp_factor }))
    };
    let fade = option::of((0.0f64..2_000.0, 100.0f64..2_000.0));
    let parts = (
        unsure(&fields::TOTAL_MASS_KG, 0.01),
        unsure(&fields::ROLLING_COEFFICIENT, 0.05),
        position(),
        position(),
        (180.0f64..350.0).prop_map(|cp_w| json!({ "value": cp_w, "sd": 0.02 * cp_w })),
        5_000.0f64..60_000.0,
        (0.0f64..5.0, 0.0f64..360.0),
        fade,
    );
    parts.prop_map(|(mass, rolling, low, steady, cp, distance_m, (wind_m_s, from_deg), fade)| {
        let mut low = low;
        if let Some((begins_s, lasts_s)) = fade {
            low["fade"] = json!({ "tired_cda_m2": 0.3, "begins_s": begins_s, "complete_s": begins_s + lasts_s });
        }
        json!({
            "rider": { "total_mass_kg": mass }, "bike": { "rolling_coefficient": rolling },
            "positions": [low, steady], "power": { "cp_w": cp },
            "course": { "distance_m": distance_m, "out_and_back": true },
            "conditions": { "wind_speed_m_s": wind_m_s, "wind_from_deg": from_deg },
        })
    })
}

fn figure(answer: &Value, name: &str, part: &str) -> f64 {
    answer[name][part]
        .as_f64()
        .unwrap_or_else(|| panic!("{name}.{part} is {}", answer[name]))
}

#[test]
fn the_low_position_gains_what_the_steady_one_loses() {
    check_cases(FEW_CASES, scenario(), |scenario| {
        let ask = |low, steady| {
            answer(
                "hold-or-fade",
                &json!({ "scenario": scenario, "with": { "low": low, "steady": steady } }),
            )
        };
        let (this, other) = (ask(0, 1), ask(1, 0));
        let (gain, loss) = (
            figure(&this, "difference_s", "value"),
            figure(&other, "difference_s", "value"),
        );
        prop_assert!((gain + loss).abs() <= SAME_TIME_S, "{gain} and {loss}");
        let (sd, other_sd) = (
            figure(&this, "difference_s", "sd"),
            figure(&other, "difference_s", "sd"),
        );
        prop_assert!(
            (sd - other_sd).abs() <= SAME_SPREAD * sd,
            "± {sd} and ± {other_sd}"
        );
        let (low_s, steady_s) = (
            figure(&this, "low_time_s", "value"),
            figure(&this, "steady_time_s", "value"),
        );
        prop_assert!((steady_s - low_s - gain).abs() <= SAME_TIME_S);
        let itself = ask(0, 0);
        prop_assert!(figure(&itself, "difference_s", "value").abs() <= SAME_TIME_S);
        let (itself_sd, time_sd) = (
            figure(&itself, "difference_s", "sd"),
            figure(&itself, "low_time_s", "sd"),
        );
        prop_assert!(
            itself_sd <= SAME_SPREAD * time_sd,
            "± {itself_sd} of ± {time_sd}"
        );
        Ok(())
    });
}

#[test]
fn the_difference_of_two_changes_is_what_one_saves_beyond_the_other() {
    let changes = (0.0f64..0.3, -0.3f64..0.0);
    check_cases(
        FEW_CASES,
        (scenario(), changes),
        |(scenario, (power_change, cda_change))| {
            let ask = |power, cda| {
                answer(
                    "power-or-drag",
                    &json!({ "scenario": scenario, "with": { "power_change": power, "cda_change": cda } }),
                )
            };
            let answer = ask(power_change, cda_change);
            let saved = |name| figure(&answer, name, "value");
            let difference = saved("difference_s");
            prop_assert!(
                (saved("more_power_saves_s") - saved("less_drag_saves_s") - difference).abs()
                    <= SAME_TIME_S
            );
            prop_assert!(
                saved("more_power_saves_s") >= -SAME_TIME_S
                    && saved("less_drag_saves_s") >= -SAME_TIME_S
            );
            // The change of drag area that is worth the change of power takes the same time.
            if let Some(equal) = value(&answer["equal_cda_change"])
                .filter(|equal| equal.abs() < fields::CDA_CHANGE.max)
            {
                let tie = figure(&ask(power_change, equal), "difference_s", "value");
                prop_assert!(tie.abs() <= SAME_TIME_S, "{tie} s apart");
            }
            let nothing = ask(0.0, 0.0);
            prop_assert!(figure(&nothing, "difference_s", "value").abs() <= SAME_TIME_S);
            Ok(())
        },
    );
}

#[test]
fn first_order_doubt_is_about_the_doubt_of_many_draws() {
    check_cases(FEW_CASES, scenario(), |mut scenario| {
        // Whether a fade begins before the finish or after it is no matter of degree.
        scenario["positions"][0]["fade"] = Value::Null;
        let with = json!({ "draws": 4000, "power_change": 0.1, "cda_change": -0.05 });
        let answer = answer(
            "power-or-drag",
            &json!({ "scenario": scenario, "with": with }),
        );
        let (first, drawn) = (
            figure(&answer, "difference_s", "sd"),
            figure(&answer, "drawn", "sd"),
        );
        prop_assert_eq!(&answer["drawn"]["failed"], &json!(0));
        is_close(first, drawn, FIRST_ORDER)?;
        let (value, mean) = (
            figure(&answer, "difference_s", "value"),
            figure(&answer, "drawn", "mean"),
        );
        prop_assert!(
            (value - mean).abs() <= MEAN_BESIDE * drawn,
            "{value} and {mean} ± {drawn}"
        );
        Ok(())
    });
}

#[test]
fn draws_scatter_about_the_difference_and_not_beside_it() {
    let efforts = prop_oneof![
        Just(json!({ "kind": "even" })),
        (150.0f64..350.0).prop_map(|power_w| json!({ "kind": "power", "power_w": power_w })),
    ];
    check_cases(
        FEW_CASES,
        (scenario(), efforts),
        |(mut scenario, effort)| {
            // So little doubt that the difference is as good as linear in it.
            for path in [
                "/rider/total_mass_kg",
                "/bike/rolling_coefficient",
                "/positions/0/cda_m2",
                "/positions/1/cda_m2",
                "/power/cp_w",
            ] {
                let quantity = scenario.pointer_mut(path).expect("a number with its doubt");
                quantity["sd"] = json!(0.001 * quantity["value"].as_f64().expect("a value"));
            }
            for (question, with) in [
                (
                    "power-or-drag",
                    json!({ "draws": 200, "power_change": 0.05, "cda_change": -0.05, "effort": effort }),
                ),
                ("hold-or-fade", json!({ "draws": 200, "effort": effort })),
            ] {
                let answer = answer(question, &json!({ "scenario": scenario, "with": with }));
                let (value, middle) = (
                    figure(&answer, "difference_s", "value"),
                    figure(&answer, "drawn", "median"),
                );
                let allowed = MIDDLE_S + 0.5 * figure(&answer, "drawn", "sd");
                prop_assert!(
                    (middle - value).abs() <= allowed,
                    "{question}: {middle} for {value} ± {allowed}"
                );
            }
            Ok(())
        },
    );
}

#[test]
fn the_map_shows_the_finish_times_of_its_points() {
    check_cases(
        FEW_CASES,
        (scenario(), 200.0f64..350.0),
        |(scenario, power_w)| {
            let with = json!({ "effort": { "kind": "power", "power_w": power_w } });
            let map = &answer(
                "power-or-drag",
                &json!({ "scenario": scenario, "with": with }),
            )["columns"];
            let column = |name: &str| {
                map[name]
                    .as_array()
                    .expect("a column")
                    .iter()
                    .filter_map(Value::as_f64)
                    .collect::<Vec<_>>()
            };
            let (powers, areas, times) = (column("power_w"), column("cda_m2"), column("time_s"));
            prop_assert_eq!(times.len(), powers.len() * areas.len());
            for (row, column) in [
                (0, 0),
                (0, powers.len() - 1),
                (areas.len() / 2, powers.len() / 3),
                (areas.len() - 1, 0),
            ] {
                let mut there = scenario.clone();
                let factor = areas[row]
                    / there["positions"][0]["cda_m2"]["value"]
                        .as_f64()
                        .expect("a drag area");
                there["positions"][0]["cda_m2"]["value"] = json!(areas[row]);
                if let Some(tired) = there["positions"][0].pointer_mut("/fade/tired_cda_m2") {
                    *tired = json!(factor * tired.as_f64().expect("a drag area"));
                }
                let with = json!({ "effort": { "kind": "power", "power_w": powers[column] } });
                let ridden = answer("finish-time", &json!({ "scenario": there, "with": with }));
                let (shown_s, ridden_s) = (
                    times[row * powers.len() + column],
                    figure(&ridden, "time_s", "value"),
                );
                prop_assert!(
                    (shown_s - ridden_s).abs() <= MAP_S,
                    "{shown_s} for {ridden_s}"
                );
            }
            Ok(())
        },
    );
}

#[test]
fn an_answer_in_full_agrees_with_itself() {
    check_cases(FEW_CASES, scenario(), |scenario| {
        let answer = answer("finish-time", &json!({ "scenario": scenario }));
        let time_s = figure(&answer, "time_s", "value");
        let splits = answer["splits"].as_array().expect("splits");
        is_close(
            splits
                .last()
                .and_then(|split| split["time_s"].as_f64())
                .expect("a last split"),
            time_s,
            FIXED_POINT,
        )?;
        is_close(
            figure(&answer, "average_speed_m_s", "value") * time_s,
            figure(&answer, "distance_m", "value"),
            FIXED_POINT,
        )?;
        is_close(
            figure(&answer, "power_w", "value"),
            answer["sustainable_w"].as_f64().expect("a power"),
            FIXED_POINT,
        )?;
        let (inputs, model) = (
            answer["input_sd_s"].as_f64().expect("an sd"),
            answer["model_sd_s"].as_f64().expect("an sd"),
        );
        is_close(
            figure(&answer, "time_s", "sd"),
            inputs.hypot(model),
            FIXED_POINT,
        )?;
        let shares: f64 = answer["surer"]
            .as_array()
            .expect("a list")
            .iter()
            .filter_map(|part| part["share"].as_f64())
            .sum();
        is_close(shares, 1.0, FIXED_POINT)
    });
}

/// A rider's leg, as two links and an ankle, on a seat from which it reaches all the way round with a knee that is never quite
/// straight.
fn any_leg() -> impl Strategy<Value = (Leg, Seat)> {
    let ankle = prop_oneof![
        (1.5f64..2.8).prop_map(|angle_rad| Ankle::Frozen { angle_rad }),
        (0.2f64..1.3, 0.0f64..0.5).prop_map(|(pitch_rad, swing_rad)| Ankle::Moving {
            pitch_rad,
            swing_rad
        }),
    ];
    let leg = (0.33f64..0.55, 0.33f64..0.55, 0.08f64..0.22, ankle);
    let seat = (0.12f64..0.2, 0.5f64..1.0, 1.05f64..1.65);
    let parts = (leg, seat).prop_map(
        |((thigh_m, shank_m, foot_m, ankle), (crank_m, hip_m, angle_rad))| {
            (
                Leg {
                    thigh_m,
                    shank_m,
                    foot_m,
                    ankle,
                },
                Seat {
                    crank_m,
                    hip_m,
                    angle_rad,
                },
            )
        },
    );
    parts.prop_filter(
        "a leg that reaches and never quite straightens",
        |&(leg, seat)| {
            Linkage::new(leg, seat)
                .turn()
                .is_ok_and(|turn| turn.knee_angle().greatest.1 < 3.0)
        },
    )
}

fn turn(leg: Leg, seat: Seat) -> Turn {
    Linkage::new(leg, seat).turn().expect("it reaches")
}

#[test]
fn a_leg_twice_the_size_moves_alike() {
    check((any_leg(), 0.5f64..2.0), |((leg, seat), scale)| {
        let turn = turn(leg, seat);
        let larger = Leg {
            thigh_m: scale * leg.thigh_m,
            shank_m: scale * leg.shank_m,
            foot_m: scale * leg.foot_m,
            ..leg
        };
        let seat = Seat {
            crank_m: scale * seat.crank_m,
            hip_m: scale * seat.hip_m,
            ..seat
        };
        let larger = Linkage::new(larger, seat)
            .turn()
            .expect("as the smaller one does");
        for (one, other) in [
            (turn.thigh_angle(), larger.thigh_angle()),
            (turn.thigh_rate(), larger.thigh_rate()),
            (turn.knee_angle(), larger.knee_angle()),
        ] {
            prop_assert!(
                (one.greatest.1 - other.greatest.1).abs() <= SAME_LEG,
                "{one:?} {other:?}"
            );
            prop_assert!(
                (one.least.1 - other.least.1).abs() <= SAME_LEG,
                "{one:?} {other:?}"
            );
        }
        Ok(())
    });
}

/// Law of cosines: with a frozen ankle the knee is straightest where the pedal lies down the seat line, and knows the reach only.
#[test]
fn a_frozen_ankles_knee_is_straightest_straight_down_the_seat_line() {
    check(any_leg(), |(leg, seat)| {
        let Ankle::Frozen { angle_rad } = leg.ankle else {
            return Ok(());
        };
        let lower_m =
            (leg.shank_m - leg.foot_m * angle_rad.cos()).hypot(leg.foot_m * angle_rad.sin());
        let offset_rad = (leg.foot_m * angle_rad.sin() / lower_m).asin();
        let knee_rad = |reach_m: f64| {
            let cosine = (leg.thigh_m.powi(2) + lower_m.powi(2) - reach_m.powi(2))
                / (2.0 * leg.thigh_m * lower_m);
            cosine.acos() - offset_rad
        };
        let knee = turn(leg, seat).knee_angle();
        prop_assert!(
            (knee.greatest.1 - knee_rad(seat.hip_m + seat.crank_m)).abs() <= SAME_LEG,
            "{knee:?}"
        );
        prop_assert!(
            (knee.least.1 - knee_rad(seat.hip_m - seat.crank_m)).abs() <= SAME_LEG,
            "{knee:?}"
        );
        let bottom_rad = std::f64::consts::FRAC_PI_2 + seat.angle_rad;
        prop_assert!((knee.greatest.0 - bottom_rad).abs() <= SAME_LEG, "{knee:?}");
        let top_rad = (bottom_rad + std::f64::consts::PI) % std::f64::consts::TAU;
        prop_assert!((knee.least.0 - top_rad).abs() <= SAME_LEG, "{knee:?}");
        Ok(())
    });
}

#[test]
fn turning_the_seat_about_the_axle_turns_a_leg_with_a_frozen_ankle_as_a_whole() {
    check((any_leg(), -0.2f64..0.2), |((leg, seat), by)| {
        let Ankle::Frozen { .. } = leg.ankle else {
            return Ok(());
        };
        let (turn, turned) = (
            turn(leg, seat),
            turn(
                leg,
                Seat {
                    angle_rad: seat.angle_rad + by,
                    ..seat
                },
            ),
        );
        let (before, after) = (turn.thigh_angle(), turned.thigh_angle());
        prop_assert!(
            (before.greatest.1 - by - after.greatest.1).abs() <= SAME_LEG,
            "{before:?} {after:?}"
        );
        let (before, after) = (turn.thigh_rate(), turned.thigh_rate());
        prop_assert!(
            (before.least.1 - after.least.1).abs() <= SAME_LEG,
            "{before:?} {after:?}"
        );
        Ok(())
    });
}

#[test]
fn the_thigh_comes_back_to_where_it_was() {
    const ANGLES: u32 = 720;
    check(any_leg(), |(leg, seat)| {
        let turn = turn(leg, seat);
        let rate = |i: u32| {
            turn.linkage()
                .at(f64::from(i) * std::f64::consts::TAU / f64::from(ANGLES))
                .thigh_rates[0]
        };
        let mean = (0..ANGLES).map(rate).sum::<f64>() / f64::from(ANGLES);
        prop_assert!(mean.abs() <= MEAN_RATE, "{mean:e}");
        Ok(())
    });
}

/// Two exact set-ups of one rider whose lengths are exact as well.
fn two_set_ups() -> impl Strategy<Value = Value> {
    let fit = || {
        (0.145f64..0.18, 0.66f64..0.74, 72f64..82.0, 0.0f64..0.18, 70f64..110.0).prop_map(
            |(crank, saddle, seat, drop, cadence)| {
                json!({ "crank_m": crank, "saddle_height_m": saddle, "seat_angle_deg": seat, "bar_drop_m": drop, "cadence_rpm": cadence })
            },
        )
    };
    (fit(), fit(), any::<bool>()).prop_map(|(a, b, frozen)| {
        json!({
            "a": a, "b": b, "model": if frozen { "frozen" } else { "ankling" },
            "thigh_m": 0.43, "shank_m": 0.435, "foot_m": 0.15, "trunk_m": 0.5, "upper_arm_m": 0.33,
            "hip_above_saddle_m": 0.065, "ankle_deg": 130, "foot_pitch_deg": 45, "foot_swing_deg": 12,
        })
    })
}

/// An answer where both legs reach.
fn legs(with: &Value) -> Option<Value> {
    let text = fasterby_core::ask_json("leg-room", &json!({ "with": with }).to_string()).ok()?;
    Some(serde_json::from_str(&text).expect("answers are JSON"))
}

#[test]
fn every_way_that_is_said_to_level_two_hips_levels_them() {
    let ways = [
        ("crank_change_m", "crank_m"),
        ("saddle_change_m", "saddle_height_m"),
        ("seat_angle_change_deg", "seat_angle_deg"),
        ("bar_drop_change_m", "bar_drop_m"),
    ];
    check_cases(FEW_CASES, two_set_ups(), |with| {
        let Some(before) = legs(&with) else {
            return Ok(());
        };
        let goal = value(&before["a"]["tightest_hip_deg"]).expect("an angle");
        for (way, part) in ways {
            let Some(by) = before["level"][way].as_f64() else {
                continue;
            };
            let mut changed = with.clone();
            let mut add = |part: &str, by: f64| {
                changed["b"][part] = json!(changed["b"][part].as_f64().expect("a number") + by);
            };
            add(part, by);
            if part == "crank_m" {
                add("saddle_height_m", -by);
            }
            // The torso stays while the seat moves, so the pads go along: the drop that keeps its angle is the torso's own.
            if part == "saddle_height_m" || part == "seat_angle_deg" || part == "crank_m" {
                let fit = changed["b"].as_object_mut().expect("a set-up");
                fit.remove("bar_drop_m");
                fit.insert(
                    "torso_deg".into(),
                    before["b"]["torso_deg"]["value"].clone(),
                );
            }
            let after = legs(&changed).expect("a way that was found reaches");
            let hip = value(&after["b"]["tightest_hip_deg"]).expect("an angle");
            prop_assert!(
                (hip - goal).abs() <= LEVEL_DEG,
                "{way} {by}: {hip} for {goal}"
            );
        }
        Ok(())
    });
}

#[test]
fn the_same_set_up_twice_differs_in_nothing_and_cadence_scales_speed_alone() {
    check_cases(FEW_CASES, two_set_ups(), |mut with| {
        with["b"] = with["a"].clone();
        let Some(same) = legs(&with) else {
            return Ok(());
        };
        for name in [
            "tightest_hip_deg",
            "straightest_knee_deg",
            "fastest_thigh_deg_s",
            "torso_deg",
        ] {
            prop_assert_eq!(value(&same["difference"][name]), Some(0.0), "{}", name);
        }
        let cadence = with["a"]["cadence_rpm"].as_f64().expect("a number");
        with["b"]["cadence_rpm"] = json!(1.25 * cadence);
        let faster = legs(&with).expect("cadence moves no joint");
        prop_assert_eq!(value(&faster["difference"]["tightest_hip_deg"]), Some(0.0));
        let ratio = |name: &str| {
            value(&faster["b"][name]).expect("a number")
                / value(&faster["a"][name]).expect("a number")
        };
        is_close(ratio("fastest_thigh_deg_s"), 1.25, CLOSED_FORM)?;
        is_close(ratio("rising_deg_s2"), 1.25 * 1.25, CLOSED_FORM)
    });
}

#[test]
fn lower_pads_close_the_hip_and_move_nothing_else() {
    check_cases(
        FEW_CASES,
        (two_set_ups(), 0.001f64..0.05),
        |(mut with, lower)| {
            with["b"] = with["a"].clone();
            with["b"]["bar_drop_m"] =
                json!(with["a"]["bar_drop_m"].as_f64().expect("a number") + lower);
            let Some(lowered) = legs(&with) else {
                return Ok(());
            };
            let difference = |name: &str| value(&lowered["difference"][name]).expect("a number");
            prop_assert!(difference("tightest_hip_deg") < 0.0);
            is_close(
                difference("tightest_hip_deg"),
                difference("torso_deg"),
                SAME_LEG,
            )?;
            prop_assert_eq!(difference("straightest_knee_deg"), 0.0);
            prop_assert_eq!(difference("fastest_thigh_deg_s"), 0.0);
            Ok(())
        },
    );
}

fn numbers(of: &Value) -> Vec<f64> {
    of.as_array()
        .expect("a list")
        .iter()
        .map(|number| value(number).expect("a number"))
        .collect()
}

#[test]
fn positions_are_compared_by_the_finish_times_of_their_rides() {
    check_cases(FEW_CASES, scenario(), |mut scenario| {
        let distance_m = scenario["course"]["distance_m"].clone();
        scenario["events"] = json!([{ "distance_m": distance_m }]);
        let compared = answer("which-position", &json!({ "scenario": scenario }));
        for position in 0..2 {
            scenario["riding_position"] = json!(position);
            let ridden = answer("finish-time", &json!({ "scenario": scenario }));
            let time = &compared["events"][0]["times"][position]["time_s"];
            is_close(
                value(time).expect("a time"),
                figure(&ridden, "time_s", "value"),
                FIXED_POINT,
            )?;
            // One ride a move stands in for the fixed point.
            is_close(
                time["sd"].as_f64().expect("an sd"),
                figure(&ridden, "time_s", "sd"),
                0.01,
            )?;
        }
        let crossed = compared["crossovers"].as_array().expect("a list").iter();
        for distance_m in
            crossed.map(|crossover| value(&crossover["distance_m"]).expect("a distance"))
        {
            let with = json!({ "distance_m": distance_m });
            let there = answer(
                "which-position",
                &json!({ "scenario": scenario, "with": with }),
            );
            let times = there["reading"]["times"]
                .as_array()
                .expect("a reading")
                .clone();
            let apart_s = value(&times[0]["time_s"]).expect("a time")
                - value(&times[1]["time_s"]).expect("a time");
            prop_assert!(
                apart_s.abs() <= SAME_TIME_S,
                "{apart_s} s apart where they cross"
            );
        }
        Ok(())
    });
}

#[test]
fn what_a_position_may_cost_is_what_makes_it_level() {
    check_cases(FEW_CASES, scenario(), |mut scenario| {
        let compared = answer("which-position", &json!({ "scenario": scenario }));
        for cost in compared["costs"]
            .as_array()
            .expect("a list")
            .iter()
            .filter(|cost| cost["event"] == 0)
        {
            let choice = cost["choice"].as_u64().expect("a place") as usize;
            let Some(allowed_w) = value(&cost["allowed_w"]) else {
                continue;
            };
            let cp = |place: &Value| {
                compared["choices"][place.as_u64().expect("a place") as usize]["cp_w"].as_f64()
            };
            let (own_w, other_w) = (
                cp(&cost["choice"]).expect("a power"),
                cp(&cost["against"]).expect("a power"),
            );
            let factor = scenario["positions"][choice]["cp_factor"]
                .as_f64()
                .expect("a factor")
                * (other_w - allowed_w)
                / own_w;
            if !(fields::CP_FACTOR.min..fields::CP_FACTOR.max).contains(&factor) {
                continue;
            }
            scenario["positions"][choice]["cp_factor"] = json!(factor);
            let level = answer("which-position", &json!({ "scenario": scenario }));
            let ahead_s = value(&level["events"][0]["ahead_s"]).expect("another position");
            prop_assert!(ahead_s.abs() <= SAME_TIME_S, "{ahead_s} s apart");
        }
        Ok(())
    });
}

#[test]
fn draws_of_positions_add_up_and_do_not_mind_their_order() {
    check_cases(8, scenario(), |scenario| {
        let ask = |scenario: &Value, with: Value| {
            answer(
                "which-position",
                &json!({ "scenario": scenario, "with": with }),
            )
        };
        let whole = ask(&scenario, json!({ "draws": 600, "reference": 0 }));
        let half = ask(&scenario, json!({ "draws": 300, "reference": 0 }));
        let rest = json!({ "draws": 300, "reference": 0, "so_far": half["drawn"]["tally"] });
        let parts = ask(&scenario, rest);
        prop_assert_eq!(&parts["drawn"]["draws"], &json!(600));
        let alone = ask(
            &scenario,
            json!({ "draws": 600, "reference": 0, "part": "draws" }),
        );
        prop_assert_eq!(&alone["drawn"], &whole["drawn"]);
        prop_assert_eq!(&alone["choices"], &whole["choices"]);
        prop_assert_eq!(&alone["events"], &json!([]));
        for (event, other) in [0, 1, 2, 3].map(|event| {
            (
                &whole["drawn"]["events"][event],
                &parts["drawn"]["events"][event],
            )
        }) {
            prop_assert_eq!(&event["win_share"], &other["win_share"]);
            // A quick ride begins from the speeds of the one before.
            let worth = |of: &Value| of["worth_of_all_s"].as_f64().expect("a worth");
            prop_assert!((worth(event) - worth(other)).abs() <= SAME_TIME_S);
        }
        prop_assert_eq!(&whole["drawn"]["draws"], &json!(600));
        for event in whole["drawn"]["events"].as_array().expect("events") {
            let shares = numbers(&event["win_share"]);
            is_close(shares.iter().sum(), 1.0, FIXED_POINT)?;
            prop_assert!(
                event["worth_of_all_s"]
                    .as_f64()
                    .is_some_and(|worth| worth >= 0.0)
            );
        }
        for worth in whole["drawn"]["worth"].as_array().expect("a list") {
            let all = whole["drawn"]["events"].as_array().expect("events").iter();
            for (worth_s, event) in numbers(&worth["by_event_s"]).into_iter().zip(all) {
                let of_all_s = event["worth_of_all_s"].as_f64().expect("a worth");
                prop_assert!(
                    (0.0..=of_all_s + SAME_TIME_S).contains(&worth_s),
                    "{worth_s} of {of_all_s}"
                );
            }
        }
        // Named the other way round, with the same one as the reference, the answer is the same the other way round.
        let mut turned = scenario.clone();
        turned["positions"]
            .as_array_mut()
            .expect("positions")
            .reverse();
        let turned = ask(&turned, json!({ "reference": 1 }));
        for (event, other) in whole["events"]
            .as_array()
            .expect("events")
            .iter()
            .zip(turned["events"].as_array().expect("events"))
        {
            prop_assert_eq!(
                event["best"].as_u64().expect("a place") + other["best"].as_u64().expect("a place"),
                1
            );
            let difference = |at: &Value, place: usize| {
                value(&at["times"][place]["difference_s"]).expect("a number")
            };
            prop_assert!((difference(event, 1) - difference(other, 0)).abs() <= SAME_TIME_S);
            prop_assert!(difference(event, 0).abs() <= SAME_TIME_S);
        }
        Ok(())
    });
}

#[test]
fn a_position_that_is_worse_in_every_way_never_wins() {
    check_cases(8, scenario(), |mut scenario| {
        let mut worse = scenario["positions"][0].clone();
        let exact = value(&worse["cda_m2"]).expect("a drag area");
        scenario["positions"][0]["cda_m2"] = json!(exact);
        worse["cda_m2"] = json!(exact + 0.01);
        worse["cp_factor"] = json!(0.99 * worse["cp_factor"].as_f64().expect("a factor"));
        worse.as_object_mut().expect("a position").remove("fade");
        scenario["positions"][0]
            .as_object_mut()
            .expect("a position")
            .remove("fade");
        scenario["positions"][1] = worse;
        let answer = answer(
            "which-position",
            &json!({ "scenario": scenario, "with": { "draws": 300 } }),
        );
        for event in answer["drawn"]["events"].as_array().expect("events") {
            prop_assert_eq!(&event["win_share"], &json!([1.0, 0.0]));
            prop_assert_eq!(&event["worth_of_all_s"], &json!(0.0));
        }
        prop_assert_eq!(&answer["drawn"]["worth"], &json!([]));
        prop_assert_eq!(&answer["crossovers"], &json!([]));
        Ok(())
    });
}

#[test]
fn positions_differ_in_draws_by_as_much_as_to_first_order() {
    check_cases(8, scenario(), |mut scenario| {
        for position in 0..2 {
            scenario["positions"][position]
                .as_object_mut()
                .expect("a position")
                .remove("fade");
        }
        scenario["power"]["w_prime_j"] = json!({ "value": 18_000, "sd": 1_500 });
        scenario["power"]["cp_w_prime_correlation"] = json!(-0.9);
        scenario["events"] = json!([{ "distance_m": 10_000 }]);
        let answer = answer(
            "which-position",
            &json!({ "scenario": scenario, "with": { "draws": 4000, "reference": 0 } }),
        );
        let tally = &answer["drawn"]["tally"];
        let (sum, squares, kept) = (
            numbers(&tally["sums"])[1],
            numbers(&tally["squares"])[1],
            4000.0,
        );
        let first = &answer["events"][0]["times"][1]["difference_s"];
        let drawn = (squares / kept - (sum / kept).powi(2)).sqrt();
        is_close(first["sd"].as_f64().expect("an sd"), drawn, FIRST_ORDER)
    });
}
