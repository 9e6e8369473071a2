import { html, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import type { View } from '../app/state.ts';
import type { Store } from '../app/store.ts';

/** Tabs that belong to the open list. */
export const LEFT: readonly (readonly [View, string])[] = [
  ['list', 'List'],
  ['purchasing', 'Purchasing'],
  ['press', 'Press sheet'],
  ['questions', 'Questions'],
  ['changes', 'Changes'],
  ['compare', 'Compare'],
];
/** The tab that is in their place before a list is open. */
export const START: readonly (readonly [View, string])[] = [['list', 'Start']];
/** Tabs that are there without a list. */
export const RIGHT: readonly (readonly [View, string])[] = [
  ['catalogue', 'Catalogue'],
  ['settings', 'Shop settings'],
  ['rules', 'Rules and sources'],
];

/** What has to be fetched before a view can be shown. */
export const LOADERS: Readonly<Record<View, () => Promise<unknown>>> = {
  list: () => import('./list-view.ts'),
  purchasing: () => import('./purchasing-view.ts'),
  press: () => import('./press-view.ts'),
  questions: () => import('./questions-view.ts'),
  changes: () => import('./changes-view.ts'),
  compare: () => import('./compare-view.ts'),
  catalogue: () => import('./catalogue-view.ts'),
  settings: () => import('./settings-view.ts'),
  rules: () => import('./rules-view.ts'),
  findings: () => import('./findings-page.ts'),
};

/** The view that the state asks for, once it has been fetched. */
export function showView(store: Store, commands: Commands): TemplateResult {
  const { view, shop, openRule } = store.state;
  switch (view) {
    case 'list':
      return html`<list-view .store=${store} .commands=${commands}></list-view>`;
    case 'purchasing':
      return html`<purchasing-view view .store=${store} .commands=${commands}></purchasing-view>`;
    case 'press':
      return html`<press-view view .store=${store} .commands=${commands}></press-view>`;
    case 'questions':
      return html`<questions-view view .store=${store} .commands=${commands}></questions-view>`;
    case 'changes':
      return html`<changes-view .store=${store} .commands=${commands}></changes-view>`;
    case 'compare':
      return html`<compare-view view .store=${store} .commands=${commands}></compare-view>`;
    case 'catalogue':
      return html`<catalogue-view .store=${store} .commands=${commands}></catalogue-view>`;
    case 'settings':
      return html`<settings-view .shop=${shop}></settings-view>`;
    case 'rules':
      return html`<rules-view .openRule=${openRule}></rules-view>`;
    case 'findings':
      return html`<findings-page view .store=${store} .commands=${commands}></findings-page>`;
  }
}
