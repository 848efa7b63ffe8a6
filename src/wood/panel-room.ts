import { checkArray, checkDegrees, checkObject, checkOneOf, refuse } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Box, OneOf, Point } from "../core/geometry-types.js";
import { checkGrain, woodStrain, type Grain } from "./grain.js";
import { checkMoisture, type Moisture } from "./moisture.js";
import { panelSides, type PanelSide } from "./panel-sides.js";
import { readWood } from "./read-wood.js";
import { sheetFigure, type SheetMaterial } from "./sheet-material.js";
import { checkTemperature } from "./thermal-expansion.js";
import type { Wood } from "./wood-species.js";

/** A panel, as large as it is when it is fitted: exactly one of a regular polygon and a rectangle. */
export type PanelShape = OneOf<{
  /** A regular polygon, standing on side 0; no more of it is read than these two. */
  readonly polygon: {
    /** Number of sides, an integer from 3 to 1000. */
    readonly sides: number;
    /** Distance from the center to the middle of a side, 1e-100 to 1e100. */
    readonly apothem: number;
  };
  /** An upright rectangle, 1e-100 to 1e100 each way. */
  readonly box: Box;
}>;

/** A panel of solid wood, and the moisture that it will meet. */
export interface SolidPanel {
  /** The wood, by its name in the table or by figures of your own. */
  readonly species: Wood;
  /** How the growth rings run at the boards' ends: `"flat-sawn"`, `"rift-sawn"`, `"quarter-sawn"`, or their angle to the face in degrees, 0 to 90. */
  readonly grain: Grain;
  /** Direction of the grain in the panel's plane, in degrees counter-clockwise from side 0 (the bottom); -360 to 360, default 0. */
  readonly grainDirection?: number | undefined;
  /** Moisture when the panel is fitted: a content in percent, 0 to 300, or the climate that leads to it. */
  readonly from: Moisture;
  /** The moisture that it will meet, one or more, likewise: the driest and the dampest of the year will do. */
  readonly seasons: readonly Moisture[];
  /** Not given: it is for sheets. */
  readonly sheet?: undefined;
}

/** A panel that moves with its temperature, the same in every direction. */
export interface SheetPanel {
  /** `"glass"`, `"acrylic"`, or an object with the `expansion` of another sheet as a fraction per kelvin. */
  readonly sheet: SheetMaterial;
  /** Temperature when the panel is fitted, in degrees Celsius, -60 to 200. */
  readonly from: number;
  /** The temperatures that it will meet, one or more, likewise. */
  readonly seasons: readonly number[];
  /** Not given: it is for wood. */
  readonly species?: undefined;
}

/** Options of {@link panelRoom}. */
export type PanelRoomOptions = PanelShape & (SolidPanel | SheetPanel);

/** What a panel needs at one of its sides. */
export interface SideRoom {
  /** The side's number, counter-clockwise from 0 at the bottom. */
  readonly side: number;
  /** How far the panel grows beyond where the side was: the least clearance. */
  readonly room: number;
  /** How far it draws back: what the rabbet's lip must lap more than the clearance. */
  readonly retreat: number;
}

/** What a panel needs in its rabbet. */
export interface PanelRoom {
  /** The most that any side needs, in the panel's unit. */
  readonly room: number;
  /** The most that any side draws back. */
  readonly retreat: number;
  /** Every side, in order. */
  readonly sides: readonly SideRoom[];
}

/** How much a panel stretches at most and at least over the seasons, across the grain, and whether it does the same along it. */
interface Stretches {
  readonly fractions: readonly number[];
  readonly isEven: boolean;
}

/** How far a side's ends move outward when the panel stretches by 1 across the grain, or in every direction. */
function outward({ normal, ends }: PanelSide, grain: Point, isEven: boolean): number[] {
  const normalAcross = normal.y * grain.x - normal.x * grain.y;
  return ends.map(({ x, y }) => (isEven ? normal.x * x + normal.y * y : normalAcross * (y * grain.x - x * grain.y)));
}

/** The seasons of a panel as what it stretches by. */
function stretches(given: Readonly<Record<string, unknown>>): Stretches {
  let fractionAt: (season: unknown, path: string) => number;
  const isEven = checkOneOf(given, "", ["species", "sheet"]) === "sheet";
  if (isEven) {
    const expansion = sheetFigure(given["sheet"], "sheet", "expansion");
    const fitted = checkTemperature(given["from"], "from");
    fractionAt = (season, path) => expansion * (checkTemperature(season, path) - fitted);
  } else {
    const wood = readWood(given["species"]);
    const rings = checkGrain(given["grain"]);
    const fitted = checkMoisture(given["from"], "from");
    fractionAt = (season, path) => woodStrain(wood, rings, fitted, checkMoisture(season, path));
  }
  const seasons = checkArray(given["seasons"], "seasons", "an array of one season or more");
  if (seasons.length === 0) refuse("range", "seasons", seasons, "an array of one season or more");
  let [least, most] = [0, 0];
  for (const [index, season] of seasons.entries()) {
    const fraction = fractionAt(season, `seasons[${index}]`);
    least = Math.min(least, fraction);
    most = Math.max(most, fraction);
  }
  return { fractions: [least, most], isEven };
}

/**
 * How much room a panel needs in its rabbet over the seasons, side by side.
 *
 * The panel is held at its center. Solid wood stretches across its grain alone, by the fraction e of `seasonalMovement`: a point x then moves by e (x · c) c, c being the
 * direction across the grain, and a side with the normal n moves outward at its ends by e (x · c)(n · c). Sides along the grain move most and those that
 * the grain runs square into not at all. A sheet moves by its expansion, the same everywhere. Held at one side instead of its center, a panel moves twice as
 * much at the opposite one. Plywood and boards made of fibers move little, by figures that only their data sheets have.
 *
 * @param options - the panel's shape, what it is of, and its moisture or temperature when fitted and over the seasons
 * @returns for every side and in all, the room that the panel needs and how far it draws back, each 0 or more, in the panel's unit
 * @throws {InputError} when neither or both shapes or materials are given, the wood or sheet is unknown, there is no season, or a value is out of range
 * @example
 * ```ts
 * import { panelRoom } from "miterwright/wood";
 *
 * const door = panelRoom({ box: { width: 400, height: 600 }, species: "white oak", grain: "flat-sawn", grainDirection: 90, from: 8, seasons: [6, 12] });
 * door.sides.map(({ room }) => room.toFixed(2)); //=> ["0.00", "3.03", "0.00", "3.03"]
 * door.retreat.toFixed(2); //=> "1.52"
 * panelRoom({ polygon: { sides: 6, apothem: 500 }, sheet: "acrylic", from: 20, seasons: [0, 40] }).room; //=> 0.72
 * ```
 */
export function panelRoom(options: PanelRoomOptions): PanelRoom {
  const given = checkObject(options);
  const shape = panelSides(given);
  const { fractions, isEven } = stretches(given);
  const direction = given["grainDirection"] ?? 0;
  const angle = checkDegrees(direction, "grainDirection", -360, 360);
  const grain = { x: cosDeg(angle), y: sinDeg(angle) };
  const sides = shape.map((panelSide, side) => {
    const moves = outward(panelSide, grain, isEven).flatMap((reach) => fractions.map((fraction) => reach * fraction));
    return { side, room: Math.max(0, ...moves), retreat: Math.max(0, ...moves.map((move) => -move)) };
  });
  const most = (key: "room" | "retreat"): number => sides.reduce((largest, one) => Math.max(largest, one[key]), 0);
  return { room: most("room"), retreat: most("retreat"), sides };
}
