import { isDenied } from './facts-negation.ts';
import { FASTENER } from './facts-steps.ts';

const ASSEMBLY = String.raw`(?:sub-?)?(?:assembl(?:y|ies)|assys?)(?!\p{L})`;
const ASSEMBLY_BEHIND = new RegExp(
  String.raw`^ (?:of )?(?:(?:the|complete|entire|whole|finished|full) )*${ASSEMBLY}(?! (?:${FASTENER}|screws?|bolts?|drawing|dwg|line|instructions?|steps?|kits?|fixtures?|tools?)\b)`,
  'iu',
);
const AS_ASSEMBLY = new RegExp(
  String.raw`^ as (?:an? |one )?(?:(?:complete|finished|whole) )?(?:${ASSEMBLY}|unit\b)`,
  'iu',
);
const ASSEMBLY_BEFORE = new RegExp(
  String.raw`(?<!(?:${FASTENER}|screws?|bolts?) )(?<![\p{L}-])${ASSEMBLY}(?: ?[:=]|(?: is| are)? to be| is| are| (?:shall|must|should|will) be)(?: completely| fully)? ?$`,
  'iu',
);

/** Whether the finish at a place in a sentence is put on the assembly: "nickel plate complete assembly", "assembly to be zinc plated". */
export function isFinishedAsAssembly(
  sentence: string,
  { start, end }: { readonly start: number; readonly end: number },
): boolean {
  const before = sentence.slice(0, start);
  const behind = sentence.slice(end);
  if (isDenied(before, behind)) return false;
  return isDone(sentence.slice(start, end), behind) || ASSEMBLY_BEFORE.test(before);
}

/** The verb with its object; a "zinc plated assembly" may be one of plated parts, and a "plating assembly" a machine. */
function isDone(words: string, behind: string): boolean {
  if (AS_ASSEMBLY.test(behind)) return true;
  const isVerb = /(?:plat|anodi[sz]|galvani[sz]|passivat|phosphat)e$|(?:coat|paint|film|black oxide)$/i.test(words);
  return (isVerb || /^ of /i.test(behind)) && ASSEMBLY_BEHIND.test(behind);
}
