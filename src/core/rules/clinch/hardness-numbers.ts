import type { HardnessMargin } from '../../calc/hardness-margin.ts';
import { combineScatter } from '../../calc/hardness-scatter.ts';
import type { RockwellB } from '../../calc/rockwell-b.ts';
import type { SheetHardness } from '../../calc/sheet-hardness.ts';
import type { Values, Words } from '../../model/finding.ts';
import type { Outcome } from '../../model/outcome.ts';
import type { AlloyEntry } from '../../model/sheet.ts';
import { showHardness } from '../../units/hardness.ts';
import type { FastenerHardness } from './hardness-fastener.ts';

/** The margins between a fastener and a sheet, each with its scatter. */
export function marginOf(on: RockwellB, { typical, max }: SheetHardness): HardnessMargin {
  return {
    typical: on.hrb - typical.on.hrb,
    worst: max && on.hrb - max.on.hrb,
    typicalScatter: combineScatter(on.scatter, typical.on.scatter),
    worstScatter: combineScatter(on.scatter, (max ?? typical).on.scatter),
    moreThan: isBelowScale({ typical, max }),
  };
}

/** Fastener and margins as the values of a finding; `marginWorst` only where the sheet has a maximum, `scatter` of the margin that decides. */
export function marginValues(on: RockwellB, margin: HardnessMargin, outcome: Outcome): Values {
  const { typical, worst, typicalScatter, worstScatter } = margin;
  return {
    fastenerHrb: on.hrb,
    marginTypical: typical,
    ...(worst === null ? {} : { marginWorst: worst }),
    scatter: outcome === 'fails' ? typicalScatter : worstScatter,
  };
}

/** The sheet's hardness as the values of a finding. */
export function sheetValues({ typical, max }: SheetHardness): Values {
  return { sheetHrbTypical: typical.on.hrb, ...(max ? { sheetHrbMax: max.on.hrb } : {}) };
}

/** Ending of the text key: by what is known of the sheet. */
export function textEnding({ typical, max }: SheetHardness): '' | '-typical' | '-soft' {
  if (isBelowScale({ typical, max })) return '-soft';
  return max ? '' : '-typical';
}

/** True where the sheet is so soft that its scale only says "softer than": every margin is then "more than". */
export function isBelowScale({ typical, max }: Pick<SheetHardness, 'typical' | 'max'>): boolean {
  return typical.on.below && (max ?? typical).on.below;
}

/** How the sheet and the origin of its hardness are named in a sentence. */
export function sheetWords({ typical, max }: SheetHardness, entry: AlloyEntry): Words {
  const maxGiven = max ? (max.assumed ? 'typical + 4' : showHardness(max.given)) : '';
  return {
    sheet: entry.name,
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
