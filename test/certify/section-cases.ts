import { frameGeometry } from "miterwright/frame";
import { levelWidth, sectionAt } from "miterwright/profile";
import { deriveSection } from "../../src/precise/section.js";
import { derivePieceLength } from "../../src/precise/piece-length.js";
import { cosine, sine } from "./cancellation.js";
import type { Case } from "./comparison.js";
import { exactly } from "./exact.js";
import { someLength, someSides, someSlope, type Random } from "./random.js";

interface Point {
  readonly x: number;
  readonly y: number;
}

const exactPoint = ({ x, y }: Point): { x: ReturnType<typeof exactly>; y: ReturnType<typeof exactly> } => ({
  x: exactly(x),
  y: exactly(y),
});

/** What a point's level distance outward is the sum of, in magnitude; its height likewise with x and y exchanged. */
const outTerms = ({ x, y }: Point, slope: number): number => Math.abs(x * cosine(slope)) + Math.abs(y * sine(slope));

/** An outline for a profile of which only the arrises are looked at. */
const ANY_OUTLINE: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 0, y: 1 },
];

/** Where a point of a section stands, and the level width between two of them. */
function sectionCase(from: Point, to: Point, slope: number): Case {
  return {
    input: { from, to, slope },
    compare: (field) => {
      const profile = { outline: ANY_OUTLINE, arrises: { from, to } };
      const place = sectionAt(profile, slope).arrises.to;
      const want = deriveSection(field, exactPoint(to), exactly(slope));
      const start = deriveSection(field, exactPoint(from), exactly(slope));
      return [
        { quantity: "section out", got: place.out, want: want.out, terms: outTerms(to, slope) },
        { quantity: "section up", got: place.up, want: want.up, terms: outTerms({ x: to.y, y: to.x }, slope) },
        {
          quantity: "level width",
          got: levelWidth(profile, { slope, from: "from", to: "to" }),
          want: field.sub(want.out, start.out),
          terms: outTerms(from, slope) + outTerms(to, slope),
        },
      ];
    },
  };
}

/** The piece of a regular frame, measured at the arris that the opening is given at and at another one. */
function pieceCase(sides: number, apothem: number, slope: number, width: number, thickness: number): Case {
  const [on, at] = [
    { x: 0, y: 0 },
    { x: width, y: thickness },
  ];
  return {
    input: { sides, apothem, slope, width, thickness },
    compare: (field) => {
      const outline = [on, { x: width, y: 0 }, at, { x: 0, y: thickness }];
      const profile = { outline, arrises: { sight: on, outer: at } };
      const [piece] = frameGeometry<"sight" | "outer">({
        sides,
        slope,
        profile,
        opening: { apothem },
        at: "sight",
      }).pieces;
      const exact = { sides, apothem: exactly(apothem), slope: exactly(slope), on: exactPoint(on) };
      const inner = derivePieceLength(field, { ...exact, at: exactPoint(on) });
      const outer = derivePieceLength(field, { ...exact, at: exactPoint(at) });
      const tangent = Math.tan(Math.PI / sides);
      return [
        { quantity: "piece length where given", got: piece.lengths.sight, want: inner },
        {
          quantity: "piece length elsewhere",
          got: piece.lengths.outer,
          want: outer,
          terms: 2 * tangent * (apothem + outTerms(at, slope)),
        },
      ];
    },
  };
}
export function sectionGrid(): Case[] {
  const slopes = [0, 1e-300, 1e-9, 15, 30, 45, 52, 60, 89.9, 90 - 1e-9, 90];
  const points = [
    { x: 0, y: 0 },
    { x: 40, y: 20 },
    { x: -8, y: 1e-3 },
    { x: 1e100, y: 1e-100 },
    { x: 1, y: 1 },
  ];
  const sections = [...slopes, ...slopes.map((slope) => -slope)].flatMap((slope) =>
    points.flatMap((from) => points.map((to) => sectionCase(from, to, slope))),
  );
  const pieces = [3, 4, 5, 6, 7, 8, 12, 100, 1000].flatMap((n) =>
    slopes.flatMap((slope) => [pieceCase(n, 100, slope, 40, 20), pieceCase(n, 30.5, -slope, 8, 3)]),
  );
  return [...sections, ...pieces];
}
export function someSection(random: Random): Case {
  const size = someLength(random);
  const coordinate = (): number => {
    const magnitude = random.chance(0.8) ? size * random.between(0, 1) : someLength(random);
    return random.pick([1, -1]) * magnitude;
  };
  const point = (): Point => ({ x: coordinate(), y: coordinate() });
  return sectionCase(point(), point(), someSlope(random));
}
export function somePiece(random: Random): Case {
  const unit = random.chance(0.5) ? random.power(-2, 4) : random.power(-95, 95);
  const width = unit * random.between(0.01, 1);
  const thickness = unit * random.between(0.01, 1);
  // Large enough that no slope makes the frame close.
  // A frame has at most 1000 sides.
  return pieceCase(Math.min(1000, someSides(random)), unit * random.power(0.5, 4), someSlope(random), width, thickness);
}
