import type { HostileFiles } from './hostile-file.ts';
import { HOSTILE_TEXTS } from './hostile-plain.ts';
import { HOSTILE_SHEETS } from './hostile-sheets.ts';
import { HOSTILE_XML } from './hostile-xml.ts';
import { HOSTILE_ZIPS } from './hostile-zips.ts';

/** Every file meant to take a reader's memory, time or trust. */
export const HOSTILE_FILES: HostileFiles = { ...HOSTILE_ZIPS, ...HOSTILE_XML, ...HOSTILE_SHEETS, ...HOSTILE_TEXTS };
