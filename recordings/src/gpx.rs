//! The words of GPX 1.0 and 1.1 (Topografix) and of the extensions that recordings use, by their local names. `road` is that of the
//! courses that the core writes.

use crate::columns::Column;
use crate::trackpoint::Element;

/// What an element means.
pub(crate) fn element(name: &str) -> Element {
    match name {
        "trkpt" => Element::Point,
        "rtept" => Element::RoutePoint,
        "trk" | "trkseg" => Element::Part,
        "extensions" => Element::Extensions,
        "road" => Element::Road,
        "time" => Element::Time,
        "ele" => Element::Value(Column::Elevation),
        "speed" => Element::Value(Column::Speed),
        "distance" => Element::Value(Column::Distance),
        "power" | "PowerInWatts" | "Watts" => Element::Value(Column::Power),
        "cad" | "cadence" => Element::Value(Column::Cadence),
        "atemp" | "temp" | "temperature" => Element::Value(Column::Temperature),
        _ => Element::Other,
    }
}
