import { joinCorner } from "miterwright/miter";
import { angle, defineFigure, length, type Figure } from "./figure.js";
import { dot, fitInto, finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 300 };
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
    const { place } = fitInto([...firstBoard, ...secondBoard], { x: 20, y: 16, width: 400, height: 268 });
    const pad: Pad = [];
    shape(pad, "wood", firstBoard.map(place));
    shape(pad, "wood", secondBoard.map(place));
    line(pad, "accent", place({ x: 0, y: 0 }), place(outer));
    // Square cuts, from which the miters are measured.
    line(pad, "dashed", place({ x: 0, y: 0 }), place({ x: 0, y: -first }));
    line(pad, "dashed", place({ x: 0, y: 0 }), place(on(0, second)));
    dot(pad, place({ x: 0, y: 0 }));
    dot(pad, place(outer));
    const name = place({ x: -reach * 0.72, y: -first / 2 });
    text(pad, { x: name.x, y: name.y + 4 }, "first", { anchor: "middle" });
    const other = place(on(reach * 0.72, second / 2));
    text(pad, { x: other.x, y: other.y + 4 }, "second", { anchor: "middle" });
    return {
      svg: finish(
        pad,
        SIZE,
        "A corner between two flat boards of different width, from above",
        "The joint runs from the point where the inner edges meet to the point where the outer edges meet. Dashed lines are square to each board.",
      ),
      facts: [
        ["first board's miter", reader.angle(corner.first.miter)],
        ["second board's miter", reader.angle(corner.second.miter)],
        ["their sum, the turn", reader.angle(corner.first.miter + corner.second.miter)],
      ],
    };
  },
});
