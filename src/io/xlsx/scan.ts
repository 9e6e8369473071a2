import { columnOf } from './address.ts';

const LESS = 60;
const GREATER = 62;
const SLASH = 47;
const COLON = 58;
const EQUALS = 61;
const SPACE = 32;
const AMPERSAND = 38;
const RETURN = 13;
const DOUBLE_QUOTE = 34;
const SINGLE_QUOTE = 39;
/** More attributes than any tag of a workbook has; what stands behind them is not looked at. */
const MOST_ATTRIBUTES = 100;

/**
 * Walks an XML text tag by tag. Tolerant: namespace prefixes are dropped, attributes may come in any order and quotes,
 * comments and processing instructions are skipped, CDATA and entities resolved. It expands no entity of the file's own.
 * A text may come in pieces, of which it holds no more at a time than it takes to see a whole tag.
 */
export class XmlScanner {
  /** Local name of the tag at hand. */
  name = '';
  /** `</name>`. */
  isClose = false;
  /** `<name/>`. */
  isEmpty = false;
  /** How far the text was read, in characters; of a text in pieces, in those held. */
  position = 0;
  #xml = '';
  readonly #more: Iterator<string>;
  /** Text before the tag at hand that had to be put together around comments or CDATA. */
  #pieces = '';
  #textStart = 0;
  #textEnd = 0;
  /** Whether the text before the tag at hand holds entities or foreign line ends. */
  #isEncoded = false;
  /** Whether an attribute of the tag at hand may. */
  #hasEncoded = false;
  /** Of each attribute where its local name and its value begin and end. */
  readonly #spans: number[] = [];
  #spanCount = 0;

  constructor(xml: string | Iterable<string>) {
    this.#more = (typeof xml === 'string' ? [xml] : xml)[Symbol.iterator]();
    this.#readOn();
  }

  /** Where the tag at hand begins, in characters. */
  get start(): number {
    return this.#textEnd;
  }

  /** Moves to the next tag; false at the end, or where the text breaks off inside a tag. */
  next(): boolean {
    while (!this.#readTag()) {
      if (this.#readOn()) continue;
      this.position = this.#xml.length;
      return false;
    }
    return true;
  }

  /** Text between the previous tag and the one at hand. */
  text(): string {
    const text = this.#xml.slice(this.#textStart, this.#textEnd);
    return this.#pieces + (this.#isEncoded ? decode(text) : text);
  }

  /** Value of an attribute by its local name. */
  attribute(name: string): string | undefined {
    const at = this.#find(name);
    if (at < 0) return undefined;
    const value = this.#xml.slice(this.#spans[at], this.#spans[at + 1]);
    return this.#hasEncoded ? decode(value) : value;
  }

  /** 0-based column that an attribute names by a cell reference; -1 if none. */
  columnIn(name: string): number {
    const at = this.#find(name);
    return at < 0 ? -1 : columnOf(this.#xml, this.#spans[at], this.#spans[at + 1]);
  }

  /**
   * The text of an element with nothing else in it, where nothing but its end tag stands between it and the end tag around
   * it: `4` of `<v>4</v></c>`. The scanner then stands behind both. Nothing, and no step, where it is written in another way.
   */
  onlyChild(open: string, close: string): string | undefined {
    const xml = this.#xml;
    if (!xml.startsWith(open, this.position)) return undefined;
    const start = this.position + open.length;
    let end = start;
    for (let code = xml.charCodeAt(end); code !== LESS; code = xml.charCodeAt(++end)) {
      if (code === AMPERSAND || code === RETURN || end >= xml.length) return undefined;
    }
    if (!xml.startsWith(close, end)) return undefined;
    this.position = end + close.length;
    return xml.slice(start, end);
  }

  /** Where the span of an attribute's value is noted; -1 if the tag does not have it. */
  #find(name: string): number {
    const first = name.charCodeAt(0);
    for (let at = 0; at < this.#spanCount; at += 4) {
      const start = this.#spans[at]!;
      if (this.#spans[at + 1]! - start !== name.length || this.#xml.charCodeAt(start) !== first) continue;
      if (name.length === 1 || this.#xml.startsWith(name, start)) return at + 2;
    }
    return -1;
  }

  /** False when there is no whole tag in the text held; nothing has moved then. */
  #readTag(): boolean {
    const xml = this.#xml;
    this.#pieces = '';
    this.#isEncoded = false;
    for (let start = this.position; ; ) {
      const at = this.#findLess(start);
      if (at < 0) return false;
      const after = xml.charCodeAt(at + 1);
      if (after !== 33 && after !== 63) {
        this.#textStart = start;
        this.#textEnd = at;
        return this.#readName(at);
      }
      this.#pieces += decode(xml.slice(start, at));
      start = this.#skipMarkup(at);
      if (start < 0) return false;
    }
  }

  #findLess(from: number): number {
    const xml = this.#xml;
    for (let at = from; at < xml.length; at++) {
      const code = xml.charCodeAt(at);
      if (code === LESS) return at;
      if (code === AMPERSAND || code === RETURN) this.#isEncoded = true;
    }
    return -1;
  }

  #readName(at: number): boolean {
    const xml = this.#xml;
    const isClose = xml.charCodeAt(at + 1) === SLASH;
    let start = at + (isClose ? 2 : 1);
    let end = start;
    for (let code = xml.charCodeAt(end); isNamePart(code); code = xml.charCodeAt(++end)) {
      if (code === COLON) start = end + 1;
    }
    const close = this.#readAttributes(end);
    if (close < 0) return false;
    this.name = xml.slice(start, end);
    this.isClose = isClose;
    this.isEmpty = xml.charCodeAt(close - 1) === SLASH;
    this.position = close + 1;
    return true;
  }

  /** Where the tag ends: a `>` inside an attribute's quotes does not end it. -1 if it never does. */
  #readAttributes(from: number): number {
    const xml = this.#xml;
    this.#spanCount = 0;
    this.#hasEncoded = false;
    let at = from;
    for (;;) {
      let code = xml.charCodeAt(at);
      while (code <= SPACE || code === SLASH || code === EQUALS) code = xml.charCodeAt(++at);
      if (code === GREATER) return at;
      if (Number.isNaN(code)) return -1;
      let start = at;
      while (isNamePart(code) && code !== EQUALS && !isQuote(code)) {
        if (code === COLON) start = at + 1;
        code = xml.charCodeAt(++at);
      }
      const end = at;
      while (code <= SPACE || code === EQUALS) code = xml.charCodeAt(++at);
      if (code === LESS) at++;
      if (!isQuote(code)) continue;
      const close = this.#findQuote(code, at + 1);
      if (close < 0) return -1;
      this.#note(start, end, at + 1, close);
      at = close + 1;
    }
  }

  #findQuote(quote: number, from: number): number {
    const xml = this.#xml;
    for (let at = from; at < xml.length; at++) {
      const code = xml.charCodeAt(at);
      if (code === quote) return at;
      if (code === AMPERSAND || code === RETURN) this.#hasEncoded = true;
    }
    return -1;
  }

  #note(nameStart: number, nameEnd: number, valueStart: number, valueEnd: number): void {
    const at = this.#spanCount;
    if (at >= MOST_ATTRIBUTES * 4) return;
    this.#spans[at] = nameStart;
    this.#spans[at + 1] = nameEnd;
    this.#spans[at + 2] = valueStart;
    this.#spans[at + 3] = valueEnd;
    this.#spanCount = at + 4;
  }

  /** Where a comment, CDATA section, instruction or document type ends; -1 if it never does. */
  #skipMarkup(at: number): number {
    const xml = this.#xml;
    if (xml.startsWith('<!--', at)) return endOf(xml, '-->', at + 4);
    if (xml.startsWith('<?', at)) return endOf(xml, '?>', at + 2);
    if (!xml.startsWith('<![CDATA[', at))
      return endOf(xml, /^<![^>[]*\[/.test(xml.slice(at, at + 999)) ? ']>' : '>', at);
    const end = endOf(xml, ']]>', at + 9);
    if (end > 0) this.#pieces += xml.slice(at + 9, end - 3);
    return end;
  }

  /** Takes more of the text, at least as much as is held, so that a long tag is not walked over and over. */
  #readOn(): boolean {
    const rest = this.#xml.slice(this.position);
    let more = '';
    for (let next = this.#more.next(); !next.done; next = this.#more.next()) {
      more += next.value;
      if (more.length > rest.length) break;
    }
    if (more === '') return false;
    this.#xml = rest + more;
    this.position = 0;
    return true;
  }
}

/** Whether an XML on/off attribute is on. */
export function isOn(value: string | undefined): boolean {
  return value === '1' || value === 'true';
}

function isNamePart(code: number): boolean {
  return code > SPACE && code !== GREATER && code !== SLASH && code !== LESS;
}

function isQuote(code: number): boolean {
  return code === DOUBLE_QUOTE || code === SINGLE_QUOTE;
}

function endOf(xml: string, mark: string, from: number): number {
  const at = xml.indexOf(mark, from);
  return at < 0 ? -1 : at + mark.length;
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function decode(raw: string): string {
  const text = raw.includes('\r') ? raw.replace(/\r\n?/g, '\n') : raw;
  if (!text.includes('&')) return text;
  return text.replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]{1,8}));/gi, (whole, decimal, hex, name) => {
    if (name !== undefined) return NAMED[name] ?? whole;
    const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
