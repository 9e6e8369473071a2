import type { AlloyEntry } from '../../model/sheet.ts';
import type { Hardness } from '../../units/hardness.ts';

type Shared = Pick<AlloyEntry, 'family' | 'standard' | 'source' | 'mark'> & Partial<AlloyEntry>;
type Own = Pick<AlloyEntry, 'id' | 'name' | 'temper'> & Partial<AlloyEntry>;

/**
 * Rows of one standard: what they share is written once, and a row's own words go before it. Unless written otherwise, the alloy
 * is named like the row, nothing is published and the condition is not the one ordinarily sold. A row's mark is the weakest among
 * its typical, highest and lowest hardness: a printed limit beside a remembered typical value makes `memory`, and `source` says so.
 */
export function rowsOf(shared: Shared): (own: Own) => AlloyEntry {
  return (own) => ({ alloy: own.id, typical: null, max: null, maxFrom: 'none', commercial: false, ...shared, ...own });
}

export const hrb = (value: number): Hardness => ({ scale: 'HRB', value });
export const hrc = (value: number): Hardness => ({ scale: 'HRC', value });
export const hrf = (value: number): Hardness => ({ scale: 'HRF', value });
export const hv = (value: number): Hardness => ({ scale: 'HV', value });
/** Brinell number of aluminium: HB 10/500, or HB 2.5/62.5 in the European sheet standard. */
export const hb500 = (value: number): Hardness => ({ scale: 'HB500', value });

type Max = Pick<AlloyEntry, 'max' | 'maxFrom'>;
export type Strength = Pick<AlloyEntry, 'rmMinMpa' | 'rmMaxMpa'>;

/** A maximum that the standard writes. */
export const limit = (max: Hardness): Max => ({ max, maxFrom: 'limit' });
/** The highest value that is published, where no standard limits it. */
export const published = (max: Hardness): Max => ({ max, maxFrom: 'published' });
/** A maximum that no document gives. */
export const judged = (max: Hardness): Max => ({ max, maxFrom: 'judged' });

/** Tensile strength in MPa between its limits, or in its usual range where the standard has none; the same twice for one typical value. */
export const rm = (rmMinMpa: number, rmMaxMpa: number): Strength => ({ rmMinMpa, rmMaxMpa });

/** A limited tensile strength in MPa that stands for the highest hardness. */
export function strengthLimit(rmMaxMpa: number, rmMinMpa?: number): Max & Strength {
  const max: Max = { max: { scale: 'MPa', value: rmMaxMpa }, maxFrom: 'strength' };
  return { ...max, rmMaxMpa, ...(rmMinMpa === undefined ? {} : { rmMinMpa }) };
}
