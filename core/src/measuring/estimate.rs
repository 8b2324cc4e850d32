//! Drag area of every position, with rolling resistance and a steady wind where they are asked for, by one weighted least
//! squares over laps, steady runs and coast-downs.
//!
//! The error of a row is taken as a share of the energy that went in, the same for all rows: so behave a meter's drift from lap to
//! lap and the scatter of pedalling. A run one way has a little more, by what the wind can do. Intervals are Student's t with the
//! degrees of freedom that the residuals have; positions that clearly scatter unlike each other have their own variances
//! (`scatter`).

use super::coast_down::Coasting;
use super::lap::{Sums, sign};
use super::rig::Rig;
use super::scatter::{FittedRow, Scatter, unlike, variance_of};
use crate::inputs::quantity::chance_positive;
use crate::numerics::distributions::{student_t_of, student_t_share};
use crate::numerics::least_squares::{Fit, NoFit, Row, least_squares};

/// Where the search begins. The equations are nearly linear, so any usual drag area and coefficient will do.
const START_CDA_M2: f64 = 0.25;
const START_ROLLING: f64 = 0.004;
/// The least scatter of a lap, as a share of its energy, even where a few laps happen to agree better. Assumed: power meters repeat to
/// 1.2 ± 0.9 % (54 meters, maier-2017), and a mean over a lap is somewhat better.
const LEAST_SCATTER: f64 = 0.005;
/// Crr is told from CdA where one standard deviation of every CdA stays below this share of it; assumed.
const TOLD_APART: f64 = 0.03;
/// A residual is pointed out where so few tests without a fault would show one as large.
const FALSE_ALARM: f64 = 0.05;

/// Whether Crr is estimated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rolling {
    /// With the drag areas.
    Fitted,
    /// It is the rig's.
    Held,
}

/// What was observed in one position.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Observation {
    /// Whose drag area it tells of.
    pub position: usize,
    /// What was seen.
    pub seen: Seen,
}

/// What was seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Seen {
    /// A lap or a steady run.
    Stretch(Sums),
    /// A coast-down.
    CoastDown(CoastDown),
}

/// A coast-down of which the time, or else the distance, was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoastDown {
    /// m/s.
    pub from_m_s: f64,
    /// m/s.
    pub to_m_s: f64,
    /// What was read.
    pub read: CoastDownRead,
    /// Steady head wind, m/s.
    pub head_m_s: f64,
    /// Of the road.
    pub grade: f64,
}

/// What was read of a coast-down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CoastDownRead {
    /// s.
    Time(f64),
    /// m.
    Distance(f64),
}

impl CoastDown {
    /// What would be read with these coefficients.
    fn predicted(&self, rig: &Rig, cda_m2: f64, rolling: f64) -> f64 {
        let m = &rig.machine;
        let grade = self.grade + rig.grade_missed * sign(self.grade);
        let head_m_s = self.head_m_s + rig.head_added_m_s * sign(self.head_m_s);
        let bearings_n =
            m.bearing_drag_n + m.bearing_drag_n_s_per_m * 0.5 * (self.from_m_s + self.to_m_s);
        let coasting = Coasting {
            effective_mass_kg: m.effective_mass_kg(),
            constant_n: rig.weight_n() * (rolling + grade / grade.hypot(1.0)) + bearings_n,
            quadratic_kg_m: 0.5 * rig.density_kg_m3 * cda_m2,
        };
        let [from, to] = [self.from_m_s, self.to_m_s].map(|v| v * rig.speed_scale + head_m_s);
        let time_s = coasting.time_s(from, to);
        match self.read {
            CoastDownRead::Time(_) => time_s,
            CoastDownRead::Distance(_) => coasting.distance_m(from, to) - head_m_s * time_s,
        }
    }

    fn read(&self) -> f64 {
        match self.read {
            CoastDownRead::Time(time_s) => time_s,
            CoastDownRead::Distance(distance_m) => distance_m,
        }
    }

    /// The share by which what was read exceeds what is predicted, and its derivatives by CdA and Crr.
    fn row(&self, rig: &Rig, cda_m2: f64, rolling: f64) -> (f64, [f64; 2]) {
        let share =
            |cda_m2: f64, rolling: f64| 1.0 - self.predicted(rig, cda_m2, rolling) / self.read();
        // With these steps a central difference keeps about ten of sixteen digits.
        const STEPS: [f64; 2] = [1e-6, 1e-8];
        let by = |cda: f64, crr: f64| {
            (share(cda_m2 + cda, rolling + crr) - share(cda_m2 - cda, rolling - crr))
                / (2.0 * (cda + crr))
        };
        (
            share(cda_m2, rolling),
            [by(STEPS[0], 0.0), by(0.0, STEPS[1])],
        )
    }
}

/// A value with what is known of its error, which a test without a row to spare does not say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// The value.
    pub value: f64,
    /// One standard deviation.
    pub sd: Option<f64>,
    /// The 95 % interval.
    pub range_95: Option<(f64, f64)>,
    /// The chance that the true value is positive.
    pub chance_positive: Option<f64>,
}

impl Interval {
    fn new(value: f64, scatter: Scatter) -> Self {
        let degrees = scatter.degrees;
        if degrees <= 0.0 {
            return Self {
                value,
                sd: None,
                range_95: None,
                chance_positive: None,
            };
        }
        let sd = scatter.variance.sqrt();
        let reach = student_t_of(0.95, degrees) * sd;
        Self {
            value,
            sd: Some(sd),
            range_95: Some((value - reach, value + reach)),
            chance_positive: Some(chance_positive(value, sd, |t| student_t_share(t, degrees))),
        }
    }

    /// A parameter of a fit.
    pub(super) fn of(fit: &Fit, i: usize) -> Self {
        let scatter = Scatter {
            variance: fit.residual_variance() * fit.unit_covariance(i, i),
            degrees: fit.degrees_of_freedom() as f64,
        };
        Self::new(fit.parameters[i], scatter)
    }
}

/// How one row lies to the estimate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Residual {
    /// What the rider put in beyond what the estimate asks, W.
    pub residual_w: f64,
    /// The drag area that this row alone would give with all else as estimated, m²; `None` where it does not depend on it.
    pub own_cda_m2: Option<f64>,
    /// How much the row decides its own place, 0 to 1.
    pub leverage: f64,
    /// The residual in standard deviations that the other rows give; `None` where none is left over.
    pub studentised: Option<f64>,
    /// Whether it is larger than a test without a fault shows once in twenty, all rows counted.
    pub outlier: bool,
}

/// The estimate.
#[derive(Clone, Debug)]
pub struct Estimate {
    /// The positions that were observed, ascending.
    pub positions: Vec<usize>,
    /// Each row, in the order of the observations.
    pub residuals: Vec<Residual>,
    rolling: Rolling,
    held: f64,
    axes: Vec<[f64; 2]>,
    fit: Fit,
    rows: Vec<FittedRow>,
    /// Of each place, where they scatter unlike each other.
    unlike: Option<Vec<Scatter>>,
}

struct Problem<'a> {
    observations: &'a [Observation],
    places: Vec<usize>,
    rig: &'a Rig,
    rolling: Rolling,
    axes: &'a [[f64; 2]],
    areas: usize,
}

impl Problem<'_> {
    fn rolling(&self, b: &[f64]) -> f64 {
        match self.rolling {
            Rolling::Fitted => b[self.areas],
            Rolling::Held => self.rig.machine.rolling_coefficient,
        }
    }

    /// Where the components of the wind stand among the parameters.
    fn first_axis(&self) -> usize {
        self.areas + usize::from(self.rolling == Rolling::Fitted)
    }

    fn wind(&self, b: &[f64]) -> [f64; 2] {
        blown(self.axes, &b[self.first_axis()..])
    }

    /// One row of least squares: what is predicted less what was measured, as a share of the energy.
    fn row(&self, b: &[f64], i: usize, slopes: &mut [f64]) -> f64 {
        slopes.fill(0.0);
        let place = self.places[i];
        let (cda_m2, rolling) = (b[place], self.rolling(b));
        match &self.observations[i].seen {
            Seen::Stretch(sums) => {
                let wind = self.wind(b);
                let equation = self.rig.equation(sums, wind);
                slopes[place] = equation.air / equation.scale_j;
                if self.rolling == Rolling::Fitted {
                    slopes[self.areas] = equation.rolling / equation.scale_j;
                }
                if sums.has_headings() {
                    let by = self.rig.air_slopes(sums, wind);
                    for (k, axis) in self.axes.iter().enumerate() {
                        slopes[self.first_axis() + k] =
                            cda_m2 * (axis[0] * by[0] + axis[1] * by[1]) / equation.scale_j;
                    }
                }
                (cda_m2 * equation.air + rolling * equation.rolling - equation.loss_j)
                    / equation.scale_j
            }
            Seen::CoastDown(coast_down) => {
                let (share, [by_cda, by_rolling]) = coast_down.row(self.rig, cda_m2, rolling);
                slopes[place] = by_cda;
                if self.rolling == Rolling::Fitted {
                    slopes[self.areas] = by_rolling;
                }
                share
            }
        }
    }

    /// A row at the parameters of a fit.
    fn fitted(&self, fit: &Fit, i: usize) -> FittedRow {
        let mut slopes = vec![0.0; fit.parameters.len()];
        let share = self.row(&fit.parameters, i, &mut slopes);
        FittedRow {
            place: self.places[i],
            leverage: fit.unit_variance(&slopes).min(1.0),
            share,
            slopes,
        }
    }

    /// A share of the energy of a row, in W.
    fn watts(&self, i: usize, b: &[f64]) -> f64 {
        match &self.observations[i].seen {
            Seen::Stretch(sums) => self.rig.equation(sums, self.wind(b)).scale_j / sums.duration_s,
            Seen::CoastDown(coast_down) => {
                let lost = 0.5
                    * self.rig.machine.effective_mass_kg()
                    * (coast_down.from_m_s.powi(2) - coast_down.to_m_s.powi(2));
                let time_s = match coast_down.read {
                    CoastDownRead::Time(time_s) => time_s,
                    CoastDownRead::Distance(distance_m) => {
                        distance_m / (0.5 * (coast_down.from_m_s + coast_down.to_m_s))
                    }
                };
                lost / time_s
            }
        }
    }
}

/// The wind of its components along axes.
fn blown(axes: &[[f64; 2]], along: &[f64]) -> [f64; 2] {
    std::array::from_fn(|i| axes.iter().zip(along).map(|(axis, w)| w * axis[i]).sum())
}

/// The joint estimate. A wind is fitted along each of the axes, unit vectors, on top of that in which laps were reduced.
///
/// # Errors
/// Fewer rows than unknowns, or rows that leave an unknown open: see [`NoFit`].
pub fn estimate(
    observations: &[Observation],
    rig: &Rig,
    rolling: Rolling,
    axes: &[[f64; 2]],
) -> Result<Estimate, NoFit> {
    let mut positions: Vec<usize> = observations.iter().map(|o| o.position).collect();
    positions.sort_unstable();
    positions.dedup();
    if positions.is_empty() {
        return Err(NoFit::TooFewRows);
    }
    let place = |o: &Observation| positions.binary_search(&o.position).unwrap_or(0);
    let problem = Problem {
        observations,
        places: observations.iter().map(place).collect(),
        rig,
        rolling,
        axes,
        areas: positions.len(),
    };
    let mut start = vec![START_CDA_M2; positions.len()];
    if rolling == Rolling::Fitted {
        start.push(START_ROLLING);
    }
    start.extend(axes.iter().map(|_| 0.0));
    let row: &Row<'_> = &|b, i, slopes| problem.row(b, i, slopes);
    let fit = least_squares(&start, observations.len(), row)?;
    let rows: Vec<FittedRow> = (0..observations.len())
        .map(|i| problem.fitted(&fit, i))
        .collect();
    let unlike = unlike(&rows, &fit, positions.len());
    let pooled = Scatter {
        variance: fit.residual_variance(),
        degrees: fit.degrees_of_freedom() as f64,
    };
    let residuals = rows
        .iter()
        .enumerate()
        .map(|(i, row)| {
            let about = unlike.as_ref().map_or(pooled, |own| own[row.place]);
            residual(row, about, &fit, problem.watts(i, &fit.parameters))
        })
        .collect();
    Ok(Estimate {
        residuals,
        unlike,
        rows,
        rolling,
        held: rig.machine.rolling_coefficient,
        axes: axes.to_vec(),
        fit,
        positions,
    })
}

/// One row's residual, its leverage and its place among the others: externally studentised, `t = r/(s₍ᵢ₎√(1 − h))` with the
/// variance that the other rows have (those of its position, where positions scatter unlike each other), against Bonferroni's bound
/// for all rows.
///
/// Source: Cook and Weisberg 1982, Residuals and Influence in Regression, section 2.2 (from memory).
fn residual(row: &FittedRow, about: Scatter, fit: &Fit, watts: f64) -> Residual {
    let (share, leverage, rows) = (row.share, row.leverage, fit.rows);
    let own_cda_m2 = Some(fit.parameters[row.place] - share / row.slopes[row.place]);
    let free = about.degrees;
    // A row that alone decides an unknown has no residual.
    const ALONE: f64 = 1e-9;
    let rest = 1.0 - leverage;
    let studentised = (free >= 2.0 && rest > ALONE)
        .then(|| {
            let others = (free * about.variance - share * share / rest).max(0.0) / (free - 1.0);
            -share / (others * rest).sqrt()
        })
        .filter(|t| t.is_finite());
    let bound = || student_t_of(1.0 - FALSE_ALARM / rows as f64, free - 1.0);
    // Residuals of rounding are no fault.
    let noticeable = share.abs() > 1e-9;
    Residual {
        residual_w: -share * watts,
        own_cda_m2: own_cda_m2.filter(|cda_m2| cda_m2.is_finite()),
        leverage,
        studentised,
        outlier: noticeable && studentised.is_some_and(|t| t.abs() > bound()),
    }
}

impl Estimate {
    /// Rows that are left over.
    pub fn degrees_of_freedom(&self) -> usize {
        self.fit.degrees_of_freedom()
    }

    /// One standard deviation of a row as a share of its energy; `None` without a row to spare.
    pub fn scatter_share(&self) -> Option<f64> {
        (self.degrees_of_freedom() > 0).then(|| self.fit.residual_variance().sqrt())
    }

    /// The drag area of the position in this place of [`positions`](Self::positions), m².
    pub fn cda_m2(&self, place: usize) -> Interval {
        self.parameter(place)
    }

    /// The drag area in one place less that in another, m²: what both share cancels.
    pub fn difference_m2(&self, place: usize, less: usize) -> Interval {
        let mut gradient = vec![0.0; self.fit.parameters.len()];
        gradient[place] = 1.0;
        gradient[less] = -1.0;
        Interval::new(
            self.fit.parameters[place] - self.fit.parameters[less],
            self.scatter_of(&gradient),
        )
    }

    /// One standard deviation of a row in each place, as a share of its energy, where positions scatter unlike each other.
    pub fn unlike_scatter_shares(&self) -> Option<Vec<f64>> {
        let scatters = self.unlike.as_ref()?;
        Some(scatters.iter().map(|own| own.variance.sqrt()).collect())
    }

    /// Variance and degrees of freedom of a figure with this gradient.
    fn scatter_of(&self, gradient: &[f64]) -> Scatter {
        match &self.unlike {
            Some(scatters) => variance_of(gradient, &self.rows, &self.fit, scatters),
            None => Scatter {
                variance: self.fit.residual_variance() * self.fit.unit_variance(gradient),
                degrees: self.fit.degrees_of_freedom() as f64,
            },
        }
    }

    /// Crr where it was estimated.
    pub fn rolling(&self) -> Option<Interval> {
        (self.rolling == Rolling::Fitted).then(|| self.parameter(self.positions.len()))
    }

    /// Crr, estimated or held.
    pub fn rolling_value(&self) -> f64 {
        self.rolling().map_or(self.held, |rolling| rolling.value)
    }

    /// The fitted wind, from north and from east, m/s, and one standard deviation of each component that was fitted.
    pub fn wind(&self) -> ([f64; 2], Vec<Option<f64>>) {
        let first = self.fit.parameters.len() - self.axes.len();
        let wind = blown(&self.axes, &self.fit.parameters[first..]);
        let sds = (0..self.axes.len())
            .map(|k| self.parameter(first + k).sd)
            .collect();
        (wind, sds)
    }

    /// Whether the rows tell CdA from what was fitted beside it: every drag area is positive, and known to 3 % of itself at one
    /// standard deviation, for the scatter that there is or half a per cent of a lap's energy, whichever is more.
    pub fn is_told(&self) -> bool {
        (0..self.positions.len()).all(|i| {
            let least = LEAST_SCATTER * LEAST_SCATTER * self.fit.unit_covariance(i, i);
            let variance = self.scatter_of(&self.gradient(i)).variance.max(least);
            variance.sqrt() < TOLD_APART * self.fit.parameters[i]
        })
    }

    fn parameter(&self, i: usize) -> Interval {
        Interval::new(self.fit.parameters[i], self.scatter_of(&self.gradient(i)))
    }

    /// That of one parameter by itself.
    fn gradient(&self, i: usize) -> Vec<f64> {
        let mut gradient = vec![0.0; self.fit.parameters.len()];
        gradient[i] = 1.0;
        gradient
    }
}
