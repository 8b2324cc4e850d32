//! Prints the structs of the boundary as TypeScript, for the page's type checker.

use fasterby_core::{
    columns, draws, error, fields, message, published, quantity, questions, scenario, sources,
    value_of_information,
};
use ts_rs::{Config, TS};

macro_rules! print_types {
    ($config:ident: $($type:ty),* $(,)?) => {
        $(println!("export {}\n", <$type>::decl(&$config));)*
    };
}

fn main() {
    let config = Config::new();
    println!(
        "// Written by `cargo xtask build` from the structs of the core; edits here are overwritten.\n"
    );
    print_types!(config:
        quantity::Known, quantity::Quantity, quantity::Figure, quantity::Column,
        message::Value, message::Message, message::Sentence, error::Kind, error::Error, error::Warning,
        fields::Evidence, fields::QuantityKind, fields::Included, fields::Field, fields::Most,
        sources::Read, sources::Source, published::MeanAndSd, published::Published,
        draws::Drawn, value_of_information::Tally,
        scenario::Scenario, scenario::Rider, scenario::Bike, scenario::Position, scenario::YawRow, scenario::Fade, scenario::FadeTest, scenario::DragTest, scenario::DragTestMethod,
        scenario::Lapse, scenario::Equipment, scenario::Power, scenario::AltitudeLoss, scenario::Effort, scenario::Event, scenario::CourseKind, scenario::HeadingForm, scenario::Course, scenario::Point,
        scenario::PressureIs, scenario::Conditions, scenario::LaterWeather, scenario::StartForm, scenario::Stops, scenario::Feeding,
        questions::request::EffortKind, questions::request::EffortForm,
        scenario::propagation::Contribution,
        questions::Module, questions::Question, questions::Tables,
    );
    macro_rules! print_question {
        ($name:literal, $module:ident: $($type:ident),* $(,)?) => {
            println!("// {}", $name);
            $(println!("export {}\n", renamed::<questions::$module::$type>(&config, stringify!($module)));)*
        };
    }
    print_question!("speed-for-watts", speed_for_watts: With, Answer, Columns, Breakdown, Elasticities, OtherAir);
    print_question!("power-or-drag", power_or_drag: With, Answer, Columns, Exchange, Takes);
    print_question!("finish-time", finish_time: With, Answer, Columns, Split, WPrimeForms, EnergyByCause, Day, DayColumns, ForecastError, OtherStart, StopsCost);
    print_question!("next-gain", next_gain: With, Answer, Columns, Candidate, Change, Standing, Portion, NextGainEvent, Gain, BestSet, BudgetCurve, NextStep, Why, LeftOut, Measuring, Searched);
    print_question!("hold-or-fade", hold_or_fade: With, Answer, Columns, BreakEven);
    print_question!("power-curve", power_curve:
        With, Answer, Columns, Basis, Tested, More, Forms, Usable, Marked, Training, ModelName, Outcome, ModelFit,
        PositionCurve, ChangeAt,
    );
    print_question!("leg-room", leg_room: With, Answer, Columns, AnkleModel, SetUp, PlanePoint, SetUpAnswer, SetUpDifference, SetUpPart, SetUpChange, SetUpWays, SegmentLengths);
    print_question!("which-position", which_position: With, Wanted, Measured, Answer, Columns, PositionChoice, ChoiceTime, AtDistance, Crossover,
        PositionCost, LowerBars, PublishedCost, Worth, CountedEvent, CountedDraws);
    print_types!(config: columns::Samples, columns::Columns);
    print_question!("drag-test", drag_test: With, RecordingForm, LapForm, RunForm, CoastDownForm, RollingForm, WindForm, RulesForm, FilmForm, PlanForm,
        Answer, Columns, KeptDrag, ThisTest, TestFigure, PositionDrag, RollingAnswer, DifferenceError, DragDifference, OtherRolling, RowKind, RowLeftOut, TestRow, CommonError, TestWind,
        RiseKnown, LateRise, PlanAnswer);
    print_question!("ride-plan", ride_plan: With, RecoveryForm, SitUp, Answer, SittingUp, Climb, Columns, EvenRide, FastestPlan, Landmark, Cue, CuedPlan, TooHard,
        LowerPower, LeastByForm, RidersCompared, PlanStops);
    print_question!("course", course: With, Preset, FileForm, TrackForm, TrackColumns, Answer, Columns);
}

/// A declaration whose `With`, `Answer` and `Columns` carry the question's name, which the modules give them in Rust.
fn renamed<T: TS>(config: &Config, module: &str) -> String {
    let question: String = module.split('_').map(capitalised).collect();
    let mut declaration = T::decl(config);
    for name in ["With", "Answer", "Columns"] {
        declaration = declaration
            .replace(&format!("type {name} "), &format!("type {question}{name} "))
            .replace(&format!(": {name}"), &format!(": {question}{name}"));
    }
    declaration
}

fn capitalised(word: &str) -> String {
    let mut letters = word.chars();
    letters
        .next()
        .map(|first| first.to_uppercase().chain(letters).collect())
        .unwrap_or_default()
}
