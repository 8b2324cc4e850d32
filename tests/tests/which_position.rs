//! What which-position says of published costs and of measuring before choosing.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::answer;
use serde_json::{Value, json};

/// Simpson's rule over the smooth density of a whole number of degrees of freedom is surer than this by far.
const SHARE: f64 = 1e-6;
/// What five riders paid for the cut in drag area that came with it (polanco-2020), as shares of power and of drag area.
const FIVE_RIDERS: (f64, f64, f64) = (0.095, 0.054, 0.107);
/// What eleven riders paid for a torso at 12°, W (faulkner-2021).
const ELEVEN_RIDERS: (f64, f64) = (16.0, 20.0);

/// Two positions of these drag areas.
fn compared(base_m2: f64, low: Value) -> Value {
    let scenario = json!({ "positions": [{ "cda_m2": base_m2 }, low], "events": [{ "distance_m": 40_233.6 }] });
    answer(
        "which-position",
        &json!({ "scenario": scenario, "with": { "equipment": false } }),
    )
}

fn cost(answer: &Value) -> &Value {
    &answer["costs"][0]
}

fn number(of: &Value) -> f64 {
    of.as_f64().unwrap_or_else(|| panic!("no number: {of}"))
}

/// Student's t below a value, by Simpson's rule over its density, which is made to enclose 1.
fn student_t_below(t: f64, degrees_of_freedom: f64) -> f64 {
    const PANELS: u32 = 20_000;
    // Over the angle whose tangent is t/√ν the density is a power of the cosine, and its ends are finite.
    let area = |to: f64| {
        let from = -std::f64::consts::FRAC_PI_2;
        let width = (to - from) / f64::from(2 * PANELS);
        let density = |i: u32| {
            (from + width * f64::from(i))
                .cos()
                .abs()
                .powf(degrees_of_freedom - 1.0)
        };
        let weight = |i: u32| {
            if i == 0 || i == 2 * PANELS {
                1.0
            } else {
                f64::from(2 + 2 * (i % 2))
            }
        };
        (0..=2 * PANELS)
            .map(|i| weight(i) * density(i))
            .sum::<f64>()
            * width
            / 3.0
    };
    area((t / degrees_of_freedom.sqrt()).atan()) / area(std::f64::consts::FRAC_PI_2)
}

/// The share of further riders who pay less than `allowed`, where `riders` paid `mean` ± `sd`.
fn foretold(allowed: f64, (mean, sd): (f64, f64), riders: f64) -> f64 {
    student_t_below(
        (allowed - mean) / (sd * (1.0 + 1.0 / riders).sqrt()),
        riders - 1.0,
    )
}

#[test]
fn a_published_cost_is_scaled_to_the_cut_and_foretold_from_few_riders() {
    let (mean, sd, their_cut) = FIVE_RIDERS;
    for cut in [0.02, 0.06, 0.107] {
        let answer = compared(0.25, json!({ "cda_m2": 0.25 * (1.0 - cut) }));
        let cost = cost(&answer);
        let scale = cut / their_cut;
        assert!((number(&cost["cda_cut"]) - cut).abs() < 1e-12, "{cost}");
        assert!(
            (number(&cost["polanco_cost"]["value"]) - scale * mean).abs() < 1e-12,
            "{cost}"
        );
        assert!(
            (number(&cost["polanco_cost"]["sd"]) - scale * sd).abs() < 1e-12,
            "{cost}"
        );
        let want = foretold(
            number(&cost["allowed_share"]),
            (scale * mean, scale * sd),
            5.0,
        );
        assert!(
            (number(&cost["polanco_share"]) - want).abs() < SHARE,
            "{cut}: {want}, {cost}"
        );
        // A cost in watts of an unknown cut is not scaled, and not told of a change much smaller than a lowered torso's.
        if cut == 0.02 {
            assert_eq!(cost["faulkner_share"], Value::Null, "{cost}");
        } else {
            let want = foretold(number(&cost["allowed_w"]["value"]), ELEVEN_RIDERS, 11.0);
            assert!(
                (number(&cost["faulkner_share"]) - want).abs() < SHARE,
                "{cut}: {want}, {cost}"
            );
        }
    }
}

#[test]
fn positions_that_are_equally_low_have_no_published_cost() {
    let helmet = json!({ "cda_m2": 0.25, "equipment": [{ "cda_change_m2": -0.02 }], "worn": 0 });
    for low in [
        json!({ "cda_m2": 0.25 }),
        json!({ "cda_m2": 0.25, "cp_factor": 0.97 }),
        helmet,
    ] {
        let answer = compared(0.25, low);
        let cost = cost(&answer);
        assert_eq!(cost["cda_cut"], 0.0, "{cost}");
        for name in ["polanco_cost", "polanco_share", "faulkner_share"] {
            assert_eq!(cost[name], Value::Null, "{cost}");
        }
    }
}

/// What two positions of one guess say of measuring, over the four usual events.
fn worth(correlation: f64) -> Vec<Value> {
    let area = |value: f64| json!({ "value": value, "sd": 0.04, "source": "estimated" });
    let low = json!({ "cda_m2": area(0.226), "cp_factor": { "value": 0.97, "sd": 0.02, "source": "typical" } });
    let scenario = json!({ "positions": [{ "cda_m2": area(0.24) }, low] });
    let with = json!({ "draws": 10_000, "part": "draws", "cda_correlation": correlation });
    let answer = answer(
        "which-position",
        &json!({ "scenario": scenario, "with": with }),
    );
    answer["drawn"]["worth"].as_array().expect("a list").clone()
}

fn worth_s(all: &[Value], what: &str, fields: &[&str]) -> f64 {
    let found = all
        .iter()
        .find(|worth| worth["what"] == what && worth["fields"] == json!(fields));
    found.map_or(0.0, |worth| number(&worth["worth_s"]))
}

#[test]
fn drag_areas_that_are_wrong_together_are_to_be_measured_together() {
    const BASE: &str = "scenario.positions[0].cda_m2";
    const LOW: &str = "scenario.positions[1].cda_m2";
    let together = worth(0.95);
    assert_eq!(
        (&together[0]["what"], &together[0]["fields"]),
        (&json!("difference"), &json!([BASE, LOW]))
    );
    let both_s = worth_s(&together, "difference", &[BASE, LOW]);
    for one in [BASE, LOW] {
        let one_s = worth_s(&together, "input", &[one]);
        assert!(
            one_s < 0.1 * both_s,
            "{one}: {one_s} s alone, {both_s} s together"
        );
    }
    // Of errors that have nothing in common each is worth much by itself.
    let apart = worth(0.0);
    let both_s = worth_s(&apart, "difference", &[BASE, LOW]);
    for one in [BASE, LOW] {
        let one_s = worth_s(&apart, "input", &[one]);
        assert!(
            one_s > 0.5 * both_s && one_s < both_s,
            "{one}: {one_s} s alone, {both_s} s together"
        );
    }
}

#[test]
fn a_difference_is_known_as_well_as_the_less_sure_of_the_two() {
    let area = |value: f64, source: &str| json!({ "cda_m2": { "value": value, "sd": 0.02, "source": source } });
    for (one, other, both) in [
        ("measured", "estimated", "estimated"),
        ("typical", "measured", "typical"),
        ("measured", "measured", "measured"),
    ] {
        let scenario = json!({ "positions": [area(0.24, one), area(0.238, other)] });
        let with = json!({ "draws": 2000, "part": "draws" });
        let answer = answer(
            "which-position",
            &json!({ "scenario": scenario, "with": with }),
        );
        let listed = answer["drawn"]["worth"].as_array().expect("a list");
        let difference = listed
            .iter()
            .find(|worth| worth["what"] == "difference")
            .expect("a difference");
        assert_eq!(difference["source"], both, "{difference}");
    }
}

#[test]
fn of_many_positions_only_differences_from_the_reference_are_weighed() {
    let positions: Vec<Value> = (0..8)
        .map(|i| json!({ "cda_m2": { "value": 0.24 - 0.001 * f64::from(i), "sd": 0.02, "source": "estimated" } }))
        .collect();
    let with = json!({ "draws": 500, "part": "draws", "reference": 3 });
    let answer = answer(
        "which-position",
        &json!({ "scenario": { "positions": positions }, "with": with }),
    );
    let listed = answer["drawn"]["worth"].as_array().expect("a list");
    let differences: Vec<&Value> = listed
        .iter()
        .filter(|worth| worth["what"] == "difference")
        .collect();
    assert!(!differences.is_empty());
    for difference in differences {
        let fields = difference["fields"].as_array().expect("two fields");
        assert!(
            fields.contains(&json!("scenario.positions[3].cda_m2")),
            "{difference}"
        );
    }
}
