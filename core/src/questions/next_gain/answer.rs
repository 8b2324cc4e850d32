//! What the question answers.

use serde::Serialize;

use super::candidate::Candidate;
use crate::inputs::error::Warning;
use crate::inputs::quantity::{Column, Figure};
use crate::scenario::season::best::BestSet;
use crate::scenario::season::left_out::LeftOut;
use crate::scenario::season::measuring::Measuring;
use crate::scenario::season::search::SearchTimes;

/// An event as it is ridden now.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct NextGainEvent {
    /// What the rider calls it.
    pub name: String,
    /// How far it is.
    pub distance_m: f64,
    /// The time of an event that goes by time; the distance is then that which the rider covers in it today.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub duration_s: Option<f64>,
    /// How often it is ridden.
    pub times_ridden: f64,
    /// Finish time as the rider is, at the best even effort, the model's own error counted.
    pub time_s: Figure,
    /// Power of that ride.
    pub power_w: f64,
}

/// What one candidate saves by itself, or where it requires others, what it adds to those. All events together means each as
/// often as it is ridden.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Gain {
    /// The candidate, filled up.
    pub candidate: Candidate,
    /// Hours that it takes in all.
    pub hours: f64,
    /// Seconds it saves over all events if it works; what is uncertain of its size and of the rider is in the sd.
    pub saves_s: Figure,
    /// Seconds it saves on average, its chance and that of what it requires counted; that it may not work is in the sd too.
    pub expected_s: Figure,
    /// Seconds it saves at each event, ridden once, if it works.
    pub by_event_s: Vec<Figure>,
    /// How much further it gets at each event that goes by time, if it works; left out where none does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub further_by_event_m: Option<Vec<Option<Figure>>>,
    /// Seconds saved on average for a unit of money; `null` if it costs none.
    pub expected_s_per_money: Option<f64>,
    /// Seconds saved on average for an hour; `null` if it takes none.
    pub expected_s_per_hour: Option<f64>,
}

/// How far the search for the best set is.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Searched {
    /// Rides worked out.
    pub done: u32,
    /// Rides to work out.
    pub of: u32,
    /// Their times, to be sent with the next request. They hold for other budgets and chances too.
    pub so_far: Vec<f64>,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// The events as they are ridden now.
    pub events: Vec<NextGainEvent>,
    /// What each candidate saves by itself, in the order given; none if only the best set was asked for.
    pub candidates: Vec<Gain>,
    /// The candidates' places, what saves most on average first.
    pub ranked: Vec<usize>,
    /// How far the search is; `null` if it was not asked for.
    pub searched: Option<Searched>,
    /// The best set; `null` until it is found.
    pub best: Option<BestSet>,
    /// The candidates that are not in the best set, in the order given; none until it is found.
    pub left_out: Vec<LeftOut>,
    /// What measuring a candidate before it is bought would be worth, the most first; none until the best set is found.
    pub measuring: Vec<Measuring>,
    /// Hours that the budget comes to in all.
    pub budget_hours: f64,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// The candidates' figures, in the order given.
    pub columns: Columns,
}

/// What the candidates save and take; none if only the best set was asked for.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Seconds saved on average.
    pub expected_s: Column,
    /// One standard deviation of that.
    pub expected_sd_s: Column,
    /// Seconds saved if it works.
    pub saves_s: Column,
    /// One standard deviation of that.
    pub saves_sd_s: Column,
    /// What it costs.
    pub money: Column,
    /// Hours that it takes in all.
    pub hours: Column,
}

impl Columns {
    /// The figures of all candidates.
    pub(super) fn new(gains: &[Gain]) -> Self {
        let column = |of: &dyn Fn(&Gain) -> f64| gains.iter().map(of).collect();
        Self {
            expected_s: column(&|gain| gain.expected_s.value),
            expected_sd_s: column(&|gain| gain.expected_s.sd),
            saves_s: column(&|gain| gain.saves_s.value),
            saves_sd_s: column(&|gain| gain.saves_s.sd),
            money: column(&|gain| gain.candidate.money),
            hours: column(&|gain| gain.hours),
        }
    }
}

impl From<SearchTimes> for Searched {
    fn from(times: SearchTimes) -> Self {
        Self {
            done: times.times_s.len() as u32,
            of: times.of as u32,
            so_far: times.times_s,
        }
    }
}
