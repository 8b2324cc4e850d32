//! What rounding leaves of W′ is spent: a part of a plan goes on a step harder from a place inside it.

use super::landmarks::Place;
use super::ride::{PlanRide, Rider, ride};
use super::road::Road;
use super::simple_plan::{Cue, SHORTEST_S, Style, power_at_w};
use super::{SPENT_J, WORTH_A_CUE_S};

/// A plan with its ride.
type Ridden = (Vec<Cue>, PlanRide);

/// The plan and its finish time, s, with as many harder ends of parts as there is room for and as save time.
pub(crate) fn spent(
    road: &Road<'_>,
    rider: &Rider,
    style: &Style,
    places: &[Place],
    cues: Vec<Cue>,
) -> Option<(f64, Vec<Cue>)> {
    let lasting = |cues: Vec<Cue>| -> Option<Ridden> {
        let ridden = ride(road, rider, |cell, _| power_at_w(&cues, cell))?;
        (ridden.w_prime_least_j >= -SPENT_J).then_some((cues, ridden))
    };
    let mut best = lasting(cues)?;
    while best.0.len() < style.targets {
        let harder = (0..best.0.len())
            .filter_map(|part| harder_end(&best, part, style, places, &lasting))
            .min_by(|a, b| a.1.time_s.total_cmp(&b.1.time_s));
        match harder {
            Some(harder) if harder.1.time_s < best.1.time_s - WORTH_A_CUE_S => best = harder,
            _ => break,
        }
    }
    Some((best.1.time_s, best.0))
}

/// The plan with the end of a part a step harder, from the first place on from which W′ lasts: the later, the less it takes, so
/// that halving the places finds it.
fn harder_end(
    (cues, ridden): &Ridden,
    part: usize,
    style: &Style,
    places: &[Place],
    lasting: &impl Fn(Vec<Cue>) -> Option<Ridden>,
) -> Option<Ridden> {
    let power_w = cues[part].power_w + style.round_w;
    if power_w > style.powers_w.1 {
        return None;
    }
    let from = &cues[part];
    let time_s = |cell: usize| ridden.passed.get(cell).map(|passed| passed.time_s);
    let begins_s = time_s(from.place.cell)?;
    let ends_cell = cues.get(part + 1).map(|next| next.place.cell);
    let ends_s = ends_cell.map_or(Some(ridden.time_s), time_s)?;
    let inside: Vec<&Place> = places
        .iter()
        .filter(|place| {
            place.cell > from.place.cell
                && time_s(place.cell).is_some_and(|at_s| {
                    at_s >= begins_s + SHORTEST_S && at_s <= ends_s - SHORTEST_S
                })
        })
        .collect();
    let from_place = |place: &Place| -> Option<Ridden> {
        let mut cues = cues.clone();
        cues.insert(
            part + 1,
            Cue {
                place: *place,
                from_m: ridden.passed.get(place.cell)?.distance_m,
                power_w,
            },
        );
        lasting(cues)
    };
    let first = inside.partition_point(|place| from_place(place).is_none());
    inside.get(first).and_then(|place| from_place(place))
}
