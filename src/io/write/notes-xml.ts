import { showColumn } from '../xlsx/address.ts';
import { MAIN, type Note } from './sheet-xml.ts';
import { textXml } from './xml-text.ts';

const AUTHOR = 'Clinchsheet';
const VML =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">';
/** Columns and rows that a note covers when it is shown. */
const WIDE = 4;
const CHARACTERS_A_LINE = 42;

/** The notes of a sheet as a part of their own. */
export function* notesXml(notes: readonly Note[]): Generator<string> {
  yield `<comments xmlns="${MAIN}"><authors><author>${AUTHOR}</author></authors><commentList>`;
  for (const { row, column, text } of notes) {
    const run = `<r><rPr><sz val="9"/><color rgb="FF1D2327"/><rFont val="Calibri"/></rPr>${textXml(text)}</r>`;
    yield `<comment ref="${showColumn(column)}${row + 1}" authorId="0"><text>${run}</text></comment>`;
  }
  yield '</commentList></comments>';
}

/** The boxes in which they are shown: spreadsheets want each drawn, in the older drawing language. */
export function* noteBoxesXml(notes: readonly Note[]): Generator<string> {
  yield `${VML}<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout><v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>`;
  for (const [index, { row, column, text }] of notes.entries()) {
    const lines = Math.min(14, Math.max(4, Math.ceil(text.length / CHARACTERS_A_LINE) + text.split('\n').length));
    const anchor = [column + 1, 12, row === 0 ? 0 : row - 1, 4, column + 1 + WIDE, 12, row + lines, 4].join(', ');
    yield `<v:shape id="_x0000_s${1025 + index}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#fbf7e8" o:insetmode="auto"><v:fill color2="#fbf7e8"/><v:shadow color="black" obscured="t"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"/><x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor}</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column></x:ClientData></v:shape>`;
  }
  yield '</xml>';
}
