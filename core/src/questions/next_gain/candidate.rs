//! Something to work on or to buy, as requests write it, and what it takes of the budgets.

use serde::{Deserialize, Serialize};

use crate::inputs::error::Error;
use crate::inputs::fields::{self, Evidence};
use crate::numerics::best_set::{Item, MOST_ITEMS};
use crate::numerics::schedule::Block;
use crate::questions::request::check_number;
use crate::scenario::season::changes::{Change, Move};
use crate::scenario::season::plan::Plan;

/// Something to work on or to buy.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(default, deny_unknown_fields)]
pub struct Candidate {
    /// The key of a usual candidate, or an empty text.
    pub key: String,
    /// What the rider calls it.
    pub name: String,
    /// What it changes.
    pub changes: Vec<Change>,
    /// The chance that it comes off, 0 to 1, whatever becomes of the others; of one that requires another, once that has
    /// come off.
    pub chance: f64,
    /// What it costs, in the rider's own currency.
    pub money: f64,
    /// Hours that it takes in every week that it runs.
    pub hours_per_week: f64,
    /// For how many weeks on end, beginning in any week of the budget; all of them if left out. One that takes more weeks than
    /// the budget has is not taken.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub weeks: Option<f64>,
    /// Hours that it takes once, spread over any weeks.
    pub hours_once: f64,
    /// Of candidates of one group only one is taken; an empty text for none. Two positions to ride in exclude each other.
    pub group: String,
    /// The candidate without which this one cannot be taken: its key, or its name if it has no key; an empty text for none.
    /// Where that one does not come off this one brings nothing.
    pub requires: String,
    /// What its size rests on.
    pub evidence: Evidence,
    /// The key of a citation, or an empty text.
    pub source: String,
    /// On comfort, handling, or where the size comes from.
    pub note: String,
}

impl Default for Candidate {
    fn default() -> Self {
        Self {
            key: String::new(),
            name: String::new(),
            changes: Vec::new(),
            chance: 1.0,
            money: 0.0,
            hours_per_week: 0.0,
            weeks: None,
            hours_once: 0.0,
            group: String::new(),
            requires: String::new(),
            evidence: Evidence::Assumed,
            source: String::new(),
            note: String::new(),
        }
    }
}

/// The group of all that name a position to ride in; groups with names come below it.
const POSITION_GROUP: u32 = 1 << 31;
/// The most things that a candidate changes.
const MOST_CHANGES: usize = 20;

pub(super) fn check_candidates(candidates: &[Candidate]) -> Result<(), Error> {
    if candidates.len() > MOST_ITEMS {
        return Err(Error::too_many("with.candidates", MOST_ITEMS));
    }
    candidates
        .iter()
        .enumerate()
        .try_for_each(|(c, candidate)| check(candidate, c))
}

/// Checks a candidate's own numbers and texts.
///
/// # Errors
/// Names what is wrong.
fn check(candidate: &Candidate, c: usize) -> Result<(), Error> {
    let path = |name: &str| format!("with.candidates[{c}].{name}");
    check_number(&fields::CHANCE, &path("chance"), candidate.chance)?;
    check_number(&fields::MONEY, &path("money"), candidate.money)?;
    check_number(
        &fields::HOURS_PER_WEEK,
        &path("hours_per_week"),
        candidate.hours_per_week,
    )?;
    check_number(
        &fields::HOURS_ONCE,
        &path("hours_once"),
        candidate.hours_once,
    )?;
    if let Some(weeks) = candidate.weeks {
        check_number(&fields::WEEKS, &path("weeks"), weeks)?;
    }
    let texts = [
        ("key", &candidate.key),
        ("name", &candidate.name),
        ("group", &candidate.group),
        ("requires", &candidate.requires),
        ("note", &candidate.note),
        ("source", &candidate.source),
    ];
    for (name, text) in texts {
        Error::check_text(text, || path(name))?;
    }
    if candidate.changes.len() > MOST_CHANGES {
        return Err(Error::too_many(path("changes"), MOST_CHANGES));
    }
    Ok(())
}

/// What the candidates take of a budget of so many weeks.
pub(super) fn items(
    candidates: &[Candidate],
    required: &[Option<usize>],
    plan: &Plan,
    weeks: f64,
) -> Vec<Item> {
    let item = |(c, candidate): (usize, &Candidate)| {
        let group = candidates
            .iter()
            .position(|other| other.group == candidate.group);
        let named = group
            .filter(|_| !candidate.group.is_empty())
            .map_or(0, |first| 1 << first);
        let rides = plan.moves[c].iter().any(|one| matches!(one, Move::Ride(_)));
        let own_weeks = candidate.weeks.unwrap_or(weeks);
        let block = Block {
            hours_per_week: candidate.hours_per_week,
            weeks: own_weeks,
        };
        // What runs for all weeks has no room in none.
        let no_weeks = weeks <= 0.0 && candidate.weeks.is_none() && candidate.hours_per_week > 0.0;
        Item {
            chance: candidate.chance,
            money: candidate.money,
            hours: candidate.hours_once + candidate.hours_per_week * own_weeks,
            block: (block.hours_per_week > 0.0 && block.weeks > 0.0).then_some(block),
            too_long: own_weeks > weeks || no_weeks,
            groups: named | if rides { POSITION_GROUP } else { 0 },
            needs: required[c],
        }
    };
    candidates.iter().enumerate().map(item).collect()
}
