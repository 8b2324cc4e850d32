"""Fits of power–duration models with SciPy: ../published/power_fits.csv, and data/power_curve.json."""

import random

import numpy as np
from scipy.optimize import brentq, curve_fit
from scipy.stats import t as student

from tables import rounded, write_json

# The forms


def two_parameter_time(p, cp, w_prime):
    return w_prime / (p - cp)


def two_parameter_time_by(p, cp, w_prime):
    return np.column_stack([w_prime / (p - cp) ** 2, 1 / (p - cp)])


def three_parameter_time(p, cp, w_prime, peak):
    return w_prime / (p - cp) - w_prime / (peak - cp)


def three_parameter_time_by(p, cp, w_prime, peak):
    above, most = p - cp, peak - cp
    return np.column_stack([w_prime * (above**-2.0 - most**-2.0), 1 / above - 1 / most, w_prime / most**2 + 0 * p])


def least_squares(f, by, x, y, sigma, start):
    """The minimum by curve_fit, then by Gauss–Newton steps to rounding; parameters, unscaled covariance, sum of squares."""
    b, _ = curve_fit(f, x, y, p0=start, sigma=sigma, jac=by, method="lm", maxfev=20000)
    for _ in range(50):
        r = (y - f(x, *b)) / sigma
        b = b + np.linalg.lstsq(by(x, *b) / sigma[:, None], r, rcond=None)[0]
    jacobian = by(x, *b) / sigma[:, None]
    r = (y - f(x, *b)) / sigma
    return b, np.linalg.inv(jacobian.T @ jacobian), float(r @ r)


def linear(columns, y):
    return least_squares(lambda x, *b: x @ np.array(b), lambda x, *b: x, columns, y, np.ones(len(y)), np.ones(columns.shape[1]))


def form(name, t, p):
    one = np.ones_like(t)
    two = (two_parameter_time, two_parameter_time_by)
    three = (three_parameter_time, three_parameter_time_by)
    two_start, three_start = (0.95 * p.min(), 15000.0), (0.9 * p.min(), 20000.0, 2.0 * p.max())
    match name:
        case "work over time":
            return linear(np.column_stack([t, one]), p * t)
        case "power over 1/t":
            return linear(np.column_stack([one, 1 / t]), p)
        case "ln power over ln t":
            return linear(np.column_stack([one, np.log(t)]), np.log(p))
        case "time":
            return least_squares(*two, p, t, one, two_start)
        case "relative time":
            return least_squares(*two, p, t, t, two_start)
        case "ln time":
            return least_squares(
                lambda x, cp, w: np.log(w / (x - cp)), lambda x, cp, w: np.column_stack([1 / (x - cp), one / w]), p, np.log(t), one, two_start
            )
        case "three-parameter time":
            return least_squares(*three, p, t, one, three_start)
        case "three-parameter relative time":
            return least_squares(*three, p, t, t, three_start)
    raise ValueError(name)


TWO = ("work over time", "power over 1/t", "time", "relative time", "ln time")
THREE = ("three-parameter time", "three-parameter relative time")
S1 = ([120, 180, 240, 360, 600], [430, 380, 355, 330, 310])
S2 = ([20000 / (p - 250) - 20000 / 750 for p in (450, 400, 350, 320, 300, 280)], [450, 400, 350, 320, 300, 280])
N1 = ([121, 178, 247, 419, 676], [425, 385, 350, 325, 305])
N2 = ([28, 51, 92, 141, 228, 361, 642], [640, 520, 430, 380, 340, 310, 285])
EXACT = {"S1": (S1, TWO, (280, 18000)), "S2": (S2, THREE, (250, 20000, 1000))}
NOISY = {"N1": (N1, (*TWO, "ln power over ln t")), "N2": (N2, (*THREE, "time", "relative time"))}
NAMES = ("first", "second", "third")


def power_fits(checked):
    inputs = ["case", "form", "efforts_s_w"]
    outputs = [*NAMES, *(f"sd_{name}" for name in NAMES), "covariance", "residual_sd"]
    rows = []

    def row(case, name, efforts, values, source, tolerance, reason):
        written = ";".join(f"{float(t)!r}:{p}" for t, p in zip(*efforts))
        rows.append(checked({"case": f"{case} by {name}", "form": name, "efforts_s_w": written, **values}, source, tolerance, reason))

    for case, (efforts, forms, exact) in EXACT.items():
        for name in forms:
            row(case, name, efforts, dict(zip(NAMES, exact)), "exact: the efforts lie on the curve with these parameters", 1e-8, "eight digits; the efforts' own rounding moves the ninth")
    for case, (efforts, forms) in NOISY.items():
        t, p = (np.array(column, dtype=float) for column in efforts)
        for name in forms:
            b, covariance, squares = form(name, t, p)
            variance = squares / (len(t) - len(b))
            values = dict(zip(NAMES, b)) | {f"sd_{n}": (variance * c) ** 0.5 for n, c in zip(NAMES, np.diag(covariance))}
            values |= {"covariance": variance * covariance[0, 1], "residual_sd": variance**0.5}
            values = {key: float(value) for key, value in values.items()}
            row(case, name, efforts, values, "computed with SciPy 1.17.1 (curve_fit with analytic derivatives; standard errors from SSR/(n-p))", 1e-8, "eight digits of a least-squares minimum")
    return inputs, outputs, rows


# The question: powers weighted by their own standard deviations

KNOWN_FROM = 7
# What riders usually lose in long rides, as a share of critical power: known beforehand, in every model that has the loss.
LOSS_SHARE, LOSS_SHARE_SD = 0.09, 0.04
LONG_RIDE_FROM_S = 1800.0
LOG_FROM_S = 420.0


def omni_domain(peak, long):
    def f(t, cp, w_prime, *rest):
        rest = list(rest)
        approach = 1 - np.exp(-t * (rest.pop(0) - cp) / w_prime) if peak else 1.0
        loss = rest.pop(0) * np.log(np.maximum(t / LONG_RIDE_FROM_S, 1.0)) if long else 0.0
        return cp + w_prime / t * approach - loss

    return f


def candidates(t):
    peak, long = t.min() < 120, t.max() > LONG_RIDE_FROM_S
    found = {
        "two-parameter": (lambda t, cp, w: cp + w / t, (250.0, 15000.0)),
        "three-parameter": (lambda t, cp, w, peak: cp + w / (t + w / (peak - cp)), (250.0, 20000.0, 900.0)),
        "power-law": (lambda t, s, k: s * t**-k, (900.0, 0.15)),
    }
    if peak or long:
        found["omni-domain"] = (omni_domain(peak, long), (250.0, 18000.0, *((900.0,) if peak else ()), *((15.0,) if long else ())))
    if t.min() >= LOG_FROM_S:
        found["log-decline"] = (lambda t, most, e: most - e * np.log(t / LOG_FROM_S), (330.0, 30.0))
    return found


def slopes(f, b):
    """Derivatives by the parameters, by a complex step."""

    def by(x, *b):
        columns = []
        for j in range(len(b)):
            moved = np.array(b, dtype=complex)
            moved[j] += 1e-30j
            columns.append(np.imag(f(x, *moved)) / 1e-30 + 0 * x)
        return np.column_stack(columns)

    return by


def fitted(f, start, t, p, sd, loss_known):
    """With `loss_known` the last parameter's share of the first is one more row, which the criterion does not count."""
    fitted_to, rows = f, (t, p, sd)
    if loss_known:
        fitted_to = lambda x, *b: np.append(f(x[:-1], *b), b[-1] / b[0])
        rows = np.append(t, 1.0), np.append(p, LOSS_SHARE), np.append(sd, LOSS_SHARE_SD)
    x, y, sigma = rows
    by = slopes(fitted_to, start) if not loss_known else joined_slopes(f)
    b, covariance, squares = least_squares(fitted_to, by, x, y, sigma, start)
    left = len(y) - len(b)
    variance = (KNOWN_FROM + squares) / (KNOWN_FROM + left)
    n, k = KNOWN_FROM + len(t), len(b) + 1 - int(loss_known)
    criterion = n * np.log((KNOWN_FROM + squares) / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1)
    return b, variance * covariance, variance, KNOWN_FROM + left, float(criterion)


def joined_slopes(f):
    """Derivatives of the efforts' powers, and below them those of the last parameter's share of the first."""

    def by(x, *b):
        last = np.zeros(len(b))
        last[0], last[-1] = -b[-1] / b[0] ** 2, 1 / b[0]
        return np.vstack([slopes(f, b)(x[:-1], *b), last])

    return by


def as_ridden(name, f, fit, t):
    """The relation that is read: with the usual loss past its onset, where rides use it and no effort was that long."""
    b, covariance, variance, left, criterion = fit
    if name not in ("two-parameter", "omni-domain") or t.max() > LONG_RIDE_FROM_S:
        return f, fit
    p = len(b)
    wider = np.zeros((p + 1, p + 1))
    wider[:p, :p] = covariance
    wider[p, :p] = wider[:p, p] = LOSS_SHARE * covariance[0]
    wider[p, p] = (b[0] * LOSS_SHARE_SD) ** 2 + LOSS_SHARE**2 * covariance[0, 0]
    return omni_domain(p == 3, True), (np.append(b, LOSS_SHARE * b[0]), wider, variance, left, criterion)


def asked(name, f, fit, hold_s, change, share):
    b, covariance, variance, left, _ = fit
    by = slopes(f, b)
    x = np.array([hold_s])
    power = float(f(x, *b)[0])
    sd = float(np.sqrt(by(x, *b)[0] @ covariance @ by(x, *b)[0]))
    reach = student.ppf(0.975, left) * np.hypot(sd, np.sqrt(variance) * share * power)

    def held(b):
        wanted = f(x, *b)[0] * (1 + change)
        return np.exp(brentq(lambda ln_t: f(np.exp(ln_t), *b) - wanted, 0.0, np.log(1e6), xtol=1e-15, rtol=1e-15))

    duration = held(b)
    at = np.array([duration])
    # By the implicit function: dt/db = ((1 + change) dP(hold)/db − dP(t)/db) / P'(t).
    step = 1e-6 * duration
    falls = float(f(at + step, *b)[0] - f(at - step, *b)[0]) / (2 * step)
    gradient = ((1 + change) * by(x, *b)[0] - by(at, *b)[0]) / falls
    held_sd = float(np.sqrt(gradient @ covariance @ gradient))
    return {
        "power_w": {"value": power, "sd": sd},
        "test_w": [power - float(reach), power + float(reach)],
        "more": {"held_s": {"value": float(duration), "sd": held_sd}},
    }


PARAMETERS = {
    "two-parameter": ("cp_w", "w_prime_j"),
    "three-parameter": ("cp_w", "w_prime_j", "peak_w"),
    "omni-domain": ("cp_w", "w_prime_j"),
    "log-decline": ("seven_minute_w", "decline_w"),
    "power-law": ("one_second_w", "exponent"),
}
ORDER = ("two-parameter", "three-parameter", "omni-domain", "log-decline", "power-law")
LENGTHS = ((180, 300, 720), (150, 240, 480, 900), (130, 300, 700, 1500), (30, 120, 300, 900), (20, 60, 180, 420, 1200), (60, 200, 600, 1200, 3600),
           (200, 500, 1200, 3000, 6000), (15, 45, 150, 400, 900, 2400, 5400), (430, 900, 1800, 3600), (500, 1000, 2400, 5400, 9000))


def tolerances(value, share=1e-7):
    match value:
        case dict():
            return {key: tolerances(inner, 1e-6 if key == "held_s" else share) for key, inner in value.items()}
        case list():
            return [tolerances(inner, share) for inner in value]
    return rounded(max(share * abs(value), 1e-9))


def cases():
    draw = random.Random(4)
    for number in range(40):
        lengths = LENGTHS[number % len(LENGTHS)]
        cp, w_prime, peak, loss = draw.uniform(200, 350), draw.uniform(12e3, 24e3), draw.uniform(700, 1200), draw.uniform(12, 35)
        truth = omni_domain(True, True)
        efforts = []
        for length in lengths:
            power = round(float(truth(float(length), cp, w_prime, peak, loss)) * draw.gauss(1, 0.015), 1)
            efforts.append({"duration_s": length, "power_w": power if draw.random() < 0.6 else {"value": power, "sd": round(draw.uniform(2, 9), 1)}})
        share = draw.choice((0.013, 0.02, 0.03))
        t = np.array([float(e["duration_s"]) for e in efforts])
        p = np.array([e["power_w"]["value"] if isinstance(e["power_w"], dict) else e["power_w"] for e in efforts])
        sd = np.array([e["power_w"]["sd"] if isinstance(e["power_w"], dict) else share * e["power_w"] for e in efforts])
        if any(p[j] - p[i] > 2 * np.hypot(sd[i], sd[j]) for i in range(len(t)) for j in range(i, len(t))):
            continue
        fits = {}
        for name, (f, start) in candidates(t).items():
            loss_known = name == "omni-domain" and t.max() > LONG_RIDE_FROM_S
            if len(start) > len(t) + int(loss_known):
                continue
            try:
                fits[name] = (f, fitted(f, start, t, p, sd, loss_known))
            except (RuntimeError, np.linalg.LinAlgError):
                continue
        yield number, efforts, share, fits, draw, t


def plausible(name, b):
    if name == "power-law":
        return b[0] > 0 and 0 <= b[1] < 1
    if name == "log-decline":
        return b[1] >= 0
    inside = 30 <= b[0] <= 600 and 1000 <= b[1] <= 60000
    if name == "three-parameter":
        return inside and b[0] < b[2] <= 3000
    return inside and all(0 <= extra <= 3000 for extra in b[2:]) and (len(b) < 3 or b[-1] <= 150 or len(b) == 3 and b[2] > b[0])


def write(folder):
    found = []
    for number, efforts, share, fits, draw, t in cases():
        kept = {name: (f, fit) for name, (f, fit) in fits.items() if plausible(name, fit[0])}
        least = min(fit[4] for _, fit in kept.values())
        weights = {name: float(np.exp(0.5 * (least - fit[4]))) for name, (_, fit) in kept.items()}
        for name, (f, fit) in kept.items():
            hold_s, change = draw.choice((300, 1200, 2400)), draw.choice((-0.08, 0.05, 0.1))
            b, covariance = fit[0], fit[1]
            models = [{} for _ in ORDER]
            models[ORDER.index(name)] = {
                "criterion": fit[4],
                "weight": weights[name] / sum(weights.values()),
                **{key: {"value": float(b[j]), "sd": float(covariance[j, j] ** 0.5)} for j, key in enumerate(PARAMETERS[name])},
            }
            try:
                expected = asked(name, *as_ridden(name, f, fit, t), hold_s, change, share) | {"models": models}
            except ValueError:
                continue
            scenario = {"efforts": efforts, "power": {"long_ride_from_s": LONG_RIDE_FROM_S}}
            request = {"scenario": scenario, "with": {"model": name, "hold_s": hold_s, "power_change": change, "test_error_share": share}}
            found.append({"name": f"efforts {number} by {name}", "question": "power-curve", "request": request, "expected": expected, "tolerance": tolerances(expected)})
    write_json(folder / "power_curve.json", {
        "what": "weighted fits of power-duration models to efforts, their bands and the evidence for each, by SciPy",
        "tolerance_reason": "a least-squares minimum to eight digits; a duration and its doubt lose one to differences",
        "cases": found,
    })
