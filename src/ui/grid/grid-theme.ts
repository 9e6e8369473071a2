import { themeQuartz } from 'ag-grid-community';

/** The grid in the product's own look; colours come from the page's tokens, so light and dark follow by themselves. */
export const gridTheme = themeQuartz.withParams({
  backgroundColor: 'var(--sheet)',
  foregroundColor: 'var(--ink)',
  accentColor: 'var(--blue)',
  borderColor: 'var(--line)',
  headerBackgroundColor: 'var(--paper)',
  headerTextColor: 'var(--soft)',
  chromeBackgroundColor: 'var(--paper)',
  rowHoverColor: 'color-mix(in srgb, var(--blue-ground) 55%, transparent)',
  selectedRowBackgroundColor: 'var(--blue-ground)',
  oddRowBackgroundColor: 'var(--sheet)',
  fontFamily: 'var(--font)',
  fontSize: 13,
  headerFontSize: 13,
  headerFontWeight: 600,
  rowHeight: 30,
  headerHeight: 44,
  cellHorizontalPadding: 9,
  wrapperBorderRadius: 0,
  borderRadius: 3,
  wrapperBorder: false,
  spacing: 6,
  focusShadow: 'none',
});
