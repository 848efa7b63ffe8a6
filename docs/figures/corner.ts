import { joinCorner, type Corner, type EndCut } from "miterwright/miter";
import { angle, defineFigure, length, sides, type Figure } from "./figure.js";
import { fitInto, finish, shape, text, vectorArrow, type Pad, type Point } from "./pad.js";
import { cross, dotProduct, plus, times, viewFrom, type Vector, type View } from "./space.js";

const SIZE = { width: 440, height: 310 };

interface CornerBoard {
  readonly slope: number;
  readonly thickness: number;
  readonly width: number;
}

/** A face of a solid: its corners, counter-clockwise as seen from outside. */
interface Face {
  readonly corners: readonly Vector[];
  readonly sawn: boolean;
}

const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/** The axes of a board at the corner: along the ring, from its sight edge to its outer edge, from its back to its face. */
function axesOf(half: number, { end, slope }: EndCut): readonly [along: Vector, across: Vector, through: Vector] {
  // Each board makes half the turn with the level direction square to the joint, one to either side of it.
  const heading = end === "end" ? rad(half) : -rad(half);
  const along: Vector = [Math.cos(heading), Math.sin(heading), 0];
  const out: Vector = [-Math.sin(heading), Math.cos(heading), 0];
  const [c, s] = [Math.cos(rad(slope)), Math.sin(rad(slope))];
  return [along, plus(times(c, out), [0, 0, s]), plus([0, 0, c], times(-s, out))];
}

/** A board near its cut, as a solid. The corner of the two faces is the origin. */
function boardFaces(half: number, cut: EndCut, board: CornerBoard, size: number): Face[] {
  const [along, across, through] = axesOf(half, cut);
  const section = [
    [0, 0],
    [0, -board.thickness],
    [board.width, -board.thickness],
    [board.width, 0],
  ] as const;
  const away = cut.end === "end" ? -size : size;
  const at = (x: number, [a, t]: readonly [number, number]): Vector =>
    plus(times(x, along), times(a, across), times(t, through));
  const near = section.map((point) =>
    at(-(cut.plane.across * point[0] + cut.plane.through * point[1]) / cut.plane.along, point),
  );
  const far = section.map((point) => at(away, point));
  const faces: Face[] = [
    { corners: near, sawn: true },
    { corners: [...far].reverse(), sawn: false },
    ...section.map((_, index): Face => {
      const next = (index + 1) % 4;
      return { corners: [near[index]!, far[index]!, far[next]!, near[next]!], sawn: false };
    }),
  ];
  // Corners go the other way round where the solid is a mirror image.
  const middle = times(1 / 8, plus(...near, ...far));
  const [a, b, c] = faces[0]!.corners as [Vector, Vector, Vector];
  const normal = cross(plus(b, times(-1, a)), plus(c, times(-1, a)));
  const isOutward = dotProduct(normal, plus(a, times(-1, middle))) > 0;
  return isOutward ? faces : faces.map((face) => ({ ...face, corners: [...face.corners].reverse() }));
}

function drawSolid(pad: Pad, faces: readonly Face[], view: View, place: (point: Point) => Point): void {
  for (const { corners, sawn } of faces) {
    const [a, b, c] = corners as [Vector, Vector, Vector];
    const normal = cross(plus(b, times(-1, a)), plus(c, times(-1, a)));
    if (dotProduct(normal, view.toEye) <= 0) continue;
    shape(pad, sawn ? "sawn" : "wood", corners.map(view.project).map(place));
  }
}

/** The plane's normal and the two level directions of the first board, from the corner of its face. */
function vectorsOf(half: number, size: number): { readonly name: string; readonly tip: Vector }[] {
  const [cosine, sine] = [Math.cos(rad(half)), Math.sin(rad(half))];
  return [
    { name: "C", tip: [0.85 * size, 0, 0] },
    { name: "along", tip: [0.6 * size * cosine, 0.6 * size * sine, 0] },
    { name: "outward", tip: [-0.75 * size * sine, 0.75 * size * cosine, 0] },
  ];
}

/** The corner, its boards drawn apart with the plane of the joint between them; of two equal boards also the vectors of the derivation. */
function drawCorner(
  corner: Corner,
  half: number,
  boards: readonly [CornerBoard, CornerBoard],
  hasVectors: boolean,
): Pad {
  const size = 1.7 * Math.max(boards[0].width, boards[1].width);
  const [first, second] = [
    boardFaces(half, corner.first, boards[0], size),
    boardFaces(half, corner.second, boards[1], size),
  ];
  const [along, across, through] = axesOf(half, corner.first);
  const { plane } = corner.first;
  // Out of the first board, toward the second.
  const normal = plus(times(plane.along, along), times(plane.across, across), times(plane.through, through));
  const gap = size * 0.17;
  const moved = (faces: readonly Face[], by: number): Face[] =>
    faces.map(({ corners, sawn }) => ({ sawn, corners: corners.map((point) => plus(point, times(by, normal))) }));
  const apart = [moved(first, -gap), moved(second, gap)] as const;
  // The plane, somewhat larger than the cut faces in it.
  const cutFace = [...first[0]!.corners, ...second[0]!.corners];
  const middle = times(1 / cutFace.length, plus(...cutFace));
  const acrossPlane = plus(across, times(-dotProduct(across, normal), normal));
  const u = times(1 / Math.hypot(...acrossPlane), acrossPlane);
  const v = cross(normal, u);
  const reach = (axis: Vector): readonly [number, number] => {
    const shares = cutFace.map((point) => dotProduct(plus(point, times(-1, middle)), axis));
    const margin = size * 0.14;
    return [Math.min(...shares) - margin, Math.max(...shares) + margin];
  };
  const [[u0, u1], [v0, v1]] = [reach(u), reach(v)];
  const sheet = [
    [u0, v0],
    [u1, v0],
    [u1, v1],
    [u0, v1],
  ].map(([a, b]) => plus(middle, times(a!, u), times(b!, v)));

  const view = viewFrom(-34, 38);
  const foot = times(-gap, normal);
  const vectors = hasVectors ? vectorsOf(half, size) : [];
  const tips = vectors.map(({ tip }) => plus(foot, tip));
  const everything = [...apart.flat().flatMap((face) => face.corners), ...sheet, ...tips].map(view.project);
  const { place } = fitInto(everything, { x: 20, y: 26, width: 400, height: 258 });
  const pad: Pad = [];
  // What lies beyond the joint plane is painted first.
  const secondIsNear = dotProduct(normal, view.toEye) > 0;
  drawSolid(pad, secondIsNear ? apart[0] : apart[1], view, place);
  shape(pad, "plane", sheet.map(view.project).map(place));
  drawSolid(pad, secondIsNear ? apart[1] : apart[0], view, place);
  vectors.forEach(({ name }, index) => {
    vectorArrow(pad, place(view.project(foot)), place(view.project(tips[index]!)), name);
  });
  // The ring runs to the left as seen from inside, so the first board is on the right.
  text(pad, { x: 14, y: SIZE.height - 10 }, "second board", { small: true });
  text(pad, { x: SIZE.width - 14, y: SIZE.height - 10 }, "first board", { anchor: "end", small: true });
  return pad;
}

/** Two equal boards of a splayed frame and the plane between them. */
export const planesFigure: Figure = defineFigure({
  name: "planes",
  legend: "Change the corner",
  size: SIZE,
  controls: {
    sides: sides(6),
    slope: angle("Slope", 40, -85, 90),
    thickness: length("Boards' thickness", 22, 4, 60),
  },
  draw: ({ sides: n, slope, thickness }, reader) => {
    const board = { slope, thickness, width: 100 };
    const half = 180 / n;
    const corner = joinCorner({ turn: 360 / n, first: board, second: board });
    return {
      svg: finish(
        drawCorner(corner, half, [board, board], true),
        SIZE,
        `A corner of a frame of ${n} sides at a slope of ${reader.angle(slope)}, drawn apart`,
        "The corner as seen from the frame's center and from above. Between the two boards stands the plane in which they meet; both cuts lie in it. Its normal C is level, and at half the turn from the first board's length; along and outward are that board's own level directions.",
      ),
      facts: [
        ["miter", reader.angle(corner.first.miter)],
        ["bevel", reader.angle(corner.first.bevel)],
        ["dihedral", reader.angle(corner.dihedral)],
        ["plan miter", reader.angle(half)],
      ],
    };
  },
});

/** Two boards of different slope and thickness. */
export const unequalFigure: Figure = defineFigure({
  name: "unequal",
  legend: "Change the boards",
  size: SIZE,
  controls: {
    turn: angle("Turn of the corner", 90, 20, 140),
    firstSlope: angle("First board's slope", 60, 10, 90),
    secondSlope: angle("Second board's slope", 45, 10, 90),
    firstThickness: length("First board's thickness", 18, 4, 60),
    secondThickness: length("Second board's thickness", 18, 4, 60),
  },
  draw: ({ turn, firstSlope, secondSlope, firstThickness, secondThickness }, reader) => {
    const first = { slope: firstSlope, thickness: firstThickness, width: 100 };
    // As high as the first, so that their outer edges meet as well.
    const height = first.width * Math.sin(rad(firstSlope));
    const second = { slope: secondSlope, thickness: secondThickness, width: height / Math.sin(rad(secondSlope)) };
    const corner = joinCorner({ turn, first, second });
    return {
      svg: finish(
        drawCorner(corner, turn / 2, [first, second], false),
        SIZE,
        "A corner between two boards of different slope and thickness, drawn apart",
        "The corner as seen from inside the ring and from above, with the plane that holds the line where the faces meet and the line where the backs meet.",
      ),
      facts: [
        ["first board's miter", reader.angle(corner.first.miter)],
        ["first board's bevel", reader.angle(corner.first.bevel)],
        ["second board's miter", reader.angle(corner.second.miter)],
        ["second board's bevel", reader.angle(corner.second.bevel)],
        ["dihedral", reader.angle(corner.dihedral)],
      ],
    };
  },
});
