//! Points of a track from the elements of an XML file, of whichever of the two kinds.

use crate::Kind;
use crate::columns::{Column, Columns, Record};
use crate::error::Error;
use crate::notes;
use crate::numbers::number;
use crate::raw::{LapMark, Raw};
use crate::time::date_and_time_s;
use crate::xml::Line;

/// What an element means for a recording.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Element {
    /// A recorded point.
    Point,
    /// A point of where to ride.
    RoutePoint,
    /// Points without a pause between them.
    Part,
    /// A lap.
    Lap,
    /// How long it lasted, seconds.
    LapDuration,
    /// Holds latitude and longitude.
    Position,
    /// Holds what the format itself has no word for.
    Extensions,
    /// Says what the road is like from a point on.
    Road,
    /// A date with its time.
    Time,
    /// A number.
    Value(Column),
    /// Of no interest.
    Other,
}

impl Element {
    /// Whether its own text matters.
    pub fn has_text(self) -> bool {
        matches!(self, Self::Time | Self::Value(_) | Self::LapDuration)
    }

    fn is_point(self) -> bool {
        matches!(self, Self::Point | Self::RoutePoint)
    }
}

/// A track as its elements come in.
#[derive(Debug)]
pub(crate) struct Track {
    pub kind: Kind,
    raw: Raw,
    record: Record,
    lap_from_s: f64,
    lap_lasts_s: f64,
    /// A lap has begun, and its first part has not.
    lap_is_new: bool,
    is_route: bool,
    unreadable: usize,
    first_unreadable: usize,
}

impl Track {
    pub fn new(kind: Kind) -> Self {
        Self {
            kind,
            raw: Raw::default(),
            record: Record::default(),
            lap_from_s: f64::NAN,
            lap_lasts_s: f64::NAN,
            lap_is_new: false,
            is_route: false,
            unreadable: 0,
            first_unreadable: 0,
        }
    }

    /// An element begins; `attribute` finds the text of one of its attributes.
    pub fn start(&mut self, element: Element, attribute: impl Fn(&str) -> Option<String>) {
        let value = |name| attribute(name).map_or(f64::NAN, |text| number(&text));
        match element {
            // A new lap is no pause.
            Element::Part if std::mem::take(&mut self.lap_is_new) => {}
            Element::Part => self.raw.part(),
            Element::Lap => {
                self.lap_is_new = true;
                self.lap_from_s =
                    attribute("StartTime").map_or(f64::NAN, |text| date_and_time_s(&text));
                self.lap_lasts_s = f64::NAN;
            }
            Element::Point | Element::RoutePoint => {
                self.record = Record::default();
                if self.kind == Kind::Gpx {
                    self.record.set(Column::Latitude, value("lat"));
                    self.record.set(Column::Longitude, value("lon"));
                }
            }
            Element::Road => {
                self.raw.is_surveyed = true;
                for (column, name) in [
                    (Column::Distance, "distance_m"),
                    (Column::Bearing, "bearing_deg"),
                    (Column::Radius, "radius_m"),
                    (Column::WindShare, "wind_share"),
                ] {
                    self.record.set(column, value(name));
                }
            }
            _ => {}
        }
    }

    /// An element ends inside of the `open` ones; `leaf` is its own text.
    pub fn end(
        &mut self,
        element: Element,
        open: &[Element],
        leaf: &str,
        line: Line<'_>,
    ) -> Result<(), Error> {
        match element {
            Element::Point => return self.point(false),
            Element::RoutePoint => return self.point(true),
            Element::Lap => self.lap(),
            Element::LapDuration if open.last() == Some(&Element::Lap) => {
                self.lap_lasts_s = number(leaf);
            }
            Element::Time if open.last().is_some_and(|parent| parent.is_point()) => {
                self.value(Column::Time, date_and_time_s(leaf), leaf, line);
            }
            Element::Value(column) if belongs_to_point(open) => {
                self.value(column, number(leaf), leaf, line);
            }
            _ => {}
        }
        Ok(())
    }

    fn value(&mut self, column: Column, value: f64, leaf: &str, line: Line<'_>) {
        if value.is_nan() && !leaf.trim().is_empty() {
            if self.unreadable == 0 {
                self.first_unreadable = line();
            }
            self.unreadable += 1;
        }
        self.record.fill(column, value);
    }

    /// A route is read only where there is no track.
    fn point(&mut self, of_route: bool) -> Result<(), Error> {
        if of_route && !self.is_route && !self.raw.columns.is_empty() {
            return Ok(());
        }
        if !of_route && self.is_route {
            self.raw.columns = Columns::default();
            self.raw.parts.clear();
        }
        self.is_route = of_route;
        self.raw.push(&self.record)
    }

    fn lap(&mut self) {
        let ends_s = self.lap_from_s + self.lap_lasts_s;
        let to_s = if ends_s.is_nan() {
            self.raw.last_s()
        } else {
            ends_s
        };
        self.raw.lap(LapMark {
            from_s: self.lap_from_s,
            to_s,
        });
    }

    pub fn finish(mut self) -> (Kind, Raw) {
        if self.is_route {
            self.raw.notes.push(notes::from_route());
        }
        if self.unreadable > 0 {
            self.raw
                .notes
                .push(notes::unreadable(self.unreadable, self.first_unreadable));
        }
        (self.kind, self.raw)
    }
}

/// Whether a value stands in a point itself, in its position, or anywhere in its extensions.
fn belongs_to_point(open: &[Element]) -> bool {
    let Some(point) = open.iter().rposition(|element| element.is_point()) else {
        return false;
    };
    match &open[point + 1..] {
        [] | [Element::Position] => true,
        [first, ..] => *first == Element::Extensions,
    }
}
