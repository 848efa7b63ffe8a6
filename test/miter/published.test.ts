import { describe, expect, test } from "vitest";
import { compoundMiter, joinCorner, slopeFromRiseAndRun, slopeFromSpring } from "miterwright/miter";
import { CROWN_SETTINGS, HIP_BACKINGS, SIDE_CUTS } from "../published/compound.js";
import {
  ARCHIMEDEAN_DIHEDRALS,
  EQUILATERAL_PYRAMIDS,
  PLATONIC_DIHEDRALS,
  PRISM_DIHEDRALS,
  RHOMBIC_DIHEDRALS,
} from "../published/dihedral.js";

const DEGREE = 180 / Math.PI;

describe("steel square rules for hips, which are hoppers inverted", () => {
  test.each(SIDE_CUTS)(
    "side cut of $sides sides at $rise in 12: $printed",
    ({ sides, rise, tongue, blade, coarse }) => {
      const { miter } = compoundMiter({ sides, slope: slopeFromRiseAndRun({ rise, run: 12 }) });
      // The blade's figure that goes with the tongue's is the printed one, to what such figures are good for.
      expect(Math.abs(tongue / Math.tan(miter / DEGREE) - blade)).toBeLessThan(coarse);
    },
  );

  test.each(HIP_BACKINGS)("backing of a hip at $rise in 12", ({ rise, hipRun }) => {
    const { bevel } = compoundMiter({ sides: 4, slope: slopeFromRiseAndRun({ rise, run: 12 }) });
    const figure = Math.atan2(rise, Math.hypot(hipRun, rise)) * DEGREE;
    // 17 stands for 12 times the root of 2, 0.03 less: the angle from 17 is the flatter, by at most as much in a hundred parts.
    expect(bevel - figure).toBeGreaterThan(0);
    expect(bevel - figure).toBeLessThan(0.04);
  });
});

test.each(CROWN_SETTINGS)("crown of spring angle $spring in a square corner (values from memory)", (crown) => {
  const { miter, bevel } = compoundMiter({ turn: 90, slope: slopeFromSpring(crown.spring) });
  expect(Math.abs(miter - crown.miter)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(bevel - crown.bevel)).toBeLessThanOrEqual(0.005);
});

/** The faces round a corner of a solid, as the sides of a hopper that stands on that corner. */
interface Hopper {
  readonly slopes: readonly number[];
  /** Turn from each side to the next. */
  readonly turns: readonly number[];
}

/**
 * Cuts a solid's corner off: edges of length 1 end on a circle, as all of them lean alike, and the chords between their ends are the
 * sides of the plan. A face angle a has the chord 2 sin(a/2); the circle is the one round which the chords close.
 */
function hopperOfCorner(faceAngles: readonly number[]): Hopper {
  const chords = faceAngles.map((angle) => 2 * Math.sin(angle / 2 / DEGREE));
  // A regular corner has its circle in closed form; any other one is found by bisection.
  const regular = Math.max(...chords) === Math.min(...chords);
  const halfTurns = (radius: number): number[] => chords.map((c) => Math.asin(Math.min(1, c / 2 / radius)));
  let [low, high] = [Math.max(...chords) / 2, 1];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (halfTurns(middle).reduce((sum, x) => sum + x, 0) > Math.PI) low = middle;
    else high = middle;
  }
  const radius = regular ? chords[0]! / 2 / Math.sin(Math.PI / chords.length) : high;
  const rise = Math.sqrt((1 - radius) * (1 + radius));
  const halves = halfTurns(radius).map((x) => x * DEGREE);
  return {
    slopes: chords.map((c) => slopeFromRiseAndRun({ rise, run: Math.sqrt((radius - c / 2) * (radius + c / 2)) })),
    turns: halves.map((half, i) => half + halves[(i + 1) % halves.length]!),
  };
}

const interior = (sides: number): number => ((sides - 2) * 180) / sides;

/** The dihedral between the first two faces round a corner. */
function firstDihedral(faceAngles: readonly number[]): number {
  const { slopes, turns } = hopperOfCorner(faceAngles);
  const board = (slope: number): { slope: number; thickness: number } => ({ slope, thickness: 1 });
  return joinCorner({ turn: turns[0]!, first: board(slopes[0]!), second: board(slopes[1]!) }).dihedral;
}

describe("dihedrals of solids, each built as a hopper that stands on a corner", () => {
  test.each(PLATONIC_DIHEDRALS)("$solid", ({ faces, printed, within }) => {
    const { slopes } = hopperOfCorner(faces.map(interior));
    const { miter, dihedral } = compoundMiter({ sides: faces.length, slope: slopes[0]! });
    expect(Math.abs(dihedral - printed)).toBeLessThanOrEqual(within);
    // Wikipedia, "Platonic solid", section Angles: sin(dihedral / 2) = cos(pi / q) / sin(pi / p), q faces of p sides at a corner.
    const sine = Math.cos(Math.PI / faces.length) / Math.sin(Math.PI / faces[0]!);
    expect(dihedral).toBeCloseTo(2 * Math.asin(sine) * DEGREE, 11);
    // The edge leaves the corner at half the face's angle from the face's middle, which is the miter.
    expect(miter).toBeCloseTo(interior(faces[0]!) / 2, 12);
    expect(firstDihedral(faces.map(interior))).toBeCloseTo(dihedral, 11);
  });

  test.each(ARCHIMEDEAN_DIHEDRALS)("$solid (value from memory)", ({ faces, printed, within }) => {
    expect(Math.abs(firstDihedral(faces.map(interior)) - printed)).toBeLessThanOrEqual(within);
  });

  test.each(RHOMBIC_DIHEDRALS)("$solid (value from memory)", ({ faceAngle, printed }) => {
    const { slopes } = hopperOfCorner([faceAngle, faceAngle, faceAngle]);
    expect(compoundMiter({ sides: 3, slope: slopes[0]! }).dihedral).toBeCloseTo(printed, 11);
  });

  test.each(EQUILATERAL_PYRAMIDS)("pyramid of $sides equilateral triangles", ({ sides, base, side, within }) => {
    // Edges of 1: the base's corners lie R from its middle, so the point lies sqrt(1 - R^2) above it.
    const radius = 1 / (2 * Math.sin(Math.PI / sides));
    const rise = Math.sqrt((1 - radius) * (1 + radius));
    const slope = slopeFromRiseAndRun({ rise, run: 1 / (2 * Math.tan(Math.PI / sides)) });
    const { miter, dihedral } = compoundMiter({ sides, slope });
    expect(Math.abs(slope - base)).toBeLessThanOrEqual(within);
    expect(Math.abs(dihedral - side)).toBeLessThanOrEqual(within);
    expect(Math.abs(miter - 30)).toBeLessThanOrEqual(1e-13);
  });

  test.each(PRISM_DIHEDRALS)("prism of $sides sides", ({ sides, side }) => {
    expect(compoundMiter({ sides, slope: 90 }).dihedral).toBe(side);
  });
});
