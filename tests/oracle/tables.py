"""Reading and writing of the CSV and JSON files, so that every number survives the round trip."""

import csv
import json
from pathlib import Path


def write_csv(path, columns, rows):
    """Cells hold neither commas nor quotes: the plainest reader can split a row."""
    with Path(path).open("w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n", quoting=csv.QUOTE_NONE)
        writer.writerow(columns)
        for row in rows:
            writer.writerow([row.get(column, "") for column in columns])


def read_csv(path):
    with Path(path).open(newline="") as file:
        return list(csv.DictReader(file))


def write_json(path, value):
    Path(path).write_text(json.dumps(value, indent=1) + "\n")


def read_json(path):
    return json.loads(Path(path).read_text())


def rounded(tolerance):
    """Three digits say all that a tolerance has to say."""
    return float(f"{tolerance:.3g}")
