//! The exponential and powers for the innermost loops: in WebAssembly, where the standard library's are calls of software, these take
//! a quarter of its time. No physics.

use std::f64::consts::{LN_2, LOG2_E};

/// `e^x`, to 1e-14 of itself for `|x| ≤ 30`, to 1e-13 as far as 700; beyond that the standard library's.
///
/// `x = n ln 2 + r` with `|r| ≤ ½ ln 2`, where the Padé approximant of order five, a quotient of two polynomials that differ in the
/// sign of `r`, is `e^r` to 1e-20; times `2^n`.
#[inline]
pub(crate) fn exp(x: f64) -> f64 {
    /// Added to a number, this leaves the nearest whole one in its last bits: `1.5 · 2^52`.
    const ROUNDING: f64 = 6_755_399_441_055_744.0;
    const LARGEST: f64 = 700.0;
    let in_range = x.abs() <= LARGEST;
    if !in_range {
        return x.exp();
    }
    let rounded = x * LOG2_E + ROUNDING;
    let r = x - (rounded - ROUNDING) * LN_2;
    let squared = r * r;
    let even = 30_240.0 + squared * (3360.0 + squared * 30.0);
    let odd = r * (15_120.0 + squared * (420.0 + squared));
    // The bits of a float's exponent, which is 1023 for 1.
    let two_to_n = f64::from_bits(rounded.to_bits().wrapping_add(1023) << 52);
    (even + odd) / (even - odd) * two_to_n
}

/// `x^exponent` for positive `x`, near 1 in particular, where its error is that of the logarithm.
#[inline]
pub(crate) fn pow(x: f64, exponent: f64) -> f64 {
    exp(exponent * x.ln())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_exponential_is_the_standard_library_s() {
        for i in -30_000..=30_000 {
            let x = 1e-3 * f64::from(i);
            assert!((exp(x) / x.exp() - 1.0).abs() <= 1e-14, "{x}");
        }
        for i in -700..=700 {
            let x = f64::from(i);
            assert!((exp(x) / x.exp() - 1.0).abs() <= 1e-13, "{x}");
        }
    }

    #[test]
    fn beyond_its_range_it_is_the_standard_library_s_too() {
        for x in [-1e9, -750.0, 750.0, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(exp(x), x.exp());
        }
        assert!(exp(f64::NAN).is_nan());
    }

    #[test]
    fn powers_near_one_are_the_standard_library_s() {
        for i in 0..2000 {
            let x = 0.5 + 1e-3 * f64::from(i);
            for exponent in [-1.5, 0.3, 0.36, 2.0] {
                assert!((pow(x, exponent) / x.powf(exponent) - 1.0).abs() <= 1e-14);
            }
        }
    }
}
