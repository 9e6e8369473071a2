import type { IHeaderComp, IHeaderParams } from 'ag-grid-community';
import { html, render } from 'lit';

export interface HeadingParams {
  /** What the column was understood as, or its unit; shown below the heading in smaller type. */
  readonly below: string;
  /** Opens the menu of meanings at the button; a heading of ours has none. */
  readonly openMeanings?: (button: HTMLElement) => void;
  /** Opens the box that filters, hides and freezes; the row number has none. */
  readonly openTools?: (button: HTMLElement) => void;
  readonly isFiltered?: () => boolean;
}

/** A heading in two lines: the sender's words, and what they were understood as. Clicking sorts; small buttons open the menus. */
export class HeadingCell implements IHeaderComp {
  #element = document.createElement('div');
  #arrow = document.createElement('span');
  #params: IHeaderParams | null = null;

  init(params: IHeaderParams & HeadingParams): void {
    this.#params = params;
    this.#element.className = 'heading';
    const sort = button('sort', '', (event) => params.progressSort(event.shiftKey));
    const top = document.createElement('span');
    top.textContent = params.displayName;
    this.#arrow.className = 'arrow';
    top.append(this.#arrow);
    const below = document.createElement('small');
    below.textContent = params.below;
    sort.append(top, below);
    this.#element.append(sort);
    this.#element.append(buttons(params.displayName, params));
    params.column.addEventListener('sortChanged', this.#showSort);
    this.#showSort();
  }

  getGui(): HTMLElement {
    return this.#element;
  }

  refresh(): boolean {
    return false;
  }

  destroy(): void {
    this.#params?.column.removeEventListener('sortChanged', this.#showSort);
  }

  readonly #showSort = () => {
    const sort = this.#params?.column.getSort();
    this.#arrow.textContent = sort === 'asc' ? ' ↑' : sort === 'desc' ? ' ↓' : '';
  };
}

function buttons(heading: string, { openTools, openMeanings, isFiltered }: HeadingParams): HTMLElement {
  const box = document.createElement('div');
  box.className = 'buttons';
  if (openTools) {
    const tools = menuButton('tools', `Filter, hide or keep in sight ${heading}`, openTools);
    tools.title = 'Filter, hide, keep in sight (Alt+Up)';
    tools.classList.toggle('filtered', isFiltered?.() ?? false);
    render(funnel, tools);
    box.append(tools);
  }
  if (openMeanings) {
    const meaning = menuButton('meaning', `What ${heading} means`, openMeanings);
    meaning.title = 'What this column means (Alt+Down)';
    meaning.textContent = '▾';
    box.append(meaning);
  }
  return box;
}

const funnel = html`<svg width="11" height="11" viewBox="0 0 12 12" aria-hidden="true"><path d="M1 1.5h10L7 6.6v4.2L5 9.6v-3z" /></svg>`;

function menuButton(className: string, label: string, open: (button: HTMLElement) => void): HTMLElement {
  const element = button(className, '', () => open(element));
  element.setAttribute('aria-haspopup', 'true');
  element.setAttribute('aria-label', label);
  return element;
}

function button(className: string, text: string, click: (event: MouseEvent) => void): HTMLButtonElement {
  const element = document.createElement('button');
  element.className = className;
  element.textContent = text;
  element.tabIndex = -1;
  element.addEventListener('click', click);
  return element;
}

/** On a heading that has the focus, Enter sorts, Alt+Down opens the menu of meanings, Alt+Up the box of tools. */
export function pressHeading({ event }: { readonly event: KeyboardEvent }): boolean {
  const pressed = { Enter: '.sort', ...(event.altKey && { ArrowDown: '.meaning', ArrowUp: '.tools' }) }[event.key];
  const target = pressed && event.target instanceof Element ? event.target.querySelector<HTMLElement>(pressed) : null;
  if (!target) return false;
  event.preventDefault();
  target.click();
  return true;
}
