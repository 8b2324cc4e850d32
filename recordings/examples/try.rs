use std::time::Instant;
fn main() {
    for path in std::env::args().skip(1) {
        let bytes = std::fs::read(&path).unwrap();
        let t = Instant::now();
        let mut reader = fasterby_recordings::Reader::default();
        let r = bytes
            .chunks(65536)
            .try_for_each(|c| reader.push(c))
            .and_then(|_| reader.finish());
        let name = path.rsplit('/').next().unwrap();
        match r {
            Ok(r) => {
                let s = r.summary();
                println!(
                    "{name}: {} n={} kept={} el={:.0} d={:.1} climb={:.0} w={:.1} laps={} stops={} {:.1}ms [{}]",
                    r.kind.name(),
                    r.records,
                    r.columns.len(),
                    s.elapsed_s,
                    s.distance_m,
                    s.climb_m,
                    s.mean_power_w,
                    r.laps.len(),
                    r.stops.len(),
                    t.elapsed().as_secs_f64() * 1e3,
                    r.notes
                        .iter()
                        .map(|n| n.to_string())
                        .collect::<Vec<_>>()
                        .join(" | ")
                )
            }
            Err(e) => println!("{name}: ERR {e}"),
        }
    }
}
