import { polygonAround, polygonCorners } from "miterwright/polygon";
import { choice, defineFigure, length, sides, type Figure } from "./figure.js";
import { dimension, dot, fitInto, finish, shape, text, type Pad } from "./pad.js";

const SIZE = { width: 440, height: 320 };

/** The smallest polygon round a picture. */
export const aroundFigure: Figure = defineFigure({
  name: "around",
  legend: "Change the picture and the polygon",
  size: SIZE,
  controls: {
    // In a triangle the two centers lie well apart.
    sides: sides(3),
    width: length("Picture's width", 300, 50, 800),
    height: length("Picture's height", 200, 50, 800),
    stands: choice("The polygon", "side-down", {
      "side-down": "stands on a side",
      "corner-down": "stands on a corner",
      free: "is rotated to fit best",
    }),
  },
  draw: ({ sides: n, width, height, stands }, reader) => {
    const rectangle = { sides: n, width, height };
    const { polygon, center, rotation } = polygonAround(
      stands === "free" ? { ...rectangle, rotation: "free" } : { ...rectangle, pose: stands },
    );
    const world = polygonCorners(polygon, rotation);
    const { place } = fitInto(world, { x: 70, y: 15, width: 290, height: 250 });
    const picture = [
      { x: -width / 2, y: -height / 2 },
      { x: width / 2, y: -height / 2 },
      { x: width / 2, y: height / 2 },
      { x: -width / 2, y: height / 2 },
    ].map(({ x, y }) => place({ x: center.x + x, y: center.y + y }));

    const pad: Pad = [];
    shape(pad, "wood", world.map(place));
    shape(pad, "sheet", picture);
    dot(pad, place({ x: 0, y: 0 }));
    dot(pad, place(center), 2);
    const above = place(center).y < place({ x: 0, y: 0 }).y - 12;
    text(pad, { x: place({ x: 0, y: 0 }).x + 7, y: place({ x: 0, y: 0 }).y + (above ? 11 : -6) }, "polygon's center", {
      small: true,
    });
    const low = Math.max(...world.map((corner) => place(corner).y));
    dimension(pad, "level", picture[0]!, picture[1]!, Math.max(low, picture[0]!.y) + 24, "picture's width");

    const shift = Math.hypot(center.x, center.y);
    return {
      svg: finish(
        pad,
        SIZE,
        `The smallest polygon of ${n} sides round a picture`,
        `The polygon and the picture in it. Their centers are ${reader.length(shift)} apart.`,
      ),
      facts: [
        ["side", reader.length(polygon.side)],
        ["across flats", reader.length(polygon.acrossFlats)],
        ["rotated by", reader.angle(rotation)],
        ["picture to the right of center", reader.length(center.x)],
        ["picture above center", reader.length(center.y)],
      ],
    };
  },
});
