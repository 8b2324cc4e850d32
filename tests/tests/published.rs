//! The core against the tables in `tests/published`, row by row, each by the row's own tolerance. Every row names its
//! source; figures printed by others stand in `printed_figures.csv`.

use fasterby_core::air::{
    Ground, Heading, Moisture, RoadWind, STANDARD_DENSITY_KG_M3, STANDARD_PRESSURE_PA, Wind,
    apparent_wind, course_pressure_pa, density_kg_m3, gravity_m_s2, saturation_vapour_pressure_pa,
    standard_pressure_pa, wind_factor,
};
use fasterby_core::leg::{Ankle, Leg, Linkage, Seat};
use fasterby_core::power_duration::{LongRide, PowerDuration, Recovery, w_prime_balance_j};
use fasterby_core::resistance::{DragShape, Machine, Stretch, elasticity, slope, tie_aero_share};
use fasterby_core::solve::root;
use fasterby_core::w_prime_forms::{
    by_time_constant_j, elite_recovery_time_s, integral_by_second_j, integral_j, recovery_depth_w,
    recovery_time_s,
};
use fasterby_tests::{Row, Table};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// A density put together from four tabled terms of sixteen digits each.
const SAME_DENSITY: f64 = 1e-12;
/// Dry air is this much denser than an ideal gas at most, below 3000 m (its compressibility; Picard et al. 2008).
const COMPRESSIBILITY: f64 = 5e-4;
/// The standard prints its density at sea level to four digits.
const PRINTED_STANDARD_DENSITY: f64 = 1e-6;
/// The closed form and the root of the same cubic agree to rounding.
const SAME_TIE: f64 = 1e-12;
/// Roots of differences of speeds are sought this closely.
const ROOT_ACCURACY: f64 = 1e-13;
/// Times of the sensitivities are over this distance, as their source column says.
const SENSITIVITY_M: f64 = 40_000.0;

fn machine(total_mass_kg: f64, rolling_coefficient: f64, drivetrain_efficiency: f64) -> Machine {
    Machine {
        total_mass_kg,
        rotating_mass_kg: 0.0,
        rolling_coefficient,
        drivetrain_efficiency,
        bearing_drag_n: 0.0,
        bearing_drag_n_s_per_m: 0.0,
        launch_force_n: 250.0,
        lateral_m_s2: 4.0,
        braking_m_s2: 3.0,
        gravity_m_s2: 9.80665,
    }
}

fn shape(yaw_table: &str) -> DragShape {
    let row = |text: &str| {
        let (yaw, ratio) = text.split_once(':').expect("yaw:ratio");
        (yaw.parse().expect("a yaw"), ratio.parse().expect("a ratio"))
    };
    let yaw_table = yaw_table
        .split(';')
        .filter(|text| !text.is_empty())
        .map(row)
        .collect();
    DragShape {
        yaw_table,
        speed_exponent: 0.0,
        reference_airspeed_m_s: 12.0,
    }
}

/// A row's rider on a row's road.
#[derive(Clone)]
struct Case {
    machine: Machine,
    shape: DragShape,
    density_kg_m3: f64,
    wind: RoadWind,
    grade: f64,
    power_w: f64,
    cda_m2: f64,
}

impl Case {
    /// On a flat calm road.
    fn calm(row: &Row<'_>, density_kg_m3: f64) -> Self {
        Self {
            machine: machine(
                row.number("total_mass_kg"),
                row.number("rolling_coefficient"),
                row.number("drivetrain_efficiency"),
            ),
            shape: shape(""),
            density_kg_m3,
            wind: RoadWind::default(),
            grade: 0.0,
            power_w: row.optional("power_w").unwrap_or(0.0),
            cda_m2: row.number("cda_m2"),
        }
    }

    /// In the row's wind on its grade.
    fn new(row: &Row<'_>, density_kg_m3: f64) -> Self {
        let wind = RoadWind {
            head_m_s: row.number("headwind_m_s"),
            cross_m_s: row.number("crosswind_m_s"),
        };
        Self {
            wind,
            grade: row.number("grade"),
            ..Self::calm(row, density_kg_m3)
        }
    }

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

    fn speed_with_m_s(&self, change: impl FnOnce(&mut Self)) -> f64 {
        let mut changed = self.clone();
        change(&mut changed);
        changed.speed_m_s()
    }

    /// Power at the pedals that a speed takes.
    fn power_at_w(&self, speed_m_s: f64) -> f64 {
        speed_m_s * self.stretch().total_n(speed_m_s, self.cda_m2)
            / self.machine.drivetrain_efficiency
    }

    fn aero_share_at(&self, speed_m_s: f64) -> f64 {
        let forces = self.stretch().forces(speed_m_s, self.cda_m2);
        forces.air_n / forces.total_n()
    }
}

/// Density of the standard atmosphere: an ideal gas of 287.053 J/(kg K) at `288.15 K − 6.5 K/km` (ISO 2533:1975).
fn standard_density_kg_m3(altitude_m: f64) -> f64 {
    standard_pressure_pa(altitude_m) / (287.053 * standard_temperature_k(altitude_m))
}

fn standard_temperature_k(altitude_m: f64) -> f64 {
    const EARTH_RADIUS_M: f64 = 6_356_766.0;
    288.15 - 0.0065 * EARTH_RADIUS_M * altitude_m / (EARTH_RADIUS_M + altitude_m)
}

#[test]
fn moist_air_is_as_dense_as_the_formula_and_real_gas_mixtures_say() {
    for row in Table::new(include_str!("../published/moist_air_density.csv")).rows() {
        let humidity = Moisture::RelativeHumidity(row.number("relative_humidity"));
        let density = density_kg_m3(
            row.number("temperature_c"),
            row.number("pressure_pa"),
            humidity,
        );
        row.compare("density_kg_m3", density);
    }
}

/// Density is `p Ma / (Z R T) · (1 − x (1 − Mv/Ma))`; the constants are those of Picard et al. 2008.
#[test]
fn moist_air_is_put_together_from_the_terms_of_the_formula() {
    const DRY_AIR_KG_PER_MOL: f64 = 28.965_46e-3;
    const WATER_KG_PER_MOL: f64 = 18.015_28e-3;
    const GAS_CONSTANT: f64 = 8.314_472;
    for row in Table::new(include_str!("../published/moist_air_terms.csv")).rows() {
        let (temperature_c, pressure_pa) = (row.number("temperature_c"), row.number("pressure_pa"));
        let humidity = row.number("relative_humidity");
        let saturation_pa = saturation_vapour_pressure_pa(temperature_c);
        row.compare("saturation_pressure_pa", saturation_pa);
        let vapour = humidity * row.number("enhancement_factor") * saturation_pa / pressure_pa;
        row.compare("vapour_mole_fraction", vapour);
        let dry = pressure_pa * DRY_AIR_KG_PER_MOL
            / (row.number("compressibility") * GAS_CONSTANT * (temperature_c + 273.15));
        let want = dry * (1.0 - vapour * (1.0 - WATER_KG_PER_MOL / DRY_AIR_KG_PER_MOL));
        let density = density_kg_m3(
            temperature_c,
            pressure_pa,
            Moisture::RelativeHumidity(humidity),
        );
        assert!(
            (density / want - 1.0).abs() <= SAME_DENSITY,
            "{}: {density} for {want}",
            row.text("case")
        );
    }
}

#[test]
fn a_dew_point_stands_in_for_the_humidity() {
    for row in Table::new(include_str!("../published/dew_point_density.csv")).rows() {
        let dew_point = Moisture::DewPointC(row.number("dew_point_c"));
        row.compare(
            "density_kg_m3",
            density_kg_m3(
                row.number("temperature_c"),
                row.number("pressure_pa"),
                dew_point,
            ),
        );
    }
}

#[test]
fn saturation_pressure_agrees_with_steam_tables_and_with_rougher_formulas() {
    for row in Table::new(include_str!("../published/saturation_pressure.csv")).rows() {
        row.compare(
            "saturation_pressure_pa",
            saturation_vapour_pressure_pa(row.number("temperature_c")),
        );
    }
}

#[test]
fn the_standard_atmosphere_is_that_of_the_standard_and_the_handbook() {
    for row in Table::new(include_str!("../published/standard_atmosphere.csv")).rows() {
        let altitude_m = row.number("altitude_m");
        row.compare("temperature_k", standard_temperature_k(altitude_m));
        row.compare("pressure_pa", standard_pressure_pa(altitude_m));
        row.compare("density_kg_m3", standard_density_kg_m3(altitude_m));
        let dry = Moisture::RelativeHumidity(0.0);
        let moist = density_kg_m3(
            standard_temperature_k(altitude_m) - 273.15,
            standard_pressure_pa(altitude_m),
            dry,
        );
        let apart = moist / row.number("density_kg_m3") - 1.0;
        assert!(
            (0.0..COMPRESSIBILITY).contains(&apart),
            "{}: {apart:e}",
            row.text("case")
        );
    }
    assert!(
        (STANDARD_DENSITY_KG_M3 / standard_density_kg_m3(0.0) - 1.0).abs()
            <= PRINTED_STANDARD_DENSITY
    );
    assert_eq!(STANDARD_PRESSURE_PA, standard_pressure_pa(0.0));
}

#[test]
fn pressure_reduced_to_sea_level_is_taken_back_to_the_course() {
    for row in Table::new(include_str!("../published/course_pressure.csv")).rows() {
        let sea_level_pa = row.number("sea_level_pressure_pa");
        let pressure_pa = course_pressure_pa(
            sea_level_pa,
            row.number("altitude_m"),
            row.number("temperature_c"),
        );
        row.compare("pressure_pa", pressure_pa);
    }
}

#[test]
fn gravity_follows_latitude_and_height() {
    for row in Table::new(include_str!("../published/gravity.csv")).rows() {
        row.compare(
            "gravity_m_s2",
            gravity_m_s2(row.number("latitude_deg"), row.number("altitude_m")),
        );
    }
}

#[test]
fn wind_falls_towards_the_ground_by_the_logarithmic_law() {
    for row in Table::new(include_str!("../published/wind_profile.csv")).rows() {
        let ground = Ground::RoughnessLengthM(row.number("roughness_length_m"));
        row.compare(
            "wind_ratio",
            wind_factor(ground, row.number("height_m"), row.number("wind_height_m")),
        );
    }
}

#[test]
fn wind_is_taken_apart_along_and_across_the_road() {
    for row in Table::new(include_str!("../published/wind_geometry.csv")).rows() {
        let speed_m_s = row.number("speed_m_s");
        let wind = Wind::new(row.number("wind_speed_m_s"), row.number("wind_from_deg"))
            .along(Heading::new(row.number("bearing_deg")));
        let (apparent_m_s, yaw) = apparent_wind(speed_m_s, wind);
        row.compare("headwind_m_s", wind.head_m_s);
        row.compare("crosswind_m_s", wind.cross_m_s);
        row.compare("along_road_air_speed_m_s", speed_m_s + wind.head_m_s);
        row.compare("apparent_wind_m_s", apparent_m_s);
        row.compare("yaw_deg", yaw.to_degrees());
        // At a density of 2 kg/m³ a square metre meets as many newtons as the speed's square has m²/s².
        let (weightless, shape) = (machine(0.0, 0.0, 1.0), shape(""));
        let stretch = Stretch::new(&weightless, &shape, 2.0, wind, slope(0.0));
        row.compare("drag_speed_squared_m2_s2", stretch.air_n(speed_m_s, 1.0));
    }
}

#[test]
fn steady_speed_solves_the_balance_in_wind_on_hills_and_coasting() {
    for row in Table::new(include_str!("../published/steady_speed.csv")).rows() {
        let case = Case {
            shape: shape(row.text("yaw_table")),
            ..Case::new(&row, row.number("density_kg_m3"))
        };
        row.compare("speed_m_s", case.speed_m_s());
        row.compare("power_at_12_w", case.power_at_w(12.0));
    }
}

#[test]
fn a_change_of_power_drag_mass_or_tyres_does_to_speed_what_calculus_says() {
    for row in Table::new(include_str!("../published/sensitivity.csv")).rows() {
        let case = Case::new(&row, row.number("density_kg_m3"));
        let speed_m_s = case.speed_m_s();
        let elastic =
            elasticity(&case.stretch(), speed_m_s, case.cda_m2).expect("no turning point");
        row.compare("aero_share", case.aero_share_at(speed_m_s));
        row.compare("power_elasticity", elastic.power);
        row.compare("cda_elasticity", elastic.cda);
        row.compare("rolling_elasticity", elastic.rolling);
        row.compare("mass_elasticity", elastic.mass);
        let more = case.speed_with_m_s(|c| c.power_w *= 1.1);
        let less = case.speed_with_m_s(|c| c.cda_m2 *= 0.9);
        let lighter = case.speed_with_m_s(|c| c.machine.total_mass_kg -= 1.0);
        let smoother = case.speed_with_m_s(|c| c.machine.rolling_coefficient *= 0.9);
        row.compare("speed_more_power_m_s", more);
        row.compare("speed_less_cda_m_s", less);
        let gained_s = |faster: f64| SENSITIVITY_M / faster - SENSITIVITY_M / speed_m_s;
        row.compare("time_change_more_power_s", gained_s(more));
        row.compare("time_change_less_cda_s", gained_s(less));
        row.compare("time_change_less_mass_s", gained_s(lighter));
        row.compare("time_change_less_rolling_s", gained_s(smoother));
        let equal_cda = |change: f64| case.speed_with_m_s(|c| c.cda_m2 *= 1.0 + change) - more;
        row.compare(
            "equal_cda_change",
            root(equal_cda, -0.99, 0.5, ROOT_ACCURACY).expect("an equal change"),
        );
        row.compare(
            "equal_power_change",
            case.power_at_w(less) / case.power_w - 1.0,
        );
    }
}

#[test]
fn a_cut_in_drag_may_cost_its_share_of_the_air_in_power() {
    const CUT_TO: f64 = 0.893;
    for row in Table::new(include_str!("../published/exchange_rates.csv")).rows() {
        let case = Case::calm(&row, row.number("density_kg_m3"));
        let speed_m_s = row.number("speed_m_s");
        let lower = Case {
            cda_m2: CUT_TO * case.cda_m2,
            ..case.clone()
        };
        let elastic =
            elasticity(&case.stretch(), speed_m_s, case.cda_m2).expect("no turning point");
        row.compare("aero_share", case.aero_share_at(speed_m_s));
        row.compare("cda_elasticity", elastic.cda);
        row.compare(
            "power_factor",
            lower.power_at_w(speed_m_s) / case.power_at_w(speed_m_s),
        );
    }
}

#[test]
fn ten_percent_more_power_and_ten_percent_less_drag_are_worth_what_the_share_of_the_air_says() {
    for row in Table::new(include_str!("../published/ten_per_cent.csv")).rows() {
        let case = Case::new(&row, row.number("density_kg_m3"));
        let speed_m_s = case.speed_m_s();
        let more = case.speed_with_m_s(|c| c.power_w *= 1.1) / speed_m_s;
        let less = case.speed_with_m_s(|c| c.cda_m2 *= 0.9) / speed_m_s;
        let elastic =
            elasticity(&case.stretch(), speed_m_s, case.cda_m2).expect("no turning point");
        row.compare("aero_share", case.aero_share_at(speed_m_s));
        row.compare("speed_ratio_more_power", more);
        row.compare("speed_ratio_less_cda", less);
        row.compare("saving_more_power", 1.0 - 1.0 / more);
        row.compare("saving_less_cda", 1.0 - 1.0 / less);
        row.compare("power_elasticity", elastic.power);
        row.compare("cda_elasticity", elastic.cda);
        row.compare("mass_elasticity", elastic.mass);
        if row.text("case") == "tie" {
            let tie = tie_aero_share(0.1, 0.1).expect("they tie");
            assert!((tie - row.number("aero_share")).abs() <= SAME_TIE, "{tie}");
        }
    }
}

#[test]
fn what_wind_and_hills_take_on_one_half_is_not_given_back_on_the_other() {
    for row in Table::new(include_str!("../published/averaging_traps.csv")).rows() {
        let calm = Case::calm(&row, row.number("density_kg_m3"));
        let cross_m_s = row.number("crosswind_m_s");
        let half = |grade: &str, wind: &str| {
            let wind = RoadWind {
                head_m_s: row.number(wind),
                cross_m_s,
            };
            Case {
                wind,
                grade: row.number(grade),
                ..calm.clone()
            }
            .speed_m_s()
        };
        let (out, back) = (
            half("out_grade", "out_headwind_m_s"),
            half("back_grade", "back_headwind_m_s"),
        );
        let half_m = 0.5 * row.number("distance_m");
        let time_s = half_m / out + half_m / back;
        row.compare("out_speed_m_s", out);
        row.compare("back_speed_m_s", back);
        row.compare("time_s", time_s);
        row.compare("lost_s", time_s - 2.0 * half_m / calm.speed_m_s());
    }
}

#[test]
fn thin_air_is_fast_air_at_the_same_power() {
    for row in Table::new(include_str!("../published/altitude_times.csv")).rows() {
        let speed_m_s =
            Case::new(&row, standard_density_kg_m3(row.number("altitude_m"))).speed_m_s();
        row.compare("speed_m_s", speed_m_s);
        row.compare("time_s", row.number("distance_m") / speed_m_s);
    }
}

#[test]
fn w_prime_is_spent_and_comes_back_as_the_differential_form_says() {
    for row in Table::new(include_str!("../published/w_prime_balance.csv")).rows() {
        let (cp_w, w_prime_j) = (row.number("cp_w"), row.number("w_prime_j"));
        let mut balance_j = w_prime_j;
        let mut left_s = row.number("time_s");
        for segment in row.text("segments_s_w").split(';') {
            let (seconds, watts) = segment.split_once(':').expect("seconds:watts");
            let dt_s = seconds.parse::<f64>().expect("seconds").min(left_s);
            let above_w = watts.parse::<f64>().expect("watts") - cp_w;
            balance_j =
                w_prime_balance_j(Recovery::Differential, balance_j, w_prime_j, above_w, dt_s);
            left_s -= dt_s;
        }
        row.compare("w_prime_left_j", balance_j);
    }
}

#[test]
fn other_forms_of_w_prime_balance_are_those_of_their_equations() {
    for row in Table::new(include_str!("../published/w_prime_balance.csv")).rows() {
        let (cp_w, w_prime_j, time_s) = (
            row.number("cp_w"),
            row.number("w_prime_j"),
            row.number("time_s"),
        );
        let number = |text: &str| text.parse::<f64>().expect("a number");
        let stretch = |text: &str| {
            text.split_once(':')
                .map(|(s, w)| (number(s), number(w)))
                .expect("seconds:watts")
        };
        let ride: Vec<_> = row.text("segments_s_w").split(';').map(stretch).collect();
        let tau_s = recovery_time_s(recovery_depth_w(cp_w, &ride));
        row.compare(
            "integral_j",
            integral_j(cp_w, w_prime_j, tau_s, &ride, time_s),
        );
        row.compare(
            "integral_by_second_j",
            integral_by_second_j(cp_w, w_prime_j, tau_s, &ride, time_s),
        );
        row.compare(
            "recovery_2012_j",
            by_time_constant_j(cp_w, w_prime_j, recovery_time_s, &ride, time_s),
        );
        row.compare(
            "recovery_elite_j",
            by_time_constant_j(cp_w, w_prime_j, elite_recovery_time_s, &ride, time_s),
        );
    }
}

#[test]
fn power_falls_with_duration_as_the_relation_and_the_trials_say() {
    for row in Table::new(include_str!("../published/power_duration.csv")).rows() {
        let long_ride = row.optional("long_ride_loss_w").map(|loss_w| LongRide {
            loss_w,
            from_s: row.number("long_ride_from_s"),
        });
        let rider = PowerDuration {
            cp_w: row.number("cp_w"),
            w_prime_j: row.number("w_prime_j"),
            peak_w: row.optional("peak_w"),
            long_ride,
        };
        row.compare("power_w", rider.sustainable_w(row.number("time_s")));
    }
}

/// Two trials fix a hyperbola; read off the core's at the same two times, it is the same one.
#[test]
fn two_trials_fix_critical_power_and_w_prime() {
    for row in Table::new(include_str!("../published/critical_power.csv")).rows() {
        let (first_s, second_s) = (row.number("first_time_s"), row.number("second_time_s"));
        let hyperbola = |first_w: f64, second_w: f64| {
            let w_prime_j = (first_w - second_w) / (1.0 / first_s - 1.0 / second_s);
            PowerDuration {
                cp_w: first_w - w_prime_j / first_s,
                w_prime_j,
                peak_w: None,
                long_ride: None,
            }
        };
        let tested = hyperbola(row.number("first_power_w"), row.number("second_power_w"));
        let again = hyperbola(
            tested.sustainable_w(first_s),
            tested.sustainable_w(second_s),
        );
        row.compare("cp_w", again.cp_w);
        row.compare("w_prime_j", again.w_prime_j);
    }
}

/// The sources by their keys: padilla-2000, brownlie-2009, debraux-2011, bassett-1999, iso-2533.
#[test]
fn figures_printed_by_others_are_met_with_what_they_leave_open() {
    for row in Table::new(include_str!("../published/printed_figures.csv")).rows() {
        let case = || Case::calm(&row, row.number("density_kg_m3"));
        let got = match row.text("quantity") {
            "power_w" => case().power_at_w(row.number("speed_m_s")),
            "aero_share" => case().aero_share_at(row.number("speed_m_s")),
            "time_saved_s" => {
                let mut case = case();
                case.power_w = case.power_at_w(row.number("speed_m_s"));
                let changed_m_s =
                    case.speed_with_m_s(|c| c.cda_m2 *= 1.0 + row.number("cda_change"));
                row.number("distance_m") * (1.0 / row.number("speed_m_s") - 1.0 / changed_m_s)
            }
            "density_ratio" => {
                standard_density_kg_m3(row.number("altitude_m")) / standard_density_kg_m3(0.0)
            }
            other => panic!("no such quantity: {other}"),
        };
        row.compare("expected", got);
    }
}

#[cfg(not(target_arch = "wasm32"))]
#[test]
fn every_table_in_the_folder_is_used() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("published");
    let tests = [include_str!("published.rs"), include_str!("fit.rs")];
    for entry in std::fs::read_dir(folder).expect("the folder of tables") {
        let name = entry
            .expect("an entry")
            .file_name()
            .into_string()
            .expect("a plain name");
        let reading = format!("include_str!(\"../published/{name}\")");
        let used = tests.iter().any(|test| test.contains(&reading));
        assert!(used, "no test reads {name}");
    }
}

/// The leg of the tables: a stature of 1.80 m at 90 turns a minute, its hip a fixed reach from the pedal.
mod golden_leg {
    use super::{Ankle, Leg, Linkage, Row, Seat};

    pub const RAD_S: f64 = 1.5 * std::f64::consts::TAU;
    pub const CRANK_M: f64 = 0.17;
    const REACH_M: f64 = 0.98084;

    pub fn leg(row: &Row<'_>) -> Leg {
        let ankle = match row.text("ankle") {
            "frozen" => Ankle::Frozen {
                angle_rad: 130f64.to_radians(),
            },
            _ => Ankle::Moving {
                pitch_rad: 45f64.to_radians(),
                swing_rad: 12f64.to_radians(),
            },
        };
        Leg {
            thigh_m: 0.441,
            shank_m: 0.4428,
            foot_m: 0.153,
            ankle,
        }
    }

    pub fn seat(crank_m: f64) -> Seat {
        Seat {
            crank_m,
            hip_m: REACH_M - crank_m,
            angle_rad: 76f64.to_radians(),
        }
    }

    pub fn linkage(row: &Row<'_>, crank_m: f64) -> Linkage {
        Linkage::new(leg(row), seat(crank_m))
    }
}

#[test]
fn a_leg_is_tightest_straightest_and_fastest_where_forty_digits_say() {
    for row in Table::new(include_str!("../published/leg_extremes.csv")).rows() {
        let turn = golden_leg::linkage(&row, row.number("crank_m"))
            .turn()
            .expect("the leg reaches");
        let compare = |name: &str, (place, value): (f64, f64), scale: f64| {
            row.compare(name, scale * value);
            row.compare(&format!("{name}_at_deg"), place.to_degrees());
        };
        let (thigh, knee) = (turn.thigh_angle(), turn.knee_angle());
        compare("tightest_hip_deg", thigh.greatest, -1f64.to_degrees());
        compare("straightest_knee_deg", knee.greatest, 1f64.to_degrees());
        compare("most_bent_knee_deg", knee.least, 1f64.to_degrees());
        compare(
            "rising_rad_s",
            turn.thigh_rate().greatest,
            golden_leg::RAD_S,
        );
        compare("falling_rad_s", turn.thigh_rate().least, golden_leg::RAD_S);
        compare(
            "rising_rad_s2",
            turn.thigh_second_rate().greatest,
            golden_leg::RAD_S * golden_leg::RAD_S,
        );
        compare(
            "falling_rad_s2",
            turn.thigh_second_rate().least,
            golden_leg::RAD_S * golden_leg::RAD_S,
        );
    }
}

#[test]
fn a_leg_passes_through_the_four_quarters_as_forty_digits_say() {
    for row in Table::new(include_str!("../published/leg_moments.csv")).rows() {
        let at =
            golden_leg::linkage(&row, golden_leg::CRANK_M).at(row.number("crank_deg").to_radians());
        row.compare("knee_x_m", at.knee.x);
        row.compare("knee_y_m", at.knee.y);
        row.compare("thigh_deg", at.thigh_rad.to_degrees());
        row.compare("knee_deg", at.knee_rad.to_degrees());
        row.compare("thigh_rad_s", at.thigh_rates[0] * golden_leg::RAD_S);
        row.compare(
            "thigh_rad_s2",
            at.thigh_rates[1] * golden_leg::RAD_S * golden_leg::RAD_S,
        );
    }
}

#[test]
fn small_changes_of_a_set_up_open_the_hip_as_the_table_says() {
    for row in Table::new(include_str!("../published/leg_changes.csv")).rows() {
        let before = golden_leg::seat(golden_leg::CRANK_M);
        let after = Seat {
            crank_m: before.crank_m + row.number("crank_change_m"),
            hip_m: before.hip_m + row.number("saddle_change_m"),
            angle_rad: before.angle_rad + row.number("seat_angle_change_deg").to_radians(),
        };
        let [before, after] = [before, after].map(|seat| {
            Linkage::new(golden_leg::leg(&row), seat)
                .turn()
                .expect("the leg reaches")
        });
        let thigh = before.thigh_angle().greatest.1 - after.thigh_angle().greatest.1;
        row.compare(
            "tightest_hip_change_deg",
            row.number("torso_change_deg") + thigh.to_degrees(),
        );
        let knee = after.knee_angle().greatest.1 - before.knee_angle().greatest.1;
        row.compare("straightest_knee_change_deg", knee.to_degrees());
    }
}
