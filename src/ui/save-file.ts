const TYPES: Readonly<Record<string, string>> = {
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  xlsm: 'application/vnd.ms-excel.sheet.macroEnabled.12',
  csv: 'text/csv',
  json: 'application/json',
  svg: 'image/svg+xml',
};

/** Hands the user a file under the name given; its ending says what it is. */
export function saveFile(name: string, content: Uint8Array | string): void {
  const type = TYPES[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
  const url = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  Object.assign(document.createElement('a'), { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
