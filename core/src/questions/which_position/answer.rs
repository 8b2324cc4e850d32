//! What the question answers.

use serde::Serialize;

use super::at_distance::AtDistance;
use super::columns::Columns;
use super::counted::CountedDraws;
use crate::inputs::error::Warning;
use crate::inputs::published_costs::{PublishedCost, published_costs};
use crate::inputs::quantity::Figure;
use crate::riding::crossovers::Crossing;
use crate::riding::integrated::Setup;
use crate::scenario::Ridden;
use crate::scenario::comparison::faster_by;
use crate::scenario::lower_bars::LowerBars;
use crate::scenario::position_costs::PositionCost;
use crate::uncertainty::draws::Sensitivities;

/// One of the choices: a position, and what is worn in it.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PositionChoice {
    /// The position, by its place in the scenario.
    pub position: usize,
    /// What is worn, by its place in the position's equipment; `null` for nothing.
    pub worn: Option<usize>,
    /// Drag area when fresh, m².
    pub cda_m2: f64,
    /// Critical power, W.
    pub cp_w: f64,
}

impl PositionChoice {
    /// A ride as it is set up.
    pub(super) fn new(ride: Ridden, setup: &Setup) -> Self {
        let Ridden { position, worn } = ride;
        Self {
            position,
            worn,
            cda_m2: setup.position.cda_m2,
            cp_w: setup.power.cp_w,
        }
    }
}

/// A distance at which a choice and the reference are equally fast.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Crossover {
    /// The choice, by its place in `choices`.
    pub choice: usize,
    /// Where they cross, m. One standard deviation of it is that of the difference over its slope there.
    pub distance_m: Figure,
    /// Whether the choice is the faster one beyond it.
    pub faster_beyond: bool,
}

impl Crossover {
    /// Where the pair of rides from `pair` on crosses.
    pub(super) fn new(crossing: &Crossing, spread: &Sensitivities, pair: usize) -> Self {
        let lead = faster_by(spread, pair, pair + 1);
        let distance_m = Figure {
            value: crossing.distance_m,
            sd: lead.sd / crossing.slope_s_per_m.abs(),
        };
        Self {
            choice: crossing.choice,
            distance_m,
            faster_beyond: crossing.slope_s_per_m > 0.0,
        }
    }
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// The choices.
    pub choices: Vec<PositionChoice>,
    /// The one that the others are compared with, by its place in `choices`.
    pub reference: usize,
    /// What they give at each event of the scenario. This and all else that is not of the draws is empty if they alone were
    /// asked for.
    pub events: Vec<AtDistance>,
    /// And at the distance asked for, where it can be ridden.
    pub reading: Option<AtDistance>,
    /// Where choices and the reference cross, by choice and then by distance.
    pub crossovers: Vec<Crossover>,
    /// What each position may cost before it loses against another: every pair as it is worn; those with the reference if
    /// there are very many, and then at the first events only.
    pub costs: Vec<PositionCost>,
    /// What lower bars than the reference's may cost.
    pub lower_bars: Vec<LowerBars>,
    /// What lower positions cost the riders of published tests.
    pub published: [PublishedCost; 2],
    /// The draws, if any were asked for.
    pub drawn: Option<CountedDraws>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

impl Answer {
    /// The draws alone, for whoever has the rest already.
    pub(super) fn of_draws(
        choices: Vec<PositionChoice>,
        reference: usize,
        drawn: Option<CountedDraws>,
        warnings: Vec<Warning>,
    ) -> Self {
        Self {
            choices,
            reference,
            events: Vec::new(),
            reading: None,
            crossovers: Vec::new(),
            costs: Vec::new(),
            lower_bars: Vec::new(),
            published: published_costs(),
            drawn,
            warnings,
            columns: Columns::default(),
        }
    }
}
