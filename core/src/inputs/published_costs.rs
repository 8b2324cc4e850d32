//! Published costs in power of lower positions.

use serde::Serialize;

use super::published::{MeanAndSd, PUBLISHED};

/// A published cost in power of a lower position.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PublishedCost {
    /// The key of the citation.
    pub source: &'static str,
    /// The mean, as a share of power or in watts.
    pub mean: f64,
    /// The standard deviation between riders.
    pub sd: f64,
    /// Whether it is a share of power; watts if not.
    pub is_share: bool,
    /// How many riders were tested.
    pub riders: u32,
    /// The cut in drag area that came with it, as a share; `null` where it is not published.
    pub cda_cut: Option<f64>,
}

/// What a lower position cost the riders of two studies.
pub(crate) fn published_costs() -> [PublishedCost; 2] {
    let lower_bars = PUBLISHED.lower_bars_power_cost;
    let low_torso = PUBLISHED.low_torso_cost_w;
    [
        PublishedCost {
            source: "polanco-2020",
            mean: lower_bars.mean,
            sd: lower_bars.sd,
            is_share: true,
            riders: PUBLISHED.lower_bars_riders,
            cda_cut: Some(PUBLISHED.lower_bars_cda_cut.mean),
        },
        PublishedCost {
            source: "faulkner-2021",
            mean: low_torso.mean,
            sd: low_torso.sd,
            is_share: false,
            riders: PUBLISHED.low_torso_riders,
            cda_cut: None,
        },
    ]
}

/// Cuts in drag area that a lowered torso may bring: those of `polanco-2020` give or take two standard deviations. That a torso
/// at 12° is among them is assumed.
pub(crate) fn is_cut_of_a_lowered_torso(cda_cut: f64) -> bool {
    let MeanAndSd { mean, sd } = PUBLISHED.lower_bars_cda_cut;
    (mean - 2.0 * sd..=mean + 2.0 * sd).contains(&cda_cut)
}
