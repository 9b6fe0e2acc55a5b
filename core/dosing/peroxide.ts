/** g H2O2 in a mL of a 3 % solution by weight; density 1.01 g/mL from memory. Check: 30.3 mg per mL. */
export const H2O2_G_PER_ML = 0.03 * 1.01;

/** Stronger than what is sold as 3 %: nothing is worked out for it, since a slip burns people and kills a tank. */
export const MOST_PERCENT = 3.5;
