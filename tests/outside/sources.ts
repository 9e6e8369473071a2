/** How a value was come by: read in print, from memory, or calculated from others. */
export type OutsideMark = 'printed' | 'memory' | 'derived';

/** Where a table of outside values comes from. */
export interface OutsideTable {
  /** File name under `tests/outside/tables`. */
  readonly file: string;
  /** Standard, law or handbook; a `standard` column, where the table has one, says it row by row. */
  readonly standard: string;
  /** Table, clause or subject within it. */
  readonly place: string;
  /** `by row` where the table has a `mark` column. */
  readonly mark: OutsideMark | 'by row';
  /** How many leading columns name the row or repeat what another table or list holds; their numbers are not counted. */
  readonly keys: number;
}

const aluminiumAndEn = 'Aluminum Association typical values, EN 485-2';
const anodicIndex = 'anodic index handbook table';

/** Every table under `tests/outside/tables`. */
export const outsideTables: readonly OutsideTable[] = [
  // hardness scales
  table('e140-table-1', 'ASTM E140', 'Table 1, Rockwell C range', 'printed'),
  table('e140-table-2', 'ASTM E140', 'Table 2, Rockwell B range', 'by row'),
  table('e140-austenitic', 'ASTM E140', 'Table 5, austenitic stainless plate', 'by row'),
  table('e140-aluminium', 'ASTM E140', 'Table 9, wrought aluminium', 'by row'),
  table('cartridge-brass', 'ASTM E140', 'Table 4, cartridge brass', 'by row'),
  table('a370-line-fits', 'ASTM A370', 'line fits of Brinell against Rockwell B', 'printed', 2),
  table('brinell-led-steel', 'SAE J417', 'Brinell-led table for steel', 'by row'),
  table('iso-18265-a1', 'ISO 18265', 'Table A.1, unalloyed and low-alloy steel', 'by row'),
  table('steel-tables-compared', 'ASTM E140 against ISO 18265', 'Table 2 against Table A.1', 'derived', 2),
  table('copper-tempers', 'Copper Development Association data', 'tough-pitch copper flat products', 'printed'),
  table('scatter', 'NBS Technologic Paper 334, ASTM E18 and others', 'scatter of conversions', 'by row'),
  table('e18-thin-sheet', 'ASTM E18', 'minimum thickness for Rockwell B', 'printed'),
  table('twenty-points', 'ASTM E140', 'hardest sheet at twenty points below the fastener', 'derived', 2),
  // sheet
  table('sheet-alloys-cold-rolled', 'ASTM A1008, ASTM A109, EN 10139, JIS G3141', 'cold rolled steel', 'by row', 2),
  table(
    'sheet-alloys-hot-rolled-and-coated',
    'ASTM A1011, ASTM A653, EN 10346 and others',
    'hot rolled and coated steel',
    'by row',
    2,
  ),
  table('sheet-alloys-stainless', 'ASTM A240, ASTM A666, JIS G4305, EN 10088-2', 'stainless steel', 'by row', 2),
  table('sheet-alloys-aluminium', aluminiumAndEn, 'aluminium', 'by row', 2),
  table('sheet-alloys-copper-and-titanium', 'ASTM B36, ASTM B103, EN 1652, ASTM B265', 'copper, titanium', 'by row', 2),
  // fasteners
  table('fastener-materials-steel', 'ISO 898-1, ISO 898-2, SAE J429, SAE J995', 'steel property classes', 'by row', 2),
  table('fastener-materials-stainless', 'ASTM F593, ISO 3506-1 and others', 'stainless classes', 'by row', 2),
  table('fastener-materials-nonferrous', 'ASTM F468, ASTM F467', 'nonferrous bolts and nuts', 'by row', 2),
  // names
  table('aliases', 'ASTM, EN, JIS, GB and BS designations', 'names of sheet materials', 'by row', 2),
  table('temper-words', 'common practice', 'words for tempers', 'memory', 2),
  table('alias-traps', 'common practice', 'words with more than one meaning', 'memory', 2),
  table('misspellings', 'common practice', 'misspelt material words', 'memory', 2),
  // gauges and stock thickness
  table('gauge-constants', 'gauge laws', 'constants of the gauge rules', 'by row'),
  table('gauge-16', 'gauge laws', '16 gauge in seven systems', 'derived'),
  table('gauges-us-standard', '15 U.S.C. 206', 'US Standard gauge', 'printed'),
  table('gauges-steel', "Manufacturers' Standard Gauge", 'uncoated steel', 'printed'),
  table('gauges-galvanized', 'Galvanized Sheet Gauge', 'galvanized steel', 'printed'),
  table('gauges-awg', 'ASTM B258', 'Brown & Sharpe gauge', 'printed'),
  table('gauges-bwg', 'Birmingham Wire Gauge', 'strip and tube wall', 'printed'),
  table('gauges-mm', 'gauge laws', 'gauges in millimetres', 'derived'),
  table('stainless-gauges', 'stainless stock decimals', 'two conventions', 'printed', 2),
  table('aluminium-stock', 'aluminium stock decimals', 'stocked decimals', 'by row'),
  table('british-gauge-16', 'SWG and BG', '16 gauge', 'printed'),
  table('zinc-gauge', 'Zinc Gauge', 'gauges 10 and 15', 'printed'),
  table('copper-ounces', 'ASTM B370', 'copper sheet by weight', 'memory'),
  table('preferred-metric', 'ASME B32.3M and European stock', 'preferred thicknesses', 'memory'),
  // mill tolerances
  table('mill-us-steel', 'ASTM A568 and ASTM A924', 'thickness tolerance by gauge', 'printed', 3),
  table('en-10131', 'EN 10131', 'Tables 1 and 2, yield below 260 MPa', 'printed', 2),
  table('en-10131-yield-260-340', 'EN 10131', 'yield 260 to 340 MPa', 'printed', 2),
  table('en-10143', 'EN 10143', 'Table 1, hot-dip coated', 'printed', 2),
  table('en-10051', 'EN 10051', 'hot rolled', 'printed', 2),
  table('en-10259', 'EN 10259', 'stainless cold rolled', 'printed', 2),
  table('a480m', 'ASTM A480', 'stainless cold rolled, metric extract', 'printed'),
  table('a480-inch', 'ASTM A480', 'stainless cold rolled, inch', 'memory', 2),
  table('en-485-4', 'EN 485-4', 'Table 1, cold rolled aluminium', 'printed', 2),
  table('b209', 'ASTM B209', 'aluminium sheet, inch', 'by row', 2),
  // threads
  table('iso-coarse', 'ISO 898-1', 'coarse pitches of ISO 261, stress areas, core drills of ISO 2306', 'printed', 2),
  table('iso-coarse-diameters', 'ISO 724', 'basic diameters', 'derived'),
  table('iso-limits', 'ISO 965-2', 'limits 6g and 6H', 'memory'),
  table('unified', 'ASME B1.1', 'stress areas', 'printed', 3),
  table('unified-basic', 'ASME B1.1', 'basic diameters', 'derived'),
  table('unified-limits', 'ASME B1.1', 'limits 2A and 2B', 'memory'),
  table('nut-proof', 'ISO 898-2', 'proof loads, coarse', 'printed', 2),
  table('nut-proof-j995', 'SAE J995', 'proof stress', 'printed', 2),
  table('strip-areas', 'ANSI thread strip areas', 'engagement of one diameter', 'printed'),
  table('strip-areas-computed', 'FED-STD-H28', 'the same by formula', 'derived'),
  table('strip-areas-per-inch', 'ANSI thread strip areas', 'internal area for an inch of engagement', 'printed'),
  table('strip-areas-per-mm', 'FED-STD-H28', 'areas for a millimetre of engagement by formula', 'derived'),
  table('clearance-iso273', 'ISO 273', 'clearance holes', 'printed'),
  table('clearance-asme', 'ASME B18.2.8', 'clearance holes, inch', 'printed'),
  table('torque-factors', 'torque handbook tables', 'nut factor K', 'by row'),
  table('torque-example', 'torque handbook tables', 'worked example of T = K D F', 'printed', 3),
  table('torque-examples-more', 'torque handbook tables', 'further worked examples', 'by row', 3),
  // holes
  table('iso286', 'ISO 286', 'standard tolerances IT5 to IT14, micrometres', 'printed', 2),
  table('iso9013', 'ISO 9013', 'class 1 limit deviations', 'printed', 2),
  table('iso2768-m', 'ISO 2768-1', 'class m', 'printed', 2),
  table('number-drills', 'ASME B94.11M', 'number drills', 'printed', 2),
  table('letter-drills', 'ASME B94.11M', 'letter drills', 'printed'),
  table('build-up', 'ASTM B633, QQ-P-416 and others', 'finish build-up on one side', 'by row'),
  // bends
  table('bend-clearance', 'trade press-tool rules', 'distances from bends and edges', 'by row'),
  table('bend-radii', 'FAA AC 43.13-1B', 'Table 4-6, 90 degree bend radii', 'printed', 2),
  table('setback', 'FAA AC 43.13-1B', 'worked setbacks', 'printed', 3),
  // galvanic
  table('anodic-index', anodicIndex, 'volts from gold', 'by row'),
  table('anodic-index-other-lists', 'anodic index handbook table, MIL-DTL-14072', 'two shorter lists', 'printed', 2),
  table('galvanic-limits', 'anodic index handbook table, MIL-DTL-14072', 'limits', 'by row'),
  table('galvanic-order', 'MIL-STD-889B', 'position in the order, active to noble', 'printed'),
  table('galvanic-disagreements', 'electrode potential list', 'rebased so that gold is zero', 'printed', 4),
  table('sea-water-potentials', 'galvanic series in sea water', 'millivolts against Ag/AgCl', 'printed'),
  table('galvanic-pairs', anodicIndex, 'worked pairs', 'derived'),
  // plating
  table('embrittlement', 'ISO 4042, ASTM F1941, ASTM B633, QQ-P-416', 'thresholds', 'by row', 3),
  table('baking', 'ASTM B850', 'bake after plating', 'printed', 2),
  table('process-temperatures', 'ASTM B850, MIL-DTL-5541', 'temperatures', 'by row'),
  // sampling
  table('sampling', 'ANSI/ASQ Z1.4', 'single normal, level II', 'memory', 3),
  table('sampling-zero', 'zero-acceptance sampling', 'sample sizes', 'derived', 2),
  table('sampling-nuts', 'MIL-N-21337', 'acceptable quality levels', 'printed'),
];

function table(name: string, standard: string, place: string, mark: OutsideTable['mark'], keys = 1): OutsideTable {
  return { file: `${name}.csv`, standard, place, mark, keys };
}
