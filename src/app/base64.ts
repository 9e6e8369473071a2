/** Bytes per piece: whole groups of three, so that the pieces join without padding between them. */
const PIECE = 24_576;

/** Bytes as base64 text. */
export function showBase64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += PIECE) {
    pieces.push(btoa(String.fromCharCode(...bytes.subarray(at, at + PIECE))));
  }
  return pieces.join('');
}

/** The bytes of base64 text; null where it is none. */
export function parseBase64(text: string): Uint8Array<ArrayBuffer> | null {
  try {
    const characters = atob(text);
    const bytes = new Uint8Array(characters.length);
    for (let at = 0; at < characters.length; at++) bytes[at] = characters.charCodeAt(at);
    return bytes;
  } catch {
    return null;
  }
}
