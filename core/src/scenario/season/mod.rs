//! A season's events with changes to the rider's work and bicycle: what every set of changes saves, and the best set within two
//! budgets.
//!
//! The best set of next gain: candidates that move the same numbers make a part (`numerics::subsets`); at best even
//! effort the season's time is ridden at every value a part's sets give a number or, where those are many, at Chebyshev
//! points, so that every set of candidates is known with all its interactions from a few hundred rides. Chances are
//! folded in item by item over the table of all sets, exactly; `numerics::best_set` then compares every set. A
//! candidate's weekly hours are a block of weeks that may begin in any week (`numerics::schedule`): sets that would count
//! are scheduled by a complete search, capped, which on the side of caution leaves out what it could not place, and says
//! so. One that requires another brings nothing where that fails. The set's ± and its 95 % range are those of the mixture
//! of all outcomes (`uncertainty::outcomes`). Where finish times cross the kink of the long-ride loss, its two smooth
//! branches are read off and the later taken. Long courses are searched in pieces: each request works out some rides and
//! returns the state with which the next one resumes.

pub(crate) mod best;
pub(crate) mod changes;
pub(crate) mod left_out;
pub(crate) mod measuring;
pub(crate) mod parts;
pub(crate) mod plan;
pub(crate) mod savings;
pub(crate) mod search;

use std::rc::Rc;

use super::ride_errors::no_effort;
use super::{CourseKind, Event, Scenario};
use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::inputs::quantity::Figure;
use crate::numerics::best_set::MOST_ITEMS;
use crate::physics::course::Course;
use crate::physiology::power_duration::PowerDuration;
use crate::physiology::smooth_branches::Branch;
use crate::riding::effort::{Effort, Paced, even_from, paced};
use crate::riding::fixed_time::FixedTime;
use crate::riding::integrated::{Integrated, Setup, TimeModel};
use plan::Plan;

/// Up to so many stretches a ride of the search is followed; beyond, it is read off steady speeds, as the draws are.
const MOST_STRETCHES_FOLLOWED: usize = 40;
/// Outputs of one event's spread: as the rider is, then with each candidate and those it requires, and with the best set.
const OUTPUTS: usize = MOST_ITEMS + 2;
/// The most stretches that the rider's own doubts are worked out over, all rides together.
const MOST_STRETCHES_IN_DOUBT: usize = 20_000_000;

/// One event: the scenario on its road, as it is ridden now.
pub(crate) struct RiddenEvent {
    pub(crate) scenario: Scenario,
    course: Rc<Course>,
    pub(crate) times_ridden: f64,
    pub(crate) now: Paced,
    pub(crate) power: PowerDuration,
    /// Where the event goes by time.
    pub(crate) fixed: Option<FixedTime>,
}

/// All the rider's events, and what the candidates move in them.
pub(crate) struct Season<'a> {
    plan: &'a Plan,
    pub(crate) events: Vec<RiddenEvent>,
    /// The rides of the search at each point: an event, by its place, along a branch.
    columns: Vec<(usize, Branch)>,
    /// Whether the search follows its rides.
    followed: bool,
    /// Stretches of all events' courses together.
    stretches: usize,
    /// Whether the rider's own doubts are worked out: not where that would take long.
    rider_counts: bool,
}

impl<'a> Season<'a> {
    /// The events of a scenario, each ridden as it is now.
    ///
    /// # Errors
    /// Says why one cannot be ridden.
    pub(crate) fn new(
        scenario: &'a Scenario,
        plan: &'a Plan,
        times_ridden: Vec<f64>,
    ) -> Result<Self, Error> {
        let ride = |(place, times_ridden): (usize, f64)| -> Result<_, Error> {
            let duration_s = scenario.events[place].duration_s;
            let scenario = scenario.on_event(place).ok_or_else(Error::no_such_event)?;
            let course = Rc::new(scenario.course());
            let setup = scenario
                .setup_on(scenario.riding_position, Rc::clone(&course))
                .ok_or_else(Error::no_such_position)?;
            let now = paced(&Integrated, &setup, Effort::Even).map_err(no_effort)?;
            let fixed = duration_s
                .and_then(|fixed_s| FixedTime::new(&setup, Effort::Even, now, fixed_s).ok());
            let branches = Branch::of(setup.riding_s(now.time_s), &setup.power);
            let event = RiddenEvent {
                scenario,
                course,
                times_ridden,
                now,
                power: setup.power,
                fixed,
            };
            Ok((event, branches))
        };
        let events = times_ridden
            .into_iter()
            .enumerate()
            .map(|(place, times)| {
                ride((place, times)).map_err(|error| match scenario.events[place].course {
                    Some(_) => scenario.cannot_ride_event(error, place),
                    None => error,
                })
            })
            .collect::<Result<Vec<_>, Error>>()?;
        let columns = events
            .iter()
            .enumerate()
            .flat_map(|(e, (_, branches))| branches.iter().map(move |&b| (e, b)));
        let columns = columns.collect();
        let events: Vec<RiddenEvent> = events.into_iter().map(|(event, _)| event).collect();
        let stretches_of = |event: &RiddenEvent| event.course.segments.len();
        let longest = events.iter().map(stretches_of).max().unwrap_or(1);
        let stretches = events.iter().map(stretches_of).sum();
        let rides_of_each = (plan.moves.len() + 1) * 2 * plan.numbers();
        Ok(Self {
            plan,
            events,
            columns,
            followed: longest <= MOST_STRETCHES_FOLLOWED,
            stretches,
            rider_counts: rides_of_each * stretches <= MOST_STRETCHES_IN_DOUBT,
        })
    }

    /// How often each event is ridden.
    pub(crate) fn times_ridden(&self) -> Vec<f64> {
        self.events.iter().map(|event| event.times_ridden).collect()
    }

    /// How much further savings of time get at the events that go by time, by event; `None` if none does.
    pub(crate) fn further_m(
        &self,
        faster_s: impl Fn(usize) -> Figure,
    ) -> Option<Vec<Option<Figure>>> {
        let further = |(e, event): (usize, &RiddenEvent)| {
            let fixed = event.fixed?;
            Some(fixed.further_m(faster_s(e)))
        };
        self.events
            .iter()
            .any(|event| event.fixed.is_some())
            .then(|| self.events.iter().enumerate().map(further).collect())
    }

    /// Finish time on an event's road of a changed scenario in a position.
    fn time_s(
        &self,
        time_model: &dyn TimeModel,
        event: &RiddenEvent,
        moved: &(Scenario, usize),
    ) -> Result<f64, Error> {
        let setup = self.setup(event, moved)?;
        even_from(time_model, &setup, event.now.power_w)
            .map(|paced| paced.time_s)
            .map_err(no_effort)
    }

    /// The ride on an event's road of a changed scenario in a position.
    pub(crate) fn setup(
        &self,
        event: &RiddenEvent,
        (scenario, position): &(Scenario, usize),
    ) -> Result<Setup, Error> {
        // Only numbers of a simple course move.
        let course = match scenario.course.kind {
            CourseKind::Simple => Rc::new(scenario.course()),
            CourseKind::Profile => Rc::clone(&event.course),
        };
        scenario
            .setup_on(*position, course)
            .ok_or_else(Error::no_such_position)
    }
}

/// The scenario on its own course over the first event's distance, in whose numbers changes are found: the length of a simple road
/// is among them. Courses of an event's own are not changed.
pub(crate) fn over_first_event(scenario: &Scenario) -> Scenario {
    let first_m = scenario
        .events
        .first()
        .map_or(fields::DISTANCE_M.default, Event::length_m);
    scenario.stretched_to(first_m)
}
