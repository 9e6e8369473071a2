import { describe, expect, it } from 'vitest';
import { type FactCells, readFacts } from '../../src/core/intake/facts.ts';
import { NO_FACTS, type WorkFacts } from '../../src/core/model/facts.ts';

const BLANK: FactCells = { finish: '', note: '', description: '', hole: '', load: '' };

type Case = readonly [text: string, facts: Partial<WorkFacts>];

/** Each text in one cell gives these facts and no others. */
function says(cell: keyof FactCells, cases: readonly Case[]): void {
  it.each(cases)(`${cell}: %s`, (text, facts) => {
    expect(readFacts({ ...BLANK, [cell]: text })).toEqual({ ...NO_FACTS, ...facts });
  });
}

const silent = (...texts: readonly string[]): readonly Case[] => texts.map((text) => [text, {}]);

describe('the rim of the hole', () => {
  says('note', [
    ['deburr', { rimWork: 'deburr' }],
    ['DEBURR HOLES', { rimWork: 'DEBURR' }],
    ['Holes to be deburred', { rimWork: 'deburred' }],
    ['deburr all edges', { rimWork: 'deburr' }],
    ['Remove all burrs', { rimWork: 'Remove all burrs' }],
    ['csk 90 deg both sides', { rimWork: 'csk' }],
    ["C'SINK 0.5", { rimWork: "C'SINK" }],
    ['Hole countersunk', { rimWork: 'countersunk' }],
    ['chamfer 0.5 x 45', { rimWork: 'chamfer' }],
    ['no burrs; deburr', { rimWork: 'deburr' }],
    ['deburr, no csk', { rimWork: 'deburr' }],
    ['Do not deburr, csk far side', { rimWork: 'csk' }],
    ['deburr outline but chamfer holes', { rimWork: 'chamfer' }],
    ['all edges deburred', { rimWork: 'deburred' }],
    ['deburr edges and holes', { rimWork: 'deburr' }],
    ['deburr edges of holes', { rimWork: 'deburr' }],
    ['deburr; break edges', { rimWork: 'deburr' }],
    ['remove all burrs and break edges', { rimWork: 'remove all burrs' }],
    ['edges deburred and holes chamfered', { rimWork: 'deburred' }],
    ['hole edges to be deburred', { rimWork: 'deburred' }],
    ['hole edges radiused', { rimWork: 'hole edges radiused' }],
    ['radius hole edges and outer edges', { rimWork: 'radius hole edges' }],
    ['round edges of holes', { rimWork: 'round edges of holes' }],
    ['break all sharp hole edges', { rimWork: 'break all sharp hole edges' }],
    ['alle Kanten entgraten', { rimWork: 'entgraten' }],
    ['Bohrung entgraten', { rimWork: 'entgraten' }],
    ['angesenkt', { rimWork: 'angesenkt' }],
    ['ébavurer', { rimWork: 'ébavurer' }],
  ]);
  says('note', [
    ...silent('do not deburr', 'Do not deburr or countersink', 'do not deburr, chamfer or csk', 'no csk'),
    ...silent('not countersunk', 'holes must not be deburred or countersunk', "don't chamfer", 'non-countersunk'),
    ...silent('no deburring, countersinking or chamfering', 'deburring not permitted', 'CSK: none', 'undeburred hole'),
    ...silent('holes shall be free of countersink', 'Loch nicht entgraten', 'keine Fase', 'ohne Senkung'),
    ...silent('ne pas ébavurer', 'sans chanfrein', 'DEBURR EDGES ONLY', 'deburr outline', 'Deburr outside edges'),
    ...silent('deburr all edges except holes', 'deburr panel, not the clinch holes', 'deburr other holes'),
    ...silent('Außenkanten entgraten', 'deburr outline, do not deburr holes', 'break sharp edges'),
    ...silent('edges deburred', 'edges to be deburred', 'deburr edges', 'edges broken', 'deburr the sharp edges'),
    ...silent('Edges: deburr', 'chamfer edges', 'deburr edges, not holes', 'deburr edges, holes as struck'),
    ...silent('Kanten entgraten', 'ébavurer les bords', 'do not radius hole edges', 'hole edges must not be rounded'),
    ['use csk screw M4x10', { screw: { thread: 'M4', lengthMm: 10, propertyClass: null } }],
  ]);
  says('hole', [
    ['5.6 deburr', { rimWork: 'deburr' }],
    ['5.6 do not deburr', {}],
    ['5.6 deburr edges', { rimWork: 'deburr' }],
    ['5.6 csk', { rimWork: 'csk' }],
    ['5.6 chamfer', { rimWork: 'chamfer' }],
    ['5.6 no csk', {}],
    ['5.6 laser', { holeProcess: 'laser' }],
    ['5.6 punched', { holeProcess: 'punched' }],
  ]);
  says('description', silent('Clinch stud, countersunk head', 'Standoff, chamfered ends'));
});

describe('how the hole is made', () => {
  says('note', [
    ['punched hole', { holeProcess: 'punched' }],
    ['PIERCE', { holeProcess: 'punched' }],
    ['drill and ream', { holeProcess: 'drilled' }],
    ['laser cut', { holeProcess: 'laser' }],
    ['water-jet cut', { holeProcess: 'waterjet' }],
    ['laser cut outline, punched holes', { holeProcess: 'punched' }],
    ['gestanzt', { holeProcess: 'punched' }],
    ['Loch gebohrt', { holeProcess: 'drilled' }],
    ...silent('punched or drilled', 'do not drill', 'punch side up', 'tap drill 3.3', 'laser mark part number'),
  ]);
});

describe('finishes of the fastener and of the sheet', () => {
  says('finish', [
    ['zinc plated', { fastenerFinish: 'zinc-electroplate' }],
    ['Zn 8 µm', { fastenerFinish: 'zinc-electroplate' }],
    ['yellow zinc chromate', { fastenerFinish: 'zinc-electroplate' }],
    ['Zinc per ASTM B633', { fastenerFinish: 'zinc-electroplate' }],
    ['verzinkt', { fastenerFinish: 'zinc-electroplate' }],
    ['zinc flake', { fastenerFinish: 'zinc-flake' }],
    ['zinc phosphate', { fastenerFinish: 'phosphate' }],
    ['hot dip galvanized', { fastenerFinish: 'hot-dip-zinc' }],
    ['cad plate', { fastenerFinish: 'cadmium-electroplate' }],
    ['electroless nickel', { fastenerFinish: 'nickel-plate' }],
    ['bright tin plate', { fastenerFinish: 'tin-plate' }],
    ['verchromt', { fastenerFinish: 'chromium-plate' }],
    ['passivated', { fastenerFinish: 'passivated' }],
    ['brüniert', { fastenerFinish: 'black-oxide' }],
    ['plain', { fastenerFinish: 'plain' }],
    ['powder coat black', { sheetFinish: 'powder-coat' }],
    ['anodised', { sheetFinish: 'anodised' }],
    ['hard anodize 50 um', { sheetFinish: 'hard-anodised', sheetFinishUm: 50 }],
    ['MIL-DTL-5541 chem film', { sheetFinish: 'chem-film' }],
    ['zinc (panel)', { sheetFinish: 'zinc-electroplate' }],
    ['zinc plate after assembly', { sheetFinish: 'zinc-electroplate', pressedWhen: 'before-finish' }],
    [
      'zinc plate; powder coat 80 um on panel',
      { fastenerFinish: 'zinc-electroplate', sheetFinish: 'powder-coat', sheetFinishUm: 80 },
    ],
    ['panel powder coated, hardware zinc', { fastenerFinish: 'zinc-electroplate', sheetFinish: 'powder-coat' }],
    ...silent(
      'black',
      '-',
      'N/A',
      'zinc or nickel',
      'galvanized',
      'see drawing',
      'CAD file',
      'mechanically plated zinc',
    ),
  ]);
  says('note', [
    ['powder coat 60-80 µm', { sheetFinish: 'powder-coat', sheetFinishUm: 80 }],
    ['powder 3 mil', { sheetFinish: 'powder-coat', sheetFinishUm: 76.2 }],
    ['powder coat 80 ±20 µm', { sheetFinish: 'powder-coat', sheetFinishUm: 100 }],
    ['paint 0.08 mm', { sheetFinish: 'paint', sheetFinishUm: 80 }],
    ['chem film, powder coat black 70 microns', { sheetFinish: 'powder-coat', sheetFinishUm: 70 }],
    ['pulverbeschichtet RAL 7035, 80 µm', { sheetFinish: 'powder-coat', sheetFinishUm: 80 }],
    ...silent('unpainted', 'no paint', 'keep threads free of paint', 'paint mark on head', 'not plated'),
  ]);
  says('description', [
    ['Standoff aluminium, clear anodised', { fastenerFinish: 'anodised' }],
    ['Clinch nut M4 zinc for front panel', { fastenerFinish: 'zinc-electroplate' }],
    ['Clinch nut M4, for zinc plated sheet', { sheetFinish: 'zinc-electroplate' }],
  ]);
  says('sheetFinish', [['anodised', { sheetFinish: 'anodised' }]]);
});

describe('the order of work', () => {
  says('note', [
    ['press before powder coat', { sheetFinish: 'powder-coat', pressedWhen: 'before-finish' }],
    ['install after plating', { pressedWhen: 'after-finish' }],
    ['anodize after insertion', { sheetFinish: 'anodised', pressedWhen: 'before-finish' }],
    ['fit after paint', { sheetFinish: 'paint', pressedWhen: 'after-finish' }],
    ['hardware to be installed prior to painting', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['press in after panel has been plated', { pressedWhen: 'after-finish' }],
    ['powder coat before installing hardware', { sheetFinish: 'powder-coat', pressedWhen: 'after-finish' }],
    ['zinc plate then press', { sheetFinish: 'zinc-electroplate', pressedWhen: 'after-finish' }],
    ['press nuts, paint after', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['install post-plating', { pressedWhen: 'after-finish' }],
    ['install pre-paint', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['do not install before plating', { pressedWhen: 'after-finish' }],
    ['never press after paint', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['press after anodising, before paint', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['nach dem Pulverbeschichten einpressen', { sheetFinish: 'powder-coat', pressedWhen: 'after-finish' }],
    ['vor dem Lackieren einpressen', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['sertir avant peinture', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['press into pre-painted sheet', { sheetFinish: 'paint' }],
    ['check threads after paint', { sheetFinish: 'paint' }],
    ['clean before pressing; painted panel', { sheetFinish: 'paint' }],
    ['insert nuts prior to anodise', { sheetFinish: 'anodised', pressedWhen: 'before-finish' }],
    ['press-in nuts to be fitted before powder coat', { sheetFinish: 'powder-coat', pressedWhen: 'before-finish' }],
    ['press in nuts before paint', { sheetFinish: 'paint', pressedWhen: 'before-finish' }],
    ['press the M4 nuts after anodising', { sheetFinish: 'anodised', pressedWhen: 'after-finish' }],
    ['clinch nut, zinc plated', { fastenerFinish: 'zinc-electroplate' }],
    ['insert nut, zinc plated, then passivated', { fastenerFinish: 'zinc-electroplate' }],
    ['zinc plate after pressing not allowed', { sheetFinish: 'zinc-electroplate', pressedWhen: 'after-finish' }],
    ...silent('install before bending', 'press after heat treatment', 'after plating', 'final assembly after shipping'),
  ]);

  const bath = { sheetFinish: 'plating', pressedWhen: 'before-finish' } as const;
  const unnamed = { pressedWhen: 'before-finish', finishUnnamed: true } as const;
  says('note', [
    ['plate after assembly', bath],
    ['panel plated after pressing', bath],
    ['plate panel after insertion', bath],
    ['press nuts, then plate', bath],
    ['insert studs before plating', bath],
    ['galvanize after pressing', { sheetFinish: 'hot-dip-zinc', pressedWhen: 'before-finish' }],
    ['panel galvanised after pressing', { sheetFinish: 'hot-dip-zinc', pressedWhen: 'before-finish' }],
    ['finish after insertion', unnamed],
    ['coat after pressing', unnamed],
    ['surface treatment after pressing', unnamed],
    ['press after finishing', { pressedWhen: 'after-finish' }],
    ['do not plate after pressing', { pressedWhen: 'after-finish' }],
    ['plate after pressing not allowed', { pressedWhen: 'after-finish' }],
    ...silent(
      'touch up plating after pressing',
      'plating must not crack after pressing',
      'check plating after assembly',
    ),
    ...silent(
      'install base plate after pressing nuts',
      'attach cover plate after insertion',
      'stack plate after pressing',
    ),
    ...silent(
      'Plate to be fitted after pressing nuts',
      'galvanized sheet bent after pressing',
      'finish boring after assembly',
    ),
  ]);

  it('an unnamed plating is the one that another cell names', () => {
    const facts = readFacts({ ...BLANK, finish: 'sheet: nickel plate', note: 'plate after assembly' });
    expect(facts).toEqual({ ...NO_FACTS, sheetFinish: 'nickel-plate', pressedWhen: 'before-finish' });
    const powder = readFacts({ ...BLANK, finish: 'sheet: powder coat', note: 'finish after insertion' });
    expect(powder).toEqual({ ...NO_FACTS, sheetFinish: 'powder-coat', pressedWhen: 'before-finish' });
    const own = readFacts({ ...BLANK, finish: 'zinc plated', note: 'plate after assembly' });
    expect(own).toEqual({ ...NO_FACTS, ...bath, fastenerFinish: 'zinc-electroplate' });
  });

  const whole = (sheetFinish: WorkFacts['sheetFinish']) => ({ sheetFinish, pressedWhen: 'before-finish' }) as const;
  says('note', [
    ['nickel plate complete assembly', whole('nickel-plate')],
    ['assembly to be zinc plated', whole('zinc-electroplate')],
    ['zinc plate assy', whole('zinc-electroplate')],
    ['zinc plated as an assembly', whole('zinc-electroplate')],
    ['zinc plating of the complete assembly', whole('zinc-electroplate')],
    ['plate as an assembly', bath],
    ['powder coat assembly', whole('powder-coat')],
    ['mates with zinc plated assembly', { fastenerFinish: 'zinc-electroplate' }],
    ['captive screw assembly: zinc plated', { fastenerFinish: 'zinc-electroplate' }],
    ['zinc plate assembly drawing 123', { fastenerFinish: 'zinc-electroplate' }],
    ...silent(
      'do not plate assembly',
      'assembly not to be plated',
      'no plating of assembly',
      'finish assembly per drawing',
    ),
  ]);
  says('description', [['Screw assembly, zinc plate assembly', { fastenerFinish: 'zinc-electroplate' }]]);

  it('is nothing when two cells contradict each other', () => {
    const facts = readFacts({ ...BLANK, finish: 'powder coat after pressing', note: 'press after powder coat' });
    expect(facts).toEqual({ ...NO_FACTS, sheetFinish: 'powder-coat' });
  });
});

describe('masking and the side to press from', () => {
  says('note', [
    ['mask hole', { holeMasked: true }],
    ['Mask holes before powder coat', { holeMasked: true, sheetFinish: 'powder-coat' }],
    ['hole and seat masked', { holeMasked: true }],
    ['Bohrung abkleben', { holeMasked: true }],
    ...silent('mask threads', 'mask threaded holes', 'do not mask holes', 'mask studs'),
    ['press from painted side', { wrongSide: 'press from painted side', sheetFinish: 'paint' }],
    ['install from burr side', { wrongSide: 'install from burr side' }],
    ['install from the coated face', { wrongSide: 'install from the coated face' }],
    ['press from punch side, not from burr side', {}],
    ['do not press from the burr side', {}],
    ['press from side opposite the burr face', {}],
    ...silent('do not press from the painted face', 'never install from the powder coated side'),
    ...silent('press from punch side, not from painted face', 'press from the side opposite the painted face'),
    ...silent('nicht von der lackierten Seite einpressen'),
    ['powder coat black; do not press from the painted face', { sheetFinish: 'powder-coat' }],
    ['do not paint, press from painted face', { wrongSide: 'press from painted face', sheetFinish: 'paint' }],
  ]);
});

describe('loads', () => {
  says('note', [
    ['push-out 400 N', { requiredPushOutN: 400 }],
    ['pushout min 90 lbf', { requiredPushOutN: 400.339945 }],
    ['push out 1,200 N', { requiredPushOutN: 1200 }],
    ['400 N push-out', { requiredPushOutN: 400 }],
    ['push-out ≥ 0.4 kN; torque-out ≥ 2,5 N·m', { requiredPushOutN: 400, requiredTorqueOutNm: 2.5 }],
    ['torque-out 25 in-lb', { requiredTorqueOutNm: 2.82462073 }],
    ['Auspresskraft 400 N, Ausdrehmoment 2,5 Nm', { requiredPushOutN: 400, requiredTorqueOutNm: 2.5 }],
    ['tighten to 2.5 Nm', { tighteningNm: 2.5 }],
    ['tightening torque 2.0-2.5 Nm', { tighteningNm: 2.5 }],
    ['Anzugsmoment 2,5 Nm', { tighteningNm: 2.5 }],
    ...silent('push-out 400', 'torque 2.5 Nm', 'pull-out 400 N', '400 N', 'push-out 12 mm'),
  ]);
  says('load', [
    ['400 N', { requiredPushOutN: 400 }],
    ['25 in-lb', { requiredTorqueOutNm: 2.82462073 }],
    ['400 N / 2.5 Nm', { requiredPushOutN: 400, requiredTorqueOutNm: 2.5 }],
    ['90 lbf min', { requiredPushOutN: 400.339945 }],
    ...silent('400', '500 N tension', 'preload 3 kN', 'torque 2.5 Nm'),
  ]);

  it.each([
    ['Push-out (N)', { requiredPushOutN: 40 }],
    ['Torque-out (in-lb)', { requiredTorqueOutNm: 4.51939316 }],
    ['Load [lbf]', { requiredPushOutN: 177.928865 }],
    ['Push-out', {}],
    ['Load', {}],
  ])('a bare number under the heading %s', (loadHeading, facts) => {
    expect(readFacts({ ...BLANK, load: '40', loadHeading })).toEqual({ ...NO_FACTS, ...facts });
  });
});

describe('the screw and what it clamps', () => {
  says('note', [
    ['screw M4x12-8.8', { screw: { thread: 'M4', lengthMm: 12, propertyClass: '8.8' } }],
    ['fastens with M4 x 10', { screw: { thread: 'M4', lengthMm: 10, propertyClass: null } }],
    ['M5x16 10.9 bolt', { screw: { thread: 'M5', lengthMm: 16, propertyClass: '10.9' } }],
    ['vis M4x12 A2-70', { screw: { thread: 'M4', lengthMm: 12, propertyClass: 'A2-70' } }],
    ['#8-32 x 1/2 screw', { screw: { thread: '8-32', lengthMm: 12.7, propertyClass: null } }],
    ['screw 8-32 x 12', { screw: { thread: '8-32', lengthMm: null, propertyClass: null } }],
    ['mating part 2 mm', { matingMm: 2 }],
    ['clamps 1.5 mm cover', { matingMm: 1.5 }],
    ['clamped thickness .062 in', { matingMm: 1.5748 }],
    ...silent(
      'captive screw M4x16',
      'screw hole M4',
      'mating part 2',
      'mating panel hole 4.5 mm',
      'screws not included',
    ),
  ]);
  says('description', [
    ['Clinch nut M4 for screw M4x12', { screw: { thread: 'M4', lengthMm: 12, propertyClass: null } }],
    ['Captive screw M4x16', {}],
  ]);
});

describe('service and welding', () => {
  says('note', [
    ['outdoor', { environment: 'outdoor' }],
    ['marine use', { environment: 'outdoor' }],
    ['salt air', { environment: 'outdoor' }],
    ['im Freien', { environment: 'outdoor' }],
    ['indoor only', { environment: 'indoor' }],
    ['controlled environment', { environment: 'controlled' }],
    ['indoor and outdoor use', { environment: 'outdoor' }],
    ...silent('salt spray 96 h', 'not for outdoor use', 'exterior panel', 'outside edges'),
    ['spot weld adjacent', { welding: 'spot weld adjacent' }],
    ['MIG weld near, M4 nuts', { welding: 'MIG weld near, M4 nuts' }],
    ['Punktschweißen daneben', { welding: 'Punktschweißen daneben' }],
    ...silent('no welding near nut', 'weld nut', 'do not weld', 'weldment'),
  ]);
});

it('a blank row says nothing', () => {
  expect(readFacts(BLANK)).toBe(NO_FACTS);
  expect(readFacts({ ...BLANK, hole: '5.6', load: '400' })).toEqual(NO_FACTS);
});
