//! Which position for which distance?

mod answer;
mod at_distance;
mod columns;
mod counted;
mod with;

use super::request::Request;
use crate::inputs::error::{Error, Warning};
pub use crate::inputs::published_costs::PublishedCost;
use crate::inputs::published_costs::published_costs;
use crate::numerics::solve::spaced_log;
use crate::riding::crossovers::{Crossing, TimesByDistance, is_many};
use crate::riding::integrated::Setup;
use crate::riding::known_ride::{KnownRide, USUAL_ROAD, at_length};
use crate::scenario::comparison::{Comparison, own_road, setups, setups_on_events};
pub use crate::scenario::lower_bars::LowerBars;
use crate::scenario::lower_bars::lower_bars;
pub use crate::scenario::position_costs::PositionCost;
use crate::scenario::propagation::Propagation;
use crate::scenario::ride_doubts::overstated_hour;
use crate::scenario::ride_errors::no_effort;
pub use crate::scenario::shared_drag_error::Measured;
use crate::scenario::shared_drag_error::SharedDragError;
use crate::scenario::{Event, Roads};
use crate::uncertainty::value_of_information::Shape;
pub use answer::{Answer, Crossover, PositionChoice};
pub use at_distance::{AtDistance, ChoiceTime};
pub use columns::Columns;
pub use counted::{CountedDraws, CountedEvent, Worth};
pub use with::{MOST_CHOICES, Wanted, With};

/// Points at which the doubt of the curves is worked out.
const DOUBT_POINTS: (usize, usize) = (7, 4);
/// The course of all choices and events together has at most about as many points: a second or so of work.
const MOST_POINTS_TOGETHER: usize = 6_000;

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong, or the event that cannot be ridden.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        mut scenario,
        with,
        mut warnings,
    } = request;
    with.check()?;
    let (rides, reference) = with.choices(&scenario)?;
    warnings.extend(scenario.event_doubts());
    warnings.extend(scenario.simplify_for(rides.len(), MOST_POINTS_TOGETHER));
    scenario.settle_events()?;
    let reading_m = with.reading_m(&scenario)?;
    scenario.roads = Roads::AndEvents;
    let shared_error = SharedDragError::new(&scenario, &rides, with.cda_correlation);
    let propagation =
        Propagation::of_rides(&shared_error.scenario, rides.clone(), &shared_error.own());
    let setups = propagation.base(|case| setups(case, &rides))?;
    let measurements = shared_error.measurements(propagation.inputs(), rides[reference].position);
    let mut comparison = Comparison {
        propagation: &propagation,
        rides: &rides,
        shared_error: &shared_error,
        measurements: &measurements,
        known_rides: Vec::new(),
    };

    let on_events = propagation.base(|case| setups_on_events(case, &rides, &setups))?;
    for (event, there) in on_events.iter().enumerate() {
        let own = scenario.events[event].course.is_some();
        let road = if own { own_road(event) } else { USUAL_ROAD };
        for (choice, setup) in there.iter().enumerate() {
            let known = KnownRide::new(choice, setup, road)
                .map_err(|reason| scenario.cannot_ride_event(no_effort(reason), event))?;
            comparison.known_rides.push(known);
        }
    }
    let count = rides.len();
    let shape = Shape {
        occasions: scenario.events.len(),
        choices: count,
        measurements: measurements.len(),
    };
    let drawn = match (with.draws, with.so_far) {
        (0, None) => None,
        (draws, so_far) => {
            let tally = comparison.counted(shape, reference, draws, with.seed, so_far)?;
            Some(CountedDraws::new(&measurements, shape, tally))
        }
    };
    let choices = rides
        .iter()
        .zip(&setups)
        .map(|(ride, setup)| PositionChoice::new(*ride, setup))
        .collect();
    if with.part == Wanted::Draws {
        return Ok(Answer::of_draws(choices, reference, drawn, warnings));
    }
    let reading_at = comparison.known_rides.len();
    let reading_m = reading_m.filter(|&distance_m| comparison.row(&setups, distance_m));
    let events_m: Vec<f64> = scenario.events.iter().map(Event::length_m).collect();
    let curve = TimesByDistance::new(&setups, &events_m, reference);
    let crossovers = curve.crossovers(&setups, reference);
    let doubts_at = comparison.known_rides.len();
    let doubt_points = if is_many(&setups) {
        DOUBT_POINTS.1
    } else {
        DOUBT_POINTS.0
    };
    let doubt_m: Vec<f64> = curve
        .span()
        .map_or(Vec::new(), |(from_m, to_m)| {
            spaced_log(from_m, to_m, doubt_points)
        })
        .into_iter()
        .filter(|&distance_m| comparison.row(&setups, distance_m))
        .collect();
    let crossed_at = comparison.known_rides.len();
    let crossovers: Vec<Crossing> = crossovers
        .into_iter()
        .filter(|crossing| comparison.pair(&setups, crossing, reference))
        .collect();
    let spread = comparison.moves()?;

    let over = |row: usize, distance_m: f64, setups: &[Setup]| {
        AtDistance::new(
            &comparison,
            &spread,
            row,
            distance_m,
            reference,
            setups,
            &scenario,
        )
    };
    let at_event = |(event, (there, &distance_m)): (usize, (&Vec<Setup>, &f64))| {
        let at = over(event * count, distance_m, there);
        match scenario.events[event].duration_s {
            Some(duration_s) => at.in_fixed_time(duration_s, reference, there),
            None => at,
        }
    };
    let events: Vec<AtDistance> = on_events
        .iter()
        .zip(&events_m)
        .enumerate()
        .map(at_event)
        .collect();
    let read = |distance_m: f64| {
        let at = over(reading_at, distance_m, &setups);
        let Some(for_time_s) = with.for_time_s else {
            return at;
        };
        let there: Vec<Setup> = setups
            .iter()
            .map(|setup| at_length(setup, distance_m))
            .collect();
        at.in_fixed_time(for_time_s, reference, &there)
    };
    warnings.extend(long_ride_doubt(&setups, &comparison.known_rides));
    warnings.extend(scenario.beyond_fixed_times(with.for_time_s));
    Ok(Answer {
        choices,
        reference,
        reading: reading_m.map(read),
        crossovers: crossovers
            .iter()
            .enumerate()
            .map(|(i, crossing)| Crossover::new(crossing, &spread, crossed_at + 2 * i))
            .collect(),
        costs: comparison.costs(&scenario, &on_events, reference, &spread),
        lower_bars: lower_bars(&on_events, reference, &comparison.known_rides),
        published: published_costs(),
        drawn,
        warnings,
        columns: Columns::new(curve, &spread, doubts_at, &doubt_m, reference, count),
        events,
    })
}

fn long_ride_doubt(setups: &[Setup], known_rides: &[KnownRide]) -> Option<Warning> {
    known_rides
        .iter()
        .find_map(|known| overstated_hour(known.ride.time_s, &setups.get(known.choice)?.power))
}
