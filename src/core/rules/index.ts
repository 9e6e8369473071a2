import { bend } from './clinch/bend.ts';
import { edge } from './clinch/edge.ts';
import { family } from './clinch/family.ts';
import { hardness } from './clinch/hardness.ts';
import { hole } from './clinch/hole.ts';
import { rim } from './clinch/rim.ts';
import { shank } from './clinch/shank.ts';
import { sheetThickness } from './clinch/sheet-thickness.ts';
import { spacing } from './clinch/spacing.ts';
import { embrittlement } from './finish/embrittlement.ts';
import { galvanic } from './finish/galvanic.ts';
import { holeClosing } from './finish/hole-closing.ts';
import { order } from './finish/order.ts';
import { engagement } from './joint/engagement.ts';
import { pushOut } from './joint/push-out.ts';
import { tightening } from './joint/tightening.ts';
import { torqueOut } from './joint/torque-out.ts';
import { duplicate } from './list/duplicate.ts';
import { lookalikeHole } from './list/lookalike-hole.ts';
import { lookalikeThread } from './list/lookalike-thread.ts';
import { panelConflict } from './list/panel-conflict.ts';
import { quantity } from './list/quantity.ts';
import { description } from './part/description.ts';
import { listed } from './part/listed.ts';
import { stocked } from './part/stocked.ts';
import { superseded } from './part/superseded.ts';
import { force } from './press/force.ts';
import type { ListRule, Rule } from './rule.ts';
import { gaugeMetal } from './sheet/gauge-metal.ts';
import { material } from './sheet/material.ts';
import { thicknessRead } from './sheet/thickness-read.ts';

/** Every rule over a single row, in the order in which findings are shown and in which, among equals, one is said to decide. */
export const rules: readonly Rule[] = [
  listed,
  description,
  material,
  thicknessRead,
  gaugeMetal,
  family,
  hardness,
  sheetThickness,
  shank,
  hole,
  rim,
  edge,
  bend,
  order,
  holeClosing,
  embrittlement,
  galvanic,
  force,
  pushOut,
  torqueOut,
  engagement,
  tightening,
  stocked,
  superseded,
  quantity,
];

/** Every rule that needs the whole list. */
export const listRules: readonly ListRule[] = [spacing, panelConflict, duplicate, lookalikeThread, lookalikeHole];
