//! Changes that many riders weigh, each beside what it rests on. Money and hours are assumed; so is every chance.

use serde::{Deserialize, Serialize};

use super::candidate::Candidate;
use crate::inputs::fields::Evidence::{self, Assumed, FromMemory, Published};
use crate::inputs::quantity::Quantity;
use crate::scenario::season::changes::Change;

/// Which riders the usual candidates are for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// Riders who train already.
    #[default]
    Trained,
    /// Riders who begin.
    New,
}

struct Usual {
    key: &'static str,
    name: &'static str,
    changes: &'static [(&'static str, Amount)],
    chance: f64,
    money: f64,
    hours_per_week: f64,
    weeks: Option<f64>,
    hours_once: f64,
    group: &'static str,
    requires: &'static str,
    evidence: Evidence,
    source: &'static str,
    note: &'static str,
}

enum Amount {
    By(f64, f64),
    Share(f64, f64),
}
use Amount::{By, Share};

const NOTHING: Usual = Usual {
    key: "",
    name: "",
    changes: &[],
    chance: 1.0,
    money: 0.0,
    hours_per_week: 0.0,
    weeks: None,
    hours_once: 0.0,
    group: "",
    requires: "",
    evidence: Assumed,
    source: "",
    note: "",
};

const CDA: &str = "positions.cda_m2";
const CP: &str = "power.cp_w";

const FOR_ALL: &[Usual] = &[
    Usual {
        key: "front-lower",
        name: "Front end lower by a step",
        changes: &[(CDA, Share(-0.036, 0.02)), (CP, Share(-0.013, 0.015))],
        chance: 0.6,
        hours_once: 4.0,
        source: "polanco-2020",
        note: "A third of the published change of lower bars (CdA −10.7 ± 3.1 %); the extra oxygen used by riders who train in the position (1.3 %, not significant), counted here as lost power.",
        ..NOTHING
    },
    Usual {
        key: "front-lowest",
        name: "A second step lower",
        changes: &[(CDA, Share(-0.025, 0.02)), (CP, Share(-0.02, 0.02))],
        chance: 0.35,
        hours_once: 6.0,
        requires: "front-lower",
        source: "fintelman-2015",
        note: "Sizes assumed. All measures of power fell with a lower torso in nineteen riders; the lowest torso was the worst for them.",
        ..NOTHING
    },
    Usual {
        key: "elbows-and-hands",
        name: "Elbows and hands",
        changes: &[(CDA, Share(-0.01, 0.015))],
        chance: 0.5,
        hours_once: 3.0,
        source: "underwood-2013",
        note: "Small and individual: bar height matters more than width, and the best differs between riders. Size assumed.",
        ..NOTHING
    },
    Usual {
        key: "head",
        name: "Practise how the head is held",
        changes: &[(CDA, Share(-0.02, 0.015))],
        chance: 0.5,
        hours_per_week: 0.5,
        weeks: Some(6.0),
        source: "beaumont-2018",
        note: "Two head positions differed by up to 6.4 % of drag at 15 m/s; a third of that, held with the eyes on the road, is assumed.",
        ..NOTHING
    },
    Usual {
        key: "clothing",
        name: "Close-fitting clothing",
        changes: &[(CDA, Share(-0.039, 0.02))],
        chance: 0.7,
        money: 150.0,
        evidence: Published,
        source: "brownlie-2009",
        note: "A whole suit cut drag by 3.9 % at 53 km/h; less is likely over clothes that fit already, or at lower speed.",
        ..NOTHING
    },
    Usual {
        key: "helmet",
        name: "Helmet matched to how the head is held",
        changes: &[(CDA, Share(-0.0075, 0.006))],
        chance: 0.6,
        money: 200.0,
        hours_once: 1.0,
        source: "beaumont-2018",
        note: "Shapes differed by less than 1.5 % with the head held alike: half of that is assumed. Not every helmet suits every head.",
        ..NOTHING
    },
    Usual {
        key: "tyres",
        name: "Tyres and their pressure",
        changes: &[("bike.rolling_coefficient", By(-0.0006, 0.0004))],
        chance: 0.8,
        money: 90.0,
        hours_once: 2.0,
        evidence: FromMemory,
        note: "Tyre, pressure and warmth are customarily said to change rolling resistance by a factor of two.",
        ..NOTHING
    },
    Usual {
        key: "chain",
        name: "Chain cleaned and waxed",
        changes: &[("bike.drivetrain_efficiency", By(0.005, 0.005))],
        chance: 0.8,
        money: 20.0,
        hours_once: 2.0,
        source: "smit-2023",
        note: "A chain drive lost 2.1 ± 1.5 %; that care saves a quarter of it is assumed.",
        ..NOTHING
    },
    Usual {
        key: "pacing",
        name: "Practise even pacing",
        changes: &[(CP, Share(0.005, 0.005))],
        chance: 0.6,
        hours_per_week: 0.5,
        weeks: Some(6.0),
        note: "Times here are those of an even effort already; what uneven riding loses is assumed.",
        ..NOTHING
    },
    Usual {
        key: "corners",
        name: "Practise bends",
        changes: &[("bike.lateral_m_s2", By(0.5, 0.5))],
        chance: 0.6,
        hours_per_week: 0.5,
        weeks: Some(4.0),
        note: "Saves time only on a course given with its bends. Practise away from traffic and never to the limit. Size assumed.",
        ..NOTHING
    },
];

const TRAINED: &[Usual] = &[
    Usual {
        key: "intervals",
        name: "Four weeks of intervals",
        changes: &[(CP, Share(0.046, 0.016))],
        chance: 0.7,
        hours_per_week: 2.0,
        weeks: Some(4.0),
        group: "training",
        evidence: Published,
        source: "laursen-2002",
        note: "Two sessions a week raised highly trained riders' peak aerobic power by 3.0 to 6.2 %; critical power is taken to follow it.",
        ..NOTHING
    },
    Usual {
        key: "season",
        name: "A season's steady training",
        changes: &[(CP, Share(0.04, 0.015))],
        chance: 0.7,
        hours_per_week: 4.0,
        weeks: Some(12.0),
        group: "training",
        evidence: FromMemory,
        note: "Riders who train already are said to gain 2 to 6 % over a season.",
        ..NOTHING
    },
];

const NEW: &[Usual] = &[Usual {
    key: "begin-training",
    name: "Eight weeks of regular training",
    changes: &[(CP, Share(0.12, 0.04))],
    chance: 0.8,
    hours_per_week: 3.0,
    weeks: Some(8.0),
    group: "training",
    evidence: FromMemory,
    note: "Untrained people are said to raise critical power by 10 to 15 % in six to eight weeks.",
    ..NOTHING
}];

/// The usual candidates of a rider of this standing.
pub(super) fn candidates(standing: Standing) -> Vec<Candidate> {
    let training = match standing {
        Standing::Trained => TRAINED,
        Standing::New => NEW,
    };
    FOR_ALL
        .iter()
        .chain(training)
        .map(Usual::candidate)
        .collect()
}

impl Usual {
    fn candidate(&self) -> Candidate {
        let change = |(field, amount): &(&str, Amount)| {
            let (by, share) = match *amount {
                By(value, sd) => (Some(Quantity::typical(value, sd)), None),
                Share(value, sd) => (None, Some(Quantity::typical(value, sd))),
            };
            Change {
                field: Some((*field).to_owned()),
                by,
                share,
                use_position: None,
            }
        };
        Candidate {
            key: self.key.to_owned(),
            name: self.name.to_owned(),
            changes: self.changes.iter().map(change).collect(),
            chance: self.chance,
            money: self.money,
            hours_per_week: self.hours_per_week,
            weeks: self.weeks,
            hours_once: self.hours_once,
            group: self.group.to_owned(),
            requires: self.requires.to_owned(),
            evidence: self.evidence,
            source: self.source.to_owned(),
            note: self.note.to_owned(),
        }
    }
}
