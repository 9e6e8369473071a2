/** A text as a string of a style sheet; whatever could end it or mean something in it is written by its number. */
export function cssString(text: string): string {
  const safe = [...text].map((sign) =>
    /[\p{L}\p{N} .,:()%+/-]/u.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 0).toString(16)} `,
  );
  return `"${safe.join('')}"`;
}
