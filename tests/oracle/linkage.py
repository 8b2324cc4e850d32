"""data/linkage.csv: random legs on random bicycles, in 30-digit arithmetic.

The knee comes from the law of cosines in complex numbers, every rate from numerical differentiation of the angle, and an
extreme from a root of the next rate, begun where a fine grid of Fourier derivatives has it. Rates are per radian of crank.
"""

from random import Random

import numpy as np
from mpmath import arg, diff, expj, findroot, mp, mpf, pi
from mpmath import acos as exact_acos
from mpmath import cos as exact_cos
from mpmath import sin as exact_sin

from tables import write_csv

SEED = 19660101
COUNT = 120
GRID = 1440
# Straighter or more folded than this and the rates of a linkage say more about its lengths than about a rider.
STRAIGHTEST_KNEE_DEG, MOST_BENT_KNEE_DEG = 172.0, 25.0
INPUTS = ["thigh_m", "shank_m", "foot_m", "ankle_deg", "foot_pitch_deg", "foot_swing_deg", "crank_m", "hip_m", "seat_angle_deg", "crank_deg"]
EXTREMES = [f"{which}_{name}" for name in ("thigh_deg", "knee_deg", "thigh_rate", "thigh_second_rate") for which in ("least", "greatest")]
OUTPUTS = [*[column for name in EXTREMES for column in (name, f"{name}_at_deg")],
           "thigh_deg", "knee_deg", "thigh_rate", "thigh_second_rate", "thigh_third_rate"]


class Exact:
    """Functions in mpmath's arithmetic."""
    sin, cos, acos, arg, turn = exact_sin, exact_cos, exact_acos, staticmethod(arg), expj
    number, pi = mpf, pi


class Quick:
    """The same in NumPy's, over whole arrays."""
    sin, cos, acos, arg = np.sin, np.cos, np.arccos, staticmethod(np.angle)
    turn = staticmethod(lambda angle: np.exp(1j * angle))
    number, pi = float, np.pi


def angles(case, arithmetic):
    """Thigh angle and knee angle, in radians, as functions of the crank angle."""
    m = arithmetic
    n = {name: m.number(case[name]) for name in INPUTS if case[name] != ""}
    radian = m.pi / 180
    thigh, shank, foot = n["thigh_m"], n["shank_m"], n["foot_m"]
    frozen = case["foot_pitch_deg"] == ""
    hip = n["hip_m"] * m.turn(m.pi - n["seat_angle_deg"] * radian)
    if frozen:
        # Seen from the ankle, the shank's line to the knee makes the ankle's angle with the foot's to the pedal.
        knee_to_pedal = -shank + foot * m.turn(n["ankle_deg"] * radian)
        lower, bend = abs(knee_to_pedal), abs(m.arg(-knee_to_pedal))
    else:
        lower, bend = shank, 0 * shank

    def line(crank):
        end = n["crank_m"] * (m.sin(crank) + 1j * m.cos(crank))
        if not frozen:
            end = end - foot * m.turn(-(n["foot_pitch_deg"] - n["foot_swing_deg"] * m.sin(crank)) * radian)
        return end - hip

    def thigh_angle(crank):
        reach = line(crank)
        distance = abs(reach)
        below = m.arg(reach * 1j) - m.pi / 2
        return below + m.acos((distance**2 + thigh**2 - lower**2) / (2 * distance * thigh))

    def knee_angle(crank):
        distance = abs(line(crank))
        return m.acos((thigh**2 + lower**2 - distance**2) / (2 * thigh * lower)) - bend

    return thigh_angle, knee_angle


def derivative(values):
    """Of a periodic function, by its Fourier series."""
    frequencies = np.fft.fftfreq(len(values), 1 / len(values))
    return np.real(np.fft.ifft(1j * frequencies * np.fft.fft(values)))


def extreme(f, order, start):
    """Where the derivative after the given one vanishes near a crank angle, and the given one there."""
    place = findroot(lambda crank: diff(f, crank, order + 1), (start, start + mpf("1e-4")), tol=mpf("1e-24"))
    return place, diff(f, place, order) if order else f(place)


def outputs(case):
    thigh, knee = angles(case, Exact)
    grid = np.arange(GRID) * 2 * np.pi / GRID
    quick_thigh, quick_knee = (f(grid) for f in angles(case, Quick))
    rate = derivative(quick_thigh)
    found = {}
    for name, f, order, values in (("thigh_deg", thigh, 0, quick_thigh), ("knee_deg", knee, 0, quick_knee),
                                   ("thigh_rate", thigh, 1, rate), ("thigh_second_rate", thigh, 2, derivative(rate))):
        for which, index in (("least", np.argmin(values)), ("greatest", np.argmax(values))):
            place, value = extreme(f, order, mpf(float(grid[index])))
            degrees = 180 / pi
            found[f"{which}_{name}"] = float(value * degrees if name.endswith("_deg") else value)
            found[f"{which}_{name}_at_deg"] = float(place * degrees % 360)
    crank = mpf(case["crank_deg"]) * pi / 180
    found |= {"thigh_deg": float(thigh(crank) * 180 / pi), "knee_deg": float(knee(crank) * 180 / pi)}
    return found | {name: float(diff(thigh, crank, order)) for order, name in enumerate(("thigh_rate", "thigh_second_rate", "thigh_third_rate"), 1)}


def random_case(random):
    frozen = random.random() < 0.4
    return {
        "thigh_m": round(random.uniform(0.33, 0.55), 4),
        "shank_m": round(random.uniform(0.33, 0.55), 4),
        "foot_m": round(random.uniform(0.08, 0.22), 4),
        "ankle_deg": round(random.uniform(85, 160), 2) if frozen else "",
        "foot_pitch_deg": "" if frozen else round(random.uniform(15, 75), 2),
        "foot_swing_deg": "" if frozen else round(random.uniform(0, 30), 2),
        "crank_m": round(random.uniform(0.12, 0.2), 4),
        "hip_m": round(random.uniform(0.5, 1.0), 4),
        "seat_angle_deg": round(random.uniform(60, 95), 2),
        "crank_deg": round(random.uniform(0, 360), 2),
    }


def is_a_rider(case):
    grid = np.arange(GRID) * 2 * np.pi / GRID
    with np.errstate(invalid="ignore"):
        knee = np.degrees(angles(case, Quick)[1](grid))
    return bool(np.all((knee > MOST_BENT_KNEE_DEG) & (knee < STRAIGHTEST_KNEE_DEG)))


def rows():
    mp.dps = 30
    random = Random(SEED)
    found = []
    while len(found) < COUNT:
        case = random_case(random)
        if is_a_rider(case):
            found.append({"case": f"leg-{len(found) + 1}", **case, **outputs(case)})
    return found


def write(folder):
    write_csv(folder / "linkage.csv", ["case", *INPUTS, *OUTPUTS], rows())
