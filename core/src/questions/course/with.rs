//! What the question takes.

use serde::Deserialize;

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields;
use crate::inputs::message;
use crate::measuring::columns::{MOST_SAMPLES, Samples};
use crate::questions::request::check_number;
use crate::scenario::drawn_course::Preset;

/// The columns of a recording that say where the road leads. Those that are given are equally long; what is missing is `null`.
#[derive(Clone, Debug, Default, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct TrackColumns {
    /// Degrees north.
    pub latitude_deg: Samples,
    /// Degrees east.
    pub longitude_deg: Samples,
    /// Metres above sea level.
    pub elevation_m: Samples,
    /// Metres along the road, which count where there are no positions.
    pub distance_m: Samples,
    /// The way a surveyed road leads from here on, degrees clockwise from north.
    pub bearing_deg: Samples,
    /// Radius of the bend from here to the next point of a surveyed road, m.
    pub radius_m: Samples,
    /// The share of the wind that reaches the rider from there to the next point.
    pub wind_share: Samples,
}

/// A recording of a ride, or a route.
#[derive(Clone, Debug, Default, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct TrackForm {
    /// What was recorded.
    pub columns: TrackColumns,
    /// Whether those with a distance are points of a surveyed road: the course is theirs, and nothing is smoothed.
    pub is_surveyed: bool,
}

/// A kind of file that a course is written as.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum FileForm {
    /// A track of GPX 1.1 that begins at an invented place, with the points of the course in it.
    Gpx,
    /// A table of the points in SI units.
    Csv,
}

/// What the question takes: a road, and what becomes of it, in this order.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// One recording; the scenario's own course where there is none.
    pub recordings: Vec<TrackForm>,
    /// The invented shape that takes the place of the scenario's own course, as long as that one. A recording goes before it.
    #[cfg_attr(feature = "types", ts(optional))]
    pub preset: Option<Preset>,
    /// Over how many metres each way its elevation is averaged.
    pub smooth_m: f64,
    /// Where the course begins on that road, m.
    pub from_m: f64,
    /// Where it ends; at the end of the road if left out, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub to_m: Option<f64>,
    /// Whether it is ridden the other way.
    pub reversed: bool,
    /// Whether it is ridden there and back.
    pub out_and_back: bool,
    /// How often it is ridden, lap after lap.
    pub times: u32,
    /// How many points are kept at most, with numbers that are rounded for a link: distances to 0.1 m, heights to 0.01 m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub most_points: Option<u32>,
    /// The file that is asked for; without one a simple course is refused.
    #[cfg_attr(feature = "types", ts(optional))]
    pub export: Option<FileForm>,
    /// What the course is called in that file.
    pub name: String,
}

impl Default for With {
    fn default() -> Self {
        Self {
            recordings: Vec::new(),
            preset: None,
            smooth_m: fields::SMOOTH_M.default,
            from_m: fields::FROM_M.default,
            to_m: None,
            reversed: false,
            out_and_back: false,
            times: fields::TIMES.default as u32,
            most_points: None,
            export: None,
            name: String::new(),
        }
    }
}

impl With {
    /// Checks the numbers and the columns.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<(), Error> {
        check_number(&fields::SMOOTH_M, "with.smooth_m", self.smooth_m)?;
        check_number(&fields::FROM_M, "with.from_m", self.from_m)?;
        if let Some(to_m) = self.to_m {
            check_number(&fields::TO_M, "with.to_m", to_m)?;
        }
        check_number(&fields::TIMES, "with.times", f64::from(self.times))?;
        if let Some(most) = self.most_points {
            check_number(&fields::COURSE_POINTS, "with.most_points", f64::from(most))?;
        }
        Error::check_text(&self.name, || "with.name".into())?;
        match self.recordings.as_slice() {
            [] => Ok(()),
            [recording] => recording.columns.check("with.recordings[0].columns"),
            _ => Err(Error::too_many("with.recordings", 1)),
        }
    }
}

impl TrackColumns {
    fn check(&self, path: &str) -> Result<(), Error> {
        let columns = [
            ("latitude_deg", &self.latitude_deg),
            ("longitude_deg", &self.longitude_deg),
            ("elevation_m", &self.elevation_m),
            ("distance_m", &self.distance_m),
            ("bearing_deg", &self.bearing_deg),
            ("radius_m", &self.radius_m),
            ("wind_share", &self.wind_share),
        ];
        let longest = columns
            .iter()
            .map(|(_, column)| column.0.len())
            .max()
            .unwrap_or(0);
        if longest > MOST_SAMPLES {
            return Err(Error::too_many(path, MOST_SAMPLES));
        }
        for (name, column) in columns {
            let length = column.0.len();
            if length != 0 && length != longest {
                let field = format!("{path}.{name}");
                let message = message::columns_differ(&field, length, longest);
                return Err(Error::new(Kind::Conflict, field, message));
            }
        }
        Ok(())
    }
}
