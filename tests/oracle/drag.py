"""data/drag.json: drag areas, Crr, their differences and intervals from typed runs, by NumPy's least squares and SciPy's Student's t."""

from math import hypot
from random import Random

import numpy as np
from scipy.stats import t

from air import moist_air_density_kg_m3
from tables import rounded, write_json

SEED = 1705
COUNT = 24
GRAVITY = 9.80665
TOLERANCE = 1e-8  # both solve a well-conditioned linear problem; the density is the formula's own


def rider(random):
    return {
        "total_mass_kg": round(random.uniform(60, 100), 1), "drivetrain_efficiency": round(random.uniform(0.95, 0.99), 3),
        "bearing_drag_n": 0.091, "bearing_drag_n_s_per_m": 0.0087, "rolling_coefficient": round(random.uniform(0.003, 0.006), 5),
    }


def loss(bike, air, run):
    """What road and air took in a second, J; its factors of CdA and Crr; and what its error is a share of."""
    v, through = run["speed_m_s"], run["speed_m_s"] + run["wind_head_m_s"]
    climbed = bike["total_mass_kg"] * GRAVITY * v * run["grade"] / hypot(1, run["grade"])
    pedalled = bike["drivetrain_efficiency"] * run["power_w"]
    bearings = (bike["bearing_drag_n"] + bike["bearing_drag_n_s_per_m"] * v) * v
    factors = 0.5 * air * abs(through) * through * v, bike["total_mass_kg"] * GRAVITY * v
    # An error is a share of what went in, and of what 6 m/s of wind for a share of 1 do to a drag area of 0.25 m².
    scale = hypot(max(pedalled + max(-climbed, 0), 0.05 * abs(factors[0])), 6 * 0.25 * air * v**2)
    return pedalled - climbed - bearings, factors, scale


def runs(random, bike, air, areas, crr):
    made = []
    for position in range(len(areas)):
        for speed in (8, 8, 10, 12, 12)[: random.randint(4, 5)]:
            run = {
                "position": position, "speed_m_s": round(speed + random.uniform(-0.4, 0.4), 2), "power_w": 0.0,
                "wind_head_m_s": round(random.uniform(-0.8, 0.8), 2), "grade": round(random.uniform(-0.003, 0.003), 4),
            }
            nothing, (of_area, of_crr), _ = loss(bike, air, run)
            needed = (areas[position] * of_area + crr * of_crr - nothing) / bike["drivetrain_efficiency"]
            made.append(run | {"power_w": round(needed * random.gauss(1, 0.006), 1)})
    return made


def estimate(bike, air, asked, fitted):
    positions = max(run["position"] for run in asked) + 1
    matrix, right, scales = [], [], []
    for run in asked:
        took, (of_area, of_crr), scale = loss(bike, air, run)
        row = [of_area if run["position"] == position else 0.0 for position in range(positions)]
        row += [of_crr] if fitted else []
        took -= 0 if fitted else bike["rolling_coefficient"] * of_crr
        matrix.append(np.array(row) / scale)
        right.append(took / scale)
        scales.append(scale)
    matrix, right, scales = np.array(matrix), np.array(right), np.array(scales)
    found = np.linalg.lstsq(matrix, right, rcond=None)[0]
    residuals = right - matrix @ found
    free = len(asked) - len(found)
    inverse = np.linalg.inv(matrix.T @ matrix)
    variance = residuals @ residuals / free
    hat = np.einsum("ij,jk,ik->i", matrix, inverse, matrix)
    others = (residuals @ residuals - residuals**2 / (1 - hat)) / (free - 1)

    def figure(gradient):
        value, sd = float(gradient @ found), float(np.sqrt(variance * gradient @ inverse @ gradient))
        reach = float(t.ppf(0.975, free)) * sd
        return {"value": value, "sd": sd, "low_95": value - reach, "high_95": value + reach, "chance_positive": float(t.cdf(value / sd, free))}

    unit = np.eye(len(found))
    rolling = {"value": float(found[-1]), "sd": figure(unit[-1])["sd"]} if fitted else {"value": bike["rolling_coefficient"]}
    return {
        "positions": [{"cda_m2": figure(unit[i])} for i in range(positions)],
        "rolling_coefficient": rolling,
        "differences": [{"cda_m2": figure(unit[b] - unit[a])} for a in range(positions) for b in range(a + 1, positions)],
        "laps": [
            {"residual_w": float(r * e), "leverage": float(h), "studentised": float(r / np.sqrt(o * (1 - h)))}
            for r, e, h, o in zip(residuals, scales, hat, others)
        ],
    }


def tolerances(expected):
    if isinstance(expected, dict):
        return {name: tolerances(inner) for name, inner in expected.items()}
    if isinstance(expected, list):
        return [tolerances(inner) for inner in expected]
    return rounded(TOLERANCE * max(abs(expected), 1.0))


def case(random, number):
    bike, day = rider(random), (round(random.uniform(5, 30), 1), round(random.uniform(980, 1030), 1), round(random.uniform(0.3, 0.9), 2))
    air = moist_air_density_kg_m3(day[0], 100 * day[1], day[2])
    areas = [round(random.uniform(0.2, 0.3), 4) for _ in range(random.randint(1, 3))]
    asked, fitted = runs(random, bike, air, areas, 0.0042), number % 2 == 0
    mass = bike["total_mass_kg"]
    scenario = {
        "rider": {"total_mass_kg": mass},
        "bike": {name: value for name, value in bike.items() if name != "total_mass_kg"},
        "conditions": {"temperature_c": day[0], "pressure_hpa": day[1], "pressure_is": "course", "relative_humidity": day[2]},
    }
    expected = estimate(bike, air, asked, fitted)
    return {
        "name": f"runs {number}, Crr {'fitted' if fitted else 'held'}", "question": "drag-test",
        "request": {"scenario": scenario, "with": {"runs": asked, "rolling": "fit" if fitted else "hold"}},
        "expected": expected, "tolerance": tolerances(expected),
    }


def write(folder):
    random = Random(SEED)
    cases = [case(random, number) for number in range(COUNT)]
    what = "drag areas and rolling resistance from typed runs, by NumPy's least squares and SciPy's Student's t"
    write_json(folder / "drag.json", {"what": what, "tolerance_reason": "a well-conditioned linear least squares to eight digits", "cases": cases})
