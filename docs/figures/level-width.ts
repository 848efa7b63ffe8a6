import { levelWidth, molding, rabbetSeating, sectionAt } from "miterwright/profile";
import { regularPolygon } from "miterwright/polygon";
import { angle, defineFigure, length, sides, type Figure } from "./figure.js";
import { angleArc, dimension, finish, line, shape, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 320 };
const MIDDLE = { x: 225, y: 150 };
/** How many units of the paper the section's diagonal gets. */
const DIAGONAL = 215;

/** A tilted section, its width measured on the flat stick and level. */
export const levelWidthFigure: Figure = defineFigure({
  name: "level-width",
  legend: "Change the molding and the frame",
  size: SIZE,
  controls: {
    slope: angle("Slope", 35, -80, 80),
    width: length("Molding's width", 60, 20, 150),
    thickness: length("Molding's thickness", 24, 18, 80),
    rabbet: length("Rabbet's width", 8, 2, 18),
    depth: length("Rabbet's depth", 16, 2, 17),
    sides: sides(9),
  },
  draw: ({ slope, width, thickness, rabbet, depth, sides: n }, reader) => {
    const profile = molding({ width, thickness, rabbet: { width: rabbet, depth } });
    const section = sectionAt(profile, slope);
    const scale = DIAGONAL / Math.hypot(width, thickness);
    const outs = section.outline.map((point) => point.out);
    const ups = section.outline.map((point) => point.up);
    const middle = {
      out: (Math.min(...outs) + Math.max(...outs)) / 2,
      up: (Math.min(...ups) + Math.max(...ups)) / 2,
    };
    const place = ({ out, up }: { readonly out: number; readonly up: number }): Point => ({
      x: MIDDLE.x + (out - middle.out) * scale,
      y: MIDDLE.y - (up - middle.up) * scale,
    });
    // Where the wall decides the contents' size, whatever they are; where it can hold none, its mouth is as good.
    const fit = rabbetSeating(profile, { slope, contents: [] });
    const wall = fit.possible ? fit.opening : section.arrises.wallMouth;
    const outermost = section.outline.reduce((best, point) => (point.out > best.out ? point : best));
    const level = levelWidth(profile, { slope });
    const flat = width - rabbet;

    const pad: Pad = [];
    const bench = { x: 60, y: SIZE.height - 55 };
    shape(pad, "wood", section.outline.map(place));
    // The flat width, beside the face and parallel to it.
    const [sight, outer] = [section.arrises.sightFace, section.arrises.outerFace].map((arris) => place(arris)) as [
      Point,
      Point,
    ];
    const long = Math.hypot(outer.x - sight.x, outer.y - sight.y);
    const normal = { x: (outer.y - sight.y) / long, y: -(outer.x - sight.x) / long };
    const shift = (point: Point, by: number): Point => ({ x: point.x + by * normal.x, y: point.y + by * normal.y });
    const share = (rabbet / width) * long;
    const from = {
      x: sight.x + (share * (outer.x - sight.x)) / long,
      y: sight.y + (share * (outer.y - sight.y)) / long,
    };
    for (const point of [from, outer]) line(pad, "thin", shift(point, 3), shift(point, 20));
    line(pad, "dashed", shift(from, 16), shift(outer, 16));
    const label = shift({ x: (from.x + outer.x) / 2, y: (from.y + outer.y) / 2 }, 28);
    text(pad, { x: label.x, y: label.y + 4 }, "flat width", {
      anchor: normal.x > 0.3 ? "start" : normal.x < -0.3 ? "end" : "middle",
    });
    dimension(pad, "level", place(wall), place(outermost), bench.y, "level width");
    const corner = place(section.arrises.outerBack);
    if (Math.abs(slope) > 6) {
      const back = place(section.arrises.wallMouth);
      const low = slope > 0 ? back : corner;
      line(pad, "dashed", { x: low.x - 30, y: low.y }, { x: low.x + 75, y: low.y });
      if (slope > 0) angleArc(pad, low, 52, 0, slope, "slope");
      else angleArc(pad, low, 28, 180, 180 + slope, "slope");
    }

    const { planMiter } = regularPolygon({ sides: n, side: 1 });
    const tooLong = 2 * (flat - level) * Math.tan((planMiter * Math.PI) / 180);
    return {
      svg: finish(
        pad,
        SIZE,
        `A molding at a slope of ${reader.angle(slope)}, measured level and flat`,
        `The section stands as in the frame, whose center is to the left. From the rabbet's wall to the outer edge it measures ${reader.length(level)} level and ${reader.length(flat)} on the flat stick.`,
      ),
      facts: [
        ["level width", reader.length(level)],
        ["flat width", reader.length(flat)],
        ["flat less level", reader.length(flat - level)],
        ["side too long if taken flat", reader.length(tooLong)],
      ],
    };
  },
});
