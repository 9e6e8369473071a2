/** What stands wherever results leave the tool, in one short and one full form. */
export const SAFETY_SHORT =
  "Screens lists; does not approve joints. Check the maker's data, test on the actual sheet, and have the responsible engineer sign.";

/** What stands on every page that goes to a press. */
export const PRESS_WORDS =
  'Presses: guards, two-hand controls, eye protection, never a hammer; follow the press maker and local rules.';

export const SAFETY_WORDS: readonly string[] = [
  'Clinchsheet screens lists; it does not approve joints.',
  "Typical or catalogue values are not a substitute for the maker's data, a push-out and torque-out test on the actual sheet, first-piece inspection, or the sign-off of the responsible engineer.",
  'Anything that can hurt someone if it lets go (lifting, guarding, seating, vehicles, pressure, mains earth bonding) needs qualified design and the local codes.',
  PRESS_WORDS,
];

/** Said in every output that was made with invented catalogue data. */
export const DEMO_WORDS = 'Judged by the demo catalogue: invented data, not for production.';
