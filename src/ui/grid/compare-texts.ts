const collator = new Intl.Collator(undefined, { numeric: true, sensitivity: 'base' });

/** Order of a column: numbers by size before words, empty cells last in either direction. */
export function compareTexts(a: string, b: string, _rowA?: unknown, _rowB?: unknown, isDescending = false): number {
  const [isBlankA, isBlankB] = [a.trim() === '', b.trim() === ''];
  if (isBlankA || isBlankB) return (Number(isBlankA) - Number(isBlankB)) * (isDescending ? -1 : 1);
  const [numberA, numberB] = [numberIn(a), numberIn(b)];
  const [isNumberA, isNumberB] = [Number.isFinite(numberA), Number.isFinite(numberB)];
  if (isNumberA && isNumberB) return numberA - numberB;
  if (isNumberA !== isNumberB) return isNumberA ? -1 : 1;
  return collator.compare(a, b);
}

function numberIn(text: string): number {
  return Number(text.replace(',', '.'));
}
