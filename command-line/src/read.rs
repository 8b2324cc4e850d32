//! One recording on the command line: what was read of a file, alone on standard output.

use crate::Outcome;
use fasterby_recordings::{Error, MOST_BYTES, Message, Reader, Recording, Value};
use flate2::read::MultiGzDecoder;
use serde_json::{Map, json};
use std::fs::File;
use std::io::{Read, Write};
use std::path::Path;
use std::process::ExitCode;

/// The exit code for a file that is refused with a named error.
pub const REFUSED: u8 = 2;
const GZIP_MARK: [u8; 2] = [0x1f, 0x8b];
const PIECE_BYTES: usize = 64 << 10;

/// Prints what a file holds, or why it is not read.
pub fn read(path: &Path) -> Outcome<ExitCode> {
    let Some(read) = recording_of(path)? else {
        return Ok(ExitCode::from(REFUSED));
    };
    let (text, code) = match read {
        Ok(recording) => (shown(&recording), ExitCode::SUCCESS),
        Err(error) => (refusal(&error), ExitCode::from(REFUSED)),
    };
    writeln!(std::io::stdout(), "{text}")
        .map_err(|error| format!("The recording cannot be written to standard output: {error}."))?;
    Ok(code)
}

/// The recording of a file, or why it is not read; `None` where there is no such file, which is said on standard error.
pub fn recording_of(path: &Path) -> Outcome<Option<Result<Recording, Error>>> {
    let cannot = |error: std::io::Error| format!("`{}` cannot be read: {error}.", path.display());
    let mut file = match File::open(path) {
        Ok(file) => file,
        Err(error) => {
            eprintln!("{}", cannot(error));
            return Ok(None);
        }
    };
    if file.metadata().is_ok_and(|about| about.is_dir()) {
        eprintln!("`{}` is a folder. Name one file in it.", path.display());
        return Ok(None);
    }
    let mut begin = Vec::new();
    Read::by_ref(&mut file)
        .take(GZIP_MARK.len() as u64)
        .read_to_end(&mut begin)
        .map_err(cannot)?;
    let packed = begin == GZIP_MARK;
    let whole = begin.as_slice().chain(file);
    if packed {
        recording(MultiGzDecoder::new(whole), |_| Ok(Error::packing_broken()))
    } else {
        recording(whole, |error| Err(cannot(error)))
    }
    .map(Some)
}

/// The recording in what is read; `failed` says whose fault it is when reading fails.
fn recording(
    mut bytes: impl Read,
    failed: impl Fn(std::io::Error) -> Outcome<Error>,
) -> Outcome<Result<Recording, Error>> {
    let mut reader = Reader::default();
    let mut piece = vec![0; PIECE_BYTES];
    let mut left = MOST_BYTES + 1;
    while left > 0 {
        let length = match bytes.read(&mut piece) {
            Ok(length) => length,
            Err(error) => return failed(error).map(Err),
        };
        if length == 0 {
            break;
        }
        if let Err(error) = reader.push(&piece[..length]) {
            return Ok(Err(error));
        }
        left = left.saturating_sub(length as u64);
    }
    Ok(reader.finish())
}

fn shown(recording: &Recording) -> serde_json::Value {
    let summary = recording.summary();
    // A number that is none is null in JSON.
    json!({
        "kind": recording.kind.name(),
        "records": recording.records,
        "elapsed_s": summary.elapsed_s,
        "distance_m": summary.distance_m,
        "climb_m": summary.climb_m,
        "mean_power_w": summary.mean_power_w,
        "laps": (!recording.laps.is_empty()).then_some(recording.laps.len()),
        "notes": recording.notes.iter().map(message).collect::<Vec<_>>(),
    })
}

pub fn refusal(error: &Error) -> serde_json::Value {
    let mut refused = message(&error.message);
    refused["kind"] = json!("recording");
    refused["field"] = json!("");
    let place = [
        ("byte", error.place.byte),
        ("line", error.place.line),
        ("record", error.place.record),
    ];
    let known: Map<_, _> = place
        .into_iter()
        .filter_map(|(name, at)| Some((name.to_string(), json!(at?))))
        .collect();
    refused["place"] = json!(known);
    refused
}

/// `{ text, values, message }`, as the core writes its own.
fn message(message: &Message) -> serde_json::Value {
    let value = |value: &Value| match value {
        Value::Count(count) => json!(count),
        Value::Text(text) => json!(text),
        Value::Quantity { kind, value } => json!({ "kind": kind, "value": value }),
    };
    let values: Map<_, _> = message
        .values
        .iter()
        .map(|(name, given)| (name.to_string(), value(given)))
        .collect();
    json!({ "text": message.text, "values": values, "message": message.to_string() })
}

#[cfg(test)]
mod tests {
    use super::*;

    const TABLE: &[u8] = b"time_s,distance_m,power_w\n0,0,200\n1,10,\n2,20,220\n";

    fn read_of(bytes: &[u8]) -> Outcome<Result<Recording, Error>> {
        recording(bytes, |error| Err(error.to_string()))
    }

    #[test]
    fn what_a_file_lacks_is_null() {
        let shown = shown(&read_of(TABLE).unwrap().unwrap());
        assert_eq!(shown["mean_power_w"], 210.0);
        assert_eq!(shown["distance_m"], 20.0);
        assert!(shown["climb_m"].is_null() && shown["laps"].is_null());
        assert_eq!(shown["notes"][0]["text"], "speed_from_distance");
    }

    #[test]
    fn a_folder_and_a_file_that_is_not_there_are_refused() {
        let refused = format!("{:?}", ExitCode::from(REFUSED));
        for path in [".", "no-such-recording.fit"] {
            let code = read(Path::new(path)).expect("a code");
            assert_eq!(format!("{code:?}"), refused, "{path}");
        }
    }

    #[test]
    fn a_refusal_has_a_name_and_a_sentence() {
        let refusal = refusal(&read_of(b"").unwrap().unwrap_err());
        assert_eq!(refusal["text"], "empty");
        assert_eq!(refusal["message"], "The file is empty.");
    }
}
