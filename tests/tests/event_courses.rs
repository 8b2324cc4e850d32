//! Events with courses of their own: each is ridden as if its course were the scenario's, and the others are not touched.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::fields;
use fasterby_core::scenario::{Course, Scenario};
use fasterby_tests::{answer, refused, value};
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Value, json};

/// The same ride by another way to write it ends at rounding.
const SAME: f64 = 1e-9;
/// Two questions solve for the same best even effort, each to its own accuracy; the coarser promises 1e-7.
const SAME_EFFORT: f64 = 2e-7;
/// A standard deviation by steady speeds, which settle from different first guesses, is good to a hundredth of itself.
const SAME_DOUBT: f64 = 0.01;

/// Steady speeds settle as they are asked again, so that rides of events before leave a trace in what is uncertain: far below a
/// hundredth of a second.
const SETTLED: f64 = 1e-5;

/// Questions that answer for all events at once.
const OF_ALL_EVENTS: [&str; 3] = ["which-position", "next-gain", "power-curve"];
/// Questions that ride one, if asked.
const OF_ONE_EVENT: [&str; 2] = ["finish-time", "hold-or-fade"];

fn list(of: &Value) -> &[Value] {
    of.as_array().map_or(&[], Vec::as_slice)
}

fn number(of: &Value) -> f64 {
    value(of).unwrap_or_else(|| panic!("{of} is no number"))
}

/// A windy day, two positions of which one fades, and a power that is uncertain.
fn rider() -> Value {
    json!({
        "positions": [
            { "cda_m2": { "value": 0.24, "sd": 0.005 }, "fade": { "tired_cda_m2": 0.27, "begins_s": 1200, "complete_s": 2400 } },
            { "cda_m2": { "value": 0.26, "sd": 0.005 } },
        ],
        "power": { "cp_w": { "value": 265, "sd": 5 }, "altitude_loss": "published" },
        "conditions": { "wind_speed_m_s": 4, "wind_from_deg": 220 },
        "efforts": [{ "duration_s": 300, "power_w": 330 }, { "duration_s": 1200, "power_w": 280 }],
    })
}

fn with(mut scenario: Value, part: &str, held: Value) -> Value {
    scenario[part] = held;
    scenario
}

/// What a question is asked with so that everything in its answer is there.
fn details(question: &str) -> Value {
    match question {
        "which-position" => json!({ "distance_m": 20_000, "draws": 50 }),
        "next-gain" => json!({ "candidates": candidates() }),
        "hold-or-fade" => json!({ "draws": 50 }),
        _ => json!({}),
    }
}

fn candidates() -> Value {
    json!([
        { "name": "lighter", "changes": [{ "field": "rider.total_mass_kg", "by": { "value": -3, "sd": 1 } }] },
        { "name": "fitter", "chance": 0.5, "changes": [{ "field": "power.cp_w", "share": 0.03 }] },
        { "name": "the other position", "changes": [{ "use_position": 1 }] },
    ])
}

fn asked(question: &str, scenario: &Value) -> Value {
    answer(
        question,
        &json!({ "scenario": scenario, "with": details(question) }),
    )
}

/// The same on the course of the first event.
fn asked_on_first(question: &str, scenario: &Value) -> Value {
    let mut with = details(question);
    with["event"] = json!(0);
    answer(question, &json!({ "scenario": scenario, "with": with }))
}

/// Every number and word of two answers is the same, but for rounding.
fn assert_same(one: &Value, other: &Value, within: f64, at: &str) {
    match (one, other) {
        (Value::Object(a), Value::Object(b)) => {
            let names =
                |of: &serde_json::Map<String, Value>| of.keys().cloned().collect::<Vec<_>>();
            assert_eq!(names(a), names(b), "{at}");
            for (name, inner) in a {
                assert_same(inner, &b[name], within, &format!("{at}.{name}"));
            }
        }
        (Value::Array(a), Value::Array(b)) => {
            assert_eq!(a.len(), b.len(), "{at}");
            for (i, (inner, other)) in a.iter().zip(b).enumerate() {
                assert_same(inner, other, within, &format!("{at}[{i}]"));
            }
        }
        (Value::Number(_), Value::Number(_)) => {
            let (a, b) = (number(one), number(other));
            assert!((a - b).abs() <= within * a.abs().max(1.0), "{at}: {a}, {b}");
        }
        _ => assert_eq!(one, other, "{at}"),
    }
}

const COURSE_M: f64 = 20_000.0;
const EVENT_M: f64 = 34_000.0;

fn simple(distance_m: f64) -> Value {
    json!({ "kind": "simple", "distance_m": distance_m, "grade": 0.004, "bearing_deg": 70, "out_and_back": true, "turn_radius_m": 8 })
}

/// Hills about a mean elevation, which a longer course of the same slopes has too.
fn hills(distance_m: f64, mean_m: f64) -> Value {
    let points: Vec<Value> = (0..=20)
        .map(|i| {
            let share = f64::from(i) / 20.0;
            let rise_m = [0.0, 0.006, 0.001, -0.007][i as usize % 4] * distance_m / 20.0;
            json!({ "distance_m": share * distance_m, "elevation_m": mean_m + rise_m, "bearing_deg": 11.0 * f64::from(i) })
        })
        .collect();
    let unlevelled = json!({ "kind": "profile", "points": points });
    // About the mean along the road, not that of the points.
    let course: Scenario =
        serde_json::from_value(json!({ "course": unlevelled })).expect("a scenario");
    let off_m = course.altitude_m() - mean_m;
    let mut levelled = unlevelled;
    for point in levelled["points"].as_array_mut().expect("points") {
        point["elevation_m"] = json!(number(&point["elevation_m"]) - off_m);
    }
    levelled
}

/// A scenario whose one event is so long, over the scenario's course or over one of its own.
fn one_event(course: &Value, own: Option<&Value>) -> Value {
    let event = match own {
        Some(own) => json!({ "name": "first", "course": own }),
        None => json!({ "name": "first", "distance_m": EVENT_M }),
    };
    with(
        with(rider(), "course", course.clone()),
        "events",
        json!([event]),
    )
}

#[test]
fn a_course_of_its_own_like_the_scenarios_stretched_gives_the_same_figures() {
    for (course, own) in [
        (simple(COURSE_M), simple(EVENT_M)),
        (hills(COURSE_M, 900.0), hills(EVENT_M, 900.0)),
    ] {
        let (stretched, owned) = (one_event(&course, None), one_event(&course, Some(&own)));
        for question in OF_ALL_EVENTS {
            let mut got = asked(question, &owned);
            let mut usual = asked(question, &stretched);
            for answer in [&mut got, &mut usual] {
                answer["warnings"] = json!([]);
            }
            assert_same(&usual, &got, SAME, question);
        }
        for question in OF_ONE_EVENT {
            let got = asked_on_first(question, &owned);
            let usual = asked_on_first(question, &stretched);
            assert_same(&usual, &got, SAME, question);
            let longer = asked(question, &with(owned.clone(), "course", own.clone()));
            assert_same(&longer, &got, SAME, question);
        }
    }
}

#[test]
fn what_is_uncertain_of_an_events_own_course_is_as_uncertain_as_the_scenarios() {
    let steeper = json!({ "value": 0.004, "sd": 0.001 });
    let (course, own) = (
        with(simple(COURSE_M), "grade", steeper.clone()),
        with(simple(EVENT_M), "grade", steeper),
    );
    let (stretched, owned) = (one_event(&course, None), one_event(&course, Some(&own)));
    for question in OF_ALL_EVENTS {
        let ask = |scenario: &Value| {
            let details = if question == "next-gain" {
                details(question)
            } else {
                json!({})
            };
            answer(question, &json!({ "scenario": scenario, "with": details }))
        };
        let (usual, got) = (ask(&stretched), ask(&owned));
        // Where the scenario's course moves, which-position rides every choice anew, and steady speeds settle again.
        let within = if question == "which-position" {
            SAME_DOUBT
        } else {
            SAME
        };
        assert_same(&usual["events"], &got["events"], within, question);
        assert_same(&usual["candidates"], &got["candidates"], SAME, question);
        assert_same(&usual["best"], &got["best"], SAME, question);
    }
    let named = |answer: &Value| answer["surer"].to_string();
    let got = asked_on_first("finish-time", &owned);
    assert!(named(&got).contains("scenario.events[0].course.grade"));
    let renamed = named(&got).replace("scenario.events[0].course", "scenario.course");
    assert_eq!(renamed, named(&asked_on_first("finish-time", &stretched)));
    // Exactly known, it is surer.
    let exact = one_event(&course, Some(&simple(EVENT_M)));
    for question in ["which-position", "next-gain"] {
        let sd = |scenario: &Value| {
            let event = &asked(question, scenario)["events"][0];
            let time = if question == "next-gain" {
                &event["time_s"]
            } else {
                &event["times"][0]["time_s"]
            };
            number(&time["sd"])
        };
        assert!(sd(&owned) > sd(&exact), "{question}");
    }
}

/// The event's time in the question's answer, in the position that is ridden.
fn event_time(question: &str, got: &Value, event: usize) -> Value {
    let event = &got["events"][event];
    match question {
        "which-position" => event["times"][0]["time_s"].clone(),
        _ => event["time_s"].clone(),
    }
}

#[test]
fn an_event_with_hills_of_its_own_takes_as_long_as_a_ride_over_them() {
    let own = hills(28_000.0, 1_300.0);
    let mut scenario = one_event(&simple(COURSE_M), Some(&own));
    let events = json!([{ "distance_m": 16_000 }, scenario["events"][0]]);
    scenario["events"] = events;
    let ridden = asked("finish-time", &with(scenario.clone(), "course", own));
    for question in ["which-position", "next-gain"] {
        let got = asked(question, &scenario);
        let time = event_time(question, &got, 1);
        assert!(
            (number(&time) / number(&ridden["time_s"]) - 1.0).abs() < SAME_EFFORT,
            "{question}: {time}, {}",
            ridden["time_s"]
        );
        let (sd, own_sd) = (number(&time["sd"]), number(&ridden["time_s"]["sd"]));
        assert!(
            (sd / own_sd - 1.0).abs() < SAME_DOUBT,
            "{question}: {sd}, {own_sd}"
        );
        assert_eq!(
            number(&got["events"][1]["distance_m"]),
            28_000.0,
            "{question}"
        );
    }
    // The curve of two efforts is another than the rider's, so here only the same event by itself can be compared.
    let marked = asked("power-curve", &scenario);
    let alone = asked(
        "power-curve",
        &with(
            with(
                scenario.clone(),
                "course",
                scenario["events"][1]["course"].clone(),
            ),
            "events",
            json!([{ "distance_m": 28_000 }]),
        ),
    );
    assert_same(
        &marked["events"][1]["time_s"],
        &alone["events"][0]["time_s"],
        SAME,
        "power-curve",
    );
}

#[test]
fn the_air_over_an_event_is_that_of_its_own_elevation() {
    let time_s = |mean_m: f64| {
        let scenario = one_event(&simple(COURSE_M), Some(&hills(EVENT_M, mean_m)));
        let high = with(scenario, "power", json!({ "cp_w": 265 }));
        number(&event_time("next-gain", &asked("next-gain", &high), 0))
    };
    // Thinner by an eighth or so, which makes a flat ride faster by some four hundredths at the same watts.
    let faster_by = 1.0 - time_s(1_300.0) / time_s(0.0);
    assert!((0.02..0.05).contains(&faster_by), "{faster_by}");
}

#[test]
fn doubts_of_an_events_own_course_are_said_at_the_event() {
    let mut own = hills(EVENT_M, 1_300.0);
    for point in own["points"].as_array_mut().expect("points") {
        point
            .as_object_mut()
            .expect("a point")
            .remove("bearing_deg");
    }
    let scenario = with(
        one_event(&simple(COURSE_M), Some(&own)),
        "power",
        json!({ "cp_w": 265 }),
    );
    let kinds = |got: &Value, of: &str| -> Vec<String> {
        list(&got["warnings"])
            .iter()
            .filter(|warning| warning["field"] == of)
            .map(|warning| warning["kind"].as_str().expect("a kind").to_owned())
            .collect()
    };
    for question in OF_ALL_EVENTS {
        let got = asked(question, &scenario);
        assert_eq!(
            kinds(&got, "scenario.events[0].course.points"),
            ["no_bearings"],
            "{question}"
        );
        assert_eq!(
            kinds(&got, "scenario.power.altitude_loss"),
            ["thin_air"],
            "{question}"
        );
        let said = got["warnings"].to_string();
        assert!(said.contains("This is at event 1."), "{question}: {said}");
    }
    for question in OF_ONE_EVENT {
        let got = asked_on_first(question, &scenario);
        assert_eq!(
            kinds(&got, "scenario.events[0].course.points"),
            ["no_bearings"],
            "{question}"
        );
        assert_eq!(kinds(&got, "scenario.course.points"), [""; 0], "{question}");
    }
    // A question that rides the scenario's course alone has nothing to say of it.
    let said = asked("finish-time", &scenario)["warnings"].to_string();
    assert!(!said.contains("events"), "{said}");
    // A high course that nothing rides is not doubted where the event lies low.
    let low = with(scenario.clone(), "course", hills(COURSE_M, 1_300.0));
    let low = with(low, "events", json!([{ "course": simple(EVENT_M) }]));
    assert_eq!(
        kinds(
            &asked_on_first("finish-time", &low),
            "scenario.power.altitude_loss"
        ),
        [""; 0]
    );
}

#[test]
fn a_candidate_saves_at_each_event_what_it_saves_where_that_is_the_only_one() {
    // Courses of different numbers: what a candidate changes must be found on each of them.
    let events = json!([
        { "course": hills(18_000.0, 200.0) },
        { "distance_m": 24_000 },
        { "course": { "kind": "simple", "distance_m": 30_000, "bearing_deg": 40 } },
    ]);
    let candidates = json!([
        { "name": "lighter", "changes": [{ "field": "rider.total_mass_kg", "by": -3 }] },
        { "name": "warmer", "changes": [{ "field": "conditions.temperature_c", "by": 8 }] },
        { "name": "smoother", "changes": [{ "field": "bike.rolling_coefficient", "share": -0.1 }] },
        { "name": "lower", "changes": [{ "field": "positions.cda_m2", "share": -0.03 }] },
        { "name": "less of a hill", "changes": [{ "field": "course.grade", "by": -0.002 }] },
    ]);
    let ask = |events: Value| {
        let scenario = with(with(rider(), "course", simple(COURSE_M)), "events", events);
        answer(
            "next-gain",
            &json!({ "scenario": scenario, "with": { "candidates": candidates } }),
        )
    };
    let together = ask(events.clone());
    for (place, event) in list(&events).iter().enumerate() {
        let alone = ask(json!([event]));
        for (one, other) in list(&together["candidates"])
            .iter()
            .zip(list(&alone["candidates"]))
        {
            let (one, other) = (&one["by_event_s"][place], &other["by_event_s"][0]);
            assert_same(one, other, SAME, &format!("event {place}"));
        }
    }
    let saved = |event: usize| number(&together["candidates"][4]["by_event_s"][event]);
    assert_eq!(
        [saved(0), saved(2)],
        [0.0, 0.0],
        "a course of its own has its own slope"
    );
    assert!(saved(1).abs() > 1e-3, "{}", saved(1));
}

#[test]
fn a_rider_who_cannot_climb_an_events_own_course_is_told_where() {
    let wall = json!({ "kind": "simple", "distance_m": 5_000, "grade": 0.25 });
    let mut scenario = with(
        one_event(&simple(COURSE_M), None),
        "bike",
        json!({ "launch_force_n": 100 }),
    );
    scenario["events"] = json!([{ "distance_m": 10_000 }, { "course": wall }]);
    for question in ["which-position", "next-gain"] {
        let error = refused(question, &json!({ "scenario": scenario }).to_string());
        assert_eq!(
            error["field"], "scenario.events[1].course",
            "{question}: {error}"
        );
        assert_eq!(error["kind"], "impossible");
    }
    for question in OF_ONE_EVENT {
        let request = json!({ "scenario": scenario, "with": { "event": 1 } });
        let error = refused(question, &request.to_string());
        assert_eq!(error["kind"], "impossible", "{question}: {error}");
    }
    let headwind = json!({ "wind_speed_m_s": 40, "wind_from_deg": 0 });
    let weak = with(
        with(scenario, "conditions", headwind),
        "events",
        json!([{ "course": { "kind": "simple", "distance_m": 5_000, "grade": 0.01 } }]),
    );
    let power = json!({ "kind": "power", "power_w": 2 });
    for question in OF_ONE_EVENT {
        let request = json!({ "scenario": with(weak.clone(), "bike", json!({})), "with": { "event": 0, "effort": power } });
        let error = refused(question, &request.to_string());
        assert_eq!(
            error["field"], "scenario.events[0].course",
            "{question}: {error}"
        );
    }
}

#[test]
fn what_is_wrong_with_an_events_course_is_named() {
    let refusal = |events: Value| {
        refused(
            "finish-time",
            &json!({ "scenario": { "events": events } }).to_string(),
        )["field"]
            .as_str()
            .expect("a field")
            .to_owned()
    };
    let at = |course: Value| refusal(json!([{ "distance_m": 10_000 }, { "course": course }]));
    let points = |points: Value| json!({ "kind": "profile", "points": points });
    let level = |distance_m: f64| json!({ "distance_m": distance_m, "elevation_m": 10 });
    for (course, part) in [
        (json!({ "slope": 0.1 }), ".slope"),
        (json!({ "grade": 3 }), ".grade"),
        (json!({ "grade": { "value": 0.01, "sd": -1 } }), ".grade.sd"),
        (json!({ "grade": "steep" }), ".grade"),
        (json!({ "distance_m": 10 }), ".distance_m"),
        (json!({ "kind": "spiral" }), ".kind"),
        (json!({ "heading": "north" }), ".heading"),
        (json!({ "points": [level(0.0)] }), ".points"),
        (points(json!([level(0.0)])), ".points"),
        (points(json!([level(0.0), level(50.0)])), ".points"),
        (
            points(json!([level(0.0), level(0.0)])),
            ".points[1].distance_m",
        ),
        (
            points(json!([level(0.0), { "distance_m": 900, "elevation_m": 800 }])),
            ".points[1].elevation_m",
        ),
        (
            points(json!([level(0.0), { "distance_m": 900, "elevation": 8 }])),
            ".points[1].elevation",
        ),
        (
            json!({ "kind": "profile", "grade": 0.1, "points": [level(0.0), level(900.0)] }),
            ".grade",
        ),
        (json!([]), ""),
        (json!(7), ""),
    ] {
        assert_eq!(
            at(course.clone()),
            format!("scenario.events[1].course{part}"),
            "{course}"
        );
    }
    let own = json!({ "kind": "simple", "distance_m": 10_000 });
    assert_eq!(
        refusal(json!([{ "name": "neither" }])),
        "scenario.events[0].distance_m"
    );
    assert_eq!(
        refusal(json!([{ "course": null }])),
        "scenario.events[0].distance_m"
    );
    assert_eq!(
        refusal(json!([{ "distance_m": 10_001.5, "course": own }])),
        "scenario.events[0].distance_m"
    );
    let kept = json!({ "scenario": { "events": [{ "distance_m": 10_000.9, "course": own }] } });
    assert!(answer("finish-time", &kept)["time_s"]["value"].is_number());
    for question in OF_ONE_EVENT {
        let error = refused(
            question,
            &json!({ "scenario": rider(), "with": { "event": 4 } }).to_string(),
        );
        assert_eq!(error["field"], "with.event", "{question}");
    }
}

/// A course of so many points, none of which lies on the line of its neighbours.
fn rough(points: usize) -> Value {
    let point = |i: usize| {
        let elevation_m = 100.0
            + if i.is_multiple_of(2) {
                0.0
            } else {
                2.0 + (i % 7) as f64
            };
        json!({ "distance_m": 40 * i, "elevation_m": elevation_m, "bearing_deg": (37 * i) % 360 })
    };
    json!({ "kind": "profile", "points": (0..points).map(point).collect::<Vec<_>>() })
}

#[test]
fn many_long_courses_of_events_are_refused_or_ridden_over_few_points() {
    let events = |count: usize, points: usize| {
        let event = json!({ "course": rough(points) });
        Value::from(vec![event; count])
    };
    let thousand = json!({ "scenario": { "events": events(1_000, 3) } });
    let error = refused("which-position", &thousand.to_string());
    assert_eq!(
        (&error["kind"], &error["field"]),
        (&json!("too_large"), &json!("scenario.events"))
    );
    let too_many = json!({ "scenario": { "events": events(1, fields::MOST_POINTS + 1) } });
    let error = refused("next-gain", &too_many.to_string());
    assert_eq!(error["field"], "scenario.events[0].course.points");

    let scenario = with(rider(), "events", events(fields::MOST_EVENTS, 2_000));
    for question in OF_ALL_EVENTS {
        let part = if question == "next-gain" {
            json!({ "part": "each" })
        } else {
            json!({})
        };
        let got = answer(question, &json!({ "scenario": scenario, "with": part }));
        assert_eq!(
            list(&got["events"]).len(),
            fields::MOST_EVENTS,
            "{question}"
        );
        let mut ridden = 0;
        for (place, warning) in list(&got["warnings"])
            .iter()
            .filter(|warning| warning["kind"] == "simplified")
            .enumerate()
        {
            let field = format!("scenario.events[{place}].course.points");
            assert_eq!(warning["field"], field, "{question}");
            ridden += warning["values"]["why"]["values"]["after"]
                .as_u64()
                .expect("points");
        }
        // What a question rides over together, or as many points of each as any ride has.
        let most = match question {
            "power-curve" => u64::MAX,
            _ => 6_000,
        };
        assert!(question == "power-curve" || ridden > 0, "{question}");
        assert!(ridden <= most, "{question}: {ridden}");
    }
}

#[test]
fn the_order_of_events_does_not_matter() {
    let courses = (0.0..0.02_f64, 5_000.0..60_000.0_f64, 0.0..1_500.0_f64);
    let mut runner = TestRunner::new_with_rng(
        Config {
            cases: 12,
            failure_persistence: None,
            ..Config::default()
        },
        proptest::test_runner::TestRng::deterministic_rng(
            proptest::test_runner::RngAlgorithm::ChaCha,
        ),
    );
    let tried = runner.run(&(courses, 0..3_usize), |((grade, distance_m, mean_m), turn)| {
        let mut events = vec![
            json!({ "name": "usual", "distance_m": distance_m }),
            json!({ "name": "hills", "course": hills(distance_m.max(10_000.0), mean_m) }),
            json!({ "name": "slope", "course": { "kind": "simple", "distance_m": distance_m, "grade": { "value": grade, "sd": 0.001 } } }),
        ];
        let ask = |events: &[Value]| {
            let scenario = with(with(rider(), "course", simple(COURSE_M)), "events", json!(events));
            ["which-position", "next-gain"].map(|question| {
                let details = if question == "next-gain" { details(question) } else { json!({}) };
                answer(question, &json!({ "scenario": scenario, "with": details }))
            })
        };
        let before = ask(&events);
        events.rotate_left(turn);
        let after = ask(&events);
        for (one, other) in before.iter().zip(&after) {
            let mut turned = list(&one["events"]).to_vec();
            turned.rotate_left(turn);
            assert_same(&Value::from(turned), &other["events"], SETTLED, "events");
        }
        for sum in ["saves_s", "expected_s"] {
            for (one, other) in list(&before[1]["candidates"]).iter().zip(list(&after[1]["candidates"])) {
                assert_same(&one[sum], &other[sum], SETTLED, sum);
            }
        }
        assert_same(&before[1]["best"]["candidates"], &after[1]["best"]["candidates"], SETTLED, "best");
        assert_same(&before[0]["columns"], &after[0]["columns"], SETTLED, "curves");
        Ok(())
    });
    tried.expect("the same answer in any order");
}

#[test]
fn courses_of_events_are_written_as_they_are_read_and_older_scenarios_are_read_as_before() {
    let scenario = with(
        one_event(&simple(COURSE_M), Some(&hills(EVENT_M, 300.0))),
        "fasterby",
        json!(3),
    );
    let read: Scenario = serde_json::from_value(scenario).expect("a scenario");
    assert_eq!(read.check().map(|_| ()), Ok(()));
    let written = serde_json::to_value(&read).expect("JSON");
    assert_eq!(
        serde_json::from_value::<Scenario>(written.clone()).expect("a scenario"),
        read
    );
    assert!(written["events"][0].get("distance_m").is_none());
    assert_eq!(read.events[0].length_m(), EVENT_M);
    assert_eq!(Course::default().length_m(), fields::DISTANCE_M.default);
    let usual = serde_json::to_value(Scenario::default()).expect("JSON");
    assert!(
        list(&usual["events"])
            .iter()
            .all(|event| event.get("course").is_none())
    );
    // Each version adds to the one before: what an older one says still means the same.
    let older = |version: u32| {
        let scenario = with(
            one_event(&simple(COURSE_M), None),
            "fasterby",
            json!(version),
        );
        OF_ALL_EVENTS.map(|question| asked(question, &scenario))
    };
    let now = older(3);
    assert_eq!(older(1), now);
    assert_eq!(older(2), now);
}
