//! How hard to ride: the best even effort, the power a target time needs, how far in a fixed time.
//!
//! The best even effort is where the power–duration curve allows just the power that is ridden: secant steps, the last of
//! which is read off the line through the two rides before it, so that two or three rides are enough.

use std::rc::Rc;

use crate::numerics::exponential::pow;
use crate::numerics::solve::{NoRoot, root, root_bracketed, within};
use crate::riding::integrated::{Setup, Stall, TimeModel};

/// What the rider sets out to do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Effort {
    /// The hardest even effort that lasts to the line.
    Even,
    /// A given power, W.
    Power(f64),
    /// A given finish time, s.
    Time(f64),
}

/// A power and the finish time it gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Paced {
    /// Power at the pedals, W.
    pub power_w: f64,
    /// Finish time, s.
    pub time_s: f64,
}

/// Why an effort has no answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoEffort {
    /// The rider comes to a stop.
    Stalls(Stall),
    /// No power from 1 to 2,500 W gives the time asked for.
    OutOfReach,
    /// The power–duration relation holds no power long enough.
    NothingSustainable,
}

impl From<Stall> for NoEffort {
    fn from(stall: Stall) -> Self {
        Self::Stalls(stall)
    }
}

/// The least and the greatest power that a target time is looked for in, W.
const POWERS_W: (f64, f64) = (1.0, 2500.0);
/// Relative accuracy of a power that is solved for.
const POWER_ACCURACY: f64 = 1e-11;
/// Relative accuracy of the best even effort and its time.
pub const TIME_ACCURACY: f64 = 1e-14;
/// How time usually falls with power on the flat, `−dlnT/dlnP`: a guess to begin with.
const ELASTICITY: f64 = 0.36;
/// A power to begin with where nothing is known, W.
const USUAL_W: f64 = 250.0;
/// The cap on secant steps of the fixed point; two or three are usual.
const SECANT_STEPS: usize = 30;

/// The power of an effort and the time it gives.
///
/// # Errors
/// [`NoEffort`].
///
/// ```
/// use std::rc::Rc;
///
/// use fasterby_core::effort::{Effort, paced};
/// use fasterby_core::integrated::Integrated;
/// use fasterby_core::scenario::Scenario;
///
/// let scenario = Scenario::default();
/// let setup = scenario.setup_on(0, Rc::new(scenario.course())).expect("a position");
/// let ride = paced(&Integrated, &setup, Effort::Even).expect("a ride to the line");
/// // The best even effort ends as the power that can be held for its time.
/// assert!((setup.power.sustainable_w(ride.time_s) - ride.power_w).abs() < 1e-6);
/// ```
pub fn paced(time_model: &dyn TimeModel, setup: &Setup, effort: Effort) -> Result<Paced, NoEffort> {
    match effort {
        Effort::Even => even(time_model, setup),
        Effort::Power(power_w) => Ok(Paced {
            power_w,
            time_s: time_model.time_s(setup, power_w)?,
        }),
        Effort::Time(time_s) => Ok(Paced {
            power_w: power_for_time_w(time_model, setup, time_s)?,
            time_s,
        }),
    }
}

/// The power of an effort and the time it gives, an even one from a guess at its power.
///
/// # Errors
/// [`NoEffort`].
pub(crate) fn paced_from(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    guess_w: f64,
) -> Result<Paced, NoEffort> {
    match effort {
        Effort::Even => even_from(time_model, setup, guess_w),
        _ => paced(time_model, setup, effort),
    }
}

/// The best even effort: the constant power `P = S(T(P))` that the power–duration relation `S` allows for exactly the time
/// `T` that it takes.
///
/// # Errors
/// [`NoEffort::Stalls`] where the effort does not carry the rider over the course; [`NoEffort::NothingSustainable`] where
/// the relation falls to nothing before the finish.
fn even(time_model: &dyn TimeModel, setup: &Setup) -> Result<Paced, NoEffort> {
    let guess_s = setup.course.distance_m() / 11.0;
    even_from(
        time_model,
        setup,
        setup.power.sustainable_w(guess_s.max(1.0)),
    )
}

/// The best even effort, from a guess at its power, to [`TIME_ACCURACY`].
///
/// # Errors
/// [`NoEffort::Stalls`], [`NoEffort::NothingSustainable`].
pub fn even_from(
    time_model: &dyn TimeModel,
    setup: &Setup,
    guess_w: f64,
) -> Result<Paced, NoEffort> {
    even_within(time_model, setup, guess_w, TIME_ACCURACY)
}

/// The best even effort, from a guess at its power, to a relative accuracy of its time and power.
///
/// Secant steps on `S(T(P)) − P`. Power and time at its root are read off the line through the last two rides, at `P₀` and
/// `P₁`. What the line leaves is `T''/2 · (P − P₀)(P − P₁)`; time is between `P^−⅓` (drag alone) and `1/P` (a climb), so that
/// this is at most `T · (P − P₀)(P − P₁)/P²`. The map is a strong contraction (a percent of power moves the time by a third
/// of a percent, and that the sustainable power by a few hundredths), so from a guess within half a percent it takes two
/// rides to about 1e-7, three to 1e-11 and four to 1e-14; after 30 the bracket between the slowest and the fastest is
/// searched. Where the last two rides lie on either side of the relation's kink, the line leaves a few hundredths of the last
/// step instead.
///
/// # Errors
/// [`NoEffort::Stalls`], [`NoEffort::NothingSustainable`].
pub fn even_within(
    time_model: &dyn TimeModel,
    setup: &Setup,
    guess_w: f64,
    accuracy: f64,
) -> Result<Paced, NoEffort> {
    let ridden = |power_w: f64| -> Result<Ridden, NoEffort> {
        if power_w.is_nan() || power_w <= 0.0 {
            return Err(NoEffort::NothingSustainable);
        }
        let time_s = time_model.time_s(setup, power_w)?;
        Ok(Ridden {
            power_w,
            time_s,
            gap_w: setup.sustainable_w(time_s) - power_w,
        })
    };
    let mut before = ridden(guess_w)?;
    let mut now = ridden(on_the_way_w(setup, &before))?;
    for _ in 0..SECANT_STEPS {
        let apart_w = now.power_w - before.power_w;
        if apart_w == 0.0 || now.gap_w == 0.0 {
            return Ok(Paced {
                power_w: now.power_w,
                time_s: now.time_s,
            });
        }
        let slope = (now.gap_w - before.gap_w) / apart_w;
        // The gap falls by about one watt a watt; anything else is noise or a course at its limits.
        let straight = (-2.0..-0.2).contains(&slope);
        let step_w = if straight {
            -now.gap_w / slope
        } else {
            now.gap_w
        };
        let left = step_w * (apart_w + step_w) / (now.power_w * now.power_w);
        if straight && left.abs() <= accuracy {
            let time_s = now.time_s + (now.time_s - before.time_s) / apart_w * step_w;
            return Ok(Paced {
                power_w: now.power_w + step_w,
                time_s,
            });
        }
        (before, now) = (now, ridden(now.power_w + step_w)?);
    }
    let gap = |power_w: f64| ridden(power_w).map_or(1.0, |ridden| ridden.gap_w);
    let power_w =
        root(gap, POWERS_W.0, POWERS_W.1, 1e-12).map_err(|_| NoEffort::NothingSustainable)?;
    Ok(Paced {
        power_w,
        time_s: time_model.time_s(setup, power_w)?,
    })
}

/// The power that the relation allows for the time that it would give, if time fell as it usually does on the flat.
fn on_the_way_w(setup: &Setup, ridden: &Ridden) -> f64 {
    const STEPS: usize = 2;
    let allowed_w = ridden.power_w + ridden.gap_w;
    (0..STEPS).fold(allowed_w, |power_w, _| {
        setup.sustainable_w(ridden.time_s * pow(ridden.power_w / power_w, ELASTICITY))
    })
}

/// A ride at an even power, and by how much the power–duration relation allows more than that power for its time.
#[derive(Clone, Copy)]
struct Ridden {
    power_w: f64,
    time_s: f64,
    gap_w: f64,
}

/// A best even effort that is known, from which those of slightly other rides are found with one ride each.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnownEffort {
    time_s: f64,
    /// `−dlnT/dlnP`, by central differences over a percent.
    elasticity: f64,
}

impl KnownEffort {
    /// The effort of this setup, whose power has been solved for.
    ///
    /// # Errors
    /// [`NoEffort::Stalls`].
    pub fn new(time_model: &dyn TimeModel, setup: &Setup, power_w: f64) -> Result<Self, NoEffort> {
        const MOVED: f64 = 0.01;
        let slower_s = time_model.time_s(setup, power_w * (1.0 - MOVED))?;
        let quicker_s = time_model.time_s(setup, power_w * (1.0 + MOVED))?;
        let elasticity = (slower_s / quicker_s).ln() / (2.0 * MOVED);
        Ok(Self {
            time_s: time_model.time_s(setup, power_w)?,
            elasticity,
        })
    }

    /// Finish time of the best even effort of a setup near the known one.
    ///
    /// One ride, at the power that the setup's own relation allows for the known time; from there to the fixed point by the
    /// known elasticity. The ride's power is off by about a tenth of the time's own move, and the elasticity is good to a few
    /// percent, so that a time that moves by 3 % is good to about 1e-4 of itself.
    ///
    /// # Errors
    /// [`NoEffort::Stalls`], [`NoEffort::NothingSustainable`].
    pub fn time_s(&self, time_model: &dyn TimeModel, setup: &Setup) -> Result<f64, NoEffort> {
        const STEPS: usize = 3;
        let power_w = setup.sustainable_w(self.time_s);
        if power_w <= 0.0 {
            return Err(NoEffort::NothingSustainable);
        }
        let ridden_s = time_model.time_s(setup, power_w)?;
        let mut time_s = ridden_s;
        // The map contracts by a factor of ten or more.
        for _ in 0..STEPS {
            let allowed_w = setup.sustainable_w(time_s);
            if allowed_w <= 0.0 {
                return Err(NoEffort::NothingSustainable);
            }
            time_s = ridden_s * pow(power_w / allowed_w, self.elasticity);
        }
        Ok(time_s)
    }
}

/// The constant power, W, that gives a finish time.
///
/// Root of `ln T(P) − ln t` between 1 and 2,500 W, in which time falls with power, to 1e-11.
///
/// # Errors
/// [`NoEffort::OutOfReach`] where no power in that range gives the time.
pub fn power_for_time_w(
    time_model: &dyn TimeModel,
    setup: &Setup,
    target_s: f64,
) -> Result<f64, NoEffort> {
    power_for_time_from_w(time_model, setup, target_s, USUAL_W)
}

/// [`power_for_time_w`] from a guess: some five rides where it is within a tenth.
///
/// # Errors
/// As [`power_for_time_w`].
pub fn power_for_time_from_w(
    time_model: &dyn TimeModel,
    setup: &Setup,
    target_s: f64,
    guess_w: f64,
) -> Result<f64, NoEffort> {
    // A rider who stalls takes for ever; any large number keeps the bracket.
    let excess = |ln_p: f64| {
        time_model
            .time_s(setup, ln_p.exp())
            .map_or(1e3, |t| (t / target_s).ln())
    };
    let found = bracketed_from(
        excess,
        guess_w.ln(),
        -ELASTICITY,
        (POWERS_W.0.ln(), POWERS_W.1.ln()),
    );
    Ok(found.map_err(|_| NoEffort::OutOfReach)?.exp())
}

/// What an error of finish times, as a share of them, means for the power that a target time needs, W; 0 where the times an
/// error earlier or later are out of reach.
#[cfg(feature = "all")]
pub(crate) fn power_error_w(
    time_model: &dyn TimeModel,
    setup: &Setup,
    target_s: f64,
    time_error_share: f64,
) -> f64 {
    let needed_w = |time_s: f64| power_for_time_w(time_model, setup, time_s);
    match (
        needed_w(target_s * (1.0 - time_error_share)),
        needed_w(target_s * (1.0 + time_error_share)),
    ) {
        (Ok(more_w), Ok(less_w)) => 0.5 * (more_w - less_w),
        _ => 0.0,
    }
}

/// How far, m, a power goes in a fixed time on a course of this kind, every stretch made longer or shorter alike.
///
/// Root of `ln T(distance) − ln t` between 10 m and 5,000 km, to 1e-11. Where time is up while the rider stands at a stop, it is
/// the place of that stop.
///
/// # Errors
/// [`NoEffort::OutOfReach`] where the rider does not get ten metres.
pub fn distance_in_time_m(
    time_model: &dyn TimeModel,
    setup: &Setup,
    power_w: f64,
    fixed_s: f64,
) -> Result<f64, NoEffort> {
    let mut scaled = setup.clone();
    let mut excess = |ln_d: f64| {
        scaled.course = Rc::new(setup.course.scaled_to(ln_d.exp()));
        time_model
            .time_s(&scaled, power_w)
            .map_or(1e3, |t| (t / fixed_s).ln())
    };
    // At an even power distance grows about with time.
    let found = bracketed_from(
        &mut excess,
        (fixed_s * 11.0).ln(),
        1.0,
        (10f64.ln(), 5e6f64.ln()),
    );
    let found = found.map_err(|_| NoEffort::OutOfReach)?;
    // At a stop time jumps by the standing, and the search may end on its far side, as far from it as it is accurate.
    const AT_THE_STOP: f64 = 1.0 - 4.0 * POWER_ACCURACY;
    const JUMP: f64 = 1e-9;
    let beyond_stop = setup.between_stops().is_some() && excess(found) > JUMP;
    let ln_d = if beyond_stop {
        AT_THE_STOP * found
    } else {
        found
    };
    Ok(ln_d.exp())
}

/// The power of an effort that lasts a fixed time, s, and how far it gets, m. A power is held as it is; any other effort is the best
/// even one.
///
/// # Errors
/// [`NoEffort`] where nothing can be held for so long, or no distance takes that time.
pub(crate) fn reached(
    time_model: &dyn TimeModel,
    setup: &Setup,
    effort: Effort,
    fixed_s: f64,
) -> Result<(Paced, f64), NoEffort> {
    let (power_w, distance_m) = match effort {
        Effort::Power(power_w) => (
            power_w,
            distance_in_time_m(time_model, setup, power_w, fixed_s)?,
        ),
        Effort::Even | Effort::Time(_) => {
            let held_w = |riding_s| setup.power.sustainable_w(riding_s);
            let (riding_s, distance_m) = reached_holding(time_model, setup, held_w, fixed_s)?;
            (held_w(riding_s), distance_m)
        }
    };
    let ride = Paced {
        power_w,
        time_s: fixed_s,
    };
    Ok((ride, distance_m))
}

/// How much of a fixed time, s, is ridden, s, and how far the ride gets, m, at the power that can be held for as long as is ridden. How
/// long the rider stands is known once it is known how far the ride goes, so with stops that is looked for again until it reaches no
/// more of them: twice, where the power that is held for less riding leads past no further one. At the cap of eight the power is that
/// of a little more riding.
///
/// # Errors
/// As for [`reached`].
pub(crate) fn reached_holding(
    time_model: &dyn TimeModel,
    setup: &Setup,
    held_w: impl Fn(f64) -> f64,
    fixed_s: f64,
) -> Result<(f64, f64), NoEffort> {
    const MOST_RIDES: usize = 8;
    let goes_m = |riding_s: f64| {
        let power_w = held_w(riding_s);
        if power_w.is_nan() || power_w <= 0.0 {
            return Err(NoEffort::NothingSustainable);
        }
        distance_in_time_m(time_model, setup, power_w, fixed_s)
    };
    let mut found = (fixed_s, goes_m(fixed_s)?);
    for _ in 0..MOST_RIDES {
        let there = Setup {
            course: Rc::new(setup.course.scaled_to(found.1)),
            ..setup.clone()
        };
        let riding_s = there.riding_s(fixed_s);
        if riding_s >= found.0 {
            break;
        }
        found = (riding_s, goes_m(riding_s)?);
    }
    Ok(found)
}

/// A root of a monotone function of a logarithm, from a guess at it and at the slope: a bracket is made a little wider than those
/// say and grown until it holds the root, then [`root_bracketed`] to [`POWER_ACCURACY`].
fn bracketed_from(
    mut f: impl FnMut(f64) -> f64,
    guess: f64,
    slope: f64,
    (least, most): (f64, f64),
) -> Result<f64, NoRoot> {
    const OVERSHOOT: f64 = 1.3;
    const STEPS: (f64, f64) = (0.001, 1.0);
    let first = within(guess, least, most);
    let gap = f(first);
    let mut step = within((OVERSHOOT * gap / slope).abs(), STEPS.0, STEPS.1);
    let second = within(first - step * (gap / slope).signum(), least, most);
    let (mut a, mut b) = (first.min(second), first.max(second));
    let (mut fa, mut fb) = if first < second {
        (gap, f(second))
    } else {
        (f(second), gap)
    };
    while fa.signum() == fb.signum() && (a > least || b < most) {
        step *= 2.0;
        if fa.abs() < fb.abs() && a > least || b >= most {
            a = (a - step).max(least);
            fa = f(a);
        } else {
            b = (b + step).min(most);
            fb = f(b);
        }
    }
    root_bracketed(f, (a, fa), (b, fb), POWER_ACCURACY)
}
