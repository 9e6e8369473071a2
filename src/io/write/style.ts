/** The look of a cell; what is left out is as in a plain cell of ours: Calibri 10, dark ink. */
export interface Style {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly strike?: boolean;
  readonly size?: number;
  /** Colours as alpha, red, green, blue in hexadecimal. */
  readonly ink?: string;
  readonly ground?: string;
  /** A thin line below. */
  readonly ruled?: boolean;
  /** Number format code: `0.00`, or `@` for text that stays text when it is edited. */
  readonly format?: string;
  readonly top?: boolean;
  readonly left?: boolean;
  readonly wraps?: boolean;
  readonly indent?: number;
}

const INK = 'FF1D2327';
const RULE = 'FF8A8F93';
/** Formats that every spreadsheet knows by number (ECMA-376 part 1, 18.8.30, from memory). */
const BUILT_IN: ReadonlyMap<string, number> = new Map([
  ['0', 1],
  ['0.00', 2],
  ['@', 49],
]);
const FIRST_CUSTOM = 164;
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

/** The styles of a workbook as they are asked for: each look once, numbered from 0, which is a cell without a look. */
export class StyleBook {
  readonly #known = new Map<Style, number>();
  readonly #alike = new Map<string, number>();
  readonly #fonts = new Numbered(['<font><sz val="11"/><name val="Calibri"/><family val="2"/></font>']);
  readonly #fills = new Numbered(
    ['none', 'gray125'].map((type) => `<fill><patternFill patternType="${type}"/></fill>`),
  );
  readonly #borders = new Numbered(['<border><left/><right/><top/><bottom/><diagonal/></border>']);
  readonly #formats = new Numbered([]);
  readonly #looks = new Numbered(['<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>']);

  /** The number by which cells refer to a style. */
  indexOf(style: Style): number {
    return this.#known.get(style) ?? this.#add(style);
  }

  /** The styles part. */
  xml(): string {
    const formats = this.#formats.items.map(
      (code, index) => `<numFmt numFmtId="${FIRST_CUSTOM + index}" formatCode="${code}"/>`,
    );
    const lists = [
      formats.length > 0 ? listXml('numFmts', formats) : '',
      listXml('fonts', this.#fonts.items),
      listXml('fills', this.#fills.items),
      listXml('borders', this.#borders.items),
      listXml('cellStyleXfs', ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>']),
      listXml('cellXfs', this.#looks.items),
      listXml('cellStyles', ['<cellStyle name="Normal" xfId="0" builtinId="0"/>']),
    ];
    return `<styleSheet xmlns="${MAIN}">${lists.join('')}</styleSheet>`;
  }

  #add(style: Style): number {
    const key = JSON.stringify(Object.entries(style).sort());
    const index = this.#alike.get(key) ?? this.#looks.numberOf(this.#lookXml(style));
    this.#alike.set(key, index);
    this.#known.set(style, index);
    return index;
  }

  #lookXml(style: Style): string {
    const font = this.#fonts.numberOf(fontXml(style));
    const fill = style.ground === undefined ? 0 : this.#fills.numberOf(fillXml(style.ground));
    const border = style.ruled ? this.#borders.numberOf(BORDER_XML) : 0;
    const numbers = `numFmtId="${this.#formatOf(style.format)}" fontId="${font}" fillId="${fill}" borderId="${border}"`;
    const applied = `applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1"`;
    return `<xf ${numbers} xfId="0" ${applied}${alignmentXml(style)}</xf>`;
  }

  #formatOf(code: string | undefined): number {
    if (code === undefined) return 0;
    return BUILT_IN.get(code) ?? FIRST_CUSTOM + this.#formats.numberOf(code);
  }
}

const BORDER_XML = `<border><left/><right/><top/><bottom style="thin"><color rgb="${RULE}"/></bottom><diagonal/></border>`;

/** Items of a list, each once. */
class Numbered {
  readonly items: string[];

  constructor(first: readonly string[]) {
    this.items = [...first];
  }

  numberOf(item: string): number {
    const found = this.items.indexOf(item);
    return found >= 0 ? found : this.items.push(item) - 1;
  }
}

function listXml(name: string, items: readonly string[]): string {
  return `<${name} count="${items.length}">${items.join('')}</${name}>`;
}

function fontXml({ bold, italic, strike, size = 10, ink = INK }: Style): string {
  const marks = `${bold ? '<b/>' : ''}${italic ? '<i/>' : ''}${strike ? '<strike/>' : ''}`;
  return `<font>${marks}<sz val="${size}"/><color rgb="${ink}"/><name val="Calibri"/><family val="2"/></font>`;
}

function fillXml(ground: string): string {
  return `<fill><patternFill patternType="solid"><fgColor rgb="${ground}"/></patternFill></fill>`;
}

/** The rest of the start tag, and what stands in it. */
function alignmentXml({ top, left, wraps, indent }: Style): string {
  const horizontal = left || indent ? ' horizontal="left"' : '';
  const rest = `${top ? ' vertical="top"' : ''}${wraps ? ' wrapText="1"' : ''}${indent ? ` indent="${indent}"` : ''}`;
  return horizontal + rest === '' ? '>' : ` applyAlignment="1"><alignment${horizontal}${rest}/>`;
}
