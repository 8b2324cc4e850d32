"""data/density.csv: moist-air density by CIPM-2007 and, independently, by CoolProp."""

from random import Random

from CoolProp.HumidAirProp import HAPropsSI

from air import ZERO_CELSIUS_K, moist_air_density_kg_m3
from tables import write_csv

SEED = 101325
COUNT = 500
INPUTS = ["temperature_c", "pressure_pa", "relative_humidity"]
OUTPUTS = ["density_kg_m3", "coolprop_density_kg_m3"]


def coolprop_density_kg_m3(temperature_c, pressure_pa, relative_humidity):
    """Mass of moist air per volume: (1 + humidity ratio) over the volume per mass of dry air."""
    state = ("T", temperature_c + ZERO_CELSIUS_K, "P", pressure_pa, "R", relative_humidity)
    return (1 + HAPropsSI("W", *state)) / HAPropsSI("Vda", *state)


def rows():
    random = Random(SEED)
    for number in range(1, COUNT + 1):
        state = (
            round(random.uniform(0.5, 40), 2),
            round(random.uniform(60000, 107000), 0),
            round(random.uniform(0, 1), 3),
        )
        densities = moist_air_density_kg_m3(*state), coolprop_density_kg_m3(*state)
        yield {"case": f"air-{number}", **dict(zip(INPUTS + OUTPUTS, state + densities))}


def write(folder):
    write_csv(folder / "density.csv", ["case", *INPUTS, *OUTPUTS], rows())
