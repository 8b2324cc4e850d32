//! What the question answers.

use serde::Serialize;

use super::sitting_up::SittingUp;
use super::stopped::PlanStops;
use super::with::RecoveryForm;
use crate::inputs::error::Warning;
use crate::inputs::quantity::{Column, Figure};
use crate::riding::effort::Paced;
use crate::riding::optimal_pacing::landmarks;
use crate::riding::optimal_pacing::simple_plan;
use crate::scenario::propagation::Contribution;

/// The best even effort.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EvenRide {
    /// Finish time, s.
    pub time_s: f64,
    /// Power, W.
    pub power_w: f64,
}

impl From<Paced> for EvenRide {
    fn from(ride: Paced) -> Self {
        Self {
            time_s: ride.time_s,
            power_w: ride.power_w,
        }
    }
}

/// The fastest plan that W′ balance allows.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FastestPlan {
    /// Finish time, s; never more than that of the even effort, unless the rider sits up where that costs time.
    pub time_s: f64,
    /// The least W′ balance on the way, J.
    pub w_prime_least_j: f64,
    /// Seconds faster than the even effort; negative where it is slower.
    pub faster_by_s: f64,
    /// The power above which W′ is spent, W: critical power, and less in long rides.
    pub threshold_w: f64,
}

/// What a place on the road is known by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Landmark {
    /// The start.
    Start,
    /// The road begins to climb, or to climb more steeply.
    Climb,
    /// The road begins to fall, or to fall more steeply.
    Descent,
    /// A climb or a descent ends on level road.
    Level,
    /// The road leads another way.
    Turn,
    /// Nothing but its distance.
    Distance,
}

impl From<landmarks::Landmark> for Landmark {
    fn from(landmark: landmarks::Landmark) -> Self {
        match landmark {
            landmarks::Landmark::Start => Self::Start,
            landmarks::Landmark::Climb => Self::Climb,
            landmarks::Landmark::Descent => Self::Descent,
            landmarks::Landmark::Level => Self::Level,
            landmarks::Landmark::Turn => Self::Turn,
            landmarks::Landmark::Distance => Self::Distance,
        }
    }
}

/// A power, and where it begins.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Cue {
    /// Where it begins, m from the start.
    pub from_m: f64,
    /// The power from there on, W.
    pub power_w: f64,
    /// What the place is known by.
    pub landmark: Landmark,
    /// The mean grade of the road from there on.
    pub grade: f64,
}

impl From<&simple_plan::Cue> for Cue {
    fn from(cue: &simple_plan::Cue) -> Self {
        Self {
            from_m: cue.from_m,
            power_w: cue.power_w,
            landmark: cue.place.landmark.into(),
            grade: cue.place.grade,
        }
    }
}

/// A plan of a few powers.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CuedPlan {
    /// Finish time of the rider as believed, s.
    pub time_s: f64,
    /// The powers in the order ridden.
    pub cues: Vec<Cue>,
    /// Seconds slower than the fastest plan.
    pub slower_by_s: f64,
    /// The least W′ balance on the way, J; 0 or a little less where the rider as believed runs out.
    pub w_prime_least_j: f64,
    /// Mean finish time of riders whose critical power and W′ are uncertain as they are, s.
    pub mean_time_s: f64,
    /// The share of them who run out.
    pub run_out_share: f64,
}

/// The plan of a few powers, ridden by somebody for whom it is too hard.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TooHard {
    /// By what share: too hard over the first ten minutes, or the critical power lower than believed.
    pub share: f64,
    /// Finish time, s.
    pub time_s: f64,
    /// Seconds lost by it.
    pub lost_s: f64,
    /// Where W′ runs out, m; `null` where it lasts.
    pub runs_out_m: Option<f64>,
}

/// A rider whose critical power is lower than believed, on the plan of a few powers.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LowerPower {
    /// What happens on the plan; what is lost is against the plan's own time.
    #[serde(flatten)]
    pub on_plan: TooHard,
    /// Finish time of this rider's own best even effort, s; `null` where there is none.
    pub even_time_s: Option<f64>,
}

/// The least W′ balance of the plan of a few powers by each form of recovery, J.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LeastByForm {
    /// The slower, the fuller it is.
    pub differential_j: f64,
    /// Nothing comes back.
    pub none_j: f64,
    /// Watt for watt.
    pub linear_j: f64,
}

/// Riders with another critical power and W′, on both plans.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RidersCompared {
    /// How many there are.
    pub riders: u32,
    /// Their mean finish time on the plan for the rider as believed, s.
    pub simple_mean_time_s: f64,
    /// The share of them who run out on it.
    pub simple_run_out_share: f64,
    /// Their mean finish time on the plan for an uncertain rider, s.
    pub robust_mean_time_s: f64,
    /// The share of them who run out on it.
    pub robust_run_out_share: f64,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Stops on the way, if there are any: every finish time has what they cost, but the plans are those of the road without them.
    pub stops: Option<PlanStops>,
    /// The best even effort.
    pub even: EvenRide,
    /// The fastest plan.
    pub fastest: FastestPlan,
    /// The best plan of a few powers for the rider as believed.
    pub simple: CuedPlan,
    /// The plan of a few powers that is best on average over riders whose critical power and W′ are as uncertain as they are.
    pub robust: CuedPlan,
    /// What sitting up on steep climbs does, if the rider wants to.
    pub sit_up: Option<SittingUp>,
    /// How W′ was taken to come back.
    pub recovery: RecoveryForm,
    /// What is left of W′ at the least on the plan of a few powers, by each form of recovery.
    pub w_prime_least: LeastByForm,
    /// That plan ridden 5 and 10 % too hard over the first ten minutes.
    pub overshoot: [TooHard; 2],
    /// That plan with a critical power 3 % lower than believed.
    pub cp_lower: LowerPower,
    /// Many riders on both plans, if any were asked for.
    pub riders: Option<RidersCompared>,
    /// Finish time of the fastest plan with all its doubt, which is that of the even effort: the inputs' and the model's own.
    pub finish_s: Figure,
    /// Which inputs carry the doubt of the finish time.
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over distance: at the beginning of each piece of road, and at the finish. Power is constant on a piece.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// From the start, m.
    pub distance_m: Column,
    /// Power of the fastest plan from there to the next, W.
    pub power_w: Column,
    /// Speed of that plan there, m/s.
    pub speed_m_s: Column,
    /// W′ balance of that plan there, J.
    pub w_prime_j: Column,
    /// Time of that plan there, s.
    pub time_s: Column,
    /// Grade of the road from there on.
    pub grade: Column,
    /// By how much that plan is ahead of the even effort there, s.
    pub ahead_s: Column,
    /// Power of the plan of a few powers, W.
    pub simple_power_w: Column,
    /// W′ balance of that plan, J.
    pub simple_w_prime_j: Column,
    /// Power of the robust plan, W.
    pub robust_power_w: Column,
}
