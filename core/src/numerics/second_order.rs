//! Numbers that carry their first and second derivatives by two variables, for functions that are worked out step by step.

use std::ops::{Add, Mul, Sub};

/// A number, or a number with its derivatives: what a calculation needs of either.
pub(crate) trait Number:
    Copy + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self>
{
    /// A number that depends on nothing.
    fn constant(value: f64) -> Self;
    /// The number itself.
    fn value(self) -> f64;
    /// `f` of it, from the value of `f` there and its first two derivatives.
    fn chain(self, f: f64, first: f64, second: f64) -> Self;
    /// This many times it.
    fn times(self, factor: f64) -> Self;

    /// Its square root.
    #[inline(always)]
    fn sqrt(self) -> Self {
        let root = self.value().sqrt();
        self.chain(root, 0.5 / root, -0.25 / (root * self.value()))
    }

    /// One over it.
    #[inline(always)]
    fn inverse(self) -> Self {
        let inverse = 1.0 / self.value();
        let square = inverse * inverse;
        self.chain(inverse, -square, 2.0 * square * inverse)
    }
}

impl Number for f64 {
    #[inline(always)]
    fn constant(value: f64) -> Self {
        value
    }
    #[inline(always)]
    fn value(self) -> f64 {
        self
    }
    #[inline(always)]
    fn chain(self, f: f64, _: f64, _: f64) -> Self {
        f
    }
    #[inline(always)]
    fn times(self, factor: f64) -> Self {
        self * factor
    }
}

/// A number with its derivatives by `x` and `y` to the second order.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct SecondOrder {
    /// The number.
    pub(crate) value: f64,
    /// By `x`.
    pub(crate) x: f64,
    /// By `y`.
    pub(crate) y: f64,
    /// Twice by `x`.
    pub(crate) xx: f64,
    /// By `x` and `y`.
    pub(crate) xy: f64,
    /// Twice by `y`.
    pub(crate) yy: f64,
}

impl SecondOrder {
    /// The variable `x` itself.
    pub(crate) fn x(value: f64) -> Self {
        Self {
            value,
            x: 1.0,
            ..Self::default()
        }
    }

    /// The variable `y` itself.
    pub(crate) fn y(value: f64) -> Self {
        Self {
            value,
            y: 1.0,
            ..Self::default()
        }
    }
}

impl Add for SecondOrder {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            value: self.value + other.value,
            x: self.x + other.x,
            y: self.y + other.y,
            xx: self.xx + other.xx,
            xy: self.xy + other.xy,
            yy: self.yy + other.yy,
        }
    }
}

impl Sub for SecondOrder {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self + other.times(-1.0)
    }
}

impl Mul for SecondOrder {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        let (a, b) = (self, other);
        Self {
            value: a.value * b.value,
            x: a.x * b.value + a.value * b.x,
            y: a.y * b.value + a.value * b.y,
            xx: a.xx * b.value + 2.0 * a.x * b.x + a.value * b.xx,
            xy: a.xy * b.value + a.x * b.y + a.y * b.x + a.value * b.xy,
            yy: a.yy * b.value + 2.0 * a.y * b.y + a.value * b.yy,
        }
    }
}

impl Number for SecondOrder {
    fn constant(value: f64) -> Self {
        Self {
            value,
            ..Self::default()
        }
    }

    fn value(self) -> f64 {
        self.value
    }

    fn chain(self, f: f64, first: f64, second: f64) -> Self {
        Self {
            value: f,
            x: first * self.x,
            y: first * self.y,
            xx: first * self.xx + second * self.x * self.x,
            xy: first * self.xy + second * self.x * self.y,
            yy: first * self.yy + second * self.y * self.y,
        }
    }

    fn times(self, factor: f64) -> Self {
        Self {
            value: factor * self.value,
            x: factor * self.x,
            y: factor * self.y,
            xx: factor * self.xx,
            xy: factor * self.xy,
            yy: factor * self.yy,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A function with every operation, and of either kind of number.
    fn mixed<N: Number>(x: N, y: N) -> N {
        (x * y + N::constant(3.0)).sqrt() * (x - y.times(0.5)).inverse()
    }

    #[test]
    fn derivatives_are_those_by_differences() {
        let (x, y) = (4.0, 1.5);
        let exact = mixed(SecondOrder::x(x), SecondOrder::y(y));
        let step = 1e-4;
        let at = |i: f64, j: f64| mixed(x + i * step, y + j * step);
        let by_differences = SecondOrder {
            value: at(0.0, 0.0),
            x: (at(1.0, 0.0) - at(-1.0, 0.0)) / (2.0 * step),
            y: (at(0.0, 1.0) - at(0.0, -1.0)) / (2.0 * step),
            xx: (at(1.0, 0.0) - 2.0 * at(0.0, 0.0) + at(-1.0, 0.0)) / (step * step),
            xy: (at(1.0, 1.0) - at(1.0, -1.0) - at(-1.0, 1.0) + at(-1.0, -1.0))
                / (4.0 * step * step),
            yy: (at(0.0, 1.0) - 2.0 * at(0.0, 0.0) + at(0.0, -1.0)) / (step * step),
        };
        // Second differences over steps of 1e-4 are good to about 1e-7.
        let close = |a: f64, b: f64| (a - b).abs() < 1e-6;
        let same = [
            (exact.value, by_differences.value),
            (exact.x, by_differences.x),
            (exact.y, by_differences.y),
            (exact.xx, by_differences.xx),
            (exact.xy, by_differences.xy),
            (exact.yy, by_differences.yy),
        ];
        assert!(
            same.iter().all(|&(a, b)| close(a, b)),
            "{exact:?} {by_differences:?}"
        );
    }
}
