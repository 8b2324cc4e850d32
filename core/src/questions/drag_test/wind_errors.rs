//! What a wind does to a test that is not as it was taken: the error that laps and runs have in common by it.

use super::common_errors::{Trial, Tried, rig, wind};
use super::with::WindForm;
use crate::inputs::fields;
use crate::measuring::estimate::{Observation, Seen};
use crate::measuring::lap::Sums;
use crate::measuring::rig::Rig;
use crate::scenario::{Scenario, WindIs};

/// The wind that is tried where none is taken, m/s at the height of the rider: one that is felt, and easily called calm; assumed.
const UNNOTICED_M_S: f64 = 1.0;
/// By how much a wind that was given for a lap or a run may be off, m/s: a wind that is hardly felt; assumed.
const GIVEN_ERROR_M_S: f64 = 0.5;
/// A wind from any direction is tried from so many.
const DIRECTIONS: usize = 8;

/// The path of the wind's speed.
pub(super) const WIND_SPEED: &str = "scenario.conditions.wind_speed_m_s";

impl Trial<'_> {
    /// Of the scenario's wind its own errors; of a calm that nobody measured, and of a wind that is left out, 1 m/s from the worst
    /// direction; of what was given for a lap or a run, half as much.
    pub(super) fn of_wind(&self) -> Vec<Tried> {
        let stretch = |of: &dyn Fn(&Sums) -> bool| {
            let told = |row: &Observation| matches!(&row.seen, Seen::Stretch(sums) if of(sums));
            self.rows.iter().any(told)
        };
        let shared = stretch(&|sums| sums.has_headings() && !sums.own_wind);
        let own = stretch(&|sums| sums.has_headings() && sums.own_wind);
        let coasted = |row: &Observation| matches!(row.seen, Seen::CoastDown(_));
        let unknown_way = stretch(&|sums| sums.air_by_head != 0.0) || self.rows.iter().any(coasted);
        let mut tried = Vec::new();
        match self.wind {
            WindForm::Given if shared => tried.extend(self.of_scenario_wind()),
            WindForm::Ignore if shared => tried.push(self.any_direction(WIND_SPEED, UNNOTICED_M_S)),
            _ => {}
        }
        if own {
            let moved =
                self.all_directions(GIVEN_ERROR_M_S, |rig, added| rig.own_wind_added = added);
            tried.push(Tried::new(
                "with.laps.wind_speed_m_s",
                GIVEN_ERROR_M_S,
                moved,
            ));
        }
        if unknown_way {
            let sd = match self.wind {
                WindForm::Ignore => UNNOTICED_M_S,
                _ => GIVEN_ERROR_M_S,
            };
            let moved = [-sd, sd].map(|head_m_s| {
                let mut rig = rig(self.scenario);
                rig.head_added_m_s = head_m_s;
                self.moved(&rig)
            });
            tried.push(Tried::new("with.runs.wind_head_m_s", sd, upward(moved)));
        }
        tried
    }

    /// The scenario's wind, with what a forecast leaves open.
    fn of_scenario_wind(&self) -> Vec<Tried> {
        let day = self.scenario.conditions.clone().with_forecast_uncertainty();
        let (speed, from) = (day.wind_speed_m_s, day.wind_from_deg);
        if speed.value == 0.0 {
            // The share of it that reaches the rider is that of any wind.
            let blown = self.shifted(|changed| changed.conditions.wind_speed_m_s.value = speed.sd);
            let known_m_s = blown[0].hypot(blown[1]);
            return match (day.wind_is, speed.sd > 0.0) {
                (_, true) => vec![self.any_direction(WIND_SPEED, known_m_s)],
                (WindIs::Forecast, false) => vec![self.any_direction(WIND_SPEED, UNNOTICED_M_S)],
                (WindIs::Roadside, false) => Vec::new(),
            };
        }
        let either = |field: &str, sd: f64, change: fn(&mut Scenario, f64)| {
            let moved = [-sd, sd].map(|by| {
                let mut rig = rig(self.scenario);
                rig.wind_added = self.shifted(|changed| change(changed, by));
                self.moved(&rig)
            });
            Tried::new(field, sd, upward(moved))
        };
        let mut tried = vec![
            either(WIND_SPEED, speed.sd, |changed, by| {
                let speed = &mut changed.conditions.wind_speed_m_s.value;
                *speed = (*speed + by).max(0.0);
            }),
            either(
                "scenario.conditions.wind_from_deg",
                from.sd,
                |changed, by| {
                    changed.conditions.wind_from_deg.value += by;
                },
            ),
        ];
        if let Some(shelter) = day.shelter_factor {
            tried.push(either(
                "scenario.conditions.shelter_factor",
                shelter.sd,
                |changed, by| {
                    if let Some(shelter) = &mut changed.conditions.shelter_factor {
                        shelter.value = (shelter.value + by).max(0.0);
                    }
                },
            ));
        }
        if let Some(roughness) = day
            .roughness_length_m
            .filter(|_| day.shelter_factor.is_none())
        {
            tried.push(either(
                "scenario.conditions.roughness_length_m",
                roughness.sd,
                |changed, by| {
                    let field = &fields::ROUGHNESS_LENGTH_M;
                    let changed = &mut changed.conditions.roughness_length_m;
                    let length = changed.get_or_insert(field.chosen());
                    length.value = (length.value + by).clamp(field.min, field.max);
                },
            ));
        }
        tried.retain(|tried| tried.is_uncertain());
        tried
    }

    /// By how much the wind at the height of the rider is another in a changed scenario, from north and from east, m/s.
    fn shifted(&self, change: impl Fn(&mut Scenario)) -> [f64; 2] {
        let mut changed = self.scenario.clone();
        change(&mut changed);
        let (base, blown) = (wind(self.scenario), wind(&changed));
        [
            blown.from_north_m_s - base.from_north_m_s,
            blown.from_east_m_s - base.from_east_m_s,
        ]
    }

    /// A wind that stretches share, from any direction.
    fn any_direction(&self, field: &str, wind_m_s: f64) -> Tried {
        let moved = self.all_directions(wind_m_s, |rig, added| rig.wind_added = added);
        Tried::new(field, wind_m_s, moved)
    }

    fn all_directions(&self, wind_m_s: f64, change: fn(&mut Rig, [f64; 2])) -> Vec<Vec<f64>> {
        let of = |i: usize| {
            let angle = std::f64::consts::TAU * i as f64 / DIRECTIONS as f64;
            let mut rig = rig(self.scenario);
            change(&mut rig, [wind_m_s * angle.cos(), wind_m_s * angle.sin()]);
            self.moved(&rig)
        };
        (0..DIRECTIONS).map(of).collect()
    }
}

/// What less and more of an input do, both as what more of it does.
fn upward([less, more]: [Vec<f64>; 2]) -> Vec<Vec<f64>> {
    vec![more, less.iter().map(|area| -area).collect()]
}
