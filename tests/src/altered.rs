//! Files altered at random, and what holds of a reader whatever it is given.

use fasterby_recordings::{COLUMNS, Column, Error, MOST_RECORDS, Reader, Recording};
use fastrand::Rng;

/// Pieces that readers may stumble over.
const PIECES: &[&[u8]] = &[
    b"<",
    b">",
    b"</",
    b"/>",
    b"<!--",
    b"-->",
    b"<![CDATA[",
    b"]]>",
    b"<!DOCTYPE a [",
    b"&lt;",
    b"&#x110000;",
    b"&x;",
    b"&",
    b"\"",
    b"'",
    b";",
    b",",
    b"\t",
    b"\r",
    b"\n",
    b"\0",
    b"\xff\xfe",
    b"\xef\xbb\xbf",
    b"-",
    b"1e308",
    b"-1e308",
    b"nan",
    b"9999999999999999999",
    b"0",
    b"-90",
    b"180.1",
    b"<trkpt lat=\"1\" lon=\"2\">",
    b"<Lap>",
    b"<Trackpoint>",
    b"<time>",
    b"2031-05-01T00:00:00Z",
    b"1969-01-01T00:00:00+99:99",
    b"\xff\xff\xff\xff",
    b"\x00\x00\x00\x00",
    b"\x40\x00\x00\x14\x00\xff",
    b"\x60\x00\x00\x14\x00\x01",
    b"\x0e\x20\x00\x00\x00\x00\x00\x00.FIT\x00\x00",
];

/// A file with a few places changed, cut out, doubled or put in.
pub fn altered(file: &[u8], random: &mut Rng) -> Vec<u8> {
    let mut bytes = file.to_vec();
    for _ in 0..random.usize(1..8) {
        let at = random.usize(..=bytes.len());
        let to = (at + random.usize(..64)).min(bytes.len());
        match random.u8(..7) {
            0 if at < bytes.len() => bytes[at] = random.u8(..),
            1 if at < bytes.len() => bytes[at] ^= 1 << random.u8(..8),
            2 => drop(bytes.drain(at..to)),
            3 => {
                let doubled = bytes[at..to].to_vec();
                bytes.splice(at..at, doubled);
            }
            4 => {
                let piece = PIECES[random.usize(..PIECES.len())];
                bytes.splice(at..at, piece.iter().copied());
            }
            5 => bytes[at..to]
                .iter_mut()
                .for_each(|byte| *byte = random.u8(..)),
            _ if random.u8(..8) == 0 => bytes.truncate(at),
            _ => {}
        }
    }
    bytes
}

/// Reads bytes in pieces of a length.
pub fn read_in_pieces(bytes: &[u8], length: usize) -> Result<Recording, Error> {
    let mut reader = Reader::default();
    bytes
        .chunks(length.max(1))
        .try_for_each(|piece| reader.push(piece))?;
    reader.finish()
}

/// Reads bytes in pieces of a length, and fails where a reader breaks its word.
///
/// # Panics
/// Where it does.
pub fn check(bytes: &[u8], length: usize) -> bool {
    let recording = match read_in_pieces(bytes, length) {
        Ok(recording) => recording,
        Err(error) => {
            assert!(
                !error.to_string().contains(['{', '}']) || error.message.text == "other_xml",
                "{error}"
            );
            return false;
        }
    };
    let columns = &recording.columns;
    assert!((1..=MOST_RECORDS).contains(&columns.len()) && recording.records >= columns.len());
    for (column, name) in COLUMNS {
        let values = columns.get(column);
        assert_eq!(values.len(), columns.len(), "{name}");
        assert!(values.iter().all(|value| !value.is_infinite()), "{name}");
    }
    let grows = |column: Column, strictly: bool| {
        let known: Vec<f64> = columns
            .get(column)
            .iter()
            .copied()
            .filter(|value| !value.is_nan())
            .collect();
        known
            .windows(2)
            .all(|pair| pair[0] < pair[1] || (!strictly && pair[0] == pair[1]))
    };
    assert!(grows(Column::Time, true), "time");
    assert!(grows(Column::Distance, false), "distance");
    let end_s = columns
        .get(Column::Time)
        .last()
        .copied()
        .unwrap_or(f64::NAN);
    for span in recording.laps.iter().chain(&recording.stops) {
        assert!(
            span.from_s >= 0.0 && span.to_s <= end_s && span.from_s < span.to_s,
            "{span:?} of {end_s}"
        );
    }
    let summary = recording.summary();
    assert!(summary.climb_m.is_nan() || summary.climb_m >= 0.0);
    true
}
