import type { Box, Filled, LengthUnit, OneOf, Pose } from "../../core/geometry-types.js";
import type { Lay } from "../../miter/index.js";
import type { PolygonMeasureValues } from "../../polygon/index.js";
import type { Profile } from "../../profile/index.js";
import type { Saw, ShowingSide } from "../../saw/index.js";
import type { StockStick } from "../../stock/index.js";
import type { Grain, Moisture, OwnSheetMaterial, SheetMaterialName, Wood } from "../../wood/index.js";

/** A rectangle that the opening must hold, e.g. a picture. */
export interface Contained extends Box {
  /** Added once in all to its width and to its height; default 0. */
  readonly allowance?: number | undefined;
}

/** Everything that can decide the frame's size, besides the measures of the opening's polygon. */
export interface OpeningValues extends PolygonMeasureValues {
  /** A rectangle that must fit in, e.g. a picture: the opening is the smallest that holds it with the clearance. */
  readonly contains: Contained;
  /** A sheet from which the contents are cut as large as it gives them; the opening is larger by the clearance. */
  readonly cutFrom: Box;
}

/** What decides the frame's size: exactly one of a rectangle that must fit in, a sheet that the contents are cut from, or a measure of the opening. */
export type Opening = OneOf<OpeningValues>;

/** A layer of solid wood, which needs room to move across its grain. */
export interface SolidWoodLayer {
  /** The wood, by its name in the table or by figures of your own. */
  readonly species: Wood;
  /** How the growth rings run at the boards' ends; default `"flat-sawn"`, which moves the most. */
  readonly grain?: Grain | undefined;
  /** Direction of the grain in the panel's plane, in degrees counter-clockwise from side 0; -360 to 360, default 0. */
  readonly grainDirection?: number | undefined;
}

/** What a layer is made of: glass or acrylic, another sheet with figures of its own, or solid wood. */
export type LayerMaterial = SheetMaterialName | OwnSheetMaterial | SolidWoodLayer;

/** What a cost is counted by where it is not counted by pieces: a length, an area or a volume. */
export type CostUnit = "meter" | "foot" | "square-meter" | "square-foot" | "cubic-meter" | "board-foot";

/** A cost by length, area or volume. */
export interface CostRate {
  /** What one unit costs, from 0 to 1e12. */
  readonly amount: number;
  /** The unit that the amount buys. */
  readonly per: CostUnit;
}

/**
 * What something costs, in any currency that the whole brief keeps to: a number from 0 to 1e12 for each piece, or an amount for a unit of length, area or
 * volume.
 */
export type Cost = number | CostRate;

/** One layer of what the rabbet holds, e.g. glass, mount, picture, backing. */
export interface ContentsLayer {
  /** What it is, for the sheet. */
  readonly name: string;
  /** Its thickness, positive. */
  readonly thickness: number;
  /** What it is made of, for its mass and its movement; default unknown. */
  readonly material?: LayerMaterial | undefined;
  /** What it costs: a number for the layer, or an amount per `"square-meter"` or `"square-foot"` of what it is cut from; default unknown. */
  readonly cost?: Cost | undefined;
}

/** The moisture of the wood when the frame is made, and what it will meet: contents in percent, 0 to 300, or the climates that lead to them. */
export interface FrameMoisture {
  /** When the joints are cut and glued. */
  readonly made: Moisture;
  /** One or more that it will meet; the driest and the dampest of the year will do. */
  readonly seasons: readonly Moisture[];
}

/** How a frame hangs on a wall. */
export interface Hanging {
  /** From a wire between two of its sides that lies over one hook, or from two hooks in the wall. */
  readonly by: "wire" | "two-hooks";
  /** Angle of each half of the wire above level, in degrees, 5 to 85; default 30. */
  readonly wireAngle?: number | undefined;
  /** How deep the screws of the hangers go into the wood, square to the back; with it their depth is held against the wood that is there. */
  readonly screwDepth?: number | undefined;
  /** Mass in kilograms of whatever hangs with the frame and is no layer of its contents, 0 to 1000; default 0. */
  readonly extraMass?: number | undefined;
}

/** A molding known by level measures alone, taken while it stands in its cradle. */
export interface MeasuredMolding {
  /** Level distance from the rabbet's wall to the outermost point. */
  readonly levelWidth: number;
  /** Level distance from the sight edge to the rabbet's wall: how far the lip laps the contents. */
  readonly lap?: number | undefined;
  /** Plumb depth of the rabbet. */
  readonly depth?: number | undefined;
}

/** The arrises of a {@link MeasuredMolding}: the rabbet's wall, the outermost point, and the sight edge where `lap` is given. */
export type MeasuredArris = "wall" | "outer" | "sight";

/**
 * How pieces are parted from the stick before their ends are finished.
 *
 * `none`: every end is cut on the stick itself. `square`: pieces are crosscut `allowance` longer at each end, then both ends are mitered. `mitered`: pieces are
 * parted with the finished cut of one end and `allowance` to spare at the other.
 */
export type RoughMethod = DirectCut | RoughCut;

/** Every end is cut on the stick itself. */
export interface DirectCut {
  /** No roughs. */
  readonly method: "none";
}

/** Pieces are parted from the stick before they are finished. */
export interface RoughCut {
  /** How they are parted: crosscut square, or with the mitered cut of one end. */
  readonly method: "square" | "mitered";
  /** Spare length at each end that is cut again; positive, and best at least the kerf along the stick. */
  readonly allowance: number;
}

/** What a brief says besides its molding. */
export interface BriefBase<M extends string> {
  /** Number of sides, an integer from 3 to 1000. */
  readonly sides: number;
  /** Slope of the sides in degrees, -90 to 90; default 0, lying flat. */
  readonly slope?: number | undefined;
  /** How the frame hangs or stands: on a side (default) or on a corner. */
  readonly pose?: Pose | undefined;
  /** What decides the size. */
  readonly opening: Opening;
  /** The arris at which the opening's measure is taken; default `"opening"`, where the contents touch (without a rabbet: the innermost point). */
  readonly at?: NoInfer<M> | "opening" | undefined;
  /** What the rabbet holds, from the front; default nothing. */
  readonly contents?: readonly ContentsLayer[] | undefined;
  /** Kept free between contents and rabbet at every side; default 0. */
  readonly clearance?: number | undefined;
  /** Unit of every length in the brief; it sets the scale of hazards and of the default kerf. Default `"mm"`. */
  readonly unit?: LengthUnit | undefined;
  /** The saw; default a table saw with a miter gauge, see `tableSaw`. */
  readonly saw?: Saw | undefined;
  /** Width of the saw cut; default 3.2 mm, or 1/8 in in a plan in inches or feet, a full carbide kerf (common practice, no printed source). */
  readonly kerf?: number | undefined;
  /** How pieces are parted from the stick; default `{ method: "none" }`. */
  readonly rough?: RoughMethod | undefined;
  /** Which side shows: the face (default), or the back, as of a box or a planter, whose faces look inward. It decides how the stick is best laid, and what tear-out shows. */
  readonly shows?: ShowingSide | undefined;
  /** How the stick lies on the saw; default the lay that gives up least, see `sawPlan`. */
  readonly lay?: Lay | undefined;
  /** Sticks on offer. With them the plan has jobs for `fitStock`, see `FramePlan.stockJobs`. */
  readonly sticks?: readonly StockStick[] | undefined;
  /** The accepted gap at the last joint when one end of it touches; default 0.25 mm or 0.01 in, which is just seen (common practice, no printed source). */
  readonly acceptedGap?: number | undefined;
  /** Plumb depth kept free behind the contents for points, clips or a cover; default 3 mm or 1/8 in (common practice, no printed source). */
  readonly fastenerRoom?: number | undefined;
  /** Wood of the molding, by its name in the table or by figures of your own; with it the plan knows masses and a year's movement. */
  readonly species?: Wood | undefined;
  /** How the growth rings run at the end of the molding; default `"flat-sawn"`, which moves the most. */
  readonly grain?: Grain | undefined;
  /**
   * Moisture of the wood, when it is made and later; default 8 % when made, then 6 and 12 %. Lumber for furniture usually has 6 to 8 % (Wood
   * Handbook, FPL-GTR-190, p. 13-13); the others are what wood comes to at 21 °C in 30 and in 65 % humidity, common practice without a printed source.
   */
  readonly moisture?: FrameMoisture | undefined;
  /**
   * What the molding costs: a number for each piece of the ring, or an amount per `"meter"`, `"foot"`, `"cubic-meter"` or `"board-foot"`; default unknown.
   * Sticks have a `cost` of their own, a number for each stick.
   */
  readonly cost?: Cost | undefined;
  /** How the frame hangs; default not at all. */
  readonly hanging?: Hanging | undefined;
  /** Which form of brief it is, for briefs that are stored; default 1, the only one that is known here. */
  readonly schemaVersion?: 1 | undefined;
}

/** A brief with a molding whose section is known. */
export interface ProfileBrief<M extends string = string> extends BriefBase<M> {
  /** The molding's section. */
  readonly profile: Profile<M>;
  /** Not with a profile. */
  readonly measured?: undefined;
}

/** A brief with a molding known by two or three level measures. */
export interface MeasuredBrief extends BriefBase<MeasuredArris> {
  /** The molding's level measures. */
  readonly measured: MeasuredMolding;
  /** Not with level measures. */
  readonly profile?: undefined;
}

/** Everything that `planFrame` has to be told. */
export type FrameBrief<M extends string = string> = ProfileBrief<M> | MeasuredBrief;

/** The fields of a brief that have a default. */
export type FilledKey =
  | "slope"
  | "pose"
  | "at"
  | "contents"
  | "clearance"
  | "unit"
  | "saw"
  | "kerf"
  | "rough"
  | "shows"
  | "acceptedGap"
  | "fastenerRoom"
  | "schemaVersion";

/** A brief with its defaults filled in. */
export type FilledBrief<M extends string = string> = FrameBrief<M> &
  Filled<Pick<BriefBase<M>, Exclude<FilledKey, "at">>> & {
    /** The arris at which the opening's measure is taken. */
    readonly at: M | MeasuredArris | "opening";
  };

/** Every field that a brief may have, whichever molding it tells of. */
export interface GivenBrief extends BriefBase<string> {
  /** The molding's section. */
  readonly profile?: Profile | undefined;
  /** The molding's level measures. */
  readonly measured?: MeasuredMolding | undefined;
}

/** What of a brief decides the frame's geometry. */
export interface SizingBrief extends Pick<
  GivenBrief,
  "sides" | "slope" | "pose" | "opening" | "profile" | "measured" | "at" | "clearance"
> {
  /** The layers' names and thicknesses. */
  readonly contents?: readonly LayerSize[] | undefined;
}

/** What of a layer decides how it sits in the rabbet. */
export type LayerSize = Pick<ContentsLayer, "name" | "thickness">;

/** A brief's molding, by its section or by its level measures. */
export type MoldingOf = Pick<ProfileBrief, "profile" | "measured"> | Pick<MeasuredBrief, "profile" | "measured">;

/** What of a brief decides the frame's geometry, with its defaults filled in. */
export type FilledSizing = MoldingOf &
  Pick<FilledBrief, "sides" | "slope" | "pose" | "opening" | "at" | "clearance"> & {
    readonly contents: readonly LayerSize[];
  };
