//! What the day does to the ride: the wind along the road, another start, and what each error of the forecast costs.

use serde::Serialize;

use super::With;
use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::inputs::quantity::{Column, Figure};
use crate::numerics::solve::spaced;
use crate::questions::request::check_number;
use crate::riding::effort::{Effort, paced};
use crate::riding::integrated::{Integrated, Sample, Setup, TimeModel};
use crate::scenario::propagation::{Case, Propagation, figure, with_model_error};
use crate::scenario::ride_errors::no_effort;
use crate::scenario::{LaterWeather, Scenario};
use crate::uncertainty::draws::Spread;

/// Sectors of the compass by which the course's headings are told.
const SECTORS: usize = 16;
/// Starts on the curve, from the first forecast to the later one.
const STARTS: usize = 13;

/// What the day does to the ride.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Day {
    /// The share of the course that leads each way: sixteen sectors, clockwise, the first with its middle at north. Empty where the
    /// course does not say.
    pub heading_shares: Vec<f64>,
    /// What each error of the forecast costs, the dearest first.
    pub forecast_errors: Vec<ForecastError>,
    /// The same ride at another start, where the weather changes.
    pub other_start: Option<OtherStart>,
    /// Curves.
    pub columns: DayColumns,
}

/// What one error of the forecast costs.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ForecastError {
    /// The path of what is forecast.
    pub field: String,
    /// One standard deviation of it, in its own unit.
    pub error: f64,
    /// One standard deviation of the finish time that comes from it, s.
    pub costs_s: f64,
}

/// A ride that starts at another time of the same day.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OtherStart {
    /// When it starts, s after midnight.
    pub start_at_s: f64,
    /// Its finish time, with all its doubt.
    pub time_s: Figure,
    /// By how much it is slower than the ride as planned. What both share cancels, the model's own error too.
    pub slower_s: Figure,
}

/// Curves of a day.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct DayColumns {
    /// Head wind at rider height where and when the ride is, by the answer's own distances, m/s; not a number where the road does
    /// not say which way it leads.
    pub along_head_wind_m_s: Column,
    /// Times of day to start at, from the first forecast to the later one, s after midnight; empty where the weather stays.
    pub start_at_s: Column,
    /// Finish time from each, s.
    pub start_time_s: Column,
}

/// The ride as it was answered.
pub(super) struct Ridden<'a> {
    pub(super) inquiry: &'a Propagation<'a>,
    pub(super) scenario: &'a Scenario,
    pub(super) with: &'a With,
    pub(super) setup: &'a Setup,
    pub(super) effort: Effort,
    pub(super) samples: &'a [Sample],
    /// The finish time, where that was asked for.
    pub(super) time: Option<&'a Spread<3>>,
}

/// What the day does to a ride; `None` where there is neither wind nor change.
///
/// # Errors
/// Names the field that is wrong, or says why the other start cannot be ridden.
pub(super) fn day(ridden: &Ridden<'_>) -> Result<Option<Day>, Error> {
    let Ridden {
        scenario, setup, ..
    } = ridden;
    let later = scenario.conditions.later;
    if later.is_none() && ridden.with.other_start_at_s.is_some() {
        return Err(Error::missing("scenario.conditions.later"));
    }
    let winds = setup.head_winds_m_s(ridden.samples);
    let blows = winds.iter().flatten().any(|wind_m_s| *wind_m_s != 0.0);
    if later.is_none() && !blows {
        return Ok(None);
    }
    let later = later.filter(|_| ridden.time.is_some());
    let (start_at_s, start_time_s) =
        later.map_or_else(Default::default, |later| ridden.starts(&later));
    Ok(Some(Day {
        heading_shares: setup.course.heading_shares(SECTORS),
        forecast_errors: ridden.forecast_errors(),
        other_start: match later {
            Some(later) => Some(ridden.other_start(&later)?),
            None => None,
        },
        columns: DayColumns {
            along_head_wind_m_s: winds
                .into_iter()
                .map(|wind| wind.unwrap_or(f64::NAN))
                .collect(),
            start_at_s: start_at_s.into(),
            start_time_s: start_time_s.into(),
        },
    }))
}

impl Ridden<'_> {
    /// Times of day to start at, and the finish times from them; it ends at the first that cannot be ridden.
    fn starts(&self, later: &LaterWeather) -> (Vec<f64>, Vec<f64>) {
        spaced(later.first_at_s, later.at_s, STARTS)
            .into_iter()
            .map_while(|at_s| {
                let setup = self.setup.starting_later(at_s - later.start_at_s);
                let paced = paced(&Integrated, &setup, self.effort).ok()?;
                Some((at_s, paced.time_s))
            })
            .unzip()
    }

    fn other_start(&self, later: &LaterWeather) -> Result<OtherStart, Error> {
        let usual_s = if later.start_at_s == later.at_s {
            later.first_at_s
        } else {
            later.at_s
        };
        let start_at_s = self.with.other_start_at_s.unwrap_or(usual_s);
        check_number(
            &fields::OTHER_START_AT_S,
            "with.other_start_at_s",
            start_at_s,
        )?;
        let riding = self.scenario.riding_position;
        let outputs = |case: &Case<'_>, time_model: &dyn TimeModel| -> Result<[f64; 2], Error> {
            let setup = case.setup(riding)?;
            let effort = case.effort(self.effort);
            let time_s = |setup: &Setup| {
                paced(time_model, setup, effort)
                    .map(|paced| paced.time_s)
                    .map_err(no_effort)
            };
            let other_s = time_s(&setup.starting_later(start_at_s - later.start_at_s))?;
            Ok([other_s, other_s - time_s(&setup)?])
        };
        let spread = self.inquiry.spread(outputs)?;
        let model_error_share = self.scenario.model_error_share.value;
        Ok(OtherStart {
            start_at_s,
            time_s: with_model_error(figure(&spread, |o| o[0]), model_error_share),
            slower_s: figure(&spread, |o| o[1]),
        })
    }

    fn forecast_errors(&self) -> Vec<ForecastError> {
        let Some(spread) = self.time else {
            return Vec::new();
        };
        let variance_s2 = figure(spread, |o| o[0]).sd.powi(2);
        let sd_of = |field: &str| {
            let of_field = self
                .inquiry
                .inputs()
                .iter()
                .find(|input| input.path == field);
            of_field.map_or(0.0, |input| input.uncertain.sd)
        };
        self.inquiry
            .contributions(spread, |o| o[0])
            .into_iter()
            .filter(|input| input.field.starts_with("scenario.conditions."))
            .map(|input| ForecastError {
                error: sd_of(&input.field),
                costs_s: (input.share * variance_s2).sqrt(),
                field: input.field,
            })
            .collect()
    }
}
