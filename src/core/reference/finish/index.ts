import type { Table } from '../../model/table.ts';
import { anodicIndex } from './anodic-index.ts';
import { anodicLimits } from './anodic-limits.ts';
import { bakingTimes } from './baking.ts';
import { finishBuildUp } from './build-up.ts';
import { embrittlementThresholds } from './embrittlement.ts';
import { galvanicDisagreements } from './galvanic-disagreements.ts';
import { galvanicOrder } from './galvanic-order.ts';
import { galvanicRules } from './galvanic-rules.ts';
import { orderOfWork } from './order-of-work.ts';
import { seaWaterPotentials } from './sea-water-potentials.ts';

/** Every table about finishes and corrosion, for the page of sources and for the checks that all tables share. */
export const finishTables: readonly Table<unknown>[] = [
  finishBuildUp,
  anodicIndex,
  anodicLimits,
  galvanicDisagreements,
  galvanicOrder,
  galvanicRules,
  seaWaterPotentials,
  embrittlementThresholds,
  bakingTimes,
  orderOfWork,
];
