/** How many letters a slip changes at most, for names of any length. */
const MOST_SLIPS: number = 2;

/** How many letters have to be put in, left out, changed or exchanged with their neighbor to make one text of another. */
function slips(one: string, other: string): number {
  const rows: number[][] = [Array.from({ length: other.length + 1 }, (_, k) => k)];
  for (let i = 1; i <= one.length; i++) {
    const row = [i];
    for (let k = 1; k <= other.length; k++) {
      const same = one[i - 1] === other[k - 1];
      const swapped = i > 1 && k > 1 && one[i - 1] === other[k - 2] && one[i - 2] === other[k - 1];
      row[k] = Math.min(
        rows[i - 1]![k]! + 1,
        row[k - 1]! + 1,
        rows[i - 1]![k - 1]! + (same ? 0 : 1),
        swapped ? rows[i - 2]![k - 2]! + 1 : Infinity,
      );
    }
    rows.push(row);
  }
  return rows[one.length]![other.length]!;
}

/**
 * The name that was probably meant by one that is not known (the optimal string alignment distance, capitals aside). `undefined` where none is near.
 */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  // Nobody slips so far that a short name has hardly a letter in common with what was meant.
  const most = Math.min(MOST_SLIPS, Math.floor(name.length / 3));
  let best: string | undefined;
  let fewest = Infinity;
  for (const candidate of known) {
    if (Math.abs(candidate.length - name.length) > most) continue;
    const count = slips(name.toLowerCase(), candidate.toLowerCase());
    if (count <= most && count < fewest) [best, fewest] = [candidate, count];
  }
  return best;
}
