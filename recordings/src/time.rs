//! Dates and times of day in the texts of files, as seconds.

use crate::numbers::number;

/// Seconds in a day.
pub(crate) const DAY_S: f64 = 86_400.0;

/// Seconds since 1970-01-01 UTC of a date with a time such as `2026-05-01T10:00:00.5+02:00` (ISO 8601; a space may stand for
/// `T`, `/` for `-`). Without an offset the time is taken as UTC. Not a number where it is none.
pub(crate) fn date_and_time_s(text: &str) -> f64 {
    let text = text.trim();
    let (Some(day), Some(rest)) = (text.get(..10), text.get(11..)) else {
        return f64::NAN;
    };
    if !matches!(text.as_bytes().get(10), Some(b'T' | b't' | b' ')) {
        return f64::NAN;
    }
    let (clock, offset) = match rest.find(['Z', 'z', '+', '-']) {
        Some(at) => (&rest[..at], &rest[at..]),
        None => (rest, ""),
    };
    date_s(day) + clock_s(clock) - offset_s(offset)
}

/// Seconds since 1970-01-01 of a day such as `2026-05-01` or `2026/05/01`.
///
/// Days are counted in years that begin in March, so that leap days come last (the proleptic Gregorian calendar).
pub(crate) fn date_s(text: &str) -> f64 {
    let mut parts = text.trim().split(['-', '/']);
    let mut part = |low: i64, high: i64| whole(parts.next()?, low, high);
    let mut day = || {
        let (year, month, day) = (part(1970, 2199)?, part(1, 12)?, part(1, 31)?);
        let year = if month <= 2 { year - 1 } else { year };
        let of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
        let days = 365 * year + year / 4 - year / 100 + year / 400 + of_year - 719_468;
        Some(days as f64 * DAY_S)
    };
    day().unwrap_or(f64::NAN)
}

/// Seconds of a time such as `10:05:00.25`, `10:05` hours and minutes.
pub(crate) fn clock_s(text: &str) -> f64 {
    let mut parts = text.trim().splitn(3, ':');
    let mut read = || {
        let hours = whole(parts.next()?, 0, 999)?;
        let minutes = whole(parts.next()?, 0, 59)?;
        let seconds = parts.next().map_or(0.0, number);
        (0.0..61.0)
            .contains(&seconds)
            .then_some((hours * 3600 + minutes * 60) as f64 + seconds)
    };
    read().unwrap_or(f64::NAN)
}

/// Seconds that a zone is ahead of UTC: `Z`, nothing, `+02:00`, `-0330`, `+1`.
fn offset_s(text: &str) -> f64 {
    let sign = match text.as_bytes().first() {
        Some(b'+') => 1.0,
        Some(b'-') => -1.0,
        _ => return 0.0,
    };
    let digits: String = text.chars().filter(char::is_ascii_digit).collect();
    let hours = digits.get(..2).or(digits.get(..1)).unwrap_or("0");
    let minutes = digits.get(2..4).unwrap_or("0");
    match (whole(hours, 0, 18), whole(minutes, 0, 59)) {
        (Some(hours), Some(minutes)) => sign * (hours * 3600 + minutes * 60) as f64,
        _ => f64::NAN,
    }
}

fn whole(text: &str, low: i64, high: i64) -> Option<i64> {
    let is_digits = !text.is_empty() && text.bytes().all(|sign| sign.is_ascii_digit());
    text.parse()
        .ok()
        .filter(|value| is_digits && (low..=high).contains(value))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_seconds_since_1970() {
        // From memory: 2001-09-09T01:46:40Z is a thousand million seconds.
        assert_eq!(date_and_time_s("2001-09-09T01:46:40Z"), 1e9);
        assert_eq!(date_and_time_s("2001-09-09 03:46:40.5+02:00"), 1e9 + 0.5);
        assert_eq!(date_and_time_s("2001-09-08T22:16:40-0330"), 1e9);
        assert_eq!(date_s("2000/02/29") + DAY_S, date_s("2000-03-01"));
    }

    #[test]
    fn what_is_no_time_is_none() {
        for text in [
            "",
            "2026-05-01",
            "2026-13-01T00:00:00Z",
            "2026-05-01T25:61:00Z",
            "é026-05-01T00:00:00Z",
            "2026-05-01T10",
        ] {
            assert!(date_and_time_s(text).is_nan(), "{text}");
        }
        assert!(clock_s("12").is_nan());
        assert_eq!(clock_s("1:02:03"), 3723.0);
    }
}
