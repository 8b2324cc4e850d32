//! A finish time read off steady speeds: how doubt in the inputs moves a ride, not the ride itself.
//!
//! On each stretch the rider goes at its steady speed, and a difference from it dies away exponentially:
//! with `u = v²/2`, `u₁ = u* + (u₀ − u*) e^(−kL)`. Against a ride that is followed in full, moves of
//! the finish time agree within about a percent, which is finer than any standard deviation is known; it is
//! tens of times quicker, so that thousands of draws are taken while the rider waits.
//!
//! The values of an answer come from integrated rides; how the inputs move them comes from this model, which reads times
//! off steady speeds with an exponential relaxation in between and is some thirty times quicker. A fading position is cut
//! into pieces of two kilometres at most, each at its mean drag area. Before a slower bend the time that braking takes is
//! added, and at a stop that of braking to a standstill; what follows is ridden from rest. The model starts from the speeds of its last ride, so its spreads repeat to about 2e-5. `tests/tests/draws.rs`
//! holds the two together: their spreads agree within 3 % on windy hills.

use std::cell::RefCell;

use crate::numerics::exponential::exp;
use crate::physics::course::Segment;
use crate::physics::resistance::Stretch;
use crate::riding::integrated::{STALL_M_S, Setup, Stall, Start, TimeModel};

/// A time model that reads finish times off steady speeds. It remembers the speeds of the last ride, from which Newton's method
/// starts the next.
#[derive(Debug, Default)]
pub struct QuasiSteady {
    speeds_m_s: RefCell<Vec<f64>>,
}

/// While a position fades, a stretch is cut into pieces of at most this length, m, each at its mean drag area: three minutes
/// or so of riding.
pub const PIECE_M: f64 = 2000.0;

impl TimeModel for QuasiSteady {
    fn time_s(&self, setup: &Setup, power_w: f64) -> Result<f64, Stall> {
        let mut speeds = self.speeds_m_s.borrow_mut();
        let mut way = Way {
            setup,
            road_power_w: power_w * setup.machine.drivetrain_efficiency,
            arrived: None,
            time_s: 0.0,
            stood_s: 0.0,
            last_ride: None,
            ridden_m: 0.0,
            pieces: 0,
        };
        let legs = setup.between_stops();
        for leg in 0.. {
            let (segments, standing_s) = setup.leg(&legs, leg);
            way.ride_all(segments, &mut speeds)?;
            let Some(standing_s) = standing_s else {
                break;
            };
            way.stop(standing_s);
        }
        Ok(way.time_s + way.stood_s)
    }
}

struct Way<'a> {
    setup: &'a Setup,
    road_power_w: f64,
    /// Speed, m/s, and kinetic energy per effective mass, m²/s², at the end of the piece before.
    arrived: Option<(f64, f64)>,
    /// Ridden since the start, without the standing at stops, s.
    time_s: f64,
    /// Stood at stops so far, s.
    stood_s: f64,
    /// Steady speeds of the piece before: in this ride, and in the last one.
    last_ride: Option<(f64, f64)>,
    ridden_m: f64,
    pieces: usize,
}

impl Way<'_> {
    /// Rides some stretches to their end, from the speeds of the last ride, which it puts this one's in place of.
    fn ride_all(&mut self, segments: &[Segment], speeds: &mut Vec<f64>) -> Result<(), Stall> {
        let setup = self.setup;
        for segment in segments {
            let arrived_m_s = self.arrived.map_or(0.0, |(speed_m_s, _)| speed_m_s);
            let stretch = setup.stretch_from(segment, self.time_s + self.stood_s, arrived_m_s);
            let cuts = if setup.position.fade.is_some() {
                (segment.length_m / PIECE_M).ceil().max(1.0)
            } else {
                1.0
            };
            let cut_m = segment.length_m / cuts;
            let mut left = cuts;
            while left > 0.0 {
                let piece = self.pieces;
                if piece == speeds.len() {
                    speeds.push(f64::NAN);
                }
                // Once it has faded, what is left of the stretch is one piece.
                let faded = setup.position.unchanged_until_s(self.time_s) == Some(f64::INFINITY);
                let together = if faded { left } else { 1.0 };
                let length_m = together * cut_m;
                speeds[piece] = self.ride(&stretch, segment, length_m, speeds[piece]);
                if speeds[piece].is_nan() || speeds[piece] < STALL_M_S {
                    return Err(Stall {
                        distance_m: self.ridden_m,
                        push_n: None,
                    });
                }
                self.ridden_m += length_m;
                left -= together;
                self.pieces += 1;
            }
        }
        Ok(())
    }

    /// Brakes to a standstill, stands so long, s, and is about to start from rest: what braking takes is longer than the same road at
    /// the speed before it, as before a bend.
    fn stop(&mut self, standing_s: f64) {
        let speed_m_s = self.arrived.map_or(0.0, |(speed_m_s, _)| speed_m_s);
        self.time_s += speed_m_s / (2.0 * self.setup.machine.braking_m_s2);
        self.stood_s += standing_s;
        self.arrived = Some((0.0, 0.0));
    }

    /// Without a ride before: the steady speed, with the mean drag area found by going there three times.
    fn first_guess_m_s(&self, stretch: &Stretch<'_>, length_m: f64) -> f64 {
        let fresh_m_s = stretch.speed_m_s(
            self.road_power_w,
            self.setup.position.cda_at_m2(self.time_s),
        );
        (0..2).fold(fresh_m_s, |speed_m_s, _| {
            stretch.speed_m_s(self.road_power_w, self.mean_cda_m2(length_m, speed_m_s))
        })
    }

    /// Drag area averaged over a piece at about this speed, m².
    fn mean_cda_m2(&self, length_m: f64, speed_m_s: f64) -> f64 {
        self.setup
            .position
            .mean_cda_between_m2(self.time_s, self.time_s + length_m / speed_m_s)
    }

    /// Rides one piece and gives its steady speed.
    fn ride(
        &mut self,
        stretch: &Stretch<'_>,
        segment: &Segment,
        length_m: f64,
        hint_m_s: f64,
    ) -> f64 {
        let machine = &self.setup.machine;
        let known = hint_m_s > 0.0;
        // What made the piece before faster than last time makes this one faster, nearly by as much.
        let guess_m_s = match self.last_ride {
            _ if !known => self.first_guess_m_s(stretch, length_m),
            Some((now_m_s, then_m_s)) => now_m_s * (hint_m_s / then_m_s),
            None => hint_m_s,
        };
        let cda_m2 = self.mean_cda_m2(length_m, guess_m_s);
        let (free_m_s, slope) = steady(stretch, self.road_power_w, cda_m2, guess_m_s);
        self.last_ride = known.then_some((free_m_s, hint_m_s));
        let cap_m_s = segment.radius_m.map_or(f64::INFINITY, |radius_m| {
            (machine.lateral_m_s2 * radius_m).sqrt()
        });
        let speed_m_s = if free_m_s > cap_m_s {
            cap_m_s
        } else {
            free_m_s
        };
        let per_speed = 1.0 / speed_m_s;
        let steady_u = 0.5 * speed_m_s * speed_m_s;
        let (mut before_m_s, mut before_u) = self.arrived.unwrap_or(match self.setup.start {
            Start::Speed(start_m_s) => (start_m_s, 0.5 * start_m_s * start_m_s),
            Start::Rolling => (speed_m_s, steady_u),
            Start::Standing => (0.0, 0.0),
        });
        if before_m_s > cap_m_s {
            // The rider brakes before the bend: what that takes is longer than the same road at the speed before it.
            let shed_m_s = before_m_s - cap_m_s;
            self.time_s += shed_m_s * shed_m_s / (2.0 * machine.braking_m_s2 * before_m_s);
            (before_m_s, before_u) = (cap_m_s, 0.5 * cap_m_s * cap_m_s);
        }
        // Power pushes back more strongly below the steady speed and less above it.
        let pushing =
            self.road_power_w * per_speed * per_speed * 2.0 * steady_u / (steady_u + before_u);
        let relaxation = (pushing + slope) * (per_speed / machine.effective_mass_kg());
        let after_u = steady_u + (before_u - steady_u) * exp(-relaxation * length_m);
        let after_m_s = (2.0 * after_u).sqrt();
        // The integral of dx/v, in closed form, is longer than that at the steady speed by
        // 2/k · ln((v* + v₁) / (v* + v₀)) = 4/k · artanh(y); the series is good to 1e-4 of that.
        let y = (after_m_s - before_m_s) / (2.0 * speed_m_s + before_m_s + after_m_s);
        let longer_m = 4.0 / relaxation * y * (1.0 + y * y * (1.0 / 3.0 + 0.2 * y * y));
        self.time_s += (length_m + longer_m) * per_speed;
        self.arrived = Some((after_m_s, after_u));
        free_m_s
    }
}

/// The steady speed and the slope of the forces near it, by Newton's method: one step from a speed within a percent, which
/// leaves 1e-4 at most; two from one a few percent off; or the full search.
fn steady(stretch: &Stretch<'_>, road_power_w: f64, cda_m2: f64, guess_m_s: f64) -> (f64, f64) {
    let mut v = guess_m_s;
    for _ in 0..2 {
        let (force, slope) = stretch.total_and_slope(v, cda_m2);
        let step = (v * force - road_power_w) / (force + v * slope);
        v -= step;
        if v > 0.0 && step.abs() < 0.01 * v {
            return (v, slope);
        }
    }
    let v = stretch.speed_m_s(road_power_w, cda_m2);
    (v, stretch.total_and_slope(v, cda_m2).1)
}
