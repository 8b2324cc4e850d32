//! The request's numbers as the inputs of two set-ups, with their paths; a length that is not given is a share of the stature.

use super::with::{SetUp, With};
use crate::inputs::error::Error;
use crate::inputs::fields::{self, Field};
use crate::inputs::quantity::Quantity;
use crate::scenario::set_ups::{NUMBERS, NUMBERS_OF_A_FIT, Number};

/// How uncertain a length guessed from the stature is, as a share of it; assumed.
const GUESS_SHARE_SD: f64 = 0.03;

/// The question's inputs in the order of [`NUMBERS`].
///
/// # Errors
/// Names what is given twice.
pub(super) fn numbers(with: &With) -> Result<[Number; NUMBERS], Error> {
    let given = |field: &'static Field, quantity: Quantity| Number {
        path: field.key.to_owned(),
        field,
        quantity,
        guess: None,
    };
    let length = |field: &'static Field, length_m: Option<Quantity>, share: f64| match length_m {
        Some(length_m) => given(field, length_m),
        None => Number {
            guess: Some(share),
            ..given(field, Quantity::typical(1.0, GUESS_SHARE_SD))
        },
    };
    let [a0, a1, a2, a3, a4] = numbers_of("a", &with.a)?;
    let [b0, b1, b2, b3, b4] = numbers_of("b", &with.b)?;
    Ok([
        given(&fields::STATURE_M, with.stature_m),
        length(&fields::THIGH_M, with.thigh_m, 0.245),
        length(&fields::SHANK_M, with.shank_m, 0.246),
        length(&fields::FOOT_M, with.foot_m, 0.085),
        length(&fields::TRUNK_M, with.trunk_m, 0.288),
        length(&fields::UPPER_ARM_M, with.upper_arm_m, 0.186),
        given(&fields::HIP_ABOVE_SADDLE_M, with.hip_above_saddle_m),
        given(&fields::ANKLE_DEG, with.ankle_deg),
        given(&fields::FOOT_PITCH_DEG, with.foot_pitch_deg),
        given(&fields::FOOT_SWING_DEG, with.foot_swing_deg),
        a0,
        a1,
        a2,
        a3,
        a4,
        b0,
        b1,
        b2,
        b3,
        b4,
    ])
}

fn numbers_of(name: &str, fit: &SetUp) -> Result<[Number; NUMBERS_OF_A_FIT], Error> {
    let number = |field: &'static Field, quantity: Quantity| Number {
        path: field.key.replacen("with", &format!("with.{name}"), 1),
        field,
        quantity,
        guess: None,
    };
    let front = match (fit.bar_drop_m, fit.torso_deg) {
        (Some(_), Some(_)) => {
            let other = format!("with.{name}.bar_drop_m");
            return Err(Error::not_both(format!("with.{name}.torso_deg"), &other));
        }
        (None, Some(torso_deg)) => number(&fields::TORSO_DEG, torso_deg),
        (drop_m, None) => number(
            &fields::BAR_DROP_M,
            drop_m.unwrap_or(fields::BAR_DROP_M.chosen()),
        ),
    };
    Ok([
        number(&fields::CRANK_M, fit.crank_m),
        number(&fields::SADDLE_HEIGHT_M, fit.saddle_height_m),
        number(&fields::SEAT_ANGLE_DEG, fit.seat_angle_deg),
        front,
        number(&fields::CADENCE_RPM, fit.cadence_rpm),
    ])
}
