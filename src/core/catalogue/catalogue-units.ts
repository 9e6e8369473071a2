/** Newtons in a pound-force, exact by definition (0.453 592 37 kg at 9.806 65 m/s²). */
const N_PER_LBF = 4.4482216152605;
/** Newton metres in an inch pound-force. */
const NM_PER_IN_LBF = N_PER_LBF * 0.0254;

type Units = readonly (readonly [pattern: RegExp, factor: number])[];

/** Newtons per unit; "lbs" for force is common practice, no source. */
const FORCE_UNITS: Units = [
  [/(?<![a-z])(?:kn|kilonewtons?)(?![a-z])|kn$/, 1000],
  [/(?<![a-z])(?:klbf?s?|kips?)(?![a-z])/, N_PER_LBF * 1000],
  [/(?<![a-z])(?:lbf|lbs?|lb-?f|pounds?(?: ?force)?)(?![a-z])/, N_PER_LBF],
  [/(?<![a-z])(?:kgf|kg)(?![a-z])/, 9.80665],
  [/(?<![a-z])(?:n|newtons?)(?![a-z])/, 1],
];

const TORQUE_UNITS: Units = [
  [
    /(?<![a-z])(?:ft|foot)[ ·.-]?(?:lbf?s?|pounds?)|(?:lbf?s?|pounds?)[ ·./-]?(?:ft|feet|foot)(?![a-z])/,
    NM_PER_IN_LBF * 12,
  ],
  [/(?<![a-z])(?:oz|ozf)[ ·.-]?in|in[ ·.-]?ozf?(?![a-z])/, NM_PER_IN_LBF / 16],
  [/(?<![a-z])(?:in|inch)\.?[ ·.-]?(?:lbf?s?|pounds?)|(?:lbf?s?|pounds?)[ ·./-]?in(?![a-z])/, NM_PER_IN_LBF],
  [/(?<![a-z])n[ ·.*-]?cm(?![a-z])/, 0.01],
  [/(?<![a-z])n[ ·.*-]?m(?![a-z])/, 1],
];

/** Newtons per unit that a heading or cell names ("Force (lbf)", "12 kN"); null when it names none. */
export function findForceUnit(text: string): number | null {
  return find(text, FORCE_UNITS);
}

/** Newton metres per unit that a heading or cell names ("Torque-out (in-lb)"); null when it names none. */
export function findTorqueUnit(text: string): number | null {
  return find(text, TORQUE_UNITS);
}

function find(text: string, units: Units): number | null {
  const plain = text.normalize('NFKC').toLowerCase().replaceAll('⋅', '·').replaceAll('•', '·');
  return units.find(([pattern]) => pattern.test(plain))?.[1] ?? null;
}
