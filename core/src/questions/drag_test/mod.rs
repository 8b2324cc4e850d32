//! What is my CdA, and is the new position really faster? From laps, runs and coast-downs; or, before a test, how many it takes.

mod answer;
mod checks;
mod columns;
mod common_errors;
mod differences;
mod doubts;
mod doubts_of_rows;
mod found;
mod kept;
mod rows;
mod typed_rows;
mod wind_errors;
mod with;

use super::request::Request;
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::measuring::estimate::{Estimate, Observation, Rolling, Seen};
use crate::measuring::lap::Sums;
use crate::measuring::late_rise::{assumed_rise, measured_rise};
use crate::measuring::plan::planned;
use crate::measuring::rig::Rig;
use crate::numerics::distributions::MOST_RUNS;
use crate::scenario::Scenario;
use answer::positions;
pub use answer::{
    Answer, CommonError, LateRise, OtherRolling, PlanAnswer, PositionDrag, RiseKnown,
    RollingAnswer, RowKind, RowLeftOut, TestFigure, TestRow, TestWind,
};
pub use columns::Columns;
use columns::curve;
use common_errors::{Trial, rig, wind};
use differences::differences;
pub use differences::{DifferenceError, DragDifference};
use doubts::{Told, doubts, is_of_the_test};
use doubts_of_rows::doubts_of_rows;
use found::Found;
use kept::kept;
pub use kept::{KeptDrag, ThisTest};
use rows::Rows;
pub use with::{
    CoastDownForm, FilmForm, LapForm, PlanForm, RecordingForm, RollingForm, RulesForm, RunForm,
    WindForm, With,
};

/// Answers the question.
///
/// # Errors
/// Names the field that is wrong.
pub fn answer(request: Request<With>) -> Result<Answer, Error> {
    let Request {
        scenario,
        with,
        mut warnings,
    } = request;
    with.check()?;
    warnings.retain(is_of_the_test);
    let rows = Rows::new(&with, wind(&scenario), &mut warnings)?;
    doubts_of_rows(&rows, &with, &scenario, &mut warnings);
    let plan = with.plan.or((!with.is_measured()).then(PlanForm::default));
    let plan_answer = plan.map(|plan| plan_of(&plan, &mut warnings));
    let columns = plan.map_or_else(Columns::default, |plan| curve(&plan));
    let rig = rig(&scenario);
    let used = rows.used();
    if used.is_empty() {
        let message = match with.is_measured() {
            true => message::no_usable_laps(),
            false => message::nothing_measured(),
        };
        if with.is_measured() || with.plan.is_none() {
            warnings.push(Warning::of("with.laps", message));
        }
        return Ok(Answer {
            differences: Vec::new(),
            positions: Vec::new(),
            rolling_coefficient: None,
            identifiable: false,
            other_rolling: None,
            laps: rows.shown(None),
            degrees_of_freedom: 0,
            scatter_share: None,
            wind: None,
            common: before_the_test(&scenario, &with, &plan.unwrap_or_default(), &rig),
            late_rises: Vec::new(),
            kept: Vec::new(),
            plan: plan_answer,
            columns,
            warnings,
        });
    }
    let found = Found::new(&used, &rig, &with, &mut warnings)?;
    let shown = &found.shown;
    let laps_of = |position: usize| used.iter().filter(|row| row.position == position).count();
    let errors = Trial {
        scenario: &scenario,
        rows: &used,
        rolling: found.rolling(),
        axes: &found.axes,
        cda_m2: (0..shown.positions.len())
            .map(|place| shown.cda_m2(place).value)
            .collect(),
        wind: with.wind,
        speed_error_share: with.speed_error_share,
    }
    .errors();
    let (ridden, answered, common) = (rows.as_ridden(), rows.shown(Some(shown)), errors.shown());
    let differences = differences(shown, |first, second| errors.of_difference(first, second));
    let told = Told {
        found: &found,
        rows: &answered,
        ridden: &ridden,
        common: &common,
        differences: &differences,
        scenario: &scenario,
        with: &with,
    };
    doubts(&told, &mut warnings);
    let rolling_sd = scenario.bike.rolling_coefficient.sd;
    let found_positions = positions(shown, laps_of);
    let kept = kept(
        &found_positions,
        &common,
        with.date.as_deref(),
        &scenario,
        &mut warnings,
    );
    Ok(Answer {
        differences,
        positions: found_positions,
        rolling_coefficient: Some(rolling_answer(shown, rolling_sd)),
        identifiable: found.identifiable,
        other_rolling: found.other.as_ref().map(|other| OtherRolling {
            positions: positions(other, laps_of),
            rolling_coefficient: rolling_answer(other, rolling_sd),
        }),
        laps: answered,
        degrees_of_freedom: shown.degrees_of_freedom(),
        scatter_share: shown.scatter_share(),
        wind: Some(found.wind(&with)),
        common,
        late_rises: late_rises(&ridden, shown, &rig, &with),
        kept,
        plan: plan_answer,
        columns,
        warnings,
    })
}

fn rolling_answer(estimate: &Estimate, scenario_sd: f64) -> RollingAnswer {
    match estimate.rolling() {
        Some(rolling) => RollingAnswer {
            value: rolling.value,
            sd: rolling.sd,
            held: false,
        },
        None => RollingAnswer {
            value: estimate.rolling_value(),
            sd: Some(scenario_sd),
            held: true,
        },
    }
}

/// The errors that runs at the planned speed would have in common.
fn before_the_test(
    scenario: &Scenario,
    with: &With,
    plan: &PlanForm,
    rig: &Rig,
) -> Vec<CommonError> {
    let position = scenario.positions.get(scenario.riding_position);
    let cda_m2 = position.map_or(fields::CDA_M2.default, |position| position.cda_m2.value);
    let calm = Sums::steady(plan.speed_m_s, 0.0, 0.0, 0.0);
    let asked = rig.equation(&calm, [0.0; 2]);
    let needed_j =
        cda_m2 * asked.air + rig.machine.rolling_coefficient * asked.rolling - asked.loss_j;
    let power_w = needed_j / rig.machine.drivetrain_efficiency;
    let run = Sums::steady(plan.speed_m_s, power_w, 0.0, 0.0);
    let rows = [Observation {
        position: 0,
        seen: Seen::Stretch(run),
    }];
    Trial {
        scenario,
        rows: &rows,
        rolling: Rolling::Held,
        axes: &[],
        cda_m2: vec![cda_m2],
        wind: WindForm::Given,
        speed_error_share: with.speed_error_share,
    }
    .errors()
    .shown()
}

fn plan_of(plan: &PlanForm, warnings: &mut Vec<Warning>) -> PlanAnswer {
    let found = planned(
        plan.difference_share,
        plan.run_cv_share,
        plan.power,
        plan.runs,
    );
    if found.runs.is_none() || found.pairs.is_none() {
        let message = message::more_runs_than(MOST_RUNS as usize);
        warnings.push(Warning::of("with.plan.difference_share", message));
    }
    found.into()
}

/// How drag rises in every position: by its laps where there are enough, and by its film.
fn late_rises(ridden: &[Observation], shown: &Estimate, rig: &Rig, with: &With) -> Vec<LateRise> {
    let mut rises = Vec::new();
    let (wind, _) = shown.wind();
    for (place, &position) in shown.positions.iter().enumerate() {
        let own: Vec<Observation> = ridden
            .iter()
            .filter(|row| row.position == position)
            .copied()
            .collect();
        if let Some(rise) = measured_rise(&own, rig, shown.rolling_value(), wind) {
            rises.push(LateRise {
                position,
                known: RiseKnown::Measured,
                cda_m2: rise.into(),
            });
        }
        for film in with.film.iter().filter(|film| film.position == position) {
            let rise = assumed_rise(&film.filmed(), shown.cda_m2(place).value);
            rises.push(LateRise {
                position,
                known: RiseKnown::Assumed,
                cda_m2: TestFigure::assumed(rise),
            });
        }
    }
    rises
}
