//! What speed do these watts buy, where do they go, and what would the next ten watts buy?

use serde::{Deserialize, Serialize};

use super::request::{Request, check_number};
use crate::inputs::error::{Error, Warning};
use crate::inputs::fields;
use crate::inputs::message;
use crate::inputs::quantity::{Column, Figure, Quantity};
use crate::numerics::solve::{spaced, within};
use crate::physics::air::{Heading, RoadWind, STANDARD_DENSITY_KG_M3, apparent_wind};
use crate::physics::resistance::{Stretch, elasticity, slope};
use crate::riding::integrated::{Setup, TimeModel};
use crate::scenario::NO_BEARINGS;
use crate::scenario::propagation::{Case, Contribution, Propagation, figure};

/// What the question takes: a power or a speed, and the road at this spot.
#[derive(Clone, Copy, Debug, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct With {
    /// Power at the pedals, W; the default is 250.
    #[cfg_attr(feature = "types", ts(optional))]
    pub power_w: Option<Quantity>,
    /// Or a speed over the ground, m/s.
    #[cfg_attr(feature = "types", ts(optional))]
    pub speed_m_s: Option<Quantity>,
    /// Rise over run here; the course's if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub grade: Option<f64>,
    /// The way the road leads here, degrees; the course's if left out.
    #[cfg_attr(feature = "types", ts(optional))]
    pub bearing_deg: Option<f64>,
}

/// Power by where it goes, W; together the power at the pedals.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Breakdown {
    /// Into the air; negative where the wind pushes.
    pub air: f64,
    /// Into the tyres.
    pub rolling: f64,
    /// Into the hill; negative downhill.
    pub climbing: f64,
    /// Into the wheel bearings.
    pub bearings: f64,
    /// Lost in the drivetrain.
    pub drivetrain: f64,
}

/// By how many percent speed changes for one percent of each.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Elasticities {
    /// Of power.
    pub power: f64,
    /// Of drag area.
    pub cda: f64,
    /// Of mass.
    pub mass: f64,
    /// Of the rolling-resistance coefficient.
    pub rolling: f64,
    /// Of air density.
    pub density: f64,
}

/// The same watts in other air.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OtherAir {
    /// Density of the standard atmosphere at sea level, kg/m³.
    pub standard_density_kg_m3: f64,
    /// Speed in that, the wind as it is, m/s.
    pub standard_speed_m_s: f64,
    /// Speed in today's air without wind, m/s.
    pub still_speed_m_s: f64,
}

/// The answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Answer {
    /// Speed over the ground.
    pub speed_m_s: Figure,
    /// Power at the pedals.
    pub power_w: Figure,
    /// Where it goes.
    pub breakdown_w: Breakdown,
    /// Share of the road load that is air.
    pub aero_share: f64,
    /// What a percent of each input does to speed.
    pub elasticity: Elasticities,
    /// Density of the air.
    pub density_kg_m3: f64,
    /// Wind at rider height.
    pub rider_wind_m_s: f64,
    /// Its component against the rider.
    pub headwind_m_s: f64,
    /// Its component from the rider's right.
    pub crosswind_m_s: f64,
    /// Air speed the rider feels.
    pub apparent_wind_m_s: f64,
    /// Angle it comes at, degrees.
    pub yaw_deg: f64,
    /// Drag area ridden with, lapses counted.
    pub cda_m2: f64,
    /// What ten more watts would add to speed.
    pub next_10_w_m_s: Figure,
    /// The same watts in other air.
    pub other_air: OtherAir,
    /// Which inputs carry the doubt of the speed (or of the power, if a speed was asked for).
    pub surer: Vec<Contribution>,
    /// What is doubtful.
    pub warnings: Vec<Warning>,
    /// Curves.
    pub columns: Columns,
}

/// Curves over speed and over power.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Speeds, m/s.
    pub speed_m_s: Column,
    /// Power into the air at each speed, W.
    pub air_w: Column,
    /// Power into the tyres, W.
    pub rolling_w: Column,
    /// Power into the hill, W.
    pub climbing_w: Column,
    /// Power into the bearings, W.
    pub bearings_w: Column,
    /// Power lost in the drivetrain, W.
    pub drivetrain_w: Column,
    /// Powers, W.
    pub power_w: Column,
    /// Speed at each power, m/s.
    pub speed_at_power_m_s: Column,
    /// What ten more watts add to speed at each power, m/s.
    pub next_10_w_m_s: Column,
}

/// Ten watts, the step in which riders think of the next gain.
const STEP_W: f64 = 10.0;
const CURVE_POINTS: usize = 61;

enum Asked {
    Power,
    Speed,
}

/// The road at this spot.
#[derive(Clone, Copy)]
struct Spot {
    grade: f64,
    heading: Option<Heading>,
}

impl Spot {
    fn stretch<'a>(&self, setup: &'a Setup, density_kg_m3: f64, wind: RoadWind) -> Stretch<'a> {
        Stretch::new(
            &setup.machine,
            &setup.position.shape,
            density_kg_m3,
            wind,
            slope(self.grade),
        )
    }

    fn wind(&self, setup: &Setup) -> RoadWind {
        self.heading
            .map_or(RoadWind::default(), |heading| setup.wind.along(heading))
    }

    fn today<'a>(&self, setup: &'a Setup) -> Stretch<'a> {
        self.stretch(setup, setup.density_kg_m3, self.wind(setup))
    }
}

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
    let (asked, path, quantity, field) = asked(&with)?;
    let riding = scenario.riding_position;
    let spot = spot(&with, &scenario.course())?;
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
        columns: columns(&stretch, cda_m2, efficiency, speed_m_s, power_w),
    })
}

fn asked(with: &With) -> Result<(Asked, &'static str, Quantity, &'static fields::Field), Error> {
    match (with.power_w, with.speed_m_s) {
        (Some(_), Some(_)) => Err(Error::not_both("with.speed_m_s", "with.power_w")),
        (None, Some(speed_m_s)) => {
            crate::scenario::check_quantity(&fields::SPEED_M_S, "with.speed_m_s", &speed_m_s)?;
            Ok((
                Asked::Speed,
                "with.speed_m_s",
                speed_m_s,
                &fields::SPEED_M_S,
            ))
        }
        (power_w, None) => {
            let power_w = power_w.unwrap_or(fields::POWER_W.chosen());
            crate::scenario::check_quantity(&fields::POWER_W, "with.power_w", &power_w)?;
            Ok((Asked::Power, "with.power_w", power_w, &fields::POWER_W))
        }
    }
}

fn spot(with: &With, course: &crate::physics::course::Course) -> Result<Spot, Error> {
    let first = course.segments.first();
    let grade = match with.grade {
        Some(grade) => {
            check_number(&fields::GRADE, "with.grade", grade)?;
            grade
        }
        None => first.map_or(0.0, |segment| segment.slope.0 / segment.slope.1),
    };
    let heading = match with.bearing_deg {
        Some(bearing_deg) => {
            check_number(&fields::BEARING_DEG, "with.bearing_deg", bearing_deg)?;
            Some(Heading::new(bearing_deg))
        }
        None => first.and_then(|segment| segment.heading),
    };
    Ok(Spot { grade, heading })
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

fn columns(
    stretch: &Stretch<'_>,
    cda_m2: f64,
    efficiency: f64,
    speed_m_s: f64,
    power_w: f64,
) -> Columns {
    let top_m_s = (1.35 * speed_m_s).max(5.0);
    let speeds = spaced(0.0, top_m_s, CURVE_POINTS);
    let by = |part: &dyn Fn(f64) -> f64| speeds.iter().map(|&v| part(v)).collect::<Column>();
    let top_w = within(2.0 * power_w, 100.0, 2500.0);
    let powers = spaced(STEP_W, top_w, CURVE_POINTS);
    let at = |watts: f64| stretch.speed_m_s(watts * efficiency, cda_m2);
    Columns {
        air_w: by(&|v| v * stretch.air_n(v, cda_m2)),
        rolling_w: by(&|v| v * stretch.forces_with_air(v, 0.0).rolling_n),
        climbing_w: by(&|v| v * stretch.forces_with_air(v, 0.0).climbing_n),
        bearings_w: by(&|v| v * stretch.forces_with_air(v, 0.0).bearings_n),
        drivetrain_w: by(&|v| (v * stretch.total_n(v, cda_m2)).max(0.0) * (1.0 / efficiency - 1.0)),
        speed_at_power_m_s: powers.iter().map(|&watts| at(watts)).collect(),
        next_10_w_m_s: powers
            .iter()
            .map(|&watts| at(watts + STEP_W) - at(watts))
            .collect(),
        speed_m_s: speeds.into(),
        power_w: powers.into(),
    }
}
