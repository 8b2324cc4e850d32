//! The least-squares fitter against certified problems, and the power–duration models against tables of their fits.

use fasterby_core::least_squares::{Row as FitRow, least_squares};
use fasterby_core::models::{Effort, Form, Model, fit, fit_form};
use fasterby_tests::{Row, Table};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

/// Parameters of a curve that exact efforts lie on come back to this share.
const EXACT: f64 = 1e-8;

fn numbers(text: &str) -> Vec<f64> {
    text.split(';')
        .map(|number| number.parse().expect("a number"))
        .collect()
}

fn pairs(text: &str) -> Vec<(f64, f64)> {
    let number = |text: &str| text.parse().expect("a number");
    text.split(';')
        .map(|pair| pair.split_once(':').expect("x:y"))
        .map(|(x, y)| (number(x), number(y)))
        .collect()
}

/// `y − f(x; b)` and its derivatives, for the three kinds of model among the certified problems.
fn residual(model: &str, x: f64, y: f64, b: &[f64], d: &mut [f64]) -> f64 {
    match model {
        "saturation" => {
            let left = (-b[1] * x).exp();
            d.copy_from_slice(&[-(1.0 - left), -b[0] * x * left]);
            y - b[0] * (1.0 - left)
        }
        "quadratic over quadratic" => {
            let (above, below) = (x * x + x * b[1], x * x + x * b[2] + b[3]);
            let f = b[0] * above / below;
            d.copy_from_slice(&[-above / below, -b[0] * x / below, f * x / below, f / below]);
            y - f
        }
        "cubic over cubic" => {
            let above = b[0] + x * (b[1] + x * (b[2] + x * b[3]));
            let below = 1.0 + x * (b[4] + x * (b[5] + x * b[6]));
            let f = above / below;
            let powers: [f64; 4] = [1.0, x, x * x, x * x * x];
            for (slope, power) in d.iter_mut().zip(powers) {
                *slope = -power / below;
            }
            for (slope, power) in d.iter_mut().skip(4).zip(&powers[1..]) {
                *slope = f * power / below;
            }
            y - f
        }
        other => panic!("unknown model {other}"),
    }
}

fn assert_close(row: &Row<'_>, what: &str, got: f64, want: f64) {
    let allowed = row.number("tolerance") * want.abs();
    assert!(
        (got - want).abs() <= allowed,
        "{}: {what} is {got}, certified {want}",
        row.text("case")
    );
}

#[test]
fn certified_problems_are_solved_from_both_starts() {
    for row in Table::new(include_str!("../published/least_squares.csv")).rows() {
        let (model, data) = (row.text("model"), pairs(row.text("data_x_y")));
        let rows: &FitRow<'_> = &|b, i, d| residual(model, data[i].0, data[i].1, b, d);
        let fit = least_squares(&numbers(row.text("start")), data.len(), rows)
            .unwrap_or_else(|error| panic!("{}: {error:?}", row.text("case")));
        let variance = fit.residual_variance();
        assert_close(
            &row,
            "the sum of squares",
            fit.sum_of_squares,
            row.number("sum_of_squares"),
        );
        assert_close(
            &row,
            "the residual sd",
            variance.sqrt(),
            row.number("residual_sd"),
        );
        let certified = numbers(row.text("parameters"))
            .into_iter()
            .zip(numbers(row.text("standard_deviations")));
        for (i, (parameter, sd)) in certified.enumerate() {
            assert_close(&row, &format!("b{}", i + 1), fit.parameters[i], parameter);
            assert_close(
                &row,
                &format!("sd of b{}", i + 1),
                (variance * fit.unit_covariance(i, i)).sqrt(),
                sd,
            );
        }
    }
}

fn form(name: &str) -> Form {
    match name {
        "work over time" => Form::WorkTime,
        "power over 1/t" => Form::InverseTime,
        "time" => Form::Time,
        "relative time" => Form::RelativeTime,
        "ln time" => Form::LogTime,
        "three-parameter time" => Form::ThreeParameterTime,
        "three-parameter relative time" => Form::ThreeParameterRelativeTime,
        "ln power over ln t" => Form::LogPower,
        other => panic!("unknown form {other}"),
    }
}

#[test]
fn every_form_of_the_relation_gives_the_tabled_parameters_and_doubts() {
    for row in Table::new(include_str!("../published/power_fits.csv")).rows() {
        let efforts: Vec<Effort> = pairs(row.text("efforts_s_w"))
            .into_iter()
            .map(|(duration_s, power_w)| Effort {
                duration_s,
                power_w,
                sd_w: 1.0,
            })
            .collect();
        let fit = fit_form(form(row.text("form")), &efforts)
            .unwrap_or_else(|e| panic!("{}: {e:?}", row.text("case")));
        let variance = fit.residual_variance();
        for (i, name) in ["first", "second", "third"]
            .iter()
            .enumerate()
            .take(fit.parameters.len())
        {
            row.compare(name, fit.parameters[i]);
            row.compare(
                &format!("sd_{name}"),
                (variance * fit.unit_covariance(i, i)).sqrt(),
            );
        }
        row.compare("covariance", variance * fit.unit_covariance(0, 1));
        row.compare("residual_sd", variance.sqrt());
    }
}

#[test]
fn efforts_on_a_curve_give_its_parameters_back() {
    let models = [
        (Model::TwoParameter, vec![280.0, 18e3]),
        (Model::ThreeParameter, vec![250.0, 20e3, 1000.0]),
        (
            Model::OmniDomain {
                peak: true,
                long_ride_from_s: Some(1800.0),
            },
            vec![260.0, 18e3, 900.0, 22.0],
        ),
        (
            Model::OmniDomain {
                peak: true,
                long_ride_from_s: None,
            },
            vec![260.0, 18e3, 900.0],
        ),
        (
            Model::OmniDomain {
                peak: false,
                long_ride_from_s: Some(1800.0),
            },
            vec![260.0, 18e3, 22.0],
        ),
        (Model::LogDecline, vec![330.0, 25.0]),
        (Model::PowerLaw, vec![1000.0, 0.19]),
    ];
    for (model, truth) in models {
        let mut unused = vec![0.0; truth.len()];
        let efforts = [15.0, 60.0, 150.0, 480.0, 1200.0, 3000.0, 7200.0].map(|duration_s| {
            let power_w = model.power_w(&truth, duration_s, &mut unused);
            Effort {
                duration_s,
                power_w,
                sd_w: 0.02 * power_w,
            }
        });
        let found =
            fit(model, &efforts, &[]).unwrap_or_else(|error| panic!("{model:?}: {error:?}"));
        for (got, want) in found.parameters.iter().zip(&truth) {
            assert!(
                (got / want - 1.0).abs() < EXACT,
                "{model:?}: {got} for {want}"
            );
        }
    }
}
