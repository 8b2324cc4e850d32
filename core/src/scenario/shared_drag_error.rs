//! The part of the drag areas' errors that positions share, as one test or one guess of all of them gives it, and what could be
//! measured of them.

use serde::Serialize;

use super::propagation::Case;
use super::{Input, Ridden, Scenario};
use crate::inputs::fields;
use crate::inputs::quantity::{Known, Quantity};
use crate::numerics::solve::within;
use crate::riding::integrated::Setup;
use crate::uncertainty::value_of_information::Direction;

/// The most pairs of positions whose difference is weighed as a measurement; of more, only those with the reference.
const MOST_DIFFERENCES: usize = 15;

/// What is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Measured {
    /// One input, the whole of it: of a drag area the error that it shares with the others too.
    Input,
    /// The difference of two positions' drag areas, as one test of both gives it.
    Difference,
}

/// The part of the drag areas' doubt that is common to all positions, kept apart from what is each one's own.
pub(crate) struct SharedDragError {
    /// The scenario, its drag areas with their own part of the doubt.
    pub(crate) scenario: Scenario,
    /// How far one standard deviation of the common part moves each position's drag areas, m².
    moves_m2: Vec<f64>,
}

impl SharedDragError {
    pub(crate) fn new(scenario: &Scenario, rides: &[Ridden], correlation: f64) -> Self {
        let mut own = scenario.clone();
        let mut moves_m2 = vec![0.0; own.positions.len()];
        for (i, position) in own.positions.iter_mut().enumerate() {
            // What is exact stays so, and a position that is not compared has no part in this.
            if rides.iter().any(|ride| ride.position == i) {
                moves_m2[i] = correlation.sqrt() * position.cda_m2.sd;
                position.cda_m2.sd *= (1.0 - correlation).sqrt();
            }
        }
        Self {
            scenario: own,
            moves_m2,
        }
    }

    /// As an input of the question's own, in standard deviations.
    pub(crate) fn own(&self) -> Vec<(&'static str, Quantity, &'static fields::Field)> {
        let uncertain = self.moves_m2.iter().any(|&moves| moves > 0.0);
        let common = Quantity {
            value: 0.0,
            sd: 1.0,
            source: Known::Estimated,
        };
        if uncertain {
            vec![("with.cda_correlation", common, &fields::COMMON_ERROR)]
        } else {
            Vec::new()
        }
    }

    /// What could be measured: every input of the scenario, a drag area with its common and its own part, and the difference of
    /// every two drag areas.
    pub(crate) fn measurements(&self, inputs: &[Input], reference: usize) -> Vec<Measurement> {
        let cda_of = |position: usize| format!("scenario.positions[{position}].cda_m2");
        // How far the errors of a position's drag area move it, the common one first.
        let moves = |place: usize, position: usize| {
            [
                (0, self.moves_m2[position]),
                (place, inputs[place].uncertain.sd),
            ]
        };
        let mut areas: Vec<(usize, usize)> = Vec::new();
        let mut found: Vec<Measurement> = Vec::new();
        for (place, input) in inputs.iter().enumerate() {
            // The common part of all drag areas cannot be measured by itself.
            if !input.path.starts_with("scenario.") {
                continue;
            }
            let position =
                (0..self.moves_m2.len()).find(|&position| input.path == cda_of(position));
            areas.extend(position.map(|position| (place, position)));
            let direction = match position {
                Some(position) => {
                    Direction::new(&moves(place, position)).unwrap_or(Direction::of(place))
                }
                None => Direction::of(place),
            };
            found.push(Measurement {
                what: Measured::Input,
                fields: vec![input.path.clone()],
                source: input.known,
                direction,
            });
        }
        let many = areas.len() * areas.len().saturating_sub(1) / 2 > MOST_DIFFERENCES;
        for (i, &(place, position)) in areas.iter().enumerate() {
            for &(other_place, other) in &areas[i + 1..] {
                if many && position != reference && other != reference {
                    continue;
                }
                let ([common, own], [other_common, other_own]) =
                    (moves(place, position), moves(other_place, other));
                let apart = [
                    (0, common.1 - other_common.1),
                    own,
                    (other_own.0, -other_own.1),
                ];
                found.extend(Direction::new(&apart).map(|direction| Measurement {
                    what: Measured::Difference,
                    fields: vec![cda_of(position), cda_of(other)],
                    source: less_sure(inputs[place].known, inputs[other_place].known),
                    direction,
                }));
            }
        }
        found
    }

    /// Moves every drag area of every position by the common error of a case.
    pub(crate) fn shift(&self, case: &Case<'_>, rides: &[Ridden], setups: &mut [Setup]) {
        let Some(&error) = case.own.first() else {
            return;
        };
        for (ride, setup) in rides.iter().zip(setups) {
            let by_m2 = error * self.moves_m2.get(ride.position).copied().unwrap_or(0.0);
            let factor = within(
                setup.position.cda_m2 + by_m2,
                fields::CDA_M2.min,
                fields::CDA_M2.max,
            ) / setup.position.cda_m2;
            if factor != 1.0 {
                setup.position = setup.position.clone().times(factor);
            }
        }
    }
}

/// Something that could be measured before choosing.
pub(crate) struct Measurement {
    pub(crate) what: Measured,
    pub(crate) fields: Vec<String>,
    pub(crate) source: Known,
    pub(crate) direction: Direction,
}

fn less_sure(one: Known, other: Known) -> Known {
    let either = |known: Known| one == known || other == known;
    [Known::Typical, Known::Estimated]
        .into_iter()
        .find(|&known| either(known))
        .unwrap_or(Known::Measured)
}
