"""data/rides.json: finishing times of `finish-time` requests."""

from effort import ridden
from asked import change_pairs, named_rides, position_pairs, random_rides
from tables import rounded, write_json

TIME_TOLERANCE = 1e-5
ABOUT = {
    "what": "finish-time requests and their answers by SciPy's DOP853 (rtol 1e-12), integrated in time with events",
    "tolerance_reason": "absolute, beside each value: 1e-5 of the value, the accuracy asked of a ride; the figures here are good to about 1e-9",
}


def finish_time_cases():
    for name, (scenario, effort) in {**named_rides(), **dict(random_rides())}.items():
        yield name, scenario, effort
    for name, (scenario, asked) in position_pairs().items():
        for index, position in enumerate(scenario["positions"]):
            yield f"{name}: {position['name']}", scenario | {"riding_position": index}, asked["effort"]
    for name, (scenario, asked) in change_pairs().items():
        yield f"{name}: unchanged", scenario, asked["effort"]


def answered(case):
    name, scenario, effort = case
    power_w, time_s = ridden(scenario, effort)
    expected = {"time_s": time_s, "power_w": power_w}
    return {
        "name": name,
        "question": "finish-time",
        "request": {"scenario": scenario, "with": {"effort": effort}},
        "expected": expected,
        "tolerance": {key: rounded(TIME_TOLERANCE * value) for key, value in expected.items()},
    }


def write(folder):
    cases = [answered(case) for case in finish_time_cases()]
    write_json(folder / "rides.json", {**ABOUT, "cases": cases})
