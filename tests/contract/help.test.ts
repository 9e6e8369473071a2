import { describe, expect, it } from 'vitest';
import { FIELD_GROUPS, FIELD_NAMES } from '../../src/core/catalogue/field-words.ts';
import { FIELDS } from '../../src/core/catalogue/show-part.ts';
import { EXAMPLE_PART } from '../../src/core/engine/example.ts';
import { ROLES } from '../../src/core/model/list.ts';
import { listRules, rules } from '../../src/core/rules/index.ts';
import { takenForGranted } from '../../src/core/rules/taken-for-granted.ts';
import { readKey } from '../../src/ui/grid/block-keys.ts';
import { checksThatRead, helpForColumn } from '../../src/ui/grid/column-help.ts';
import { KEY_MAP } from '../../src/ui/help/key-map.ts';
import { type PageCommand, readPageKey } from '../../src/ui/page-keys.ts';

const pressesOf = (takenBy: 'page' | 'grid') =>
  KEY_MAP.filter((group) => group.takenBy === takenBy).flatMap(({ keys }) =>
    keys.flatMap(({ does, presses = [] }) => presses.map((press) => ({ does, press }))),
  );
const released = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

describe('the map of keys', () => {
  it.each(pressesOf('grid'))('tells of the grid what it does: $does, $press.key', ({ press }) => {
    expect(readKey({ ...released, ...press })).not.toBeNull();
  });

  it('tells of every command of the grid', () => {
    const commands = pressesOf('grid').map(({ press }) => readKey({ ...released, ...press }));
    const kinds = commands.map((command) => (command?.kind === 'select' ? `select ${command.what}` : command?.kind));
    expect(new Set(kinds)).toEqual(
      new Set(['move', 'select all', 'select rows', 'select columns', 'clear', 'fill-down', 'collapse']),
    );
  });

  it('tells of every command of the page', () => {
    const told = pressesOf('page').map(({ does, press }) => [readPageKey(press, 'page'), does.split(' ')[0]]);
    const words: Readonly<Record<PageCommand, string>> = { help: 'this', undo: 'undo', redo: 'redo', save: 'save' };
    expect(told.map(([command]) => words[command as PageCommand])).toEqual(told.map(([, word]) => word));
    expect(new Set(told.map(([command]) => command))).toEqual(new Set(Object.keys(words)));
  });

  it('leaves letters to a field and to the list', () => {
    expect(readPageKey({ key: '?' }, 'list')).toBeNull();
    expect(readPageKey({ key: '?' }, 'field')).toBeNull();
    expect(readPageKey({ key: 'z', ctrlKey: true }, 'field')).toBeNull();
    expect(readPageKey({ key: 'z', ctrlKey: true }, 'list')).toBe('undo');
    expect(readPageKey({ key: 'F1' }, 'field')).toBe('help');
    expect(readPageKey({ key: 's', ctrlKey: true, altKey: true }, 'page')).toBeNull();
  });
});

describe('help on a heading', () => {
  it('names the checks that read the column', () => {
    const help = helpForColumn({ index: 0, heading: 'Thk', role: 'thickness', unit: 'in', unitFrom: 'heading' });
    expect(help).toMatch(/^Read as sheet thickness\. Bare numbers are inches\. Read by: .*Sheet thickness/);
    expect(checksThatRead('edge')).toEqual(['Edge distance']);
  });

  it('has a sentence for every meaning, and names every check somewhere', () => {
    const sentences = ROLES.map((role) => helpForColumn({ index: 0, heading: '', role, unit: null, unitFrom: null }));
    for (const sentence of sentences) expect(sentence).toMatch(/^\S.*\.$/);
    const named = new Set(ROLES.flatMap(checksThatRead));
    expect([...rules, ...listRules].filter(({ title }) => !named.has(title))).toEqual([]);
  });
});

describe('fields of a part', () => {
  it('stand in one group each, under names of their own', () => {
    const grouped = FIELD_GROUPS.flatMap(({ fields }) => fields);
    expect([...grouped].sort()).toEqual(FIELDS.filter((field) => field !== 'partNumber').sort());
    expect(new Set(Object.values(FIELD_NAMES)).size).toBe(FIELDS.length);
  });

  it('say what is taken for granted where the catalogue is silent', () => {
    const silent = { ...EXAMPLE_PART, hardnessMin: null, holePlusMm: null, holeMinusMm: null, spacingMm: null };
    expect(takenForGranted(silent, 'hardnessMin', 'mm')).toBe('assumed by class: HRC 26 for hardened carbon steel');
    expect(takenForGranted(silent, 'holePlusMm', 'mm')).toBe('0.08 mm assumed, the usual band');
    expect(takenForGranted(silent, 'holeMinusMm', 'mm')).toBe('0.00 mm assumed, the usual band');
    expect(takenForGranted(silent, 'spacingMm', 'mm')).toMatch(/ mm assumed, the edge distance$/);
    expect(takenForGranted(silent, 'flangeMm', 'mm')).toBeNull();
    expect(takenForGranted({ ...EXAMPLE_PART, spacingMm: 9 }, 'spacingMm', 'mm')).toBeNull();
  });
});
