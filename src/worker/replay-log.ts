import type { CellEdit, Message, Requests } from './protocol.ts';

/** What has been done in a worker, in short: enough to bring another one to the same place. */
export class ReplayLog {
  #open: Requests['open']['ask'] | null = null;
  #compare: Requests['compare']['ask'] | null = null;
  /** The last text of each cell that was edited. */
  readonly #cells = new Map<string, CellEdit>();

  /** Notes what was asked, once it has been done. */
  note(message: Message): void {
    switch (message.name) {
      case 'open':
        this.#open = message.ask;
        this.#cells.clear();
        return;
      case 'catalogues':
      case 'shop':
        this.#open = this.#open && { ...this.#open, ...message.ask };
        return;
      case 'columns':
        this.#open = this.#open && { ...this.#open, options: { ...this.#open.options, ...message.ask } };
        return;
      case 'edit':
        for (const cell of message.ask.cells) this.#cells.set(`${cell.row} ${cell.column}`, cell);
        return;
      case 'compare':
        this.#compare = message.ask.earlier
          ? message.ask
          : this.#compare && { ...message.ask, earlier: this.#compare.earlier };
    }
  }

  /** What to ask of a new worker, in this order. */
  messages(nextRun: () => number): readonly Message[] {
    const messages: Message[] = [];
    if (this.#open) messages.push({ run: nextRun(), name: 'open', ask: this.#open });
    if (this.#cells.size > 0)
      messages.push({ run: nextRun(), name: 'edit', ask: { cells: [...this.#cells.values()] } });
    if (this.#compare) messages.push({ run: nextRun(), name: 'compare', ask: this.#compare });
    return messages;
  }
}
