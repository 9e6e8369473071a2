import type { PressPanel, PressSheet } from './press.ts';
import type { PressStep } from './press-step.ts';

/** Rows of the list in the order in which the user presses them. A panel of which no row is named goes by the suggested order. */
export type PressOrder = readonly number[];

/** The press sheet with its steps as the user has put them. A step that has come up since stands after the others of its panel. */
export function inSetOrder({ builds, panels }: PressSheet, order: PressOrder): PressSheet {
  const places = new Map(order.map((row, place) => [row, place]));
  return { builds, panels: panels.map((panel) => sortPanel(panel, places)) };
}

/** The order with one step of a panel moved, both places counted from 0 as the panel shows its steps. */
export function moveStep(order: PressOrder, panel: PressPanel, from: number, to: number): PressOrder {
  const steps = [...panel.steps];
  const [moved] = steps.splice(from, 1);
  if (moved) steps.splice(to, 0, moved);
  return [...forgetOrder(order, panel), ...rowsOf(steps)];
}

/** The order without what it says of a panel, which goes by the suggested order again. */
export function forgetOrder(order: PressOrder, { steps }: PressPanel): PressOrder {
  const own = new Set(rowsOf(steps));
  return order.filter((row) => !own.has(row));
}

function sortPanel(panel: PressPanel, places: ReadonlyMap<number, number>): PressPanel {
  const place = ({ rows }: PressStep) =>
    Math.min(Number.MAX_SAFE_INTEGER, ...rows.flatMap((row) => places.get(row) ?? []));
  if (!panel.steps.some(({ rows }) => rows.some((row) => places.has(row)))) return panel;
  const steps = [...panel.steps]
    .sort((a, b) => place(a) - place(b) || a.order - b.order)
    .map((step, index) => ({ ...step, order: index + 1 }));
  return { ...panel, steps, isOrderSet: true };
}

function rowsOf(steps: readonly PressStep[]): readonly number[] {
  return steps.flatMap(({ rows }) => rows);
}
