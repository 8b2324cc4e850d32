//! What the headings of a table mean: which column, in which unit.

use crate::columns::Column;

/// What a value of the table is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Meaning {
    /// `scale · value + offset` in the column's unit; `guess` where the heading does not say the unit.
    Value {
        column: Column,
        scale: f64,
        offset: f64,
        guess: bool,
    },
    /// A day.
    Date,
    /// A number or name that changes from lap to lap.
    Lap,
}

/// For the sentence that says which columns would have been known.
pub(crate) const KNOWN: &str =
    "time_s, speed_m_s, power_w, distance_m, elevation_m, latitude_deg, longitude_deg";

/// Words that make a heading another one than its quantity alone.
const OTHER: &[&str] = &[
    "accumulated",
    "avg",
    "average",
    "balance",
    "gps",
    "left",
    "max",
    "maximum",
    "mean",
    "min",
    "normalized",
    "right",
    "smoothed",
    "target",
    "total",
    "vertical",
    "virtual",
    "wind",
    "zone",
];

const QUANTITIES: &[(&[&str], Column)] = &[
    (
        &["latitude", "lat", "breite", "breitengrad"],
        Column::Latitude,
    ),
    (
        &["longitude", "lon", "lng", "long", "länge", "längengrad"],
        Column::Longitude,
    ),
    (
        &["power", "watts", "watt", "leistung", "puissance"],
        Column::Power,
    ),
    (
        &[
            "elevation",
            "altitude",
            "ele",
            "alt",
            "height",
            "höhe",
            "hoehe",
        ],
        Column::Elevation,
    ),
    (
        &[
            "speed",
            "velocity",
            "geschwindigkeit",
            "vitesse",
            "kph",
            "kmh",
            "mph",
        ],
        Column::Speed,
    ),
    (
        &["distance", "dist", "distanz", "strecke", "km"],
        Column::Distance,
    ),
    (
        &["temperature", "temp", "temperatur", "température"],
        Column::Temperature,
    ),
    (&["cadence", "cad", "trittfrequenz"], Column::Cadence),
    (&["bearing"], Column::Bearing),
    (&["radius"], Column::Radius),
    (&["share"], Column::WindShare),
    (
        &[
            "time",
            "timestamp",
            "seconds",
            "secs",
            "sec",
            "elapsed",
            "zeit",
            "temps",
            "heure",
        ],
        Column::Time,
    ),
];

/// The meaning of a heading; none where it is not known.
pub(crate) fn meaning(heading: &str) -> Option<Meaning> {
    let heading = lower_case(heading.trim());
    let words: Vec<&str> = heading
        .split(|sign: char| sign.is_ascii() && !sign.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
    let has = |wanted: &[&str]| words.iter().any(|word| wanted.contains(word));
    if has(&["date", "datum"]) && !has(&["time"]) {
        return Some(Meaning::Date);
    }
    if has(&["lap", "runde", "tour"]) && words.len() <= 2 && !has(&["time", "distance"]) {
        return Some(Meaning::Lap);
    }
    let column = if is_speed_unit(&words) {
        Column::Speed
    } else {
        QUANTITIES.iter().find(|(names, _)| has(names))?.1
    };
    // What stands beside a time or a distance without making it another one.
    let harmless: &[&str] = match column {
        Column::Time => &["accumulated", "min", "total"],
        Column::Distance => &["accumulated", "total"],
        Column::WindShare => &["wind"],
        _ => &[],
    };
    let is_other = |word: &&str| OTHER.contains(word) && !harmless.contains(word);
    if words.iter().any(is_other) {
        return None;
    }
    let (scale, offset, guess) = unit(column, &words, has);
    Some(Meaning::Value {
        column,
        scale,
        offset,
        guess,
    })
}

/// Whether a heading is no more than a unit of speed, such as `km/h`.
fn is_speed_unit(words: &[&str]) -> bool {
    matches!(words, ["km" | "mi", "h"] | ["m", "s"])
}

/// Small letters for those of English and of the headings above; the standard library's own knows every script and is as long
/// as the rest of the table.
fn lower_case(text: &str) -> String {
    let lower = |sign: char| match sign {
        'Ä' => 'ä',
        'Ö' => 'ö',
        'Ü' => 'ü',
        'É' => 'é',
        other => other.to_ascii_lowercase(),
    };
    text.chars().map(lower).collect()
}

/// How a value becomes SI, and whether the heading leaves the unit open. Conversions are by definition (the foot of 1959).
fn unit(column: Column, words: &[&str], has: impl Fn(&[&str]) -> bool) -> (f64, f64, bool) {
    let known = |scale: f64| (scale, 0.0, false);
    match column {
        Column::Speed if has(&["kmh", "kph"]) || (has(&["km"]) && has(&["h"])) => known(1.0 / 3.6),
        Column::Speed if has(&["mph"]) || (has(&["mi"]) && has(&["h"])) => known(0.447_04),
        Column::Speed if has(&["kn", "kt", "knots"]) => known(1852.0 / 3600.0),
        Column::Speed if has(&["ms", "mps", "s"]) => known(1.0),
        Column::Distance if has(&["km", "kilometers", "kilometres"]) => known(1000.0),
        Column::Distance if has(&["mi", "mile", "miles"]) => known(1609.344),
        Column::Distance | Column::Elevation if has(&["ft", "feet"]) => known(0.3048),
        Column::Distance if has(&["m", "meters", "metres", "meter"]) => known(1.0),
        Column::Temperature if has(&["f", "fahrenheit"]) => (5.0 / 9.0, -160.0 / 9.0, false),
        Column::Time if has(&["ms", "millis", "milliseconds"]) => known(0.001),
        Column::Time if has(&["min", "mins", "minutes", "minuten"]) => known(60.0),
        Column::Time if has(&["h", "hours", "stunden", "heures"]) => known(3600.0),
        Column::Speed | Column::Distance => (1.0, 0.0, words.len() == 1),
        _ => known(1.0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_say_quantity_and_unit() {
        let scale = |heading: &str| match meaning(heading) {
            Some(Meaning::Value {
                column,
                scale,
                guess,
                ..
            }) => Some((column, scale, guess)),
            _ => None,
        };
        assert_eq!(scale("speed_m_s"), Some((Column::Speed, 1.0, false)));
        assert_eq!(
            scale("Speed (km/h)"),
            Some((Column::Speed, 1.0 / 3.6, false))
        );
        assert_eq!(scale("Speed"), Some((Column::Speed, 1.0, true)));
        assert_eq!(scale("Höhe [m]"), Some((Column::Elevation, 1.0, false)));
        assert_eq!(scale("distance_m"), Some((Column::Distance, 1.0, false)));
        assert_eq!(scale("km/h"), Some((Column::Speed, 1.0 / 3.6, false)));
        assert_eq!(scale("m/s"), Some((Column::Speed, 1.0, false)));
        assert_eq!(scale("km"), Some((Column::Distance, 1000.0, false)));
        assert_eq!(scale("time (min)"), Some((Column::Time, 60.0, false)));
        assert_eq!(scale("Time [h]"), Some((Column::Time, 3600.0, false)));
        assert_eq!(
            scale("Total distance (km)"),
            Some((Column::Distance, 1000.0, false))
        );
        assert_eq!(scale("Total power"), None);
        assert_eq!(scale("Min speed"), None);
        assert_eq!(scale("Average power"), None);
        assert_eq!(scale("Heart rate"), None);
        assert_eq!(meaning("Date"), Some(Meaning::Date));
        assert_eq!(meaning("lap"), Some(Meaning::Lap));
    }
}
