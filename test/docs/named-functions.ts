/**
 * Whether a text has a name as a word of its own.
 *
 * @param name - of a function
 * @param text - a guide or a program
 * @returns whether it is there
 */
export function isNamed(name: string, text: string): boolean {
  return new RegExp(`(?<![\\w$])${name}(?![\\w$])`).test(text);
}
