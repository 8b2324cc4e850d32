//! Every number of a scenario in turn: what checks, lists and moves them all is written once.

use super::{AltitudeLoss, Course, Lapse, Power, Roads, Scenario, StartForm};
use crate::inputs::fields::{self, Field};
use crate::inputs::quantity::{Known, Quantity};
use crate::uncertainty::draws::UncertainInput;

/// Where in a scenario a number stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Place {
    /// The event, if it is of the course that this one has of its own.
    pub event: Option<usize>,
    /// The position, if it is a position's.
    pub position: Option<usize>,
    /// The piece of equipment, if it is that one's.
    pub equipment: Option<usize>,
    /// The kind of lapse, if it is a lapse's.
    pub lapse: Option<usize>,
}

impl Place {
    /// The path of a field that stands here.
    pub fn path(self, field: &Field) -> String {
        if let Some(event) = self.event {
            return format!("scenario.events[{event}].{}", field.key);
        }
        let Some(position) = self.position else {
            return format!("scenario.{}", field.key);
        };
        // Power tests of the position's own go by the same fields as the rider's.
        let within = field.key.strip_prefix("positions.").unwrap_or(field.key);
        let last = within.rsplit('.').next().unwrap_or(within);
        let step =
            |name: &str, at: Option<usize>| at.map_or(String::new(), |at| format!("{name}[{at}]."));
        let outer = self.equipment.is_none() && self.lapse.is_none();
        let (equipment, lapse) = (
            step("equipment", self.equipment),
            step("lapses", self.lapse),
        );
        format!(
            "scenario.positions[{position}].{equipment}{lapse}{}",
            if outer { within } else { last }
        )
    }
}

/// A position as it is ridden: with a piece of its equipment, or as it was measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ridden {
    /// The position, by its place.
    pub position: usize,
    /// What is worn, by its place in the position's equipment.
    pub worn: Option<usize>,
}

/// Sees every number of a scenario that the table of bounds knows, and where it stands.
pub trait Inspect {
    /// One number.
    fn number(&mut self, field: &'static Field, place: Place, quantity: &mut Quantity);
}

impl Scenario {
    /// Shows every uncertain number to `inspect`, always in the same order.
    pub fn inspect(&mut self, inspect: &mut dyn Inspect) {
        let here = Place::default();
        let mut see =
            |field: &'static Field, quantity: &mut Quantity| inspect.number(field, here, quantity);
        see(&fields::TOTAL_MASS_KG, &mut self.rider.total_mass_kg);
        let bike = &mut self.bike;
        see(&fields::ROLLING_COEFFICIENT, &mut bike.rolling_coefficient);
        see(
            &fields::DRIVETRAIN_EFFICIENCY,
            &mut bike.drivetrain_efficiency,
        );
        see(&fields::ROTATING_MASS_KG, &mut bike.rotating_mass_kg);
        see(&fields::BEARING_DRAG_N, &mut bike.bearing_drag_n);
        see(
            &fields::BEARING_DRAG_N_S_PER_M,
            &mut bike.bearing_drag_n_s_per_m,
        );
        see(&fields::LAUNCH_FORCE_N, &mut bike.launch_force_n);
        see(&fields::LATERAL_M_S2, &mut bike.lateral_m_s2);
        see(&fields::BRAKING_M_S2, &mut bike.braking_m_s2);
        bike.power_meter_bias_share
            .iter_mut()
            .for_each(|q| see(&fields::POWER_METER_BIAS_SHARE, q));
        inspect_power(&mut self.power, here, inspect);
        let event = self.event_of_course();
        inspect_course(&mut self.course, event, inspect);
        let mut see =
            |field: &'static Field, quantity: &mut Quantity| inspect.number(field, here, quantity);
        let day = &mut self.conditions;
        see(&fields::TEMPERATURE_C, &mut day.temperature_c);
        day.pressure_hpa
            .iter_mut()
            .for_each(|q| see(&fields::PRESSURE_HPA, q));
        day.altitude_m
            .iter_mut()
            .for_each(|q| see(&fields::ALTITUDE_M, q));
        day.relative_humidity
            .iter_mut()
            .for_each(|q| see(&fields::RELATIVE_HUMIDITY, q));
        day.dew_point_c
            .iter_mut()
            .for_each(|q| see(&fields::DEW_POINT_C, q));
        see(&fields::WIND_SPEED_M_S, &mut day.wind_speed_m_s);
        see(&fields::WIND_FROM_DEG, &mut day.wind_from_deg);
        see(&fields::WIND_HEIGHT_M, &mut day.wind_height_m);
        see(&fields::RIDER_HEIGHT_M, &mut day.rider_height_m);
        day.roughness_length_m
            .iter_mut()
            .for_each(|q| see(&fields::ROUGHNESS_LENGTH_M, q));
        day.shelter_factor
            .iter_mut()
            .for_each(|q| see(&fields::SHELTER_FACTOR, q));
        day.latitude_deg
            .iter_mut()
            .for_each(|q| see(&fields::LATITUDE_DEG, q));
        if let StartForm::Speed(speed_m_s) = &mut self.start {
            see(&fields::START_SPEED_M_S, speed_m_s);
        }
        #[cfg(feature = "all")]
        self.inspect_stops(inspect);
        inspect.number(
            &fields::MODEL_ERROR_SHARE,
            here,
            &mut self.model_error_share,
        );
        for (i, position) in self.positions.iter_mut().enumerate() {
            let place = Place {
                position: Some(i),
                ..here
            };
            let mut see = |field: &'static Field, quantity: &mut Quantity| {
                inspect.number(field, place, quantity)
            };
            see(&fields::CDA_M2, &mut position.cda_m2);
            see(&fields::CP_FACTOR, &mut position.cp_factor);
            see(&fields::W_PRIME_FACTOR, &mut position.w_prime_factor);
            see(&fields::SPEED_EXPONENT, &mut position.speed_exponent);
            see(
                &fields::REFERENCE_AIRSPEED_M_S,
                &mut position.reference_airspeed_m_s,
            );
            if let Some(fade) = &mut position.fade {
                see(&fields::FADE_TIRED_CDA_M2, &mut fade.tired_cda_m2);
                see(&fields::FADE_BEGINS_S, &mut fade.begins_s);
                see(&fields::FADE_COMPLETE_S, &mut fade.complete_s);
            }
            if let Some(test) = &mut position.fade_test {
                see(
                    &fields::FADE_TEST_FIRST_THIRD_CDA_M2,
                    &mut test.first_third_cda_m2,
                );
                see(
                    &fields::FADE_TEST_LAST_THIRD_CDA_M2,
                    &mut test.last_third_cda_m2,
                );
                see(&fields::FADE_TEST_S, &mut test.test_s);
            }
            if let Some(power) = &mut position.power {
                inspect_power(power, place, inspect);
            }
            inspect_lapses(&mut position.lapses, place, inspect);
            for (worn, option) in position.equipment.iter_mut().enumerate() {
                let place = Place {
                    equipment: Some(worn),
                    ..place
                };
                let mut see = |field: &'static Field, quantity: &mut Option<Quantity>| {
                    quantity
                        .iter_mut()
                        .for_each(|q| inspect.number(field, place, q));
                };
                see(&fields::EQUIPMENT_CDA_CHANGE_M2, &mut option.cda_change_m2);
                see(
                    &fields::EQUIPMENT_MASS_CHANGE_KG,
                    &mut option.mass_change_kg,
                );
                see(&fields::LATERAL_M_S2, &mut option.lateral_m_s2);
                inspect_lapses(&mut option.lapses, place, inspect);
            }
        }
        #[cfg(feature = "all")]
        for (i, event) in self.events.iter_mut().enumerate() {
            if let Some(course) = &mut event.course {
                inspect_course(course, Some(i), inspect);
            }
        }
    }

    /// The positions of these places as they are ridden: with what is worn in them.
    pub fn as_worn(&self, positions: &[usize]) -> Vec<Ridden> {
        let worn = |position: usize| {
            self.positions
                .get(position)
                .and_then(|position| position.worn)
        };
        positions
            .iter()
            .map(|&position| Ridden {
                position,
                worn: worn(position),
            })
            .collect()
    }

    /// The numbers that are not known exactly and can matter to one of these rides, with their paths.
    pub fn uncertain_inputs(&self, rides: &[Ridden]) -> Vec<Input> {
        struct Collect<'a> {
            scenario: &'a Scenario,
            rides: &'a [Ridden],
            inputs: Vec<Input>,
        }
        impl Inspect for Collect<'_> {
            fn number(&mut self, field: &'static Field, place: Place, quantity: &mut Quantity) {
                if !self.scenario.matters(field, place, quantity, self.rides)
                    || self.scenario.cancels(field)
                {
                    return;
                }
                let path = place.path(field);
                // W′ follows critical power in the order of inspection.
                let before = self
                    .inputs
                    .last()
                    .and_then(|input| input.path.strip_suffix("cp_w"));
                let together =
                    before.is_some_and(|before| path.strip_prefix(before) == Some("w_prime_j"));
                let correlation = if together {
                    self.scenario.correlation(place)
                } else {
                    0.0
                };
                let &mut Quantity { value, sd, source } = quantity;
                let (min, max) = self.scenario.drawn_between(field, place, value);
                let uncertain = UncertainInput {
                    value,
                    sd,
                    min,
                    max,
                    correlation,
                };
                self.inputs.push(Input {
                    path,
                    known: source,
                    uncertain,
                });
            }
        }
        let mut collect = Collect {
            scenario: self,
            rides,
            inputs: Vec::new(),
        };
        self.clone().inspect(&mut collect);
        collect.inputs
    }

    /// How the errors of critical power and W′ go together where they stand.
    fn correlation(&self, place: Place) -> f64 {
        let own = place
            .position
            .and_then(|i| self.positions.get(i))
            .and_then(|position| position.power.as_ref());
        own.unwrap_or(&self.power).cp_w_prime_correlation
    }

    /// The range that a number is drawn from: its field's, but a drag area when tired or in a lapse stays on its side of the
    /// fresh one, since the rise is what is uncertain.
    fn drawn_between(&self, field: &'static Field, place: Place, value: f64) -> (f64, f64) {
        let is = |other: &'static Field| std::ptr::eq(field, other);
        let fresh = place
            .position
            .and_then(|position| self.positions.get(position))
            .map(|p| p.cda_m2.value);
        match fresh.filter(|_| is(&fields::FADE_TIRED_CDA_M2) || is(&fields::LAPSES_CDA_M2)) {
            Some(fresh_m2) if value >= fresh_m2 => (fresh_m2, field.max),
            Some(fresh_m2) => (field.min, fresh_m2),
            None => (field.min, field.max),
        }
    }

    /// Whether a number is uncertain and moves one of these rides. The model's own error is kept apart.
    fn matters(&self, field: &Field, place: Place, quantity: &Quantity, rides: &[Ridden]) -> bool {
        let ridden = |position: usize| {
            rides.iter().any(|ride| {
                ride.position == position
                    && (place.equipment.is_none() || ride.worn == place.equipment)
            })
        };
        quantity.sd > 0.0
            && place.position.is_none_or(ridden)
            && (place.event.is_none() || self.roads != Roads::Usual)
            && !std::ptr::eq(field, &raw const fields::MODEL_ERROR_SHARE)
    }

    /// Whether a number has no effect here whatever it is: a power meter's bias where nothing was measured.
    fn cancels(&self, field: &'static Field) -> bool {
        std::ptr::eq(field, &raw const fields::POWER_METER_BIAS_SHARE) && !self.is_metered()
    }

    /// Whether any power or drag area was measured with the power meter, so that watts are the meter's.
    pub fn is_metered(&self) -> bool {
        let powers = self
            .positions
            .iter()
            .filter_map(|position| position.power.as_ref())
            .chain([&self.power]);
        let mut quantities = powers
            .map(|power| &power.cp_w)
            .chain(self.positions.iter().map(|p| &p.cda_m2));
        quantities.any(|quantity| quantity.is_measured())
    }

    /// Sets the numbers that [`Self::uncertain`] lists of `known`, in its order; a drag area moves those of the same position
    /// when tired and in lapses by its own factor.
    pub fn set_uncertain_inputs(&mut self, known: &Scenario, rides: &[Ridden], values: &[f64]) {
        struct Set<'a> {
            known: &'a Scenario,
            rides: &'a [Ridden],
            values: std::slice::Iter<'a, f64>,
        }
        impl Inspect for Set<'_> {
            fn number(&mut self, field: &'static Field, place: Place, quantity: &mut Quantity) {
                if self.known.matters(field, place, quantity, self.rides)
                    && !self.known.cancels(field)
                    && let Some(&value) = self.values.next()
                {
                    quantity.value = value;
                }
            }
        }
        self.inspect(&mut Set {
            known,
            rides,
            values: values.iter(),
        });
        self.conditions.move_later_weather(&known.conditions);
        for (position, known) in self.positions.iter_mut().zip(&known.positions) {
            position.drag_scale = position.cda_m2.value / known.cda_m2.value;
        }
    }
}

fn inspect_course(course: &mut Course, event: Option<usize>, inspect: &mut dyn Inspect) {
    let place = Place {
        event,
        ..Place::default()
    };
    let numbers = [
        (&fields::DISTANCE_M, &mut course.distance_m),
        (&fields::GRADE, &mut course.grade),
        (&fields::BEARING_DEG, &mut course.bearing_deg),
        (&fields::TURN_RADIUS_M, &mut course.turn_radius_m),
    ];
    for (field, quantity) in numbers {
        quantity
            .iter_mut()
            .for_each(|q| inspect.number(field, place, q));
    }
}

fn inspect_power(power: &mut Power, place: Place, inspect: &mut dyn Inspect) {
    let mut see =
        |field: &'static Field, quantity: &mut Quantity| inspect.number(field, place, quantity);
    see(&fields::CP_W, &mut power.cp_w);
    see(&fields::W_PRIME_J, &mut power.w_prime_j);
    power
        .peak_w
        .iter_mut()
        .for_each(|q| see(&fields::PEAK_W, q));
    power
        .long_ride_loss_share
        .iter_mut()
        .for_each(|q| see(&fields::LONG_RIDE_LOSS_SHARE, q));
    power
        .long_ride_loss_w
        .iter_mut()
        .for_each(|q| see(&fields::LONG_RIDE_LOSS_W, q));
    see(&fields::LONG_RIDE_FROM_S, &mut power.long_ride_from_s);
    if power.altitude_loss == AltitudeLoss::Published {
        see(
            &fields::ALTITUDE_RESPONSE,
            power
                .altitude_response
                .get_or_insert(fields::ALTITUDE_RESPONSE.typical()),
        );
    }
}

fn inspect_lapses(lapses: &mut [Lapse], place: Place, inspect: &mut dyn Inspect) {
    for (kind, lapse) in lapses.iter_mut().enumerate() {
        let place = Place {
            lapse: Some(kind),
            ..place
        };
        inspect.number(&fields::LAPSES_SHARE, place, &mut lapse.share);
        inspect.number(&fields::LAPSES_CDA_M2, place, &mut lapse.cda_m2);
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
    pub uncertain: UncertainInput,
}
