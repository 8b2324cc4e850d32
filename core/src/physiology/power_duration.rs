//! What a rider can push for how long, and what is left of W′ along the way.
//!
//! Altitude takes from power only where `power.altitude_loss` is `"published"`: CP falls until the five-minute power has
//! fallen as measured, and W′ stays. How much the rider is like those measured is an uncertain input,
//! `power.altitude_response`.

use crate::numerics::solve::root;

/// Watts lost for each e-fold of time beyond a point in long rides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LongRide {
    /// A, W per unit of `ln(t/T)`.
    pub loss_w: f64,
    /// T, s.
    pub from_s: f64,
}

/// The power–duration relation
/// `P(t) = CP + W′/t · (1 − exp(−t (Pmax − CP)/W′)) − A ln(t/T)`, the last term for `t > T` only.
///
/// Without a peak power the exponential is dropped (the two-parameter hyperbola); without a long-ride loss, the logarithm.
///
/// Source: puchowicz-2020 (from memory); the hyperbola and W′: kordi-2019, hurd-2023.
///
/// ```
/// use fasterby_core::power_duration::PowerDuration;
///
/// let rider = PowerDuration { cp_w: 250.0, w_prime_j: 18_000.0, peak_w: None, long_ride: None };
/// assert_eq!(rider.sustainable_w(1200.0), 265.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PowerDuration {
    /// Critical power, W.
    pub cp_w: f64,
    /// W′, J.
    pub w_prime_j: f64,
    /// Pmax, W, above CP.
    pub peak_w: Option<f64>,
    /// What long rides lose.
    pub long_ride: Option<LongRide>,
}

/// The longest time that [`PowerDuration::duration_s`] answers, s: eleven days.
const LONGEST_S: f64 = 1e6;

impl PowerDuration {
    /// The power that can be held for `time_s`, W; not below 0. Falls with time.
    pub fn sustainable_w(&self, time_s: f64) -> f64 {
        let spread = match self.peak_w {
            Some(peak_w) => -(-time_s * (peak_w - self.cp_w) / self.w_prime_j).exp_m1(),
            None => 1.0,
        };
        let lost = self.long_ride.map_or(0.0, |long| {
            long.loss_w * (time_s / long.from_s).ln().max(0.0)
        });
        (self.cp_w + self.w_prime_j / time_s * spread - lost).max(0.0)
    }

    /// How long a power can be held, s. `None` where the relation gives no end within eleven days, or no start: at or
    /// above the peak power.
    ///
    /// Accurate to 1e-12 of the time.
    pub fn duration_s(&self, power_w: f64) -> Option<f64> {
        root(
            |ln_t| self.sustainable_w(ln_t.exp()) - power_w,
            1e-3f64.ln(),
            LONGEST_S.ln(),
            1e-13,
        )
        .ok()
        .map(f64::exp)
    }

    /// The relation in another position: `cp_factor` on CP, peak and long-ride loss, `w_prime_factor` on W′.
    ///
    /// Source: kordi-2019: position lowers CP and leaves W′ alone.
    pub fn scaled(&self, cp_factor: f64, w_prime_factor: f64) -> Self {
        Self {
            cp_w: self.cp_w * cp_factor,
            w_prime_j: self.w_prime_j * w_prime_factor,
            peak_w: self.peak_w.map(|peak_w| peak_w * cp_factor),
            long_ride: self.long_ride.map(|long| LongRide {
                loss_w: long.loss_w * cp_factor,
                ..long
            }),
        }
    }

    /// The relation at an altitude, of one that was tested at 200 m or lower: CP is lowered until the five-minute power has
    /// fallen by [`altitude_loss_share`] times `response`, at most to a tenth; the long-ride loss by the same share as CP. W′ and
    /// peak power stay.
    ///
    /// Source: clark-2007 for the five minutes; townsend-2017: CP falls, W′ does not below 4250 m.
    pub fn at_altitude(&self, altitude_m: f64, response: f64) -> Self {
        const FIVE_MINUTES_S: f64 = 300.0;
        const LEAST_SHARE: f64 = 0.1;
        let lost_w =
            response * altitude_loss_share(altitude_m) * self.sustainable_w(FIVE_MINUTES_S);
        let share = (1.0 - lost_w / self.cp_w).max(LEAST_SHARE);
        Self {
            cp_w: self.cp_w * share,
            long_ride: self.long_ride.map(|long| LongRide {
                loss_w: long.loss_w * share,
                ..long
            }),
            ..*self
        }
    }

    /// The power above which W′ is spent in an event of this length, W: CP, and past the long-ride point
    /// `P(t) − W′/t`, so that an even ride at the sustainable power ends exactly empty.
    pub fn threshold_w(&self, event_s: f64) -> f64 {
        match self.long_ride {
            Some(long) if event_s > long.from_s => {
                (self.sustainable_w(event_s) - self.w_prime_j / event_s).max(0.0)
            }
            _ => self.cp_w,
        }
    }
}

/// The share of five-minute power that riders who are not used to an altitude lose there, by straight lines between what was
/// measured at 200, 1200, 2200 and 3200 m: 0, 5.8 ± 2.9, 10.3 ± 4.3 and 19.8 ± 3.5 %. On above that as from 2200 to 3200 m.
///
/// Source: clark-2007.
pub fn altitude_loss_share(altitude_m: f64) -> f64 {
    const ROWS: [(f64, f64); 4] = [
        (200.0, 0.0),
        (1200.0, 0.058),
        (2200.0, 0.103),
        (3200.0, 0.198),
    ];
    let upper = ROWS[1..]
        .iter()
        .position(|&(row_m, _)| altitude_m < row_m)
        .unwrap_or(2);
    let ((low_m, low), (high_m, high)) = (ROWS[upper], ROWS[upper + 1]);
    (low + (altitude_m - low_m) / (high_m - low_m) * (high - low)).max(0.0)
}

/// How W′ comes back below the threshold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Recovery {
    /// `dW/dt = (CP − P)(W′ − W)/W′`: slower as it fills. Source: skiba-2015 (equation from memory).
    Differential,
    /// Nothing comes back: the cautious bound.
    None,
    /// `dW/dt = CP − P` up to W′: the generous bound.
    Linear,
}

/// W′ balance after `dt_s` at a constant power, J. Spends linearly above the threshold; may go below 0, which says that
/// the ride asks too much.
pub fn w_prime_balance_j(
    form: Recovery,
    balance_j: f64,
    w_prime_j: f64,
    power_above_threshold_w: f64,
    dt_s: f64,
) -> f64 {
    if power_above_threshold_w > 0.0 {
        return balance_j - power_above_threshold_w * dt_s;
    }
    match form {
        Recovery::Differential => {
            w_prime_j - (w_prime_j - balance_j) * (power_above_threshold_w * dt_s / w_prime_j).exp()
        }
        Recovery::None => balance_j,
        Recovery::Linear => (balance_j - power_above_threshold_w * dt_s).min(w_prime_j),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const RIDER: PowerDuration = PowerDuration {
        cp_w: 260.0,
        w_prime_j: 18_000.0,
        peak_w: Some(800.0),
        long_ride: None,
    };

    #[test]
    fn the_first_instant_gives_the_peak_and_a_long_time_critical_power() {
        assert!((RIDER.sustainable_w(1e-6) - 800.0).abs() < 0.01);
        assert!((RIDER.sustainable_w(1e9) - 260.0).abs() < 1e-4);
    }

    #[test]
    fn duration_is_the_inverse_of_sustainable_power() {
        for time_s in [5.0, 60.0, 1200.0, 40_000.0] {
            let back = RIDER.duration_s(RIDER.sustainable_w(time_s)).unwrap();
            assert!((back / time_s - 1.0).abs() < 1e-9, "{time_s} {back}");
        }
        assert_eq!(RIDER.duration_s(250.0), None);
        assert_eq!(RIDER.duration_s(900.0), None);
    }

    #[test]
    fn at_altitude_five_minute_power_falls_as_measured_and_w_prime_stays() {
        for (altitude_m, share) in [
            (0.0, 0.0),
            (200.0, 0.0),
            (1200.0, 0.058),
            (2200.0, 0.103),
            (3200.0, 0.198),
        ] {
            let high = RIDER.at_altitude(altitude_m, 1.0);
            // The peak power's exponential has died away within five minutes.
            let fallen = 1.0 - high.sustainable_w(300.0) / RIDER.sustainable_w(300.0);
            assert!((fallen - share).abs() < 1e-3, "{altitude_m}: {fallen}");
            assert_eq!(
                (high.w_prime_j, high.peak_w),
                (RIDER.w_prime_j, RIDER.peak_w)
            );
        }
        assert!((altitude_loss_share(1700.0) - 0.0805).abs() < 1e-12);
        assert!((altitude_loss_share(4200.0) - 0.293).abs() < 1e-12);
    }

    #[test]
    fn an_even_long_ride_at_the_sustainable_power_ends_exactly_empty() {
        let rider = PowerDuration {
            long_ride: Some(LongRide {
                loss_w: 20.0,
                from_s: 1800.0,
            }),
            ..RIDER
        };
        let event_s = 5400.0;
        let above_w = rider.sustainable_w(event_s) - rider.threshold_w(event_s);
        let left = w_prime_balance_j(
            Recovery::Differential,
            rider.w_prime_j,
            rider.w_prime_j,
            above_w,
            event_s,
        );
        assert!(left.abs() < 1e-6, "{left}");
    }
}
