//! Roots, quadrature and interpolation. No physics.

/// Why a root was not found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoRoot {
    /// The function has the same sign at both ends of the bracket.
    NotBracketed,
    /// The cap on steps was reached, or the function returned NaN.
    NotConverged,
}

/// The most function evaluations that [`root`] makes. Bisection alone needs fewer than this to shrink any bracket of
/// doubles to neighbours, and the method never shrinks slower than every third step.
pub const ROOT_STEPS: usize = 200;

/// A root of a continuous `f` in `[a, b]` by Chandrupatla's method (inverse quadratic interpolation, safeguarded by
/// bisection).
///
/// Promises a point within `accuracy` (relative to its size, or absolute below 1) of a sign change. `f(a)` and `f(b)`
/// must differ in sign or one of them be 0.
///
/// Source: Chandrupatla 1997, Advances in Engineering Software 28(3), pages 145–149.
///
/// # Errors
/// [`NoRoot::NotBracketed`] where both ends have one sign; [`NoRoot::NotConverged`] after [`ROOT_STEPS`] or on NaN.
///
/// ```
/// let root = fasterby_core::solve::root(|x| x * x - 2.0, 1.0, 2.0, 1e-12).expect("a bracketed root");
/// assert!((root - 2f64.sqrt()).abs() < 1e-11);
/// ```
pub fn root(mut f: impl FnMut(f64) -> f64, a: f64, b: f64, accuracy: f64) -> Result<f64, NoRoot> {
    let (fa, fb) = (f(a), f(b));
    root_bracketed(f, (a, fa), (b, fb), accuracy)
}

/// [`root`] for a bracket whose ends have been evaluated: pairs of a point and `f` there.
///
/// # Errors
/// As [`root`].
pub fn root_bracketed(
    mut f: impl FnMut(f64) -> f64,
    (mut b, mut fb): (f64, f64),
    (mut a, mut fa): (f64, f64),
    accuracy: f64,
) -> Result<f64, NoRoot> {
    if fa == 0.0 {
        return Ok(a);
    }
    if fb == 0.0 {
        return Ok(b);
    }
    if fa.is_nan() || fb.is_nan() || fa.signum() == fb.signum() {
        return Err(NoRoot::NotBracketed);
    }
    let mut share = 0.5;
    for _ in 0..ROOT_STEPS {
        let x = a + share * (b - a);
        let fx = f(x);
        if fx.is_nan() {
            return Err(NoRoot::NotConverged);
        }
        let (c, fc) = if fx.signum() == fa.signum() {
            (a, fa)
        } else {
            (b, fb)
        };
        if fx.signum() != fa.signum() {
            (b, fb) = (a, fa);
        }
        (a, fa) = (x, fx);
        let (best, f_best) = if fa.abs() < fb.abs() {
            (a, fa)
        } else {
            (b, fb)
        };
        let tolerance = accuracy * best.abs().max(1.0) + f64::EPSILON * best.abs();
        let least = tolerance / (b - a).abs();
        if f_best == 0.0 || least > 0.5 {
            return Ok(best);
        }
        let xi = (a - b) / (c - b);
        let phi = (fa - fb) / (fc - fb);
        let interpolates = phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi;
        share = if interpolates {
            fa / (fb - fa) * (fc / (fb - fc))
                + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb))
        } else {
            0.5
        };
        share = within(share, least, 1.0 - least);
    }
    Err(NoRoot::NotConverged)
}

/// The positive nodes and weights of five-point Gauss–Legendre quadrature on `[-1, 1]`, with the middle one first:
/// exact for polynomials of degree nine.
///
/// Source: Abramowitz and Stegun 1964, Table 25.4, n = 5 (recomputed to the last digit).
const GAUSS_5: [(f64, f64); 3] = [
    (0.0, 0.568_888_888_888_888_9),
    (0.538_469_310_105_683_1, 0.478_628_670_499_366_47),
    (0.906_179_845_938_664, 0.236_926_885_056_189_08),
];

/// The points and weights of five-point Gauss–Legendre quadrature on `[a, b]`.
pub fn gauss_points(a: f64, b: f64) -> [(f64, f64); 5] {
    let (middle, half) = (0.5 * (a + b), 0.5 * (b - a));
    let [(_, w0), (x1, w1), (x2, w2)] = GAUSS_5;
    [
        (middle - half * x2, half * w2),
        (middle - half * x1, half * w1),
        (middle, half * w0),
        (middle + half * x1, half * w1),
        (middle + half * x2, half * w2),
    ]
}

/// Linear interpolation in rows of ascending abscissae; the first and last ordinates hold beyond the ends. `None` for no rows.
pub fn interpolate(rows: &[(f64, f64)], x: f64) -> Option<f64> {
    let above = rows.partition_point(|row| row.0 <= x);
    interpolated(rows, above, x).map(|(value, _)| value)
}

/// The same with the slope from there on, which is none beyond the ends. For tables of some tens of rows, mostly evenly spaced: the
/// search begins where `x` would be if they were, and goes row by row.
#[inline]
pub fn interpolate_with_slope(rows: &[(f64, f64)], x: f64) -> Option<(f64, f64)> {
    let (first, last) = (rows.first()?.0, rows.last()?.0);
    let steps = rows.len() - 1;
    let mut above = ((x - first) / (last - first) * steps as f64) as usize;
    above = above.min(steps) + 1;
    while above > 0 && rows[above - 1].0 > x {
        above -= 1;
    }
    while above < rows.len() && rows[above].0 <= x {
        above += 1;
    }
    interpolated(rows, above, x)
}

/// The value and the slope between the row `above` and the one before it.
#[inline]
fn interpolated(rows: &[(f64, f64)], above: usize, x: f64) -> Option<(f64, f64)> {
    match (
        above.checked_sub(1).and_then(|low| rows.get(low)),
        rows.get(above),
    ) {
        (Some(low), Some(high)) => {
            // Not by the slope, which is infinite between rows that are hardly apart.
            let (rise, run) = (high.1 - low.1, high.0 - low.0);
            Some((low.1 + rise * (x - low.0) / run, rise / run))
        }
        (Some(end), None) | (None, Some(end)) => Some((end.1, 0.0)),
        (None, None) => None,
    }
}

/// A number held between two others. Unlike `f64::clamp` it has no panic for ends that cross, nor the code to print them.
#[inline]
pub fn within(x: f64, low: f64, high: f64) -> f64 {
    if x < low {
        low
    } else if x > high {
        high
    } else {
        x
    }
}

/// `n` values from `a` to `b`, both included, evenly spaced.
pub fn spaced(a: f64, b: f64, n: usize) -> Vec<f64> {
    let last = n.saturating_sub(1).max(1) as f64;
    (0..n).map(|i| a + (b - a) * i as f64 / last).collect()
}

/// `n` values from `a` to `b`, both positive and included, evenly spaced in their logarithm.
pub fn spaced_log(a: f64, b: f64, n: usize) -> Vec<f64> {
    spaced(a.ln(), b.ln(), n)
        .into_iter()
        .map(f64::exp)
        .collect()
}

/// The points of the first kind of Chebyshev interpolation with `N` nodes on `[a, b]`, ascending.
pub fn chebyshev_points<const N: usize>(a: f64, b: f64) -> [f64; N] {
    std::array::from_fn(|i| chebyshev_point(a, b, i, N))
}

/// The `i`th of `n` of them, from 0: where the Chebyshev polynomial of degree `n` is zero.
pub fn chebyshev_point(a: f64, b: f64, i: usize, n: usize) -> f64 {
    let angle = std::f64::consts::PI * (i as f64 + 0.5) / n as f64;
    0.5 * (a + b) - 0.5 * (b - a) * angle.cos()
}

/// For each of `at`, the weights by which values at `nodes` add up to the value of the polynomial through them.
/// Exact for polynomials of degree `N − 1`; for smooth functions at Chebyshev points the error falls geometrically with `N`.
pub fn lagrange_weights<const N: usize>(nodes: &[f64; N], at: &[f64]) -> Vec<[f64; N]> {
    at.iter()
        .map(|&x| std::array::from_fn(|i| lagrange_weight(nodes, x, i)))
        .collect()
}

/// The weight of node `i` at one abscissa.
pub fn lagrange_weight(nodes: &[f64], x: f64, i: usize) -> f64 {
    let others = nodes.iter().enumerate().filter(|&(j, _)| j != i);
    others
        .map(|(_, &node)| (x - node) / (nodes[i] - node))
        .product()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two roundings of a double, at values near 1.
    const ROUNDING: f64 = 4.0 * f64::EPSILON;

    #[test]
    fn a_root_is_found_where_the_sign_changes() {
        let found = root(|x| x * x * x - 2.0, 0.0, 2.0, 0.0).unwrap();
        assert!((found - 2f64.cbrt()).abs() < ROUNDING, "{found}");
    }

    #[test]
    fn a_function_of_one_sign_is_refused() {
        assert_eq!(
            root(|x| x * x + 1.0, -1.0, 1.0, 1e-9),
            Err(NoRoot::NotBracketed)
        );
        assert_eq!(
            root(|_| f64::NAN, -1.0, 1.0, 1e-9),
            Err(NoRoot::NotBracketed)
        );
    }

    #[test]
    fn a_step_is_found_as_well_as_a_smooth_root() {
        let found = root(|x| if x < 0.3 { -1.0 } else { 1.0 }, 0.0, 1.0, 1e-12).unwrap();
        assert!((found - 0.3).abs() < 1e-11, "{found}");
    }

    #[test]
    fn five_point_quadrature_is_exact_for_degree_nine() {
        let sum: f64 = gauss_points(0.0, 2.0)
            .iter()
            .map(|&(x, w)| w * x.powi(9))
            .sum();
        assert!((sum - 102.4).abs() < 102.4 * ROUNDING, "{sum}");
    }

    #[test]
    fn a_polynomial_through_its_nodes_is_itself() {
        let nodes = chebyshev_points::<5>(-1.0, 3.0);
        let cubic = |x: f64| x.powi(3) - 2.0 * x + 1.0;
        for (x, weights) in [-1.0, 0.3, 3.0]
            .iter()
            .zip(lagrange_weights(&nodes, &[-1.0, 0.3, 3.0]))
        {
            let value: f64 = weights
                .iter()
                .zip(nodes)
                .map(|(w, node)| w * cubic(node))
                .sum();
            assert!((value - cubic(*x)).abs() < 100.0 * ROUNDING, "{x} {value}");
        }
    }

    #[test]
    fn chebyshev_points_are_zeros_of_the_chebyshev_polynomial() {
        // T₅(x) = 16 x⁵ − 20 x³ + 5 x, on [−1, 1].
        for (i, x) in chebyshev_points::<5>(-1.0, 1.0).into_iter().enumerate() {
            let value = 16.0 * x.powi(5) - 20.0 * x.powi(3) + 5.0 * x;
            assert!(value.abs() < 10.0 * ROUNDING, "{i} {x} {value}");
            assert!(
                (chebyshev_point(10.0, 14.0, i, 5) - (12.0 + 2.0 * x)).abs() < 12.0 * ROUNDING,
                "{i} {x}"
            );
        }
        assert!(chebyshev_points::<5>(-1.0, 1.0).is_sorted());
    }

    #[test]
    fn interpolation_holds_its_ends() {
        let rows = [(0.0, 1.0), (10.0, 3.0)];
        assert_eq!(interpolate(&rows, -5.0), Some(1.0));
        assert_eq!(interpolate(&rows, 5.0), Some(2.0));
        assert_eq!(interpolate(&rows, 50.0), Some(3.0));
        assert_eq!(interpolate(&[], 0.0), None);
        let slopes = [-5.0, 0.0, 5.0, 10.0, 50.0]
            .map(|x| interpolate_with_slope(&rows, x).map(|(_, slope)| slope));
        assert_eq!(
            slopes,
            [Some(0.0), Some(0.2), Some(0.2), Some(0.0), Some(0.0)]
        );
        assert_eq!(interpolate_with_slope(&[], 0.0), None);
        assert_eq!(interpolate_with_slope(&rows[..1], 0.0), Some((1.0, 0.0)));
    }

    #[test]
    fn rows_are_found_however_they_are_spaced() {
        // Close together at one end, at the other, and hardly apart at all.
        let tables: [[f64; 5]; 4] = [
            [0.0, 0.001, 0.002, 40.0, 90.0],
            [0.0, 50.0, 89.0, 89.5, 90.0],
            [0.0, 1e-300, 2e-300, 3e-300, 4e-300],
            [0.0, 1e-320, 1.0, 2.0, 3.0],
        ];
        for table in tables {
            let rows: Vec<(f64, f64)> = table.iter().map(|&x| (x, x.sqrt())).collect();
            for x in [-1.0, 0.0, 0.0015, 0.002, 20.0, 60.0, 89.2, 90.0, 1e300] {
                let found = interpolate_with_slope(&rows, x).map(|(value, _)| value);
                assert_eq!(found, interpolate(&rows, x), "{table:?} at {x}");
                assert!(found.is_some_and(f64::is_finite), "{table:?} at {x}");
            }
        }
    }
}
