import type { IHeaderComp, IHeaderParams } from 'ag-grid-community';

export interface HeadingParams {
  /** What the column was understood as, or its unit; shown below the heading in smaller type. */
  readonly below: string;
  /** Opens the menu of meanings at the button; a heading of ours has none. */
  readonly openMenu?: (button: HTMLElement) => void;
}

/** A heading in two lines: the sender's words, and what they were understood as. Clicking sorts; a small button opens the menu. */
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
    if (params.openMenu) this.#element.append(menuButton(params.displayName, params.openMenu));
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

function menuButton(heading: string, open: (button: HTMLElement) => void): HTMLElement {
  const element = button('meaning', '▾', () => open(element));
  element.setAttribute('aria-haspopup', 'menu');
  element.setAttribute('aria-label', `What ${heading} means`);
  element.title = 'What this column means (Alt+Down)';
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

/** On a heading that has the focus, Enter sorts and Alt+Down opens the menu. */
export function pressHeading({ event }: { readonly event: KeyboardEvent }): boolean {
  const pressed = event.key === 'Enter' ? '.sort' : event.key === 'ArrowDown' && event.altKey ? '.meaning' : null;
  const target = pressed && event.target instanceof Element ? event.target.querySelector<HTMLElement>(pressed) : null;
  if (!target) return false;
  event.preventDefault();
  target.click();
  return true;
}
