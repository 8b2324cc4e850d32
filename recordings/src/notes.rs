//! What is said of a file, as data: which sentence of the catalogues, and the values in it.
//!
//! The one table of [`MESSAGES`] gives each sentence its name, its values and its English text, and makes a function that
//! takes exactly these values. The page writes it in the reader's language and units; the command line writes the English.

use std::fmt;

/// A value in a message.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// How many, or which.
    Count(u64),
    /// A text of the file.
    Text(String),
    /// A number in its SI unit, with the name of its kind as the core's fields have it.
    Quantity {
        /// What it measures: `distance`, `height`, `clock`, `speed` or `ratio`.
        kind: &'static str,
        /// In the SI unit of its kind.
        value: f64,
    },
}

impl fmt::Display for Value {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Count(count) => write!(f, "{count}"),
            Self::Text(text) => f.write_str(text),
            Self::Quantity { kind, value } => {
                let unit = match *kind {
                    "clock" => " s",
                    "speed" => " m/s",
                    "ratio" => "",
                    _ => " m",
                };
                // Whole numbers: the standard library's writer of decimals costs the module sixteen kilobytes.
                write!(f, "{}{unit}", value.round() as i64)
            }
        }
    }
}

/// A sentence of the catalogues with its values.
#[derive(Clone, Debug, PartialEq)]
pub struct Message {
    /// The name of the sentence in the catalogues.
    pub text: &'static str,
    /// What stands at its placeholders.
    pub values: Vec<(&'static str, Value)>,
}

impl fmt::Display for Message {
    /// The English sentence, its numbers in SI units.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let english = MESSAGES
            .iter()
            .find(|known| known.id == self.text)
            .map_or(self.text, |known| known.english);
        let mut pieces = english.split(['{', '}']);
        // Outside and inside of the braces in turn.
        while let Some(literal) = pieces.next() {
            f.write_str(literal)?;
            let Some(name) = pieces.next() else { break };
            if let Some((_, value)) = self.values.iter().find(|(known, _)| *known == name) {
                value.fmt(f)?;
            }
        }
        Ok(())
    }
}

/// A sentence of the table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sentence {
    /// Its name in the catalogues.
    pub id: &'static str,
    /// Its English text with `{placeholders}`.
    pub english: &'static str,
    /// The names of its placeholders.
    pub placeholders: &'static [&'static str],
}

/// What a function of the table takes for a placeholder of a kind.
macro_rules! taken {
    (Count) => {
        usize
    };
    (Text) => {
        &str
    };
    (Names) => {
        &str
    };
    ($quantity:ident) => {
        f64
    };
}

/// What is kept of it.
macro_rules! kept {
    (Count, $value:expr) => {
        Value::Count($value as u64)
    };
    (Text, $value:expr) => {
        Value::Text(shortened($value))
    };
    // Words of this crate, none of the file.
    (Names, $value:expr) => {
        Value::Text($value.to_owned())
    };
    (Clock, $value:expr) => {
        Value::Quantity {
            kind: "clock",
            value: $value,
        }
    };
    (Distance, $value:expr) => {
        Value::Quantity {
            kind: "distance",
            value: $value,
        }
    };
}

macro_rules! messages {
    ($($id:ident($($name:ident: $kind:tt),*) = $english:literal;)*) => {
        $(
            #[doc = $english]
            pub(crate) fn $id($($name: taken!($kind)),*) -> Message {
                Message { text: stringify!($id), values: vec![$((stringify!($name), kept!($kind, $name))),*] }
            }
        )*
        /// Every sentence.
        pub static MESSAGES: &[Sentence] = &[$(Sentence {
            id: stringify!($id),
            english: $english,
            placeholders: &[$(stringify!($name)),*],
        }),*];
    };
}

/// A text of a file as far as a sentence can hold it.
fn shortened(text: &str) -> String {
    const MOST_SIGNS: usize = 60;
    text.chars()
        .filter(|sign| !sign.is_control())
        .take(MOST_SIGNS)
        .collect()
}

messages! {
    // Why a file is refused.
    empty() = "The file is empty.";
    too_large(most: Count) = "The file is larger than {most} bytes, the most that is read.";
    too_many_records(most: Count) = "The file holds more than {most} records, the most that are read.";
    unknown_kind() = "This is none of the files that are read: FIT, GPX, TCX or CSV.";
    zip_archive() = "This is an archive of files. Unpack it, then open the recording in it.";
    packed_twice() = "The file is still compressed after it was unpacked once. Unpack it, then open it.";
    packing_broken() = "The file is compressed, and what it holds cannot be unpacked.";
    file_gone() = "The file cannot be read any more. Open it again.";
    other_xml(root: Text) = "This XML file holds {root}, which is neither GPX nor TCX.";
    not_xml(line: Count, byte: Count) = "The file begins like XML and does not go on like it: nothing of a ride stands before line {line}, byte {byte}.";
    too_deep(most: Count, line: Count) = "The file nests deeper than {most} levels at line {line}, which no recording does.";
    too_long_piece(line: Count) = "A single piece of the file, which begins at line {line}, is longer than one megabyte. No recording has that.";
    no_records() = "The file could be read, but it holds no recorded points.";
    cut_before_records(byte: Count) = "The file breaks off or is damaged at byte {byte}, before any recorded point.";
    no_known_columns(known: Names) = "No line among the first names at least two known columns, such as {known}.";

    // What is missing.
    no_times() = "Most points have no time, so speeds and durations are not known.";
    no_power() = "The recording has no power.";
    no_elevation() = "The recording has no elevation.";
    no_positions() = "The recording has no positions, so directions are not known.";
    power_missing(count: Count) = "Records without a power are left empty, not taken as zero: {count}.";
    no_distance() = "The recording has no distances, positions or speeds, so it does not say how far you rode.";
    beyond_a_ride(count: Count) = "Values that no ride can have were left out: {count}.";
    unreadable(count: Count, line: Count) = "Values that cannot be read were left out: {count}, the first at line {line}.";
    uneven_lines(count: Count, line: Count) = "Lines that have more or fewer values than there are headings: {count}, the first at line {line}.";

    // What was repaired.
    cut(byte: Count, records: Count) = "The file breaks off or is damaged at byte {byte}. The records before it were read: {records}.";
    not_closed() = "The file was not finished by the device. What it had recorded was read.";
    not_one_piece() = "The file holds several recordings, which were joined in their order.";
    untimed(count: Count) = "Records without a time were left out: {count}.";
    same_time(count: Count) = "Records with the same time as the one before were joined with it: {count}.";
    clock_slipped(count: Count) = "Records with an earlier time than the one before were left out: {count}.";
    clock_set(count: Count) = "Times when the clock was set during the recording, and time is carried on from there: {count}.";
    gaps(count: Count, longest: Clock) = "Nothing was recorded in gaps: {count}, the longest of {longest}.";
    still(count: Count) = "Records have the very position of the one before: {count}.";
    at_zero(count: Count) = "Positions at latitude 0 and longitude 0 were left out: {count}.";
    distance_from_positions() = "The recording has no distances of its own. They were worked out from the positions.";
    distance_from_speed() = "The recording has neither distances nor positions. Distance was worked out from the speed.";
    distance_reset(count: Count) = "Times when the recorded distance began anew and was carried on: {count}.";
    distance_back(count: Count) = "Times when the recorded distance went back and was held there: {count}.";
    jumps(count: Count) = "Steps between positions that are too fast for a bicycle may be errors of the receiver: {count}.";
    speed_from_distance() = "The recording has no speeds of its own. They were worked out from distance and time.";
    parts_left_out(count: Count, distance: Distance) = "The track has several parts: {count}. Between them lie {distance} in straight lines, which are not counted.";
    from_route() = "The file holds a route, not a ride: its points are where it leads.";
    power_by_name() = "Power was taken from a field that an added sensor or program describes.";
    clock_in_minutes() = "The times have two parts. They were read as minutes and seconds, since nearly every point has a time of its own.";
    speed_as_km_h() = "The heading does not say the unit of speed. It was taken as km/h, since it is too high for m/s.";
    distance_as_km() = "The heading does not say the unit of distance. It was taken as km, since it is too low for metres.";
}
