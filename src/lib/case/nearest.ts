/** The known name nearest to a mistyped one. */

/** Edits (insert, delete, replace, swap of neighbours) that turn one word into another. */
export function editDistance(a: string, b: string): number {
  let older: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min(row[j - 1]! + 1, previous[j]! + 1, previous[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, older[j - 2]! + 1);
      row.push(best);
    }
    older = previous;
    previous = row;
  }
  return previous[b.length]!;
}

/** The nearest known name, if it is near enough to have been meant. */
export function nearestName(text: string, known: readonly string[]): string | undefined {
  const word = text
    .slice(0, 60)
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-');
  const ranked = known
    .map((name) => ({ name, distance: editDistance(word, name) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  return best && best.distance <= Math.max(1, Math.floor(word.length / 4)) ? best.name : undefined;
}
