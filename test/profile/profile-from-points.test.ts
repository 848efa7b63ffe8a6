import fc from "fast-check";
import type { Point } from "miterwright/errors";
import { profileFromPoints, sectionArea, type Profile, type ProfilePoints } from "miterwright/profile";
import { describe, expect, expectTypeOf, test } from "vitest";
import { exact } from "../exact.js";
import { between, deepFrozen } from "../laws/profile.js";
import { HARD_OUTLINES } from "./hard-outlines.js";
import { refuses } from "./refusals.js";

const square: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 2, y: 0 },
  { x: 2, y: 2 },
  { x: 0, y: 2 },
];

/** Twice the signed area, positive counter-clockwise. */
const winding = (outline: readonly Point[]): number =>
  outline.reduce((sum, { x, y }, index) => sum + outline.at(index - 1)!.x * y - outline.at(index - 1)!.y * x, 0);

describe("profileFromPoints", () => {
  test("keeps a sound outline as it is", () => {
    expect(profileFromPoints({ outline: square, arrises: {}, madeFor: 30 })).toEqual({
      outline: square,
      arrises: {},
      madeFor: 30,
    });
    expect(profileFromPoints({ outline: square, arrises: {} })).not.toHaveProperty("madeFor");
  });

  test("turns a clockwise outline round and keeps its first corner", () => {
    const [a, b, c, d] = square as [Point, Point, Point, Point];
    expect(profileFromPoints({ outline: [a, d, c, b], arrises: {} }).outline).toEqual([a, b, c, d]);
  });

  test("drops repeated corners, at the end and in a row", () => {
    const [a, b, c, d] = square as [Point, Point, Point, Point];
    expect(profileFromPoints({ outline: [a, a, b, c, c, c, d, a, a], arrises: {} }).outline).toEqual(square);
  });

  test("takes arrises as points on the outline or as indexes of the corners as given", () => {
    const [a, b, c, d] = square as [Point, Point, Point, Point];
    const { arrises } = profileFromPoints({
      outline: [a, a, d, c, b],
      arrises: { last: 4, third: 2, middle: { x: 1, y: 2 }, "": 0 },
    });
    expect(arrises).toEqual({ last: b, third: d, middle: { x: 1, y: 2 }, "": a });
  });

  test("takes an arris on a sloping edge, which rounding puts beside it", () => {
    const outline = [
      { x: 0, y: 0 },
      { x: 3, y: 0.7 },
      { x: 1, y: 2 },
    ];
    const arris = { x: 0.1 * 3, y: 0.1 * 0.7 };
    expect(profileFromPoints({ outline, arrises: { arris } }).arrises.arris).toEqual(arris);
    const off = { x: arris.x, y: arris.y - 1e-7 };
    expect(() => profileFromPoints({ outline, arrises: { off } })).toThrow(
      "Expected `arrises.off` to lie on the outline, got a point off it",
    );
  });

  test.each(HARD_OUTLINES)("judges $name exactly", ({ outline, meet }) => {
    const make = (): unknown => profileFromPoints({ outline, arrises: {} });
    if (meet === null) expect(make).not.toThrow();
    else {
      expect(make).toThrow(
        `Expected \`outline\` not to cross or touch itself, but the edges from its points ${meet[0]} and ${meet[1]} meet`,
      );
    }
  });

  test.each(HARD_OUTLINES)("judges $name the same from any corner, either way round, mirrored", ({ outline, meet }) => {
    outline.forEach((_, start) => {
      const turned = [...outline.slice(start), ...outline.slice(0, start)];
      for (const way of [turned, [...turned].reverse(), turned.map(({ x, y }) => ({ x: y, y: x }))]) {
        const make = (): Profile => profileFromPoints({ outline: way, arrises: {} });
        if (meet === null) expect(make().outline).toHaveLength(outline.length);
        else expect(make).toThrow("not to cross or touch itself");
      }
    });
  });

  test("finds on a grid what comparing every two edges by whole numbers finds", () => {
    const grid = fc.array(fc.record({ x: fc.nat(6), y: fc.nat(6) }), { minLength: 3, maxLength: 7 });
    const verdicts = { sound: 0, crossing: 0 };
    fc.assert(
      fc.property(grid, (outline) => {
        fc.pre(outline.every(({ x, y }, index) => outline.at(index - 1)!.x !== x || outline.at(index - 1)!.y !== y));
        if (isSimple(outline)) {
          verdicts.sound++;
          const profile = profileFromPoints({ outline, arrises: {} });
          expect(winding(profile.outline)).toBe(Math.abs(winding(outline)));
        } else {
          verdicts.crossing++;
          expect(() => profileFromPoints({ outline, arrises: {} })).toThrow("not to cross or touch itself");
        }
      }),
      { numRuns: 1000, endOnFailure: true },
    );
    expect(Math.min(verdicts.sound, verdicts.crossing)).toBeGreaterThan(100);
  });

  test("tells by the last bit on which side of an edge a corner lies, at any scale", () => {
    const nearCase = fc.record({
      start: fc.record({ x: between(1, 2), y: between(1, 2) }),
      end: fc.record({ x: between(50, 99), y: between(10, 30) }),
      share: between(0.1, 0.9),
      nudge: fc.integer({ min: -2, max: 2 }),
      scale: fc.constantFrom(1, 2 ** -520, 2 ** -530),
    });
    const sides = { left: 0, right: 0 };
    fc.assert(
      fc.property(nearCase, ({ start, end, share, nudge, scale }) => {
        const small = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
        const [a, b] = [small(start), small(end)];
        const y = start.y + share * (end.y - start.y);
        const p = small({ x: start.x + share * (end.x - start.x), y: y + nudge * Number.EPSILON * 4 });
        // The sign of (b - a) x (p - a), in 60 digits: the products of doubles of one size need some 40.
        const [ax, ay] = [exact(a.x), exact(a.y)];
        const left = exact(b.x).minus(ax).times(exact(p.y).minus(ay));
        const right = exact(b.y).minus(ay).times(exact(p.x).minus(ax));
        const outline = [a, b, { x: 50, y: 200 }, p, { x: -50, y: 150 }];
        if (left.gt(right)) {
          sides.left++;
          expect(profileFromPoints({ outline, arrises: {} }).outline).toEqual(outline);
        } else {
          sides.right++;
          expect(() => profileFromPoints({ outline, arrises: {} })).toThrow("not to cross or touch itself");
        }
      }),
      { numRuns: 3000, endOnFailure: true },
    );
    expect(Math.min(sides.left, sides.right)).toBeGreaterThan(300);
  });

  test("has the area that Pick's theorem counts: lattice points inside, and half of those on the outline, less one", () => {
    const grid = fc.array(fc.record({ x: fc.nat(8), y: fc.nat(8) }), { minLength: 3, maxLength: 7 });
    let sound = 0;
    fc.assert(
      fc.property(grid, (outline) => {
        if (!isSimple(outline)) return;
        sound++;
        let twice = -2;
        for (let x = 0; x <= 8; x++) for (let y = 0; y <= 8; y++) twice += countOf(outline, x, y);
        expect(sectionArea(profileFromPoints({ outline, arrises: {} }))).toBeCloseTo(twice / 2, 12);
      }),
      { numRuns: 500 },
    );
    expect(sound).toBeGreaterThan(50);
  });

  test("judges a long outline, of which it compares neighbors only", () => {
    const wave = Array.from({ length: 20_000 }, (_, index) => ({ x: index / 100, y: 10 + Math.sin(index / 50) }));
    const outline = [...wave, { x: 200, y: 0 }, { x: 0, y: 0 }];
    expect(profileFromPoints({ outline, arrises: {} }).outline).toHaveLength(20_002);
    const crossed = outline.map((point, index) => (index === 10_000 ? { x: 100, y: -1 } : point));
    expect(() => profileFromPoints({ outline: crossed, arrises: {} })).toThrow("points 9999 and 20000 meet");
  });

  test("does not touch what it is given", () => {
    expect(
      profileFromPoints(deepFrozen({ outline: [...square].reverse(), arrises: { corner: 1 } })).arrises.corner,
    ).toEqual({ x: 2, y: 2 });
  });

  test("types its arrises by the names that were given", () => {
    expectTypeOf(profileFromPoints({ outline: square, arrises: { lip: 0, back: { x: 2, y: 2 } } })).toEqualTypeOf<
      Profile<"lip" | "back">
    >();
    const plain = profileFromPoints({ outline: square, arrises: {} });
    // @ts-expect-error -- no such arris
    expect(plain.arrises.lip).toBeUndefined();
  });
});

describe("profileFromPoints refuses", () => {
  const at = (options: unknown) => () => profileFromPoints(options as ProfilePoints);
  const three = "an outline of three or more different points";
  refuses([
    ["Expected `options` to be an object, got undefined", "missing", "options", at(undefined)],
    ["Expected `outline` to be an array of points, got undefined", "missing", "outline", at({})],
    [
      "Expected `outline[1].x` to be a finite distance (-1e100 to 1e100), got NaN (number)",
      "range",
      "outline[1].x",
      at({ outline: [square[0], { x: NaN, y: 0 }] }),
    ],
    [`Expected \`outline\` to be ${three}, got 0`, "range", "outline", at({ outline: [], arrises: {} })],
    [
      `Expected \`outline\` to be ${three}, got 2`,
      "range",
      "outline",
      at({ outline: [square[0], square[1], square[0]], arrises: {} }),
    ],
    [
      "Expected `outline` to be at least 1e-100 wide and high, got an array of 4",
      "range",
      "outline",
      at({ outline: square.map(({ x, y }) => ({ x, y: y * 1e-101 })), arrises: {} }),
    ],
    [
      "Expected `outline` not to cross or touch itself, but the edges from its points 0 and 3 meet",
      "impossible",
      "outline",
      at({ outline: [square[0], square[0], square[2], square[1], square[3]], arrises: {} }),
    ],
    ["Expected `arrises` to be an object, got undefined", "missing", "arrises", at({ outline: square })],
    [
      "Expected `arrises.lip` to be an integer from 0 to 3, got 4 (number)",
      "range",
      "arrises.lip",
      at({ outline: square, arrises: { lip: 4 } }),
    ],
    [
      "Expected `arrises.lip` to be an integer from 0 to 3, got 0.5 (number)",
      "integer",
      "arrises.lip",
      at({ outline: square, arrises: { lip: 0.5 } }),
    ],
    [
      'Expected `arrises.lip` to be an object, got "left" (string)',
      "type",
      "arrises.lip",
      at({ outline: square, arrises: { lip: "left" } }),
    ],
    [
      "Expected `arrises.lip` to lie on the outline, got a point off it",
      "impossible",
      "arrises.lip",
      at({ outline: square, arrises: { lip: { x: 1, y: 1 } } }),
    ],
    [
      "Expected `madeFor` to be degrees from -90 to 90, got 120 (number)",
      "range",
      "madeFor",
      at({ outline: square, arrises: {}, madeFor: 120 }),
    ],
  ]);
});

/** Whether two edges with corners on a grid have a point in common: their lines' meeting point as fractions, or their shadows. */
function share(a: Point, b: Point, c: Point, d: Point): boolean {
  const cross = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
  const offset = (c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x);
  if (cross === 0) {
    if (offset !== 0) return false;
    const apart = (axis: "x" | "y"): boolean =>
      Math.max(a[axis], b[axis]) < Math.min(c[axis], d[axis]) ||
      Math.max(c[axis], d[axis]) < Math.min(a[axis], b[axis]);
    return !apart("x") && !apart("y");
  }
  const first = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) * Math.sign(cross);
  const second = offset * Math.sign(cross);
  return 0 <= first && first <= Math.abs(cross) && 0 <= second && second <= Math.abs(cross);
}

/** Whether an outline on a grid is simple, by comparing every two edges. */
function isSimple(outline: readonly Point[]): boolean {
  const n = outline.length;
  const at = (index: number): Point => outline[index % n]!;
  for (let i = 0; i < n; i++) {
    if (at(i).x === at(i + 1).x && at(i).y === at(i + 1).y) return false;
    for (let j = i + 2; j < n; j++) {
      if (!(i === 0 && j === n - 1) && share(at(i), at(i + 1), at(j), at(j + 1))) return false;
    }
    // Neighbors may share their corner only: not when they point back the same way.
    const [u, v] = [
      { x: at(i).x - at(i + 1).x, y: at(i).y - at(i + 1).y },
      { x: at(i + 2).x - at(i + 1).x, y: at(i + 2).y - at(i + 1).y },
    ];
    if (u.x * v.y === u.y * v.x && u.x * v.x + u.y * v.y > 0) return false;
  }
  return true;
}

/** 2 for a lattice point inside an outline on a grid, 1 for one on it, 0 outside. */
function countOf(outline: readonly Point[], x: number, y: number): 0 | 1 | 2 {
  const point = { x, y };
  let inside = false;
  for (const [index, end] of outline.entries()) {
    const start = outline.at(index - 1)!;
    if (share(start, end, point, point)) return 1;
    if (start.y > y !== end.y > y && x < start.x + ((y - start.y) * (end.x - start.x)) / (end.y - start.y))
      inside = !inside;
  }
  return inside ? 2 : 0;
}
