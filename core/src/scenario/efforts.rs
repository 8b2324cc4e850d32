//! The scenario's efforts as they are fitted.

use super::Scenario;
use crate::physiology::efforts::{Tests, by_position};
use crate::physiology::models::Effort;

impl Scenario {
    /// The efforts by the position they were ridden in, positions ascending. An effort without a standard deviation has
    /// `test_error_share` of its power.
    pub(crate) fn tests_by_position(&self, test_error_share: f64) -> Vec<Tests> {
        by_position(self.efforts.iter().map(|effort| {
            let power_w = effort.power_w.value;
            let sd_w = if effort.power_w.sd > 0.0 {
                effort.power_w.sd
            } else {
                test_error_share * power_w
            };
            let position = effort.position.unwrap_or(self.riding_position);
            let effort = Effort {
                duration_s: effort.duration_s.value,
                power_w,
                sd_w,
            };
            (position, effort)
        }))
    }
}
