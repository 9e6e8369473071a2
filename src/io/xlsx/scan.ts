const LESS = 60;
const GREATER = 62;
const SLASH = 47;
const COLON = 58;
const EQUALS = 61;
const SPACE = 32;
const DOUBLE_QUOTE = 34;
const SINGLE_QUOTE = 39;

/**
 * Walks an XML text tag by tag. Tolerant: namespace prefixes are dropped, attributes may come in any order and quotes,
 * comments and processing instructions are skipped, CDATA and entities resolved. It expands no entity of the file's own.
 */
export class XmlScanner {
  /** Local name of the tag at hand. */
  name = '';
  /** `</name>`. */
  isClose = false;
  /** `<name/>`. */
  isEmpty = false;
  /** How far the text was read, in characters. */
  position = 0;
  readonly #xml: string;
  /** Text before the tag at hand that had to be put together around comments or CDATA. */
  #pieces = '';
  #textStart = 0;
  #textEnd = 0;
  #attributesStart = 0;
  #tagEnd = 0;

  constructor(xml: string) {
    this.#xml = xml;
  }

  /** Where the tag at hand begins, in characters. */
  get start(): number {
    return this.#textEnd;
  }

  /** Moves to the next tag; false at the end, or where the text breaks off inside a tag. */
  next(): boolean {
    this.#pieces = '';
    let from = this.position;
    for (;;) {
      const at = this.#xml.indexOf('<', from);
      if (at < 0) return this.#finish();
      const after = this.#xml[at + 1];
      if (after !== '!' && after !== '?') {
        this.#textStart = from;
        this.#textEnd = at;
        return this.#readTag(at);
      }
      this.#pieces += decode(this.#xml.slice(from, at));
      from = this.#skipMarkup(at);
      if (from < 0) return this.#finish();
    }
  }

  /** Text between the previous tag and the one at hand. */
  text(): string {
    return this.#pieces + decode(this.#xml.slice(this.#textStart, this.#textEnd));
  }

  /** Value of an attribute by its local name. */
  attribute(name: string): string | undefined {
    const xml = this.#xml;
    let at = this.#attributesStart;
    while (at < this.#tagEnd) {
      const code = xml.charCodeAt(at);
      if (code <= SPACE || code === SLASH) {
        at++;
        continue;
      }
      let start = at;
      while (at < this.#tagEnd && xml.charCodeAt(at) !== EQUALS && xml.charCodeAt(at) > SPACE) {
        if (xml.charCodeAt(at++) === COLON) start = at;
      }
      const end = at;
      while (at < this.#tagEnd && !isQuote(xml.charCodeAt(at))) at++;
      if (at >= this.#tagEnd) return undefined;
      const close = xml.indexOf(xml.charAt(at), at + 1);
      if (end - start === name.length && xml.startsWith(name, start)) return decode(xml.slice(at + 1, close));
      at = close + 1;
    }
    return undefined;
  }

  #readTag(at: number): boolean {
    const xml = this.#xml;
    this.isClose = xml.charCodeAt(at + 1) === SLASH;
    let start = at + (this.isClose ? 2 : 1);
    let end = start;
    for (let code = xml.charCodeAt(end); isNamePart(code); code = xml.charCodeAt(++end)) {
      if (code === COLON) start = end + 1;
    }
    const close = findTagEnd(xml, end);
    if (close < 0) return this.#finish();
    this.name = xml.slice(start, end);
    this.isEmpty = xml.charCodeAt(close - 1) === SLASH;
    this.#attributesStart = end;
    this.#tagEnd = this.isEmpty ? close - 1 : close;
    this.position = close + 1;
    return true;
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

  #finish(): false {
    this.position = this.#xml.length;
    return false;
  }
}

/** Bytes of an XML part as text. */
export function decodeXmlBytes(bytes: Uint8Array): string {
  const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (!isWide) return new TextDecoder().decode(bytes);
  return new TextDecoder(bytes[0] === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes);
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

/** The `>` that ends a tag: one inside an attribute's quotes does not. */
function findTagEnd(xml: string, from: number): number {
  let quote = 0;
  for (let at = from; at < xml.length; at++) {
    const code = xml.charCodeAt(at);
    if (quote !== 0) {
      if (code === quote) quote = 0;
    } else if (code === GREATER) return at;
    else if (isQuote(code)) quote = code;
  }
  return -1;
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
