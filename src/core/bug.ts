/**
 * Asserts what only a mistake in this library could break.
 *
 * @param condition - what must hold
 * @param message - what is broken when it does not
 */
export function assertSound(condition: boolean, message: string): asserts condition {
  if (!condition) throw new Error(`bug: ${message}`);
}
