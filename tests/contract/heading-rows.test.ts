import { describe, expect, it } from 'vitest';
import { buildList } from '../../src/core/intake/build-list.ts';
import { ROLES, type Role } from '../../src/core/model/list.ts';
import { HEADING_ROWS, type HeadingRow } from './heading-rows-cases.ts';

/** Roles that decide a verdict: taking another column for one of these is worse than finding none. */
const DECISIVE: readonly Role[] = ['partNumber', 'material', 'thickness', 'quantity'];

interface Guess {
  readonly language: string;
  readonly heading: string;
  readonly meant: Role;
  readonly found: Role;
}

function guesses({ language, headings, cells }: HeadingRow): readonly Guess[] {
  const columns = headings.split(' | ').map((pair) => {
    const [, heading = '', meant = ''] = /^(.*)=(\w+)$/.exec(pair.trim()) ?? [];
    if (!ROLES.includes(meant as Role)) throw new Error(`${pair} names no role`);
    return { heading, meant: meant as Role };
  });
  const rows = [
    columns.map(({ heading }) => heading),
    ...cells.map((row) => row.split(' | ').map((cell) => cell.trim())),
  ];
  const table = { name: 'List', rows: rows.map((row, index) => ({ number: index + 1, cells: row })) };
  const list = buildList({ file: 'list.xlsx', format: 'xlsx', tables: [table], notices: [] });
  return columns.map(({ heading, meant }, index) => ({
    language,
    heading,
    meant,
    found: list.columns[index]?.role ?? 'other',
  }));
}

function isMisleading({ meant, found }: Guess): boolean {
  return found !== meant && found !== 'other' && (DECISIVE.includes(found) || DECISIVE.includes(meant));
}

describe('rows of headings as real lists have them', () => {
  const all = HEADING_ROWS.flatMap(guesses);
  const wrong = all.filter(({ meant, found }) => meant !== found);
  const languages = [...new Set(HEADING_ROWS.map(({ language }) => language))];

  it('has enough of them', () => {
    expect(HEADING_ROWS.length).toBeGreaterThanOrEqual(120);
    expect(languages).toHaveLength(11);
  });

  it('understands 97 of 100 columns', () => {
    const share = 1 - wrong.length / all.length;
    expect(share, JSON.stringify(wrong, null, 1)).toBeGreaterThanOrEqual(0.97);
  });

  it.each(languages)('understands nearly every column in %s', (language) => {
    const wrongHere = wrong.filter((guess) => guess.language === language);
    const allHere = all.filter((guess) => guess.language === language);
    expect(wrongHere.length / allHere.length, JSON.stringify(wrongHere, null, 1)).toBeLessThanOrEqual(0.06);
  });

  it('never takes one column for another that decides a verdict', () => {
    expect(all.filter(isMisleading)).toEqual([]);
  });
});
