//! What does this fit do to my hip? Two set-ups of one rider, side by side.

mod answer;
mod columns;
mod numbers;
mod unfit;
mod with;

use super::request::Request;
use crate::inputs::error::{Error, Warning};
use crate::inputs::message;
use crate::numerics::solve::spaced;
use crate::physics::leg::Turn;
use crate::physics::set_up::Rider;
use crate::physics::set_up_changes::{NO_WAYS, small_changes, ways};
pub use crate::physics::set_up_changes::{SMALL_DROP_M, SetUpChange, SetUpPart, SetUpWays};
use crate::scenario::check_quantity;
pub use crate::scenario::set_ups::AnkleModel;
use crate::scenario::set_ups::angles::{OUTPUTS, Outputs, UncertainAngles, fastest};
use crate::scenario::set_ups::{NUMBERS, Number, SetUps};
pub use answer::{Answer, PlanePoint, SegmentLengths, SetUpAnswer, SetUpDifference};
pub use columns::Columns;
use columns::Curves;
use numbers::numbers;
use unfit::unfit;
pub use with::{SetUp, With};

/// From this share of combinations that reach on, the rest is not worth a word.
const SURELY_REACHES: f64 = 0.98;
/// A knee straighter than this makes the rates change with every millimetre, degrees.
const NEARLY_STRAIGHT_DEG: f64 = 170.0;
const CURVE_POINTS: usize = 361;

/// Answers the question. The scenario is checked and otherwise left alone.
///
/// # Errors
/// Names the field that is wrong, or says where in the turn the leg does not reach the pedal.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request { with, .. } = request;
    // What is doubtful about a scenario has nothing to do with a leg.
    let mut warnings = Vec::new();
    let numbers = numbers(&with)?;
    for Number {
        path,
        field,
        quantity,
        ..
    } in numbers.iter().filter(|number| number.guess.is_none())
    {
        check_quantity(field, path, quantity)?;
        warnings.extend(field.doubt(path, quantity.value));
    }
    let set_ups = SetUps {
        model: with.model,
        numbers: &numbers,
    };
    let values: [f64; NUMBERS] = std::array::from_fn(|i| numbers[i].quantity.value);

    let angles = UncertainAngles::new(&set_ups, &values).map_err(unfit)?;
    let [first, second] = set_ups.riders(&values).map_err(unfit)?;
    let (first_turn, second_turn) = (reached(0, &first)?, reached(1, &second)?);
    let sides = [
        SetUpAnswer::new(0, &first, &first_turn, &angles),
        SetUpAnswer::new(1, &second, &second_turn, &angles),
    ];
    for (name, side) in ["a", "b"].into_iter().zip(&sides) {
        warnings.extend(doubts(name, side));
    }
    let crank_deg = spaced(0.0, 360.0, CURVE_POINTS);
    let first_curves = Curves::new(&first, &first_turn, &crank_deg);
    let second_curves = Curves::new(&second, &second_turn, &crank_deg);
    let hip_rad = first.torso_rad - first_turn.thigh_angle().greatest.1;
    let hip_difference = |o: &Outputs| o[OUTPUTS] - o[0];
    let apart = |output: &dyn Fn(&Outputs) -> f64| angles.of_both(output);
    let surer = angles.contributions(apart(&hip_difference), &hip_difference);
    let [a, b] = sides;
    let second_hip = |o: &Outputs| o[OUTPUTS];
    let surer_hip = angles.contributions(b.tightest_hip_deg, &second_hip);
    Ok(Answer {
        a,
        b,
        difference: SetUpDifference {
            tightest_hip_deg: apart(&hip_difference),
            straightest_knee_deg: apart(&|o| o[OUTPUTS + 1] - o[1]),
            most_bent_knee_deg: apart(&|o| o[OUTPUTS + 2] - o[2]),
            torso_deg: apart(&|o| o[OUTPUTS + 3] - o[3]),
            fastest_thigh_deg_s: {
                let (of_first, of_second) = (fastest(angles.base(), 0), fastest(angles.base(), 1));
                apart(&|o| of_second(o) - of_first(o))
            },
        },
        changes: small_changes(
            &first,
            angles.base()[0],
            angles.base()[1],
            fastest(angles.base(), 0)(angles.base()),
        ),
        give_back: first
            .changed(SetUpPart::Pads, SMALL_DROP_M)
            .map_or(NO_WAYS, |lower| ways(&lower, hip_rad)),
        level: ways(&second, hip_rad),
        lengths: SegmentLengths::new(&set_ups, &values),
        surer,
        surer_hip,
        warnings,
        columns: Columns::new(crank_deg, &first_curves, &second_curves),
    })
}

/// What is doubtful about one set-up.
fn doubts(name: &str, side: &SetUpAnswer) -> Vec<Warning> {
    let mut warnings = Vec::new();
    let mut warn = |message| {
        warnings.push(Warning::of(format!("with.{name}.saddle_height_m"), message));
    };
    if side.straightest_knee_deg.value > NEARLY_STRAIGHT_DEG {
        warn(message::nearly_straight());
    }
    if side.reach_share < SURELY_REACHES {
        let of_hundred = (100.0 * (1.0 - side.reach_share)).round() as usize;
        warn(message::may_not_reach(of_hundred));
    }
    warnings
}

fn reached(side: usize, rider: &Rider) -> Result<Turn, Error> {
    rider.turn().map_err(|reason| unfit((side, reason)))
}
