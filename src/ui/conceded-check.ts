import { html, nothing, type TemplateResult } from 'lit';
import { describeStanding } from '../core/concede/describe.ts';
import { standing } from '../core/concede/standing.ts';
import type { AuditedLine } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Finding } from '../core/model/finding.ts';

/** What the user can do about a check that does not hold: accept it with a reason, or take that back. */
export interface ConcedeAct {
  readonly do: 'accept' | 'withdraw';
  readonly rule: string;
}

type Act = (act: ConcedeAct) => void;

/** The concession of one check of a row: who accepted it, why, whether it still stands; or the button that accepts it. */
export function concededCheck(
  line: AuditedLine,
  { rule, outcome }: Finding,
  concessions: readonly Concession[],
  act: Act,
): TemplateResult | typeof nothing {
  const concession = concessions.find((one) => one.row === line.row && one.rule === rule);
  const needsOne = outcome !== 'holds' && outcome !== 'note';
  const accept = (words: string) =>
    html`<button class="link small" @click=${() => act({ do: 'accept', rule })}>${words}</button>`;
  if (!concession) return needsOne ? html`<p>${accept('Accept with reason…')}</p>` : nothing;
  const state = standing(concession, line);
  return html`<p class="conceded">
      ${state.kind === 'stands' ? 'Conceded' : 'Concession'}: ${concession.reason} (${concession.by}, ${concession.date})
      ${state.kind === 'lapsed' ? html`<br /><b>${describeStanding(state)}</b>` : nothing}
    </p>
    <p>
      ${state.kind === 'lapsed' && needsOne ? html`${accept('Accept again…')} · ` : nothing}
      <button class="link small" @click=${() => act({ do: 'withdraw', rule })}>Withdraw</button>
    </p>`;
}

/** "conceded" or "lapsed" behind a check's name; nothing where nothing was accepted. */
export function concededMark(line: AuditedLine, rule: string, concessions: readonly Concession[]): string {
  const concession = concessions.find((one) => one.row === line.row && one.rule === rule);
  if (!concession) return '';
  return standing(concession, line).kind === 'stands' ? ' · conceded' : ' · concession lapsed';
}
