//! What the question takes.

use serde::{Deserialize, Serialize};

use crate::inputs::fields;
use crate::measuring::columns::Columns;
use crate::measuring::late_rise::Filmed;
use crate::measuring::recording::Rules;

/// A recording of a ride.
#[derive(Clone, Debug, Default, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct RecordingForm {
    /// What was recorded.
    pub columns: Columns,
}

/// A lap of a recording.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct LapForm {
    /// The recording, by its place.
    #[serde(default)]
    pub recording: usize,
    /// When it begins, in the recording's time, s.
    pub from_s: f64,
    /// When it ends, s.
    pub to_s: f64,
    /// The position ridden in: the same whole number for all laps in one position, from 0 to 49 (`MOST_POSITIONS` less one). It need
    /// not be a position of the scenario.
    #[serde(default)]
    pub position: usize,
    /// Whether it ends where it began, so that the road is as high.
    #[serde(default = "yes")]
    pub closed: bool,
    /// Why it is left out, if it is.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub excluded: Option<String>,
    /// The wind at the height of the rider while it was ridden, if that was measured, m/s.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub wind_speed_m_s: Option<f64>,
    /// Where that came from, degrees.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub wind_from_deg: Option<f64>,
}

fn yes() -> bool {
    true
}

/// A run at constant speed.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct RunForm {
    /// The position, as for laps.
    #[serde(default)]
    pub position: usize,
    /// m/s.
    pub speed_m_s: f64,
    /// At the pedals, W.
    pub power_w: f64,
    /// Head wind at the height of the rider, m/s; a tail wind is negative. Left out, it is what the scenario's wind is on this bearing,
    /// and none without a bearing.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub wind_head_m_s: Option<f64>,
    /// Rise over run.
    #[serde(default)]
    pub grade: f64,
    /// Where the road leads, degrees; for the scenario's wind and for one that is fitted.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub bearing_deg: Option<f64>,
    /// Why it is left out, if it is.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub excluded: Option<String>,
}

/// A coast-down: from one speed to another without pedalling.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct CoastDownForm {
    /// The position, as for laps.
    #[serde(default)]
    pub position: usize,
    /// m/s.
    pub from_m_s: f64,
    /// m/s.
    pub to_m_s: f64,
    /// How long it took, s.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub time_s: Option<f64>,
    /// Or how far it went, m.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub distance_m: Option<f64>,
    /// Head wind at the height of the rider, m/s.
    #[serde(default)]
    pub wind_head_m_s: f64,
    /// Rise over run.
    #[serde(default)]
    pub grade: f64,
    /// Why it is left out, if it is.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub excluded: Option<String>,
}

/// What becomes of rolling resistance.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RollingForm {
    /// It is estimated with the drag areas.
    #[default]
    Fit,
    /// It is the scenario's.
    Hold,
}

/// What becomes of the wind.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum WindForm {
    /// It is left out.
    Ignore,
    /// A lap's and a run's own; else the scenario's, where a recording's or a run's bearing is known. A coast-down has only its own.
    #[default]
    Given,
    /// A steady one is estimated from laps of different headings.
    Fit,
}

/// Which samples are unusable; laps that hold such are left out.
#[derive(Clone, Copy, Debug, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct RulesForm {
    /// Slowing down by more than this, beyond what the slope explains, is braking, m/s².
    pub braking_m_s2: f64,
    /// Slower than this is a stop, m/s.
    pub stopped_m_s: f64,
    /// Gaining speed by more than this without power, beyond what the slope explains, is a fault of the meter, m/s².
    pub accelerating_m_s2: f64,
    /// A gap up to this long is bridged, s.
    pub bridged_s: f64,
    /// A lap with no more than this that is unusable is kept, s.
    pub allowed_s: f64,
}

impl Default for RulesForm {
    fn default() -> Self {
        Self {
            braking_m_s2: fields::RULE_BRAKING_M_S2.default,
            stopped_m_s: fields::RULE_STOPPED_M_S.default,
            accelerating_m_s2: fields::RULE_ACCELERATING_M_S2.default,
            bridged_s: fields::RULE_BRIDGED_S.default,
            allowed_s: fields::RULE_ALLOWED_S.default,
        }
    }
}

/// What a film of a position shows: shares of the time in the first, middle and last third.
#[derive(Clone, Copy, Debug, Default, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct FilmForm {
    /// The position, as for laps.
    pub position: usize,
    /// With the head up.
    pub head_up_share: [f64; 3],
    /// With the back raised.
    pub back_up_share: [f64; 3],
    /// With the hands off their place.
    pub hands_moved_share: [f64; 3],
}

/// A test that is planned.
#[derive(Clone, Copy, Debug, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct PlanForm {
    /// The difference between two positions that it is to show, as a share of the drag area.
    pub difference_share: f64,
    /// How well one run repeats: one standard deviation as a share of the drag area.
    pub run_cv_share: f64,
    /// How often it is to show the difference.
    pub power: f64,
    /// How many runs in each position the rider means to do; if left out, as many as it takes.
    #[cfg_attr(feature = "types", ts(optional))]
    pub runs: Option<u32>,
    /// The speed of the runs, m/s.
    pub speed_m_s: f64,
}

impl Default for PlanForm {
    fn default() -> Self {
        Self {
            difference_share: fields::DIFFERENCE_SHARE.default,
            run_cv_share: fields::RUN_CV_SHARE.default,
            power: fields::TEST_POWER.default,
            runs: None,
            speed_m_s: fields::SPEED_M_S.default,
        }
    }
}

/// What the question takes. Without laps, runs and coast-downs it plans a test.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// The day of the test, as `2026-05-01`: a test that the scenario holds of that day is this one.
    #[cfg_attr(feature = "types", ts(optional))]
    pub date: Option<String>,
    /// Rides.
    pub recordings: Vec<RecordingForm>,
    /// Laps of them, in the order in which they were ridden.
    pub laps: Vec<LapForm>,
    /// Runs at constant speed, in the order in which they were ridden.
    pub runs: Vec<RunForm>,
    /// Coast-downs.
    pub coast_downs: Vec<CoastDownForm>,
    /// What becomes of rolling resistance.
    pub rolling: RollingForm,
    /// What becomes of the wind.
    pub wind: WindForm,
    /// Which samples are unusable.
    pub rules: RulesForm,
    /// One standard deviation of the scale of every speed, as a share.
    pub speed_error_share: f64,
    /// What was filmed.
    pub film: Vec<FilmForm>,
    /// A test to plan.
    #[cfg_attr(feature = "types", ts(optional))]
    pub plan: Option<PlanForm>,
}

impl Default for With {
    fn default() -> Self {
        Self {
            date: None,
            recordings: Vec::new(),
            laps: Vec::new(),
            runs: Vec::new(),
            coast_downs: Vec::new(),
            rolling: RollingForm::default(),
            wind: WindForm::default(),
            rules: RulesForm::default(),
            speed_error_share: fields::SPEED_ERROR_SHARE.default,
            film: Vec::new(),
            plan: None,
        }
    }
}

impl With {
    /// Whether there is anything to estimate from.
    pub(super) fn is_measured(&self) -> bool {
        !(self.laps.is_empty() && self.runs.is_empty() && self.coast_downs.is_empty())
    }

    /// The rules as the reduction takes them.
    pub(super) fn rules(&self) -> Rules {
        Rules {
            braking_m_s2: self.rules.braking_m_s2,
            stopped_m_s: self.rules.stopped_m_s,
            accelerating_m_s2: self.rules.accelerating_m_s2,
            bridged_s: self.rules.bridged_s,
        }
    }
}

impl FilmForm {
    /// As the reduction takes it.
    pub(super) fn filmed(&self) -> Filmed {
        Filmed {
            head_up_share: self.head_up_share,
            back_up_share: self.back_up_share,
            hands_moved_share: self.hands_moved_share,
        }
    }
}
