//! Rider, bicycle and air, which turn the integrals of a lap into one equation for CdA and Crr.

use super::lap::Sums;
use crate::physics::resistance::Machine;

/// What a test is worked out with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rig {
    /// Rider and bicycle; its rolling coefficient counts where that is held.
    pub machine: Machine,
    /// Density of the air, kg/m³.
    pub density_kg_m3: f64,
    /// What recorded powers are multiplied by: 1 unless an error is tried.
    pub power_scale: f64,
    /// What recorded speeds are multiplied by: 1 unless an error is tried.
    pub speed_scale: f64,
    /// What is added to the grade of every road whose rise was not recorded: 0 unless an error is tried.
    pub grade_missed: f64,
    /// What is added to the wind that stretches share: from north and from east, m/s; 0 unless an error is tried.
    pub wind_added: [f64; 2],
    /// What is added to the winds of stretches that have their own.
    pub own_wind_added: [f64; 2],
    /// What is added to the head wind of stretches without a heading, m/s.
    pub head_added_m_s: f64,
}

/// `loss = CdA · air + Crr · rolling`, all in joules.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Equation {
    /// What the road and the air took.
    pub loss_j: f64,
    /// J for each m² of drag area.
    pub air: f64,
    /// J for a coefficient of 1.
    pub rolling: f64,
    /// What the error of a lap is taken to be a share of: what went in (pedalled, given up by speed and by height), and what a
    /// wind does that is not quite as it was taken.
    pub scale_j: f64,
}

/// A lap that nothing goes into still has an error: that of this drag area; assumed.
const LEAST_CDA_M2: f64 = 0.05;
/// For each share of the energy that a run scatters by, its wind is out by this times that share, m/s: 3 cm/s for half a
/// per cent; assumed. Intervals hold what they promise from none to three times as much.
const WIND_FOR_SHARE_M_S: f64 = 6.0;
/// The drag area that such a wind acts on; assumed, as no more than weights follow from it.
const USUAL_CDA_M2: f64 = 0.25;

impl Rig {
    /// A rig without errors.
    pub fn new(machine: Machine, density_kg_m3: f64) -> Self {
        Self {
            machine,
            density_kg_m3,
            power_scale: 1.0,
            speed_scale: 1.0,
            grade_missed: 0.0,
            wind_added: [0.0; 2],
            own_wind_added: [0.0; 2],
            head_added_m_s: 0.0,
        }
    }

    /// `m g`, N.
    pub fn weight_n(&self) -> f64 {
        self.machine.total_mass_kg * self.machine.gravity_m_s2
    }

    /// The equation of a lap; `wind` is what is added to the wind that it was reduced in.
    pub fn equation(&self, sums: &Sums, wind: [f64; 2]) -> Equation {
        let m = &self.machine;
        let scale = self.speed_scale;
        let distance_m = sums.distance_m * scale;
        let pedalled_j = m.drivetrain_efficiency * self.power_scale * sums.work_j;
        let gained_j = m.effective_mass_kg() * sums.half_square_gained * scale * scale;
        let climbed_j =
            self.weight_n() * (sums.rise_m + self.grade_missed * scale * sums.unsurveyed_m);
        let bearings_j = m.bearing_drag_n * distance_m
            + m.bearing_drag_n_s_per_m * sums.square_sum * scale * scale;
        let air_sum = sums.air_sum_with(self.wind_on(sums, wind))
            + sums.air_sum_added(self.head_added_m_s)
            + (scale - 1.0) * sums.air_by_scale;
        let air = 0.5 * self.density_kg_m3 * air_sum;
        let input_j = pedalled_j.max(0.0) + (-gained_j).max(0.0) + (-climbed_j).max(0.0);
        // ½ρ CdA · 2 w ∫v² dt.
        let gusts_j = self.density_kg_m3 * USUAL_CDA_M2 * WIND_FOR_SHARE_M_S * sums.one_way_sum;
        Equation {
            loss_j: pedalled_j - gained_j - climbed_j - bearings_j,
            air,
            rolling: self.weight_n() * distance_m,
            scale_j: input_j.max(LEAST_CDA_M2 * air.abs()).hypot(gusts_j),
        }
    }

    /// How the air's factor changes with each component of the wind, J/m² for each m/s.
    pub fn air_slopes(&self, sums: &Sums, wind: [f64; 2]) -> [f64; 2] {
        sums.air_sum_slopes(self.wind_on(sums, wind))
            .map(|slope| 0.5 * self.density_kg_m3 * slope)
    }

    /// A wind with the error that is tried.
    fn wind_on(&self, sums: &Sums, wind: [f64; 2]) -> [f64; 2] {
        let added = match sums.own_wind {
            true => self.own_wind_added,
            false => self.wind_added,
        };
        std::array::from_fn(|i| wind[i] + added[i])
    }
}
