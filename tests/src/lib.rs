//! What the checks share: tables, tolerances, and asking a question as text.

pub mod altered;
pub mod drag_requests;
pub mod loop_ride;
pub mod made_rides;

use serde_json::Value;

/// A table read from CSV whose cells hold neither commas nor quotes.
pub struct Table {
    names: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
}

/// One row of a table.
#[derive(Clone, Copy)]
pub struct Row<'a> {
    names: &'a [&'static str],
    cells: &'a [&'static str],
}

impl Table {
    /// Reads a table; a row of another length than the header is a mistake in the file.
    pub fn new(text: &'static str) -> Self {
        let mut lines = text.lines();
        let names: Vec<_> = lines.next().unwrap_or_default().split(',').collect();
        let rows: Vec<Vec<_>> = lines.map(|line| line.split(',').collect()).collect();
        for row in &rows {
            assert_eq!(row.len(), names.len(), "a row of another length: {row:?}");
        }
        assert!(!rows.is_empty(), "the table is empty");
        Self { names, rows }
    }

    /// The rows in order.
    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|cells| Row {
            names: &self.names,
            cells,
        })
    }
}

impl<'a> Row<'a> {
    /// A cell's text; panics on a column that does not exist.
    pub fn text(&self, name: &str) -> &'a str {
        let column = self
            .names
            .iter()
            .position(|&n| n == name)
            .unwrap_or_else(|| panic!("no column {name}"));
        self.cells[column]
    }

    /// A cell's number, `None` where the cell is empty.
    pub fn optional(&self, name: &str) -> Option<f64> {
        let text = self.text(name);
        (!text.is_empty()).then(|| {
            text.parse()
                .unwrap_or_else(|_| panic!("{name} holds {text}"))
        })
    }

    /// A cell's number.
    pub fn number(&self, name: &str) -> f64 {
        self.optional(name)
            .unwrap_or_else(|| panic!("{}: {name} is empty", self.text("case")))
    }

    /// Compares a value with a cell by the row's own tolerance; an empty cell states nothing and compares with nothing.
    pub fn compare(&self, name: &str, got: f64) {
        let Some(want) = self.optional(name) else {
            return;
        };
        let tolerance = self.number("tolerance");
        let allowed = match self.text("tolerance_is") {
            "absolute" => tolerance,
            "relative" => tolerance * want.abs(),
            "mixed" => tolerance * want.abs().max(1.0),
            other => panic!("unknown kind of tolerance {other}"),
        };
        let case = self.text("case");
        assert!(
            (got - want).abs() <= allowed,
            "{case}: {name} is {got}, the table has {want}, allowed ± {allowed}"
        );
    }
}

/// Asks a question; panics on an error, for requests that are right.
pub fn answer(question: &str, request: &Value) -> Value {
    let text = fasterby_core::ask_json(question, &request.to_string())
        .unwrap_or_else(|error| panic!("{question} refused {request}: {error}"));
    serde_json::from_str(&text).expect("answers are JSON")
}

/// Asks a question that must be refused, and gives the error.
pub fn refused(question: &str, request: &str) -> Value {
    let error =
        fasterby_core::ask_json(question, request).expect_err("this request must be refused");
    serde_json::from_str(&error).expect("errors are JSON")
}

/// A number that stands alone or as the value of a figure; `None` for null.
pub fn value(of: &Value) -> Option<f64> {
    of.as_f64()
        .or_else(|| of.get("value").and_then(Value::as_f64))
}
