import { type HostileFiles, LIST, listWith, noise, repeat, SHEET } from './hostile-file.ts';
import { oneSheet } from './make.ts';

/** XML. */
export const HOSTILE_XML: HostileFiles = {
  'entities within entities': {
    make: () =>
      oneSheet(LIST, {
        change: (parts) => ({
          ...parts,
          [SHEET]: (parts[SHEET] ?? '')
            .replace(
              '<worksheet',
              `<!DOCTYPE w [<!ENTITY a "ha">${repeat(30, (at) => `<!ENTITY a${at + 1} "${`&a${at || ''};`.repeat(10)}">`)}]><worksheet`,
            )
            .replace('DC01', '&a30;'),
        }),
      }),
  },
  'an entity that names a file': {
    make: () =>
      oneSheet(LIST, {
        change: (parts) => ({
          ...parts,
          [SHEET]: (parts[SHEET] ?? '')
            .replace('<worksheet', '<!DOCTYPE w [<!ENTITY x SYSTEM "file:///etc/passwd">]><worksheet')
            .replace('DC01', '&x;'),
        }),
      }),
  },
  'a million entities in one cell': { make: () => listWith('&amp;&#x41;&nope;'.repeat(60_000)) },
  'a million comments in one cell': { make: () => listWith('a<!-- -->'.repeat(250_000)) },
  'a million CDATA sections in one cell': { make: () => listWith('<![CDATA[a]]>'.repeat(250_000)) },
  'a million processing instructions': { make: () => oneSheet(`${LIST}${'<?x y?>'.repeat(1_000_000)}`) },
  'a comment that never ends': { make: () => oneSheet(`${LIST}<!-- ${noise(12_000_000)}`), says: /cut short/ },
  'a tag that never ends': { make: () => oneSheet(`${LIST}<row ${noise(12_000_000)}`) },
  'a million attributes in one tag': {
    make: () => oneSheet(`${LIST}<row ${repeat(1_000_000, (at) => `a${at}="${at}" `)}/>`),
  },
  'a million elements deep': { make: () => oneSheet(`${LIST}${'<a>'.repeat(1_000_000)}${'</a>'.repeat(1_000_000)}`) },
  'a million cells within cells': {
    make: () => oneSheet(`${LIST}<row r="3">${'<c>'.repeat(1_000_000)}${'</c>'.repeat(1_000_000)}</row>`),
  },
};
