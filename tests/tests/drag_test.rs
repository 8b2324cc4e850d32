//! Drag areas from laps, runs and coast-downs: the golden loop within its bands, how often intervals hold the true value, what
//! common errors do, and requests that are wrong.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::air::Wind;
use fasterby_core::coast_down::Coasting;
use fasterby_core::columns::Columns;
use fasterby_core::estimate::{Estimate, Observation, Rolling, Seen, estimate};
use fasterby_core::lap::{Lap, Sums};
use fasterby_core::recording::{Recording, Rules};
use fasterby_core::rig::Rig;
use fasterby_tests::drag_requests::{ONE_POSITION, TWO_POSITIONS, normals, request, scenario};
use fasterby_tests::loop_ride::{
    DENSITY_KG_M3, LoopRide, Noise, Recorded, TRUE_CDA_M2, TRUE_ROLLING, rig,
};
use fasterby_tests::{answer, refused};
use serde_json::{Value, json};

/// As many simulated tests as the bands were worked out from.
const TESTS: usize = 2_000;
/// A 95 % interval that holds the true value in 95 % of so many tests holds it in 94 to 96 of a hundred but for one time in
/// twenty; what is asked for is 93 to 97.
const COVERED: std::ops::RangeInclusive<f64> = 0.93..=0.97;
/// The bands' noise-free figures were worked out by another program, which differs in how it begins and ends a lap.
const SAME_CDA: f64 = 4e-4;
const SAME_ROLLING: f64 = 5e-5;
/// What a rolling resistance held at its true value leaves of such differences.
const SAME_CDA_HELD: f64 = 2e-4;

const NO_RULES: Rules = Rules {
    braking_m_s2: 1000.0,
    stopped_m_s: 0.0,
    accelerating_m_s2: 1000.0,
    bridged_s: 5.0,
};

/// The eight laps that count, reduced.
fn laps(ride: &Recorded, wind: Wind) -> Vec<Observation> {
    laps_with(&Recording::new(&ride.columns(), &NO_RULES), ride, wind)
}

fn laps_with(recording: &Recording, ride: &Recorded, wind: Wind) -> Vec<Observation> {
    let lap = |ends: &[f64]| Observation {
        position: 0,
        seen: Seen::Stretch(Lap::new(recording, ends[0], ends[1], true, wind).sums),
    };
    ride.ends_s.windows(2).map(lap).collect()
}

fn joint(rows: &[Observation]) -> Estimate {
    estimate(rows, &rig(TRUE_ROLLING), Rolling::Fitted, &[]).expect("a joint estimate")
}

fn held(rows: &[Observation], rolling: f64) -> Estimate {
    estimate(rows, &rig(rolling), Rolling::Held, &[]).expect("an estimate")
}

fn near(what: &str, got: f64, want: f64, allowed: f64) {
    assert!(
        (got - want).abs() <= allowed,
        "{what}: {got}, expected {want} ± {allowed}"
    );
}

/// Mean and standard deviation.
fn spread(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    let square = values.iter().map(|x| (x - mean).powi(2)).sum::<f64>();
    (mean, (square / (n - 1.0)).sqrt())
}

/// What many noisy recordings of one ride give.
struct Many {
    cda: Vec<f64>,
    rolling: Vec<f64>,
    cda_covered: usize,
    rolling_covered: usize,
    told: usize,
}

fn many(
    ride: &LoopRide,
    noise: &Noise,
    seed: u64,
    of: impl Fn(&[Observation]) -> Estimate,
) -> Many {
    let ridden = ride.ride();
    let mut normal = normals(seed);
    let mut many = Many {
        cda: Vec::new(),
        rolling: Vec::new(),
        cda_covered: 0,
        rolling_covered: 0,
        told: 0,
    };
    for _ in 0..TESTS {
        let noisy = ridden.noisy(noise, &mut normal);
        let found = of(&laps(&noisy, Wind::default()));
        let holds = |range: Option<(f64, f64)>, value: f64| {
            usize::from(range.is_some_and(|(low, high)| (low..=high).contains(&value)))
        };
        let cda = found.cda_m2(0);
        many.cda.push(cda.value);
        many.cda_covered += holds(cda.range_95, TRUE_CDA_M2);
        many.rolling.push(found.rolling_value());
        if let Some(rolling) = found.rolling() {
            many.rolling_covered += holds(rolling.range_95, TRUE_ROLLING);
        }
        many.told += usize::from(found.is_told());
    }
    many
}

const CONSTANT_POWER: LoopRide = LoopRide {
    powers_w: [220.0; 2],
    ..LoopRide::MAIN
};

#[test]
fn the_golden_ride_without_noise_gives_the_true_coefficients() {
    let ride = LoopRide::MAIN.ride();
    let rows = laps(&ride, Wind::default());
    let found = joint(&rows);
    near("joint CdA", found.cda_m2(0).value, 0.250_082_46, SAME_CDA);
    near(
        "joint Crr",
        found.rolling_value(),
        0.003_992_13,
        SAME_ROLLING,
    );
    near(
        "held CdA",
        held(&rows, 0.004).cda_m2(0).value,
        0.249_992_38,
        SAME_CDA_HELD,
    );
    assert!(found.is_told());
}

#[test]
fn the_golden_tests_lie_within_their_bands() {
    let main = LoopRide::MAIN;
    let samples_only = Noise {
        drift_share: 0.0,
        ..Noise::MAIN
    };
    let d1 = many(&main, &samples_only, 1, joint);
    let (mean, sd) = spread(&d1.cda);
    near("D1 CdA", mean, 0.250_08, SAME_CDA);
    near("D1 SD", sd, 0.001_02, 0.000_2);

    let d2 = many(&main, &Noise::MAIN, 2, joint);
    let (mean, sd) = spread(&d2.cda);
    near("D2 CdA", mean, TRUE_CDA_M2, 0.000_5);
    assert!((0.002_5..=0.003_7).contains(&sd), "D2 SD {sd}");
    let (mean, sd) = spread(&d2.rolling);
    near("D2 Crr", mean, TRUE_ROLLING, SAME_ROLLING);
    near("D2 SD of Crr", sd, 0.000_249, 0.000_06);
    assert!(d2.told as f64 > 0.95 * TESTS as f64, "D2 told {}", d2.told);

    let d3 = many(&main, &Noise::MAIN, 3, |rows| held(rows, 0.004));
    let (mean, sd) = spread(&d3.cda);
    near("D3 CdA", mean, TRUE_CDA_M2, 0.000_3);
    near("D3 SD", sd, 0.000_61, 0.000_1);

    let d4 = many(&main, &Noise::MAIN, 4, |rows| held(rows, 0.004_5));
    near(
        "D4 bias",
        spread(&d4.cda).0 / TRUE_CDA_M2 - 1.0,
        -0.023,
        0.002,
    );

    let d6 = many(&CONSTANT_POWER, &Noise::MAIN, 6, |rows| held(rows, 0.004));
    let (mean, sd) = spread(&d6.cda);
    near("D6 CdA", mean, 0.249_99, SAME_CDA_HELD);
    near("D6 SD", sd, 0.000_60, 0.000_1);

    let biased = Noise {
        bias_share: 0.02,
        ..Noise::MAIN
    };
    let d7 = many(&main, &biased, 7, joint);
    let (mean, sd) = spread(&d7.cda);
    near("D7 CdA", mean, 0.256_74, SAME_CDA);
    near("D7 SD", sd, 0.003_19, 0.000_6);

    for (name, covered) in [
        ("D2 CdA", d2.cda_covered),
        ("D2 Crr", d2.rolling_covered),
        ("D3 CdA", d3.cda_covered),
        ("D6 CdA", d6.cda_covered),
    ] {
        let share = covered as f64 / TESTS as f64;
        assert!(COVERED.contains(&share), "{name} covered {share}");
    }
}

#[test]
fn a_test_at_one_power_does_not_tell_rolling_resistance() {
    let ridden = CONSTANT_POWER.ride();
    let mut normal = normals(5);
    let told = |noisy: &Recorded| {
        estimate(
            &laps(noisy, Wind::default()),
            &rig(TRUE_ROLLING),
            Rolling::Fitted,
            &[],
        )
        .is_ok_and(|found| found.is_told())
    };
    assert!(!told(&ridden));
    let count = (0..TESTS)
        .filter(|_| told(&ridden.noisy(&Noise::MAIN, &mut normal)))
        .count();
    assert_eq!(count, 0, "told in {count} of {TESTS}");
}

#[test]
fn wind_that_is_left_out_does_what_is_known_of_it() {
    use std::f64::consts::PI;
    // Hills, wind, where from, joint CdA and Crr, CdA with Crr held.
    let cases = [
        (true, 1.0, 0.3, 0.248_15, 0.003_67, 0.244_46),
        (true, 1.0, 0.3 + PI, 0.252_77, 0.004_31, 0.256_38),
        (true, 2.0, 0.3, 0.246_83, 0.003_35, 0.239_75),
        (true, 2.0, 0.3 + PI, 0.256_22, 0.004_61, 0.263_65),
        (false, 1.0, 0.3, 0.243_15, 0.004_58, 0.250_16),
        (false, 2.0, 0.3, 0.237_18, 0.005_11, 0.250_69),
    ];
    for (hilly, wind_m_s, wind_from_rad, cda, rolling, cda_held) in cases {
        let windy = LoopRide {
            hilly,
            wind_m_s,
            wind_from_rad,
            ..LoopRide::MAIN
        };
        let rows = laps(&windy.ride(), Wind::default());
        let (found, case) = (
            joint(&rows),
            format!("hills {hilly}, {wind_m_s} m/s from {wind_from_rad}"),
        );
        near(
            &format!("{case}: CdA"),
            found.cda_m2(0).value,
            cda,
            SAME_CDA,
        );
        near(
            &format!("{case}: Crr"),
            found.rolling_value(),
            rolling,
            SAME_ROLLING,
        );
        near(
            &format!("{case}: held"),
            held(&rows, 0.004).cda_m2(0).value,
            cda_held,
            2.0 * SAME_CDA,
        );
    }
}

#[test]
fn wind_that_is_known_gives_the_true_coefficients() {
    for wind_m_s in [1.0, 2.0] {
        for wind_from_rad in [0.3, 2.0, 3.5, 5.5] {
            // Drag along the apparent wind, as a ride has it; and the head component alone, as the description has it.
            for (across, same_rolling) in [(true, SAME_ROLLING), (false, 2.5e-4)] {
                let windy = LoopRide {
                    wind_m_s,
                    wind_from_rad,
                    across,
                    ..LoopRide::MAIN
                };
                let rows = laps(
                    &windy.ride(),
                    Wind::new(wind_m_s, wind_from_rad.to_degrees()),
                );
                let found = joint(&rows);
                near("CdA", found.cda_m2(0).value, 0.250_1, SAME_CDA);
                near("Crr", found.rolling_value(), 0.004_0, same_rolling);
            }
        }
    }
}

/// Runs out and back at two speeds in two positions, as their sums: power from the true wind, with a drift from run to run and
/// the meter's noise; the wind is given as it was read, with an error.
fn runs(
    normal: &mut dyn FnMut() -> f64,
    truth: [f64; 3],
    rig: &Rig,
    given_error_m_s: f64,
) -> Vec<Observation> {
    let mut rows = Vec::new();
    for (position, speed) in (0..16).map(|i| ([0, 1, 1, 0][i % 4], [8.0, 8.0, 12.0, 12.0][i / 4])) {
        for way in [1.0, -1.0] {
            let head = way * 1.2 + 0.1 * normal();
            let asked = rig.equation(&Sums::steady(speed, 0.0, head, 0.0), [0.0; 2]);
            let needed = truth[position] * asked.air + truth[2] * asked.rolling - asked.loss_j;
            let seen_w = needed / rig.machine.drivetrain_efficiency
                * (1.0 + 0.005 * normal())
                * (1.0 + 0.015 / 120_f64.sqrt() * normal());
            let given = head + given_error_m_s * normal();
            rows.push(Observation {
                position,
                seen: Seen::Stretch(Sums::steady(speed, seen_w, given, 0.0)),
            });
        }
    }
    rows
}

#[test]
fn intervals_of_drag_areas_rolling_resistance_and_differences_hold_the_true_value() {
    let rig = rig(TRUE_ROLLING);
    let truth = [0.25, 0.242, 0.0043];
    for (given_error_m_s, seed) in [(0.0, 11), (0.1, 12)] {
        let mut normal = normals(seed);
        let mut covered = [0_usize; 5];
        for _ in 0..TESTS {
            let rows = runs(&mut normal, truth, &rig, given_error_m_s);
            let found = estimate(&rows, &rig, Rolling::Fitted, &[]).expect("an estimate");
            let mut with_true = rig;
            with_true.machine.rolling_coefficient = truth[2];
            let held = estimate(&rows, &with_true, Rolling::Held, &[]).expect("an estimate");
            let told = [
                (found.cda_m2(0), truth[0]),
                (found.rolling().expect("a fitted Crr"), truth[2]),
                (found.difference_m2(1, 0), truth[1] - truth[0]),
                (held.cda_m2(1), truth[1]),
                (held.difference_m2(1, 0), truth[1] - truth[0]),
            ];
            for (count, (interval, value)) in covered.iter_mut().zip(told) {
                let (low, high) = interval.range_95.expect("runs to spare");
                *count += usize::from((low..=high).contains(&value));
            }
        }
        for (i, count) in covered.into_iter().enumerate() {
            let share = count as f64 / TESTS as f64;
            assert!(
                COVERED.contains(&share),
                "wind read to {given_error_m_s}, {i}: {share}"
            );
        }
    }
}

#[test]
fn a_wind_is_fitted_from_laps_both_ways_and_from_nothing_less() {
    let rig = rig(TRUE_ROLLING);
    let blown = Wind::new(2.0, 30.0);
    let lap = |bearing: f64, speed: f64| {
        let heading = fasterby_core::air::Heading::new(bearing);
        let road = blown.along(heading);
        let through = speed + road.head_m_s;
        let calm = Sums::steady(speed, 0.0, 0.0, 0.0);
        let mut windy = calm;
        windy.air_sum = through.hypot(road.cross_m_s) * through * speed;
        let asked = rig.equation(&windy, [0.0; 2]);
        let work_j = (0.25 * asked.air + 0.004 * asked.rolling) / 0.976;
        let sums = Sums::steady(speed, work_j, 0.0, 0.0).heading(heading);
        Observation {
            position: 0,
            seen: Seen::Stretch(sums),
        }
    };
    let mut rows = Vec::new();
    for speed in [8.0, 12.0] {
        rows.extend([20.0, 110.0, 200.0, 290.0].map(|bearing| lap(bearing, speed)));
    }
    let found =
        estimate(&rows, &rig, Rolling::Fitted, &[[1.0, 0.0], [0.0, 1.0]]).expect("an estimate");
    let ([north, east], _) = found.wind();
    // The expansion of the air's sum is good to the fourth order of the wind over the speed: (2/8)⁴ is 0.004.
    near("from north", north, blown.from_north_m_s, 0.01);
    near("from east", east, blown.from_east_m_s, 0.01);
    near("CdA", found.cda_m2(0).value, 0.25, 0.000_5);
}

#[test]
fn a_coast_down_takes_as_long_and_goes_as_far_as_the_closed_form_says() {
    // Worked out with 30 digits from the closed form, and confirmed by integration.
    let coasting = Coasting {
        effective_mass_kg: 86.2,
        constant_n: 85.0 * 9.80665 * 0.004,
        quadratic_kg_m: 0.15,
    };
    near("force", coasting.constant_n, 3.334_261_00, 1e-9);
    near("time", coasting.time_s(12.0, 6.0), 35.548_517_686_6, 1e-9);
    near(
        "distance",
        coasting.distance_m(12.0, 6.0),
        301.409_639_228_0,
        1e-9,
    );
}

#[test]
fn two_coast_downs_give_back_the_coefficients_that_they_were_made_with() {
    let scenario = scenario();
    let rig = rig(TRUE_ROLLING);
    let coasting = Coasting {
        effective_mass_kg: 86.2,
        constant_n: rig.weight_n() * 0.004,
        quadratic_kg_m: 0.5 * DENSITY_KG_M3 * 0.25,
    };
    let down = |from: f64, to: f64| json!({ "from_m_s": from, "to_m_s": to, "time_s": coasting.time_s(from, to) });
    let far = |from: f64, to: f64| json!({ "from_m_s": from, "to_m_s": to, "distance_m": coasting.distance_m(from, to) });
    let downs = [
        down(12.0, 9.0),
        down(6.0, 3.0),
        far(11.0, 8.0),
        far(5.0, 2.0),
    ];
    let got = answer(
        "drag-test",
        &json!({ "scenario": scenario, "with": { "coast_downs": downs } }),
    );
    near(
        "CdA",
        got["positions"][0]["cda_m2"]["value"].as_f64().unwrap(),
        0.25,
        1e-6,
    );
    near(
        "Crr",
        got["rolling_coefficient"]["value"].as_f64().unwrap(),
        0.004,
        1e-8,
    );
    assert_eq!(got["identifiable"], true);
}

fn noisy(seed: u64) -> Recorded {
    LoopRide::MAIN
        .ride()
        .noisy(&Noise::MAIN, &mut normals(seed))
}

fn cda(answer: &Value, place: usize) -> f64 {
    answer["positions"][place]["cda_m2"]["value"]
        .as_f64()
        .expect("a drag area")
}

#[test]
fn the_question_gives_the_golden_test_with_everything_beside_it() {
    let got = answer("drag-test", &request(&noisy(21), ONE_POSITION));
    near("CdA", cda(&got, 0), 0.2501, 0.008);
    assert_eq!(got["identifiable"], true);
    assert_eq!(got["rolling_coefficient"]["held"], false);
    assert_eq!(got["laps"].as_array().map(Vec::len), Some(8));
    assert_eq!(got["positions"][0]["laps"], 8);
    assert_eq!(got["degrees_of_freedom"], 6);
    assert_eq!(got["other_rolling"]["rolling_coefficient"]["held"], true);
    let leverages: f64 = got["laps"]
        .as_array()
        .unwrap()
        .iter()
        .map(|lap| lap["leverage"].as_f64().unwrap())
        .sum();
    // The trace of the projection is the number of unknowns.
    near("leverage", leverages, 2.0, 1e-9);
}

#[test]
fn the_question_holds_rolling_resistance_where_laps_are_alike_and_says_so() {
    let ride = CONSTANT_POWER.ride().noisy(&Noise::MAIN, &mut normals(22));
    let got = answer("drag-test", &request(&ride, ONE_POSITION));
    assert_eq!(got["identifiable"], false);
    assert_eq!(got["rolling_coefficient"]["held"], true);
    near("CdA", cda(&got, 0), 0.249_99, 0.002);
    let kinds: Vec<&str> = got["warnings"]
        .as_array()
        .unwrap()
        .iter()
        .filter_map(|w| w["text"].as_str())
        .collect();
    assert!(kinds.contains(&"rolling_not_told"), "{kinds:?}");
    let mut asked = request(&ride, ONE_POSITION);
    asked["with"]["rolling"] = json!("hold");
    let held = answer("drag-test", &asked);
    assert_eq!(held["identifiable"], true);
    assert_eq!(held["positions"], got["positions"]);
}

#[test]
fn runs_that_scatter_beyond_a_careful_test_are_doubted() {
    let told = |powers_w: [f64; 6]| {
        let runs: Value = powers_w
            .iter()
            .zip([8.0, 8.1, 10.0, 10.1, 12.0, 12.1])
            .map(|(power_w, speed_m_s)| json!({ "position": 0, "speed_m_s": speed_m_s, "power_w": power_w }))
            .collect();
        let got = answer(
            "drag-test",
            &json!({ "scenario": scenario(), "with": { "runs": runs, "rolling": "hold" } }),
        );
        let warnings = got["warnings"].as_array().expect("warnings").clone();
        warnings
            .iter()
            .any(|warning| warning["text"] == "laps_scatter")
    };
    // Powers that a drag area of 0.25 m² and a Crr of 0.004 take, about; then each off by some 20 %.
    assert!(!told([108.0, 112.0, 192.0, 197.0, 312.0, 320.0]));
    assert!(told([130.0, 90.0, 230.0, 160.0, 375.0, 260.0]));
}

#[test]
fn exchanged_positions_turn_the_difference_round() {
    let ride = noisy(23);
    let first = answer("drag-test", &request(&ride, TWO_POSITIONS));
    let second = answer(
        "drag-test",
        &request(&ride, TWO_POSITIONS.map(|position| 1 - position)),
    );
    let of =
        |answer: &Value, name: &str| answer["differences"][0]["cda_m2"][name].as_f64().unwrap();
    // Rounding of a sum in another order.
    const SAME: f64 = 1e-9;
    near("value", of(&first, "value"), -of(&second, "value"), SAME);
    near("sd", of(&first, "sd"), of(&second, "sd"), SAME);
    near("low", of(&first, "low_95"), -of(&second, "high_95"), SAME);
    near(
        "both",
        of(&first, "value"),
        cda(&first, 1) - cda(&first, 0),
        SAME,
    );
}

#[test]
fn a_lap_that_is_excluded_counts_as_if_it_were_not_there() {
    let ride = noisy(24);
    let mut excluded = request(&ride, TWO_POSITIONS);
    excluded["with"]["laps"][3]["excluded"] = json!("a van passed");
    let mut gone = request(&ride, TWO_POSITIONS);
    gone["with"]["laps"].as_array_mut().unwrap().remove(3);
    let (excluded, gone) = (answer("drag-test", &excluded), answer("drag-test", &gone));
    for name in ["positions", "differences", "rolling_coefficient", "common"] {
        assert_eq!(excluded[name], gone[name], "{name}");
    }
    assert_eq!(excluded["laps"][3]["left_out"], "excluded");
    assert_eq!(excluded["laps"][3]["residual_w"], Value::Null);
}

#[test]
fn a_meter_that_reads_high_raises_drag_area_and_rolling_resistance_alike() {
    let (ride, b) = (noisy(25), 0.02);
    let mut high = ride.clone();
    high.power_w.iter_mut().for_each(|power| *power *= 1.0 + b);
    let rows = |ride: &Recorded| laps(ride, Wind::default());
    let (true_rows, high_rows) = (rows(&ride), rows(&high));
    // The kinetic energy of a lap does not grow with the meter, and is a thousandth of its work.
    let rise = joint(&high_rows).cda_m2(0).value / joint(&true_rows).cda_m2(0).value - 1.0;
    near("joint", rise, b, 0.01);
    // With bearings, climbs and the wind's part of the weights at nothing, twice the power in a lap without change of speed takes twice the coefficients.
    let steady = |scale: f64| {
        let run = |speed: f64, power: f64| Observation {
            position: 0,
            seen: Seen::Stretch(Sums {
                one_way_sum: 0.0,
                ..Sums::steady(speed, scale * power, 0.0, 0.0)
            }),
        };
        joint(&[
            run(8.0, 110.0),
            run(8.0, 112.0),
            run(12.0, 310.0),
            run(12.0, 312.0),
        ])
    };
    near(
        "CdA",
        steady(1.0 + b).cda_m2(0).value,
        (1.0 + b) * steady(1.0).cda_m2(0).value,
        1e-12,
    );
    near(
        "Crr",
        steady(1.0 + b).rolling_value(),
        (1.0 + b) * steady(1.0).rolling_value(),
        1e-12,
    );
}

#[test]
fn a_lap_that_lies_far_out_is_pointed_out_and_still_counts() {
    let ride = noisy(26);
    let mut asked = request(&ride, ONE_POSITION);
    let (from, to) = (ride.ends_s[3], ride.ends_s[4]);
    for (i, time_s) in ride
        .time_s
        .iter()
        .enumerate()
        .filter(|(_, t)| (from..to).contains(*t))
    {
        let _ = time_s;
        asked["with"]["recordings"][0]["columns"]["power_w"][i] = json!(ride.power_w[i] * 1.08);
    }
    let got = answer("drag-test", &asked);
    let outliers: Vec<bool> = got["laps"]
        .as_array()
        .unwrap()
        .iter()
        .map(|lap| lap["outlier"] == true)
        .collect();
    assert_eq!(
        outliers,
        [false, false, false, true, false, false, false, false]
    );
    assert_eq!(got["positions"][0]["laps"], 8);
}

#[test]
fn common_errors_do_what_the_published_table_says() {
    // Share by which CdA moves at 9, 11 and 13 m/s, in percent: 85 kg, CdA 0.25, Crr 0.004, density 1.2, Crr held.
    // Worked out from the formulas (F_air + F_roll)/F_air and so on; printed to three digits.
    const PRINTED: f64 = 0.000_6;
    let table: [(&str, [f64; 3]); 5] = [
        (
            "scenario.bike.power_meter_bias_share",
            [1.274, 1.184, 1.132],
        ),
        ("with.speed_error_share", [-3.274, -3.184, -3.132]),
        (
            "scenario.bike.rolling_coefficient",
            [-3.430, -2.296, -1.644],
        ),
        ("scenario.rider.total_mass_kg", [-0.323, -0.216, -0.155]),
        // The table's own sign is of a rise that is missed; here the road is taken as rising too much.
        ("with.runs.grade", [-6.861, -4.593, -3.288]),
    ];
    let speeds = [9.0, 11.0, 13.0];
    for (column, speed) in speeds.into_iter().enumerate() {
        let mut scenario = scenario();
        scenario["positions"] = json!([{ "cda_m2": 0.25 }]);
        let with = json!({ "plan": { "speed_m_s": speed }, "speed_error_share": 0.01 });
        let got = answer("drag-test", &json!({ "scenario": scenario, "with": with }));
        let share = |field: &str| {
            let common = got["common"].as_array().unwrap();
            let error = common
                .iter()
                .find(|error| error["field"] == field)
                .unwrap_or_else(|| panic!("no {field}"));
            100.0 * error["cda_share"].as_f64().unwrap()
        };
        for (field, want) in table {
            near(
                &format!("{field} at {speed}"),
                share(field),
                want[column],
                PRINTED,
            );
        }
        // A reading of the temperature one kelvin too high: +0.341 % at 293 K in dry air, and at the same humidity more vapour, which
        // is lighter: 0.378 · 0.5 · 145 Pa/101 325 Pa, +0.027 %. Of the pressure 1 hPa too high: −0.099 %. Real gas differs in the
        // last digit.
        near(
            "temperature",
            share("scenario.conditions.temperature_c"),
            0.341 + 0.027,
            0.002,
        );
        near(
            "pressure",
            share("scenario.conditions.pressure_hpa"),
            -0.099,
            0.002,
        );
    }
}

#[test]
fn wind_and_slopes_that_are_missed_do_what_the_published_table_says() {
    let rig = rig(TRUE_ROLLING);
    let powers = |speed: f64, head: f64| {
        let asked = rig.equation(&Sums::steady(speed, 0.0, head, 0.0), [0.0; 2]);
        (0.25 * asked.air + 0.004 * asked.rolling) / 0.976
    };
    let run = |speed: f64, power: f64| Observation {
        position: 0,
        seen: Seen::Stretch(Sums::steady(speed, power, 0.0, 0.0)),
    };
    let share = |rows: &[Observation]| 100.0 * (held(rows, 0.004).cda_m2(0).value / 0.25 - 1.0);
    for (speed, one_way, both, strong) in [
        (9.0, 11.42, 0.309, 4.94),
        (11.0, 9.30, 0.207, 3.31),
        (13.0, 7.84, 0.148, 2.37),
    ] {
        near(
            "one way",
            share(&[run(speed, powers(speed, 0.5))]),
            one_way,
            0.006,
        );
        let both_ways = |wind: f64| {
            let mean = 0.5 * (powers(speed, wind) + powers(speed, -wind));
            share(&[run(speed, mean)])
        };
        near("both ways", both_ways(0.5), both, 0.000_6);
        near("both ways in 2 m/s", both_ways(2.0), strong, 0.006);
    }
    // Ending 0.1 m/s faster over 1 km, the kinetic energy left out, in percent.
    for (speed, want) in [(9.0, 0.641), (11.0, 0.524), (13.0, 0.444)] {
        let share = 100.0 * (86.2 * speed * 0.1 / (1000.0 * 0.15 * speed * speed));
        let mut sums = Sums::steady(speed, powers(speed, 0.0), 0.0, 0.0);
        // A whole kilometre at once.
        let seconds = 1000.0 / speed;
        sums = Sums {
            duration_s: seconds,
            work_j: sums.work_j * seconds,
            distance_m: 1000.0,
            square_sum: sums.square_sum * seconds,
            air_sum: sums.air_sum * seconds,
            ..sums
        };
        let kept = Observation {
            position: 0,
            seen: Seen::Stretch(Sums {
                half_square_gained: speed * 0.1,
                ..sums
            }),
        };
        let moved = -100.0 * (held(&[kept], 0.004).cda_m2(0).value / 0.25 - 1.0);
        near("formula", share, want, 0.005);
        near("kinetic", moved, want, 0.005);
    }
}

#[test]
fn the_table_of_runs_is_met_by_the_plan_alone() {
    // Coefficient of variation and difference in percent; runs in each position, and pairs. SciPy's noncentral t.
    let table = [
        (1.0, 1.0, 17, 18),
        (1.0, 2.0, 6, 7),
        (1.0, 5.0, 3, 3),
        (1.5, 1.0, 37, 38),
        (1.5, 2.0, 10, 11),
        (1.5, 5.0, 3, 4),
        (3.0, 1.0, 143, 144),
        (3.0, 2.0, 37, 38),
        (3.0, 5.0, 7, 8),
    ];
    for (cv, difference, runs, pairs) in table {
        let plan = json!({ "difference_share": difference / 100.0, "run_cv_share": cv / 100.0, "power": 0.8 });
        let got = answer("drag-test", &json!({ "with": { "plan": plan } }));
        assert_eq!(got["plan"]["runs_per_position"], runs, "{cv} {difference}");
        assert_eq!(got["plan"]["pairs"], pairs, "{cv} {difference}");
        let smallest = got["plan"]["smallest_share"].as_f64().unwrap();
        assert!(
            smallest <= difference / 100.0 + 1e-9,
            "{cv} {difference}: {smallest}"
        );
    }
    for (runs, smallest) in [
        (4, 2.3808),
        (5, 2.0244),
        (6, 1.7955),
        (8, 1.5066),
        (10, 1.3249),
        (12, 1.1968),
        (20, 0.9091),
    ] {
        let plan = json!({ "run_cv_share": 0.01, "runs": runs });
        let got = answer("drag-test", &json!({ "with": { "plan": plan } }));
        near(
            "smallest",
            100.0 * got["plan"]["smallest_share"].as_f64().unwrap(),
            smallest,
            0.000_05,
        );
    }
}

#[test]
fn nothing_given_plans_a_test_and_says_so() {
    let got = answer("drag-test", &json!({}));
    assert_eq!(got["plan"]["runs_per_position"], 10);
    assert_eq!(got["positions"], json!([]));
    assert_eq!(got["warnings"][0]["text"], "nothing_measured");
    assert!(!got["common"].as_array().unwrap().is_empty());
}

#[test]
fn unusable_laps_are_left_out_with_the_reason() {
    let ride = LoopRide::MAIN.ride();
    let index = |time_s: f64| ride.time_s.partition_point(|&t| t < time_s) + 40;
    let with = |change: &dyn Fn(&mut Value)| {
        let mut asked = request(&ride, ONE_POSITION);
        change(&mut asked["with"]["recordings"][0]["columns"]);
        answer("drag-test", &asked)
    };
    let lost = with(&|columns| {
        (0..20).for_each(|i| columns["power_w"][index(ride.ends_s[0]) + i] = Value::Null)
    });
    assert_eq!(lost["laps"][0]["left_out"], "dropout");
    let bridged = with(&|columns| {
        (0..3).for_each(|i| columns["power_w"][index(ride.ends_s[0]) + i] = Value::Null)
    });
    assert_eq!(bridged["laps"][0]["left_out"], Value::Null);
    let stood = with(&|columns| {
        (0..20).for_each(|i| columns["speed_m_s"][index(ride.ends_s[1]) + i] = json!(0.2))
    });
    assert_eq!(stood["laps"][1]["left_out"], "stopped");
    let braked = with(&|columns| {
        for i in 0..4 {
            let at = index(ride.ends_s[2]) + i;
            columns["speed_m_s"][at] = json!(ride.speed_m_s[at] - 2.0 * (i + 1) as f64);
        }
    });
    assert_eq!(braked["laps"][2]["left_out"], "braking");
    let clean = answer("drag-test", &request(&ride, ONE_POSITION));
    assert!(
        clean["laps"]
            .as_array()
            .unwrap()
            .iter()
            .all(|lap| lap["left_out"] == Value::Null)
    );
    let mut allowed = request(&ride, ONE_POSITION);
    (0..20).for_each(|i| {
        allowed["with"]["recordings"][0]["columns"]["power_w"][index(ride.ends_s[0]) + i] =
            Value::Null
    });
    allowed["with"]["rules"] = json!({ "bridged_s": 30.0 });
    assert_eq!(
        answer("drag-test", &allowed)["laps"][0]["left_out"],
        Value::Null
    );
}

#[test]
fn a_rise_of_drag_within_a_test_is_measured_by_four_laps() {
    let run = |power: f64| json!({ "speed_m_s": 11.0, "power_w": power });
    let powers = [240.0, 242.5, 244.0, 246.5, 248.0, 250.5];
    let with = json!({ "runs": powers.map(run), "rolling": "hold",
        "film": [{ "position": 0, "head_up_share": [0.0, 0.2, 0.4] }] });
    let got = answer(
        "drag-test",
        &json!({ "scenario": scenario(), "with": with }),
    );
    let rises = got["late_rises"].as_array().unwrap();
    assert_eq!(
        (rises[0]["known"].as_str(), rises[1]["known"].as_str()),
        (Some("measured"), Some("assumed"))
    );
    // Ten watts more at 11 m/s are 0.976 · 10/(½ · 1.2 · 11³) m²; two thirds of that lie between the thirds.
    near(
        "measured",
        rises[0]["cda_m2"]["value"].as_f64().unwrap(),
        0.976 * 10.5 / (0.6 * 1331.0) / 1.5,
        0.000_5,
    );
    assert!(rises[0]["cda_m2"]["low_95"].as_f64().unwrap() > 0.0);
    assert!(rises[1]["cda_m2"]["sd"].as_f64().unwrap() > 0.0);
    let three = json!({ "runs": [run(240.0), run(242.0), run(244.0)], "rolling": "hold" });
    assert_eq!(
        answer("drag-test", &json!({ "with": three }))["late_rises"],
        json!([])
    );
}

#[test]
fn wrong_recordings_and_laps_are_refused_by_their_field() {
    let ride = LoopRide::MAIN.ride();
    let base = request(&ride, ONE_POSITION);
    let refuse = |pointer: &str, to: Value, field: &str| {
        let mut asked = base.clone();
        *asked.pointer_mut(pointer).expect("a place") = to;
        let error = refused("drag-test", &asked.to_string());
        assert_eq!(error["field"], field, "{error}");
    };
    let columns = "/with/recordings/0/columns";
    refuse(
        &format!("{columns}/time_s"),
        json!([]),
        "with.recordings[0].columns.time_s",
    );
    refuse(
        &format!("{columns}/power_w"),
        json!([]),
        "with.recordings[0].columns.power_w",
    );
    refuse(
        &format!("{columns}/speed_m_s"),
        json!([1.0, 2.0]),
        "with.recordings[0].columns.speed_m_s",
    );
    refuse(
        &format!("{columns}/time_s/3"),
        json!(1e308),
        "with.recordings[0].columns.time_s[3]",
    );
    refuse(
        &format!("{columns}/time_s/3"),
        json!(2.0),
        "with.recordings[0].columns.time_s[3]",
    );
    refuse(
        &format!("{columns}/time_s/3"),
        Value::Null,
        "with.recordings[0].columns.time_s[3]",
    );
    refuse("/with/laps/0/to_s", json!(1e308), "with.laps[0].to_s");
    refuse(
        "/with/laps/0/to_s",
        base["with"]["laps"][0]["from_s"].clone(),
        "with.laps[0].to_s",
    );
    refuse("/with/laps/0/from_s", json!(-5.0), "with.laps[0].from_s");
    refuse(
        "/with/laps/1/from_s",
        base["with"]["laps"][0]["from_s"].clone(),
        "with.laps[1].from_s",
    );
    refuse("/with/laps/0/recording", json!(1), "with.laps[0].recording");
    refuse(
        "/with/laps/0/position",
        json!(1_000_000),
        "with.laps[0].position",
    );
    refuse("/with/laps", json!([]), "with.laps");
    let runs = |run: Value, field: &str| {
        let error = refused(
            "drag-test",
            &json!({ "with": { "runs": [run] } }).to_string(),
        );
        assert_eq!(error["field"], field, "{error}");
    };
    runs(
        json!({ "speed_m_s": 1e308, "power_w": 200.0 }),
        "with.runs[0].speed_m_s",
    );
    runs(json!({ "speed_m_s": 10.0 }), "with.runs[0].power_w");
    runs(
        json!({ "speed_m_s": 10.0, "power_w": 200.0, "grade": 9 }),
        "with.runs[0].grade",
    );
}

#[test]
fn absurd_samples_count_as_missing() {
    let ride = LoopRide::MAIN.ride();
    for absurd in [1e308, -1e308, 1e5] {
        let mut asked = request(&ride, ONE_POSITION);
        for column in ["speed_m_s", "power_w", "elevation_m", "bearing_deg"] {
            asked["with"]["recordings"][0]["columns"][column][400] = json!(absurd);
        }
        near("CdA", cda(&answer("drag-test", &asked), 0), 0.25, 0.002);
        for column in ["speed_m_s", "power_w"] {
            let mut asked = request(&ride, ONE_POSITION);
            let all = asked["with"]["recordings"][0]["columns"][column]
                .as_array_mut()
                .unwrap();
            all.iter_mut().for_each(|number| *number = json!(absurd));
            let got = answer("drag-test", &asked);
            assert_eq!(got["positions"], json!([]), "{column}");
            assert_eq!(got["laps"][0]["left_out"], "dropout");
        }
    }
}

#[test]
fn a_check_of_columns_takes_numbers_that_are_none() {
    let mut ride = LoopRide::MAIN.ride();
    ride.speed_m_s[7] = f64::NAN;
    ride.power_w[9] = f64::INFINITY;
    let columns: Columns = ride.columns();
    assert!(columns.check("columns").is_ok());
    let rows = laps(&ride, Wind::default());
    near("CdA", joint(&rows).cda_m2(0).value, 0.25, 0.001);
}
