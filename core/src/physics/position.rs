//! What the air sees: drag area when fresh, as it creeps up, and in lapses.

use crate::physics::resistance::DragShape;

/// A position that is lost: drag area rises linearly from `begins_s` to `complete_s`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fade {
    /// Drag area once it is lost, m².
    pub tired_cda_m2: f64,
    /// When it begins to go, s.
    pub begins_s: f64,
    /// When it has gone, s, not before `begins_s`.
    pub complete_s: f64,
}

impl Fade {
    /// The share of it that is gone at a time.
    #[inline(always)]
    fn gone(&self, time_s: f64) -> f64 {
        if time_s >= self.complete_s {
            return 1.0;
        }
        if time_s <= self.begins_s {
            return 0.0;
        }
        (time_s - self.begins_s) / (self.complete_s - self.begins_s)
    }

    /// The integral of that share over the ride up to a time, s.
    fn gone_by_s(&self, time_s: f64) -> f64 {
        if time_s <= self.begins_s {
            return 0.0;
        }
        if time_s >= self.complete_s {
            return 0.5 * (self.complete_s - self.begins_s) + (time_s - self.complete_s);
        }
        0.5 * (time_s - self.begins_s) * self.gone(time_s)
    }
}

/// A share of the time spent out of the position, spread evenly over the ride.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lapses {
    /// Share of the time, 0 to 1.
    pub share: f64,
    /// Drag area in a lapse, m².
    pub cda_m2: f64,
}

/// A position on the bicycle.
#[derive(Clone, Debug, PartialEq)]
pub struct Position {
    /// Drag area when fresh, m².
    pub cda_m2: f64,
    /// How it changes with yaw and air speed.
    pub shape: DragShape,
    /// Critical power in this position over that of the power tests.
    pub cp_factor: f64,
    /// W′ in this position over that of the power tests.
    pub w_prime_factor: f64,
    /// How it is lost.
    pub fade: Option<Fade>,
    /// How often it is left.
    pub lapses: Option<Lapses>,
    /// How often it is left to eat and drink, on top of that.
    pub feeding: Option<Lapses>,
}

impl Position {
    /// Drag area at this time of the ride, m²: the fading one, with the lapses' share of the time at theirs, and
    /// feeding's share of it all at its own.
    #[inline(always)]
    pub fn cda_at_m2(&self, time_s: f64) -> f64 {
        let held = match self.fade {
            Some(fade) => self.cda_m2 + fade.gone(time_s) * (fade.tired_cda_m2 - self.cda_m2),
            None => self.cda_m2,
        };
        let held = match self.lapses {
            Some(lapses) => held + lapses.share * (lapses.cda_m2 - held),
            None => held,
        };
        match self.feeding {
            Some(feeding) => held + feeding.share * (feeding.cda_m2 - held),
            None => held,
        }
    }

    /// Until when drag area stays what it is at this time: infinite without fade, `None` while it fades.
    pub fn unchanged_until_s(&self, time_s: f64) -> Option<f64> {
        match self.fade {
            Some(fade) if time_s < fade.begins_s => Some(fade.begins_s),
            Some(fade) if time_s < fade.complete_s => None,
            _ => Some(f64::INFINITY),
        }
    }

    /// Drag area averaged over the first `time_s` of a ride, m².
    pub fn mean_cda_m2(&self, time_s: f64) -> f64 {
        self.mean_cda_between_m2(0.0, time_s)
    }

    /// Drag area averaged over a part of the ride, m²: `to_s` is after `from_s`.
    pub fn mean_cda_between_m2(&self, from_s: f64, to_s: f64) -> f64 {
        let Some(fade) = self.fade else {
            return self.cda_at_m2(0.0);
        };
        let gone = (fade.gone_by_s(to_s) - fade.gone_by_s(from_s)) / (to_s - from_s);
        let fresh = self.cda_at_m2(f64::NEG_INFINITY);
        let tired = self.cda_at_m2(f64::INFINITY);
        fresh + gone * (tired - fresh)
    }

    /// The same position with every drag area by a factor.
    #[must_use]
    pub fn times(mut self, factor: f64) -> Self {
        self.cda_m2 *= factor;
        if let Some(fade) = &mut self.fade {
            fade.tired_cda_m2 *= factor;
        }
        for left in [&mut self.lapses, &mut self.feeding].into_iter().flatten() {
            left.cda_m2 *= factor;
        }
        self
    }

    /// The same position where the rider sits up for a share of the time to eat and drink, at a drag area, m², no less than it
    /// has at any other time: sitting up never makes anybody faster.
    #[cfg(feature = "all")]
    #[must_use]
    pub(crate) fn fed(self, share: f64, cda_m2: f64) -> Self {
        let before = Self {
            feeding: None,
            ..self
        };
        Self {
            feeding: Some(Lapses {
                share,
                cda_m2: cda_m2.max(before.most_cda_m2()),
            }),
            ..before
        }
    }

    /// The same position without eating and drinking.
    #[cfg(feature = "all")]
    #[must_use]
    pub(crate) fn unfed(&self) -> Self {
        Self {
            feeding: None,
            ..self.clone()
        }
    }

    /// The most drag area at any time of a ride, m².
    #[cfg(feature = "all")]
    pub(crate) fn most_cda_m2(&self) -> f64 {
        self.cda_at_m2(f64::NEG_INFINITY)
            .max(self.cda_at_m2(f64::INFINITY))
    }

    /// Drag area when the position is lost: tired if it fades, else that of a lapse. `None` if it is never lost.
    pub fn lost_cda_m2(&self) -> Option<f64> {
        self.fade
            .map(|fade| fade.tired_cda_m2)
            .or(self.lapses.map(|lapses| lapses.cda_m2))
    }

    /// The same position never lost.
    #[cfg(feature = "all")]
    pub(crate) fn held(&self) -> Self {
        Self {
            fade: None,
            lapses: None,
            ..self.clone()
        }
    }

    /// The position as it is once lost, all the way. `None` if it is never lost.
    #[cfg(feature = "all")]
    pub(crate) fn lost(&self) -> Option<Self> {
        self.lost_cda_m2()
            .map(|lost_m2| self.held_for_share(0.0, lost_m2))
    }

    /// The same position held for a share of the time at its fresh drag area and at `lost_cda_m2` for the rest.
    pub fn held_for_share(&self, share: f64, lost_cda_m2: f64) -> Self {
        let lapses = Some(Lapses {
            share: 1.0 - share,
            cda_m2: lost_cda_m2,
        });
        Self {
            fade: None,
            lapses,
            ..self.clone()
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn mean_drag_area_is_the_average_of_drag_area_over_time() {
        let position = Position {
            cda_m2: 0.23,
            shape: DragShape::default(),
            cp_factor: 1.0,
            w_prime_factor: 1.0,
            fade: Some(Fade {
                tired_cda_m2: 0.27,
                begins_s: 1000.0,
                complete_s: 2000.0,
            }),
            lapses: Some(Lapses {
                share: 0.1,
                cda_m2: 0.3,
            }),
            feeding: Some(Lapses {
                share: 0.02,
                cda_m2: 0.35,
            }),
        };
        for (from_s, to_s) in [
            (0.0, 500.0),
            (0.0, 1500.0),
            (0.0, 3000.0),
            (900.0, 1100.0),
            (1200.0, 2500.0),
            (2100.0, 2200.0),
        ] {
            let n = 100_000;
            let at_s = |i: i32| from_s + (f64::from(i) + 0.5) * (to_s - from_s) / f64::from(n);
            let sum: f64 = (0..n).map(|i| position.cda_at_m2(at_s(i))).sum();
            assert!(
                (sum / f64::from(n) - position.mean_cda_between_m2(from_s, to_s)).abs() < 1e-9,
                "{from_s} to {to_s}"
            );
        }
    }
}
