//! The power curve asked from outside: what must hold for every rider, and how often its bands hold what they promise.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::least_squares::student_t;
use fasterby_core::models::{Curve, Effort, Model, fit};
use fasterby_tests::answer;
use serde_json::{Value, json};

/// A minimum of least squares comes back to about this from another order or scale of the same efforts.
const SAME_FIT: f64 = 1e-7;
/// How many test sets are simulated for each model.
const SETS: u32 = 2000;
/// A band of 95 % must hold between these shares of them; a share counted over 2,000 sets has a standard deviation of 0.005.
const COVERAGE: std::ops::RangeInclusive<f64> = 0.90..=0.98;
/// The degrees of freedom that the stated repeatability counts for, as the answer's doc says.
const KNOWN_FROM: usize = 7;
/// The stated repeatability of an effort.
const TEST_ERROR_SHARE: f64 = 0.02;

fn efforts(pairs: &[(f64, f64)]) -> Value {
    pairs
        .iter()
        .map(|(duration_s, power_w)| json!({ "duration_s": duration_s, "power_w": power_w }))
        .collect()
}

fn ask(efforts: &Value, with: &Value) -> Value {
    answer(
        "power-curve",
        &json!({ "scenario": { "efforts": efforts, "events": [{ "distance_m": 1000 }] }, "with": with }),
    )
}

fn number(of: &Value) -> f64 {
    of.as_f64().unwrap_or_else(|| panic!("{of} is no number"))
}

const TESTS: [(f64, f64); 5] = [
    (180.0, 372.0),
    (300.0, 343.0),
    (720.0, 301.0),
    (1200.0, 286.0),
    (2400.0, 271.0),
];

#[test]
fn the_order_of_efforts_does_not_matter() {
    let mut turned = TESTS;
    turned.reverse();
    let (one, other) = (
        ask(&efforts(&TESTS), &json!({})),
        ask(&efforts(&turned), &json!({})),
    );
    assert_eq!(one["model"], other["model"]);
    for path in [
        "/usable/cp_w/value",
        "/usable/w_prime_j/sd",
        "/power_w/value",
        "/power_w/sd",
        "/test_w/0",
    ] {
        let (a, b) = (
            number(one.pointer(path).unwrap()),
            number(other.pointer(path).unwrap()),
        );
        assert!((a / b - 1.0).abs() < SAME_FIT, "{path}: {a} and {b}");
    }
}

#[test]
fn more_power_in_every_effort_is_more_of_everything() {
    let stronger = TESTS.map(|(duration_s, power_w)| (duration_s, 1.1 * power_w));
    for model in ["two-parameter", "power-law", "three-parameter"] {
        let with = json!({ "model": model });
        let (one, other) = (
            ask(&efforts(&TESTS), &with),
            ask(&efforts(&stronger), &with),
        );
        for path in [
            "/usable/cp_w/value",
            "/usable/w_prime_j/value",
            "/usable/cp_w/sd",
            "/power_w/value",
            "/power_w/sd",
        ] {
            let (a, b) = (
                number(one.pointer(path).unwrap()),
                number(other.pointer(path).unwrap()),
            );
            assert!(
                (b / a / 1.1 - 1.0).abs() < SAME_FIT,
                "{model} {path}: {a} and {b}"
            );
        }
        let held = |answer: &Value| number(&answer["more"]["held_s"]["value"]);
        assert!(
            (held(&other) / held(&one) - 1.0).abs() < SAME_FIT,
            "{model}"
        );
    }
}

#[test]
fn a_band_holds_its_curve_and_that_of_a_test_holds_both() {
    let answer = ask(&efforts(&TESTS), &json!({}));
    let column = |name: &str| -> Vec<f64> {
        answer["columns"][name]
            .as_array()
            .expect("a column")
            .iter()
            .map(number)
            .collect()
    };
    let rows = column("test_low_w")
        .into_iter()
        .zip(column("curve_low_w"))
        .zip(column("power_w"));
    let above = column("curve_high_w")
        .into_iter()
        .zip(column("test_high_w"));
    for (((test_low, low), power), (high, test_high)) in rows.zip(above) {
        assert!(test_low < low && low < power && power < high && high < test_high);
    }
}

#[test]
fn another_effort_on_the_curve_makes_it_surer() {
    let sd = |tests: &[(f64, f64)]| {
        number(&ask(&efforts(tests), &json!({ "model": "two-parameter" }))["usable"]["cp_w"]["sd"])
    };
    let answer = ask(
        &efforts(&TESTS[..3]),
        &json!({ "model": "two-parameter", "hold_s": 1500 }),
    );
    let mut more = TESTS[..3].to_vec();
    more.push((1500.0, number(&answer["power_w"]["value"])));
    assert!(sd(&more) < sd(&TESTS[..3]));
}

/// Two efforts leave no residual, so that how CP and W′ go together follows from their repeatability alone.
const SAME_CORRELATION: f64 = 1e-6;

#[test]
fn cp_and_w_prime_of_two_efforts_go_together_as_the_lines_through_them_do() {
    let [(t1, p1), (t2, p2)] = [(180.0, 372.0), (1200.0, 286.0)];
    let told = ask(&efforts(&[(t1, p1), (t2, p2)]), &json!({}));
    // CP = (P₂t₂ − P₁t₁)/(t₂ − t₁), W′ = (P₁ − P₂)t₁t₂/(t₂ − t₁); each power is known to the same share of itself.
    let (v1, v2) = (p1 * p1, p2 * p2);
    let wanted = -(t1 * v1 + t2 * v2) / ((t1 * t1 * v1 + t2 * t2 * v2) * (v1 + v2)).sqrt();
    let found = number(&told["usable"]["cp_w_prime_correlation"]);
    assert!(
        (found - wanted).abs() < SAME_CORRELATION,
        "{found} for {wanted}"
    );
}

#[test]
fn the_model_of_long_efforts_says_whether_all_of_them_are_long() {
    let outcome = |pairs: &[(f64, f64)]| {
        let told = ask(&efforts(pairs), &json!({}));
        let models = told["models"].as_array().expect("models");
        let of = models.iter().find(|model| model["model"] == "log-decline");
        of.expect("the model")["outcome"].clone()
    };
    assert_eq!(outcome(&TESTS), "partly");
    assert_eq!(outcome(&TESTS[2..]), "compared");
}

#[test]
fn two_published_trials_give_the_published_critical_power() {
    // 4 min 417 W, 20 min 342 W, CP 323 W: eight trained riders (four-and-twenty); solved exactly from the two means.
    let answer = ask(&efforts(&[(240.0, 417.0), (1200.0, 342.0)]), &json!({}));
    assert!((number(&answer["usable"]["cp_w"]["value"]) / 323.25 - 1.0).abs() < SAME_FIT);
    assert!((number(&answer["usable"]["w_prime_j"]["value"]) / 22_500.0 - 1.0).abs() < SAME_FIT);
    // Their CP repeats to 6.5 W; two efforts that repeat to 2 % say it to 9.5 W.
    let sd_w = number(&answer["usable"]["cp_w"]["sd"]);
    assert!((5.0..15.0).contains(&sd_w), "{sd_w}");
}

#[test]
fn the_tests_that_show_a_gain_have_the_power_that_is_named() {
    // Tests before, as many after, two-sided t-test at 0.05 with a power of 0.8, for 3 % and 6.2 %: SciPy's noncentral t.
    for (test_error_share, tests) in [(0.01, [4, 2]), (0.013, [5, 3]), (0.02, [9, 3])] {
        let answer = ask(
            &efforts(&TESTS),
            &json!({ "test_error_share": test_error_share }),
        );
        assert_eq!(
            answer["training"]["tests"],
            json!(tests),
            "{test_error_share}"
        );
        let shown = number(&answer["training"]["shown_share"]);
        // 1.96 · √2: what two tests differ by from chance alone, 19 times in 20.
        assert!(
            (shown / test_error_share - 2.771_808).abs() < 1e-6,
            "{shown}"
        );
    }
}

fn kinds(answer: &Value) -> Vec<&str> {
    answer["warnings"]
        .as_array()
        .expect("warnings")
        .iter()
        .filter_map(|warning| warning["kind"].as_str())
        .collect()
}

/// Seconds and watts.
type Tests<'a> = &'a [(f64, f64)];

#[test]
fn what_efforts_cannot_tell_is_said() {
    let says = |tests: Tests<'_>, with: Value| -> Vec<String> {
        kinds(&ask(&efforts(tests), &with))
            .into_iter()
            .map(str::to_owned)
            .collect()
    };
    let cases: [(Tests<'_>, Value, &str); 11] = [
        (
            &[(60.0, 450.0), (300.0, 343.0), (1200.0, 286.0)],
            json!({ "model": "two-parameter" }),
            "short",
        ),
        (&TESTS[1..3], json!({}), "two_efforts"),
        (&TESTS[3..4], json!({}), "one_effort"),
        (&[(1200.0, 286.0), (1250.0, 283.0)], json!({}), "one_length"),
        (
            &[
                (180.0, 372.0),
                (300.0, 343.0),
                (720.0, 260.0),
                (1200.0, 286.0),
            ],
            json!({}),
            "beaten",
        ),
        (
            &[(1200.0, 290.0), (1200.0, 270.0), (1200.0, 280.0)],
            json!({}),
            "one_length",
        ),
        (
            &[(300.0, 300.0), (1200.0, 300.0)],
            json!({}),
            "hardly_harder",
        ),
        (
            &[(180.0, 305.0), (1200.0, 300.0)],
            json!({}),
            "w_prime_implausible",
        ),
        (&TESTS, json!({ "hold_s": 7200 }), "extrapolated"),
        (
            &TESTS[..4],
            json!({ "hold_s": 3600, "model": "three-parameter" }),
            "hour_overstated",
        ),
        (
            &[(180.0, 372.0), (300.0, 343.0), (500.0, 318.0)],
            json!({}),
            "all_short",
        ),
    ];
    for (tests, with, kind) in cases {
        let said = says(tests, with);
        assert!(
            said.iter().any(|one| one == kind),
            "{kind} is missing among {said:?}"
        );
    }
    let soft = [
        (180.0, 372.0),
        (300.0, 343.0),
        (480.0, 322.0),
        (720.0, 283.0),
        (1200.0, 286.0),
        (2400.0, 279.0),
    ];
    assert!(
        says(&soft, json!({ "model": "two-parameter" }))
            .iter()
            .any(|one| one == "not_maximal")
    );
    assert!(
        says(
            &TESTS[..4],
            json!({ "hold_s": 1200, "model": "two-parameter" })
        )
        .is_empty()
    );
}

#[test]
fn efforts_of_two_lengths_are_not_said_to_be_of_one() {
    let got = ask(&efforts(&[(300.0, 300.0), (1200.0, 300.0)]), &json!({}));
    assert!(!kinds(&got).contains(&"one_length"), "{:?}", kinds(&got));
}

#[test]
fn repeats_of_one_test_all_count() {
    let repeats = [(1200.0, 290.0), (1200.0, 270.0), (1203.0, 280.0)];
    let got = ask(&efforts(&repeats), &json!({ "hold_s": 1200 }));
    assert!(!kinds(&got).contains(&"beaten"), "{:?}", kinds(&got));
    assert!(
        got["efforts"]
            .as_array()
            .expect("efforts")
            .iter()
            .all(|effort| effort["used"] == true)
    );
    // Their mean: what stands in for W′ moves a curve through one length by less than a watt there.
    let power_w = got["power_w"]["value"].as_f64().expect("a power");
    assert!((power_w - 280.0).abs() < 1.0, "{power_w}");
}

#[test]
fn the_data_choose_a_model_only_where_they_can() {
    let curve = |model: Model, b: &[f64], lengths: &[f64]| -> Vec<(f64, f64)> {
        let mut unused = vec![0.0; b.len()];
        lengths
            .iter()
            .map(|&t| (t, model.power_w(b, t, &mut unused)))
            .collect()
    };
    let few = curve(Model::TwoParameter, &[280.0, 18e3], &[180.0, 420.0, 900.0]);
    assert_eq!(ask(&efforts(&few), &json!({}))["told"], false);
    let omni = Model::OmniDomain {
        peak: true,
        long_ride_from_s: Some(1800.0),
    };
    let many = curve(
        omni,
        &[270.0, 18e3, 950.0, 35.0],
        &[
            5.0, 15.0, 40.0, 100.0, 200.0, 400.0, 800.0, 1600.0, 3600.0, 9000.0,
        ],
    );
    let told = ask(&efforts(&many), &json!({}));
    assert_eq!(
        (&told["model"], &told["told"]),
        (&json!("omni-domain"), &json!(true))
    );
    let weights: f64 = told["models"]
        .as_array()
        .unwrap()
        .iter()
        .filter_map(|model| model["weight"].as_f64())
        .sum();
    assert!((weights - 1.0).abs() < SAME_FIT);
}

#[test]
fn a_position_that_costs_power_is_told_by_efforts_in_both() {
    let mut all = efforts(&TESTS);
    let low = TESTS
        .map(|(duration_s, power_w)| json!({ "duration_s": duration_s, "power_w": 0.95 * power_w, "position": 1 }));
    all.as_array_mut().unwrap().extend(low);
    let scenario = json!({ "positions": [{ "name": "high" }, { "name": "low" }], "efforts": all });
    let answer = answer("power-curve", &json!({ "scenario": scenario }));
    let low = &answer["positions"][1];
    assert!((number(&low["cp_factor"]["value"]) / 0.95 - 1.0).abs() < SAME_FIT);
    assert!(number(&low["cp_change_w"]["value"]) < 0.0);
    for at in low["at"].as_array().expect("times") {
        assert!((number(&at["change_share"]) / -0.05 - 1.0).abs() < SAME_FIT);
    }
}

/// By how much of itself W′ may differ from one position to another: assumed, as the core says beside it.
const W_PRIME_SHARE: f64 = 0.1;

#[test]
fn one_effort_in_a_position_borrows_the_w_prime_of_the_other_less_surely() {
    let mut all = efforts(&TESTS[..4]);
    let low = json!({ "duration_s": 300, "power_w": 320, "position": 1 });
    all.as_array_mut().expect("a list").push(low);
    let scenario = json!({ "positions": [{ "name": "high" }, { "name": "low" }], "efforts": all });
    let told = answer("power-curve", &json!({ "scenario": scenario }));
    let [high, low] = [0, 1].map(|at| &told["positions"][at]["w_prime_j"]);
    let w_prime_j = number(&high["value"]);
    assert!((number(&low["value"]) / w_prime_j - 1.0).abs() < SAME_FIT);
    let sd = number(&high["sd"]).hypot(W_PRIME_SHARE * w_prime_j);
    assert!((number(&low["sd"]) / sd - 1.0).abs() < SAME_FIT);
}

/// Seeded normal deviates: splitmix64 and the polar method's older relative of Box and Muller.
struct Normal(u64);

impl Normal {
    fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    fn draw(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.uniform()).ln()).sqrt();
        radius * (std::f64::consts::TAU * self.uniform()).cos()
    }
}

#[test]
fn bands_hold_what_they_promise_in_two_thousand_test_sets_of_each_model() {
    let omni = Model::OmniDomain {
        peak: true,
        long_ride_from_s: Some(1800.0),
    };
    let cases: [(&str, Model, &[f64], &[f64]); 5] = [
        (
            "two-parameter",
            Model::TwoParameter,
            &[280.0, 18e3],
            &[150.0, 300.0, 600.0, 1200.0],
        ),
        (
            "three-parameter",
            Model::ThreeParameter,
            &[260.0, 20e3, 900.0],
            &[20.0, 60.0, 150.0, 300.0, 700.0, 1400.0],
        ),
        (
            "omni-domain",
            omni,
            &[270.0, 18e3, 900.0, 25.0],
            &[10.0, 30.0, 90.0, 240.0, 600.0, 1200.0, 3000.0, 7000.0],
        ),
        (
            "log-decline",
            Model::LogDecline,
            &[330.0, 28.0],
            &[450.0, 900.0, 1800.0, 3600.0],
        ),
        (
            "power-law",
            Model::PowerLaw,
            &[900.0, 0.16],
            &[60.0, 300.0, 1200.0, 4800.0],
        ),
    ];
    for (name, model, truth, lengths) in cases {
        let mut normal = Normal(11);
        let mut unused = vec![0.0; truth.len()];
        let mut power_w = |t: f64| model.power_w(truth, t, &mut unused);
        let (mut answered, mut in_curve, mut in_test) = (0_u32, 0_u32, 0_u32);
        let span = lengths[lengths.len() - 1] / lengths[0];
        for _ in 0..SETS {
            let mut noisy = |t: f64| power_w(t) * (1.0 + TEST_ERROR_SHARE * normal.draw());
            let tests: Vec<Effort> = lengths
                .iter()
                .map(|&duration_s| (duration_s, noisy(duration_s)))
                .map(|(duration_s, power_w)| Effort {
                    duration_s,
                    power_w,
                    sd_w: TEST_ERROR_SHARE * power_w,
                })
                .collect();
            let Ok(fit) = fit(model, &tests, &[]) else {
                continue;
            };
            answered += 1;
            let curve = Curve::new(model, fit, KNOWN_FROM, 0);
            let reach = student_t(0.95, curve.degrees_of_freedom);
            let time_s = lengths[0] * span.powf(normal.uniform());
            let (exact_w, (value_w, sd_w)) = (power_w(time_s), curve.power_w(time_s));
            let test_w = exact_w * (1.0 + TEST_ERROR_SHARE * normal.draw());
            in_curve += u32::from((exact_w - value_w).abs() <= reach * sd_w);
            let test_sd_w = curve.test_sd_w(time_s, TEST_ERROR_SHARE * value_w);
            in_test += u32::from((test_w - value_w).abs() <= reach * test_sd_w);
        }
        let share = |count: u32| f64::from(count) / f64::from(answered);
        assert!(
            COVERAGE.contains(&share(in_curve)),
            "{name}: the curve's band held {}",
            share(in_curve)
        );
        assert!(
            COVERAGE.contains(&share(in_test)),
            "{name}: a test's band held {}",
            share(in_test)
        );
        // Noise that leaves the parameters open is told, not counted; little does.
        assert!(
            f64::from(answered) > 0.98 * f64::from(SETS),
            "{name}: {answered}"
        );
    }
}
