import { csv } from './list-page.ts';

/** A catalogue with one part that needs 1 mm of sheet. */
export const CATALOGUE = csv(
  'own.csv',
  'partNumber,kind,thread,material,sheetMinMm,holeMm,edgeMm\nOWN-1,clinch nut,M4,carbon-steel-hardened,1,5.6,9\n',
);
/** The part in a sheet that is thick enough, and in one that is too thin. */
export const LIST = csv('cabinet.csv', 'Part number,Material,Thickness (mm),Qty\nOWN-1,DC01,1.5,2\nOWN-1,DC01,0.5,4\n');
