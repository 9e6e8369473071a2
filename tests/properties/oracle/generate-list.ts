import fc from 'fast-check';
import {
  type Cell,
  edgeCell,
  holeCell,
  materialCell,
  quantityCell,
  type ThicknessMode,
  thicknessCell,
  type UnitMode,
} from './generate-cells.ts';
import { anyPart, type WrittenPart } from './generate-part.ts';
import type { Row, Shop } from './judge.ts';

export interface WrittenRow extends Row {
  readonly cells: readonly string[];
}

export interface WrittenList {
  readonly parts: readonly WrittenPart[];
  readonly rows: readonly WrittenRow[];
  readonly headings: readonly string[];
  readonly shop: Shop;
}

interface Modes {
  readonly thickness: ThicknessMode;
  readonly hole: UnitMode;
  readonly edge: UnitMode;
}

const HEADINGS = {
  thickness: {
    mm: 'Thickness (mm)',
    in: 'Thickness (in)',
    cells: 'Thickness',
    'bare mm': 'Thickness',
    'bare in': 'Thickness',
  },
  hole: { mm: 'Hole (mm)', in: 'Hole (in)', cells: 'Hole' },
  edge: { mm: 'Edge distance (mm)', in: 'Edge distance (in)', cells: 'Edge distance' },
};

const mode = fc.constantFrom<UnitMode>('mm', 'in', 'cells');
const thicknessMode = fc.constantFrom<ThicknessMode>('mm', 'in', 'cells', 'bare mm', 'bare in');
const UNLISTED = ['ZZ-7', 'QX-9999', 'NOT-ON-FILE-3', ''];

/** A list of `length` rows over a catalogue made for it, with the shop that judges it. */
export function anyList(length: number): fc.Arbitrary<WrittenList> {
  return fc
    .record({
      parts: fc.tuple(...Array.from({ length: 40 }, (_, number) => anyPart(number))),
      modes: fc.record({ thickness: thicknessMode, hole: mode, edge: mode }),
      shop: fc.record({
        silence: fc.constantFrom<Shop['silence']>('note', 'note', 'unknown'),
        judgeThicknessAt: fc.constantFrom<Shop['judgeThicknessAt']>('nominal', 'nominal', 'thinnest'),
      }),
    })
    .map(({ modes, shop, parts }) => ({
      parts,
      shop,
      modes: shop.judgeThicknessAt === 'thinnest' ? { ...modes, thickness: 'cells' as const } : modes,
    }))
    .chain(({ parts, modes, shop }) =>
      fc
        .array(anyRow(parts, modes, shop), { minLength: length, maxLength: length })
        .map((rows) => ({ parts, rows, headings: headingsOf(modes), shop })),
    );
}

function headingsOf({ thickness, hole, edge }: Modes): readonly string[] {
  return ['Part number', 'Qty', 'Material', HEADINGS.thickness[thickness], HEADINGS.hole[hole], HEADINGS.edge[edge]];
}

type PartCell = Cell<WrittenPart | null>;

function anyRow(parts: readonly WrittenPart[], modes: Modes, shop: Shop): fc.Arbitrary<WrittenRow> {
  const listed = fc.constantFrom(...parts).map((part): PartCell => ({ text: part.partNumber, means: part }));
  const unlisted = fc.constantFrom(...UNLISTED).map((text): PartCell => ({ text, means: null }));
  return fc.oneof({ arbitrary: listed, weight: 30 }, { arbitrary: unlisted, weight: 1 }).chain((part) =>
    fc
      .record({
        quantity: quantityCell,
        material: materialCell(shop.judgeThicknessAt === 'thinnest'),
        thickness: thicknessCell(modes.thickness, shop.judgeThicknessAt === 'thinnest'),
        hole: holeCell(modes.hole, part.means?.holeMm ?? 5.6),
        edge: edgeCell(modes.edge, part.means?.edgeMm ?? 6),
      })
      .map(({ quantity, material, thickness, hole, edge }) => ({
        part: part.means,
        metals: material.means,
        thickness: thickness.means,
        hole: hole.means,
        edge: edge.means,
        quantityIsWhole: quantity.means,
        cells: [part.text, quantity.text, material.text, thickness.text, hole.text, edge.text],
      })),
  );
}
