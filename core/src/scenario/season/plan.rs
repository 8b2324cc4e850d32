//! All changes of a season's candidates with their numbers found, and the scenario with many of them together.

use super::changes::{Change, Coordinate, Move};
use super::parts::Parts;
use crate::inputs::error::{Error, Kind};
use crate::inputs::fields::{self, Field};
use crate::inputs::message;
use crate::inputs::quantity::Quantity;
use crate::numerics::solve::within;
use crate::scenario::{Inspect, Place, Scenario, check_quantity, position_index};

/// Numbers that one path names.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Target {
    /// Of the first.
    field: &'static Field,
    /// By their order of inspection.
    numbers: Vec<usize>,
    /// Whether finish time is smooth in them.
    pub(super) smooth: bool,
    /// The value of the first.
    pub(super) value: f64,
}

/// Numbers in which finish time has no step or kink.
const SMOOTH: &[&Field] = &[
    &fields::TOTAL_MASS_KG,
    &fields::ROLLING_COEFFICIENT,
    &fields::DRIVETRAIN_EFFICIENCY,
    &fields::ROTATING_MASS_KG,
    &fields::CP_W,
    &fields::W_PRIME_J,
    &fields::CDA_M2,
    &fields::CP_FACTOR,
    &fields::W_PRIME_FACTOR,
];

/// What goes with a number: the drag areas of the same position, and power tests of a position's own.
fn goes_with(named: &Field, other: &Field) -> bool {
    let same = |a: &Field, b: &Field| std::ptr::eq(a, b);
    same(named, other)
        || same(named, &fields::CDA_M2)
            && [
                &fields::FADE_TIRED_CDA_M2,
                &fields::FADE_TEST_FIRST_THIRD_CDA_M2,
                &fields::FADE_TEST_LAST_THIRD_CDA_M2,
                &fields::LAPSES_CDA_M2,
            ]
            .iter()
            .any(|own| same(own, other))
}

/// All candidates' changes with their numbers found.
#[derive(Clone, Debug)]
pub(crate) struct Plan {
    pub(super) targets: Vec<Target>,
    /// Every number of the scenario by its field and where it stands, in the order of inspection.
    numbers: Vec<(&'static Field, Place)>,
    pub(super) riding_position: usize,
    /// What each candidate moves, in the order given.
    pub(crate) moves: Vec<Vec<Move>>,
}

/// The scenario's numbers as they are moved.
#[derive(Clone, Debug)]
struct Moved {
    added: Vec<f64>,
    times: Vec<f64>,
    position: usize,
}

impl Plan {
    /// Finds every number that the candidates change, each by a list of changes.
    ///
    /// # Errors
    /// Names the change that is wrong.
    pub(crate) fn new(scenario: &Scenario, candidates: &[&[Change]]) -> Result<Self, Error> {
        let known = numbers(scenario);
        let mut plan = Self {
            targets: Vec::new(),
            numbers: known.iter().map(|one| (one.field, one.place)).collect(),
            riding_position: scenario.riding_position,
            moves: Vec::new(),
        };
        for (c, changes) in candidates.iter().enumerate() {
            let path = |i: usize| format!("with.candidates[{c}].changes[{i}]");
            if changes.is_empty() {
                return Err(Error::missing(format!("with.candidates[{c}].changes")));
            }
            let found = changes
                .iter()
                .enumerate()
                .map(|(i, change)| plan.found(scenario, &known, change, &path(i)));
            let moves = found.collect::<Result<_, _>>()?;
            plan.moves.push(moves);
        }
        Ok(plan)
    }

    fn found(
        &mut self,
        scenario: &Scenario,
        known: &[Number],
        change: &Change,
        path: &str,
    ) -> Result<Move, Error> {
        let conflict = || Error::new(Kind::Conflict, path, message::neither_by_nor_share(path));
        match (&change.field, change.by, change.share, change.use_position) {
            (None, None, None, Some(position)) => Ok(Move::Ride(position_index(
                scenario,
                position,
                &format!("{path}.use_position"),
            )?)),
            (Some(field), Some(by), None, None) => {
                let (target, bounds) = self.target(known, field, path)?;
                let widest = bounds.max - bounds.min;
                let span = Field {
                    min: -widest,
                    max: widest,
                    ..*bounds
                };
                check_quantity(&span, &format!("{path}.by"), &by)?;
                Ok(Move::Add(target, by))
            }
            (Some(field), None, Some(share), None) => {
                let (target, _) = self.target(known, field, path)?;
                check_quantity(&fields::CHANGE_SHARE, &format!("{path}.share"), &share)?;
                Ok(Move::Scale(target, share))
            }
            _ => Err(conflict()),
        }
    }

    fn target(
        &mut self,
        known: &[Number],
        field: &str,
        path: &str,
    ) -> Result<(usize, &'static Field), Error> {
        let named = |number: &&Number| number.path == field || number.field.key == field;
        let Some(first) = known.iter().find(named) else {
            let short: String = field.chars().take(80).collect();
            let field = format!("{path}.field");
            let message = message::no_such_number(&field, &short);
            return Err(Error::new(Kind::UnknownField, field, message));
        };
        let every = first.field.key == field;
        let moves = |number: &Number| {
            let beside = number.place.position == first.place.position
                && !std::ptr::eq(first.field, number.field);
            number.path == field || goes_with(first.field, number.field) && (every || beside)
        };
        let numbers: Vec<usize> = (0..known.len()).filter(|&i| moves(&known[i])).collect();
        let at = self
            .targets
            .iter()
            .position(|target| target.numbers == numbers)
            .unwrap_or_else(|| {
                let smooth = SMOOTH
                    .iter()
                    .any(|smooth| std::ptr::eq(*smooth, first.field));
                self.targets.push(Target {
                    field: first.field,
                    numbers,
                    smooth,
                    value: first.value,
                });
                self.targets.len() - 1
            });
        Ok((at, first.field))
    }

    /// The field of a target, of which others may move along.
    pub(super) fn field_of(&self, target: usize) -> &'static Field {
        self.targets[target].field
    }

    /// How many numbers the scenario has.
    pub(crate) fn numbers(&self) -> usize {
        self.numbers.len()
    }

    fn unmoved(&self) -> Moved {
        Moved {
            added: vec![0.0; self.numbers.len()],
            times: vec![1.0; self.numbers.len()],
            position: self.riding_position,
        }
    }

    /// The scenario and the position ridden with some moves.
    pub(crate) fn moved<'a>(
        &self,
        scenario: &Scenario,
        moves: impl Iterator<Item = &'a Move>,
    ) -> (Scenario, usize) {
        let mut moved = self.unmoved();
        for one in moves {
            match *one {
                Move::Add(target, by) => moved.add(&self.targets[target], by.value),
                Move::Scale(target, share) => moved.scale(&self.targets[target], 1.0 + share.value),
                Move::Ride(position) => moved.position = position,
            }
        }
        moved.applied(&self.numbers, scenario)
    }

    /// The scenario and the position ridden where parts of the changes stand at these numbers.
    pub(crate) fn at(
        &self,
        scenario: &Scenario,
        parts: &Parts,
        numbers: &[Vec<f64>],
    ) -> (Scenario, usize) {
        let mut moved = self.unmoved();
        for (coordinates, values) in parts.coordinates.iter().zip(numbers) {
            for (coordinate, &value) in coordinates.iter().zip(values) {
                match *coordinate {
                    Coordinate::Added(target) => {
                        let target = &self.targets[target];
                        moved.add(target, value - target.value);
                    }
                    Coordinate::Times(target) => moved.scale(&self.targets[target], value),
                    Coordinate::Position => moved.position = value as usize,
                }
            }
        }
        moved.applied(&self.numbers, scenario)
    }
}

impl Moved {
    fn add(&mut self, target: &Target, by: f64) {
        target.numbers.iter().for_each(|&i| self.added[i] += by);
    }

    fn scale(&mut self, target: &Target, by: f64) {
        target.numbers.iter().for_each(|&i| self.times[i] *= by);
    }

    /// What an event's own course has more or less than the scenario's is passed over: `numbers` are the scenario's.
    fn applied(
        self,
        numbers: &[(&'static Field, Place)],
        scenario: &Scenario,
    ) -> (Scenario, usize) {
        struct Apply<'a> {
            moved: &'a Moved,
            numbers: &'a [(&'static Field, Place)],
            at: usize,
        }
        impl Inspect for Apply<'_> {
            fn number(&mut self, field: &'static Field, place: Place, quantity: &mut Quantity) {
                let same = |&(other, there): &(&'static Field, Place)| {
                    std::ptr::eq(other, field) && there == place
                };
                let Some(further) = self.numbers[self.at..].iter().position(same) else {
                    return;
                };
                let i = self.at + further;
                self.at = i + 1;
                let (added, times) = (self.moved.added[i], self.moved.times[i]);
                if added != 0.0 || times != 1.0 {
                    quantity.value = within((quantity.value + added) * times, field.min, field.max);
                }
            }
        }
        let mut changed = scenario.clone();
        changed.inspect(&mut Apply {
            moved: &self,
            numbers,
            at: 0,
        });
        (changed, self.position)
    }
}

/// A number of a scenario.
struct Number {
    path: String,
    field: &'static Field,
    place: Place,
    value: f64,
}

fn numbers(scenario: &Scenario) -> Vec<Number> {
    struct List(Vec<Number>);
    impl Inspect for List {
        fn number(&mut self, field: &'static Field, place: Place, quantity: &mut Quantity) {
            let path = place.path(field);
            let path = path.strip_prefix("scenario.").unwrap_or(&path).to_owned();
            self.0.push(Number {
                path,
                field,
                place,
                value: quantity.value,
            });
        }
    }
    let mut list = List(Vec::new());
    scenario.clone().inspect(&mut list);
    list.0
}
