import { rememberSome } from '../caching/remember.ts';

/** A part number for comparing: "ｎｕｔ – M4" and "NUT-M4" give the same key. Every other sign counts. */
export const partKey: (partNumber: string) => string = rememberSome(readPartKey);

function readPartKey(partNumber: string): string {
  return partNumber
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[‐-―−﹣ー]/g, '-')
    .replace(/[\s\u00ad\u200b-\u200f\u202a-\u202e\u2060\ufeff]+/g, '');
}
