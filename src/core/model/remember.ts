/** Texts that are kept; enough for the different words of one long list. */
const MOST = 10_000;

/**
 * The same pure function of a text, worked out once for texts that come again and again. When too many are kept, it starts anew: it
 * may live as long as the program.
 */
export function rememberSome<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    let reading = known.get(text);
    if (reading === undefined) {
      reading = read(text);
      if (known.size >= MOST) known.clear();
      known.set(text, reading);
    }
    return reading;
  };
}
