//! What is doubtful about a ride over a course.

use std::rc::Rc;

use crate::inputs::error::Warning;
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::quantity::Quantity;
use crate::physics::course::Course;
use crate::riding::effort::Effort;
use crate::riding::integrated::{Ride, Setup, time_s};
use crate::scenario::ride_doubts::{beyond_curve, long_doubts};
use crate::scenario::{CourseKind, Scenario};

/// A yaw table that ends too early is worth a word from this share of the time on: less is the first metres or a lull.
const BEYOND_TABLE_SHARE: f64 = 0.02;

/// Adds what is doubtful about the ride.
pub(super) fn doubts(
    scenario: &Scenario,
    setup: &Setup,
    effort: Effort,
    ride: &Ride,
    power_w: f64,
    sustainable_w: f64,
    warnings: &mut Vec<Warning>,
) {
    let mut warn = |field: &str, message| warnings.push(Warning::of(field, message));
    // A watt is below what any meter tells.
    if !matches!(effort, Effort::Even) && power_w > sustainable_w + 1.0 {
        warn("with.effort", beyond_curve(power_w, sustainable_w));
    }
    if matches!(effort, Effort::Even) && ride.time_s < 120.0 && setup.power.peak_w.is_none() {
        warn("scenario.power.peak_w", message::short_overstated());
    }
    if let Some(last_deg) = setup.position.shape.last_yaw_deg()
        && ride.beyond_table_share > BEYOND_TABLE_SHARE
    {
        warn("scenario.positions", message::beyond_table(last_deg));
    }
    long_doubts(setup, effort, ride.time_s, warnings);
    warnings.extend(climb_doubt(scenario, &setup.course));
}

/// What a turn would cost where an out-and-back course has none.
pub(super) fn turn_doubt(
    scenario: &Scenario,
    setup: &Setup,
    power_w: f64,
    warnings: &mut Vec<Warning>,
) {
    let course = &scenario.course;
    if course.kind != CourseKind::Simple
        || course.out_and_back != Some(true)
        || course.turn_radius_m.is_some()
    {
        return;
    }
    let radius_m = fields::TURN_RADIUS_M.default;
    let mut with_turn = scenario.clone();
    with_turn.course.turn_radius_m = Some(Quantity::exact(radius_m));
    let road = with_turn.course().scaled_to(setup.course.distance_m());
    let turning = Setup {
        course: Rc::new(road),
        ..setup.clone()
    };
    if let (Ok(straight_s), Ok(turned_s)) = (time_s(setup, power_w), time_s(&turning, power_w)) {
        let seconds = (turned_s - straight_s).round() as usize;
        warnings.push(Warning::of(
            format!("{}.turn_radius_m", scenario.course_path()),
            message::turn_not_counted(radius_m, seconds),
        ));
    }
}

/// Air thins with height, which one density for the whole course leaves out. Nothing is said of a surveyed road that was stretched to a
/// fixed time: its heights were stretched with it, and nobody climbs so high there.
fn climb_doubt(scenario: &Scenario, course: &Course) -> Option<Warning> {
    const MUCH_M: f64 = 200.0;
    const AS_LONG_M: f64 = 1.0;
    let own = &scenario.course;
    let apart_m = course.distance_m() - own.length_m();
    let stretched = own.duration_s.is_some() || apart_m.abs() > AS_LONG_M;
    if own.kind == CourseKind::Profile && stretched {
        return None;
    }
    let (mut height, mut low, mut high) = (0.0f64, 0.0f64, 0.0f64);
    for segment in &course.segments {
        height += segment.length_m * segment.slope.0;
        (low, high) = (low.min(height), high.max(height));
    }
    (high - low > MUCH_M).then(|| {
        let message = message::one_density((high - low).round());
        Warning::of(scenario.course_path(), message)
    })
}
