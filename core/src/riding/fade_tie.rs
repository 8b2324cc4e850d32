//! How long a faster position must be held to tie with a steady one.

use super::effort::{Effort, paced_from};
use super::integrated::{Integrated, Setup};
use crate::inputs::fields;
use crate::numerics::solve::root;
use crate::physics::position::{Fade, Position};

/// A position that is lost against the finish time of another.
pub(crate) struct Tie<'a> {
    pub(crate) low: &'a Setup,
    pub(crate) effort: Effort,
    pub(crate) guess_w: f64,
    pub(crate) steady_s: f64,
}

impl Tie<'_> {
    /// How much slower a changed low position is than the steady one, s; not a number where it cannot be ridden.
    pub(crate) fn behind_s(&self, position: Position) -> f64 {
        paced_from(
            &Integrated,
            &self.low.in_position(position),
            self.effort,
            self.guess_w,
        )
        .map_or(f64::NAN, |ride| ride.time_s - self.steady_s)
    }

    /// Share of the ride that the position must be held, the rest being ridden at its lost drag area.
    pub(crate) fn held_share(&self) -> Option<f64> {
        let position = &self.low.position;
        let lost_m2 = position.lost_cda_m2()?;
        root(
            |share| self.behind_s(position.held_for_share(share, lost_m2)),
            0.0,
            1.0,
            1e-11,
        )
        .ok()
    }

    /// The earliest that it may begin to go, going as slowly as it does, s.
    pub(crate) fn begins_s(&self) -> Option<f64> {
        let fade = self.low.position.fade?;
        let ramp_s = fade.complete_s - fade.begins_s;
        let begun_at = |begins_s: f64| {
            self.faded(Fade {
                begins_s,
                complete_s: begins_s + ramp_s,
                ..fade
            })
        };
        root(
            |begins_s| self.behind_s(begun_at(begins_s)),
            0.0,
            self.steady_s,
            1e-11,
        )
        .ok()
    }

    /// The highest drag area that it may end at, m².
    pub(crate) fn tired_cda_m2(&self) -> Option<f64> {
        let fade = self.low.position.fade?;
        if fade.begins_s >= self.low.riding_s(self.steady_s) {
            return None;
        }
        let tired_at = |tired_cda_m2: f64| {
            self.faded(Fade {
                tired_cda_m2,
                ..fade
            })
        };
        root(
            |cda_m2| self.behind_s(tired_at(cda_m2)),
            fields::CDA_M2.min,
            fields::CDA_M2.max,
            1e-12,
        )
        .ok()
    }

    fn faded(&self, fade: Fade) -> Position {
        Position {
            fade: Some(fade),
            ..self.low.position.clone()
        }
    }
}
