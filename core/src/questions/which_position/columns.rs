//! Curves against distance.

use serde::Serialize;

use crate::inputs::quantity::Column;
use crate::numerics::solve::interpolate;
use crate::riding::crossovers::TimesByDistance;
use crate::scenario::comparison::faster_by;
use crate::uncertainty::draws::Sensitivities;

/// Curves against distance: a row for each choice after the other.
#[derive(Clone, Debug, Default, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Columns {
    /// Distances, m, as far as every choice can be ridden.
    pub distance_m: Column,
    /// How much faster than the reference each choice is there, s; choice by choice.
    pub difference_s: Column,
    /// One standard deviation of that, s; choice by choice.
    pub difference_sd_s: Column,
    /// The difference as a share of the reference's time; choice by choice.
    pub difference_share: Column,
    /// One standard deviation of that; choice by choice.
    pub difference_sd_share: Column,
}

impl Columns {
    /// Of the choices' times over distance; their doubt is known at some distances, whose rides begin at `doubts_at`.
    pub(super) fn new(
        curve: TimesByDistance,
        spread: &Sensitivities,
        doubts_at: usize,
        doubt_m: &[f64],
        reference: usize,
        count: usize,
    ) -> Self {
        let mut columns = Self::default();
        for choice in 0..count {
            let doubts: Vec<(f64, f64)> = doubt_m
                .iter()
                .enumerate()
                .map(|(i, distance_m)| {
                    let row = doubts_at + i * count;
                    (
                        distance_m.ln(),
                        faster_by(spread, row + reference, row + choice).sd,
                    )
                })
                .collect();
            for (distance_m, times_s) in curve.distances_m.iter().zip(&curve.times_s) {
                let (lead_s, sd_s) = (
                    times_s[reference] - times_s[choice],
                    interpolate(&doubts, distance_m.ln()).unwrap_or(0.0),
                );
                columns.difference_s.0.push(lead_s);
                columns.difference_sd_s.0.push(sd_s);
                columns.difference_share.0.push(lead_s / times_s[reference]);
                columns
                    .difference_sd_share
                    .0
                    .push(sd_s / times_s[reference]);
            }
        }
        columns.distance_m = curve.distances_m.into();
        columns
    }
}
