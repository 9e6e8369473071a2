/** Hardness of fastener and sheet on one Rockwell B scale, and what lies between. */
export interface HardnessMargin {
  /** Fastener minimum less typical sheet, in points. */
  readonly typical: number;
  /** Fastener minimum less hardest sheet; null where no maximum is published. */
  readonly worst: number | null;
  /** Scatter of both values together, in points. */
  readonly scatter: number;
  /** True: the sheet lies below the foot of its scale, so both margins are "more than". */
  readonly moreThan: boolean;
}

/**
 * Does the margin suffice? fails: typical < needed - u; holds: worst >= needed + u, or >= needed - u where practice lends weight
 * (the trade's table says yes for that sheet in its commercial condition); marginal between. Without a maximum the typical margin
 * has to be twice the needed one. Source: common practice, no source.
 */
export function judgeMargin(
  margin: HardnessMargin,
  needed: number,
  usualPair: boolean,
): 'holds' | 'marginal' | 'fails' {
  const { typical, worst, scatter } = margin;
  if (!Number.isFinite(typical) || !Number.isFinite(scatter)) throw new Error('a hardness margin is not a number');
  if (typical < needed - scatter) return 'fails';
  if (worst === null) return typical >= 2 * needed + scatter ? 'holds' : 'marginal';
  return worst >= (usualPair ? needed - scatter : needed + scatter) ? 'holds' : 'marginal';
}

/**
 * Does a sheet keep within a limit that a catalogue states? Without a published maximum the typical value has to lie the needed
 * margin below the limit. Source: common practice, no source.
 */
export function judgeLimit(
  typicalHrb: number,
  maxHrb: number | null,
  limitHrb: number,
  needed: number,
): 'holds' | 'marginal' | 'fails' {
  if (!Number.isFinite(typicalHrb) || !Number.isFinite(limitHrb)) throw new Error('a hardness is not a number');
  if ((maxHrb ?? typicalHrb + needed) <= limitHrb) return 'holds';
  return typicalHrb <= limitHrb ? 'marginal' : 'fails';
}
