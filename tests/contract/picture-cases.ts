import { readFileSync } from 'node:fs';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { auditLine, decide, runListRule } from '../../src/core/engine/audit-line.ts';
import { exampleSubject } from '../../src/core/engine/example.ts';
import { summariseFastener, summariseRequirement, summariseSheet } from '../../src/core/engine/summarise.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import type { Drawing, Shape } from '../../src/core/picture/drawing.ts';
import type { PicturedRow } from '../../src/core/picture/pictured-row.ts';
import { listRules, rules } from '../../src/core/rules/index.ts';
import type { Example } from '../../src/core/rules/rule.ts';
import { readFile } from '../../src/io/read-file.ts';

const SAMPLES = new URL('../../sample-data/', import.meta.url);

function sample(name: string) {
  return readFile(readFileSync(new URL(name, SAMPLES)), name);
}

/** Every fastener row of both forms of the demo list, ready to be drawn. */
export function demoRows(shop: ShopSettings = DEFAULT_SHOP): readonly PicturedRow[] {
  const basis = createBasis([importCatalogue(sample('demo-catalogue.csv'))], shop);
  return ['recorder-cabinet.csv', 'recorder-cabinet.xlsx']
    .flatMap((name) => auditFile(sample(name), basis).lines)
    .map((line) => ({ line, part: basis.parts.find(line.line.partNumber), shop }));
}

/** A row made from cells and what the catalogue says of its part, judged and ready to be drawn. */
export function rowFor(example: Omit<Example, 'outcome' | 'says'>): PicturedRow {
  const subject = exampleSubject(example);
  const { line, fastener, shop } = subject;
  const together = listRules.flatMap((rule) => runListRule(rule, [subject]).get(subject) ?? []);
  const findings = [...auditLine(subject, rules), ...together];
  const audited = {
    row: line.row,
    line,
    ...decide(findings),
    findings,
    fastener: summariseFastener(subject),
    sheet: summariseSheet(subject),
    requires: summariseRequirement(subject),
    quantity: line.quantity.value,
    extendedQuantity: null,
    remedies: [],
  };
  return { line: audited, part: fastener, shop };
}

/** The shapes of one look. */
export function shapesLike(drawing: Drawing | null, look: Shape['look']): readonly Shape[] {
  return (drawing?.shapes ?? []).filter((shape) => shape.look === look);
}

/** Least and most of a shape's places along both axes; infinite where there is no such shape. */
export function extentOf(drawing: Drawing | null, name: string) {
  const points = drawing?.shapes.find((shape) => shape.name === name)?.points ?? [];
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Every number that says where something is. */
export function placesOf({ corner, widthMm, heightMm, shapes, dimensions, labels }: Drawing): readonly number[] {
  return [
    ...[corner.x, corner.y, widthMm, heightMm],
    ...shapes.flatMap(({ points, radiusMm = 0 }) => [radiusMm, ...points.flatMap(({ x, y }) => [x, y])]),
    ...dimensions.flatMap(({ fromMm, toMm, startMm }) => [fromMm, toMm, startMm]),
    ...labels.flatMap(({ at }) => [at.x, at.y]),
  ];
}
