/** One sheet part of the invented cabinet, as both revisions write it: B in mm, A in inches and gauge numbers. */
export interface Panel {
  readonly name: string;
  readonly what: string;
  readonly finish: string;
  readonly b: { readonly material: string; readonly thickness: number | string };
  readonly a: { readonly material: string; readonly thickness: string };
}

export const panels: readonly Panel[] = [
  {
    name: 'RC-01',
    what: 'Base panel',
    finish: 'powder coat after pressing',
    b: { material: 'DC01', thickness: 1.5 },
    a: { material: 'CRS', thickness: '.060' },
  },
  {
    name: 'RC-02',
    what: 'Inner panel',
    finish: 'chem film before pressing',
    b: { material: '5052-H32', thickness: 0.8 },
    a: { material: '5052-H32', thickness: '.040' },
  },
  {
    name: 'RC-03',
    what: 'Front panel',
    finish: '',
    b: { material: 'SS304', thickness: 1.5 },
    a: { material: '304 SS', thickness: '16 ga' },
  },
  {
    name: 'RC-04',
    what: 'Back panel',
    finish: 'powder coat after pressing',
    b: { material: 'galvanneal', thickness: '18 ga' },
    a: { material: 'GALVANNEAL', thickness: '18 ga' },
  },
  {
    name: 'RC-05',
    what: 'Top panel',
    finish: 'chem film before pressing',
    b: { material: '6061-T6', thickness: 2 },
    a: { material: '6061-T6', thickness: '.080' },
  },
  {
    name: 'RC-06',
    what: 'Floor panel',
    finish: '',
    b: { material: 'DX51D+Z275', thickness: 1.2 },
    a: { material: 'GALV', thickness: '.048' },
  },
];

/** Small brackets that have no row of their own in the list. */
export const brackets: readonly Panel[] = [
  {
    name: 'RC-03B',
    what: 'Bracket',
    finish: '',
    b: { material: 'SS304', thickness: '' },
    a: { material: '304 SS', thickness: '16 ga' },
  },
  {
    name: 'RC-05B',
    what: 'Bracket',
    finish: '',
    b: { material: 'see drawing', thickness: 2 },
    a: { material: 'see drawing', thickness: '.080' },
  },
  {
    name: 'RC-06B',
    what: 'Bracket',
    finish: '',
    b: { material: 'ALUM', thickness: 1.5 },
    a: { material: '5052-H32', thickness: '.060' },
  },
];
