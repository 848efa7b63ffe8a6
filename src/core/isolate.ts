/** Signs that set the direction of the text after them, and the signs that end them (Unicode Standard Annex 9, section 2). */
const CONTROLS: RegExp = /[\u202a-\u202e\u2066-\u2069]/g;
/** Letters that run from right to left, by the blocks that hold them. */
const RIGHT_TO_LEFT: RegExp = /[\u0590-\u08ff\u200f\ufb1d-\ufdff\ufe70-\ufeff\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/**
 * A name of the caller, for a place within a sentence of ours: it can't change the direction of what stands after it.
 *
 * An override in a name would turn a length after it round, so that "2400 mm" reads "0042 mm". The signs for directions are dropped, and a name with
 * letters that run from right to left stands between U+2068 and U+2069.
 */
export function isolate(name: string): string {
  const plain = name.replace(CONTROLS, "");
  return RIGHT_TO_LEFT.test(plain) ? `\u2068${plain}\u2069` : plain;
}

/** A whole text, ours or the caller's, without overrides and with every isolate closed within it. */
export function closeIsolates(text: string): string {
  let open = 0;
  const closed = text.replace(CONTROLS, (sign) => {
    if (sign < "\u2066") return "";
    if (sign !== "\u2069") open++;
    else if (open === 0) return "";
    else open--;
    return sign;
  });
  return closed + "\u2069".repeat(open);
}

/** A whole text for a place beside others in one line, as a table's cell is. */
export function isolateText(text: string): string {
  const closed = closeIsolates(text);
  return closed.includes("\u2068") || RIGHT_TO_LEFT.test(closed) ? `\u2068${closed}\u2069` : closed;
}
