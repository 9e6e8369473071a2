import type { FastenerKind } from '../model/fastener.ts';
import { foldText } from './heading-text.ts';
import { LOOSE_HARDWARE, PRESS_IN_WORDS } from './row-words.ts';

/**
 * Every kind of press-in fastener that a description could mean: "standoff" may be a through or a blind one, "nut" a fixed or a floating
 * one. Empty when it names none, or only other hardware ("weld nut").
 */
export function findKinds(description: string): readonly FastenerKind[] {
  if (!/\p{L}{3}/u.test(description)) return [];
  let rest = ` ${foldText(isPressIn(description) ? description : withoutLoose(description)).replace(/[^\p{L}\p{N}]+/gu, ' ')} `;
  const kinds = new Set<FastenerKind>();
  for (const { pattern, read } of KINDS) {
    const without = rest.replace(pattern, ' ');
    if (without !== rest) for (const kind of read(rest)) kinds.add(kind);
    rest = without;
  }
  return [...kinds];
}

function isPressIn(description: string): boolean {
  return PRESS_IN_WORDS.test(description);
}

function withoutLoose(description: string): string {
  return LOOSE_HARDWARE.reduce((text, { pattern }) => text.replace(pattern, ' '), description);
}

const BLIND = / (?:blind|closed|bld|sackloch|geschlossen\w*|borgnes?|aveugles?) /;
const THROUGH = / (?:thru|through|open|durchgang\w*|durchgehend\w*|traversante?s?|debouchante?s?) /;

function standoff(text: string): readonly FastenerKind[] {
  const isBlind = BLIND.test(text);
  const isThrough = THROUGH.test(text);
  if (isBlind === isThrough) return ['through standoff', 'blind standoff'];
  return isBlind ? ['blind standoff'] : ['through standoff'];
}

const FIXED = / (?:self )?(?:clinch\w*|press\w*) | einpress\w+ | a sertir | autosertissable/;

/** A bare nut may float; a clinch nut is the fixed one. */
function nut(text: string): readonly FastenerKind[] {
  if (/ non floating /.test(text)) return ['clinch nut'];
  if (/ (?:float\w*|schwimmend\w*|flottante?s?) /.test(text)) return ['floating nut'];
  return FIXED.test(text) || /压铆/.test(text) ? ['clinch nut'] : ['clinch nut', 'floating nut'];
}

interface KindWord {
  readonly pattern: RegExp;
  readonly read: (text: string) => readonly FastenerKind[];
}

/** What a word matches is gone for the next, so that compounds stand before their last part. */
const KINDS: readonly KindWord[] = [
  // Any nut in a cage or pressed in is called captive.
  { pattern: / captive nuts? /g, read: () => ['clinch nut', 'floating nut'] },
  {
    pattern:
      / captive (?:panel |thumb |spring loaded )*(?:screws?|fasteners?|bolts?) | (?:screws?|bolts?)(?: \w+)? captive | (?:panel|retained|retractable|spring loaded)(?: \w+)? (?:screws?|fasteners?) | unverlierbare schrauben? | vis (?:imperdables?|captives?) /g,
    read: () => ['captive screw'],
  },
  {
    pattern:
      / stand ?offs? | spacers? | (?:einpress|gewinde)?(?:abstands|distanz)(?:bolzen|buchsen?|halter|hulsen?) | entretoises? |压铆螺柱/g,
    read: standoff,
  },
  { pattern: / studs? | (?:einpress|gewinde|steh)?bolzen | goujons? |压铆螺钉/g, read: () => ['clinch stud'] },
  { pattern: / (?:\d+ )pins? | pin headers? /g, read: () => [] },
  { pattern: / pins? | (?:einpress|pass|fuhrungs)?stifte? | goupilles? | pions? /g, read: () => ['clinch pin'] },
  { pattern: / nuts? | (?:einpress)?muttern? | ecrous? | tuercas? |压?铆?螺母|ナット/g, read: nut },
];
