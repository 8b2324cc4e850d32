//! The words of TCX, version 2, and of its extension for activities, by their local names.

use crate::columns::Column;
use crate::trackpoint::Element;

/// What an element means.
pub(crate) fn element(name: &str) -> Element {
    match name {
        "Trackpoint" => Element::Point,
        "Track" => Element::Part,
        "Lap" => Element::Lap,
        "TotalTimeSeconds" => Element::LapDuration,
        "Position" => Element::Position,
        "Extensions" => Element::Extensions,
        "Time" => Element::Time,
        "LatitudeDegrees" => Element::Value(Column::Latitude),
        "LongitudeDegrees" => Element::Value(Column::Longitude),
        "AltitudeMeters" => Element::Value(Column::Elevation),
        "DistanceMeters" => Element::Value(Column::Distance),
        "Cadence" => Element::Value(Column::Cadence),
        "Speed" => Element::Value(Column::Speed),
        "Watts" | "PowerInWatts" | "power" => Element::Value(Column::Power),
        "Temperature" | "temperature" | "atemp" => Element::Value(Column::Temperature),
        _ => Element::Other,
    }
}
