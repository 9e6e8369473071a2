import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import { columnLetter } from '../core/model/list.ts';

/** The audit in the shape that `audit.schema.json` describes: stable, for other programs. */
export function toJson(list: AuditedList) {
  return {
    list: {
      file: list.file,
      sheet: list.sheet,
      headerRow: list.headerRow,
      rows: list.lines.length + list.others.length,
      columns: list.columns.map(({ index, heading, role }) => ({ column: columnLetter(index), heading, role })),
      notFasteners: list.others.map(({ row }) => row),
      catalogues: list.catalogues,
      warnings: list.notices.map(({ text }) => text),
    },
    totals: list.totals,
    lines: list.lines.map(lineToJson),
  };
}

function lineToJson({ row, verdict, fastener, sheet, quantity, extendedQuantity, findings, remedies }: AuditedLine) {
  return {
    row,
    verdict,
    fastener,
    sheet: sheet && {
      listedAs: sheet.listedAs,
      alloy: sheet.alloy,
      temper: sheet.temper,
      family: sheet.family,
      thicknessMm: sheet.thicknessMm,
      thinnestMm: sheet.thinnestMm,
    },
    quantity,
    extendedQuantity,
    findings: findings.map(({ rule, outcome, text, values, cites }) => ({ rule, outcome, text, values, cites })),
    remedies: remedies.map(({ partNumber, change, stocked }) => ({ partNumber, change, stocked })),
  };
}
