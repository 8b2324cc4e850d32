//! What is doubtful about the rows of a test, before anything is estimated from them.

use super::answer::RowLeftOut;
use super::rows::Rows;
use super::with::With;
use crate::inputs::error::Warning;
use crate::inputs::message::{self, in_tenths, in_thousandths};
use crate::measuring::columns::Columns;
use crate::measuring::estimate::Seen;
use crate::scenario::{PressureIs, Scenario};

/// Heights at both ends of a lap that comes back differ by no more, m: what a barometer drifts in a lap; assumed.
const CLOSED_WITHIN_M: f64 = 5.0;
/// The headings of a lap that comes back lead no more than this share of its way anywhere: bearings that were recorded once a second
/// leave a few hundredths; assumed.
const CLOSED_WITHIN_SHARE: f64 = 0.2;
/// An altitude that moves the density, and with it every drag area, by this share is worth a word: some 90 m, more than a satellite
/// receiver is off; assumed.
const DENSITY_MATTERS: f64 = 0.01;

/// What is doubtful about the rows and what goes with them.
pub(super) fn doubts_of_rows(
    rows: &Rows,
    with: &With,
    scenario: &Scenario,
    warnings: &mut Vec<Warning>,
) {
    left_out(rows, warnings);
    not_closed(rows, with, warnings);
    altitude(rows, scenario, warnings);
    twice(with, warnings);
    film_alone(rows, with, warnings);
}

/// Rows that were left out for what is in them.
fn left_out(rows: &Rows, warnings: &mut Vec<Warning>) {
    for row in rows.all.iter().map(|tested| &tested.row) {
        let number = row.index + 1;
        let message = match row.left_out {
            Some(RowLeftOut::Braking) => message::lap_braked(number, in_tenths(row.braking_s)),
            Some(RowLeftOut::Stopped) => message::lap_stopped(number, in_tenths(row.stopped_s)),
            Some(RowLeftOut::Dropout) => message::lap_dropout(number, in_tenths(row.dropout_s)),
            Some(RowLeftOut::Excluded) | None => continue,
        };
        warnings.push(Warning::of(row.kind.path(row.index), message));
    }
}

/// Laps that count as coming back and do not seem to.
fn not_closed(rows: &Rows, with: &With, warnings: &mut Vec<Warning>) {
    for (tested, form) in rows.all.iter().zip(&with.laps) {
        if !form.closed || tested.row.left_out.is_some() {
            continue;
        }
        let rise_m = tested.heights.map_or(0.0, |heights| heights.rise_m);
        let led_share = match &tested.observation.seen {
            Seen::Stretch(sums) => sums.led_share().unwrap_or(0.0),
            Seen::CoastDown(_) => 0.0,
        };
        let message = if rise_m.abs() > CLOSED_WITHIN_M {
            message::lap_ends_elsewhere(in_tenths(rise_m.abs()))
        } else if led_share > CLOSED_WITHIN_SHARE {
            message::lap_leads_away(in_thousandths(led_share))
        } else {
            continue;
        };
        let path = format!("{}.closed", tested.row.kind.path(tested.row.index));
        warnings.push(Warning::of(path, message));
    }
}

/// An altitude that the recorded heights contradict, where the density follows from it.
fn altitude(rows: &Rows, scenario: &Scenario, warnings: &mut Vec<Warning>) {
    let day = &scenario.conditions;
    if day.pressure_hpa.is_some() && day.pressure_is == PressureIs::Course {
        return;
    }
    let kept = |tested: &&super::rows::TestedRow| tested.row.left_out.is_none();
    let heights: Vec<f64> = rows
        .all
        .iter()
        .filter(kept)
        .filter_map(|tested| Some(tested.heights?.mean_m))
        .collect();
    if heights.is_empty() {
        return;
    }
    let recorded_m = heights.iter().sum::<f64>() / heights.len() as f64;
    let mut there = scenario.clone();
    there.conditions.altitude_m = Some(recorded_m.into());
    let share = there.density_kg_m3() / scenario.density_kg_m3() - 1.0;
    if share.abs() >= DENSITY_MATTERS {
        let (is_m, share) = (scenario.altitude_m().round(), in_thousandths(share.abs()));
        let message = message::recorded_altitude_differs(recorded_m.round(), is_m, share);
        warnings.push(Warning::of("scenario.conditions.altitude_m", message));
    }
}

/// Recordings that are the same as an earlier one.
fn twice(with: &With, warnings: &mut Vec<Warning>) {
    let digests: Vec<u64> = with
        .recordings
        .iter()
        .map(|recording| digest(&recording.columns))
        .collect();
    for (i, own) in digests.iter().enumerate() {
        if let Some(first) = digests[..i].iter().position(|earlier| earlier == own) {
            let message = message::recording_twice(i + 1, first + 1);
            warnings.push(Warning::of(format!("with.recordings[{i}]"), message));
        }
    }
}

/// A number that is the same for recordings of the same times, speeds and powers, and for hardly any others: the hash of Fowler, Noll
/// and Vo over the numbers' bits (from memory). The standard library's differs from build to build.
fn digest(columns: &Columns) -> u64 {
    const OFFSET: u64 = 0xcbf2_9ce4_8422_2325;
    const PRIME: u64 = 0x0000_0100_0000_01b3;
    let numbers = [&columns.time_s, &columns.speed_m_s, &columns.power_w]
        .into_iter()
        .flat_map(|column| column.0.iter());
    numbers.fold(OFFSET, |digest, number| {
        (digest ^ number.to_bits() ^ (number.to_bits() >> 32)).wrapping_mul(PRIME)
    })
}

/// Films of positions in which nothing was ridden.
fn film_alone(rows: &Rows, with: &With, warnings: &mut Vec<Warning>) {
    for (i, film) in with.film.iter().enumerate() {
        let ridden = |tested: &super::rows::TestedRow| {
            tested.row.position == film.position && tested.row.left_out.is_none()
        };
        if !rows.all.iter().any(ridden) {
            let path = format!("with.film[{i}].position");
            warnings.push(Warning::of(
                path,
                message::film_without_laps(film.position + 1),
            ));
        }
    }
}
