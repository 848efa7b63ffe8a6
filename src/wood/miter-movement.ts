import { checkInside, checkLength, checkObject, checkOneOf, checkSides, checkSlope } from "../core/check.js";
import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import type { OneOf } from "../core/geometry-types.js";
import { acrossThickness, checkGrain, woodStrain, type Grain } from "./grain.js";
import { checkMoisture, type Moisture } from "./moisture.js";
import { readWood } from "./read-wood.js";
import type { Wood } from "./wood-species.js";

/** Options of {@link miterMovement}: the corner, by exactly one of `sides` and `turn`, and the pieces that meet there. */
export type MiterMovementOptions = OneOf<{
  /** Number of sides of a regular frame, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Turn of the corner in degrees, between 0 and 180, bounds excluded. */
  readonly turn: number;
}> & {
  /** The wood of both pieces, by its name in the table or by figures of your own. */
  readonly species: Wood;
  /** How the growth rings run at the piece's end: `"flat-sawn"`, `"rift-sawn"`, `"quarter-sawn"`, or their angle to its face in degrees, 0 to 90. */
  readonly grain: Grain;
  /** Width of the piece across its face at moisture `from`, in any unit, 1e-100 to 1e100. */
  readonly width: number;
  /** Slope of the sides in degrees, -90 to 90; default 0, lying flat. */
  readonly slope?: number | undefined;
  /** Thickness of the piece in the width's unit, 1e-100 to 1e100; needed where the slope is not 0. */
  readonly thickness?: number | undefined;
  /** Moisture when the joint was fitted: a content in percent, 0 to 300, or the climate that leads to it. */
  readonly from: Moisture;
  /** Moisture later, likewise. */
  readonly to: Moisture;
};

/** How a mitered joint stands open. */
export interface OpenMiter {
  /** Where the joint opens: at the short point, inside, when the wood has shrunk; at the long point, outside, when it has swollen. */
  readonly opens: "inside" | "outside" | "nowhere";
  /** How wide it stands open there, straight across, when it touches at the other end; in the width's unit. */
  readonly jointGap: number;
  /** The angle of the open wedge, in degrees. */
  readonly angle: number;
  /** The angle that the ends have now, seen from above, in degrees; the frame still needs half the turn. */
  readonly miter: number;
}

/** What the movement of its wood does to a mitered joint. */
export interface MiterMovement extends OpenMiter {
  /** Half the turn: the angle that they were cut to, seen from above, in degrees. */
  readonly planMiter: number;
  /** Joint width when the joint was fitted: level, from the molding's innermost to its outermost point. */
  readonly jointWidth: number;
  /** By how much the joint width has changed; positive when the wood has swollen. */
  readonly change: number;
  /** Moisture content when the joint was fitted, in percent. */
  readonly from: number;
  /** Moisture content later, in percent. */
  readonly to: number;
}

/** Half the turn of an unchecked corner. */
function checkHalfTurn(given: Readonly<Record<string, unknown>>): number {
  if (checkOneOf(given, "", ["sides", "turn"]) === "sides") return 180 / checkSides(given["sides"]);
  return checkInside(given["turn"], "turn", 0, 180) / 2;
}

/** How a joint opens when the joint width of its pieces changes while nothing moves along them, unchecked. */
export function openMiter(planMiter: number, jointWidth: number, change: number): OpenMiter {
  const [sine, cosine] = [sinDeg(planMiter), cosDeg(planMiter)];
  const size = Math.abs(change);
  return {
    opens: change < 0 ? "inside" : change > 0 ? "outside" : "nowhere",
    jointGap: 2 * size * sine,
    angle: 2 * atan2Deg(size * sine * cosine, jointWidth + change * cosine * cosine),
    miter: change === 0 ? planMiter : atan2Deg(jointWidth * sine, (jointWidth + change) * cosine),
  };
}

/**
 * What a change of moisture does to a mitered joint: whether it opens inside or outside, and by how much.
 *
 * Wood moves across its grain and hardly along it. So both ends of a piece keep their places while the joint width W changes by D, and the tangent of its cut,
 * seen from above, goes from tan h to W tan h / (W + D). Where the wood has shrunk the angle is too large, and the joint touches at its long point and opens at
 * its short point; where it has swollen, the other way round. The gap is exactly 2 |D| sin h with h half the turn, the wedge's tangent of half its angle |D|
 * sin h cos h / (W + D cos² h). A rectangular piece at slope s has W = width cos s + thickness |sin s|, and each part changes by its own movement. The pieces
 * are taken as straight, held at their slope and pulled together; a glued joint holds until the glue or the wood gives way. For rings neither along the face
 * nor square to it, the diamond shape that a section takes on is left out.
 *
 * @param options - the corner, the pieces, and the moisture when the joint was fitted and later
 * @returns where the joint opens, the gap in the width's unit, the wedge and the ends' new angle in degrees
 * @throws {InputError} when neither or both of `sides` and `turn` are given, the wood is unknown, a sloping piece has no thickness, or a value is out of range
 * @example
 * ```ts
 * import { miterMovement } from "miterwright/wood";
 *
 * const piece = { sides: 4, species: "white oak", grain: "flat-sawn", width: 70 } as const;
 * const dry = miterMovement({ ...piece, from: 9, to: 6 });
 * dry.opens; //=> "inside"
 * dry.jointGap.toFixed(2); //=> "1.12"
 * miterMovement({ ...piece, from: 9, to: 12 }).opens; //=> "outside"
 * ```
 * @see W. Noyes, Handwork in Wood, fig. 289: "if the wood shrinks at all, it opens at the inside corners, because wood shrinks sidewise but not lengthwise"
 */
export function miterMovement(options: MiterMovementOptions): MiterMovement {
  const given = checkObject(options);
  const planMiter = checkHalfTurn(given);
  const wood = readWood(given["species"]);
  const rings = checkGrain(given["grain"]);
  const width = checkLength(given["width"], "width");
  const slope = checkSlope(given["slope"] ?? 0);
  const thickness = slope === 0 && given["thickness"] === undefined ? 0 : checkLength(given["thickness"], "thickness");
  const from = checkMoisture(given["from"], "from");
  const to = checkMoisture(given["to"], "to");
  const level = width * cosDeg(slope);
  const plumb = thickness * Math.abs(sinDeg(slope));
  const jointWidth = level + plumb;
  const change =
    level * woodStrain(wood, rings, from, to) + plumb * woodStrain(wood, acrossThickness(rings), from, to) + 0;
  return {
    ...openMiter(planMiter, jointWidth, change),
    planMiter,
    jointWidth,
    change,
    from,
    to,
  };
}
