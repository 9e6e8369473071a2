import { describe, expect, it } from 'vitest';
import { runListRule, runRule } from '../../src/core/engine/audit-line.ts';
import { exampleSubject, exampleSubjects, findingFor, listFindingsFor } from '../../src/core/engine/example.ts';
import { NO_FACTS, type WorkFacts } from '../../src/core/model/facts.ts';
import type { Fastener } from '../../src/core/model/fastener.ts';
import { bend } from '../../src/core/rules/clinch/bend.ts';
import { hole } from '../../src/core/rules/clinch/hole.ts';
import { rim } from '../../src/core/rules/clinch/rim.ts';
import { shank } from '../../src/core/rules/clinch/shank.ts';
import { spacing } from '../../src/core/rules/clinch/spacing.ts';
import { force } from '../../src/core/rules/press/force.ts';
import type { Example, Rule, Subject } from '../../src/core/rules/rule.ts';
import { gaugeMetal } from '../../src/core/rules/sheet/gauge-metal.ts';

type Row = Omit<Example, 'outcome' | 'says'>;

/** Outcome and text key of a rule for a row; null where it does not apply. */
function said(rule: Rule, row: Row): string | null {
  const finding = findingFor(rule, row);
  return finding ? `${finding.outcome} ${finding.says}` : null;
}

const textOf = (rule: Rule, row: Row) => findingFor(rule, row)?.text ?? '';

/** The same for a row whose words say something about the work. */
function withFacts(rule: Rule, row: Row, facts: Partial<WorkFacts>) {
  const subject = exampleSubject(row);
  return runRule(rule, { ...subject, line: { ...subject.line, facts: { ...NO_FACTS, ...facts } } });
}

describe('sheet/gauge-metal', () => {
  // Manufacturers' Standard Gauge 16 = 0.0598 in, galvanized 16 = 0.0635 in, Brown & Sharpe 16 = 0.0508 in
  it.each<[string, string, string | null]>([
    ['5052-H32', '.0598', 'marginal other'],
    ['5052-H32', '.0597', 'holds own'],
    ['5052-H32', '.0599', 'holds own'],
    ['5052-H32', '.0588', 'holds own'],
    ['5052-H32', '.0608', 'holds own'],
    ['5052-H32', '.0508', 'holds own'],
    ['5052-H32', '.060', 'holds own'],
    ['5052-H32', '1/16', 'holds own'],
    ['5052-H32', '16 ga (.0598)', 'marginal other'],
    ['CRS', '.0598', 'holds own'],
    ['CRS', '.0508', 'marginal other'],
    ['CRS', '.0635', 'marginal other'],
    ['GALV', '.0635', 'holds own'],
    ['304', '.0598', 'holds own'],
    ['SECC', '.0598', 'holds own'],
    ['STEEL', '.0635', 'holds own'],
    ['STEEL', '.0508', 'marginal other'],
    ['CRS or 5052', '.0598', 'holds own'],
    ['5052-H32', '1.519 mm', 'marginal other'],
    ['5052-H32', '16 ga', null],
    ['5052-H32', '', null],
    ['5052-H32', 'thick', null],
    ['5052-H32', '60', null],
    ['', '.0598', null],
    ['red', '.0598', null],
  ])('%s, “%s” in a column of inches: %s', (material, thickness, expected) => {
    expect(said(gaugeMetal, { cells: { material, thickness }, unit: 'in' })).toBe(expected);
  });

  it('is silent in a column of millimetres and speaks for a cell in inches', () => {
    expect(said(gaugeMetal, { cells: { material: '5052-H32', thickness: '1.52' } })).toBeNull();
    expect(said(gaugeMetal, { cells: { material: '5052-H32', thickness: '0.0598"' } })).toBe('marginal other');
  });

  // 0.0598 in = 1.51892 mm, 0.0508 in = 1.29032 mm
  it.each<[string, string, string | null]>([
    ['5052-H32', '1.519', 'marginal other'],
    ['5052-H32', '1,519', 'marginal other'],
    ['5052-H32', '1.5189', 'marginal other'],
    ['5052-H32', '1.517', 'holds own'],
    ['5052-H32', '1.500', 'holds own'],
    ['5052-H32', '1.290', 'holds own'],
    ['5052-H32', '1.52', null],
    ['5052-H32', '1.5', null],
    ['CRS', '1.290', 'marginal other'],
    ['CRS', '1.519', 'holds own'],
    ['CRS', '1.29', null],
  ])('%s, “%s” in a column of millimetres: %s', (material, thickness, expected) => {
    expect(said(gaugeMetal, { cells: { material, thickness } })).toBe(expected);
  });

  it('names the gauge, both metals and what this metal would be', () => {
    const finding = findingFor(gaugeMetal, { cells: { material: '5052-H32', thickness: '.0598' }, unit: 'in' });
    expect(finding?.text).toContain('16 gauge of uncoated steel; 16 gauge of aluminium is 0.0508 in (1.29 mm)');
    expect(finding?.cites).toEqual(['msg', 'brown-sharpe']);
  });
});

describe('clinch/shank', () => {
  const inMm = (shankMm: number, material = 'DC01', thickness = '1') =>
    said(shank, { cells: { material, thickness }, part: { shankMm } });
  const inInches = (shankIn: number) =>
    said(shank, { cells: { material: 'CRS', thickness: '.0598' }, part: { shankMm: shankIn * 25.4 }, unit: 'in' });

  // EN 10131 table 1, over 0.80 to 1.00, width to 1200: 0.05, so 1.00 may be delivered 0.95
  it('is compared with the thinnest sheet and with the nominal one', () => {
    const outcomes = [0.94, 0.95, 0.96, 0.99, 1, 1.01].map((shankMm) => inMm(shankMm));
    expect(outcomes).toEqual([
      'holds holds',
      'holds holds',
      'marginal thinnest',
      'marginal thinnest',
      'marginal thinnest',
      'fails proud',
    ]);
  });

  // 16 gauge cold rolled: 0.0598 in less 0.0050 is 0.0548 in (ASTM A568 as restated)
  it('the same in inches', () => {
    const outcomes = [0.0538, 0.0548, 0.0558, 0.0598, 0.0608].map(inInches);
    expect(outcomes).toEqual(['holds holds', 'holds holds', 'marginal thinnest', 'marginal thinnest', 'fails proud']);
  });

  it('is compared with the nominal alone where no mill tolerance is on file', () => {
    expect([0.99, 1, 1.01].map((shankMm) => inMm(shankMm, 'brass'))).toEqual([
      'holds holds-untold',
      'holds holds-untold',
      'fails proud',
    ]);
  });

  it('says by how much it stands proud', () => {
    const proudMm = (shankMm: number) =>
      findingFor(shank, { cells: { thickness: '1' }, part: { shankMm } })?.values.proudMm;
    expect(proudMm(1.05)).toBeCloseTo(0.05, 9);
    expect(proudMm(0.97)).toBeCloseTo(0.02, 9);
    expect(proudMm(0.9)).toBeUndefined();
  });

  it('needs a flush part, a shank and a sheet', () => {
    for (const part of [{ flush: false }, { flush: null }, { shankMm: null }, null]) {
      expect(said(shank, { cells: { thickness: '0.5' }, part })).toBeNull();
    }
    for (const thickness of ['', 'thick', '60 in']) {
      expect(said(shank, { cells: { thickness } })).toBe('unknown no-thickness');
    }
    expect(said(shank, { cells: { material: '', thickness: '1.5' } })).toBe('unknown no-metal');
    expect(said(shank, { cells: { material: '', thickness: '0.8' } })).toBe('fails proud');
  });

  it('tells by the thinnest of several metals', () => {
    const finding = findingFor(shank, { cells: { material: 'STEEL', thickness: '18 ga' }, part: { shankMm: 1.2 } });
    // 18 gauge: 0.0478 in uncoated, 0.0516 in galvanized
    expect(finding?.outcome).toBe('marginal');
    expect(finding?.values.thicknessMm).toBeCloseTo(0.0478 * 25.4, 9);
  });
});

describe('clinch/rim', () => {
  it('fails on words that spoil the rim and quotes them', () => {
    const finding = withFacts(rim, { cells: {} }, { rimWork: 'deburr both sides' });
    expect(finding).toMatchObject({ outcome: 'fails', text: expect.stringContaining('“deburr both sides”') });
  });

  it('says nothing without such words, however the hole is made, nor of a part that is not on file', () => {
    for (const holeProcess of ['punched', 'drilled', 'laser', null] as const) {
      expect(withFacts(rim, { cells: {} }, { holeProcess })).toBeNull();
    }
    expect(withFacts(rim, { cells: {}, part: null }, { rimWork: 'csk' })).toBeNull();
  });
});

describe('clinch/spacing', () => {
  /** The finding for a row that is alone on its list. */
  const alone = (row: Row) => {
    const subject = exampleSubject(row);
    return runListRule(spacing, [subject]).get(subject);
  };
  const saidAlone = (row: Row) => {
    const finding = alone(row);
    return finding ? `${finding.outcome} ${finding.says}` : null;
  };

  it.each<[string, string | null]>([
    ['9', 'holds holds-default'],
    ['9.01', 'holds holds-default'],
    ['8.99', 'fails close-default'],
    ['', null],
    ['-', null],
    ['as drawn', 'unknown unreadable'],
    ['900 in', 'unknown impossible'],
  ])('“%s” mm where the edge distance is 9: %s', (text, expected) => {
    expect(saidAlone({ cells: { spacing: text } })).toBe(expected);
  });

  it.each<[string, string]>([
    ['.350', 'holds holds-default'],
    ['.351', 'holds holds-default'],
    ['.349', 'fails close-default'],
  ])('“%s” in where the edge distance is 0.350: %s', (text, expected) => {
    expect(saidAlone({ cells: { spacing: text }, part: { edgeMm: 8.89 }, unit: 'in' })).toBe(expected);
  });

  it('goes by the spacing of the catalogue before the edge distance', () => {
    const outcomes = ['5.99', '6', '6.01'].map((text) =>
      saidAlone({ cells: { spacing: text }, part: { spacingMm: 6 } }),
    );
    expect(outcomes).toEqual(['fails close', 'holds holds', 'holds holds']);
    expect(saidAlone({ cells: { spacing: '6' }, part: { spacingMm: 6, edgeMm: null } })).toBe('holds holds');
  });

  it('says that the edge distance is a default of the trade', () => {
    for (const text of ['8', '10']) {
      expect(alone({ cells: { spacing: text } })?.text).toContain('usual in the trade');
    }
  });

  it('asks for the unit where nothing settles it', () => {
    expect(saidAlone({ cells: { spacing: '9' }, unit: 'none' })).toBe('unknown no-unit');
  });

  /** What is said of a row of the example part, edge distance 9, with one row each of other parts on the same panel. */
  const beside = (text: string, others: readonly Partial<Fastener>[], own: Partial<Fastener> = {}) => {
    const parts = Object.fromEntries(others.map((part, index) => [`OTHER-${index}`, part]));
    const rows = [{ partNumber: 'OWN', spacing: text }, ...Object.keys(parts).map((partNumber) => ({ partNumber }))];
    const [finding] = listFindingsFor(spacing, { rows, parts: { OWN: own, ...parts } });
    return finding;
  };

  it.each<readonly [string, readonly Partial<Fastener>[], string]>([
    ['10.99', [{ edgeMm: 11 }], 'marginal'],
    ['11', [{ edgeMm: 11 }], 'holds'],
    ['11.01', [{ edgeMm: 11 }], 'holds'],
    ['8.99', [{ edgeMm: 11 }], 'fails'],
    ['9', [{ edgeMm: 9 }], 'holds'],
    ['9', [{ edgeMm: 7 }], 'holds'],
    ['9', [{ edgeMm: null }], 'holds'],
    ['12', [{ edgeMm: 11 }, { edgeMm: 13 }, { edgeMm: 7 }], 'marginal'],
    // of the neighbour too its own spacing goes before its edge distance
    ['9', [{ edgeMm: 11, spacingMm: 8 }], 'holds'],
    ['9', [{ edgeMm: 7, spacingMm: 14 }], 'marginal'],
  ])('“%s” mm beside %j: %s', (text, others, outcome) => {
    expect(beside(text, others)?.outcome).toBe(outcome);
  });

  it('names the neighbour that needs the most, and its distance', () => {
    const finding = beside('12', [{ edgeMm: 12.5 }, { edgeMm: 13 }]);
    expect(finding).toMatchObject({
      says: 'neighbour',
      values: { spacingMm: 12, spacingMinMm: 9, neighbourMinMm: 13 },
    });
    expect(finding?.text).toContain('beside OTHER-1 on panel P1, which needs 13.00 mm: which neighbour is it?');
  });

  it('counts the spacing of the catalogue for its own side', () => {
    expect(beside('6', [{ edgeMm: 5 }], { spacingMm: 6 })?.outcome).toBe('holds');
    expect(beside('6', [{ edgeMm: 7 }], { spacingMm: 6 })?.outcome).toBe('marginal');
    expect(beside('5.9', [{ edgeMm: 5 }], { spacingMm: 6 })?.outcome).toBe('fails');
  });

  it('knows no neighbour on another panel, without a panel, not on file, or of the same part', () => {
    const other = { partNumber: 'OTHER' };
    const parts = { OTHER: { edgeMm: 20 } };
    const first = (...rows: readonly Row['cells'][]) => listFindingsFor(spacing, { rows, parts })[0]?.outcome;
    expect(first({ spacing: '9' }, other)).toBe('marginal');
    expect(first({ spacing: '9', panel: 'p 1' }, other)).toBe('marginal');
    expect(first({ spacing: '9' }, { ...other, panel: 'P2' })).toBe('holds');
    expect(first({ spacing: '9', panel: '' }, { ...other, panel: '' })).toBe('holds');
    expect(first({ spacing: '9' }, { partNumber: 'NOT-ON-FILE' })).toBe('holds');
    expect(first({ ...other, spacing: '20' }, other, {})).toBe('holds');
  });

  it('takes a long panel in one go', () => {
    const rows = Array.from({ length: 500 }, (_, index) => ({ partNumber: `P-${index}`, spacing: '9' }));
    const parts = Object.fromEntries(rows.map(({ partNumber }, index) => [partNumber, { edgeMm: 5 + (index % 5) }]));
    const subjects = exampleSubjects({ rows, parts });
    const many = Array.from({ length: 20_000 }, (_, row): Subject => {
      const subject = subjects[row % subjects.length]!;
      return { ...subject, line: { ...subject.line, row } };
    });
    const judgements = spacing.checkList(many);
    expect(many.filter((subject) => judgements.get(subject))).toHaveLength(20_000);
  });
});

describe('clinch/bend', () => {
  // Geometry for 1.50 sheet, inside radius 1.50, hole 5.60, flange 7.60: tangent at 3.00, hole edge there at 5.80,
  // 1.5 sheets more 8.05, 2 sheets 8.80, 3 sheets and half the flange 5.80 + 4.50 + 3.80 = 14.10
  it.each<[string, string | null]>([
    ['5.79', 'fails inside'],
    ['5.8', 'marginal near'],
    ['5.81', 'marginal near'],
    ['8.05', 'marginal near'],
    ['8.79', 'marginal near'],
    ['8.8', 'holds between'],
    ['8.81', 'holds between'],
    ['14.09', 'holds between'],
    ['14.1', 'holds clear'],
    ['14.11', 'holds clear'],
    ['', null],
    ['as drawn', 'unknown unreadable'],
    ['900 in', 'unknown impossible'],
  ])('“%s” mm: %s', (text, expected) => {
    expect(said(bend, { cells: { bend: text } })).toBe(expected);
  });

  // 0.060 sheet, hole 0.220, flange 0.300: hole edge at the tangent 0.230, 2 sheets 0.350, all 0.230 + 0.180 + 0.150 = 0.560
  it.each<[string, string]>([
    ['.229', 'fails inside'],
    ['.230', 'marginal near'],
    ['.231', 'marginal near'],
    ['.349', 'marginal near'],
    ['.350', 'holds between'],
    ['.351', 'holds between'],
    ['.559', 'holds between'],
    ['.560', 'holds clear'],
    ['.561', 'holds clear'],
  ])('“%s” in: %s', (text, expected) => {
    const cells = { bend: text, thickness: '.060', hole: '.220' };
    expect(said(bend, { cells, part: { flangeMm: 7.62 }, unit: 'in' })).toBe(expected);
  });

  it("follows the shop's multiple, though never below the least that any source asks", () => {
    const at = (text: string, bendMultiplier: number) =>
      said(bend, { cells: { bend: text }, shop: { bendMultiplier } });
    expect([at('8.04', 1), at('8.05', 1)]).toEqual(['marginal near', 'holds between']);
    expect([at('10.29', 3), at('10.3', 3)]).toEqual(['marginal near', 'holds between']);
    expect([at('17.79', 8), at('17.8', 8)]).toEqual(['marginal near', 'holds clear']);
  });

  // 0.50 sheet: tangent 1.00, hole edge 3.80, 2 sheets 4.80, half of a flange of 9 reaches from the tangent to 5.50
  it('wants the flange outside the bend too', () => {
    const at = (text: string) => said(bend, { cells: { bend: text, thickness: '0.5' }, part: { flangeMm: 9 } });
    expect([at('4.79'), at('4.8'), at('5.49'), at('5.5')]).toEqual([
      'marginal near',
      'marginal flange',
      'marginal flange',
      'holds between',
    ]);
  });

  it('takes the edge distance for a flange that is not on file, and does not hold inside it', () => {
    const at = (text: string) => said(bend, { cells: { bend: text }, part: { flangeMm: null } });
    expect([at('5.79'), at('8.79'), at('11.99'), at('12')]).toEqual([
      'fails inside',
      'marginal near',
      'unknown no-flange',
      'holds between',
    ]);
    expect(said(bend, { cells: { bend: '50' }, part: { flangeMm: null, edgeMm: null } })).toBe('unknown no-flange');
  });

  it('says in every judgement what was taken for granted', () => {
    for (const text of ['5', '8', '10', '20']) {
      const full = textOf(bend, { cells: { bend: text } });
      expect(full).toContain('hole centre to the outside face');
      expect(full).toContain('inside radius of one sheet thickness');
    }
  });

  it('tells what 1.5 and what 3 sheet thicknesses would give', () => {
    expect(textOf(bend, { cells: { bend: '10' } })).toContain('1.5 is 8.05, 3 with half the flange 14.10 mm');
  });

  it('goes by the listed hole, else by the one on file', () => {
    // a hole of 6.00 moves the limit out by 0.20
    expect(said(bend, { cells: { bend: '8.8', hole: '6' } })).toBe('marginal near');
    expect(said(bend, { cells: { bend: '8.8', hole: '' } })).toBe('holds between');
    expect(said(bend, { cells: { bend: '8.8', hole: 'as drawn' } })).toBe('holds between');
  });

  it('is unknown without the thickness', () => {
    for (const thickness of ['', 'thick', '60 in']) {
      expect(said(bend, { cells: { bend: '20', thickness } })).toBe('unknown no-thickness');
    }
  });
});

describe('press/force', () => {
  const against = (pressKn: number | null, cells: Row['cells'] = {}) => said(force, { cells, shop: { pressKn } });

  it('is compared with the press and with 80 % of it', () => {
    // 12 kN in steel: 80 % of 15
    expect([11.99, 12, 12.01, 14.99, 15, 15.01].map((kn) => against(kn))).toEqual([
      'fails over',
      'note near',
      'note near',
      'note near',
      'holds holds',
      'holds holds',
    ]);
  });

  it('counts 80 % exactly as little enough, whatever the digits', () => {
    expect(said(force, { cells: {}, part: { forceSteelKn: 0.56 }, shop: { pressKn: 0.7 } })).toBe('holds holds');
  });

  it('is only stated where no press is set', () => {
    expect(against(null)).toBe('note force');
    expect(against(null, { material: '' })).toBe('note force');
    expect(against(null, { thickness: '' })).toBe('note force');
  });

  it('is that of the metal, and of steel as the higher for other metals', () => {
    const kn = (material: string) => findingFor(force, { cells: { material } })?.values.forceKn;
    expect(['DC01', '304', '5052-H32', 'brass', 'ALUM', 'CRS or 5052', ''].map(kn)).toEqual([12, 12, 7, 12, 7, 12, 12]);
    expect(textOf(force, { cells: { material: 'brass' } })).toContain('as the higher');
    expect(textOf(force, { cells: { material: '304' } })).not.toContain('as the higher');
  });

  it('is unknown where the catalogue is silent and a press is set', () => {
    const silent = (pressKn: number | null, material: string) =>
      said(force, { cells: { material }, part: { forceSteelKn: null }, shop: { pressKn } });
    expect(silent(30, 'DC01')).toBe('unknown silent');
    expect(silent(30, 'CRS or 5052')).toBe('unknown silent');
    expect(silent(30, '5052-H32')).toBe('holds holds');
    expect(silent(null, 'DC01')).toBeNull();
    expect(against(30, { material: '' })).toBe('unknown no-metal');
  });

  it('keeps a warning of one metal beside the ease of another', () => {
    expect(against(12, { material: 'CRS or 5052' })).toBe('note near');
    expect(against(6, { material: 'CRS or 5052' })).toBe('fails over');
  });

  it('never holds against a press that is no number', () => {
    expect(against(Number.NaN)).toBe('unknown broken');
  });

  it('warns that a sheet under its minimum may warp', () => {
    const warns = (thickness: string, unit?: 'in') =>
      textOf(force, { cells: { thickness }, ...(unit ? { unit } : {}) }).includes('may warp');
    expect([warns('0.99'), warns('1'), warns('1.01'), warns('')]).toEqual([true, false, false, false]);
    // 1.00 mm lies between 0.039 and 0.040 in
    expect([warns('.039', 'in'), warns('.040', 'in')]).toEqual([true, false]);
  });
});

describe('clinch/hole by tolerances that the list does not give', () => {
  const general = (text: string, generalHoleToleranceMm: number, more: Partial<Row> = {}) =>
    said(hole, { cells: { hole: text }, shop: { generalHoleToleranceMm }, ...more });

  it("takes the shop's general tolerance", () => {
    // band 5.60 to 5.68
    expect([general('5.64', 0.03), general('5.64', 0.04), general('5.64', 0.05)]).toEqual([
      'holds within-general',
      'holds within-general',
      'marginal leaves-general',
    ]);
    expect([general('5.6', 0), general('5.6', 0.1)]).toEqual(['holds within-general', 'marginal leaves-general']);
    expect(textOf(hole, { cells: { hole: '5.6' }, shop: { generalHoleToleranceMm: 0.1 } })).toContain('shop settings');
  });

  it('the same in inches', () => {
    // band 0.220 to 0.223 in
    const more = { part: { holeMm: 5.588, holePlusMm: 0.0762 }, unit: 'in' } as const;
    expect([general('.2215', 0.0381, more), general('.2215', 0.0635, more)]).toEqual([
      'holds within-general',
      'marginal leaves-general',
    ]);
  });

  it('leaves a hole with its own tolerance, and one outside the band, as they are', () => {
    expect(general('5.6 +0.08/-0', 0.5)).toBe('holds within');
    expect(general('5.6 ±0.1', 0)).toBe('marginal leaves');
    expect([general('5.69', 0.1), general('5.59', 0.1)]).toEqual(['fails over', 'fails under']);
    expect([general('', 0.1), general('as drawn', 0.1)]).toEqual(['note call-out', 'unknown unreadable']);
  });

  // ISO 9013 class 1, nominal over 3 to 10 mm: 0.10, 0.15, 0.20 by sheet thickness
  it('says of a laser-cut hole that the process cannot keep the band', () => {
    const shop = { holeProcess: 'laser' } as const;
    expect(said(hole, { cells: { hole: '5.6' }, shop })).toBe('holds by-nominal-laser');
    expect(textOf(hole, { cells: { hole: '5.6' }, shop })).toContain('plus or minus 0.10 to 0.20 mm');
    expect(said(hole, { cells: { hole: '5.6 +0.08/-0' }, shop })).toBe('holds within');
    expect(said(hole, { cells: { hole: '5.6' }, part: { holePlusMm: 0.1, holeMinusMm: 0.1 }, shop })).toBe(
      'holds by-nominal',
    );
    expect(withFacts(hole, { cells: {} }, { holeProcess: 'laser' })?.says).toBe('by-nominal-laser');
    expect(withFacts(hole, { cells: {}, shop }, { holeProcess: 'punched' })?.says).toBe('by-nominal');
  });

  it("calls the hole out in the list's own unit", () => {
    const inInches = '0.2205 +0.0031/-0 in';
    expect(textOf(hole, { cells: { hole: '.230' }, unit: 'in' })).toContain(inInches);
    expect(textOf(hole, { cells: { hole: '15/64' } })).toContain(inInches);
    expect(textOf(hole, { cells: { hole: '#1' } })).toContain(inInches);
    expect(textOf(hole, { cells: { hole: '5.8' } })).toContain('5.60 +0.08/-0 mm');
    expect(textOf(hole, { cells: { hole: '' } })).toContain('5.60 +0.08/-0 mm');
    expect(textOf(hole, { cells: { hole: '' }, shop: { units: 'in' } })).toContain(inInches);
  });
});
