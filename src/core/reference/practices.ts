import type { Practice } from '../model/table.ts';

/** Facts of the trade that no document we have read states; every finding that rests on one cites it by id. */
export const practices = [
  {
    id: 'practice-hardness-margin',
    title: 'The sheet is at least 20 points softer than the fastener on Rockwell B',
    note: 'common practice, no source',
  },
  {
    id: 'practice-family-table',
    title: 'Which fastener metals hold in which sheet metals',
    note: 'common practice, no source',
  },
  {
    id: 'practice-catalogue-limit',
    title: 'A sheet hardness limit stated by the catalogue goes before the general margin',
    note: 'common practice, no source',
  },
  {
    id: 'practice-no-maximum',
    title: 'Without a published maximum hardness, twice the margin is asked of the typical value',
    note: 'common practice, no source: a judgement of ours, on the careful side',
  },
  {
    id: 'practice-soft-aluminium-maximum',
    title: 'Aluminium without a second published value is taken as up to 4 points harder than typical',
    note: 'common practice, no source: a judgement of ours',
  },
  {
    id: 'practice-nominal-sheet',
    title: "A fastener's minimum sheet is meant for nominal sheet",
    note: 'common practice, no source',
  },
  {
    id: 'practice-hole-band',
    title: 'A press-in mounting hole is nominal +0.08/-0 mm (+0.003/-0 in) unless the catalogue states its own band',
    note: 'common practice, no source',
  },
  {
    id: 'practice-edge-distance',
    title: 'Hole centre to sheet edge is at least the edge distance of the part',
    note: 'common practice, no source; closer needs a fixture that keeps the edge from bulging',
  },
  {
    id: 'practice-three-facts',
    title: 'A row is judged on three facts: fastener, sheet metal, sheet thickness',
    note: 'common practice, no source',
  },
  {
    id: 'practice-one-unit-per-column',
    title: 'One column is written in one unit',
    note: 'common practice, no source',
  },
  {
    id: 'practice-class-minimum',
    title: 'A named fastener class without a stated hardness is taken at the minimum of that class',
    note: 'common practice, no source: the class minima are those of the fastener materials table',
  },
  {
    id: 'practice-flush-shank',
    title: 'The shank of a flush part is no longer than the sheet is thick',
    note: 'common practice, no source',
  },
  {
    id: 'practice-hole-rim',
    title: 'A press-in hole is punched or drilled and its rim left as struck: no deburring, no chamfer, no countersink',
    note: 'common practice, no source',
  },
  {
    id: 'practice-laser-hole',
    title: "A hole without its own tolerance is as good as the process that cuts it, not as the part's band",
    note: 'common practice, no source',
  },
  {
    id: 'practice-spacing',
    title:
      'Two press-in fasteners are at least the larger of their edge distances apart unless the catalogue states a spacing',
    note: 'common practice, no source',
  },
  {
    id: 'practice-bend-room',
    title: 'Beside a bend a press-in fastener needs room for half its flange on top of what the hole needs',
    note: 'common practice, no source',
  },
  {
    id: 'practice-press-force',
    title:
      'The press gives more than the installation force that the catalogue states; above 80 % of it there is little to spare',
    note: 'common practice, no source; for sheet that is neither steel nor aluminium the value for steel is taken as the higher',
  },
  {
    id: 'practice-one-panel-one-sheet',
    title: 'A panel is cut from one sheet: one metal, one thickness',
    note: 'common practice, no source',
  },
  {
    id: 'practice-look-alike-threads',
    title: 'M3 and 4-40, M4 and 8-32, M5 and 10-32 are easily taken for each other',
    note: 'common practice, no source',
  },
  {
    id: 'practice-look-alike-holes',
    title: 'Mounting holes less than 0.25 mm apart on one panel are easily taken for each other',
    note: 'common practice, no source',
  },
  {
    id: 'practice-press-side',
    title: 'Press from the punch side, never from the painted face',
    note: 'common practice, no source',
  },
  {
    id: 'practice-anodising-assemblies',
    title:
      'An aluminium panel with steel or other metals in it is not anodised; aluminium fasteners take the film with it',
    note: 'common practice, no source',
  },
  {
    id: 'practice-thin-films',
    title: 'Chemical film, passivation and black oxide need no allowance at the hole',
    note: 'common practice, no source',
  },
  {
    id: 'practice-load-ratings',
    title: 'Push-out and torque-out ratings hold for the sheet metal that they are given for, steel or aluminium',
    note: 'common practice, no source',
  },
  {
    id: 'practice-bottoming',
    title: 'A screw must not reach the bottom of a blind standoff; a pitch is kept clear of its length',
    note: 'common practice, no source: a judgement of ours where the depth of the thread is not catalogued',
  },
  {
    id: 'practice-description',
    title: 'A part number and a description that contradict each other mean that one of them is wrong',
    note: 'common practice, no source',
  },
] as const satisfies readonly Practice[];
