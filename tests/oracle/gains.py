"""data/gains.json: next-gain answered by brute force: every set of changes ridden at its own even effort, the best one searched for.

A number that changes move becomes (value + amounts) x (1 + share) x (1 + share); every drag area of the position goes with the
fresh one. A set is worth what it saves on average, every outcome weighed by its chance; a change that requires another brings
nothing where that one fails, and its own row is what it adds to it. Weekly hours are tried at every week.
"""

from copy import deepcopy
from itertools import chain, combinations
from math import prod

from asked import FADE, scenario
from effort import even_effort
from tables import rounded, write_json

TIME_TOLERANCE = 2e-5
ABOUT = {
    "what": "next-gain requests and their answers by SciPy's DOP853 (rtol 1e-12) and brentq, every set of changes and every outcome",
    "tolerance_reason": "absolute, beside each value: 2e-5 of a time, a saving being the difference of two",
}

LOWER = {"changes": [{"field": "positions.cda_m2", "share": -0.05}, {"field": "power.cp_w", "share": -0.02}], "chance": 0.6, "hours_once": 4}
SUIT = {"changes": [{"field": "positions.cda_m2", "by": -0.006}], "chance": 0.8, "money": 120}
TYRES = {"changes": [{"field": "bike.rolling_coefficient", "by": -0.0005}], "chance": 0.9, "money": 60, "hours_once": 1}
TRAINING = {"changes": [{"field": "power.cp_w", "by": 8}], "chance": 0.5, "hours_once": 12}
LOWEST = {"name": "second step", "changes": [{"field": "positions.cda_m2", "share": -0.03}, {"field": "power.cp_w", "share": -0.005}], "chance": 0.35, "hours_once": 2, "requires": "first step"}
INTERVALS = {"changes": [{"field": "power.cp_w", "share": 0.03}], "chance": 0.7, "hours_per_week": 2, "weeks": 3}
HEAD = {"changes": [{"field": "positions.cda_m2", "share": -0.015}], "chance": 0.5, "hours_per_week": 1, "weeks": 3}
PACING = {"changes": [{"field": "power.cp_w", "share": 0.01}], "chance": 0.6, "hours_per_week": 1, "weeks": 2}
STEADY = {"changes": [{"field": "power.cp_w", "share": 0.02}], "chance": 0.7, "hours_per_week": 0.5}
SEASON = {"changes": [{"field": "power.cp_w", "share": 0.06}], "chance": 0.9, "hours_per_week": 0.5, "weeks": 6}


def asked_for():
    wind = {"wind_speed_m_s": 4.0}
    return {
        "calm and flat, all within reach": (scenario(), [8000.0, 30000.0], [LOWER, SUIT, TYRES], 200, 2.0),
        "windy, a budget that leaves some out": (scenario(conditions=wind), [12000.0], [LOWER, SUIT, TYRES, TRAINING], 130, 1.3),
        "a second step that requires the first": (scenario(), [16093.44], [LOWEST, LOWER | {"name": "first step"}, TYRES], 80, 3.0),
        "blocks that follow each other": (scenario(), [16093.44], [INTERVALS, HEAD, PACING, STEADY, SEASON], 0, 2.5),
        "blocks that leave each other no room": (scenario(), [16093.44], [INTERVALS, HEAD, PACING, STEADY, LOWER], 0, 2.0),
        "a position that fades": (scenario(position={"fade": FADE}), [20000.0], [LOWER, SUIT], 500, 5.0),
    }


def moved(value, changes):
    for change in changes:
        value += change.get("by", 0.0)
    return value * prod(1 + change.get("share", 0.0) for change in changes)


def changed(base, candidates):
    """The scenario with all changes of some candidates."""
    built = deepcopy(base)
    of = lambda field: [change for one in candidates for change in one["changes"] if change["field"] == field]
    position = built["positions"][0]
    position["cda_m2"] = moved(position["cda_m2"], of("positions.cda_m2"))
    if "fade" in position:
        position["fade"]["tired_cda_m2"] = moved(position["fade"]["tired_cda_m2"], of("positions.cda_m2"))
    built["power"]["cp_w"] = moved(built["power"]["cp_w"], of("power.cp_w"))
    built["bike"]["rolling_coefficient"] = moved(built["bike"]["rolling_coefficient"], of("bike.rolling_coefficient"))
    return built


def sets(indices):
    return chain.from_iterable(combinations(indices, n) for n in range(len(indices) + 1))


def schedule_fits(blocks, weeks, hours_per_week):
    """Whether blocks of hours and weeks can begin in some weeks so that none holds too many hours."""

    def placed(rest, used):
        if not rest:
            return True
        (hours, own), others = rest[0], rest[1:]
        begun = ([used[w] + hours * (start <= w < start + own) for w in range(weeks)] for start in range(weeks - own + 1))
        return any(max(week) <= hours_per_week + 1e-9 and placed(others, week) for week in begun)

    return placed(blocks, [0.0] * weeks)


def answered(name, base, distances_m, candidates, money, hours_per_week):
    weeks = 5

    def times_s(members):
        built = changed(base, [candidates[i] for i in members])
        result = []
        for distance_m in distances_m:
            built["course"]["distance_m"] = distance_m
            result.append(even_effort(built)[1])
        return result

    everyone = range(len(candidates))
    times = {members: times_s(members) for members in sets(everyone)}
    saved = {members: sum(times[()]) - sum(own) for members, own in times.items()}
    names = [one.get("name") for one in candidates]
    required = [names.index(one["requires"]) if one.get("requires") else None for one in candidates]

    def line(i):
        """What a change requires, and so on, and itself."""
        return (line(required[i]) if required[i] is not None else set()) | {i}

    def worth(members):
        def chance(comes_off):
            return prod(candidates[i]["chance"] if i in comes_off else 1 - candidates[i]["chance"] for i in members)

        def works(comes_off):
            return tuple(i for i in comes_off if line(i) <= set(comes_off))

        return sum(chance(comes_off) * saved[works(comes_off)] for comes_off in sets(members))

    def takes(members, what):
        return sum(candidates[i].get(what, 0) for i in members)

    def allowed(members):
        blocks = [(candidates[i].get("hours_per_week", 0), candidates[i].get("weeks", weeks)) for i in members]
        hours = takes(members, "hours_once") + sum(hours * own for hours, own in blocks)
        return (
            takes(members, "money") <= money
            and hours <= hours_per_week * weeks
            and all(own <= weeks for _, own in blocks)
            and all(line(i) <= set(members) for i in members)
            and schedule_fits(blocks, weeks, hours_per_week)
        )

    best = max(filter(allowed, times), key=worth)

    def row(i):
        both, without = tuple(sorted(line(i))), tuple(sorted(line(i) - {i}))
        return {"saves_s": saved[both] - saved[without], "by_event_s": [a - b for a, b in zip(times[without], times[both])]}

    expected = {
        "candidates": [row(i) for i in everyone],
        "best": {"candidates": [float(i) for i in best], "expected_s": worth(best), "all_work_s": saved[best], "money": float(takes(best, "money"))},
        "left_out": [{"candidate": float(i)} for i in everyone if i not in best],
    }
    allowed_s = rounded(TIME_TOLERANCE * sum(times[()]))
    tolerance = {
        "candidates": [{"saves_s": allowed_s, "by_event_s": [allowed_s] * len(distances_m)} for _ in everyone],
        "best": {"candidates": [0.0] * len(best), "expected_s": allowed_s, "all_work_s": allowed_s, "money": 0.0},
        "left_out": [{"candidate": 0.0} for i in everyone if i not in best],
    }
    events = [{"name": "", "distance_m": distance_m} for distance_m in distances_m]
    asked = {"candidates": candidates, "money": money, "hours_per_week": hours_per_week, "weeks": weeks}
    return {
        "name": name,
        "question": "next-gain",
        "request": {"scenario": base | {"fasterby": 2, "events": events}, "with": asked},
        "expected": expected,
        "tolerance": tolerance,
    }


def write(folder):
    cases = [answered(name, *rest) for name, rest in asked_for().items()]
    write_json(folder / "gains.json", {**ABOUT, "cases": cases})
