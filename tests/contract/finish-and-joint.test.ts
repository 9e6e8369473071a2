import { describe, expect, it } from 'vitest';
import { runRule } from '../../src/core/engine/audit-line.ts';
import { exampleSubject } from '../../src/core/engine/example.ts';
import { NO_FACTS, type WorkFacts } from '../../src/core/model/facts.ts';
import type { Fastener } from '../../src/core/model/fastener.ts';
import type { Finding } from '../../src/core/model/finding.ts';
import { embrittlement } from '../../src/core/rules/finish/embrittlement.ts';
import { galvanic } from '../../src/core/rules/finish/galvanic.ts';
import { holeClosing } from '../../src/core/rules/finish/hole-closing.ts';
import { order } from '../../src/core/rules/finish/order.ts';
import { engagement } from '../../src/core/rules/joint/engagement.ts';
import { pushOut } from '../../src/core/rules/joint/push-out.ts';
import { tightening } from '../../src/core/rules/joint/tightening.ts';
import { torqueOut } from '../../src/core/rules/joint/torque-out.ts';
import type { Example, Rule } from '../../src/core/rules/rule.ts';
import { agrees, readTable } from '../outside/read-table.ts';

type Row = Partial<Omit<Example, 'outcome' | 'says'>> & { readonly facts?: Partial<WorkFacts> };

/** What a rule says of a row whose facts are given directly. */
function judge(rule: Rule, { facts, cells = {}, ...row }: Row): Finding | null {
  const subject = exampleSubject({ cells, ...row });
  return runRule(rule, { ...subject, line: { ...subject.line, facts: { ...NO_FACTS, ...facts } } });
}

const outcomeOf = (rule: Rule, row: Row) => {
  const finding = judge(rule, row);
  return finding ? `${finding.outcome} ${finding.says}` : 'nothing';
};

const of = (...candidates: readonly string[]): Partial<Fastener> => ({
  material: { text: candidates.join(' or '), candidates },
});
const STAINLESS = of('stainless-300');
const ALUMINIUM = of('aluminium-2024-t4');

// common practice, no source, but for what tests/outside names
describe('finish/order', () => {
  it.each<readonly [WorkFacts['sheetFinish'], string, Partial<Fastener>, string]>([
    ['anodised', '5052-H32', {}, 'fails attack'],
    ['hard-anodised', '5052-H32', STAINLESS, 'fails attack'],
    ['anodised', '5052-H32', ALUMINIUM, 'holds anodised-along'],
    ['anodised', 'ALUM', STAINLESS, 'fails attack'],
    ['anodised', 'DC01', STAINLESS, 'unknown not-anodised'],
    ['zinc-electroplate', 'DC01', {}, 'fails traps-acid'],
    ['phosphate', 'DC01', {}, 'fails traps-acid'],
    ['black-oxide', 'DC01', {}, 'fails traps-acid'],
    ['hot-dip-zinc', 'GALV', {}, 'fails traps-acid'],
    ['nickel-plate', 'DC01', STAINLESS, 'marginal bath'],
    ['tin-plate', 'C110', of('brass'), 'marginal bath'],
    ['passivated', '304', STAINLESS, 'holds filmed-along'],
    ['passivated', '304', {}, 'marginal bath'],
    ['powder-coat', 'DC01', {}, 'holds mask-threads'],
    ['paint', 'DC01', {}, 'holds mask-threads'],
    ['chem-film', '5052-H32', {}, 'marginal chem-film'],
    ['chem-film', '5052-H32', ALUMINIUM, 'holds filmed-along'],
    ['zinc-electroplate', 'DC01', of(), 'unknown no-metal'],
    ['plating', 'DC01', {}, 'fails traps-acid'],
    ['plating', 'DC01', STAINLESS, 'marginal bath'],
    ['plating', '5052-H32', ALUMINIUM, 'marginal bath'],
    ['plating', 'DC01', of(), 'unknown no-metal'],
    ['plating', 'GALV', {}, 'fails traps-acid'],
    ['plain', 'DC01', {}, 'nothing'],
  ])('pressed before %s in %s', (sheetFinish, material, part, said) => {
    expect(outcomeOf(order, { facts: { sheetFinish, pressedWhen: 'before-finish' }, cells: { material }, part })).toBe(
      said,
    );
  });

  it.each(['anodised', 'chem-film', 'zinc-electroplate', 'powder-coat', 'passivated'] as const)(
    'holds when pressed after %s',
    (sheetFinish) => {
      expect(judge(order, { facts: { sheetFinish, pressedWhen: 'after-finish' } })?.outcome).toBe('holds');
    },
  );

  it('asks for the order when it is not said, and keeps quiet of the zinc that sheet comes with', () => {
    expect(outcomeOf(order, { facts: { sheetFinish: 'anodised' } })).toBe('note say-order');
    expect(judge(order, { facts: { sheetFinish: 'anodised' } })?.text).toContain('finish the sheet first, then press');
    expect(outcomeOf(order, { facts: { sheetFinish: 'hot-dip-zinc' }, cells: { material: 'GALV' } })).toBe('nothing');
    expect(outcomeOf(order, { facts: { sheetFinish: 'hot-dip-zinc' } })).toBe('note say-order');
  });

  it('says nothing of a list without finishes unless the shop asks', () => {
    expect(outcomeOf(order, {})).toBe('nothing');
    expect(outcomeOf(order, { shop: { silence: 'unknown' } })).toBe('unknown silent');
    expect(outcomeOf(order, { facts: { sheetFinish: 'paint' }, part: null })).toBe('nothing');
  });

  it('asks which finish follows pressing', () => {
    const facts = { pressedWhen: 'before-finish', finishUnnamed: true } as const;
    expect(outcomeOf(order, { facts })).toBe('unknown unnamed');
    expect(judge(order, { facts })?.text).toContain('its name would settle this');
    expect(outcomeOf(order, { facts: { pressedWhen: 'after-finish' } })).toBe('nothing');
    expect(outcomeOf(order, { facts, part: null })).toBe('nothing');
  });

  it('lets the worse of side and order speak', () => {
    const painted = { wrongSide: 'from the painted face', sheetFinish: 'paint' } as const;
    expect(outcomeOf(order, { facts: { ...painted, pressedWhen: 'after-finish' } })).toBe('fails painted-face');
    expect(outcomeOf(order, { facts: { wrongSide: 'burr side' } })).toBe('marginal burr-side');
    const plated = { wrongSide: 'burr side', sheetFinish: 'zinc-electroplate', pressedWhen: 'before-finish' } as const;
    expect(outcomeOf(order, { facts: plated })).toBe('fails traps-acid');
  });
});

describe('finish/hole-closing', () => {
  const coated = (um: number | null, hole: string, more: Partial<WorkFacts> = {}): Row => ({
    facts: { sheetFinish: 'powder-coat', sheetFinishUm: um, pressedWhen: 'after-finish', ...more },
    cells: { hole },
  });

  it('closes 5.60 by 0.16 at 80 um of powder', () => {
    // common practice, no source: 80 um per side close a hole by 0.16 mm
    const finding = judge(holeClosing, coated(80, '5.6'));
    expect(finding).toMatchObject({ outcome: 'fails', says: 'closed', values: { holeMm: 5.6, holeLowMm: 5.6 } });
    expect(agrees('5.44', finding?.values.closedHoleMm ?? Number.NaN)).toBe(true);
  });

  it.each([
    [80, '5.76', 'holds inside'],
    [80, '5.75', 'fails closed'],
    [80, '5.77', 'holds inside'],
    [80, '5.77 ±0.02', 'marginal may-close'],
    [80, '5.76 +0.08/-0', 'holds inside'],
    [80, '0.2268 in', 'holds inside'],
    [80, '0.2264 in', 'fails closed'],
    // coating trade press: powder from 25 um (mild interior, least) to 127 um
    [null, '5.64', 'fails closed'],
    [null, '5.65', 'marginal may-close'],
    [null, '5.85', 'marginal may-close'],
    [null, '5.86', 'marginal may-stay-open'],
    [80, '', 'note call-out'],
    [null, '', 'note call-out'],
    [80, 'as drawn', 'nothing'],
  ])('%s um over hole %s', (um, hole, said) => {
    expect(outcomeOf(holeClosing, coated(um, hole))).toBe(said);
  });

  it('tells the hole to make, in either unit, or that masking alone helps', () => {
    expect(judge(holeClosing, coated(80, ''))?.text).toContain('make it 5.76 to 5.84 mm before coating');
    expect(judge(holeClosing, { ...coated(80, ''), shop: { units: 'in' } })?.text).toContain('0.2268 to 0.2299 in');
    expect(judge(holeClosing, coated(null, ''))?.text).not.toContain('make it');
  });

  it.each<readonly [Partial<WorkFacts>, string]>([
    [{ holeMasked: true }, 'holds masked'],
    [{ pressedWhen: 'before-finish' }, 'nothing'],
    [{ pressedWhen: null }, 'nothing'],
    [{ sheetFinish: null }, 'nothing'],
    [{ sheetFinish: 'chem-film' }, 'holds thin'],
    [{ sheetFinish: 'plating' }, 'unknown no-build'],
    [{ sheetFinish: 'paint' }, 'unknown no-build'],
    [{ sheetFinish: 'paint', sheetFinishUm: 40 }, 'fails closed'],
    // ASTM B633: the classes are least thicknesses outside; holes are normally exempt
    [{ sheetFinish: 'zinc-electroplate' }, 'marginal may-close'],
    [{ sheetFinish: 'anodised' }, 'marginal may-close'],
    // MIL-A-8625 type III, from memory: 6.5 um at the least
    [{ sheetFinish: 'hard-anodised' }, 'fails closed'],
  ])('%j', (facts, said) => {
    expect(outcomeOf(holeClosing, coated(null, '5.6', facts))).toBe(said);
  });

  it('says nothing of zinc from the mill, whose holes are punched through it', () => {
    const facts = { sheetFinish: 'hot-dip-zinc', pressedWhen: 'after-finish' } as const;
    expect(outcomeOf(holeClosing, { facts, cells: { material: 'GALV' } })).toBe('nothing');
  });
});

describe('finish/embrittlement', () => {
  const plated = (value: number, finish = 'zinc plated', scale: 'HV' | 'HRC' | 'HB3000' = 'HV'): Row => ({
    part: { finish, hardnessMin: { scale, value } },
  });

  it.each([
    // ISO 4042:1999 clause 6 (320 HV), ISO 4042:2018 4.4 (390 HV), ASTM B633-15 1.3 (HRC 46), QQ-P-416F 3.2.1 (HRC 43)
    [plated(319), 'holds none'],
    [plated(320), 'note note'],
    [plated(390), 'note note'],
    [plated(391), 'marginal bake'],
    [plated(458), 'marginal bake'],
    [plated(459), 'fails do-not-plate'],
    [plated(423, 'cadmium plated'), 'marginal bake'],
    [plated(424, 'cadmium plated'), 'fails do-not-plate'],
    [plated(32, 'zinc plated', 'HRC'), 'holds none'],
    [plated(33, 'zinc plated', 'HRC'), 'note note'],
    [plated(46, 'zinc plated', 'HRC'), 'marginal bake'],
    [plated(47, 'zinc plated', 'HRC'), 'fails do-not-plate'],
    [plated(200, 'zinc plated', 'HB3000'), 'holds none'],
    [plated(500, 'plain'), 'nothing'],
    [plated(500, ''), 'nothing'],
    [plated(500, 'zinc flake'), 'nothing'],
  ])('%j: %s', (row, said) => {
    expect(outcomeOf(embrittlement, row)).toBe(said);
  });

  it('reads the finish from the row where the catalogue has none', () => {
    expect(outcomeOf(embrittlement, { ...plated(400, ''), facts: { fastenerFinish: 'zinc-electroplate' } })).toBe(
      'marginal bake',
    );
  });

  it('shows the hardness in Vickers', () => {
    // ASTM E140-12b Table 1: HRC 40 is HV 392
    expect(judge(embrittlement, plated(40, 'zinc plated', 'HRC'))?.values.hardnessHv).toBe(392);
  });

  it('names the hours of baking', () => {
    // ASTM B850-98 (2009): 14 h at HRC 39 to 43, 16 h at HRC 43 to 45
    expect(judge(embrittlement, plated(42, 'zinc plated', 'HRC'))?.text).toContain('at least 14 h');
    expect(judge(embrittlement, plated(44, 'zinc plated', 'HRC'))?.text).toContain('at least 16 h');
  });

  it('asks for baking of case-hardened parts at any hardness, and trusts no assumed one', () => {
    // ASTM F1941M-05, introduction
    const cased = {
      ...of('case-hardened-steel'),
      finish: 'zinc plated',
      hardnessMin: { scale: 'HV', value: 250 } as const,
    };
    expect(outcomeOf(embrittlement, { part: cased })).toBe('marginal bake');
    expect(outcomeOf(embrittlement, { part: { finish: 'zinc plated', hardnessMin: null } })).toBe('note assumed');
  });

  it('concerns hardened carbon steel alone', () => {
    const hard = { finish: 'zinc plated', hardnessMin: { scale: 'HRC', value: 44 } } as const;
    expect(outcomeOf(embrittlement, { part: { ...STAINLESS, ...hard } })).toBe('nothing');
    expect(outcomeOf(embrittlement, { part: { ...of('iso-898-1-4-8'), ...hard } })).toBe('nothing');
  });
});

describe('finish/galvanic', () => {
  const FASTENERS: Readonly<Record<string, Partial<Fastener>>> = {
    'zinc-plated steel': { finish: 'zinc plated' },
    '300 stainless': { ...STAINLESS, finish: 'passivated' },
    '400 stainless': { ...of('stainless-400-hardened'), finish: 'passivated' },
    brass: { ...of('brass'), finish: 'plain' },
    'tin plate': { finish: 'tin plated' },
    cadmium: { finish: 'cadmium plated' },
  };
  const SHEETS: Readonly<Record<string, string>> = {
    galvanized: 'GALV',
    'carbon steel': 'DC01',
    '5052': '5052-H32',
    '304': '304',
    copper: 'C110',
  };

  // worked by hand from the anodic index; anode and direction by MIL-DTL-14072F 3.13.1b
  it.each(readTable('galvanic-pairs'))('$fastener in $sheet', (record) => {
    const part = FASTENERS[record.fastener ?? ''];
    const material = SHEETS[record.sheet ?? ''];
    if (!part || !material) throw new Error('no such part or sheet');
    for (const [environment, column] of [
      ['controlled', 'at_0.50'],
      ['indoor', 'at_0.25'],
      ['outdoor', 'at_0.15'],
    ] as const) {
      const finding = judge(galvanic, { part, cells: { material }, facts: { environment } });
      expect(agrees(record.delta_v ?? '', finding?.values.anodicDifferenceV ?? Number.NaN), environment).toBe(true);
      expect(finding?.says).toBe(record[column] === 'exceeds' ? 'over' : 'within');
      const isBad = record[column] === 'exceeds' && environment === 'outdoor' && record.anode === 'fastener';
      expect(finding?.outcome).toBe(isBad ? 'marginal' : record[column] === 'exceeds' ? 'note' : 'holds');
      expect(finding?.text).toContain(
        { fastener: 'is the fastener', sheet: 'is the sheet', '': 'Neither' }[record.anode ?? ''],
      );
    }
  });

  it('takes the environment of the shop where the row names none', () => {
    const row = {
      part: { finish: 'zinc plated' },
      cells: { material: '5052-H32' },
      shop: { environment: 'outdoor' },
    } as const;
    expect(judge(galvanic, row)?.values.limitV).toBe(0.15);
    expect(judge(galvanic, { ...row, facts: { environment: 'controlled' } })?.values.limitV).toBe(0.5);
  });

  it('tells 2000-series aluminium from other aluminium, and speaks for the worst of several', () => {
    const part = { finish: 'zinc plated' };
    // anodic index handbook table: 1.25 - 0.75
    expect(judge(galvanic, { part, cells: { material: '2024-T3' } })?.values.anodicDifferenceV).toBe(0.5);
    expect(judge(galvanic, { part, cells: { material: '5052-H32 or GALV' } })?.values.anodicDifferenceV).toBe(0.35);
    expect(outcomeOf(galvanic, { part, cells: { material: '5052-H32 or GALV' } })).toBe('note over');
  });

  it('compares the plating of the sheet, and says nothing under a hard anodic film or of unknown metals', () => {
    const part = { finish: 'zinc plated' };
    const material = '5052-H32';
    expect(
      judge(galvanic, { part, cells: { material }, facts: { sheetFinish: 'tin-plate' } })?.values.anodicDifferenceV,
    ).toBe(0.6);
    expect(outcomeOf(galvanic, { part, cells: { material }, facts: { sheetFinish: 'hard-anodised' } })).toBe('nothing');
    expect(
      judge(galvanic, { part, cells: { material }, facts: { sheetFinish: 'plating' } })?.values.anodicDifferenceV,
    ).toBe(judge(galvanic, { part, cells: { material } })?.values.anodicDifferenceV);
    expect(outcomeOf(galvanic, { part, cells: { material: '' } })).toBe('nothing');
    expect(outcomeOf(galvanic, { part: of() })).toBe('nothing');
  });

  it('says where sources are far apart', () => {
    // independent list of electrode potentials: 0.12 V for 18-9 stainless and for titanium
    expect(judge(galvanic, { part: STAINLESS, cells: { material: '5052-H32' } })?.text).toContain('differ by 0.38 V');
    expect(judge(galvanic, { cells: { material: 'titanium grade 2' } })?.text).toContain(
      'differ by 0.18 V for titanium',
    );
    expect(judge(galvanic, { part: { finish: 'zinc plated' } })?.text).not.toContain('differ');
  });

  it('never holds by a finish that nobody states', () => {
    expect(outcomeOf(galvanic, {})).toBe('note within');
    expect(outcomeOf(galvanic, { part: { finish: 'plain' } })).toBe('holds within');
  });
});

describe('joint/push-out and joint/torque-out', () => {
  it.each([
    [500, {}, 'holds enough'],
    [499, {}, 'holds enough'],
    [502, {}, 'fails weak'],
    [112.4045 * 4.4482216, {}, 'holds enough'],
    [113 * 4.4482216, {}, 'fails weak'],
    [400, { shop: { pushOutSafety: 1.25 } }, 'holds enough'],
    [400, { shop: { pushOutSafety: 1.3 } }, 'fails weak'],
    [300, { cells: { material: '5052-H32' } }, 'holds enough'],
    [301, { cells: { material: '5052-H32' } }, 'fails weak'],
    [300, { cells: { material: 'GALV' } }, 'holds enough'],
    [300, { cells: { material: '304' } }, 'unknown other-metal'],
    [300, { cells: { material: '' } }, 'unknown no-sheet'],
    [300, { part: { pushOutSteelN: null } }, 'unknown no-rating'],
    [null, {}, 'nothing'],
    [300, { part: null }, 'nothing'],
  ])('push-out %d N, %j', (requiredPushOutN, row, said) => {
    expect(outcomeOf(pushOut, { ...row, facts: { requiredPushOutN } })).toBe(said);
  });

  it.each([
    [3, {}, 'holds enough'],
    [2.99, {}, 'holds enough'],
    [3.01, {}, 'fails weak'],
    [26.5522 * 0.1129848, {}, 'holds enough'],
    [27 * 0.1129848, {}, 'fails weak'],
    [2, { shop: { torqueOutSafety: 1.5 } }, 'holds enough'],
    [2.1, { shop: { torqueOutSafety: 1.5 } }, 'fails weak'],
    [2.1, { cells: { material: 'ALUM' } }, 'fails weak'],
    [null, {}, 'nothing'],
  ])('torque-out %d N m, %j', (requiredTorqueOutNm, row, said) => {
    expect(outcomeOf(torqueOut, { ...row, facts: { requiredTorqueOutNm } })).toBe(said);
  });

  it('gives the required load with its factor, which it says', () => {
    const finding = judge(pushOut, { facts: { requiredPushOutN: 300 }, shop: { pushOutSafety: 1.5 } });
    expect(finding).toMatchObject({
      values: { requiredN: 450, ratedN: 500 },
      text: expect.stringContaining('safety factor 1.5'),
    });
    expect(judge(torqueOut, { facts: { requiredTorqueOutNm: 3.25 } })?.text).toContain('3.25 N m is needed');
  });
});

describe('joint/engagement', () => {
  const screwed = (
    lengthMm: number | null,
    matingMm: number | null,
    part: Partial<Fastener> = {},
    thread = 'M4',
  ): Row => ({
    facts: { screw: { thread, lengthMm, propertyClass: null }, matingMm },
    part,
    cells: { thickness: '1' },
  });
  const blind: Partial<Fastener> = { kind: 'blind standoff', lengthMm: 10 };
  const through: Partial<Fastener> = { kind: 'through standoff', lengthMm: 10 };
  const nut: Partial<Fastener> = { shankMm: 1, heightMm: 4 };

  it.each<readonly [Row, string]>([
    // MIL-R-19309D 3.3.8.2: one diameter at least
    [screwed(6, 2, through), 'holds enough'],
    [screwed(5.9, 2, through), 'marginal short'],
    [screwed(6.1, 2, through), 'holds enough'],
    [screwed(2, 2, through), 'fails not-reached'],
    [screwed(30, 2, through), 'holds enough'],
    [screwed(11.3, 2, blind), 'holds enough'],
    [screwed(11.4, 2, blind), 'marginal may-bottom'],
    [screwed(12, 2, blind), 'marginal may-bottom'],
    [screwed(12.1, 2, blind), 'fails bottoms'],
    [screwed(6, 2, nut), 'holds enough'],
    [screwed(5.9, 2, nut), 'marginal short'],
    [screwed(12, 2, {}, 'M5'), 'fails other-thread'],
    [screwed(null, null, {}, 'M5'), 'fails other-thread'],
    [screwed(12, 2, {}, '8-32'), 'fails other-thread'],
    [screwed(12.7, 2, { thread: '8-32' }, '#8'), 'holds enough'],
    [screwed(4.064 + 2, 2, { ...through, thread: '8-32' }, '8-32'), 'marginal short'],
    [screwed(4.1656 + 2, 2, { ...through, thread: '8-32' }, '8-32'), 'holds enough'],
    [screwed(null, null), 'nothing'],
    [screwed(12, null), 'unknown missing'],
    [screwed(null, 2), 'unknown missing'],
    [screwed(12, 2, { heightMm: null }), 'unknown missing'],
    [screwed(12, 2, { thread: null }), 'unknown missing'],
    [screwed(12, 2, { kind: null }), 'unknown missing'],
    [screwed(12, 2, { kind: 'clinch stud' }), 'nothing'],
    [{ facts: { matingMm: 2 } }, 'nothing'],
  ])('%j: %s', (row, said) => {
    expect(outcomeOf(engagement, row)).toBe(said);
  });

  it('counts full threads, no more than the fastener has', () => {
    // geometry; pitch 0.7 of M4 by ISO 261
    expect(judge(engagement, screwed(9, 2, through))?.values.engagedThreads).toBeCloseTo(10, 9);
    expect(judge(engagement, screwed(30, 2, through))?.values.engagedThreads).toBeCloseTo(10 / 0.7, 9);
  });

  it('counts the sheet that a short shank leaves before the thread of a nut', () => {
    const row = { ...screwed(6, 2, nut), cells: { thickness: '1.5' } };
    expect(judge(engagement, row)).toMatchObject({ says: 'short', values: { engagedMm: 3.5 } });
  });

  it('names what is missing', () => {
    expect(judge(engagement, screwed(12, null))?.text).toContain('the thickness of what it clamps');
    expect(judge(engagement, screwed(null, 2, { heightMm: null }))?.text).toContain(
      'the length of the screw, kind and height',
    );
  });
});

describe('joint/tightening', () => {
  const torqued = (tighteningNm: number | null, part: Partial<Fastener> = {}): Row => ({
    facts: { tighteningNm },
    part,
  });
  const screwed = (propertyClass: string, torqueOutSteelNm: number | null, thread = 'M6'): Row => ({
    facts: { screw: { thread, lengthMm: 16, propertyClass } },
    part: { thread, torqueOutSteelNm },
  });

  it.each<readonly [Row, string]>([
    [torqued(3), 'holds below'],
    [torqued(2.99), 'holds below'],
    [torqued(3.01), 'fails turns'],
    [torqued(null), 'nothing'],
    [torqued(2, { torqueOutSteelNm: null }), 'unknown no-rating'],
    [{ ...torqued(2), cells: { material: '316' } }, 'unknown other-metal'],
    // T = K d F: M6 8.8 at 0.75 x 580 MPa (from memory) x 20.123 mm2 = 8753 N gives 7.88 N m at K 0.15 and 13.1 at K 0.25
    [screwed('8.8', 13.2), 'holds below'],
    [screwed('8.8', 13), 'marginal may-turn'],
    [screwed('8.8', 7.9), 'marginal may-turn'],
    [screwed('8.8', 7.8), 'fails turns'],
    [screwed('8.8', null), 'unknown no-rating'],
    [screwed('A2-70', 13), 'unknown no-class'],
    [screwed('8.8', 13, ''), 'unknown no-class'],
  ])('%j: %s', (row, said) => {
    expect(outcomeOf(tightening, row)).toBe(said);
  });

  it('gives the torque that decides', () => {
    const values = (rated: number) => judge(tightening, screwed('8.8', rated))?.values;
    expect(agrees('13.1', values(13.2)?.requiredNm ?? Number.NaN)).toBe(true);
    expect(agrees('7.88', values(7)?.requiredNm ?? Number.NaN)).toBe(true);
    expect(values(7)?.ratedNm).toBe(7);
  });

  it('prefers a stated torque to that of the class', () => {
    const row = screwed('8.8', 5);
    expect(outcomeOf(tightening, { ...row, facts: { ...row.facts, tighteningNm: 4 } })).toBe('holds below');
  });
});
