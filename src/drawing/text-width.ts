/**
 * Widths of characters in thousandths of the font size, each the larger of those of Liberation Sans 2.1 (which has the metrics of Arial and Helvetica) and
 * DejaVu Sans 2.37, measured in a browser and rounded up. A text is thus never wider than it is taken for, in the fonts that drawings ask for.
 */
const WIDTHS: readonly (readonly [width: number, characters: string])[] = [
  [300, "ijlI'′"],
  [370, " .,:;/\\|-‘’\u00a0"],
  [420, "()[]!frt`·²³¹"],
  [520, '"*°_”“„–″'],
  [560, "csz?"],
  [640, "0123456789abdeghknopquvxyLFJT${}ßø§€•⌀"],
  [700, "ABCEKPSVXYZµ"],
  [840, "DGHNOQRUw&+<=>#^~×÷±−≈≤≥¬"],
  [1020, "MmW%@ÆæŒ—…½¼¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞→←↔"],
];

/** Width of a letter of another alphabet up to Cyrillic, on average. */
const OTHER_LETTER: number = 720;
/** Width of anything else, such as an ideograph. */
const WIDE_SIGN: number = 1000;
/** Width of a sign beyond the basic plane, such as a pictogram. */
const PICTOGRAM: number = 1400;

/** The space that a text takes. */
export interface TextWidth {
  /** Its width in the unit of the font size. */
  readonly width: number;
  /** Whether every character is in the table. If not, the drawing must force the text to this width. */
  readonly known: boolean;
}

/** How wide a line of text is at the most, in a common sans-serif font. */
export function textWidth(text: string, size: number): TextWidth {
  const { sum, known } = measure(text);
  return { width: (sum * size) / 1000, known };
}

/** Width of a text in thousandths of the font size, and whether all its characters are in the table. */
function measure(text: string): { readonly sum: number; readonly known: boolean } {
  let sum = 0;
  let known = true;
  // In decomposed text an accent is a character of its own that takes no room. Signs for directions take none either.
  for (const character of text.normalize("NFD")) {
    if (/[\p{M}\u2066-\u2069]/u.test(character)) continue;
    const row = WIDTHS.find(([, characters]) => characters.includes(character));
    const code = character.codePointAt(0)!;
    known &&= row !== undefined;
    sum += row?.[0] ?? (code < 0x590 ? OTHER_LETTER : code < 0x10000 ? WIDE_SIGN : PICTOGRAM);
  }
  return { sum, known };
}

/** Breaks a text into lines that are no wider than a given width; a word that is wider by itself is broken too. */
export function wrapText(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, size).width <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    // A name may be a megabyte long: each character is measured once.
    let sum = 0;
    for (const character of word) {
      const own = measure(character).sum;
      if (line !== "" && ((sum + own) * size) / 1000 > width) {
        lines.push(line);
        line = "";
        sum = 0;
      }
      line += character;
      sum += own;
    }
  }
  return [...lines, line];
}
