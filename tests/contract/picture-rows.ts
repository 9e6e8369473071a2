import fc from 'fast-check';
import { FASTENER_KINDS, type Fastener } from '../../src/core/model/fastener.ts';
import type { PicturedRow } from '../../src/core/picture/pictured-row.ts';
import { rowFor } from './picture-cases.ts';

/** Numbers of a part, each of which may be missing; sizes as they occur, and some that do not. */
const mm = (least: number, most: number) =>
  fc.option(fc.double({ min: least, max: most, noNaN: true, noDefaultInfinity: true }), { nil: null });
const parts: fc.Arbitrary<Partial<Fastener>> = fc.record({
  kind: fc.option(fc.constantFrom(...FASTENER_KINDS), { nil: null }),
  thread: fc.constantFrom('M4', 'M3', '8-32', '#8', null),
  lengthMm: mm(0, 60),
  sheetMinMm: mm(0.1, 6),
  sheetMaxMm: mm(0.1, 20),
  shankMm: mm(0, 6),
  flush: fc.constantFrom(true, false, null),
  holeMm: mm(0.5, 30),
  holePlusMm: mm(0, 0.5),
  holeMinusMm: mm(0, 0.5),
  edgeMm: mm(0, 60),
  spacingMm: mm(0, 60),
  flangeMm: mm(0, 40),
  heightMm: mm(0, 40),
});
const length = (least: number, most: number) =>
  fc.oneof(
    fc.constant(''),
    fc.constant('as drawn'),
    fc.double({ min: least, max: most, noNaN: true }).map((value) => value.toFixed(3)),
  );
const cells = fc.record({
  thickness: length(0.2, 20),
  hole: length(0.6, 40),
  edge: length(1, 200),
  spacing: length(1, 200),
  bend: length(1, 200),
  material: fc.constantFrom('DC01', '304', 'ALUM', 'SS', '', 'see drawing', '5052-H32', 'Ti Gr2', 'brass'),
  finish: fc.constantFrom('', 'sheet: powder coat 80 um, press after coating'),
});

/** Rows with any facts missing, on any sheet. */
export const rows: fc.Arbitrary<PicturedRow> = fc.record({ part: parts, cells }).map(rowFor);
