import { rememberForTwo } from '../../caching/remember.ts';
import { metalClassOf, type RockwellB, toRockwellB } from '../../calc/rockwell-b.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { FastenerMaterialEntry } from '../../reference/fastener-materials.ts';
import { type Hardness, showHardness } from '../../units/hardness.ts';
import type { Subject } from '../rule.ts';

/** The least hardness of a fastener, stated by the catalogue or assumed from its class. */
export interface FastenerHardness {
  /** The metal it is taken for. */
  readonly name: string;
  readonly metal: FastenerMaterialEntry | null;
  readonly given: string;
  /** Null when only a sheet limit is known, which is enough, or when the stated hardness is off every scale. */
  readonly on: RockwellB | null;
  readonly assumed: boolean;
  /** The hardest sheet that the catalogue states for it. */
  readonly sheetLimit: Hardness | null;
}

/**
 * Every hardness the fastener may have. One, when the catalogue states it; one per material class that its words allow, when
 * only the class is named; none, when neither is known and no sheet limit is stated.
 */
export function fastenerHardnesses({ fastener, metals }: Subject): readonly FastenerHardness[] {
  return fastener ? hardnessesOf(fastener, metals) : NONE;
}

const NONE: readonly FastenerHardness[] = [];
/** Parts come in many rows, and each is compared with many sheets: the same object for the same part. */
const hardnessesOf = rememberForTwo(findHardnesses);

function findHardnesses(fastener: Fastener, metals: Subject['metals']): readonly FastenerHardness[] {
  const classes = metals.length > 0 ? metals : [null];
  const stated = fastener.hardnessMin;
  const sheetLimit = fastener.sheetHardnessMax;
  return classes.flatMap((metal) => {
    const given = stated ?? metal?.hardnessMin ?? null;
    const on = given && toRockwellB(given, metal ? metalClassOf(metal.family) : 'steel');
    if (!given && !sheetLimit) return [];
    const option: FastenerHardness = {
      name: metal?.name ?? 'the fastener',
      metal,
      given: given ? describe(given, stated !== null, metal) : '',
      on,
      assumed: stated === null,
      sheetLimit,
    };
    return [option];
  });
}

function describe(given: Hardness, stated: boolean, metal: FastenerMaterialEntry | null): string {
  return stated
    ? `${showHardness(given)} by the catalogue`
    : `${showHardness(given)} assumed for ${metal?.name ?? 'its class'}`;
}
