"""data/steady.csv: a thousand steady speeds over wide ranges, by bracketing from above."""

from random import Random

from resistance import Road, pedal_power_w, resistance_n, steady_speed_m_s
from tables import write_csv

SEED = 20070801
COUNT = 1000
INPUTS = [
    "power_w", "total_mass_kg", "rolling_coefficient", "cda_m2", "density_kg_m3", "grade",
    "headwind_m_s", "crosswind_m_s", "drivetrain_efficiency", "bearing_drag_n",
    "bearing_drag_n_s_per_m", "yaw_table", "speed_exponent", "reference_airspeed_m_s",
]
OUTPUTS = ["speed_m_s", "power_at_12_w"]

# A case whose speed moves by more than this many per cent for one per cent of power sits on a fold of
# the power curve: rounding, not physics, would decide it.
STEEPEST_POWER_ELASTICITY = 20.0


def random_yaw_table(random):
    last = random.choice([15, 20, 30, 50])
    yaws = sorted({0, last, *(random.randrange(3, last) for _ in range(random.randrange(3)))})
    return tuple((yaw, 1.0 if yaw == 0 else round(random.uniform(0.8, 1.2), 3)) for yaw in yaws)


def random_case(random):
    windy = random.random() < 0.75
    powered_by_yaw = random.random() < 0.3
    return {
        "power_w": round(random.choice([random.uniform(10, 100), random.uniform(100, 500), random.uniform(500, 1500)]), 3),
        "total_mass_kg": round(random.uniform(45, 140), 3),
        "rolling_coefficient": round(random.uniform(0.001, 0.012), 6),
        "cda_m2": round(random.uniform(0.15, 0.6), 5),
        "density_kg_m3": round(random.uniform(0.7, 1.4), 6),
        "grade": random.choice([0.0, round(random.uniform(-0.02, 0.02), 5), round(random.uniform(-0.15, 0.15), 5)]),
        "headwind_m_s": round(random.uniform(-18, 12), 4) if windy else 0.0,
        "crosswind_m_s": round(random.uniform(-10, 10), 4) if windy else 0.0,
        "drivetrain_efficiency": round(random.uniform(0.9, 1.0), 5),
        "bearing_drag_n": random.choice([0.0, 0.091, round(random.uniform(0, 0.5), 4)]),
        "bearing_drag_n_s_per_m": random.choice([0.0, 0.0087, round(random.uniform(0, 0.03), 5)]),
        "yaw_table": random_yaw_table(random) if powered_by_yaw else (),
        "speed_exponent": random.choice([0.0, 0.0, round(random.uniform(-0.4, 0.2), 3)]),
        "reference_airspeed_m_s": random.choice([12.0, round(random.uniform(8, 16), 2)]),
    }


def road_of(case):
    away = ("power_w", "cda_m2", "drivetrain_efficiency")
    return Road(**{name: value for name, value in case.items() if name not in away})


def power_elasticity(road, cda_m2, v):
    step = 1e-6 * v
    slope = (resistance_n(road, cda_m2, v + step) * (v + step) - resistance_n(road, cda_m2, v - step) * (v - step)) / (2 * step)
    return resistance_n(road, cda_m2, v) / slope


def rows():
    random = Random(SEED)
    found = []
    while len(found) < COUNT:
        case = random_case(random)
        road = road_of(case)
        efficiency = case["drivetrain_efficiency"]
        speed = steady_speed_m_s(road, case["cda_m2"], case["power_w"], efficiency)
        if not 0 < power_elasticity(road, case["cda_m2"], speed) < STEEPEST_POWER_ELASTICITY:
            continue
        found.append({
            "case": f"steady-{len(found) + 1}",
            **case,
            "yaw_table": ";".join(f"{yaw}:{ratio}" for yaw, ratio in case["yaw_table"]),
            "speed_m_s": speed,
            "power_at_12_w": pedal_power_w(road, case["cda_m2"], 12.0, efficiency),
        })
    return found


def write(folder):
    write_csv(folder / "steady.csv", ["case", *INPUTS, *OUTPUTS], rows())
