import type { FastenerMaterial } from '../model/fastener.ts';
import { FASTENER_WORDS, type Said } from './fastener-material-words.ts';

/**
 * The material of a fastener from a catalogue's or list's words: every entry of the table of fastener materials that the words
 * could mean. Vague words ("stainless", "steel") give several; a metal that is named but not in the table, and words that name
 * none, give none. A finish ("brass plated") is not taken for the metal.
 */
export function parseFastenerMaterial(text: string): FastenerMaterial {
  const tidied = tidy(text);
  const said = saidOf(tidied);
  const named = new Set<string>();
  const candidates = new Set<string>();
  let rest = tidied;
  for (const { metal, general, pattern, read } of FASTENER_WORDS) {
    const everywhere = new RegExp(pattern.source, 'g');
    const matches = [...rest.matchAll(everywhere)];
    if (matches.length === 0) continue;
    rest = rest.replace(everywhere, ' ');
    // "Stainless" beside "416" says nothing more than "416" does.
    if (general && named.has(metal)) continue;
    for (const match of matches) for (const id of read(said, match[1] ?? '')) candidates.add(id);
    named.add(metal);
  }
  return { text, candidates: [...candidates] };
}

const FINISH =
  /\b(?:ZINC|ZN|NICKEL|NI|CADMIUM|CAD|CHROM(?:E|IUM)|TIN|SILVER|BRASS|COPPER|CU)\s*(?:PLATED|PLATING|PLATE|PL|COATED|COATING|FLASH|CLAD|FINISH)\b|\bALUMINI?UM\s*FLAKE\b/g;

/** Upper case, one kind of dash, finishes taken away, and hyphens between words opened: "stainless-400-hardened". */
function tidy(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[‐-―−]/g, '-')
    .replace(/(?<=[A-Z]{2})[-_](?=[A-Z\d])|(?<=\d)[-_](?=[A-Z]{2})|_/g, ' ')
    .replace(FINISH, ' ');
}

const UNHARDENED =
  /\b(?:UN|NON|NOT|NO|WITHOUT)[\s-]*(?:HARDENED|HARDENING|HEAT[\s-]*TREAT\w*|TREATED)|\bUNGEH(?:Ä|AE)RTET\w*|\b(?:ANNEALED|SOFT|MILD|LOW CARBON|UNALLOYED|WEICH)\b/g;
const HARDENED =
  /(?<!\b(?:WORK|STRAIN|COLD|AGE)[\s-]*)\bHARD(?:ENED|END)\b|\bHEAT[\s-]*TREATED\b|\bHT\b|\bQ\s*(?:&|\+|AND)\s*T\b|\bQUENCHED\b|\b(?:GEH(?:Ä|AE)RTET|VERG(?:Ü|UE)TET)\w*|\bTREMP(?:É|E)\w*/;

/** Whether the words say that the metal is hardened; both or neither is no answer. */
function saidOf(text: string): Said {
  const withoutDenial = text.replace(UNHARDENED, ' ');
  const soft = withoutDenial !== text;
  const hardened = HARDENED.test(withoutDenial);
  if (soft === hardened) return 'nothing';
  return hardened ? 'hardened' : 'soft';
}
