import type { Alone, Line } from '../compare-table.ts';

const NAMES = 'names hold no number: that each is read as it should be is tested with the aliases';

/** Outside tables that no table of the product repeats, and why. */
export const outsideWithoutTable: Readonly<Record<string, string>> = {
  'a370-line-fits': 'formulas that check the steel table',
  'steel-tables-compared': 'two tables of the product against each other, calculated',
  'twenty-points': 'worked results of the hardness margin',
  'gauge-constants': 'constants of the gauge laws, from which tables are checked',
  'gauge-16': 'the same gauge in seven systems, worked from other tables',
  'gauges-mm': 'gauges turned into millimetres',
  'zinc-gauge': 'the product has no zinc gauge',
  'strip-areas-computed': 'worked results of the stripping formula',
  'strip-areas-per-mm': 'worked results of the stripping formula',
  'torque-example': 'worked results of the torque formula',
  'torque-examples-more': 'worked results of the torque formula',
  setback: 'worked results of the bend formula',
  'galvanic-pairs': 'worked results of the galvanic screen',
  'anodic-index-other-lists': 'shorter lists that differ; the notes of the index tell how',
  'process-temperatures': 'told in the words of the order of work and of the baking table',
  'sampling-zero': 'worked results of zero-acceptance sampling',
  aliases: NAMES,
  'temper-words': NAMES,
  'alias-traps': NAMES,
  misspellings: NAMES,
};

/** Tables of the product without an outside copy, and why. */
export const tableWithoutCopy: Readonly<Record<string, string>> = {
  'family-table': 'a spoken rule of the trade with no document; a test of its own spells it out',
  'austenitic-outside-standard': 'names two tables, holds no number',
  'en-485-4-groups': 'a list of alloys in two groups, without a measure',
  'preload-practice': 'two shares of the handbooks, in words',
  'thread-minimum-engagement': 'two rules of one specification, in words',
  'punching-limits': 'rules of a design guide and of the trade, in words',
  'galvanic-rules': 'rules in words, without a number',
  'order-of-work': 'rules in words, without a number',
  'test-definitions': 'definitions in words, without a number',
  'press-in-documents': 'titles of documents, without a number',
  'aliases-aluminium': NAMES,
  'aliases-carbon-steel': NAMES,
  'aliases-coated-steel': NAMES,
  'aliases-stainless': NAMES,
  'aliases-other-metals': NAMES,
};

/** Columns with values that no table of the product carries, by outside table. */
export const columnsLeftOut: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  scatter: { unit: 'points of Rockwell B throughout, or per cent where the product says so' },
  'mill-us-steel': { cr_tol_other_in: 'the other of two trade tables, told in the note' },
  'iso-coarse-diameters': { stress_area_mm2: 'calculated; the product keeps the printed areas' },
  'unified-basic': { pitch_mm: 'follows from the threads per inch' },
  'number-drills': { rounded_in: 'how one of two texts rounds, told in the note' },
  'anodic-index': { other_index_v: 'what another text says, told in the notes of the rows' },
};

/** Fields with numbers that no outside table has, by table of the product. */
export const fieldsLeftOut: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'screw-proof-iso-898-1': { proofStressMpa: 'from memory, written down once' },
};

/** Rows of the product that no outside table has, by table. */
export const rowsLeftOut: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'fastener-materials': {
    'stainless-ph': 'two points below condition H900, a judgement',
    brass: 'a class without a hardness',
    bronze: 'a class without a hardness',
  },
};

const BEYOND_HARDNESS: Alone<Line> = {
  of: ({ what = '' }) => /^(rm|proof|typ)$/.test(what),
  reason: 'strength and typical hardness: the product keeps limits of hardness, and tells the rest in notes',
};

/** Lines that no table of the product carries, by outside table. */
export const linesLeftOut: Readonly<Record<string, Alone<Line>>> = {
  'fastener-materials-steel': BEYOND_HARDNESS,
  'fastener-materials-stainless': BEYOND_HARDNESS,
  'fastener-materials-nonferrous': BEYOND_HARDNESS,
  'sheet-alloys-aluminium': { of: () => true, reason: 'the alloys are looked up number by number' },
};
