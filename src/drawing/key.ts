import { drawLine, drawText, type Canvas } from "./canvas.js";
import { LINE_HEIGHT, TEXT_SIZE, type Look } from "./looks.js";
import { wrapText } from "./text-width.js";

/** An entry of the key under a picture: what a kind of line or a short name stands for. */
export interface KeyEntry {
  /** The kind of line; or a letter or another short name in the picture; or neither, for a plain remark. */
  readonly sign?: { readonly look: Look } | { readonly name: string };
  /** What it stands for. */
  readonly text: string;
}

/** Room for a sign before its text. */
const SIGN: number = 30;
/** Length of a sample of a line. */
const SAMPLE: number = 23;

/**
 * Writes the key under a picture.
 *
 * @param canvas - the picture
 * @param entries - what to write
 * @param x - left edge
 * @param y - upper edge
 * @param width - widest line, signs included
 */
export function drawKey(canvas: Canvas, entries: readonly KeyEntry[], x: number, y: number, width: number): void {
  const indent = entries.some(({ sign }) => sign !== undefined) ? SIGN : 0;
  let baseline = y + TEXT_SIZE;
  for (const { sign, text } of entries) {
    if (sign !== undefined && "look" in sign) {
      drawLine(canvas, "key", sign.look, [
        { x, y: baseline - 4 },
        { x: x + SAMPLE, y: baseline - 4 },
      ]);
    } else if (sign !== undefined) {
      drawText(canvas, { x: x + SAMPLE / 2, y: baseline }, sign.name, { anchor: "middle" });
    }
    for (const line of wrapText(text, TEXT_SIZE, width - indent)) {
      drawText(canvas, { x: x + indent, y: baseline }, line);
      baseline += LINE_HEIGHT;
    }
  }
}
