//! The bindings between the page and the readers of recordings: nothing is computed here.
//!
//! It runs in a worker, where a file may be read synchronously. The module reads the browser's `Blob` in pieces, so that JavaScript
//! never holds the whole file. Columns are returned as `Float64Array`.

use fasterby_recordings::{
    COLUMNS, Error, MOST_BYTES, Message, OutlinePoint, Reader, Recording, Span, Value,
};
use js_sys::{Array, Float64Array, Function, Object, Reflect, Uint8Array};
use wasm_bindgen::prelude::*;
use web_sys::{Blob, FileReaderSync};

/// What is read at once.
const PIECE_BYTES: f64 = 1_048_576.0;

/// Reads a recording: `{ kind, records, columns, laps, rounds, outline, stops, notes, summary, is_surveyed }`. `progress` is called with the share of the
/// file that was read, from 0 to 1.
///
/// # Errors
/// Throws `{ kind, field, text, values, place }`.
#[wasm_bindgen(js_name = readRecording, unchecked_return_type = "any")]
pub fn read_recording(file: &Blob, progress: &Function) -> Result<JsValue, JsValue> {
    let bytes = file.size();
    if bytes > most_bytes() {
        return Err(thrown(&Error::too_large()));
    }
    let files = FileReaderSync::new()?;
    let mut reader = Reader::default();
    let mut at = 0.0;
    while at < bytes {
        let end = bytes.min(at + PIECE_BYTES);
        let piece = file.slice_with_f64_and_f64(at, end)?;
        let buffer = files
            .read_as_array_buffer(&piece)
            .map_err(|_| thrown(&Error::file_gone()))?;
        reader
            .push(&Uint8Array::new(&buffer).to_vec())
            .map_err(|error| thrown(&error))?;
        at = end;
        progress.call1(&JsValue::NULL, &(at / bytes).into())?;
    }
    object(&reader.finish().map_err(|error| thrown(&error))?)
}

/// The largest file that is read, in bytes; of a compressed one, of what it holds.
#[wasm_bindgen(js_name = mostBytes)]
pub fn most_bytes() -> f64 {
    MOST_BYTES as f64
}

fn object(recording: &Recording) -> Result<JsValue, JsValue> {
    let columns = Object::new();
    for (column, name) in COLUMNS {
        let values = Float64Array::from(recording.columns.get(column));
        set(&columns, name, &values)?;
    }
    let summary = recording.summary();
    let figures = Object::new();
    for (name, value) in [
        ("elapsed_s", summary.elapsed_s),
        ("distance_m", summary.distance_m),
        ("climb_m", summary.climb_m),
        ("mean_power_w", summary.mean_power_w),
    ] {
        let value = if value.is_nan() {
            JsValue::NULL
        } else {
            value.into()
        };
        set(&figures, name, &value)?;
    }
    let notes: Array = recording
        .notes
        .iter()
        .map(message)
        .collect::<Result<_, _>>()?;
    let read = Object::new();
    set(&read, "kind", &recording.kind.name().into())?;
    set(&read, "records", &(recording.records as f64).into())?;
    set(&read, "columns", &columns)?;
    set(&read, "laps", &spans(&recording.laps)?.into())?;
    set(&read, "rounds", &spans(&recording.rounds)?.into())?;
    let place = |place: fn(&OutlinePoint) -> f64| {
        let values: Vec<f64> = recording.outline.iter().map(place).collect();
        Float64Array::from(values.as_slice())
    };
    let outline = Object::new();
    set(&outline, "time_s", &place(|point| point.time_s))?;
    set(&outline, "east_m", &place(|point| point.east_m))?;
    set(&outline, "north_m", &place(|point| point.north_m))?;
    set(&read, "outline", &outline.into())?;
    set(&read, "stops", &spans(&recording.stops)?.into())?;
    set(&read, "notes", &notes)?;
    set(&read, "summary", &figures)?;
    set(&read, "is_surveyed", &recording.is_surveyed.into())?;
    Ok(read.into())
}

fn spans(spans: &[Span]) -> Result<Array, JsValue> {
    let object = |span: &Span| {
        let object = Object::new();
        set(&object, "from_s", &span.from_s.into())?;
        set(&object, "to_s", &span.to_s.into())?;
        Ok(object)
    };
    spans.iter().map(object).collect()
}

fn message(message: &Message) -> Result<Object, JsValue> {
    let values = Object::new();
    for (name, value) in &message.values {
        let value = match value {
            Value::Count(count) => (*count as f64).into(),
            Value::Text(text) => text.into(),
            Value::Quantity { kind, value } => {
                let quantity = Object::new();
                set(&quantity, "kind", &(*kind).into())?;
                set(&quantity, "value", &(*value).into())?;
                quantity.into()
            }
        };
        set(&values, name, &value)?;
    }
    let object = Object::new();
    set(&object, "text", &message.text.into())?;
    set(&object, "values", &values)?;
    Ok(object)
}

fn thrown(error: &Error) -> JsValue {
    refusal(error).unwrap_or_else(|_| error.message.text.into())
}

fn refusal(error: &Error) -> Result<JsValue, JsValue> {
    let object = message(&error.message)?;
    let place = Object::new();
    for (name, at) in [
        ("byte", error.place.byte),
        ("line", error.place.line),
        ("record", error.place.record),
    ] {
        if let Some(at) = at {
            set(&place, name, &(at as f64).into())?;
        }
    }
    set(&object, "kind", &"recording".into())?;
    set(&object, "field", &"".into())?;
    set(&object, "place", &place)?;
    Ok(object.into())
}

fn set(object: &Object, name: &str, value: &JsValue) -> Result<(), JsValue> {
    Reflect::set(object, &name.into(), value).map(|_| ())
}
