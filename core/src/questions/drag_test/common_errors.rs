//! Which inputs of the scenario a whole test has in common, and what each does to its drag area.

use super::answer::CommonError;
use super::with::WindForm;
use crate::inputs::fields;
use crate::inputs::quantity::Quantity;
use crate::measuring::common::{TANGENT, cda_share};
use crate::measuring::estimate::{Observation, Rolling};
use crate::measuring::rig::Rig;
use crate::physics::air::Wind;
use crate::scenario::Scenario;

/// The air's pressure on a day that nobody looked it up, hPa; assumed.
const PRESSURE_SD_HPA: f64 = 8.0;
/// A grade that is easily missed: one metre in a kilometre; assumed.
const GRADE_SD: f64 = 0.001;
/// A wind that is hardly felt, m/s; assumed.
const SLIGHT_WIND_M_S: f64 = 0.5;

/// Rider, bicycle and air of a test. The power meter's bias is no part of it: the scenario keeps drag areas as the meter gave
/// them and counts its bias for them all.
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
    /// The drag area of the first position without an error, m².
    pub cda_m2: f64,
    /// What becomes of the wind, if laps follow it.
    pub wind: Option<WindForm>,
    /// One standard deviation of the scale of speeds.
    pub speed_error_share: f64,
    /// Whether no row has been ridden yet, so that roads and winds are tried as well.
    pub planned: bool,
}

type Change = fn(&mut Scenario, f64);

impl Trial<'_> {
    /// Every common error.
    pub(super) fn errors(&self) -> Vec<CommonError> {
        let mut found = self.of_scenario();
        let scenario = self.scenario;
        let meter = scenario
            .bike
            .power_meter_bias_share
            .unwrap_or(fields::POWER_METER_BIAS_SHARE.typical());
        found.push(self.of_rig(
            "scenario.bike.power_meter_bias_share",
            meter.sd,
            |rig, by| {
                rig.power_scale += by;
            },
        ));
        found.push(self.of_rig(
            "with.speed_error_share",
            self.speed_error_share,
            |rig, by| {
                rig.speed_scale += by;
            },
        ));
        if self.planned {
            found.push(self.of_rig("with.runs.grade", GRADE_SD, |rig, by| {
                rig.grade_missed += by
            }));
        }
        found.extend(self.of_wind());
        found.retain(|error| error.cda_share.is_finite());
        found
    }

    /// By what share the drag area is larger with a rig than without an error.
    fn share(&self, other: &Rig) -> f64 {
        cda_share(self.rows, self.rolling, self.axes, self.cda_m2, other).unwrap_or(f64::NAN)
    }

    /// What one standard deviation does, along the tangent.
    fn tangent(&self, field: &str, sd: f64, moved: impl Fn(f64) -> Rig) -> CommonError {
        let [less, more] = [-TANGENT * sd, TANGENT * sd].map(|by| self.share(&moved(by)));
        CommonError {
            field: field.to_owned(),
            sd,
            cda_share: 0.5 * (more - less) / TANGENT,
        }
    }

    fn of_rig(&self, field: &str, sd: f64, change: fn(&mut Rig, f64)) -> CommonError {
        self.tangent(field, sd, |by| {
            let mut rig = rig(self.scenario);
            change(&mut rig, by);
            rig
        })
    }

    fn of_scenario(&self) -> Vec<CommonError> {
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

    /// What a wind would do that is not as it was taken: of given ones their own errors, of an ignored one 1 m/s from the worst
    /// direction, of planned runs a slight one from ahead.
    fn of_wind(&self) -> Vec<CommonError> {
        let day = &self.scenario.conditions;
        let shifted = |added: [f64; 2]| {
            let mut rig = rig(self.scenario);
            rig.wind_added = added;
            rig
        };
        // Of either side the one that does more: around a loop a wind and its opposite do nearly the same.
        let error = |field: &str, sd: f64, [less, more]: [Rig; 2]| {
            let (less, more) = (-self.share(&less), self.share(&more));
            CommonError {
                field: field.to_owned(),
                sd,
                cda_share: if less.abs() > more.abs() { less } else { more },
            }
        };
        let base = wind(self.scenario);
        let from_given = |speed_by: f64, from_by: f64| {
            let mut changed = self.scenario.clone();
            changed.conditions.wind_speed_m_s.value =
                (changed.conditions.wind_speed_m_s.value + speed_by).max(0.0);
            changed.conditions.wind_from_deg.value += from_by;
            let blown = wind(&changed);
            shifted([
                blown.from_north_m_s - base.from_north_m_s,
                blown.from_east_m_s - base.from_east_m_s,
            ])
        };
        match self.wind {
            Some(WindForm::Given) => {
                let (speed, from) = (day.wind_speed_m_s.sd, day.wind_from_deg.sd);
                vec![
                    error(
                        "scenario.conditions.wind_speed_m_s",
                        speed,
                        [from_given(-speed, 0.0), from_given(speed, 0.0)],
                    ),
                    error(
                        "scenario.conditions.wind_from_deg",
                        from,
                        [from_given(0.0, -from), from_given(0.0, from)],
                    ),
                ]
            }
            Some(WindForm::Ignore) => {
                const DIRECTIONS: usize = 8;
                let of = |i: usize| {
                    let angle = std::f64::consts::TAU * i as f64 / DIRECTIONS as f64;
                    self.share(&shifted([angle.cos(), angle.sin()]))
                };
                let worst = (0..DIRECTIONS).map(of).fold(0.0, |worst: f64, share| {
                    if share.abs() > worst.abs() {
                        share
                    } else {
                        worst
                    }
                });
                vec![CommonError {
                    field: "scenario.conditions.wind_speed_m_s".to_owned(),
                    sd: 1.0,
                    cda_share: worst,
                }]
            }
            _ if self.planned => {
                let wind_m_s = SLIGHT_WIND_M_S;
                let rigs = [[-wind_m_s, 0.0], [wind_m_s, 0.0]].map(shifted);
                vec![error("with.runs.wind_head_m_s", wind_m_s, rigs)]
            }
            _ => Vec::new(),
        }
    }
}
