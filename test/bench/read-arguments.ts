/** What the benchmark is asked to do. */
export interface BenchArguments {
  /** Whether it fails where a row is beyond twice its aim. */
  readonly check: boolean;
}

/**
 * Reads the arguments of the command line.
 *
 * @param words - the arguments
 * @returns what they ask for
 * @throws {Error} at an argument that is not known
 */
export function readArguments(words: readonly string[]): BenchArguments {
  const unknown = words.find((word) => word !== "--check");
  if (unknown !== undefined) throw new Error(`Expected no argument but \`--check\`, got \`${unknown}\``);
  return { check: words.length > 0 };
}
