//! A request that is right, with a few of its values replaced: it gets past the reader more often than bytes do.

#![no_main]

use fasterby_fuzz::{check, question};
use libfuzzer_sys::arbitrary::{self, Arbitrary};
use libfuzzer_sys::fuzz_target;
use serde_json::{Value, json};

#[derive(Arbitrary, Debug)]
struct Edit {
    at: u16,
    to: To,
}

#[derive(Arbitrary, Debug)]
enum To {
    Scaled(i16),
    Moved(i8),
    Number(f64),
    Whole(i32),
    Text(String),
    Truth(bool),
    Null,
    List,
    Object,
    Gone,
}

/// Every seed of every question, as `tests/hostile.rs` checks.
const SEEDS: &[&str] = &[
    include_str!("../seeds/ask/course-drawn"),
    include_str!("../seeds/ask/course-profile"),
    include_str!("../seeds/ask/course-recorded"),
    include_str!("../seeds/ask/drag-test-recorded"),
    include_str!("../seeds/ask/drag-test-typed"),
    include_str!("../seeds/ask/finish-time-in-an-hour"),
    include_str!("../seeds/ask/finish-time-profile"),
    include_str!("../seeds/ask/finish-time-changing"),
    include_str!("../seeds/ask/finish-time-stopping"),
    include_str!("../seeds/ask/finish-time-simple"),
    include_str!("../seeds/ask/hold-or-fade-in-hours"),
    include_str!("../seeds/ask/hold-or-fade-profile"),
    include_str!("../seeds/ask/hold-or-fade-simple"),
    include_str!("../seeds/ask/leg-room-ankling"),
    include_str!("../seeds/ask/leg-room-frozen"),
    include_str!("../seeds/ask/next-gain-profile"),
    include_str!("../seeds/ask/next-gain-simple"),
    include_str!("../seeds/ask/power-curve-profile"),
    include_str!("../seeds/ask/power-curve-simple"),
    include_str!("../seeds/ask/power-or-drag-profile"),
    include_str!("../seeds/ask/power-or-drag-simple"),
    include_str!("../seeds/ask/ride-plan-bends"),
    include_str!("../seeds/ask/ride-plan-simple"),
    include_str!("../seeds/ask/ride-plan-sitting-up"),
    include_str!("../seeds/ask/ride-plan-stopping"),
    include_str!("../seeds/ask/speed-for-watts-profile"),
    include_str!("../seeds/ask/speed-for-watts-simple"),
    include_str!("../seeds/ask/which-position-in-hours"),
    include_str!("../seeds/ask/which-position-one-guess"),
    include_str!("../seeds/ask/which-position-profile"),
    include_str!("../seeds/ask/which-position-simple"),
];
/// More draws than this cost time and reach nothing new.
const MOST_DRAWS: f64 = 20.0;

/// The paths of all values, inner ones included.
fn paths(value: &Value, path: String, all: &mut Vec<String>) {
    match value {
        Value::Object(fields) => fields.iter().for_each(|(name, inner)| paths(inner, format!("{path}/{name}"), all)),
        Value::Array(items) => items.iter().enumerate().for_each(|(i, inner)| paths(inner, format!("{path}/{i}"), all)),
        _ => {}
    }
    all.push(path);
}

fn apply(request: &mut Value, edit: Edit) {
    let mut all = Vec::new();
    paths(request, String::new(), &mut all);
    let path = &all[usize::from(edit.at) % all.len()];
    if matches!(edit.to, To::Gone)
        && let Some((parent, name)) = path.rsplit_once('/')
        && let Some(fields) = request.pointer_mut(parent).and_then(Value::as_object_mut)
    {
        fields.remove(name);
        return;
    }
    let Some(value) = request.pointer_mut(path) else { return };
    let number = value.as_f64();
    *value = match edit.to {
        To::Scaled(by) => number.map_or(Value::Null, |n| json!(n * f64::from(by) / 1024.0)),
        To::Moved(by) => number.map_or(Value::Null, |n| json!(n + f64::from(by))),
        To::Number(number) => json!(number),
        To::Whole(number) => json!(number),
        To::Text(text) => json!(text),
        To::Truth(truth) => json!(truth),
        To::Null | To::Gone => Value::Null,
        To::List => json!([]),
        To::Object => json!({}),
    };
    if let Some(draws) = request.pointer_mut("/with/draws")
        && draws.as_f64().is_some_and(|n| n > MOST_DRAWS)
    {
        *draws = json!(MOST_DRAWS as u32);
    }
}

fuzz_target!(|input: (u8, Vec<Edit>)| {
    let (pick, edits) = input;
    let seed = SEEDS[usize::from(pick) % SEEDS.len()];
    let mut request: Value = serde_json::from_str(&seed[1..]).expect("seeds are JSON");
    edits.into_iter().take(12).for_each(|edit| apply(&mut request, edit));
    check(question(seed.as_bytes()[0]), &request.to_string());
});
