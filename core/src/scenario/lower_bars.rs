//! What lower bars may cost in power before they lose, for the published cut in drag area.

use serde::Serialize;

use crate::inputs::published::{MeanAndSd, PUBLISHED};
use crate::riding::effort::Paced;
use crate::riding::integrated::Setup;
use crate::riding::known_ride::KnownRide;
use crate::riding::tie::tie_factor;

/// What lower bars may cost before they lose against the reference: for the published cut in drag area, and one standard
/// deviation of it less and more (`polanco-2020`).
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LowerBars {
    /// The event, by its place in the scenario.
    pub event: usize,
    /// The cut in drag area as a share.
    pub cda_cut: f64,
    /// What it may cost in critical power, W; `null` where nothing ties.
    pub allowed_w: Option<f64>,
    /// The same as a share.
    pub allowed_share: Option<f64>,
}

/// At every event, for lower bars than the reference's: every choice's ride on every event's course is given.
pub(crate) fn lower_bars(
    on_events: &[Vec<Setup>],
    reference: usize,
    known_rides: &[KnownRide],
) -> Vec<LowerBars> {
    let MeanAndSd { mean: cut, sd } = PUBLISHED.lower_bars_cda_cut;
    let cuts = [cut - sd, cut, cut + sd];
    let at_event = |(event, setups): (usize, &Vec<Setup>)| {
        let kept = setups.get(reference)?;
        let Paced { power_w, time_s } = known_rides.get(event * setups.len() + reference)?.ride;
        Some(cuts.map(|cda_cut| {
            let lower = kept.in_position(kept.position.clone().times(1.0 - cda_cut));
            let allowed_share =
                tie_factor(&lower, time_s, power_w * (1.0 - cda_cut)).map(|factor| 1.0 - factor);
            let allowed_w = allowed_share.map(|share| share * kept.power.cp_w);
            LowerBars {
                event,
                cda_cut,
                allowed_w,
                allowed_share,
            }
        }))
    };
    on_events
        .iter()
        .enumerate()
        .filter_map(at_event)
        .flatten()
        .collect()
}
