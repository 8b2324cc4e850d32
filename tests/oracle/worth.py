"""data/worth.json: what which-position says of measuring before choosing, by numerical integration over the errors.

Finish times depend on the drag area and on the factor on critical power alone, so that each event's are ridden once on a grid of the
two and read off a polynomial. What a measurement is worth is then a sum over the normal distribution of what is measured: of the best of
the choices' mean times given it, less the best of their plain means. Nothing is drawn, and all else stays as unsure as it is.
"""

import numpy as np
from numpy.polynomial import chebyshev
from numpy.polynomial.hermite_e import hermegauss
from scipy.stats import norm

from asked import scenario
from effort import even_effort
from tables import write_json

# The draws of the request, so that the errors are about those of a mean over so many.
DRAWS = 8000
STANDARD_ERRORS = 4
EVENTS_M = (16093.44, 40233.6)
CDA_BOUNDS_M2 = (0.1, 0.8)
CDA_GRID_M2, CP_GRID = (0.1, 0.42), (0.85, 1.09)
CDA_NODES, CP_NODES = 8, 4
# Points of the sums: over what is measured, where the best choice changes abruptly, and over what is left unsure, which is smooth.
MEASURED, LEFT = 1601, 12
FARTHEST = 8.0
ABOUT = {
    "what": "which-position requests, and what measurements are worth before choosing, by integrating over normal errors",
    "tolerance_reason": "absolute, beside each value: four standard errors of the mean difference of the two positions over the draws that are asked for",
}
# Drag areas and factors on critical power as (value, sd), and how the drag areas' errors correlate.
CASES = {
    "equal spreads, guessed for one rider": (((0.24, 0.04), (0.226, 0.04)), ((1.0, 0.0), (0.97, 0.02)), 0.95),
    "equal spreads, apart": (((0.24, 0.04), (0.226, 0.04)), ((1.0, 0.0), (0.97, 0.02)), 0.0),
    "a measured one and a guess": (((0.24, 0.01), (0.23, 0.03)), ((1.0, 0.0), (0.975, 0.015)), 0.6),
}


def surface(distance_m):
    """Finish time by drag area and factor on critical power, as the coefficients of a polynomial in both."""
    nodes = lambda n: np.cos(np.pi * (np.arange(n) + 0.5) / n)
    at = lambda x, low, high: 0.5 * (low + high) + 0.5 * (high - low) * x
    base = scenario(course={"distance_m": distance_m})

    def time_s(x, y):
        position = {"name": "", "cda_m2": float(at(x, *CDA_GRID_M2)), "cp_factor": float(at(y, *CP_GRID)), "w_prime_factor": 1.0}
        return even_effort(base, position)[1]

    times = np.array([[time_s(x, y) for y in nodes(CP_NODES)] for x in nodes(CDA_NODES)])
    by_cda = chebyshev.chebvander(nodes(CDA_NODES), CDA_NODES - 1)
    by_cp = chebyshev.chebvander(nodes(CP_NODES), CP_NODES - 1)
    return np.linalg.solve(by_cda, np.linalg.solve(by_cp, times.T).T)


def read(coefficients, cda_m2, cp_factor):
    scaled = lambda x, low, high: (2 * x - low - high) / (high - low)
    return chebyshev.chebval2d(scaled(np.clip(cda_m2, *CDA_GRID_M2), *CDA_GRID_M2), scaled(cp_factor, *CP_GRID), coefficients)


def mean_time(coefficients, mean, sd, factor):
    """The mean time of a position whose drag area is normal with these means and this sd, its factor independent."""
    x, weights = hermegauss(LEFT)
    weights = weights / weights.sum()
    cda_m2 = np.clip(mean[:, None, None] + sd * x[None, :, None], *CDA_BOUNDS_M2)
    cp_factor = factor[0] + factor[1] * x[None, None, :]
    return np.einsum("ijk,j,k->i", read(coefficients, *np.broadcast_arrays(cda_m2, cp_factor)), weights, weights)


def expected(job):
    name, (areas, factors, correlation), surfaces = job
    (a, sd_a), (b, sd_b) = areas
    z = np.linspace(-FARTHEST, FARTHEST, MEASURED)
    density = norm.pdf(z)
    density /= density.sum()
    apart = np.sqrt(sd_a**2 + sd_b**2 - 2 * correlation * sd_a * sd_b)
    left = np.sqrt(1 - correlation**2)
    # By what each drag area moves with the error that is measured, and the sd that is left to it.
    slopes = {
        ("input", 0): ((sd_a, 0.0), (correlation * sd_b, left * sd_b)),
        ("input", 1): ((correlation * sd_a, left * sd_a), (sd_b, 0.0)),
        ("difference", None): tuple(
            (slope, np.sqrt(sd**2 - slope**2))
            for sd, slope in ((sd_a, (sd_a**2 - correlation * sd_a * sd_b) / apart), (sd_b, (correlation * sd_a * sd_b - sd_b**2) / apart))),
    }
    path = "scenario.positions[{}].cda_m2".format
    worth = []
    for (what, place), moves in slopes.items():
        by_event = []
        for coefficients in surfaces:
            times = [mean_time(coefficients, value + slope * z, sd_left, factor)
                     for (value, _), (slope, sd_left), factor in zip(areas, moves, factors)]
            by_event.append(float(min(density @ t for t in times) - density @ np.minimum(*times)))
        fields = [path(0), path(1)] if place is None else [path(place)]
        worth.append({"what": what, "fields": fields, "by_event_s": by_event, "worth_s": sum(by_event)})
    positions = [{"name": "", "cda_m2": {"value": value, "sd": sd, "source": "estimated"}, "w_prime_factor": 1.0,
                  "cp_factor": {"value": factor, "sd": factor_sd, "source": "estimated"}}
                 for (value, sd), (factor, factor_sd) in zip(areas, factors)]
    events = [{"name": "", "distance_m": distance_m} for distance_m in EVENTS_M]
    asked = {"draws": DRAWS, "part": "draws", "cda_correlation": correlation}
    return {
        "name": name,
        "request": {"scenario": scenario(positions=positions) | {"fasterby": 2, "events": events}, "with": asked},
        "expected": {"worth": worth},
        "tolerance": {"worth_s": allowed_s(surfaces, areas, factors, apart)},
    }


def allowed_s(surfaces, areas, factors, apart):
    """The sd of the difference of the positions' times, to first order, as four standard errors over the draws."""
    total = 0.0
    for coefficients in surfaces:
        (a, _), (b, _) = areas
        (f, sd_f), (g, sd_g) = factors
        middle, step = 0.5 * (a + b), 0.01
        slope = lambda low, high: float(read(coefficients, *high) - read(coefficients, *low)) / (2 * step)
        by_cda = slope((middle - step, g), (middle + step, g))
        by_cp = slope((middle, g - step), (middle, g + step))
        total += np.sqrt((by_cda * apart) ** 2 + (by_cp * np.hypot(sd_f, sd_g)) ** 2)
    return float(f"{STANDARD_ERRORS * total / np.sqrt(DRAWS):.3g}")


def write(folder):
    surfaces = [surface(event_m) for event_m in EVENTS_M]
    cases = [expected((name, case, surfaces)) for name, case in CASES.items()]
    write_json(folder / "worth.json", {**ABOUT, "cases": cases})
