import { findForceUnit, findTorqueUnit } from '../catalogue/catalogue-units.ts';
import { parseNumber } from '../units/length.ts';

/** Loads that a text asks for. */
export interface AskedLoads {
  readonly pushOutN: number | null;
  readonly torqueOutNm: number | null;
  readonly tighteningNm: number | null;
}

/** A text that asks for none. */
const NONE: AskedLoads = { pushOutN: null, torqueOutNm: null, tighteningNm: null };

const NUMBER = String.raw`(?:\d[\d.,'’]*\d|\d|[.,]\d+)`;
const FORCE = String.raw`(?:kn|n|newtons?|klbf|kips?|lbf|lbs?|pounds?(?:[- ]force)?|kgf|kg)(?![·.*/-]?(?:m|cm|in|ft|feet|foot|inch)\b)(?! (?:m|cm|in|ft)\s*(?:$|[;,.)]))(?![\p{L}])`;
const TORQUE = String.raw`(?:n[ ·⋅.*-]?c?m|(?:in|inch|ft|foot|oz)[. ·⋅-]*(?:lbf?s?|pounds?|ozf?|in)|(?:lbf?s?|pounds?)[ ·⋅./-]*(?:in|inch|ft|foot|feet)|ozf?[ ·.-]*in)(?![\p{L}])`;
// Anything but a number, a new thought or another load.
const GAP = String.raw`(?:(?!torque|torsion|push|tighten|drehmoment|;)[^\d;]){0,32}?`;

const PUSH_OUT = String.raw`(?:push(?:ed)?[- ]?out|aus(?:press|dr[üu]e?ck)\p{L}*)`;
const TORQUE_OUT = String.raw`(?:tor(?:que|sion)[- ]?out|ausdreh\p{L}*|verdreh\p{L}*|couple d['’]arrachement)`;
const TIGHTEN = String.raw`(?:tighten(?:ed|ing)?(?: torque)?|torqued? to|torque(?: \p{L}+)? to|(?:an|fest)(?:zug|zieh)\p{L}*|(?:couple de )?serr(?:age|er))`;

const asked = (what: string, unit: string) => [
  new RegExp(String.raw`${what}${GAP}(${NUMBER}(?: ?(?:-|to|bis|…|\.\.) ?${NUMBER})?) ?(${unit})`, 'iu'),
  new RegExp(String.raw`(?<![\d.,])(${NUMBER}) ?(${unit})(?: (?:min(?:imum)?\.?|required))? ${what}`, 'iu'),
];
const ASKED = {
  pushOut: asked(PUSH_OUT, FORCE),
  torqueOut: asked(TORQUE_OUT, TORQUE),
  tightening: asked(TIGHTEN, TORQUE),
} as const;

/** Loads that a note asks for: each needs its name and its unit. */
export function findLoads(text: string): AskedLoads {
  if (!/\d/.test(text)) return NONE;
  return {
    pushOutN: loadIn(text, ASKED.pushOut, 'force'),
    torqueOutNm: loadIn(text, ASKED.torqueOut, 'torque'),
    tighteningNm: loadIn(text, ASKED.tightening, 'torque'),
  };
}

const UNNAMED =
  /^(?:(?:≥|>=?|min(?:imum|\.)?|at least|load|force|required|req['’]?d|axial|design|and|und|et|mind(?:estens|\.)?|in (?:steel|stainless|alumini?um|alu?|[0-9]{4}\S*)|[/,&+:=]|\s)*)$/i;
const ANY = new RegExp(String.raw`(?<![\d.,])(${NUMBER}) ?(?:(${TORQUE})|(${FORCE}))`, 'giu');

/**
 * Loads of a load cell, under its heading. A force there is the push-out asked for and a torque the torque-out, unless words beside it
 * say another load ("tension", "preload"); a bare number has no meaning without a unit in the heading.
 */
export function findCellLoads(cell: string, heading: string): AskedLoads {
  if (!/\d/.test(cell)) return NONE;
  const text = underHeading(cell, heading);
  const named = findLoads(text);
  if (Object.values(named).some((value) => value !== null) || !UNNAMED.test(text.replace(ANY, ' '))) return named;
  const all = [...text.matchAll(ANY)];
  const [force, ...forces] = all.filter(([, , , unit]) => unit);
  const [torque, ...torques] = all.filter(([, , unit]) => unit);
  return {
    pushOutN: force && forces.length === 0 ? loadOf(force[1], force[3], 'force') : null,
    torqueOutNm: torque && torques.length === 0 ? loadOf(torque[1], torque[2], 'torque') : null,
    tighteningNm: null,
  };
}

/** "Push-out (N)" over "400" reads "Push-out 400 N"; a heading that names no load of ours adds its unit alone. */
function underHeading(cell: string, heading: string): string {
  const [, words = heading, unit = ''] = /^(.*?)[([]\s*([^)\]]+?)\s*[)\]]\s*$/.exec(heading) ?? [];
  const own = parseNumber(cell.replace(/^(?:≥|>=?|min\.?)\s*/i, '')) === null ? cell : `${cell} ${unit}`;
  const [name = ''] = new RegExp(`${PUSH_OUT}|${TORQUE_OUT}|${TIGHTEN}`, 'iu').exec(words) ?? [];
  return `${name} ${own}`.trim();
}

function loadIn(text: string, patterns: readonly RegExp[], what: 'force' | 'torque'): number | null {
  const [, number, unit] = patterns.map((pattern) => pattern.exec(text)).find((match) => match !== null) ?? [];
  return loadOf(number, unit, what);
}

/** Newtons or newton metres; of a range the upper end, as the careful reading of what is asked. */
function loadOf(number: string | undefined, unit: string | undefined, what: 'force' | 'torque'): number | null {
  const factor = what === 'force' ? findForceUnit(unit ?? '') : findTorqueUnit(unit ?? '');
  const upper = number?.split(/ ?(?:-|to|bis|…|\.\.) ?/).at(-1) ?? '';
  // Nobody asks for newtons or pounds to a thousandth: in "1,200" and "1.200" the sign parts thousands.
  const isThousands = what === 'force' && factor !== null && factor < 1000 && /^[1-9]\d{0,2}[.,]\d{3}$/.test(upper);
  const value = parseNumber(isThousands ? upper.replace(/[.,]/, '') : upper);
  if (value === null || factor === null || value <= 0) return null;
  return Number((value * factor).toPrecision(9));
}
