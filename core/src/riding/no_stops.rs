//! What the module of a first visit knows of stops: nothing. All of a finish time is riding time.

use super::integrated::Setup;
use crate::physics::course::Segment;

impl Setup {
    /// The same ride without a stop, as it is.
    pub(crate) fn without_stops(&self) -> Self {
        self.clone()
    }

    /// Riding time, s, of a finish time.
    pub(crate) fn riding_s(&self, finish_s: f64) -> f64 {
        finish_s
    }

    /// The power that can be held for a ride of this finish time, W.
    pub(crate) fn sustainable_w(&self, finish_s: f64) -> f64 {
        self.power.sustainable_w(finish_s)
    }

    /// The course from stop to stop: there are none.
    pub(crate) fn between_stops(&self) -> Option<()> {
        None
    }

    /// The whole course, which ends at the line.
    pub(crate) fn leg(&self, _: &Option<()>, _: usize) -> (&[Segment], Option<f64>) {
        (&self.course.segments, None)
    }
}
