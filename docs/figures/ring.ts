import { correctSetting, gaugeTolerance, ringClosure } from "miterwright/closure";
import { compoundMiter } from "miterwright/miter";
import { correctionLines } from "miterwright/words";
import { angle, defineFigure, factor, length, sides, type Figure } from "./figure.js";
import { dimension, dot, fitInto, finish, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 350 };
const ACCEPTED = 0.25;
/** The column that has the gap and the slope by themselves. */
const ASIDE = { x: 322, width: 108 };
const MIDDLE = ASIDE.x + ASIDE.width / 2;
const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const within = (value: number, limit: number): number => Math.max(-limit, Math.min(limit, value));
const polar = (from: Point, far: number, degrees: number): Point => ({
  x: from.x + far * Math.cos(rad(degrees)),
  y: from.y + far * Math.sin(rad(degrees)),
});

/** Pieces whose joints turn by twice `half`, each pressed tight against the one before it, seen from above. */
function chain(n: number, half: number, side: number, width: number): Point[][] {
  const reach = width * Math.tan(rad(half));
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
    const piece = [at, on(side, 0), on(side + reach, width), on(-reach, width)];
    at = on(side, 0);
    heading += 2 * rad(half);
    return piece;
  });
}

/** The last joint pulled together until it touches at one end, its outside above: the ends of two pieces that make an angle of `open` degrees. */
function drawLastJoint(pad: Pad, half: number, open: number): void {
  const apex = { x: 0, y: 0 };
  // Seen from where they touch, the joint lines run outward or inward.
  const way = open >= 0 ? 90 : -90;
  const stubs = [1, -1].map((hand) => {
    const tip = polar(apex, 100, way + (hand * open) / 2);
    const run = (hand > 0 ? 180 : 0) + hand * (half + open / 2);
    return { tip, outline: [apex, tip, polar(tip, 60, run), polar(apex, 60, run)] };
  });
  const { place } = fitInto(
    stubs.flatMap(({ outline }) => outline),
    { x: ASIDE.x, y: 44, width: ASIDE.width, height: 84 },
  );
  for (const { outline } of stubs) shape(pad, "wood", outline.map(place));
  dot(pad, place(apex));
  const [left, right] = stubs.map(({ tip }) => place(tip)) as [Point, Point];
  if (open !== 0) dimension(pad, "level", left, right, open > 0 ? left.y - 24 : left.y + 12, "g");
}

/** The molding's section as planned (dashed) and as it comes to stand. */
function drawSlopes(pad: Pad, planned: number, reached: number): void {
  const outline = (slope: number): Point[] => {
    const back = polar({ x: 0, y: 0 }, 100, slope);
    return [{ x: 0, y: 0 }, back, polar(back, 36, slope + 90), polar({ x: 0, y: 0 }, 36, slope + 90)];
  };
  const [before, after] = [outline(planned), outline(reached)];
  const { place } = fitInto([...before, ...after], { x: ASIDE.x, y: 192, width: ASIDE.width, height: 112 });
  shape(pad, "wood", after.map(place));
  shape(pad, "plane", before.map(place));
  text(pad, { x: MIDDLE, y: 324 }, "slope reached,", { anchor: "middle", small: true });
  text(pad, { x: MIDDLE, y: 339 }, "planned: dashed", { anchor: "middle", small: true });
}

/** A ring whose miters and bevels are all off by the same, exaggerated. */
export const ringFigure: Figure = defineFigure({
  name: "ring",
  legend: "Change the frame and the errors",
  size: SIZE,
  controls: {
    sides: sides(8, 24),
    slope: angle("Slope", 30, -80, 80),
    width: length("Joint width", 45, 10, 150),
    opening: length("Opening's side", 110, 40, 500),
    miter: angle("Every miter off by", -0.1, -0.5, 0.5, 0.01),
    bevel: angle("Every bevel off by", 0.05, -0.5, 0.5, 0.01),
    exaggerated: factor("Errors drawn times", 20, 1, 30),
  },
  draw: ({ sides: n, slope, width, opening, miter, bevel, exaggerated }, reader) => {
    const wanted = compoundMiter({ sides: n, slope });
    const cut = { miter: wanted.miter + miter, bevel: wanted.bevel + bevel };
    const piece = { length: opening, start: cut, end: cut };
    const closure = ringClosure({ pieces: Array.from({ length: n }, () => piece), at: "inside", width });
    const { shared } = gaugeTolerance({ sides: n, width, acceptedGap: ACCEPTED, slope });
    const share = (error: number | null): string => (error === null ? "hardly opens it" : reader.smallAngle(error));
    const words = { inside: "opens inside", outside: "opens outside", nowhere: "closes" } as const;
    const { opens } = closure;
    const correction =
      opens === "nowhere"
        ? ["The last joint closes, and the slope is as planned.", "Miter: leave it.", "Bevel: leave it."]
        : correctionLines(
            correctSetting({
              sides: n,
              width,
              seenGap: closure.jointGap,
              open: opens,
              slope: closure.slope,
              hold: slope,
            }),
          );

    // Equal ends make a joint upright in any ring, so from above a splayed one looks as a flat one does whose miter is half the turn.
    const exact = wanted.planMiter;
    // No more than a third of a joint, or the picture would be of something else.
    const drawn = exact + within((-closure.angle / (2 * n)) * exaggerated, exact / 3);
    const pieces = chain(n, drawn, opening, width);
    const { place } = fitInto([...pieces.flat(), ...chain(n, exact, opening, width).flat()], {
      x: 10,
      y: 14,
      width: 296,
      height: 322,
    });
    const pad: Pad = [];
    for (const outline of pieces) shape(pad, "wood", outline.map(place));
    const [first, last] = [pieces[0]!, pieces.at(-1)!];
    for (const point of [first[0]!, first[3]!, last[1]!, last[2]!]) dot(pad, place(point));
    const middle = place({
      x: pieces.reduce((sum, one) => sum + one[0]!.x / n, 0),
      y: pieces.reduce((sum, one) => sum + one[0]!.y / n, 0),
    });
    text(pad, { x: middle.x, y: middle.y + 4 }, words[opens], { anchor: "middle", accent: true });
    drawLastJoint(pad, drawn, within(2 * n * (exact - drawn), 70));
    text(pad, { x: MIDDLE, y: 172 }, "the last joint", { anchor: "middle", small: true });
    drawSlopes(pad, slope, slope + within((closure.slope - slope) * exaggerated, 30));
    return {
      svg: finish(
        pad,
        SIZE,
        `A ring of ${n} sides whose cuts are all off, exaggerated`,
        `From above, every joint but the last is pressed tight; the last one ${words[opens]}. Beside it that joint, pulled together until it touches at one end, and the section at the slope that is reached. Where pieces would run into each other they are drawn over each other.`,
      ),
      facts: [
        ["the last joint", words[opens]],
        ["joint gap g at the last joint", reader.small(closure.jointGap)],
        ["open angle", reader.smallAngle(Math.abs(closure.angle))],
        ["slope reached", reader.angle(closure.slope)],
        [`miter's error for a joint gap of ${reader.small(ACCEPTED)}`, share(shared.miter)],
        ["bevel's error for that gap", share(shared.bevel)],
      ],
      says: correction,
    };
  },
});
