//! Several choices of position and equipment over several distances: their finish times, how every uncertain input moves them,
//! and draws of all of them shared_error.
//!
//! Which position: crossovers and what a position may cost are solved for by integrated rides. Draws go by one quick ride
//! each, at the power that the draw's own curve allows for the known time, and from there by the known elasticity
//! (`riding::effort::KnownEffort`). Draws come in parts: the answer carries a tally of counts and sums, and the next
//! request goes on from it, so that the page shows progress, stops, and computes nothing; a part asks for the draws alone
//! (`part`). What a measurement is worth (`uncertainty::value_of_information`) is worked out from the same sums: a
//! measurement is a linear combination of the inputs' errors, so a drag area counts with its common and its own part, and
//! the difference of two as a test of both gives it.

use std::rc::Rc;

use super::propagation::{Case, Propagation};
use super::ride_errors::no_effort;
use super::shared_drag_error::{Measurement, SharedDragError};
use super::{Event, Ridden};
use crate::inputs::error::{Error, Kind};
use crate::inputs::message;
use crate::inputs::quantity::Figure;
use crate::riding::crossovers::Crossing;
use crate::riding::effort::NoEffort;
use crate::riding::integrated::Setup;
use crate::riding::known_ride::{KnownRide, USUAL_ROAD, at_length};
use crate::uncertainty::draws::{Normal, Sensitivities, draw_errors, moves, with_errors};
use crate::uncertainty::value_of_information::{Shape, Tally};

/// The most stretches that the draws of one request are taken over: a second or so of work.
const MOST_STRETCHES_DRAWN: f64 = 1e7;

/// Every ride in a case.
pub(crate) fn setups(case: &Case<'_>, rides: &[Ridden]) -> Result<Vec<Setup>, Error> {
    rides.iter().map(|&ride| case.setup_in(ride)).collect()
}

/// Every ride in a case on the course that an event has of its own; none where it has none.
fn setups_on_own_course(
    case: &Case<'_>,
    rides: &[Ridden],
    event: usize,
) -> Result<Vec<Setup>, Error> {
    let own = case.scenario().events.get(event);
    let Some(there) = own
        .filter(|event| event.course.is_some())
        .and_then(|_| case.scenario().on_event(event))
    else {
        return Ok(Vec::new());
    };
    let course = Rc::new(there.course());
    rides
        .iter()
        .map(|&ride| there.setup_in(ride, Rc::clone(&course)))
        .collect::<Option<_>>()
        .ok_or_else(Error::no_such_position)
}

/// The place of an event's own course among the roads of a comparison.
pub(crate) fn own_road(event: usize) -> usize {
    USUAL_ROAD + 1 + event
}

/// Every ride at every event: on its own course, or as `usual` on the scenario's at its length.
pub(crate) fn setups_on_events(
    case: &Case<'_>,
    rides: &[Ridden],
    usual: &[Setup],
) -> Result<Vec<Vec<Setup>>, Error> {
    let at = |(place, event): (usize, &Event)| {
        if event.course.is_some() {
            return setups_on_own_course(case, rides, place);
        }
        let course = Rc::new(case.course().scaled_to(event.length_m()));
        let there = |setup: &Setup| Setup {
            course: Rc::clone(&course),
            ..setup.clone()
        };
        Ok(usual.iter().map(there).collect())
    };
    case.scenario().events.iter().enumerate().map(at).collect()
}

/// The rides that are compared.
pub(crate) struct Comparison<'a> {
    pub(crate) propagation: &'a Propagation<'a>,
    pub(crate) rides: &'a [Ridden],
    pub(crate) shared_error: &'a SharedDragError,
    pub(crate) measurements: &'a [Measurement],
    pub(crate) known_rides: Vec<KnownRide>,
}

/// The choices at the values of all inputs, and their times: an input of one position leaves the others there.
struct AtRest {
    roads: Vec<Vec<Setup>>,
    times_s: Vec<f64>,
}

impl Comparison<'_> {
    /// Adds every choice over a distance; adds none where one of them cannot be ridden.
    pub(crate) fn row(&mut self, setups: &[Setup], distance_m: f64) -> bool {
        let row: Result<Vec<KnownRide>, NoEffort> = setups
            .iter()
            .enumerate()
            .map(|(choice, setup)| {
                KnownRide::new(choice, &at_length(setup, distance_m), USUAL_ROAD)
            })
            .collect();
        row.map(|row| self.known_rides.extend(row)).is_ok()
    }

    /// Adds the reference and the choice where they cross.
    pub(crate) fn pair(&mut self, setups: &[Setup], crossing: &Crossing, reference: usize) -> bool {
        let pair: Option<Vec<KnownRide>> = [reference, crossing.choice]
            .into_iter()
            .map(|choice| {
                let there = at_length(setups.get(choice)?, crossing.distance_m);
                KnownRide::new(choice, &there, USUAL_ROAD).ok()
            })
            .collect();
        pair.map(|pair| self.known_rides.extend(pair)).is_some()
    }

    /// Every choice in a case: on the scenario's course, then on each event's own where it has one.
    fn roads(&self, case: &Case<'_>) -> Result<Vec<Vec<Setup>>, Error> {
        let own = (0..case.scenario().events.len())
            .map(|event| setups_on_own_course(case, self.rides, event));
        let mut roads = std::iter::once(setups(case, self.rides))
            .chain(own)
            .collect::<Result<Vec<_>, Error>>()?;
        for setups in &mut roads {
            self.shared_error.shift(case, self.rides, setups);
        }
        Ok(roads)
    }

    /// Finish times of every ride, by steady speeds; of choices that are as they were at rest the times are known.
    fn times_s(
        &self,
        case: &Case<'_>,
        mut roads: Vec<Vec<Setup>>,
        at_rest: Option<&AtRest>,
    ) -> Result<Vec<f64>, Error> {
        let course_moves = self.propagation.course_moves();
        let resting = |(road, setups): (usize, &Vec<Setup>)| -> Vec<Option<&AtRest>> {
            let at_rest = at_rest.filter(|_| road != USUAL_ROAD || !course_moves);
            let rests = |(choice, setup)| {
                at_rest.filter(|rest| rest.roads[road].get(choice) == Some(setup))
            };
            setups.iter().enumerate().map(rests).collect()
        };
        let known: Vec<Vec<Option<&AtRest>>> = roads.iter().enumerate().map(resting).collect();
        let time_s = |(i, ride): (usize, &KnownRide)| {
            let rest = known.get(ride.road).and_then(|road| road.get(ride.choice));
            if let Some(rest) = rest.copied().flatten() {
                return Ok(rest.times_s[i]);
            }
            let setup = roads
                .get_mut(ride.road)
                .and_then(|road| road.get_mut(ride.choice))
                .ok_or_else(|| Error::impossible("", message::no_such_choice()))?;
            if ride.road == USUAL_ROAD {
                setup.course = match course_moves {
                    true => Rc::new(case.course().scaled_to(ride.distance_m)),
                    false => Rc::clone(&ride.course),
                };
            }
            ride.known
                .time_s(&ride.time_model, setup)
                .map_err(no_effort)
        };
        self.known_rides.iter().enumerate().map(time_s).collect()
    }

    /// How the inputs move every ride's finish time: the values followed, their moves by steady speeds.
    pub(crate) fn moves(&self) -> Result<Sensitivities, Error> {
        let mut moved = self.shared_error.scenario.clone();
        let mut at_rest: Option<AtRest> = None;
        let mut times_s = |values: &[f64]| {
            self.propagation.at(&mut moved, values, |case| {
                let roads = self.roads(case)?;
                if at_rest.is_some() {
                    return self.times_s(case, roads, at_rest.as_ref());
                }
                let times_s = self.times_s(case, roads.clone(), None)?;
                at_rest = Some(AtRest {
                    roads,
                    times_s: times_s.clone(),
                });
                Ok(times_s)
            })
        };
        let spread = moves(&self.propagation.uncertain_inputs(), &mut times_s)?;
        Ok(Sensitivities {
            base: self
                .known_rides
                .iter()
                .map(|known| known.ride.time_s)
                .collect(),
            ..spread
        })
    }

    /// Draws of every choice at every event, added to those so far. Each draw has a seed of its own, so that draws in parts are
    /// the draws at once. Where the course has very many stretches fewer are taken than asked for, and the answer says so.
    pub(crate) fn counted(
        &self,
        shape: Shape,
        reference: usize,
        draws: u32,
        seed: u32,
        so_far: Option<Tally>,
    ) -> Result<Tally, Error> {
        let mut tally = so_far.unwrap_or_else(|| Tally::new(shape));
        if !tally.fits(shape) {
            let message = message::not_as_before("with.so_far");
            return Err(Error::new(Kind::Conflict, "with.so_far", message));
        }
        let inputs = self.propagation.uncertain_inputs();
        let (mut errors, mut values) = (vec![0.0; inputs.len()], vec![0.0; inputs.len()]);
        let mut moved = self.shared_error.scenario.clone();
        let mut gains = vec![0.0; self.known_rides.len()];
        let mut measured = vec![0.0; self.measurements.len()];
        for _ in 0..draws.min(self.most_draws()) {
            draw_errors(
                &inputs,
                &mut Normal::new(seed_of(seed, tally.draws)),
                &mut errors,
            );
            with_errors(&inputs, &errors, &mut values);
            let drawn = self.propagation.at(&mut moved, &values, |case| {
                self.times_s(case, self.roads(case)?, None)
            });
            let ridden = drawn.is_ok_and(|times_s| {
                self.gains(&times_s, shape.choices, reference, &mut gains);
                true
            });
            for (error, measurement) in measured.iter_mut().zip(self.measurements) {
                *error = measurement.direction.error(&errors);
            }
            tally.add(shape, &measured, ridden.then_some(&gains[..]));
        }
        Ok(tally)
    }

    fn gains(&self, times_s: &[f64], choices: usize, reference: usize, gains: &mut [f64]) {
        let time_s = |i: usize| times_s[i] + self.known_rides[i].left_out_s;
        for (i, gain) in gains.iter_mut().enumerate() {
            *gain = time_s(i - i % choices + reference) - time_s(i);
        }
    }

    fn most_draws(&self) -> u32 {
        let pieces: f64 = self.known_rides.iter().map(|known| known.pieces).sum();
        (MOST_STRETCHES_DRAWN / pieces).max(1.0) as u32
    }
}

/// How much faster the second of two rides is.
pub(crate) fn faster_by(spread: &Sensitivities, first: usize, second: usize) -> Figure {
    Figure {
        value: spread.base[first] - spread.base[second],
        sd: spread.sd(|moved| moved[first] - moved[second]),
    }
}

/// A seed for each draw; odd factors with well-mixed bits keep neighbouring draws apart.
fn seed_of(seed: u32, draw: u32) -> u64 {
    u64::from(seed).wrapping_mul(0x9E37_79B9_7F4A_7C15)
        ^ u64::from(draw).wrapping_mul(0xD1B5_4A32_D192_ED03)
}
