import type { NamedGauge } from '../model/thickness.ts';

/** A gauge number, with its system where the cell names one. */
export interface GaugeCell {
  readonly gauge: number;
  readonly system: NamedGauge | null;
}

/**
 * Reads a gauge number: `16 ga`, `16GA`, `#16`, `16 gauge`, `ga 16`, `GA.16`, `16g`, `16 SWG`, `16 ga galv`, `16 AWG`. Names of other
 * metals beside it say nothing about the system. Null for anything else, `16` alone included.
 */
export function parseGauge(text: string): GaugeCell | null {
  const plain = text.toLowerCase().trim();
  const [, sign, number, behind] = /^(#|no\.?|nr\.?)?\s*(\d{1,2})(?![\d.,/])[\s-]*(.*)$/.exec(plain) ?? [];
  if (number !== undefined) return fromWords(Number(number), behind ?? '', sign !== undefined);
  const [, before, last] = /^([a-z&][a-z&\s.]*?)[\s.:#-]*(\d{1,2})$/.exec(plain) ?? [];
  return last !== undefined ? fromWords(Number(last), before ?? '', false) : null;
}

/** Reads sheet named by weight: `16 oz`, `16 oz/sq ft`. Null for anything else. */
export function parseOunces(text: string): number | null {
  const [, ounces] =
    /^(\d{1,2})[\s-]*(?:oz|ounces?)\.?(?:\s*(?:\/|per)\s*(?:sq\.?\s*ft|ft2|ft²|sf))?\.?$/i.exec(text.trim()) ?? [];
  return ounces === undefined ? null : Number(ounces);
}

const GAUGE_WORDS = new Set(['ga', 'gage', 'gauge', 'gauges', 'gge', 'g', 'cal', 'calibre', 'caliber', 'jauge']);

const SYSTEM_WORDS: ReadonlyMap<string, NamedGauge> = new Map([
  ['msg', 'msg'],
  ['usg', 'us-standard'],
  ['uss', 'us-standard'],
  ['us', 'us-standard'],
  ['awg', 'brown-sharpe'],
  ['b&s', 'brown-sharpe'],
  ['bwg', 'birmingham'],
  ['stubs', 'birmingham'],
  ['swg', 'swg'],
  ['iswg', 'swg'],
  ['bg', 'birmingham-sheet'],
  ['zinc', 'zinc'],
  ['galv', 'galvanized'],
  ['galvanized', 'galvanized'],
  ['galvanised', 'galvanized'],
  ['galvannealed', 'galvanized'],
  ['gi', 'galvanized'],
]);

// Words that may stand beside a gauge without changing what it means.
const SILENT_WORDS = new Set(
  'std standard sheet metal nom nominal thk thick steel crs hrs hrpo cr hr cs ms stainless ss sst al alum aluminum aluminium copper cu brass bronze'.split(
    ' ',
  ),
);

function fromWords(gauge: number, text: string, hashed: boolean): GaugeCell | null {
  const words = text.split(/[\s.()#:-]+/).filter((word) => word !== '');
  if (!words.every((word) => GAUGE_WORDS.has(word) || SYSTEM_WORDS.has(word) || SILENT_WORDS.has(word))) return null;
  const system = words.map((word) => SYSTEM_WORDS.get(word)).find((named) => named !== undefined) ?? null;
  const saysGauge = hashed || words.some((word) => GAUGE_WORDS.has(word) || GAUGE_NAMES.has(word));
  return saysGauge ? { gauge, system } : null;
}

// Names that say "gauge" by themselves; "16 zinc" or "16 galv" do not.
const GAUGE_NAMES = new Set(['msg', 'usg', 'uss', 'awg', 'bwg', 'swg', 'iswg', 'bg']);
