import { MOST_SHEETS } from '../limits.ts';
import { decodeXmlBytes } from './decode-xml.ts';
import { isOn, XmlScanner } from './scan.ts';
import type { Zip } from './zip.ts';

/** A sheet and the stored name of the part that holds it; no part when the file lost it. */
export interface SheetPart {
  readonly name: string;
  readonly isHidden: boolean;
  readonly part: string | undefined;
}

/** Where the parts of a workbook are; stored names as the zip knows them. */
export interface WorkbookParts {
  readonly sheets: readonly SheetPart[];
  readonly strings: string | undefined;
  readonly styles: string | undefined;
  readonly has1904Dates: boolean;
  readonly isUncalculated: boolean;
}

export interface Relationship {
  /** Last word of its type, the same in the transitional and the strict namespace. */
  readonly type: string;
  /** Stored name of the part, if the zip holds it. */
  readonly part: string | undefined;
}

/** Stored name of the workbook part, by the package's relationships, its content types or its usual name. */
export function findWorkbookPart(zip: Zip): string | undefined {
  const related = [...readRelationships(zip, '').values()].find((link) => link.type === 'officeDocument')?.part;
  return [related, findByContentType(zip), zip.find('xl/workbook.xml')].find(
    (part) => part !== undefined && isWorkbook(zip, part),
  );
}

/** Follows the workbook's relationships to its sheets, texts and styles. Of too many sheets one more than may be is given. */
export function readWorkbookParts(zip: Zip, workbook: string): WorkbookParts {
  const links = readRelationships(zip, workbook);
  const byType = (type: string) => [...links.values()].find((link) => link.type === type)?.part;
  const scanner = new XmlScanner(decodeXmlBytes(zip.read(workbook)));
  const sheets: SheetPart[] = [];
  let has1904Dates = false;
  let isUncalculated = false;
  while (sheets.length <= MOST_SHEETS && scanner.next()) {
    if (scanner.isClose) continue;
    if (scanner.name === 'workbookPr') has1904Dates = isOn(scanner.attribute('date1904'));
    if (scanner.name === 'calcPr') isUncalculated = isOn(scanner.attribute('fullCalcOnLoad'));
    if (scanner.name !== 'sheet') continue;
    const link = links.get(scanner.attribute('id') ?? '');
    if (link !== undefined && link.type !== 'worksheet') continue;
    const name = scanner.attribute('name') ?? `Sheet ${sheets.length + 1}`;
    sheets.push({ name, isHidden: /hidden/i.test(scanner.attribute('state') ?? ''), part: link?.part });
  }
  const strings = byType('sharedStrings') ?? zip.find('xl/sharedStrings.xml');
  const styles = byType('styles') ?? zip.find('xl/styles.xml');
  return { sheets: guessLostParts(zip, sheets), strings, styles, has1904Dates, isUncalculated };
}

/** Without usable relationships the only sheet can still only be the only worksheet part. */
function guessLostParts(zip: Zip, sheets: readonly SheetPart[]): SheetPart[] {
  const parts = zip.names.filter((name) => /worksheets[\\/][^\\/]+\.xml$/i.test(name));
  const lost = sheets.filter((sheet) => sheet.part === undefined);
  const free = parts.filter((part) => !sheets.some((sheet) => sheet.part === part));
  if (lost.length !== 1 || free.length !== 1) return [...sheets];
  return sheets.map((sheet) => (sheet.part === undefined ? { ...sheet, part: free[0] } : sheet));
}

/** Relationships of a part by their ids; `''` stands for the package itself. */
export function readRelationships(zip: Zip, source: string): Map<string, Relationship> {
  const links = new Map<string, Relationship>();
  const path = source.replaceAll('\\', '/');
  const folder = path.slice(0, path.lastIndexOf('/') + 1);
  const part = zip.find(`${folder}_rels/${path.slice(folder.length)}.rels`);
  if (part === undefined) return links;
  const scanner = new XmlScanner(decodeXmlBytes(zip.read(part)));
  while (scanner.next()) {
    if (scanner.name !== 'Relationship' || scanner.isClose) continue;
    const type = scanner.attribute('Type')?.split('/').at(-1) ?? '';
    const target = scanner.attribute('Target') ?? '';
    links.set(scanner.attribute('Id') ?? '', { type, part: findTarget(zip, folder, target) });
  }
  return links;
}

/** Targets are relative to their source or absolute; some writers mean the root but leave the slash out. */
function findTarget(zip: Zip, folder: string, target: string): string | undefined {
  const path = decodePercent(target).replaceAll('\\', '/');
  if (path.startsWith('/')) return zip.find(path);
  return zip.find(resolve(folder + path)) ?? zip.find(resolve(path));
}

function resolve(path: string): string {
  const steps: string[] = [];
  for (const step of path.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.join('/');
}

function decodePercent(target: string): string {
  try {
    return decodeURIComponent(target);
  } catch {
    return target;
  }
}

function findByContentType(zip: Zip): string | undefined {
  const part = zip.find('[Content_Types].xml');
  if (part === undefined) return undefined;
  const scanner = new XmlScanner(decodeXmlBytes(zip.read(part)));
  while (scanner.next()) {
    const type = scanner.isClose ? '' : (scanner.attribute('ContentType') ?? '');
    if (
      /(?:spreadsheetml\.(?:sheet|template)|ms-excel\.(?:sheet|template|addin)\.macroEnabled)\.main\+xml/i.test(type)
    ) {
      const named = scanner.attribute('PartName');
      if (named !== undefined) return zip.find(named);
    }
  }
  return undefined;
}

/** Other office files are packaged the same way: only a part whose root is `workbook` will do. */
function isWorkbook(zip: Zip, part: string): boolean {
  if (!/\.xml$/i.test(part)) return false;
  const scanner = new XmlScanner(decodeXmlBytes(zip.read(part)));
  return scanner.next() && scanner.name === 'workbook';
}
