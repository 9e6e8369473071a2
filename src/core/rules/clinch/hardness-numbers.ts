import type { HardnessMargin } from '../../calc/hardness-margin.ts';
import { combineScatter } from '../../calc/hardness-scatter.ts';
import type { RockwellB } from '../../calc/rockwell-b.ts';
import type { SheetHardness } from '../../calc/sheet-hardness.ts';
import type { Values, Words } from '../../model/finding.ts';
import type { AlloyEntry } from '../../model/sheet.ts';
import { showHardness } from '../../units/hardness.ts';
import type { FastenerHardness } from './hardness-fastener.ts';

/** The margin between a fastener and a sheet, with the scatter of the value that decides. */
export function marginOf(on: RockwellB, { typical, max }: SheetHardness): HardnessMargin {
  return {
    typical: on.hrb - typical.on.hrb,
    worst: max && on.hrb - max.on.hrb,
    scatter: combineScatter(on.scatter, (max ?? typical).on.scatter),
    moreThan: (max ?? typical).on.below,
  };
}

/** Fastener and margins as the values of a finding; `marginWorst` only where the sheet has a maximum. */
export function marginValues(on: RockwellB, { typical, worst, scatter }: HardnessMargin): Values {
  return { fastenerHrb: on.hrb, marginTypical: typical, ...(worst === null ? {} : { marginWorst: worst }), scatter };
}

/** The sheet's hardness as the values of a finding. */
export function sheetValues({ typical, max }: SheetHardness): Values {
  return { sheetHrbTypical: typical.on.hrb, ...(max ? { sheetHrbMax: max.on.hrb } : {}) };
}

/** Ending of the text key where the sheet has no published maximum. */
export function withoutMaximum({ max }: SheetHardness): string {
  return max ? '' : '-typical';
}

/** How the sheet and the origin of its hardness are named in a sentence. */
export function sheetWords({ typical, max }: SheetHardness, entry: AlloyEntry): Words {
  const maxGiven = max ? (max.assumed ? 'typical + 4' : showHardness(max.given)) : '';
  return {
    sheet: typical.on.below ? `${entry.name} (below the foot of the scale)` : entry.name,
    typicalGiven: showHardness(typical.given),
    maxGiven: entry.maxFrom === 'strength' ? `${maxGiven}, derived from strength` : maxGiven,
    remark: '',
  };
}

/** Practices that a computed margin rests on besides the margin itself. */
export function practicesOf(fastener: FastenerHardness, { max }: SheetHardness): readonly string[] {
  return [
    ...(fastener.assumed ? ['practice-class-minimum'] : []),
    ...(max?.assumed ? ['practice-soft-aluminium-maximum'] : []),
    ...(max ? [] : ['practice-no-maximum']),
  ];
}

/** Tables that turned the sheet's hardness into Rockwell B. */
export function tablesOf({ typical, max }: SheetHardness): readonly string[] {
  return [...typical.on.tables, ...(max?.on.tables ?? [])];
}
