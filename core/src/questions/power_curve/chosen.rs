//! Which curve is read, and which one rides use.

use super::answer::Usable;
use super::with::With;
use crate::physiology::efforts::Tests;
use crate::physiology::held::Held;
use crate::physiology::model_comparison::{Compared, ModelName, best, guessed, is_ridden};
use crate::physiology::models::Curve;
use crate::physiology::position_curves::Basis;
use crate::scenario::Scenario;

/// The curve that is read.
pub(super) struct Chosen {
    pub(super) basis: Basis,
    /// `None` for the scenario's own numbers.
    pub(super) model: Option<ModelName>,
    pub(super) curve: Option<Curve>,
    /// The longest effort that the curve rests on, s.
    pub(super) longest_s: Option<f64>,
    pub(super) held: Held,
    /// The one that rides use, where it is another.
    ridden_model: Option<ModelName>,
    ridden: Option<Held>,
}

impl Chosen {
    /// For the efforts of one position and the models fitted to them.
    pub(super) fn new(
        scenario: &Scenario,
        with: &With,
        tests: &Tests,
        compared: &[Compared],
    ) -> Self {
        let chosen = match with.model {
            Some(name) => compared
                .iter()
                .find(|one| one.name == name && one.curve.is_some()),
            None => best(compared),
        };
        let fitted = chosen
            .or(best(compared))
            .and_then(|one| Some((Some(one.name), one.curve.clone()?)));
        let guess = || {
            Some((
                Some(ModelName::OmniDomain),
                guessed(&tests.used, scenario.power.long_ride_from_s.value)?,
            ))
        };
        let (basis, known) = match fitted {
            Some(fitted) => (Basis::Fitted, Some(fitted)),
            None if tests.used.is_empty() => (Basis::Given, None),
            None => match guess() {
                Some(guess) => (Basis::Guessed, Some(guess)),
                None => (Basis::Given, None),
            },
        };
        let own = scenario
            .positions
            .get(tests.position)
            .and_then(|position| position.power.as_ref());
        let (model, curve) = known.unzip();
        let model = model.flatten();
        let longest_s = tests
            .used
            .iter()
            .map(|effort| effort.duration_s)
            .reduce(f64::max)
            .filter(|_| curve.is_some());
        let power = own.unwrap_or(&scenario.power);
        let as_ridden = |curve: &Curve| {
            Held::for_rides(
                curve,
                power,
                longest_s.unwrap_or_default(),
                with.test_error_share,
            )
        };
        let held = match &curve {
            Some(curve) => as_ridden(curve),
            None => Held::given(power, with.test_error_share),
        };
        // A model that rides do not use is only looked at: rides go by the one that is read where none is asked for.
        let ridden = match (basis, model) {
            (Basis::Fitted, Some(name)) if !is_ridden(name) => {
                best(compared).and_then(|one| Some((one.name, as_ridden(one.curve.as_ref()?))))
            }
            _ => None,
        };
        let (ridden_model, ridden) = ridden.unzip();
        Self {
            basis,
            model,
            curve,
            longest_s,
            held,
            ridden_model,
            ridden,
        }
    }

    /// What rides use.
    pub(super) fn ridden(&self) -> &Held {
        self.ridden.as_ref().unwrap_or(&self.held)
    }

    /// What goes into the scenario.
    pub(super) fn usable(&self) -> Option<Usable> {
        self.ridden_model
            .or(self.model)
            .filter(|&name| is_ridden(name))
            .map(|name| Usable::of(name, self.ridden()))
    }
}
