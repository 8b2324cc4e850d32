// @ts-check
/** How the story begins: what it is called in the state and in the address, and the numbers of its rider. */

/** @typedef {"speed_m_s" | "power_w" | "cda_m2" | "power_change" | "cda_change" | "begins_s" | "grade" | "headwind_m_s" | "climb_grade" | "budget"} Name */
/** @typedef {Record<Name, number>} Numbers */

export const ID = "start-here";

/** @type {Numbers} */
export const BEGAN = {
  speed_m_s: 8,
  power_w: 235,
  cda_m2: 0.24,
  power_change: 0.1,
  cda_change: -0.1,
  begins_s: 900,
  grade: 0,
  headwind_m_s: 0,
  climb_grade: 0.04,
  budget: 150,
};
