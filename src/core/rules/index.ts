import { bend } from './clinch/bend.ts';
import { edge } from './clinch/edge.ts';
import { family } from './clinch/family.ts';
import { hardness } from './clinch/hardness.ts';
import { hole } from './clinch/hole.ts';
import { rim } from './clinch/rim.ts';
import { shank } from './clinch/shank.ts';
import { sheetThickness } from './clinch/sheet-thickness.ts';
import { spacing } from './clinch/spacing.ts';
import { duplicate } from './list/duplicate.ts';
import { lookalikeHole } from './list/lookalike-hole.ts';
import { lookalikeThread } from './list/lookalike-thread.ts';
import { panelConflict } from './list/panel-conflict.ts';
import { quantity } from './list/quantity.ts';
import { listed } from './part/listed.ts';
import { force } from './press/force.ts';
import type { ListRule, Rule } from './rule.ts';
import { gaugeMetal } from './sheet/gauge-metal.ts';
import { material } from './sheet/material.ts';
import { thicknessRead } from './sheet/thickness-read.ts';

/** Every rule over a single row, in the order in which findings are shown and in which, among equals, one is said to decide. */
export const rules: readonly Rule[] = [
  listed,
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
  spacing,
  bend,
  force,
  quantity,
];

/** Every rule that needs the whole list. */
export const listRules: readonly ListRule[] = [panelConflict, duplicate, lookalikeThread, lookalikeHole];
