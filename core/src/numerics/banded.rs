//! Linear equations with a symmetric positive definite matrix that has few diagonals.

/// The lower part of a symmetric matrix with `WIDTH` diagonals, the main one included: row `i` holds the entries of the columns
/// `i − WIDTH + 1` to `i`.
#[derive(Clone, Debug)]
pub(crate) struct Banded<const WIDTH: usize> {
    rows: Vec<[f64; WIDTH]>,
}

impl<const WIDTH: usize> Banded<WIDTH> {
    /// A matrix of zeros.
    pub(crate) fn zeros(size: usize) -> Self {
        Self {
            rows: vec![[0.0; WIDTH]; size],
        }
    }

    /// Adds to the entries of a row and a column and of that column and that row; they are less than `WIDTH` apart.
    pub(crate) fn add(&mut self, row: usize, column: usize, value: f64) {
        let (row, column) = (row.max(column), row.min(column));
        self.rows[row][WIDTH - 1 + column - row] += value;
    }

    /// The factor `L` of the matrix `L Lᵀ` by Cholesky's method; exact up to rounding, in `size · WIDTH²` steps. `None` where
    /// the matrix is not positive definite.
    pub(crate) fn factored(mut self) -> Option<Factor<WIDTH>> {
        for i in 0..self.rows.len() {
            let first = i.saturating_sub(WIDTH - 1);
            let mut row = self.rows[i];
            for j in first..=i {
                let mut sum = row[WIDTH - 1 + j - i];
                for k in first.max(j.saturating_sub(WIDTH - 1))..j {
                    sum -= row[WIDTH - 1 + k - i] * self.other(&row, i, j, k);
                }
                row[WIDTH - 1 + j - i] = if j < i {
                    sum / self.rows[j][WIDTH - 1]
                } else if sum > 0.0 && sum.is_finite() {
                    sum.sqrt()
                } else {
                    return None;
                };
            }
            self.rows[i] = row;
        }
        Some(Factor { lower: self })
    }

    /// The entry of row `j` and column `k`, where row `i` is being worked out.
    fn other(&self, row: &[f64; WIDTH], i: usize, j: usize, k: usize) -> f64 {
        let of = if j == i { row } else { &self.rows[j] };
        of[WIDTH - 1 + k - j]
    }
}

/// The factor of a matrix.
pub(crate) struct Factor<const WIDTH: usize> {
    lower: Banded<WIDTH>,
}

impl<const WIDTH: usize> Factor<WIDTH> {
    /// Solves the equations, the right side becoming the solution.
    pub(crate) fn solve(&self, x: &mut [f64]) {
        let rows = &self.lower.rows;
        for i in 0..rows.len() {
            let mut sum = x[i];
            for k in i.saturating_sub(WIDTH - 1)..i {
                sum -= rows[i][WIDTH - 1 + k - i] * x[k];
            }
            x[i] = sum / rows[i][WIDTH - 1];
        }
        for i in (0..rows.len()).rev() {
            let solved = x[i] / rows[i][WIDTH - 1];
            x[i] = solved;
            for k in i.saturating_sub(WIDTH - 1)..i {
                x[k] -= rows[i][WIDTH - 1 + k - i] * solved;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SIZE: usize = 12;

    /// Diagonally dominant, so positive definite.
    fn matrix() -> Banded<3> {
        let mut matrix = Banded::zeros(SIZE);
        for i in 0..SIZE {
            matrix.add(i, i, 4.0 + i as f64);
            if i > 0 {
                matrix.add(i - 1, i, -1.0);
            }
            if i > 1 {
                matrix.add(i, i - 2, 0.5);
            }
        }
        matrix
    }

    #[test]
    fn the_solution_fulfils_the_equations() {
        let entry = |i: usize, j: usize| match i.abs_diff(j) {
            0 => 4.0 + i as f64,
            1 => -1.0,
            2 => 0.5,
            _ => 0.0,
        };
        let wanted: Vec<f64> = (0..SIZE).map(|i| (i as f64).sin()).collect();
        let mut x = wanted.clone();
        matrix().factored().unwrap().solve(&mut x);
        for (i, want) in wanted.iter().enumerate() {
            let got: f64 = (0..SIZE).map(|j| entry(i, j) * x[j]).sum();
            // A few roundings of numbers near 10.
            assert!((got - want).abs() < 1e-14, "{i}: {got} for {want}");
        }
    }

    #[test]
    fn a_matrix_that_is_not_positive_definite_is_refused() {
        let mut matrix = matrix();
        matrix.add(5, 5, -20.0);
        assert!(matrix.factored().is_none());
    }
}
