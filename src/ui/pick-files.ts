/** Endings and kinds of the files that hold a list or a catalogue. */
const TABLES = '.csv,.tsv,.txt,.xlsx,.xlsm,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** What Open list takes: lists, and projects that the app has saved. */
export const LISTS_AND_PROJECTS = `${TABLES},.json,application/json`;

/** Lets the user pick files, of lists and catalogues unless said otherwise; none when the dialogue is closed without a choice. */
export function pickFiles(several: boolean, accept = TABLES): Promise<readonly File[]> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.multiple = several;
    input.accept = accept;
    input.addEventListener('change', () => resolve([...(input.files ?? [])]));
    input.addEventListener('cancel', () => resolve([]));
    input.click();
  });
}
