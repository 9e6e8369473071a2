import type { Answerable } from '../rollup/about.ts';

const YES = /^(?:yes|yep|yeah|ok|okay|agreed|confirmed|ja|oui|s[iíì])[\s.!]*$/i;
/** How questions offer a value (see rollup/ask-texts), and the value as a cell says it. */
const OFFERS: Partial<Record<Answerable, readonly [RegExp, (value: string) => string]>> = {
  hole: [/(?:Will it be|May it be called out as) ([^?]+)\?$/, (callOut) => callOut],
  edge: [/Is it at least ([^?]+?) from hole centre to edge\?$/, (least) => `${least} min`],
};

/** What an answer says of the fact that its question asks for: for a plain "yes" the value that the question offers. */
export function withOffer(answer: string, about: Answerable, question: string): string {
  const offer = OFFERS[about];
  const offered = YES.test(answer) && offer?.[0].exec(question)?.[1];
  return offer && offered ? offer[1](offered) : answer;
}
