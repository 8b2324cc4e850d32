//! The physics' own structs, made from a scenario.

use std::rc::Rc;

use super::{
    AltitudeLoss, Conditions, CourseKind, Equipment, Lapse, Position, Power, PressureIs, Ridden,
    Scenario, StartForm, YawRow,
};
use crate::inputs::fields::{self, Field};
use crate::inputs::quantity::Quantity;
use crate::numerics::solve::within;
use crate::physics::air::{self, Ground, Moisture, Weather, Wind};
use crate::physics::course;
use crate::physics::position;
use crate::physics::resistance::{DragShape, Machine};
use crate::physiology::power_duration::{LongRide, PowerDuration};
use crate::riding::integrated::{Setup, Start};

impl Scenario {
    /// Altitude of the course, m: as given, else the mean elevation of its points along the road, else 0.
    pub fn altitude_m(&self) -> f64 {
        self.conditions
            .altitude_m
            .map(|q| q.value)
            .or(self.mean_elevation_m())
            .unwrap_or(fields::ALTITUDE_M.default)
    }

    /// Elevation of a profile's points, averaged along the road, m; `None` for a simple course.
    pub(super) fn mean_elevation_m(&self) -> Option<f64> {
        let points = match self.course.kind {
            CourseKind::Profile => &self.course.points,
            CourseKind::Simple => return None,
        };
        let length_m = points.last()?.distance_m - points.first()?.distance_m;
        let area = |pair: &[super::Point]| {
            0.5 * (pair[0].elevation_m + pair[1].elevation_m)
                * (pair[1].distance_m - pair[0].distance_m)
        };
        Some(points.windows(2).map(area).sum::<f64>() / length_m)
    }

    /// The altitude that a rider's breath knows, m: the course's own, or, where only a barometer on the spot tells, that at
    /// which the standard atmosphere has its pressure.
    pub(super) fn breathing_altitude_m(&self) -> f64 {
        let day = &self.conditions;
        match (
            day.altitude_m.map(|q| q.value).or(self.mean_elevation_m()),
            day.pressure_hpa,
            day.pressure_is,
        ) {
            (None, Some(hpa), PressureIs::Course) => air::standard_altitude_m(100.0 * hpa.value),
            (altitude_m, ..) => altitude_m.unwrap_or(fields::ALTITUDE_M.default),
        }
    }

    /// How strongly the power that is held in a position falls with altitude, as a share of the published loss; `None` where it
    /// does not. What the rider's own power says counts for every position's, unless tests of its own say so themselves.
    pub(super) fn altitude_response(&self, position: &Position) -> Option<f64> {
        let published = |power: &&Power| power.altitude_loss == AltitudeLoss::Published;
        let power = position
            .power
            .as_ref()
            .filter(published)
            .or(Some(&self.power).filter(published))?;
        Some(
            power
                .altitude_response
                .map_or(fields::ALTITUDE_RESPONSE.default, |q| q.value),
        )
    }

    /// Whether the wind is left out, because the rider chose so or because no point says which way the road leads.
    pub(super) fn leaves_wind_out(&self) -> bool {
        let course = &self.course;
        let directionless = course.kind == CourseKind::Profile
            && course
                .points
                .iter()
                .all(|point| point.bearing_deg.is_none());
        course.heading.is_some() || directionless
    }

    /// Pressure at the course, Pa.
    #[cfg(feature = "all")]
    pub(crate) fn course_pressure_pa(&self) -> f64 {
        self.course_pressure_on_pa(&self.conditions)
    }

    /// Pressure at the course on a day like this one, Pa.
    pub(super) fn course_pressure_on_pa(&self, day: &Conditions) -> f64 {
        match (day.pressure_hpa, day.pressure_is) {
            (None, _) => air::standard_pressure_pa(self.altitude_m()),
            (Some(hpa), PressureIs::Course) => 100.0 * hpa.value,
            (Some(hpa), PressureIs::SeaLevel) => air::course_pressure_pa(
                100.0 * hpa.value,
                self.altitude_m(),
                day.temperature_c.value,
            ),
        }
    }

    /// Density of the air at the course, kg/m³.
    pub fn density_kg_m3(&self) -> f64 {
        self.density_on_kg_m3(&self.conditions)
    }

    fn density_on_kg_m3(&self, day: &Conditions) -> f64 {
        let moisture = match (day.dew_point_c, day.relative_humidity) {
            (Some(dew_point), _) => {
                Moisture::DewPointC(dew_point.value.min(day.temperature_c.value))
            }
            (None, humidity) => Moisture::RelativeHumidity(
                humidity.map_or(fields::RELATIVE_HUMIDITY.default, |q| q.value),
            ),
        };
        air::density_kg_m3(
            day.temperature_c.value,
            self.course_pressure_on_pa(day),
            moisture,
        )
    }

    /// Wind at rider height, m/s, at the start.
    pub fn rider_wind_m_s(&self) -> f64 {
        match self.weather_change() {
            Some(change) => {
                let Wind {
                    from_north_m_s,
                    from_east_m_s,
                } = change.at(0.0).wind;
                from_north_m_s.hypot(from_east_m_s)
            }
            None => self.conditions.rider_wind_m_s(),
        }
    }

    pub(super) fn weather_on(&self, day: &Conditions) -> Weather {
        Weather {
            wind: Wind::new(day.rider_wind_m_s(), day.wind_from_deg.value),
            density_kg_m3: self.density_on_kg_m3(day),
        }
    }
}

impl Conditions {
    /// Wind at rider height, m/s.
    fn rider_wind_m_s(&self) -> f64 {
        let ground = match (self.shelter_factor, self.roughness_length_m) {
            (Some(share), _) => Ground::Shelter(share.value),
            (None, z0) => {
                Ground::RoughnessLengthM(z0.map_or(fields::ROUGHNESS_LENGTH_M.default, |q| q.value))
            }
        };
        self.wind_speed_m_s.value
            * air::wind_factor(ground, self.rider_height_m.value, self.wind_height_m.value)
    }
}

impl Scenario {
    /// The rider and bicycle as the physics takes them.
    pub fn machine(&self) -> Machine {
        let (bike, day) = (&self.bike, &self.conditions);
        Machine {
            total_mass_kg: self.rider.total_mass_kg.value,
            rotating_mass_kg: bike.rotating_mass_kg.value,
            rolling_coefficient: bike.rolling_coefficient.value,
            drivetrain_efficiency: bike.drivetrain_efficiency.value
                / (1.0 + self.power_meter_bias_share()),
            bearing_drag_n: bike.bearing_drag_n.value,
            bearing_drag_n_s_per_m: bike.bearing_drag_n_s_per_m.value,
            launch_force_n: bike.launch_force_n.value,
            lateral_m_s2: bike.lateral_m_s2.value,
            braking_m_s2: bike.braking_m_s2.value,
            gravity_m_s2: day
                .latitude_deg
                .map_or(air::STANDARD_GRAVITY_M_S2, |latitude| {
                    air::gravity_m_s2(latitude.value, self.altitude_m())
                }),
        }
    }

    /// The course as the physics takes it.
    pub fn course(&self) -> course::Course {
        let course = &self.course;
        let or =
            |quantity: Option<Quantity>, field: &Field| quantity.map_or(field.default, |q| q.value);
        let road = match course.kind {
            CourseKind::Simple => {
                let straight = course::Course::simple(
                    or(course.distance_m, &fields::DISTANCE_M),
                    or(course.grade, &fields::GRADE),
                    or(course.bearing_deg, &fields::BEARING_DEG),
                    course.out_and_back.unwrap_or(false),
                );
                match course.turn_radius_m {
                    Some(radius_m) => straight.turning(radius_m.value),
                    None => straight,
                }
            }
            CourseKind::Profile => {
                // Before the first bearing the road leads as it does there; after it, as it last did.
                let mut bearing_deg = course
                    .points
                    .iter()
                    .find_map(|point| point.bearing_deg)
                    .unwrap_or(0.0);
                let points: Vec<course::Point> = course
                    .points
                    .iter()
                    .map(|p| {
                        bearing_deg = p.bearing_deg.unwrap_or(bearing_deg);
                        course::Point {
                            distance_m: p.distance_m,
                            elevation_m: p.elevation_m,
                            bearing_deg,
                            radius_m: p.radius_m,
                            wind_share: p.wind_share.unwrap_or(fields::POINT_WIND_SHARE.default),
                        }
                    })
                    .collect();
                course::Course::profile(&points)
            }
        };
        // A stretch has the weather of its middle: in two minutes it changes little.
        const WEATHER_STAYS_FOR_M: f64 = 1000.0;
        let road = if self.weather_change().is_some() {
            road.in_pieces(WEATHER_STAYS_FOR_M)
        } else {
            road
        };
        if self.leaves_wind_out() {
            road.without_headings()
        } else {
            road
        }
    }

    /// By what share the power meter reads high: every watt of a ride is the meter's as soon as something was measured with it,
    /// so that less reaches the road than it says. 0 where nothing was.
    fn power_meter_bias_share(&self) -> f64 {
        self.bike
            .power_meter_bias_share
            .filter(|_| self.is_metered())
            .map_or(0.0, |q| q.value)
    }

    /// The true drag area over that which the power meter gave: where a test at `v` found `CdA` from the meter's power, the air
    /// took `(F_air + F_roll)/(1 + bias) − F_roll`, with `F = ½ρ CdA v²` and `m g Crr`. The test's speed is assumed, 11 m/s on
    /// the flat. 1 for a drag area that was not measured.
    fn true_drag_share(&self, position: &Position) -> f64 {
        const TESTED_AT_M_S: f64 = 11.0;
        let bias_share = self.power_meter_bias_share();
        if bias_share == 0.0 || !position.cda_m2.is_measured() {
            return 1.0;
        }
        let machine = self.machine();
        let rolling_n = machine.total_mass_kg * machine.gravity_m_s2 * machine.rolling_coefficient;
        let air_n = 0.5 * self.density_kg_m3() * position.cda_m2.value * TESTED_AT_M_S.powi(2);
        // The most that is believed of a bias still leaves some drag.
        const LEAST: f64 = 0.1;
        (((air_n + rolling_n) / (1.0 + bias_share) - rolling_n) / air_n).max(LEAST)
    }

    /// The ride in one of the positions as it is worn, on a course that has been made already. `None` for an index without a
    /// position.
    pub fn setup_on(&self, position: usize, course: Rc<course::Course>) -> Option<Setup> {
        let worn = self.positions.get(position)?.worn;
        self.setup_in(Ridden { position, worn }, course)
    }

    /// The ride in one of the positions with a piece of its equipment, on a course that has been made already. `None` for
    /// indices without a position or a piece.
    pub fn setup_in(&self, ridden: Ridden, course: Rc<course::Course>) -> Option<Setup> {
        let position = self.positions.get(ridden.position)?;
        let worn = match ridden.worn {
            Some(worn) => Some(position.equipment.get(worn)?),
            None => None,
        };
        let power = match &position.power {
            Some(power) => power.physical(),
            None => self
                .power
                .physical()
                .scaled(position.cp_factor.value, position.w_prime_factor.value),
        };
        let power = match self.altitude_response(position) {
            Some(response) => power.at_altitude(self.breathing_altitude_m(), response),
            None => power,
        };
        let mut machine = self.machine();
        if let Some(worn) = worn {
            let lighter_or_heavier_kg = worn.mass_change_kg.map_or(0.0, |q| q.value);
            machine.total_mass_kg =
                (machine.total_mass_kg + lighter_or_heavier_kg).max(fields::TOTAL_MASS_KG.min);
            machine.lateral_m_s2 = worn.lateral_m_s2.map_or(machine.lateral_m_s2, |q| q.value);
        }
        let weather_change = self.weather_change();
        let start = weather_change.map_or_else(
            || self.weather_on(&self.conditions),
            |change| change.at(0.0),
        );
        let held = position.physical(worn);
        #[cfg(feature = "all")]
        let held = self.fed(held, position.drag_scale);
        Some(Setup {
            machine,
            position: held.times(self.true_drag_share(position)),
            course,
            density_kg_m3: start.density_kg_m3,
            wind: start.wind,
            weather_change,
            start: match self.start {
                StartForm::Standing => Start::Standing,
                StartForm::Rolling => Start::Rolling,
                StartForm::Speed(speed) => Start::Speed(speed.value),
            },
            #[cfg(feature = "all")]
            stops: self.stops_on_the_way(),
            power,
        })
    }
}

impl Power {
    /// The power–duration relation as the physics takes it.
    pub fn physical(&self) -> PowerDuration {
        PowerDuration {
            cp_w: self.cp_w.value,
            w_prime_j: self.w_prime_j.value,
            peak_w: self.peak_w.map(|q| q.value.max(self.cp_w.value * 1.001)),
            long_ride: self.long_ride_loss().map(|loss_w| LongRide {
                loss_w,
                from_s: self.long_ride_from_s.value,
            }),
        }
    }

    /// Watts lost for each e-fold of time in long rides.
    fn long_ride_loss(&self) -> Option<f64> {
        let share_w = self
            .long_ride_loss_share
            .map(|share| share.value * self.cp_w.value);
        share_w.or(self.long_ride_loss_w.map(|loss| loss.value))
    }
}

impl Position {
    /// The position as the physics takes it, with a piece of equipment or as it was measured.
    pub fn physical(&self, worn: Option<&Equipment>) -> position::Position {
        let change_m2 = worn
            .and_then(|worn| worn.cda_change_m2)
            .map_or(0.0, |q| q.value);
        let changed =
            |cda_m2: f64| within(cda_m2 + change_m2, fields::CDA_M2.min, fields::CDA_M2.max);
        let own_lapses = worn
            .map(|worn| &worn.lapses)
            .filter(|lapses| !lapses.is_empty());
        let yaw_table = worn
            .map(|worn| &worn.yaw_table)
            .filter(|rows| !rows.is_empty())
            .unwrap_or(&self.yaw_table);
        position::Position {
            cda_m2: changed(self.cda_m2.value),
            shape: DragShape {
                yaw_table: yaw_table
                    .iter()
                    .map(|&YawRow { yaw_deg, ratio }| (yaw_deg, ratio))
                    .collect(),
                speed_exponent: self.speed_exponent.value,
                reference_airspeed_m_s: self.reference_airspeed_m_s.value,
            },
            cp_factor: self.cp_factor.value,
            w_prime_factor: self.w_prime_factor.value,
            fade: self.fade().map(|fade| position::Fade {
                tired_cda_m2: changed(fade.tired_cda_m2),
                ..fade
            }),
            lapses: match own_lapses {
                Some(own) => together(own, self.drag_scale),
                None => together(&self.lapses, self.drag_scale).map(|all| position::Lapses {
                    cda_m2: changed(all.cda_m2),
                    ..all
                }),
            },
            feeding: None,
        }
    }

    fn fade(&self) -> Option<position::Fade> {
        if let Some(test) = &self.fade_test {
            // From the middle of the first third to that of the last are two thirds of the test.
            let rise_m2 = 1.5
                * self.drag_scale
                * (test.last_third_cda_m2.value - test.first_third_cda_m2.value);
            let tired_cda_m2 = self.cda_m2.value + rise_m2;
            return Some(position::Fade {
                tired_cda_m2,
                begins_s: 0.0,
                complete_s: test.test_s.value,
            });
        }
        self.fade.as_ref().map(|fade| position::Fade {
            tired_cda_m2: self.drag_scale * fade.tired_cda_m2.value,
            begins_s: fade.begins_s.value,
            // Draws may cross.
            complete_s: fade.complete_s.value.max(fade.begins_s.value),
        })
    }
}

/// Kinds of lapse as one: they are all spread evenly over the ride, so only their common share and their mean count.
fn together(lapses: &[Lapse], drag_scale: f64) -> Option<position::Lapses> {
    if lapses.is_empty() {
        return None;
    }
    let share: f64 = lapses.iter().map(|lapse| lapse.share.value).sum();
    let area: f64 = lapses
        .iter()
        .map(|lapse| lapse.share.value * lapse.cda_m2.value)
        .sum();
    let plain_mean =
        lapses.iter().map(|lapse| lapse.cda_m2.value).sum::<f64>() / lapses.len() as f64;
    // Draws may come to more than the whole time.
    let mean_m2 = if share > 0.0 {
        area / share
    } else {
        plain_mean
    };
    Some(position::Lapses {
        share: share.min(1.0),
        cda_m2: drag_scale * mean_m2,
    })
}
