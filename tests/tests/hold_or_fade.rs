//! What hold-or-fade says of a fade, checked by hand.

#![cfg(not(target_arch = "wasm32"))]

use fasterby_tests::{answer, value};
use serde_json::json;

/// The mean of a straight line, so that rounding alone is left.
const SAME: f64 = 1e-9;

#[test]
fn a_fade_holds_the_position_for_the_time_that_its_straight_line_leaves() {
    let (begins_s, complete_s) = (1000.0, 2000.0);
    let told = answer(
        "hold-or-fade",
        &json!({
            "scenario": { "positions": [
                { "cda_m2": 0.22, "fade": { "tired_cda_m2": 0.27, "begins_s": begins_s, "complete_s": complete_s } },
                { "cda_m2": 0.24 },
            ] },
            "with": { "low": 0, "steady": 1 },
        }),
    );
    let ride_s = value(&told["low_time_s"]).expect("a time");
    assert!(ride_s > complete_s);
    let held = 0.5 * (begins_s + complete_s) / ride_s;
    let found = value(&told["held_share"]).expect("a share");
    assert!((found - held).abs() < SAME, "{found} for {held}");
}
