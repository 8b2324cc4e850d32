//! What the core says, as data: which sentence of the message catalogues, and the values in it.
//!
//! The one table of [`MESSAGES`] gives each sentence its name, the kinds of its values and its English text. It makes a
//! function for each, which takes exactly these values. The page writes a message in the reader's language and units; the
//! command line writes the English text in SI units.

use std::fmt;

use serde::Serialize;
use serde::ser::{SerializeMap, SerializeStruct, Serializer};

use crate::inputs::fields::{QuantityKind, only_in_tables};

/// A value in a message.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum Value {
    /// How many.
    Count(#[cfg_attr(feature = "types", ts(type = "number"))] u64),
    /// A text of the request, or a word of the boundary.
    Text(String),
    /// A field of the request.
    Field {
        /// Its path.
        field: String,
    },
    /// A number with what it measures.
    Quantity {
        /// What it measures.
        kind: QuantityKind,
        /// In the SI unit of its kind; shares are fractions of one.
        value: f64,
    },
    /// Another message, of which this one says more.
    Message(Box<Message>),
}

impl fmt::Display for Value {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Count(count) => write!(f, "{count}"),
            Self::Text(text) => f.write_str(text),
            Self::Field { field } => f.write_str(field),
            Self::Quantity { kind, value } => f.write_str(&in_words(*kind, *value)),
            Self::Message(message) => message.fmt(f),
        }
    }
}

/// A number with its SI unit, shares in percent.
fn in_words(kind: QuantityKind, value: f64) -> String {
    // Percentages of decimal fractions have digits at the end that nobody wrote.
    const DIGITS: f64 = 1e9;
    if matches!(kind, QuantityKind::Share | QuantityKind::Grade) {
        return format!("{} %", decimal((100.0 * value * DIGITS).round() / DIGITS));
    }
    let space = if matches!(kind.unit(), "" | "°") {
        ""
    } else {
        " "
    };
    format!("{}{space}{}", decimal(value), kind.unit())
}

/// Formats a number for a message: the shortest text that reads back as it. The writer of JSON is linked already, and the
/// standard library's costs the module sixteen kilobytes.
fn decimal(number: f64) -> String {
    let text = serde_json::Number::from_f64(number)
        .map_or("not a number".to_owned(), |number| number.to_string());
    text.strip_suffix(".0").map(str::to_owned).unwrap_or(text)
}

/// A share as exactly as a sentence says it: to a tenth of a per cent.
pub(crate) fn in_thousandths(share: f64) -> f64 {
    (1000.0 * share).round() / 1000.0
}

/// A power, a time or a height as exactly as a sentence says it: to a tenth.
#[cfg(feature = "all")]
pub(crate) fn in_tenths(number: f64) -> f64 {
    (10.0 * number).round() / 10.0
}

/// The values of a message by the names of their placeholders.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Values(pub Vec<(&'static str, Value)>);

impl Serialize for Values {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (name, value) in &self.0 {
            map.serialize_entry(name, value)?;
        }
        map.end()
    }
}

/// A sentence of the catalogues with its values.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Message {
    /// The name of the sentence in the catalogues.
    pub text: &'static str,
    /// What stands at its placeholders.
    #[cfg_attr(feature = "types", ts(type = "{ [name: string]: Value }"))]
    pub values: Values,
}

impl Serialize for Message {
    /// `{ text, values }`, and with the feature `tables` the English sentence as `message`.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let in_english = cfg!(feature = "tables");
        let mut object = serializer.serialize_struct("Message", 2 + usize::from(in_english))?;
        object.serialize_field("text", self.text)?;
        object.serialize_field("values", &self.values)?;
        if in_english {
            object.serialize_field("message", &self.to_string())?;
        }
        object.end()
    }
}

impl fmt::Display for Message {
    /// The English sentence, its numbers in SI units.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let english = MESSAGES
            .iter()
            .find(|known| known.id == self.text)
            .map_or(self.text, |known| known.english);
        let mut pieces = english.split(['{', '}']);
        // Outside and inside of the braces in turn.
        while let Some(literal) = pieces.next() {
            f.write_str(literal)?;
            let Some(name) = pieces.next() else { break };
            if let Some((_, value)) = self
                .values
                .0
                .iter()
                .find(|(placeholder, _)| *placeholder == name)
            {
                value.fmt(f)?;
            }
        }
        Ok(())
    }
}

/// A sentence of the table.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Sentence {
    /// Its name in the catalogues.
    pub id: &'static str,
    /// Its English text with `{placeholders}`.
    pub english: &'static str,
}

/// What a function of the table takes for a placeholder of a kind.
macro_rules! taken {
    (Count) => {
        usize
    };
    (Text) => {
        &str
    };
    (Field) => {
        &str
    };
    (Measured) => {
        (QuantityKind, f64)
    };
    (Message) => {
        Message
    };
    ($quantity:ident) => {
        f64
    };
}

/// What is kept of it.
macro_rules! kept {
    (Count, $value:expr) => {
        Value::Count($value as u64)
    };
    (Text, $value:expr) => {
        Value::Text($value.to_owned())
    };
    (Field, $value:expr) => {
        Value::Field {
            field: $value.to_owned(),
        }
    };
    (Measured, $value:expr) => {
        Value::Quantity {
            kind: $value.0,
            value: $value.1,
        }
    };
    (Message, $value:expr) => {
        Value::Message(Box::new($value))
    };
    ($quantity:ident, $value:expr) => {
        Value::Quantity {
            kind: QuantityKind::$quantity,
            value: $value,
        }
    };
}

macro_rules! messages {
    ($($id:ident($($name:ident: $kind:tt),*) = $english:literal;)*) => {
        $(
            #[doc = $english]
            pub fn $id($($name: taken!($kind)),*) -> Message {
                Message { text: stringify!($id), values: Values(vec![$((stringify!($name), kept!($kind, $name))),*]) }
            }
        )*
        /// Every sentence.
        pub static MESSAGES: &[Sentence] = &[$(Sentence {
            id: only_in_tables(stringify!($id)),
            english: only_in_tables($english),
        }),*];

        #[cfg(test)]
        const DECLARED: &[(&str, &[&str])] = &[$(($english, &[$(stringify!($name)),*])),*];
    };
}

messages! {
    // Of any field.
    not_a_number(field: Field) = "{field} is not a number that can be used.";
    out_of_range(field: Field, is: Measured, low: Measured, high: Measured) = "{field} is {is}; it runs from {low} to {high}.";
    unusual(field: Field, is: Measured, low: Measured, high: Measured) = "{field} is {is}; it is usually from {low} to {high}.";
    missing(field: Field) = "{field} is missing.";
    too_long(field: Field, most: Count) = "{field} is longer than {most} bytes.";
    too_many(field: Field, most: Count) = "{field} has more than {most} entries.";
    not_both(field: Field, other: Field) = "Give {other} or {field}, not both.";

    // Reading a request.
    too_large(most: Count) = "The request is larger than {most} bytes, the most that is read.";
    not_json(why: Text) = "The request is not JSON: {why}.";
    not_data() = "The request is not data that can be written as JSON.";
    wrong_type(found: Text, wanted: Text) = "Found {found}, expected {wanted}.";
    unknown_field(name: Text, known: Text) = "There is no field {name} here; there are {known}.";
    unknown_word(word: Text, known: Text) = "{word} is none of the words that may stand here: {known}.";
    twice(name: Text) = "The field {name} stands here twice.";
    unreadable(why: Text) = "This cannot be read: {why}.";
    unknown_question(known: Text) = "There is no such question; there are {known}.";
    newer_version(version: Count, reads: Count) = "This was saved by a newer version ({version}); this one reads version {reads}. It is left as it is.";
    older_version(version: Count, oldest: Count) = "This is of version {version}; the oldest version that is read is {oldest}.";

    // A scenario that contradicts itself.
    no_position() = "There is no position: give at least one.";
    no_such_position() = "There is no such position.";
    no_event() = "There is no event: give at least one, or leave events out.";
    not_a_date(field: Field) = "{field} is not a day such as 2026-05-01.";
    not_of_simple_course(field: Field) = "{field} does not belong to a simple course.";
    not_of_profile(field: Field) = "{field} does not belong to a course given as a profile.";
    dew_point_above_temperature(field: Field) = "{field} is above the temperature, which cannot be.";
    pressure_beyond(low: Pressure, high: Pressure) = "The pressure at the course comes out beyond {low} to {high}.";
    not_above(field: Field, other: Field) = "{field} must be above {other}.";
    before(field: Field, other: Field) = "{field} must not be before {other}.";
    no_such_equipment(field: Field) = "{field} names a piece of equipment that is not there.";
    more_than_whole(field: Field) = "{field} come to more than the whole time together.";
    rows_not_in_order(field: Field) = "{field} must be larger than in the row before.";
    too_few_points() = "A profile needs at least two points.";
    points_too_close(field: Field, least: Length) = "{field} must be at least {least} beyond the point before.";
    too_steep(point: Count, grade: Grade) = "The road to point {point} rises by {grade}, more than is ridden.";

    // What is doubtful about a scenario.
    simplified(before: Count, after: Count) = "The course has {before} points; it is ridden over {after} that keep its shape.";
    wind_ignored() = "The wind's direction is ignored, as chosen: the ride is in calm air of the same density.";
    no_bearings() = "The wind is left out, because the course does not say which way it leads. Give its points a bearing in degrees, clockwise from north.";
    not_the_courses_length(length: Length) = "An event with a course of its own is as long as that course, {length}. Leave its distance out.";
    altitude_differs(altitude: Height, mean: Height) = "The air is taken at an altitude of {altitude}, but the course's points lie at {mean} in the mean. Leave the altitude out to follow them.";
    altitude_counted(altitude: Height, loss: Share) = "At {altitude} your power curve is lowered by {loss} at five minutes, after ten cyclists who were not used to altitude (Clark et al. 2007).";
    thin_air(altitude: Height, loss: Share) = "The thin air at {altitude} makes you faster here, but takes no power from you. Ten cyclists lost {loss} over five minutes at that height: if your power was tested lower down, switch on the loss of power with altitude.";
    heat() = "Hot air is thin and makes you faster here, but takes no power from you. In heat riders hold less, the longer the ride the more.";
    calm_at_first() = "The earlier forecast is calm, so nothing tells how wrong the later wind may be: its error is not counted.";
    wind_law() = "So close to rough ground the wind at your height is a rough guess; giving the share that reaches you may be better.";

    // Rides.
    stops_at_steep(distance: Length, push: Force) = "The rider comes to a stop after {distance}: the road there takes a push of {push}, more than the greatest push of this rider and gear.";
    stops(distance: Length) = "The rider comes to a stop after {distance}: too little power for this road and wind.";
    fixed_time_out_of_reach(least: Distance, most: Distance) = "In this time the ride gets less far than {least} or further than {most}.";
    time_out_of_reach() = "No power from 1 to 2500 W gives this time on this course.";
    nothing_sustainable() = "This power curve falls to nothing before the finish.";
    effort_without(field: Field) = "{field} does not belong to this kind of effort.";
    fixed_time_compares_nothing() = "A fixed finish time leaves nothing to compare; give a power or the best even effort.";
    not_as_before(field: Field) = "{field} is not what an earlier answer to the same question gave.";
    beyond_curve(asked: Power, allowed: Power) = "This asks {asked}; your power curve allows {allowed} for that long.";
    beyond_table(last: Angle) = "The apparent wind comes from beyond {last}, the last row of your yaw table.";
    hour_overstated() = "Without a long-ride loss the power curve overstates what can be held for an hour, by 5 % or more.";
    far_beyond(hours: Count) = "A ride of {hours} hours is far beyond what a power curve rests on: the published powers behind it end at one hour. What can be held for so long is a guess, and food, sleep and weather decide.";

    // speed-for-watts
    pushed() = "The road and the wind push more than this speed needs: no pedalling, some braking.";
    launch() = "From rest this rider could not start here.";
    several_speeds() = "In this wind more than one steady speed takes these watts; the highest is shown.";

    // power-or-drag
    from_low_to_high(field: Field) = "{field} must run from the lower to the higher.";

    // finish-time
    time_fixed_twice(field: Field) = "{field} fixes the time already; a target time says it twice.";
    chance_of_given_time(field: Field) = "{field} asks for the chance of a finish time, which is given here.";
    short_overstated() = "Below two minutes the power curve needs a peak power.";
    turn_not_counted(radius: Length, seconds: Count) = "Turning round is not counted. Braking, a half circle of {radius} radius and getting back to speed would take about {seconds} s; give the turn a radius to count it.";
    one_density(climb: Height) = "The course spans {climb} of height; the air is taken as one density, and thins by about 1 % in 90 m.";

    // hold-or-fade
    never_lost() = "The low position neither fades nor lapses here. Say when it starts to slip, or both are simply held.";
    after_finish() = "The low position would start to slip only after the finish.";

    // power-curve
    beaten() = "A longer effort was harder than this one, so it was not all you had: the curve leaves it out.";
    not_maximal() = "This effort lies well below the curve of the others: it does not look like all you had.";
    short() = "An effort under two minutes bends a two-parameter curve: CP comes out too high and W′ too low.";
    no_curve() = "No curve of a rider goes through these efforts; your own CP and W′ are shown.";
    one_effort() = "One effort does not tell CP from W′: W′ is taken as riders usually have it. An effort of another length would tell them apart.";
    hardly_harder() = "The shorter efforts are hardly harder than the longer ones, or far too much so, for all of them to be all you had: W′ is taken as riders usually have it.";
    one_length() = "Efforts of one length do not tell CP from W′: W′ is taken as riders usually have it. Add one much shorter or longer.";
    two_efforts() = "Two efforts fix a curve but cannot check it; a third of another length would.";
    w_prime_small(w_prime: Work) = "W′ comes out at {w_prime}, less than riders have: the shortest effort does not look like all you had. Repeat it before you use these.";
    w_prime_large(w_prime: Work) = "W′ comes out at {w_prime}, more than riders have: the longest effort does not look like all you had. Repeat it before you use these.";
    all_short() = "All efforts are under ten minutes: CP comes out too high, whatever the model. One of 12 to 20 minutes helps most.";
    extrapolated(longest: Duration) = "Beyond {longest}, your longest effort, the curve is a guess.";
    levels_off() = "A curve that levels off at CP overstates an hour: in trained riders CP was 323 W and the hour 309 W.";

    // leg-room
    nearly_straight() = "The leg is nearly straight there: a few millimetres of saddle move all of this a great deal.";
    may_not_reach(of_hundred: Count) = "With {of_hundred} of 100 combinations of these lengths the leg would not reach the pedal. Every ± is of the others, since the saddle was set to this leg; measured lengths would narrow it.";
    trunk_too_short() = "The trunk is too short for pads at this height: the shoulders would not meet them.";
    leg_too_long(from: JointAngle, to: JointAngle, missing: FitLength, at: JointAngle) = "The leg is too long to fold up to the pedal from {from} to {to} past the top; at {at} it is {missing} too long.";
    leg_too_short(from: JointAngle, to: JointAngle, missing: FitLength, at: JointAngle) = "The leg does not reach the pedal from {from} to {to} past the top; at {at} it is {missing} short.";
    saddle_at_least(why: Message, limit: FitLength) = "{why} It fits with the saddle at {limit} or more.";
    saddle_at_most(why: Message, limit: FitLength) = "{why} It reaches with the saddle at {limit} or less.";

    // which-position
    position_twice(position: Count) = "Position {position} is named twice among those to compare.";
    too_many_choices(most: Count) = "There are more than {most} choices: name fewer positions to compare.";
    no_such_choice() = "There is no such choice.";
    reference_left_out() = "The reference is not among the positions to compare.";
    at_event(why: Message, event: Count) = "{why} This is at event {event}.";

    // drag-test
    too_few_samples(field: Field) = "{field} needs at least two samples.";
    column_length(field: Field, is: Count, wanted: Count) = "{field} has {is} samples, but there are {wanted} times.";
    no_such_recording(field: Field) = "{field} names a recording that is not there.";
    time_or_distance(field: Field) = "{field} needs the time that it took, or how far it went.";
    lap_too_short(field: Field, least: Clock) = "{field} must be at least {least} after the beginning of the lap.";
    laps_overlap(field: Field, lap: Count) = "{field} lies before the end of lap {lap}: the time they share would count twice.";
    nothing_moves(field: Field) = "Up to {field} nothing moves: a lap needs a speed.";
    nothing_measured() = "No lap or run is given yet, so this plans a test.";
    drag_tests_disagree() = "The tests of this position differ by more than their own errors explain. Look for what changed between them, such as clothing, tyres or wind, before you trust their mean.";
    no_usable_laps() = "No usable lap is left. Take back what was excluded, or change the rules for what is unusable.";
    laps_do_not_fit() = "No drag area goes with these laps: check the mass, the power and the speeds.";
    rolling_not_told(rolling: Coefficient, slow: Speed, fast: Speed) = "The laps are too much alike in speed, or too few, to tell drag from rolling resistance. It is held at {rolling}. To measure both, ride as many slow laps as fast ones, such as at {slow} and {fast}, in one position.";
    rolling_impossible(rolling: Coefficient, low: Coefficient, high: Coefficient, held: Coefficient) = "These laps ask for a rolling coefficient of {rolling}, but tyres have {low} to {high}. It is held at {held}. Look for a wind that was left out, wrong heights or a wrong mass.";
    no_spare_laps() = "There are no more laps than unknowns, so nothing tells how sure the result is. Ride more laps.";
    laps_scatter(share: Share, usual: Share) = "The laps scatter by {share} of their power; a careful test stays below {usual}. Look for wind, traffic, a drifting power meter or wrong heights before you trust this.";
    positions_scatter_unlike(least: Share, most: Share) = "The positions do not repeat alike: one lap scatters by {least} of its power in one and by {most} in another. Each range follows its own laps. Look for what differed, such as traffic or a position that was not held.";
    positions_in_blocks(a: Count, b: Count) = "Positions {a} and {b} were ridden one after the other. A drift of the wind, the temperature or the power meter looks like a difference between them. Mix the order, such as A, B, B, A.";
    difference_keeps_errors(a: Count, b: Count, area: Area) = "What the whole test has in common does not cancel between positions {a} and {b}: it moves their difference by {area}, more than its own scatter. Ride both at the same speeds on the same road.";
    outlying_lap(watts: Power) = "This one lies {watts} off the others, more than chance explains. It counts all the same; leave it out if you know a reason.";
    lap_ends_elsewhere(height: Height) = "This lap counts as one that comes back, but its recorded heights differ by {height} between both ends. Mark it as one that does not, or check the heights.";
    lap_leads_away(share: Share) = "This lap counts as one that comes back, but by its bearings {share} of its way leads in one direction. Mark it as one that does not, or check where it begins and ends.";
    recorded_altitude_differs(recorded: Height, altitude: Height, share: Share) = "The recording lies at {recorded} above the sea, but the air is taken at {altitude}. That moves its density, and every drag area, by {share}. Give the altitude, or a pressure measured on the spot.";
    recording_twice(recording: Count, first: Count) = "Recording {recording} is the same as recording {first}. Laps of both would count twice.";
    film_without_laps(position: Count) = "Position {position} was filmed, but no lap or run in it counts, so the film says nothing here.";
    lap_braked(lap: Count, time: Clock) = "Lap {lap} is left out: it holds {time} of braking.";
    lap_stopped(lap: Count, time: Clock) = "Lap {lap} is left out: the rider stood for {time}.";
    lap_dropout(lap: Count, time: Clock) = "Lap {lap} is left out: power or speed is missing, or cannot be, for {time}.";
    wind_needs_bearings() = "The wind is left out of laps whose recording does not say which way the rider headed.";
    run_wind_needs_bearing() = "The wind is left out of runs that give neither their own wind nor which way the road leads.";
    wind_not_told() = "These laps do not tell the wind, so it is left out. Ride the same road both ways, each way as a lap of its own.";
    ignored_wind_matters(share: Share, wind: Speed) = "The wind is left out. On this loop a wind of {wind} can move the drag area by {share}: give its speed and direction.";
    calm_not_measured(share: Share, wind: Wind) = "Calm air is assumed. On these laps a wind of {wind} can move the drag area by {share}: measure its speed and direction at the roadside, or say that it was calm there.";
    heights_unknown() = "The heights of the road are not recorded, so laps that do not close are taken as level.";
    more_runs_than(most: Count) = "So small a difference takes more than {most} runs.";

    // ride-plan
    greatest_below_even(even: Power) = "The best even effort here is {even}: a plan needs a greatest power above that.";
    least_above_even(even: Power) = "The best even effort here is {even}: a plan needs a least power below that.";
    no_road() = "The file has neither positions nor a distance, so it says nothing of the road.";
    course_length() = "A course is from 100 m to 2,000 km long; this one is not.";
    part_too_short(least: Length) = "A part of the course is at least {least} long.";
    lap_open(height: Height) = "This course ends {height} from the height it begins at, so it is no lap.";
    no_profile() = "Only a course of points can be changed so.";
    columns_differ(field: Field, is: Count, wanted: Count) = "{field} has {is} values, but another column has {wanted}.";
    no_plan() = "No plan can be worked out for this ride.";
    plan_not_settled() = "The search for the fastest plan was cut short: there may be one that is a little faster.";
    effort_not_speed() = "The plan says how hard to ride, never how fast: downhill, in bends and in traffic the road decides.";
    runs_out_without_recovery(distance: Distance) = "How W′ comes back is the least certain part: if nothing came back, the plan of a few powers would run out after {distance}.";

    // next-gain
    neither_by_nor_share(field: Field) = "{field} takes a field with by or share, or use_position.";
    no_such_number(field: Field, name: Text) = "{field} is {name}, which is not a number of this scenario.";
    no_such_change(field: Field, name: Text) = "{field} is {name}, which is no change of this list.";
    requires_itself(field: Field) = "{field} leads back to itself: one of the changes must come first.";
    times_for_each_event() = "How often each event is ridden needs one number for each event.";
    schedules_cut_short() = "So many blocks of weeks overlap that not every schedule was tried; a better set may fit.";
    too_many_numbers() = "These candidates change too many different numbers to compare every set of them; leave some out.";
    cannot_be_ridden_together() = "Together these changes leave a ride that cannot be ridden.";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sentence_holds_just_the_placeholders_that_its_function_takes() {
        for (english, names) in DECLARED {
            let held = english
                .split('{')
                .skip(1)
                .map(|rest| rest.split('}').next().unwrap_or(rest));
            let mut held: Vec<&str> = held.collect();
            held.sort_unstable();
            held.dedup();
            let mut names = names.to_vec();
            names.sort_unstable();
            assert_eq!(held, names, "{english}");
        }
    }
}
