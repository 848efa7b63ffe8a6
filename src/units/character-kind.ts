/** What a character is to the reader of a quantity. `end` comes after the last one. */
export type CharacterKind =
  | "digit"
  | "raised"
  | "lowered"
  | "vulgar"
  | "letter"
  | "space"
  | "point"
  | "comma"
  | "slash"
  | "hyphen"
  | "minus"
  | "plus"
  | "single"
  | "double"
  | "degree"
  | "other"
  | "end";

/** Characters beyond the plain ones. A dash is the hyphen that some editors make of one. */
const RARE: readonly (readonly [CharacterKind, RegExp])[] = [
  ["space", /[\s\u200B\u2060]/],
  ["vulgar", /[¼-¾⅐-⅟↉]/],
  ["single", /[‘’′´]/],
  ["double", /[“”″]/],
  ["slash", /[⁄∕]/],
  ["raised", /[²³¹⁰⁴-⁹]/],
  ["lowered", /[₀-₉]/],
  ["hyphen", /[\u2010\u2011\u2013]/],
  ["minus", /\u2212/],
  ["degree", /[°º˚]/],
];

/** What a character is. */
export function kindOf(code: number): CharacterKind {
  if (code >= 48 && code <= 57) return "digit";
  // With this bit set, A to Z are a to z.
  const lower = code | 32;
  if (code < 128 && lower >= 97 && lower <= 122) return "letter";
  switch (code) {
    case 32:
      return "space";
    case 34:
      return "double";
    case 39:
      return "single";
    case 43:
      return "plus";
    case 44:
      return "comma";
    case 45:
      return "hyphen";
    case 46:
      return "point";
    case 47:
      return "slash";
  }
  if (Number.isNaN(code)) return "end";
  const character = String.fromCharCode(code);
  return RARE.find(([, pattern]) => pattern.test(character))?.[0] ?? "other";
}
