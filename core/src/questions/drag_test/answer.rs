//! What the question answers.

use serde::Serialize;

use super::columns::Columns;
use super::differences::DragDifference;
use super::kept::KeptDrag;
use super::with::WindForm;
use crate::inputs::error::Warning;
use crate::inputs::quantity::{Quantity, chance_positive};
use crate::measuring::estimate::{Estimate, Interval};
use crate::measuring::plan::Planned;
use crate::numerics::distributions::{NORMAL_REACH_95, normal_share};

/// A value with its interval by Student's t. What is common to the whole test is not in it; without a lap to spare nothing is
/// known of its error.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TestFigure {
    /// The value, in the SI unit of the field's name.
    pub value: f64,
    /// One standard deviation.
    pub sd: Option<f64>,
    /// The true value lies above this 39 times in 40.
    pub low_95: Option<f64>,
    /// The true value lies below this 39 times in 40.
    pub high_95: Option<f64>,
    /// The chance that the true value is positive, 0 to 1.
    pub chance_positive: Option<f64>,
}

impl From<Interval> for TestFigure {
    fn from(interval: Interval) -> Self {
        Self {
            value: interval.value,
            sd: interval.sd,
            low_95: interval.range_95.map(|range| range.0),
            high_95: interval.range_95.map(|range| range.1),
            chance_positive: interval.chance_positive,
        }
    }
}

impl TestFigure {
    /// A guess, its error taken as normal.
    pub(super) fn assumed(guess: Quantity) -> Self {
        let reach = NORMAL_REACH_95 * guess.sd;
        Self {
            value: guess.value,
            sd: Some(guess.sd),
            low_95: Some(guess.value - reach),
            high_95: Some(guess.value + reach),
            chance_positive: Some(chance_positive(guess.value, guess.sd, normal_share)),
        }
    }
}

/// The drag area of one position.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PositionDrag {
    /// The position.
    pub position: usize,
    /// Its drag area, m².
    pub cda_m2: TestFigure,
    /// How many laps, runs and coast-downs it rests on.
    pub laps: usize,
}

/// Rolling resistance.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RollingAnswer {
    /// Crr.
    pub value: f64,
    /// One standard deviation: the test's where it was estimated, the scenario's where it was held.
    pub sd: Option<f64>,
    /// Whether it is the scenario's.
    pub held: bool,
}

/// The same rows with rolling resistance taken the other way.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OtherRolling {
    /// Every position.
    pub positions: Vec<PositionDrag>,
    /// Rolling resistance.
    pub rolling_coefficient: RollingAnswer,
}

/// What a row of the test is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RowKind {
    /// A lap of a recording.
    Lap,
    /// A run at constant speed.
    Run,
    /// A coast-down.
    CoastDown,
}

/// Why a row was left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RowLeftOut {
    /// The rider chose so.
    Excluded,
    /// The rider braked.
    Braking,
    /// The rider stood.
    Stopped,
    /// Power or speed was missing.
    Dropout,
}

/// A lap, a run or a coast-down beside the estimate: in the order of the request, laps first, then runs, then coast-downs.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TestRow {
    /// What it is.
    pub kind: RowKind,
    /// Its place in the request's list of its kind.
    pub index: usize,
    /// Its position.
    pub position: usize,
    /// How long, s; `null` for what was typed in.
    pub duration_s: Option<f64>,
    /// Mean speed, m/s.
    pub speed_m_s: f64,
    /// Mean power, W; `null` for a coast-down.
    pub power_w: Option<f64>,
    /// What the rider put in beyond what the estimate asks, W; `null` where it was left out.
    pub residual_w: Option<f64>,
    /// The drag area that it alone would give with all else as estimated, m².
    pub cda_m2: Option<f64>,
    /// How much it decides its own place, 0 to 1.
    pub leverage: Option<f64>,
    /// The residual in standard deviations that the other rows give.
    pub studentised: Option<f64>,
    /// Whether it lies further out than a test without a fault shows once in twenty. It counts all the same.
    pub outlier: bool,
    /// Why it was left out, if it was.
    pub left_out: Option<RowLeftOut>,
    /// How long the rider braked, s.
    pub braking_s: f64,
    /// How long the rider stood, s.
    pub stopped_s: f64,
    /// How long power or speed was missing, s.
    pub dropout_s: f64,
}

/// An error that the whole test has in common.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CommonError {
    /// The input's path in the request.
    pub field: String,
    /// One standard deviation of it, in its unit; what is tried where nobody said how uncertain it is.
    pub sd: f64,
    /// By what share of itself the drag area of the first position comes out higher where the input was taken that much too high.
    pub cda_share: f64,
}

/// The wind that the estimate took.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TestWind {
    /// What became of it.
    pub used: WindForm,
    /// A fitted wind at the height of the rider, m/s.
    pub speed_m_s: Option<f64>,
    /// Where it came from, degrees.
    pub from_deg: Option<f64>,
    /// One standard deviation of its component that is known worst, m/s.
    pub sd_m_s: Option<f64>,
    /// Along how many directions the headings of the laps tell it: 0, 1 or 2.
    pub directions: usize,
}

/// Where a rise of drag within the test comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RiseKnown {
    /// The laps show it.
    Measured,
    /// A film and assumed costs of what it shows.
    Assumed,
}

/// The rise of one position's drag from the first third of its laps to the last.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LateRise {
    /// The position.
    pub position: usize,
    /// How it is known.
    pub known: RiseKnown,
    /// The rise, m².
    pub cda_m2: TestFigure,
}

/// A planned test.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PlanAnswer {
    /// Runs in each position; `null` if no sensible number is enough.
    pub runs_per_position: Option<u32>,
    /// How often so many show the difference.
    pub runs_power: Option<f64>,
    /// Pairs of one run in each position, if runs of a pair have nothing more in common than others.
    pub pairs: Option<u32>,
    /// How often so many show the difference.
    pub pairs_power: Option<f64>,
    /// The smallest difference that these runs, or those that the rider means to do, show as often as asked for, as a share.
    pub smallest_share: Option<f64>,
}

impl From<Planned> for PlanAnswer {
    fn from(planned: Planned) -> Self {
        let (runs_per_position, runs_power) = planned.runs.unzip();
        let (pairs, pairs_power) = planned.pairs.unzip();
        Self {
            runs_per_position,
            runs_power,
            pairs,
            pairs_power,
            smallest_share: planned.smallest_share,
        }
    }
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Every two positions compared.
    pub differences: Vec<DragDifference>,
    /// Every position.
    pub positions: Vec<PositionDrag>,
    /// Rolling resistance; `null` before a test.
    pub rolling_coefficient: Option<RollingAnswer>,
    /// Whether the rows tell what was asked for: `false` where Crr was to be estimated and had to be held.
    pub identifiable: bool,
    /// With rolling resistance held where it was estimated, or estimated where it was held and the rows allow it.
    pub other_rolling: Option<OtherRolling>,
    /// Every row.
    pub laps: Vec<TestRow>,
    /// Rows that are left over to tell how well the test repeats.
    pub degrees_of_freedom: usize,
    /// How well one row repeats: one standard deviation as a share of its energy.
    pub scatter_share: Option<f64>,
    /// The wind; `null` before a test.
    pub wind: Option<TestWind>,
    /// What no number of laps makes smaller. Before a test: of a run at the planned speed.
    pub common: Vec<CommonError>,
    /// How drag rises within the test.
    pub late_rises: Vec<LateRise>,
    /// What each position's drag area is from this test and those before it; empty where the test does not tell its own error.
    pub kept: Vec<KeptDrag>,
    /// A planned test.
    pub plan: Option<PlanAnswer>,
    /// The plan's curve; empty without a plan.
    pub columns: Columns,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
}

/// The drag areas of an estimate.
pub(super) fn positions(estimate: &Estimate, laps: impl Fn(usize) -> usize) -> Vec<PositionDrag> {
    let one = |(place, &position): (usize, &usize)| PositionDrag {
        position,
        cda_m2: estimate.cda_m2(place).into(),
        laps: laps(position),
    };
    estimate.positions.iter().enumerate().map(one).collect()
}
