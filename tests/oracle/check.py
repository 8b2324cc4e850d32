"""Works every committed figure out again and compares: `python check.py`.

Inputs, sources and words must be the same to the letter; what a solver gave, to a relative 1e-8.
"""

import sys
from pathlib import Path
from tempfile import TemporaryDirectory

import density
import geodesics
import linkage
import runs
import steady
from generate import DATA, HERE, PUBLISHED, generate
from tables import read_csv, read_json

SOLVER_TOLERANCE = 1e-8  # the solvers repeat to about 1e-11; another machine's mathematics library may differ in the last digits
COARSER = {"pacing.json": 1e-5}  # an optimum is flat: what IPOPT gives depends on its tolerance and on the last digits of everything
SLOPE_TOLERANCE = 2e-2  # a tolerance that comes from a finite difference is rounded to three digits
ABSOLUTE_FLOOR = 1e-11  # for values that are zero but for rounding
SOLVED_PARTS = ("expected", "powers_w", "tolerance")

# Worked out by hand with its own script, from files that packages hold and a reader that nothing else here needs.
BY_HAND = {"real_recordings.csv"}

COMPUTED_COLUMNS = {
    "steady.csv": set(steady.OUTPUTS),
    "density.csv": set(density.OUTPUTS),
    "geodesic_legs.csv": set(geodesics.HEAD[2:]),
    "linkage.csv": set(linkage.OUTPUTS),
    "noncentral_t.csv": set(runs.SHARES),
    "runs.csv": set(runs.RUNS),
}


def close(a, b, tolerance):
    return abs(a - b) <= max(ABSOLUTE_FLOOR, tolerance * max(abs(a), abs(b)))


def number(text):
    try:
        return float(text)
    except ValueError:
        return None


def same_cell(a, b, computed):
    if a == b or not computed:
        return a == b
    a, b = number(a), number(b)
    return a is not None and b is not None and close(a, b, SOLVER_TOLERANCE)


def csv_difference(computed, committed, again):
    old, new = read_csv(committed), read_csv(again)
    if len(old) != len(new):
        return f"has {len(old)} rows where {len(new)} are worked out"
    for number_of_row, (a, b) in enumerate(zip(old, new), start=2):
        if a.keys() != b.keys():
            return "has other columns than those worked out"
        for column in a:
            if not same_cell(a[column], b[column], column in computed):
                return f"row {number_of_row}, column {column}: {a[column]} is committed but {b[column]} is worked out"
    return None


def value_difference(a, b, path, tolerance):
    """The path at which two JSON values differ, and the two values."""
    if isinstance(a, dict) and isinstance(b, dict) and a.keys() == b.keys():
        pairs = ((f"{path}.{key}", a[key], b[key]) for key in a)
    elif isinstance(a, list) and isinstance(b, list) and len(a) == len(b):
        pairs = ((f"{path}[{i}]", x, y) for i, (x, y) in enumerate(zip(a, b)))
    elif isinstance(a, float) and isinstance(b, float) and tolerance:
        tolerance = SLOPE_TOLERANCE if path.endswith("tolerance") else tolerance
        return None if close(a, b, tolerance) else f"{path}: {a} is committed but {b} is worked out"
    else:
        return None if a == b else f"{path}: {a} is committed but {b} is worked out"
    return next(filter(None, (value_difference(x, y, where, tolerance) for where, x, y in pairs)), None)


def json_difference(committed, again):
    old, new = read_json(committed), read_json(again)
    if len(old["cases"]) != len(new["cases"]):
        return f"has {len(old['cases'])} cases where {len(new['cases'])} are worked out"
    for number_of_case, (a, b) in enumerate(zip(old["cases"], new["cases"]), start=1):
        where = f"case {number_of_case} ({a.get('name')})"
        if a.keys() != b.keys():
            return f"{where} has other parts than those worked out"
        for part in a:
            solved = COARSER.get(committed.name, SOLVER_TOLERANCE)
            tolerance = solved if part in SOLVED_PARTS else 0.0
            difference = value_difference(a[part], b[part], part, tolerance)
            if difference:
                return f"{where}, {difference}"
    return value_difference({**old, "cases": 0}, {**new, "cases": 0}, "the file", 0.0)


def differences(committed_folder, again_folder, computed):
    committed = {path.name: path for path in committed_folder.glob("*.*") if path.name not in BY_HAND}
    again = {path.name: path for path in again_folder.glob("*.*")}
    shown = committed_folder.relative_to(HERE.parent.parent)
    for name in sorted(committed.keys() | again.keys()):
        if name not in again:
            yield f"{shown}/{name} is committed but nothing works it out."
        elif name not in committed:
            yield f"{shown}/{name} is not committed: run tests/oracle/generate.py."
        else:
            if name.endswith(".csv"):
                difference = csv_difference(computed[name], committed[name], again[name])
            else:
                difference = json_difference(committed[name], again[name])
            if difference:
                yield f"{shown}/{name}: {difference}."


def main():
    with TemporaryDirectory() as folder:
        data, tables = Path(folder) / "data", Path(folder) / "published"
        computed = generate(data, tables)
        found = [*differences(DATA, data, COMPUTED_COLUMNS), *differences(PUBLISHED, tables, computed)]
    for sentence in found:
        print(sentence)
    if not found:
        print("Every committed figure is worked out again to the same value.")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
