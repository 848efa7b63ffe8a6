import type { Point } from "../core/geometry-types.js";
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

/** Where the key stands: its upper left corner, and its widest line with the signs. */
export interface KeyPlace extends Point {
  readonly width: number;
}

/** Room for a sign before its text. */
const SIGN: number = 30;
/** Length of a sample of a line. */
const SAMPLE: number = 23;

/** Writes the key under a picture. */
export function drawKey(canvas: Canvas, entries: readonly KeyEntry[], place: KeyPlace): void {
  const { x, y, width } = place;
  const indent = entries.some(({ sign }) => sign !== undefined) ? SIGN : 0;
  let baseline = y + TEXT_SIZE;
  for (const { sign, text } of entries) {
    if (sign !== undefined && "look" in sign) {
      drawLine(canvas, "key", sign.look, [
        { x, y: baseline - 4 },
        { x: x + SAMPLE, y: baseline - 4 },
      ]);
    } else if (sign !== undefined) {
      drawText(canvas, { x: x + SAMPLE / 2, y: baseline }, sign.name, { is: "key", anchor: "middle" });
    }
    for (const line of wrapText(text, TEXT_SIZE, width - indent)) {
      drawText(canvas, { x: x + indent, y: baseline }, line, { is: "key" });
      baseline += LINE_HEIGHT;
    }
  }
}
