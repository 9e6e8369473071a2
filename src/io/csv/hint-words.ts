import { HEADINGS_ABROAD } from '../../core/intake/heading-words-abroad.ts';

/** Words of hardware lists in languages whose headings are not understood, and words of the trade. From memory. */
const MORE = `количество, кол-во, наименование, обозначение, материал, толщина, отверстие, примечание, масса, гайка, винт, болт, шпилька, стойка, сталь, лист, деталь, цена, итого,
  počet, množství, název, tloušťka, závit, délka, šířka, poznámka, číslo, díl, hrúbka, množstvo, mennyiség, vastagság, megnevezés, hosszúság, śruba, nakrętka, kołek, tulejka, płyta, część,
  części, wciskana, ocynk, piuliță, écrou, goujon, entretoise, Gewindebolzen, Hülse, Stückliste, Zeichnungsnummer, Bemaßung, ナット, スタッド, ボルト, スペーサー, 圧入, 螺母, 螺柱, 压铆`;

/** Known words with letters beyond ASCII, in small letters. */
const HINTS: readonly string[] = findHints([...Object.values(HEADINGS_ABROAD), MORE].join(','));

/** How many different known words of the trade a text holds, those in plain ASCII not counted; half-width kana count. */
export function countHints(text: string): number {
  const small = text.normalize('NFKC').toLowerCase();
  return HINTS.filter((word) => small.includes(word)).length;
}

/** Two ideographs make a word, letters need three to be more than chance. */
function findHints(words: string): string[] {
  const all = words.toLowerCase().split(/[,\s]+/);
  const isTelling = (word: string) =>
    /[^\x00-\x7f]/.test(word) && word.length >= (/[\u3040-\u9fff]/.test(word) ? 2 : 3);
  return [...new Set(all.filter(isTelling))];
}
