"""What independent libraries read in the real recordings that packages hold for their own tests.

Run by hand after `cargo xtask test rust` has fetched them, with fitdecode 0.11.0 installed beside the requirements:
`python real_recordings.py ../../target/xtask/sample-files`. A row is found by the length of its file.
"""

import sys
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import fitdecode
from geographiclib.geodesic import Geodesic

from tables import write_csv

HERE = Path(__file__).resolve().parent
HEAD = ("bytes", "kind", "records", "laps", "powers", "geodesic_m")
NO_RECORDS = "no_records"


def local(element):
    return element.tag.rsplit("}", 1)[-1]


def named(root, name):
    return [element for element in root.iter() if local(element) == name]


def first(element, name):
    found = named(element, name)
    return float(found[0].text) if found and found[0].text else None


def path_m(parts):
    """Geodesics between the positions of each part, which are none at latitude 0 and longitude 0."""
    total = 0.0
    for part in parts:
        known = [p for p in part if p is not None and p != (0.0, 0.0)]
        for (a, b), (c, d) in zip(known, known[1:]):
            total += Geodesic.WGS84.Inverse(a, b, c, d)["s12"]
    return total


def gpx(root):
    points = named(root, "trkpt")
    parts = named(root, "trkseg")
    if not points:
        points = named(root, "rtept")
        parts = [root]
    name = "trkpt" if named(root, "trkpt") else "rtept"
    where = [[(float(p.get("lat")), float(p.get("lon"))) for p in named(part, name)] for part in parts]
    own = sum(1 for p in points if named(p, "distance")) > 1
    return points, where, own


def tcx(root):
    points = named(root, "Trackpoint")
    parts = []
    for lap in named(root, "Lap"):
        for i, track in enumerate(named(lap, "Track")):
            place = [
                (first(p, "LatitudeDegrees"), first(p, "LongitudeDegrees")) if named(p, "LatitudeDegrees") else None
                for p in named(track, "Trackpoint")
            ]
            if i == 0 and parts:
                parts[-1] += place
            else:
                parts.append(place)
    own = sum(1 for p in points if named(p, "DistanceMeters")) > 1
    return points, parts, own


def xml_row(path):
    root = ElementTree.fromstring(path.read_bytes())
    kind = path.suffix[1:]
    points, parts, own = (gpx if kind == "gpx" else tcx)(root)
    if not points:
        return {"kind": NO_RECORDS}
    positions = sum(1 for part in parts for p in part if p is not None)
    geodesic = "" if own or positions < 2 else path_m(parts)
    return {"kind": kind, "records": len(points), "geodesic_m": geodesic}


def fit_row(path):
    records = laps = powers = 0
    with fitdecode.FitReader(str(path), check_crc=fitdecode.CrcCheck.DISABLED, error_handling=fitdecode.ErrorHandling.IGNORE) as reader:
        for frame in reader:
            if frame.frame_type != fitdecode.FIT_FRAME_DATA:
                continue
            if frame.name == "record":
                records += 1
                powers += frame.has_field("power") and frame.get_value("power") is not None
            laps += frame.name == "lap"
    if not records:
        return {"kind": NO_RECORDS}
    return {"kind": "fit", "records": records, "laps": laps, "powers": powers}


def main(folder):
    rows = {}
    for path in sorted(Path(folder).glob("*/*")):
        if path.parent.name == "sources" or not path.is_file():
            continue
        read = fit_row if path.suffix == ".fit" else xml_row
        rows[path.stat().st_size] = {"bytes": path.stat().st_size, **read(path)}
    write_csv(HERE / "data" / "real_recordings.csv", HEAD, [rows[size] for size in sorted(rows)])


if __name__ == "__main__":
    main(sys.argv[1])
