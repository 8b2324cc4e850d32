//! The one uncertainty pipeline of the questions: a scenario's uncertain inputs, moved or drawn, through the rides of a
//! question, to standard deviations and each input's contribution to them.
//!
//! What is shared: a fresh drag area's error moves the same position's tired and lapsed ones by the same factor
//! (`drag_scale`), and only the rise is uncertain by itself. A power meter's bias divides the drivetrain's efficiency as
//! soon as anything was measured with it, and moves measured drag areas. A forecast wind without a ± gets one in
//! `Conditions::with_forecast_uncertainty`. An output that curves in an error is uncertain by `√2` times its curvature
//! too (`uncertainty::draws::moves`). `tests/tests/coverage.rs` draws riders and holds the ranges of 95 % to 93 to 97 %.

use std::rc::Rc;

use serde::Serialize;

use super::{Input, Ridden, Scenario};
use crate::inputs::error::Error;
use crate::inputs::fields;
use crate::inputs::quantity::{Figure, Known, Quantity};
use crate::physics::course::Course;
use crate::riding::effort::Effort;
use crate::riding::integrated::{Integrated, Setup, TimeModel};
use crate::riding::quasi_steady::{PIECE_M, QuasiSteady};
use crate::uncertainty::draws::{Drawn, Spread, UncertainInput, monte_carlo, propagate};

/// What one input's doubt does to the answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Contribution {
    /// The input's path in the request.
    pub field: String,
    /// How it is known.
    pub source: Known,
    /// By how much one standard deviation of it, and of what is correlated with it, moves the answer, in the answer's unit;
    /// positive if more of it raises the answer. Nearly 0 where more and less of it move the answer the same way.
    pub moves: f64,
    /// The share of the answer's variance that knowing it would take away. Correlated inputs each tell of the other, so that
    /// theirs overlap.
    pub share: f64,
    /// One standard deviation of the answer that would be left if this were known exactly, in the answer's unit.
    pub left: f64,
}

/// The ride of a scenario in its positions, with every uncertain input free to move.
pub struct Propagation<'a> {
    scenario: &'a Scenario,
    rides: Vec<Ridden>,
    inputs: Vec<Input>,
    own: usize,
    course: Rc<Course>,
    course_moves: bool,
}

/// The most stretches that all draws together are taken over: a second or so of work.
const MOST_STRETCHES_DRAWN: f64 = 5e6;

/// One set of values of the uncertain inputs: the scenario with them, and the question's own.
pub struct Case<'a> {
    scenario: &'a Scenario,
    course: Rc<Course>,
    /// The question's own inputs, in the order given to [`Propagation::new`].
    pub own: &'a [f64],
}

impl Case<'_> {
    /// The scenario with these values.
    #[cfg(feature = "all")]
    pub fn scenario(&self) -> &Scenario {
        self.scenario
    }

    /// The ride in a position.
    ///
    /// # Errors
    /// Names `scenario.positions` where there is no such position.
    pub fn setup(&self, position: usize) -> Result<Setup, Error> {
        self.scenario
            .setup_on(position, Rc::clone(&self.course))
            .ok_or_else(Error::no_such_position)
    }

    /// The ride in a position with a piece of its equipment.
    ///
    /// # Errors
    /// Names `scenario.positions` where there is no such position or piece.
    pub fn setup_in(&self, ridden: Ridden) -> Result<Setup, Error> {
        self.scenario
            .setup_in(ridden, Rc::clone(&self.course))
            .ok_or_else(Error::no_such_position)
    }

    /// The effort, a given power being the question's first own input.
    pub fn effort(&self, effort: Effort) -> Effort {
        match (effort, self.own.first()) {
            (Effort::Power(_), Some(&power_w)) => Effort::Power(power_w),
            _ => effort,
        }
    }

    /// The course.
    pub fn course(&self) -> &Course {
        &self.course
    }
}

impl<'a> Propagation<'a> {
    /// Rides in some of the scenario's positions, with inputs of the question's own: a path, a value and its hard range.
    pub fn new(
        scenario: &'a Scenario,
        positions: &[usize],
        own: &[(&str, Quantity, &fields::Field)],
    ) -> Self {
        Self::of_rides(scenario, scenario.as_worn(positions), own)
    }

    /// Rides in positions with pieces of their equipment, with inputs of the question's own.
    pub fn of_rides(
        scenario: &'a Scenario,
        rides: Vec<Ridden>,
        own: &[(&str, Quantity, &fields::Field)],
    ) -> Self {
        let own_inputs = own.iter().map(|(path, quantity, field)| Input {
            path: (*path).to_owned(),
            known: quantity.source,
            uncertain: UncertainInput {
                value: quantity.value,
                sd: quantity.sd,
                min: field.min,
                max: field.max,
                correlation: 0.0,
            },
        });
        let inputs: Vec<Input> = own_inputs
            .chain(scenario.uncertain_inputs(&rides))
            .collect();
        let of_course = format!("{}.", scenario.course_path());
        let course_moves = inputs
            .iter()
            .any(|input| input.path.starts_with(&of_course));
        let course = Rc::new(scenario.course());
        Self {
            scenario,
            rides,
            inputs,
            own: own.len(),
            course,
            course_moves,
        }
    }

    /// The case at the values themselves.
    pub fn base<T>(&self, f: impl FnOnce(&Case<'_>) -> T) -> T {
        let own: Vec<f64> = self.inputs[..self.own]
            .iter()
            .map(|input| input.uncertain.value)
            .collect();
        f(&Case {
            scenario: self.scenario,
            course: Rc::clone(&self.course),
            own: &own,
        })
    }

    /// The spread of some outputs: the values themselves by rides that are followed, their moves by steady speeds.
    ///
    /// # Errors
    /// What `f` says of the values themselves.
    pub fn spread<const N: usize>(
        &self,
        f: impl Fn(&Case<'_>, &dyn TimeModel) -> Result<[f64; N], Error>,
    ) -> Result<Spread<N>, Error> {
        let base = self.base(|case| f(case, &Integrated))?;
        let time_model = QuasiSteady::default();
        let mut moved = self.scenario.clone();
        let spread = propagate(&self.uncertain_inputs(), |values| {
            self.at(&mut moved, values, |case| f(case, &time_model))
        })?;
        Ok(Spread { base, ..spread })
    }

    /// Seeded draws of one output, by steady speeds; what these leave out of the value itself is added to every draw. Over a
    /// course of very many stretches fewer draws are taken than asked for, and the answer says how many.
    ///
    /// # Errors
    /// What `f` says of the values themselves.
    pub fn drawn(
        &self,
        draws: u32,
        seed: u64,
        f: impl Fn(&Case<'_>, &dyn TimeModel) -> Result<f64, Error>,
    ) -> Result<Drawn, Error> {
        let time_model = QuasiSteady::default();
        let left_out =
            self.base(|case| f(case, &Integrated))? - self.base(|case| f(case, &time_model))?;
        let mut moved = self.scenario.clone();
        let draw = |values: &[f64]| {
            self.at(&mut moved, values, |case| f(case, &time_model))
                .map(|value| value + left_out)
        };
        Ok(monte_carlo(
            &self.uncertain_inputs(),
            draws.min(self.most_draws()),
            seed,
            draw,
        ))
    }

    fn most_draws(&self) -> u32 {
        let pieces = (self.course.distance_m() / PIECE_M).max(self.course.segments.len() as f64);
        (MOST_STRETCHES_DRAWN / pieces) as u32
    }

    /// The uncertain inputs, the question's own first.
    pub fn inputs(&self) -> &[Input] {
        &self.inputs
    }

    /// Whether the course itself is uncertain.
    pub fn course_moves(&self) -> bool {
        self.course_moves
    }

    /// What the uncertain inputs are drawn from.
    pub fn uncertain_inputs(&self) -> Vec<UncertainInput> {
        self.inputs.iter().map(|input| input.uncertain).collect()
    }

    /// The case at other values of the inputs; `moved` is a copy of the scenario to set them in.
    ///
    /// # Errors
    /// What `f` says.
    pub fn at<T>(
        &self,
        moved: &mut Scenario,
        values: &[f64],
        f: impl FnOnce(&Case<'_>) -> Result<T, Error>,
    ) -> Result<T, Error> {
        let (own, rest) = values.split_at(self.own);
        moved.set_uncertain_inputs(self.scenario, &self.rides, rest);
        let course = if self.course_moves {
            Rc::new(moved.course())
        } else {
            Rc::clone(&self.course)
        };
        f(&Case {
            scenario: moved,
            course,
            own,
        })
    }

    /// Which inputs carry the doubt of one output, or of a difference of two (`first − second`), the largest first.
    pub fn contributions<const N: usize>(
        &self,
        spread: &Spread<N>,
        output: impl Fn(&[f64; N]) -> f64,
    ) -> Vec<Contribution> {
        contributions(&self.inputs, spread, output)
    }
}

/// Which of the inputs of a spread carry the doubt of a linear combination of its outputs, the largest first.
pub fn contributions<const N: usize>(
    inputs: &[Input],
    spread: &Spread<N>,
    output: impl Fn(&[f64; N]) -> f64,
) -> Vec<Contribution> {
    let variance: f64 = spread
        .by_input
        .iter()
        .map(|moved| output(moved).powi(2))
        .sum();
    let mut largest_first: Vec<Contribution> = Vec::new();
    let mut before = 0.0;
    let mut curvatures = spread.by_input.iter().skip(inputs.len());
    for (input, moved) in inputs.iter().zip(&spread.by_input) {
        let alone = output(moved);
        let correlation = input.uncertain.correlation;
        let moves = correlation * before + (1.0 - correlation * correlation).sqrt() * alone;
        before = alone;
        let curved = curvatures.next().map_or(0.0, &output);
        let own_variance = moves * moves + curved * curved;
        if own_variance != 0.0 {
            let share = own_variance / variance;
            let at = largest_first.partition_point(|larger| larger.share >= share);
            let left = (variance - own_variance).max(0.0).sqrt();
            let contribution = Contribution {
                field: input.path.clone(),
                source: input.known,
                moves,
                share,
                left,
            };
            largest_first.insert(at, contribution);
        }
    }
    largest_first
}

/// A figure that is a linear combination of outputs.
pub fn figure<const N: usize>(spread: &Spread<N>, output: impl Fn(&[f64; N]) -> f64) -> Figure {
    let variance: f64 = spread
        .by_input
        .iter()
        .map(|moved| output(moved).powi(2))
        .sum();
    Figure {
        value: output(&spread.base),
        sd: variance.sqrt(),
    }
}

/// An absolute finish time: the inputs' share with the model's own error beside it.
pub fn with_model_error(time: Figure, model_error_share: f64) -> Figure {
    Figure {
        value: time.value,
        sd: time.sd.hypot(model_error_share * time.value),
    }
}
