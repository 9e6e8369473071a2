/** Hardness of fastener and sheet on one Rockwell B scale, and what lies between. */
export interface HardnessMargin {
  /** Fastener minimum less typical sheet, in points. */
  readonly typical: number;
  /** Fastener minimum less hardest sheet; null where no maximum is published. */
  readonly worst: number | null;
  /** Scatter of fastener and typical sheet together, in points. */
  readonly typicalScatter: number;
  /** Scatter of fastener and hardest sheet together, in points. */
  readonly worstScatter: number;
  /** True: the sheet lies below the foot of its scale, so both margins are "more than". */
  readonly moreThan: boolean;
}

/**
 * Does the margin suffice? fails: typical < needed - u. holds: worst >= needed + u; or worst >= needed - u where practice lends
 * weight (the trade's table says yes for that sheet in its commercial condition) and the typical margin is met in full, so that
 * practice excuses a hard coil but not a hard alloy. marginal: between, and where the sheet is too soft for its scale: the margin
 * is then larger by nobody knows how much, which proves no failure. Without a maximum the typical margin has to be twice the
 * needed one. Source: common practice, no source.
 */
export function judgeMargin(
  margin: HardnessMargin,
  needed: number,
  usualPair: boolean,
): 'holds' | 'marginal' | 'fails' {
  const { typical, worst, typicalScatter, worstScatter, moreThan } = margin;
  if (![typical, typicalScatter, worstScatter].every(Number.isFinite))
    throw new Error('a hardness margin is not a number');
  if (typical < needed - typicalScatter) return moreThan ? 'marginal' : 'fails';
  if (worst === null) return typical >= 2 * needed + typicalScatter ? 'holds' : 'marginal';
  const practiceHelps = usualPair && typical >= needed;
  return worst >= (practiceHelps ? needed - worstScatter : needed + worstScatter) ? 'holds' : 'marginal';
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
