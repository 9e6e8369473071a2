import { isAtLeast, isAtMost } from '../../calc/closeness.ts';
import { findStockThickness } from '../../calc/stock-thickness.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import type { ShopSettings } from '../../model/shop.ts';
import type { ThicknessReading } from '../../model/thickness.ts';
import { findCited } from '../../reference/index.ts';
import { showValue } from '../../say/show-value.ts';
import { judgeTogether } from '../each-candidate.ts';
import type { Rule, Sheet, Subject } from '../rule.ts';
import { quoted } from '../texts.ts';
import { sheetThicknessTexts } from './sheet-thickness-texts.ts';

/** Is the sheet thick enough to fill the groove, and not too thick for the part? */
export const sheetThickness: Rule = {
  id: 'clinch/sheet-thickness',
  title: 'Sheet thickness',
  summary: "The sheet is at least as thick as the part's minimum and no thicker than its maximum.",
  reason: 'In too thin a sheet the collar stands proud, the fastener is loose, or the panel warps under the press.',
  formula: 'minimum <= nominal sheet <= maximum; thinnest sheet = nominal - mill tolerance.',
  reads: ['partNumber', 'thickness', 'material'],
  needs: ['practice-nominal-sheet'],
  texts: sheetThicknessTexts,
  examples: [
    { cells: { material: 'DC01', thickness: '2' }, outcome: 'holds', says: 'holds' },
    { cells: { material: 'brass', thickness: '2' }, outcome: 'holds', says: 'holds-untold' },
    { cells: { material: 'DC01', thickness: '1' }, outcome: 'holds', says: 'holds-nominal' },
    {
      cells: { material: 'DC01', thickness: '1' },
      shop: { judgeThicknessAt: 'thinnest' },
      outcome: 'marginal',
      says: 'thinnest',
    },
    { cells: { material: 'DC01', thickness: '0.8' }, outcome: 'fails', says: 'thin' },
    { cells: { material: 'DC01', thickness: '6' }, part: { sheetMaxMm: 4 }, outcome: 'fails', says: 'thick' },
    { cells: { material: 'STEEL', thickness: '18 ga' }, part: { sheetMinMm: 1.25 }, outcome: 'unknown', says: 'some' },
    {
      cells: { material: 'STEEL', thickness: '18 ga' },
      part: { sheetMinMm: 1.25 },
      shop: { judgeThicknessAt: 'thinnest' },
      outcome: 'unknown',
      says: 'some-may',
    },
    { cells: { material: 'DC01', thickness: '1' }, part: { sheetMinMm: null }, outcome: 'unknown', says: 'no-minimum' },
    { cells: { material: 'DC01', thickness: '' }, outcome: 'unknown', says: 'no-thickness' },
  ],
  check({ line, fastener, sheets, shop }: Subject): Judgement | null {
    if (!fastener) return null;
    const cites = ['practice-nominal-sheet'];
    if (line.thickness.how === 'impossible' || sheets.some(({ thicknessMm }) => thicknessMm === null)) {
      return { outcome: 'unknown', says: 'no-thickness', words: { listed: quoted(line.thickness.text) }, cites };
    }
    if (fastener.sheetMinMm === null) {
      return { outcome: 'unknown', says: 'no-minimum', words: { partNumber: fastener.partNumber }, cites };
    }
    const candidates = sheets.map((sheet) => ({
      name: sheet.entry?.name ?? 'this sheet',
      judgement: judgeSheet(sheet, fastener, shop, line.thickness.writtenIn),
    }));
    return judgeTogether(candidates, 'thinnestMm');
  },
};

function judgeSheet(
  sheet: Sheet,
  fastener: Fastener,
  shop: ShopSettings,
  writtenIn: ThicknessReading['writtenIn'],
): Judgement {
  const thicknessMm = sheet.thicknessMm ?? Number.NaN;
  const sheetMinMm = fastener.sheetMinMm ?? Number.NaN;
  const { thinnestMm, thinnestTable } = sheet;
  const values = { thicknessMm, sheetMinMm, ...(thinnestMm === null ? {} : { thinnestMm }) };
  const cites = ['practice-nominal-sheet', ...(thinnestTable ? [thinnestTable] : [])];
  if (!isAtLeast(thicknessMm, sheetMinMm)) {
    const words = {
      stock: thinnestThatWouldDo(sheetMinMm, sheet, writtenIn),
      other: byOtherGauge(sheet, sheetMinMm, shop),
    };
    return {
      outcome: 'fails',
      says: 'thin',
      values: { ...values, shortfallMm: sheetMinMm - thicknessMm },
      words,
      cites,
    };
  }
  const sheetMaxMm = fastener.sheetMaxMm;
  if (sheetMaxMm !== null && !isAtMost(thicknessMm, sheetMaxMm)) {
    return { outcome: 'fails', says: 'thick', values: { ...values, sheetMaxMm }, cites };
  }
  if (thinnestMm === null) return { outcome: 'holds', says: 'holds-untold', values, cites };
  const words = {
    assumed: sheet.thinnestAssumed ? ` (${sheet.thinnestAssumed})` : '',
    other: byOtherGauge(sheet, sheetMinMm, shop) + byOtherStandard(sheet, sheetMinMm, shop),
  };
  if (isAtLeast(thinnestMm, sheetMinMm)) return { outcome: 'holds', says: 'holds', values, words, cites };
  return shop.judgeThicknessAt === 'thinnest'
    ? { outcome: 'marginal', says: 'thinnest', values, words, cites }
    : { outcome: 'holds', says: 'holds-nominal', values, words, cites };
}

function thinnestThatWouldDo(sheetMinMm: number, { entry }: Sheet, writtenIn: ThicknessReading['writtenIn']): string {
  const stock = findStockThickness(sheetMinMm, entry?.family ?? null, writtenIn);
  return stock ? `The thinnest stock sheet that would do is ${stock.name}. ` : '';
}

/** The other gauge table in use for this metal, where the sheet would come out otherwise by it. */
function byOtherGauge({ thicknessMm, otherThickness }: Sheet, sheetMinMm: number, { units }: ShopSettings): string {
  if (!otherThickness || thicknessMm === null) return '';
  const { mm, name } = otherThickness;
  if (isAtLeast(mm, sheetMinMm) === isAtLeast(thicknessMm, sheetMinMm)) return '';
  const answer = isAtLeast(mm, sheetMinMm) ? 'thick enough' : 'too thin';
  return `By the other table in use (${name}) it would be ${showValue('otherMm', mm, units)} ${units} and ${answer}: ask for the thickness. `;
}

/** The other side's mill tolerance, where judging at the thinnest would come out otherwise by it. */
function byOtherStandard({ thinnestMm, otherThinnest }: Sheet, sheetMinMm: number, shop: ShopSettings): string {
  if (shop.judgeThicknessAt !== 'thinnest' || thinnestMm === null || !otherThinnest) return '';
  if (isAtLeast(thinnestMm, sheetMinMm) === isAtLeast(otherThinnest.mm, sheetMinMm)) return '';
  const table = findCited(otherThinnest.table)?.title ?? otherThinnest.table;
  return `By ${table} it may be delivered ${showValue('otherMm', otherThinnest.mm, shop.units)} ${shop.units}. `;
}
