// @ts-check
/** A made-up ride round a loop as a CSV file, whose drag areas are known: the energy balance of each second gives the next speed. */

/** Of the air at 15 °C and 1,015 hPa at sea level, kg/m³; the page's own conditions. */
const DENSITY = 1.2253;
const MASS_KG = 82;
const ROTATING_KG = 1.5;
const ROLLING = 0.004;
const EFFICIENCY = 0.975;
const GRAVITY = 9.80665;
const LAP_M = 1200;
const RADIUS_M = LAP_M / (2 * Math.PI);
const STEPS_A_SECOND = 20;
/** Metres in a degree of latitude. */
const DEGREE_M = 111_200;

/** A number that looks random and is the same each time, from −1 to 1. @param {number} i */
const noise = (i) => (((i * 7919) % 1000) / 1000 - 0.4995) * 2;

/** @param {readonly number[]} areas the drag area of each lap, m² */
export function loopRide(areas) {
  const lines = ["time_s,speed_m_s,power_w,elevation_m,latitude_deg,longitude_deg"];
  let [way_m, speed_m_s] = [-100, 10];
  for (let second = 0; way_m < areas.length * LAP_M + 100; second += 1) {
    const angle = way_m / RADIUS_M;
    const [north, east] = [RADIUS_M * Math.sin(angle), RADIUS_M * (1 - Math.cos(angle))];
    const power_w = 240 + 20 * Math.sin(second / 70) + 4 * noise(second);
    lines.push(
      [
        second,
        speed_m_s.toFixed(3),
        power_w.toFixed(1),
        (40 + 2 * Math.sin(angle)).toFixed(2),
        (north / DEGREE_M).toFixed(7),
        (east / DEGREE_M).toFixed(7),
      ].join(","),
    );
    const lap = Math.min(areas.length - 1, Math.max(0, Math.floor(way_m / LAP_M)));
    for (let step = 0; step < STEPS_A_SECOND; step += 1) {
      const grade = (2 * Math.cos(way_m / RADIUS_M)) / RADIUS_M;
      const force_n =
        0.5 * DENSITY * areas[lap] * speed_m_s ** 2 +
        MASS_KG * GRAVITY * (ROLLING + grade) +
        0.091 +
        0.0087 * speed_m_s;
      speed_m_s += ((power_w * EFFICIENCY) / speed_m_s - force_n) / (MASS_KG + ROTATING_KG) / STEPS_A_SECOND;
      way_m += speed_m_s / STEPS_A_SECOND;
    }
  }
  return `${lines.join("\n")}\n`;
}
