"""The requests whose answers are worked out here. Every input is written out, so no default decides."""

from copy import deepcopy
from random import Random

SEED = 40233
RANDOM_RIDES = 36

RIDER = {"total_mass_kg": 82.0}
BIKE = {
    "rolling_coefficient": 0.004, "drivetrain_efficiency": 0.975, "rotating_mass_kg": 1.5,
    "bearing_drag_n": 0.091, "bearing_drag_n_s_per_m": 0.0087, "launch_force_n": 250.0, "lateral_m_s2": 4.0,
}
POSITION = {"name": "low", "cda_m2": 0.235, "cp_factor": 1.0, "w_prime_factor": 1.0}
POWER = {"cp_w": 260.0, "w_prime_j": 18000.0, "peak_w": 800.0, "long_ride_loss_w": 20.0, "long_ride_from_s": 1800.0}
COURSE = {"kind": "simple", "distance_m": 16093.44, "grade": 0.0, "bearing_deg": 90.0, "out_and_back": True}
CONDITIONS = {
    "temperature_c": 18.0, "pressure_hpa": 1015.0, "pressure_is": "sea_level", "altitude_m": 60.0,
    "relative_humidity": 0.6, "wind_speed_m_s": 0.0, "wind_from_deg": 250.0, "wind_height_m": 10.0,
    "rider_height_m": 1.2, "roughness_length_m": 0.1,
}
EVEN = {"kind": "even"}
YAW_TABLE = [{"yaw_deg": yaw, "ratio": ratio} for yaw, ratio in ((0, 1.0), (5, 0.99), (10, 0.96), (15, 0.93), (20, 0.95))]
FADE = {"tired_cda_m2": 0.26, "begins_s": 600.0, "complete_s": 1100.0}
LAPSES = {"share": 0.08, "cda_m2": 0.28}


def at_power(power_w):
    return {"kind": "power", "power_w": power_w}


def scenario(*, bike=None, position=None, positions=None, power=None, course=None, conditions=None, without=(), rider=None,
             start="standing", riding_position=0):
    """The base scenario with some inputs changed, and those named in `without` left out."""
    built = {
        "fasterby": 1,
        "rider": RIDER | (rider or {}),
        "bike": BIKE | (bike or {}),
        "positions": positions or [POSITION | (position or {})],
        "riding_position": riding_position,
        "power": POWER | (power or {}),
        "course": course if course and course.get("kind") == "profile" else COURSE | (course or {}),
        "conditions": CONDITIONS | (conditions or {}),
        "start": start,
    }
    for part, name in without:
        del built[part][name]
    return deepcopy(built)


def profile(random, count, steepest, shortest_m, longest_m, turning_deg):
    """Whole-metre distances and centimetre elevations, from a walk in grade and bearing."""
    distance, elevation, bearing = 0.0, 200.0, float(random.randrange(360))
    points = [{"distance_m": distance, "elevation_m": elevation, "bearing_deg": bearing}]
    for _ in range(count - 1):
        length = float(random.randrange(shortest_m, longest_m))
        distance += length
        elevation = round(elevation + random.uniform(-steepest, steepest) * length, 2)
        bearing = float(round((bearing + random.uniform(-turning_deg, turning_deg)) % 360, 1))
        points.append({"distance_m": distance, "elevation_m": elevation, "bearing_deg": bearing})
    return {"kind": "profile", "points": points}


def cornered(points):
    names = ("distance_m", "elevation_m", "bearing_deg", "radius_m")
    return {"kind": "profile", "points": [dict(zip(names, point)) for point in points]}


def named_rides():
    hills = profile(Random(SEED + 1), 36, 0.06, 250, 900, 60)
    wind = {"wind_speed_m_s": 5.0}
    one_way = {"out_and_back": False}
    return {
        "calm and flat, standing": (scenario(), at_power(260.0)),
        "calm and flat, rolling": (scenario(start="rolling"), at_power(260.0)),
        "calm and flat, from 8 m/s": (scenario(start={"speed_m_s": 8.0}), at_power(260.0)),
        "calm and flat, from faster than steady": (scenario(start={"speed_m_s": 15.0}, course={"distance_m": 3000.0}), at_power(240.0)),
        "a weak launch": (scenario(bike={"launch_force_n": 90.0}, course={"distance_m": 2000.0}), at_power(450.0)),
        "windy out and back": (scenario(conditions=wind), at_power(250.0)),
        "windy, with a shelter factor": (
            scenario(conditions=wind | {"shelter_factor": 0.45}, without=[("conditions", "roughness_length_m")]), at_power(250.0)),
        "yaw table in a cross wind": (
            scenario(position={"yaw_table": YAW_TABLE}, conditions={"wind_speed_m_s": 7.0, "wind_from_deg": 10.0}), at_power(270.0)),
        "a position that fades": (scenario(position={"fade": FADE}), at_power(265.0)),
        "a position with lapses": (scenario(position={"lapses": LAPSES}), at_power(265.0)),
        "fade and lapses together": (
            scenario(position={"fade": FADE | {"begins_s": 0.0}, "lapses": LAPSES}, conditions=wind), at_power(265.0)),
        "a fade all at once": (scenario(position={"fade": FADE | {"complete_s": 600.0}}, start="rolling"), at_power(265.0)),
        "sea-level pressure at 1500 m": (scenario(conditions={"altitude_m": 1500.0, "temperature_c": 24.0}), at_power(250.0)),
        "pressure at the course at 1500 m": (
            scenario(conditions={"altitude_m": 1500.0, "pressure_hpa": 851.0, "pressure_is": "course"}), at_power(250.0)),
        "altitude alone": (
            scenario(conditions={"altitude_m": 1500.0}, without=[("conditions", "pressure_hpa"), ("conditions", "pressure_is")]), at_power(250.0)),
        "dew point for humidity": (
            scenario(conditions={"dew_point_c": 14.0}, without=[("conditions", "relative_humidity")]), at_power(250.0)),
        "gravity at a latitude": (
            scenario(conditions={"latitude_deg": 5.0, "altitude_m": 2300.0}, course={"grade": 0.02}), at_power(280.0)),
        "hilly profile with bearings": (scenario(course=hills, conditions={"wind_speed_m_s": 4.0}), at_power(270.0)),
        "hilly profile with yaw table and fade": (
            scenario(course=hills, conditions={"wind_speed_m_s": 4.0}, position={"yaw_table": YAW_TABLE, "fade": FADE}, start="rolling"), at_power(270.0)),
        "a tailwind leg": (
            scenario(course=one_way, conditions={"wind_speed_m_s": 9.0, "wind_from_deg": 275.0}), at_power(200.0)),
        "a tailwind faster than the rider, uphill": (
            scenario(course=one_way | {"grade": 0.06, "distance_m": 5000.0}, conditions={"wind_speed_m_s": 14.0, "wind_from_deg": 260.0}, start="rolling"),
            at_power(220.0)),
        "drag that falls with airspeed": (scenario(position={"speed_exponent": -0.15, "reference_airspeed_m_s": 12.0}), at_power(260.0)),
        "airspeed exponent, yaw table and wind": (
            scenario(position={"speed_exponent": -0.1, "reference_airspeed_m_s": 13.0, "yaw_table": YAW_TABLE}, conditions=wind), at_power(260.0)),
        "up and back down": (scenario(course={"grade": 0.03}, start="rolling"), at_power(260.0)),
        "one way down": (scenario(course=one_way | {"grade": -0.02, "distance_m": 8000.0}), at_power(200.0)),
        "no bearing drag, no rotating mass": (
            scenario(bike={"bearing_drag_n": 0.0, "bearing_drag_n_s_per_m": 0.0, "rotating_mass_kg": 0.0}), at_power(260.0)),
        "one corner": (
            scenario(bike={"braking_m_s2": 3.0}, course=cornered([
                (0, 50, 0), (800, 50, 0, 25), (830, 50, 90), (2000, 50, 90)])), at_power(300.0)),
        "corners on a descent": (
            scenario(bike={"braking_m_s2": 2.0, "lateral_m_s2": 5.0}, conditions={"wind_speed_m_s": 3.0}, start="rolling", course=cornered([
                (0, 150, 0), (600, 126, 0, 40), (650, 124, 60, 18), (680, 123, 150), (900, 114, 150), (960, 111.6, 150, 15),
                (985, 110.6, 240), (2000, 120, 240)])), at_power(280.0)),
        "even effort over a short distance": (scenario(course={"distance_m": 3000.0}), EVEN),
        "even effort over ten miles": (scenario(conditions=wind), EVEN),
        "even effort, critical power alone": (
            scenario(without=[("power", "peak_w"), ("power", "long_ride_loss_w"), ("power", "long_ride_from_s")]), EVEN),
        "even effort in a costly position": (
            scenario(position={"cp_factor": 0.95, "w_prime_factor": 0.9, "fade": FADE}, course={"distance_m": 40233.6}), EVEN),
        "even effort on hills": (scenario(course=hills, conditions={"wind_speed_m_s": 4.0}, start="rolling"), EVEN),
        "even effort over 180 km": (
            scenario(course={"distance_m": 180000.0}, position={"fade": {"tired_cda_m2": 0.27, "begins_s": 5400.0, "complete_s": 14400.0}, "cp_factor": 0.97},
                     conditions={"wind_speed_m_s": 3.0}), EVEN),
        "the power for a time": (scenario(conditions=wind), {"kind": "time", "time_s": 1500.0}),
        "a turn, uphill and in wind": (scenario(course={"turn_radius_m": 5.0, "grade": 0.01}, conditions=wind, bike={"braking_m_s2": 3.0}), at_power(260.0)),
    }


def random_rides():
    random = Random(SEED)
    for number in range(1, RANDOM_RIDES + 1):
        course = profile(random, random.randrange(5, 41), 0.08, 80, 1200, 120)
        position = {"cda_m2": round(random.uniform(0.19, 0.36), 4)}
        if random.random() < 0.4:
            position["yaw_table"] = YAW_TABLE
        if random.random() < 0.4:
            begins = float(random.randrange(0, 1500))
            position["fade"] = {"tired_cda_m2": round(position["cda_m2"] * random.uniform(1.02, 1.2), 4), "begins_s": begins,
                                "complete_s": begins + random.randrange(60, 1200)}
        if random.random() < 0.3:
            position["lapses"] = {"share": round(random.uniform(0.02, 0.2), 3), "cda_m2": round(position["cda_m2"] * 1.2, 4)}
        if random.random() < 0.3:
            position |= {"speed_exponent": round(random.uniform(-0.2, 0.1), 3), "reference_airspeed_m_s": 12.0}
        conditions = {
            "temperature_c": round(random.uniform(2, 34), 1), "pressure_hpa": round(random.uniform(985, 1035), 1),
            "altitude_m": float(random.randrange(0, 1800)), "relative_humidity": round(random.uniform(0.2, 1), 2),
            "wind_speed_m_s": round(random.uniform(0, 6), 2), "wind_from_deg": float(random.randrange(360)),
            "roughness_length_m": random.choice([0.005, 0.03, 0.1, 0.25]),
        }
        bike = {"rolling_coefficient": round(random.uniform(0.0025, 0.007), 5), "drivetrain_efficiency": round(random.uniform(0.94, 0.99), 3)}
        start = random.choice(["standing", "rolling", {"speed_m_s": 7.0}])
        effort = EVEN if number % 6 == 0 else at_power(float(random.randrange(200, 400)))
        yield f"random ride {number}", (
            scenario(course=course, position=position, conditions=conditions, bike=bike, start=start,
                     rider={"total_mass_kg": round(random.uniform(58, 105), 1)}), effort)


LOW = POSITION | {"cda_m2": 0.225}
STEADY = POSITION | {"name": "steady", "cda_m2": 0.25}
TWENTY_FIVE = {"distance_m": 40233.6}


def position_pairs():
    """Hold-or-fade: a low position (0) that is not kept, a steady one (1) that is."""

    def pair(low, effort, steady=None, **parts):
        return scenario(positions=[LOW | low, STEADY | (steady or {})], **parts), {"low": 0, "steady": 1, "effort": effort}

    late = {"tired_cda_m2": 0.27, "begins_s": 1200.0, "complete_s": 2400.0}
    early = {"tired_cda_m2": 0.275, "begins_s": 300.0, "complete_s": 900.0}
    sitting_up = {"share": 0.15, "cda_m2": 0.33}
    wind = {"wind_speed_m_s": 4.0}
    hills = profile(Random(SEED + 2), 30, 0.05, 400, 1600, 80)
    return {
        "late fade at given power": pair({"fade": late}, at_power(255.0), course=TWENTY_FIVE),
        "early fade at given power": pair({"fade": early}, at_power(255.0), course=TWENTY_FIVE, start="rolling"),
        "lapses at given power": pair({"lapses": sitting_up}, at_power(255.0), course=TWENTY_FIVE, conditions=wind),
        "a position that is held": pair({}, at_power(255.0)),
        "a fade after the finish": pair({"fade": late | {"begins_s": 6000.0, "complete_s": 7000.0}}, at_power(255.0)),
        "low never catches up": pair({"cda_m2": 0.26, "fade": {"tired_cda_m2": 0.28, "begins_s": 600.0, "complete_s": 900.0}}, at_power(255.0)),
        "fade on hills with a yaw table": pair({"fade": late, "yaw_table": YAW_TABLE}, at_power(260.0), {"yaw_table": YAW_TABLE},
                                               course=hills, conditions=wind),
        "late fade, even effort": pair({"fade": late, "cp_factor": 0.99}, EVEN, course=TWENTY_FIVE, conditions=wind),
        "early fade, even effort": pair({"fade": early}, EVEN, course=TWENTY_FIVE, start="rolling"),
        "lapses, even effort": pair({"lapses": {"share": 0.2, "cda_m2": 0.34}, "cp_factor": 0.985, "w_prime_factor": 0.95}, EVEN, course=TWENTY_FIVE),
        "fade and lapses, even effort": pair({"cda_m2": 0.215, "fade": late | {"tired_cda_m2": 0.26}, "lapses": {"share": 0.05, "cda_m2": 0.3}}, EVEN,
                                             course=TWENTY_FIVE, conditions=wind),
        "even effort for 100 miles": pair({"fade": {"tired_cda_m2": 0.262, "begins_s": 3600.0, "complete_s": 10800.0}, "cp_factor": 0.995}, EVEN,
                                          course={"distance_m": 160934.4}, conditions={"wind_speed_m_s": 2.0}),
    }


def change_pairs():
    """Power-or-drag: a share more power against a share less drag."""

    def pair(effort, power_change=0.1, cda_change=-0.1, **parts):
        return scenario(**parts), {"power_change": power_change, "cda_change": cda_change, "effort": effort}

    wind = {"wind_speed_m_s": 5.0}
    hills = profile(Random(SEED + 3), 25, 0.04, 400, 1500, 80)
    return {
        "flat and calm at given power": pair(at_power(260.0), start="rolling"),
        "windy at given power": pair(at_power(260.0), conditions=wind),
        "uphill at given power": pair(at_power(280.0), course={"grade": 0.02, "out_and_back": False, "distance_m": 8000.0}),
        "small changes at given power": pair(at_power(260.0), 0.02, -0.03, course=TWENTY_FIVE),
        "fade at given power": pair(at_power(260.0), 0.05, -0.05, position={"fade": FADE}),
        "hills with a yaw table at given power": pair(at_power(270.0), 0.05, -0.08, course=hills, conditions=wind, position={"yaw_table": YAW_TABLE}),
        "less power, more drag": pair(at_power(300.0), -0.05, 0.05),
        "flat and calm, even effort": pair(EVEN),
        "windy over twenty-five miles, even effort": pair(EVEN, course=TWENTY_FIVE, conditions=wind),
        "short, even effort": pair(EVEN, 0.05, -0.05, course={"distance_m": 4000.0}),
        "hills, even effort": pair(EVEN, 0.05, -0.08, course=hills, conditions=wind, position={"cp_factor": 0.98}),
        "a hundred miles, even effort": pair(EVEN, 0.03, -0.03, course={"distance_m": 160934.4}),
    }
