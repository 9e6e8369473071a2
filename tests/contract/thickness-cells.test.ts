import { describe, expect, it } from 'vitest';
import { columnUnit } from '../../src/core/intake/column-unit.ts';
import type { SizeRole } from '../../src/core/intake/size-spans.ts';
import { type AroundUnit, parseThickness } from '../../src/core/intake/thickness.ts';
import type { ThicknessReading } from '../../src/core/model/thickness.ts';

const alone: AroundUnit = { unit: null, from: null };
const mmHeading: AroundUnit = { unit: 'mm', from: 'heading' };
const inchColumn: AroundUnit = { unit: 'in', from: 'column' };

type Expected = Partial<ThicknessReading>;

const gauge = (number: number, gaugeSystem: ThicknessReading['gaugeSystem'] = null): Expected => ({
  how: 'gauge',
  number,
  gaugeSystem,
  mm: null,
  writtenIn: 'gauge',
});
const mm = (value: number, unitFrom: ThicknessReading['unitFrom'] = 'cell'): Expected => ({
  how: 'length',
  mm: value,
  writtenIn: 'mm',
  unitFrom,
});
const inches = (value: number, unitFrom: ThicknessReading['unitFrom'] = 'cell'): Expected => ({
  how: 'length',
  mm: value,
  writtenIn: 'in',
  unitFrom,
});
const unreadable: Expected = { how: 'unreadable', mm: null, number: null };

describe('a thickness cell by itself', () => {
  it.each<[string, Expected]>([
    ['16 ga', gauge(16)],
    ['16GA', gauge(16)],
    ['16ga.', gauge(16)],
    ['16-ga', gauge(16)],
    ['#16', gauge(16)],
    ['No. 16', gauge(16)],
    ['16 gauge', gauge(16)],
    ['16 gage', gauge(16)],
    ['ga 16', gauge(16)],
    ['GA.16', gauge(16)],
    ['Cal. 16', gauge(16)],
    ['16g', gauge(16)],
    ['16 ga CRS', gauge(16)],
    ['16 ga stainless', gauge(16)],
    ['16 SWG', gauge(16, 'swg')],
    ['16 MSG', gauge(16, 'msg')],
    ['16 ga (MSG)', gauge(16, 'msg')],
    ['16 AWG', gauge(16, 'brown-sharpe')],
    ['16 B&S ga', gauge(16, 'brown-sharpe')],
    ['16 BWG', gauge(16, 'birmingham')],
    ['16 BG', gauge(16, 'birmingham-sheet')],
    ['16 ga galv', gauge(16, 'galvanized')],
    ['16 oz', { how: 'ounces', number: 16, writtenIn: 'ounces', mm: null }],
    ['20 oz/sq ft', { how: 'ounces', number: 20 }],
    ['.060', inches(1.524, 'column')],
    ['0.060"', inches(1.524)],
    ['.060 in.', inches(1.524)],
    ['THK .060', inches(1.524, 'column')],
    ['THK.060', inches(1.524, 'column')],
    ['1/8"', inches(3.175)],
    ['1/8', inches(3.175)],
    ['⅛ in', inches(3.175)],
    ['60 mil', inches(1.524)],
    ['1,5', mm(1.5, 'column')],
    ['1.5 mm', mm(1.5)],
    ['1.5mm', mm(1.5)],
    ['t=1.5', mm(1.5, 'column')],
    ['t1.5', mm(1.5, 'column')],
    ['1.5t', mm(1.5, 'column')],
    ['Dicke: 1,5 mm', mm(1.5)],
    ['1.5 mm thick', mm(1.5)],
    ['0.15 cm', mm(1.5)],
    ['1.5mm (16 ga)', mm(1.5)],
    ['16ga/1.5mm', mm(1.5)],
    ['16 ga = 1.5 mm', mm(1.5)],
    ['16 ga (.0598)', inches(1.51892)],
    ['16 ga (1.52)', mm(1.52)],
    ['.060" [1.5 mm]', inches(1.524)],
    ['1.5 [.059]', mm(1.5)],
    ['1.5±0.1', { ...mm(1.5, 'column'), toleranceMm: { plus: 0.1, minus: 0.1 } }],
    ['1.5 ±0.1 mm', { ...mm(1.5), toleranceMm: { plus: 0.1, minus: 0.1 } }],
    ['1.5 mm +/-0.1', { ...mm(1.5), toleranceMm: { plus: 0.1, minus: 0.1 } }],
    ['1.5 +0.1/-0.05', { ...mm(1.5, 'column'), toleranceMm: { plus: 0.1, minus: 0.05 } }],
    ['.060" ±.005', { ...inches(1.524), toleranceMm: { plus: 0.127, minus: 0.127 } }],
    ['16 ga ±.005', { ...gauge(16), toleranceMm: { plus: 0.127, minus: 0.127 } }],
    ['', { how: 'blank', mm: null }],
    [' — ', { how: 'blank', mm: null }],
  ])('“%s”', (text, expected) => {
    expect(parseThickness(text, alone)).toMatchObject({ text, ...expected });
  });

  it.each([
    '1.2-1.5',
    '1.2 - 1.5 mm',
    '1.5 or 2',
    '1.5 / 2',
    '0.060 / 0.063',
    '1.5 max',
    '16 ga (0.125)',
    '18 ga (1.5)',
    '16 or 18 ga',
    '16/18 ga',
    '1.6 ga',
    '1.5 ±10%',
    'T6',
    'thick',
    'TBD',
    '-1.5',
    '1e3',
    'M4',
    '16 steel',
  ])('“%s” is not guessed at', (text) => {
    expect(parseThickness(text, alone)).toMatchObject({ text, ...unreadable });
  });

  it.each([
    ['0.8', 20.32],
    ['1', 25.4],
    ['.5', 12.7],
    ['1,0', 25.4],
  ])('“%s” could be either unit', (text, otherMm) => {
    expect(parseThickness(text, alone)).toMatchObject({ how: 'ambiguous-unit', mm: null, otherMm, unitFrom: null });
  });

  it.each<[string, number, number | null]>([
    ['60 in', 1524, 1.524],
    ['1.5"', 38.1, 1.5],
    ['.060 mm', 0.06, 1.524],
    ['1.5 m', 1500, 1.5],
    ['1.5 mil', 0.0381, 1.5],
    ['15 mm', 15, null],
    ['16', 16, null],
    ['1-1/4', 31.75, 1.25],
    ['0', 0, null],
  ])('“%s” is no sheet', (text, mmAsWritten, otherMm) => {
    expect(parseThickness(text, alone)).toMatchObject({ how: 'impossible', mm: mmAsWritten, otherMm });
  });
});

describe('a bare number in its column', () => {
  it.each<[string, AroundUnit, Expected]>([
    ['0.8', mmHeading, mm(0.8, 'heading')],
    ['1', { unit: 'mm', from: 'list' }, mm(1, 'list')],
    ['.125', inchColumn, inches(3.175, 'column')],
    ['0.5', inchColumn, inches(12.7, 'column')],
    ['1.5', inchColumn, { how: 'impossible', mm: 38.1, otherMm: 1.5, writtenIn: 'in' }],
    ['60', inchColumn, { how: 'impossible', mm: 1524, otherMm: 1.524 }],
    ['16', inchColumn, { how: 'impossible', otherMm: null }],
    ['.060', mmHeading, { how: 'impossible', mm: 0.06, otherMm: 1.524, writtenIn: 'mm' }],
    ['.060"', mmHeading, inches(1.524)],
    ['1.5 mm', inchColumn, mm(1.5)],
    ['1/8', mmHeading, inches(3.175)],
    ['1/4', mmHeading, { how: 'ambiguous-unit', mm: null, otherMm: 6.35 }],
    ['16 ga', mmHeading, gauge(16)],
    ['16 ga (0.5)', inchColumn, unreadable],
    ['16', { unit: null, from: 'heading' }, { ...gauge(16), unitFrom: 'heading' }],
    ['0.15', { unit: null, from: 'heading' }, { how: 'ambiguous-unit', mm: null }],
  ])('“%s” (%o)', (text, around, expected) => {
    expect(parseThickness(text, around)).toMatchObject({ text, ...expected });
  });
});

describe('the unit of a column', () => {
  it.each<[string, 'mm' | 'in']>([
    ['Thickness (mm)', 'mm'],
    ['Thk [mm]', 'mm'],
    ['thicknessMm', 'mm'],
    ['Dicke/mm', 'mm'],
    ['板厚(毫米)', 'mm'],
    ['Distance in mm', 'mm'],
    ['Gauge (mm)', 'mm'],
    ['Thk (in)', 'in'],
    ['Thk [in]', 'in'],
    ['Thk in.', 'in'],
    ['THK_IN', 'in'],
    ['Thickness, inches', 'in'],
    ['Thk (in.)', 'in'],
    ['Thk "', 'in'],
    ['Stärke Zoll', 'in'],
    ['Thk (mils)', 'in'],
  ])('stands in the heading “%s”, whatever the cells look like', (heading, unit) => {
    expect(columnUnit(heading, ['1.5', '.060'], 'thickness')).toEqual({ unit, from: 'heading' });
  });

  it.each<[SizeRole, string[], 'mm' | 'in' | null]>([
    ['thickness', ['.060', '.125'], 'in'],
    ['thickness', ['1.5', '2'], 'mm'],
    ['thickness', ['0.8', '1', '1.5'], 'mm'],
    ['thickness', ['0.8', '1'], null],
    ['thickness', ['1', '1', '1'], null],
    ['thickness', ['0,8', '1'], 'mm'],
    ['thickness', ['.5', '.25'], 'in'],
    ['thickness', ['0.250', '0.5'], 'in'],
    ['thickness', ['0.8', '1.0 mm'], 'mm'],
    ['thickness', ['.060', '1.5'], null],
    ['thickness', ['.060', '.060', '.125', '.090', '1.5'], 'in'],
    ['thickness', ['16 ga', '', 'see drawing'], null],
    ['thickness', ['t=1.5', '2±0.1'], 'mm'],
    ['hole', ['5.6', '4.2'], 'mm'],
    ['hole', ['.221', '.166'], 'in'],
    ['hole', ['1', '1.2'], null],
    ['hole', ['1/4', '1'], 'in'],
    ['edge', ['6', '7.5'], 'mm'],
    ['edge', ['.25', '.31'], 'in'],
    ['edge', ['2', '2.5'], null],
    ['spacing', ['12', '20'], 'mm'],
    ['bend', ['0.3'], 'in'],
    ['length', ['8', '10'], 'mm'],
    ['length', ['.250', '.5'], 'in'],
    ['length', [], null],
  ])('of a %s column %j is %s', (role, texts, unit) => {
    expect(columnUnit('Value', texts, role)).toEqual({ unit, from: unit === null ? null : 'column' });
  });

  it('is not taken from the word "in" of a sentence, nor from a heading that names both', () => {
    expect(columnUnit('Holes in panel', ['5.6'], 'hole')).toEqual({ unit: 'mm', from: 'column' });
    expect(columnUnit('Thk mm (in)', ['.060'], 'thickness')).toEqual({ unit: 'in', from: 'column' });
  });

  it('is neither in a column of gauges or centimetres', () => {
    expect(columnUnit('Gauge', ['16', '18', '20 ga'], 'thickness')).toEqual({ unit: null, from: 'heading' });
    expect(columnUnit('Thickness (cm)', ['0.15'], 'thickness')).toEqual({ unit: null, from: 'heading' });
    expect(columnUnit('Gauge', ['1.5', '2'], 'thickness')).toEqual({ unit: 'mm', from: 'column' });
  });
});
