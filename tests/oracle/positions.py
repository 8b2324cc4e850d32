"""data/positions.json: which-position answered by brute force: times, crossovers and what a position may cost.

Each choice is written out as a plain position with its own power; equipment, kinds of lapse and a test's thirds are resolved here,
by hand, from what the request says.
"""

from copy import deepcopy
from functools import cache
from math import exp, log
from scipy.optimize import brentq

from asked import BIKE, POSITION, POWER, RIDER, YAW_TABLE, scenario
from effort import even_effort
from tables import rounded, write_json

# Where two cross, and what ties them, agree to 1e-6, or to what moves a time by 5e-8, by 1e-6 with corners, where they cross at a
# shallow angle.
TIME_TOLERANCE = 1e-6
ROOT_TOLERANCE = 1e-6
RIDE_TOLERANCE = 5e-8
CORNERING_TOLERANCE = 1e-6
SCANNED_KM = (5, 12, 28, 60, 110, 200)
ABOUT = {
    "what": "which-position requests and their answers by SciPy's DOP853 (rtol 1e-12) and brentq",
    "tolerance": {"time_s": TIME_TOLERANCE, "allowed_w": ROOT_TOLERANCE},
    "tolerance_reason": "relative; of watts, to the critical power that they are part of; of a crossover, beside it: 1e-6, or what moves a time by 5e-8, by 1e-6 with corners",
}
BASE = POSITION | {"cda_m2": 0.245}
EVENTS = [{"name": "ten", "distance_m": 16093.44}, {"name": "fifty", "distance_m": 80467.2}]


def asked():
    """(request's scenario, [(position, power, changes of bike and mass) of each choice])."""
    low = {"name": "low", "cda_m2": 0.228, "cp_factor": 0.965, "w_prime_factor": 1.0}
    fading = low | {"name": "fading", "cda_m2": 0.222, "cp_factor": 0.99}
    fade = {"tired_cda_m2": 0.262, "begins_s": 1200.0, "complete_s": 3000.0}
    wind = {"wind_speed_m_s": 3.0}
    own_power = {"cp_w": 252.0, "w_prime_j": 21000.0, "peak_w": 780.0, "long_ride_loss_w": 26.0, "long_ride_from_s": 1800.0}

    third, last, test_s = 0.224, 0.234, 1800.0
    rise = (last - third) * 1.5
    thirds = {"first_third_cda_m2": third, "last_third_cda_m2": last, "test_s": test_s}
    by_thirds = {"tired_cda_m2": low["cda_m2"] + rise, "begins_s": 0.0, "complete_s": test_s}

    kinds = [{"name": "junctions", "share": 0.06, "cda_m2": 0.31}, {"name": "drinking", "share": 0.02, "cda_m2": 0.27}]
    as_one = {"share": 0.08, "cda_m2": (0.06 * 0.31 + 0.02 * 0.27) / 0.08}
    helmet = {"name": "long tail", "cda_change_m2": -0.004, "lapses": [{"share": 0.15, "cda_m2": 0.3}]}
    wheel = {"name": "disc", "cda_change_m2": -0.002, "mass_change_kg": 0.6, "lateral_m_s2": 2.5, "yaw_table": YAW_TABLE}
    corners = {"kind": "profile", "points": [
        {"distance_m": 0.0, "elevation_m": 50.0, "bearing_deg": 30.0},
        {"distance_m": 4000.0, "elevation_m": 70.0, "bearing_deg": 120.0, "radius_m": 18.0},
        {"distance_m": 4050.0, "elevation_m": 70.0, "bearing_deg": 210.0},
        {"distance_m": 10000.0, "elevation_m": 50.0, "bearing_deg": 210.0},
    ]}
    helmeted = low | {"cda_m2": low["cda_m2"] - 0.004, "lapses": {"share": 0.15, "cda_m2": 0.3}}
    wheeled = low | {"cda_m2": low["cda_m2"] - 0.002, "yaw_table": YAW_TABLE,
                     "lapses": as_one | {"cda_m2": as_one["cda_m2"] - 0.002}}
    return {
        "two positions, calm": (scenario(positions=[BASE, low]), [(BASE, POWER, {}), (low, POWER, {})]),
        "one that costs more and one that fades, in wind": (
            scenario(positions=[BASE, low, fading | {"fade": fade}], conditions=wind),
            [(BASE, POWER, {}), (low, POWER, {}), (fading | {"fade": fade}, POWER, {})]),
        "power tests of its own": (
            scenario(positions=[BASE, low | {"power": own_power}]),
            [(BASE, POWER, {}), (low | {"cp_factor": 1.0}, own_power, {})]),
        "a test's thirds": (
            scenario(positions=[BASE, low | {"fade_test": thirds}], conditions=wind),
            [(BASE, POWER, {}), (low | {"fade": by_thirds}, POWER, {})]),
        "kinds of lapse and equipment, with corners": (
            scenario(positions=[BASE, low | {"lapses": kinds, "equipment": [helmet, wheel]}], course=corners, conditions=wind),
            [(BASE, POWER, {}), (low | {"lapses": as_one}, POWER, {}), (helmeted, POWER, {}),
             (wheeled, POWER, {"total_mass_kg": RIDER["total_mass_kg"] + 0.6, "lateral_m_s2": 2.5})]),
    }


def over(base, choice, distance_m, cp_factor=1.0):
    """Time of the best even effort of a choice over a distance, its critical power scaled."""
    position, power, changes = choice
    there = deepcopy(base)
    course = there["course"]
    if course["kind"] == "profile":
        scale = distance_m / course["points"][-1]["distance_m"]
        bottom = course["points"][0]["elevation_m"]
        for point in course["points"]:
            point["distance_m"] *= scale
            point["elevation_m"] = bottom + (point["elevation_m"] - bottom) * scale
    else:
        course["distance_m"] = distance_m
    there["power"] = power
    there["rider"]["total_mass_kg"] = changes.get("total_mass_kg", RIDER["total_mass_kg"])
    there["bike"]["lateral_m_s2"] = changes.get("lateral_m_s2", BIKE["lateral_m_s2"])
    position = position | {"cp_factor": position["cp_factor"] * cp_factor}
    return even_effort(there, position)[1]


def crossovers(base, choices):
    # The first choice is met by each of the others.
    over_first = cache(lambda ln_m: over(base, choices[0], exp(ln_m)))
    found = []
    for place, choice in enumerate(choices[1:], start=1):
        def lead_s(ln_m, choice=choice):
            return over_first(ln_m) - over(base, choice, exp(ln_m))

        ends = [(log(1000 * km), lead_s(log(1000 * km))) for km in SCANNED_KM]
        for (a, lead_a), (b, lead_b) in zip(ends, ends[1:]):
            if lead_a * lead_b < 0:
                at = brentq(lead_s, a, b, xtol=1e-11, rtol=1e-12)
                slope_s = (lead_s(at + 0.01) - lead_s(at - 0.01)) / 0.02
                ride = CORNERING_TOLERANCE if base["course"]["kind"] == "profile" else RIDE_TOLERANCE
                allowed = max(ROOT_TOLERANCE, ride * over(base, choice, exp(at)) / abs(slope_s))
                found.append({"choice": place, "distance_m": exp(at), "faster_beyond": lead_b > lead_a, "tolerance": rounded(allowed)})
    return found


def costs(base, choices, times):
    """What the second choice may cost against the first at each event, by the factor on its critical power that ties."""
    found = []
    for event, at in enumerate(EVENTS):
        position, power, _ = choices[1]
        factor = brentq(lambda f: over(base, choices[1], at["distance_m"], f) - times[event][0], 0.8, 1.2, xtol=1e-11)
        allowed = choices[0][1]["cp_w"] * choices[0][0]["cp_factor"] - factor * position["cp_factor"] * power["cp_w"]
        found.append({"choice": 1, "against": 0, "event": event, "allowed_w": allowed})
    return found


def answered(job):
    name, (base, choices) = job
    base["events"] = EVENTS
    base["fasterby"] = 2
    times = [[over(base, choice, at["distance_m"]) for choice in choices] for at in EVENTS]
    return {
        "name": name,
        "request": {"scenario": base, "with": {}},
        "expected": {"times_s": times, "crossovers": crossovers(base, choices), "costs": costs(base, choices, times)},
    }


def write(folder):
    cases = [answered(case) for case in asked().items()]
    write_json(folder / "positions.json", {**ABOUT, "cases": cases})
