import {
  CellStyleModule,
  ClientSideRowModelApiModule,
  ClientSideRowModelModule,
  ColumnApiModule,
  ExternalFilterModule,
  LocaleModule,
  ModuleRegistry,
  RenderApiModule,
  RowApiModule,
  RowSelectionModule,
  RowStyleModule,
  ScrollApiModule,
  TextEditorModule,
  TooltipModule,
  ValidationModule,
} from 'ag-grid-community';

/** Registers the parts of the grid that we use; its own checks only while developing. */
export function registerGridModules(): void {
  ModuleRegistry.registerModules([
    ClientSideRowModelModule,
    ClientSideRowModelApiModule,
    ColumnApiModule,
    CellStyleModule,
    ExternalFilterModule,
    LocaleModule,
    RenderApiModule,
    RowApiModule,
    RowSelectionModule,
    RowStyleModule,
    ScrollApiModule,
    TextEditorModule,
    TooltipModule,
    ...(import.meta.env.DEV ? [ValidationModule] : []),
  ]);
}
