"""data/pacing.json: the fastest plans of `ride-plan` requests, by direct collocation with CasADi and IPOPT.

Kinetic energy and W' balance along the road are polynomials on each cell, collocated at the three points of Radau; power is
constant on a cell. Power above the threshold and below it are two variables, so that spending and recovering are smooth; both at once
only lose. Past the point from which long rides lose power the threshold depends on the finish time, and is solved for in rounds.
Where W' comes back by the differential form there are local optima: every problem is begun with much and with little of it left, and the
faster plan counts.
"""

from math import log
from random import Random
from time import perf_counter

import casadi as ca

from asked import scenario
from effort import even_effort
from ride import drag_area_of, ridden_position, segments_of
from tables import rounded, write_json

POINTS = 3
TAU = ca.collocation_points(POINTS, "radau")
DERIVATIVE, _, QUADRATURE = (m.full() for m in ca.collocation_coeff(TAU))
START = {"speed_m_s": 8.0}
GREATEST_W = 600.0
ENERGY_J, WORK_J, POWER_W = 1000.0, 10000.0, 100.0  # units of the program's variables
REFERENCE_TOLERANCE_S = 0.02
SHARE_TOLERANCE = 1e-3
EVEN_TOLERANCE = 1e-5
ROUNDS = 4
SETTLED_S = 0.01
ABOUT = {
    "what": "ride-plan requests and the finish times of their fastest plans by direct collocation (Radau, three points; IPOPT), with the best even effort by DOP853",
    "tolerance_reason": "absolute, beside each value: 0.02 s on the two courses whose figures were worked out on meshes of every width, 1e-3 of the time on others, whose mesh is coarser and which have local optima; 1e-5 for the even effort",
}

SIT_UP = {"from_grade": 0.05, "cda_m2": 0.33, "cp_gain_share": 0.05}
RIDER = {"cp_w": 280.0, "w_prime_j": 18000.0}
BARE = {"rotating_mass_kg": 0.0, "bearing_drag_n": 0.0, "bearing_drag_n_s_per_m": 0.0}
WITHOUT = [("power", "peak_w"), ("power", "long_ride_loss_w")]
CALM = {"wind_speed_m_s": 0.0}


def profile(legs):
    """Points from (length, grade, bearing, radius) of stretches."""
    distance, elevation, points = 0.0, 100.0, []
    for length, grade, bearing, radius in legs:
        point = {"distance_m": distance, "elevation_m": round(elevation, 4), "bearing_deg": bearing}
        points.append(point | ({"radius_m": radius} if radius else {}))
        distance += length
        elevation += grade * length
    points.append({"distance_m": distance, "elevation_m": round(elevation, 4), "bearing_deg": bearing})
    return {"kind": "profile", "points": points}


def walk(seed, count, length_m, steepest, turning_deg):
    random = Random(seed)
    grade, bearing = 0.0, 0.0
    for _ in range(count):
        grade = round(0.5 * grade + random.uniform(-steepest, steepest), 4)
        bearing = float(round((bearing + random.uniform(-turning_deg, turning_deg)) % 360, 1))
        yield length_m, grade, bearing, None


def bent():
    for i, radius in enumerate((12.0, 16.0, 9.0, 14.0, 10.0)):
        yield 1800.0, 0.01 if i % 2 else -0.02, 40.0 * i, None
        yield 20.0, 0.0, 40.0 * i + 20.0, radius
    yield 1500.0, 0.0, 200.0, None


def base(course, conditions=None, power=None, without=WITHOUT, **more):
    return scenario(bike=BARE, position={"cda_m2": 0.25}, power=RIDER | (power or {}), course=course, conditions=conditions or CALM,
                    without=without, start=START, **more)


def problems():
    """(name, scenario, forms of recovery, cell in metres, tolerance in seconds or None for a share, sitting up)."""
    out_and_back = {"distance_m": 20000.0, "bearing_deg": 0.0, "out_and_back": True}
    wind = {"wind_speed_m_s": 4.0, "wind_from_deg": 0.0, "wind_height_m": 1.2, "rider_height_m": 1.2}
    one_hill = profile([(3000.0, 0.0, 0.0, None), (2000.0, 0.05, 0.0, None), (2000.0, -0.05, 0.0, None), (3000.0, 0.0, 0.0, None)])
    every = ("differential", "none", "linear")
    yield "out against the wind and back", base(out_and_back, wind), every, 50.0, REFERENCE_TOLERANCE_S, None
    yield "one hill", base(one_hill), every, 50.0, REFERENCE_TOLERANCE_S, None
    yield "one hill, sitting up", base(one_hill), every, 50.0, REFERENCE_TOLERANCE_S, SIT_UP
    yield "rolling", base(profile(walk(1, 50, 400.0, 0.03, 10.0))), every, 100.0, None, None
    windy = {"wind_speed_m_s": 6.0, "wind_from_deg": 230.0}
    yield "windy", base(profile(walk(2, 40, 750.0, 0.008, 60.0)), windy), every, 150.0, None, None
    yield "bends", base(profile(bent())), every, 25.0, None, None
    long = {"long_ride_loss_w": 25.0, "long_ride_from_s": 1800.0}
    yield ("long", base(profile(walk(3, 60, 1500.0, 0.012, 30.0)), windy, long, [("power", "peak_w")]), ("differential",), 250.0, None, None)


def cells_of(segments, width_m):
    """(segment, where it begins on the segment, length): short ones at the start, and where a bend is near."""
    for number, segment in enumerate(segments):
        x, left = 0.0, segment.length_m
        if number == 0:
            for part in (0.125, 0.125, 0.25, 0.5):
                yield segment, x, part * width_m
                x += part * width_m
        near = min(100.0, segment.length_m - x) if segment.next_squared < 600.0 and segment.cap_squared > 600.0 else 0.0
        left = segment.length_m - x - near
        count = max(1, round(left / width_m)) if left > 1e-6 else 0
        for _ in range(count):
            yield segment, x, left / count
            x += left / count
        count = round(near / 4.0)
        for _ in range(count):
            yield segment, x, near / count
            x += near / count


# What differs from cell to cell of one problem.
ROAD = ("headwind_m_s", "crosswind_m_s", "density_kg_m3", "ground_force_n", "bearing_drag_n", "bearing_drag_n_s_per_m")


def cell_of(mass, efficiency, w_prime, recovery):
    """A cell as one function, which CasADi lays out for each much faster than Python could: from the state before, the states at its
    points, what the rider does, the road, and drag area, threshold and length, to what must vanish and the time it takes."""
    before, points, done, road, held = (ca.SX.sym(name, n) for name, n in (("before", 2), ("points", 2 * POINTS), ("done", 4), ("road", len(ROAD)), ("held", 3)))
    above, below, brakes, lost = ca.vertsplit(done)
    headwind, crosswind, density, ground_n, bearing_n, bearing_n_s_per_m = ca.vertsplit(road)
    cda_m2, threshold_w, length = ca.vertsplit(held)
    energies = [before[0], *ca.vertsplit(points[:POINTS])]
    balances = [before[1], *ca.vertsplit(points[POINTS:])]
    equal, time = [], 0
    for j in range(POINTS):
        speed = ca.sqrt(2 * energies[j + 1] * ENERGY_J / mass)
        along = speed + headwind
        apparent = ca.sqrt(along * along + crosswind**2 + 1e-12)
        resisted_n = 0.5 * density * cda_m2 * apparent * along + ground_n + bearing_n + bearing_n_s_per_m * speed
        power = threshold_w + POWER_W * (above - below)
        force = efficiency * power / speed - resisted_n - 100.0 * brakes
        slope = sum(DERIVATIVE[i][j] * energies[i] for i in range(POINTS + 1))
        equal.append(slope - length * force / ENERGY_J)
        recovered = {"differential": below * (1 - balances[j + 1] * WORK_J / w_prime), "none": 0.0, "linear": below - lost}[recovery]
        slope = sum(DERIVATIVE[i][j] * balances[i] for i in range(POINTS + 1))
        equal.append(slope - length / speed * POWER_W * (recovered - above) / WORK_J)
        time += QUADRATURE[j][0] * length / speed
    return ca.Function("cell", [before, points, done, road, held], [ca.vertcat(*equal), time])


def collocated_s(problem, recovery, width_m, threshold_w, shares, sit_up=None):
    """The finish times of the fastest plans that are found from starts with these shares of W' left all along; none where none is found."""
    bike, w_prime = problem["bike"], problem["power"]["w_prime_j"]
    segments = segments_of(problem, ridden_position(problem))
    low = drag_area_of(ridden_position(problem)).at(0.0), threshold_w
    upright = (sit_up["cda_m2"], threshold_w * (1 + sit_up["cp_gain_share"])) if sit_up else low
    mass = problem["rider"]["total_mass_kg"] + bike["rotating_mass_kg"]
    braking = bike.get("braking_m_s2", 3.0)
    cell = cell_of(mass, bike["drivetrain_efficiency"], w_prime, recovery)
    variables, lower, upper, guess, balances, equal = [], [], [], [], [], []

    def of(name, highs, ats, lows):
        v = ca.SX.sym(name, len(highs))
        variables.append(v)
        lower.extend(lows)
        upper.extend(highs)
        guess.extend(min(max(at, low), high) for at, low, high in zip(ats, lows, highs))
        return v

    state = ca.SX([0.5 * mass * START["speed_m_s"] ** 2 / ENERGY_J, w_prime / WORK_J])
    time = 0
    for segment, begin, length in cells_of(segments, width_m):
        cda, threshold_w = upright if sit_up and segment.road.grade >= sit_up["from_grade"] else low
        brakes = 3 * mass * braking / 100.0 if segment.allowed_squared(begin + length, braking) < 600.0 else 0.0
        lost = GREATEST_W / POWER_W if recovery == "linear" else 0.0
        done = of("done", [(GREATEST_W - threshold_w) / POWER_W, threshold_w / POWER_W, brakes, lost], [0.1, 0.1, 0.0, 0.0], [0.0] * 4)
        caps = [0.5 * mass * min(segment.allowed_squared(begin + tau * length, braking), 900.0) / ENERGY_J for tau in TAU]
        energies = of("energies", caps, [0.5 * mass * 110.0 / ENERGY_J] * POINTS, [0.5 * mass / ENERGY_J] * POINTS)
        balances.extend(range(len(guess), len(guess) + POINTS))
        left = of("left", [w_prime / WORK_J] * POINTS, [0.0] * POINTS, [0.0] * POINTS)
        road = [getattr(segment.road, name) for name in ROAD]
        vanishing, takes = cell(state, ca.vertcat(energies, left), done, road, [cda, threshold_w, length])
        equal.append(vanishing)
        time += takes
        state = ca.vertcat(energies[-1], left[-1])
    program = {"x": ca.vertcat(*variables), "f": time, "g": ca.vertcat(*equal)}
    quiet = {"print_time": False, "ipopt": {"print_level": 0, "tol": 1e-9, "sb": "yes", "max_iter": 800}}
    solver = ca.nlpsol("pacing", "ipopt", program, quiet)

    def from_share(share):
        for place in balances:
            guess[place] = share * w_prime / WORK_J
        found = solver(x0=guess, lbx=lower, ubx=upper, lbg=0, ubg=0)
        return float(found["f"]) if solver.stats()["success"] else None

    return {share: from_share(share) for share in shares}


def fastest_s(problem, recovery, width_m, even, sit_up):
    power = problem["power"]
    finish_s = even[1]
    shares = (0.1, 0.6) if recovery == "differential" else (0.5,)
    for _ in range(ROUNDS):
        loss_w = power.get("long_ride_loss_w", 0.0) * max(0.0, log(finish_s / power["long_ride_from_s"]))
        found = collocated_s(problem, recovery, width_m, power["cp_w"] - loss_w, shares, sit_up)
        solved = {share: time_s for share, time_s in found.items() if time_s}
        best = min(solved, key=solved.get)
        shares, before_s, finish_s = (best,), finish_s, solved[best]
        if loss_w == 0.0 or abs(finish_s - before_s) < SETTLED_S:
            break
    return finish_s


def cases():
    for name, problem, forms, width_m, tolerance_s, sit_up in problems():
        even = even_effort(problem)
        for recovery in forms:
            time_s = fastest_s(problem, recovery, width_m, even, sit_up)
            allowed = {"recovery": recovery, "least_w": 0.0, "greatest_w": GREATEST_W} | ({"sit_up": sit_up} if sit_up else {})
            expected = {"even": {"power_w": even[0], "time_s": even[1]}, "fastest": {"time_s": time_s}}
            yield {
                "name": f"{name}, {recovery}",
                "question": "ride-plan",
                "request": {"scenario": problem, "with": allowed},
                "expected": expected,
                "tolerance": {
                    "even": {key: rounded(EVEN_TOLERANCE * value) for key, value in expected["even"].items()},
                    "fastest": {"time_s": tolerance_s or rounded(SHARE_TOLERANCE * time_s)},
                },
            }


def write(folder):
    write_json(folder / "pacing.json", {**ABOUT, "cases": list(cases())})


def solver_s():
    """How long IPOPT takes for the rolling road, from one start."""
    problem = next(problem for name, problem, *_ in problems() if name == "rolling")
    begun = perf_counter()
    collocated_s(problem, "differential", 100.0, problem["power"]["cp_w"], [0.1])
    return perf_counter() - begun


if __name__ == "__main__":
    print(solver_s())
