import type { Environment } from '../model/facts.ts';
import { isDeniedBefore } from './facts-negation.ts';

const PLACES: readonly (readonly [Environment, RegExp])[] = [
  [
    'outdoor',
    /(?<![\p{L}])(?:outdoors?|out of doors|outside use|(?:for )?exterior (?:use|environment|location|mount\p{L}*)|marine|maritime|coastal|off-?shore|sea ?water|salt(?:[- ](?:air|water|laden|environment|atmosphere|mist))?(?![- ](?:spray|fog|test))(?! bath)|salt[- ](?:spray|fog)(?= (?:zone|environment|exposure|area|atmosphere|service))|exposed to (?:the )?weather|weather[- ]exposed|im freien|au(?:ß|ss)en(?:bereich|einsatz|anwendung|aufstellung)|ext[ée]rieur|milieu marin|seeluft|seewasser)(?![\p{L}])/giu,
  ],
  [
    'indoor',
    /(?<![\p{L}])(?:indoors?|inside use|(?:for )?interior (?:use|environment)|innen(?:bereich|einsatz|anwendung|raum|aufstellung)|int[ée]rieur)(?![\p{L}])/giu,
  ],
  [
    'controlled',
    /(?<![\p{L}])(?:(?:climate|environment(?:ally)?|humidity|temperature)[- ]controlled|controlled (?:environment|atmosphere|climate|area|room)|clean ?rooms?|air[- ]condition(?:ed|ing)|klimatisiert|reinraum|climatis[ée]e?)(?![\p{L}])/giu,
  ],
];

/** Where the assembly lives, as a text says; of several places the harshest. */
export function findEnvironment(text: string): Environment | null {
  const said = PLACES.find(([, pattern]) =>
    [...text.matchAll(pattern)].some(
      ({ index }) => !isDeniedBefore(text.slice(0, index).replace(/\b(?:for|in|use) $/i, '')),
    ),
  );
  return said?.[0] ?? null;
}

const WELD =
  /(?<![\p{L}])(?:(?:spot|mig|tig|arc|seam|stud|tack|plug|gas|laser)[- ]?)?(?:weld(?:s|ed|ing)?(?![- ]?(?:nut|stud|pin|screw)s?\b)|(?:punkt|schutzgas)?schwei(?:ß|ss)(?:t|en|ung|naht|punkte?)?|geschwei(?:ß|ss)t|verschwei(?:ß|ss)t|soud(?:er|[ée]e?s?|ure|age))(?![\p{L}])/giu;

/** The words of a text about welding at the fastener, as written; null when it says none or forbids it. */
export function findWelding(text: string): string | null {
  const clauses = text.split(/[;\n]|\.(?=\s|$)/);
  return clauses.find((clause) => [...clause.matchAll(WELD)].some((match) => isWelded(clause, match)))?.trim() ?? null;
}

function isWelded(clause: string, { index, 0: word }: RegExpExecArray): boolean {
  const isFree = /^[- ]?(?:free|not (?:allowed|permitted)|prohibited|forbidden|verboten|interdit)/i.test(
    clause.slice(index + word.length),
  );
  return (
    !isFree &&
    !isDeniedBefore(clause.slice(0, index)) &&
    !/(?:instead of|replaces?|in place of) (?:a )?$/i.test(clause.slice(0, index))
  );
}
