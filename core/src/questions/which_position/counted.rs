//! What draws say of the choices, and what measurements would be worth.

use serde::Serialize;

use crate::inputs::quantity::Known;
use crate::scenario::shared_drag_error::{Measured, Measurement};
use crate::uncertainty::value_of_information::{Shape, Tally};

/// How much better the choice would be if something were measured exactly before it, all else as uncertain as it is.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Worth {
    /// What is measured.
    pub what: Measured,
    /// The paths in the request: of the input, or of both drag areas.
    pub fields: Vec<String>,
    /// How it is known; of two, the less sure.
    pub source: Known,
    /// Seconds that knowing it would save over all events on the mean, by choosing better.
    pub worth_s: f64,
    /// The same at each event.
    pub by_event_s: Vec<f64>,
}

/// What the draws say of one event.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CountedEvent {
    /// For each choice, the share of draws in which it is the fastest.
    pub win_share: Vec<f64>,
    /// Seconds that knowing everything would save on the mean, by choosing better.
    pub worth_of_all_s: f64,
}

/// What the draws say.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CountedDraws {
    /// How many draws there were.
    pub draws: u32,
    /// How many could not be ridden, and are left out of the rest.
    pub failed: u32,
    /// What they say of each event.
    pub events: Vec<CountedEvent>,
    /// What single measurements would be worth, the most first; none that is worth nothing.
    pub worth: Vec<Worth>,
    /// To go on from: `with.so_far` of the next request.
    pub tally: Tally,
}

impl CountedDraws {
    /// What a tally says.
    pub(super) fn new(measurements: &[Measurement], shape: Shape, tally: Tally) -> Self {
        let events = (0..shape.occasions)
            .map(|event| CountedEvent {
                win_share: tally.win_shares(shape, event),
                worth_of_all_s: tally.worth_of_all(shape, event),
            })
            .collect();
        let mut worth: Vec<Worth> = Vec::new();
        for (
            i,
            Measurement {
                what,
                fields,
                source,
                ..
            },
        ) in measurements.iter().enumerate()
        {
            let by_event_s: Vec<f64> = (0..shape.occasions)
                .map(|event| tally.worth_of(shape, event, i))
                .collect();
            let worth_s: f64 = by_event_s.iter().sum();
            if worth_s > 0.0 {
                let at = worth.partition_point(|more| more.worth_s >= worth_s);
                worth.insert(
                    at,
                    Worth {
                        what: *what,
                        fields: fields.clone(),
                        source: *source,
                        worth_s,
                        by_event_s,
                    },
                );
            }
        }
        Self {
            draws: tally.draws,
            failed: tally.failed,
            events,
            worth,
            tally,
        }
    }
}
