"""Finishing time of a ride, by the eighth-order Dormand-Prince method in time with events at every change.

Between events all is smooth: segment ends, the moment the launch force stops limiting, the start and the
end of a fade, and the moment the rider meets the speed that the next corner allows.
"""

from dataclasses import dataclass
from math import inf, pi, sqrt

from scipy.integrate import solve_ivp

from air import conditions_air, wind_components_m_s
from resistance import Road, resistance_n, steady_speed_m_s

RELATIVE_TOLERANCE = 1e-12
ABSOLUTE_TOLERANCE = 1e-12
DEFAULT_BRAKING_M_S2 = 3.0


@dataclass(frozen=True)
class DragArea:
    """CdA against ride time: a linear fade from fresh to tired, and a share of the time in a lapse."""

    fresh_m2: float
    tired_m2: float
    begins_s: float = inf
    complete_s: float = inf
    lapse_share: float = 0.0
    lapse_m2: float = 0.0

    def at(self, time_s):
        if time_s <= self.begins_s:
            faded = self.fresh_m2
        elif time_s >= self.complete_s:
            faded = self.tired_m2
        else:
            done = (time_s - self.begins_s) / (self.complete_s - self.begins_s)
            faded = self.fresh_m2 + (self.tired_m2 - self.fresh_m2) * done
        return (1 - self.lapse_share) * faded + self.lapse_share * self.lapse_m2

    def next_kink_s(self, time_s):
        return min((k for k in (self.begins_s, self.complete_s) if k > time_s), default=inf)


def drag_area_of(position):
    fade = position.get("fade")
    lapses = position.get("lapses")
    return DragArea(
        position["cda_m2"],
        fade["tired_cda_m2"] if fade else position["cda_m2"],
        fade["begins_s"] if fade else inf,
        fade["complete_s"] if fade else inf,
        lapses["share"] if lapses else 0.0,
        lapses["cda_m2"] if lapses else 0.0,
    )


@dataclass(frozen=True)
class Segment:
    length_m: float
    road: Road
    cap_squared: float = inf
    next_squared: float = inf  # the square of the speed that the road beyond the segment's end allows

    def allowed_squared(self, x_m, braking_m_s2):
        return min(self.cap_squared, self.next_squared + 2 * braking_m_s2 * (self.length_m - x_m))


def legs_of(course):
    """(length, grade, bearing, radius) of every stretch along which nothing changes."""
    if course["kind"] == "profile":
        points = course["points"]
        for a, b in zip(points, points[1:]):
            length = b["distance_m"] - a["distance_m"]
            yield length, (b["elevation_m"] - a["elevation_m"]) / length, a["bearing_deg"], a.get("radius_m")
    elif course["out_and_back"]:
        # A half circle, level, half way round which the road leads to the right.
        radius = course.get("turn_radius_m")
        arc = pi * radius if radius else 0.0
        half = (course["distance_m"] - arc) / 2
        yield half, course["grade"], course["bearing_deg"], None
        if radius:
            yield arc, 0.0, course["bearing_deg"] + 90, radius
        yield half, -course["grade"], course["bearing_deg"] + 180, None
    else:
        yield course["distance_m"], course["grade"], course["bearing_deg"], None


def segments_of(scenario, position):
    air = conditions_air(scenario["conditions"])
    bike = scenario["bike"]
    braking = bike.get("braking_m_s2", DEFAULT_BRAKING_M_S2)
    table = tuple((row["yaw_deg"], row["ratio"]) for row in position.get("yaw_table", ()))
    segments = []
    allowed = inf
    for length, grade, bearing, radius in reversed(list(legs_of(scenario["course"]))):
        head, cross = wind_components_m_s(air["rider_wind_m_s"], air["wind_from_deg"], bearing)
        road = Road(
            scenario["rider"]["total_mass_kg"], bike["rolling_coefficient"], air["density_kg_m3"], grade, head, cross,
            bike["bearing_drag_n"], bike["bearing_drag_n_s_per_m"], table, position.get("speed_exponent", 0.0),
            position.get("reference_airspeed_m_s", 12.0), air["gravity_m_s2"],
        )
        cap = bike["lateral_m_s2"] * radius if radius else inf
        segment = Segment(length, road, cap, allowed)
        allowed = segment.allowed_squared(0.0, braking)
        segments.append(segment)
    return segments[::-1]


class Ride:
    """A rider at constant power on a course: position, speed and time carried from event to event."""

    def __init__(self, scenario, position, drag_area=None):
        self.segments = segments_of(scenario, position)
        self.drag_area = drag_area or drag_area_of(position)
        bike = scenario["bike"]
        total_mass = scenario["rider"]["total_mass_kg"]
        self.moving_mass_kg = total_mass + bike["rotating_mass_kg"]
        self.efficiency = bike["drivetrain_efficiency"]
        self.launch_force_n = bike["launch_force_n"]
        self.braking_m_s2 = bike.get("braking_m_s2", DEFAULT_BRAKING_M_S2)
        self.start = scenario["start"]

    def start_speed_m_s(self, power_w):
        if self.start == "standing":
            return 0.0
        if self.start == "rolling":
            return steady_speed_m_s(self.segments[0].road, self.drag_area.at(0.0), power_w, self.efficiency)
        return self.start["speed_m_s"]

    def time_s(self, power_w):
        wheel_power = self.efficiency * power_w
        time, speed = 0.0, self.start_speed_m_s(power_w)
        for segment in self.segments:
            x = 0.0
            while x < segment.length_m:
                if speed**2 >= segment.allowed_squared(x, self.braking_m_s2) * (1 - 1e-12):
                    x, speed, time = self.follow_allowed(segment, x, speed, time, wheel_power)
                else:
                    x, speed, time = self.ride_freely(segment, x, speed, time, wheel_power)
        return time

    def acceleration(self, road, speed, time, wheel_power):
        propulsion = min(wheel_power / speed, self.launch_force_n) if speed > 0 else self.launch_force_n
        return (propulsion - resistance_n(road, self.drag_area.at(time), speed)) / self.moving_mass_kg

    def ride_freely(self, segment, x, speed, time, wheel_power):
        launching = speed * self.launch_force_n < wheel_power * (1 - 1e-9)
        length, road, cda_at, mass = segment.length_m, segment.road, self.drag_area.at, self.moving_mass_kg

        def motion(t, state):
            v = state[1]
            propulsion = self.launch_force_n if launching else wheel_power / v
            return v, (propulsion - resistance_n(road, cda_at(t), v)) / mass

        def at_end(t, state):
            return state[0] - length

        def unlimited(t, state):
            return state[1] * self.launch_force_n - wheel_power

        def at_corner_speed(t, state):
            return state[1] ** 2 - segment.allowed_squared(state[0], self.braking_m_s2)

        events = [at_end]
        if launching:
            events.append(unlimited)
        if min(segment.cap_squared, segment.next_squared) < inf:
            events.append(at_corner_speed)
        for event in events:
            event.terminal = True
            event.direction = 1
        until = min(self.drag_area.next_kink_s(time), time + 1e6)
        run = solve_ivp(motion, (time, until), (x, speed), "DOP853", events=events,
                        rtol=RELATIVE_TOLERANCE, atol=ABSOLUTE_TOLERANCE)
        x, speed = (float(value) for value in run.y[:, -1])
        time = float(run.t[-1])
        if len(run.t_events[0]):
            return length, speed, time
        if launching and len(run.t_events[1]):
            return x, wheel_power / self.launch_force_n, time
        if run.status == 1:
            return x, sqrt(segment.allowed_squared(x, self.braking_m_s2)), time
        if time + 1 > 1e6:
            raise ValueError("the rider does not reach the end of a segment")
        return x, speed, time

    def follow_allowed(self, segment, x, speed, time, wheel_power):
        """Holds the corner's speed, then brakes for the next one: both in closed form."""
        b = self.braking_m_s2
        brakes_from = segment.length_m
        if segment.next_squared < segment.cap_squared:
            brakes_from = max(x, segment.length_m - (segment.cap_squared - segment.next_squared) / (2 * b))
        if x < brakes_from:
            until = time + (brakes_from - x) / speed
            for t in (time, until):
                if self.acceleration(segment.road, speed, t, wheel_power) < 0:
                    raise ValueError("a corner's speed that the rider cannot hold is outside these checks")
            return brakes_from, speed, until
        slower = sqrt(segment.next_squared)
        for v in (speed, slower):
            if self.acceleration(segment.road, v, time, wheel_power) < -b:
                raise ValueError("a road that slows the rider more than braking is outside these checks")
        return segment.length_m, slower, time + (speed - slower) / b


def ridden_position(scenario):
    return scenario["positions"][scenario["riding_position"]]


def ride_time_s(scenario, power_w, position=None, drag_area=None):
    return Ride(scenario, position or ridden_position(scenario), drag_area).time_s(power_w)
