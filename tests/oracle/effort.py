"""The power of an effort: what the rider can sustain, and the power that fits a time."""

from math import exp, log

from scipy.optimize import brentq, newton

from ride import Ride, ridden_position

POWER_TOLERANCE_W = 1e-11
LAST_STEP_W = 1e-7


def sustainable_power_w(power, position, time_s):
    """P(t) = CP + W'/t (1 - exp(-t (peak - CP)/W')) - A ln(t/T) past T, in a position."""
    cp_factor = position.get("cp_factor", 1.0)
    cp = power["cp_w"] * cp_factor
    w_prime = power["w_prime_j"] * position.get("w_prime_factor", 1.0)
    sustained = cp + w_prime / time_s
    if "peak_w" in power:
        sustained -= w_prime / time_s * exp(-time_s * (power["peak_w"] * cp_factor - cp) / w_prime)
    if "long_ride_loss_w" in power and time_s > power["long_ride_from_s"]:
        sustained -= power["long_ride_loss_w"] * cp_factor * log(time_s / power["long_ride_from_s"])
    return sustained


def power_for_time_w(ride, time_s, low_w, high_w):
    return brentq(lambda p: ride.time_s(p) - time_s, low_w, high_w, xtol=POWER_TOLERANCE_W, rtol=1e-14)


def even_effort(scenario, position=None, drag_area=None, power_factor=1.0):
    """(power, time) such that the power is just what can be sustained for the time it takes."""
    position = position or ridden_position(scenario)
    power = scenario["power"]
    ride = Ride(scenario, position, drag_area)

    def surplus(p):
        return p - power_factor * sustainable_power_w(power, position, ride.time_s(p))

    # What is sustained hardly depends on a time that is nearly right: by secants, a last step of this leaves next to nothing.
    cp = power["cp_w"] * power_factor
    p = newton(surplus, cp, x1=1.05 * cp, tol=LAST_STEP_W)
    return p, ride.time_s(p)


def ridden(scenario, effort, position=None):
    """(power, time) of an effort as a request states it."""
    position = position or ridden_position(scenario)
    if effort["kind"] == "even":
        return even_effort(scenario, position)
    ride = Ride(scenario, position)
    if effort["kind"] == "power":
        return effort["power_w"], ride.time_s(effort["power_w"])
    return power_for_time_w(ride, effort["time_s"], 50.0, 900.0), effort["time_s"]
