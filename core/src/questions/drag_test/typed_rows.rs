//! Runs and coast-downs, which were typed in, as rows of the estimate.

use super::answer::{RowKind, TestRow};
use super::rows::{TestedRow, tested, typed};
use super::with::{CoastDownForm, RunForm, WindForm};
use crate::measuring::estimate::{CoastDown, CoastDownRead, Seen};
use crate::measuring::lap::Sums;
use crate::physics::air::{Heading, Wind};

/// A run, in the wind that it is to be worked out with.
pub(super) fn run(used: WindForm, wind: Wind, index: usize, form: &RunForm) -> TestedRow {
    let row = TestRow {
        power_w: Some(form.power_w),
        ..typed(
            RowKind::Run,
            index,
            form.position,
            form.speed_m_s,
            &form.excluded,
        )
    };
    let (speed_m_s, power_w, grade) = (form.speed_m_s, form.power_w, form.grade);
    let steady = |head_m_s: f64| Sums::steady(speed_m_s, power_w, head_m_s, grade);
    let heading = form.bearing_deg.map(Heading::new);
    let sums = match (used, form.wind_head_m_s, heading) {
        (WindForm::Given, Some(head_m_s), _) => steady(head_m_s),
        (WindForm::Given, None, Some(heading)) => {
            Sums::steady_in(wind, heading, speed_m_s, power_w, grade)
        }
        (WindForm::Fit, head_m_s, None) => steady(head_m_s.unwrap_or(0.0)),
        (WindForm::Fit | WindForm::Ignore, _, Some(heading)) => steady(0.0).heading(heading),
        (WindForm::Given | WindForm::Ignore, _, None) => steady(0.0),
    };
    tested(row, Seen::Stretch(sums))
}

/// A coast-down.
pub(super) fn coast_down(wind: WindForm, index: usize, form: &CoastDownForm) -> TestedRow {
    let (from_m_s, to_m_s) = (form.from_m_s, form.to_m_s);
    let read = match (form.time_s, form.distance_m) {
        (Some(time_s), _) => CoastDownRead::Time(time_s),
        (None, distance_m) => CoastDownRead::Distance(distance_m.unwrap_or(f64::NAN)),
    };
    let mean_m_s = 0.5 * (from_m_s + to_m_s);
    let head_m_s = match wind {
        WindForm::Ignore => 0.0,
        _ => form.wind_head_m_s,
    };
    let seen = CoastDown {
        from_m_s,
        to_m_s,
        read,
        head_m_s,
        grade: form.grade,
    };
    let row = typed(
        RowKind::CoastDown,
        index,
        form.position,
        mean_m_s,
        &form.excluded,
    );
    tested(row, Seen::CoastDown(seen))
}
