//! The core and the readers of recordings on the command line. `cargo xtask` builds this when it is asked for, and hands its words over.

mod ask;
mod course;
mod read;
mod tables;

use std::path::Path;
use std::process::ExitCode;

/// A result whose error is one sentence that names what went wrong.
type Outcome<T = ()> = Result<T, String>;

/// What one run was asked to do.
#[derive(Debug, PartialEq)]
enum Task {
    Ask { question: String },
    Read { file: String },
    Course { file: String, smooth_m: f64 },
    Tables,
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let done = parse(&words).and_then(perform);
    done.unwrap_or_else(|sentence| {
        eprintln!("{sentence}");
        ExitCode::FAILURE
    })
}

fn parse(words: &[String]) -> Outcome<Task> {
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let course = |file: &str, smooth_m| Task::Course {
        file: file.to_string(),
        smooth_m,
    };
    match words.as_slice() {
        ["ask", question] => Ok(Task::Ask {
            question: question.to_string(),
        }),
        ["read", file] => Ok(Task::Read {
            file: file.to_string(),
        }),
        ["course", file] => Ok(course(file, course::SMOOTHED_M)),
        ["course", file, "--smooth", metres] => metres
            .parse()
            .map(|smooth_m| course(file, smooth_m))
            .map_err(|_| "`--smooth` wants a number of metres after it.".to_string()),
        ["tables"] => Ok(Task::Tables),
        ["ask", ..] => Err(
            "`ask` wants the name of a question after it, and the request on standard input."
                .to_string(),
        ),
        ["read", ..] => Err("`read` wants the name of a file after it.".to_string()),
        ["course", ..] => Err(
            "`course` wants the name of a file after it, and takes `--smooth METRES`.".to_string(),
        ),
        _ => Err(format!(
            "`{}` is not a command; these are: ask, read, course, tables.",
            words.join(" ")
        )),
    }
}

fn perform(task: Task) -> Outcome<ExitCode> {
    match task {
        Task::Ask { question } => ask::ask(&question),
        Task::Read { file } => read::read(Path::new(&file)),
        Task::Course { file, smooth_m } => course::course(Path::new(&file), smooth_m),
        Task::Tables => tables::tables(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parsed(line: &str) -> Outcome<Task> {
        parse(
            &line
                .split_whitespace()
                .map(String::from)
                .collect::<Vec<_>>(),
        )
    }

    #[test]
    fn a_wrong_word_is_named_in_the_sentence() {
        for (line, named) in [
            ("read", "name of a file"),
            ("ask", "name of a question"),
            ("course", "name of a file"),
            ("course ride.gpx --smooth much", "--smooth"),
            ("fly", "fly"),
        ] {
            assert!(parsed(line).unwrap_err().contains(named), "{line}");
        }
    }

    #[test]
    fn a_course_is_smoothed_as_usual_unless_told_otherwise() {
        let course = |smooth_m| {
            Ok(Task::Course {
                file: "ride.gpx".into(),
                smooth_m,
            })
        };
        assert_eq!(parsed("course ride.gpx"), course(course::SMOOTHED_M));
        assert_eq!(parsed("course ride.gpx --smooth 30"), course(30.0));
    }
}
