//! Changes to a scenario: which numbers they move, and the scenario with many of them together.

use serde::{Deserialize, Serialize};

use super::Candidate;
use crate::inputs::error::{Error, Kind};
use crate::inputs::fields::{self, Field};
use crate::inputs::message;
use crate::inputs::quantity::Quantity;
use crate::numerics::solve::within;
use crate::numerics::subsets::{Axis, Part};
use crate::questions::request::{check_number, missing};
use crate::scenario::{Inspect, Place, Scenario, check_quantity, position_index};

/// One thing that a candidate changes: a number by an amount or by a share of itself, or the position ridden.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Change {
    /// The number, by its path in the scenario such as `bike.rolling_coefficient`. Without an index, as in
    /// `positions.cda_m2`, that of every position. A drag area takes with it what it is once lost and in lapses; critical
    /// power that of a position's own tests.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub field: Option<String>,
    /// By how much, in the number's own unit.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub by: Option<Quantity>,
    /// By what share of itself.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub share: Option<Quantity>,
    /// The position to ride in, by its place in the scenario.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub use_position: Option<usize>,
}

/// What a change does, its numbers found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Move {
    /// Adds to the numbers of a target.
    Add(usize, Quantity),
    /// Multiplies the numbers of a target by one more than a share.
    Scale(usize, Quantity),
    /// Rides in another position.
    Ride(usize),
}

impl Move {
    /// The amount, if it can be uncertain.
    pub(super) fn amount(&self) -> Option<Quantity> {
        match *self {
            Self::Add(_, amount) | Self::Scale(_, amount) => Some(amount),
            Self::Ride(_) => None,
        }
    }

    /// The same with another amount.
    pub(super) fn with_amount(&self, value: f64) -> Self {
        match *self {
            Self::Add(target, amount) => Self::Add(target, Quantity { value, ..amount }),
            Self::Scale(target, amount) => Self::Scale(target, Quantity { value, ..amount }),
            Self::Ride(position) => Self::Ride(position),
        }
    }

    /// Two amounts that it may have: a share leaves something.
    pub(super) fn within_reach(&self, low: f64, high: f64) -> (f64, f64) {
        match self {
            Self::Scale(..) => (low.max(fields::CHANGE_SHARE.min), high),
            _ => (low, high),
        }
    }

    fn coordinate(&self) -> Coordinate {
        match *self {
            Self::Add(target, _) => Coordinate::Added(target),
            Self::Scale(target, _) => Coordinate::Times(target),
            Self::Ride(_) => Coordinate::Position,
        }
    }
}

/// Something about the scenario that changes move. A number moved by both amounts and shares is
/// `(value + amounts) × (1 + share) × (1 + share) …`, in whatever order they come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Coordinate {
    Added(usize),
    Times(usize),
    Position,
}

/// Numbers that one path names.
#[derive(Clone, Debug, PartialEq)]
struct Target {
    /// By their order of inspection.
    numbers: Vec<usize>,
    /// Whether finish time is smooth in them.
    smooth: bool,
    /// The value of the first.
    value: f64,
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
pub(super) struct Plan {
    targets: Vec<Target>,
    numbers: usize,
    riding_position: usize,
    /// What each candidate moves, in the order given.
    pub moves: Vec<Vec<Move>>,
    /// Whether the road is among what moves.
    pub course_moves: bool,
}

/// The scenario's numbers as they are moved.
#[derive(Clone, Debug)]
struct Moved {
    added: Vec<f64>,
    times: Vec<f64>,
    position: usize,
}

impl Plan {
    /// Finds every number that the candidates change.
    ///
    /// # Errors
    /// Names the change that is wrong.
    pub(super) fn new(scenario: &Scenario, candidates: &[Candidate]) -> Result<Self, Error> {
        let known = numbers(scenario);
        let mut plan = Self {
            targets: Vec::new(),
            numbers: known.len(),
            riding_position: scenario.riding_position,
            moves: Vec::new(),
            course_moves: false,
        };
        for (c, candidate) in candidates.iter().enumerate() {
            let path = |i: usize| format!("with.candidates[{c}].changes[{i}]");
            if candidate.changes.is_empty() {
                return Err(missing(&format!("with.candidates[{c}].changes")));
            }
            let found = candidate
                .changes
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
        self.course_moves |= first.field.key.starts_with("course.");
        let at = self
            .targets
            .iter()
            .position(|target| target.numbers == numbers)
            .unwrap_or_else(|| {
                let smooth = SMOOTH
                    .iter()
                    .any(|smooth| std::ptr::eq(*smooth, first.field));
                self.targets.push(Target {
                    numbers,
                    smooth,
                    value: first.value,
                });
                self.targets.len() - 1
            });
        Ok((at, first.field))
    }

    /// How many numbers the scenario has.
    pub(super) fn numbers(&self) -> usize {
        self.numbers
    }

    fn unmoved(&self) -> Moved {
        Moved {
            added: vec![0.0; self.numbers],
            times: vec![1.0; self.numbers],
            position: self.riding_position,
        }
    }

    /// The scenario and the position ridden with some moves.
    pub(super) fn moved<'a>(
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
        moved.applied(scenario)
    }

    /// The scenario and the position ridden where parts of the changes stand at these numbers.
    pub(super) fn at(
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
        moved.applied(scenario)
    }
}

impl Moved {
    fn add(&mut self, target: &Target, by: f64) {
        target.numbers.iter().for_each(|&i| self.added[i] += by);
    }

    fn scale(&mut self, target: &Target, by: f64) {
        target.numbers.iter().for_each(|&i| self.times[i] *= by);
    }

    fn applied(self, scenario: &Scenario) -> (Scenario, usize) {
        struct Apply<'a> {
            moved: &'a Moved,
            at: usize,
        }
        impl Inspect for Apply<'_> {
            fn number(&mut self, field: &'static Field, _: Place, quantity: &mut Quantity) {
                let (added, times) = (self.moved.added[self.at], self.moved.times[self.at]);
                if added != 0.0 || times != 1.0 {
                    quantity.value = within((quantity.value + added) * times, field.min, field.max);
                }
                self.at += 1;
            }
        }
        let mut changed = scenario.clone();
        changed.inspect(&mut Apply {
            moved: &self,
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

/// The candidates by what they move together.
pub(super) struct Parts {
    /// The parts, as [`crate::numerics::subsets`] takes them.
    pub parts: Vec<Part>,
    coordinates: Vec<Vec<Coordinate>>,
    /// Which candidate each bit of a set stands for.
    pub order: Vec<usize>,
}

impl Parts {
    /// Candidates that move the same things make a part.
    pub(super) fn new(plan: &Plan) -> Self {
        let own: Vec<Vec<Coordinate>> = plan
            .moves
            .iter()
            .map(|moves| moves.iter().map(Move::coordinate).collect())
            .collect();
        let mut label: Vec<usize> = (0..own.len()).collect();
        // Labels fall until those that share anything share the lowest.
        for _ in 0..own.len() {
            for a in 0..own.len() {
                for b in 0..own.len() {
                    if own[a].iter().any(|coordinate| own[b].contains(coordinate)) {
                        label[a] = label[a].min(label[b]);
                    }
                }
            }
        }
        let mut built: Vec<(Part, Vec<Coordinate>, Vec<usize>)> = (0..own.len())
            .map(|first| {
                (0..own.len())
                    .filter(|&c| label[c] == first)
                    .collect::<Vec<usize>>()
            })
            .filter(|members| !members.is_empty())
            .map(|members| {
                let mut coordinates: Vec<Coordinate> = Vec::new();
                for coordinate in members.iter().flat_map(|&c| &own[c]) {
                    if !coordinates.contains(coordinate) {
                        coordinates.push(*coordinate);
                    }
                }
                let axes = coordinates
                    .iter()
                    .map(|coordinate| axis(plan, *coordinate, &members))
                    .collect();
                (Part::new(members.len(), axes), coordinates, members)
            })
            .collect();
        // The last to be worked out costs the most for each of its points.
        built.sort_by_key(|(part, ..)| std::cmp::Reverse(part.points()));
        let mut parts = Self {
            parts: Vec::new(),
            coordinates: Vec::new(),
            order: Vec::new(),
        };
        for (part, coordinates, members) in built {
            parts.parts.push(part);
            parts.coordinates.push(coordinates);
            parts.order.extend(members);
        }
        parts
    }
}

/// What each set of a part's candidates makes of one coordinate.
fn axis(plan: &Plan, coordinate: Coordinate, members: &[usize]) -> Axis {
    let (start, smooth) = match coordinate {
        Coordinate::Added(target) => (plan.targets[target].value, plan.targets[target].smooth),
        Coordinate::Times(target) => (1.0, plan.targets[target].smooth),
        Coordinate::Position => (plan.riding_position as f64, false),
    };
    let mut values = vec![start];
    for &member in members {
        for at in 0..values.len() {
            let own = plan.moves[member]
                .iter()
                .filter(|one| one.coordinate() == coordinate);
            values.push(own.fold(values[at], |value, one| match *one {
                Move::Add(_, by) => value + by.value,
                Move::Scale(_, share) => value * (1.0 + share.value),
                Move::Ride(position) => position as f64,
            }));
        }
    }
    if smooth {
        Axis::smooth(values)
    } else {
        Axis::every(values)
    }
}

/// Checks a candidate's own numbers and texts.
///
/// # Errors
/// Names what is wrong.
pub(super) fn check(candidate: &Candidate, c: usize) -> Result<(), Error> {
    let path = |name: &str| format!("with.candidates[{c}].{name}");
    check_number(&fields::CHANCE, &path("chance"), candidate.chance)?;
    check_number(&fields::MONEY, &path("money"), candidate.money)?;
    check_number(
        &fields::HOURS_PER_WEEK,
        &path("hours_per_week"),
        candidate.hours_per_week,
    )?;
    check_number(
        &fields::HOURS_ONCE,
        &path("hours_once"),
        candidate.hours_once,
    )?;
    if let Some(weeks) = candidate.weeks {
        check_number(&fields::WEEKS, &path("weeks"), weeks)?;
    }
    let texts = [
        ("key", &candidate.key),
        ("name", &candidate.name),
        ("group", &candidate.group),
        ("requires", &candidate.requires),
        ("note", &candidate.note),
        ("source", &candidate.source),
    ];
    for (name, text) in texts {
        if text.len() > fields::MOST_TEXT_BYTES {
            let message = message::too_long(&path(name), fields::MOST_TEXT_BYTES);
            return Err(Error::new(Kind::TooLarge, path(name), message));
        }
    }
    if candidate.changes.len() > MOST_CHANGES {
        let message = message::too_many(&path("changes"), MOST_CHANGES);
        return Err(Error::new(Kind::TooLarge, path("changes"), message));
    }
    Ok(())
}

/// The most things that a candidate changes.
const MOST_CHANGES: usize = 20;
