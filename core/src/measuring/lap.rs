//! A lap, or a steady run, reduced to the sums of the energy balance.
//!
//! Over any stretch `η∫P dt − ½(m+J)Δ(v²) − m g Δh − ∫(b₀ + b₁v) v dt = CdA · ½ρ∫Va(v+h) v dt + Crr · m g Δs`, which is linear in
//! CdA and Crr. Here stand the integrals, which know neither mass nor air; [`Rig`](super::rig::Rig) puts those in.
//!
//! `Va` is the apparent wind and `h` the wind's head component, so that drag lies along the apparent wind as in a ride. Without
//! cross wind this is `½ρ va|va| v`.
//!
//! Source: martin-1998 for the balance. Sums by the trapezoid rule, laps cut at interpolated times.

use super::recording::{Cause, Recording};
use crate::physics::air::{Heading, Wind};

/// The integrals of one stretch.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sums {
    /// How long, s.
    pub duration_s: f64,
    /// `∫P dt`, J.
    pub work_j: f64,
    /// `½Δ(v²)`, m²/s².
    pub half_square_gained: f64,
    /// `Δh`, m.
    pub rise_m: f64,
    /// `∫v dt`, m.
    pub distance_m: f64,
    /// `∫v² dt`, m²/s.
    pub square_sum: f64,
    /// `∫Va(v+h) v dt`, m³/s²: the air's share.
    pub air_sum: f64,
    /// Its derivative by a common scale of the speeds.
    pub air_by_scale: f64,
    /// How much of `∫v² dt` leads one way, m²/s: all of a run, nothing of a loop. An error of the wind counts by it.
    pub one_way_sum: f64,
    /// What a head wind of which nobody knows the direction adds to the air's sum, m²/s for each m/s: negative where the rider
    /// gave a tail wind, since such a wind is too weak where a head wind is. 0 where the heading is known, and around a loop.
    pub air_by_head: f64,
    /// Over how many metres the rise was typed in or taken as level, so that a grade may have been missed: negative downhill.
    pub unsurveyed_m: f64,
    /// Whether it was ridden in a wind of its own, whose error is not that of the others' wind.
    pub own_wind: bool,
    /// What a little more wind adds to it.
    pub wind: WindSums,
}

/// The integrals by which the air's sum follows a wind, to second order in it:
/// `∫Va(v+h) v dt ≈ ∫v³ dt + 2 w·∫v² u dt + ½|w|²∫v dt + ½ wᵀ(∫v u uᵀ dt) w`, `u` the unit vector of the heading. The error is
/// of the fourth order in the cross wind over the speed: for 3 m/s across 10 m/s a thousandth.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct WindSums {
    /// `∫v² u dt`, m²/s: north, east.
    pub first: [f64; 2],
    /// `∫v u uᵀ dt`, m: north–north, north–east, east–east.
    pub second: [f64; 3],
    /// The wind that the air's sum holds already: from north and from east, m/s.
    pub held: [f64; 2],
    /// `∫v u dt`, m: how far north and how far east it leads, by the headings.
    pub led_m: [f64; 2],
}

impl Sums {
    /// A steady second at this speed: power, W, head wind, m/s, and grade.
    pub fn steady(speed_m_s: f64, power_w: f64, head_m_s: f64, grade: f64) -> Self {
        let through = speed_m_s + head_m_s;
        Self {
            duration_s: 1.0,
            work_j: power_w,
            half_square_gained: 0.0,
            rise_m: speed_m_s * grade / grade.hypot(1.0),
            distance_m: speed_m_s,
            square_sum: speed_m_s * speed_m_s,
            air_sum: through.abs() * through * speed_m_s,
            one_way_sum: speed_m_s * speed_m_s,
            air_by_scale: (2.0 * through.abs() * speed_m_s + through.abs() * through) * speed_m_s,
            air_by_head: 2.0 * through.abs() * speed_m_s * sign(head_m_s),
            unsurveyed_m: speed_m_s * sign(grade),
            own_wind: false,
            wind: WindSums::default(),
        }
    }

    /// The same steady second with a heading, by which a wind can be fitted.
    pub fn heading(mut self, heading: Heading) -> Self {
        self.wind.add(self.distance_m, heading, 1.0);
        self.air_by_head = 0.0;
        self
    }

    /// A steady second as [`steady`](Self::steady) has it, in a wind that meets the rider as this heading has it.
    pub fn steady_in(
        wind: Wind,
        heading: Heading,
        speed_m_s: f64,
        power_w: f64,
        grade: f64,
    ) -> Self {
        let mut sums = Self {
            air_sum: 0.0,
            air_by_scale: 0.0,
            ..Self::steady(speed_m_s, power_w, 0.0, grade).heading(heading)
        };
        sums.add_air(speed_m_s, wind, heading, 1.0);
        sums.wind.held = [wind.from_north_m_s, wind.from_east_m_s];
        sums
    }

    /// What a head wind adds to the air's sum where no heading is known, m³/s²: `Va(v+h) v` with more of h.
    pub fn air_sum_added(&self, head_m_s: f64) -> f64 {
        match self.air_by_head == 0.0 {
            true => 0.0,
            false => head_m_s * self.air_by_head + head_m_s * head_m_s * self.distance_m,
        }
    }

    /// How much of the way leads anywhere, by the headings: 1 straight ahead, 0 back to the start; `None` without headings.
    pub fn led_share(&self) -> Option<f64> {
        let led_m = self.wind.led_m[0].hypot(self.wind.led_m[1]);
        (self.has_headings() && self.distance_m > 0.0).then(|| led_m / self.distance_m)
    }

    /// The air's sum in more wind than it was reduced in: what is added from north and from east, m/s.
    pub fn air_sum_with(&self, added: [f64; 2]) -> f64 {
        if added == [0.0; 2] {
            return self.air_sum;
        }
        let all = std::array::from_fn(|i| self.wind.held[i] + added[i]);
        self.air_sum + self.wind.of(all) - self.wind.of(self.wind.held)
    }

    /// How [`air_sum_with`](Self::air_sum_with) changes with each component.
    pub fn air_sum_slopes(&self, added: [f64; 2]) -> [f64; 2] {
        let [nn, ne, ee] = self.wind.second;
        let [north, east] = std::array::from_fn(|i| self.wind.held[i] + added[i]);
        [
            2.0 * self.wind.first[0] + north * (nn + ee) + north * nn + east * ne,
            2.0 * self.wind.first[1] + east * (nn + ee) + north * ne + east * ee,
        ]
    }

    /// Whether it says where the rider headed.
    pub fn has_headings(&self) -> bool {
        self.wind.second[0] + self.wind.second[2] > 0.0
    }
}

impl WindSums {
    /// What a wind adds to calm air's sum.
    fn of(&self, [north, east]: [f64; 2]) -> f64 {
        let [nn, ne, ee] = self.second;
        2.0 * (north * self.first[0] + east * self.first[1])
            + 0.5 * (north * north + east * east) * (nn + ee)
            + 0.5 * (north * north * nn + 2.0 * north * east * ne + east * east * ee)
    }

    fn add(&mut self, speed_m_s: f64, u: Heading, seconds: f64) {
        let (s1, s2) = (speed_m_s * seconds, speed_m_s * speed_m_s * seconds);
        self.led_m[0] += s1 * u.north;
        self.led_m[1] += s1 * u.east;
        self.first[0] += s2 * u.north;
        self.first[1] += s2 * u.east;
        self.second[0] += s1 * u.north * u.north;
        self.second[1] += s1 * u.north * u.east;
        self.second[2] += s1 * u.east * u.east;
    }
}

/// A lap of a recording, reduced.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Lap {
    /// The integrals.
    pub sums: Sums,
    /// How long the rider braked, s.
    pub braking_s: f64,
    /// How long the rider stood, s.
    pub stopped_s: f64,
    /// How long power or speed was missing, s.
    pub dropout_s: f64,
    /// Recorded heights; `None` where there are none.
    pub heights: Option<Heights>,
}

/// What a lap's recorded heights say.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Heights {
    /// Mean over the time, m.
    pub mean_m: f64,
    /// The end above the beginning, m.
    pub rise_m: f64,
}

impl Lap {
    /// Reduces the time between two moments, which lie within the recording. In a closed lap the road ends as high as it began;
    /// in an open one its heights say what was climbed, or nothing where they are not recorded.
    ///
    /// The work is that of the lap's own samples.
    pub fn new(recording: &Recording, from_s: f64, to_s: f64, closed: bool, wind: Wind) -> Self {
        let mut lap = Self::default();
        let times = &recording.time_s;
        let first = times.partition_point(|&t| t <= from_s).saturating_sub(1);
        let start = recording.at(first, from_s);
        let mut a = start;
        let mut height_sum = 0.0;
        for i in first..times.len().saturating_sub(1) {
            if times[i] >= to_s {
                break;
            }
            let b = recording.at(i, times[i + 1].min(to_s));
            let seconds = b.time_s - a.time_s;
            if seconds > 0.0 {
                for moment in [&a, &b] {
                    lap.sums.add(moment, wind, 0.5 * seconds);
                    height_sum += 0.5 * seconds * moment.elevation_m;
                }
                match recording.unusable[i] {
                    Some(Cause::Braking) => lap.braking_s += seconds,
                    Some(Cause::Stopped) => lap.stopped_s += seconds,
                    Some(Cause::Dropout) => lap.dropout_s += seconds,
                    None => {}
                }
            }
            a = b;
        }
        lap.sums.half_square_gained = 0.5 * (a.speed_m_s.powi(2) - start.speed_m_s.powi(2));
        lap.sums.one_way_sum = match (recording.has_headings(), closed) {
            (true, _) => lap.sums.wind.first[0].hypot(lap.sums.wind.first[1]),
            (false, true) => 0.0,
            (false, false) => lap.sums.square_sum,
        };
        if recording.has_headings() {
            lap.sums.wind.held = [wind.from_north_m_s, wind.from_east_m_s];
        }
        let rise_m = a.elevation_m - start.elevation_m;
        lap.heights = recording.has_heights().then(|| Heights {
            mean_m: height_sum / lap.sums.duration_s,
            rise_m,
        });
        if !closed {
            lap.sums.rise_m = rise_m;
            lap.sums.air_by_head = match recording.has_headings() {
                true => 0.0,
                false => 2.0 * lap.sums.square_sum,
            };
            lap.sums.unsurveyed_m = match recording.has_heights() {
                true => 0.0,
                false => lap.sums.distance_m,
            };
        }
        lap
    }

    /// How long the lap was not usable, s.
    pub fn unusable_s(&self) -> f64 {
        self.braking_s + self.stopped_s + self.dropout_s
    }
}

/// One moment of a recording.
#[derive(Clone, Copy)]
struct Moment {
    time_s: f64,
    speed_m_s: f64,
    power_w: f64,
    elevation_m: f64,
    heading: Option<Heading>,
}

impl Recording {
    /// Between sample `i` and the next, by straight lines.
    fn at(&self, i: usize, time_s: f64) -> Moment {
        let next = (i + 1).min(self.time_s.len() - 1);
        let length_s = self.time_s[next] - self.time_s[i];
        let share = if length_s > 0.0 {
            (time_s - self.time_s[i]) / length_s
        } else {
            0.0
        };
        let between = |column: &[f64]| match column.is_empty() {
            true => 0.0,
            false => column[i] + share * (column[next] - column[i]),
        };
        Moment {
            time_s,
            speed_m_s: between(&self.speed_m_s),
            power_w: between(&self.power_w),
            elevation_m: between(&self.elevation_m),
            heading: self.headings.get(i).map(|from| {
                let to = self.headings[next];
                turned(*from, to, share)
            }),
        }
    }
}

/// A share of the way from one heading to another; where they are opposite, the first.
fn turned(from: Heading, to: Heading, share: f64) -> Heading {
    let north = from.north + share * (to.north - from.north);
    let east = from.east + share * (to.east - from.east);
    let length = north.hypot(east);
    if length > 1e-6 {
        Heading {
            north: north / length,
            east: east / length,
        }
    } else {
        from
    }
}

impl Sums {
    /// Adds a moment that stands for so many seconds.
    fn add(&mut self, moment: &Moment, wind: Wind, seconds: f64) {
        let v = moment.speed_m_s;
        self.duration_s += seconds;
        self.work_j += moment.power_w * seconds;
        self.distance_m += v * seconds;
        self.square_sum += v * v * seconds;
        let Some(heading) = moment.heading else {
            self.air_sum += v * v * v * seconds;
            self.air_by_scale += 3.0 * v * v * v * seconds;
            return;
        };
        self.add_air(v, wind, heading, seconds);
        self.wind.add(v, heading, seconds);
    }

    /// Adds to the air's sum, and to its slope, what a speed makes of a wind.
    fn add_air(&mut self, v: f64, wind: Wind, heading: Heading, seconds: f64) {
        let road_wind = wind.along(heading);
        let through = v + road_wind.head_m_s;
        let apparent = through.hypot(road_wind.cross_m_s);
        self.air_sum += apparent * through * v * seconds;
        // d/dv of Va (v + h) v, times v.
        let slope = if apparent > 0.0 {
            (apparent + through * through / apparent) * v + apparent * through
        } else {
            0.0
        };
        self.air_by_scale += slope * v * seconds;
    }
}

/// −1 for what is negative, else 1.
pub(super) fn sign(number: f64) -> f64 {
    if number < 0.0 { -1.0 } else { 1.0 }
}
