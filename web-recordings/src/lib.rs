//! The bindings between the page and the readers of recordings: nothing is computed here.
//!
//! The browser's own file comes in; its bytes go into the module piece by piece, unpacked by the browser where they are
//! compressed, and are never whole in JavaScript. Columns go out as `Float64Array`.

use fasterby_recordings::{COLUMNS, Error, Message, Reader, Recording, Span, Value};
use js_sys::{Array, Float64Array, Function, Object, Reflect, Uint8Array};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, ReadableStream, ReadableStreamDefaultReader, ReadableWritablePair};

#[wasm_bindgen]
extern "C" {
    /// The browser's own, which `web-sys` does not count as settled yet.
    type DecompressionStream;
    #[wasm_bindgen(constructor, catch)]
    fn new(format: &str) -> Result<DecompressionStream, JsValue>;
}

const GZIP_MARK: [u8; 2] = [0x1f, 0x8b];

/// Reads a recording: `{ kind, records, columns, laps, stops, notes, summary }`. `progress` is called with the share of the
/// file that was read, from 0 to 1, or with null where that is not known.
///
/// # Errors
/// Throws `{ kind, field, text, values, place }`.
#[wasm_bindgen(js_name = readRecording, unchecked_return_type = "any")]
pub async fn read_recording(file: Blob, progress: Function) -> Result<JsValue, JsValue> {
    let packed = begins(&file).await.map_err(|_| gone())? == GZIP_MARK;
    let stream = if packed {
        unpacked(&file)?
    } else {
        file.stream()
    };
    let failed = || {
        if packed {
            thrown(&Error::packing_broken())
        } else {
            gone()
        }
    };
    let reader: ReadableStreamDefaultReader = stream.get_reader().unchecked_into();
    let mut recording = Reader::default();
    let mut bytes = 0.0;
    loop {
        let step = JsFuture::from(reader.read()).await.map_err(|_| failed())?;
        let Ok(piece) = Reflect::get(&step, &"value".into())?.dyn_into::<Uint8Array>() else {
            break;
        };
        bytes += f64::from(piece.length());
        if let Err(error) = recording.push(&piece.to_vec()) {
            drop(reader.cancel());
            return Err(thrown(&error));
        }
        let share = if packed {
            JsValue::NULL
        } else {
            (bytes / file.size()).into()
        };
        progress.call1(&JsValue::NULL, &share)?;
    }
    object(&recording.finish().map_err(|error| thrown(&error))?)
}

/// The first bytes.
async fn begins(file: &Blob) -> Result<Vec<u8>, JsValue> {
    let first = file.slice_with_f64_and_f64(0.0, GZIP_MARK.len() as f64)?;
    let buffer = JsFuture::from(first.array_buffer()).await?;
    Ok(Uint8Array::new(&buffer).to_vec())
}

fn unpacked(file: &Blob) -> Result<ReadableStream, JsValue> {
    let unpacking: ReadableWritablePair = DecompressionStream::new("gzip")?.unchecked_into();
    Ok(file.stream().pipe_through(&unpacking))
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
    set(&read, "stops", &spans(&recording.stops)?.into())?;
    set(&read, "notes", &notes)?;
    set(&read, "summary", &figures)?;
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

fn gone() -> JsValue {
    thrown(&Error::file_gone())
}

fn set(object: &Object, name: &str, value: &JsValue) -> Result<(), JsValue> {
    Reflect::set(object, &name.into(), value).map(|_| ())
}
