import { readFile } from '../../src/io/read-file.ts';
import { largestFiles } from './largest-files.ts';

/** Reads one of the largest odd files and prints what came of it and the most memory that was in use. */
const [name = ''] = process.argv.slice(2);
const make = largestFiles[name];
if (make === undefined) throw new Error(`There is no file “${name}”.`);
const outcome = read(make());
console.log(JSON.stringify({ outcome, peakMb: Math.round(process.resourceUsage().maxRSS / 1024) }));

function read(bytes: Uint8Array): string {
  try {
    const { tables } = readFile(bytes, 'list');
    return `${tables[0]?.rows.length} rows`;
  } catch (error) {
    return (error as Error).message;
  }
}
