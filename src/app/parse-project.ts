import { parseJson } from '../core/intake/parse-json.ts';
import { VERDICTS } from '../core/model/outcome.ts';
import { TEXT_ENCODINGS, Unreadable } from '../core/model/raw.ts';
import type { HandedFile } from '../worker/protocol.ts';
import { parseBase64 } from './base64.ts';
import { type Fields, Misfit, type Read, readFields, readListOf, readOneOf, readText, without } from './json-fields.ts';
import { readPartEdits } from './parse-part-edits.ts';
import { readColumns, readRow, readShop, readStep } from './parse-steps.ts';
import { PROJECT_APP, PROJECT_VERSION, type Project, type ProjectOptions } from './project.ts';

/** List and catalogues where they are held beside the text. */
export type ProjectFiles = Pick<Project, 'list' | 'catalogues'>;

const KNOWN = 'app version savedAt list catalogues shop options steps undone filter selectedRow'.split(' ');
const KNOWN_OPTIONS = 'sheet headerRow roles units encoding delimiter'.split(' ');

/**
 * Reads a project. What is missing gets its default, what is not known is kept. `held` gives list and catalogues where the text
 * does not hold them. Throws `Unreadable` with one sentence: damaged where, no project, or made by a newer version.
 */
export function parseProject(text: string, file: string, held?: ProjectFiles): Project {
  const top = parseTop(text, file);
  try {
    return readProject(top, held);
  } catch (error) {
    if (error instanceof Misfit) throw new Unreadable(damaged(file, error.message));
    throw error;
  }
}

/** Whether a file is a project, by its ending or by how it begins. */
export async function isProject({ name, data }: HandedFile): Promise<boolean> {
  if (/\.json$/i.test(name)) return true;
  return /^\uFEFF?\s*\{\s*"app"\s*:\s*"clinchsheet"/.test(await data.slice(0, 200).text());
}

function parseTop(text: string, file: string): Fields {
  const top = parseOr(text, file);
  if (typeof top !== 'object' || top === null || (top as Fields).app !== PROJECT_APP) {
    throw new Unreadable(
      `“${file}” is no project of this app: open a list (CSV or XLSX), or a file that Save project has written.`,
    );
  }
  const { version } = top as Fields;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 0) {
    throw new Unreadable(damaged(file, 'it does not say its version'));
  }
  if (version > PROJECT_VERSION) {
    throw new Unreadable(`“${file}” was made by a newer version of Clinchsheet: update the app, then open it again.`);
  }
  return top as Fields;
}

function parseOr(text: string, file: string): unknown {
  try {
    return parseJson(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const said = error instanceof Error ? error.message : '';
    if (said.includes('within each other')) throw new Unreadable(damaged(file, `it holds ${said}`));
    const at = /position (\d+)/.exec(said)?.[1] ?? text.length;
    throw new Unreadable(damaged(file, `its text breaks off or is garbled at character ${at} of ${text.length}`));
  }
}

function damaged(file: string, what: string): string {
  return `“${file}” is damaged: ${what}. Open an earlier copy of it, or the list itself.`;
}

function readProject(top: Fields, held: ProjectFiles | undefined): Project {
  const options = top.options === undefined ? {} : readFields(top.options, 'options');
  return {
    savedAt: top.savedAt === undefined ? '' : readText(top.savedAt, 'savedAt'),
    list: held?.list ?? readHeldFile(top.list, 'list'),
    catalogues: held?.catalogues ?? readListOf(readCatalogueFile)(top.catalogues, 'catalogues'),
    shop: readShop(top.shop ?? {}, 'shop'),
    options: readOptions(options),
    steps: readListOf(readStep)(top.steps, 'steps'),
    undone: readListOf(readStep)(top.undone, 'undone'),
    filter: readListOf(readOneOf(VERDICTS))(top.filter, 'filter'),
    selectedRow:
      top.selectedRow === undefined || top.selectedRow === null ? null : readRow(top.selectedRow, 'selectedRow'),
    kept: { top: without(top, KNOWN), options: without(options, KNOWN_OPTIONS) },
  };
}

const readHeldFile: Read<HandedFile> = (value, path) => {
  const { bytesBase64, ...named } = readFields(value, path);
  const name = readText(named.name, `${path}.name`);
  const bytes = parseBase64(readText(bytesBase64, `${path}.bytesBase64`));
  if (!bytes) throw new Misfit(`${path}.bytesBase64`, 'base64', bytesBase64);
  return { ...named, name, data: new Blob([bytes]) };
};

const readCatalogueFile: Read<HandedFile> = (value, path) => {
  const { edits, standsIn } = readFields(value, path);
  return {
    ...readHeldFile(value, path),
    ...(edits !== undefined && { edits: readPartEdits(edits, `${path}.edits`) }),
    ...(standsIn !== undefined && { standsIn: standsIn === true }),
  };
};

function readOptions({ sheet, headerRow, roles, units, encoding, delimiter }: Fields): ProjectOptions {
  return {
    ...(sheet !== undefined && { sheet: readText(sheet, 'options.sheet') }),
    ...(headerRow !== undefined && { headerRow: readRow(headerRow, 'options.headerRow') }),
    ...readColumns({ roles, units }, 'options'),
    ...(encoding !== undefined && { encoding: readOneOf(TEXT_ENCODINGS)(encoding, 'options.encoding') }),
    ...(delimiter !== undefined && { delimiter: readCharacter(delimiter, 'options.delimiter') }),
  };
}

const readCharacter: Read<string> = (value, path) => {
  const character = readText(value, path);
  if (character.length !== 1) throw new Misfit(path, 'one character', value);
  return character;
};
