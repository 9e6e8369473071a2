import { isAtMost } from '../../calc/closeness.ts';
import type { Judgement } from '../../model/finding.ts';
import { judgeTogether, SOME_TEXTS } from '../each-candidate.ts';
import type { Rule, Sheet, Subject } from '../rule.ts';
import { NO_SHEET_METAL, NO_THICKNESS, quoted } from '../texts.ts';

/** Does the shank of a flush part end inside the sheet? Asked only of flush parts whose shank length is on file. */
export const shank: Rule = {
  id: 'clinch/shank',
  title: 'Shank',
  summary: 'The shank of a flush part is no longer than the sheet is thick.',
  reason: 'A shank longer than the sheet stands proud on the far side and keeps the next part from lying flat.',
  formula: 'shank <= thinnest sheet holds; shank <= nominal sheet is marginal; longer fails.',
  reads: ['partNumber', 'thickness', 'material'],
  needs: ['practice-flush-shank'],
  texts: {
    ...SOME_TEXTS,
    holds: {
      brief: 'Shank {shankMm} in {thicknessMm:unit}',
      full: 'Shank {shankMm}, sheet {thicknessMm:unit}: flush even in the thinnest that the mill may deliver, {thinnestMm:unit}{assumed}.',
    },
    'holds-untold': {
      brief: 'Shank {shankMm} in {thicknessMm:unit}',
      full: 'Shank {shankMm}, sheet {thicknessMm:unit}: flush. No mill tolerance is on file for this sheet.',
    },
    thinnest: {
      brief: 'Shank {shankMm}, sheet may be {thinnestMm:unit}',
      full: 'Shank {shankMm}, sheet {thicknessMm}, but the sheet may be delivered {thinnestMm}{assumed}; the shank would then stand {proudMm:unit} proud: measure, or order to minimum thickness.',
    },
    proud: {
      brief: 'Shank stands {proudMm:unit} proud',
      full: 'Shank {shankMm}, sheet {thicknessMm:unit}: it stands {proudMm:unit} proud. A part with a shorter shank or thicker sheet would cure it.',
    },
    'no-thickness': NO_THICKNESS,
    'no-metal': NO_SHEET_METAL,
  },
  examples: [
    { cells: { material: 'DC01', thickness: '1.5' }, outcome: 'holds', says: 'holds' },
    { cells: { material: 'brass', thickness: '1.5' }, outcome: 'holds', says: 'holds-untold' },
    { cells: { material: 'DC01', thickness: '1' }, outcome: 'marginal', says: 'thinnest' },
    { cells: { material: 'DC01', thickness: '0.8' }, outcome: 'fails', says: 'proud' },
    {
      cells: { material: 'STEEL', thickness: '18 ga ±.001' },
      part: { shankMm: 1.25 },
      outcome: 'unknown',
      says: 'some',
    },
    { cells: { material: 'STEEL', thickness: '18 ga' }, part: { shankMm: 1.25 }, outcome: 'unknown', says: 'some-may' },
    { cells: { thickness: '' }, outcome: 'unknown', says: 'no-thickness' },
    { cells: { material: '', thickness: '1.5' }, outcome: 'unknown', says: 'no-metal' },
  ],
  check({ line, fastener, sheets }: Subject): Judgement | null {
    const shankMm = fastener?.shankMm ?? null;
    if (fastener?.flush !== true || shankMm === null) return null;
    const words = { listed: quoted(line.thickness.text) };
    if (sheets.some(({ thicknessMm }) => thicknessMm === null)) {
      return { outcome: 'unknown', says: 'no-thickness', words, cites: ['practice-flush-shank'] };
    }
    const judged = sheets.map((sheet) => ({
      name: sheet.entry?.name ?? 'this sheet',
      judgement: judgeSheet(sheet, shankMm, quoted(line.material.text)),
    }));
    return judgeTogether(judged, 'thinnestMm');
  },
};

function judgeSheet(
  { entry, thinnestMm, thinnestTable, thinnestAssumed, ...sheet }: Sheet,
  shankMm: number,
  listed: string,
): Judgement {
  const thicknessMm = sheet.thicknessMm ?? Number.NaN;
  const values = { shankMm, thicknessMm, ...(thinnestMm === null ? {} : { thinnestMm }) };
  const cites = ['practice-flush-shank', ...(thinnestTable ? [thinnestTable] : [])];
  if (!isAtMost(shankMm, thicknessMm)) {
    return { outcome: 'fails', says: 'proud', values: { ...values, proudMm: shankMm - thicknessMm }, cites };
  }
  if (!entry) return { outcome: 'unknown', says: 'no-metal', values, words: { listed }, cites };
  if (thinnestMm === null) return { outcome: 'holds', says: 'holds-untold', values, cites };
  const words = { assumed: thinnestAssumed ? ` (${thinnestAssumed})` : '' };
  if (isAtMost(shankMm, thinnestMm)) return { outcome: 'holds', says: 'holds', values, words, cites };
  return { outcome: 'marginal', says: 'thinnest', values: { ...values, proudMm: shankMm - thinnestMm }, words, cites };
}
