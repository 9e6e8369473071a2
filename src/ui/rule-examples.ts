import { html, type TemplateResult } from 'lit';
import { ROLE_NAMES } from '../app/role-names.ts';
import { findingFor, listFindingsFor } from '../core/engine/example.ts';
import type { Finding } from '../core/model/finding.ts';
import type { Role } from '../core/model/list.ts';
import type { Example, ListExample, ListRule, Rule } from '../core/rules/rule.ts';
import { showHardness } from '../core/units/hardness.ts';
import { verdictShape } from './verdict-mark.ts';

/** An example of a rule over single rows: what is given, and what the rule really says of it. */
export function showExample(rule: Rule, example: Example): TemplateResult {
  const { cells, unit, part, shop, piecesByAssembly } = example;
  const given = [
    ...showCells(cells),
    ...(unit ? [unit === 'in' ? 'bare numbers in inches' : 'nothing settles the unit'] : []),
    ...(piecesByAssembly === undefined ? [] : [`columns of assemblies that give ${piecesByAssembly} pieces`]),
    ...(part === null ? ['a part that is not on file'] : showFields(part)),
    ...showFields(shop),
  ];
  return html`<tbody>
    <tr>
      <td>${given.join(', ') || 'a row without fault'}</td>
      ${showFinding(findingFor(rule, example))}
    </tr>
  </tbody>`;
}

/** Rows of one list, each with what the rule says of it. */
export function showListExample(rule: ListRule, example: ListExample): TemplateResult {
  const findings = listFindingsFor(rule, example);
  return html`<tbody class="list">
    ${example.rows.map((cells, index) => {
      const given = [...showCells(cells), ...showFields(example.parts?.[cells.partNumber ?? ''])];
      return html`<tr>
        <td>Row ${index + 2}: ${given.join(', ') || 'a row without fault'}</td>
        ${showFinding(findings[index])}
      </tr>`;
    })}
  </tbody>`;
}

function showFinding(finding: Finding | undefined): TemplateResult {
  if (!finding) return html`<td class="soft" colspan="2">nothing</td>`;
  const { outcome, text } = finding;
  return html`<td><span class="outcome ${outcome}">${verdictShape(outcome, 13)} ${outcome}</span></td>
    <td class="soft">${text}</td>`;
}

function showCells(cells: Example['cells']): readonly string[] {
  return Object.entries(cells).map(([role, text]) => {
    const name = ROLE_NAMES[role as Role];
    return text === '' ? `${name} blank` : `${name} “${text}”`;
  });
}

/** Fields of a part or a setting in words: "hardness min HRC 38", "sheet min 1.25". */
function showFields(fields: object | undefined): readonly string[] {
  return Object.entries(fields ?? {}).map(([key, value]) => `${inWords(key)} ${showField(value)}`);
}

function inWords(key: string): string {
  return key.replace(/(Mm|Kn|Nm|N|Hrb)$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function showField(value: unknown): string {
  if (value === null || value === undefined) return 'not given';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'object') return String(value);
  if ('scale' in value && 'value' in value) return showHardness(value as Parameters<typeof showHardness>[0]);
  return 'text' in value ? `“${String(value.text)}”` : Object.values(value).join(' ');
}
