//! Which candidate requires which.

use super::candidate::Candidate;
use crate::inputs::error::{Error, Kind};
use crate::inputs::message;

/// For each candidate the place of the one that it requires.
///
/// # Errors
/// Names `requires` of the first candidate that names none of the list, or one that requires it in turn.
pub(super) fn places(candidates: &[Candidate]) -> Result<Vec<Option<usize>>, Error> {
    let field = |c: usize| format!("with.candidates[{c}].requires");
    let mut places = Vec::new();
    for (c, candidate) in candidates.iter().enumerate() {
        let wanted = &candidate.requires;
        let place = candidates.iter().position(|other| other.is_called(wanted));
        if place.is_none() && !wanted.is_empty() {
            let (path, short) = (field(c), wanted.chars().take(80).collect::<String>());
            let message = message::no_such_change(&path, &short);
            return Err(Error::new(Kind::Conflict, path, message));
        }
        places.push(place.filter(|_| !wanted.is_empty()));
    }
    for c in 0..candidates.len() {
        let mut before = std::iter::successors(places[c], |&at| places[at]).take(candidates.len());
        if before.any(|at| at == c) {
            let path = field(c);
            let message = message::requires_itself(&path);
            return Err(Error::new(Kind::Conflict, path, message));
        }
    }
    Ok(places)
}

impl Candidate {
    /// Whether `requires` of another means this one: its key, or its name if it has no key.
    fn is_called(&self, wanted: &str) -> bool {
        wanted
            == if self.key.is_empty() {
                &self.name
            } else {
                &self.key
            }
    }
}
