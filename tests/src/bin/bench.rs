//! Native timings beside the bounds they are held to: medians over many batches, for `cargo xtask bench`.

use std::hint::black_box;
use std::time::Instant;

use fasterby_core::air::{RoadWind, Wind};
use fasterby_core::columns::{Columns, Samples};
use fasterby_core::effort::{Effort, paced};
use fasterby_core::fields::{MOST_EVENTS, MOST_POINTS, MOST_YAW_ROWS};
use fasterby_core::integrated::{Integrated, Setup, time_s};
use fasterby_core::lap::Lap;
use fasterby_core::questions::which_position::MOST_CHOICES;
use fasterby_core::recording::{Recording, Rules};
use fasterby_core::resistance::{DragShape, Stretch, slope};
use fasterby_core::scenario::Scenario;
use fasterby_tests::altered::read_in_pieces;
use fasterby_tests::made_rides::{csv, fit, gpx, tcx};
use serde_json::{Value, json};
use std::path::PathBuf;
use std::rc::Rc;

/// What is timed: a name, the bound in seconds, how many batches of how many calls, and the call.
struct Row {
    name: String,
    bound_s: f64,
    batches: usize,
    calls: u32,
    call: Box<dyn FnMut()>,
}

/// Batches of what is quick, and of what takes long.
const BATCHES: usize = 31;
const LONG_BATCHES: usize = 11;
const HEAVY_BATCHES: usize = 3;

fn main() {
    println!(
        "{:<7}{:<52}{:>12}{:>12}{:>9}",
        "row", "native, median of many batches", "measured", "bound", "ratio"
    );
    let all = [
        steady(),
        rides(),
        answers(),
        draws(),
        plans(),
        laps(),
        recordings(),
        heaviest_requests(),
    ];
    let rows: Vec<Row> = all.into_iter().flatten().collect();
    let count = rows.len();
    for (at, row) in rows.into_iter().enumerate() {
        measure(&format!("{}/{count}", at + 1), row);
    }
    beside_ipopt();
}

fn row<T>(
    name: impl Into<String>,
    bound_s: f64,
    (batches, calls): (usize, u32),
    mut call: impl FnMut() -> T + 'static,
) -> Row {
    Row {
        name: name.into(),
        bound_s,
        batches,
        calls,
        call: Box::new(move || {
            black_box(call());
        }),
    }
}

fn steady() -> Vec<Row> {
    let flat = setup(&json!({}));
    let calm = (RoadWind::default(), slope(0.0));
    let crosswind = RoadWind {
        head_m_s: 2.0,
        cross_m_s: 1.5,
    };
    [
        ("steady speed, calm", calm),
        ("steady speed, crosswind and hill", (crosswind, slope(0.01))),
    ]
    .into_iter()
    .map(|(name, (wind, grade))| {
        // Kept for as long as the program runs, so that the call holds the stretch alone.
        let machine = Box::leak(Box::new(flat.machine));
        let shape = Box::leak(Box::new(DragShape::default()));
        let stretch = Stretch::new(machine, shape, 1.2, wind, grade);
        let mut next_w = changing_w();
        row(name, 150e-9, (BATCHES, 1000), move || {
            stretch.speed_m_s(next_w(), 0.25)
        })
    })
    .collect()
}

/// Another power at each call, so that nothing is known before.
fn changing_w() -> impl FnMut() -> f64 {
    let mut watts = 100.0;
    move || {
        watts = if watts > 400.0 { 100.0 } else { watts + 1.0 };
        watts
    }
}

fn rides() -> Vec<Row> {
    let windy = json!({"course": {"out_and_back": true, "bearing_deg": 40.0}, "conditions": {"wind_speed_m_s": 4.0}});
    let ride = |name, scenario: Value, calls| {
        let setup = setup(&scenario);
        let mut next_w = changing_w();
        row(name, 100e-6, (BATCHES, calls), move || {
            ride_s(&setup, next_w())
        })
    };
    let even = |name, scenario: Value| {
        let setup = setup(&scenario);
        row(name, 2e-3, (BATCHES, 5), move || even_s(&setup))
    };
    vec![
        ride("finish time, flat, standing start", json!({}), 20),
        ride("finish time, windy out and back", windy, 20),
        ride("finish time, 1,000 points", profile(1000, 40_000.0), 5),
        even("best even effort, flat", json!({})),
        even("best even effort, 1,000 points", profile(1000, 40_000.0)),
    ]
}

/// A row that asks a question, its request made before.
fn asks(
    name: impl Into<String>,
    bound_s: f64,
    counts: (usize, u32),
    question: &'static str,
    request: &Value,
) -> Row {
    let request = request.to_string();
    row(name, bound_s, counts, move || answered(question, &request))
}

fn answers() -> Vec<Row> {
    questions()
        .into_iter()
        .map(|(question, how, with)| {
            let request = json!({ "scenario": demo(), "with": with });
            asks(
                format!("ask {question}{how}"),
                16e-3,
                (BATCHES, 3),
                question,
                &request,
            )
        })
        .collect()
}

fn draws() -> Vec<Row> {
    let drawn = json!({ "draws": 10_000, "effort": { "kind": "power", "power_w": 250.0 } });
    let twenty = json!({ "scenario": demo(), "with": { "candidates": twenty_candidates() } });
    let hundred = json!({ "scenario": profile(100, 40_000.0), "with": drawn });
    let six = json!({ "scenario": six_positions(), "with": { "draws": 10_000 } });
    let simple = json!({ "scenario": demo(), "with": drawn });
    let long = |name, bound_s, question, request| {
        asks(name, bound_s, (LONG_BATCHES, 1), question, request)
    };
    vec![
        long(
            "next gain, 20 candidates, 4 events",
            300e-3,
            "next-gain",
            &twenty,
        ),
        long(
            "10,000 draws, power or drag, 100 segments",
            150e-3,
            "power-or-drag",
            &hundred,
        ),
        long(
            "10,000 draws, six positions, four events",
            300e-3,
            "which-position",
            &six,
        ),
        long(
            "10,000 draws, power or drag, out and back",
            150e-3,
            "power-or-drag",
            &simple,
        ),
    ]
}

/// The fastest plan and all that is worked out beside it.
fn plans() -> Vec<Row> {
    [(400, 40_000.0, 150e-3), (1800, 180_000.0, 1.0)]
        .map(|(points, distance_m, bound_s): (usize, f64, f64)| {
            let name = format!("ride plan, {:.0} km at 100 m", distance_m / 1000.0);
            let mut scenario = profile(points, distance_m);
            scenario["power"] =
                json!({ "cp_w": 260, "w_prime_j": 18000, "long_ride_loss_share": 0.09 });
            let request = json!({ "scenario": scenario });
            asks(name, bound_s, (LONG_BATCHES, 1), "ride-plan", &request)
        })
        .into()
}

/// What a ride plan takes beside what IPOPT takes for its fastest plan alone, on the same road in this run. Needs the Python of the
/// oracles, which `cargo xtask bench` names.
fn beside_ipopt() {
    let Some(python) = std::env::var_os("FASTERBY_ORACLE_PYTHON") else {
        return;
    };
    let data: Value = serde_json::from_str(include_str!("../../oracle/data/pacing.json"))
        .expect("the oracle writes JSON");
    let cases = data["cases"].as_array().expect("cases");
    let case = cases
        .iter()
        .find(|case| case["name"] == "rolling, differential")
        .expect("the rolling road");
    let request = case["request"].to_string();
    let started = Instant::now();
    black_box(answered("ride-plan", &request));
    let own_s = started.elapsed().as_secs_f64();
    let printed = std::process::Command::new(python)
        .arg("tests/oracle/pacing.py")
        .output();
    let ipopt_s = printed.ok().and_then(|output| {
        String::from_utf8(output.stdout)
            .ok()?
            .trim()
            .parse::<f64>()
            .ok()
    });
    match ipopt_s {
        Some(ipopt_s) => println!(
            "{:<7}{:<52}{:>12}{:>12}{:>9.4}",
            "",
            "ride plan beside IPOPT, rolling road of 20 km",
            engineering(own_s),
            engineering(ipopt_s),
            own_s / ipopt_s
        ),
        None => println!("IPOPT could not be timed: `tests/oracle/pacing.py` printed no number."),
    }
}

fn laps() -> Vec<Row> {
    let recording = long_recording(100_000);
    vec![row(
        "20 recordings of 100,000 samples, reduced",
        2.0,
        (LONG_BATCHES, 1),
        move || (0..20).map(|_| reduced(&recording)).sum::<f64>(),
    )]
}

fn heaviest_requests() -> Vec<Row> {
    [(true, "tight bends"), (false, "no bends")]
        .into_iter()
        .flat_map(|(bends, road)| {
            ["which-position", "next-gain"].map(|question| {
                let name = format!("ask {question}, as much as is read, {road}");
                let request = json!({ "scenario": heaviest(bends) });
                asks(name, 2.0, (HEAVY_BATCHES, 1), question, &request)
            })
        })
        .collect()
}

/// A ride of a hundred thousand records in each kind of file.
fn recordings() -> Vec<Row> {
    const RECORDS: usize = 100_000;
    // The measurements in the browser read the same files.
    let folder = std::env::var_os("FASTERBY_RIDES").map(PathBuf::from);
    [
        ("FIT", fit(RECORDS, false)),
        ("GPX", gpx(RECORDS).into_bytes()),
        ("TCX", tcx(RECORDS).into_bytes()),
        ("CSV", csv(RECORDS).into_bytes()),
    ]
    .into_iter()
    .map(|(kind, bytes)| {
        if let Some(folder) = &folder {
            let file = folder.join(format!("ride.{}", kind.to_lowercase()));
            std::fs::create_dir_all(folder)
                .and_then(|()| std::fs::write(file, &bytes))
                .expect("a ride is written");
        }
        let name = format!("100,000 records, {kind}");
        row(name, 1.0, (HEAVY_BATCHES, 1), move || {
            read_in_pieces(&bytes, 65_536).map_or(0, |recording| recording.records)
        })
    })
    .collect()
}

/// Prints a row as soon as it is measured, with how far the measuring is.
fn measure(at: &str, mut row: Row) {
    let mut times: Vec<f64> = (0..row.batches)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..row.calls {
                (row.call)();
            }
            start.elapsed().as_secs_f64() / f64::from(row.calls)
        })
        .collect();
    times.sort_unstable_by(f64::total_cmp);
    let median = times[row.batches / 2];
    println!(
        "{at:<7}{:<52}{:>12}{:>12}{:>9.2}",
        row.name,
        engineering(median),
        engineering(row.bound_s),
        median / row.bound_s
    );
}

fn engineering(seconds: f64) -> String {
    match seconds {
        s if s < 1e-6 => format!("{:.1} ns", s * 1e9),
        s if s < 1e-3 => format!("{:.1} µs", s * 1e6),
        s => format!("{:.2} ms", s * 1e3),
    }
}

fn ride_s(setup: &Setup, power_w: f64) -> f64 {
    time_s(setup, power_w).unwrap_or(f64::NAN)
}

fn even_s(setup: &Setup) -> f64 {
    paced(&Integrated, setup, Effort::Even).map_or(f64::NAN, |paced| paced.time_s)
}

fn answered(question: &str, request: &str) -> usize {
    fasterby_core::ask_json(question, request).map_or(0, |answer| answer.len())
}

/// A ride around a loop, recorded once a second.
fn long_recording(samples: usize) -> Columns {
    let of =
        |number: &dyn Fn(f64) -> f64| Samples((0..samples).map(|i| number(i as f64)).collect());
    Columns {
        time_s: of(&|i| i),
        speed_m_s: of(&|i| 10.0 + (i / 30.0).sin()),
        power_w: of(&|i| 220.0 + 40.0 * (i / 30.0).cos()),
        elevation_m: of(&|i| 5.0 * (i / 25.0).sin()),
        bearing_deg: of(&|i| (2.4 * i) % 360.0),
        ..Columns::default()
    }
}

/// A recording checked, made ready and cut into laps in a wind.
fn reduced(columns: &Columns) -> f64 {
    let rules = Rules {
        braking_m_s2: 0.8,
        stopped_m_s: 1.5,
        accelerating_m_s2: 0.3,
        bridged_s: 5.0,
    };
    columns.check("columns").expect("columns that are right");
    let ready = Recording::new(columns, &rules);
    let wind = Wind::new(2.0, 70.0);
    let lap = |i: usize| Lap::new(&ready, 150.0 * i as f64, 150.0 * (i + 1) as f64, true, wind);
    (0..columns.time_s.0.len() / 150)
        .map(|i| lap(i).sums.air_sum)
        .sum()
}

fn setup(scenario: &Value) -> Setup {
    let scenario: Scenario = serde_json::from_value(scenario.clone()).expect("a scenario");
    let course = Rc::new(scenario.course());
    scenario.setup_on(0, course).expect("a position")
}

/// Rolling hills of up to two percent with a bearing that turns, in wind: invented.
fn profile(points: usize, distance_m: f64) -> Value {
    let point = |i: usize| {
        let share = i as f64 / points as f64;
        json!({ "distance_m": share * distance_m, "elevation_m": 100.0 + 15.0 * (share * 60.0).sin(), "bearing_deg": 360.0 * share - 180.0 })
    };
    let points: Vec<Value> = (0..=points).map(point).collect();
    json!({ "course": { "kind": "profile", "points": points }, "conditions": { "wind_speed_m_s": 4.0, "wind_from_deg": 250.0 } })
}

/// As many positions, rows of their yaw tables, events and points as are read, every position fading.
fn heaviest(bends: bool) -> Value {
    let points: Vec<Value> = (0..MOST_POINTS)
        .map(|i| {
            let mut point = json!({ "distance_m": 10 * i, "elevation_m": 100.0 + 0.5 * (i % 7) as f64, "bearing_deg": 7 * i % 360 });
            if bends {
                point["radius_m"] = json!(8 + i % 5);
            }
            point
        })
        .collect();
    let yaw_table: Vec<Value> = (0..MOST_YAW_ROWS)
        .map(|i| json!({ "yaw_deg": 2 * i, "ratio": 1.0 - 0.002 * i as f64 }))
        .collect();
    let estimated =
        |value: f64, sd: f64| json!({ "value": value, "sd": sd, "source": "estimated" });
    let positions: Vec<Value> = (0..MOST_CHOICES)
        .map(|i| {
            let cda_m2 = 0.22 + 0.002 * i as f64;
            let fade = json!({
                "tired_cda_m2": estimated(cda_m2 + 0.05, 0.01),
                "begins_s": estimated(1800.0, 300.0),
                "complete_s": estimated(5000.0, 300.0),
            });
            json!({ "name": i.to_string(), "cda_m2": estimated(cda_m2, 0.01), "yaw_table": yaw_table, "fade": fade })
        })
        .collect();
    let events: Vec<Value> = (1..=MOST_EVENTS)
        .map(|i| json!({ "name": "", "distance_m": 200_000.0 / i as f64 }))
        .collect();
    json!({
        "positions": positions,
        "events": events,
        "course": { "kind": "profile", "points": points },
        "conditions": { "wind_speed_m_s": 5, "wind_from_deg": 30 },
    })
}

/// Twenty changes of many kinds, two of them in one group: invented.
fn twenty_candidates() -> Vec<Value> {
    let share = |field: &str, share: f64| json!({ "field": field, "share": { "value": share, "sd": 0.3 * share.abs() } });
    let drag = (0..9).map(|i| vec![share("positions.cda_m2", -0.005 - 0.004 * f64::from(i))]);
    let lower = (1..4).map(|i| {
        let step = f64::from(i);
        vec![
            share("positions.cda_m2", -0.012 * step),
            share("power.cp_w", -0.006 * step),
        ]
    });
    let training = (1..4).map(|i| vec![share("power.cp_w", 0.012 * f64::from(i))]);
    let rolling = (1..3).map(|i| vec![share("bike.rolling_coefficient", -0.06 * f64::from(i))]);
    let others = [
        vec![share("bike.drivetrain_efficiency", 0.004)],
        vec![share("rider.total_mass_kg", -0.012)],
        vec![json!({ "use_position": 0 })],
    ];
    let all = drag
        .chain(lower)
        .chain(training)
        .chain(rolling)
        .chain(others);
    let candidate = |(i, changes): (usize, Vec<Value>)| {
        json!({
            "changes": changes,
            "chance": 0.4 + 0.03 * i as f64,
            "money": 17.0 * ((7 * i) % 11) as f64,
            "hours_once": 1.5 * ((5 * i) % 7) as f64,
            "group": if i == 3 || i == 5 { "helmet" } else { "" },
        })
    };
    all.enumerate().map(candidate).collect()
}

fn demo() -> Value {
    json!({
        "positions": [
            { "cda_m2": { "value": 0.228, "sd": 0.008 }, "fade": {}, "cp_factor": { "value": 0.98, "sd": 0.01 } },
            { "cda_m2": { "value": 0.242, "sd": 0.008 } }
        ],
        "riding_position": 1,
        "power": { "long_ride_loss_w": { "value": 22.0, "sd": 10.0, "source": "typical" } },
        "efforts": efforts(),
        "course": { "out_and_back": true, "bearing_deg": 90.0 },
        "conditions": { "wind_speed_m_s": { "value": 3.0, "sd": 1.0 }, "wind_from_deg": 250.0 }
    })
}

/// Six efforts of one rider: invented.
fn efforts() -> Vec<Value> {
    [
        (60, 520),
        (180, 385),
        (300, 352),
        (720, 318),
        (1200, 306),
        (3600, 282),
    ]
    .into_iter()
    .map(|(duration_s, power_w)| json!({ "duration_s": duration_s, "power_w": power_w }))
    .collect()
}

/// Six positions, two of which fade and one lapses, for the four usual events in wind.
fn six_positions() -> Value {
    let mut scenario = demo();
    let position = |i: u32| {
        json!({ "cda_m2": { "value": 0.25 - 0.004 * f64::from(i), "sd": 0.006 },
            "cp_factor": { "value": 1.0 - 0.01 * f64::from(i), "sd": 0.01 } })
    };
    let mut positions: Vec<Value> = (0..6).map(position).collect();
    positions[3]["lapses"] = json!([{ "share": 0.1, "cda_m2": 0.26 }]);
    positions[4]["fade"] = json!({});
    positions[5]["fade"] = json!({});
    scenario["positions"] = Value::Array(positions);
    scenario
}

/// Questions, how the ride is paced where that matters, and their own parts.
fn questions() -> [(&'static str, &'static str, Value); 8] {
    [
        ("speed-for-watts", "", json!({ "power_w": 250.0 })),
        (
            "power-or-drag",
            ", given power",
            json!({ "effort": { "kind": "power", "power_w": 250.0 } }),
        ),
        (
            "power-or-drag",
            ", even effort",
            json!({ "effort": { "kind": "even" } }),
        ),
        ("finish-time", "", json!({ "effort": { "kind": "even" } })),
        (
            "hold-or-fade",
            "",
            json!({ "low": 0, "steady": 1, "effort": { "kind": "even" } }),
        ),
        ("power-curve", "", json!({})),
        ("which-position", "", json!({})),
        ("leg-room", "", json!({})),
    ]
}
