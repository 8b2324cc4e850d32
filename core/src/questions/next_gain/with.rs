//! What the question takes.

use serde::{Deserialize, Serialize};

use super::candidate::Candidate;
use super::usual::Standing;
use crate::inputs::error::{Error, Kind};
use crate::inputs::fields;
use crate::inputs::message;
use crate::questions::request::check_number;
use crate::scenario::Scenario;

/// How much of the question is answered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Portion {
    /// All of it.
    #[default]
    All,
    /// What each candidate saves.
    Each,
    /// The best set.
    Best,
}

/// What the question takes.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The candidates; usual ones if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub candidates: Option<Vec<Candidate>>,
    /// Which riders the usual ones are for.
    pub standing: Standing,
    /// Money to spend, in the rider's own currency.
    pub money: f64,
    /// Hours to spend every week.
    pub hours_per_week: f64,
    /// For how many weeks.
    pub weeks: f64,
    /// How often each of the scenario's events is ridden; once each if left out.
    pub times_ridden: Vec<f64>,
    /// How much of it to answer.
    pub part: Portion,
    /// The most rides that the search for the best set works out in one request.
    pub rides_at_once: u32,
    /// What earlier askings worked out, as they gave it.
    pub so_far: Vec<f64>,
}

impl Default for With {
    fn default() -> Self {
        Self {
            candidates: None,
            standing: Standing::default(),
            money: fields::MONEY.default,
            hours_per_week: fields::HOURS_PER_WEEK.default,
            weeks: fields::WEEKS.default,
            times_ridden: Vec::new(),
            part: Portion::default(),
            rides_at_once: fields::RIDES_AT_ONCE.default as u32,
            so_far: Vec::new(),
        }
    }
}

impl With {
    /// Checks the budgets; gives how often each event is ridden.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self, scenario: &Scenario) -> Result<Vec<f64>, Error> {
        check_number(&fields::MONEY, "with.money", self.money)?;
        check_number(
            &fields::HOURS_PER_WEEK,
            "with.hours_per_week",
            self.hours_per_week,
        )?;
        check_number(&fields::WEEKS, "with.weeks", self.weeks)?;
        check_number(
            &fields::RIDES_AT_ONCE,
            "with.rides_at_once",
            f64::from(self.rides_at_once),
        )?;
        for (i, times) in self.times_ridden.iter().enumerate() {
            fields::TIMES_RIDDEN.check(|| format!("with.times_ridden[{i}]"), *times)?;
        }
        match self.times_ridden.len() {
            0 => Ok(vec![1.0; scenario.events.len()]),
            n if n == scenario.events.len() => Ok(self.times_ridden.clone()),
            _ => {
                let message = message::times_for_each_event();
                Err(Error::new(Kind::Conflict, "with.times_ridden", message))
            }
        }
    }
}
