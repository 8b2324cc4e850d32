//! The messages of a FIT file, from its bytes: headers, definitions, and the fields of each message as numbers.
//!
//! By the protocol's public description (from memory, tried on real files). Checksums are not looked at: damaged files are
//! read as far as they go.

/// What stands in a header from its eighth byte.
const MARK: &[u8] = b".FIT";
const SHORT_HEADER: usize = 12;
const LONG_HEADER: usize = 14;
/// The two bytes of the checksum behind the messages.
const CHECKSUM: usize = 2;
/// The field that holds the time in every message that has one.
const TIMESTAMP: u8 = 253;

/// What the first byte of a message says.
const HAS_SHORT_TIME: u8 = 0x80;
const IS_DEFINITION: u8 = 0x40;
const HAS_DEVELOPER_FIELDS: u8 = 0x20;
const LOCAL: u8 = 0x0f;
/// A short time is so many seconds of the last whole one.
const SHORT_TIME_S: u32 = 0x1f;

/// Whether these bytes begin a FIT file.
pub(crate) fn is_fit(bytes: &[u8]) -> bool {
    bytes.get(8..SHORT_HEADER) == Some(MARK)
        && matches!(usize::from(bytes[0]), SHORT_HEADER | LONG_HEADER)
}

/// The bytes of one field, and how they are meant.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Field<'a> {
    /// Its number in its message, or among the fields of its developer.
    pub number: u8,
    pub bytes: &'a [u8],
    /// The base type; in a developer's field, which of the developers.
    pub kind: u8,
    pub big_endian: bool,
}

impl Field<'_> {
    /// As a number of its own type.
    pub fn value(&self) -> f64 {
        self.value_as(self.kind)
    }

    /// The first number of a base type in the bytes. Each type has one value that says that there is none.
    pub fn value_as(&self, kind: u8) -> f64 {
        const BYTES: [u8; 17] = [1, 1, 1, 2, 2, 4, 4, 1, 4, 8, 1, 2, 4, 1, 8, 8, 8];
        let kind = kind & 0x1f;
        let Some(bytes) = BYTES
            .get(usize::from(kind))
            .and_then(|length| self.bytes.get(..usize::from(*length)))
        else {
            return f64::NAN;
        };
        let join = |bits: u64, byte: &u8| bits << 8 | u64::from(*byte);
        let bits = if self.big_endian {
            bytes.iter().fold(0, join)
        } else {
            bytes.iter().rev().fold(0, join)
        };
        let unused = 64 - 8 * bytes.len() as u32;
        let largest = u64::MAX >> unused;
        match kind {
            // Signed, of 1, 2, 4 and 8 bytes.
            1 | 3 | 5 | 14 if bits != largest >> 1 => ((bits << unused) as i64 >> unused) as f64,
            8 => finite(f64::from(f32::from_bits(bits as u32))),
            9 => finite(f64::from_bits(bits)),
            // Unsigned, with zero for none.
            10 | 11 | 12 | 16 if bits != 0 => bits as f64,
            0 | 2 | 4 | 6 | 13 | 15 if bits != largest => bits as f64,
            _ => f64::NAN,
        }
    }

    /// As a text.
    pub fn is_named(&self, word: &str) -> bool {
        let text = self.bytes.split(|byte| *byte == 0).next().unwrap_or(&[]);
        text.trim_ascii().eq_ignore_ascii_case(word.as_bytes())
    }
}

fn finite(value: f64) -> f64 {
    if value.is_finite() { value } else { f64::NAN }
}

/// What a definition says of one field.
#[derive(Clone, Copy, Debug)]
struct Layout {
    number: u8,
    length: u8,
    kind: u8,
}

/// How the messages of a local number lie in the bytes.
#[derive(Debug, Default)]
struct Definition {
    message: u16,
    big_endian: bool,
    fields: Vec<Layout>,
    developer_fields: Vec<Layout>,
}

/// A message, still in bytes.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Message<'a> {
    definition: &'a Definition,
    bytes: &'a [u8],
    /// Seconds of the protocol's clock where its first byte gives the time.
    short_time_s: Option<u32>,
}

impl<'a> Message<'a> {
    /// Which message of the global profile.
    pub fn number(&self) -> u16 {
        self.definition.message
    }

    pub fn fields(&self) -> impl Iterator<Item = Field<'a>> + use<'a> {
        laid_out(
            &self.definition.fields,
            self.bytes,
            self.definition.big_endian,
        )
    }

    pub fn developer_fields(&self) -> impl Iterator<Item = Field<'a>> + use<'a> {
        let length: usize = length(&self.definition.fields);
        let bytes = self.bytes.get(length..).unwrap_or(&[]);
        laid_out(
            &self.definition.developer_fields,
            bytes,
            self.definition.big_endian,
        )
    }

    pub fn field(&self, number: u8) -> Option<Field<'a>> {
        self.fields().find(|field| field.number == number)
    }

    /// The value of a field; not a number where it has none.
    pub fn value(&self, number: u8) -> f64 {
        self.field(number).map_or(f64::NAN, |field| field.value())
    }

    /// The time, by the protocol's clock.
    pub fn time_s(&self) -> f64 {
        self.short_time_s
            .map_or_else(|| self.value(TIMESTAMP), f64::from)
    }
}

fn laid_out<'a>(
    fields: &'a [Layout],
    mut bytes: &'a [u8],
    big_endian: bool,
) -> impl Iterator<Item = Field<'a>> + use<'a> {
    fields.iter().map_while(move |layout| {
        let (of_field, rest) = bytes.split_at_checked(usize::from(layout.length))?;
        bytes = rest;
        Some(Field {
            number: layout.number,
            bytes: of_field,
            kind: layout.kind,
            big_endian,
        })
    })
}

fn length(fields: &[Layout]) -> usize {
    fields.iter().map(|field| usize::from(field.length)).sum()
}

/// What comes next.
pub(crate) enum Next<'a> {
    /// Another recording begins, of which several may lie in one file.
    Header,
    Message(Message<'a>),
    /// Everything was read.
    End,
    /// Nothing can be read from here on.
    Broken,
}

/// Goes through the bytes of a file.
#[derive(Debug)]
pub(crate) struct Messages<'a> {
    bytes: &'a [u8],
    /// How many of them were read.
    pub at: usize,
    /// Where the messages of this recording end; none before a header.
    ends: Option<usize>,
    definitions: [Option<Definition>; 16],
    time_s: u32,
    /// A device that lost its power leaves the length at zero; then all that is there is read.
    pub was_closed: bool,
}

impl<'a> Messages<'a> {
    pub fn new(bytes: &'a [u8]) -> Self {
        Self {
            bytes,
            at: 0,
            ends: None,
            definitions: Default::default(),
            time_s: 0,
            was_closed: true,
        }
    }

    /// The next header or message; definitions are kept here.
    pub fn step(&mut self) -> Next<'_> {
        loop {
            let Some(ends) = self.ends else {
                return self.header();
            };
            if self.at == ends {
                if !self.was_closed || self.at == self.bytes.len() {
                    return Next::End;
                }
                self.ends = None;
                self.at = self.bytes.len().min(self.at + CHECKSUM);
                if self.at == self.bytes.len() {
                    return Next::End;
                }
                continue;
            }
            let Some(&first) = self.bytes.get(self.at) else {
                return Next::Broken;
            };
            let bytes = self
                .bytes
                .get(self.at + 1..ends.min(self.bytes.len()))
                .unwrap_or(&[]);
            if first & (HAS_SHORT_TIME | IS_DEFINITION) != IS_DEFINITION {
                return self.message(first, bytes);
            }
            let Some((definition, length)) = definition(bytes, first & HAS_DEVELOPER_FIELDS != 0)
            else {
                return Next::Broken;
            };
            self.definitions[usize::from(first & LOCAL)] = Some(definition);
            self.at += 1 + length;
        }
    }

    fn header(&mut self) -> Next<'_> {
        let rest = self.bytes.get(self.at..).unwrap_or(&[]);
        let (true, Some(&[size, _, _, _, length @ .., _, _, _, _])) =
            (is_fit(rest), rest.first_chunk::<SHORT_HEADER>())
        else {
            return Next::Broken;
        };
        let begins = self.at + usize::from(size);
        let length = u32::from_le_bytes(length) as usize;
        self.was_closed = length != 0;
        self.ends = Some(if self.was_closed {
            begins.saturating_add(length)
        } else {
            self.bytes.len().max(begins)
        });
        self.at = begins;
        self.definitions = Default::default();
        Next::Header
    }

    fn message(&mut self, first: u8, bytes: &'a [u8]) -> Next<'_> {
        let has_short_time = first & HAS_SHORT_TIME != 0;
        let local = if has_short_time {
            first >> 5 & 3
        } else {
            first & LOCAL
        };
        let Some(definition) = &self.definitions[usize::from(local)] else {
            return Next::Broken;
        };
        let length = length(&definition.fields) + length(&definition.developer_fields);
        let Some(bytes) = bytes.get(..length) else {
            return Next::Broken;
        };
        self.at += 1 + length;
        let mut message = Message {
            definition,
            bytes,
            short_time_s: None,
        };
        if has_short_time {
            let later_s =
                (u32::from(first) & SHORT_TIME_S).wrapping_sub(self.time_s) & SHORT_TIME_S;
            self.time_s = self.time_s.wrapping_add(later_s);
            message.short_time_s = Some(self.time_s);
        } else {
            let time_s = message.value(TIMESTAMP);
            if !time_s.is_nan() {
                self.time_s = time_s as u32;
            }
        }
        Next::Message(message)
    }
}

/// A definition, and how many bytes it takes.
fn definition(bytes: &[u8], has_developer_fields: bool) -> Option<(Definition, usize)> {
    let [_, order, number @ .., _] = bytes.first_chunk::<5>()?;
    let big_endian = *order == 1;
    let message = if big_endian {
        u16::from_be_bytes(*number)
    } else {
        u16::from_le_bytes(*number)
    };
    let mut at = 4;
    let fields = layouts(bytes, &mut at)?;
    let developer_fields = if has_developer_fields {
        layouts(bytes, &mut at)?
    } else {
        Vec::new()
    };
    let definition = Definition {
        message,
        big_endian,
        fields,
        developer_fields,
    };
    Some((definition, at))
}

/// A count, then three bytes for each field. One without bytes is in no message: it is left out, so that reading a message takes no
/// longer than its bytes say.
fn layouts(bytes: &[u8], at: &mut usize) -> Option<Vec<Layout>> {
    let count = usize::from(*bytes.get(*at)?);
    let (from, to) = (*at + 1, *at + 1 + 3 * count);
    let (layouts, _) = bytes.get(from..to)?.as_chunks::<3>();
    *at = to;
    let layouts = layouts.iter().map(|[number, length, kind]| Layout {
        number: *number,
        length: *length,
        kind: *kind,
    });
    Some(layouts.filter(|layout| layout.length > 0).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn value(bytes: &[u8], kind: u8, big_endian: bool) -> f64 {
        let field = Field {
            number: 0,
            bytes,
            kind,
            big_endian,
        };
        field.value()
    }

    #[test]
    fn numbers_are_read_in_both_orders_of_bytes() {
        assert_eq!(value(&[1, 2], 0x84, false), 513.0);
        assert_eq!(value(&[1, 2], 0x84, true), 258.0);
        assert_eq!(value(&[0xfe, 0xff], 0x83, false), -2.0);
        assert_eq!(value(&[0xff, 0xff, 0xff, 0xfe], 0x85, true), -2.0);
        assert_eq!(value(&1.5f32.to_le_bytes(), 0x88, false), 1.5);
        assert_eq!(value(&(-1.5f64).to_be_bytes(), 0x89, true), -1.5);
        // Of several numbers the first.
        assert_eq!(value(&[7, 0, 8, 0], 0x84, false), 7.0);
    }

    #[test]
    fn what_says_that_there_is_no_value_is_none() {
        for (bytes, kind) in [
            (&[0xff][..], 0x02),
            (&[0x7f], 0x01),
            (&[0xff, 0xff], 0x84),
            (&[0xff, 0x7f], 0x83),
            (&[0], 0x0a),
            (&[0xff; 4], 0x88),
            (&[1], 0x84),
            (&[], 0x02),
            (b"12", 0x07),
            (&[1], 0x1f),
        ] {
            assert!(value(bytes, kind, false).is_nan(), "{bytes:?} {kind}");
        }
    }

    /// A file of these messages, with a header of 12 bytes.
    fn file(body: &[u8]) -> Vec<u8> {
        let header = [
            &[12, 0x20, 0, 0][..],
            &(body.len() as u32).to_le_bytes(),
            MARK,
        ];
        [&header.concat(), body, &[0, 0]].concat()
    }

    #[test]
    fn short_times_count_on_from_the_last_whole_one() {
        let whole: &[u8] = &[0x40, 0, 0, 20, 0, 1, 253, 4, 0x86, 0, 30, 0, 0, 0];
        let short: &[u8] = &[
            0x41,
            0,
            0,
            20,
            0,
            1,
            7,
            1,
            0x02,
            0xa0 | 31,
            200,
            0xa0 | 2,
            201,
        ];
        let bytes = file(&[whole, short].concat());
        let mut messages = Messages::new(&bytes);
        let mut times_s = Vec::new();
        loop {
            match messages.step() {
                Next::Message(message) => times_s.push(message.time_s()),
                Next::Header => {}
                Next::End => break,
                Next::Broken => panic!("it is in order"),
            }
        }
        assert_eq!(times_s, [30.0, 31.0, 34.0]);
    }
}
