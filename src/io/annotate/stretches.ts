/** Characters of a stretch, where rows end. */
const LENGTH = 1 << 18;

/**
 * The text of a sheet part, which comes in pieces, in stretches: each but the last ends behind the end tag of a row, so that a row is never
 * cut. Where no row ends, a stretch is as long as it must be.
 */
export function* stretchesOf(pieces: Iterable<string>): Generator<string> {
  let held = '';
  let enough = LENGTH;
  for (const piece of pieces) {
    held += piece;
    if (held.length < enough) continue;
    const end = lastRowEnd(held);
    enough = end < 0 ? held.length * 2 : LENGTH;
    if (end < 0) continue;
    yield held.slice(0, end);
    held = held.slice(end);
  }
  yield held;
}

/** Behind the last end tag of a row; -1 if there is none. */
function lastRowEnd(text: string): number {
  for (let at = text.lastIndexOf('row>'); at > 0; at = text.lastIndexOf('row>', at - 1)) {
    const before = text.slice(Math.max(0, at - 60), at);
    if (/<\/(?:[^\s:<>/]+:)?$/.test(before) && !isInside(text, at)) return at + 'row>'.length;
  }
  return -1;
}

/** Within a comment or a stretch of plain text nothing is a tag. */
function isInside(text: string, at: number): boolean {
  if (!text.includes('<!')) return false;
  return (
    text.lastIndexOf('<!--', at) > text.lastIndexOf('-->', at) ||
    text.lastIndexOf('<![CDATA[', at) > text.lastIndexOf(']]>', at)
  );
}
