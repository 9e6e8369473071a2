const SAVE_AS_XLSX = 'open it in a spreadsheet program and save it as .xlsx';
const OLD_CONTAINER = [0xd0, 0xcf, 0x11, 0xe0];
/** How gzip, 7z, RAR and bzip2 archives begin. */
const PACKED = [
  [0x1f, 0x8b],
  [0x37, 0x7a, 0xbc, 0xaf],
  [0x52, 0x61, 0x72, 0x21],
  [0x42, 0x5a, 0x68],
];
const LARGEST_LOCK_FILE = 200;
/** So many characters that do not fit the encoding are forgiven however short the text. */
const FEW_MISFITS = 8;
const SNIFFED_CHARACTERS = 4096;

/** One sentence for bytes that can hold no list, whatever the file is called; nothing when they may. */
export function describeUnreadableBytes(bytes: Uint8Array, file: string): string | undefined {
  if (bytes.length === 0) return `‘${file}’ is empty; choose the file with your list.`;
  if (isLockFile(bytes, file)) {
    return `‘${file}’ only marks a workbook as being open somewhere; choose the workbook itself, without ‘~$’ in its name.`;
  }
  if (PACKED.some((mark) => mark.every((byte, at) => bytes[at] === byte))) {
    return `‘${file}’ is a packed archive; unpack it and choose the list inside.`;
  }
  if (OLD_CONTAINER.every((byte, at) => bytes[at] === byte)) return describeOldContainer(bytes, file);
  return undefined;
}

/** One sentence for text that is no delimited list; nothing when it may be one. */
export function describeUnreadableText(text: string, file: string): string | undefined {
  const start = text.slice(0, SNIFFED_CHARACTERS).trimStart();
  if (start === '' && text.trim() === '') return `‘${file}’ holds nothing but blanks; choose the file with your list.`;
  if (start.startsWith('%PDF-')) {
    return `‘${file}’ is a PDF; export the list as .csv or .xlsx from the program that made it.`;
  }
  if (start.startsWith('{\\rtf')) {
    return `‘${file}’ is a text document, not a list; copy its table into a spreadsheet and save that as .xlsx.`;
  }
  if (/^<\?xml|^<(?:\w+:)?workbook\b/i.test(start)) return `‘${file}’ is an XML file; ${SAVE_AS_XLSX}.`;
  if (/^<(?:!doctype|!--|html|head|meta|body|style|table|div)\b|^<!--/i.test(start)) {
    return `‘${file}’ is a web page named like a list; ${SAVE_AS_XLSX}.`;
  }
  const controls = start.match(/[\x00-\x08\x0e-\x1f]/g)?.length ?? 0;
  const misfits = start.match(/\ufffd/g)?.length ?? 0;
  if (controls > start.length / 100 || misfits > Math.max(FEW_MISFITS, start.length / 10))
    return `‘${file}’ is neither text nor a workbook; choose a .csv or .xlsx file.`;
  return undefined;
}

/** Two parts of an old office container tell a password-protected workbook from a plain old one. */
function describeOldContainer(bytes: Uint8Array, file: string): string {
  const names = new TextDecoder('utf-16le').decode(bytes);
  if (names.includes('EncryptedPackage')) {
    return `‘${file}’ is protected by a password; open it in a spreadsheet program, remove the password and save it as .xlsx.`;
  }
  if (names.includes('WordDocument')) {
    return `‘${file}’ is a text document, not a list; copy its table into a spreadsheet and save that as .xlsx.`;
  }
  if (/Workbook|Book/.test(names)) return `‘${file}’ is an old binary workbook; ${SAVE_AS_XLSX}.`;
  return `‘${file}’ is an old binary office file or protected by a password; ${SAVE_AS_XLSX}, without a password.`;
}

/** An owner file: a length byte, the user's name, blanks up to a fixed length. */
function isLockFile(bytes: Uint8Array, file: string): boolean {
  if (bytes.length > LARGEST_LOCK_FILE) return false;
  const name = file.split(/[\\/]/).at(-1) ?? '';
  if (name.startsWith('~$')) return true;
  const length = bytes[0] ?? 0;
  const blanks = bytes.subarray(length + 1, 54);
  return bytes.length >= 160 && length > 0 && length < 50 && blanks.every((byte) => byte === 0x20 || byte === 0);
}
