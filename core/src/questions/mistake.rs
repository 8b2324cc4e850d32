//! What is wrong with a request that cannot be read, with its path.

use std::fmt::{self, Display, Write as _};

use serde::de::{self, Unexpected};

use crate::inputs::error::{Error, Kind};
use crate::inputs::message::{self, Message};

/// What is wrong, and where: steps from the innermost out.
#[derive(Debug)]
pub(super) struct Mistake {
    steps: Vec<Step>,
    kind: Kind,
    message: Message,
    /// The field that is missing or unknown, which the steps may not have reached.
    name: Option<String>,
}

/// A step on the way to a field.
#[derive(Debug)]
pub(super) enum Step {
    Field(String),
    Item(usize),
}

impl Mistake {
    /// The mistake under a step further out.
    pub(super) fn under(mut self, step: Step) -> Self {
        self.steps.push(step);
        self
    }

    /// The path, such as `scenario.positions[0].cda_m2`.
    fn path(&self) -> String {
        let mut path = String::new();
        for step in self.steps.iter().rev() {
            match step {
                Step::Field(name) if path.is_empty() => path.push_str(name),
                Step::Field(name) => {
                    path.push('.');
                    path.push_str(name);
                }
                // Writing to a text does not fail.
                Step::Item(i) => drop(write!(path, "[{i}]")),
            }
        }
        path
    }

    /// A mistake here.
    pub(super) fn new(kind: Kind, message: Message) -> Self {
        Self {
            steps: Vec::new(),
            kind,
            message,
            name: None,
        }
    }

    /// The mistake as an error at its field.
    pub(super) fn into_error(self) -> Error {
        let path = self.path();
        let field = match self.name {
            Some(name) if path.is_empty() => name,
            Some(name) if path != name && !path.ends_with(&format!(".{name}")) => {
                format!("{path}.{name}")
            }
            _ => path,
        };
        let field = short(&field);
        let message = match self.kind {
            Kind::Missing => message::missing(&field),
            _ => self.message,
        };
        Error::new(self.kind, field, message)
    }
}

/// As much of a text of the request as is sent back: a long name or value is the caller's own and need not be.
fn short(text: &str) -> String {
    const LONGEST: usize = 120;
    text.chars().take(LONGEST).collect()
}

impl Display for Mistake {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message.fmt(f)
    }
}

impl std::error::Error for Mistake {}

impl de::Error for Mistake {
    fn custom<T: Display>(why: T) -> Self {
        let why = short(&why.to_string());
        Self::new(Kind::WrongType, message::unreadable(&why))
    }

    fn invalid_type(found: Unexpected<'_>, wanted: &dyn de::Expected) -> Self {
        let found = match found {
            Unexpected::Unit => "nothing",
            Unexpected::Bool(_) => "true or false",
            Unexpected::Unsigned(_) | Unexpected::Signed(_) | Unexpected::Float(_) => "a number",
            Unexpected::Str(_) => "text",
            Unexpected::Seq => "a list",
            Unexpected::Map => "an object",
            _ => "something else",
        };
        let message = message::wrong_type(found, &plain(&wanted.to_string()));
        Self::new(Kind::WrongType, message)
    }

    fn invalid_value(found: Unexpected<'_>, wanted: &dyn de::Expected) -> Self {
        Self::invalid_type(found, wanted)
    }

    fn invalid_length(_: usize, wanted: &dyn de::Expected) -> Self {
        let message = message::wrong_type("a list of another length", &plain(&wanted.to_string()));
        Self::new(Kind::WrongType, message)
    }

    fn unknown_variant(word: &str, known: &'static [&'static str]) -> Self {
        let message = message::unknown_word(&short(word), &known.join(", "));
        Self::new(Kind::WrongType, message)
    }

    fn unknown_field(name: &str, known: &'static [&'static str]) -> Self {
        let name = short(name);
        let message = message::unknown_field(&name, &known.join(", "));
        Self {
            name: Some(name),
            ..Self::new(Kind::UnknownField, message)
        }
    }

    fn missing_field(name: &'static str) -> Self {
        Self {
            name: Some(name.to_owned()),
            ..Self::new(Kind::Missing, message::missing(name))
        }
    }

    fn duplicate_field(name: &'static str) -> Self {
        Self::new(Kind::WrongType, message::twice(name))
    }
}

/// What a type of Rust is called in a request.
fn plain(expected: &str) -> String {
    match expected {
        "f64" => "a number",
        "usize" | "u64" | "u32" => "a whole number",
        "a sequence" => "a list",
        "a boolean" => "true or false",
        "a string" => "text",
        named if named.starts_with("struct ") => "an object",
        named if named.starts_with("enum ") => "a word",
        other => other,
    }
    .to_owned()
}
