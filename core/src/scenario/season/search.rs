//! The rides of the search for the best set, and finish times at every set read off them.

use super::Season;
use super::parts::Parts;
use crate::inputs::error::{Error, Kind};
use crate::inputs::message;
use crate::numerics::subsets;
use crate::physiology::smooth_branches::Branch;
use crate::riding::effort::{TIME_ACCURACY, even_within};
use crate::riding::integrated::{Integrated, TimeModel};
use crate::riding::quasi_steady::QuasiSteady;

/// Relative accuracy of the finish times that the search for the best set rides: that of the polynomials they are read off.
const EVEN_ACCURACY: f64 = 1e-7;
/// Times of the search at all points together are no more than what one request can carry back.
const MOST_TIMES: usize = 300_000;
/// All rides in one request are taken over about as many stretches: a second or so of work.
const MOST_STRETCHES: f64 = 4e6;

/// Finish times of the search as far as they are worked out: a row of the season's columns for each point.
pub(crate) struct SearchTimes {
    pub(crate) times_s: Vec<f64>,
    /// How many there are to work out.
    pub(crate) of: usize,
}

impl SearchTimes {
    /// Whether every ride is worked out.
    pub(crate) fn is_complete(&self) -> bool {
        self.times_s.len() == self.of
    }
}

impl Season<'_> {
    /// Works out the rides of the search as far as one request goes, after those that earlier ones worked out.
    ///
    /// # Errors
    /// Names the candidates where their changes are too many or cannot be ridden together, or the earlier times where they are
    /// not of this search.
    pub(crate) fn search(
        &self,
        parts: &Parts,
        so_far: &[f64],
        rides_at_once: usize,
    ) -> Result<SearchTimes, Error> {
        let columns = self.columns.len();
        let points = subsets::points(&parts.parts)
            .filter(|points| points * columns <= MOST_TIMES)
            .ok_or_else(|| {
                Error::new(
                    Kind::TooLarge,
                    "with.candidates",
                    message::too_many_numbers(),
                )
            })?;
        let of = points * columns;
        let mut times = earlier(so_far, of)?;
        let mean_stretches = self.stretches as f64 / self.events.len().max(1) as f64;
        let rides = rides_at_once.min((MOST_STRETCHES / mean_stretches) as usize);
        // The quasi-steady time model settles as it is asked again.
        let (time_model, accuracy): (Box<dyn TimeModel>, f64) = if self.followed {
            (Box::new(Integrated), EVEN_ACCURACY)
        } else {
            (Box::new(QuasiSteady::default()), TIME_ACCURACY)
        };
        let until = (times.len() + rides.max(1)).min(of);
        // A ride takes about as long as that of the point before, and its own relation says what power that allows.
        let mut before_s: Vec<f64> = self
            .columns
            .iter()
            .map(|(event, _)| self.events[*event].now.time_s)
            .collect();
        while times.len() < until {
            let numbers = subsets::numbers(&parts.parts, times.len() / columns);
            let column = times.len() % columns;
            let (event, branch) = self.columns[column];
            let event = &self.events[event];
            let moved = self.plan.at(&event.scenario, parts, &numbers);
            let mut setup = self.setup(event, &moved)?;
            setup.power = branch.along(setup.power);
            let guess_w = setup.sustainable_w(before_s[column]).max(1.0);
            let ridden =
                even_within(time_model.as_ref(), &setup, guess_w, accuracy).map_err(|_| {
                    Error::impossible("with.candidates", message::cannot_be_ridden_together())
                })?;
            before_s[column] = ridden.time_s;
            times.push(ridden.time_s);
        }
        Ok(SearchTimes { times_s: times, of })
    }

    /// Finish times of one event at every set of the changes in `of`.
    pub(super) fn event_times_s(
        &self,
        parts: &Parts,
        times: &[f64],
        event: usize,
        of: usize,
    ) -> Vec<f64> {
        let mut later: Vec<f64> = Vec::new();
        for (c, _) in self
            .columns
            .iter()
            .enumerate()
            .filter(|(_, column)| column.0 == event)
        {
            let own: Vec<f64> = times
                .iter()
                .skip(c)
                .step_by(self.columns.len())
                .copied()
                .collect();
            let own = subsets::at_sets(&parts.parts, &own, of);
            if later.is_empty() {
                later = own;
            } else {
                later
                    .iter_mut()
                    .zip(own)
                    .for_each(|(later, own)| *later = later.max(own));
            }
        }
        later
    }

    /// Finish times of all events together, each as often as it is ridden, at every set of the changes in `of`.
    pub(super) fn season_times_s(&self, parts: &Parts, times: &[f64], of: usize) -> Vec<f64> {
        // What is smooth may be added up before it is read off.
        let smooth = |row: &[f64]| -> f64 {
            let whole = self
                .columns
                .iter()
                .zip(row)
                .filter(|((_, branch), _)| *branch == Branch::Whole);
            whole
                .map(|((event, _), time_s)| self.events[*event].times_ridden * time_s)
                .sum()
        };
        let smooth: Vec<f64> = times.chunks_exact(self.columns.len()).map(smooth).collect();
        let mut season = subsets::at_sets(&parts.parts, &smooth, of);
        for (event, _) in self
            .columns
            .iter()
            .filter(|(_, branch)| *branch == Branch::Short)
        {
            let own = self.event_times_s(parts, times, *event, of);
            let weight = self.events[*event].times_ridden;
            season
                .iter_mut()
                .zip(own)
                .for_each(|(sum, time_s)| *sum += weight * time_s);
        }
        season
    }
}

/// What earlier askings worked out.
fn earlier(so_far: &[f64], of: usize) -> Result<Vec<f64>, Error> {
    let plausible = |time_s: &f64| time_s.is_finite() && *time_s > 0.0;
    if so_far.len() > of || !so_far.iter().all(plausible) {
        let message = message::not_as_before("with.so_far");
        return Err(Error::new(Kind::Conflict, "with.so_far", message));
    }
    Ok(so_far.to_vec())
}
