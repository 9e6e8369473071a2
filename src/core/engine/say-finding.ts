import type { Finding, Fix, Judgement, Text, Values, Words } from '../model/finding.ts';
import type { LengthUnit } from '../model/list.ts';
import type { Outcome } from '../model/outcome.ts';
import type { RuleCard } from '../rules/rule.ts';
import { fillText, refuseHoles } from '../say/fill.ts';

/**
 * What a rule says, with its sentence in a unit system. Throws where a slot of the sentence has nothing behind it or a value is not a
 * number: such a rule is broken.
 */
export function sayFinding({ id, texts }: RuleCard, judgement: Judgement, units: LengthUnit): Finding {
  const text = texts[judgement.says];
  if (!text) throw new Error(`no text “${judgement.says}”`);
  return new SaidFinding(id, judgement, text, units);
}

/** The same as a plain object, as it can be sent to another thread. */
export function plainFinding(finding: Finding): Finding {
  const { brief, text } = finding;
  return { ...finding, brief, text };
}

/** Whether two findings, each of which may be missing, say the same; their sentences are not made for that. */
export function saySame(one: Finding | undefined, other: Finding | undefined): boolean {
  if (one === other) return true;
  if (one?.rule !== other?.rule || one?.says !== other?.says || one?.outcome !== other?.outcome) return false;
  return (
    hasSame(one?.values ?? NO_VALUES, other?.values ?? NO_VALUES) &&
    hasSame(one?.words ?? NO_WORDS, other?.words ?? NO_WORDS)
  );
}

function hasSame<T>(one: Readonly<Record<string, T>>, other: Readonly<Record<string, T>>): boolean {
  const names = Object.keys(one);
  return names.length === Object.keys(other).length && names.every((name) => one[name] === other[name]);
}

const NO_VALUES: Values = {};
const NO_WORDS: Words = {};
const NO_CITES: readonly string[] = [];

/** Its sentence is made when it is first asked for: of a long list most are never read. */
class SaidFinding implements Finding {
  declare readonly rule: string;
  declare readonly outcome: Outcome;
  declare readonly says: string;
  declare readonly values: Values;
  declare readonly words: Words;
  declare readonly cites: readonly string[];
  declare readonly fix?: Fix;
  readonly #text: Text;
  readonly #units: LengthUnit;
  #filled: Text | undefined;

  constructor(rule: string, { outcome, says, values, words, cites, fix }: Judgement, text: Text, units: LengthUnit) {
    this.rule = rule;
    this.outcome = outcome;
    this.says = says;
    this.values = values ?? NO_VALUES;
    this.words = words ?? NO_WORDS;
    this.cites = cites ?? NO_CITES;
    if (fix) this.fix = fix;
    this.#text = text;
    this.#units = units;
    refuseNonNumbers(this.values);
    refuseHoles(text, this.values, this.words);
  }

  get brief(): string {
    return this.#sentence.brief;
  }

  get text(): string {
    return this.#sentence.full;
  }

  toJSON(): Finding {
    return plainFinding(this);
  }

  get #sentence(): Text {
    this.#filled ??= fillText(this.#text, this.values, this.words, this.#units);
    return this.#filled;
  }
}

/** A number that is none must not slip past a comparison unseen. */
function refuseNonNumbers(values: Values): void {
  for (const name in values) if (!Number.isFinite(values[name])) throw new Error(`${name} is not a number`);
}
