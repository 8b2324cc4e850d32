//! Tests of one position taken together: by inverse variance of what is each test's own, while an error that all have in common stays.

/// A drag area from one test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Tested {
    /// m².
    pub cda_m2: f64,
    /// One standard deviation of what is the test's own, m²; above 0.
    pub sd_m2: f64,
    /// One standard deviation of what it has in common with tests by the same rider and equipment, m².
    pub shared_sd_m2: f64,
}

/// The tests as one: `x = Σ wᵢ xᵢ`, `wᵢ ∝ 1/sᵢ²`, of own variance `1/Σ(1/sᵢ²)`, and with a shared error of `Σ wᵢ cᵢ`, the `cᵢ` taken as
/// one error, which no number of tests makes smaller. `None` without a test, or where one has no error of its own.
///
/// Source: the weighted mean of values whose variances are known (standard; common practice, no source).
pub(crate) fn combined(tests: &[Tested]) -> Option<Tested> {
    let weight = |test: &Tested| 1.0 / (test.sd_m2 * test.sd_m2);
    let sum: f64 = tests.iter().map(weight).sum();
    let mean = |value: fn(&Tested) -> f64| {
        tests
            .iter()
            .map(|test| weight(test) * value(test))
            .sum::<f64>()
            / sum
    };
    let together = Tested {
        cda_m2: mean(|test| test.cda_m2),
        sd_m2: sum.sqrt().recip(),
        shared_sd_m2: mean(|test| test.shared_sd_m2),
    };
    (sum.is_finite() && sum > 0.0).then_some(together)
}

/// By how many standard deviations the test furthest from the others' mean differs, all own errors counted; `None` for fewer than two.
pub(crate) fn disagreement(tests: &[Tested]) -> Option<f64> {
    (0..tests.len())
        .filter_map(|i| {
            let others: Vec<Tested> = [&tests[..i], &tests[i + 1..]].concat();
            let rest = combined(&others)?;
            Some((tests[i].cda_m2 - rest.cda_m2).abs() / tests[i].sd_m2.hypot(rest.sd_m2))
        })
        .max_by(f64::total_cmp)
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn test(cda_m2: f64, sd_m2: f64, shared_sd_m2: f64) -> Tested {
        Tested {
            cda_m2,
            sd_m2,
            shared_sd_m2,
        }
    }

    /// By hand: weights 4/5 and 1/5.
    #[test]
    fn the_surer_test_counts_more_and_the_shared_error_stays() {
        let together = combined(&[test(0.230, 0.002, 0.003), test(0.240, 0.004, 0.004)]).unwrap();
        assert!((together.cda_m2 - 0.232).abs() < 1e-15);
        assert!((together.sd_m2 - 0.002 * 0.8_f64.sqrt()).abs() < 1e-15);
        assert!((together.shared_sd_m2 - 0.0032).abs() < 1e-15);
    }

    #[test]
    fn one_test_is_itself_and_none_is_nothing() {
        let one = test(0.23, 0.002, 0.003);
        let together = combined(&[one]).unwrap();
        assert!((together.sd_m2 - one.sd_m2).abs() < 1e-15);
        assert_eq!(combined(&[]), None);
        assert_eq!(combined(&[test(0.23, 0.0, 0.003)]), None);
        assert_eq!(disagreement(&[one]), None);
    }

    #[test]
    fn tests_that_disagree_say_by_how_much() {
        let apart = disagreement(&[test(0.230, 0.003, 0.0), test(0.240, 0.004, 0.0)]).unwrap();
        assert!((apart - 2.0).abs() < 1e-12);
    }
}
