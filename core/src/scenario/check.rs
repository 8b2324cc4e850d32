//! What is wrong with a scenario, and what is only doubtful.

use super::inspect::{Inspect, Place};
use super::{
    Conditions, Course, CourseKind, Event, Lapse, OLDEST, Point, Position, Power, Scenario,
    VERSION, YawRow,
};
use crate::inputs::error::{Error, Kind, Warning};
use crate::inputs::fields::{self, Field};
use crate::inputs::message::{self, Message, in_thousandths};
use crate::inputs::quantity::Quantity;
use crate::physiology::power_duration::altitude_loss_share;

/// The kind of the warning that the wind is left out for want of bearings.
pub const NO_BEARINGS: &str = "no_bearings";

impl Scenario {
    /// Checks every number and everything that numbers say together; what is legal but doubtful comes back as warnings.
    ///
    /// # Errors
    /// The first thing wrong, by its path from `scenario`.
    pub fn check(&self) -> Result<Vec<Warning>, Error> {
        struct Check {
            first: Option<Error>,
            warnings: Vec<Warning>,
        }
        impl Inspect for Check {
            fn number(&mut self, field: &'static Field, place: Place, quantity: &mut Quantity) {
                let path = place.path(field);
                if let Err(error) = check_quantity(field, &path, quantity) {
                    self.first.get_or_insert(error);
                } else {
                    self.warnings.extend(field.doubt(&path, quantity.value));
                }
            }
        }
        if !(OLDEST..=VERSION).contains(&self.fasterby) {
            return Err(version_error(self.fasterby));
        }
        let mut check = Check {
            first: None,
            warnings: Vec::new(),
        };
        self.clone().inspect(&mut check);
        if let Some(error) = check.first {
            return Err(error);
        }
        self.check_positions()?;
        check_power(&self.power, "scenario.power")?;
        self.check_efforts()?;
        self.check_events()?;
        check_course(&self.course, "scenario.course")?;
        self.check_conditions(&mut check.warnings)?;
        #[cfg(feature = "all")]
        self.check_stops()?;
        self.doubt_road(&mut check.warnings);
        self.doubt_heat(&mut check.warnings);
        Ok(check.warnings)
    }

    fn check_positions(&self) -> Result<(), Error> {
        let path = "scenario.positions";
        if self.positions.is_empty() {
            return conflict(path, message::no_position());
        }
        if self.positions.len() > fields::MOST_POSITIONS {
            return Err(Error::too_many(path, fields::MOST_POSITIONS));
        }
        position_index(self, self.riding_position, "scenario.riding_position")?;
        Error::check_text(&self.title, || "scenario.title".into())?;
        for (i, position) in self.positions.iter().enumerate() {
            check_position(position, &format!("scenario.positions[{i}]"))?;
        }
        Ok(())
    }

    fn check_efforts(&self) -> Result<(), Error> {
        if self.efforts.len() > fields::MOST_EFFORTS {
            return Err(Error::too_many("scenario.efforts", fields::MOST_EFFORTS));
        }
        for (i, effort) in self.efforts.iter().enumerate() {
            let path = |name: &str| format!("scenario.efforts[{i}].{name}");
            check_quantity(
                &fields::EFFORT_DURATION_S,
                &path("duration_s"),
                &effort.duration_s,
            )?;
            check_quantity(&fields::EFFORT_POWER_W, &path("power_w"), &effort.power_w)?;
            if let Some(position) = effort.position {
                position_index(self, position, &path("position"))?;
            }
            check_date(&effort.date, || path("date"))?;
        }
        Ok(())
    }

    fn check_events(&self) -> Result<(), Error> {
        if self.events.is_empty() {
            return conflict("scenario.events", message::no_event());
        }
        if self.events.len() > fields::MOST_EVENTS {
            return Err(Error::too_many("scenario.events", fields::MOST_EVENTS));
        }
        for (i, event) in self.events.iter().enumerate() {
            check_event(event, &format!("scenario.events[{i}]"))?;
        }
        Ok(())
    }

    /// What the course leaves open: which way it leads, how high it lies, and what riders hold there.
    pub(crate) fn doubt_road(&self, warnings: &mut Vec<Warning>) {
        let path = self.course_path();
        if self.leaves_wind_out() && self.conditions.strongest_wind_m_s() > 0.0 {
            warnings.push(if self.course.heading.is_some() {
                Warning::of(format!("{path}.heading"), message::wind_ignored())
            } else {
                Warning::new(
                    format!("{path}.points"),
                    NO_BEARINGS,
                    message::no_bearings(),
                )
            });
        }
        // Half a percent of a flat time trial's finish time.
        const APART_M: f64 = 100.0;
        if let (Some(given), Some(mean_m)) = (self.conditions.altitude_m, self.mean_elevation_m())
            && (given.value - mean_m).abs() > APART_M
        {
            warnings.push(Warning::of(
                "scenario.conditions.altitude_m",
                message::altitude_differs(given.value.round(), mean_m.round()),
            ));
        }
        // Thin air makes a ride faster at given watts, but riders hold fewer. Trained riders' aerobic power was lower by a measurable amount at 580 m already (abstract of MacInnis et al. 2015).
        const THIN_FROM_M: f64 = 600.0;
        let altitude_m = self.breathing_altitude_m();
        if altitude_m > THIN_FROM_M {
            let share = altitude_loss_share(altitude_m);
            let riding = self.positions.get(self.riding_position);
            let message = match riding.and_then(|position| self.altitude_response(position)) {
                Some(response) => {
                    message::altitude_counted(altitude_m.round(), in_thousandths(response * share))
                }
                None => message::thin_air(altitude_m.round(), in_thousandths(share)),
            };
            warnings.push(Warning::of("scenario.power.altitude_loss", message));
        }
    }

    /// So does hot air.
    fn doubt_heat(&self, warnings: &mut Vec<Warning>) {
        const HOT_FROM_C: f64 = 30.0;
        if self.conditions.warmest_c() > HOT_FROM_C {
            warnings.push(Warning::of(
                "scenario.conditions.temperature_c",
                message::heat(),
            ));
        }
    }

    fn check_conditions(&self, warnings: &mut Vec<Warning>) -> Result<(), Error> {
        let day = &self.conditions;
        let path = |name: &str| format!("scenario.conditions.{name}");
        if day.relative_humidity.is_some() && day.dew_point_c.is_some() {
            return Err(Error::not_both(
                path("dew_point_c"),
                &path("relative_humidity"),
            ));
        }
        if day.roughness_length_m.is_some() && day.shelter_factor.is_some() {
            return Err(Error::not_both(
                path("shelter_factor"),
                &path("roughness_length_m"),
            ));
        }
        // Forecasts round both to whole degrees or tenths.
        const ROUNDING_C: f64 = 0.2;
        if let Some(dew) = day.dew_point_c
            && dew.value > day.temperature_c.value + ROUNDING_C
        {
            let field = path("dew_point_c");
            return conflict(&field, message::dew_point_above_temperature(&field));
        }
        let roughness_m = day
            .roughness_length_m
            .map_or(fields::ROUGHNESS_LENGTH_M.default, |q| q.value);
        if day.shelter_factor.is_none()
            && day.strongest_wind_m_s() > 0.0
            && day.rider_height_m.value < 20.0 * roughness_m
        {
            warnings.push(Warning::of(path("roughness_length_m"), message::wind_law()));
        }
        self.check_pressure(day, &path("pressure_hpa"))?;
        self.check_later_weather(&path("later"), warnings)
    }

    pub(super) fn check_pressure(&self, day: &Conditions, field: &str) -> Result<(), Error> {
        const LEAST_HPA: f64 = 500.0;
        const MOST_HPA: f64 = 1100.0;
        let pressure_hpa = self.course_pressure_on_pa(day) / 100.0;
        if (LEAST_HPA..=MOST_HPA).contains(&pressure_hpa) {
            Ok(())
        } else {
            conflict(field, message::pressure_beyond(LEAST_HPA, MOST_HPA))
        }
    }
}

/// A course's own length is how far the event is: a distance beside it may differ by no more than courses are written to.
fn check_event(event: &Event, path: &str) -> Result<(), Error> {
    Error::check_text(&event.name, || format!("{path}.name"))?;
    let distance_path = || format!("{path}.distance_m");
    let duration_path = || format!("{path}.duration_s");
    if let Some(distance_m) = event.distance_m {
        fields::EVENT_DISTANCE_M.check(distance_path, distance_m)?;
    }
    if let Some(duration_s) = event.duration_s {
        fields::EVENT_DURATION_S.check(duration_path, duration_s)?;
        if event.distance_m.is_some() {
            return Err(Error::not_both(duration_path(), &distance_path()));
        }
    }
    match (&event.course, event.distance_m) {
        (None, None) if event.duration_s.is_none() => Err(Error::missing(distance_path())),
        (None, _) => Ok(()),
        #[cfg(not(feature = "all"))]
        (Some(_), _) => Ok(()),
        #[cfg(feature = "all")]
        (Some(course), given) => {
            check_course(course, &format!("{path}.course"))?;
            if course.duration_s.is_some() {
                let fields = [
                    (event.duration_s, duration_path()),
                    (given, distance_path()),
                ];
                let twice = fields.into_iter().find(|(given, _)| given.is_some());
                return match twice {
                    Some((_, field)) => {
                        Err(Error::not_both(field, &format!("{path}.course.duration_s")))
                    }
                    None => Ok(()),
                };
            }
            const SAME_M: f64 = 1.0;
            let length_m = course.length_m();
            if given.is_some_and(|distance_m| (distance_m - length_m).abs() > SAME_M) {
                return conflict(&distance_path(), message::not_the_courses_length(length_m));
            }
            Ok(())
        }
    }
}

fn check_course(course: &Course, path: &str) -> Result<(), Error> {
    let path = |field: &str| format!("{path}.{field}");
    if let Some(duration_s) = course.duration_s {
        fields::COURSE_DURATION_S.check(|| path("duration_s"), duration_s)?;
        if course.distance_m.is_some() {
            return Err(Error::not_both(path("duration_s"), &path("distance_m")));
        }
    }
    if course.kind == CourseKind::Simple {
        let field = path("points");
        return match course.points.is_empty() {
            true => Ok(()),
            false => conflict(&field, message::not_of_simple_course(&field)),
        };
    }
    let of_simple_courses = [
        ("distance_m", course.distance_m.is_some()),
        ("grade", course.grade.is_some()),
        ("bearing_deg", course.bearing_deg.is_some()),
        ("out_and_back", course.out_and_back.is_some()),
        ("turn_radius_m", course.turn_radius_m.is_some()),
    ];
    if let Some((name, _)) = of_simple_courses.iter().find(|(_, given)| *given) {
        let field = path(name);
        return conflict(&field, message::not_of_profile(&field));
    }
    check_points(&course.points, &path("points"))
}

pub(super) fn conflict<T>(field: &str, message: Message) -> Result<T, Error> {
    Err(Error::new(Kind::Conflict, field, message))
}

/// Checks a value and its standard deviation.
///
/// # Errors
/// Names `path` or its `sd`.
pub fn check_quantity(field: &Field, path: &str, quantity: &Quantity) -> Result<(), Error> {
    field.check(|| path.to_owned(), quantity.value)?;
    let widest = field.max - field.min;
    let sd_path = format!("{path}.sd");
    if !quantity.sd.is_finite() {
        let message = message::not_a_number(&sd_path);
        return Err(Error::new(Kind::NotFinite, sd_path, message));
    }
    if !(0.0..=widest).contains(&quantity.sd) {
        return Err(Error::out_of_range(
            sd_path,
            field.kind,
            quantity.sd,
            0.0,
            widest,
        ));
    }
    Ok(())
}

/// Checks that an index names a position.
///
/// # Errors
/// Names `field`.
pub fn position_index(scenario: &Scenario, index: usize, field: &str) -> Result<usize, Error> {
    Error::check_index(field, index, scenario.positions.len())
}

/// A day, if there is one, is written as `2026-05-01`.
///
/// # Errors
/// Names the path.
pub fn check_date(date: &Option<String>, path: impl FnOnce() -> String) -> Result<(), Error> {
    if date.as_deref().is_none_or(is_date) {
        return Ok(());
    }
    let field = path();
    let message = message::not_a_date(&field);
    Err(Error::new(Kind::WrongType, field, message))
}

/// A day as `2026-05-01`.
fn is_date(text: &str) -> bool {
    let in_place = |(i, c): (usize, u8)| {
        if i == 4 || i == 7 {
            c == b'-'
        } else {
            c.is_ascii_digit()
        }
    };
    let part = |from: usize| {
        text.get(from..from + 2)
            .and_then(|digits| digits.parse().ok())
            .unwrap_or(0)
    };
    text.len() == 10
        && text.bytes().enumerate().all(in_place)
        && (1..=12).contains(&part(5))
        && (1..=31).contains(&part(8))
}

fn check_power(power: &Power, path: &str) -> Result<(), Error> {
    fields::CP_W_PRIME_CORRELATION.check(
        || format!("{path}.cp_w_prime_correlation"),
        power.cp_w_prime_correlation,
    )?;
    if power.long_ride_loss_share.is_some() && power.long_ride_loss_w.is_some() {
        let other = format!("{path}.long_ride_loss_share");
        return Err(Error::not_both(format!("{path}.long_ride_loss_w"), &other));
    }
    match power.peak_w {
        Some(peak_w) if peak_w.value <= power.cp_w.value => {
            let field = format!("{path}.peak_w");
            conflict(&field, message::not_above(&field, &format!("{path}.cp_w")))
        }
        _ => Ok(()),
    }
}

fn check_position(position: &Position, path: &str) -> Result<(), Error> {
    Error::check_text(&position.name, || format!("{path}.name"))?;
    if let Some(fade) = &position.fade
        && fade.complete_s.value < fade.begins_s.value
    {
        let field = format!("{path}.fade.complete_s");
        return conflict(
            &field,
            message::before(&field, &format!("{path}.fade.begins_s")),
        );
    }
    if position.fade.is_some() && position.fade_test.is_some() {
        return Err(Error::not_both(
            format!("{path}.fade_test"),
            &format!("{path}.fade"),
        ));
    }
    if let Some(power) = &position.power {
        check_power(power, &format!("{path}.power"))?;
    }
    check_yaw_table(&position.yaw_table, &format!("{path}.yaw_table"))?;
    check_lapses(&position.lapses, &format!("{path}.lapses"))?;
    if position.equipment.len() > fields::MOST_EQUIPMENT {
        return Err(Error::too_many(
            format!("{path}.equipment"),
            fields::MOST_EQUIPMENT,
        ));
    }
    for (i, option) in position.equipment.iter().enumerate() {
        Error::check_text(&option.name, || format!("{path}.equipment[{i}].name"))?;
        check_yaw_table(
            &option.yaw_table,
            &format!("{path}.equipment[{i}].yaw_table"),
        )?;
        check_lapses(&option.lapses, &format!("{path}.equipment[{i}].lapses"))?;
    }
    #[cfg(feature = "all")]
    super::drag_tests::check(&position.drag_tests, &format!("{path}.drag_tests"))?;
    match position.worn {
        Some(worn) if worn >= position.equipment.len() => {
            let field = format!("{path}.worn");
            conflict(&field, message::no_such_equipment(&field))
        }
        _ => Ok(()),
    }
}

fn check_lapses(lapses: &[Lapse], path: &str) -> Result<(), Error> {
    if lapses.len() > fields::MOST_LAPSES {
        return Err(Error::too_many(path, fields::MOST_LAPSES));
    }
    for (i, lapse) in lapses.iter().enumerate() {
        Error::check_text(&lapse.name, || format!("{path}[{i}].name"))?;
    }
    // Shares are written as decimal fractions.
    const ROUNDING: f64 = 1e-9;
    if lapses.iter().map(|lapse| lapse.share.value).sum::<f64>() > 1.0 + ROUNDING {
        return conflict(path, message::more_than_whole(path));
    }
    Ok(())
}

fn check_yaw_table(rows: &[YawRow], path: &str) -> Result<(), Error> {
    if rows.len() > fields::MOST_YAW_ROWS {
        return Err(Error::too_many(path, fields::MOST_YAW_ROWS));
    }
    for (i, row) in rows.iter().enumerate() {
        fields::YAW_DEG.check(|| format!("{path}[{i}].yaw_deg"), row.yaw_deg)?;
        fields::YAW_RATIO.check(|| format!("{path}[{i}].ratio"), row.ratio)?;
        if i > 0 && row.yaw_deg <= rows[i - 1].yaw_deg {
            let field = format!("{path}[{i}].yaw_deg");
            return conflict(&field, message::rows_not_in_order(&field));
        }
    }
    Ok(())
}

fn check_points(points: &[Point], path: &str) -> Result<(), Error> {
    if points.len() < 2 {
        return Err(Error::new(Kind::Missing, path, message::too_few_points()));
    }
    if points.len() > fields::MOST_POINTS {
        return Err(Error::too_many(path, fields::MOST_POINTS));
    }
    for (i, point) in points.iter().enumerate() {
        fields::POINT_DISTANCE_M.check(|| format!("{path}[{i}].distance_m"), point.distance_m)?;
        fields::POINT_ELEVATION_M
            .check(|| format!("{path}[{i}].elevation_m"), point.elevation_m)?;
        if let Some(bearing_deg) = point.bearing_deg {
            fields::POINT_BEARING_DEG.check(|| format!("{path}[{i}].bearing_deg"), bearing_deg)?;
        }
        if let Some(radius_m) = point.radius_m {
            fields::POINT_RADIUS_M.check(|| format!("{path}[{i}].radius_m"), radius_m)?;
        }
        if let Some(share) = point.wind_share {
            fields::POINT_WIND_SHARE.check(|| format!("{path}[{i}].wind_share"), share)?;
        }
        let Some(before) = i.checked_sub(1).and_then(|before| points.get(before)) else {
            continue;
        };
        if point.distance_m < before.distance_m + fields::CLOSEST_POINTS_M {
            let field = format!("{path}[{i}].distance_m");
            return conflict(
                &field,
                message::points_too_close(&field, fields::CLOSEST_POINTS_M),
            );
        }
        let grade =
            (point.elevation_m - before.elevation_m) / (point.distance_m - before.distance_m);
        if !(fields::GRADE.min..=fields::GRADE.max).contains(&grade) {
            // Riders count from one.
            let message = message::too_steep(i + 1, (100.0 * grade).round() / 100.0);
            // The bounds are the slope's, not the elevation's, and so stay out of the error.
            return Err(Error::new(
                Kind::OutOfRange,
                format!("{path}[{i}].elevation_m"),
                message,
            ));
        }
    }
    let length_m = points[points.len() - 1].distance_m - points[0].distance_m;
    fields::DISTANCE_M.check(|| path.to_owned(), length_m)
}

/// What is said of a scenario of another version.
pub fn version_error(version: u64) -> Error {
    let (kind, message) = if version > VERSION {
        (
            Kind::NewerVersion,
            message::newer_version(version as usize, VERSION as usize),
        )
    } else {
        (
            Kind::OutOfRange,
            message::older_version(version as usize, OLDEST as usize),
        )
    };
    Error::new(kind, "scenario.fasterby", message)
}
