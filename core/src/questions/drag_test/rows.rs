//! The request's laps, runs and coast-downs as rows of the estimate.

use super::answer::{RowKind, RowLeftOut, TestRow};
use super::checks::check_laps;
use super::typed_rows::{coast_down, run};
use super::with::{LapForm, RunForm, WindForm, With};
use crate::inputs::error::{Error, Warning};
use crate::inputs::message;
use crate::measuring::estimate::{Estimate, Observation, Seen};
use crate::measuring::lap::{Heights, Lap};
use crate::measuring::recording::Recording;
use crate::physics::air::Wind;

/// A lap is at least this far, m; assumed.
const SHORTEST_M: f64 = 1.0;

/// A row with what it says of the test.
pub(super) struct TestedRow {
    /// What is shown.
    pub row: TestRow,
    /// What is estimated from.
    pub observation: Observation,
    /// By which rows come into the order in which they were ridden: the kind, the recording, when it begins.
    ridden: (usize, usize, f64),
    /// What the heights of a lap say.
    pub heights: Option<Heights>,
}

/// Every row, and what is doubtful about them.
pub(super) struct Rows {
    /// Laps, runs, coast-downs.
    pub all: Vec<TestedRow>,
}

impl Rows {
    /// Reduces a checked request; `wind` is the scenario's at the height of the rider.
    ///
    /// # Errors
    /// Names the lap that does not lie within its recording, overlaps another, or in which nothing moves.
    pub(super) fn new(with: &With, wind: Wind, warnings: &mut Vec<Warning>) -> Result<Self, Error> {
        let rules = with.rules();
        let recordings: Vec<Recording> = with
            .recordings
            .iter()
            .map(|recording| Recording::new(&recording.columns, &rules))
            .collect();
        check_laps(&with.laps, &recordings)?;
        let mut all = Vec::new();
        for (i, form) in with.laps.iter().enumerate() {
            let own = form.wind_speed_m_s.zip(form.wind_from_deg);
            let (wind, own) = match (with.wind, own) {
                (WindForm::Given, Some((speed, from))) => (Wind::new(speed, from), true),
                (WindForm::Given, None) => (wind, false),
                _ => (Wind::default(), false),
            };
            let mut tested = lap(with, i, form, &recordings[form.recording], wind)?;
            if let Seen::Stretch(sums) = &mut tested.observation.seen {
                sums.own_wind = own;
            }
            all.push(tested);
        }
        let some = |wanted: &dyn Fn(&LapForm, &Recording) -> bool| {
            let mut used = with.laps.iter().filter(|lap| lap.excluded.is_none());
            used.any(|lap| wanted(lap, &recordings[lap.recording]))
        };
        let windy = wind != Wind::default();
        let asks = |lap: &LapForm| match with.wind {
            WindForm::Ignore => false,
            WindForm::Given => windy || lap.wind_speed_m_s.is_some(),
            WindForm::Fit => true,
        };
        if some(&|lap, recording| asks(lap) && !recording.has_headings()) {
            warnings.push(Warning::of("with.wind", message::wind_needs_bearings()));
        }
        let windless = |run: &RunForm| {
            run.excluded.is_none() && run.wind_head_m_s.is_none() && run.bearing_deg.is_none()
        };
        if windy && with.wind == WindForm::Given && with.runs.iter().any(windless) {
            warnings.push(Warning::of("with.wind", message::run_wind_needs_bearing()));
        }
        if some(&|lap, recording| !lap.closed && !recording.has_heights()) {
            warnings.push(Warning::of("with.laps", message::heights_unknown()));
        }
        all.extend(
            with.runs
                .iter()
                .enumerate()
                .map(|(i, form)| run(with.wind, wind, i, form)),
        );
        all.extend(
            with.coast_downs
                .iter()
                .enumerate()
                .map(|(i, form)| coast_down(with.wind, i, form)),
        );
        Ok(Self { all })
    }

    /// What is estimated from.
    pub(super) fn used(&self) -> Vec<Observation> {
        self.all
            .iter()
            .filter(|row| row.row.left_out.is_none())
            .map(|row| row.observation)
            .collect()
    }

    /// What is estimated from, in the order in which it was ridden: laps by recording and time, whatever their order in the request,
    /// then runs and coast-downs as they stand there.
    pub(super) fn as_ridden(&self) -> Vec<Observation> {
        let kept = |row: &&TestedRow| row.row.left_out.is_none();
        let mut rows: Vec<&TestedRow> = self.all.iter().filter(kept).collect();
        rows.sort_by(|a, b| {
            let place = |row: &TestedRow| (row.ridden.0, row.ridden.1);
            place(a)
                .cmp(&place(b))
                .then(a.ridden.2.total_cmp(&b.ridden.2))
        });
        rows.iter().map(|row| row.observation).collect()
    }

    /// The rows as they are shown, beside an estimate if there is one.
    pub(super) fn shown(&self, estimate: Option<&Estimate>) -> Vec<TestRow> {
        let mut residuals = estimate
            .map(|found| found.residuals.iter())
            .into_iter()
            .flatten();
        self.all
            .iter()
            .map(|tested| {
                let mut row = tested.row;
                if row.left_out.is_none()
                    && let Some(residual) = residuals.next()
                {
                    row.residual_w = Some(residual.residual_w);
                    row.cda_m2 = residual.own_cda_m2;
                    row.leverage = Some(residual.leverage);
                    row.studentised = residual.studentised;
                    row.outlier = residual.outlier;
                }
                row
            })
            .collect()
    }
}

impl RowKind {
    /// The path of a row in the request.
    pub(super) fn path(self, index: usize) -> String {
        let list = match self {
            Self::Lap => "laps",
            Self::Run => "runs",
            Self::CoastDown => "coast_downs",
        };
        format!("with.{list}[{index}]")
    }
}

fn lap(
    with: &With,
    index: usize,
    form: &LapForm,
    recording: &Recording,
    wind: Wind,
) -> Result<TestedRow, Error> {
    let (first, last) = recording.span_s();
    let (from_s, to_s) = (form.from_s.max(first), form.to_s.min(last));
    // Laps that overlap others are excluded, and are not worked out: that bounds the work.
    let reduced = match &form.excluded {
        Some(_) => Lap::default(),
        None => Lap::new(recording, from_s, to_s, form.closed, wind),
    };
    let sums = reduced.sums;
    let worst = [
        (reduced.dropout_s, RowLeftOut::Dropout),
        (reduced.stopped_s, RowLeftOut::Stopped),
        (reduced.braking_s, RowLeftOut::Braking),
    ]
    .into_iter()
    .max_by(|a, b| a.0.total_cmp(&b.0));
    let unusable = reduced.unusable_s() > with.rules.allowed_s;
    let left_out = match (&form.excluded, worst) {
        (Some(_), _) => Some(RowLeftOut::Excluded),
        (None, Some((_, cause))) if unusable => Some(cause),
        _ => None,
    };
    if left_out.is_none() && sums.distance_m < SHORTEST_M {
        let field = format!("{}.to_s", RowKind::Lap.path(index));
        let message = message::nothing_moves(&field);
        return Err(Error::impossible(field, message));
    }
    let seconds = sums.duration_s.max(f64::MIN_POSITIVE);
    let row = TestRow {
        duration_s: Some(to_s - from_s),
        speed_m_s: sums.distance_m / seconds,
        power_w: Some(sums.work_j / seconds),
        left_out,
        braking_s: reduced.braking_s,
        stopped_s: reduced.stopped_s,
        dropout_s: reduced.dropout_s,
        ..typed(RowKind::Lap, index, form.position, 0.0, &None)
    };
    Ok(TestedRow {
        ridden: (0, form.recording, from_s),
        heights: reduced.heights,
        ..tested(row, Seen::Stretch(sums))
    })
}

/// A row without heights.
pub(super) fn tested(row: TestRow, seen: Seen) -> TestedRow {
    let kind = match row.kind {
        RowKind::Lap => 0,
        RowKind::Run => 1,
        RowKind::CoastDown => 2,
    };
    TestedRow {
        row,
        observation: Observation {
            position: row.position,
            seen,
        },
        ridden: (kind, 0, row.index as f64),
        heights: None,
    }
}

/// A row without a recording.
pub(super) fn typed(
    kind: RowKind,
    index: usize,
    position: usize,
    speed_m_s: f64,
    excluded: &Option<String>,
) -> TestRow {
    TestRow {
        kind,
        index,
        position,
        duration_s: None,
        speed_m_s,
        power_w: None,
        residual_w: None,
        cda_m2: None,
        leverage: None,
        studentised: None,
        outlier: false,
        left_out: excluded.as_ref().map(|_| RowLeftOut::Excluded),
        braking_s: 0.0,
        stopped_s: 0.0,
        dropout_s: 0.0,
    }
}
