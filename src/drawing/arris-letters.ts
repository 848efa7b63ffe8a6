/** The letters that stand for named arrises in drawings and tables: a to z, then aa and so on. */
export function arrisLetters(arrises: readonly string[]): Readonly<Record<string, string>> {
  const letterOf = (index: number): string =>
    (index < 26 ? "" : letterOf(Math.floor(index / 26) - 1)) + String.fromCharCode(97 + (index % 26));
  return Object.fromEntries(arrises.map((arris, index) => [arris, letterOf(index)]));
}
