//! Recordings: made files of every kind, hostile ones, and real ones that packages hold for their own tests.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_core::scenario::Scenario;
use fasterby_core::scenario::recorded_course::{NoCourse, RecordedCourse, Track, recorded_course};
use fasterby_recordings::{
    Column, Error, MESSAGES, MOST_BYTES, MOST_RECORDS, Reader, Recording, distance_m,
};
use fasterby_tests::Table;
use fasterby_tests::altered::{altered, check, read_in_pieces};
use fasterby_tests::made_rides::{LAP, SPEED_M_S, WITHOUT_POWER, csv, fit, gpx, point, tcx};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

const RECORDS: usize = 1_500;
/// Positions are written with seven decimals, elevations with one, distances in centimetres: half of the last digit, and the
/// same in FIT's own steps of 0.2 m of elevation.
const POSITION_DEG: f64 = 2e-7;
const ELEVATION_M: f64 = 0.2;
const DISTANCE_M: f64 = 0.06;

fn read(bytes: &[u8]) -> Result<Recording, Error> {
    read_in_pieces(bytes, 65_536)
}

fn every_kind(records: usize) -> [(&'static str, Vec<u8>); 5] {
    [
        ("fit", fit(records, false)),
        ("fit", fit(records, true)),
        ("gpx", gpx(records).into_bytes()),
        ("tcx", tcx(records).into_bytes()),
        ("csv", csv(records).into_bytes()),
    ]
}

fn said(recording: &Recording) -> Vec<&'static str> {
    recording.notes.iter().map(|note| note.text).collect()
}

fn refusal(bytes: &[u8]) -> &'static str {
    read(bytes).expect_err("a refusal").message.text
}

#[test]
fn a_ride_is_the_same_in_every_kind_of_file() {
    for (kind, bytes) in every_kind(RECORDS) {
        let recording = read(&bytes).expect(kind);
        assert_eq!(
            (
                recording.kind.name(),
                recording.records,
                recording.columns.len()
            ),
            (kind, RECORDS, RECORDS)
        );
        for at in 0..RECORDS {
            let (made, is) = (point(at), |column| recording.columns.get(column)[at]);
            assert_eq!(is(Column::Time), made.time_s, "{kind}");
            assert!(
                (is(Column::Latitude) - made.latitude_deg).abs() < POSITION_DEG,
                "{kind}"
            );
            assert!(
                (is(Column::Longitude) - made.longitude_deg).abs() < POSITION_DEG,
                "{kind}"
            );
            assert!(
                (is(Column::Elevation) - made.elevation_m).abs() < ELEVATION_M,
                "{kind}"
            );
            assert_eq!(is(Column::Cadence), 90.0, "{kind}");
            match made.power_w {
                Some(power_w) => assert_eq!(is(Column::Power), f64::from(power_w), "{kind}"),
                None => assert!(
                    is(Column::Power).is_nan(),
                    "{kind}: missing power is no number"
                ),
            }
            if kind != "gpx" {
                assert!(
                    (is(Column::Distance) - made.distance_m).abs() < DISTANCE_M,
                    "{kind}"
                );
                assert_eq!(is(Column::Speed), SPEED_M_S, "{kind}");
            }
            // To the north-east: somewhat less to the east, where degrees are shorter.
            assert!(
                (33.0..36.0).contains(&is(Column::Bearing)),
                "{kind}: {}",
                is(Column::Bearing)
            );
        }
        let missing = (0..RECORDS).filter(|at| at % WITHOUT_POWER == 3).count();
        let powers: Vec<f64> = (0..RECORDS)
            .filter_map(|at| point(at).power_w)
            .map(f64::from)
            .collect();
        assert_eq!(powers.len() + missing, RECORDS);
        let mean_w = powers.iter().sum::<f64>() / powers.len() as f64;
        assert!(
            (recording.summary().mean_power_w - mean_w).abs() < 1e-9,
            "{kind}"
        );
        assert_eq!(
            recording.laps.len(),
            if kind == "gpx" {
                0
            } else {
                RECORDS.div_ceil(LAP)
            },
            "{kind}"
        );
        assert!(said(&recording).contains(&"power_missing"), "{kind}");
    }
}

#[test]
fn a_file_is_read_the_same_however_it_is_cut_into_pieces() {
    // Longer than what a reader gathers before it goes on.
    for (kind, bytes) in every_kind(4_000) {
        let whole = format!("{:?}", read(&bytes).expect(kind));
        for length in [7, 65_536, 65_537, 65_549, 1 << 20] {
            assert_eq!(
                format!("{:?}", read_in_pieces(&bytes, length).expect(kind)),
                whole,
                "{kind} by {length}"
            );
        }
    }
}

#[test]
fn a_file_that_breaks_off_is_read_as_far_as_it_goes() {
    for (kind, bytes) in every_kind(12) {
        let mut most = 0;
        for length in 0..bytes.len() {
            match read(&bytes[..length]) {
                Ok(recording) => {
                    assert!(recording.records >= most, "{kind} at {length}");
                    most = recording.records;
                }
                Err(error) => assert!(
                    most == 0 && !error.message.text.is_empty(),
                    "{kind} at {length}: {error}"
                ),
            }
        }
        assert_eq!(most, 12, "{kind}");
    }
}

#[test]
fn texts_are_read_in_the_encodings_that_programs_write() {
    for text in [gpx(20), tcx(20), csv(20)] {
        let plain = format!("{:?}", read(text.as_bytes()).expect("plain"));
        let marked = format!("\u{feff}{text}");
        let little: Vec<u8> = marked.encode_utf16().flat_map(u16::to_le_bytes).collect();
        let big: Vec<u8> = marked.encode_utf16().flat_map(u16::to_be_bytes).collect();
        for bytes in [marked.into_bytes(), little, big] {
            assert_eq!(format!("{:?}", read(&bytes).expect("encoded")), plain);
        }
    }
}

#[test]
fn a_table_is_read_with_decimal_commas_units_and_lines_before_its_headings() {
    let table = "Fahrt vom Mai\r\n\r\nZeit;Geschwindigkeit (km/h);Leistung [W];Strecke (km);Höhe (m)\r\n\
                 00:00:00;36,0;200;0,000;1.012,5\r\n00:00:01;36,0;;0,010;1.012,5\r\n00:00:02;x;210;0,020;1.012,5\r\n";
    let latin: Vec<u8> = table.chars().map(|sign| sign as u32 as u8).collect();
    for bytes in [table.as_bytes(), &latin] {
        let recording = read(bytes).expect("a table");
        assert_eq!(recording.columns.get(Column::Speed)[..2], [10.0, 10.0]);
        assert!(
            recording.columns.get(Column::Speed)[2].is_nan()
                && recording.columns.get(Column::Power)[1].is_nan()
        );
        assert_eq!(recording.columns.get(Column::Distance), [0.0, 10.0, 20.0]);
        assert_eq!(recording.columns.get(Column::Elevation)[0], 1012.5);
        assert!(said(&recording).contains(&"unreadable"));
    }
}

#[test]
fn a_heading_without_a_unit_is_told_where_it_cannot_be_si() {
    let recording = read(b"time,speed,distance\n0,36,0\n100,36,1\n200,36,2\n").expect("a table");
    assert_eq!(recording.columns.get(Column::Speed), [10.0; 3]);
    assert_eq!(recording.summary().distance_m, 2000.0);
    assert!(
        said(&recording).contains(&"speed_as_km_h") && said(&recording).contains(&"distance_as_km")
    );
}

#[test]
fn a_heading_that_is_a_unit_of_speed_is_a_speed() {
    let recording = read(b"time,km/h,km\n0,36,0\n1,36,0.01\n").expect("a table");
    assert_eq!(recording.columns.get(Column::Speed), [10.0; 2]);
    assert_eq!(recording.columns.get(Column::Distance), [0.0, 10.0]);
}

#[test]
fn times_and_distances_with_words_beside_them_are_read() {
    let recording = read(b"time (min),Total distance (m)\n0,0\n2,1200\n").expect("a table");
    assert_eq!(recording.columns.get(Column::Time), [0.0, 120.0]);
    assert_eq!(recording.columns.get(Column::Distance), [0.0, 1200.0]);
}

#[test]
fn times_of_two_parts_are_what_their_order_says() {
    let times = |table: &str| {
        let recording = read(table.as_bytes()).expect("a table");
        let told = said(&recording).contains(&"clock_in_minutes");
        (recording.columns.get(Column::Time).to_vec(), told)
    };
    // Each record has its own time, a second after the last.
    assert_eq!(
        times("time,power\n0:59,200\n1:00,200\n1:01,200\n"),
        (vec![0.0, 1.0, 2.0], true)
    );
    // Past the hour there are three parts.
    assert_eq!(
        times("time,power\n59:58,200\n59:59,200\n1:00:00,200\n1:00:01,200\n"),
        (vec![0.0, 1.0, 2.0, 3.0], true)
    );
    assert_eq!(
        times("time,power\n75:10,200\n75:11,200\n"),
        (vec![0.0, 1.0], true)
    );
    // A clock that tells minutes to a recording of seconds repeats itself; such records are joined.
    assert_eq!(
        times("time,power\n10:05,200\n10:05,201\n10:05,202\n10:06,203\n10:06,204\n"),
        (vec![0.0, 60.0], false)
    );
    // 600 m in a minute are ridden, in a second they are not.
    assert_eq!(
        times("time,distance_m\n10:05,0\n10:06,600\n10:07,1200\n"),
        (vec![0.0, 60.0, 120.0], false)
    );
    assert_eq!(
        times("time,power\n23:59:59,200\n00:00:00,200\n"),
        (vec![0.0, 1.0], false)
    );
}

#[test]
fn laps_of_a_table_follow_its_times() {
    let recording =
        read(b"time,power,lap\n0:58,1,1\n0:59,2,1\n1:00,3,2\n1:01,4,2\n").expect("a table");
    let laps: Vec<(f64, f64)> = recording
        .laps
        .iter()
        .map(|lap| (lap.from_s, lap.to_s))
        .collect();
    assert_eq!(laps, [(0.0, 2.0), (2.0, 3.0)]);
}

#[test]
fn values_that_no_ride_can_have_are_told_as_such_and_not_as_missing() {
    let recording =
        read(b"time_s,power_w,cadence\n0,200,90\n1,60000,90\n2,210,900\n").expect("a table");
    let note = |name: &str| {
        let notes = &recording.notes;
        notes.iter().find(|note| note.text == name).cloned()
    };
    let beyond = note("beyond_a_ride").expect("a note").to_string();
    assert_eq!(beyond, "Values that no ride can have were left out: 2.");
    assert_eq!(note("power_missing"), None);
    assert!(recording.columns.get(Column::Power)[1].is_nan());
}

#[test]
fn the_columns_that_would_be_known_are_all_named() {
    let refusal = read(b"Dear sir or madam,\nhere is my ride.\n").expect_err("a refusal");
    let said = refusal.to_string();
    assert!(said.ends_with("latitude_deg, longitude_deg."), "{said}");
}

#[test]
fn a_recording_is_no_longer_than_the_core_takes() {
    assert_eq!(MOST_RECORDS, fasterby_core::columns::MOST_SAMPLES);
}

#[test]
fn entities_are_not_expanded_and_nothing_nests_without_end() {
    let mut bomb = String::from("<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY a0 \"1\">");
    for level in 1..40 {
        bomb += &format!("<!ENTITY a{level} \"&a{};&a{};\">", level - 1, level - 1);
    }
    bomb += "]><gpx><trk><trkseg><trkpt lat=\"1\" lon=\"2\"><ele>&a39;</ele><time>2031-05-01T00:00:00Z</time></trkpt></trkseg></trk></gpx>";
    let recording = read(bomb.as_bytes()).expect("a point");
    assert!(recording.columns.get(Column::Elevation)[0].is_nan());
    let numeric = "<gpx><trkpt lat=\"1\" lon=\"2\"><ele>1&#50;<![CDATA[3]]></ele></trkpt></gpx>";
    assert_eq!(
        read(numeric.as_bytes())
            .expect("a point")
            .columns
            .get(Column::Elevation),
        [123.0]
    );
    let deep = format!("<gpx>{}", "<a>".repeat(100_000));
    assert_eq!(refusal(deep.as_bytes()), "too_deep");
    let attributes: String = (0..40_000).map(|i| format!(" a{i}=\"1\"")).collect();
    assert!(
        read(format!("<gpx><trkpt{attributes} lat=\"1\" lon=\"2\"/></gpx>").as_bytes()).is_ok()
    );
    let comment = format!("<gpx><!--{}", "-".repeat(5_000_000));
    assert_eq!(refusal(comment.as_bytes()), "too_long_piece");
}

#[test]
fn what_is_no_recording_is_refused_by_its_reason() {
    assert_eq!(refusal(b""), "empty");
    assert_eq!(refusal(b" \r\n "), "empty");
    assert_eq!(refusal(b"PK\x03\x04rest"), "zip_archive");
    assert_eq!(refusal(b"\x1f\x8brest"), "packed_twice");
    assert_eq!(refusal(b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR"), "unknown_kind");
    assert_eq!(refusal(b"<html><body>Not found</body></html>"), "other_xml");
    assert_eq!(
        refusal(b"Dear sir or madam,\nhere is my ride.\n"),
        "no_known_columns"
    );
    assert_eq!(refusal(b"time_s,power_w\n"), "no_records");
    assert_eq!(refusal(b"<gpx></gpx>"), "no_records");
    assert_eq!(refusal(b"<gpx><trk><trkp"), "cut_before_records");
}

#[test]
fn more_than_is_read_is_refused_as_it_comes() {
    let many: String = (0..=MOST_RECORDS).map(|at| format!("{at},1\n")).collect();
    assert_eq!(
        refusal(format!("time_s,power_w\n{many}").as_bytes()),
        "too_many_records"
    );
    // Two hundred megabytes that never end a record: of every kind that could hold on to them.
    for begin in [
        "<gpx><!-- ",
        "<gpx><trk><name>",
        "time_s,power_w\n\"",
        "time_s,power_w\n",
    ] {
        let mut reader = Reader::default();
        let piece = [b'1'; 65_536];
        let mut pushed = 0_u64;
        let outcome = reader.push(begin.as_bytes()).and_then(|()| {
            (0..200_000_000 / piece.len()).try_for_each(|_| {
                pushed += piece.len() as u64;
                reader.push(&piece)
            })
        });
        assert_eq!(
            outcome.expect_err("a refusal").message.text,
            "too_large",
            "{begin}"
        );
        assert!(pushed <= MOST_BYTES + piece.len() as u64);
    }
}

#[test]
fn a_device_that_lost_its_power_leaves_a_file_that_is_read() {
    let mut bytes = fit(100, false);
    bytes[4..8].fill(0);
    bytes.truncate(bytes.len() - 40);
    let recording = read(&bytes).expect("a recording");
    assert!(recording.records >= 97 && said(&recording).contains(&"not_closed"));
}

#[test]
fn recordings_in_one_file_are_joined() {
    let joined = [fit(50, false), fit(50, true)].concat();
    let recording = read(&joined).expect("a recording");
    assert_eq!(recording.records, 100);
    assert!(
        said(&recording).contains(&"not_one_piece") && said(&recording).contains(&"distance_reset")
    );
}

#[test]
fn altered_files_and_noise_are_read_or_refused() {
    const TRIES: u64 = 2_000;
    for (_, file) in every_kind(30) {
        for seed in 0..TRIES {
            let mut random = fastrand::Rng::with_seed(seed);
            check(&altered(&file, &mut random), 1 << random.u32(3..17));
        }
    }
    for seed in 0..TRIES {
        let mut random = fastrand::Rng::with_seed(seed);
        let mut noise: Vec<u8> = (0..random.usize(..2_000)).map(|_| random.u8(..)).collect();
        check(&noise, 512);
        noise.splice(..0, fit(1, false)[..14].iter().copied());
        check(&noise, 512);
    }
}

/// What the local ellipsoid may be off by against the geodesic, for legs up to 10 km at latitudes to 75°.
const GEODESIC_SHARE: f64 = 1e-5;

#[test]
fn short_distances_are_those_of_the_geodesic() {
    let table = Table::new(include_str!("../oracle/data/geodesic_legs.csv"));
    for row in table.rows() {
        let [from_lat, from_lon, to_lat, to_lon, wanted_m] = [
            "from_latitude_deg",
            "from_longitude_deg",
            "to_latitude_deg",
            "to_longitude_deg",
            "distance_m",
        ]
        .map(|name| row.number(name));
        let is_m = distance_m((from_lat, from_lon), (to_lat, to_lon));
        assert!(
            (is_m - wanted_m).abs() <= GEODESIC_SHARE * wanted_m,
            "{is_m} instead of {wanted_m}"
        );
    }
}

/// The real files by their lengths in bytes, which differ.
fn real_files() -> BTreeMap<u64, PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/xtask/sample-files");
    let packages = fs::read_dir(&folder).expect("real files: `cargo xtask test rust` fetches them");
    let files = packages
        .flatten()
        .filter(|entry| entry.path().is_dir() && entry.file_name() != "sources");
    let files = files.flat_map(|entry| fs::read_dir(entry.path()).expect("a folder").flatten());
    files
        .map(|file| (file.metadata().expect("a length").len(), file.path()))
        .collect()
}

/// Device and program round positions, and sums of legs differ in the order of 1e-5: the acceptance of 0.2 % is far wider.
const REAL_DISTANCE_SHARE: f64 = 0.002;

#[test]
fn real_files_are_read_or_refused_for_their_reason() {
    let files = real_files();
    let table = Table::new(include_str!("../oracle/data/real_recordings.csv"));
    let mut seen = 0;
    for row in table.rows() {
        let bytes = row.number("bytes") as u64;
        let file = fs::read(files.get(&bytes).expect("a real file")).expect("a file");
        let (text, number) = (
            |name| row.text(name),
            |name| row.text(name).parse::<f64>().ok(),
        );
        seen += 1;
        let outcome = read(&file);
        if let Some(records) = number("records") {
            let recording = outcome.unwrap_or_else(|error| panic!("{bytes} bytes: {error}"));
            assert_eq!(
                (recording.kind.name(), recording.records as f64),
                (text("kind"), records),
                "{bytes} bytes"
            );
            if let Some(laps) = number("laps") {
                assert_eq!(recording.laps.len() as f64, laps, "{bytes} bytes: laps");
            }
            if let Some(powers) = number("powers") {
                let has = recording
                    .columns
                    .get(Column::Power)
                    .iter()
                    .filter(|power| !power.is_nan())
                    .count();
                assert_eq!(has as f64, powers, "{bytes} bytes: powers");
            }
            if let Some(wanted_m) = number("geodesic_m") {
                let is_m = recording.summary().distance_m;
                assert!(
                    (is_m - wanted_m).abs() <= REAL_DISTANCE_SHARE * wanted_m.max(1.0),
                    "{bytes} bytes: {is_m} instead of {wanted_m}"
                );
            }
        } else {
            assert_eq!(
                outcome.expect_err("a refusal").message.text,
                text("kind"),
                "{bytes} bytes"
            );
        }
    }
    assert_eq!(seen, files.len(), "a real file has no row");
}

/// The course of a recording as the page makes it, its elevation smoothed as usual.
fn course_of(recording: &Recording) -> Result<RecordedCourse, NoCourse> {
    const SMOOTHED_M: f64 = 100.0;
    let column = |column| recording.columns.get(column);
    let track = Track {
        latitude_deg: column(Column::Latitude),
        longitude_deg: column(Column::Longitude),
        elevation_m: column(Column::Elevation),
        distance_m: column(Column::Distance),
        bearing_deg: column(Column::Bearing),
        radius_m: column(Column::Radius),
        wind_share: column(Column::WindShare),
        is_surveyed: recording.is_surveyed,
    };
    recorded_course(&track, SMOOTHED_M)
}

/// The length of a line through all positions, m. Over what lies between two parts of a file it goes straight.
fn through_positions_m(recording: &Recording) -> f64 {
    let column = |column| recording.columns.get(column).iter().copied();
    let places: Vec<(f64, f64)> = column(Column::Latitude)
        .zip(column(Column::Longitude))
        .filter(|(north, east)| north.is_finite() && east.is_finite())
        .collect();
    let legs = places.windows(2);
    legs.map(|pair| distance_m(pair[0], pair[1])).sum()
}

#[test]
fn courses_of_real_files_are_as_long_as_their_tracks_or_refused_for_their_reason() {
    /// What a scenario takes as a course, m.
    const LENGTHS_M: std::ops::RangeInclusive<f64> = 100.0..=2e6;
    let files = real_files();
    let table = Table::new(include_str!("../oracle/data/real_recordings.csv"));
    let (mut courses, mut in_parts, mut walks) = (0, 0, 0);
    for row in table.rows() {
        let bytes = row.number("bytes") as u64;
        let file = fs::read(files.get(&bytes).expect("a real file")).expect("a file");
        let (Ok(recording), Ok(geodesic_m)) = (read(&file), row.text("geodesic_m").parse::<f64>())
        else {
            continue;
        };
        match course_of(&recording) {
            Ok(made) => {
                courses += 1;
                // Several tracks in one file, or some of it without times, which the notes say: a course goes through what was kept.
                let said = |id: &str| recording.notes.iter().any(|note| note.text == id);
                let wanted_m = if said("parts_left_out") || said("untimed") {
                    in_parts += 1;
                    through_positions_m(&recording)
                } else {
                    geodesic_m
                };
                let length_m = made.course.length_m();
                assert!(
                    (length_m - wanted_m).abs() <= REAL_DISTANCE_SHARE * wanted_m,
                    "{bytes} bytes: {length_m} m instead of {wanted_m} m"
                );
                let scenario = Scenario {
                    course: made.course,
                    ..Scenario::default()
                };
                // Some of them are walks over steeper ground than is ridden.
                if let Err(error) = scenario.check() {
                    assert_eq!(error.message.text, "too_steep", "{bytes} bytes");
                    walks += 1;
                }
            }
            Err(NoCourse::NoRoad) => assert_eq!(geodesic_m, 0.0, "{bytes} bytes"),
            Err(NoCourse::Length) => {
                assert!(
                    !LENGTHS_M.contains(&geodesic_m),
                    "{bytes} bytes: {geodesic_m} m"
                );
            }
        }
    }
    assert!(courses >= in_parts + walks + 10, "only {courses} courses");
    println!("{courses} courses, {in_parts} of them in parts, {walks} too steep to ride");
}

#[test]
fn the_page_words_every_sentence_and_its_english_is_the_same() {
    let catalogue = include_str!("../../www/words/en/recordings.js");
    for sentence in MESSAGES {
        assert!(
            catalogue.contains(sentence.english),
            "recordings.js does not say: {}",
            sentence.english
        );
        assert!(
            catalogue.contains(&format!("{}:", sentence.id)),
            "{}",
            sentence.id
        );
    }
}
