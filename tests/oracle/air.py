"""Moist-air density, pressure on the course, gravity and wind at rider height."""

from math import cos, exp, hypot, log, radians, sin, sqrt

STANDARD_GRAVITY_M_S2 = 9.80665
DRY_AIR_GAS_CONSTANT_J_KG_K = 287.053
LAPSE_RATE_K_M = 0.0065
ZERO_CELSIUS_K = 273.15


def saturation_pressure_pa(temperature_c):
    """Over water: Picard et al. 2008 (CIPM-2007), psv = exp(A T^2 + B T + C + D/T)."""
    t = temperature_c + ZERO_CELSIUS_K
    return exp(1.2378847e-5 * t * t - 1.9121316e-2 * t + 33.93711047 - 6.3431645e3 / t)


def enhancement_factor(pressure_pa, temperature_c):
    return 1.00062 + 3.14e-8 * pressure_pa + 5.6e-7 * temperature_c**2


def vapour_mole_fraction(temperature_c, pressure_pa, relative_humidity):
    f = enhancement_factor(pressure_pa, temperature_c)
    return relative_humidity * f * saturation_pressure_pa(temperature_c) / pressure_pa


def vapour_mole_fraction_from_dew_point(dew_point_c, pressure_pa):
    f = enhancement_factor(pressure_pa, dew_point_c)
    return f * saturation_pressure_pa(dew_point_c) / pressure_pa


def compressibility(temperature_c, pressure_pa, xv):
    """Z of CIPM-2007: the polynomial takes degrees Celsius, the leading ratio kelvin."""
    t = temperature_c
    ratio = pressure_pa / (t + ZERO_CELSIUS_K)
    first = (
        1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t
        + (5.707e-6 - 2.051e-8 * t) * xv
        + (1.9898e-4 - 2.376e-6 * t) * xv * xv
    )
    return 1 - ratio * first + ratio**2 * (1.83e-11 - 0.765e-8 * xv * xv)


def density_of_mixture_kg_m3(temperature_c, pressure_pa, xv):
    """CIPM-2007 with 400 ppm of carbon dioxide."""
    dry_molar_mass = 28.96546e-3
    vapour_molar_mass = 18.01528e-3
    z = compressibility(temperature_c, pressure_pa, xv)
    dry = pressure_pa * dry_molar_mass / (z * 8.314472 * (temperature_c + ZERO_CELSIUS_K))
    return dry * (1 - xv * (1 - vapour_molar_mass / dry_molar_mass))


def moist_air_density_kg_m3(temperature_c, pressure_pa, relative_humidity):
    xv = vapour_mole_fraction(temperature_c, pressure_pa, relative_humidity)
    return density_of_mixture_kg_m3(temperature_c, pressure_pa, xv)


def standard_atmosphere(altitude_m):
    """Temperature K, pressure Pa and density kg/m3 at a geometric altitude (ISO 2533:1975)."""
    gas_constant = 8314.32 / 28.9644
    geopotential_m = 6356766.0 * altitude_m / (6356766.0 + altitude_m)
    temperature_k = 288.15 - LAPSE_RATE_K_M * geopotential_m
    exponent = STANDARD_GRAVITY_M_S2 / (gas_constant * LAPSE_RATE_K_M)
    pressure_pa = 101325.0 * (temperature_k / 288.15) ** exponent
    return temperature_k, pressure_pa, pressure_pa / (gas_constant * temperature_k)


def course_pressure_pa(sea_level_pressure_pa, altitude_m, temperature_c):
    """From the sea-level pressure, with the air temperature at the course."""
    t = temperature_c + ZERO_CELSIUS_K
    exponent = STANDARD_GRAVITY_M_S2 / (DRY_AIR_GAS_CONSTANT_J_KG_K * LAPSE_RATE_K_M)
    return sea_level_pressure_pa * (t / (t + LAPSE_RATE_K_M * altitude_m)) ** exponent


def gravity_m_s2(latitude_deg, altitude_m):
    """Somigliana's formula, WGS 84, with the free-air fall with altitude."""
    s = sin(radians(latitude_deg)) ** 2
    sea_level = 9.7803253359 * (1 + 0.00193185265241 * s) / sqrt(1 - 0.00669437999013 * s)
    return sea_level - 3.086e-6 * altitude_m


def log_law_ratio(height_m, reference_height_m, roughness_length_m):
    return log(height_m / roughness_length_m) / log(reference_height_m / roughness_length_m)


def wind_components_m_s(wind_m_s, from_deg, bearing_deg):
    """Head wind (against the rider positive) and cross wind."""
    angle = radians(from_deg - bearing_deg)
    return wind_m_s * cos(angle), wind_m_s * sin(angle)


def conditions_air(conditions):
    """Density, gravity and wind at rider height from the `conditions` of a request."""
    t = conditions["temperature_c"]
    altitude_m = conditions["altitude_m"]
    if "pressure_hpa" not in conditions:
        pressure_pa = standard_atmosphere(altitude_m)[1]
    elif conditions["pressure_is"] == "sea_level":
        pressure_pa = course_pressure_pa(100 * conditions["pressure_hpa"], altitude_m, t)
    else:
        pressure_pa = 100 * conditions["pressure_hpa"]
    if "dew_point_c" in conditions:
        xv = vapour_mole_fraction_from_dew_point(conditions["dew_point_c"], pressure_pa)
    else:
        xv = vapour_mole_fraction(t, pressure_pa, conditions["relative_humidity"])
    if "latitude_deg" in conditions:
        gravity = gravity_m_s2(conditions["latitude_deg"], altitude_m)
    else:
        gravity = STANDARD_GRAVITY_M_S2
    if "shelter_factor" in conditions:
        share = conditions["shelter_factor"]
    else:
        share = log_law_ratio(
            conditions["rider_height_m"], conditions["wind_height_m"], conditions["roughness_length_m"]
        )
    return {
        "density_kg_m3": density_of_mixture_kg_m3(t, pressure_pa, xv),
        "gravity_m_s2": gravity,
        "rider_wind_m_s": conditions["wind_speed_m_s"] * share,
        "wind_from_deg": conditions["wind_from_deg"],
    }


def apparent_wind(speed_m_s, headwind_m_s, crosswind_m_s):
    """Along-road component and size of the apparent wind."""
    along = speed_m_s + headwind_m_s
    return along, hypot(along, crosswind_m_s)
