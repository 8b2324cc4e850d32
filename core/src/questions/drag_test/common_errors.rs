//! Which inputs of the scenario a whole test has in common, and what each does to its drag area.

use super::answer::CommonError;
use super::differences::DifferenceError;
use super::with::WindForm;
use crate::inputs::fields;
use crate::inputs::quantity::Quantity;
use crate::measuring::common::{TANGENT, cda_m2};
use crate::measuring::estimate::{Observation, Rolling, Seen};
use crate::measuring::rig::Rig;
use crate::physics::air::Wind;
use crate::scenario::Scenario;

/// The air's pressure on a day that nobody looked it up, hPa; assumed.
const PRESSURE_SD_HPA: f64 = 8.0;
/// A grade that is easily missed: one metre in a kilometre; assumed.
const GRADE_SD: f64 = 0.001;

/// Rider, bicycle and air of a test. The power meter's bias is left out: the scenario keeps drag areas as the meter measured them, and
/// counts its bias for all of them together.
pub(super) fn rig(scenario: &Scenario) -> Rig {
    let mut machine = scenario.machine();
    machine.drivetrain_efficiency = scenario.bike.drivetrain_efficiency.value;
    Rig::new(machine, scenario.density_kg_m3())
}

/// The wind at the height of the rider.
pub(super) fn wind(scenario: &Scenario) -> Wind {
    Wind::new(
        scenario.rider_wind_m_s(),
        scenario.conditions.wind_from_deg.value,
    )
}

/// What is tried, and on what.
pub(super) struct Trial<'a> {
    /// The scenario.
    pub scenario: &'a Scenario,
    /// The rows.
    pub rows: &'a [Observation],
    /// Whether Crr is estimated.
    pub rolling: Rolling,
    /// Along which a wind is fitted.
    pub axes: &'a [[f64; 2]],
    /// The drag area in every place without an error, m².
    pub cda_m2: Vec<f64>,
    /// What becomes of the wind.
    pub wind: WindForm,
    /// One standard deviation of the scale of speeds.
    pub speed_error_share: f64,
}

type Change = fn(&mut Scenario, f64);

/// What an error does to the drag area in every place, m², for each way in which it may go.
pub(super) struct Tried {
    field: String,
    sd: f64,
    moved: Vec<Vec<f64>>,
}

impl Tried {
    pub(super) fn new(field: &str, sd: f64, moved: Vec<Vec<f64>>) -> Self {
        Self {
            field: field.to_owned(),
            sd,
            moved,
        }
    }

    /// Whether its input has an error at all.
    pub(super) fn is_uncertain(&self) -> bool {
        self.sd > 0.0
    }

    /// What it does to a figure at the most: around a loop a wind and its opposite do nearly the same, so that either side counts.
    fn most(&self, figure: impl Fn(&[f64]) -> f64) -> f64 {
        let worse = |most: f64, one: f64| if one.abs() > most.abs() { one } else { most };
        self.moved
            .iter()
            .map(|areas| figure(areas))
            .fold(0.0, worse)
    }
}

/// The common errors of a test.
pub(super) struct CommonErrors {
    tried: Vec<Tried>,
    first_m2: f64,
}

impl CommonErrors {
    /// What each does to the drag area of the first position.
    pub(super) fn shown(&self) -> Vec<CommonError> {
        let one = |tried: &Tried| CommonError {
            field: tried.field.clone(),
            sd: tried.sd,
            cda_share: tried.most(|areas| areas[0]) / self.first_m2,
        };
        let shown = self.tried.iter().map(one);
        shown.filter(|error| error.cda_share.is_finite()).collect()
    }

    /// What each leaves in the drag area in the second place less that in the first.
    pub(super) fn of_difference(&self, first: usize, second: usize) -> Vec<DifferenceError> {
        let one = |tried: &Tried| DifferenceError {
            field: tried.field.clone(),
            sd: tried.sd,
            cda_m2: tried.most(|areas| areas[second] - areas[first]),
        };
        self.tried.iter().map(one).collect()
    }
}

impl Trial<'_> {
    /// Every common error.
    pub(super) fn errors(&self) -> CommonErrors {
        let mut tried = self.of_scenario();
        let scenario = self.scenario;
        let meter = scenario
            .bike
            .power_meter_bias_share
            .unwrap_or(fields::POWER_METER_BIAS_SHARE.typical());
        tried.push(self.of_rig(
            "scenario.bike.power_meter_bias_share",
            meter.sd,
            |rig, by| {
                rig.power_scale += by;
            },
        ));
        tried.push(self.of_rig(
            "with.speed_error_share",
            self.speed_error_share,
            |rig, by| {
                rig.speed_scale += by;
            },
        ));
        let unsurveyed = |row: &Observation| match &row.seen {
            Seen::Stretch(sums) => sums.unsurveyed_m != 0.0,
            Seen::CoastDown(_) => true,
        };
        if self.rows.iter().any(unsurveyed) {
            tried.push(self.of_rig("with.runs.grade", GRADE_SD, |rig, by| {
                rig.grade_missed += by
            }));
        }
        tried.extend(self.of_wind());
        let whole = |tried: &Tried| tried.moved.iter().flatten().all(|area| area.is_finite());
        tried.retain(|tried| !tried.moved.is_empty() && whole(tried));
        CommonErrors {
            tried,
            first_m2: self.cda_m2[0],
        }
    }

    /// By how much the drag area in every place is larger with a rig than without an error, m²; NaN where there is none.
    pub(super) fn moved(&self, other: &Rig) -> Vec<f64> {
        let base = &self.cda_m2;
        match cda_m2(self.rows, self.rolling, self.axes, other) {
            Some(found) => found.iter().zip(base).map(|(with, m2)| with - m2).collect(),
            None => vec![f64::NAN; base.len()],
        }
    }

    /// What one standard deviation does, along the tangent.
    fn tangent(&self, field: &str, sd: f64, changed: impl Fn(f64) -> Rig) -> Tried {
        let [less, more] = [-TANGENT * sd, TANGENT * sd].map(|by| self.moved(&changed(by)));
        let slope = |(more, less): (&f64, &f64)| 0.5 * (more - less) / TANGENT;
        let moved = more.iter().zip(&less).map(slope).collect();
        Tried::new(field, sd, vec![moved])
    }

    fn of_rig(&self, field: &str, sd: f64, change: fn(&mut Rig, f64)) -> Tried {
        self.tangent(field, sd, |by| {
            let mut rig = rig(self.scenario);
            change(&mut rig, by);
            rig
        })
    }

    fn of_scenario(&self) -> Vec<Tried> {
        let (bike, day) = (&self.scenario.bike, &self.scenario.conditions);
        let mut inputs: Vec<(&str, f64, Change)> = vec![
            (
                "scenario.rider.total_mass_kg",
                self.scenario.rider.total_mass_kg.sd,
                |s, by| {
                    s.rider.total_mass_kg.value += by;
                },
            ),
            (
                "scenario.bike.drivetrain_efficiency",
                bike.drivetrain_efficiency.sd,
                |s, by| {
                    s.bike.drivetrain_efficiency.value += by;
                },
            ),
            (
                "scenario.conditions.temperature_c",
                day.temperature_c.sd,
                |s, by| {
                    s.conditions.temperature_c.value += by;
                },
            ),
            (
                "scenario.conditions.pressure_hpa",
                day.pressure_hpa
                    .map_or(PRESSURE_SD_HPA, |pressure| pressure.sd),
                |s, by| {
                    let here_hpa = 0.01 * s.course_pressure_pa();
                    match &mut s.conditions.pressure_hpa {
                        Some(pressure) => pressure.value += by,
                        unknown => {
                            *unknown = Some(Quantity::exact(here_hpa + by));
                            s.conditions.pressure_is = crate::scenario::PressureIs::Course;
                        }
                    }
                },
            ),
        ];
        if let Some(humidity) = day.relative_humidity {
            inputs.push((
                "scenario.conditions.relative_humidity",
                humidity.sd,
                |s, by| {
                    if let Some(humidity) = &mut s.conditions.relative_humidity {
                        humidity.value = (humidity.value + by).clamp(0.0, 1.0);
                    }
                },
            ));
        }
        if self.rolling == Rolling::Held {
            inputs.push((
                "scenario.bike.rolling_coefficient",
                bike.rolling_coefficient.sd,
                |s, by| s.bike.rolling_coefficient.value += by,
            ));
        }
        let one = |(field, sd, change): (&str, f64, Change)| {
            self.tangent(field, sd, |by| {
                let mut changed = self.scenario.clone();
                change(&mut changed, by);
                rig(&changed)
            })
        };
        inputs.into_iter().map(one).collect()
    }
}
