//! What sets of candidates save at the season's events if all of them work, and what is uncertain of it.

use super::changes::Move;
use super::{OUTPUTS, RiddenEvent, Season};
use crate::inputs::error::Error;
use crate::inputs::quantity::Figure;
use crate::numerics::best_set::{self, Item};
use crate::riding::integrated::{Integrated, TimeModel};
use crate::riding::quasi_steady::QuasiSteady;
use crate::scenario::propagation::{Case, Propagation};
use crate::scenario::{Input, Scenario};
use crate::uncertainty::draws::Spread;

/// What a set of moves saves, and what is uncertain of it.
#[derive(Clone, Default)]
pub(crate) struct Saving {
    pub(super) by_event_s: Vec<f64>,
    /// How one standard deviation of each number that is uncertain at any event moves it, by event.
    pub(super) rider_s: Vec<Vec<f64>>,
    /// How one standard deviation of each uncertain amount of the moves moves it, by event, beside the amount's candidate and its
    /// place among that one's moves.
    pub(super) amounts_s: Vec<((usize, usize), Vec<f64>)>,
}

impl Saving {
    /// A weighted sum over the events: what moves one event moves the others with it.
    pub(crate) fn figure(&self, weights: &[f64]) -> Figure {
        let rider = self.rider_moves_s(weights).into_iter();
        let amounts = self
            .amounts_s
            .iter()
            .map(|(_, by_event)| weighed(by_event, weights));
        let sd = rider
            .chain(amounts)
            .map(|moved| moved * moved)
            .sum::<f64>()
            .sqrt();
        Figure {
            value: weighed(&self.by_event_s, weights),
            sd,
        }
    }

    /// The weighted sum with the chance that it works, and 0 if it does not: mean `p m`, variance `p v + p (1 − p) m²`.
    pub(crate) fn on_average(&self, weights: &[f64], works: f64) -> Figure {
        let Figure { value, sd } = self.figure(weights);
        Figure {
            value: works * value,
            sd: (works * sd * sd + works * (1.0 - works) * value * value).sqrt(),
        }
    }

    /// How one standard deviation of each of the rider's own numbers moves the weighted sum.
    pub(super) fn rider_moves_s(&self, weights: &[f64]) -> Vec<f64> {
        let inputs = self.rider_s.first().map_or(0, Vec::len);
        let by_event = |i: usize| {
            self.rider_s
                .iter()
                .map(|by_input| by_input[i])
                .collect::<Vec<f64>>()
        };
        (0..inputs)
            .map(|i| weighed(&by_event(i), weights))
            .collect()
    }

    /// What is saved beyond another saving.
    fn beyond(&self, other: &Self) -> Self {
        let less = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| a - b).collect::<Vec<f64>>();
        let amounts_s = self.amounts_s.iter().map(|(amount, by_event)| {
            let same = other.amounts_s.iter().find(|(theirs, _)| theirs == amount);
            (
                *amount,
                same.map_or_else(|| by_event.clone(), |(_, theirs)| less(by_event, theirs)),
            )
        });
        Self {
            by_event_s: less(&self.by_event_s, &other.by_event_s),
            rider_s: self
                .rider_s
                .iter()
                .zip(&other.rider_s)
                .map(|(a, b)| less(a, b))
                .collect(),
            amounts_s: amounts_s.collect(),
        }
    }
}

/// A weighted sum over the events.
pub(super) fn weighed(by_event: &[f64], weights: &[f64]) -> f64 {
    by_event
        .iter()
        .zip(weights)
        .map(|(value, weight)| value * weight)
        .sum()
}

/// What some candidates save, each with those that it requires, and the best set together.
pub(crate) struct Savings {
    /// By the candidates' places; none for those that were not wanted.
    pub(super) lines: Vec<Saving>,
    pub(super) together: Saving,
}

impl Savings {
    /// The wanted candidates include what they require.
    pub(crate) fn new(
        season: &Season<'_>,
        items: &[Item],
        wanted: &[usize],
        together: &[usize],
    ) -> Result<Self, Error> {
        let mut sets: Vec<Vec<usize>> = wanted
            .iter()
            .map(|&c| best_set::line(items, c).collect())
            .collect();
        if !together.is_empty() {
            sets.push(together.to_vec());
        }
        // A search that goes on asks for none, and none are ridden.
        let mut savings = if sets.is_empty() {
            Vec::new()
        } else {
            season.savings(&sets)?
        };
        let together = if together.is_empty() {
            None
        } else {
            savings.pop()
        }
        .unwrap_or_default();
        let mut lines: Vec<Saving> = items.iter().map(|_| Saving::default()).collect();
        for (&c, saving) in wanted.iter().zip(savings) {
            lines[c] = saving;
        }
        Ok(Self { lines, together })
    }

    /// What a candidate adds to what it requires.
    pub(crate) fn own(&self, items: &[Item], c: usize) -> Saving {
        match items[c].needs {
            Some(required) => self.lines[c].beyond(&self.lines[required]),
            None => self.lines[c].clone(),
        }
    }
}

impl Season<'_> {
    /// Outputs of an event: the finish time as the rider is, then with each of some sets of moves; spread by what is uncertain
    /// of the rider's own numbers, and these.
    pub(crate) fn spread(
        &self,
        event: &RiddenEvent,
        sets: &[Vec<Move>],
    ) -> Result<(Spread<OUTPUTS>, Vec<Input>), Error> {
        let outputs =
            |scenario: &Scenario, time_model: &dyn TimeModel| -> Result<[f64; OUTPUTS], Error> {
                let mut outputs = [0.0; OUTPUTS];
                outputs[0] = self.time_s(
                    time_model,
                    event,
                    &(scenario.clone(), scenario.riding_position),
                )?;
                for (output, moves) in outputs[1..].iter_mut().zip(sets) {
                    *output =
                        self.time_s(time_model, event, &self.plan.moved(scenario, moves.iter()))?;
                }
                Ok(outputs)
            };
        if !self.rider_counts {
            let spread = Spread {
                base: outputs(&event.scenario, &Integrated)?,
                by_input: Vec::new(),
            };
            return Ok((spread, Vec::new()));
        }
        let mut positions = vec![event.scenario.riding_position];
        positions.extend(sets.iter().flatten().filter_map(|one| match one {
            Move::Ride(position) => Some(*position),
            _ => None,
        }));
        let inquiry = Propagation::new(&event.scenario, &positions, &[]);
        let spread = inquiry.spread(|case: &Case<'_>, time_model: &dyn TimeModel| {
            outputs(case.scenario(), time_model)
        })?;
        Ok((spread, inquiry.inputs().to_vec()))
    }

    /// What sets of candidates save if all of them work: the values by rides that are followed, what is uncertain by steady
    /// speeds.
    fn savings(&self, sets: &[Vec<usize>]) -> Result<Vec<Saving>, Error> {
        let mut savings: Vec<Saving> = sets.iter().map(|_| Saving::default()).collect();
        let moves_of = |set: &Vec<usize>| -> Vec<Move> {
            set.iter()
                .flat_map(|&c| self.plan.moves[c].iter().copied())
                .collect()
        };
        let all_moves: Vec<Vec<Move>> = sets.iter().map(moves_of).collect();
        let spreads = self
            .events
            .iter()
            .map(|event| self.spread(event, &all_moves))
            .collect::<Result<Vec<_>, Error>>()?;
        for (base, by_input) in side_by_side(spreads) {
            for (k, saving) in savings.iter_mut().enumerate() {
                saving.by_event_s.push(base[0] - base[k + 1]);
                saving
                    .rider_s
                    .push(by_input.iter().map(|o| o[0] - o[k + 1]).collect());
            }
        }
        let time_model = QuasiSteady::default();
        for ((saving, moves), set) in savings.iter_mut().zip(&all_moves).zip(sets) {
            let amounts = set
                .iter()
                .flat_map(|&c| (0..self.plan.moves[c].len()).map(move |i| (c, i)));
            for ((m, one), amount_of) in moves.iter().enumerate().zip(amounts) {
                let Some(amount) = one.amount().filter(|amount| amount.sd > 0.0) else {
                    continue;
                };
                let (low, high) =
                    one.within_reach(amount.value - amount.sd, amount.value + amount.sd);
                let time = |event: &RiddenEvent, value: f64| {
                    let mut moves = moves.clone();
                    moves[m] = one.with_amount(value);
                    self.time_s(
                        &time_model,
                        event,
                        &self.plan.moved(&event.scenario, moves.iter()),
                    )
                };
                let moved_s =
                    self.events
                        .iter()
                        .map(|event| match (time(event, low), time(event, high)) {
                            (Ok(low_s), Ok(high_s)) if high > low => {
                                (low_s - high_s) * amount.sd / (high - low)
                            }
                            _ => 0.0,
                        });
                saving.amounts_s.push((amount_of, moved_s.collect()));
            }
        }
        Ok(savings)
    }
}

/// The outputs of each event and how its inputs move them, row by row for the inputs of all events: courses of an event's own are
/// uncertain there alone.
fn side_by_side<const N: usize>(
    spreads: Vec<(Spread<N>, Vec<Input>)>,
) -> impl Iterator<Item = ([f64; N], Vec<[f64; N]>)> {
    let mut paths: Vec<String> = Vec::new();
    for input in spreads.iter().flat_map(|(_, inputs)| inputs) {
        if !paths.contains(&input.path) {
            paths.push(input.path.clone());
        }
    }
    spreads.into_iter().map(move |(spread, inputs)| {
        // Rows of slopes, then as many of curvatures.
        let rows = [0, inputs.len()].into_iter().flat_map(|from| {
            let (spread, inputs) = (&spread, &inputs);
            paths.iter().map(move |path| {
                let at = inputs.iter().position(|input| input.path == *path);
                at.and_then(|at| spread.by_input.get(from + at).copied())
                    .unwrap_or([0.0; N])
            })
        });
        let rows = rows.collect();
        (spread.base, rows)
    })
}
