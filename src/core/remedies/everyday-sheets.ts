/**
 * Sheets that most shops have on the shelf, by their ids in the tables of alloys: what a change of metal is sought among. Common
 * practice, no source.
 */
export const EVERYDAY_SHEETS: readonly string[] = [
  '5052-h32',
  'crs-a1008-cs',
  'gi-cs',
  'ga-cs',
  '3003-h14',
  '6061-t6',
  '304',
  '430',
];
