//! What speed do these watts buy, where do they go, and what would the next ten watts buy?

mod answer;
mod with;

use super::request::Request;
use crate::inputs::error::{Error, Warning};
use crate::inputs::message;
use crate::physics::air::{RoadWind, STANDARD_DENSITY_KG_M3, apparent_wind};
use crate::physics::resistance::{Stretch, elasticity};
use crate::riding::integrated::{Setup, TimeModel};
use crate::scenario::NO_BEARINGS;
use crate::scenario::propagation::{Case, Propagation, figure};
use answer::STEP_W;
pub use answer::{Answer, Breakdown, Columns, Elasticities, OtherAir};
use with::Asked;
pub use with::With;

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
    let (asked, path, quantity, field) = with.asked()?;
    let riding = scenario.riding_position;
    let spot = with.spot(&scenario.course())?;
    if spot.heading.is_some() {
        // Here the direction is known, whatever the course leaves out.
        warnings.retain(|warning| warning.kind != NO_BEARINGS);
    }
    let inquiry = Propagation::new(&scenario, &[riding], &[(path, quantity, field)]);

    let outputs = |case: &Case<'_>, _: &dyn TimeModel| -> Result<[f64; 3], Error> {
        let setup = case.setup(riding)?;
        let stretch = spot.today(&setup);
        let cda_m2 = setup.position.cda_at_m2(0.0);
        let efficiency = setup.machine.drivetrain_efficiency;
        let own = case.own.first().copied().unwrap_or(quantity.value);
        let (speed_m_s, power_w) = match asked {
            Asked::Power => (stretch.speed_m_s(own * efficiency, cda_m2), own),
            Asked::Speed => (
                own,
                (own * stretch.total_n(own, cda_m2) / efficiency).max(0.0),
            ),
        };
        let faster_m_s = stretch.speed_m_s((power_w + STEP_W) * efficiency, cda_m2);
        let steady_m_s = stretch.speed_m_s(power_w * efficiency, cda_m2);
        Ok([speed_m_s, power_w, faster_m_s - steady_m_s])
    };
    let spread = inquiry.spread(outputs)?;
    let [speed_m_s, power_w, _] = spread.base;

    let setup = inquiry.base(|case| case.setup(riding))?;
    let wind = spot.wind(&setup);
    let stretch = spot.today(&setup);
    let cda_m2 = setup.position.cda_at_m2(0.0);
    let forces = stretch.forces(speed_m_s, cda_m2);
    let efficiency = setup.machine.drivetrain_efficiency;
    let road_power_w = power_w * efficiency;
    let elastic = elasticity(&stretch, speed_m_s, cda_m2);
    doubts(
        &asked,
        &setup,
        &stretch,
        speed_m_s,
        road_power_w,
        &mut warnings,
    );
    let still = spot.stretch(&setup, setup.density_kg_m3, RoadWind::default());
    let standard = spot.stretch(&setup, STANDARD_DENSITY_KG_M3, wind);
    let (apparent_wind_m_s, yaw) = apparent_wind(speed_m_s, wind);
    let surer = match asked {
        Asked::Power => inquiry.contributions(&spread, |o| o[0]),
        Asked::Speed => inquiry.contributions(&spread, |o| o[1]),
    };
    let total_n = forces.total_n();
    Ok(Answer {
        speed_m_s: figure(&spread, |o| o[0]),
        power_w: figure(&spread, |o| o[1]),
        breakdown_w: Breakdown {
            air: forces.air_n * speed_m_s,
            rolling: forces.rolling_n * speed_m_s,
            climbing: forces.climbing_n * speed_m_s,
            bearings: forces.bearings_n * speed_m_s,
            drivetrain: power_w - road_power_w,
        },
        aero_share: if total_n == 0.0 {
            0.0
        } else {
            forces.air_n / total_n
        },
        elasticity: elastic.map_or(
            Elasticities {
                power: 0.0,
                cda: 0.0,
                mass: 0.0,
                rolling: 0.0,
                density: 0.0,
            },
            |e| Elasticities {
                power: e.power,
                cda: e.cda,
                mass: e.mass,
                rolling: e.rolling,
                density: e.density,
            },
        ),
        density_kg_m3: setup.density_kg_m3,
        rider_wind_m_s: scenario.rider_wind_m_s(),
        headwind_m_s: wind.head_m_s,
        crosswind_m_s: wind.cross_m_s,
        apparent_wind_m_s,
        yaw_deg: yaw.to_degrees(),
        cda_m2,
        next_10_w_m_s: figure(&spread, |o| o[2]),
        other_air: OtherAir {
            standard_density_kg_m3: STANDARD_DENSITY_KG_M3,
            standard_speed_m_s: standard.speed_m_s(road_power_w, cda_m2),
            still_speed_m_s: still.speed_m_s(road_power_w, cda_m2),
        },
        surer,
        warnings,
        columns: Columns::new(&stretch, cda_m2, efficiency, speed_m_s, power_w),
    })
}

fn doubts(
    asked: &Asked,
    setup: &Setup,
    stretch: &Stretch<'_>,
    speed_m_s: f64,
    road_power_w: f64,
    warnings: &mut Vec<Warning>,
) {
    let cda_m2 = setup.position.cda_at_m2(0.0);
    let mut warn = |field: &str, message| warnings.push(Warning::of(field, message));
    let needed_n = stretch.total_n(speed_m_s, cda_m2);
    if matches!(asked, Asked::Speed) && needed_n < 0.0 {
        warn("with.speed_m_s", message::pushed());
    }
    if needed_n > setup.machine.launch_force_n {
        warn("scenario.bike.launch_force_n", message::launch());
    }
    if let Some(last_deg) = setup.position.shape.last_yaw_deg()
        && stretch.yaw(speed_m_s).to_degrees() > last_deg
    {
        warn("scenario.positions", message::beyond_table(last_deg));
    }
    if !setup.position.shape.yaw_table.is_empty() && stretch.steady_speeds(road_power_w, cda_m2) > 1
    {
        warn("with.power_w", message::several_speeds());
    }
}
