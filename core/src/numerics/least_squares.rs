//! Weighted nonlinear least squares with what it says of its own doubt, and quantiles of Student's t. No physics.

use crate::numerics::solve::root;

/// One row of a problem: writes the derivatives of the residual by each parameter and gives the residual. Rows are
/// weighted by dividing both by the row's standard deviation.
pub type Row<'a> = dyn Fn(&[f64], usize, &mut [f64]) -> f64 + 'a;

/// Why there is no fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoFit {
    /// Fewer rows than parameters.
    TooFewRows,
    /// The rows leave a combination of parameters open.
    Undetermined,
    /// [`MOST_STEPS`] did not reach a minimum, or the residuals are not numbers.
    NotConverged,
}

/// The parameters of least sum of squares.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// The parameters.
    pub parameters: Vec<f64>,
    /// The sum of the squared residuals.
    pub sum_of_squares: f64,
    /// The number of rows.
    pub rows: usize,
    /// `R⁻¹` of the Jacobian's QR decomposition, row by row: `(JᵀJ)⁻¹ = R⁻¹ R⁻ᵀ`.
    inverse: Vec<f64>,
}

impl Fit {
    /// Rows less parameters.
    pub fn degrees_of_freedom(&self) -> usize {
        self.rows - self.parameters.len()
    }

    /// The variance of the residuals, `S/(n − p)`; 0 where no row is left over.
    pub fn residual_variance(&self) -> f64 {
        match self.degrees_of_freedom() {
            0 => 0.0,
            left => self.sum_of_squares / left as f64,
        }
    }

    /// The covariance of two parameters for residuals of variance 1: an element of `(JᵀJ)⁻¹`.
    pub fn unit_covariance(&self, i: usize, j: usize) -> f64 {
        let p = self.parameters.len();
        (0..p)
            .map(|k| self.inverse[i * p + k] * self.inverse[j * p + k])
            .sum()
    }

    /// The variance of a function of the parameters with this gradient, for residuals of variance 1: `gᵀ (JᵀJ)⁻¹ g`. With
    /// a row's own derivatives it is that row's leverage.
    pub fn unit_variance(&self, gradient: &[f64]) -> f64 {
        let p = self.parameters.len();
        let along = |k: usize| {
            (0..p)
                .map(|i| gradient[i] * self.inverse[i * p + k])
                .sum::<f64>()
        };
        (0..p).map(|k| along(k).powi(2)).sum()
    }
}

/// The most steps tried before a problem is given up.
pub const MOST_STEPS: usize = 300;
/// A step that promises less than this share of the sum of squares ends the search: what is left is polished.
const PROMISES_NOTHING: f64 = 1e-12;
/// Beyond this damping no step changes the parameters any more.
const MOST_DAMPING: f64 = 1e18;
/// Below this share of its column a diagonal element of `R` is rounding.
const RANK: f64 = 1e-13;
/// A minimum has residuals this near to square on every derivative (the cosine), where rounding stopped the search early.
const SQUARE: f64 = 1e-6;
/// A step is no longer than this times the parameters themselves, both in units of the residuals they move.
const MOST_GROWTH: f64 = 1.0;
const MOST_POLISHING: usize = 60;

/// The least squares from `start`, by the method of Levenberg and Marquardt: each step solves the damped linear problem by
/// Householder's QR decomposition, damping is scaled by the largest derivative seen for each parameter (Moré) and follows the
/// gain of the last step (Nielsen). No step is longer than the parameters themselves, so that a poor start is not thrown far.
/// At the end undamped steps polish the minimum.
///
/// Accuracy: on the NIST reference problems at least six certified digits in parameters and standard deviations from both
/// starts; where the data are exact, rounding. Derivatives must be those of the residuals.
///
/// Sources: Levenberg 1944, Marquardt 1963, Moré 1978, Nielsen 1999 (all from memory); data in `tests/published`.
///
/// # Errors
/// See [`NoFit`]; after [`MOST_STEPS`] it says so rather than give what it has.
pub fn least_squares(start: &[f64], rows: usize, row: &Row<'_>) -> Result<Fit, NoFit> {
    let p = start.len();
    if rows < p {
        return Err(NoFit::TooFewRows);
    }
    let problem = Problem { rows, p, row };
    let mut at = problem.at(start.to_vec()).ok_or(NoFit::NotConverged)?;
    let mut scale = vec![0.0_f64; p];
    let (mut damping, mut growth) = (1.0, 2.0);
    for _ in 0..MOST_STEPS {
        for (largest, norm) in scale.iter_mut().zip(problem.column_norms(&at.jacobian)) {
            *largest = largest.max(norm);
        }
        if scale.contains(&0.0) {
            return Err(NoFit::Undetermined);
        }
        let step = problem
            .step(&at, damping, &scale)
            .ok_or(NoFit::Undetermined)?;
        let promised = at.sum_of_squares - problem.linear_sum(&at, &step);
        if promised <= PROMISES_NOTHING * at.sum_of_squares && damping <= 1.0 {
            break;
        }
        let moved = problem.at(at
            .parameters
            .iter()
            .zip(&step)
            .map(|(b, d)| b + d)
            .collect());
        let size = length(&at.parameters, &scale);
        let far = size > 0.0 && length(&step, &scale) > MOST_GROWTH * size;
        match moved {
            Some(moved) if !far && moved.sum_of_squares < at.sum_of_squares => {
                let gain = (at.sum_of_squares - moved.sum_of_squares) / promised;
                damping *= (1.0 - (2.0 * gain - 1.0).powi(3)).max(1.0 / 3.0);
                damping = damping.max(1e-15);
                growth = 2.0;
                at = moved;
            }
            _ => {
                damping *= growth;
                growth *= 2.0;
            }
        }
        if damping > MOST_DAMPING {
            break;
        }
    }
    problem.polished(at)
}

/// The length of a step in units of the residuals that each parameter moves.
fn length(step: &[f64], scale: &[f64]) -> f64 {
    step.iter()
        .zip(scale)
        .map(|(d, size)| (d * size).powi(2))
        .sum::<f64>()
        .sqrt()
}

struct Problem<'a> {
    rows: usize,
    p: usize,
    row: &'a Row<'a>,
}

struct Point {
    parameters: Vec<f64>,
    residuals: Vec<f64>,
    jacobian: Vec<f64>,
    sum_of_squares: f64,
}

impl Problem<'_> {
    /// The problem at some parameters; `None` where it is not made of numbers.
    fn at(&self, parameters: Vec<f64>) -> Option<Point> {
        let mut jacobian = vec![0.0; self.rows * self.p];
        let residuals: Vec<f64> = jacobian
            .chunks_exact_mut(self.p)
            .enumerate()
            .map(|(i, row)| (self.row)(&parameters, i, row))
            .collect();
        let sum_of_squares: f64 = residuals.iter().map(|r| r * r).sum();
        let finite = sum_of_squares.is_finite() && jacobian.iter().all(|d| d.is_finite());
        finite.then_some(Point {
            parameters,
            residuals,
            jacobian,
            sum_of_squares,
        })
    }

    fn column_norms(&self, jacobian: &[f64]) -> Vec<f64> {
        let column = |j: usize| {
            jacobian[j..]
                .iter()
                .step_by(self.p)
                .map(|d| d * d)
                .sum::<f64>()
                .sqrt()
        };
        (0..self.p).map(column).collect()
    }

    /// The step to the minimum of the linear problem, held back by `damping · (scale · step)²`.
    fn step(&self, at: &Point, damping: f64, scale: &[f64]) -> Option<Vec<f64>> {
        let mut matrix = at.jacobian.clone();
        let mut right: Vec<f64> = at.residuals.iter().map(|r| -r).collect();
        if damping > 0.0 {
            for (j, size) in scale.iter().enumerate() {
                let mut row = vec![0.0; self.p];
                row[j] = damping.sqrt() * size;
                matrix.extend(row);
                right.push(0.0);
            }
        }
        triangular(&mut matrix, &mut right, self.p)?;
        Some(back_substituted(&matrix, &right, self.p))
    }

    /// The sum of squares that the linear problem has after a step.
    fn linear_sum(&self, at: &Point, step: &[f64]) -> f64 {
        let after =
            |(row, r): (&[f64], &f64)| r + row.iter().zip(step).map(|(d, s)| d * s).sum::<f64>();
        at.jacobian
            .chunks_exact(self.p)
            .zip(&at.residuals)
            .map(|both| after(both).powi(2))
            .sum()
    }

    /// Undamped steps for as long as they shrink, then the covariance.
    fn polished(&self, mut at: Point) -> Result<Fit, NoFit> {
        let norms = self.column_norms(&at.jacobian);
        let mut step = self.step(&at, 0.0, &[]).ok_or(NoFit::Undetermined)?;
        for _ in 0..MOST_POLISHING {
            let moved = self.at(at
                .parameters
                .iter()
                .zip(&step)
                .map(|(b, d)| b + d)
                .collect());
            // No worse than rounding can make it.
            let Some(moved) =
                moved.filter(|moved| moved.sum_of_squares <= at.sum_of_squares * (1.0 + 1e-9))
            else {
                break;
            };
            let next = self.step(&moved, 0.0, &[]).ok_or(NoFit::Undetermined)?;
            let shrinks = length(&next, &norms) < length(&step, &norms);
            (at, step) = (moved, next);
            if !shrinks {
                break;
            }
        }
        if !self.is_minimum(&at) {
            return Err(NoFit::NotConverged);
        }
        let mut matrix = at.jacobian.clone();
        triangular(&mut matrix, &mut [], self.p).ok_or(NoFit::Undetermined)?;
        let inverse = inverse(&matrix, self.p);
        Ok(Fit {
            parameters: at.parameters,
            sum_of_squares: at.sum_of_squares,
            rows: self.rows,
            inverse,
        })
    }

    /// The residuals are square on every derivative, or no larger than rounding makes them.
    fn is_minimum(&self, at: &Point) -> bool {
        let size = at.sum_of_squares.sqrt();
        (0..self.p).all(|j| {
            let column = at.jacobian[j..].iter().step_by(self.p);
            let along: f64 = column.zip(&at.residuals).map(|(d, r)| d * r).sum();
            let norm = at.jacobian[j..]
                .iter()
                .step_by(self.p)
                .map(|d| d * d)
                .sum::<f64>()
                .sqrt();
            along.abs() <= SQUARE * norm * size
                || size <= f64::EPSILON.sqrt() * norm * at.parameters[j].abs()
        })
    }
}

/// Turns a matrix of `p` columns, row by row, into upper triangular form by Householder's reflections, the right side
/// with it. `None` where a column depends on those before it.
fn triangular(matrix: &mut [f64], right: &mut [f64], p: usize) -> Option<()> {
    let rows = matrix.len() / p;
    for k in 0..p {
        let whole = (0..rows)
            .map(|i| matrix[i * p + k].powi(2))
            .sum::<f64>()
            .sqrt();
        let norm = (k..rows)
            .map(|i| matrix[i * p + k].powi(2))
            .sum::<f64>()
            .sqrt();
        if norm.is_nan() || norm <= RANK * whole {
            return None;
        }
        let pivot = matrix[k * p + k];
        let diagonal = if pivot > 0.0 { -norm } else { norm };
        let mut mirror: Vec<f64> = (k..rows).map(|i| matrix[i * p + k]).collect();
        mirror[0] -= diagonal;
        let half = norm * (norm + pivot.abs());
        for j in k..p {
            let along: f64 = mirror
                .iter()
                .enumerate()
                .map(|(i, v)| v * matrix[(k + i) * p + j])
                .sum();
            for (i, v) in mirror.iter().enumerate() {
                matrix[(k + i) * p + j] -= along / half * v;
            }
        }
        if !right.is_empty() {
            let along: f64 = mirror.iter().zip(&right[k..]).map(|(v, b)| v * b).sum();
            for (v, b) in mirror.iter().zip(&mut right[k..]) {
                *b -= along / half * v;
            }
        }
    }
    Some(())
}

fn back_substituted(matrix: &[f64], right: &[f64], p: usize) -> Vec<f64> {
    let mut x = vec![0.0; p];
    for i in (0..p).rev() {
        let known: f64 = (i + 1..p).map(|j| matrix[i * p + j] * x[j]).sum();
        x[i] = (right[i] - known) / matrix[i * p + i];
    }
    x
}

/// The inverse of the upper triangle in the first `p` rows.
fn inverse(matrix: &[f64], p: usize) -> Vec<f64> {
    let mut inverse = vec![0.0; p * p];
    for k in 0..p {
        let mut unit = vec![0.0; p];
        unit[k] = 1.0;
        for (i, x) in back_substituted(matrix, &unit, p).into_iter().enumerate() {
            inverse[i * p + k] = x;
        }
    }
    inverse
}

/// The two-sided quantile of Student's t: with this many degrees of freedom, `share` of the values lie within ± it.
///
/// The distribution function is the finite sum for whole degrees of freedom (Abramowitz and Stegun 1964, 26.7.3 and
/// 26.7.4, from memory); accurate to 1e-10 for shares up to 0.999 and at least one degree of freedom.
pub fn student_t(share: f64, degrees_of_freedom: usize) -> f64 {
    let nu = degrees_of_freedom.max(1);
    // Beyond this the share cannot be told from 1, and a bracket needs an end.
    const FARTHEST: f64 = 1e4;
    root(|t| student_t_share(t, nu) - share, 0.0, FARTHEST, 1e-13).unwrap_or(FARTHEST)
}

/// The share of Student's t within ± `t`.
fn student_t_share(t: f64, nu: usize) -> f64 {
    let (sin, cos) = (t / (nu as f64).sqrt()).atan().sin_cos();
    let odd = nu % 2 == 1;
    // Terms cosᵏ · (k − 1)!!/k!!, k of the parity of ν − 2.
    let mut term = if odd { cos } else { 1.0 };
    let mut sum = if nu == 1 { 0.0 } else { term };
    let first = if odd { 3 } else { 2 };
    for k in (first..nu.saturating_sub(1)).step_by(2) {
        term *= cos * cos * (k as f64 - 1.0) / k as f64;
        sum += term;
    }
    if odd {
        std::f64::consts::FRAC_2_PI * (sin.atan2(cos) + sin * sum)
    } else {
        sin * sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What SciPy prints for the quantiles to ten digits.
    const PRINTED: f64 = 1e-8;

    #[test]
    fn quantiles_of_student_t_are_those_of_scipy() {
        let by_scipy = [
            (0.95, 1, 12.706_204_736),
            (0.95, 2, 4.302_652_730),
            (0.95, 7, 2.364_624_252),
            (0.95, 10, 2.228_138_852),
            (0.95, 30, 2.042_272_456),
        ];
        for (share, nu, want) in &by_scipy {
            let got = student_t(*share, *nu);
            assert!((got - want).abs() < PRINTED * want, "{nu}: {got}");
        }
    }

    #[test]
    fn too_few_rows_and_open_parameters_are_refused() {
        let line: &Row<'_> = &|b, i, d| {
            d.copy_from_slice(&[1.0, 2.0]);
            b[0] + 2.0 * b[1] - i as f64
        };
        assert_eq!(least_squares(&[0.0, 0.0], 1, line), Err(NoFit::TooFewRows));
        assert_eq!(
            least_squares(&[0.0, 0.0], 3, line).map(|fit| fit.parameters),
            Err(NoFit::Undetermined)
        );
    }
}
