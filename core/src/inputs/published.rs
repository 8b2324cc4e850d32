//! Published figures that several questions or the page quote: each stands here once, beside the key of its citation.

use serde::Serialize;

/// A mean over riders and the standard deviation between them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct MeanAndSd {
    /// The mean.
    pub mean: f64,
    /// One standard deviation between riders.
    pub sd: f64,
}

/// All of them.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Published {
    /// What lower bars took off five riders' drag area, as a share. Source: polanco-2020.
    pub lower_bars_cda_cut: MeanAndSd,
    /// What they cost the same riders in power, as a share. Source: polanco-2020.
    pub lower_bars_power_cost: MeanAndSd,
    /// How many riders these were. Source: polanco-2020.
    pub lower_bars_riders: u32,
    /// What a low torso cost eleven riders at the anaerobic threshold, W. Source: faulkner-2021.
    pub low_torso_cost_w: MeanAndSd,
    /// How low it was: the angle of the torso above the horizontal, °. Source: faulkner-2021.
    pub low_torso_deg: f64,
    /// How many riders these were. Source: faulkner-2021.
    pub low_torso_riders: u32,
    /// How much better highly trained riders' trials were after four weeks of intervals, as shares of power, least and
    /// greatest of the groups. Source: laursen-2002.
    pub four_weeks_trial_gain: [f64; 2],
    /// How long those trials were, m. Source: laursen-2002.
    pub four_weeks_trial_m: f64,
    /// How much their peak aerobic power rose, as shares, least and greatest of the groups. Source: laursen-2002.
    pub four_weeks_peak_gain: [f64; 2],
}

/// The figures.
pub static PUBLISHED: Published = Published {
    lower_bars_cda_cut: MeanAndSd {
        mean: 0.107,
        sd: 0.031,
    },
    lower_bars_power_cost: MeanAndSd {
        mean: 0.095,
        sd: 0.054,
    },
    lower_bars_riders: 5,
    low_torso_cost_w: MeanAndSd {
        mean: 16.0,
        sd: 20.0,
    },
    low_torso_deg: 12.0,
    low_torso_riders: 11,
    four_weeks_trial_gain: [0.044, 0.058],
    four_weeks_trial_m: 40_000.0,
    four_weeks_peak_gain: [0.03, 0.062],
};
