//! What a position may cost in critical power before it loses against another, beside published costs.

use serde::Serialize;

use super::Scenario;
use super::comparison::Comparison;
use crate::inputs::published::{MeanAndSd, PUBLISHED};
use crate::inputs::published_costs::is_cut_of_a_lowered_torso;
use crate::inputs::quantity::Figure;
use crate::numerics::distributions::predicted_share;
use crate::riding::integrated::Setup;
use crate::riding::tie::{seconds_per_watt, tie_factor};
use crate::uncertainty::draws::Sensitivities;

/// What a position may cost in critical power before it loses against another.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PositionCost {
    /// The position with the smaller drag area, by its place in `choices`.
    pub choice: usize,
    /// The other, by its place in `choices`.
    pub against: usize,
    /// The event, by its place in the scenario.
    pub event: usize,
    /// How many watts its critical power may lie below the other's; `null` where no number of them ties.
    pub allowed_w: Option<Figure>,
    /// The same as a share of the other's critical power.
    pub allowed_share: Option<f64>,
    /// How many watts it lies below now.
    pub now_w: f64,
    /// By what share its drag area, fresh and without equipment, is below the other's; 0 or less if it is not.
    pub cda_cut: f64,
    /// What lower bars cost the riders of `polanco-2020` as a share of power, with the spread between them, scaled from the cut of
    /// that test to `cda_cut`: that the cost grows in proportion is assumed. `null` where there is no cut.
    pub polanco_cost: Option<Figure>,
    /// The share of further riders like them who would pay less than `allowed_share` at that scaled cost.
    pub polanco_share: Option<f64>,
    /// The share of further riders like those of `faulkner-2021` who would pay less than `allowed_w`. Their cut is not published, so
    /// that nothing can be scaled: it is given only for a cut of the size that lower bars bring, and holds only for a torso brought
    /// down to about 12°.
    pub faulkner_share: Option<f64>,
}

/// The most pairs of positions and events whose cost is worked out.
const MOST_COSTS: usize = 120;

/// The position with the smaller drag area over an event, the other, and by what share it is smaller when fresh and without
/// equipment.
struct Pair {
    choice: usize,
    against: usize,
    cda_cut: f64,
}

impl Comparison<'_> {
    /// What every pair of positions may cost, as they are worn; every choice's ride on every event's course is given.
    pub(crate) fn costs(
        &self,
        scenario: &Scenario,
        on_events: &[Vec<Setup>],
        reference: usize,
        spread: &Sensitivities,
    ) -> Vec<PositionCost> {
        let worn: Vec<usize> = (0..self.rides.len())
            .filter(|&choice| {
                self.rides
                    .get(choice)
                    .is_some_and(|ride| scenario.as_worn(&[ride.position]).contains(ride))
            })
            .collect();
        let others = worn.len().saturating_sub(1);
        let many = worn.len() * others / 2 * on_events.len() > MOST_COSTS;
        // Of very many positions even those pairs are too many: then only the first events have theirs.
        let most_events = if many {
            MOST_COSTS / others.max(1)
        } else {
            on_events.len()
        };
        let mut costs = Vec::new();
        for (i, &one) in worn.iter().enumerate() {
            for &other in &worn[..i] {
                if many && one != reference && other != reference {
                    continue;
                }
                for (event, setups) in on_events.iter().enumerate().take(most_events) {
                    let row = event * setups.len();
                    let mean_m2 = |choice: usize| {
                        setups[choice].mean_cda_m2(self.known_rides[row + choice].ride.time_s)
                    };
                    let (choice, against) = if mean_m2(one) < mean_m2(other) {
                        (one, other)
                    } else {
                        (other, one)
                    };
                    let fresh_m2 = |choice: usize| {
                        scenario.positions[self.rides[choice].position].cda_m2.value
                    };
                    let cda_cut = 1.0 - fresh_m2(choice) / fresh_m2(against);
                    let pair = Pair {
                        choice,
                        against,
                        cda_cut,
                    };
                    costs.push(self.cost(setups, spread, row, pair));
                }
            }
        }
        costs
    }

    fn cost(
        &self,
        setups: &[Setup],
        spread: &Sensitivities,
        row: usize,
        Pair {
            choice,
            against,
            cda_cut,
        }: Pair,
    ) -> PositionCost {
        let there = &setups[choice];
        let (cp_w, other_cp_w) = (there.power.cp_w, setups[against].power.cp_w);
        let allowed = tie_factor(
            there,
            self.known_rides[row + against].ride.time_s,
            self.known_rides[row + choice].ride.power_w,
        )
        .map(|factor| {
            let own = format!("scenario.positions[{}].", self.rides[choice].position);
            let is_own_power = |path: &str| path.strip_prefix(&own).is_some_and(is_power);
            let moved = spread
                .by_input
                .iter()
                .zip(self.propagation.inputs())
                .filter(|(_, input)| !is_own_power(&input.path));
            let apart_s = moved
                .map(|(moved, _)| (moved[row + choice] - moved[row + against]).powi(2))
                .sum::<f64>()
                .sqrt();
            Figure {
                value: other_cp_w - factor * cp_w,
                sd: apart_s / seconds_per_watt(there, factor),
            }
        });
        let allowed_share = allowed.map(|allowed_w| allowed_w.value / other_cp_w);
        let scale = cda_cut / PUBLISHED.lower_bars_cda_cut.mean;
        let polanco_cost = (scale > 0.0).then_some(Figure {
            value: scale * PUBLISHED.lower_bars_power_cost.mean,
            sd: scale * PUBLISHED.lower_bars_power_cost.sd,
        });
        PositionCost {
            choice,
            against,
            event: row / setups.len(),
            allowed_w: allowed.filter(|figure| figure.sd.is_finite()),
            allowed_share,
            now_w: other_cp_w - cp_w,
            cda_cut,
            polanco_cost,
            polanco_share: polanco_cost.zip(allowed_share).map(|(cost, share)| {
                predicted_share(share, cost.value, cost.sd, PUBLISHED.lower_bars_riders)
            }),
            faulkner_share: allowed
                .filter(|_| is_cut_of_a_lowered_torso(cda_cut))
                .map(|watts| {
                    let MeanAndSd { mean, sd } = PUBLISHED.low_torso_cost_w;
                    predicted_share(watts.value, mean, sd, PUBLISHED.low_torso_riders)
                }),
        }
    }
}

/// Whether a position's input says what it costs in power.
fn is_power(name: &str) -> bool {
    name.starts_with("cp_factor")
        || name.starts_with("w_prime_factor")
        || name.starts_with("power.")
}
