import { describe, expect, it } from 'vitest';
import { aluminiumTables } from '../../src/core/calc/aluminium-group.ts';
import { metalClassOf, toRockwellB } from '../../src/core/calc/rockwell-b.ts';
import { sheetHardness } from '../../src/core/calc/sheet-hardness.ts';
import type { AlloyEntry, SheetFamily } from '../../src/core/model/sheet.ts';
import { alloyTables, findAlloy } from '../../src/core/reference/alloys/index.ts';

const entries = alloyTables.flatMap(({ rows }) => rows);
const stated = ({ typical, max, min }: AlloyEntry) => [typical, max, min ?? null].filter((given) => given !== null);

describe('the alloy tables', () => {
  it('have ids of their own, in kebab-case', () => {
    for (const ids of [alloyTables.map((table) => table.id), entries.map((entry) => entry.id)]) {
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
    }
  });

  it('have names of their own', () => {
    expect(new Set(entries.map(({ name }) => name)).size).toBe(entries.length);
  });

  it('are found by id', () => {
    for (const entry of entries) expect(findAlloy(entry.id)).toBe(entry);
    expect(findAlloy('unobtainium')).toBeUndefined();
  });

  it.each(entries)('$id states a hardness that converts to Rockwell B, typical not above the maximum', (entry) => {
    expect(stated(entry).length).toBeGreaterThan(0);
    const hardness = sheetHardness(entry);
    expect(hardness).not.toBeNull();
    if (hardness?.max) expect(hardness.max.on.hrb).toBeGreaterThanOrEqual(hardness.typical.on.hrb);
    if (entry.max) expect(toRockwellB(entry.max, metalClassOf(entry.family))).not.toBeNull();
  });

  it('have a maximum exactly where they say where it comes from', () => {
    expect(entries.filter(({ max, maxFrom }) => (max === null) !== (maxFrom === 'none'))).toEqual([]);
  });

  it('use strength for a maximum only, and only where it says so', () => {
    const isStrength = (given: AlloyEntry['max']) => given?.scale === 'MPa';
    expect(entries.filter(({ typical, min }) => isStrength(typical) || isStrength(min ?? null))).toEqual([]);
    expect(entries.filter(({ max, maxFrom }) => isStrength(max) !== (maxFrom === 'strength'))).toEqual([]);
    expect(entries.filter(({ max, rmMaxMpa }) => isStrength(max) && max?.value !== rmMaxMpa)).toEqual([]);
  });

  it('never call a judged or derived maximum printed', () => {
    const weak = entries.filter(({ maxFrom, mark }) => maxFrom === 'judged' && mark === 'printed');
    expect(weak).toEqual([]);
  });

  it('keep strength and limits in order', () => {
    const reversed = entries.filter(({ rmMinMpa = 0, rmMaxMpa = Number.POSITIVE_INFINITY }) => rmMinMpa > rmMaxMpa);
    expect(reversed).toEqual([]);
    expect(entries.filter(({ min, max }) => min && min.scale === max?.scale && min.value >= max.value)).toEqual([]);
  });

  it('name a standard, never an address', () => {
    for (const { source, note = '', standard } of entries) {
      expect(source).not.toBe('');
      expect(standard).toMatch(/^(ASTM|EN|JIS) /);
      expect(`${source} ${note}`).not.toMatch(/https?:|www\.|\.com\b/);
    }
  });
});

describe('commercial conditions', () => {
  const sold = entries.filter(({ commercial }) => commercial);

  it('have a typical hardness', () => {
    expect(sold.filter(({ typical }) => typical === null)).toEqual([]);
  });

  it('are at most two for one alloy', () => {
    const crowded = sold.filter(({ alloy }) => sold.filter((entry) => entry.alloy === alloy).length > 2);
    expect(crowded).toEqual([]);
  });

  it.each([
    ['304', '304'],
    ['316', '316'],
    ['430', '430'],
    ['dc01', 'dc01-lc'],
    ['crs', 'crs-a1008-cs'],
    ['hrpo', 'hrpo-a1011-cs'],
    ['gi', 'gi-cs'],
    ['ga', 'ga-cs'],
    ['5052', '5052-h32'],
    ['6061', '6061-t6'],
    ['c260', 'c260-h02'],
  ])('of %s include %s', (alloy, id) => {
    expect(sold.filter((entry) => entry.alloy === alloy).map((entry) => entry.id)).toContain(id);
  });

  it('do not include a work-hardened strip temper of steel', () => {
    const steel: readonly SheetFamily[] = ['carbon-steel', 'stainless-austenitic'];
    const hard = sold.filter(({ family, temper }) => steel.includes(family) && /\bhard|^C\d{3}$/.test(temper));
    expect(hard).toEqual([]);
  });
});

describe('families', () => {
  it('are one to an alloy', () => {
    const familyOf = new Map(entries.map(({ alloy, family }) => [alloy, family]));
    expect(entries.filter(({ alloy, family }) => familyOf.get(alloy) !== family)).toEqual([]);
  });

  it('suit the alloy', () => {
    const expected: readonly (readonly [RegExp, SheetFamily])[] = [
      [/^30[14]|^316/, 'stainless-austenitic'],
      [/^4(09|30)$/, 'stainless-ferritic'],
      [/^410$/, 'stainless-martensitic'],
      [/^[1-7]\d{3}a?$/, 'aluminium'],
      [/^c110$/, 'copper'],
      [/^(c260|cuzn)/, 'brass'],
      [/^c510$/, 'bronze'],
      [/^ti-/, 'titanium'],
      [/^ga$/, 'galvannealed-steel'],
      [/^(gi|dx5|s\d{3}gd|sgcc|secc|dc01ze)/, 'galvanized-steel'],
      [/^(crs|a109|dc0\d$|spc|hrpo|dd1|sphc|a36|s235jr|hslas|s\d{3}mc|hc)/, 'carbon-steel'],
    ];
    const familyOf = ({ alloy, id }: AlloyEntry) => expected.find(([word]) => word.test(alloy) || word.test(id))?.[1];
    expect(entries.filter((entry) => familyOf(entry) !== entry.family)).toEqual([]);
  });

  it('let electro-galvanized sheet be told from hot-dip', () => {
    expect(entries.filter(({ temper }) => temper === 'electro-galvanized').map(({ id }) => id)).toEqual([
      'secc',
      'dc01ze',
    ]);
  });

  it('let hot-rolled sheet be told by its temper', () => {
    const hot = entries.filter(({ temper }) => /hot rolled|thermomech/i.test(temper)).map(({ id }) => id);
    expect(hot).toEqual(['hrpo-a1011-cs', 'dd11', 'dd13', 'sphc', 'a36', 's235jr', 's355mc', 's420mc', 's500mc']);
  });

  it('name aluminium so that its tolerance group is found', () => {
    const aluminium = entries.filter(({ family }) => family === 'aluminium');
    expect(aluminium.filter(({ alloy }) => aluminiumTables(alloy, 1)[0]?.assumed !== null)).toEqual([]);
  });
});
