"""data/even.json: hold-or-fade and power-or-drag answered by brute force, break-evens included.

At a tie the finishing time is known before the unknown is: with an even effort the power is then known too,
as what can be sustained for that time. Each break-even is so the root of one ride's time.
"""

from dataclasses import replace
from scipy.optimize import brentq

from asked import change_pairs, position_pairs
from effort import even_effort, ridden, sustainable_power_w
from ride import DragArea, Ride, drag_area_of, ridden_position
from tables import rounded, write_json

TIME_TOLERANCE = 1e-5
LOWEST_CDA_M2, HIGHEST_CDA_M2 = 0.1, 0.8
ABOUT = {
    "what": "hold-or-fade and power-or-drag requests and their answers by SciPy's DOP853 (rtol 1e-12) and brentq",
    "tolerance_reason": "absolute, beside each value: 1e-5 of a time; for a break-even, what moves the time by 1e-5; null where there is none",
}


def root(function, low, high):
    """(root, slope there), or None where the ends have the same sign."""
    if function(low) * function(high) > 0:
        return None
    at = brentq(function, low, high, xtol=1e-13, rtol=1e-13)
    step = 1e-4 * (high - low)
    left, right = max(low, at - step), min(high, at + step)
    return at, (function(right) - function(left)) / (right - left)


def power_allowed_w(scenario, position, effort, time_s):
    if effort["kind"] == "even":
        return sustainable_power_w(scenario["power"], position, time_s)
    return effort["power_w"]


def break_evens(scenario, low, effort, tie_s):
    """How long, from when and to what the low position must be kept to finish in `tie_s`."""
    drag = drag_area_of(low)
    power_w = power_allowed_w(scenario, low, effort, tie_s)

    def late_by(drag_area):
        return Ride(scenario, low, drag_area).time_s(power_w) - tie_s

    found = {"held_share": None, "begins_s": None, "tired_cda_m2": None}
    if "fade" in low or "lapses" in low:
        lost = drag.tired_m2 if "fade" in low else drag.lapse_m2

        def late_if_held(share):
            mean = share * drag.fresh_m2 + (1 - share) * lost
            return late_by(DragArea(mean, mean))

        found["held_share"] = root(late_if_held, 0.0, 1.0)
    if "fade" in low:
        ramp = drag.complete_s - drag.begins_s
        found["begins_s"] = root(lambda s: late_by(replace(drag, begins_s=s, complete_s=s + ramp)), 0.0, tie_s)
        found["tired_cda_m2"] = root(lambda a: late_by(replace(drag, tired_m2=a)), LOWEST_CDA_M2, HIGHEST_CDA_M2)
    return found


def tolerated(expected, found, time_s):
    """Times to 1e-5; a break-even to what that moves it by."""
    allowed = TIME_TOLERANCE * time_s
    times = dict.fromkeys(expected, rounded(allowed))
    roots = {key: value and value[0] for key, value in found.items()}
    return times, roots, {key: value and rounded(allowed / abs(value[1])) for key, value in found.items()}


def hold_or_fade(name, scenario, asked):
    low, steady = (scenario["positions"][asked[key]] for key in ("low", "steady"))
    low_power_w, low_time_s = ridden(scenario, asked["effort"], low)
    steady_power_w, steady_time_s = ridden(scenario, asked["effort"], steady)
    found = break_evens(scenario, low, asked["effort"], steady_time_s)
    expected = {"low_time_s": low_time_s, "steady_time_s": steady_time_s, "difference_s": steady_time_s - low_time_s}
    tolerance, values, tolerances = tolerated(expected, found, steady_time_s)
    return {
        "name": name,
        "question": "hold-or-fade",
        "request": {"scenario": scenario, "with": asked},
        "expected": expected | {"break_even": values},
        "tolerance": tolerance | {"break_even": tolerances},
        "powers_w": {"low": low_power_w, "steady": steady_power_w},
    }


def scaled(position, factor):
    """The position with every CdA it has (fresh, tired, lapse) multiplied."""
    changed = position | {"cda_m2": position["cda_m2"] * factor}
    if "fade" in position:
        changed["fade"] = position["fade"] | {"tired_cda_m2": position["fade"]["tired_cda_m2"] * factor}
    if "lapses" in position:
        changed["lapses"] = position["lapses"] | {"cda_m2": position["lapses"]["cda_m2"] * factor}
    return changed


def power_or_drag(name, scenario, asked):
    effort, position = asked["effort"], ridden_position(scenario)
    even = effort["kind"] == "even"
    stronger, slippery = 1 + asked["power_change"], scaled(position, 1 + asked["cda_change"])
    if even:
        base_power_w, base_s = even_effort(scenario)
        _, more_power_s = even_effort(scenario, power_factor=stronger)
        _, less_drag_s = even_effort(scenario, slippery)
    else:
        base_power_w = effort["power_w"]
        base_s = Ride(scenario, position).time_s(base_power_w)
        more_power_s = Ride(scenario, position).time_s(base_power_w * stronger)
        less_drag_s = Ride(scenario, slippery).time_s(base_power_w)

    def late_with_cda(change):
        power_w = power_allowed_w(scenario, position, effort, more_power_s)
        return Ride(scenario, scaled(position, 1 + change)).time_s(power_w) - more_power_s

    def late_with_power(change):
        own = power_allowed_w(scenario, position, effort, less_drag_s)
        return Ride(scenario, position).time_s((1 + change) * own) - less_drag_s

    found = {"equal_cda_change": root(late_with_cda, -0.5, 0.5), "equal_power_change": root(late_with_power, -0.5, 0.5)}
    expected = {"base_time_s": base_s, "more_power_time_s": more_power_s, "less_drag_time_s": less_drag_s,
                "difference_s": less_drag_s - more_power_s}
    tolerance, values, tolerances = tolerated(expected, found, base_s)
    return {
        "name": name,
        "question": "power-or-drag",
        "request": {"scenario": scenario, "with": asked},
        "expected": expected | values,
        "tolerance": tolerance | tolerances,
        "powers_w": {"base": base_power_w},
    }


def answered(job):
    answer, name, scenario, asked = job
    return answer(name, scenario, asked)


def write(folder):
    jobs = [(hold_or_fade, name, *pair) for name, pair in position_pairs().items()]
    jobs += [(power_or_drag, name, *pair) for name, pair in change_pairs().items()]
    cases = [answered(job) for job in jobs]
    write_json(folder / "even.json", {**ABOUT, "cases": cases})
