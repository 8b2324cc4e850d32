//! What the question takes: a power or a speed, and the road at this spot.

use serde::Deserialize;

use crate::inputs::error::Error;
use crate::inputs::fields::{self, Field};
use crate::inputs::quantity::Quantity;
use crate::physics::air::{Heading, RoadWind};
use crate::physics::course::Course;
use crate::physics::resistance::{Stretch, slope};
use crate::questions::request::check_number;
use crate::riding::integrated::Setup;
use crate::scenario::check_quantity;

/// What the question takes: a power or a speed, and the road at this spot.
#[derive(Clone, Copy, Debug, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// Power at the pedals, W; the default is 250.
    #[cfg_attr(feature = "types", ts(optional))]
    pub power_w: Option<Quantity>,
    /// Or a speed over the ground, m/s.
    #[cfg_attr(feature = "types", ts(optional))]
    pub speed_m_s: Option<Quantity>,
    /// Rise over run here; the course's if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub grade: Option<f64>,
    /// The way the road leads here, degrees; the course's if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub bearing_deg: Option<f64>,
}

/// Which of the two is given.
pub(super) enum Asked {
    Power,
    Speed,
}

/// The road at this spot.
#[derive(Clone, Copy)]
pub(super) struct Spot {
    pub(super) grade: f64,
    pub(super) heading: Option<Heading>,
}

impl Spot {
    /// In other air.
    pub(super) fn stretch<'a>(
        &self,
        setup: &'a Setup,
        density_kg_m3: f64,
        wind: RoadWind,
    ) -> Stretch<'a> {
        Stretch::new(
            &setup.machine,
            &setup.position.shape,
            density_kg_m3,
            wind,
            slope(self.grade),
        )
    }

    /// The wind along and across it.
    pub(super) fn wind(&self, setup: &Setup) -> RoadWind {
        self.heading
            .map_or(RoadWind::default(), |heading| setup.wind.along(heading))
    }

    /// In the day's air.
    pub(super) fn today<'a>(&self, setup: &'a Setup) -> Stretch<'a> {
        self.stretch(setup, setup.density_kg_m3, self.wind(setup))
    }
}

impl With {
    /// What is given: which of the two, its path, its value and its field.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn asked(&self) -> Result<(Asked, &'static str, Quantity, &'static Field), Error> {
        match (self.power_w, self.speed_m_s) {
            (Some(_), Some(_)) => Err(Error::not_both("with.speed_m_s", "with.power_w")),
            (None, Some(speed_m_s)) => {
                check_quantity(&fields::SPEED_M_S, "with.speed_m_s", &speed_m_s)?;
                Ok((
                    Asked::Speed,
                    "with.speed_m_s",
                    speed_m_s,
                    &fields::SPEED_M_S,
                ))
            }
            (power_w, None) => {
                let power_w = power_w.unwrap_or(fields::POWER_W.chosen());
                check_quantity(&fields::POWER_W, "with.power_w", &power_w)?;
                Ok((Asked::Power, "with.power_w", power_w, &fields::POWER_W))
            }
        }
    }

    /// The road at this spot, the course's first stretch where it is not given.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn spot(&self, course: &Course) -> Result<Spot, Error> {
        let first = course.segments.first();
        let grade = match self.grade {
            Some(grade) => {
                check_number(&fields::GRADE, "with.grade", grade)?;
                grade
            }
            None => first.map_or(0.0, |segment| segment.grade()),
        };
        let heading = match self.bearing_deg {
            Some(bearing_deg) => {
                check_number(&fields::BEARING_DEG, "with.bearing_deg", bearing_deg)?;
                Some(Heading::new(bearing_deg))
            }
            None => first.and_then(|segment| segment.heading),
        };
        Ok(Spot { grade, heading })
    }
}
