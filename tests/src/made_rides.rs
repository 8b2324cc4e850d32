//! Files of rides made by code, one of each kind, with the same invented ride in them: somebody rides out over an ocean.

use std::fmt::Write;

/// One record a second, ten metres on, to the north-east.
#[derive(Clone, Copy, Debug)]
pub struct Point {
    /// Seconds from the first.
    pub time_s: f64,
    /// Metres from the first.
    pub distance_m: f64,
    /// Degrees north.
    pub latitude_deg: f64,
    /// Degrees east.
    pub longitude_deg: f64,
    /// Metres.
    pub elevation_m: f64,
    /// Watts; none in every seventh record.
    pub power_w: Option<u16>,
}

/// The speed of all of them, metres per second.
pub const SPEED_M_S: f64 = 10.0;
/// Every so many records one has no power.
pub const WITHOUT_POWER: usize = 7;
/// Records in a lap.
pub const LAP: usize = 600;

/// The record at a place.
pub fn point(at: usize) -> Point {
    let time_s = at as f64;
    let step_deg = 6.3e-5;
    Point {
        time_s,
        distance_m: SPEED_M_S * time_s,
        latitude_deg: 47.0 + step_deg * time_s,
        longitude_deg: -30.0 + step_deg * time_s,
        elevation_m: 100.0 + 20.0 * (time_s / 300.0).sin(),
        power_w: (at % WITHOUT_POWER != 3).then_some(200 + (at % 50) as u16),
    }
}

/// A date and time in the form of ISO 8601.
fn stamp(at: usize) -> String {
    let (day, second) = (at / 86_400, at % 86_400);
    let (hour, minute) = (second / 3600, second / 60 % 60);
    format!(
        "2031-05-{:02}T{hour:02}:{minute:02}:{:02}Z",
        1 + day,
        second % 60
    )
}

/// As GPX with the power in an extension.
pub fn gpx(records: usize) -> String {
    let mut text = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"made\" xmlns:x=\"made\">\n<trk><name>Out &amp; back</name><trkseg>\n",
    );
    for at in 0..records {
        let Point {
            latitude_deg,
            longitude_deg,
            elevation_m,
            power_w,
            ..
        } = point(at);
        let power = power_w.map_or(String::new(), |watts| format!("<x:power>{watts}</x:power>"));
        writeln!(
            text,
            "<trkpt lat=\"{latitude_deg:.7}\" lon=\"{longitude_deg:.7}\"><ele>{elevation_m:.1}</ele><time>{}</time><extensions>{power}<x:cad>90</x:cad><x:atemp>18</x:atemp></extensions></trkpt>",
            stamp(at)
        )
        .expect("text is written");
    }
    text + "</trkseg></trk></gpx>\n"
}

/// As TCX, in laps of ten minutes.
pub fn tcx(records: usize) -> String {
    let mut text = String::from(
        "<?xml version=\"1.0\"?>\n<TrainingCenterDatabase xmlns:x=\"made\"><Activities><Activity Sport=\"Biking\">\n",
    );
    for from in (0..records).step_by(LAP) {
        let to = (from + LAP).min(records);
        writeln!(
            text,
            "<Lap StartTime=\"{}\"><TotalTimeSeconds>{}</TotalTimeSeconds><Track>",
            stamp(from),
            to - from
        )
        .expect("text is written");
        for at in from..to {
            let Point {
                latitude_deg,
                longitude_deg,
                elevation_m,
                distance_m,
                power_w,
                ..
            } = point(at);
            let power =
                power_w.map_or(String::new(), |watts| format!("<x:Watts>{watts}</x:Watts>"));
            writeln!(
                text,
                "<Trackpoint><Time>{}</Time><Position><LatitudeDegrees>{latitude_deg:.7}</LatitudeDegrees><LongitudeDegrees>{longitude_deg:.7}</LongitudeDegrees></Position><AltitudeMeters>{elevation_m:.1}</AltitudeMeters><DistanceMeters>{distance_m:.1}</DistanceMeters><Cadence>90</Cadence><Extensions><x:TPX><x:Speed>{SPEED_M_S}</x:Speed>{power}</x:TPX></Extensions></Trackpoint>",
                stamp(at)
            )
            .expect("text is written");
        }
        text += "</Track></Lap>\n";
    }
    text + "</Activity></Activities></TrainingCenterDatabase>\n"
}

/// As a table with commas.
pub fn csv(records: usize) -> String {
    let mut text = String::from(
        "time_s,distance_m,speed_m_s,power_w,elevation_m,latitude_deg,longitude_deg,cadence_rpm,lap\n",
    );
    for at in 0..records {
        let Point {
            time_s,
            latitude_deg,
            longitude_deg,
            elevation_m,
            distance_m,
            power_w,
        } = point(at);
        let power = power_w.map_or(String::new(), |watts| watts.to_string());
        writeln!(
            text,
            "{time_s},{distance_m:.1},{SPEED_M_S},{power},{elevation_m:.1},{latitude_deg:.7},{longitude_deg:.7},90,{}",
            1 + at / LAP
        )
        .expect("text is written");
    }
    text
}

/// As FIT: fields of the global profile, one lap message every ten minutes. `big_endian` as some devices write.
pub fn fit(records: usize, big_endian: bool) -> Vec<u8> {
    // Field, bytes, base type.
    const RECORD: [[u8; 3]; 8] = [
        [253, 4, 0x86],
        [0, 4, 0x85],
        [1, 4, 0x85],
        [78, 4, 0x86],
        [5, 4, 0x86],
        [73, 4, 0x86],
        [7, 2, 0x84],
        [4, 1, 0x02],
    ];
    const LAP_FIELDS: [[u8; 3]; 3] = [[253, 4, 0x86], [2, 4, 0x86], [7, 4, 0x86]];
    const START_S: u32 = 1_300_000_000;
    let two = |value: u16| {
        if big_endian {
            value.to_be_bytes()
        } else {
            value.to_le_bytes()
        }
    };
    let four = |value: u32| {
        if big_endian {
            value.to_be_bytes()
        } else {
            value.to_le_bytes()
        }
    };
    let mut body = Vec::new();
    let mut define = |local: u8, message: u16, fields: &[[u8; 3]]| {
        body.extend([0x40 | local, 0, u8::from(big_endian)]);
        body.extend(two(message));
        body.push(fields.len() as u8);
        body.extend(fields.as_flattened());
    };
    define(0, 20, &RECORD);
    define(1, 19, &LAP_FIELDS);
    let semicircles = |degrees: f64| (degrees / 180.0 * 2_147_483_648.0) as i32 as u32;
    for at in 0..records {
        let Point {
            latitude_deg,
            longitude_deg,
            elevation_m,
            distance_m,
            power_w,
            ..
        } = point(at);
        body.push(0);
        body.extend(four(START_S + at as u32));
        body.extend(four(semicircles(latitude_deg)));
        body.extend(four(semicircles(longitude_deg)));
        body.extend(four(((elevation_m + 500.0) * 5.0) as u32));
        body.extend(four((distance_m * 100.0) as u32));
        body.extend(four((SPEED_M_S * 1000.0) as u32));
        body.extend(two(power_w.unwrap_or(u16::MAX)));
        body.push(90);
        if at % LAP == LAP - 1 || at + 1 == records {
            let from = at / LAP * LAP;
            body.push(1);
            body.extend(four(START_S + at as u32));
            body.extend(four(START_S + from as u32));
            body.extend(four(((at + 1 - from) * 1000) as u32));
        }
    }
    let mut file = vec![14, 0x20, 0, 0];
    file.extend((body.len() as u32).to_le_bytes());
    file.extend(b".FIT");
    file.extend([0, 0]);
    file.extend(body);
    file.extend([0, 0]);
    file
}
