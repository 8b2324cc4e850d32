//! A recording made ready for sums: what is missing filled in or marked, and what is unusable marked with its cause.

use super::columns::Columns;
use crate::physics::air::{Heading, STANDARD_GRAVITY_M_S2};

/// A speed outside this is a fault of the sensor, m/s; assumed.
const SPEEDS_M_S: (f64, f64) = (0.0, 50.0);
/// A power outside this is a fault of the meter, W; assumed.
const POWERS_W: (f64, f64) = (-500.0, 4000.0);
/// A height outside this is a fault, m; assumed.
const HEIGHTS_M: (f64, f64) = (-1000.0, 9000.0);
/// A bearing outside this is a fault, degrees.
const BEARINGS_DEG: (f64, f64) = (-720.0, 720.0);
/// Acceleration and grade are taken over so many samples to either side, which quiets the noise of a single one; assumed.
const SIDE: usize = 2;
/// A gap may be longer than the rules bridge by this, s: times are written with a few digits.
const GAP_TOLERANCE_S: f64 = 1e-3;
/// Who does not pedal loses at least this much speed, m/s², and this times the squared speed, 1/m: 130 kg with the least usual drag
/// area of 0.17 m² and a little tail wind, on the smoothest tyres. Assumed.
const COASTING: (f64, f64) = (0.02, 0.000_5);
/// Heights over a stretch without pedalling are off by this, m: somewhat more than the step of a barometer; assumed.
const HEIGHT_ERROR_M: f64 = 0.3;

/// Which samples cannot be used. Accelerations are those that the road's slope does not explain, where heights are known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rules {
    /// Slowing down by more than this is braking, m/s².
    pub braking_m_s2: f64,
    /// Slower than this is a stop, m/s.
    pub stopped_m_s: f64,
    /// Gaining speed by more than this without power is a fault of the meter, m/s².
    pub accelerating_m_s2: f64,
    /// A gap up to this long is bridged by a straight line, s.
    pub bridged_s: f64,
}

/// Why a stretch cannot be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cause {
    /// The rider brakes.
    Braking,
    /// The rider stands, or nearly.
    Stopped,
    /// The power or the speed is missing or cannot be, such as no power at a speed that is kept.
    Dropout,
}

/// A recording made ready.
#[derive(Clone, Debug)]
pub struct Recording {
    pub(super) time_s: Vec<f64>,
    pub(super) speed_m_s: Vec<f64>,
    pub(super) power_w: Vec<f64>,
    /// Empty if not recorded.
    pub(super) elevation_m: Vec<f64>,
    /// Empty if not recorded.
    pub(super) headings: Vec<Heading>,
    /// What is wrong between a sample and the next.
    pub(super) unusable: Vec<Option<Cause>>,
}

impl Recording {
    /// Makes ready columns that have been checked ([`Columns::check`]): numbers that cannot be count as missing; gaps are
    /// bridged by straight lines, and those longer than the rules allow are marked.
    pub fn new(columns: &Columns, rules: &Rules) -> Self {
        let time_s = columns.time_s.0.clone();
        let (speed_m_s, no_speed) = filled(&time_s, &columns.speed_m_s.0, SPEEDS_M_S, rules);
        let (power_w, no_power) = filled(&time_s, &columns.power_w.0, POWERS_W, rules);
        let optional = |column: &[f64], range: (f64, f64)| {
            let known = column.iter().any(|&x| plausible(x, range));
            match known {
                true => filled(&time_s, column, range, rules).0,
                false => Vec::new(),
            }
        };
        let elevation_m = optional(&columns.elevation_m.0, HEIGHTS_M);
        let headings = headings(&columns.bearing_deg.0);
        let mut ready = Self {
            time_s,
            speed_m_s,
            power_w,
            elevation_m,
            headings,
            unusable: Vec::new(),
        };
        ready.unusable = (0..ready.time_s.len().saturating_sub(1))
            .map(|i| {
                let missing = [i, i + 1].iter().any(|&at| no_speed[at] || no_power[at]);
                ready.cause(i, missing, rules)
            })
            .collect();
        ready.mark_silent_meter();
        ready
    }

    /// Marks stretches at speed on which the meter says nothing is pedalled and the rider does not slow down as one who coasts: the
    /// meter was silent. Only where heights are recorded, since a slope that nobody knows explains it as well.
    fn mark_silent_meter(&mut self) {
        if !self.has_heights() {
            return;
        }
        let mut from = 0;
        while from < self.power_w.len() {
            let still = |power_w: &f64| *power_w <= 0.0;
            let length = self.power_w[from..].iter().take_while(|w| still(w)).count();
            if length > 1 && self.is_carried_on(from, from + length - 1) {
                for mark in &mut self.unusable[from..from + length - 1] {
                    *mark = mark.or(Some(Cause::Dropout));
                }
            }
            from += length.max(1);
        }
    }

    /// Whether a rider from one sample to another keeps more speed than coasting leaves, for all that the heights may be off.
    fn is_carried_on(&self, from: usize, to: usize) -> bool {
        let seconds = self.time_s[to] - self.time_s[from];
        let metres = self.metres(from, to);
        if seconds <= 0.0 || metres <= 0.0 {
            return false;
        }
        let gained_m_s2 = (self.speed_m_s[to] - self.speed_m_s[from]) / seconds;
        let rise_m = self.elevation_m[to] - self.elevation_m[from] - HEIGHT_ERROR_M;
        let mean_m_s = metres / seconds;
        let least_lost = COASTING.0 + COASTING.1 * mean_m_s * mean_m_s;
        gained_m_s2 + STANDARD_GRAVITY_M_S2 * rise_m / metres > -least_lost
    }

    /// How far from one sample to another, m.
    fn metres(&self, from: usize, to: usize) -> f64 {
        let step = |k: usize| {
            0.5 * (self.speed_m_s[k] + self.speed_m_s[k + 1])
                * (self.time_s[k + 1] - self.time_s[k])
        };
        (from..to).map(step).sum()
    }

    /// The first and the last time, s.
    pub fn span_s(&self) -> (f64, f64) {
        (
            self.time_s.first().copied().unwrap_or(f64::NAN),
            self.time_s.last().copied().unwrap_or(f64::NAN),
        )
    }

    /// Whether it says where the rider heads.
    pub fn has_headings(&self) -> bool {
        !self.headings.is_empty()
    }

    /// Whether it says how high the road is.
    pub fn has_heights(&self) -> bool {
        !self.elevation_m.is_empty()
    }

    /// What is wrong between sample `i` and the next.
    fn cause(&self, i: usize, missing: bool, rules: &Rules) -> Option<Cause> {
        let longest_s = rules.bridged_s + GAP_TOLERANCE_S;
        if missing || self.time_s[i + 1] - self.time_s[i] > longest_s {
            return Some(Cause::Dropout);
        }
        if self.speed_m_s[i].min(self.speed_m_s[i + 1]) < rules.stopped_m_s {
            return Some(Cause::Stopped);
        }
        let gained_m_s2 = self.unexplained_m_s2(i);
        if gained_m_s2 < -rules.braking_m_s2 {
            return Some(Cause::Braking);
        }
        let pedalled = self.power_w[i].max(self.power_w[i + 1]) > 0.0;
        (!pedalled && gained_m_s2 > rules.accelerating_m_s2).then_some(Cause::Dropout)
    }

    /// The acceleration around sample `i` that the slope does not explain, m/s².
    fn unexplained_m_s2(&self, i: usize) -> f64 {
        let (a, b) = (
            i.saturating_sub(SIDE),
            (i + 1 + SIDE).min(self.time_s.len() - 1),
        );
        let seconds = self.time_s[b] - self.time_s[a];
        let gained = (self.speed_m_s[b] - self.speed_m_s[a]) / seconds;
        if !self.has_heights() {
            return gained;
        }
        let metres = self.metres(a, b);
        let grade = (self.elevation_m[b] - self.elevation_m[a]) / metres.max(1.0);
        gained + STANDARD_GRAVITY_M_S2 * grade
    }
}

fn plausible(number: f64, (low, high): (f64, f64)) -> bool {
    (low..=high).contains(&number)
}

/// A column without gaps, and which of its samples lie in a gap longer than the rules bridge.
fn filled(
    time_s: &[f64],
    column: &[f64],
    range: (f64, f64),
    rules: &Rules,
) -> (Vec<f64>, Vec<bool>) {
    let mut whole = column.to_vec();
    let mut lost = vec![false; column.len()];
    let mut last: Option<usize> = None;
    let mut i = 0;
    while i < column.len() {
        if plausible(column[i], range) {
            last = Some(i);
            i += 1;
            continue;
        }
        let next = (i..column.len()).find(|&k| plausible(column[k], range));
        let long = match (last, next) {
            (Some(from), Some(to)) => time_s[to] - time_s[from] > rules.bridged_s + GAP_TOLERANCE_S,
            _ => true,
        };
        let stop = next.unwrap_or(column.len());
        for k in i..stop {
            whole[k] = match (last, next) {
                (Some(from), Some(to)) => {
                    let share = (time_s[k] - time_s[from]) / (time_s[to] - time_s[from]);
                    column[from] + share * (column[to] - column[from])
                }
                (Some(known), None) | (None, Some(known)) => column[known],
                (None, None) => 0.0,
            };
            lost[k] = long;
        }
        i = stop;
    }
    (whole, lost)
}

/// Headings of every sample, a missing one as the one before; empty if there is none.
fn headings(bearings_deg: &[f64]) -> Vec<Heading> {
    let known = |bearing: &&f64| plausible(**bearing, BEARINGS_DEG);
    let Some(&first) = bearings_deg.iter().find(known) else {
        return Vec::new();
    };
    let mut now = first;
    let one = |bearing: &f64| {
        if plausible(*bearing, BEARINGS_DEG) {
            now = *bearing;
        }
        Heading::new(now)
    };
    bearings_deg.iter().map(one).collect()
}
