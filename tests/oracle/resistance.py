"""Road load on a rider and the steady speed that a power buys."""

from dataclasses import dataclass, field
from math import atan, atan2, cos, degrees, radians, sin

from scipy.optimize import brentq

from air import STANDARD_GRAVITY_M_S2, apparent_wind

HELD_YAW_DEG = 45.0


@dataclass(frozen=True)
class Road:
    """All that sets the resistance at one place, drag area apart."""

    total_mass_kg: float
    rolling_coefficient: float
    density_kg_m3: float
    grade: float = 0.0
    headwind_m_s: float = 0.0
    crosswind_m_s: float = 0.0
    bearing_drag_n: float = 0.0
    bearing_drag_n_s_per_m: float = 0.0
    yaw_table: tuple = ()
    speed_exponent: float = 0.0
    reference_airspeed_m_s: float = 12.0
    gravity_m_s2: float = STANDARD_GRAVITY_M_S2
    ground_force_n: float = field(init=False)

    def __post_init__(self):
        theta = atan(self.grade)
        weight = self.total_mass_kg * self.gravity_m_s2
        object.__setattr__(
            self, "ground_force_n", weight * (self.rolling_coefficient * cos(theta) + sin(theta))
        )


def axial_ratio(yaw_table, yaw_deg):
    """k: linear in |yaw|, ends held, a cosine past 45 degrees (or past a later last row), untabled from behind."""
    yaw = abs(yaw_deg)
    if yaw >= 90.0:
        return cos(radians(yaw))
    last_yaw, last_ratio = yaw_table[-1]
    held_to = max(HELD_YAW_DEG, last_yaw)
    if yaw > held_to:
        return last_ratio * cos(radians(yaw)) / cos(radians(held_to))
    if yaw >= last_yaw:
        return last_ratio
    if yaw <= yaw_table[0][0]:
        return yaw_table[0][1]
    for (y0, k0), (y1, k1) in zip(yaw_table, yaw_table[1:]):
        if yaw <= y1:
            return k0 + (k1 - k0) * (yaw - y0) / (y1 - y0)
    raise AssertionError("the table covers every yaw up to its last row")


def air_force_n(road, cda_m2, speed_m_s):
    along, apparent = apparent_wind(speed_m_s, road.headwind_m_s, road.crosswind_m_s)
    if apparent == 0.0:
        return 0.0
    if road.yaw_table:
        k = axial_ratio(road.yaw_table, degrees(atan2(road.crosswind_m_s, along)))
    else:
        k = along / apparent
    s = (apparent / road.reference_airspeed_m_s) ** road.speed_exponent if road.speed_exponent else 1.0
    return 0.5 * road.density_kg_m3 * cda_m2 * k * s * apparent * apparent


def resistance_n(road, cda_m2, speed_m_s):
    bearings = road.bearing_drag_n + road.bearing_drag_n_s_per_m * speed_m_s
    return air_force_n(road, cda_m2, speed_m_s) + road.ground_force_n + bearings


def pedal_power_w(road, cda_m2, speed_m_s, drivetrain_efficiency):
    return resistance_n(road, cda_m2, speed_m_s) * speed_m_s / drivetrain_efficiency


def steady_speed_m_s(road, cda_m2, power_w, drivetrain_efficiency):
    """The highest speed at which the power at the wheel equals resistance times speed."""

    def surplus(v):
        return resistance_n(road, cda_m2, v) * v - drivetrain_efficiency * power_w

    top = 16.0
    while not all(surplus(top * m) > 0 for m in (1.0, 1.25, 1.5, 2.0, 3.0)):
        top *= 2
    steps = 4000
    upper = top
    for i in range(steps - 1, -1, -1):
        lower = top * i / steps
        if surplus(lower) < 0:
            return brentq(surplus, lower, upper, xtol=1e-15, rtol=1e-14)
        upper = lower
    raise ValueError("no steady speed above rest")
