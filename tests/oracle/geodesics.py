"""Short legs on the ellipsoid by a geodesic library: the distance between two positions."""

from geographiclib.geodesic import Geodesic

from tables import write_csv

LATITUDES_DEG = (-75.0, -52.3, -33.0, -0.01, 0.0, 12.5, 45.0, 60.4, 74.9)
LONGITUDES_DEG = (-179.999, -30.0, 0.0, 101.7, 179.99)
AZIMUTHS_DEG = (0.0, 37.0, 90.0, 141.0, 180.0, 268.0)
LENGTHS_M = (1.0, 25.0, 400.0, 10_000.0)
HEAD = ("from_latitude_deg", "from_longitude_deg", "to_latitude_deg", "to_longitude_deg", "distance_m")


def legs():
    earth = Geodesic.WGS84
    places = [(lat, lon) for lat in LATITUDES_DEG for lon in LONGITUDES_DEG]
    for i, (lat, lon) in enumerate(places):
        for j, azimuth in enumerate(AZIMUTHS_DEG):
            length = LENGTHS_M[(i + j) % len(LENGTHS_M)]
            end = earth.Direct(lat, lon, azimuth, length)
            to_lat, to_lon = round(end["lat2"], 9), round(end["lon2"], 9)
            # Again from the rounded end, so that the row is right as it stands.
            distance = earth.Inverse(lat, lon, to_lat, to_lon)["s12"]
            yield dict(zip(HEAD, (lat, lon, to_lat, to_lon, distance)))


def write(data):
    write_csv(data / "geodesic_legs.csv", HEAD, legs())
