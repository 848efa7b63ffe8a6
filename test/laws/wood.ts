import fc from "fast-check";
import type { Point } from "miterwright";
import { type Climate, type GrainName, type ShrinkingWood, type WoodName, woodNames } from "miterwright/wood";

/**
 * What to try the movement of wood on, and checkers that move points of the wood itself. None of them uses a formula of the library.
 */

/** Names of the table. */
export const anyWoodName: fc.Arbitrary<WoodName> = fc.constantFrom(...woodNames());

/** Woods by their own figures, from none that moves to ones that no forest has. */
export const anyOwnWood: fc.Arbitrary<ShrinkingWood> = fc.record({
  radial: fc.double({ min: 0, max: 30, noNaN: true }),
  tangential: fc.double({ min: 0, max: 30, noNaN: true }),
  fiberSaturation: fc.double({ min: 15, max: 40, noNaN: true }),
});

/** Woods that move in both directions, if less than any in a forest. */
export const movingWood: fc.Arbitrary<ShrinkingWood> = fc.record({
  radial: fc.double({ min: 0.5, max: 30, noNaN: true }),
  tangential: fc.double({ min: 0.5, max: 30, noNaN: true }),
  fiberSaturation: fc.double({ min: 15, max: 40, noNaN: true }),
});

/** Moisture contents in a range, to the thousandth of a percent: none so near to nothing that a double has no digits left for it. */
function moistureUpTo(max: number, min = 0): fc.Arbitrary<number> {
  return fc.integer({ min: min * 1000, max: max * 1000 }).map((thousandths) => thousandths / 1000);
}

/** Moisture contents below every fiber saturation. */
export const dryMoisture: fc.Arbitrary<number> = moistureUpTo(15);
/** Moisture contents from ovendry to soaked. */
export const anyMoisture: fc.Arbitrary<number> = moistureUpTo(300);
/** Moisture contents of which most are below fiber saturation. */
export const seasonMoisture: fc.Arbitrary<number> = moistureUpTo(45);
/** Moisture contents for which coefficients hold. */
export const roomMoisture: fc.Arbitrary<number> = moistureUpTo(14, 6);

/** Climates that the library takes. */
export const anyClimate: fc.Arbitrary<Climate> = fc.record({
  temperature: fc.double({ min: -20, max: 100, noNaN: true }),
  humidity: fc.double({ min: 0, max: 100, noNaN: true }),
});

/** Angles of the growth rings. */
export const anyGrain: fc.Arbitrary<GrainName | number> = fc.oneof(
  fc.constantFrom<GrainName>("flat-sawn", "rift-sawn", "quarter-sawn"),
  fc.double({ min: 0, max: 90, noNaN: true }),
);

/** Widths of boards. */
export const anyWidth: fc.Arbitrary<number> = fc.double({ min: 1, max: 2000, noNaN: true });

/** A mitered end whose wood has moved across the grain. */
export interface MovedEnd {
  /** Half the turn of the corner, in degrees. */
  readonly planMiter: number;
  /** Slope of the piece, in degrees. */
  readonly slope: number;
  readonly width: number;
  readonly thickness: number;
  /** By what fraction the width stretches. */
  readonly acrossWidth: number;
  /** By what fraction the thickness stretches. */
  readonly acrossThickness: number;
}

/** How a joint stands open. */
export interface OpenJoint {
  /** Straight across, where it is widest. */
  readonly gap: number;
  /** How far outward in the frame the widest place lies of the place that touches. */
  readonly outOfTouch: number;
}

/**
 * Presses two like ends together and measures what stays open, by moving the four arrises of one of them.
 *
 * Where an arris comes to the end, it is cut by the upright plane that halves the corner. Then the section stretches while no point moves along the piece, and
 * the piece is pushed along its length until the first arris reaches the plane again. The other piece is its mirror image in that plane.
 *
 * @param end - the end and how it has moved
 * @returns the gap and where it is
 */
export function pressTogether(end: MovedEnd): OpenJoint {
  const radians = (degrees: number): number => (degrees * Math.PI) / 180;
  const [slope, half] = [radians(end.slope), radians(end.planMiter)];
  const inFrame = (across: number, through: number): { out: number; up: number } => ({
    out: across * Math.cos(slope) - through * Math.sin(slope),
    up: across * Math.sin(slope) + through * Math.cos(slope),
  });
  const arrises = [0, end.width].flatMap((across) =>
    [0, end.thickness].map((through) => {
      const before = inFrame(across, through);
      const after = inFrame(across * (1 + end.acrossWidth), through * (1 + end.acrossThickness));
      // Seen from above, the plane goes through the origin at half the turn from square to the piece.
      const along = before.out * Math.tan(half);
      return { out: after.out, beyond: along * Math.cos(half) - after.out * Math.sin(half) };
    }),
  );
  const touching = arrises.reduce((first, one) => (one.beyond > first.beyond ? one : first));
  const widest = arrises.reduce((last, one) => (one.beyond < last.beyond ? one : last));
  return { gap: 2 * (touching.beyond - widest.beyond), outOfTouch: widest.out - touching.out };
}

/**
 * How far a panel that stretches across its grain reaches beyond one of its sides, and how far it falls behind it, by moving many of its points.
 *
 * @param corners - corners of the panel about its center, counter-clockwise
 * @param side - the side from this corner to the next
 * @param direction - of the grain, in degrees
 * @param fraction - by which it stretches across it
 * @returns the distances beyond and behind, 0 or more
 */
export function strayFromSide(
  corners: readonly Point[],
  side: number,
  direction: number,
  fraction: number,
): { readonly beyond: number; readonly behind: number } {
  const turn = (direction * Math.PI) / 180;
  /** Turns the grain level, stretches upright, and turns back. */
  const moved = ({ x, y }: Point): Point => {
    const level = x * Math.cos(turn) + y * Math.sin(turn);
    const upright = (y * Math.cos(turn) - x * Math.sin(turn)) * (1 + fraction);
    return {
      x: level * Math.cos(turn) - upright * Math.sin(turn),
      y: level * Math.sin(turn) + upright * Math.cos(turn),
    };
  };
  const [start, end] = [corners[side]!, corners[(side + 1) % corners.length]!];
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const outward = ({ x, y }: Point): number =>
    ((x - start.x) * (end.y - start.y) - (y - start.y) * (end.x - start.x)) / length;
  const onSide = Array.from({ length: 21 }, (_, index) => ({
    x: start.x + ((end.x - start.x) * index) / 20,
    y: start.y + ((end.y - start.y) * index) / 20,
  }));
  return {
    beyond: Math.max(0, ...corners.map((corner) => outward(moved(corner)))),
    behind: Math.max(0, ...onSide.map((point) => -outward(moved(point)))),
  };
}

/** A ring of pieces whose wood has moved. */
export interface MovedRing {
  readonly sides: number;
  /** In degrees. */
  readonly slope: number;
  /** The section's corners. */
  readonly outline: readonly Point[];
  /** By what fraction the section stretches along x. */
  readonly across: number;
  /** By what fraction it stretches along y. */
  readonly through: number;
}

/** How a ring has come to rest. */
export interface PressedRing extends OpenJoint {
  /** How far outward the polygon of a section point has moved, by where the point stood in the frame. */
  readonly growthAt: (out: number, up: number) => number;
}

/** Where two lines cross, each given by its normal's direction and its distance from the origin: two equations, solved. */
function cross([a, p]: readonly [number, number], [b, q]: readonly [number, number]): Point {
  const determinant = Math.cos(a) * Math.sin(b) - Math.sin(a) * Math.cos(b);
  return {
    x: (p * Math.sin(b) - q * Math.sin(a)) / determinant,
    y: (q * Math.cos(a) - p * Math.cos(b)) / determinant,
  };
}

/**
 * Presses a whole ring together after its wood has moved, and measures it.
 *
 * Every section point's line is crossed with its neighbor's, which gives both pieces the same end there. Then the section is stretched, so that each piece
 * carries its end outward along its own normal. The whole ring is let out until no end reaches into its neighbor any more, which is found by halving an
 * interval. What two ends that were one are apart then is the gap.
 *
 * @param ring - the ring and how its wood has moved
 * @returns how it stands open, and what has become of its openings
 */
export function pressRing({ sides, slope, outline, across, through }: MovedRing): PressedRing {
  const [turn, tilt] = [(2 * Math.PI) / sides, (slope * Math.PI) / 180];
  const stand = (x: number, y: number): readonly [out: number, up: number] => [
    x * Math.cos(tilt) - y * Math.sin(tilt),
    x * Math.sin(tilt) + y * Math.cos(tilt),
  ];
  const shiftOf = (x: number, y: number): number => stand(x * (1 + across), y * (1 + through))[0] - stand(x, y)[0];
  // The corner on the x axis, between a side whose normal points half a turn below it and one half a turn above.
  const below: Point = { x: Math.cos(turn / 2), y: -Math.sin(turn / 2) };
  const ends = outline.map(({ x, y }) => {
    const [out] = stand(x, y);
    return { out, at: cross([-turn / 2, out], [turn / 2, out]), shift: shiftOf(x, y) };
  });
  /** How far an end of the side below reaches across the x axis, into its neighbor. */
  const reach = ({ at, shift }: (typeof ends)[number], letOut: number): number => at.y + (shift + letOut) * below.y;
  let [low, high] = [-1e4, 1e4];
  for (let round = 0; round < 200; round++) {
    const middle = (low + high) / 2;
    if (Math.max(...ends.map((end) => reach(end, middle))) > 0) low = middle;
    else high = middle;
  }
  const apart = ends.map((end) => ({ out: end.out, gap: -2 * reach(end, high) }));
  const open = apart.reduce((most, one) => (one.gap > most.gap ? one : most));
  const touching = apart.reduce((least, one) => (one.gap < least.gap ? one : least));
  return {
    gap: open.gap,
    outOfTouch: open.out - touching.out,
    growthAt: (out, up) =>
      shiftOf(out * Math.cos(tilt) + up * Math.sin(tilt), up * Math.cos(tilt) - out * Math.sin(tilt)) + high,
  };
}
