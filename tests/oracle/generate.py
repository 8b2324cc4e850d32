"""Writes every figure that the core is checked against: `python generate.py`."""

from pathlib import Path

import density
import even
import gains
import leg_reach
import linkage
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


def generate(data, tables):
    for folder in (data, tables):
        folder.mkdir(parents=True, exist_ok=True)
    for oracle in (steady, density, rides, even, gains, leg_reach, linkage, power_fits, positions, runs, worth):
        oracle.write(data)
    published.write(tables)


if __name__ == "__main__":
    generate(DATA, PUBLISHED)
