//! Efforts by the position that they were ridden in, and which of them count.

use super::models::Effort;

/// The efforts of one position, and those of them that count.
pub(crate) struct Tests {
    pub(crate) position: usize,
    /// By their places.
    pub(crate) all: Vec<(usize, Effort)>,
    /// Those that count: one that a longer effort beats was not all that the rider had.
    pub(crate) used: Vec<Effort>,
}

/// Efforts in their order, each with its position, by position; positions ascend.
pub(crate) fn by_position(efforts: impl Iterator<Item = (usize, Effort)>) -> Vec<Tests> {
    let mut groups: Vec<Tests> = Vec::new();
    for (place, (position, effort)) in efforts.enumerate() {
        let at = groups.partition_point(|tests| tests.position < position);
        match groups
            .get_mut(at)
            .filter(|tests| tests.position == position)
        {
            Some(tests) => tests.all.push((place, effort)),
            None => groups.insert(
                at,
                Tests {
                    position,
                    all: vec![(place, effort)],
                    used: Vec::new(),
                },
            ),
        }
    }
    for tests in &mut groups {
        let counts = |effort: &Effort| !tests.all.iter().any(|(_, other)| beats(other, effort));
        tests.used = tests
            .all
            .iter()
            .map(|(_, effort)| *effort)
            .filter(counts)
            .collect();
    }
    groups
}

/// Whether an effort that was longer was surely harder: by two standard deviations of their difference. Efforts of about the
/// same length are repeats of one test; leaving out the worse of them would raise the curve.
fn beats(other: &Effort, effort: &Effort) -> bool {
    const LONGER: f64 = 1.1;
    other.duration_s >= LONGER * effort.duration_s
        && other.power_w - effort.power_w > 2.0 * other.sd_w.hypot(effort.sd_w)
}

/// The position ridden in, if there are efforts in it, else the one with the most.
pub(crate) fn most_tested(groups: &[Tests], riding: usize) -> usize {
    let tests = groups.iter().find(|tests| tests.position == riding);
    let most = groups.iter().reduce(|most, tests| {
        if tests.all.len() > most.all.len() {
            tests
        } else {
            most
        }
    });
    tests.or(most).map_or(riding, |tests| tests.position)
}
