import type { Column } from '../../core/model/list.ts';
import { Unreadable } from '../../core/model/raw.ts';
import { holdsNumbers } from '../write/number-roles.ts';
import { safeText } from '../write/safe-text.ts';
import { escapeXml } from '../write/xml-text.ts';
import { showColumn } from '../xlsx/address.ts';
import { type CellContext, cellText } from '../xlsx/cell-text.ts';
import type { EditedCell } from './edits.ts';
import type { OwnCell } from './own-cells.ts';
import { holds } from './ranges.ts';
import type { CellPlace, RowPlace, SheetTraits } from './sheet-outline.ts';
import { withAttribute, withoutAttributes } from './splice.ts';

const NUMBER = /-?(?:0|[1-9]\d{0,14})(?:\.\d{1,8})?/;

/**
 * An edited cell as XML without prefixes. It keeps its style and loses its formula.
 * @throws Unreadable when other cells live on that formula.
 */
export function writeEdit(
  xml: string,
  sheet: SheetTraits,
  row: RowPlace,
  { column, text }: EditedCell,
  header: Column | undefined,
  context: CellContext,
): OwnCell {
  const place = row.cells.find((cell) => cell.column === column);
  const reference = `${showColumn(column)}${row.number}`;
  if (isLivedOn(sheet, row, column, place)) {
    throw new Unreadable(`Cell ${reference}, which was edited, holds a formula that fills other cells too.`);
  }
  const tag = place ? startTag(xml, place) : `<c r="${reference}">`;
  if (text === '') return { column, xml: tag.replace(/>$/, '/>') };
  const number = findNumber(text, place, header, context);
  if (number !== undefined) return { column, xml: `${tag}<v>${number}</v></c>` };
  const shown = escapeXml(safeText(text));
  const inline = withAttribute(tag, 't', 'inlineStr');
  return { column, xml: `${inline}<is><t xml:space="preserve">${shown}</t></is></c>` };
}

/** The cell's own start tag without prefix, type and what belongs to the former value. */
function startTag(xml: string, { start, tagEnd }: CellPlace): string {
  const tag = xml.slice(start, tagEnd).replace(/^<[^\s/>]+/, '<c');
  return withoutAttributes(tag, ['t', 'cm', 'vm']).replace(/\s*\/?>$/, '>');
}

function isLivedOn(sheet: SheetTraits, row: RowPlace, column: number, place: CellPlace | undefined): boolean {
  const group = place?.sharedFormula;
  if (group !== undefined && (sheet.sharers.get(group) ?? 0) > 1) return true;
  return sheet.filledByOne.some(
    (block) => holds(block, row.number, column) && (block.left < block.right || block.top < block.bottom),
  );
}

/**
 * The number to write for a text, where numbers stand in the column or stood in the cell: one that the cell's format shows as that very
 * text ("1.2 mm"), or at least as that number.
 */
function findNumber(
  text: string,
  place: CellPlace | undefined,
  header: Column | undefined,
  context: CellContext,
): string | undefined {
  const value = NUMBER.exec(text)?.[0];
  const wasNumber = place !== undefined && !place.isBlank && (place.type === undefined || place.type === 'n');
  if (value === undefined || !(wasNumber || holdsNumbers(header))) return undefined;
  const style = place?.style ?? 0;
  const shown = cellText({ type: undefined, style, hasFormula: false, value, inline: undefined }, context);
  if (shown.flag !== undefined) return undefined;
  if (shown.text === text) return value;
  return value === text && holdsNumbers(header) && Number(shown.text) === Number(text) ? value : undefined;
}
