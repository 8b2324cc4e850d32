//! What the question takes.

use serde::Deserialize;

use crate::inputs::fields;
use crate::inputs::quantity::Quantity;
use crate::scenario::set_ups::AnkleModel;

/// One set-up of bicycle and rider.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct SetUp {
    /// Axle to pedal axle, m.
    pub crank_m: Quantity,
    /// The crank's axle to the top of the saddle along the seat line, m.
    pub saddle_height_m: Quantity,
    /// Of the line from the crank's axle to the hip joint's centre, degrees above the horizontal.
    pub seat_angle_deg: Quantity,
    /// Top of the saddle down to the arm pads, m; the typical drop if there is no torso angle either.
    #[cfg_attr(feature = "types", ts(optional))]
    pub bar_drop_m: Option<Quantity>,
    /// Or, instead of it, hip joint to shoulder joint, degrees above the horizontal.
    #[cfg_attr(feature = "types", ts(optional))]
    pub torso_deg: Option<Quantity>,
    /// Turns of the crank a minute.
    pub cadence_rpm: Quantity,
}

impl Default for SetUp {
    fn default() -> Self {
        Self {
            crank_m: fields::CRANK_M.chosen(),
            saddle_height_m: fields::SADDLE_HEIGHT_M.chosen(),
            seat_angle_deg: fields::SEAT_ANGLE_DEG.chosen(),
            bar_drop_m: None,
            torso_deg: None,
            cadence_rpm: fields::CADENCE_RPM.chosen(),
        }
    }
}

/// What the question takes. A length that is left out is guessed from the stature.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// What the ankle does.
    pub model: AnkleModel,
    /// The set-up to compare with.
    pub a: SetUp,
    /// The other one.
    pub b: SetUp,
    /// Standing height, m.
    pub stature_m: Quantity,
    /// Hip joint to knee, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub thigh_m: Option<Quantity>,
    /// Knee to ankle, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub shank_m: Option<Quantity>,
    /// Ankle to pedal axle, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub foot_m: Option<Quantity>,
    /// Hip joint to shoulder joint, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub trunk_m: Option<Quantity>,
    /// Shoulder joint to arm pads, m.
    #[cfg_attr(feature = "types", ts(optional))]
    pub upper_arm_m: Option<Quantity>,
    /// The hip joint's centre beyond the top of the saddle along the seat line, m.
    pub hip_above_saddle_m: Quantity,
    /// For the frozen ankle: between shank and the line from ankle to pedal, degrees.
    pub ankle_deg: Quantity,
    /// For the moving one: how far that line points down in the mean, degrees.
    pub foot_pitch_deg: Quantity,
    /// And how far it swings to either side, degrees.
    pub foot_swing_deg: Quantity,
}

impl Default for With {
    fn default() -> Self {
        Self {
            model: AnkleModel::default(),
            a: SetUp::default(),
            b: SetUp {
                crank_m: Quantity::exact(0.165),
                saddle_height_m: Quantity::exact(0.725),
                bar_drop_m: Some(Quantity::exact(0.12)),
                ..SetUp::default()
            },
            stature_m: fields::STATURE_M.typical(),
            thigh_m: None,
            shank_m: None,
            foot_m: None,
            trunk_m: None,
            upper_arm_m: None,
            hip_above_saddle_m: fields::HIP_ABOVE_SADDLE_M.typical(),
            ankle_deg: fields::ANKLE_DEG.typical(),
            foot_pitch_deg: fields::FOOT_PITCH_DEG.typical(),
            foot_swing_deg: fields::FOOT_SWING_DEG.typical(),
        }
    }
}
