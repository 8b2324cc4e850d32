//! The bindings between the page and the core: nothing is computed here.
//!
//! A request crosses as text, so that every mistake in it is found by the one reader, and its typed arrays beside that; an answer
//! crosses as values of JavaScript, its columns as `Float64Array`.

use fasterby_core::error::{Error, Kind};
use fasterby_core::{Receive, message, questions};
use js_sys::{Array, ArrayBuffer, Float64Array, JSON, Object, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::*;

/// Answers a question: `ask("power-or-drag", { scenario, with })`.
///
/// # Errors
/// Throws `{ kind, field, text, values, min?, max? }`.
#[wasm_bindgen(unchecked_return_type = "any")]
pub fn ask(question: &str, request: &JsValue) -> Result<JsValue, JsValue> {
    let (text, columns) = text_and_columns(request)
        .ok_or_else(|| thrown(&Error::new(Kind::WrongType, "", message::not_data())))?;
    questions::ask_with_columns(question, &text, &columns, Values)
        .map_err(|error| thrown(&error))?
}

/// The request as text, and the typed arrays in it, where the text has `{ "column": N }`. Only recordings have any, so other
/// requests are not looked through.
fn text_and_columns(request: &JsValue) -> Option<(String, Vec<Vec<f64>>)> {
    let mut columns = Vec::new();
    let text = if has_recordings(request) {
        let mut taken = |_: JsValue, value: JsValue| -> JsValue {
            if !ArrayBuffer::is_view(&value) {
                return value;
            }
            let place = Object::new();
            // An object of our own takes any property.
            let _ = Reflect::set(&place, &"column".into(), &(columns.len() as f64).into());
            columns.push(Float64Array::new(&value).to_vec());
            place.into()
        };
        let replacer: ScopedClosure<'_, dyn FnMut(JsValue, JsValue) -> JsValue> =
            ScopedClosure::borrow_mut(&mut taken);
        JSON::stringify_with_replacer(request, replacer.as_ref())
    } else {
        JSON::stringify(request)
    };
    Some((text.ok()?.as_string()?, columns))
}

fn has_recordings(request: &JsValue) -> bool {
    let inside = |value: &JsValue, name: &str| Reflect::get(value, &name.into()).ok();
    inside(request, "with")
        .and_then(|with| inside(&with, "recordings"))
        .is_some_and(|recordings| recordings.is_object())
}

struct Values;

impl Receive for Values {
    type Out = Result<JsValue, JsValue>;
    fn receive<A: Serialize>(self, answer: &A) -> Self::Out {
        let answer = values(answer)?;
        if let Ok(columns) = Reflect::get(&answer, &"columns".into())
            && columns.is_object()
        {
            for name in Object::keys(columns.unchecked_ref::<Object>()) {
                let column = Reflect::get(&columns, &name)?;
                if Array::is_array(&column) {
                    Reflect::set(&columns, &name, &Float64Array::new(&column))?;
                }
            }
        }
        Ok(answer)
    }
}

fn values<A: Serialize + ?Sized>(value: &A) -> Result<JsValue, JsValue> {
    value
        .serialize(&Serializer::json_compatible())
        .map_err(JsValue::from)
}

fn thrown(error: &Error) -> JsValue {
    values(error).unwrap_or_else(|_| JsValue::from_str(error.message.text))
}

/// With the feature `console`, panics print their place in the browser's console.
#[cfg(feature = "console")]
#[wasm_bindgen(start)]
pub fn start() {
    console_error_panic_hook::set_once();
}
