"""data/leg_reach.json: angles of a leg whose lengths are uncertain, over the draws in which it reaches the pedal.

Every draw is worked out on a grid of crank angles with the law of cosines; rates are central differences on that grid.
"""

import numpy as np

from tables import write_json

SEED = 14001
DRAWS = 60_000
CHUNK = 5_000
GRID = 360
SHARES = {"thigh_m": 0.245, "shank_m": 0.246, "foot_m": 0.085, "trunk_m": 0.288, "upper_arm_m": 0.186}
GUESS_SHARE_SD = 0.03
RIDER = {"stature_m": {"value": 1.75, "sd": 0.01}, "hip_above_saddle_m": {"value": 0.065, "sd": 0.01},
         "ankle_deg": {"value": 130.0, "sd": 5.0}, "foot_pitch_deg": {"value": 45.0, "sd": 5.0}, "foot_swing_deg": {"value": 12.0, "sd": 4.0}}
FIRST = {"crank_m": 0.17, "saddle_height_m": 0.72, "seat_angle_deg": 76.0, "bar_drop_m": 0.1, "cadence_rpm": 90.0}
SECOND = FIRST | {"crank_m": 0.165, "saddle_height_m": 0.725, "bar_drop_m": 0.12}
OUTPUTS = ("tightest_hip_deg", "straightest_knee_deg", "most_bent_knee_deg", "fastest_thigh_deg_s", "torso_deg")
CASES = {
    "usual": {},
    "frozen ankle": {"model": "frozen"},
    "saddle too high for many": {"a": FIRST | {"saddle_height_m": 0.735}, "b": SECOND | {"saddle_height_m": 0.735}},
    "saddle low": {"a": FIRST | {"saddle_height_m": 0.68}, "b": SECOND | {"saddle_height_m": 0.685}},
    "measured lengths": {"thigh_m": {"value": 0.43, "sd": 0.005}, "shank_m": {"value": 0.43, "sd": 0.005}, "foot_m": {"value": 0.15, "sd": 0.005}},
}


def draw(random, request, count):
    """Lengths and angles of so many riders."""
    def normal(quantity):
        return random.normal(quantity["value"], quantity["sd"], count)

    rider = {name: normal(request[name]) for name in RIDER}
    for name, share in SHARES.items():
        if name in request:
            rider[name] = normal(request[name])
        else:
            rider[name] = share * rider["stature_m"] * random.normal(1.0, GUESS_SHARE_SD, count)
    return rider


def set_up(rider, fit, frozen):
    """Outputs of every rider on one set-up, and who reaches the pedal all the way round."""
    column = {name: values[:, None] for name, values in rider.items()}
    crank = np.arange(GRID) * 2 * np.pi / GRID
    seat = np.radians(fit["seat_angle_deg"])
    hip = (fit["saddle_height_m"] + column["hip_above_saddle_m"]) * np.exp(1j * (np.pi - seat))
    end = fit["crank_m"] * np.exp(1j * (np.pi / 2 - crank))[None, :]
    thigh, shank, foot = column["thigh_m"], column["shank_m"], column["foot_m"]
    if frozen:
        angle = np.radians(column["ankle_deg"])
        lower = np.abs(shank - foot * np.exp(1j * angle))
        bend = np.arccos((shank**2 + lower**2 - foot**2) / (2 * shank * lower))
    else:
        pitch = np.radians(column["foot_pitch_deg"]) - np.radians(column["foot_swing_deg"]) * np.sin(crank)[None, :]
        end = end - foot * np.exp(-1j * pitch)
        lower, bend = shank, 0.0
    line = end - hip
    distance = np.abs(line)
    reaches = np.all((distance < thigh + lower) & (distance > np.abs(thigh - lower)), axis=1)
    with np.errstate(invalid="ignore"):
        raised = np.angle(1j * line) - np.pi / 2 + np.arccos((distance**2 + thigh**2 - lower**2) / (2 * distance * thigh))
        knee = np.degrees(np.arccos((thigh**2 + lower**2 - distance**2) / (2 * thigh * lower)) - bend)
        rate = (np.roll(raised, -1, axis=1) - np.roll(raised, 1, axis=1)) / (4 * np.pi / GRID)
        rise = (rider["upper_arm_m"] - fit["bar_drop_m"] - rider["hip_above_saddle_m"] * np.sin(seat)) / rider["trunk_m"]
        torso = np.degrees(np.arcsin(rise))
        fastest = np.degrees(np.max(np.abs(rate), axis=1) * fit["cadence_rpm"] * 2 * np.pi / 60)
        hip_deg = torso - np.degrees(np.max(raised, axis=1))
        outputs = np.stack([hip_deg, np.max(knee, axis=1), np.min(knee, axis=1), fastest, torso])
    return outputs, reaches & np.isfinite(torso)


def expected(request):
    random = np.random.default_rng(SEED)
    frozen = request["model"] == "frozen"
    both = [[], []]
    for _ in range(DRAWS // CHUNK):
        rider = draw(random, request, CHUNK)
        for side, found in zip("ab", both):
            found.append(set_up(rider, request[side], frozen))
    outputs = [np.concatenate([outputs for outputs, _ in side], axis=1) for side in both]
    reaches = [np.concatenate([reaches for _, reaches in side]) for side in both]
    answer = {side: {"reach_share": float(np.mean(reaches[i])),
                     **{name: float(np.std(outputs[i][row][reaches[i]])) for row, name in enumerate(OUTPUTS)}}
              for i, side in enumerate("ab")}
    together = reaches[0] & reaches[1]
    apart = outputs[1][:, together] - outputs[0][:, together]
    return answer | {"difference": {name: float(np.std(apart[row])) for row, name in enumerate(OUTPUTS)}}


def cases():
    for name, changes in CASES.items():
        request = {"model": "ankling", "a": FIRST, "b": SECOND} | RIDER | changes
        yield {"name": name, "request": {"with": request}, "expected": expected(request)}


def write(folder):
    write_json(folder / "leg_reach.json", {"cases": list(cases())})
