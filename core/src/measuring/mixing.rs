//! Whether the order in which positions were ridden tells them from a steady drift.

/// How much of the difference of two positions a drift in a straight line from the first row to the last could make up: the squared
/// correlation of position and place in the order, 0 to 1. With a drift fitted beside it, the variance of the difference is larger
/// by `1/(1 − r²)`. A, B, B, A has 0; A, A, B, B has 0.8. 0 where one of them is not there.
pub fn drift_share(order: &[usize], a: usize, b: usize) -> f64 {
    let rows: Vec<(f64, f64)> = order
        .iter()
        .enumerate()
        .filter(|(_, position)| [a, b].contains(position))
        .map(|(i, position)| (i as f64, f64::from(u8::from(*position == b))))
        .collect();
    let count = rows.len() as f64;
    let mean = |of: fn(&(f64, f64)) -> f64| rows.iter().map(of).sum::<f64>() / count;
    let (middle, half) = (mean(|row| row.0), mean(|row| row.1));
    let (mut xx, mut xy, mut yy) = (0.0, 0.0, 0.0);
    for (x, y) in &rows {
        let (x, y) = (x - middle, y - half);
        (xx, xy, yy) = (xx + x * x, xy + x * y, yy + y * y);
    }
    match xx * yy > 0.0 {
        true => xy * xy / (xx * yy),
        false => 0.0,
    }
}
