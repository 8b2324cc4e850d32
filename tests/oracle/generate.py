"""Writes every figure that the core is checked against: `python generate.py`."""

from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

import density
import drag
import even
import gains
import geodesics
import leg_reach
import linkage
import pacing
import positions
import power_fits
import published
import rides
import runs
import steady
import worth

HERE = Path(__file__).resolve().parent
DATA = HERE / "data"
PUBLISHED = HERE.parent / "published"


# The longest first, so that the last ones fill what is left of the time.
ORACLES = (pacing, even, positions, worth, leg_reach, rides, gains, runs, power_fits, steady, linkage, density, drag, geodesics)


def generate(data, tables):
    """Writes every file, one oracle to a processor, and tells which columns of the published tables are worked out, by file."""
    for folder in (data, tables):
        folder.mkdir(parents=True, exist_ok=True)
    with ProcessPoolExecutor() as processes:
        written = [processes.submit(oracle.write, data) for oracle in ORACLES]
        columns = processes.submit(published.write, tables)
        for each in written:
            each.result()
        return columns.result()


if __name__ == "__main__":
    generate(DATA, PUBLISHED)
