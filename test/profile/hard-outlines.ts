import type { Point } from "miterwright/errors";

/** An outline that is hard to judge. */
export interface HardOutline {
  /** What is hard about it. */
  readonly name: string;
  /** Its corners. */
  readonly outline: readonly Point[];
  /** The starting points of two edges that meet where they must not, or `null` when the outline is sound. */
  readonly meet: readonly [number, number] | null;
}

const points = (...coordinates: [number, number][]): Point[] => coordinates.map(([x, y]) => ({ x, y }));

/** An outline with an edge from a to b, of some 2^-510, and a corner at p, between two that are far away. */
const amongSubnormals = (...near: [number, number][]): Point[] => {
  const [a, b, p] = near.map(([x, y]) => ({ x: x * 2 ** -516, y: y * 2 ** -516 }));
  return [a!, b!, { x: 0, y: 1e-90 }, p!, { x: -1e-90, y: 5e-91 }];
};

/** The number next to 1, which differs from it in the last bit. */
const AFTER_ONE = 1 + Number.EPSILON;
const BEFORE_ONE = 1 - Number.EPSILON / 2;

/** Outlines on the brink of crossing or touching themselves. Arranged for this test; the verdicts follow from exact arithmetic. */
export const HARD_OUTLINES: readonly HardOutline[] = [
  { name: "a bow tie", outline: points([0, 0], [2, 2], [2, 0], [0, 2]), meet: [0, 2] },
  { name: "a corner on the opposite edge", outline: points([0, 0], [2, 0], [2, 2], [1, 0], [0, 2]), meet: [0, 2] },
  { name: "a corner the last bit above it", outline: points([0, 0], [2, 0], [2, 2], [1, 5e-324], [0, 2]), meet: null },
  {
    name: "a corner the last bit below it",
    outline: points([0, 0], [2, 0], [2, 2], [1, -5e-324], [0, 2]),
    meet: [0, 2],
  },
  // The corner (1/2, 1/2) is on the diagonal; its neighbors in floating point are on either side of it.
  { name: "a corner on the diagonal", outline: points([0, 0], [1, 1], [0, 1], [0.5, 0.5], [0, 0.4]), meet: [0, 2] },
  {
    name: "a corner a last bit above the diagonal",
    outline: points([0, 0], [1, 1], [0, 1], [0.5, AFTER_ONE / 2], [0, 0.4]),
    meet: null,
  },
  {
    name: "a corner a last bit below the diagonal",
    outline: points([0, 0], [1, 1], [0, 1], [0.5, BEFORE_ONE / 2], [0, 0.4]),
    meet: [0, 2],
  },
  // 12 and 24 are corners of the line y = x; the determinant of a point near (1/2, 1/2) is pure rounding in doubles.
  {
    name: "a corner a last bit beside a far longer diagonal",
    outline: points([12, 12], [24, 24], [0, 24], [0.5, AFTER_ONE / 2], [0, 0]),
    meet: null,
  },
  { name: "a spike", outline: points([0, 0], [4, 0], [4, 2], [4, 1], [0, 2]), meet: [1, 2] },
  {
    name: "a spike at the first corner",
    outline: points([4, 3], [4, 1], [0, 2], [0, 0], [4, 0], [4, 2]),
    meet: [0, 4],
  },
  {
    name: "a spike that runs back past its start",
    outline: points([4, 1], [4, 2], [4, 0], [0, 0], [0, 2]),
    meet: [0, 1],
  },
  {
    name: "a corner on an edge that comes later",
    outline: points([0, 2], [1, 0], [2, 2], [2, 0], [0, 0]),
    meet: [0, 3],
  },
  { name: "a first corner on an edge", outline: points([1, 0], [2, 2], [2, 0], [0, 0], [0, 2]), meet: [0, 2] },
  { name: "nothing but a line", outline: points([0, 0], [1, 1], [2, 2]), meet: [0, 2] },
  { name: "nothing but a line there and back", outline: points([0, 0], [2, 2], [3, 3], [1, 1]), meet: [0, 2] },
  { name: "the same corner twice", outline: points([0, 0], [2, 0], [1, 1], [2, 2], [0, 2], [1, 1]), meet: [1, 4] },
  { name: "an edge along another", outline: points([0, 0], [4, 0], [4, 1], [3, 0], [1, 0], [0, 1]), meet: [0, 2] },
  {
    name: "corners in a row on one line",
    outline: points([0, 0], [1, 0], [2, 0], [2, 1], [2, 2], [0, 2], [0, 1]),
    meet: null,
  },
  {
    name: "a slot a last bit wide",
    outline: points([0, 0], [2, 0], [2, 1], [1, 1], [2, AFTER_ONE], [2, 2], [0, 2]),
    meet: null,
  },
  {
    name: "huge coordinates",
    outline: points([-1e100, -1e100], [1e100, -1e100], [1e100, 1e100], [-1e100, 1e100]),
    meet: null,
  },
  { name: "tiny coordinates", outline: points([0, 0], [1e-100, 0], [1e-100, 1e-100], [0, 1e-100]), meet: null },
  {
    name: "tiny coordinates, crossing",
    outline: points([0, 0], [1e-100, 1e-100], [1e-100, 0], [0, 1e-100]),
    meet: [0, 2],
  },
  {
    name: "a sliver whose product underflows",
    outline: points([0, 0], [1e-100, 0], [1e-100, 1e-100], [5e-101, 1e-250], [0, 1e-100]),
    meet: null,
  },
  // Products of subnormal size have fewer digits than others, so that even their sign can be rounding.
  {
    name: "a corner just above an edge, where products are subnormal",
    outline: amongSubnormals([1.186, 1.916], [54, 17], [17.0302, 6.4412]),
    meet: null,
  },
  {
    name: "a corner just below an edge, where products are subnormal",
    outline: amongSubnormals([1.245, 1.744], [62, 11], [25.547000000000004, 5.446400000000001]),
    meet: [0, 2],
  },
];
