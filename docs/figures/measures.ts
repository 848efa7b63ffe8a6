import { frameGeometry } from "miterwright/frame";
import { arrisLabel } from "miterwright/words";
import { angle, defineFigure, length, sides, type Figure } from "./figure.js";
import { plainMolding } from "./molding.js";
import { dot, fitInto, finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 330 };
/** Least distance of two labels. */
const LINE = 15;

/** Moves labels apart, each as little as the one above it allows. */
function spread(heights: readonly number[], gap: number): number[] {
  const order = heights.map((_, index) => index).sort((a, b) => heights[a]! - heights[b]!);
  const placed = [...heights];
  for (const [rank, index] of order.entries()) {
    if (rank > 0) placed[index] = Math.max(heights[index]!, placed[order[rank - 1]!]! + gap);
  }
  return placed;
}

/** One piece from above, with its length at every arris. */
export const measuresFigure: Figure = defineFigure({
  name: "measures",
  legend: "Change the frame",
  size: SIZE,
  controls: {
    sides: sides(6),
    slope: angle("Slope", 30, -80, 80),
    opening: length("Opening across flats", 260, 100, 600),
    width: length("Molding's width", 60, 20, 100),
  },
  draw: ({ sides: n, slope, opening, width }, reader) => {
    const profile = plainMolding(width, width * 0.4);
    const { pieces, opening: polygon } = frameGeometry({
      sides: n,
      slope,
      profile,
      opening: { acrossFlats: opening },
      at: "opening",
    });
    const { lengths } = pieces[0];
    const names = Object.keys(lengths) as (keyof typeof lengths)[];
    const half = Math.PI / n;
    // How far out a line of that length runs.
    const outOf = (long: number): number => long / 2 / Math.tan(half);
    const lines = names.map((name) => ({ name, long: lengths[name], out: outOf(lengths[name]) }));
    const farthest = lines.reduce((best, one) => (one.out > best.out ? one : best));
    const nearest = lines.reduce((best, one) => (one.out < best.out ? one : best));
    const ends = ({ long, out }: { readonly long: number; readonly out: number }): [Point, Point] => [
      { x: -long / 2, y: -out },
      { x: long / 2, y: -out },
    ];
    const { place } = fitInto([{ x: 0, y: 0 }, ...ends(farthest)], { x: 20, y: 16, width: 250, height: 290 });
    const center = place({ x: 0, y: 0 });

    const pad: Pad = [];
    const [outerLeft, outerRight] = ends(farthest).map(place) as [Point, Point];
    const [innerLeft, innerRight] = ends(nearest).map(place) as [Point, Point];
    shape(pad, "wood", [outerLeft, outerRight, innerRight, innerLeft]);
    line(pad, "dashed", center, innerLeft);
    line(pad, "dashed", center, innerRight);
    dot(pad, center);
    text(pad, { x: center.x + 8, y: center.y + 4 }, "center", { small: true });
    const wall = place({ x: 0, y: -polygon.apothem });
    line(pad, "accent-dashed", center, wall);
    const rights = lines.map((one) => place(ends(one)[1]));
    const heights = spread(
      rights.map((point) => point.y),
      LINE,
    );
    // Pushed down too far, all go up.
    const lift = Math.max(0, Math.max(...heights) - (SIZE.height - 12));
    lines.forEach((one, index) => {
      const [left, right] = ends(one).map(place) as [Point, Point];
      const y = heights[index]! - lift;
      line(pad, "accent", left, right);
      line(pad, "thin", right, { x: 288, y: right.y }, { x: 300, y });
      text(pad, { x: 304, y: y + 4 }, arrisLabel(one.name), { accent: true, small: true });
    });
    return {
      svg: finish(
        pad,
        SIZE,
        `One piece of a frame of ${n} sides from above, with the lines that can be measured`,
        `The lines run along the piece's arrises, from joint to joint; the longest, ${reader.length(farthest.long)}, is the ${arrisLabel(farthest.name)}.`,
      ),
      facts: [
        ...names.map((name) => [arrisLabel(name), reader.length(lengths[name])] as const),
        ["center to contents' edge", reader.length(polygon.apothem)],
      ],
    };
  },
});
