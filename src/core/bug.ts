/** Asserts what only a mistake in this library could break. */
export function assertSound(condition: boolean, message: string): asserts condition {
  if (!condition) throw new Error(`bug: ${message}`);
}
