//! What the question takes, and the choices that it compares.

use serde::Deserialize;

use crate::inputs::error::{Error, Kind};
use crate::inputs::fields;
use crate::inputs::message;
use crate::questions::request::check_number;
use crate::riding::effort::Effort;
use crate::scenario::{Ridden, Scenario, position_index};
use crate::uncertainty::value_of_information::Tally;

/// How much of the question is answered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Wanted {
    /// All of it.
    #[default]
    All,
    /// The draws alone, for whoever has the rest already.
    Draws,
}

/// What the question takes. Every ride is the best even effort in its position.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The positions to compare, by their places; all of them if left out.
    pub positions: Vec<usize>,
    /// Whether each piece of a position's equipment is a choice of its own, beside the position without any.
    pub equipment: bool,
    /// The position that the others are compared with, as it is worn; the ridden one if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub reference: Option<usize>,
    /// A distance to read the answer at, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub distance_m: Option<f64>,
    /// A fixed time to read the answer at instead, s: as far as the ridden position gets in it.
    #[cfg_attr(feature = "types", ts(optional))]
    pub for_time_s: Option<f64>,
    /// How the errors of the positions' drag areas go together, from 0 to 1: nearly 1 for guesses about one rider, or where one
    /// test measured them all, since its error of scale is common to them.
    pub cda_correlation: f64,
    /// How much of it to answer.
    pub part: Wanted,
    /// How many draws of the comparison to take; none if left out.
    pub draws: u32,
    /// The seed of the draws.
    pub seed: u32,
    /// The tally of draws that an earlier answer to the same request counted, to go on from.
    #[cfg_attr(feature = "types", ts(optional))]
    pub so_far: Option<Tally>,
}

impl Default for With {
    fn default() -> Self {
        Self {
            positions: Vec::new(),
            equipment: true,
            reference: None,
            distance_m: None,
            for_time_s: None,
            cda_correlation: fields::CDA_CORRELATION.default,
            part: Wanted::default(),
            draws: 0,
            seed: 1,
            so_far: None,
        }
    }
}

/// The most choices that are compared.
pub const MOST_CHOICES: usize = 24;

impl With {
    /// Checks the numbers.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<(), Error> {
        check_number(&fields::DRAWS, "with.draws", f64::from(self.draws))?;
        if let Some(distance_m) = self.distance_m {
            check_number(&fields::EVENT_DISTANCE_M, "with.distance_m", distance_m)?;
        }
        if let Some(for_time_s) = self.for_time_s {
            check_number(&fields::FOR_TIME_S, "with.for_time_s", for_time_s)?;
        }
        check_number(
            &fields::CDA_CORRELATION,
            "with.cda_correlation",
            self.cda_correlation,
        )
    }

    /// The distance that the answer is read at, m, if any.
    ///
    /// # Errors
    /// Names the time in which the rider gets nowhere, or too far.
    pub(super) fn reading_m(&self, scenario: &Scenario) -> Result<Option<f64>, Error> {
        let Some(for_time_s) = self.for_time_s else {
            return Ok(self.distance_m);
        };
        let mut lasting = scenario.clone();
        lasting.course.duration_s = Some(for_time_s);
        lasting.settle_course(Effort::Even).map_err(|error| Error {
            field: "with.for_time_s".into(),
            ..error
        })?;
        Ok(Some(lasting.course.length_m()))
    }

    /// The choices in the order of the scenario, and which of them is the reference.
    ///
    /// # Errors
    /// Names the place that is wrong.
    pub(super) fn choices(&self, scenario: &Scenario) -> Result<(Vec<Ridden>, usize), Error> {
        let all: Vec<usize> = (0..scenario.positions.len()).collect();
        let named = if self.positions.is_empty() {
            &all
        } else {
            &self.positions
        };
        let mut rides: Vec<Ridden> = Vec::new();
        for (i, &index) in named.iter().enumerate() {
            let position = position_index(scenario, index, &format!("with.positions[{i}]"))?;
            if named[..i].contains(&position) {
                let message = message::position_twice(position);
                return Err(Error::new(
                    Kind::Conflict,
                    format!("with.positions[{i}]"),
                    message,
                ));
            }
            let pieces = scenario
                .positions
                .get(position)
                .map_or(0, |position| position.equipment.len());
            if self.equipment {
                rides.push(Ridden {
                    position,
                    worn: None,
                });
                rides.extend((0..pieces).map(|worn| Ridden {
                    position,
                    worn: Some(worn),
                }));
            } else {
                rides.extend(scenario.as_worn(&[position]));
            }
            if rides.len() > MOST_CHOICES {
                let message = message::too_many_choices(MOST_CHOICES);
                return Err(Error::new(Kind::TooLarge, "with.positions", message));
            }
        }
        let reference = match self.reference {
            Some(reference) => position_index(scenario, reference, "with.reference")?,
            None if rides
                .iter()
                .any(|ride| ride.position == scenario.riding_position) =>
            {
                scenario.riding_position
            }
            None => rides.first().map_or(0, |ride| ride.position),
        };
        let place = scenario
            .as_worn(&[reference])
            .first()
            .and_then(|worn| rides.iter().position(|ride| ride == worn))
            .ok_or_else(|| {
                Error::new(
                    Kind::Conflict,
                    "with.reference",
                    message::reference_left_out(),
                )
            })?;
        Ok((rides, place))
    }
}
