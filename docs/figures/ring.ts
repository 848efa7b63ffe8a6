import { gaugeTolerance, ringClosure } from "miterwright/closure";
import { angle, defineFigure, factor, length, sides, type Figure } from "./figure.js";
import { dot, fitInto, finish, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 330 };
const ACCEPTED = 0.25;
const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/** Flat sticks of one miter, each pressed tight against the one before it, seen from above. */
function chain(n: number, miter: number, side: number, width: number): Point[][] {
  const reach = width * Math.tan(rad(miter));
  let at: Point = { x: 0, y: 0 };
  let heading = 0;
  return Array.from({ length: n }, () => {
    const along = { x: Math.cos(heading), y: Math.sin(heading) };
    const out = { x: along.y, y: -along.x };
    const on = (a: number, b: number): Point => ({
      x: at.x + a * along.x + b * out.x,
      y: at.y + a * along.y + b * out.y,
    });
    // The inner edge is as long as the side of the opening; the outer one is longer at both ends.
    const stick = [at, on(side, 0), on(side + reach, width), on(-reach, width)];
    at = on(side, 0);
    heading += 2 * rad(miter);
    return stick;
  });
}

/** A ring whose miters are all off by the same, exaggerated. */
export const ringFigure: Figure = defineFigure({
  name: "ring",
  legend: "Change the frame and the error",
  size: SIZE,
  controls: {
    sides: sides(9, 24),
    width: length("Molding's width", 60, 10, 150),
    opening: length("Opening's side", 110, 40, 500),
    error: angle("Every miter off by", -0.1, -0.5, 0.5, 0.01),
    exaggerated: factor("Error drawn times", 20, 1, 30),
  },
  draw: ({ sides: n, width, opening, error, exaggerated }, reader) => {
    const exact = 180 / n;
    const cut = { miter: exact + error, bevel: 0 };
    const stick = { length: opening, start: cut, end: cut };
    const closure = ringClosure({ sticks: Array.from({ length: n }, () => stick), at: "inside", width });
    const { shared } = gaugeTolerance({ sides: n, width, gap: ACCEPTED });
    // No more than a third of a joint, or the picture would be of something else.
    const limit = exact / 3;
    const drawn = exact + Math.max(-limit, Math.min(limit, error * exaggerated));
    const sticks = chain(n, drawn, opening, width);
    const { place } = fitInto([...sticks.flat(), ...chain(n, exact, opening, width).flat()], {
      x: 20,
      y: 14,
      width: 400,
      height: 302,
    });
    const pad: Pad = [];
    for (const outline of sticks) shape(pad, "wood", outline.map(place));
    const [first, last] = [sticks[0]!, sticks.at(-1)!];
    for (const point of [first[0]!, first[3]!, last[1]!, last[2]!]) dot(pad, place(point));
    const middle = place({
      x: sticks.reduce((sum, one) => sum + one[0]!.x / n, 0),
      y: sticks.reduce((sum, one) => sum + one[0]!.y / n, 0),
    });
    const words = { inside: "opens inside", outside: "opens outside", nowhere: "closes" } as const;
    const opens = closure.opens === "inside" || closure.opens === "outside" ? closure.opens : "nowhere";
    text(pad, { x: middle.x, y: middle.y + 4 }, words[opens], { anchor: "middle", accent: true });
    return {
      svg: finish(
        pad,
        SIZE,
        `A ring of ${n} sides whose miters are all off, exaggerated`,
        `Every joint but the last is pressed tight. The last one ${words[opens]}. Where pieces would run into each other they are drawn over each other.`,
      ),
      facts: [
        ["the last joint", words[opens]],
        ["open angle", reader.smallAngle(Math.abs(closure.angle))],
        ["V at the last joint", reader.small(closure.vGap)],
        [`error for a V of ${reader.small(ACCEPTED)}`, reader.smallAngle(shared.miter ?? 0)],
      ],
    };
  },
});
