import { holeGradeLimits } from '../calc/hole-grade.ts';
import type { HoleReading } from '../model/hole.ts';
import { type LengthWord, mmOf, parseLength } from '../units/length.ts';
import { splitDeviations } from './deviations.ts';
import { parseDrill } from './drill-cell.ts';
import { placeLength } from './possible-size.ts';
import type { Span } from './size-spans.ts';
import { isBlankCell, plainCell, withoutHoleWords } from './size-words.ts';
import type { AroundUnit } from './thickness.ts';

/** Holes of press-in fasteners, in mm: a diameter outside is not believed. Common practice, no source. */
const POSSIBLE_HOLE_MM: Span = [0.8, 40];

/**
 * Reads a hole cell: a diameter with or without unit, fraction, number or letter drill, with a count before or behind, and with a
 * tolerance in any usual form, an ISO class or two limits. Of two limits the smaller is the nominal, as a press-in hole is called
 * out. Never a guess: what is not wholly understood is `unreadable`, a tolerance included, because a hole without its tolerance
 * would be judged by its nominal. `mm` is null but for `size`, and for `impossible` what it would be.
 */
export function parseHole(text: string, around: AroundUnit): HoleReading {
  const plain = plainCell(text);
  if (isBlankCell(plain)) return reading(text, { how: 'blank' });
  return reading(text, readWords(plain, around) ?? readTwice(plain) ?? { how: 'unreadable' });
}

/** Limits of a hole lie closer than this ratio; what lies further apart was written for something else. */
const CLOSE = 1.25;

type Known = Partial<HoleReading> & Pick<HoleReading, 'how'>;

function reading(text: string, known: Known): HoleReading {
  return { text, mm: null, lowMm: null, highMm: null, writtenIn: null, unitFrom: null, otherMm: null, ...known };
}

function readWords(plain: string, around: AroundUnit): Known | null {
  const cell = withoutHoleWords(plain);
  for (const read of [readNominal, readGrade, readLimits, readDeviations]) {
    const known = read(cell, around);
    if (known) return known;
  }
  return readNominal(plain, around);
}

function readNominal(cell: string, around: AroundUnit): Known | null {
  const drill = parseDrill(cell);
  if (drill) {
    const possible = drill.mm >= POSSIBLE_HOLE_MM[0];
    return { how: possible ? 'size' : 'impossible', ...drill, unitFrom: 'cell' };
  }
  const length = parseLength(cell);
  if (!length || length.value <= 0) return null;
  const { unit, ...placed } = placeLength(length, around, POSSIBLE_HOLE_MM);
  return { ...placed, writtenIn: length.fraction ? 'fraction' : unit };
}

function readGrade(cell: string, around: AroundUnit): Known | null {
  const [, nominal = '', letters = '', grade] = /^(.*\d(?: ?mm)?) ?\(?(H|JS) ?(\d{1,2})\)?$/.exec(cell) ?? [];
  const known = nominal === '' ? null : readNominal(nominal, around);
  if (known?.how !== 'size') return known;
  const limits = holeGradeLimits(known.mm ?? Number.NaN, letters, Number(grade));
  return limits && withLimits(known, limits.lowMm, limits.highMm);
}

function readDeviations(cell: string, around: AroundUnit): Known | null {
  const found = splitDeviations(cell);
  if (!found) return null;
  const { nominal, lower, upper, unit } = found;
  const own = unit !== null && parseLength(nominal)?.unit === null ? `${nominal} ${unit}` : nominal;
  const known = readNominal(own, around);
  if (known?.how !== 'size' || typeof known.mm !== 'number') return known;
  const word: LengthWord = unit ?? (known.writtenIn === 'mm' ? 'mm' : 'in');
  return withLimits(known, known.mm + mmOf(lower, word), known.mm + mmOf(upper, word));
}

const LIMITS = /^([\d.,]+)( ?(?:mm|in\b\.?|"))? ?(?:-|\/|to|\.{2,3}|…) ?([\d.,]+)( ?(?:mm|in\b\.?|"))?$/i;

// "5.6-0.08" is a deviation and "4-12" no hole.
function readLimits(cell: string, around: AroundUnit): Known | null {
  const [, one, unitOne, other, unitOther] = LIMITS.exec(cell) ?? [];
  if (one === undefined || other === undefined) return null;
  const unit = unitOther ?? unitOne ?? '';
  const known = [readNominal(one + (unitOne ?? unit), around), readNominal(other + unit, around)];
  const [low, high] = known
    .flatMap((each) => (typeof each?.mm === 'number' ? [{ ...each, mm: each.mm }] : []))
    .sort((a, b) => a.mm - b.mm);
  if (!low || !high) return known.find((each) => each?.how === 'ambiguous-unit') ?? null;
  if (high.mm / low.mm >= CLOSE) return null;
  const doubtful = [low, high].find((each) => each.how !== 'size');
  return doubtful ?? withLimits(low, low.mm, high.mm);
}

function withLimits(known: Known, lowMm: number, highMm: number): Known | null {
  const [low, high] = [lowMm, highMm].map((mm) => Number(mm.toPrecision(12)));
  return low !== undefined && high !== undefined && low > 0 && high >= low && high / low < CLOSE
    ? { ...known, lowMm: low, highMm: high }
    : null;
}

// The same size twice, in both units: "5.60 (.220)", "#8 (.199)". The first counts, and their agreement tells its unit.
function readTwice(plain: string): Known | null {
  const [, first, second] = /^(.+?) ?[([](.+)[)\]]$/.exec(plain) ?? [];
  if (first === undefined || second === undefined) return null;
  for (const [one, other] of [
    ['mm', 'in'],
    ['in', 'mm'],
    ['in', 'in'],
  ] as const) {
    const known = readWords(first, { unit: one, from: 'cell' });
    const again = readWords(second, { unit: other, from: 'cell' });
    if (known?.how === 'size' && Math.abs((known.mm ?? Number.NaN) / (again?.mm ?? Number.NaN) - 1) <= 0.01)
      return known;
  }
  return null;
}
