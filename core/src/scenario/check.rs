//! What is wrong with a scenario, and what is only doubtful.

use super::inspect::{Inspect, Place};
use super::{CourseKind, Lapse, OLDEST, Point, Position, Power, Scenario, VERSION, YawRow};
use crate::inputs::error::{Error, Kind, Warning, decimal};
use crate::inputs::fields::{self, Field};
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
        self.check_course()?;
        self.check_conditions(&mut check.warnings)?;
        self.doubt_course(&mut check.warnings);
        self.doubt_breath(&mut check.warnings);
        Ok(check.warnings)
    }

    fn check_positions(&self) -> Result<(), Error> {
        let conflict =
            |field: &str, message: String| Err(Error::new(Kind::Conflict, field, message));
        if self.positions.is_empty() {
            return conflict(
                "scenario.positions",
                "There is no position: give at least one.".into(),
            );
        }
        if self.positions.len() > fields::MOST_POSITIONS {
            return Err(too_many(
                "scenario.positions",
                fields::MOST_POSITIONS,
                "positions",
            ));
        }
        position_index(self, self.riding_position, "scenario.riding_position")?;
        check_text(&self.title, || "scenario.title".into())?;
        for (i, position) in self.positions.iter().enumerate() {
            check_position(position, &format!("scenario.positions[{i}]"))?;
        }
        Ok(())
    }

    fn check_efforts(&self) -> Result<(), Error> {
        if self.efforts.len() > fields::MOST_EFFORTS {
            return Err(too_many(
                "scenario.efforts",
                fields::MOST_EFFORTS,
                "efforts",
            ));
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
            if let Some(date) = &effort.date
                && !is_date(date)
            {
                let field = path("date");
                let message = format!("{field} is not a day such as 2026-05-01.");
                return Err(Error::new(Kind::WrongType, field, message));
            }
        }
        Ok(())
    }

    fn check_events(&self) -> Result<(), Error> {
        if self.events.is_empty() {
            let message = "There is no event: give at least one, or leave events out.";
            return Err(Error::new(Kind::Conflict, "scenario.events", message));
        }
        if self.events.len() > fields::MOST_EVENTS {
            return Err(too_many("scenario.events", fields::MOST_EVENTS, "events"));
        }
        for (i, event) in self.events.iter().enumerate() {
            check_text(&event.name, || format!("scenario.events[{i}].name"))?;
            fields::EVENT_DISTANCE_M.check(
                || format!("scenario.events[{i}].distance_m"),
                event.distance_m,
            )?;
        }
        Ok(())
    }

    fn check_course(&self) -> Result<(), Error> {
        let course = &self.course;
        let misplaced = |field: &str, kind: &str| {
            let message = format!("scenario.course.{field} does not belong to a {kind} course.");
            Err(Error::new(
                Kind::Conflict,
                format!("scenario.course.{field}"),
                message,
            ))
        };
        match course.kind {
            CourseKind::Simple if !course.points.is_empty() => misplaced("points", "simple"),
            CourseKind::Simple => Ok(()),
            CourseKind::Profile if course.distance_m.is_some() => {
                misplaced("distance_m", "profile")
            }
            CourseKind::Profile if course.grade.is_some() => misplaced("grade", "profile"),
            CourseKind::Profile if course.bearing_deg.is_some() => {
                misplaced("bearing_deg", "profile")
            }
            CourseKind::Profile if course.out_and_back.is_some() => {
                misplaced("out_and_back", "profile")
            }
            CourseKind::Profile if course.turn_radius_m.is_some() => {
                misplaced("turn_radius_m", "profile")
            }
            CourseKind::Profile => check_points(&course.points),
        }
    }

    /// What the course leaves open: which way it leads, and how high it lies.
    fn doubt_course(&self, warnings: &mut Vec<Warning>) {
        if self.leaves_wind_out() && self.conditions.wind_speed_m_s.value > 0.0 {
            warnings.push(if self.course.heading.is_some() {
                let message = "The wind's direction is ignored, as chosen: the ride is in calm air of the same density.";
                Warning::new("scenario.course.heading", "wind_ignored", message)
            } else {
                let message = "The wind is left out, because the course does not say which way it leads. Give its points a bearing in degrees, clockwise from north.";
                Warning::new("scenario.course.points", NO_BEARINGS, message)
            });
        }
        // Half a percent of a flat time trial's finish time.
        const APART_M: f64 = 100.0;
        if let (Some(given), Some(mean_m)) = (self.conditions.altitude_m, self.mean_elevation_m())
            && (given.value - mean_m).abs() > APART_M
        {
            let message = format!(
                "The air is taken at an altitude of {} m, but the course's points lie at {} m in the mean. Leave the altitude out to follow them.",
                decimal(given.value.round()),
                decimal(mean_m.round())
            );
            warnings.push(Warning::new(
                "scenario.conditions.altitude_m",
                "altitude_differs",
                message,
            ));
        }
    }

    /// Thin or hot air makes a ride faster at given watts, but riders hold fewer.
    fn doubt_breath(&self, warnings: &mut Vec<Warning>) {
        // Trained riders' aerobic power was lower by a measurable amount at 580 m already (abstract of MacInnis et al. 2015).
        const THIN_FROM_M: f64 = 600.0;
        const HOT_FROM_C: f64 = 30.0;
        let altitude_m = self.breathing_altitude_m();
        if altitude_m > THIN_FROM_M {
            let whole_m = decimal(altitude_m.round());
            let share = altitude_loss_share(altitude_m);
            let riding = self.positions.get(self.riding_position);
            warnings.push(if let Some(response) = riding.and_then(|position| self.altitude_response(position)) {
                let message = format!(
                    "At {whole_m} m your power curve is lowered by {} % at five minutes, after ten cyclists who were not used to altitude (Clark et al. 2007).",
                    decimal((1000.0 * response * share).round() / 10.0)
                );
                Warning::new("scenario.power.altitude_loss", "altitude_counted", message)
            } else {
                let message = format!(
                    "The thin air at {whole_m} m makes you faster here, but takes no power from you. Ten cyclists lost {} % over five minutes at that height: if your power was tested lower down, switch on the loss of power with altitude.",
                    decimal((1000.0 * share).round() / 10.0)
                );
                Warning::new("scenario.power.altitude_loss", "thin_air", message)
            });
        }
        if self.conditions.temperature_c.value > HOT_FROM_C {
            let message = "Hot air is thin and makes you faster here, but takes no power from you. In heat riders hold less, the longer the ride the more.";
            warnings.push(Warning::new(
                "scenario.conditions.temperature_c",
                "heat",
                message,
            ));
        }
    }

    fn check_conditions(&self, warnings: &mut Vec<Warning>) -> Result<(), Error> {
        let day = &self.conditions;
        let conflict = |field: &str, message: &str| Err(Error::new(Kind::Conflict, field, message));
        if day.relative_humidity.is_some() && day.dew_point_c.is_some() {
            let message = "Give scenario.conditions.dew_point_c or relative_humidity, not both.";
            return conflict("scenario.conditions.dew_point_c", message);
        }
        if day.roughness_length_m.is_some() && day.shelter_factor.is_some() {
            let message =
                "Give scenario.conditions.shelter_factor or roughness_length_m, not both.";
            return conflict("scenario.conditions.shelter_factor", message);
        }
        // Forecasts round both to whole degrees or tenths.
        const ROUNDING_C: f64 = 0.2;
        if let Some(dew) = day.dew_point_c
            && dew.value > day.temperature_c.value + ROUNDING_C
        {
            let message =
                "scenario.conditions.dew_point_c is above the temperature, which cannot be.";
            return conflict("scenario.conditions.dew_point_c", message);
        }
        let roughness_m = day
            .roughness_length_m
            .map_or(fields::ROUGHNESS_LENGTH_M.default, |q| q.value);
        if day.shelter_factor.is_none()
            && day.wind_speed_m_s.value > 0.0
            && day.rider_height_m.value < 20.0 * roughness_m
        {
            let message = "The wind law is only indicative so close to rough ground; a stated shelter may serve better.";
            warnings.push(Warning::new(
                "scenario.conditions.roughness_length_m",
                "wind_law",
                message,
            ));
        }
        let pressure = self.course_pressure_pa();
        if !(50_000.0..=110_000.0).contains(&pressure) {
            let message = "The pressure at the course comes out beyond 500 to 1100 hPa.";
            return conflict("scenario.conditions.pressure_hpa", message);
        }
        Ok(())
    }
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
        return Err(Error::new(
            Kind::NotFinite,
            &sd_path,
            format!("{sd_path} is not a number that can be used."),
        ));
    }
    if !(0.0..=widest).contains(&quantity.sd) {
        return Err(Error::out_of_range(
            sd_path,
            quantity.sd,
            0.0,
            widest,
            field.unit,
        ));
    }
    Ok(())
}

/// Checks that an index names a position.
///
/// # Errors
/// Names `field`.
pub fn position_index(scenario: &Scenario, index: usize, field: &str) -> Result<usize, Error> {
    let count = scenario.positions.len();
    if index < count {
        return Ok(index);
    }
    Err(Error::out_of_range(
        field,
        index as f64,
        0.0,
        count.saturating_sub(1) as f64,
        "",
    ))
}

fn too_many(field: &str, most: usize, things: &str) -> Error {
    Error::new(
        Kind::TooLarge,
        field,
        format!("There are more than {most} {things}."),
    )
}

fn check_text(text: &str, field: impl FnOnce() -> String) -> Result<(), Error> {
    if text.len() <= fields::MOST_TEXT_BYTES {
        return Ok(());
    }
    let field = field();
    let message = format!("{field} is longer than {} bytes.", fields::MOST_TEXT_BYTES);
    Err(Error::new(Kind::TooLarge, field, message))
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
        let field = format!("{path}.long_ride_loss_w");
        let message = format!("{field} stands in place of long_ride_loss_share: give one of them.");
        return Err(Error::new(Kind::Conflict, &field, message));
    }
    match power.peak_w {
        Some(peak_w) if peak_w.value <= power.cp_w.value => {
            let field = format!("{path}.peak_w");
            Err(Error::new(
                Kind::Conflict,
                &field,
                format!("{field} must be above cp_w."),
            ))
        }
        _ => Ok(()),
    }
}

fn check_position(position: &Position, path: &str) -> Result<(), Error> {
    let conflict = |field: String, message: &str| {
        let message = format!("{field} {message}");
        Err(Error::new(Kind::Conflict, field, message))
    };
    check_text(&position.name, || format!("{path}.name"))?;
    if let Some(fade) = &position.fade
        && fade.complete_s.value < fade.begins_s.value
    {
        return conflict(
            format!("{path}.fade.complete_s"),
            "must not be before begins_s.",
        );
    }
    if position.fade.is_some() && position.fade_test.is_some() {
        return conflict(
            format!("{path}.fade_test"),
            "stands in place of fade: give one of them.",
        );
    }
    if let Some(power) = &position.power {
        check_power(power, &format!("{path}.power"))?;
    }
    check_yaw_table(&position.yaw_table, &format!("{path}.yaw_table"))?;
    check_lapses(&position.lapses, &format!("{path}.lapses"))?;
    if position.equipment.len() > fields::MOST_EQUIPMENT {
        return Err(too_many(
            &format!("{path}.equipment"),
            fields::MOST_EQUIPMENT,
            "pieces of equipment",
        ));
    }
    for (i, option) in position.equipment.iter().enumerate() {
        check_text(&option.name, || format!("{path}.equipment[{i}].name"))?;
        check_yaw_table(
            &option.yaw_table,
            &format!("{path}.equipment[{i}].yaw_table"),
        )?;
        check_lapses(&option.lapses, &format!("{path}.equipment[{i}].lapses"))?;
    }
    match position.worn {
        Some(worn) if worn >= position.equipment.len() => conflict(
            format!("{path}.worn"),
            "names a piece of equipment that is not there.",
        ),
        _ => Ok(()),
    }
}

fn check_lapses(lapses: &[Lapse], path: &str) -> Result<(), Error> {
    if lapses.len() > fields::MOST_LAPSES {
        return Err(too_many(path, fields::MOST_LAPSES, "kinds of lapse"));
    }
    for (i, lapse) in lapses.iter().enumerate() {
        check_text(&lapse.name, || format!("{path}[{i}].name"))?;
    }
    // Shares are written as decimal fractions.
    const ROUNDING: f64 = 1e-9;
    if lapses.iter().map(|lapse| lapse.share.value).sum::<f64>() > 1.0 + ROUNDING {
        let message = format!("{path} come to more than the whole time together.");
        return Err(Error::new(Kind::Conflict, path, message));
    }
    Ok(())
}

fn check_yaw_table(rows: &[YawRow], path: &str) -> Result<(), Error> {
    if rows.len() > fields::MOST_YAW_ROWS {
        let message = format!("{path} has more than {} rows.", fields::MOST_YAW_ROWS);
        return Err(Error::new(Kind::TooLarge, path, message));
    }
    for (i, row) in rows.iter().enumerate() {
        fields::YAW_DEG.check(|| format!("{path}[{i}].yaw_deg"), row.yaw_deg)?;
        fields::YAW_RATIO.check(|| format!("{path}[{i}].ratio"), row.ratio)?;
        if i > 0 && row.yaw_deg <= rows[i - 1].yaw_deg {
            let field = format!("{path}[{i}].yaw_deg");
            return Err(Error::new(
                Kind::Conflict,
                &field,
                format!("{field} must be larger than the row before."),
            ));
        }
    }
    Ok(())
}

fn check_points(points: &[Point]) -> Result<(), Error> {
    let path = "scenario.course.points";
    if points.len() < 2 {
        return Err(Error::new(
            Kind::Missing,
            path,
            "A profile needs at least two points.",
        ));
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
        let Some(before) = i.checked_sub(1).and_then(|before| points.get(before)) else {
            continue;
        };
        // Closer points than survey accuracy give grades that are noise.
        const CLOSEST_M: f64 = 0.1;
        if point.distance_m < before.distance_m + CLOSEST_M {
            let field = format!("{path}[{i}].distance_m");
            let message = format!("{field} must be at least 0.1 m beyond the point before.");
            return Err(Error::new(Kind::Conflict, field, message));
        }
        let grade =
            (point.elevation_m - before.elevation_m) / (point.distance_m - before.distance_m);
        if !(fields::GRADE.min..=fields::GRADE.max).contains(&grade) {
            let message = format!(
                "The road to point {i} rises by {} %, more than is ridden.",
                decimal((100.0 * grade).round())
            );
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
            format!(
                "This was saved by a newer version ({version}); this one reads version {VERSION}. It is left as it is."
            ),
        )
    } else {
        (
            Kind::OutOfRange,
            format!("scenario.fasterby is {version}; the oldest version is {OLDEST}."),
        )
    };
    Error::new(kind, "scenario.fasterby", message)
}
