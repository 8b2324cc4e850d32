//! Other published forms of W′ balance over a ride of steady stretches, to set beside the differential one.

/// A stretch of a ride at one power: seconds, watts.
pub type Stretch = (f64, f64);

/// By how much recovery lies below CP on the average of a ride, W: `CP − mean of all power below CP`; 0 for a ride that is
/// never below.
pub fn recovery_depth_w(cp_w: f64, ride: &[Stretch]) -> f64 {
    let below = ride.iter().filter(|(_, power_w)| *power_w < cp_w);
    let (time_s, work_j) = below.fold((0.0, 0.0), |(t, w), (s, p)| (t + s, w + s * p));
    if time_s > 0.0 {
        cp_w - work_j / time_s
    } else {
        0.0
    }
}

/// The time constant of recovery at a depth below CP, s: `546 exp(−0.01 D) + 316`.
///
/// Source: skiba-2012 (from memory).
pub fn recovery_time_s(depth_w: f64) -> f64 {
    546.0 * (-0.01 * depth_w).exp() + 316.0
}

/// The time constant of recovery in four elite riders, s: `2287.2 D^(−0.688)`, for depths above 0.
///
/// Source: bartram-2018.
pub fn elite_recovery_time_s(depth_w: f64) -> f64 {
    2287.2 * depth_w.powf(-0.688)
}

/// W′ balance at `time_s` in the integral form, J: `W′ − ∫ max(P − CP, 0) exp(−(t − u)/τ) du`, exactly. What was spent
/// also comes back while more is spent, so that even one steady bout disagrees with the hyperbola. May go below 0.
///
/// Source: skiba-2012 (equation from memory).
pub fn integral_j(cp_w: f64, w_prime_j: f64, tau_s: f64, ride: &[Stretch], time_s: f64) -> f64 {
    let mut spent_j = 0.0;
    for (step_s, power_w) in until(ride, time_s) {
        let stays = (-step_s / tau_s).exp();
        spent_j = spent_j * stays + (power_w - cp_w).max(0.0) * tau_s * (1.0 - stays);
    }
    w_prime_j - spent_j
}

/// The same as recordings take it, second by second: what is spent in a second counts whole at its end.
///
/// Source: skiba-2012 (equation from memory).
pub fn integral_by_second_j(
    cp_w: f64,
    w_prime_j: f64,
    tau_s: f64,
    ride: &[Stretch],
    time_s: f64,
) -> f64 {
    let stays = (-1.0 / tau_s).exp();
    let mut spent_j = 0.0;
    for (step_s, power_w) in until(ride, time_s) {
        for _ in 0..step_s.round() as u64 {
            spent_j = spent_j * stays + (power_w - cp_w).max(0.0);
        }
    }
    w_prime_j - spent_j
}

/// W′ balance at `time_s`, J, spent linearly above CP and coming back exponentially below it with a time constant by the
/// depth of each stretch. May go below 0.
pub fn by_time_constant_j(
    cp_w: f64,
    w_prime_j: f64,
    tau_s: impl Fn(f64) -> f64,
    ride: &[Stretch],
    time_s: f64,
) -> f64 {
    let mut spent_j = 0.0;
    for (step_s, power_w) in until(ride, time_s) {
        let depth_w = cp_w - power_w;
        if depth_w < 0.0 {
            spent_j -= depth_w * step_s;
        } else if depth_w > 0.0 {
            spent_j *= (-step_s / tau_s(depth_w)).exp();
        }
    }
    w_prime_j - spent_j
}

/// The stretches of a ride up to a time, the last one cut there.
fn until(ride: &[Stretch], time_s: f64) -> impl Iterator<Item = Stretch> {
    ride.iter().scan(time_s, |left_s, &(step_s, power_w)| {
        let step_s = step_s.min(*left_s);
        *left_s -= step_s;
        (step_s > 0.0).then_some((step_s, power_w))
    })
}
