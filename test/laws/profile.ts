import fc from "fast-check";
import { molding, sectionAt, type MoldingOptions, type Profile, type RabbetArris } from "miterwright/profile";
import { expect } from "vitest";

/** Any profile with a rabbet. */
export type Rabbeted = Profile<RabbetArris | "sightFace" | "outerFace" | "outerBack">;

/** A number between two others, of no particular size. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** Slopes, with the ones that are special more often than chance would have it; none whose sine is a subnormal number. */
export const slopes = (min: number, max: number): fc.Arbitrary<number> =>
  fc
    .oneof(
      { weight: 4, arbitrary: between(min, max) },
      {
        weight: 1,
        arbitrary: fc.constantFrom(...[-90, -60, -45, -30, 0, 30, 45, 60, 90].filter((s) => min <= s && s <= max)),
      },
    )
    .map((slope) => (Math.abs(slope) < 1e-280 ? 0 : slope));

/** Sizes of a square-cut molding with a rabbet. */
export const rabbetedSizes: fc.Arbitrary<MoldingOptions & { rabbet: { width: number; depth: number } }> = fc
  .tuple(between(10, 100), between(5, 60), between(0.02, 0.9), between(0.02, 0.95))
  .map(([width, thickness, lap, depth]) => ({
    width,
    thickness,
    rabbet: { width: lap * width, depth: depth * thickness },
  }));

/** Square-cut moldings with a rabbet. */
export const rabbetedMoldings: fc.Arbitrary<Rabbeted> = rabbetedSizes.map((sizes) => molding(sizes));

/** Profiles drawn by hand: a rabbet whose ledge and wall both lean as they like. */
export const handDrawnRabbets: fc.Arbitrary<Rabbeted> = fc
  .record({ lap: between(4, 20), depth: between(4, 20), ledgeRise: between(-3, 3), wallLean: between(-3.5, 8) })
  .map(({ lap, depth, ledgeRise, wallLean }) => {
    const sightBack = { x: 0, y: depth };
    const wallLedge = { x: lap, y: depth + ledgeRise };
    const wallMouth = { x: lap + wallLean, y: 0 };
    const outerBack = { x: 60, y: 0 };
    const outerFace = { x: 60, y: 40 };
    const sightFace = { x: 0, y: 40 };
    return {
      outline: [sightBack, wallLedge, wallMouth, outerBack, outerFace, sightFace],
      arrises: { sightBack, wallLedge, wallMouth, outerBack, outerFace, sightFace },
    };
  });

/** A profile of any of these kinds. */
export const anyProfile: fc.Arbitrary<Rabbeted> = fc.oneof(rabbetedMoldings, handDrawnRabbets);

/** The largest coordinate of a profile. */
export function sizeOf(profile: Pick<Profile, "outline">): number {
  return Math.max(...profile.outline.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
}

/**
 * Law: standing a section up keeps every distance between its points, and turning it back gives them again.
 *
 * @param profile - any profile
 * @param slope - any slope
 */
export function sectionIsRotated(profile: Profile, slope: number): void {
  const section = sectionAt(profile, slope);
  const slack = 8 * Number.EPSILON * sizeOf(profile);
  const radians = (slope * Math.PI) / 180;
  profile.outline.forEach((point, index) => {
    const stood = section.outline[index]!;
    const x = stood.out * Math.cos(radians) + stood.up * Math.sin(radians);
    const y = stood.up * Math.cos(radians) - stood.out * Math.sin(radians);
    expect(Math.hypot(x - point.x, y - point.y)).toBeLessThanOrEqual(slack);
    const other = profile.outline[(index + 1) % profile.outline.length]!;
    const stoodOther = section.outline[(index + 1) % profile.outline.length]!;
    const before = Math.hypot(other.x - point.x, other.y - point.y);
    const after = Math.hypot(stoodOther.out - stood.out, stoodOther.up - stood.up);
    expect(Math.abs(after - before)).toBeLessThanOrEqual(slack);
  });
}

/**
 * Law: a result holds only finite numbers and no -0, however deep.
 *
 * @param result - anything that a public function returned
 */
export function numbersAreClean(result: unknown): void {
  if (typeof result === "number") {
    expect(Number.isFinite(result)).toBe(true);
    expect(Object.is(result, -0)).toBe(false);
  } else if (typeof result === "object" && result !== null) {
    Object.values(result).forEach(numbersAreClean);
  }
}

/** Freezes a value and everything in it, so that writing to it throws. */
export function deepFrozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) Object.values(Object.freeze(value)).forEach(deepFrozen);
  return value;
}
