import type { IHeaderComp, IHeaderParams } from 'ag-grid-community';

export interface HeadingParams {
  /** What the column was understood as, or its unit; shown below the heading in smaller type. */
  readonly below: string;
}

/** A heading in two lines: the sender's words, and what they were understood as. Clicking sorts. */
export class HeadingCell implements IHeaderComp {
  #element = document.createElement('button');
  #arrow = document.createElement('span');
  #params: IHeaderParams | null = null;

  init(params: IHeaderParams & HeadingParams): void {
    this.#params = params;
    this.#element.className = 'heading';
    this.#element.tabIndex = -1;
    const top = document.createElement('span');
    top.textContent = params.displayName;
    this.#arrow.className = 'arrow';
    top.append(this.#arrow);
    const below = document.createElement('small');
    below.textContent = params.below;
    this.#element.append(top, below);
    this.#element.addEventListener('click', (event) => params.progressSort(event.shiftKey));
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
