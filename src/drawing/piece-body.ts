import type { Point } from "../core/geometry-types.js";
import { drawLine, drawShape, type Canvas } from "./canvas.js";
import type { DrawingPart, Meaning } from "./parts.js";

/** A corner of a section, seen from a side on which `toward` grows. */
export interface SeenCorner {
  /** Its place on the paper, square to the body's length. */
  readonly across: number;
  /** How near to the viewer it is. */
  readonly toward: number;
}

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
  /** What it is: a finished piece from its start on the left, or a part of a stick at the saw. An offcut is left blank. */
  readonly body: "piece" | "kept" | "offcut";
  /** Its lines in the section's order, counter-clockwise with `across` to the right and `toward` up. */
  readonly lines: readonly BodyLine[];
  /** Height on the paper at which `across` is 0; it grows downward. */
  readonly y: number;
  /** Which ends are sawn, so that their faces are drawn where they are seen. Another end is broken off. */
  readonly ends: readonly ("from" | "to")[];
}

/** An end's face smaller than this is seen as a line, in twice square units. */
const SEEN_AREA: number = 1e-3;

/**
 * The faces of a long body that a viewer sees, as pairs of neighboring corners of its section, the farthest first so that nearer ones are painted over them.
 * The section runs counter-clockwise with `across` to the right and `toward` up.
 */
export function seenFaces(corners: readonly SeenCorner[]): (readonly [number, number])[] {
  const faces = corners.map((_, index) => [index, (index + 1) % corners.length] as const);
  const depth = ([a, b]: readonly [number, number]): number => corners[a]!.toward + corners[b]!.toward;
  return (
    faces
      // The outside of a counter-clockwise section is to the right of its edges: it faces the viewer where an edge goes backward.
      .filter(([a, b]) => corners[b]!.across < corners[a]!.across)
      .sort((one, other) => depth(one) - depth(other))
  );
}

/** Twice the area of an end's face on the paper, positive when its corners run counter-clockwise in across and along. */
function endArea(lines: readonly BodyLine[], end: "from" | "to"): number {
  return lines.reduce((sum, line, index) => {
    const next = lines[(index + 1) % lines.length]!;
    return sum + line.across * next[end] - next.across * line[end];
  }, 0);
}

/** Draws a body that runs across the paper: the faces that are seen, their edges, and sawn ends that look toward the viewer. */
export function drawBody(canvas: Canvas, { body, lines, y, ends }: Body): void {
  const isBlank = body === "offcut";
  const sawn = (part: DrawingPart, side: "from" | "to"): Meaning =>
    body === "piece" ? { part, body, end: side === "from" ? "start" : "end" } : { part, body };
  const at = (side: "from" | "to", line: BodyLine): Point => ({ x: line[side], y: y + line.across });
  const faces = seenFaces(lines);
  for (const [a, b] of faces) {
    const [one, other] = [lines[a]!, lines[b]!];
    const face = [at("from", one), at("to", one), at("to", other), at("from", other)];
    drawShape(canvas, { part: "face", body }, isBlank ? "paper" : "wood", face);
    for (const index of [a, b]) {
      const line = lines[index]!;
      const isRim = faces.filter((face) => face.includes(index)).length === 1;
      if (!isRim && !line.sharp) continue;
      drawLine(canvas, { part: "arris", body }, "edge", [at("from", line), at("to", line)]);
    }
    for (const side of ends) drawLine(canvas, sawn("cut", side), "edge", [at(side, one), at(side, other)]);
  }
  for (const side of ends) {
    // An end's face is seen where the end recedes at its nearer part. The two ends are seen from opposite sides.
    const area = endArea(lines, side) * (side === "to" ? -1 : 1);
    if (area <= SEEN_AREA) continue;
    const face = lines.map((line) => at(side, line));
    drawShape(canvas, sawn("end-grain", side), isBlank ? "paper" : "end-grain", face);
  }
}
