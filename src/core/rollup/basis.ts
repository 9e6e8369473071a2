import { SETTING_KEYS } from '../intake/shop-settings.ts';
import type { AuditedList } from '../model/audited.ts';
import { VERDICTS } from '../model/outcome.ts';
import { SETTING_WORDS, showSetting } from '../say/show-setting.ts';

/** What a judgement rests on, each with its name: file, day, counts, catalogues, settings. `date` is the day as it is to be shown. */
export function basisOf(list: AuditedList, date: string): readonly (readonly [string, string | number])[] {
  return [
    ['List', list.file],
    ['Sheet', list.sheet || '(the only table)'],
    ['Headings in row', list.headerRow],
    ['Judged on', date],
    ['Fastener rows', list.lines.length],
    ['Rows that are no press-in fasteners', list.others.length],
    ['Hidden rows, judged like the rest', list.hiddenRows],
    ...VERDICTS.map((verdict) => [`Rows: ${verdict}`, list.totals[verdict]] as const),
    ...list.catalogues.map(
      ({ name, demo }) => ['Catalogue', demo ? `${name} (demo: not for production)` : name] as const,
    ),
    ...SETTING_KEYS.map((key) => [`Setting: ${SETTING_WORDS[key].name}`, showSetting(key, list.shop)] as const),
  ];
}
