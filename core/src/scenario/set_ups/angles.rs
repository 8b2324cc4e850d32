//! Angles of two set-ups with what is uncertain of them, given that the legs reach the pedals.

use std::cell::Cell;

use super::{AnkleModel, NUMBERS, Number, SetUps};
use crate::inputs::quantity::{Figure, Known};
use crate::physics::set_up::{Rider, Unfit};
use crate::scenario::Input;
use crate::scenario::propagation::{Contribution, contributions, figure};
use crate::uncertainty::conditional::{ConditionalSpread, Slack};
use crate::uncertainty::draws::{Spread, UncertainInput, propagate};

/// What is followed through the doubt, for each side: hip, straightest and most bent knee, and torso in degrees, thigh up and
/// down in degrees a second.
pub(crate) const OUTPUTS: usize = 6;
/// Those of the first side, then of the second.
pub(crate) type Outputs = [f64; 2 * OUTPUTS];

/// Angles, with the rider that they were worked out for.
type AnglesOf = (Rider, [f64; OUTPUTS]);

/// The last angles of each side: an input of one side leaves the other's rider as it was.
#[derive(Default)]
struct LastAngles([Cell<Option<AnglesOf>>; 2]);

impl LastAngles {
    fn of(&self, side: usize, rider: &Rider) -> Result<[f64; OUTPUTS], Unfit> {
        if let Some((before, known)) = self.0[side].get()
            && before == *rider
        {
            return Ok(known);
        }
        let own = angles(rider)?;
        self.0[side].set(Some((*rider, own)));
        Ok(own)
    }

    fn outputs(
        &self,
        set_ups: &SetUps<'_>,
        values: &[f64; NUMBERS],
    ) -> Result<Outputs, (usize, Unfit)> {
        let mut outputs = [0.0; 2 * OUTPUTS];
        for (side, rider) in set_ups.riders(values)?.iter().enumerate() {
            let own = self.of(side, rider).map_err(|unfit| (side, unfit))?;
            outputs[side * OUTPUTS..][..OUTPUTS].copy_from_slice(&own);
        }
        Ok(outputs)
    }

    /// Outputs of some sides, those of another and of a side that cannot be being no number.
    fn outputs_of(
        &self,
        sides: &[usize],
        set_ups: &SetUps<'_>,
        values: &[f64; NUMBERS],
    ) -> Outputs {
        let mut outputs = [f64::NAN; 2 * OUTPUTS];
        let Ok(riders) = set_ups.riders(values) else {
            return outputs;
        };
        for &side in sides {
            if let Ok(own) = self.of(side, &riders[side]) {
                outputs[side * OUTPUTS..][..OUTPUTS].copy_from_slice(&own);
            }
        }
        outputs
    }
}

/// The thigh's greatest angular velocity either way, as a linear combination about the values themselves.
pub(crate) fn fastest(base: &Outputs, side: usize) -> impl Fn(&Outputs) -> f64 {
    let (rising, falling) = (side * OUTPUTS + 4, side * OUTPUTS + 5);
    let falls = -base[falling] > base[rising];
    move |outputs| {
        if falls {
            -outputs[falling]
        } else {
            outputs[rising]
        }
    }
}

/// What is followed of one rider, in the order of [`OUTPUTS`].
fn angles(rider: &Rider) -> Result<[f64; OUTPUTS], Unfit> {
    let turn = rider.turn()?;
    let (knee, rate) = (turn.knee_angle(), turn.thigh_rate());
    let [rising, falling] = [rate.greatest.1, rate.least.1].map(|rate| rate * rider.cadence_rad_s);
    let hip = rider.torso_rad - turn.thigh_angle().greatest.1;
    Ok([
        hip,
        knee.greatest.1,
        knee.least.1,
        rider.torso_rad,
        rising,
        falling,
    ]
    .map(f64::to_degrees))
}

/// How much longer the links of one side's leg are than the way to the pedal, m; not a number where there is no such rider.
fn slack_m(set_ups: &SetUps<'_>, side: usize, values: &[f64; NUMBERS]) -> f64 {
    set_ups.riders(values).map_or(f64::NAN, |riders| {
        riders[side]
            .linkage()
            .slack_m()
            .unwrap_or_else(|missing| -missing.missing_m)
    })
}

/// The places of the inputs that are uncertain and count for this ankle.
fn uncertain_places(set_ups: &SetUps<'_>) -> Vec<usize> {
    let idle = |i: usize| match set_ups.model {
        AnkleModel::Frozen => i == 8 || i == 9,
        AnkleModel::Ankling => i == 7,
    };
    (0..NUMBERS)
        .filter(|&i| set_ups.numbers[i].quantity.sd > 0.0 && !idle(i))
        .collect()
}

/// What an input is drawn from.
fn input(number: &Number) -> Input {
    let Number {
        path,
        field,
        quantity,
        guess,
    } = number;
    let (min, max) = if guess.is_some() {
        (0.5, 1.5)
    } else {
        (field.min, field.max)
    };
    let uncertain = UncertainInput {
        value: quantity.value,
        sd: quantity.sd,
        min,
        max,
        correlation: 0.0,
    };
    Input {
        path: path.clone(),
        known: if guess.is_some() {
            Known::Typical
        } else {
            quantity.source
        },
        uncertain,
    }
}

/// The angles of both set-ups, and what is uncertain of them.
pub(crate) struct UncertainAngles {
    inputs: Vec<Input>,
    spread: Spread<{ 2 * OUTPUTS }>,
    /// Given that one side's leg reaches; `None` where nothing uncertain moves its reach.
    given_reach: [Option<ConditionalSpread<{ 2 * OUTPUTS }>>; 2],
    /// The side whose leg reaches less often.
    rarer: usize,
}

/// Which of two slacks there is less often; what nothing moves is always there.
fn rarer(slacks: &[Option<Slack>; 2]) -> usize {
    match slacks {
        [Some(first), Some(second)] => usize::from(second.is_rarer(first)),
        [None, Some(_)] => 1,
        _ => 0,
    }
}

impl UncertainAngles {
    /// The angles at these values, and how every uncertain input moves them.
    ///
    /// # Errors
    /// The side on which the rider does not fit, and why.
    pub(crate) fn new(
        set_ups: &SetUps<'_>,
        values: &[f64; NUMBERS],
    ) -> Result<Self, (usize, Unfit)> {
        let places = uncertain_places(set_ups);
        let inputs: Vec<Input> = places.iter().map(|&i| input(&set_ups.numbers[i])).collect();
        let uncertain: Vec<UncertainInput> = inputs.iter().map(|input| input.uncertain).collect();
        let all = |moved: &[f64]| {
            let mut all = *values;
            for (&i, &value) in places.iter().zip(moved) {
                all[i] = value;
            }
            all
        };
        let known = LastAngles::default();
        let spread = propagate(&uncertain, |moved| known.outputs(set_ups, &all(moved)))?;
        let slacks =
            [0, 1].map(|side| Slack::new(&uncertain, |moved| slack_m(set_ups, side, &all(moved))));
        let rarer = rarer(&slacks);
        let given = |side: usize, slack: Option<Slack>| {
            // What both do is asked of the rarer alone.
            let sides: &[usize] = if side == rarer { &[0, 1] } else { &[side] };
            let outputs = |moved: &[f64]| known.outputs_of(sides, set_ups, &all(moved));
            slack.map(|slack| ConditionalSpread::new(&uncertain, slack, outputs))
        };
        let [first, second] = slacks;
        let given_reach = [given(0, first), given(1, second)];
        Ok(Self {
            inputs,
            spread,
            given_reach,
            rarer,
        })
    }

    /// The outputs at the values themselves.
    pub(crate) fn base(&self) -> &Outputs {
        &self.spread.base
    }

    /// The share of the combinations of the inputs with which one side's leg reaches.
    pub(crate) fn reach_share(&self, side: usize) -> f64 {
        self.given_reach[side]
            .as_ref()
            .map_or(1.0, ConditionalSpread::share)
    }

    /// A linear combination of outputs, given that one side's leg reaches.
    pub(crate) fn of_side(&self, side: usize, output: &dyn Fn(&Outputs) -> f64) -> Figure {
        self.given(self.given_reach[side].as_ref(), output)
    }

    /// A linear combination of outputs, given that both legs reach: both are of one rider, so that where the one that does so
    /// less often reaches, the other does.
    pub(crate) fn of_both(&self, output: &dyn Fn(&Outputs) -> f64) -> Figure {
        self.given(self.given_reach[self.rarer].as_ref(), output)
    }

    /// With the standard deviation that it has given that a leg reaches, where that could be worked out.
    fn given(
        &self,
        reaching: Option<&ConditionalSpread<{ 2 * OUTPUTS }>>,
        output: &dyn Fn(&Outputs) -> f64,
    ) -> Figure {
        let unconditional = figure(&self.spread, output);
        let sd = reaching.map_or(f64::NAN, |reaching| reaching.sd(output));
        Figure {
            sd: if sd.is_finite() { sd } else { unconditional.sd },
            ..unconditional
        }
    }

    /// Which inputs carry the doubt of a linear combination of outputs, as shares of `given`, the figure given that legs reach.
    pub(crate) fn contributions(
        &self,
        given: Figure,
        output: &dyn Fn(&Outputs) -> f64,
    ) -> Vec<Contribution> {
        scaled(
            contributions(&self.inputs, &self.spread, output),
            figure(&self.spread, output),
            given,
        )
    }
}

/// Contributions to a spread as those to the same output given that the leg reaches.
fn scaled(contributions: Vec<Contribution>, spread: Figure, given: Figure) -> Vec<Contribution> {
    let scale = if spread.sd > 0.0 {
        given.sd / spread.sd
    } else {
        1.0
    };
    let one = |one: Contribution| Contribution {
        moves: scale * one.moves,
        left: scale * one.left,
        ..one
    };
    contributions.into_iter().map(one).collect()
}
