/** How deep lists and objects may stand within each other in a file of ours; none of them needs a tenth of it. */
const DEEPEST = 100;

/**
 * The value that a JSON text stands for.
 * @throws SyntaxError when it is none, or when it is nested so deeply that walking through it would end in a fault.
 */
export function parseJson(text: string): unknown {
  if (isTooDeep(text)) throw new SyntaxError(`more than ${DEEPEST} lists or objects within each other`);
  return JSON.parse(text);
}

/** Brackets within texts do not count. */
function isTooDeep(text: string): boolean {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at];
    if (sign === '"') at = findClosingQuote(text, at);
    else if (sign === '{' || sign === '[') depth += 1;
    else if (sign === '}' || sign === ']') depth -= 1;
    if (depth > DEEPEST) return true;
  }
  return false;
}

/** The end of the text where the quote never closes. */
function findClosingQuote(text: string, open: number): number {
  let close = text.indexOf('"', open + 1);
  while (close > 0 && isEscaped(text, close)) close = text.indexOf('"', close + 1);
  return close < 0 ? text.length : close;
}

function isEscaped(text: string, at: number): boolean {
  let backslashes = 0;
  while (text[at - 1 - backslashes] === '\\') backslashes += 1;
  return backslashes % 2 === 1;
}
