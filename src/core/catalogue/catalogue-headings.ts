import { foldText, headingText } from '../intake/heading-text.ts';
import { findRole } from '../intake/headings.ts';
import type { LengthUnit, Role } from '../model/list.ts';
import { CATALOGUE_FIELDS, type CatalogueField } from './catalogue-fields.ts';

/** What a heading of a supplier's table says. */
export interface FieldReading {
  readonly role: CatalogueField;
  readonly sure: boolean;
  /** Length unit of bare numbers; null: not said. */
  readonly unit: LengthUnit | null;
}

/** The field that a heading names: one of our own names, the usual synonyms, or a list's heading of the same meaning. */
export function findField(heading: string): FieldReading | null {
  const exact = EXACT.get(squeeze(heading));
  if (exact) return { role: exact, sure: true, unit: exact.endsWith('Mm') ? 'mm' : null };
  const { words, unit } = headingText(heading);
  if (words === '') return null;
  const toleranceSide = HOLE_SIDE.exec(foldText(heading));
  if (toleranceSide) return { role: isPlus(toleranceSide[1]) ? 'holePlusMm' : 'holeMinusMm', sure: true, unit };
  const known = PATTERNS.find(([, , pattern]) => pattern.test(words));
  if (known) return { role: known[0], sure: known[1], unit };
  const listed = findRole(heading);
  const role = listed && OF_ROLE[listed.role];
  return role ? { role, sure: listed.sure, unit } : null;
}

const EXACT: ReadonlyMap<string, CatalogueField> = new Map(
  (Object.keys(CATALOGUE_FIELDS) as CatalogueField[]).map((field) => [squeeze(field), field]),
);

function squeeze(heading: string): string {
  return foldText(heading).replace(/[\s_-]+/g, '');
}

const HOLE_SIDE =
  /^(?:mtg\.? |mounting )?hole (?:dia\.? )?(?:tol(?:erance|\.)? ?)?[([]?(\+|plus|upper|-|minus|lower)[)\]]?(?: ?tol(?:erance|\.)?)?(?: ?[([](?:mm|in)\.?[)\]])?$/;

function isPlus(side: string | undefined): boolean {
  return side === '+' || side === 'plus' || side === 'upper';
}

const field = (role: CatalogueField, pattern: string) => [role, true, new RegExp(pattern)] as const;
const perhaps = (role: CatalogueField, pattern: string) => [role, false, new RegExp(pattern)] as const;

const STOCK = '(?:sheet metal|base metal|sheet|panel|material|base|metal)';
const ALUMINIUM = '(?:aluminium|aluminum|alum|alu|al)';
/** A force or rating that names no sheet is taken as the steel's. */
const PUSH = '(?:push ?out|push ?through)(?: (?:force|strength|load|resistance))?';
const TORQUE = 'torque ?out(?: (?:strength|resistance))?';
const FORCE =
  '(?:(?:(?:installation|install|insertion|press(?:ing|in)?|press in|seating|squeeze|setting) )?force|installation|press load)';
const IN_STEEL = '(?: (?:(?:in|for|/) )?(?:cold rolled |mild |crs? )?steel)?';
const IN_ALUMINIUM = `(?: (?:in|for|/))? ${ALUMINIUM}`;
/** Units that stand without brackets. */
const UNIT = '(?: (?:k?n|lbf?s?|n ?m|in lbf?s?|ft lbf?s?))?';

/** Words of suppliers' tables, over the canonical words of a heading; earlier ones win. */
const PATTERNS: readonly (readonly [CatalogueField, boolean, RegExp])[] = [
  field('supersededBy', '^(?:superseded by|replaced by|replacement|replacement part no|successor|new part no)$'),
  field(
    'sheetHardnessMax',
    `^(?:maximum )?${STOCK} hardness(?: (?:maximum|limit))?(?: hr[bc])?$|^hardness (?:of )?${STOCK}(?: maximum)?$|^(?:for )?${STOCK} (?:hr[bc] )?(?:or )?hr[bc](?: maximum)?$|^maximum hardness(?: of)? ${STOCK}?$`,
  ),
  field(
    'hardnessMin',
    '^(?:fastener |nut |stud |body |minimum )*hardness(?: (?:minimum|range|hr[bc]|hv|hb|fastener))*$|^hr[bc](?: minimum)?$|^harte$',
  ),
  field(
    'sheetMinMm',
    `^minimum (?:${STOCK} )+(?:thickness|gauge)$|^minimum ${STOCK}$|^minimum (?:thickness|gauge)$|^(?:${STOCK} )+(?:thickness |gauge )?minimum$|^(?:thickness|gauge) minimum$`,
  ),
  field(
    'sheetMaxMm',
    `^maximum (?:${STOCK} )+(?:thickness|gauge)$|^maximum ${STOCK}$|^maximum (?:thickness|gauge)$|^(?:${STOCK} )+(?:thickness |gauge )?maximum$|^(?:thickness|gauge) maximum$`,
  ),
  field('shankMm', '^(?:maximum )?shank(?: (?:length|height|maximum|depth))*$'),
  field('flangeMm', '^(?:flange|head)(?: (?:dia|od|size))$|^flange$'),
  field('heightMm', '^(?:overall |maximum |total |head |nut )?height(?: (?:maximum|nominal))?$'),
  field('pushOutAluminiumN', `^(?:${PUSH}${IN_ALUMINIUM}|${ALUMINIUM} ${PUSH})${UNIT}$`),
  field('torqueOutAluminiumNm', `^(?:${TORQUE}${IN_ALUMINIUM}|${ALUMINIUM} ${TORQUE})${UNIT}$`),
  field('pushOutSteelN', `^(?:${PUSH}${IN_STEEL}|steel ${PUSH})${UNIT}$`),
  field('torqueOutSteelNm', `^(?:${TORQUE}${IN_STEEL}|steel ${TORQUE})${UNIT}$`),
  field('forceAluminiumKn', `^(?:${FORCE}${IN_ALUMINIUM}|${ALUMINIUM} ${FORCE})${UNIT}$`),
  field('forceSteelKn', `^(?:${FORCE}${IN_STEEL}|steel ${FORCE})${UNIT}$`),
  field(
    'packSize',
    '^(?:pack(?:age|aging)?|box|bag)(?: (?:size|quantity|of|units|unit))?$|^(?:quantity|pieces|no|units) (?:per|/) (?:pack|package|box|bag)$',
  ),
  field('moq', '^moq$|^minimum order(?: quantity)?$|^minimum (?:purchase )?quantity$'),
  field(
    'leadDays',
    '^lead ?time(?: (?:in )?(?:days|weeks|wks?|working days))?$|^lead (?:days|weeks)$|^delivery(?: time)?(?: days| weeks)?$',
  ),
  field('currency', '^(?:currency|curr|ccy)$'),
  field('sourceDate', '^(?:source|catalog|data|price|issue) date$|^date(?: of source)?$'),
  field('source', '^(?:data )?source(?: document)?$|^catalog(?: page)?$'),
  field('flush', '^flush(?: (?:mounting|type|fitting|head))?$'),
  field('stocked', '^stocked(?: item)?$|^stock(?: status| item)?$'),
  field('kind', '^(?:fastener |product |part )?(?:kind|type|style|family|category|class of fastener)$'),
  field('thread', '^(?:fastener |nominal )?thread(?: size| code)? ?(?:/ pitch)?$'),
  perhaps('sheetMinMm', `^(?:${STOCK} )*(?:thickness|gauge)$`),
  perhaps('kind', '^(?:part |item |product )?(?:description|name|designation)$'),
];

/** Meanings that a list and a supplier's table share. Sheet material stands for the fastener's: the table has no other. */
const OF_ROLE: Partial<Record<Role, CatalogueField>> = {
  partNumber: 'partNumber',
  index: 'partNumber',
  description: 'kind',
  thread: 'thread',
  length: 'lengthMm',
  material: 'material',
  fastenerMaterial: 'material',
  thickness: 'sheetMinMm',
  hole: 'holeMm',
  edge: 'edgeMm',
  spacing: 'spacingMm',
  finish: 'finish',
  stock: 'stocked',
  price: 'unitPrice',
  supplier: 'supplier',
  note: 'note',
};
