import type { SettingKey } from '../core/intake/shop-settings.ts';

/** One field of the settings form; its name, choices and range come with the setting itself. */
export interface SettingField {
  readonly key: SettingKey;
  /** Where the default comes from, in one sentence. */
  readonly origin: string;
  /** Step of the arrows of a number. */
  readonly step?: number;
}

/** The settings form: groups in the order in which a shop thinks of them. */
export const SETTING_GROUPS: readonly { readonly title: string; readonly fields: readonly SettingField[] }[] = [
  {
    title: 'Sheet',
    fields: [
      { key: 'hardnessMarginHrb', step: 1, origin: '20 points on Rockwell B: common practice, no source.' },
      { key: 'judgeThicknessAt', origin: 'Minima are meant for nominal sheet: common practice, no source.' },
      {
        key: 'thicknessStandard',
        origin: "The drawing's own unit usually tells whose mill tolerance was meant: our judgement.",
      },
      {
        key: 'sheetWidth',
        origin: 'Narrow is the first and tightest column of the tolerance tables: our judgement.',
      },
    ],
  },
  {
    title: 'Hole',
    fields: [
      { key: 'silence', origin: 'Hole and edge usually stand on the drawing: common practice, no source.' },
      { key: 'generalHoleToleranceMm', step: 0.01, origin: 'Empty, because title blocks differ.' },
      { key: 'holeProcess', origin: 'Not said, because shops differ.' },
      {
        key: 'bendMultiplier',
        step: 0.5,
        origin: 'Sources give 1.5 to 3 sheet thicknesses and disagree; 2 is the middle.',
      },
    ],
  },
  {
    title: 'Finish and environment',
    fields: [
      {
        key: 'environment',
        origin: '0.25 V between metals, uncontrolled indoors: MIL-F-14072 as restated by handbooks.',
      },
    ],
  },
  { title: 'Press', fields: [{ key: 'pressKn', step: 1, origin: 'Empty, because every press differs.' }] },
  {
    title: 'Joint',
    fields: [
      { key: 'pushOutSafety', step: 0.1, origin: '1: the required load is taken as it is given, our judgement.' },
      { key: 'torqueOutSafety', step: 0.1, origin: '1: the required torque is taken as it is given, our judgement.' },
    ],
  },
  {
    title: 'Purchase',
    fields: [
      { key: 'buildQuantity', step: 1, origin: '1: the list is built once, as it stands.' },
      { key: 'sparesPercent', step: 1, origin: '0: nothing is bought that the list does not ask for.' },
    ],
  },
  {
    title: 'Display',
    fields: [{ key: 'units', origin: 'Millimetres; the text of the list is always shown as it was sent.' }],
  },
];
