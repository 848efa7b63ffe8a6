import { joinCorner } from "miterwright/miter";
import { angle, defineFigure, length, type Figure } from "./figure.js";
import { angleArc, dot, fitInto, finish, line, shape, text, vectorArrow, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 300 };
/** Length of the arrows. */
const ARM = 48;
const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/** Two flat boards of different width, from above. */
export const widthsFigure: Figure = defineFigure({
  name: "widths",
  legend: "Change the boards",
  size: SIZE,
  controls: {
    turn: angle("Turn of the corner", 90, 20, 140),
    first: length("First board's width", 60, 10, 150),
    second: length("Second board's width", 95, 10, 150),
  },
  draw: ({ turn, first, second }, reader) => {
    const board = (width: number): { readonly slope: number; readonly thickness: number; readonly width: number } => ({
      slope: 0,
      thickness: 20,
      width,
    });
    const corner = joinCorner({ turn, first: board(first), second: board(second) });
    // The first board comes from the left; its outer edge is below, as at the bottom of a frame. The inner edges meet at the origin.
    const tangent = Math.tan(rad(corner.first.miter));
    const outer: Point = { x: first * tangent, y: -first };
    const t = rad(turn);
    const [along, out] = [
      { x: Math.cos(t), y: Math.sin(t) },
      { x: Math.sin(t), y: -Math.cos(t) },
    ];
    const reach = 210;
    const on = (a: number, b: number): Point => ({ x: a * along.x + b * out.x, y: a * along.y + b * out.y });
    const firstBoard = [{ x: -reach, y: 0 }, { x: 0, y: 0 }, outer, { x: -reach, y: -first }];
    const secondBoard = [{ x: 0, y: 0 }, on(reach, 0), on(reach, second), outer];
    const arms = [
      // Longer, so that at a right angle o' does not hide it.
      { name: "u", tip: { x: 1.5 * ARM, y: 0 } },
      { name: "o", tip: { x: 0, y: -ARM } },
      { name: "o'", tip: on(0, ARM) },
    ];
    const { place, scale } = fitInto([...firstBoard, ...secondBoard, ...arms.map(({ tip }) => tip)], {
      x: 26,
      y: 24,
      width: 388,
      height: 250,
    });
    const pad: Pad = [];
    shape(pad, "wood", firstBoard.map(place));
    shape(pad, "wood", secondBoard.map(place));
    line(pad, "accent", place({ x: 0, y: 0 }), place(outer));
    // Square cuts, from which the miters are measured.
    line(pad, "dashed", place({ x: 0, y: 0 }), place({ x: 0, y: -first }));
    line(pad, "dashed", place({ x: 0, y: 0 }), place(on(0, second)));
    dot(pad, place({ x: 0, y: 0 }));
    dot(pad, place(outer));
    // The letters of the derivation, all from the inner point.
    const inner = place({ x: 0, y: 0 });
    for (const { name, tip } of arms) vectorArrow(pad, inner, place(tip), name, name === "o'" ? 10 : 0);
    angleArc(pad, inner, 0.55 * ARM * scale, 0, turn, "T");
    const far = place(outer);
    text(pad, { x: far.x + 6, y: far.y + 12 }, "P", { accent: true });
    const square = place({ x: 0, y: -first });
    if (Math.abs(far.x - square.x) > 16) {
      text(pad, { x: (far.x + square.x) / 2, y: square.y + 14 }, "a", { anchor: "middle", accent: true });
    }
    const name = place({ x: -reach * 0.72, y: -first / 2 });
    text(pad, { x: name.x, y: name.y + 4 }, "first, w1 wide", { anchor: "middle" });
    const other = place(on(reach * 0.72, second / 2));
    text(pad, { x: other.x, y: other.y - 4 }, "second,", { anchor: "middle" });
    text(pad, { x: other.x, y: other.y + 12 }, "w2 wide", { anchor: "middle" });
    return {
      svg: finish(
        pad,
        SIZE,
        "A corner between two flat boards of different width, from above",
        "The joint runs from the point where the inner edges meet to the point where the outer edges meet. Dashed lines are square to each board. From the inner point run u along the first board, o outward from it and o' outward from the second; the ring turns by T, and the outer point P lies a along the first board.",
      ),
      facts: [
        ["first board's miter", reader.angle(corner.first.miter)],
        ["second board's miter", reader.angle(corner.second.miter)],
        ["their sum, the turn", reader.angle(corner.first.miter + corner.second.miter)],
      ],
    };
  },
});
