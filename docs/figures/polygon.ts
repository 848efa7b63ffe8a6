import { onePolygonMeasure, polygonCorners, regularPolygon } from "miterwright/polygon";
import { choice, defineFigure, length, sides, type Figure } from "./figure.js";
import { dimension, dot, fitInto, finish, line, shape, span, text, type Pad, type Point } from "./pad.js";

const SIZE = { width: 440, height: 340 };

function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** A regular polygon with its measures, from any one of them. */
export const polygonFigure: Figure = defineFigure({
  name: "polygon",
  legend: "Change the polygon",
  size: SIZE,
  controls: {
    sides: sides(7, 24),
    measure: choice("Known measure", "acrossFlats", {
      side: "side",
      apothem: "apothem",
      circumradius: "circumradius",
      acrossFlats: "across flats",
      acrossCorners: "across corners",
      perimeter: "perimeter",
    }),
    value: length("Its length", 400, 50, 2000),
  },
  draw: ({ sides: n, measure, value }, reader) => {
    const polygon = regularPolygon({ sides: n, ...onePolygonMeasure(measure, value) });
    const world = polygonCorners(polygon);
    const { place } = fitInto([...world, { x: 0, y: 0 }], { x: 100, y: 20, width: 250, height: 260 });
    const corners = world.map(place);
    const center = place({ x: 0, y: 0 });
    const [start, end] = [corners[0]!, corners[1]!];
    const middle = between(start, end, 0.5);
    const far = corners[(1 + Math.floor(n / 2)) % n]!;

    const pad: Pad = [];
    shape(pad, "wood", corners);
    line(pad, "accent-dashed", end, far);
    line(pad, "accent", center, middle);
    line(pad, "accent", center, start);
    dot(pad, center);
    span(pad, { x: start.x, y: start.y + 22 }, { x: end.x, y: end.y + 22 });
    for (const { x, y } of [start, end]) line(pad, "thin", { x, y: y + 3 }, { x, y: y + 26 });
    text(pad, { x: middle.x, y: middle.y + 38 }, "side", { anchor: "middle", accent: true });
    text(pad, { x: middle.x + 5, y: (center.y + middle.y) / 2 + 8 }, "apothem", { accent: true });
    const out = between(center, start, 0.55);
    text(pad, { x: out.x - 6, y: out.y - 3 }, "circumradius", { anchor: "end", accent: true });
    const high = between(end, far, 0.74);
    text(pad, { x: high.x + 6, y: high.y - 4 }, "across corners", { accent: true });
    const top = corners.reduce((best, corner) => (corner.y < best.y - 1e-6 ? corner : best));
    dimension(pad, "plumb", top, { x: end.x, y: end.y }, 360, "across");
    text(pad, { x: 366, y: (top.y + end.y) / 2 + 19 }, "flats", { accent: true });

    const title = `A regular polygon of ${n} sides with its measures`;
    return {
      svg: finish(
        pad,
        SIZE,
        title,
        `The polygon stands on a side. Drawn in it are the apothem, the circumradius and the longest diagonal; beside it stands its height, which is its size across flats.`,
      ),
      facts: [
        ["side", reader.length(polygon.side)],
        ["apothem", reader.length(polygon.apothem)],
        ["circumradius", reader.length(polygon.circumradius)],
        ["across flats", reader.length(polygon.acrossFlats)],
        ["across corners", reader.length(polygon.acrossCorners)],
        ["perimeter", reader.length(polygon.perimeter)],
        ["area", reader.area(polygon.area)],
        ["plan miter", reader.angle(polygon.planMiter)],
        ["interior angle", reader.angle(polygon.interiorAngle)],
      ],
    };
  },
});
