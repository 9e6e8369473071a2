import type { LengthUnit } from '../model/list.ts';

/** A heading reduced to plain words: abbreviations written out, no case, no punctuation, its length unit set apart. */
export interface HeadingText {
  /** Canonical words, single spaces between; `/` stands where the heading joins two things. */
  readonly words: string;
  /** The words as they are spelt, for headings in other languages. */
  readonly spelt: readonly string[];
  readonly unit: LengthUnit | null;
}

/** Reads a heading. `Thk (in)` gives "thickness" and inches; words that are no abbreviation stay as they are. */
export function headingText(heading: string): HeadingText {
  const plain = foldText(splitCamelCase(heading.normalize('NFKC')));
  const { rest, unit } = takeUnit(plain);
  const spelt = speltWords(rest);
  return { words: canonicalWords(spelt), spelt, unit };
}

/** Text for comparing: full-width and accented letters made plain, invisible signs and case dropped, blanks run together. */
export function foldText(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060\ufeff]/g, '')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .normalize('NFC')
    .replaceAll('ß', 'ss')
    .replaceAll('ł', 'l')
    .replace(/[‘’´`]/g, "'")
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

function splitCamelCase(text: string): string {
  return text.replace(/(\p{Ll}{2})(\p{Lu})/gu, '$1 $2');
}

const UNIT_WORDS: readonly (readonly [LengthUnit, string])[] = [
  ['mm', 'mm|millim(?:et(?:er|re)s?|etri|etros)|毫米|ミリ'],
  ['in', "in\\.?|inch(?:es)?|\"|”|''|zoll|pouces?|pulgadas?|pollici|polegadas?|英寸|インチ"],
];

function takeUnit(text: string): { rest: string; unit: LengthUnit | null } {
  for (const [unit, words] of UNIT_WORDS) {
    const inBrackets = new RegExp(`[([{]\\s*(?:in\\s+)?(?:${words})\\s*[)\\]}]`);
    const atEnd = new RegExp(`(?:^|[\\s,/;:-])\\s*(?:in\\s+)?(?:${words})$`);
    const match = inBrackets.exec(text) ?? (isPlaceWord(text) ? null : atEnd.exec(text));
    if (match) return { rest: text.replace(match[0], ' '), unit };
  }
  return { rest: text, unit: null };
}

/** "Used in" and "goes in" end in a preposition, not in a unit. */
function isPlaceWord(text: string): boolean {
  return /\b(?:used|goes|installed|mounted|pressed|sits|qty|quantity) in$/.test(text);
}

const OTHER_UNITS = /[([{]\s*(?:k?n|lbs?f?|k?g|n·?m|hr[bc]|hv|usd|eur|gbp|[€$£]|°)\s*[)\]}]/g;

function speltWords(text: string): readonly string[] {
  return text
    .replace(OTHER_UNITS, ' ')
    .replace(/\bp\s*\/\s*n\b/g, ' part no ')
    .replace(/\bu\s*\/\s*m\b/g, ' unit of measure ')
    .replace(/\bc\s*\/\s*l\b/g, ' centre ')
    .replace(/\bc(?:\s*[-/]\s*|\s+to\s+)c\b/g, ' centre to centre ')
    .replace(/[øØ⌀∅]/g, ' dia ')
    .replaceAll("'", '')
    .replaceAll('#', ' no ')
    .replace(/[/&+|]/g, ' / ')
    .replace(/[^\p{L}\p{N}/]+/gu, ' ')
    .trim()
    .split(' ');
}

function canonicalWords(spelt: readonly string[]): string {
  return spelt
    .map(writtenOut)
    .join(' ')
    .replace(/ no no\b/g, ' no')
    .replace(/^[/ ]+|[/ ]+$/g, '');
}

/** An abbreviated word of English in full; other words as they are. */
export function writtenOut(word: string): string {
  return ABBREVIATIONS.get(word) ?? word;
}

const ABBREVIATIONS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    'part no': 'pn partno partnum partnumber partnr prtno partid',
    'manufacturer part no': 'mpn mfgpn mfrpn',
    'supplier part no': 'spn vpn',
    manufacturer: 'mfg mfr manf manuf mfgr manufacturers manufactured mnfr',
    no: 'nos num numb nbr nr number numbers',
    'item no': 'itemno itemnumber itemnr',
    quantity: 'qty qtys qnty qnt quan quant quantities quentity qtty qy',
    'quantity required': 'qtyreq qtyreqd',
    material: 'matl mtl mat matrl mater materials mtrl',
    thickness: 'thk thick thkness thck thicknesses thkn',
    gauge: 'ga gage gauges gages gge',
    'sheet thickness': 'sheetthickness sheetthk',
    dia: 'diam diameter',
    mounting: 'mtg mntg mount mtng mnt',
    distance: 'dist dst distances',
    assembly: 'assy asm asy assemb assemblies assys',
    'sub assembly': 'subassy subassembly subasm',
    required: 'reqd req requirement needed need rqd',
    description: 'desc descr descrip descript descriptions dscr',
    fastener: 'fstnr fastnr fasteners hdw hdwr hdwe hardware',
    thread: 'thd thrd threads thds threading',
    length: 'lg len lgth lgt lenght lengths',
    size: 'sz sizes',
    minimum: 'min mini',
    maximum: 'max maxi',
    nominal: 'nom',
    tolerance: 'tol',
    centre: 'ctr center centers centres centreline centerline cl',
    hole: 'holes',
    pieces: 'pcs pc piece pces',
    sheet: 'sht sheets',
    panel: 'pnl panels',
    supplier: 'supp supplr suppllier spplier suppliers',
    vendor: 'vend vendors',
    specification: 'spec specs',
    level: 'lvl lev levels',
    position: 'pos posn positions',
    catalog: 'cat catalogue',
    'unit of measure': 'uom',
    product: 'prod products',
    component: 'comp components cmpt',
    finish: 'finishes fin',
    treatment: 'treat trtmt',
  }).flatMap(([word, shorts]) => shorts.split(' ').map((short) => [short, word] as const)),
);
