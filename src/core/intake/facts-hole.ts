import type { HoleProcess } from '../model/facts.ts';
import { isDenied } from './facts-negation.ts';
import { namesHole } from './facts-rim.ts';

const PROCESSES: readonly (readonly [HoleProcess, RegExp])[] = [
  ['waterjet', /(?<!\p{L})(?:water[- ]?jet|wasserstrahl\p{L}*|jet d['’]eau)/giu],
  [
    'laser',
    /(?<!\p{L})(?:laser(?![- ]?(?:weld|mark|etch|engrav|solder|sinter|schwei))|gelasert|lasergeschnitten|laserschnitt)/giu,
  ],
  [
    'drilled',
    /(?<!\p{L})(?<!tap[- ])(?:drill(?:ed|ing)?(?![- ]?(?:size|bit|chart|screw))|gebohrt|bohren|perc(?:er|[ée]s?)\b)/giu,
  ],
  [
    'punched',
    /(?<!\p{L})(?:punch(?:ed|ing)?(?![- ]?(?:side|face|mark|list))|pierc(?:ed?|ing)|stamped|gestanzt|stanzen|gelocht|poin[çc]onn[ée]\p{L}*)/giu,
  ],
];

/** How the hole is made, where a text says so; null when it names no way or several. */
export function findHoleProcess(text: string): HoleProcess | null {
  const said = PROCESSES.flatMap(([process, pattern]) =>
    [...text.matchAll(pattern)]
      .filter(({ index, 0: word }) => !isDenied(text.slice(0, index), text.slice(index + word.length)))
      .map(({ index, 0: word }) => ({
        process,
        around: text.slice(Math.max(0, index - 16), index + word.length + 16),
      })),
  );
  return onlyOne(said.map(({ process }) => process)) ?? onlyOne(said.filter(isAtHole).map(({ process }) => process));
}

// "Laser cut outline, punched holes": the word beside the hole counts.
function isAtHole({ around }: { readonly around: string }): boolean {
  return namesHole(around);
}

function onlyOne(processes: readonly HoleProcess[]): HoleProcess | null {
  return new Set(processes).size === 1 ? (processes[0] ?? null) : null;
}
