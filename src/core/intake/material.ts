import type { MaterialReading } from '../model/sheet.ts';
import { findAlloy } from '../reference/alloys/index.ts';
import { coatedGroups } from './material-coating.ts';
import { fractionTempers } from './material-fraction.ts';
import { groupEntries, type MaterialGroup, materialGroups, untempered } from './material-groups.ts';
import { remarksOn, UNREAD } from './material-remarks.ts';
import { findMisspelt } from './material-spelling.ts';
import { plainMaterialText } from './material-text.ts';
import { type MaterialToken, materialTokens } from './material-tokens.ts';

/**
 * Reads a material cell: alloy and temper in any country's words, vague words as everything they could mean, coating, finish and
 * thickness beside them. Never a guess: a word that changes the metal and is not known leaves the cell `unreadable`.
 */
export function parseMaterial(text: string): MaterialReading {
  const { plain, upper } = plainMaterialText(text);
  if (/^[\s-]*$/.test(plain)) return { text, candidates: [], how: 'blank', family: null, remarks: [] };
  const { tokens, remarks } = corrected(materialTokens(upper), upper);
  const beside = writtenBeside(tokens, plain);
  const read = (found: Found): MaterialReading => ({
    text,
    ...found,
    ...beside,
    remarks: [...new Set([...remarks, ...found.remarks])],
  });
  return read(findSheet(tokens, plain));
}

type Found = Pick<MaterialReading, 'candidates' | 'how' | 'family' | 'remarks' | 'writtenLimit'>;

function corrected(tokens: readonly MaterialToken[], upper: string) {
  const remarks: string[] = [];
  const read = tokens.map((token): MaterialToken => {
    const typed = upper.slice(token.start, token.end);
    const meant = token.kind === 'unknown' ? findMisspelt(typed) : undefined;
    if (!meant) return token;
    remarks.push(`“${typed}” is read as ${meant.word}`);
    return { start: token.start, end: token.end, ...meant.meaning };
  });
  return { tokens: read, remarks };
}

function writtenBeside(tokens: readonly MaterialToken[], plain: string) {
  const words = (...kinds: readonly MaterialToken['kind'][]): string =>
    tokens
      .filter(({ kind }) => kinds.includes(kind))
      .map(({ start, end }) => plain.slice(start, end))
      .join(' ');
  const coating = words('coating').replace(/^\+/, '');
  const finish = words('finish', 'colour');
  const size = tokens.find(({ kind }) => kind === 'thickness') ?? tokens.find(({ kind }) => kind === 'quarter');
  return {
    ...(coating ? { coating } : {}),
    ...(finish ? { finish } : {}),
    ...(size ? { thicknessText: plain.slice(size.start, size.end).trim() } : {}),
  };
}

function findSheet(tokens: readonly MaterialToken[], plain: string): Found {
  const has = (kind: MaterialToken['kind']): boolean => tokens.some((token) => token.kind === kind);
  const words = (kind: MaterialToken['kind']): string =>
    tokens.flatMap((token) => (token.kind === kind ? `“${plain.slice(token.start, token.end)}”` : [])).join(', ');
  if (has('date')) return nothing('unreadable', UNREAD.date);
  if (has('other')) return nothing('not-a-material');
  if (has('unlisted')) return nothing('unreadable', UNREAD.unlisted(words('unlisted'), plain));
  const groups = materialGroups(tokens);
  const sheet = coatedGroups(
    groups,
    tokens.flatMap((token) => (token.kind === 'coating' ? [token] : [])),
  );
  if (sheet === null) return nothing('unreadable', UNREAD.coating(words('coating')));
  if (sheet.length === 0) return noMetal(tokens);
  const strange = has('unknown') ? UNREAD.words(words('unknown')) : null;
  const unsettled = sheet.some(({ kind }) => kind === 'metal') || /[HTWFCRX]P?-?\d/i.test(words('unknown'));
  if (strange && unsettled) return nothing('unreadable', strange);
  const fraction = tokens.find(({ kind }) => kind === 'quarter');
  return judged(sheet, tokens, strange ? [strange] : [], fraction ? plain.slice(fraction.start, fraction.end) : null);
}

function nothing(how: MaterialReading['how'], ...remarks: readonly string[]): Found {
  return { candidates: [], how, family: null, remarks };
}

function noMetal(tokens: readonly MaterialToken[]): Found {
  const has = (...kinds: readonly MaterialToken['kind'][]): boolean => tokens.some(({ kind }) => kinds.includes(kind));
  if (has('open', 'colour', 'finish')) return nothing('not-a-material');
  if (has('alloy', 'unknown', 'temper', 'thickness', 'quarter')) return nothing('unreadable');
  return nothing(tokens.length > 0 && has('silent') ? 'not-a-material' : 'unreadable');
}

function judged(
  groups: readonly MaterialGroup[],
  tokens: readonly MaterialToken[],
  remarks: readonly string[],
  written: string | null,
): Found {
  const fraction = fractionTempers(groups, written);
  const ids = new Set<string>(fraction.ids);
  for (const group of groups) {
    const found = groupEntries(group);
    if ('unlistedTemper' in found) return nothing('unreadable', UNREAD.temper(found.unlistedTemper));
    for (const id of found.ids) ids.add(id);
  }
  const candidates = [...ids];
  const how = howRead(groups, candidates);
  const families = new Set(candidates.map((id) => findAlloy(id)?.family ?? null));
  const [family = null] = families.size === 1 ? families : [];
  const limit = writtenLimit(groups);
  const said = remarksOn(groups, tokens, candidates, how);
  return {
    candidates,
    how,
    family,
    ...(limit ? { writtenLimit: limit } : {}),
    remarks: [...remarks, ...fraction.remarks, ...said],
  };
}

function howRead(
  groups: readonly MaterialGroup[],
  candidates: readonly string[],
): 'named' | 'condition-assumed' | 'vague' {
  if (candidates.length > 1) return 'vague';
  const named = groups.some((group) => group.kind === 'alloy' && (group.tempers.length > 0 || group.alloy.withTemper));
  return named ? 'named' : 'condition-assumed';
}

/** The limit of the standard in which an alloy is written. Where two are written, the one without a limit counts. */
function writtenLimit(groups: readonly MaterialGroup[]): MaterialReading['writtenLimit'] {
  const limits = groups.flatMap((group) => {
    if (group.kind !== 'alloy' || !group.alloy.limit) return [];
    const annealed = group.tempers.every((code) => code === 'O') && untempered(group.alloy).length === 1;
    return annealed ? [group.alloy.limit] : [];
  });
  return limits.find(({ max }) => max === null) ?? limits[0];
}
