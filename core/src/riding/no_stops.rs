//! What the module of a first visit knows of stops: nothing. All of a finish time is riding time.

use super::integrated::Setup;
use crate::physics::course::Segment;

impl Setup {
    /// Riding time, s, of a finish time.
    pub(crate) fn riding_s(&self, finish_s: f64) -> f64 {
        finish_s
    }

    /// The power that can be held for a ride of this finish time, W.
    pub(crate) fn sustainable_w(&self, finish_s: f64) -> f64 {
        self.power.sustainable_w(finish_s)
    }

    /// The stretches between the stops, and how long the rider stands at each: there are none.
    pub(crate) fn between_stops(&self) -> Option<(Vec<Vec<Segment>>, f64)> {
        None
    }
}
