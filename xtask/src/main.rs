//! `cargo xtask`: everything that is done to the project, one command each.
//! Every command sets up what it needs first and ends, where it cannot go on, with a sentence that names the cure.

mod bench;
mod browsers;
mod build;
mod command;
mod command_line;
mod compress;
mod content;
mod first_load;
mod fuzz;
mod lighthouse;
mod one_file;
mod packed;
mod paths;
mod pictures;
mod serve;
mod setup;
mod size;
mod test;

use command::Outcome;
use std::process::ExitCode;

const USAGE: &str = "\
cargo xtask COMMAND

  serve [--port N] [--no-build]   build the page and serve it (port 8000; 0 picks a free one)
  build                           build the page into dist/
  test [STEP]                     run every check, or one step of them; `test --list` names the steps
  bench                           measure speed, natively and in the browser, beside its bounds
  size                            weigh the built page beside its bounds
  lighthouse                      score the built page for accessibility, practices and performance
  pictures                        take the pictures of the page for README.md
  ask QUESTION < request.json     answer one question on the command line
  read FILE                       say what a recording of a ride holds (FIT, GPX, TCX or CSV, also as .gz)
  course FILE [--smooth METRES]   make a course of a recording: a profile as scenarios hold it (elevation over 100 m each way)
  fuzz-recordings SECONDS         try the readers of recordings on altered files, so long for each kind
";

/// What one run of `cargo xtask` was asked to do.
#[derive(Debug, PartialEq)]
enum Task {
    Serve {
        port: u16,
        build_first: bool,
    },
    Build,
    Test {
        step: Option<String>,
    },
    ListSteps,
    Bench,
    Size,
    Lighthouse,
    Pictures,
    /// One of the command line's, with what follows it.
    CommandLine {
        words: Vec<String>,
    },
    FuzzRecordings {
        seconds: u64,
    },
    Help,
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
    match words.as_slice() {
        [] | ["help" | "--help" | "-h", ..] => Ok(Task::Help),
        ["serve", options @ ..] => parse_serve(options),
        ["build"] => Ok(Task::Build),
        ["test"] => Ok(Task::Test { step: None }),
        ["test", "--list"] => Ok(Task::ListSteps),
        ["test", step] => Ok(Task::Test {
            step: Some(step.to_string()),
        }),
        ["bench"] => Ok(Task::Bench),
        ["size"] => Ok(Task::Size),
        ["lighthouse"] => Ok(Task::Lighthouse),
        ["pictures"] => Ok(Task::Pictures),
        ["fuzz-recordings", seconds] => Ok(Task::FuzzRecordings {
            seconds: seconds.parse().map_err(|_| {
                "`fuzz-recordings` wants a number of seconds for each kind of file.".to_string()
            })?,
        }),
        [command, ..] if command_line::COMMANDS.contains(command) => Ok(Task::CommandLine {
            words: words.iter().map(ToString::to_string).collect(),
        }),
        _ => Err(format!(
            "`{}` is not a command; these are:\n\n{USAGE}",
            words.join(" ")
        )),
    }
}

fn parse_serve(options: &[&str]) -> Outcome<Task> {
    let (mut port, mut build_first) = (8000, true);
    let mut rest = options.iter();
    while let Some(option) = rest.next() {
        match *option {
            "--no-build" => build_first = false,
            "--port" => {
                port = rest
                    .next()
                    .and_then(|number| number.parse().ok())
                    .ok_or("`--port` wants a number from 0 to 65535 after it.")?;
            }
            other => {
                return Err(format!(
                    "`serve` does not know `{other}`; it takes `--port N` and `--no-build`."
                ));
            }
        }
    }
    Ok(Task::Serve { port, build_first })
}

fn perform(task: Task) -> Outcome<ExitCode> {
    match task {
        Task::Serve { port, build_first } => {
            if build_first {
                build::build()?;
            }
            let server = serve::Server::bind(paths::dist(), port)?;
            println!("Fasterby is at {} (Ctrl+C stops it)", server.address());
            server.run()?;
        }
        Task::Build => {
            build::write_types()?;
            build::build()?;
            println!("The page is in dist/.");
        }
        Task::Test { step } => return test::test(step.as_deref()),
        Task::ListSteps => test::list(),
        Task::Bench => bench::bench()?,
        Task::Size => return size::size(),
        Task::Lighthouse => lighthouse::lighthouse()?,
        Task::Pictures => pictures::pictures()?,
        Task::CommandLine { words } => return command_line::hand_over(&words),
        Task::FuzzRecordings { seconds } => fuzz::recordings(seconds)?,
        Task::Help => print!("{USAGE}"),
    }
    Ok(ExitCode::SUCCESS)
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
    fn serve_builds_and_uses_port_8000_unless_told_otherwise() {
        assert_eq!(
            parsed("serve"),
            Ok(Task::Serve {
                port: 8000,
                build_first: true
            })
        );
        assert_eq!(
            parsed("serve --no-build --port 0"),
            Ok(Task::Serve {
                port: 0,
                build_first: false
            })
        );
    }

    #[test]
    fn a_wrong_word_is_named_in_the_sentence() {
        assert!(parsed("serve --port lots").unwrap_err().contains("--port"));
        assert!(parsed("serve --fast").unwrap_err().contains("--fast"));
        assert!(parsed("fly").unwrap_err().contains("fly"));
    }

    #[test]
    fn questions_and_recordings_are_left_to_their_program() {
        for line in [
            "ask finish-time",
            "ask",
            "read ride.fit",
            "course ride.gpx --smooth 30",
        ] {
            let words = line.split(' ').map(String::from).collect();
            assert_eq!(parsed(line), Ok(Task::CommandLine { words }));
        }
    }

    #[test]
    fn test_runs_all_steps_or_one() {
        assert_eq!(parsed("test"), Ok(Task::Test { step: None }));
        assert_eq!(
            parsed("test browser"),
            Ok(Task::Test {
                step: Some("browser".into())
            })
        );
    }
}
