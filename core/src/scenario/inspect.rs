//! Every number of a scenario in turn: what checks, lists and moves them all is written once.

use super::{Scenario, StartForm};
use crate::bounds::{self, Field};
use crate::draws::Unsure;
use crate::quantity::{Known, Quantity};

/// Sees every number of a scenario that the table of bounds knows, with the position's index where it has one.
pub trait Inspect {
    /// One number.
    fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity);
}

impl Scenario {
    /// Shows every uncertain number to `inspect`, always in the same order.
    pub fn inspect(&mut self, inspect: &mut impl Inspect) {
        let mut see = |field: &'static Field, quantity: &mut Quantity| inspect.number(field, None, quantity);
        see(&bounds::TOTAL_MASS_KG, &mut self.rider.total_mass_kg);
        let bike = &mut self.bike;
        see(&bounds::ROLLING_COEFFICIENT, &mut bike.rolling_coefficient);
        see(&bounds::DRIVETRAIN_EFFICIENCY, &mut bike.drivetrain_efficiency);
        see(&bounds::ROTATING_MASS_KG, &mut bike.rotating_mass_kg);
        see(&bounds::BEARING_DRAG_N, &mut bike.bearing_drag_n);
        see(&bounds::BEARING_DRAG_N_S_PER_M, &mut bike.bearing_drag_n_s_per_m);
        see(&bounds::LAUNCH_FORCE_N, &mut bike.launch_force_n);
        see(&bounds::LATERAL_M_S2, &mut bike.lateral_m_s2);
        see(&bounds::BRAKING_M_S2, &mut bike.braking_m_s2);
        let power = &mut self.power;
        see(&bounds::CP_W, &mut power.cp_w);
        see(&bounds::W_PRIME_J, &mut power.w_prime_j);
        power.peak_w.iter_mut().for_each(|q| see(&bounds::PEAK_W, q));
        power.long_ride_loss_w.iter_mut().for_each(|q| see(&bounds::LONG_RIDE_LOSS_W, q));
        see(&bounds::LONG_RIDE_FROM_S, &mut power.long_ride_from_s);
        let course = &mut self.course;
        course.distance_m.iter_mut().for_each(|q| see(&bounds::DISTANCE_M, q));
        course.grade.iter_mut().for_each(|q| see(&bounds::GRADE, q));
        course.bearing_deg.iter_mut().for_each(|q| see(&bounds::BEARING_DEG, q));
        let day = &mut self.conditions;
        see(&bounds::TEMPERATURE_C, &mut day.temperature_c);
        day.pressure_hpa.iter_mut().for_each(|q| see(&bounds::PRESSURE_HPA, q));
        see(&bounds::ALTITUDE_M, &mut day.altitude_m);
        day.relative_humidity.iter_mut().for_each(|q| see(&bounds::RELATIVE_HUMIDITY, q));
        day.dew_point_c.iter_mut().for_each(|q| see(&bounds::DEW_POINT_C, q));
        see(&bounds::WIND_SPEED_M_S, &mut day.wind_speed_m_s);
        see(&bounds::WIND_FROM_DEG, &mut day.wind_from_deg);
        see(&bounds::WIND_HEIGHT_M, &mut day.wind_height_m);
        see(&bounds::RIDER_HEIGHT_M, &mut day.rider_height_m);
        day.roughness_length_m.iter_mut().for_each(|q| see(&bounds::ROUGHNESS_LENGTH_M, q));
        day.shelter_factor.iter_mut().for_each(|q| see(&bounds::SHELTER_FACTOR, q));
        day.latitude_deg.iter_mut().for_each(|q| see(&bounds::LATITUDE_DEG, q));
        if let StartForm::Speed(speed_m_s) = &mut self.start {
            see(&bounds::START_SPEED_M_S, speed_m_s);
        }
        see(&bounds::MODEL_ERROR_SHARE, &mut self.model_error_share);
        for (i, position) in self.positions.iter_mut().enumerate() {
            let mut see = |field: &'static Field, quantity: &mut Quantity| inspect.number(field, Some(i), quantity);
            see(&bounds::CDA_M2, &mut position.cda_m2);
            see(&bounds::CP_FACTOR, &mut position.cp_factor);
            see(&bounds::W_PRIME_FACTOR, &mut position.w_prime_factor);
            see(&bounds::SPEED_EXPONENT, &mut position.speed_exponent);
            see(&bounds::REFERENCE_AIRSPEED_M_S, &mut position.reference_airspeed_m_s);
            if let Some(fade) = &mut position.fade {
                see(&bounds::FADE_TIRED_CDA_M2, &mut fade.tired_cda_m2);
                see(&bounds::FADE_BEGINS_S, &mut fade.begins_s);
                see(&bounds::FADE_COMPLETE_S, &mut fade.complete_s);
            }
            if let Some(lapses) = &mut position.lapses {
                see(&bounds::LAPSES_SHARE, &mut lapses.share);
                see(&bounds::LAPSES_CDA_M2, &mut lapses.cda_m2);
            }
        }
    }

    /// The numbers that are not known exactly and can matter to a ride in one of `positions`, with their paths.
    pub fn unsure(&self, positions: &[usize]) -> Vec<Input> {
        struct Collect<'a> {
            positions: &'a [usize],
            inputs: Vec<Input>,
        }
        impl Inspect for Collect<'_> {
            fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity) {
                if matters(field, position, quantity, self.positions) {
                    let &mut Quantity { value, sd, source } = quantity;
                    let unsure = Unsure { value, sd, min: field.min, max: field.max };
                    self.inputs.push(Input { path: path(field, position), known: source, unsure });
                }
            }
        }
        let mut collect = Collect { positions, inputs: Vec::new() };
        self.clone().inspect(&mut collect);
        collect.inputs
    }

    /// Sets the numbers that [`Self::unsure`] lists, in its order.
    pub fn set_unsure(&mut self, positions: &[usize], values: &[f64]) {
        struct Set<'a> {
            positions: &'a [usize],
            values: std::slice::Iter<'a, f64>,
        }
        impl Inspect for Set<'_> {
            fn number(&mut self, field: &'static Field, position: Option<usize>, quantity: &mut Quantity) {
                if matters(field, position, quantity, self.positions)
                    && let Some(&value) = self.values.next()
                {
                    quantity.value = value;
                }
            }
        }
        self.inspect(&mut Set { positions, values: values.iter() });
    }
}

/// A number that is not known exactly, by its path in the request.
#[derive(Clone, Debug, PartialEq)]
pub struct Input {
    /// The path, such as `scenario.positions[0].cda_m2`.
    pub path: String,
    /// How it is known.
    pub known: Known,
    /// Its value and spread.
    pub unsure: Unsure,
}

/// Whether a number is unsure and moves a ride in one of these positions. The model's own error is kept apart.
fn matters(field: &Field, position: Option<usize>, quantity: &Quantity, positions: &[usize]) -> bool {
    quantity.sd > 0.0
        && position.is_none_or(|i| positions.contains(&i))
        && !std::ptr::eq(field, &raw const bounds::MODEL_ERROR_SHARE)
}

/// The path of a field in a request.
pub(super) fn path(field: &Field, position: Option<usize>) -> String {
    match position {
        Some(i) => format!("scenario.{}", field.key.replacen("positions", &format!("positions[{i}]"), 1)),
        None => format!("scenario.{}", field.key),
    }
}
