//! The leg as a linkage in one plane: where hip, knee, ankle and pedal are, and how fast the thigh turns, round one turn of the
//! crank.
//!
//! `x` points forward and `y` up, with the crank's axle at the origin; the crank angle `θ` runs from top dead centre in the
//! direction of pedalling. Rates are kept per radian of crank angle: a steady cadence of `ω` rad/s multiplies the first by
//! `ω` and the second by `ω²`.
//!
//! Source: own derivation of the planar vector loop; no published table was found, so it is checked against figures worked
//! out apart from this code in 40-digit arithmetic.
//!
//! A leg is a planar linkage: positions in closed form, three derivatives by crank angle from its loop, an extreme at a
//! root of the next derivative between looks three degrees apart. Rates are per radian of crank; cadence scales them
//! last. A leg that does not reach comes back as the part of the turn and the nearest saddle height at which it would.
//! The ± of angles is that of the lengths with which the leg reaches (`uncertainty::conditional`): near a straight knee first
//! order is blind to where reach ends.

use std::cell::Cell;
use std::f64::consts::{FRAC_PI_2, PI, TAU};
use std::ops::{Add, Mul, Sub};
use std::rc::Rc;

use crate::numerics::solve::{root, root_bracketed};

/// A point or an arrow in the plane of the leg, m.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Vector {
    /// Forward.
    pub x: f64,
    /// Up.
    pub y: f64,
}

impl Vector {
    /// Of a length at an angle above the horizontal, rad.
    pub fn at(length_m: f64, angle_rad: f64) -> Self {
        let (sin, cos) = angle_rad.sin_cos();
        Self {
            x: length_m * cos,
            y: length_m * sin,
        }
    }

    /// A quarter turn to the left of it.
    fn left(self) -> Self {
        Self {
            x: -self.y,
            y: self.x,
        }
    }

    fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }
}

impl Add for Vector {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            x: self.x + other.x,
            y: self.y + other.y,
        }
    }
}

impl Sub for Vector {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self {
            x: self.x - other.x,
            y: self.y - other.y,
        }
    }
}

impl Mul<Vector> for f64 {
    type Output = Vector;
    fn mul(self, vector: Vector) -> Vector {
        Vector {
            x: self * vector.x,
            y: self * vector.y,
        }
    }
}

/// What the ankle does while the crank turns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ankle {
    /// The angle between shank and foot stays: a four-bar linkage.
    Frozen {
        /// Between the shank and the line from ankle to pedal, rad.
        angle_rad: f64,
    },
    /// The line from ankle to pedal points down by `pitch − swing · sin θ`: a five-bar linkage.
    Moving {
        /// Its mean, rad below the horizontal.
        pitch_rad: f64,
        /// How far it swings to either side, rad; the toes are lowest at the back of the stroke.
        swing_rad: f64,
    },
}

/// A leg from the hip joint's centre down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Leg {
    /// Hip to knee, m.
    pub thigh_m: f64,
    /// Knee to ankle, m.
    pub shank_m: f64,
    /// Ankle to pedal axle, m.
    pub foot_m: f64,
    /// What the ankle does.
    pub ankle: Ankle,
}

/// Where the hip sits over the crank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seat {
    /// Crank length, m.
    pub crank_m: f64,
    /// The crank's axle to the hip joint's centre, m.
    pub hip_m: f64,
    /// Angle of that line above the horizontal, towards the back, rad.
    pub angle_rad: f64,
}

/// The leg somewhere in the turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CrankState {
    /// Crank angle from top dead centre, rad.
    pub crank_rad: f64,
    /// The pedal's axle.
    pub pedal: Vector,
    /// The ankle.
    pub ankle: Vector,
    /// The knee.
    pub knee: Vector,
    /// The thigh above the horizontal, negative below it, rad.
    pub thigh_rad: f64,
    /// Between thigh and shank, `π` for a straight leg, rad.
    pub knee_rad: f64,
    /// How the thigh turns for each radian of the crank, positive towards the chest: first, second and third derivative.
    pub thigh_rates: [f64; 3],
    /// How the knee opens for each radian of the crank.
    pub knee_rate: f64,
}

/// The part of a turn in which the leg is too short for the pedal, or too long to fold up to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfReach {
    /// Where it begins, rad.
    pub from_rad: f64,
    /// Where it ends, rad; past a whole turn where it runs over the top.
    pub to_rad: f64,
    /// Where most is missing, rad.
    pub worst_rad: f64,
    /// How much is missing there, m.
    pub missing_m: f64,
    /// Whether the pedal is too near rather than too far.
    pub too_near: bool,
}

/// The least and the greatest of something over a turn: the crank angle in rad from 0 to a whole turn, and the value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extremes {
    /// The least.
    pub least: (f64, f64),
    /// The greatest.
    pub greatest: (f64, f64),
}

/// Where a turn is looked at before its extremes are sought: three degrees apart. A peak that is narrower has a straight knee.
const LOOKS: usize = 120;
const STEP_RAD: f64 = TAU / LOOKS as f64;
/// How closely an extreme's crank angle is found, rad.
const ANGLE_ACCURACY: f64 = 1e-13;
/// The knee of a leg that reaches is bent by more than this, as the sine of the thigh's angle to the line from hip to foot: at a
/// straight knee the rates have no end.
const LEAST_BEND: f64 = 1e-4;

/// Where the crank is, by the sine and cosine of its angle from top dead centre.
#[derive(Clone, Copy, Debug)]
struct Crank {
    sin: f64,
    cos: f64,
}

impl Crank {
    fn at(crank_rad: f64) -> Self {
        let (sin, cos) = crank_rad.sin_cos();
        Self { sin, cos }
    }
}

/// Where the crank is, and which way a foot that pitches points there: from pedal to ankle, a length of one.
#[derive(Clone, Copy, Debug)]
struct Look {
    crank: Crank,
    up: Vector,
}

impl Look {
    fn new(crank_rad: f64, ankle: Ankle) -> Self {
        let crank = Crank::at(crank_rad);
        let up = match ankle {
            Ankle::Moving {
                pitch_rad,
                swing_rad,
            } => Vector::at(-1.0, crank.sin * swing_rad - pitch_rad),
            Ankle::Frozen { .. } => Vector::default(),
        };
        Self { crank, up }
    }
}

thread_local! {
    /// The looks round a turn with the last ankle: of what moves a leg, little moves the ankle, and its sines cost as much as the rest of
    /// a look.
    static LAST_LOOKS: Cell<Option<(Ankle, Rc<[Look; LOOKS]>)>> = const { Cell::new(None) };
}

fn looks(ankle: Ankle) -> Rc<[Look; LOOKS]> {
    LAST_LOOKS.with(|last| {
        let looks = match last.take() {
            Some((before, looks)) if before == ankle => looks,
            _ => Rc::new(std::array::from_fn(|look| {
                Look::new(look as f64 * STEP_RAD, ankle)
            })),
        };
        last.set(Some((ankle, Rc::clone(&looks))));
        looks
    })
}

/// A leg on a seat.
#[derive(Clone, Copy, Debug)]
pub struct Linkage {
    leg: Leg,
    seat: Seat,
    hip: Vector,
    /// Knee to pedal with a frozen ankle, knee to ankle with a moving one, m.
    lower_m: f64,
    /// Between that line and the shank, rad.
    lower_offset_rad: f64,
}

impl Linkage {
    /// A leg on a seat, all lengths positive.
    pub fn new(leg: Leg, seat: Seat) -> Self {
        let (lower_m, lower_offset_rad) = match leg.ankle {
            Ankle::Frozen { angle_rad } => {
                let (sin, cos) = angle_rad.sin_cos();
                let along_m = leg.shank_m - leg.foot_m * cos;
                (
                    along_m.hypot(leg.foot_m * sin),
                    (leg.foot_m * sin).atan2(along_m),
                )
            }
            Ankle::Moving { .. } => (leg.shank_m, 0.0),
        };
        let hip = Vector::at(seat.hip_m, PI - seat.angle_rad);
        Self {
            leg,
            seat,
            hip,
            lower_m,
            lower_offset_rad,
        }
    }

    /// The hip joint's centre.
    pub const fn hip(&self) -> Vector {
        self.hip
    }

    fn pedal(&self, crank: Crank) -> Vector {
        self.seat.crank_m
            * Vector {
                x: crank.sin,
                y: crank.cos,
            }
    }

    /// The end of the lower link and its first three derivatives by crank angle: the pedal, or the ankle above it.
    fn lower_end(&self, Look { crank, up }: Look) -> [Vector; 4] {
        let pedal = self.pedal(crank);
        let along = Vector {
            x: pedal.y,
            y: -pedal.x,
        };
        let ends = [pedal, along, -1.0 * pedal, -1.0 * along];
        let Ankle::Moving { swing_rad, .. } = self.leg.ankle else {
            return ends;
        };
        let Crank { sin, cos } = crank;
        let [p1, p2, p3] = [-swing_rad * cos, swing_rad * sin, swing_rad * cos];
        // From pedal to ankle, and its derivatives by the pitch.
        let up = self.leg.foot_m * up;
        let (u1, u2, u3) = (-1.0 * up.left(), -1.0 * up, up.left());
        [
            ends[0] + up,
            ends[1] + p1 * u1,
            ends[2] + p1 * p1 * u2 + p2 * u1,
            ends[3] + p1 * p1 * p1 * u3 + 3.0 * p1 * p2 * u2 + p3 * u1,
        ]
    }

    fn look(&self, crank_rad: f64) -> Look {
        Look::new(crank_rad, self.leg.ankle)
    }

    /// Hip to the end of the lower link, m.
    fn distance(&self, crank_rad: f64) -> f64 {
        let line = self.lower_end(self.look(crank_rad))[0] - self.hip;
        line.x.hypot(line.y)
    }

    /// Half the derivative of that distance's square by crank angle, m²: nought where the pedal is nearest and farthest.
    fn receding(&self, look: Look) -> f64 {
        let [end, along, ..] = self.lower_end(look);
        (end - self.hip).dot(along)
    }

    /// By how much the links are longer than they must be, or the way to the pedal than the least they fold to, m.
    ///
    /// # Errors
    /// The part of the turn in which the leg does not reach the pedal.
    pub fn slack_m(&self) -> Result<f64, OutOfReach> {
        let looks = looks(self.leg.ankle);
        self.reach(&|look| self.receding(looks[look]))
            .map(|(slack_m, _)| slack_m)
    }

    /// The same with the distance from the hip to the end of the lower link, from what [`receding`](Self::receding) is at each look.
    fn reach(&self, receding: &dyn Fn(usize) -> f64) -> Result<(f64, Extremes), OutOfReach> {
        let distance = extremes(
            receding,
            &|crank_rad| self.receding(self.look(crank_rad)),
            &|crank_rad| self.distance(crank_rad),
        );
        let Extremes { least, greatest } = distance;
        let thigh_m = self.leg.thigh_m;
        // Thigh and lower link at the least bend that is taken for a bend.
        let span = |sign: f64| {
            let straight = (1.0 - LEAST_BEND * LEAST_BEND).sqrt();
            let lower = (self.lower_m * self.lower_m - (LEAST_BEND * thigh_m).powi(2))
                .max(0.0)
                .sqrt();
            (thigh_m * straight + sign * lower).abs()
        };
        let (longest_m, shortest_m) = (span(1.0), span(-1.0));
        if greatest.1 > longest_m {
            Err(self.missing(greatest, least, longest_m, false))
        } else if least.1 < shortest_m {
            Err(self.missing(least, greatest, shortest_m, true))
        } else {
            let slack_m = (longest_m - greatest.1).min(least.1 - shortest_m);
            Ok((slack_m, distance))
        }
    }

    fn missing(
        &self,
        worst: (f64, f64),
        best: (f64, f64),
        limit_m: f64,
        too_near: bool,
    ) -> OutOfReach {
        let over = |crank_rad: f64| self.distance(crank_rad) - limit_m;
        let (after, before) = if best.0 > worst.0 {
            (best.0, best.0 - TAU)
        } else {
            (best.0 + TAU, best.0)
        };
        // Where the best is out of reach as well, no part of the turn is left.
        let edge = |to: f64| {
            root(over, worst.0, to, 1e-9)
                .unwrap_or(worst.0 + (to - before - 0.5 * TAU).signum() * PI)
        };
        let (from_rad, to_rad) = (edge(before), edge(after));
        let turns = (from_rad / TAU).floor() * TAU;
        OutOfReach {
            from_rad: from_rad - turns,
            to_rad: to_rad - turns,
            worst_rad: worst.0,
            missing_m: (worst.1 - limit_m).abs(),
            too_near,
        }
    }

    /// The leg at a crank angle, on the branch with the knee in front. Needs a leg that reaches: see [`turn`](Self::turn).
    pub fn at(&self, crank_rad: f64) -> CrankState {
        let look = self.look(crank_rad);
        let pose = self.pose(look);
        let knee = self.hip + pose.thigh;
        let ankle = match self.leg.ankle {
            Ankle::Moving { .. } => self.hip + pose.line,
            Ankle::Frozen { .. } => {
                knee + Vector::at(
                    self.leg.shank_m,
                    pose.lower.y.atan2(pose.lower.x) - self.lower_offset_rad,
                )
            }
        };
        CrankState {
            crank_rad,
            pedal: self.pedal(look.crank),
            ankle,
            knee,
            thigh_rad: pose.thigh_rad(),
            knee_rad: self.knee_rad(&pose),
            thigh_rates: [
                pose.thigh_rates[0],
                pose.thigh_rates[1],
                self.third_thigh_rate(look, &pose),
            ],
            knee_rate: pose.knee_rate(),
        }
    }

    fn pose(&self, look: Look) -> Pose {
        let [end, x1, x2, _] = self.lower_end(look);
        let line = end - self.hip;
        let squared = line.dot(line);
        let distance_m = squared.sqrt();
        let (thigh_m, lower_m) = (self.leg.thigh_m, self.lower_m);
        let along_m = (squared + (thigh_m - lower_m) * (thigh_m + lower_m)) / (2.0 * distance_m);
        let bend_m = ((thigh_m - along_m) * (thigh_m + along_m)).max(0.0).sqrt();
        let unit = (1.0 / distance_m) * line;
        let thigh = along_m * unit + bend_m * unit.left();
        let lower = line - thigh;
        let turning = thigh.cross(lower);

        // The loop thigh + lower = line, differentiated: each time the unknown rates of both links against what is known.
        let rates = |known: Vector| (lower.dot(known) / turning, -thigh.dot(known) / turning);
        let (t1, b1) = rates(x1);
        let (t2, b2) = rates(x2 + t1 * t1 * thigh + b1 * b1 * lower);
        Pose {
            line,
            receding: line.dot(x1),
            thigh,
            lower,
            along_m,
            bend_m,
            turning,
            thigh_rates: [t1, t2],
            lower_rates: [b1, b2],
        }
    }

    /// The thigh's third derivative by crank angle, from the first two of both links: the loop differentiated once more.
    fn third_thigh_rate(&self, look: Look, pose: &Pose) -> f64 {
        let [.., x3] = self.lower_end(look);
        let Pose {
            thigh,
            lower,
            turning,
            thigh_rates: [t1, t2],
            lower_rates: [b1, b2],
            ..
        } = *pose;
        let bends = 3.0 * t1 * t2 * thigh + 3.0 * b1 * b2 * lower;
        let known = x3 + bends + t1.powi(3) * thigh.left() + b1.powi(3) * lower.left();
        lower.dot(known) / turning
    }

    fn knee_rad(&self, pose: &Pose) -> f64 {
        (-pose.turning).atan2(-pose.thigh.dot(pose.lower)) - self.lower_offset_rad
    }

    /// One turn, looked at all the way round.
    ///
    /// # Errors
    /// The part of the turn in which the leg does not reach the pedal.
    pub fn turn(self) -> Result<Turn, OutOfReach> {
        let looks = looks(self.leg.ankle);
        let poses: Vec<Pose> = looks.iter().map(|&look| self.pose(look)).collect();
        let (_, distance) = self.reach(&|look| poses[look].receding)?;
        Ok(Turn {
            looks,
            poses,
            distance,
            linkage: self,
        })
    }
}

/// The links at a crank angle and how they turn, where the leg reaches; where it does not, only the line holds. Looks round a turn need no more; the angles between links cost as much again.
#[derive(Clone, Copy, Debug)]
struct Pose {
    /// Hip to the end of the lower link.
    line: Vector,
    /// As [`Linkage::receding`].
    receding: f64,
    /// Hip to knee.
    thigh: Vector,
    /// Knee to the end of the lower link.
    lower: Vector,
    /// The thigh's part along the line, m.
    along_m: f64,
    /// The thigh's part across it, m.
    bend_m: f64,
    /// Twice the area that thigh and lower link span, m², negative with the knee in front.
    turning: f64,
    /// How the thigh turns for each radian of the crank: first and second derivative.
    thigh_rates: [f64; 2],
    /// How the lower link does.
    lower_rates: [f64; 2],
}

impl Pose {
    /// How the knee opens for each radian of the crank.
    fn knee_rate(&self) -> f64 {
        self.lower_rates[0] - self.thigh_rates[0]
    }

    /// From straight down, so that no angle of a leg under its hip jumps by a whole turn.
    fn thigh_rad(&self) -> f64 {
        self.line.x.atan2(-self.line.y) - FRAC_PI_2 + self.bend_m.atan2(self.along_m)
    }
}

/// One turn of a leg that reaches all the way round.
#[derive(Clone, Debug)]
pub struct Turn {
    linkage: Linkage,
    looks: Rc<[Look; LOOKS]>,
    poses: Vec<Pose>,
    /// Hip to the end of the lower link, m.
    distance: Extremes,
}

impl Turn {
    /// The leg that turns.
    pub const fn linkage(&self) -> &Linkage {
        &self.linkage
    }

    /// The thigh's angle, rad: the greatest is where the hip is tightest.
    pub fn thigh_angle(&self) -> Extremes {
        self.extremes(&|_, pose| pose.thigh_rates[0], &Pose::thigh_rad)
    }

    /// The thigh's first derivative by crank angle: greatest where it comes up fastest, least where it goes down fastest.
    pub fn thigh_rate(&self) -> Extremes {
        self.extremes(&|_, pose| pose.thigh_rates[1], &|pose| pose.thigh_rates[0])
    }

    /// The thigh's second derivative by crank angle.
    pub fn thigh_second_rate(&self) -> Extremes {
        self.extremes(
            &|look, pose| self.linkage.third_thigh_rate(look, pose),
            &|pose| pose.thigh_rates[1],
        )
    }

    /// The knee's angle, rad: the further the end of the lower link is from the hip, the straighter.
    pub fn knee_angle(&self) -> Extremes {
        let at = |(crank_rad, _)| (crank_rad, self.linkage.knee_rad(&self.pose(crank_rad)));
        Extremes {
            least: at(self.distance.least),
            greatest: at(self.distance.greatest),
        }
    }

    fn pose(&self, crank_rad: f64) -> Pose {
        self.linkage.pose(self.linkage.look(crank_rad))
    }

    fn extremes(
        &self,
        slope: &dyn Fn(Look, &Pose) -> f64,
        value: &dyn Fn(&Pose) -> f64,
    ) -> Extremes {
        extremes(
            &|look| slope(self.looks[look], &self.poses[look]),
            &|crank_rad| {
                let look = self.linkage.look(crank_rad);
                slope(look, &self.linkage.pose(look))
            },
            &|crank_rad| value(&self.pose(crank_rad)),
        )
    }
}

/// The extremes over a turn of a value whose slope is known at each look and anywhere: each is where the slope changes sign.
fn extremes(
    looked: &dyn Fn(usize) -> f64,
    slope: &dyn Fn(f64) -> f64,
    value: &dyn Fn(f64) -> f64,
) -> Extremes {
    let first = (0.0, value(0.0));
    let mut found = Extremes {
        least: first,
        greatest: first,
    };
    let mut before = (0.0, looked(0));
    for look in 1..=LOOKS {
        let here = (look as f64 * STEP_RAD, looked(look % LOOKS));
        if before.1.signum() != here.1.signum()
            && let Ok(angle) = root_bracketed(slope, before, here, ANGLE_ACCURACY)
        {
            let extreme = (if angle < TAU { angle } else { angle - TAU }, value(angle));
            if extreme.1 < found.least.1 {
                found.least = extreme;
            }
            if extreme.1 > found.greatest.1 {
                found.greatest = extreme;
            }
        }
        before = here;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stature_180(ankle: Ankle, crank_m: f64) -> Linkage {
        let leg = Leg {
            thigh_m: 0.441,
            shank_m: 0.4428,
            foot_m: 0.153,
            ankle,
        };
        Linkage::new(
            leg,
            Seat {
                crank_m,
                hip_m: 0.98084 - crank_m,
                angle_rad: 76f64.to_radians(),
            },
        )
    }

    fn frozen() -> Linkage {
        stature_180(
            Ankle::Frozen {
                angle_rad: 130f64.to_radians(),
            },
            0.17,
        )
    }

    fn moving() -> Linkage {
        stature_180(
            Ankle::Moving {
                pitch_rad: 45f64.to_radians(),
                swing_rad: 12f64.to_radians(),
            },
            0.17,
        )
    }

    #[test]
    fn links_keep_their_length() {
        for linkage in [frozen(), moving()] {
            for degree in 0..360 {
                let at = linkage.at(f64::from(degree).to_radians());
                let length = |a: Vector, b: Vector| (a.x - b.x).hypot(a.y - b.y);
                assert!((length(at.knee, linkage.hip()) - 0.441).abs() < 1e-14);
                assert!((length(at.knee, at.ankle) - 0.4428).abs() < 1e-14);
                assert!((length(at.pedal, at.ankle) - 0.153).abs() < 1e-14);
            }
        }
    }

    #[test]
    fn every_rate_is_the_derivative_of_the_one_before() {
        // A central difference of this step leaves a third derivative of some tens times its square.
        const STEP: f64 = 1e-5;
        const SAME: f64 = 1e-8;
        for linkage in [frozen(), moving()] {
            for degree in 0..360 {
                let angle = f64::from(degree).to_radians();
                let (before, at, after) = (
                    linkage.at(angle - STEP),
                    linkage.at(angle),
                    linkage.at(angle + STEP),
                );
                let by =
                    |of: &dyn Fn(&CrankState) -> f64| (of(&after) - of(&before)) / (2.0 * STEP);
                assert!((by(&|m| m.thigh_rad) - at.thigh_rates[0]).abs() < SAME);
                assert!((by(&|m| m.thigh_rates[0]) - at.thigh_rates[1]).abs() < SAME);
                assert!((by(&|m| m.thigh_rates[1]) - at.thigh_rates[2]).abs() < SAME);
                assert!((by(&|m| m.knee_rad) - at.knee_rate).abs() < SAME);
            }
        }
    }

    #[test]
    fn a_leg_that_is_too_short_says_where_round_the_turn() {
        let far = |hip_m| {
            Linkage::new(
                frozen().leg,
                Seat {
                    hip_m,
                    ..frozen().seat
                },
            )
            .turn()
            .map(|_| ())
        };
        assert_eq!(far(0.81), Ok(()));
        let missing = far(0.83).expect_err("the leg is 0.9947 m long");
        assert!(!missing.too_near);
        // The pedal is farthest straight down the seat line.
        assert!(
            (missing.worst_rad.to_degrees() - 166.0).abs() < 1e-6,
            "{missing:?}"
        );
        assert!(
            missing.from_rad < missing.worst_rad && missing.worst_rad < missing.to_rad,
            "{missing:?}"
        );
        let whole = far(1.5).expect_err("no part of the turn is in reach");
        assert!(
            (whole.to_rad - whole.from_rad - TAU).abs() < 1e-9,
            "{whole:?}"
        );
        assert!(far(0.171).is_err_and(|near| near.too_near));
    }
}
