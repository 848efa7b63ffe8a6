import { GRAVITY } from "../../core/unit-sizes.js";
import { cosDeg, sinDeg, tanDeg } from "../../core/degrees.js";
import { sectionExtent, type Profile } from "../../profile/index.js";
import { outOf, upOf } from "../../profile/internal.js";
import type { FilledBrief, Hanging } from "../brief/brief.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { finiteOrNull, type PartialSum } from "../materials/partial-sum.js";
import { roundLength, type RoundLength } from "../round-length.js";
import { fixingPair } from "./fixing-points.js";
import type { FrameHanging, HangerSeat, HangingLoad, HangingWire } from "./frame-hanging.js";
import { wallSurface, type WallSurface } from "./wall-surface.js";

/** Angle of each half of a wire above level where the brief gives none, in degrees: each half then pulls as much as the frame weighs. Common practice, no printed source. */
const USUAL_WIRE_ANGLE: number = 30;
/** Wood left before the point of a screw; common practice, no printed source. */
const LEAST_WOOD: RoundLength = { millimeters: 3, inches: 0.125 };
/** By how much wire, hangers and hooks are usually stronger than the pull; common practice, no printed source. */
const FACTOR: number = 4;

function loadOf({ total, complete }: PartialSum, { extraMass = 0 }: Hanging, share: number): HangingLoad {
  const known = total === null && extraMass === 0 ? null : (total ?? 0) + extraMass;
  const newtons = (parts: number): number | null => (known === null ? null : finiteOrNull(known * GRAVITY * parts));
  return {
    mass: known,
    complete,
    weight: newtons(1),
    share,
    pull: newtons(share),
    factor: FACTOR,
    strength: newtons(share * FACTOR),
  };
}

/** The surface as it stands in the frame: the height of its middle, and what the frame touches the wall with. */
function seatOf(
  surface: WallSurface,
  profile: Profile,
  { slope, seating }: FrameGeometry,
  { unit, hanging }: FilledBrief,
): HangerSeat {
  const { middle, width, leanAngle, wood } = surface;
  const up = upOf(middle.x, middle.y, cosDeg(slope), sinDeg(slope));
  const contents = seating?.possible === true ? (seating.layers.at(-1)?.back ?? Infinity) : Infinity;
  const deepest = Math.max(0, wood - roundLength(LEAST_WOOD, unit));
  const screwDepth = hanging?.screwDepth ?? null;
  return {
    width,
    leanAngle,
    opens: leanAngle === 0 ? "nowhere" : leanAngle > 0 ? "outward" : "inward",
    standoff: Math.max(0, up - Math.min(sectionExtent(profile, slope).bottom, contents)),
    wood,
    deepest,
    screwDepth,
    screwFits: screwDepth === null ? null : screwDepth <= deepest,
  };
}

function wireOf(angle: number, apart: number, below: number): HangingWire {
  const rise = (apart / 2) * tanDeg(angle);
  return { angle, length: apart / cosDeg(angle), rise, belowTop: below - rise };
}

/** How far out the screws go in, from the section's origin; `null` where no surface lies toward the wall. */
function fixingOut(
  { deciding, levelWidth, slope }: FrameGeometry,
  surface: WallSurface | null | undefined,
): number | null {
  if (surface === undefined) return deciding.out + levelWidth / 2;
  return surface && outOf(surface.middle.x, surface.middle.y, cosDeg(slope), sinDeg(slope));
}

/**
 * How a frame hangs on a wall: where its hangers go, what they lie on, and what they carry.
 *
 * Each half of a wire at the angle a above level pulls weight / (2 sin a), so that together they lift the weight; each of two hooks carries half of it. The
 * frame's center of gravity is taken at its center, where that of a regular frame with even contents is.
 */
export function hangFrame(brief: FilledBrief, geometry: FrameGeometry, mass: PartialSum): FrameHanging | null {
  const { hanging } = brief;
  if (hanging === undefined) return null;
  const { by, wireAngle = USUAL_WIRE_ANGLE } = hanging;
  const { profile, opening, deciding, slope } = geometry;
  const surface = profile === null ? undefined : wallSurface(profile, slope);
  const out = fixingOut(geometry, surface);
  if (out === null) return { possible: false, by, reason: "no-wall-surface" };
  const pair = fixingPair(geometry, opening.apothem + (out - deciding.out));
  const share = by === "wire" ? 1 / (2 * sinDeg(wireAngle)) : 1 / 2;
  return {
    possible: true,
    by,
    ...pair,
    seat: surface ? seatOf(surface, profile!, geometry, brief) : null,
    wire: by === "wire" ? wireOf(wireAngle, pair.apart, pair.below) : null,
    load: loadOf(mass, hanging, share),
  };
}
