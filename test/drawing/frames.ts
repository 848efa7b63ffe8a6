import fc from "fast-check";
import type { DrawingOptions } from "miterwright/drawing";
import { planFrame, type FrameBrief, type FramePlan } from "miterwright/frame";
import { molding, type Profile } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import { formatters, type Formats } from "miterwright/units";

/** Options with formatters of lengths and angles. */
export function writing(length: (value: number) => string, angle: (degrees: number) => string): DrawingOptions {
  return { formats: { ...formatters({ unit: "mm" }), length, angle } };
}

/** Writers that say what they were given, to the last digit. */
export const SAY: Pick<Formats, "length" | "angle"> = {
  length: (value) => `L${value}`,
  angle: (degrees) => `A${degrees}`,
};

/** Formatters that do so. */
export const EXACT: DrawingOptions = writing(SAY.length, SAY.angle);

/** Formatters as people use them. */
export const SHORT: DrawingOptions = writing(
  (value) => `${Number(value.toPrecision(5))} mm`,
  (degrees) => `${degrees.toFixed(2)}°`,
);

/** A plain molding, 42 by 18. */
export const BATTEN: Profile = molding({ width: 42, thickness: 18 });

/** A molding with a rabbet and a chamfer. */
export const TRAY: Profile = molding({
  width: 42,
  thickness: 18,
  rabbet: { width: 8, depth: 9 },
  face: [{ cut: "chamfer", at: "sightFace", width: 3, angle: 45 }],
});

/** A frame to draw; what the brief does not say is a tray of six sides. */
export function plan(brief: Partial<FrameBrief> = {}): FramePlan {
  return planFrame({ sides: 6, opening: { acrossFlats: 300 }, profile: TRAY, ...brief } as FrameBrief);
}

/** A frame of a molding that is known by level measures alone. */
export function measuredPlan(brief: Partial<FrameBrief> = {}): FramePlan {
  return planFrame({
    sides: 9,
    slope: 20,
    opening: { acrossFlats: 300 },
    measured: { levelWidth: 40, lap: 6, depth: 9 },
    ...brief,
  } as FrameBrief);
}

/** Briefs of all kinds: sides, slopes, poses, sizes from 1e-6 to 1e6, rabbets, contents, saws and roughs. */
export const anyBrief: fc.Arbitrary<FrameBrief> = fc
  .record({
    sides: fc.oneof(
      { weight: 9, arbitrary: fc.integer({ min: 3, max: 13 }) },
      { weight: 1, arbitrary: fc.integer({ min: 14, max: 400 }) },
    ),
    slope: fc.oneof(fc.constantFrom(0, 90, -90, 1e-7), fc.double({ min: -88, max: 88, noNaN: true })),
    pose: fc.constantFrom("side-down" as const, "corner-down" as const),
    power: fc.integer({ min: -6, max: 6 }),
    opening: fc.double({ min: 4, max: 4000, noNaN: true }),
    kind: fc.constantFrom("side", "contains", "cutFrom"),
    aspect: fc.double({ min: 0.2, max: 5, noNaN: true }),
    width: fc.double({ min: 12, max: 120, noNaN: true }),
    thickness: fc.double({ min: 6, max: 60, noNaN: true }),
    rabbet: fc.boolean(),
    layers: fc.integer({ min: 0, max: 5 }),
    measured: fc.boolean(),
    saw: fc.constantFrom(
      tableSaw(),
      miterSaw(),
      tableSaw({ bevel: { left: 0, right: 46, reads: "from-table", step: 1 } }),
    ),
    method: fc.constantFrom("none" as const, "square" as const, "mitered" as const),
    lay: fc.constantFrom(
      undefined,
      "flat" as const,
      "propped" as const,
      "sight-edge-down" as const,
      "outer-edge-down" as const,
      "face-down" as const,
      17,
    ),
  })
  .filter(({ lay, measured }) => !(typeof lay === "number" && measured))
  .map((facts): FrameBrief => {
    const {
      sides,
      slope,
      pose,
      power,
      opening,
      kind,
      aspect,
      width,
      thickness,
      rabbet,
      layers,
      measured,
      saw,
      method,
      lay,
    } = facts;
    const size = 10 ** power;
    const level = {
      levelWidth: width * size,
      ...(rabbet ? { lap: (width * size) / 5, depth: (thickness * size) / 3 } : {}),
    };
    const cut = { width: (width * size) / 5, depth: thickness * size * 0.5 };
    const profile = molding({ width: width * size, thickness: thickness * size, ...(rabbet ? { rabbet: cut } : {}) });
    const box = { width: opening * size, height: opening * size * aspect };
    // Large enough for every section to leave the pieces a length.
    const side = (opening + 4 * (width + thickness)) * size;
    return {
      sides,
      slope,
      pose,
      opening:
        kind === "side"
          ? { side }
          : kind === "contains"
            ? { contains: { width: box.width + side, height: box.height + side } }
            : { cutFrom: { width: side, height: side * aspect + side } },
      ...(measured ? { measured: level } : { profile }),
      contents: Array.from({ length: layers }, (_, index) => ({
        name: ["glass", "a mount of gray cardboard", "chart"][index % 3]!,
        thickness: (thickness * size) / (9 + 7 * index),
      })),
      clearance: size / 2,
      kerf: 3 * size,
      saw,
      rough: method === "none" ? { method } : { method, allowance: 15 * size },
      ...(lay === undefined ? {} : { lay }),
    };
  });
