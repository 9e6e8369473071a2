import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../src/core/intake/quantity.ts';
import { findOther, seemsToBe } from '../../src/core/intake/rows.ts';
import { findThreads, threadSystem } from '../../src/core/intake/thread-words.ts';
import type { Column, Role } from '../../src/core/model/list.ts';

describe('what the words of a row say it is', () => {
  it.each([
    ['', 'Panel, front', 'panel'],
    ['PNL-100', '', 'panel'],
    ['', 'Rear cover, 5052-H32', 'cover'],
    ['', 'Cover, zinc plate', 'cover'],
    ['', 'BRACKET, MOUNTING', 'bracket'],
    ['', 'Sheet 1.5mm 5052', 'sheet'],
    ['', 'Screw, pan head, M4x10', 'screw'],
    ['SCR-M4x10', '', 'screw'],
    ['', 'Hex bolt 1/4-20 x 1', 'bolt'],
    ['', 'Lock washer, M4', 'washer'],
    ['', 'Unterlegscheibe M4', 'washer'],
    ['', 'Hex nut M4', 'hex nut'],
    ['', 'Nut, hex, 8-32', 'hex nut'],
    ['', 'Nylon insert lock nut M5', 'lock nut'],
    ['', 'Blind rivet 3.2 x 8', 'rivet'],
    ['', 'Rivet nut M5', 'rivet nut'],
    ['', 'Weld nut M5', 'weld nut'],
    ['', 'Weld stud M4x12', 'weld stud'],
    ['', 'Cage nut M6', 'nut'],
    ['', 'Dowel pin 3x10', 'pin'],
    ['', 'Label, serial number', 'label'],
    ['', 'Gasket, foam', 'gasket'],
    ['', 'Cable 300 mm', 'cable'],
    ['', 'Connector, 4 pin', 'connector'],
    ['', 'Hinge, left', 'hinge'],
    ['', 'Epoxy adhesive', 'adhesive'],
    ['', 'Schraube M4x10', 'screw'],
    ['', 'Front panel\u00a0assembly', 'panel'],
  ])('%j %j is a %s', (partNumber, description, what) => expect(seemsToBe(partNumber, description)).toBe(what));

  it.each([
    ['', 'Clinch nut M4'],
    ['', 'Self-clinching screw M4'],
    ['', 'Press-in pin'],
    ['', 'Press fit washer nut'],
    ['', 'Standoff, hex, M3'],
    ['', 'Stand-off for cover'],
    ['', 'Captive screw, panel'],
    ['', 'Panel screw, spring-loaded'],
    ['', 'Thumb screw, spring loaded'],
    ['', 'Nut'],
    ['', 'Nut, M4, steel'],
    ['', 'Stud M4x12, for front panel'],
    ['', 'Pin 3 mm'],
    ['', 'Spacer'],
    ['', 'Insert, brass'],
    ['', 'Nut for panel screw'],
    ['', 'Fastener, rear panel'],
    ['', 'Flush nut, door'],
    ['NUT-M4-10-CS', 'Rear panel'],
    ['STUD-M4-12', 'Cover'],
    ['X-M4-10', 'rear panel'],
    ['', 'M4, rear panel'],
    ['', 'Einpressmutter M4'],
    ['', 'Mutter M4'],
    ['4711', ''],
    ['', ''],
    ['AB-440-1', 'zinc plate'],
  ])('%j %j may be a press-in fastener', (partNumber, description) =>
    expect(seemsToBe(partNumber, description)).toBeNull(),
  );
});

const ROLES: readonly Role[] = [
  'index',
  'partNumber',
  'description',
  'quantity',
  'material',
  'thickness',
  'price',
  'other',
];
const HEADINGS = ['Item', 'P/N', 'Description', 'Qty', 'Matl', 'Thk', 'Price', ''];
const columns: readonly Column[] = ROLES.map((role, index) => ({
  index,
  heading: HEADINGS[index] ?? '',
  role,
  unit: null,
  unitFrom: null,
}));

describe('rows that are no part of the list', () => {
  const other = (row: string) => findOther({ number: 9, cells: row.split(';') }, columns);

  it.each([
    ['Item;P/N;Description;Qty;Matl;Thk;Price;', 'heading'],
    [' ITEM ;P/N;DESCRIPTION;QTY;;;;', 'heading'],
    [';Total;;24;;;;', 'total'],
    [';;;Total;;;226.34;', 'total'],
    [';;Grand total:;24;;;;', 'total'],
    [';;;;;;SUBTOTAL;12.5', 'total'],
    [';;Total qty;24;;;;', 'total'],
    ['Gesamt;;;24;;;;', 'total'],
    ['合計;;;24;;;;', 'total'],
    ['Total: 226.34;;;;;;;', 'total'],
    [';;;24;;;;', 'total'],
    [';;;;;;226.34;', 'total'],
    ['17;;;;;;0.00;', 'empty row'],
    ['17;;;0;;;;', 'empty row'],
    ['Front door;;;;;;;', 'section'],
    [';HARDWARE;;;;;;', 'section'],
    [';Panel 3;;;;;;', 'section'],
    ['2;;Front door;;;;;', 'section'],
    ['Note: all dimensions in mm;;;;;;;', 'note'],
    ['NOTES;;;;;;;', 'note'],
    ['* zinc plated;;;;;;;', 'note'],
    [';Please quote the parts above with delivery by week 20;;;;;;', 'note'],
    [';;Ask Alder Reach before pressing.;;;;;', 'note'],
    ['例）;NUT-M4-10-CS;Nut;4;;;;', 'example'],
  ])('%j is a %s', (row, what) => expect(other(row)).toBe(what));

  it.each([
    '1;NUT-M4-10-CS;Nut;4;CRS;1.5;0.1;',
    ';NUT-M4-10-CS;;;;;;',
    ';NUT M4 10 CS;;;;;;',
    ';;M4 clinch nut;;;;;',
    ';;Clinch stud for the rear door of the cabinet;4;;;;',
    '3;;;4;;;;',
    ';4711;Total length 20 mm;4;;;;',
    ';4711;Total;4;;;;',
    ';NUT-M4-10-CS;Nut, goes in rear panel, see note on drawing sheet two.;;;;;',
    ';;;4;CRS;1.5;;',
    '4;NUT-M4-10-CS;Nut;4;CRS;1.5;Total;226.34',
    ';Panel;Front panel;1;5052;1.5;;',
  ])('%j stays in the list', (row) => expect(other(row)).toBeNull());

  it('does not count cells under a merged block', () =>
    expect(
      findOther(
        { number: 9, cells: ['Front door', 'Front door', 'Front door'], flags: { 1: 'merged', 2: 'merged' } },
        columns,
      ),
    ).toBe('section'));
});

describe('quantities', () => {
  it.each([
    ['4', 4],
    ['4.0', 4],
    ['5.00', 5],
    ['1,000', 1000],
    ['4 pcs', 4],
    ['12 ea', 12],
    ['12 EA.', 12],
    ['４', 4],
    ['10 Stk', 10],
    ['12个', 12],
    ['1 000', 1000],
    ['1,234.0', 1234],
    ['4,0', 4],
    ['x4', 4],
    ['4x', 4],
    ['1.234.567', 1234567],
    [' 8 ', 8],
  ])('%j is %d', (text, value) => expect(parseQuantity(text)).toEqual({ text, how: 'whole', value }));
  it.each([
    ['0', 'zero', 0],
    ['0.00', 'zero', 0],
    ['2.5', 'not-whole', 2.5],
    ['0,25', 'not-whole', 0.25],
    ['.5', 'not-whole', 0.5],
  ] as const)('%j is %s', (text, how, value) => expect(parseQuantity(text)).toEqual({ text, how, value }));
  it.each(['', ' ', '-', ' – ', '—', 'n/a'])('%j is blank', (text) => expect(parseQuantity(text).how).toBe('blank'));
  it.each([
    'as needed',
    '8-10',
    'about 30',
    '24 (or 48)',
    '1 set',
    '1 pair',
    'TBD',
    'x',
    '0.75 m',
    '10 ft',
    '1.000',
    '-4',
    '1e3',
    'NaN',
    'Infinity',
    '2 rails + 4',
    'Quantity',
  ])('%j is unreadable', (text) => expect(parseQuantity(text)).toEqual({ text, how: 'unreadable', value: null }));
});

describe('threads of a list', () => {
  it.each([
    ['M4', ['mm']],
    ['NUT-M4-10', ['mm']],
    ['M2.5 x 8', ['mm']],
    ['#8-32', ['in']],
    ['1/4"-20', ['in']],
    ['NUT-10-32-CS', ['in']],
    ['M10-32', ['mm']],
    ['M25', []],
    ['XM4', []],
    ['8-100', []],
    ['M4 and 8–32', ['mm', 'in']],
  ] as const)('%j has %j', (text, systems) => expect(findThreads(text)).toEqual(systems));
  it('settle the unit only when most agree', () => {
    expect(threadSystem(['M4', 'M5', 'M3', '8-32'])).toBe('mm');
    expect(threadSystem(['8-32', '6-32'])).toBe('in');
    expect(threadSystem(['M4', '8-32'])).toBeNull();
    expect(threadSystem(['clip'])).toBeNull();
  });
});
