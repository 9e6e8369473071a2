import { escapeXml } from '../write/xml-text.ts';

/** A piece of a text, from `at` to before `end`, and what takes its place. */
export interface Splice {
  readonly at: number;
  readonly end: number;
  readonly text: string;
}

/** The text with pieces replaced; everything between them stays as it is. Pieces must not overlap. */
export function splice(text: string, splices: readonly Splice[]): string {
  const pieces: string[] = [];
  let from = 0;
  for (const { at, end, text: piece } of splices.toSorted((a, b) => a.at - b.at || a.end - b.end)) {
    pieces.push(text.slice(from, at), piece);
    from = end;
  }
  return pieces.join('') + text.slice(from);
}

/** A start tag with one attribute set. */
export function withAttribute(tag: string, name: string, value: string): string {
  const found = attributePattern(name).exec(tag);
  const written = ` ${name}="${escapeXml(value)}"`;
  if (found) return tag.slice(0, found.index) + written + tag.slice(found.index + found[0].length);
  return tag.replace(/\s*\/?>$/, (end) => written + end.trim());
}

/** A start tag without the attributes named. */
export function withoutAttributes(tag: string, names: readonly string[]): string {
  return names.reduce((rest, name) => rest.replace(attributePattern(name), ''), tag);
}

/** Namespace prefix of a tag with its colon: `x:`, or nothing. */
export function prefixOf(tag: string): string {
  return /^<\/?([^\s:/>]+:)/.exec(tag)?.[1] ?? '';
}

/** XML of ours, written without prefixes, with a prefix before each element name. */
export function withPrefix(xml: string, prefix: string): string {
  return prefix === '' ? xml : xml.replace(/<(\/?)(?=[A-Za-z])/g, `<$1${prefix}`);
}

/** A self-closing tag opened, so that something can stand in it: its start tag and its end tag. */
export function opened(tag: string): { readonly start: string; readonly end: string } {
  const name = /^<([^\s/>]+)/.exec(tag)?.[1] ?? '';
  return { start: tag.replace(/\s*\/>$/, '>'), end: `</${name}>` };
}

/** The attribute by its name without prefix, with the space before it. */
function attributePattern(name: string): RegExp {
  return new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`);
}
