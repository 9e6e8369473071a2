import { foldText } from '../intake/heading-text.ts';
import type { FastenerKind } from '../model/fastener.ts';

/** The kind of a fastener as suppliers write it: "self-clinching nut", "Nut, clinch", "standoff thru". Null: not one of ours. */
export function parseKind(text: string): FastenerKind | null {
  const words = ` ${foldText(text).replace(/[^\p{L}\p{N}]+/gu, ' ')} `;
  if (LOOSE.test(words) && !/clinch|press/.test(words)) return null;
  return KINDS.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
}

/** Nuts and studs that are not pressed in. */
const LOOSE = / (?:weld(?:ed|ing)?|rivet(?:ed)?|hex|lock|wing|cage|clip|blind rivet) (?:nut|stud)/;

/** Narrower kinds stand first. A standoff that does not say is a through one only if it says so. */
const KINDS: readonly (readonly [FastenerKind, RegExp])[] = [
  ['floating nut', / float(?:ing)?\b.* nut| nut .*float/],
  [
    'captive screw',
    / captive | panel (?:screw|fastener)| screw .*(?:captive|spring loaded|retain)|(?:spring loaded|retained) screw/,
  ],
  [
    'blind standoff',
    /(?:stand ?offs?|spacers?) .*(?:blind|closed)|(?:blind|closed)(?: end)? .*(?:stand ?offs?|spacers?)/,
  ],
  [
    'through standoff',
    /(?:stand ?offs?|spacers?) .*(?:thru|through|open)|(?:thru|through|open)(?: hole| end)? .*(?:stand ?offs?|spacers?)/,
  ],
  ['clinch pin', / (?:pins?|stift|goupille|pilot pin) /],
  ['clinch stud', / (?:studs?|bolzen|einpressbolzen|goujon) /],
  ['clinch nut', / (?:nuts?|mutter|einpressmutter|ecrou) |压铆螺母/],
];
