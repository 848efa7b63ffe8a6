import { compoundMiter } from "miterwright/miter";
import { angle, defineFigure, sides, type Figure } from "./figure.js";
import { angleArc, dimension, finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 262 };
const BASE = 178;
/** The board's width, in units of the paper. */
const WIDTH = 120;
/** How much of the piece is shown before its corner at the sight edge. */
const BEFORE = 72;

/** One end of a board: from the sight edge (below) outward (up), longer at the outer edge. */
function drawEnd(
  pad: Pad,
  x: number,
  width: number,
  advance: number,
): { readonly corner: Point; readonly outer: Point } {
  const corner = { x: x + BEFORE, y: BASE };
  const outer = { x: corner.x + advance, y: BASE - width };
  const [left, top] = [
    { x, y: BASE },
    { x, y: BASE - width },
  ];
  shape(pad, "wood", [left, corner, outer, top]);
  line(pad, "ink", left, corner, outer, top);
  return { corner, outer };
}

/** The same cut from above in the frame and on the flat board. */
export const flatCutFigure: Figure = defineFigure({
  name: "flat-cut",
  legend: "Change the corner",
  hasLengths: false,
  size: SIZE,
  controls: { sides: sides(5), slope: angle("Slope", 50, 0, 85) },
  draw: ({ sides: n, slope }, reader) => {
    const { miter, bevel, planMiter } = compoundMiter({ sides: n, slope });
    // A triangle's cut is long: the width gives way, so that both ends stay on the paper.
    const tangent = Math.tan((planMiter * Math.PI) / 180);
    const width = Math.min(WIDTH, 105 / tangent / Math.cos((slope * Math.PI) / 180));
    const level = width * Math.cos((slope * Math.PI) / 180);
    const advance = level * tangent;
    const pad: Pad = [];
    for (const [x, across, name, label, angleName] of [
      [20, level, "in the frame, from above", "w cos s", "h"],
      [240, width, "flat on the saw", "w", "miter"],
    ] as const) {
      const { corner, outer } = drawEnd(pad, x, across, advance);
      const top = { x: corner.x, y: corner.y - Math.max(across, 56) - 22 };
      line(pad, "dashed", corner, top);
      const direction = (Math.atan2(across, advance) * 180) / Math.PI;
      if (advance > 4) angleArc(pad, corner, Math.min(44, 0.75 * Math.hypot(across, advance)), direction, 90, "");
      dimension(pad, "level", corner, { x: corner.x + advance, y: BASE }, BASE + 14, "");
      text(pad, { x: corner.x + advance / 2, y: BASE + 32 }, "w cos s tan h", { anchor: "middle", accent: true });
      line(pad, "thin", { x: outer.x, y: outer.y + 3 }, { x: outer.x, y: BASE - 3 });
      text(pad, { x: x + 4, y: BASE - across - 7 }, "outer edge", { small: true });
      text(pad, { x: x + 4, y: BASE + 15 }, "sight edge", { small: true });
      text(pad, { x: x + 6, y: BASE - across / 2 + 4 }, label, { accent: true });
      text(pad, { x: top.x, y: top.y - 5 }, angleName, { anchor: "middle", accent: true });
      text(pad, { x: x + BEFORE, y: SIZE.height - 12 }, name, { anchor: "middle" });
    }
    return {
      svg: finish(
        pad,
        SIZE,
        "One mitered end, from above in the frame and flat on the saw",
        `In the frame the cut crosses the width w cos s at the plan miter h, ${reader.angle(planMiter)}. On the flat board it crosses the whole width w and advances by the same length, at the miter ${reader.angle(miter)}.`,
      ),
      facts: [
        ["plan miter h", reader.angle(planMiter)],
        ["miter", reader.angle(miter)],
        ["bevel", reader.angle(bevel)],
      ],
    };
  },
});
