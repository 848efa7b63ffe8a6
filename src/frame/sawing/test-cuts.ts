import { cosDeg, DEGREES, sinDeg, tanDeg } from "../../core/degrees.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import { gapPerDegree } from "../../closure/internal.js";
import { type FrameGeometry, jointWidth } from "../frame-geometry.js";
import { usualScrap } from "./usual-lengths.js";
import type { LayResult } from "./lay-result.js";

/** Two test pieces put together. */
export interface TestPair {
  /** Angle between them as seen from above, inside, in degrees. */
  readonly angle: number;
  /** Angle between their faces, inside, in degrees; 180 in a flat frame. */
  readonly dihedral: number;
  /** How long each leg must be, so that the error that makes the accepted gap in the frame makes as wide a gap at the end of a leg. */
  readonly legs: number;
}

/** A ring of test pieces, or half of one against a straightedge. */
export interface TestRing {
  /** How many pieces: n for a ring, n/2 for half of one. */
  readonly pieces: number;
  /** The gap up to which the setting is right: the gap of the last joint, or how far the outer corner at one end of the half stands off a straightedge on which its other end is tight. */
  readonly accept: number;
}

/**
 * What proves a setting: a ring of scrap, half a ring, or the frame's own pieces. Half a ring is taken where a whole one would take more than half as much
 * molding as the frame. The frame's own pieces, cut longer at first, are taken where half a ring would take too much as well, or the number of sides is odd.
 */
export type TestProof = "ring" | "half-ring" | "own-pieces";

/** How a setting is proved on scrap before the molding is cut. */
export interface TestCuts {
  /** How the stick is moved between its two ends; test pieces are cut with the same move, or they do not show the same errors. */
  readonly move: "flip-end-for-end" | "slide-past-the-blade";
  /** Length of each test piece along its longest line: enough for a hold-down. */
  readonly length: number;
  /** What proves the setting in proportion to the job. */
  readonly proof: TestProof;
  /** Scrap that a whole ring takes. */
  readonly ringScrap: number;
  /** Scrap that `proof` takes: the whole ring, half of it, or two pieces for the quick check. */
  readonly scrap: number;
  /** Molding that the frame itself takes, without the trimmed ends of its sticks. */
  readonly molding: number;
  /** How much longer the frame's own pieces are cut where they prove the setting, so that both ends can be cut again. */
  readonly spare: number;
  /** The quick check, which shows a coarse error. */
  readonly pair: TestPair;
  /** The sharp check: all 2n cuts share the error, as in the frame. */
  readonly ring: TestRing;
  /** With an even number of sides: half the pieces show it more clearly still. */
  readonly half: TestRing | null;
  /** By how many degrees the plan angle of every end is off when the joint gap is the accepted one: a 2n-th of the open angle. */
  readonly perEnd: number;
  /** Whether the frame slopes, so that the slope of the ring is read together with its gap. */
  readonly sloped: boolean;
}

/** What else is known of the job that a test is for. */
interface TestedJob {
  /** What one piece of the frame takes of its stick. */
  readonly pitch: number;
  /** The accepted gap. */
  readonly acceptedGap: number;
  /** Width of the saw cut. */
  readonly kerf: number;
  /** Unit of the lengths. */
  readonly unit: LengthUnit;
}

/** Scrap for a test is in proportion to a job up to this share of its molding; common practice, no printed source. */
const IN_PROPORTION: number = 0.5;

/**
 * How a setting is proved on scrap.
 *
 * The cuts share the error of the setting. A ring of n pieces, however short, has the gap of the frame itself: (W / cos h) times its open angle, for the
 * joint's width W. Two pieces are off by an n-th of that angle, which on legs of n W / cos h shows as the same gap. The ends of half a ring are off by half the
 * open angle. With one of them tight on a straightedge, the outer corner of the other stands off it by a quarter of the open angle across the ring's width, l /
 * sin h for pieces of length l.
 *
 * There are none where the accepted gap is as wide as the joint.
 */
export function testCuts(
  geometry: FrameGeometry,
  lay: Pick<LayResult, "first" | "second">,
  { pitch, acceptedGap, kerf, unit }: TestedJob,
): TestCuts | null {
  const { sides, slope, corners } = geometry;
  const { planMiter, dihedral } = corners[0];
  const width = jointWidth(geometry);
  if (!(acceptedGap < width)) return null;
  const kerfAlong = kerf / cosDeg(planMiter);
  const length = Math.max(usualScrap(unit), width * (1 + 2 * tanDeg(planMiter)));
  const openAngle = acceptedGap / gapPerDegree(sides, width);
  const across = length / sinDeg(planMiter);
  const scrapFor = (pieces: number): number => pieces * (length + kerfAlong) + kerfAlong;
  const molding = sides * pitch;
  const isFor = (pieces: number): boolean => scrapFor(pieces) <= IN_PROPORTION * molding;
  const proof = isFor(sides) ? "ring" : sides % 2 === 0 && isFor(sides / 2) ? "half-ring" : "own-pieces";
  return {
    move: lay.first.kept === lay.second.kept ? "flip-end-for-end" : "slide-past-the-blade",
    length,
    proof,
    ringScrap: scrapFor(sides),
    scrap: scrapFor(proof === "ring" ? sides : proof === "half-ring" ? sides / 2 : 2),
    molding,
    spare: 2 * kerfAlong,
    pair: { angle: 180 - 2 * planMiter, dihedral, legs: (sides * width) / cosDeg(planMiter) },
    ring: { pieces: sides, accept: acceptedGap },
    half: sides % 2 === 0 ? { pieces: sides / 2, accept: (across * openAngle) / 4 / DEGREES } : null,
    perEnd: openAngle / (2 * sides),
    sloped: slope !== 0,
  };
}
