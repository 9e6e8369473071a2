import { LAST_COLUMN } from './ranges.ts';
import type { SheetOutline } from './sheet-outline.ts';
import { type Splice, withAttribute, withPrefix } from './splice.ts';

/** Our columns get their widths; a `col` tag that reaches over them is cut to what lies on either side. */
export function patchColumns(
  xml: string,
  { columns, sheetData }: SheetOutline,
  start: number,
  widths: readonly number[],
  prefix: string,
): readonly Splice[] {
  const first = start + 1;
  const last = start + widths.length;
  const own = widths.map((width, index) => {
    const at = first + index;
    return withPrefix(`<col min="${at}" max="${at}" width="${width}" customWidth="1"/>`, prefix);
  });
  if (!columns) {
    const all = `<${prefix}cols>${own.join('')}</${prefix}cols>`;
    return [{ at: sheetData, end: sheetData, text: all }];
  }
  const spans = columns.tags.map(({ start, end }) => {
    const tag = xml.slice(start, end);
    return { start, end, tag, min: numberIn(tag, 'min') ?? 1, max: numberIn(tag, 'max') ?? LAST_COLUMN + 1 };
  });
  const over = spans.filter(({ min, max }) => min <= last && max >= first);
  const piece = (tag: string, min: number, max: number) =>
    min > max ? '' : withAttribute(withAttribute(tag, 'min', String(min)), 'max', String(max));
  const before = over.map(({ tag, min, max }) => piece(tag, min, Math.min(max, first - 1)));
  const after = over.map(({ tag, min, max }) => piece(tag, Math.max(min, last + 1), max));
  const at = over[0]?.start ?? spans.find(({ min }) => min > last)?.start ?? columns.end;
  const text = [...before, ...own, ...after].join('');
  const [replaced, ...others] = over;
  return [{ at, end: replaced?.end ?? at, text }, ...others.map(({ start, end }) => ({ at: start, end, text: '' }))];
}

function numberIn(tag: string, attribute: string): number | undefined {
  const found = new RegExp(`\\s${attribute}\\s*=\\s*["'](\\d+)`).exec(tag)?.[1];
  return found === undefined ? undefined : Number(found);
}
