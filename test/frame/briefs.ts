import fc from "fast-check";
import type { InputIssue } from "miterwright/errors";
import { tryParseBrief, type ProfileBrief } from "miterwright/frame";
import { molding, type Profile, type RabbetArris } from "miterwright/profile";

type CornerArris = "sightFace" | "sightBack" | "outerFace" | "outerBack";

/** A rabbeted molding of our demo shop: 52 x 19 with a 9 x 11 rabbet. */
export const rabbeted: Profile<CornerArris | RabbetArris> = molding({
  width: 52,
  thickness: 19,
  rabbet: { width: 9, depth: 11 },
});
/** Flat stock. */
export const plain: Profile<CornerArris> = molding({ width: 40, thickness: 20 });

/** Freezes a value and all it holds, so that a function that changes its input throws. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    for (const inner of Object.values(value)) deepFreeze(inner);
    Object.freeze(value);
  }
  return value;
}

/** A copy that went through JSON, as a plan from a file or a worker does. */
export function throughJson<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}

const moldings: fc.Arbitrary<Profile> = fc.oneof(
  fc
    .record({
      width: fc.double({ min: 15, max: 90, noNaN: true }),
      thickness: fc.double({ min: 8, max: 45, noNaN: true }),
    })
    .map((size) => molding(size)),
  fc
    .record({
      width: fc.double({ min: 25, max: 90, noNaN: true }),
      thickness: fc.double({ min: 12, max: 45, noNaN: true }),
      w: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
      d: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
    })
    .map(({ width, thickness, w, d }) =>
      molding({ width, thickness, rabbet: { width: w * width, depth: d * thickness } }),
    ),
);

/** Briefs whose opening is large enough for any of the moldings at any slope. */
export const briefs: fc.Arbitrary<ProfileBrief> = fc.record({
  sides: fc.integer({ min: 3, max: 24 }),
  slope: fc.oneof(fc.double({ min: -89, max: 89, noNaN: true }), fc.constantFrom(-90, -45, 0, 45, 90)),
  pose: fc.constantFrom("side-down" as const, "corner-down" as const),
  opening: fc.double({ min: 150, max: 3000, noNaN: true }).map((apothem) => ({ apothem })),
  profile: moldings,
});

/** Every issue of a brief; none where it can be planned. */
export function issuesOf(brief: unknown): readonly InputIssue[] {
  const outcome = tryParseBrief(brief);
  return outcome.ok ? [] : outcome.issues;
}
