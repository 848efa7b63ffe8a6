import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { closingPiece, glueUp, halfRings, ringClosure, type GlueUp, type MeasuredPiece } from "miterwright/closure";
import { lastJoint } from "../../src/closure/last-joint.js";
import { compoundMiter } from "miterwright/miter";
import { evenlyFlawed, frozen, inMirror, measuredRing, unevenlyFlawed, type FlawedRing } from "../laws/closure.js";
import { assemble, less, moved, RADIAN } from "./assemble.js";

/** The same ring with an even number of pieces. */
function evened(flawed: FlawedRing): FlawedRing {
  const sides = Math.max(4, flawed.sides - (flawed.sides % 2));
  return {
    ...flawed,
    sides,
    errors: Array.from({ length: sides }, (_, index) => flawed.errors[index % flawed.sides]!),
  };
}

describe("half rings", () => {
  test("of equal pieces lose a wedge of a quarter of the open angle at every end, at the side that does not gape", () => {
    fc.assert(
      fc.property(evenlyFlawed.map(evened), (flawed) => {
        const ring = measuredRing(flawed);
        const { angle, slope } = ringClosure(ring);
        const { halves, loss } = halfRings(ring);
        const { jointLine } = assemble(
          ring.pieces,
          ring.pieces.map(() => ({
            slope: flawed.slope,
            at: 0,
            width: flawed.width,
            wood: { width: 9, thickness: 9 },
          })),
        );
        const wedge = jointLine * Math.sin((Math.abs(angle) / 4) * RADIAN);
        // The line of the width is level at the planned slope, and leans a little where the ring closes at another one.
        const leaning = wedge * Math.abs(slope - flawed.slope) * RADIAN + 1e-9 * flawed.length;
        for (const { start, end, depth } of halves) {
          for (const trim of [start, end]) {
            const [kept, lost] = angle > 0 ? [trim.outside, trim.inside] : [trim.inside, trim.outside];
            expect(kept).toBeLessThan(1e-9 * flawed.length);
            expect(Math.abs(lost - wedge)).toBeLessThan(leaning);
          }
          expect(Math.abs(depth - wedge)).toBeLessThan(leaning);
        }
        expect(Math.abs(loss - 2 * wedge)).toBeLessThan(2 * leaning);
      }),
    );
  });

  test("of flat pieces, whatever their errors, are straight where the trims are taken off, and nothing less would do", () => {
    fc.assert(
      fc.property(unevenlyFlawed, (uneven) => {
        const flawed = { ...evened(uneven), slope: 0 };
        const errors = flawed.errors.map(({ start, end, length }) => ({
          start: { ...start, bevel: 0 },
          end: { ...end, bevel: 0 },
          length,
        }));
        const ring = measuredRing({ ...flawed, errors });
        const at = ring.at === "inside" ? 0 : ring.at === "outside" ? ring.width : ring.at;
        const spacings: [number, number][] = [];
        for (const half of halfRings(ring).halves) {
          const pieces = ring.pieces.slice(half.from, half.to + 1);
          const sections = pieces.map(() => ({ slope: 0, at, width: ring.width, wood: { width: 9, thickness: 9 } }));
          const { poses, blanks } = assemble(pieces, sections);
          const points = [
            ...[blanks[0]!.start.inside, blanks[0]!.start.outside].map((point) => moved(poses[0]!, point)),
            ...[blanks.at(-1)!.end.inside, blanks.at(-1)!.end.outside].map((point) => moved(poses.at(-1)!, point)),
          ];
          const trims = [half.start.inside, half.start.outside, half.end.inside, half.end.outside];
          // One point at each end is left standing; the line through these two has the others at their trims beyond it.
          const standing = [half.start, half.end].map(({ inside, outside }, index) => {
            expect(Math.min(inside, outside)).toBe(0);
            return 2 * index + (inside === 0 ? 0 : 1);
          });
          const [a, b] = standing.map((index) => points[index]!);
          const size = Math.hypot(b![0] - a![0], b![1] - a![1]);
          for (const [index, point] of points.entries()) {
            const beyond = ((b![0] - a![0]) * (point[1] - a![1]) - (b![1] - a![1]) * (point[0] - a![0])) / size;
            expect(Math.abs(beyond - trims[index]!)).toBeLessThan(1e-9 * flawed.length * flawed.sides);
          }
          expect(half.depth).toBe(Math.max(...trims));
          // Every arris goes on along its piece until it meets that line.
          const line = [(b![0] - a![0]) / size, (b![1] - a![1]) / size] as const;
          const met = points.map((point, index) => {
            const pose = poses.at(index < 2 ? 0 : -1)!;
            const direction = less(moved(pose, [1, 0, 0]), moved(pose, [0, 0, 0]));
            // Cramer's rule for point + t direction = a + s line.
            const [dx, dy] = [a![0] - point[0], a![1] - point[1]];
            const slant = direction[1] * line[0] - direction[0] * line[1];
            return (direction[0] * dy - direction[1] * dx) / slant;
          });
          spacings.push([Math.abs(met[2]! - met[0]!), Math.abs(met[3]! - met[1]!)]);
        }
        const steps = [0, 1].map((arris) => Math.abs(spacings[0]![arris]! - spacings[1]![arris]!));
        expect(Math.abs(halfRings(ring).mismatch - Math.max(...steps))).toBeLessThan(
          1e-9 * flawed.length * flawed.sides,
        );
      }),
    );
  });

  test("of pieces that are longer in one half leave a step where they meet", () => {
    const cut = { miter: 30, bevel: 0 };
    const ring = (lengths: readonly number[]): Parameters<typeof halfRings>[0] => ({
      pieces: lengths.map((length) => ({ length, start: cut, end: cut })),
      at: "outside",
      width: 40,
    });
    // Half a hexagon is twice its side wide.
    expect(halfRings(ring([100, 100, 100, 110, 110, 110])).mismatch).toBeCloseTo(20, 9);
    expect(halfRings(ring([100, 100, 100, 110, 110, 110])).loss).toBeCloseTo(0, 9);
    expect(halfRings(ring([100, 110, 120, 100, 110, 120])).mismatch).toBeCloseTo(0, 9);
  });

  test("scaled, mirrored, from JSON", () => {
    const flawed = fc.sample(unevenlyFlawed.map(evened), 20);
    for (const one of flawed) {
      const ring = frozen(measuredRing(one));
      const result = halfRings(ring);
      expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      const scaled = halfRings({
        ...ring,
        at: typeof ring.at === "number" ? ring.at * 8 : ring.at,
        width: ring.width * 8,
        pieces: ring.pieces.map((piece) => ({ ...piece, length: piece.length * 8 })),
      });
      expect(scaled.loss).toBe(result.loss * 8);
      const mirrored = halfRings({ ...ring, pieces: inMirror(ring.pieces) });
      expect(mirrored.loss).toBeCloseTo(result.loss, 9);
      expect(mirrored.halves[0].start.inside).toBeCloseTo(result.halves[1].end.inside, 9);
    }
  });
});

describe("a closing piece", () => {
  /** The ring without its last piece, closed by the piece that is made for it. */
  function closed(flawed: FlawedRing, share = 1): { angle: number; level: number; step: number } {
    const ring = measuredRing(flawed, share);
    const rest = { ...ring, pieces: ring.pieces.slice(0, -1) };
    const piece = closingPiece(rest);
    if (!piece.possible) throw new Error(piece.reason);
    const { angle, vector } = ringClosure({ ...ring, pieces: [...rest.pieces, piece.piece] });
    return { angle, level: Math.hypot(vector.along, vector.out), step: Math.abs(vector.up) };
  }

  test("closes a flat ring whatever its errors", () => {
    fc.assert(
      fc.property(unevenlyFlawed, (flawed) => {
        const errors = flawed.errors.map(({ start, end, length }) => ({
          start: { ...start, bevel: 0 },
          end: { ...end, bevel: 0 },
          length,
        }));
        const { angle, level, step } = closed({ ...flawed, slope: 0, errors });
        expect(Math.abs(angle)).toBeLessThan(1e-9);
        expect(level / flawed.length).toBeLessThan(1e-9);
        expect(step).toBe(0);
      }),
    );
  });

  test("closes a splayed ring but for the square of its errors, and for its twist, which no straight piece takes out", () => {
    fc.assert(
      fc.property(unevenlyFlawed, fc.constantFrom(1, 0.1, 0.01), (flawed, share) => {
        const error = flawed.sides * share;
        const { angle, level, step } = closed(flawed, share);
        expect(Math.abs(angle)).toBeLessThan(2 * error * error * RADIAN + 1e-9);
        expect(level / (flawed.length * flawed.sides)).toBeLessThan(2 * error * error * RADIAN * RADIAN + 1e-9);
        expect(step / (flawed.length * flawed.sides)).toBeLessThan(2 * error * RADIAN);
      }),
    );
  });

  test("for a ring without errors is the piece that is missing", () => {
    fc.assert(
      fc.property(evenlyFlawed, (flawed) => {
        const ring = measuredRing(flawed, 0);
        const missing = ring.pieces[0]!;
        const piece = closingPiece({ ...ring, pieces: ring.pieces.slice(1) });
        if (!piece.possible) throw new Error(piece.reason);
        expect(piece.piece.length / missing.length).toBeCloseTo(1, 9);
        for (const end of ["start", "end"] as const) {
          expect(piece.piece[end].miter).toBeCloseTo(missing[end].miter, 8);
          expect(piece.piece[end].bevel).toBeCloseTo(missing[end].bevel, 8);
        }
        expect(piece.slope).toBeCloseTo(flawed.slope, 8);
      }),
    );
  });

  test("in a flat ring has what the other joints leave of a full turn", () => {
    const cut = { miter: 180 / 7 - 0.1, bevel: 0 };
    const piece = { length: 200, start: cut, end: cut };
    const last = closingPiece(frozen({ pieces: Array.from({ length: 6 }, () => piece), at: "inside", width: 40 }));
    if (!last.possible) throw new Error(last.reason);
    // Five joints turn by two miters each, and at the piece's ends stand one each.
    expect(last.piece.start.miter + last.piece.end.miter).toBeCloseTo(360 - 12 * cut.miter, 9);
    expect(last.piece.start.miter).toBeCloseTo(last.piece.end.miter, 9);
    expect(JSON.parse(JSON.stringify(last))).toEqual(last);
  });

  test("does not exist where the open ends look away from each other or lie on each other", () => {
    const cut = (miter: number): { miter: number; bevel: number } => ({ miter, bevel: 0 });
    const piece = (start: number, end: number): MeasuredPiece => ({ length: 100, start: cut(start), end: cut(end) });
    expect(closingPiece({ pieces: [piece(-80, 0), piece(0, -80)], at: 0, width: 20 })).toEqual({
      possible: false,
      reason: "ends-turned-away",
    });
    // Three sides of a triangle are closed already.
    const triangle = [piece(60, 60), piece(60, 60), piece(60, 60)];
    const whole = closingPiece({ pieces: triangle, at: 0, width: 20 });
    expect(whole.possible && whole.piece.length > 1e-9).toBe(false);
  });
});

describe("closed forms for equal pieces", () => {
  /** Pieces whose flat ring is open by an angle: the miter of every cut is off by its 2n-th part. */
  function opened(sides: number, slope: number, angle: number): MeasuredPiece[] {
    const { miter, bevel } = compoundMiter({ turn: (360 - angle) / sides, slope });
    const cut = { miter, bevel };
    return Array.from({ length: sides }, () => ({ length: 200, start: cut, end: cut }));
  }
  const anyAngle = fc.double({ min: 0.01, max: 2, noNaN: true });
  const anySlope = fc.constantFrom(0, 20, 45, 75, -30, 90, -90);

  test("say what half rings lose, put together", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), anySlope, anyAngle, (pairs, slope, angle) => {
        for (const signed of [angle, -angle]) {
          const sides = 2 * pairs;
          const { loss } = halfRings({ pieces: opened(sides, slope, signed), at: "inside", width: 40, slope });
          const planned = lastJoint(sides, 40, 200, angle);
          if (planned.made !== "trimmed-halves" || planned.trim === null) throw new Error(planned.made);
          expect(planned.loss).toBe(2 * planned.trim);
          // The joint line of the ring as it is cut is a little shorter or longer than the planned one.
          expect(planned.trim / (loss / 2)).toBeCloseTo(1, 1);
          const line = Math.cos(((360 - signed) / sides / 2) * RADIAN) / Math.cos(Math.PI / sides);
          expect((planned.trim / (loss / 2)) * (1 / line)).toBeCloseTo(1, 8);
        }
      }),
    );
  });

  test("say how far a closing piece is off, cut to fit", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), anySlope, anyAngle, (pairs, slope, angle) => {
        const sides = 2 * pairs + 1;
        const pieces = [angle, -angle].map((signed) => {
          const pieces = opened(sides, slope, signed).slice(1);
          const piece = closingPiece({ pieces, at: "inside", width: 40, slope });
          if (!piece.possible) throw new Error(piece.reason);
          const { miter, bevel } = piece.piece.end;
          // Seen from above, a cut is swung by the angle of which its flat miter and bevel are the sides.
          const [c, s] = [Math.cos(slope * RADIAN), Math.sin(slope * RADIAN)];
          const [out, up] = [Math.cos(bevel * RADIAN) * Math.sin(miter * RADIAN), Math.sin(bevel * RADIAN)];
          const plan = Math.atan2(out * c + up * s, Math.cos(bevel * RADIAN) * Math.cos(miter * RADIAN)) / RADIAN;
          return { length: Math.abs(piece.piece.length - 200), planMiter: Math.abs(plan - 180 / sides) };
        });
        const room = lastJoint(sides, 40, 200, angle);
        if (room.made !== "closing-piece") throw new Error(room.made);
        expect(room.length).toBeCloseTo(Math.max(...pieces.map(({ length }) => length)), 8);
        for (const { planMiter } of pieces) expect(room.planMiter).toBeCloseTo(planMiter, 8);
      }),
    );
  });
});

describe("the order of gluing", () => {
  test.each(Array.from({ length: 40 }, (_, index) => index + 3))("of %d pieces closes every corner once", (sides) => {
    const { stages, last } = glueUp({ sides });
    const corners = stages.flatMap((stage) => stage.corners).sort((a, b) => a - b);
    expect(corners).toEqual(Array.from({ length: sides }, (_, index) => index));
    expect(last).toBe(sides % 2 === 0 ? "trimmed-halves" : "closing-piece");
    let before = sides;
    for (const { corners: glued, assemblies } of stages) {
      // Every piece is in one assembly, every assembly a row of neighbors, and corners within one are glued by then.
      expect(assemblies.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: sides }, (_, index) => index));
      for (const assembly of assemblies) {
        for (const [index, piece] of assembly.entries()) expect(piece).toBe(assembly[0]! + index);
      }
      expect(assemblies.length).toBeLessThan(before);
      before = assemblies.length;
      expect(glued.length).toBeGreaterThan(0);
    }
    expect(stages.map(({ step }) => step)).toEqual([
      "pairs",
      ...Array.from({ length: stages.length - 2 }, () => "neighbors"),
      last,
    ]);
    expect(stages.at(-1)!.assemblies).toHaveLength(1);
    expect(stages.at(-1)!.corners).toHaveLength(2);
    // As few stages as joining two by two takes, and the last one.
    const row = sides % 2 === 0 ? sides / 2 : sides - 1;
    expect(stages).toHaveLength(Math.ceil(Math.log2(row)) + 1);
  });

  test("ends in halves of an even ring, and in all but one piece of an odd one", () => {
    expect(glueUp({ sides: 6 }).stages.at(-2)!.assemblies).toEqual([
      [0, 1, 2],
      [3, 4, 5],
    ]);
    expect(glueUp({ sides: 5 }).stages.at(-2)!.assemblies).toEqual([[0, 1, 2, 3], [4]]);
  });

  test("lays the pieces on bevel blocks at the slope, and has cauls of half the turn", () => {
    const of = (slope?: number): Pick<GlueUp, "bevelBlocks" | "cauls"> => {
      const { bevelBlocks, cauls } = glueUp({ sides: 8, slope });
      return { bevelBlocks, cauls };
    };
    const cauls = { angle: 22.5 };
    expect(of(30)).toEqual({ bevelBlocks: { angle: 30, high: "outer-edge" }, cauls });
    expect(of(-30)).toEqual({ bevelBlocks: { angle: 30, high: "sight-edge" }, cauls });
    expect(of()).toEqual({ bevelBlocks: { angle: 0, high: "neither" }, cauls });
  });

  test("survives JSON", () => {
    const result = glueUp(frozen({ sides: 7 }));
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

const CUT = { miter: 45, bevel: 0 };
const PIECE = { length: 100, start: CUT, end: CUT };

test.each([
  [() => halfRings(null as never), "Expected `options` to be an object, got null"],
  [
    () => halfRings({ pieces: [PIECE, PIECE, PIECE], at: 0, width: 20 }),
    "Expected `pieces` to be an array of 4 to 1000 pieces, got an array of 3",
  ],
  [
    () => halfRings({ pieces: [PIECE, PIECE, PIECE, PIECE, PIECE], at: 0, width: 20 }),
    "Expected `pieces` to be an even number of pieces: 5 have no straight halves, see `closingPiece`, got an array of 5",
  ],
  [
    () => halfRings({ pieces: [PIECE, PIECE, PIECE, PIECE], at: 0, width: 0 }),
    "Expected `width` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [
    () => closingPiece({ pieces: [PIECE], at: 0, width: 20 }),
    "Expected `pieces` to be an array of 2 to 1000 pieces, got an array of 1",
  ],
  [
    () => closingPiece({ pieces: [PIECE, PIECE], at: "edge" as never, width: 20 }),
    'Expected `at` to be "inside", "outside" or a level distance from the inside, got "edge" (string)',
  ],
  [() => glueUp({ sides: 2 }), "Expected `sides` to be an integer from 3 to 1000, got 2 (number)"],
  [() => glueUp({ sides: 4, slope: 100 }), "Expected `slope` to be degrees from -90 to 90, got 100 (number)"],
  [() => glueUp("4" as never), 'Expected `options` to be an object, got "4" (string)'],
])("refuses what is no ring %#", (call, message) => {
  expect(call).toThrow(message);
});

/** Solves a square system by elimination with pivots. */
function solve(rows: readonly (readonly number[])[]): number[] {
  const left = rows.map((row) => [...row]);
  const size = left.length;
  for (let k = 0; k < size; k += 1) {
    const pivot = left.slice(k).reduce((most, row) => (Math.abs(row[k]!) > Math.abs(most[k]!) ? row : most));
    left.splice(left.indexOf(pivot), 1);
    left.splice(k, 0, pivot);
    for (const row of left) {
      if (row === pivot) continue;
      const factor = row[k]! / pivot[k]!;
      for (let column = k; column <= size; column += 1) row[column]! -= factor * pivot[column]!;
    }
  }
  return left.map((row, k) => row[size]! / row[k]!);
}

describe("the seen gap", () => {
  test.each([4, 5, 6, 8, 9, 12, 24])(
    "in a ring of %d is a third of the law's where the other joints open as well, by the least rotation",
    (sides) => {
      /*
       * Small rotations about the inner ends of the joints, which lie on a circle, bring the free cuts together: the rotations add up to the open angle, and their moments are those of one about
       * the center. Lagrange's conditions for the smallest sum of squares of all but the last, whose own is free.
       */
      const angles = Array.from({ length: sides }, (_, index) => (2 * Math.PI * (index + 1)) / sides);
      const constraints = [angles.map(() => 1), angles.map(Math.cos), angles.map(Math.sin)];
      const openAngle = 0.02;
      const rows = [
        ...angles.map((_, index) => [
          ...angles.map((_other, column) => (column === index && index < sides - 1 ? 1 : 0)),
          ...constraints.map((weights) => weights[index]!),
          0,
        ]),
        ...constraints.map((weights, k) => [...weights, 0, 0, 0, k === 0 ? openAngle : 0]),
      ];
      const rotations = solve(rows).slice(0, sides);
      expect(rotations.at(-1)! / openAngle).toBeCloseTo(1 / 3, 9);
      for (const [index, rotation] of rotations.slice(0, -1).entries()) {
        expect(rotation).toBeCloseTo(((2 * openAngle) / (3 * sides)) * (1 - Math.cos(angles[index]!)), 9);
      }
    },
  );

  test("is twice what the ends of a half ring stand off a straightedge", () => {
    for (const sides of [4, 6, 8, 12]) {
      for (const slope of [0, 20, 50]) {
        const { miter, bevel } = compoundMiter({ sides, slope });
        const cut = { miter: miter - 0.1, bevel: bevel - 0.05 };
        const pieces = Array.from({ length: sides }, () => ({ length: 200, start: cut, end: cut }));
        const ring = ringClosure({ pieces, at: "outside", width: 40 });
        // Half the ring's turns, less what the ends lack themselves.
        const line = 40 / Math.cos(Math.PI / sides);
        const ends = 2 * line * Math.sin(((ring.angle / 4) * Math.PI) / 180);
        expect(Math.abs((2 * ends) / ring.jointGap - 1)).toBeLessThan(1e-4);
        const halves = halfRings({ pieces, at: "outside", width: 40 });
        for (const { depth } of halves.halves) expect(Math.abs(depth / (ends / 2) - 1)).toBeLessThan(0.01);
      }
    }
  });
});
