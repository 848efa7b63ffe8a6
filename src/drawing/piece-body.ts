import type { Point } from "../core/geometry-types.js";
import { drawLine, drawShape, type Canvas } from "./canvas.js";
import { seenFaces, type SeenCorner } from "./seen-faces.js";

/** One line along a body on the paper, in the paper's units: where it starts and ends, and where it is in the section. */
export interface BodyLine extends SeenCorner {
  /** Left end. */
  readonly from: number;
  /** Right end. */
  readonly to: number;
  /** Whether it is drawn as an edge. */
  readonly sharp: boolean;
}

/** A body drawn side on. */
export interface Body {
  /** Its lines in the section's order, counter-clockwise with `across` to the right and `toward` up. */
  readonly lines: readonly BodyLine[];
  /** Height on the paper at which `across` is 0; it grows downward. */
  readonly y: number;
  /** Which ends are sawn, so that their faces are drawn where they are seen. Another end is broken off. */
  readonly ends: readonly ("from" | "to")[];
  /** How its surfaces look; default wood. */
  readonly look?: "wood" | "paper";
}

/** An end's face smaller than this is seen as a line, in twice square units. */
const SEEN_AREA: number = 1e-3;

/** Twice the area of an end's face on the paper, positive when its corners run counter-clockwise in across and along. */
function endArea(lines: readonly BodyLine[], end: "from" | "to"): number {
  return lines.reduce((sum, line, index) => {
    const next = lines[(index + 1) % lines.length]!;
    return sum + line.across * next[end] - next.across * line[end];
  }, 0);
}

/**
 * Draws a body that runs across the paper: the faces that are seen, their edges, and sawn ends that look toward the viewer.
 *
 * @param canvas - the picture
 * @param body - the body
 */
export function drawBody(canvas: Canvas, body: Body): void {
  const { lines, y, ends, look = "wood" } = body;
  const start = ({ from, across }: BodyLine): Point => ({ x: from, y: y + across });
  const end = ({ to, across }: BodyLine): Point => ({ x: to, y: y + across });
  const faces = seenFaces(lines);
  for (const [a, b] of faces) {
    const [one, other] = [lines[a]!, lines[b]!];
    drawShape(canvas, "face", look, [start(one), end(one), end(other), start(other)]);
    for (const index of [a, b]) {
      const isRim = faces.filter((face) => face.includes(index)).length === 1;
      if (isRim || lines[index]!.sharp) drawLine(canvas, "arris", "edge", [start(lines[index]!), end(lines[index]!)]);
    }
    if (ends.includes("from")) drawLine(canvas, "cut", "edge", [start(one), start(other)]);
    if (ends.includes("to")) drawLine(canvas, "cut", "edge", [end(one), end(other)]);
  }
  for (const side of ends) {
    // An end's face is seen where the end recedes at its nearer part. The two ends are seen from opposite sides.
    const area = endArea(lines, side) * (side === "to" ? -1 : 1);
    if (area > SEEN_AREA) {
      drawShape(canvas, "end-grain", look === "wood" ? "end-grain" : "paper", lines.map(side === "from" ? start : end));
    }
  }
}
