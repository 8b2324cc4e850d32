// @ts-check
/** Seconds rounded so that what is on the screen adds up: the answer first, then the smaller saving; the larger is their sum. */

/**
 * @param {number} difference_s how much more the first choice saves than the second
 * @param {number} first_s what the first saves
 * @param {number} second_s what the second saves
 * @returns {{ difference_s: number, first_s: number, second_s: number }} whole seconds with `first_s − second_s = difference_s`
 */
export function savingsThatAddUp(difference_s, first_s, second_s) {
  const whole_s = Math.abs(difference_s) < 1 ? 0 : Math.round(difference_s);
  if (whole_s >= 0)
    return { difference_s: whole_s, second_s: Math.round(second_s), first_s: Math.round(second_s) + whole_s };
  return { difference_s: whole_s, first_s: Math.round(first_s), second_s: Math.round(first_s) - whole_s };
}
