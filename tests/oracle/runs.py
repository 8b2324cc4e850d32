"""data/noncentral_t.csv and data/runs.csv: shares of the noncentral t distribution, and the runs that show a difference, by SciPy."""

from math import isnan, sqrt
from random import Random

import numpy as np
from scipy.integrate import quad
from scipy.special import ndtr, stdtr
from scipy.stats import chi, nct, t

from tables import write_csv

SEED = 55
COUNT = 400
FALSE_ALARM, POWER = 0.05, 0.8
SHARES = ["share"]
RUNS = ["runs", "runs_power", "pairs", "pairs_power"]
# Coefficient of variation of a run and difference, both in percent.
TABLE = [(cv, difference) for cv in (1, 1.5, 3) for difference in (1, 2, 5)]


def share(at, degrees_of_freedom, noncentrality):
    if not noncentrality:
        return float(stdtr(degrees_of_freedom, at))
    found = float(nct.cdf(at, degrees_of_freedom, noncentrality))
    # Where nothing is left of the lower tail SciPy underflows.
    return by_quadrature(at, degrees_of_freedom, noncentrality) if isnan(found) else found


def by_quadrature(at, degrees_of_freedom, noncentrality):
    """The mean of the normal share below t s - noncentrality over s, the root of a mean square of so many normal deviates."""
    root = np.sqrt(degrees_of_freedom)
    density = lambda s: ndtr(at * s - noncentrality) * root * chi.pdf(root * s, degrees_of_freedom)
    return float(quad(density, 0, 1, epsabs=1e-14)[0] + quad(density, 1, 10, epsabs=1e-14)[0])


def shares():
    """Three in four about the middle of the distribution, the rest far out; every tenth central, and every tenth of few degrees."""
    random = Random(SEED)
    for number in range(1, COUNT + 1):
        degrees = random.randint(1, 8) if number % 10 == 5 else random.randint(1, 500)
        noncentrality = 0.0 if number % 10 == 0 else round(random.uniform(0, 20), 4)
        at = round(noncentrality + random.uniform(-5, 5) if number % 4 else random.uniform(-30, 60), 4)
        yield {"case": f"t-{number}", "degrees_of_freedom": degrees, "noncentrality": noncentrality, "t": at, "share": share(at, degrees, noncentrality)}


def power(degrees, noncentrality):
    """Of a two-sided t-test."""
    critical = t.ppf(1 - FALSE_ALARM / 2, degrees)
    return 1 - share(critical, degrees, noncentrality) + share(-critical, degrees, noncentrality)


def fewest(power_of):
    """The first number whose power is enough, and that power; counted up from two, a hundred at a time at first."""
    step_from = 2
    while power_of(step_from + 100) < POWER:
        step_from += 100
    n = next(n for n in range(step_from, step_from + 101) if power_of(n) >= POWER)
    return n, power_of(n)


def runs_that_show():
    random = Random(SEED)
    more = [(round(random.uniform(0.5, 10), 2), round(random.uniform(0.5, 8), 2)) for _ in range(60)]
    for cv, difference in TABLE + more:
        effect = difference / cv
        runs, runs_power = fewest(lambda n: power(2 * n - 2, effect * sqrt(n / 2)))
        pairs, pairs_power = fewest(lambda n: power(n - 1, effect * sqrt(n) / sqrt(2)))
        found = dict(zip(RUNS, (runs, runs_power, pairs, pairs_power)))
        yield {"case": f"CV {cv} % and {difference} %", "cv": cv, "difference": difference, **found}


def write(folder):
    write_csv(folder / "noncentral_t.csv", ["case", "degrees_of_freedom", "noncentrality", "t", *SHARES], shares())
    write_csv(folder / "runs.csv", ["case", "cv", "difference", *RUNS], runs_that_show())
