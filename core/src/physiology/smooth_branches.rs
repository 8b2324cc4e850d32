//! The power–duration relation as smooth branches on either side of the kink where its long-ride loss begins.

use super::power_duration::{LongRide, PowerDuration};

/// The power–duration relation has a kink where the long-ride loss begins. A finish time close to it is the later of those by
/// the relation's two smooth branches, each carried on beyond the kink, which a polynomial can follow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Branch {
    Whole,
    Short,
    Long,
}

/// A finish time within this factor of the kink may come to lie on either side of it.
const NEAR_KINK: f64 = 1.5;
/// How far the later branch is carried on towards short rides.
const CARRIED_ON: f64 = 20.0;

impl Branch {
    /// The branches of a ride that takes about so long.
    pub(crate) fn of(time_s: f64, power: &PowerDuration) -> &'static [Self] {
        match power.long_ride {
            Some(long) if (time_s / long.from_s).ln().abs() < NEAR_KINK.ln() => {
                &[Self::Short, Self::Long]
            }
            _ => &[Self::Whole],
        }
    }

    /// The relation along this branch.
    pub(crate) fn along(self, power: PowerDuration) -> PowerDuration {
        match (self, power.long_ride) {
            (Self::Short, _) => PowerDuration {
                long_ride: None,
                ..power
            },
            // CP − A ln(t/T) is CP + A ln(T/T') − A ln(t/T').
            (Self::Long, Some(long)) => {
                let more_w = long.loss_w * CARRIED_ON.ln();
                PowerDuration {
                    cp_w: power.cp_w + more_w,
                    peak_w: power.peak_w.map(|peak_w| peak_w + more_w),
                    long_ride: Some(LongRide {
                        from_s: long.from_s / CARRIED_ON,
                        ..long
                    }),
                    ..power
                }
            }
            (Self::Whole | Self::Long, _) => power,
        }
    }
}
