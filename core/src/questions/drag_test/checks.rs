//! What must hold of a request before it is worked out.

use super::answer::RowKind;
use super::with::{CoastDownForm, FilmForm, LapForm, PlanForm, RulesForm, RunForm, With};
use crate::inputs::error::{Error, Kind};
use crate::inputs::fields::{self, Field, MOST_DRAG_ROWS, MOST_RECORDINGS, QuantityKind};
use crate::inputs::message;
use crate::measuring::recording::Recording;
use crate::questions::request::check_number;
use crate::scenario::check_date;

/// A lap is at least this long, s; assumed.
const SHORTEST_S: f64 = 1.0;
/// Laps that touch may overlap by this, s: times are written with a few digits.
const TOUCH_S: f64 = 1e-3;

impl With {
    /// Checks everything but laps against their recordings.
    ///
    /// # Errors
    /// Names the field that is wrong.
    pub(super) fn check(&self) -> Result<(), Error> {
        check_date(&self.date, || "with.date".into())?;
        few("with.recordings", self.recordings.len(), MOST_RECORDINGS)?;
        few("with.laps", self.laps.len(), MOST_DRAG_ROWS)?;
        few("with.runs", self.runs.len(), MOST_DRAG_ROWS)?;
        few("with.coast_downs", self.coast_downs.len(), MOST_DRAG_ROWS)?;
        few("with.film", self.film.len(), fields::MOST_POSITIONS)?;
        for (i, recording) in self.recordings.iter().enumerate() {
            recording
                .columns
                .check(&format!("with.recordings[{i}].columns"))?;
        }
        if self.recordings.is_empty() && !self.laps.is_empty() {
            return Err(Error::missing("with.recordings"));
        }
        if self.laps.is_empty() && !self.recordings.is_empty() {
            return Err(Error::missing("with.laps"));
        }
        for (i, run) in self.runs.iter().enumerate() {
            run.check(&format!("with.runs[{i}]"))?;
        }
        for (i, coast_down) in self.coast_downs.iter().enumerate() {
            coast_down.check(&format!("with.coast_downs[{i}]"))?;
        }
        for (i, film) in self.film.iter().enumerate() {
            film.check(&format!("with.film[{i}]"))?;
        }
        self.rules.check()?;
        let path = "with.speed_error_share";
        check_number(&fields::SPEED_ERROR_SHARE, path, self.speed_error_share)?;
        self.plan.map_or(Ok(()), |plan| plan.check())
    }
}

fn few(path: &str, count: usize, most: usize) -> Result<(), Error> {
    match count <= most {
        true => Ok(()),
        false => Err(Error::too_many(path, most)),
    }
}

fn checked(path: &str, numbers: &[(&str, &Field, f64)]) -> Result<(), Error> {
    numbers
        .iter()
        .try_for_each(|(name, field, value)| field.check(|| format!("{path}.{name}"), *value))
}

fn check_reason(path: &str, reason: &Option<String>) -> Result<(), Error> {
    let text = reason.as_deref().unwrap_or_default();
    Error::check_text(text, || format!("{path}.excluded"))
}

/// The number of a position lies below [`fields::MOST_POSITIONS`], as many as a scenario has at most, so that a wrong one is found.
fn check_position(path: &str, position: usize) -> Result<(), Error> {
    let field = format!("{path}.position");
    Error::check_index(&field, position, fields::MOST_POSITIONS).map(|_| ())
}

impl LapForm {
    /// Checks what does not depend on the recording.
    pub(super) fn check(&self, path: &str) -> Result<(), Error> {
        check_position(path, self.position)?;
        check_reason(path, &self.excluded)?;
        let wind = (self.wind_speed_m_s, self.wind_from_deg);
        match wind {
            (Some(speed), Some(from)) => checked(
                path,
                &[
                    ("wind_speed_m_s", &fields::WIND_SPEED_M_S, speed),
                    ("wind_from_deg", &fields::WIND_FROM_DEG, from),
                ],
            ),
            (Some(_), None) => Err(Error::missing(format!("{path}.wind_from_deg"))),
            (None, Some(_)) => Err(Error::missing(format!("{path}.wind_speed_m_s"))),
            (None, None) => Ok(()),
        }
    }
}

impl RunForm {
    fn check(&self, path: &str) -> Result<(), Error> {
        check_position(path, self.position)?;
        check_reason(path, &self.excluded)?;
        checked(
            path,
            &[
                ("speed_m_s", &fields::SPEED_M_S, self.speed_m_s),
                ("power_w", &fields::POWER_W, self.power_w),
                ("grade", &fields::GRADE, self.grade),
            ],
        )?;
        let optional = [
            ("wind_head_m_s", &fields::WIND_HEAD_M_S, self.wind_head_m_s),
            ("bearing_deg", &fields::BEARING_DEG, self.bearing_deg),
        ];
        optional.into_iter().try_for_each(|(name, field, value)| {
            value.map_or(Ok(()), |value| checked(path, &[(name, field, value)]))
        })
    }
}

impl CoastDownForm {
    fn check(&self, path: &str) -> Result<(), Error> {
        check_position(path, self.position)?;
        check_reason(path, &self.excluded)?;
        checked(
            path,
            &[
                ("from_m_s", &fields::SPEED_M_S, self.from_m_s),
                ("to_m_s", &fields::SPEED_M_S, self.to_m_s),
                ("wind_head_m_s", &fields::WIND_HEAD_M_S, self.wind_head_m_s),
                ("grade", &fields::GRADE, self.grade),
            ],
        )?;
        let conflict = |field: String, other: &str| {
            let message = message::not_above(&field, other);
            Err(Error::new(Kind::Conflict, field, message))
        };
        if self.from_m_s <= self.to_m_s {
            return conflict(format!("{path}.from_m_s"), &format!("{path}.to_m_s"));
        }
        if self.to_m_s + self.wind_head_m_s <= 0.0 {
            return conflict(format!("{path}.to_m_s"), &format!("{path}.wind_head_m_s"));
        }
        match (self.time_s, self.distance_m) {
            (Some(time_s), None) => checked(path, &[("time_s", &fields::COAST_DOWN_S, time_s)]),
            (None, Some(far_m)) => checked(path, &[("distance_m", &fields::COAST_DOWN_M, far_m)]),
            (None, None) => {
                let message = message::time_or_distance(path);
                Err(Error::new(Kind::Missing, path, message))
            }
            (Some(_), Some(_)) => {
                let other = format!("{path}.time_s");
                Err(Error::not_both(format!("{path}.distance_m"), &other))
            }
        }
    }
}

impl FilmForm {
    fn check(&self, path: &str) -> Result<(), Error> {
        check_position(path, self.position)?;
        let seen = [
            ("head_up_share", self.head_up_share),
            ("back_up_share", self.back_up_share),
            ("hands_moved_share", self.hands_moved_share),
        ];
        for (name, thirds) in seen {
            for (i, share) in thirds.into_iter().enumerate() {
                let path = || format!("{path}.{name}[{i}]");
                fields::FILMED_SHARE.check(path, share)?;
            }
        }
        Ok(())
    }
}

impl RulesForm {
    fn check(&self) -> Result<(), Error> {
        checked(
            "with.rules",
            &[
                (
                    "braking_m_s2",
                    &fields::RULE_BRAKING_M_S2,
                    self.braking_m_s2,
                ),
                ("stopped_m_s", &fields::RULE_STOPPED_M_S, self.stopped_m_s),
                (
                    "accelerating_m_s2",
                    &fields::RULE_ACCELERATING_M_S2,
                    self.accelerating_m_s2,
                ),
                ("bridged_s", &fields::RULE_BRIDGED_S, self.bridged_s),
                ("allowed_s", &fields::RULE_ALLOWED_S, self.allowed_s),
            ],
        )
    }
}

impl PlanForm {
    fn check(&self) -> Result<(), Error> {
        checked(
            "with.plan",
            &[
                (
                    "difference_share",
                    &fields::DIFFERENCE_SHARE,
                    self.difference_share,
                ),
                ("run_cv_share", &fields::RUN_CV_SHARE, self.run_cv_share),
                ("power", &fields::TEST_POWER, self.power),
                ("speed_m_s", &fields::SPEED_M_S, self.speed_m_s),
            ],
        )?;
        self.runs.map_or(Ok(()), |runs| {
            checked(
                "with.plan",
                &[("runs", &fields::TEST_RUNS, f64::from(runs))],
            )
        })
    }
}

/// Laps lie within their recordings and do not share time, which would count it twice.
pub(super) fn check_laps(laps: &[LapForm], recordings: &[Recording]) -> Result<(), Error> {
    let mut used: Vec<(usize, f64, f64, usize)> = Vec::new();
    for (i, lap) in laps.iter().enumerate() {
        let path = RowKind::Lap.path(i);
        lap.check(&path)?;
        let Some(recording) = recordings.get(lap.recording) else {
            let field = format!("{path}.recording");
            let message = message::no_such_recording(&field);
            return Err(Error::new(Kind::Conflict, field, message));
        };
        let (first, last) = recording.span_s();
        for (name, time_s) in [("from_s", lap.from_s), ("to_s", lap.to_s)] {
            if !(first - TOUCH_S..=last + TOUCH_S).contains(&time_s) {
                let (field, kind) = (format!("{path}.{name}"), QuantityKind::Clock);
                return Err(Error::out_of_range(field, kind, time_s, first, last));
            }
        }
        if lap.to_s - lap.from_s < SHORTEST_S {
            let field = format!("{path}.to_s");
            let message = message::lap_too_short(&field, SHORTEST_S);
            return Err(Error::impossible(field, message));
        }
        if lap.excluded.is_none() {
            used.push((lap.recording, lap.from_s, lap.to_s, i));
        }
    }
    used.sort_by(|a, b| {
        (a.0, a.1)
            .partial_cmp(&(b.0, b.1))
            .unwrap_or(std::cmp::Ordering::Equal)
    });
    for pair in used.windows(2) {
        let [before, after] = [pair[0], pair[1]];
        if before.0 == after.0 && after.1 < before.2 - TOUCH_S {
            let field = format!("{}.from_s", RowKind::Lap.path(after.3));
            let message = message::laps_overlap(&field, before.3 + 1);
            return Err(Error::new(Kind::Conflict, field, message));
        }
    }
    Ok(())
}
