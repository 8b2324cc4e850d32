//! What to work on next, from outside: the best set against an exhaustive search whose rides are asked for one by one.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::distributions::normal_share;
use fasterby_core::draws::{Normal, draw_errors, with_errors};
use fasterby_core::scenario::Scenario;
use fasterby_tests::{answer, refused, value};
use fastrand::Rng;
use serde_json::{Value, json};

/// Sets that save the same to this are worth the same to the search, s; the rest of it is what a polynomial between rides
/// leaves of a finish time.
const TIE_S: f64 = 1e-3;
/// Two ways of adding up the same rides, s.
const ROUNDING_S: f64 = 1e-6;

/// Weeks of the random problems' budget: so few that every week can be tried.
const WEEKS: u8 = 6;

const NUMBERS: &[&str] = &[
    "positions.cda_m2",
    "positions[0].cda_m2",
    "power.cp_w",
    "power.w_prime_j",
    "bike.rolling_coefficient",
    "bike.drivetrain_efficiency",
    "rider.total_mass_kg",
    "conditions.wind_speed_m_s",
];

fn random_change(random: &mut Rng) -> Value {
    if random.u8(0..12) == 0 {
        return json!({ "use_position": random.usize(0..2) });
    }
    // Drag is what most candidates change, so that it is read off a polynomial.
    let field = if random.u8(0..4) > 0 {
        NUMBERS[0]
    } else {
        NUMBERS[random.usize(0..NUMBERS.len())]
    };
    let size = 0.06 * (random.f64() - 0.3);
    let better = if field.starts_with("power") || field.ends_with("efficiency") {
        0.4
    } else {
        -1.0
    };
    match (field, random.u8(0..4)) {
        ("positions.cda_m2", 0) => json!({ "field": field, "by": 0.2 * better * size }),
        _ => json!({ "field": field, "share": better * size }),
    }
}

fn random_problem(random: &mut Rng) -> Value {
    let candidates: Vec<Value> = (0..random.usize(1..=8))
        .map(|i| {
            let changes: Vec<Value> = (0..random.usize(1..=2))
                .map(|_| random_change(random))
                .collect();
            let chance = [0.0, 0.3, 0.5, 0.8, 1.0][random.usize(0..5)];
            let group = ["", "", "", "one", "two"][random.usize(0..5)];
            let requires = if i > 0 && random.u8(0..4) == 0 {
                format!("c{}", random.usize(0..i))
            } else {
                String::new()
            };
            let mut candidate = json!({
                "name": format!("c{i}"),
                "changes": changes,
                "chance": chance,
                "money": 25.0 * f64::from(random.u8(0..6)),
                "hours_once": f64::from(random.u8(0..5)),
                "group": group,
                "requires": requires,
            });
            if random.bool() {
                candidate["hours_per_week"] = json!(0.5 * f64::from(random.u8(0..6)));
            }
            if random.bool() {
                candidate["weeks"] = json!(random.u8(1..=WEEKS + 1));
            }
            candidate
        })
        .collect();
    let events: Vec<Value> = (0..random.usize(1..=3))
        .map(|_| json!({ "distance_m": 5_000.0 + 60_000.0 * random.f64() }))
        .collect();
    let times: Vec<f64> = events.iter().map(|_| f64::from(random.u8(0..5))).collect();
    json!({
        "scenario": {
            "positions": [{ "cda_m2": 0.25 + 0.05 * random.f64() }, { "cda_m2": 0.26, "cp_factor": 1.01 }],
            "power": { "cp_w": 200.0 + 120.0 * random.f64(), "long_ride_loss_w": 20.0 },
            "course": { "out_and_back": random.bool(), "bearing_deg": 30.0 },
            "conditions": { "wind_speed_m_s": 5.0 * random.f64(), "wind_from_deg": 80.0 },
            "events": events,
        },
        "with": {
            "candidates": candidates,
            "times_ridden": times,
            "money": 300.0 * random.f64(),
            "hours_per_week": 3.0 * random.f64(),
            "weeks": WEEKS,
        },
    })
}

fn number(of: &Value) -> f64 {
    of.as_f64().expect("a number")
}

/// A number of a candidate, 0 if it is left out.
fn takes(candidate: &Value, name: &str) -> f64 {
    candidate.get(name).map_or(0.0, number)
}

/// The place of the candidate that this one requires.
fn required(problem: &Value, c: usize) -> Option<usize> {
    let candidates = list(&problem["with"]["candidates"]);
    let wanted = candidates[c]
        .get("requires")
        .and_then(Value::as_str)
        .filter(|wanted| !wanted.is_empty())?;
    candidates.iter().position(|other| other["name"] == wanted)
}

fn list(of: &Value) -> &[Value] {
    of.as_array().expect("a list")
}

/// Seconds that every set saves if all of it works: each set's changes asked for as one candidate.
fn saved_together(problem: &Value) -> Vec<f64> {
    let candidates = list(&problem["with"]["candidates"]);
    let merged = |set: usize| -> Value {
        let own = candidates
            .iter()
            .enumerate()
            .filter(|(i, _)| set >> i & 1 == 1);
        let changes: Vec<Value> = own
            .flat_map(|(_, candidate)| list(&candidate["changes"]).to_vec())
            .collect();
        json!({ "changes": changes })
    };
    let mut saved = vec![0.0];
    let sets: Vec<usize> = (1..1 << candidates.len()).collect();
    for twenty in sets.chunks(20) {
        let mut asked = problem.clone();
        asked["with"]["candidates"] = twenty.iter().map(|&set| merged(set)).collect();
        asked["with"]["part"] = json!("each");
        let got = answer("next-gain", &asked);
        saved.extend(
            list(&got["candidates"])
                .iter()
                .map(|gain| value(&gain["saves_s"]).expect("a number")),
        );
    }
    saved
}

/// Whether a set keeps within the budgets and takes no two that exclude each other.
fn allowed(problem: &Value, set: usize) -> bool {
    let with = &problem["with"];
    let candidates = list(&with["candidates"]);
    let own: Vec<&Value> = candidates
        .iter()
        .enumerate()
        .filter(|(i, _)| set >> i & 1 == 1)
        .map(|(_, c)| c)
        .collect();
    let complete = (0..candidates.len())
        .filter(|i| set >> i & 1 == 1)
        .all(|i| required(problem, i).is_none_or(|required| set >> required & 1 == 1));
    let money = own.iter().map(|c| takes(c, "money")).sum::<f64>();
    let rides = |c: &Value| {
        list(&c["changes"])
            .iter()
            .any(|change| change.get("use_position").is_some())
    };
    let excluded = own.iter().enumerate().any(|(i, a)| {
        own[..i]
            .iter()
            .any(|b| a["group"] != "" && a["group"] == b["group"] || rides(a) && rides(b))
    });
    complete && !excluded && money <= number(&with["money"]) && fits_into_weeks(problem, &own)
}

/// Whether hours fit: every block tried at every week, hours that are taken once put wherever there is room.
fn fits_into_weeks(problem: &Value, own: &[&Value]) -> bool {
    const ROUNDING: f64 = 1e-9;
    let (a_week, weeks) = (
        number(&problem["with"]["hours_per_week"]),
        number(&problem["with"]["weeks"]) as usize,
    );
    fn placed(blocks: &[(f64, usize)], used: &mut [f64], most: f64) -> bool {
        let Some((&(hours, weeks), rest)) = blocks.split_first() else {
            return true;
        };
        (0..=used.len() - weeks).any(|start| {
            used[start..start + weeks]
                .iter_mut()
                .for_each(|week| *week += hours);
            let fits = used.iter().all(|&week| week <= most + ROUNDING) && placed(rest, used, most);
            used[start..start + weeks]
                .iter_mut()
                .for_each(|week| *week -= hours);
            fits
        })
    }
    let blocks: Vec<(f64, usize)> = own
        .iter()
        .map(|c| {
            (
                takes(c, "hours_per_week"),
                c.get("weeks").map_or(weeks, |own| number(own) as usize),
            )
        })
        .collect();
    let in_all = own.iter().map(|c| takes(c, "hours_once")).sum::<f64>()
        + blocks
            .iter()
            .map(|&(hours, weeks)| hours * weeks as f64)
            .sum::<f64>();
    blocks.iter().all(|&(_, own)| own <= weeks)
        && in_all <= a_week * weeks as f64 + ROUNDING
        && placed(&blocks, &mut vec![0.0; weeks], a_week)
}

/// What a set saves on average: everything that may come off or not, written out and weighed by its chance. One whose required
/// candidate does not come off brings nothing.
fn on_average(problem: &Value, saved: &[f64], set: usize) -> f64 {
    let chances: Vec<f64> = list(&problem["with"]["candidates"])
        .iter()
        .map(|c| c["chance"].as_f64().expect("a chance"))
        .collect();
    let weight = |outcome: usize| -> f64 {
        let own = (0..chances.len()).filter(|i| set >> i & 1 == 1);
        own.map(|i| {
            if outcome >> i & 1 == 1 {
                chances[i]
            } else {
                1.0 - chances[i]
            }
        })
        .product()
    };
    let works = |comes_off: usize| -> usize {
        let off = |&i: &usize| {
            let mut line = std::iter::successors(Some(i), |&at| required(problem, at));
            line.all(|at| comes_off >> at & 1 == 1)
        };
        (0..chances.len()).filter(off).map(|i| 1 << i).sum()
    };
    (0..saved.len())
        .filter(|outcome| outcome & !set == 0)
        .map(|comes_off| weight(comes_off) * saved[works(comes_off)])
        .sum()
}

fn set_of(best: &Value) -> usize {
    list(&best["candidates"])
        .iter()
        .map(|c| 1 << c.as_u64().expect("a place"))
        .sum()
}

#[test]
fn the_best_set_of_200_random_problems_is_that_of_an_exhaustive_search() {
    let mut random = Rng::with_seed(40233);
    for _ in 0..200 {
        let problem = random_problem(&mut random);
        let saved = saved_together(&problem);
        let got = answer("next-gain", &problem);
        let best = &got["best"];
        let worth = |set: usize| on_average(&problem, &saved, set);
        let most = (0..saved.len())
            .filter(|&set| allowed(&problem, set))
            .map(worth)
            .fold(0.0, f64::max);
        let set = set_of(best);
        assert!(allowed(&problem, set), "{problem}");
        // What is not in the best set is left out for a reason, each once.
        let left_out: Vec<usize> = list(&got["left_out"])
            .iter()
            .map(|one| number(&one["candidate"]) as usize)
            .collect();
        let others: Vec<usize> = (0..list(&problem["with"]["candidates"]).len())
            .filter(|i| set >> i & 1 == 0)
            .collect();
        assert_eq!(left_out, others, "{problem}");
        let one_more = problem_with_hours(&problem, number(&best["hours_per_week"]));
        assert!(
            allowed(&one_more, set),
            "the hours a week of the best set are too few: {problem}"
        );
        let got = value(&best["expected_s"]).expect("a number");
        assert!(
            (got - worth(set)).abs() < TIE_S,
            "{got} for {}: {problem}",
            worth(set)
        );
        assert!(
            worth(set) >= most - TIE_S,
            "{} but {most} is possible: {problem}",
            worth(set)
        );
        let together = value(&best["all_work_s"]).expect("a number");
        assert!(
            (together - saved[set]).abs() < ROUNDING_S,
            "{together} for {}",
            saved[set]
        );
    }
}

fn problem_with_hours(problem: &Value, hours_per_week: f64) -> Value {
    let mut other = problem.clone();
    other["with"]["hours_per_week"] = json!(hours_per_week + 1e-9);
    other
}

#[test]
fn each_step_of_what_hours_buy_fits_and_is_the_best_for_its_hours() {
    let mut random = Rng::with_seed(1609);
    for _ in 0..40 {
        let problem = random_problem(&mut random);
        let saved = saved_together(&problem);
        let best = &answer("next-gain", &problem)["best"];
        let curve = &best["by_hours"];
        for ((hours, worth), members) in list(&curve["budget"])
            .iter()
            .zip(list(&curve["expected_s"]))
            .zip(list(&curve["candidates"]))
        {
            let there = problem_with_hours(&problem, number(hours));
            let set = list(members).iter().map(|c| 1 << number(c) as usize).sum();
            assert!(
                allowed(&there, set),
                "{hours} are too few for {members}: {problem}"
            );
            let most = (0..saved.len())
                .filter(|&set| allowed(&there, set))
                .map(|set| on_average(&there, &saved, set));
            let most = most.fold(0.0, f64::max);
            assert!(
                (number(worth) - most).abs() < TIE_S,
                "{worth} for {most} at {hours}: {problem}"
            );
        }
        if let Some(next) = best["next_hours"].as_object() {
            let more = number(&problem["with"]["hours_per_week"]) + number(&next["more"]);
            let set = list(&next["candidates"])
                .iter()
                .map(|c| 1 << number(c) as usize)
                .sum();
            assert!(
                allowed(&problem_with_hours(&problem, more), set),
                "{problem}"
            );
        }
    }
}

/// Why a usual candidate is left out, by its key; `None` if it is in the best set.
fn why_left_out(with: &Value, key: &str) -> Option<String> {
    let got = answer("next-gain", &json!({ "with": with }));
    let place = list(&got["candidates"])
        .iter()
        .position(|gain| gain["candidate"]["key"] == key)
        .expect("a usual one");
    let left_out = list(&got["left_out"])
        .iter()
        .find(|one| one["candidate"] == place);
    assert_eq!(
        left_out.is_none(),
        list(&got["best"]["candidates"]).contains(&json!(place)),
        "{got}"
    );
    left_out.map(|one| one["why"].as_str().expect("a word").to_owned())
}

#[test]
fn a_block_of_weeks_needs_its_weeks_and_its_hours_in_each_of_them() {
    let why = |hours_per_week: f64, weeks: f64| {
        why_left_out(
            &json!({ "money": 0, "hours_per_week": hours_per_week, "weeks": weeks }),
            "intervals",
        )
    };
    assert_eq!(why(2.0, 1.0).as_deref(), Some("too_long"));
    assert_eq!(why(0.7, 12.0).as_deref(), Some("too_many_hours_a_week"));
    assert_eq!(why(2.0, 4.0), None);
    let nothing = answer(
        "next-gain",
        &json!({ "with": { "money": 0, "hours_per_week": 0, "weeks": 0 } }),
    );
    assert_eq!(nothing["best"]["candidates"], json!([]));
    assert_eq!(nothing["best"]["expected_s"]["value"], 0.0);
    // What runs for all weeks has no room where there are none, however many hours a week there are.
    let all_weeks =
        json!({ "changes": [{ "field": "power.cp_w", "share": 0.04 }], "hours_per_week": 4 });
    let with = json!({ "candidates": [all_weeks], "hours_per_week": 10, "weeks": 0 });
    let got = answer("next-gain", &json!({ "with": with }));
    assert_eq!(
        got["left_out"],
        json!([{ "candidate": 0, "why": "too_long", "other": null }])
    );
}

#[test]
fn blocks_that_run_at_the_same_time_share_the_hours_of_a_week() {
    let block = |weeks: u8| json!({ "changes": [{ "field": "power.cp_w", "share": 0.02 }], "hours_per_week": 2, "weeks": weeks });
    let taken = |weeks: [u8; 2], hours_per_week: f64| {
        let with = json!({ "candidates": weeks.map(block), "money": 0, "hours_per_week": hours_per_week, "weeks": 12 });
        list(&answer("next-gain", &json!({ "with": with }))["best"]["candidates"]).len()
    };
    // One after the other, or side by side.
    assert_eq!(taken([6, 6], 2.0), 2);
    assert_eq!(taken([6, 7], 2.0), 1);
    assert_eq!(taken([6, 7], 4.0), 2);
}

#[test]
fn every_reason_for_leaving_out_is_said() {
    let one = |name: &str, share: f64, more: Value| {
        let mut candidate =
            json!({ "name": name, "changes": [{ "field": "positions.cda_m2", "share": share }] });
        candidate
            .as_object_mut()
            .expect("an object")
            .extend(more.as_object().expect("an object").clone());
        candidate
    };
    let candidates = [
        one(
            "taken",
            -0.05,
            json!({ "money": 60, "hours_once": 15, "group": "bars" }),
        ),
        one("dear", -0.01, json!({ "money": 200 })),
        one("long", -0.01, json!({ "weeks": 20 })),
        one(
            "full weeks",
            -0.01,
            json!({ "hours_per_week": 3, "weeks": 1 }),
        ),
        one("many hours", -0.01, json!({ "hours_once": 30 })),
        one("of the group", -0.01, json!({ "group": "bars" })),
        one("second step", -0.01, json!({ "requires": "dear" })),
        one("beside the money", -0.01, json!({ "money": 60 })),
        one("beside the hours", -0.01, json!({ "hours_once": 10 })),
        one("slower", 0.01, json!({})),
    ];
    let with = json!({ "candidates": candidates, "money": 100, "hours_per_week": 2, "weeks": 10 });
    let got = answer("next-gain", &json!({ "with": with }));
    assert_eq!(got["best"]["candidates"], json!([0]));
    let said: Vec<(&str, &Value)> = list(&got["left_out"])
        .iter()
        .map(|one| (one["why"].as_str().expect("a word"), &one["other"]))
        .collect();
    let none = &Value::Null;
    let want = [
        ("too_dear", none),
        ("too_long", none),
        ("too_many_hours_a_week", none),
        ("too_many_hours", none),
        ("excluded_by_group", &json!(0)),
        ("needs_another", &json!(1)),
        ("no_money_left", none),
        ("no_hours_left", none),
        ("not_worth_it", none),
    ];
    assert_eq!(said, want);
}

#[test]
fn a_step_that_requires_another_is_worth_what_it_adds_to_it() {
    let shares = [-0.036, -0.025];
    let change = |share: f64| json!({ "field": "positions.cda_m2", "share": { "value": share, "sd": 0.02 } });
    let first = json!({ "key": "first", "changes": [change(shares[0])], "chance": 0.6 });
    let second = json!({ "name": "second", "changes": [change(shares[1])], "chance": 0.35, "requires": "first" });
    let got = answer(
        "next-gain",
        &json!({ "with": { "candidates": [second, first] } }),
    );
    let row = |c: usize, what: &str| value(&got["candidates"][c][what]).expect("a number");
    let both = json!({ "changes": shares.map(change) });
    let together = answer(
        "next-gain",
        &json!({ "with": { "candidates": [both], "part": "each" } }),
    );
    let together_s = value(&together["candidates"][0]["saves_s"]).expect("a number");
    assert!((row(0, "saves_s") - (together_s - row(1, "saves_s"))).abs() < ROUNDING_S);
    assert!((row(0, "expected_s") - 0.6 * 0.35 * row(0, "saves_s")).abs() < ROUNDING_S);
    // Nothing: 0.4; the first alone: 0.6 × 0.65; both: 0.6 × 0.35.
    let average = 0.6 * 0.65 * row(1, "saves_s") + 0.6 * 0.35 * together_s;
    let best = &got["best"];
    assert_eq!(best["candidates"], json!([0, 1]));
    assert!((value(&best["expected_s"]).expect("a number") - average).abs() < TIE_S);
    assert!((number(&best["added_up_s"]) - average).abs() < TIE_S);
    // Without the first the second cannot be taken.
    let with = json!({ "money": 0, "hours_per_week": 0.55, "weeks": 12 });
    let usual = answer("next-gain", &json!({ "with": with }));
    let keys: Vec<&str> = list(&usual["candidates"])
        .iter()
        .map(|g| g["candidate"]["key"].as_str().expect("a key"))
        .collect();
    let in_best = |key: &str| {
        list(&usual["best"]["candidates"])
            .iter()
            .any(|c| keys[number(c) as usize] == key)
    };
    assert!(in_best("front-lower") || !in_best("front-lowest"));
}

#[test]
fn one_candidate_is_as_unsure_in_the_best_set_as_by_itself() {
    let change = json!({ "field": "positions.cda_m2", "share": { "value": -0.04, "sd": 0.02 } });
    let scenario = json!({ "events": [{ "distance_m": 40_233.6 }] });
    let with = json!({ "candidates": [{ "changes": [change], "chance": 0.5 }] });
    let got = answer("next-gain", &json!({ "scenario": scenario, "with": with }));
    let (alone, best) = (
        &got["candidates"][0]["expected_s"],
        &got["best"]["expected_s"],
    );
    assert!((number(&alone["value"]) - number(&best["value"])).abs() < TIE_S);
    assert!(
        (number(&alone["sd"]) - number(&best["sd"])).abs() < TIE_S,
        "{alone} {best}"
    );
    println!("one candidate: by itself {alone}, as the best set {best}");
}

/// Numbers with their standard deviations made exact.
fn exact(of: &mut Value) {
    match of {
        Value::Object(fields) if fields.contains_key("value") && fields.contains_key("sd") => {
            *of = fields["value"].clone()
        }
        Value::Object(fields) => fields.values_mut().for_each(exact),
        Value::Array(all) => all.iter_mut().for_each(exact),
        _ => {}
    }
}

/// A typical rider with one event, so that thousands of riders are ridden in seconds.
fn one_event() -> Value {
    json!({ "events": [{ "name": "", "distance_m": 40_233.6 }] })
}

/// What a rider's best set saves, drawn: the rider's own numbers and every amount from their spreads, and what comes off by its
/// chance.
fn drawn_savings(got: &Value, draws: usize) -> Vec<f64> {
    let scenario: Scenario = serde_json::from_value(one_event()).expect("a scenario");
    let rides = scenario.as_worn(&[scenario.riding_position]);
    let uncertain: Vec<_> = scenario
        .uncertain_inputs(&rides)
        .iter()
        .map(|input| input.uncertain)
        .collect();
    let (mut normal, mut random) = (Normal::new(17), Rng::with_seed(17));
    let members: Vec<&Value> = list(&got["best"]["candidates"])
        .iter()
        .map(|c| &got["candidates"][number(c) as usize]["candidate"])
        .collect();
    let name = |c: &Value| c[if c["key"] == "" { "name" } else { "key" }].clone();
    let mut errors = vec![0.0; uncertain.len()];
    let mut values = errors.clone();
    (0..draws)
        .map(|_| {
            draw_errors(&uncertain, &mut normal, &mut errors);
            with_errors(&uncertain, &errors, &mut values);
            let mut drawn = scenario.clone();
            drawn.set_uncertain_inputs(&scenario, &rides, &values);
            let mut drawn = serde_json::to_value(&drawn).expect("scenarios are JSON");
            exact(&mut drawn);
            let off: Vec<bool> = members
                .iter()
                .map(|c| random.f64() < number(&c["chance"]))
                .collect();
            let works = |i: usize| {
                let mut at = Some(i);
                while let Some(one) = at {
                    if !off[one] {
                        return false;
                    }
                    let required = &members[one]["requires"];
                    at = members
                        .iter()
                        .position(|other| *required != "" && name(other) == *required);
                }
                true
            };
            let mut changes = Vec::new();
            for (i, member) in members.iter().enumerate() {
                for change in list(&member["changes"]) {
                    let amount = if change.get("by").is_some() {
                        "by"
                    } else {
                        "share"
                    };
                    let mut change = change.clone();
                    let size = number(&change[amount]["value"])
                        + number(&change[amount]["sd"]) * normal.draw();
                    change[amount] = json!(size);
                    if works(i) {
                        changes.push(change);
                    }
                }
            }
            if changes.is_empty() {
                return 0.0;
            }
            let with = json!({ "candidates": [{ "changes": changes }], "part": "each" });
            let got = answer("next-gain", &json!({ "scenario": drawn, "with": with }));
            value(&got["candidates"][0]["saves_s"]).expect("a number")
        })
        .collect()
}

#[test]
fn the_range_of_the_best_set_holds_19_of_20_simulated_riders() {
    const RIDERS: usize = 2000;
    /// Two and a half standard deviations of a count of 2,000 riders of whom 95 % lie within, and as much again for what first
    /// order leaves out.
    const COVERAGE: std::ops::RangeInclusive<f64> = 0.93..=0.97;
    /// The standard deviation of a standard deviation of 2,000 draws is 1.6 %; what first order leaves out is less than the rest.
    const SD: f64 = 0.06;
    let one = json!([{ "changes": [{ "field": "positions.cda_m2", "share": { "value": -0.04, "sd": 0.02 } }], "chance": 0.5 }]);
    let cases = [
        ("the usual list and budget", json!({})),
        ("one candidate", json!({ "candidates": one })),
    ];
    for (name, with) in cases {
        let got = answer(
            "next-gain",
            &json!({ "scenario": one_event(), "with": with }),
        );
        let best = &got["best"];
        let [low, high] = [0, 1].map(|end| number(&best["range_95_s"][end]));
        let savings = drawn_savings(&got, RIDERS);
        let share = savings
            .iter()
            .filter(|saved| (low..=high).contains(saved))
            .count() as f64
            / RIDERS as f64;
        let mean = savings.iter().sum::<f64>() / RIDERS as f64;
        let sd = (savings
            .iter()
            .map(|saved| (saved - mean).powi(2))
            .sum::<f64>()
            / RIDERS as f64)
            .sqrt();
        let said = number(&best["expected_s"]["sd"]);
        println!(
            "{name}: {} changes, {low:.1} to {high:.1} s holds {:.1} % of {RIDERS}; mean {:.1} s, drawn {mean:.1}; sd {said:.1} s, drawn {sd:.1}",
            list(&best["candidates"]).len(),
            100.0 * share,
            number(&best["expected_s"]["value"])
        );
        assert!(COVERAGE.contains(&share), "{name}: {share}");
        assert!((said / sd - 1.0).abs() < SD, "{name}: {said} for {sd}");
    }
}

/// What a measurement is worth is right to this share and so many seconds: it takes a saving to be the same beside whatever else is
/// bought, and to be normal, where both are a little bent.
const FIRST_ORDER_SHARE: f64 = 0.03;
const FIRST_ORDER_S: f64 = 0.3;

/// The best set's average saving where a candidate's chance and its share of drag are known.
fn saved_knowing(problem: &Value, candidate: usize, chance: f64, share: f64) -> f64 {
    let mut known = problem.clone();
    let one = &mut known["with"]["candidates"][candidate];
    one["chance"] = json!(chance);
    one["changes"][0]["share"] = json!({ "value": share, "sd": 0.0 });
    value(&answer("next-gain", &known)["best"]["expected_s"]).expect("a number")
}

#[test]
fn measuring_before_buying_is_worth_what_riders_gain_who_know_beforehand() {
    /// Equal parts of the normal distribution that are tried.
    const PARTS: u32 = 60;
    let deviate = |share: f64| {
        let (mut low, mut high) = (-8.0, 8.0);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if normal_share(middle) < share {
                low = middle;
            } else {
                high = middle;
            }
        }
        low
    };
    let drag = |name: &str, value: f64, sd: f64, chance: f64, money: f64| {
        json!({ "name": name, "chance": chance, "money": money,
            "changes": [{ "field": "positions.cda_m2", "share": { "value": value, "sd": sd } }] })
    };
    let problem = |money: f64| {
        json!({ "scenario": {}, "with": { "money": money, "hours_per_week": 2, "weeks": 4, "candidates": [
            drag("suit", -0.03, 0.015, 0.7, 150.0),
            drag("overshoes", -0.02, 0.012, 0.8, 100.0),
            drag("hands", -0.008, 0.012, 0.5, 0.0),
        ] } })
    };
    let mut compared = 0;
    for money in [0.0, 100.0, 150.0, 260.0] {
        let problem = problem(money);
        let now = answer("next-gain", &problem);
        let now_s = value(&now["best"]["expected_s"]).expect("a number");
        for candidate in 0..3 {
            let with = &problem["with"]["candidates"][candidate];
            let share = &with["changes"][0]["share"];
            let (mean, sd, chance) = (
                number(&share["value"]),
                number(&share["sd"]),
                number(&with["chance"]),
            );
            let if_it_works: f64 = (0..PARTS)
                .map(|part| {
                    let z = deviate((f64::from(part) + 0.5) / f64::from(PARTS));
                    saved_knowing(&problem, candidate, 1.0, mean + sd * z)
                })
                .sum::<f64>()
                / f64::from(PARTS);
            let worth_s = chance * if_it_works
                + (1.0 - chance) * saved_knowing(&problem, candidate, 0.0, mean)
                - now_s;
            let said = list(&now["measuring"])
                .iter()
                .find(|one| one["candidate"] == candidate)
                .map_or(0.0, |one| number(&one["worth_s"]));
            assert!(
                (said - worth_s).abs() < FIRST_ORDER_SHARE * worth_s + FIRST_ORDER_S,
                "{said} for {worth_s} of candidate {candidate} with {money}"
            );
            compared += usize::from(worth_s > 1.0);
        }
    }
    assert!(
        compared >= 6,
        "only {compared} measurements are worth a second"
    );
}

#[test]
fn only_what_test_laps_can_compare_is_measured_and_what_is_sure_is_not_worth_it() {
    let with = |changes: Value, chance: f64| {
        let request = json!({ "scenario": {}, "with": { "money": 100, "candidates": [
            { "name": "one", "chance": chance, "money": 100, "changes": changes },
            { "name": "other", "chance": 1, "money": 100,
                "changes": [{ "field": "positions.cda_m2", "share": -0.02 }] },
        ] } });
        answer("next-gain", &request)["measuring"].clone()
    };
    let unsure = json!({ "value": -0.02, "sd": 0.02 });
    // Tyres hold back less than air does: as much is saved by a larger share.
    let unsure_tyres = json!({ "value": -0.08, "sd": 0.08 });
    for (field, share) in [
        ("positions.cda_m2", &unsure),
        ("positions[0].cda_m2", &unsure),
        ("bike.rolling_coefficient", &unsure_tyres),
    ] {
        let measured = with(json!([{ "field": field, "share": share }]), 0.9);
        assert_eq!(measured[0]["candidate"], 0, "{field}: {measured}");
    }
    for changes in [
        json!([{ "field": "power.cp_w", "share": { "value": 0.02, "sd": 0.02 } }]),
        json!([{ "field": "positions.cda_m2", "share": unsure }, { "field": "power.cp_w", "by": -2 }]),
        json!([{ "field": "positions.cda_m2", "share": -0.03 }]),
    ] {
        let measured = with(changes.clone(), 1.0);
        assert_eq!(measured, json!([]), "{changes}");
    }
}

#[test]
fn a_long_event_without_a_long_ride_loss_is_doubtful() {
    let warned = |distance_m: f64, power: Value| {
        let scenario = json!({ "power": power, "events": [{ "distance_m": distance_m }] });
        let got = answer(
            "next-gain",
            &json!({ "scenario": scenario, "with": { "part": "each" } }),
        );
        list(&got["warnings"]).iter().any(|one| {
            one["kind"] == "hour_overstated" && one["field"] == "scenario.power.long_ride_loss_w"
        })
    };
    let without = json!({ "cp_w": 250, "w_prime_j": 20000 });
    assert!(warned(160_934.4, without.clone()));
    assert!(!warned(16_093.44, without));
    assert!(!warned(
        160_934.4,
        json!({ "cp_w": 250, "w_prime_j": 20000, "long_ride_loss_w": 20 })
    ));
}

#[test]
fn the_order_of_candidates_does_not_matter() {
    let mut random = Rng::with_seed(7);
    for _ in 0..20 {
        let problem = random_problem(&mut random);
        let candidates = list(&problem["with"]["candidates"]);
        let mut order: Vec<usize> = (0..candidates.len()).collect();
        random.shuffle(&mut order);
        let mut other = problem.clone();
        other["with"]["candidates"] = order.iter().map(|&i| candidates[i].clone()).collect();
        let (a, b) = (answer("next-gain", &problem), answer("next-gain", &other));
        let (one, two) = (&a["best"]["expected_s"], &b["best"]["expected_s"]);
        assert!(
            (value(one).expect("a number") - value(two).expect("a number")).abs() < TIE_S,
            "{problem}"
        );
        for (at, &i) in order.iter().enumerate() {
            let (one, two) = (
                &a["candidates"][i]["saves_s"],
                &b["candidates"][at]["saves_s"],
            );
            assert!(
                (value(one).expect("a number") - value(two).expect("a number")).abs() < ROUNDING_S
            );
        }
    }
}

#[test]
fn more_of_a_budget_is_never_worse_and_the_curves_pass_through_the_best() {
    let mut random = Rng::with_seed(11);
    for _ in 0..20 {
        let mut problem = random_problem(&mut random);
        let mut before = f64::NEG_INFINITY;
        for money in [0.0, 60.0, 120.0, 240.0, 1000.0] {
            problem["with"]["money"] = json!(money);
            let best = &answer("next-gain", &problem)["best"];
            let now = value(&best["expected_s"]).expect("a number");
            assert!(now >= before - TIE_S, "{before} then {now}: {problem}");
            before = now;
            let curve = &best["by_money"];
            let steps = list(&curve["budget"])
                .iter()
                .zip(list(&curve["expected_s"]));
            let on_curve = steps
                .filter(|(cost, _)| cost.as_f64().expect("a cost") <= money)
                .map(|(_, worth)| worth.as_f64().expect("a number"))
                .fold(0.0, f64::max);
            assert!(
                (on_curve - now).abs() < TIE_S,
                "{on_curve} for {now}: {problem}"
            );
        }
    }
}

#[test]
fn without_money_or_hours_only_what_is_free_is_taken() {
    let got = answer(
        "next-gain",
        &json!({ "with": { "money": 0, "hours_per_week": 0 } }),
    );
    assert_eq!(list(&got["best"]["candidates"]).len(), 0);
    let free =
        json!({ "changes": [{ "field": "positions.cda_m2", "share": -0.01 }], "chance": 0.5 });
    let dear = json!({ "changes": [{ "field": "positions.cda_m2", "share": -0.1 }], "money": 1 });
    let with = json!({ "candidates": [dear, free], "money": 0, "hours_per_week": 0 });
    assert_eq!(
        answer("next-gain", &json!({ "with": with }))["best"]["candidates"],
        json!([1])
    );
}

#[test]
fn an_asking_in_pieces_gives_the_same_as_one() {
    let whole = answer("next-gain", &json!({ "with": { "part": "best" } }));
    let mut so_far = json!([]);
    for _ in 0..1000 {
        let with = json!({ "part": "best", "rides_at_once": 300, "so_far": so_far });
        let got = answer("next-gain", &json!({ "with": with }));
        if !got["best"].is_null() {
            assert_eq!(got["best"]["candidates"], whole["best"]["candidates"]);
            let [in_pieces, at_once] =
                [&got, &whole].map(|of| value(&of["best"]["expected_s"]).expect("a number"));
            assert!(
                (in_pieces - at_once).abs() < ROUNDING_S,
                "{in_pieces} for {at_once}"
            );
            return;
        }
        assert_eq!(
            got["searched"]["done"],
            list(&got["searched"]["so_far"]).len()
        );
        so_far = got["searched"]["so_far"].clone();
    }
    panic!("the search does not end");
}

#[test]
fn the_model_keeps_the_shape_of_a_published_table_from_novice_to_elite() {
    // Jeukendrup and Martin 2001, as another text quotes it: seconds saved over 40 km against the hoods by a novice, a
    // trained and an elite rider (source jeukendrup-2001, second-hand).
    const DROPS_S: [f64; 3] = [226.0, 186.0, 167.0];
    const AERO_BARS_S: [f64; 3] = [409.0, 336.0, 299.0];
    const OPTIMISED_S: [f64; 3] = [561.0, 462.0, 414.0];
    /// The table gives no drag areas or powers that were read, so these are fitted to it: drag areas to the novice's
    /// savings and power to what each rider saves in the drops. The rest then follows, to the rounding and the model of the table.
    const SHAPE: f64 = 0.02;
    let saves = |cp_w: f64, shares: [f64; 3]| -> [f64; 3] {
        let candidates: Vec<Value> = shares
            .iter()
            .map(|share| json!({ "changes": [{ "field": "positions.cda_m2", "share": share }] }))
            .collect();
        let scenario = json!({
            "positions": [{ "cda_m2": 0.36 }], "power": { "cp_w": cp_w }, "events": [{ "distance_m": 40_000.0 }],
        });
        let got = answer(
            "next-gain",
            &json!({ "scenario": scenario, "with": { "candidates": candidates, "part": "each" } }),
        );
        [0, 1, 2].map(|c| value(&got["candidates"][c]["saves_s"]).expect("a number"))
    };
    let root = |f: &dyn Fn(f64) -> f64, mut low: f64, mut high: f64| {
        for _ in 0..40 {
            let middle = 0.5 * (low + high);
            if f(low) * f(middle) <= 0.0 {
                high = middle
            } else {
                low = middle
            }
        }
        0.5 * (low + high)
    };
    let novice_w = 190.0;
    let fitted = |seconds: f64| {
        root(
            &|share| saves(novice_w, [share, 0.0, 0.0])[0] - seconds,
            -0.6,
            0.0,
        )
    };
    let shares = [
        fitted(DROPS_S[0]),
        fitted(AERO_BARS_S[0]),
        fitted(OPTIMISED_S[0]),
    ];
    for rider in 0..3 {
        let cp_w = root(
            &|cp_w| saves(cp_w, shares)[0] - DROPS_S[rider],
            120.0,
            600.0,
        );
        let [_, aero_bars_s, optimised_s] = saves(cp_w, shares);
        assert!(
            (aero_bars_s / AERO_BARS_S[rider] - 1.0).abs() < SHAPE,
            "{aero_bars_s} for {}",
            AERO_BARS_S[rider]
        );
        assert!(
            (optimised_s / OPTIMISED_S[rider] - 1.0).abs() < SHAPE,
            "{optimised_s} for {}",
            OPTIMISED_S[rider]
        );
    }
}

#[test]
fn a_gain_counts_its_chance_and_what_is_unsure() {
    let change = json!({ "field": "positions.cda_m2", "share": { "value": -0.04, "sd": 0.02 } });
    let with = json!({ "candidates": [{ "changes": [change], "chance": 0.5, "money": 50 }], "part": "each" });
    let gain = &answer("next-gain", &json!({ "with": with }))["candidates"][0];
    let (saves, average) = (&gain["saves_s"], &gain["expected_s"]);
    let number = |of: &Value| of.as_f64().expect("a number");
    let (m, s) = (number(&saves["value"]), number(&saves["sd"]));
    assert!((number(&average["value"]) - 0.5 * m).abs() < ROUNDING_S);
    assert!((number(&average["sd"]) - (0.5 * s * s + 0.25 * m * m).sqrt()).abs() < ROUNDING_S);
    assert!((number(&gain["expected_s_per_money"]) - 0.01 * m).abs() < ROUNDING_S);
    // Half of the saving for each standard deviation of the amount, and a little for the rider's own numbers.
    assert!(s > 0.48 * m && s < 0.6 * m, "{s} of {m}");
}

#[test]
fn the_usual_candidates_name_what_they_rest_on() {
    let sources: Vec<&str> = fasterby_core::sources::SOURCES
        .iter()
        .map(|source| source.key)
        .collect();
    for standing in ["trained", "new"] {
        let got = answer(
            "next-gain",
            &json!({ "with": { "standing": standing, "part": "each" } }),
        );
        for gain in list(&got["candidates"]) {
            let candidate = &gain["candidate"];
            let source = candidate["source"].as_str().expect("a text");
            assert!(
                source.is_empty() || sources.contains(&source),
                "{candidate}"
            );
            assert!(
                candidate["evidence"] != "published" || !source.is_empty(),
                "{candidate}"
            );
            assert_ne!(candidate["note"], "");
        }
    }
}

#[test]
fn what_is_wrong_with_a_candidate_is_named() {
    let with =
        |changes: Value| json!({ "with": { "candidates": [{ "changes": changes }] } }).to_string();
    let named = |changes: Value| refused("next-gain", &with(changes))["field"].clone();
    assert_eq!(named(json!([])), "with.candidates[0].changes");
    assert_eq!(named(json!([{}])), "with.candidates[0].changes[0]");
    assert_eq!(
        named(json!([{ "field": "positions.cda_m2" }])),
        "with.candidates[0].changes[0]"
    );
    assert_eq!(
        named(json!([{ "field": "power.legs", "by": 1 }])),
        "with.candidates[0].changes[0].field"
    );
    assert_eq!(
        named(json!([{ "field": "power.cp_w", "by": 1e9 }])),
        "with.candidates[0].changes[0].by"
    );
    assert_eq!(
        named(json!([{ "field": "power.cp_w", "share": 9 }])),
        "with.candidates[0].changes[0].share"
    );
    assert_eq!(
        named(json!([{ "use_position": 3 }])),
        "with.candidates[0].changes[0].use_position"
    );
    let many = json!({ "with": { "candidates": vec![json!({}); 21] } });
    assert_eq!(
        refused("next-gain", &many.to_string())["field"],
        "with.candidates"
    );
    let lopsided = json!({ "with": { "times_ridden": [1, 2] } });
    assert_eq!(
        refused("next-gain", &lopsided.to_string())["field"],
        "with.times_ridden"
    );
    let change = json!([{ "field": "power.cp_w", "by": 1 }]);
    let requiring = |wanted: [&str; 2]| {
        let named = |name: &str, requires: &str| json!({ "name": name, "requires": requires, "changes": change });
        let with = json!({ "candidates": [named("one", wanted[0]), named("two", wanted[1])] });
        refused("next-gain", &json!({ "with": with }).to_string())["field"].clone()
    };
    assert_eq!(requiring(["", "three"]), "with.candidates[1].requires");
    assert_eq!(requiring(["", "two"]), "with.candidates[1].requires");
    assert_eq!(requiring(["two", "one"]), "with.candidates[0].requires");
    let forged = json!({ "with": { "so_far": [-1.0] } });
    assert_eq!(
        refused("next-gain", &forged.to_string())["field"],
        "with.so_far"
    );
}
