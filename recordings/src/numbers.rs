//! Decimal numbers in the texts of files.

use lexical_parse_float::FromLexical;

/// A number with a decimal point; not a number where it is none.
pub(crate) fn number(text: &str) -> f64 {
    let text = text.trim();
    let text = text.strip_prefix('+').unwrap_or(text);
    // Words such as "inf" and "nan" are no measurements.
    if !text.starts_with(|sign: char| sign.is_ascii_digit() || sign == '-' || sign == '.') {
        return f64::NAN;
    }
    f64::from_lexical(text.as_bytes())
        .ok()
        .filter(|value| value.is_finite())
        .unwrap_or(f64::NAN)
}

/// A number as a table has it: a comma may be the decimal mark or part thousands. With other separators between values a
/// comma alone is the decimal mark; among commas, one before exactly three digits parts thousands.
pub(crate) fn number_of_table(text: &str, separator: u8) -> f64 {
    let text = text.trim();
    let Some(last_comma) = text.rfind(',') else {
        return number(text);
    };
    let is_decimal = match text.rfind('.') {
        Some(last_point) => last_comma > last_point,
        None => {
            text.matches(',').count() == 1 && (separator != b',' || text.len() - last_comma != 4)
        }
    };
    let plain: String = text
        .chars()
        .filter_map(|sign| match sign {
            ',' if is_decimal => Some('.'),
            '.' if is_decimal => None,
            ',' => None,
            other => Some(other),
        })
        .collect();
    number(&plain)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_with_either_mark() {
        assert_eq!(number(" +12.5 "), 12.5);
        assert_eq!(number("-3e2"), -300.0);
        assert_eq!(number_of_table("12,5", b';'), 12.5);
        assert_eq!(number_of_table("1.234,5", b';'), 1234.5);
        assert_eq!(number_of_table("1,234.5", b','), 1234.5);
        assert_eq!(number_of_table("1,234", b','), 1234.0);
        assert_eq!(number_of_table("1,234", b';'), 1.234);
    }

    #[test]
    fn what_is_no_number_is_none() {
        for text in [
            "", "n/a", "inf", "nan", "12 W", "1e999", "--1", "1,2,3x", ",",
        ] {
            assert!(number(text).is_nan(), "{text}");
            assert!(number_of_table(text, b';').is_nan(), "{text}");
        }
    }
}
