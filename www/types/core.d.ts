// Written by `cargo xtask build` from the structs of the core; edits here are overwritten.

export type Known = "typical" | "estimated" | "measured";

export type Quantity = { 
/**
 * The value, in the SI unit of the field's name.
 */
value: number, 
/**
 * One standard deviation, in the same unit; 0 for a number that was chosen.
 */
sd: number, 
/**
 * How it is known.
 */
source: Known, };

export type Figure = { 
/**
 * The value, in the SI unit of the field's name.
 */
value: number, 
/**
 * One standard deviation, in the same unit.
 */
sd: number, 
/**
 * The true value lies above this 39 times in 40.
 */
low_95: number, 
/**
 * The true value lies below this 39 times in 40.
 */
high_95: number, 
/**
 * The chance that the true value is positive, 0 to 1.
 */
chance_positive: number, };

export type Column = Float64Array;

export type Value = number | string | { 
/**
 * Its path.
 */
field: string, } | { 
/**
 * What it measures.
 */
kind: QuantityKind, 
/**
 * In the SI unit of its kind; shares are fractions of one.
 */
value: number, } | Message;

export type Message = { 
/**
 * The name of the sentence in the catalogues.
 */
text: string, 
/**
 * What stands at its placeholders.
 */
values: { [name: string]: Value }, };

export type Sentence = { 
/**
 * Its name in the catalogues.
 */
id: string, 
/**
 * Its English text with `{placeholders}`.
 */
english: string, };

export type Kind = "out_of_range" | "not_finite" | "wrong_type" | "unknown_field" | "missing" | "conflict" | "unknown_question" | "newer_version" | "too_large" | "impossible";

export type Error = { 
/**
 * What kind of thing is wrong.
 */
kind: Kind, 
/**
 * The path in the request, such as `scenario.positions[0].cda_m2`; empty if it is the whole request.
 */
field: string, 
/**
 * The least value allowed, where there is a range.
 */
min?: number, 
/**
 * The greatest value allowed, where there is a range.
 */
max?: number, 
/**
 * The name of the sentence in the catalogues.
 */
text: string, 
/**
 * What stands at its placeholders.
 */
values: { [name: string]: Value }, };

export type Warning = { 
/**
 * The path in the request that the doubt is about; empty if it is the whole answer.
 */
field: string, 
/**
 * A word the page can look up, such as `extrapolated`.
 */
kind: string, 
/**
 * The name of the sentence in the catalogues.
 */
text: string, 
/**
 * What stands at its placeholders.
 */
values: { [name: string]: Value }, };

export type Evidence = "published" | "common-practice" | "from-memory" | "assumed";

export type QuantityKind = "distance" | "height" | "speed" | "wind" | "clock" | "fit_length" | "body_length" | "length" | "cadence" | "joint_angle" | "angle" | "force_per_speed" | "hours" | "acceleration" | "area" | "pressure" | "mass" | "power" | "work" | "force" | "temperature" | "time_of_day" | "duration" | "share" | "ratio" | "grade" | "coefficient";

export type Included = "always" | "new" | "optional";

export type Field = { 
/**
 * The path without indices, such as `positions.cda_m2`.
 */
key: string, 
/**
 * What it measures.
 */
kind: QuantityKind, 
/**
 * The SI unit, or an empty text for a pure number.
 */
unit: string, 
/**
 * The least value accepted.
 */
min: number, 
/**
 * The greatest value accepted.
 */
max: number, 
/**
 * Below this the answer carries a warning.
 */
usual_min: number, 
/**
 * Above this the answer carries a warning.
 */
usual_max: number, 
/**
 * The typical value.
 */
default: number, 
/**
 * One standard deviation of the typical value.
 */
default_sd: number, 
/**
 * The step of one press of an arrow key.
 */
step: number, 
/**
 * Whether it is chosen rather than measured, so that nobody is asked for its ±.
 */
chosen: boolean, 
/**
 * Whether a scenario has it without being told.
 */
included: Included, 
/**
 * What the default rests on.
 */
evidence: Evidence, 
/**
 * The key of the citation, or an empty text.
 */
source: string, };

export type Most = { 
/**
 * Kinds of lapse of a position or a piece of equipment.
 */
lapses: number, 
/**
 * Pieces of equipment of a position.
 */
equipment: number, 
/**
 * Recordings of a drag test.
 */
recordings: number, 
/**
 * Laps, runs and coast-downs of a drag test, each.
 */
drag_rows: number, 
/**
 * Kept tests of a position.
 */
drag_tests: number, 
/**
 * Efforts of a scenario.
 */
efforts: number, 
/**
 * Events of a scenario.
 */
events: number, 
/**
 * Bytes of a request.
 */
request_bytes: number, };

export type Read = "abstract" | "second-hand" | "from-memory";

export type Source = { 
/**
 * The key used in code, tables and on the page.
 */
key: string, 
/**
 * The full reference.
 */
citation: string, 
/**
 * How much of it was read.
 */
read: Read, };

export type MeanAndSd = { 
/**
 * The mean.
 */
mean: number, 
/**
 * One standard deviation between riders.
 */
sd: number, };

export type Published = { 
/**
 * What lower bars took off five riders' drag area, as a share. Source: polanco-2020.
 */
lower_bars_cda_cut: MeanAndSd, 
/**
 * What they cost the same riders in power, as a share. Source: polanco-2020.
 */
lower_bars_power_cost: MeanAndSd, 
/**
 * How many riders these were. Source: polanco-2020.
 */
lower_bars_riders: number, 
/**
 * What a low torso cost eleven riders at the anaerobic threshold, W. Source: faulkner-2021.
 */
low_torso_cost_w: MeanAndSd, 
/**
 * How low it was: the angle of the torso above the horizontal, °. Source: faulkner-2021.
 */
low_torso_deg: number, 
/**
 * How many riders these were. Source: faulkner-2021.
 */
low_torso_riders: number, 
/**
 * How much better highly trained riders' trials were after four weeks of intervals, as shares of power, least and
 * greatest of the groups. Source: laursen-2002.
 */
four_weeks_trial_gain: [number, number], 
/**
 * How long those trials were, m. Source: laursen-2002.
 */
four_weeks_trial_m: number, 
/**
 * How much their peak aerobic power rose, as shares, least and greatest of the groups. Source: laursen-2002.
 */
four_weeks_peak_gain: [number, number], };

export type Drawn = { 
/**
 * How many draws there were.
 */
draws: number, 
/**
 * How many could not be ridden, and are left out of the rest.
 */
failed: number, 
/**
 * Share of draws in which the difference is positive.
 */
share_positive: number, 
/**
 * Mean of the difference.
 */
mean: number, 
/**
 * Standard deviation of the difference.
 */
sd: number, 
/**
 * The value that 2.5 % of draws lie below.
 */
low_95: number, 
/**
 * The middle draw.
 */
median: number, 
/**
 * The value that 97.5 % of draws lie below.
 */
high_95: number, };

export type Tally = { 
/**
 * How many draws there were.
 */
draws: number, 
/**
 * How many of them failed, and are left out of the rest.
 */
failed: number, 
/**
 * For each occasion and choice, in how many it was the best; shared where several are.
 */
wins: Array<number>, 
/**
 * For each occasion, the sum of what the best of each draw gives.
 */
best: Array<number>, 
/**
 * For each occasion and choice, the sum of what it gives.
 */
sums: Array<number>, 
/**
 * And of its square.
 */
squares: Array<number>, 
/**
 * For each measurement and term, the sum of the term.
 */
terms: Array<number>, 
/**
 * For each measurement, term, occasion and choice, the sum of the term times what the choice gives.
 */
products: Array<number>, };

export type Scenario = { 
/**
 * The version of this form.
 */
fasterby: number, 
/**
 * What the rider calls it.
 */
title: string, 
/**
 * The rider.
 */
rider: Rider, 
/**
 * The bicycle.
 */
bike: Bike, 
/**
 * The positions the rider has.
 */
positions: Array<Position>, 
/**
 * The one ridden, by its place in `positions`.
 */
riding_position: number, 
/**
 * What the rider can push.
 */
power: Power, 
/**
 * The hard efforts that the rider has ridden.
 */
efforts: Array<Effort>, 
/**
 * The events that count.
 */
events: Array<Event>, 
/**
 * The road.
 */
course: Course, 
/**
 * The day.
 */
conditions: Conditions, 
/**
 * The start.
 */
start: StartForm, 
/**
 * Stops on the way. The module of a first visit does not know them.
 */
stops?: Stops, 
/**
 * Eating and drinking on the way. The module of a first visit does not know it.
 */
feeding?: Feeding, 
/**
 * The model's own error as a share of a finish time.
 */
model_error_share: Quantity, };

export type Rider = { 
/**
 * Rider, bicycle and all they carry, kg.
 */
total_mass_kg: Quantity, };

export type Bike = { 
/**
 * Crr.
 */
rolling_coefficient: Quantity, 
/**
 * Share of pedal power that reaches the road.
 */
drivetrain_efficiency: Quantity, 
/**
 * What the turning wheels add to the mass when speed changes, kg.
 */
rotating_mass_kg: Quantity, 
/**
 * Constant part of bearing drag, N.
 */
bearing_drag_n: Quantity, 
/**
 * Part of bearing drag that grows with speed, N s/m.
 */
bearing_drag_n_s_per_m: Quantity, 
/**
 * The most propulsive force, N.
 */
launch_force_n: Quantity, 
/**
 * The most sideways acceleration in a bend, m/s².
 */
lateral_m_s2: Quantity, 
/**
 * Deceleration before a bend, m/s².
 */
braking_m_s2: Quantity, 
/**
 * By what share the power meter reads high. It is common to every critical power and drag area that was measured.
 */
power_meter_bias_share?: Quantity, };

export type Position = { 
/**
 * What the rider calls it.
 */
name: string, 
/**
 * Drag area when fresh, m².
 */
cda_m2: Quantity, 
/**
 * Critical power in it over that of the power tests.
 */
cp_factor: Quantity, 
/**
 * W′ in it over that of the power tests.
 */
w_prime_factor: Quantity, 
/**
 * What the rider can push in it, from tests ridden in it; stands in place of the factors.
 */
power?: Power, 
/**
 * Axial drag area by yaw, over that at zero yaw.
 */
yaw_table: Array<YawRow>, 
/**
 * How drag area changes with air speed.
 */
speed_exponent: Quantity, 
/**
 * The air speed at which drag area was measured, m/s.
 */
reference_airspeed_m_s: Quantity, 
/**
 * How it is lost.
 */
fade?: Fade, 
/**
 * How it is lost, as a filmed test gives it; in place of `fade`.
 */
fade_test?: FadeTest, 
/**
 * How often it is left, by kinds; the first version's one kind is read too.
 */
lapses: Array<Lapse>, 
/**
 * Choices of what is worn or ridden with it.
 */
equipment: Array<Equipment>, 
/**
 * The one in use, by its place in `equipment`; none if left out.
 */
worn?: number, 
/**
 * The tests that its drag area comes from, oldest first. They are told, and weighed against a new one; `cda_m2` counts.
 */
drag_tests: Array<DragTest>, };

export type YawRow = { 
/**
 * Angle between the bicycle and the apparent wind, degrees.
 */
yaw_deg: number, 
/**
 * Axial drag area over that at zero yaw.
 */
ratio: number, };

export type Fade = { 
/**
 * Drag area once it is lost, m². Its standard deviation is that of the rise above the fresh one: the fresh one's own
 * error is common to both, as a share.
 */
tired_cda_m2: Quantity, 
/**
 * When it begins to go, s.
 */
begins_s: Quantity, 
/**
 * When it has gone, s.
 */
complete_s: Quantity, };

export type FadeTest = { 
/**
 * Mean drag area over the first third, m².
 */
first_third_cda_m2: Quantity, 
/**
 * Mean drag area over the last third, m².
 */
last_third_cda_m2: Quantity, 
/**
 * How long the test was, s.
 */
test_s: Quantity, };

export type DragTest = { 
/**
 * The day, as `2026-05-01`.
 */
date?: string, 
/**
 * What it rests on.
 */
method: DragTestMethod, 
/**
 * How many laps, runs and coast-downs.
 */
rows: number, 
/**
 * The drag area that it gave, m².
 */
cda_m2: number, 
/**
 * One standard deviation of what is its own, m².
 */
sd_m2: number, 
/**
 * One standard deviation of what it has in common with other tests by the same rider and equipment, m².
 */
shared_sd_m2: number, 
/**
 * Of the air, °C.
 */
temperature_c?: number, 
/**
 * As forecast or measured that day, m/s.
 */
wind_speed_m_s?: number, };

export type DragTestMethod = "laps" | "runs" | "coast_downs" | "mixed";

export type Lapse = { 
/**
 * What the rider calls it.
 */
name: string, 
/**
 * Share of the time, 0 to 1.
 */
share: Quantity, 
/**
 * Drag area in it, m². Its standard deviation is that of the difference from the fresh one, whose own error is common to
 * both, as a share.
 */
cda_m2: Quantity, };

export type Equipment = { 
/**
 * What the rider calls it.
 */
name: string, 
/**
 * What it adds to every drag area of the position, m²; its own lapses have theirs.
 */
cda_change_m2?: Quantity, 
/**
 * What it adds to the mass, kg.
 */
mass_change_kg?: Quantity, 
/**
 * Axial drag area by yaw, in place of the position's.
 */
yaw_table: Array<YawRow>, 
/**
 * How often and how the position is left with it, in place of the position's.
 */
lapses: Array<Lapse>, 
/**
 * The most sideways acceleration in a bend, m/s², in place of the bicycle's.
 */
lateral_m_s2?: Quantity, };

export type Power = { 
/**
 * Critical power, W.
 */
cp_w: Quantity, 
/**
 * W′, J.
 */
w_prime_j: Quantity, 
/**
 * Power at the first instant, W.
 */
peak_w?: Quantity, 
/**
 * Share of critical power lost for each e-fold of time in long rides.
 */
long_ride_loss_share?: Quantity, 
/**
 * The same in watts, as versions 1 and 2 wrote it; instead of the share.
 */
long_ride_loss_w?: Quantity, 
/**
 * From when that counts, s.
 */
long_ride_from_s: Quantity, 
/**
 * How the errors of critical power and W′ go together: a fit that puts one too high puts the other too low.
 */
cp_w_prime_correlation: number, 
/**
 * Whether these watts were tested lower down than the course, and how they are lowered for it; the rider's own holds for
 * those of every position too.
 */
altitude_loss: AltitudeLoss, 
/**
 * How strongly this rider loses power with altitude, as a share of the published mean; the typical if left out.
 */
altitude_response?: Quantity, };

export type AltitudeLoss = "none" | "published";

export type Effort = { 
/**
 * How long it lasted, s.
 */
duration_s: Quantity, 
/**
 * Mean power, W.
 */
power_w: Quantity, 
/**
 * The position that it was ridden in, by its place; the ridden one if left out.
 */
position?: number, 
/**
 * The day, as `2026-05-01`.
 */
date?: string, 
/**
 * Whether it was ridden indoors.
 */
indoors?: boolean, };

export type Event = { 
/**
 * What the rider calls it; empty if it goes by its distance.
 */
name: string, 
/**
 * How far it is, m: the scenario's course is made longer or shorter to it. With a course of its own it may be left out, or is
 * that course's length to a metre.
 */
distance_m?: number, 
/**
 * How long it lasts, s, instead of a distance: it is as far as the rider gets in that time today (`Scenario::settle_events`). Its
 * own course, or else the scenario's, is made longer or shorter to that.
 */
duration_s?: number, 
/**
 * The course that it has of its own.
 */
course?: Course, };

export type CourseKind = "simple" | "profile";

export type HeadingForm = "ignore";

export type Course = { 
/**
 * Which kind.
 */
kind: CourseKind, 
/**
 * Its length, m; of a simple course.
 */
distance_m?: Quantity, 
/**
 * How long the ride lasts, s, instead of a length: it is as long as the rider gets in that time today
 * (`Scenario::settle_course`). A profile is made longer or shorter to that.
 */
duration_s?: number, 
/**
 * Rise over run; of a simple course.
 */
grade?: Quantity, 
/**
 * The way it leads at the start, degrees; of a simple course.
 */
bearing_deg?: Quantity, 
/**
 * Whether it comes back the way it went; of a simple course.
 */
out_and_back?: boolean, 
/**
 * Radius of the half circle in which an out-and-back course turns, m; of a simple course. Left out, the rider turns at full
 * speed, which nobody does.
 */
turn_radius_m?: Quantity, 
/**
 * Whether the wind's direction is left out, so that the ride is in calm air.
 */
heading?: HeadingForm, 
/**
 * Points of a profile, by ascending distance.
 */
points: Array<Point>, };

export type Point = { 
/**
 * Along the road from the start, m.
 */
distance_m: number, 
/**
 * Above sea level, m.
 */
elevation_m: number, 
/**
 * The way the road leads from here on, degrees; left out, as at the point before. Without any, the wind is left out.
 */
bearing_deg?: number, 
/**
 * Radius of the bend from here to the next point, m.
 */
radius_m?: number, 
/**
 * The share of the wind along the course that reaches the rider from here to the next point, 0 to 1: less beside hedges, in a
 * wood or between houses. Left out, all of it does.
 */
wind_share?: number, };

export type PressureIs = "sea_level" | "course";

export type Conditions = { 
/**
 * At the course, °C.
 */
temperature_c: Quantity, 
/**
 * hPa; left out, the standard atmosphere's at this altitude.
 */
pressure_hpa?: Quantity, 
/**
 * Where that pressure holds.
 */
pressure_is: PressureIs, 
/**
 * Of the course, m; left out, the mean elevation of its points, or 0 for a simple course.
 */
altitude_m?: Quantity, 
/**
 * 0 to 1.
 */
relative_humidity?: Quantity, 
/**
 * In place of the humidity, °C.
 */
dew_point_c?: Quantity, 
/**
 * As forecast, m/s.
 */
wind_speed_m_s: Quantity, 
/**
 * Where it comes from, degrees.
 */
wind_from_deg: Quantity, 
/**
 * Where it was read.
 */
wind_is: WindIs, 
/**
 * Height of the forecast wind, m.
 */
wind_height_m: Quantity, 
/**
 * Height at which the rider meets it, m.
 */
rider_height_m: Quantity, 
/**
 * Of the land around, m.
 */
roughness_length_m?: Quantity, 
/**
 * In place of the roughness: the share of the wind that reaches the rider.
 */
shelter_factor?: Quantity, 
/**
 * For gravity, degrees.
 */
latitude_deg?: Quantity, 
/**
 * How the weather changes in the course of the day. The module of a first visit does not know it.
 */
later?: LaterWeather, };

export type LaterWeather = { 
/**
 * The time of day of the day's own numbers, s after midnight.
 */
first_at_s: number, 
/**
 * The time of day of these numbers, s after midnight before the ride; above `first_at_s`.
 */
at_s: number, 
/**
 * When the ride begins, s after midnight.
 */
start_at_s: number, 
/**
 * As forecast, m/s.
 */
wind_speed_m_s: number, 
/**
 * Where the wind comes from, degrees.
 */
wind_from_deg: number, 
/**
 * At the course, °C.
 */
temperature_c: number, 
/**
 * hPa, where the day's own pressure holds; left out, the pressure stays.
 */
pressure_hpa?: number, };

export type StartForm = "standing" | "rolling" | { speed_m_s: Quantity };

export type Stops = { 
/**
 * The distance from the start to the first, and from each to the next, m. One at the line is the finish.
 */
every_m: number, 
/**
 * How long each takes standing, s. One who stands longer than planned does so at every stop: its error is common to all.
 */
time_s: Quantity, };

export type Feeding = { 
/**
 * How often, s of riding.
 */
every_s: Quantity, 
/**
 * For how long each time, s.
 */
time_s: Quantity, 
/**
 * Drag area meanwhile, m²: that of the position where it is the larger.
 */
cda_m2: Quantity, };

export type EffortKind = "even" | "power" | "time";

export type EffortForm = { 
/**
 * Which kind.
 */
kind: EffortKind, 
/**
 * W, for a given power.
 */
power_w?: Quantity, 
/**
 * s, for a given finish time.
 */
time_s?: number, };

export type Contribution = { 
/**
 * The input's path in the request.
 */
field: string, 
/**
 * How it is known.
 */
source: Known, 
/**
 * By how much one standard deviation of it, and of what is correlated with it, moves the answer, in the answer's unit;
 * positive if more of it raises the answer. Nearly 0 where more and less of it move the answer the same way.
 */
moves: number, 
/**
 * The share of the answer's variance that knowing it would take away. Correlated inputs each tell of the other, so that
 * theirs overlap.
 */
share: number, 
/**
 * One standard deviation of the answer that would be left if this were known exactly, in the answer's unit.
 */
left: number, };

export type Module = "first" | "whole";

export type Question = { 
/**
 * Its name at the boundary.
 */
id: string, 
/**
 * The wasm module that answers it on a first visit.
 */
module: Module, };

export type Tables = { 
/**
 * The questions and the module that answers each.
 */
questions: Array<Question>, 
/**
 * Every field: bounds, default and its evidence.
 */
fields: Array<Field>, 
/**
 * What each field's default and ranges rest on, by its key.
 */
notes: { [key in string]: string }, 
/**
 * Every citation.
 */
sources: Array<Source>, 
/**
 * Every sentence that the core says, in English.
 */
messages: Array<Sentence>, 
/**
 * Published figures that the page quotes.
 */
published: Published, 
/**
 * The most of each that is taken.
 */
most: Most, 
/**
 * The version of the scenario that is written.
 */
scenario_version: number, 
/**
 * The events of a scenario that names none.
 */
usual_events: Array<Event>, 
/**
 * The same for riders whose distances are metric.
 */
usual_metric_events: Array<Event>, };

// speed-for-watts
export type SpeedForWattsWith = { 
/**
 * Power at the pedals, W; the default is 250.
 */
power_w?: Quantity, 
/**
 * Or a speed over the ground, m/s.
 */
speed_m_s?: Quantity, 
/**
 * Rise over run here; the course's if left out.
 */
grade?: number, 
/**
 * The way the road leads here, degrees; the course's if left out.
 */
bearing_deg?: number, };

export type SpeedForWattsAnswer = { 
/**
 * Speed over the ground.
 */
speed_m_s: Figure, 
/**
 * Power at the pedals.
 */
power_w: Figure, 
/**
 * Where it goes.
 */
breakdown_w: Breakdown, 
/**
 * Share of the road load that is air.
 */
aero_share: number, 
/**
 * What a percent of each input does to speed.
 */
elasticity: Elasticities, 
/**
 * Density of the air.
 */
density_kg_m3: number, 
/**
 * Wind at rider height.
 */
rider_wind_m_s: number, 
/**
 * Its component against the rider.
 */
headwind_m_s: number, 
/**
 * Its component from the rider's right.
 */
crosswind_m_s: number, 
/**
 * Air speed the rider feels.
 */
apparent_wind_m_s: number, 
/**
 * Angle it comes at, degrees.
 */
yaw_deg: number, 
/**
 * Drag area ridden with, lapses counted.
 */
cda_m2: number, 
/**
 * What ten more watts would add to speed.
 */
next_10_w_m_s: Figure, 
/**
 * The same watts in other air.
 */
other_air: OtherAir, 
/**
 * Which inputs carry the doubt of the speed (or of the power, if a speed was asked for).
 */
surer: Array<Contribution>, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: SpeedForWattsColumns, };

export type SpeedForWattsColumns = { 
/**
 * Speeds, m/s.
 */
speed_m_s: Column, 
/**
 * Power into the air at each speed, W.
 */
air_w: Column, 
/**
 * Power into the tyres, W.
 */
rolling_w: Column, 
/**
 * Power into the hill, W.
 */
climbing_w: Column, 
/**
 * Power into the bearings, W.
 */
bearings_w: Column, 
/**
 * Power lost in the drivetrain, W.
 */
drivetrain_w: Column, 
/**
 * Powers, W.
 */
power_w: Column, 
/**
 * Speed at each power, m/s.
 */
speed_at_power_m_s: Column, 
/**
 * What ten more watts add to speed at each power, m/s.
 */
next_10_w_m_s: Column, };

export type Breakdown = { 
/**
 * Into the air; negative where the wind pushes.
 */
air: number, 
/**
 * Into the tyres.
 */
rolling: number, 
/**
 * Into the hill; negative downhill.
 */
climbing: number, 
/**
 * Into the wheel bearings.
 */
bearings: number, 
/**
 * Lost in the drivetrain.
 */
drivetrain: number, };

export type Elasticities = { 
/**
 * Of power.
 */
power: number, 
/**
 * Of drag area.
 */
cda: number, 
/**
 * Of mass.
 */
mass: number, 
/**
 * Of the rolling-resistance coefficient.
 */
rolling: number, 
/**
 * Of air density.
 */
density: number, };

export type OtherAir = { 
/**
 * Density of the standard atmosphere at sea level, kg/m³.
 */
standard_density_kg_m3: number, 
/**
 * Speed in that, the wind as it is, m/s.
 */
standard_speed_m_s: number, 
/**
 * Speed in today's air without wind, m/s.
 */
still_speed_m_s: number, };

// power-or-drag
export type PowerOrDragWith = { 
/**
 * More power, as a share: 0.1 is ten percent more.
 */
power_change: number, 
/**
 * Change of drag area, as a share: −0.1 is ten percent less.
 */
cda_change: number, 
/**
 * How hard; the best even effort if left out.
 */
effort: EffortForm, 
/**
 * The powers that the map spans, W.
 */
map_power_w?: [number, number], 
/**
 * The drag areas that the map spans, m².
 */
map_cda_m2?: [number, number], 
/**
 * How many draws of the comparison to take; none if left out.
 */
draws: number, 
/**
 * The seed of the draws.
 */
seed: number, };

export type PowerOrDragAnswer = { 
/**
 * Finish time as the rider is, the model's own error counted.
 */
base_time_s: Figure, 
/**
 * With more power.
 */
more_power_time_s: Figure, 
/**
 * With less drag.
 */
less_drag_time_s: Figure, 
/**
 * How much faster more power is than less drag; negative if slower. The model's own error cancels.
 */
difference_s: Figure, 
/**
 * What more power saves.
 */
more_power_saves_s: Figure, 
/**
 * What less drag saves.
 */
less_drag_saves_s: Figure, 
/**
 * What that comes to on a course that goes by time.
 */
in_fixed_time?: InFixedTime, 
/**
 * The draws, if any were asked for.
 */
drawn: Drawn | null, 
/**
 * The change of drag area worth the change of power; `null` if none within the bounds is.
 */
equal_cda_change: Figure | null, 
/**
 * The change of power worth the change of drag area.
 */
equal_power_change: Figure | null, 
/**
 * Share of the work on the road that goes into the air.
 */
aero_share: number, 
/**
 * The share at which the two changes tie on a flat calm road; `null` if one always wins.
 */
tie_aero_share: number | null, 
/**
 * Power as the rider is, with more power, and with less drag.
 */
base_power_w: number, 
/**
 * Power of the ride with more.
 */
more_power_w: number, 
/**
 * Power of the ride with less drag; more than the base at even effort, the ride being shorter.
 */
less_drag_power_w: number, 
/**
 * Drag area as the rider is, when fresh.
 */
base_cda_m2: number, 
/**
 * Drag area of the ride with less.
 */
less_drag_cda_m2: number, 
/**
 * What one thing is worth in another.
 */
exchange: Exchange, 
/**
 * What the changes take.
 */
takes: Takes, 
/**
 * How far.
 */
distance_m: number, 
/**
 * Average speed as the rider is.
 */
base_speed_m_s: number, 
/**
 * Which inputs carry the doubt of the difference.
 */
surer: Array<Contribution>, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * The map of finish times.
 */
columns: PowerOrDragColumns, };

export type PowerOrDragColumns = { 
/**
 * Powers, W.
 */
power_w: Column, 
/**
 * Drag areas, m².
 */
cda_m2: Column, 
/**
 * Finish times, s.
 */
time_s: Column, };

export type Exchange = { 
/**
 * Watts worth 0.001 m² of drag area.
 */
w_per_0_001_m2: number, 
/**
 * Square metres worth one watt.
 */
m2_per_w: number, 
/**
 * Watts worth one percent of drag area.
 */
w_per_cda_percent: number, 
/**
 * Watts worth a kilogram.
 */
w_per_kg: number, 
/**
 * Square metres worth a kilogram.
 */
m2_per_kg: number, 
/**
 * Watts worth 0.0001 of the rolling-resistance coefficient.
 */
w_per_0_0001_crr: number, 
/**
 * Square metres worth 0.0001 of the rolling-resistance coefficient.
 */
m2_per_0_0001_crr: number, 
/**
 * Seconds that one watt saves.
 */
s_per_w: number, 
/**
 * Seconds that 0.001 m² saves.
 */
s_per_0_001_m2: number, 
/**
 * Seconds that one percent of drag area saves.
 */
s_per_cda_percent: number, 
/**
 * Seconds that a kilogram saves.
 */
s_per_kg: number, 
/**
 * Seconds that 0.0001 of the rolling-resistance coefficient saves.
 */
s_per_0_0001_crr: number, };

export type Takes = { 
/**
 * How long the changed power could be held today, s; `null` if for ever, or not at all.
 */
more_power_held_s: number | null, 
/**
 * How long the power ridden at now could be held, s.
 */
power_held_s: number | null, 
/**
 * Power that the curve allows for this finish time, W.
 */
sustainable_w: number, };

// finish-time
export type FinishTimeWith = { 
/**
 * How hard; the best even effort if left out.
 */
effort: EffortForm, 
/**
 * The event that is ridden, by its place in the scenario; if left out, the scenario's course.
 */
event?: number, 
/**
 * Instead of the course's length: how far in this time, s, on a course of this kind?
 */
for_time_s?: number, 
/**
 * A finish time whose chance is wanted, s; for an even effort or a given power over the course.
 */
target_time_s?: number, 
/**
 * Another start of the same day to compare with, s after midnight; the later forecast's time if left out, or the first one's
 * for a ride that starts then. Only where the weather changes.
 */
other_start_at_s?: number, 
/**
 * Distance between splits, m.
 */
split_every_m?: number, };

export type FinishTimeAnswer = { 
/**
 * Finish time with all its doubt: the inputs' and the model's own.
 */
time_s: Figure, 
/**
 * The chance that the finish time is at most the target, 0 to 1: of a normal distribution with that time's value and spread.
 * `null` without a target.
 */
chance_of_target: number | null, 
/**
 * The inputs' share of that doubt, one standard deviation, s.
 */
input_sd_s: number, 
/**
 * The model's own share, one standard deviation, s.
 */
model_sd_s: number, 
/**
 * The inputs' share of the doubt of the distance, for a fixed time, m.
 */
input_sd_m: number, 
/**
 * The model's own share of it, m.
 */
model_sd_m: number, 
/**
 * The inputs' share of the doubt of the power, for a target time or an even effort, W.
 */
input_sd_w: number, 
/**
 * The model's own share of it, for a target time, W.
 */
model_sd_w: number, 
/**
 * How far.
 */
distance_m: Figure, 
/**
 * The power ridden at.
 */
power_w: Figure, 
/**
 * The power that this rider's curve allows for this time.
 */
sustainable_w: number, 
/**
 * Distance over time.
 */
average_speed_m_s: Figure, 
/**
 * W′ balance at the finish; below 0 if the ride asks for more than the rider has.
 */
w_prime_left_j: number, 
/**
 * The least W′ balance on the way.
 */
w_prime_least_j: number, 
/**
 * W′ balance at the finish by each form of recovery.
 */
w_prime_forms: WPrimeForms, 
/**
 * The ride at even distances and at the finish.
 */
splits: Array<Split>, 
/**
 * Where the work went.
 */
energy_j: EnergyByCause, 
/**
 * Share of the work on the road that went into the air.
 */
aero_share: number, 
/**
 * Drag area averaged over the ride.
 */
mean_cda_m2: number, 
/**
 * Density of the air.
 */
density_kg_m3: number, 
/**
 * Wind at rider height.
 */
rider_wind_m_s: number, 
/**
 * Finish time at the same power in still air of the same density, if there is wind.
 */
still_time_s: number | null, 
/**
 * Finish time at the same power in the standard atmosphere's air at sea level, the wind as it is.
 */
standard_time_s: number | null, 
/**
 * What the day does to the ride, where it has wind or changes.
 */
day: Day | null, 
/**
 * What stops and feeding cost, where there are any and the finish time was asked for.
 */
stops: StopsCost | null, 
/**
 * Which inputs carry the doubt of what was asked for: the time, the distance, or the power that a target time needs.
 */
surer: Array<Contribution>, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: FinishTimeColumns, };

export type FinishTimeColumns = { 
/**
 * Distances along the ride, m.
 */
along_m: Column, 
/**
 * Speed there, m/s.
 */
along_speed_m_s: Column, 
/**
 * W′ balance there, J.
 */
along_w_prime_j: Column, 
/**
 * Lengths of course, evenly spaced in their logarithm, m.
 */
distance_m: Column, 
/**
 * Time of the best even effort over each, s.
 */
time_s: Column, 
/**
 * Average speed of that effort, m/s.
 */
average_speed_m_s: Column, 
/**
 * Its power, W.
 */
power_w: Column, };

export type Split = { 
/**
 * From the start, m.
 */
distance_m: number, 
/**
 * Since the start, s.
 */
time_s: number, 
/**
 * Mean speed since the split before, m/s.
 */
speed_m_s: number, 
/**
 * W′ balance, J.
 */
w_prime_balance_j: number, };

export type WPrimeForms = { 
/**
 * The form used: recovery slows as W′ fills.
 */
differential_j: number, 
/**
 * Nothing comes back.
 */
no_recovery_j: number, 
/**
 * All comes back, watt for watt.
 */
linear_j: number, };

export type EnergyByCause = { 
/**
 * Work at the pedals: the sum of all others.
 */
pedal: number, 
/**
 * Lost in the drivetrain.
 */
drivetrain: number, 
/**
 * Into the air.
 */
air: number, 
/**
 * Into the tyres.
 */
rolling: number, 
/**
 * Into height.
 */
climbing: number, 
/**
 * Into the wheel bearings.
 */
bearings: number, 
/**
 * Into the brakes.
 */
braking: number, 
/**
 * Into speed.
 */
kinetic: number, };

export type Day = { 
/**
 * The share of the course that leads each way: sixteen sectors, clockwise, the first with its middle at north. Empty where the
 * course does not say.
 */
heading_shares: Array<number>, 
/**
 * What each error of the forecast costs, the dearest first.
 */
forecast_errors: Array<ForecastError>, 
/**
 * The same ride at another start, where the weather changes.
 */
other_start: OtherStart | null, 
/**
 * Curves.
 */
columns: DayColumns, };

export type DayColumns = { 
/**
 * Head wind at rider height where and when the ride is, by the answer's own distances, m/s; not a number where the road does
 * not say which way it leads.
 */
along_head_wind_m_s: Column, 
/**
 * Times of day to start at, from the first forecast to the later one, s after midnight; empty where the weather stays.
 */
start_at_s: Column, 
/**
 * Finish time from each, s.
 */
start_time_s: Column, };

export type ForecastError = { 
/**
 * The path of what is forecast.
 */
field: string, 
/**
 * One standard deviation of it, in its own unit.
 */
error: number, 
/**
 * One standard deviation of the finish time that comes from it, s.
 */
costs_s: number, };

export type OtherStart = { 
/**
 * When it starts, s after midnight.
 */
start_at_s: number, 
/**
 * Its finish time, with all its doubt.
 */
time_s: Figure, 
/**
 * By how much it is slower than the ride as planned. What both share cancels, the model's own error too.
 */
slower_s: Figure, };

export type StopsCost = { 
/**
 * How many stops there are on the way.
 */
number: number, 
/**
 * All that they cost, with the sitting up.
 */
costs_s: Figure, 
/**
 * Standing.
 */
standing_s: Figure, 
/**
 * Braking, and getting up to speed again.
 */
starting_again_s: Figure, 
/**
 * What the weather changes by while the rider stands; negative where the rest is ridden in better weather for it.
 */
later_weather_s: Figure, 
/**
 * Sitting up to eat and drink.
 */
sitting_up_s: Figure, };

// next-gain
export type NextGainWith = { 
/**
 * The candidates; usual ones if left out.
 */
candidates?: Array<Candidate>, 
/**
 * Which riders the usual ones are for.
 */
standing: Standing, 
/**
 * Money to spend, in the rider's own currency.
 */
money: number, 
/**
 * Hours to spend every week.
 */
hours_per_week: number, 
/**
 * For how many weeks.
 */
weeks: number, 
/**
 * How often each of the scenario's events is ridden; once each if left out.
 */
times_ridden: Array<number>, 
/**
 * How much of it to answer.
 */
part: Portion, 
/**
 * The most rides that the search for the best set works out in one request.
 */
rides_at_once: number, 
/**
 * What earlier askings worked out, as they gave it.
 */
so_far: Array<number>, };

export type NextGainAnswer = { 
/**
 * The events as they are ridden now.
 */
events: Array<NextGainEvent>, 
/**
 * What each candidate saves by itself, in the order given; none if only the best set was asked for.
 */
candidates: Array<Gain>, 
/**
 * The candidates' places, what saves most on average first.
 */
ranked: Array<number>, 
/**
 * How far the search is; `null` if it was not asked for.
 */
searched: Searched | null, 
/**
 * The best set; `null` until it is found.
 */
best: BestSet | null, 
/**
 * The candidates that are not in the best set, in the order given; none until it is found.
 */
left_out: Array<LeftOut>, 
/**
 * What measuring a candidate before it is bought would be worth, the most first; none until the best set is found.
 */
measuring: Array<Measuring>, 
/**
 * Hours that the budget comes to in all.
 */
budget_hours: number, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * The candidates' figures, in the order given.
 */
columns: NextGainColumns, };

export type NextGainColumns = { 
/**
 * Seconds saved on average.
 */
expected_s: Column, 
/**
 * One standard deviation of that.
 */
expected_sd_s: Column, 
/**
 * Seconds saved if it works.
 */
saves_s: Column, 
/**
 * One standard deviation of that.
 */
saves_sd_s: Column, 
/**
 * What it costs.
 */
money: Column, 
/**
 * Hours that it takes in all.
 */
hours: Column, };

export type Candidate = { 
/**
 * The key of a usual candidate, or an empty text.
 */
key: string, 
/**
 * What the rider calls it.
 */
name: string, 
/**
 * What it changes.
 */
changes: Array<Change>, 
/**
 * The chance that it comes off, 0 to 1, whatever becomes of the others; of one that requires another, once that has
 * come off.
 */
chance: number, 
/**
 * What it costs, in the rider's own currency.
 */
money: number, 
/**
 * Hours that it takes in every week that it runs.
 */
hours_per_week: number, 
/**
 * For how many weeks on end, beginning in any week of the budget; all of them if left out. One that takes more weeks than
 * the budget has is not taken.
 */
weeks?: number, 
/**
 * Hours that it takes once, spread over any weeks.
 */
hours_once: number, 
/**
 * Of candidates of one group only one is taken; an empty text for none. Two positions to ride in exclude each other.
 */
group: string, 
/**
 * The candidate without which this one cannot be taken: its key, or its name if it has no key; an empty text for none.
 * Where that one does not come off this one brings nothing.
 */
requires: string, 
/**
 * What its size rests on.
 */
evidence: Evidence, 
/**
 * The key of a citation, or an empty text.
 */
source: string, 
/**
 * On comfort, handling, or where the size comes from.
 */
note: string, };

export type Change = { 
/**
 * The number, by its path in the scenario such as `bike.rolling_coefficient`. Without an index, as in
 * `positions.cda_m2`, that of every position. A drag area takes with it what it is once lost and in lapses; critical
 * power that of a position's own tests.
 */
field?: string, 
/**
 * By how much, in the number's own unit.
 */
by?: Quantity, 
/**
 * By what share of itself.
 */
share?: Quantity, 
/**
 * The position to ride in, by its place in the scenario.
 */
use_position?: number, };

export type Standing = "trained" | "new";

export type Portion = "all" | "each" | "best";

export type NextGainEvent = { 
/**
 * What the rider calls it.
 */
name: string, 
/**
 * How far it is.
 */
distance_m: number, 
/**
 * The time of an event that goes by time; the distance is then that which the rider covers in it today.
 */
duration_s?: number, 
/**
 * How often it is ridden.
 */
times_ridden: number, 
/**
 * Finish time as the rider is, at the best even effort, the model's own error counted.
 */
time_s: Figure, 
/**
 * Power of that ride.
 */
power_w: number, };

export type Gain = { 
/**
 * The candidate, filled up.
 */
candidate: Candidate, 
/**
 * Hours that it takes in all.
 */
hours: number, 
/**
 * Seconds it saves over all events if it works; what is uncertain of its size and of the rider is in the sd.
 */
saves_s: Figure, 
/**
 * Seconds it saves on average, its chance and that of what it requires counted; that it may not work is in the sd too.
 */
expected_s: Figure, 
/**
 * Seconds it saves at each event, ridden once, if it works.
 */
by_event_s: Array<Figure>, 
/**
 * How much further it gets at each event that goes by time, if it works; left out where none does.
 */
further_by_event_m?: Array<Figure | null>, 
/**
 * Seconds saved on average for a unit of money; `null` if it costs none.
 */
expected_s_per_money: number | null, 
/**
 * Seconds saved on average for an hour; `null` if it takes none.
 */
expected_s_per_hour: number | null, };

export type BestSet = { 
/**
 * Its candidates, by their places.
 */
candidates: Array<number>, 
/**
 * What it costs.
 */
money: number, 
/**
 * Hours that it takes in all.
 */
hours: number, 
/**
 * The fewest hours a week within which all of it fits into the weeks.
 */
hours_per_week: number, 
/**
 * Seconds it saves on average over all events, every chance counted; that things may not work is in the sd.
 */
expected_s: Figure, 
/**
 * What it saves lies between these 19 times in 20, every chance and what is uncertain of the sizes and of the rider counted.
 */
range_95_s: [number, number], 
/**
 * How many outcomes it may have: which of it comes off, and which not.
 */
outcomes: number, 
/**
 * Seconds it saves if all of it works.
 */
all_work_s: Figure, 
/**
 * What adding up its candidates' own averages would have said.
 */
added_up_s: number, 
/**
 * Seconds it saves on average at each event, ridden once.
 */
by_event_s: Array<number>, 
/**
 * What those seconds come to at each event that goes by time: how much further, m; left out where none does.
 */
further_by_event_m?: Array<number | null>, 
/**
 * The best for each sum of money, the hours a week and weeks as given.
 */
by_money: BudgetCurve, 
/**
 * The best for each number of hours a week, the money and weeks as given.
 */
by_hours: BudgetCurve, 
/**
 * The least more money that buys more; `null` if none does.
 */
next_money: NextStep | null, 
/**
 * The fewest more hours a week that buy more; `null` if none do.
 */
next_hours: NextStep | null, };

export type BudgetCurve = { 
/**
 * Money, or hours a week, from which a step holds.
 */
budget: Array<number>, 
/**
 * Seconds that its set saves on average.
 */
expected_s: Array<number>, 
/**
 * Its candidates.
 */
candidates: Array<Array<number>>, };

export type NextStep = { 
/**
 * How much more money, or how many more hours a week, it takes.
 */
more: number, 
/**
 * How many more seconds its set saves on average.
 */
gains_s: number, 
/**
 * Its candidates.
 */
candidates: Array<number>, };

export type Why = "too_dear" | "too_long" | "too_many_hours_a_week" | "too_many_hours" | "needs_another" | "excluded_by_group" | "no_money_left" | "no_hours_left" | "not_worth_it";

export type LeftOut = { 
/**
 * Its place.
 */
candidate: number, 
/**
 * Why.
 */
why: Why, 
/**
 * The place of the one that it requires, or that excludes it; `null` for other reasons.
 */
other: number | null, };

export type Measuring = { 
/**
 * Its place.
 */
candidate: number, 
/**
 * Seconds that knowing beforehand whether it works and what it saves would add on average to what the best set saves, since it
 * would then be bought just where it pays.
 */
worth_s: number, 
/**
 * Seconds that the best set with it saves on average beyond the best without it; below 0 for one that is left out.
 */
buying_s: number, };

export type Searched = { 
/**
 * Rides worked out.
 */
done: number, 
/**
 * Rides to work out.
 */
of: number, 
/**
 * Their times, to be sent with the next request. They hold for other budgets and chances too.
 */
so_far: Array<number>, };

// hold-or-fade
export type HoldOrFadeWith = { 
/**
 * The low position, by its place in the scenario.
 */
low: number, 
/**
 * The one that is held.
 */
steady: number, 
/**
 * The event that is ridden, by its place in the scenario; if left out, the scenario's course.
 */
event?: number, 
/**
 * By how much the low position's fresh drag area is below the steady one's, m², if that is what was measured: a
 * difference from one test is surer than the difference of two drag areas. What is uncertain of the steady drag area is
 * then common to all.
 */
lower_by_m2?: Quantity, 
/**
 * How hard; the best even effort if left out.
 */
effort: EffortForm, 
/**
 * How many draws of the comparison to take; none if left out.
 */
draws: number, 
/**
 * The seed of the draws.
 */
seed: number, };

export type HoldOrFadeAnswer = { 
/**
 * Finish time in the low position as it is held.
 */
low_time_s: Figure, 
/**
 * Finish time in the steady one.
 */
steady_time_s: Figure, 
/**
 * How much faster the low position is; negative if slower. The model's own error cancels.
 */
difference_s: Figure, 
/**
 * How much further the low position gets in the time of a course that goes by time.
 */
further_m?: Figure, 
/**
 * Finish time in the low position if it were held to the end.
 */
low_held_time_s: Figure, 
/**
 * How much faster it would then be.
 */
held_difference_s: Figure, 
/**
 * The draws, if any were asked for.
 */
drawn: Drawn | null, 
/**
 * Where they tie.
 */
break_even: BreakEven, 
/**
 * The share of the ride that the low position is held for now, in equal effect on the mean drag area.
 */
held_share: number | null, 
/**
 * When the low position's drag area passes the steady one's, s.
 */
passes_s: number | null, 
/**
 * Seconds gained while it is the lower, to first order.
 */
gained_s: number | null, 
/**
 * Seconds given back after that, to first order.
 */
given_back_s: number | null, 
/**
 * Power in the low position.
 */
low_power_w: number, 
/**
 * Power in the steady one.
 */
steady_power_w: number, 
/**
 * Fresh drag area of the low position.
 */
low_cda_m2: number, 
/**
 * Mean drag area of the low position over its ride.
 */
low_mean_cda_m2: number, 
/**
 * Mean drag area of the steady one.
 */
steady_mean_cda_m2: number, 
/**
 * How far: on a course that goes by time, as far as the rider gets in the ridden position.
 */
distance_m: number, 
/**
 * The time that the course goes by, if it does.
 */
duration_s?: number, 
/**
 * Which inputs carry the doubt of the difference.
 */
surer: Array<Contribution>, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: HoldOrFadeColumns, };

export type HoldOrFadeColumns = { 
/**
 * Times of the ride, s.
 */
time_s: Column, 
/**
 * Drag area of the low position then, m².
 */
low_cda_m2: Column, 
/**
 * Drag area of the steady one then, m².
 */
steady_cda_m2: Column, 
/**
 * Shares of the ride held, from 0 to 1; none if the position is never lost.
 */
share: Column, 
/**
 * How much faster the low position is then, s.
 */
difference_s: Column, 
/**
 * One standard deviation of that, s.
 */
difference_sd_s: Column, };

export type BreakEven = { 
/**
 * Share of the ride that the low position must be held, the rest being ridden at its lost drag area.
 */
held_share: number | null, 
/**
 * The earliest that it may begin to go, going as slowly as it does, s.
 */
begins_s: number | null, 
/**
 * The highest drag area that it may end at, m².
 */
tired_cda_m2: number | null, };

// power-curve
export type PowerCurveWith = { 
/**
 * The position whose curve it is; if left out, the ridden one if it has efforts, else the one with the most.
 */
position?: number, 
/**
 * The model drawn and read; if left out, the one that the efforts speak for.
 */
model?: ModelName, 
/**
 * For how long, s.
 */
hold_s: number, 
/**
 * And how much more, as a share of that power.
 */
power_change: number, 
/**
 * One standard deviation of an effort that was given without one, as a share of its power.
 */
test_error_share: number, };

export type PowerCurveAnswer = { 
/**
 * What it rests on.
 */
basis: Basis, 
/**
 * The position that the curve is of.
 */
position: number, 
/**
 * Every effort.
 */
efforts: Array<Tested>, 
/**
 * The longest effort that the curve rests on, s.
 */
longest_s: number | null, 
/**
 * The power that can be held for the time asked for: the curve's own doubt.
 */
power_w: Figure, 
/**
 * Between these a test of that length would come out, 19 times in 20, W.
 */
test_w: [number, number], 
/**
 * A change of that power, and for how long.
 */
more: More, 
/**
 * The model read; `null` for the scenario's own numbers. Past the onset of the long-ride loss a model that rides use loses
 * the usual share of CP where no effort is that long, here as in a ride.
 */
model: ModelName | null, 
/**
 * Whether one model has nine tenths of the evidence among those compared.
 */
told: boolean, 
/**
 * Every model.
 */
models: Array<ModelFit>, 
/**
 * The two-parameter relation in its three forms; `null` with fewer than three efforts.
 */
forms: Forms | null, 
/**
 * What goes into the scenario; `null` where no form that rides use was found.
 */
usable: Usable | null, 
/**
 * Every position that has efforts.
 */
positions: Array<PositionCurve>, 
/**
 * The scenario's events.
 */
events: Array<Marked>, 
/**
 * What training buys.
 */
training: Training, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: PowerCurveColumns, };

export type PowerCurveColumns = { 
/**
 * Times, s, evenly spaced in their logarithm.
 */
time_s: Column, 
/**
 * Power that can be held, W.
 */
power_w: Column, 
/**
 * The curve's own band of 95 %, W.
 */
curve_low_w: Column, 
/**
 * Its upper edge.
 */
curve_high_w: Column, 
/**
 * Where a test would come out, 19 times in 20, W.
 */
test_low_w: Column, 
/**
 * The upper edge.
 */
test_high_w: Column, 
/**
 * The two-parameter model; empty if it was not fitted, as the following.
 */
two_parameter_w: Column, 
/**
 * The three-parameter model.
 */
three_parameter_w: Column, 
/**
 * The omni-domain model.
 */
omni_domain_w: Column, 
/**
 * The logarithmic decline, at the times past seven minutes, which are the last ones.
 */
log_decline_w: Column, 
/**
 * The power law.
 */
power_law_w: Column, 
/**
 * The curve of every position in `positions`, one after the other.
 */
positions_w: Column, };

export type Basis = "given" | "guessed" | "fitted";

export type Tested = { 
/**
 * Its place in the scenario.
 */
effort: number, 
/**
 * The position it was ridden in.
 */
position: number, 
/**
 * How long, s.
 */
duration_s: number, 
/**
 * Its power, with the standard deviation that it was given or that tests have.
 */
power_w: Figure, 
/**
 * What the curve says; `null` for an effort in another position.
 */
curve_w: number | null, 
/**
 * How far above the curve it lies, in its own standard deviations; `null` where that cannot be said.
 */
above_sd: number | null, 
/**
 * Whether the curve counts it: one that a longer effort beats was not all that the rider had.
 */
used: boolean, };

export type More = { 
/**
 * The power, W.
 */
power_w: number, 
/**
 * How long it can be held; `null` for ever, or not for a second.
 */
held_s: Figure | null, };

export type Forms = { 
/**
 * CP, W, of work over time, power over one over time, and time over power.
 */
cp_w: [number, number, number], 
/**
 * W′, J, of the same.
 */
w_prime_j: [number, number, number], };

export type Usable = { 
/**
 * The model that it is of.
 */
model: ModelName, 
/**
 * CP, W.
 */
cp_w: Figure, 
/**
 * W′, J.
 */
w_prime_j: Figure, 
/**
 * Pmax, W, if short efforts told it.
 */
peak_w: Figure | null, 
/**
 * The loss in long rides as a share of CP: the usual one, or what efforts beyond its onset say of it. `null` for a curve
 * through such efforts that has none, since it is in its CP already.
 */
long_ride_loss_share: Figure | null, 
/**
 * How CP and W′ go together.
 */
cp_w_prime_correlation: number, };

export type Marked = { 
/**
 * Its place in the scenario.
 */
event: number, 
/**
 * How far, m.
 */
distance_m: number, 
/**
 * How long it takes at the power that the curve gives for just that time.
 */
time_s: number, 
/**
 * That power.
 */
power_w: Figure, 
/**
 * Whether it is longer than any effort.
 */
beyond: boolean, };

export type Training = { 
/**
 * The published rise of power, as shares, the least and the most.
 */
rise_share: [number, number], 
/**
 * What it adds at the time asked for, W.
 */
rise_w: [number, number], 
/**
 * How long today's power for that time could then be held, s; `null` for ever.
 */
held_s: [number | null, number | null], 
/**
 * Two tests differ by less than this from chance alone, 19 times in 20, as a share.
 */
shown_share: number, 
/**
 * How many tests before and as many after show the least and the most rise: if it is real, 4 times in 5, and if it is not, 1
 * time in 20 (a two-sided t-test, [`Certainty::USUAL`]).
 */
tests: [number, number], };

export type ModelName = "two-parameter" | "three-parameter" | "omni-domain" | "log-decline" | "power-law";

export type Outcome = "compared" | "partly" | "too-few" | "not-reached" | "undetermined" | "implausible";

export type ModelFit = { 
/**
 * Which.
 */
model: ModelName, 
/**
 * How it came off; the rest is `null` where it did not.
 */
outcome: Outcome, 
/**
 * CP, W.
 */
cp_w: Figure | null, 
/**
 * W′, J.
 */
w_prime_j: Figure | null, 
/**
 * Pmax, W.
 */
peak_w: Figure | null, 
/**
 * A, W for each e-fold of time.
 */
long_ride_loss_w: Figure | null, 
/**
 * MAP, W.
 */
seven_minute_w: Figure | null, 
/**
 * E, W for each e-fold of time.
 */
decline_w: Figure | null, 
/**
 * S, W.
 */
one_second_w: Figure | null, 
/**
 * k.
 */
exponent: Figure | null, 
/**
 * How CP and W′ go together: their coefficient of correlation.
 */
correlation: number | null, 
/**
 * The scatter of the efforts about it, as a share of power; `null` where none is left over.
 */
scatter_share: number | null, 
/**
 * Akaike's criterion, up to a constant common to all.
 */
criterion: number | null, 
/**
 * The weight of the evidence for it among those compared; they add up to 1.
 */
weight: number | null, };

export type PositionCurve = { 
/**
 * Which.
 */
position: number, 
/**
 * How many efforts were ridden in it.
 */
efforts: number, 
/**
 * What its curve rests on; guessed where its W′ is taken from the position asked for, or from riders at large.
 */
basis: Basis, 
/**
 * CP, W; `null` without a curve.
 */
cp_w: Figure | null, 
/**
 * W′, J.
 */
w_prime_j: Figure | null, 
/**
 * CP less that of the position asked for, W; `null` for that one itself.
 */
cp_change_w: Figure | null, 
/**
 * CP over that of the position asked for.
 */
cp_factor: Figure | null, 
/**
 * Power less that of the position asked for, at some times.
 */
at: Array<ChangeAt>, };

export type ChangeAt = { 
/**
 * The time, s.
 */
time_s: number, 
/**
 * The change, W; negative for a position that costs power.
 */
change_w: Figure, 
/**
 * The change as a share of the power in the position asked for.
 */
change_share: number, 
/**
 * Whether it is beyond the efforts of either.
 */
beyond: boolean, };

// leg-room
export type LegRoomWith = { 
/**
 * What the ankle does.
 */
model: AnkleModel, 
/**
 * The set-up to compare with.
 */
a: SetUp, 
/**
 * The other one.
 */
b: SetUp, 
/**
 * Standing height, m.
 */
stature_m: Quantity, 
/**
 * Hip joint to knee, m.
 */
thigh_m?: Quantity, 
/**
 * Knee to ankle, m.
 */
shank_m?: Quantity, 
/**
 * Ankle to pedal axle, m.
 */
foot_m?: Quantity, 
/**
 * Hip joint to shoulder joint, m.
 */
trunk_m?: Quantity, 
/**
 * Shoulder joint to arm pads, m.
 */
upper_arm_m?: Quantity, 
/**
 * The hip joint's centre beyond the top of the saddle along the seat line, m.
 */
hip_above_saddle_m: Quantity, 
/**
 * For the frozen ankle: between shank and the line from ankle to pedal, degrees.
 */
ankle_deg: Quantity, 
/**
 * For the moving one: how far that line points down in the mean, degrees.
 */
foot_pitch_deg: Quantity, 
/**
 * And how far it swings to either side, degrees.
 */
foot_swing_deg: Quantity, };

export type LegRoomAnswer = { 
/**
 * The first set-up.
 */
a: SetUpAnswer, 
/**
 * The second.
 */
b: SetUpAnswer, 
/**
 * The second less the first. What is uncertain of the rider's lengths is common to both and largely cancels.
 */
difference: SetUpDifference, 
/**
 * What small changes to the first set-up do.
 */
changes: Array<SetUpChange>, 
/**
 * What gives back the hip angle that pads lower by [`SMALL_DROP_M`] take from the first set-up.
 */
give_back: SetUpWays, 
/**
 * What would make the second set-up's hip as open as the first's.
 */
level: SetUpWays, 
/**
 * The rider's lengths.
 */
lengths: SegmentLengths, 
/**
 * Which inputs carry the doubt of the difference in the tightest hip angle.
 */
surer: Array<Contribution>, 
/**
 * Which inputs carry the doubt of the second set-up's tightest hip angle itself.
 */
surer_hip: Array<Contribution>, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: LegRoomColumns, };

export type LegRoomColumns = { 
/**
 * Crank angle from top dead centre, degrees.
 */
crank_deg: Column, 
/**
 *Hip angle, degrees, of the first set-up
 */
a_hip_deg: Column, 
/**
 *Hip angle, degrees, of the second set-up
 */
b_hip_deg: Column, 
/**
 *Knee angle, degrees, of the first set-up
 */
a_knee_deg: Column, 
/**
 *Knee angle, degrees, of the second set-up
 */
b_knee_deg: Column, 
/**
 *Angular velocity of the thigh, positive towards the chest, degrees a second, of the first set-up
 */
a_thigh_deg_s: Column, 
/**
 *Angular velocity of the thigh, positive towards the chest, degrees a second, of the second set-up
 */
b_thigh_deg_s: Column, 
/**
 *Angular acceleration of the thigh, degrees a second squared, of the first set-up
 */
a_thigh_deg_s2: Column, 
/**
 *Angular acceleration of the thigh, degrees a second squared, of the second set-up
 */
b_thigh_deg_s2: Column, 
/**
 *The pedal forward of the axle, m, of the first set-up
 */
a_pedal_x_m: Column, 
/**
 *The pedal forward of the axle, m, of the second set-up
 */
b_pedal_x_m: Column, 
/**
 *The pedal above the axle, m, of the first set-up
 */
a_pedal_y_m: Column, 
/**
 *The pedal above the axle, m, of the second set-up
 */
b_pedal_y_m: Column, 
/**
 *The ankle forward of the axle, m, of the first set-up
 */
a_ankle_x_m: Column, 
/**
 *The ankle forward of the axle, m, of the second set-up
 */
b_ankle_x_m: Column, 
/**
 *The ankle above the axle, m, of the first set-up
 */
a_ankle_y_m: Column, 
/**
 *The ankle above the axle, m, of the second set-up
 */
b_ankle_y_m: Column, 
/**
 *The knee forward of the axle, m, of the first set-up
 */
a_knee_x_m: Column, 
/**
 *The knee forward of the axle, m, of the second set-up
 */
b_knee_x_m: Column, 
/**
 *The knee above the axle, m, of the first set-up
 */
a_knee_y_m: Column, 
/**
 *The knee above the axle, m, of the second set-up
 */
b_knee_y_m: Column, };

export type AnkleModel = "frozen" | "ankling";

export type SetUp = { 
/**
 * Axle to pedal axle, m.
 */
crank_m: Quantity, 
/**
 * The crank's axle to the top of the saddle along the seat line, m.
 */
saddle_height_m: Quantity, 
/**
 * Of the line from the crank's axle to the hip joint's centre, degrees above the horizontal.
 */
seat_angle_deg: Quantity, 
/**
 * Top of the saddle down to the arm pads, m; the typical drop if there is no torso angle either.
 */
bar_drop_m?: Quantity, 
/**
 * Or, instead of it, hip joint to shoulder joint, degrees above the horizontal.
 */
torso_deg?: Quantity, 
/**
 * Turns of the crank a minute.
 */
cadence_rpm: Quantity, };

export type PlanePoint = { 
/**
 * Forward.
 */
x_m: number, 
/**
 * Up.
 */
y_m: number, };

export type SetUpAnswer = { 
/**
 * Torso above the horizontal.
 */
torso_deg: Figure, 
/**
 * Between torso and thigh where it is least.
 */
tightest_hip_deg: Figure, 
/**
 * Where that is.
 */
tightest_at_deg: number, 
/**
 * Between torso and thigh where it is greatest.
 */
widest_hip_deg: number, 
/**
 * The knee where it is straightest, 180° being straight.
 */
straightest_knee_deg: Figure, 
/**
 * Where that is.
 */
straightest_at_deg: number, 
/**
 * The knee where it is most bent.
 */
most_bent_knee_deg: Figure, 
/**
 * Where that is.
 */
most_bent_at_deg: number, 
/**
 * The thigh's greatest angular velocity, either way, in degrees a second.
 */
fastest_thigh_deg_s: Figure, 
/**
 * Where that is.
 */
fastest_at_deg: number, 
/**
 * The greatest towards the chest.
 */
rising_deg_s: number, 
/**
 * Where that is.
 */
rising_at_deg: number, 
/**
 * The greatest away from it, negative.
 */
falling_deg_s: number, 
/**
 * Where that is.
 */
falling_at_deg: number, 
/**
 * The thigh's greatest angular acceleration towards the chest, degrees a second squared.
 */
rising_deg_s2: number, 
/**
 * Where that is.
 */
rising_s2_at_deg: number, 
/**
 * The greatest away from it, negative.
 */
falling_deg_s2: number, 
/**
 * Where that is.
 */
falling_s2_at_deg: number, 
/**
 * The hip joint's centre.
 */
hip: PlanePoint, 
/**
 * The top of the saddle under it.
 */
saddle: PlanePoint, 
/**
 * The shoulder joint.
 */
shoulder: PlanePoint, 
/**
 * The arm pads.
 */
pads: PlanePoint, 
/**
 * The share of the combinations of what is not known exactly with which the leg reaches the pedal all the way round. Every ±
 * is of those: the saddle was set to this leg.
 */
reach_share: number, };

export type SetUpDifference = { 
/**
 * Of the tightest hip angle: positive where the second opens the hip.
 */
tightest_hip_deg: Figure, 
/**
 * Of the straightest knee.
 */
straightest_knee_deg: Figure, 
/**
 * Of the most bent knee.
 */
most_bent_knee_deg: Figure, 
/**
 * Of the thigh's greatest angular velocity.
 */
fastest_thigh_deg_s: Figure, 
/**
 * Of the torso angle.
 */
torso_deg: Figure, };

export type SetUpPart = "crank_and_saddle" | "crank" | "saddle" | "seat_angle" | "pads";

export type SetUpChange = { 
/**
 * What is changed.
 */
part: SetUpPart, 
/**
 * By how much: m, or degrees of the seat angle. Longer, higher, further forward and lower pads are positive.
 */
by: number, 
/**
 * Change of the tightest hip angle.
 */
tightest_hip_deg: number | null, 
/**
 * Change of the straightest knee.
 */
straightest_knee_deg: number | null, 
/**
 * Change of the thigh's greatest angular velocity.
 */
fastest_thigh_deg_s: number | null, };

export type SetUpWays = { 
/**
 * Of the crank, the saddle going the other way by as much, m.
 */
crank_change_m: number | null, 
/**
 * Of the saddle's height, m.
 */
saddle_change_m: number | null, 
/**
 * Of the seat angle, degrees.
 */
seat_angle_change_deg: number | null, 
/**
 * Of the drop to the pads, m.
 */
bar_drop_change_m: number | null, };

export type SegmentLengths = { 
/**
 * Hip joint to knee.
 */
thigh_m: number, 
/**
 * Knee to ankle.
 */
shank_m: number, 
/**
 * Ankle to pedal axle.
 */
foot_m: number, 
/**
 * Hip joint to shoulder joint.
 */
trunk_m: number, 
/**
 * Shoulder joint to arm pads.
 */
upper_arm_m: number, 
/**
 * Which of them are guessed from the stature.
 */
guessed: Array<string>, };

// which-position
export type WhichPositionWith = { 
/**
 * The positions to compare, by their places; all of them if left out.
 */
positions: Array<number>, 
/**
 * Whether each piece of a position's equipment is a choice of its own, beside the position without any.
 */
equipment: boolean, 
/**
 * The position that the others are compared with, as it is worn; the ridden one if left out.
 */
reference?: number, 
/**
 * A distance to read the answer at, m.
 */
distance_m?: number, 
/**
 * A fixed time to read the answer at instead, s: as far as the ridden position gets in it.
 */
for_time_s?: number, 
/**
 * How the errors of the positions' drag areas go together, from 0 to 1: nearly 1 for guesses about one rider, or where one
 * test measured them all, since its error of scale is common to them.
 */
cda_correlation: number, 
/**
 * How much of it to answer.
 */
part: Wanted, 
/**
 * How many draws of the comparison to take; none if left out.
 */
draws: number, 
/**
 * The seed of the draws.
 */
seed: number, 
/**
 * The tally of draws that an earlier answer to the same request counted, to go on from.
 */
so_far?: Tally, };

export type Wanted = "all" | "draws";

export type Measured = "input" | "difference";

export type WhichPositionAnswer = { 
/**
 * The choices.
 */
choices: Array<PositionChoice>, 
/**
 * The one that the others are compared with, by its place in `choices`.
 */
reference: number, 
/**
 * What they give at each event of the scenario. This and all else that is not of the draws is empty if they alone were
 * asked for.
 */
events: Array<AtDistance>, 
/**
 * And at the distance asked for, where it can be ridden.
 */
reading: AtDistance | null, 
/**
 * Where choices and the reference cross, by choice and then by distance.
 */
crossovers: Array<Crossover>, 
/**
 * What each position may cost before it loses against another: every pair as it is worn; those with the reference if
 * there are very many, and then at the first events only.
 */
costs: Array<PositionCost>, 
/**
 * What lower bars than the reference's may cost.
 */
lower_bars: Array<LowerBars>, 
/**
 * What lower positions cost the riders of published tests.
 */
published: [PublishedCost, PublishedCost], 
/**
 * The draws, if any were asked for.
 */
drawn: CountedDraws | null, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: WhichPositionColumns, };

export type WhichPositionColumns = { 
/**
 * Distances, m, as far as every choice can be ridden.
 */
distance_m: Column, 
/**
 * How much faster than the reference each choice is there, s; choice by choice.
 */
difference_s: Column, 
/**
 * One standard deviation of that, s; choice by choice.
 */
difference_sd_s: Column, 
/**
 * The difference as a share of the reference's time; choice by choice.
 */
difference_share: Column, 
/**
 * One standard deviation of that; choice by choice.
 */
difference_sd_share: Column, };

export type PositionChoice = { 
/**
 * The position, by its place in the scenario.
 */
position: number, 
/**
 * What is worn, by its place in the position's equipment; `null` for nothing.
 */
worn: number | null, 
/**
 * Drag area when fresh, m².
 */
cda_m2: number, 
/**
 * Critical power, W.
 */
cp_w: number, };

export type ChoiceTime = { 
/**
 * Finish time.
 */
time_s: Figure, 
/**
 * How much faster than the reference; negative if slower. The model's own error cancels.
 */
difference_s: Figure, 
/**
 * How much further it gets than the reference at an event that goes by time; negative if less far.
 */
further_m?: Figure, 
/**
 * Power of the best even effort.
 */
power_w: number, 
/**
 * Drag area averaged over the ride, m².
 */
mean_cda_m2: number, };

export type AtDistance = { 
/**
 * How far: over the scenario's course, or over an event's own.
 */
distance_m: number, 
/**
 * The time of an event that goes by time; the distance is then that which the rider covers in it in the ridden position.
 */
duration_s?: number, 
/**
 * The fastest choice, by its place in `choices`.
 */
best: number, 
/**
 * By how much it is faster than the next, in seconds; `null` if there is no other.
 */
ahead_s: Figure | null, 
/**
 * In a fixed time, how much further it gets than the next, m.
 */
ahead_m?: Figure, 
/**
 * What each choice gives.
 */
times: Array<ChoiceTime>, };

export type Crossover = { 
/**
 * The choice, by its place in `choices`.
 */
choice: number, 
/**
 * Where they cross, m. One standard deviation of it is that of the difference over its slope there.
 */
distance_m: Figure, 
/**
 * Whether the choice is the faster one beyond it.
 */
faster_beyond: boolean, };

export type PositionCost = { 
/**
 * The position with the smaller drag area, by its place in `choices`.
 */
choice: number, 
/**
 * The other, by its place in `choices`.
 */
against: number, 
/**
 * The event, by its place in the scenario.
 */
event: number, 
/**
 * How many watts its critical power may lie below the other's; `null` where no number of them ties.
 */
allowed_w: Figure | null, 
/**
 * The same as a share of the other's critical power.
 */
allowed_share: number | null, 
/**
 * How many watts it lies below now.
 */
now_w: number, 
/**
 * By what share its drag area, fresh and without equipment, is below the other's; 0 or less if it is not.
 */
cda_cut: number, 
/**
 * What lower bars cost the riders of `polanco-2020` as a share of power, with the spread between them, scaled from the cut of
 * that test to `cda_cut`: that the cost grows in proportion is assumed. `null` where there is no cut.
 */
polanco_cost: Figure | null, 
/**
 * The share of further riders like them who would pay less than `allowed_share` at that scaled cost.
 */
polanco_share: number | null, 
/**
 * The share of further riders like those of `faulkner-2021` who would pay less than `allowed_w`. Their cut is not published, so
 * that nothing can be scaled: it is given only for a cut of the size that lower bars bring, and holds only for a torso brought
 * down to about 12°.
 */
faulkner_share: number | null, };

export type LowerBars = { 
/**
 * The event, by its place in the scenario.
 */
event: number, 
/**
 * The cut in drag area as a share.
 */
cda_cut: number, 
/**
 * What it may cost in critical power, W; `null` where nothing ties.
 */
allowed_w: number | null, 
/**
 * The same as a share.
 */
allowed_share: number | null, };

export type PublishedCost = { 
/**
 * The key of the citation.
 */
source: string, 
/**
 * The mean, as a share of power or in watts.
 */
mean: number, 
/**
 * The standard deviation between riders.
 */
sd: number, 
/**
 * Whether it is a share of power; watts if not.
 */
is_share: boolean, 
/**
 * How many riders were tested.
 */
riders: number, 
/**
 * The cut in drag area that came with it, as a share; `null` where it is not published.
 */
cda_cut: number | null, };

export type Worth = { 
/**
 * What is measured.
 */
what: Measured, 
/**
 * The paths in the request: of the input, or of both drag areas.
 */
fields: Array<string>, 
/**
 * How it is known; of two, the less sure.
 */
source: Known, 
/**
 * Seconds that knowing it would save over all events on the mean, by choosing better.
 */
worth_s: number, 
/**
 * The same at each event.
 */
by_event_s: Array<number>, };

export type CountedEvent = { 
/**
 * For each choice, the share of draws in which it is the fastest.
 */
win_share: Array<number>, 
/**
 * Seconds that knowing everything would save on the mean, by choosing better.
 */
worth_of_all_s: number, };

export type CountedDraws = { 
/**
 * How many draws there were.
 */
draws: number, 
/**
 * How many could not be ridden, and are left out of the rest.
 */
failed: number, 
/**
 * What they say of each event.
 */
events: Array<CountedEvent>, 
/**
 * What single measurements would be worth, the most first; none that is worth nothing.
 */
worth: Array<Worth>, 
/**
 * To go on from: `with.so_far` of the next request.
 */
tally: Tally, };

export type Samples = Float64Array | (number | null)[];

export type RecordedColumns = { 
/**
 * When, s; rising from sample to sample.
 */
time_s: Samples, 
/**
 * Speed over the ground, m/s.
 */
speed_m_s: Samples, 
/**
 * Power at the pedals, W.
 */
power_w: Samples, 
/**
 * Height, m.
 */
elevation_m?: Samples, 
/**
 * Distance from the start, m. Distances of laps are worked out from speed, so that both have one scale.
 */
distance_m?: Samples, 
/**
 * Where the rider heads, degrees clockwise from north.
 */
bearing_deg?: Samples, };

// drag-test
export type DragTestWith = { 
/**
 * The day of the test, as `2026-05-01`: a test that the scenario holds of that day is this one.
 */
date?: string, 
/**
 * Rides.
 */
recordings: Array<RecordingForm>, 
/**
 * Laps of them, in the order in which they were ridden.
 */
laps: Array<LapForm>, 
/**
 * Runs at constant speed, in the order in which they were ridden.
 */
runs: Array<RunForm>, 
/**
 * Coast-downs.
 */
coast_downs: Array<CoastDownForm>, 
/**
 * What becomes of rolling resistance.
 */
rolling: RollingForm, 
/**
 * What becomes of the wind.
 */
wind: WindForm, 
/**
 * Which samples are unusable.
 */
rules: RulesForm, 
/**
 * One standard deviation of the scale of every speed, as a share.
 */
speed_error_share: number, 
/**
 * What was filmed.
 */
film: Array<FilmForm>, 
/**
 * A test to plan.
 */
plan?: PlanForm, };

export type RecordingForm = { 
/**
 * What was recorded.
 */
columns: RecordedColumns, };

export type LapForm = { 
/**
 * The recording, by its place.
 */
recording: number, 
/**
 * When it begins, in the recording's time, s.
 */
from_s: number, 
/**
 * When it ends, s.
 */
to_s: number, 
/**
 * The position ridden in: the same whole number for all laps in one position, from 0 to 49 (`MOST_POSITIONS` less one). It need
 * not be a position of the scenario.
 */
position: number, 
/**
 * Whether it ends where it began, so that the road is as high.
 */
closed: boolean, 
/**
 * Why it is left out, if it is.
 */
excluded?: string, 
/**
 * The wind at the height of the rider while it was ridden, if that was measured, m/s.
 */
wind_speed_m_s?: number, 
/**
 * Where that came from, degrees.
 */
wind_from_deg?: number, };

export type RunForm = { 
/**
 * The position, as for laps.
 */
position: number, 
/**
 * m/s.
 */
speed_m_s: number, 
/**
 * At the pedals, W.
 */
power_w: number, 
/**
 * Head wind at the height of the rider, m/s; a tail wind is negative. Left out, it is what the scenario's wind is on this bearing,
 * and none without a bearing.
 */
wind_head_m_s?: number, 
/**
 * Rise over run.
 */
grade: number, 
/**
 * Where the road leads, degrees; for the scenario's wind and for one that is fitted.
 */
bearing_deg?: number, 
/**
 * Why it is left out, if it is.
 */
excluded?: string, };

export type CoastDownForm = { 
/**
 * The position, as for laps.
 */
position: number, 
/**
 * m/s.
 */
from_m_s: number, 
/**
 * m/s.
 */
to_m_s: number, 
/**
 * How long it took, s.
 */
time_s?: number, 
/**
 * Or how far it went, m.
 */
distance_m?: number, 
/**
 * Head wind at the height of the rider, m/s.
 */
wind_head_m_s: number, 
/**
 * Rise over run.
 */
grade: number, 
/**
 * Why it is left out, if it is.
 */
excluded?: string, };

export type RollingForm = "fit" | "hold";

export type WindForm = "ignore" | "given" | "fit";

export type RulesForm = { 
/**
 * Slowing down by more than this, beyond what the slope explains, is braking, m/s².
 */
braking_m_s2: number, 
/**
 * Slower than this is a stop, m/s.
 */
stopped_m_s: number, 
/**
 * Gaining speed by more than this without power, beyond what the slope explains, is a fault of the meter, m/s².
 */
accelerating_m_s2: number, 
/**
 * A gap up to this long is bridged, s.
 */
bridged_s: number, 
/**
 * A lap with no more than this that is unusable is kept, s.
 */
allowed_s: number, };

export type FilmForm = { 
/**
 * The position, as for laps.
 */
position: number, 
/**
 * With the head up.
 */
head_up_share: [number, number, number], 
/**
 * With the back raised.
 */
back_up_share: [number, number, number], 
/**
 * With the hands off their place.
 */
hands_moved_share: [number, number, number], };

export type PlanForm = { 
/**
 * The difference between two positions that it is to show, as a share of the drag area.
 */
difference_share: number, 
/**
 * How well one run repeats: one standard deviation as a share of the drag area.
 */
run_cv_share: number, 
/**
 * How often it is to show the difference.
 */
power: number, 
/**
 * How many runs in each position the rider means to do; if left out, as many as it takes.
 */
runs?: number, 
/**
 * The speed of the runs, m/s.
 */
speed_m_s: number, };

export type DragTestAnswer = { 
/**
 * Every two positions compared.
 */
differences: Array<DragDifference>, 
/**
 * Every position.
 */
positions: Array<PositionDrag>, 
/**
 * Rolling resistance; `null` before a test.
 */
rolling_coefficient: RollingAnswer | null, 
/**
 * Whether the rows tell what was asked for: `false` where Crr was to be estimated and had to be held.
 */
identifiable: boolean, 
/**
 * With rolling resistance held where it was estimated, or estimated where it was held and the rows allow it.
 */
other_rolling: OtherRolling | null, 
/**
 * Every row.
 */
laps: Array<TestRow>, 
/**
 * Rows that are left over to tell how well the test repeats.
 */
degrees_of_freedom: number, 
/**
 * How well one row repeats: one standard deviation as a share of its energy.
 */
scatter_share: number | null, 
/**
 * The wind; `null` before a test.
 */
wind: TestWind | null, 
/**
 * What no number of laps makes smaller. Before a test: of a run at the planned speed.
 */
common: Array<CommonError>, 
/**
 * How drag rises within the test.
 */
late_rises: Array<LateRise>, 
/**
 * What each position's drag area is from this test and those before it; empty where the test does not tell its own error.
 */
kept: Array<KeptDrag>, 
/**
 * A planned test.
 */
plan: PlanAnswer | null, 
/**
 * The plan's curve; empty without a plan.
 */
columns: DragTestColumns, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, };

export type DragTestColumns = { 
/**
 * Runs in each position.
 */
runs: Array<number>, 
/**
 * The smallest difference that they show as often as asked for, as a share of the drag area.
 */
smallest_share: Array<number>, };

export type KeptDrag = { 
/**
 * The position.
 */
position: number, 
/**
 * The drag area of them all, m².
 */
cda_m2: number, 
/**
 * One standard deviation of it, with what all tests have in common, m². The power meter's bias is not in it: the scenario
 * counts that for all its drag areas.
 */
sd_m2: number, 
/**
 * This test as the scenario keeps it.
 */
test: ThisTest, 
/**
 * How many tests that makes.
 */
tests: number, };

export type ThisTest = { 
/**
 * m².
 */
cda_m2: number, 
/**
 * One standard deviation of what is its own, the day's wind and air with it, m².
 */
sd_m2: number, 
/**
 * One standard deviation of what is common to all tests with the same rider and equipment, m².
 */
shared_sd_m2: number, 
/**
 * Laps, runs and coast-downs.
 */
rows: number, };

export type TestFigure = { 
/**
 * The value, in the SI unit of the field's name.
 */
value: number, 
/**
 * One standard deviation.
 */
sd: number | null, 
/**
 * The true value lies above this 39 times in 40.
 */
low_95: number | null, 
/**
 * The true value lies below this 39 times in 40.
 */
high_95: number | null, 
/**
 * The chance that the true value is positive, 0 to 1.
 */
chance_positive: number | null, };

export type PositionDrag = { 
/**
 * The position.
 */
position: number, 
/**
 * Its drag area, m².
 */
cda_m2: TestFigure, 
/**
 * How many laps, runs and coast-downs it rests on.
 */
laps: number, };

export type RollingAnswer = { 
/**
 * Crr.
 */
value: number, 
/**
 * One standard deviation: the test's where it was estimated, the scenario's where it was held.
 */
sd: number | null, 
/**
 * Whether it is the scenario's.
 */
held: boolean, };

export type DifferenceError = { 
/**
 * The input's path in the request.
 */
field: string, 
/**
 * One standard deviation of it, in its unit.
 */
sd: number, 
/**
 * By how much the difference comes out higher where the input was taken that much too high, m².
 */
cda_m2: number, };

export type DragDifference = { 
/**
 * The position that is compared with.
 */
a: number, 
/**
 * The other one.
 */
b: number, 
/**
 * The drag area of `b` less that of `a`, m²: what both share has cancelled.
 */
cda_m2: TestFigure, 
/**
 * What of the common errors does not cancel in it, in the order of the answer's `common`: next to nothing where both positions
 * were ridden on one road at the same speeds.
 */
common: Array<DifferenceError>, };

export type OtherRolling = { 
/**
 * Every position.
 */
positions: Array<PositionDrag>, 
/**
 * Rolling resistance.
 */
rolling_coefficient: RollingAnswer, };

export type RowKind = "lap" | "run" | "coast_down";

export type RowLeftOut = "excluded" | "braking" | "stopped" | "dropout";

export type TestRow = { 
/**
 * What it is.
 */
kind: RowKind, 
/**
 * Its place in the request's list of its kind.
 */
index: number, 
/**
 * Its position.
 */
position: number, 
/**
 * How long, s; `null` for what was typed in.
 */
duration_s: number | null, 
/**
 * Mean speed, m/s.
 */
speed_m_s: number, 
/**
 * Mean power, W; `null` for a coast-down.
 */
power_w: number | null, 
/**
 * What the rider put in beyond what the estimate asks, W; `null` where it was left out.
 */
residual_w: number | null, 
/**
 * The drag area that it alone would give with all else as estimated, m².
 */
cda_m2: number | null, 
/**
 * How much it decides its own place, 0 to 1.
 */
leverage: number | null, 
/**
 * The residual in standard deviations that the other rows give.
 */
studentised: number | null, 
/**
 * Whether it lies further out than a test without a fault shows once in twenty. It counts all the same.
 */
outlier: boolean, 
/**
 * Why it was left out, if it was.
 */
left_out: RowLeftOut | null, 
/**
 * How long the rider braked, s.
 */
braking_s: number, 
/**
 * How long the rider stood, s.
 */
stopped_s: number, 
/**
 * How long power or speed was missing, s.
 */
dropout_s: number, };

export type CommonError = { 
/**
 * The input's path in the request.
 */
field: string, 
/**
 * One standard deviation of it, in its unit; what is tried where nobody said how uncertain it is.
 */
sd: number, 
/**
 * By what share of itself the drag area of the first position comes out higher where the input was taken that much too high.
 */
cda_share: number, };

export type TestWind = { 
/**
 * What became of it.
 */
used: WindForm, 
/**
 * A fitted wind at the height of the rider, m/s.
 */
speed_m_s: number | null, 
/**
 * Where it came from, degrees.
 */
from_deg: number | null, 
/**
 * One standard deviation of its component that is known worst, m/s.
 */
sd_m_s: number | null, 
/**
 * Along how many directions the headings of the laps tell it: 0, 1 or 2.
 */
directions: number, };

export type RiseKnown = "measured" | "assumed";

export type LateRise = { 
/**
 * The position.
 */
position: number, 
/**
 * How it is known.
 */
known: RiseKnown, 
/**
 * The rise, m².
 */
cda_m2: TestFigure, };

export type PlanAnswer = { 
/**
 * Runs in each position; `null` if no sensible number is enough.
 */
runs_per_position: number | null, 
/**
 * How often so many show the difference.
 */
runs_power: number | null, 
/**
 * Pairs of one run in each position, if runs of a pair have nothing more in common than others.
 */
pairs: number | null, 
/**
 * How often so many show the difference.
 */
pairs_power: number | null, 
/**
 * The smallest difference that these runs, or those that the rider means to do, show as often as asked for, as a share.
 */
smallest_share: number | null, };

// ride-plan
export type RidePlanWith = { 
/**
 * How W′ comes back.
 */
recovery: RecoveryForm, 
/**
 * The least power, W; 0 where the rider may coast.
 */
least_w: number, 
/**
 * The greatest power, W.
 */
greatest_w: number, 
/**
 * How many powers the plans to be ridden have at most.
 */
targets: number, 
/**
 * The step to which their powers are rounded, W.
 */
round_w: number, 
/**
 * Sitting up on steep climbs; not at all if left out.
 */
sit_up: SitUp | null, 
/**
 * What the rider holds after running out, as a share of critical power.
 */
after_running_out_share: number, 
/**
 * How many riders who differ from the one believed ride both plans; none if left out.
 */
riders: number, 
/**
 * The seed of these riders.
 */
seed: number, };

export type RecoveryForm = "differential" | "none" | "linear";

export type SitUp = { 
/**
 * On road of this grade or more.
 */
from_grade: number, 
/**
 * Drag area there, m²: that of the position where it is the larger.
 */
cda_m2: Quantity, 
/**
 * How much more critical power the rider has there than in the position, as a share.
 */
cp_gain_share: Quantity, };

export type RidePlanAnswer = { 
/**
 * Stops on the way, if there are any: every finish time has what they cost, but the plans are those of the road without them.
 */
stops: PlanStops | null, 
/**
 * The best even effort.
 */
even: EvenRide, 
/**
 * The fastest plan.
 */
fastest: FastestPlan, 
/**
 * The best plan of a few powers for the rider as believed.
 */
simple: CuedPlan, 
/**
 * The plan of a few powers that is best on average over riders whose critical power and W′ are as uncertain as they are.
 */
robust: CuedPlan, 
/**
 * What sitting up on steep climbs does, if the rider wants to.
 */
sit_up: SittingUp | null, 
/**
 * How W′ was taken to come back.
 */
recovery: RecoveryForm, 
/**
 * What is left of W′ at the least on the plan of a few powers, by each form of recovery.
 */
w_prime_least: LeastByForm, 
/**
 * That plan ridden 5 and 10 % too hard over the first ten minutes.
 */
overshoot: [TooHard, TooHard], 
/**
 * That plan with a critical power 3 % lower than believed.
 */
cp_lower: LowerPower, 
/**
 * Many riders on both plans, if any were asked for.
 */
riders: RidersCompared | null, 
/**
 * Finish time of the fastest plan with all its doubt, which is that of the even effort: the inputs' and the model's own.
 */
finish_s: Figure, 
/**
 * Which inputs carry the doubt of the finish time.
 */
surer: Array<Contribution>, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * Curves.
 */
columns: RidePlanColumns, };

export type SittingUp = { 
/**
 * Where the rider sits up, in the order ridden: on climbs of 200 m and more.
 */
climbs: Array<Climb>, 
/**
 * Seconds by which the fastest plan that sits up is the faster one against the fastest that does not, with what the inputs
 * leave in doubt.
 */
faster_by_s: Figure, 
/**
 * The grade from which sitting up is the faster in calm air at the power of the even effort; `null` where it is so
 * everywhere or nowhere.
 */
pays_from_grade: number | null, };

export type Climb = { 
/**
 * Where it begins, m from the start.
 */
from_m: number, 
/**
 * Where it ends, m.
 */
to_m: number, };

export type RidePlanColumns = { 
/**
 * From the start, m.
 */
distance_m: Column, 
/**
 * Power of the fastest plan from there to the next, W.
 */
power_w: Column, 
/**
 * Speed of that plan there, m/s.
 */
speed_m_s: Column, 
/**
 * W′ balance of that plan there, J.
 */
w_prime_j: Column, 
/**
 * Time of that plan there, s.
 */
time_s: Column, 
/**
 * Grade of the road from there on.
 */
grade: Column, 
/**
 * By how much that plan is ahead of the even effort there, s.
 */
ahead_s: Column, 
/**
 * Power of the plan of a few powers, W.
 */
simple_power_w: Column, 
/**
 * W′ balance of that plan, J.
 */
simple_w_prime_j: Column, 
/**
 * Power of the robust plan, W.
 */
robust_power_w: Column, };

export type EvenRide = { 
/**
 * Finish time, s.
 */
time_s: number, 
/**
 * Power, W.
 */
power_w: number, };

export type FastestPlan = { 
/**
 * Finish time, s; never more than that of the even effort, unless the rider sits up where that costs time.
 */
time_s: number, 
/**
 * The least W′ balance on the way, J.
 */
w_prime_least_j: number, 
/**
 * Seconds faster than the even effort; negative where it is slower.
 */
faster_by_s: number, 
/**
 * The power above which W′ is spent, W: critical power, and less in long rides.
 */
threshold_w: number, };

export type Landmark = "start" | "climb" | "descent" | "level" | "turn" | "distance";

export type Cue = { 
/**
 * Where it begins, m from the start.
 */
from_m: number, 
/**
 * The power from there on, W.
 */
power_w: number, 
/**
 * What the place is known by.
 */
landmark: Landmark, 
/**
 * The mean grade of the road from there on.
 */
grade: number, };

export type CuedPlan = { 
/**
 * Finish time of the rider as believed, s.
 */
time_s: number, 
/**
 * The powers in the order ridden.
 */
cues: Array<Cue>, 
/**
 * Seconds slower than the fastest plan.
 */
slower_by_s: number, 
/**
 * The least W′ balance on the way, J; 0 or a little less where the rider as believed runs out.
 */
w_prime_least_j: number, 
/**
 * Mean finish time of riders whose critical power and W′ are uncertain as they are, s.
 */
mean_time_s: number, 
/**
 * The share of them who run out.
 */
run_out_share: number, };

export type TooHard = { 
/**
 * By what share: too hard over the first ten minutes, or the critical power lower than believed.
 */
share: number, 
/**
 * Finish time, s.
 */
time_s: number, 
/**
 * Seconds lost by it.
 */
lost_s: number, 
/**
 * Where W′ runs out, m; `null` where it lasts.
 */
runs_out_m: number | null, };

export type LowerPower = { 
/**
 * Finish time of this rider's own best even effort, s; `null` where there is none.
 */
even_time_s: number | null, 
/**
 * By what share: too hard over the first ten minutes, or the critical power lower than believed.
 */
share: number, 
/**
 * Finish time, s.
 */
time_s: number, 
/**
 * Seconds lost by it.
 */
lost_s: number, 
/**
 * Where W′ runs out, m; `null` where it lasts.
 */
runs_out_m: number | null, };

export type LeastByForm = { 
/**
 * The slower, the fuller it is.
 */
differential_j: number, 
/**
 * Nothing comes back.
 */
none_j: number, 
/**
 * Watt for watt.
 */
linear_j: number, };

export type RidersCompared = { 
/**
 * How many there are.
 */
riders: number, 
/**
 * Their mean finish time on the plan for the rider as believed, s.
 */
simple_mean_time_s: number, 
/**
 * The share of them who run out on it.
 */
simple_run_out_share: number, 
/**
 * Their mean finish time on the plan for an uncertain rider, s.
 */
robust_mean_time_s: number, 
/**
 * The share of them who run out on it.
 */
robust_run_out_share: number, };

export type PlanStops = { 
/**
 * How many there are.
 */
number: number, 
/**
 * From the start to the first, and from each to the next, m.
 */
every_m: number, 
/**
 * What they cost together, s: standing, braking and starting again. Every finish time has it.
 */
costs_s: number, };

// course
export type CourseWith = { 
/**
 * One recording; the scenario's own course where there is none.
 */
recordings: Array<TrackForm>, 
/**
 * The invented shape that takes the place of the scenario's own course, as long as that one. A recording goes before it.
 */
preset?: Preset, 
/**
 * Over how many metres each way its elevation is averaged.
 */
smooth_m: number, 
/**
 * Where the course begins on that road, m.
 */
from_m: number, 
/**
 * Where it ends; at the end of the road if left out, m.
 */
to_m?: number, 
/**
 * Whether it is ridden the other way.
 */
reversed: boolean, 
/**
 * Whether it is ridden there and back.
 */
out_and_back: boolean, 
/**
 * How often it is ridden, lap after lap.
 */
times: number, 
/**
 * How many points are kept at most, with numbers that are rounded for a link: distances to 0.1 m, heights to 0.01 m.
 */
most_points?: number, 
/**
 * The file that is asked for; without one a simple course is refused.
 */
export?: FileForm, 
/**
 * What the course is called in that file.
 */
name: string, };

export type Preset = "flat" | "rolling" | "one_climb" | "out_and_back";

export type FileForm = "gpx" | "csv";

export type TrackForm = { 
/**
 * What was recorded.
 */
columns: TrackColumns, 
/**
 * Whether those with a distance are points of a surveyed road: the course is theirs, and nothing is smoothed.
 */
is_surveyed: boolean, };

export type TrackColumns = { 
/**
 * Degrees north.
 */
latitude_deg: Samples, 
/**
 * Degrees east.
 */
longitude_deg: Samples, 
/**
 * Metres above sea level.
 */
elevation_m: Samples, 
/**
 * Metres along the road, which count where there are no positions.
 */
distance_m: Samples, 
/**
 * The way a surveyed road leads from here on, degrees clockwise from north.
 */
bearing_deg: Samples, 
/**
 * Radius of the bend from here to the next point of a surveyed road, m.
 */
radius_m: Samples, 
/**
 * The share of the wind that reaches the rider from there to the next point.
 */
wind_share: Samples, };

export type CourseAnswer = { 
/**
 * The course, as a scenario holds it.
 */
course: Course, 
/**
 * Its length, m.
 */
distance_m: number, 
/**
 * The sum of its rises, m.
 */
climb_m: number, 
/**
 * The whole recorded road's length, m; `null` without a recording.
 */
recorded_distance_m: number | null, 
/**
 * The sum of that road's rises as they were recorded, m; `null` without a recording.
 */
recorded_climb_m: number | null, 
/**
 * The same once its elevation is smoothed, m; `null` without a recording.
 */
smoothed_climb_m: number | null, 
/**
 * Whether elevation is known; a road without is taken as level.
 */
has_elevation: boolean, 
/**
 * Whether it is known which way the road leads.
 */
has_bearings: boolean, 
/**
 * How much longer the best even effort of the scenario takes over the course of `most_points` than over the one before, s, the
 * difference of two answers of `finish-time`; `null` where none were asked for, or where that ride cannot be ridden.
 */
simplified_slower_s: number | null, 
/**
 * Whether the recording holds points of a surveyed road, which were taken as they are.
 */
is_surveyed: boolean, 
/**
 * The text of the file that was asked for; `null` without.
 */
file: string | null, 
/**
 * What is doubtful.
 */
warnings: Array<Warning>, 
/**
 * The course's points.
 */
columns: CourseColumns, };

export type CourseColumns = { 
/**
 * From the start, m.
 */
distance_m: Column, 
/**
 * Above sea level, m.
 */
elevation_m: Column, };

