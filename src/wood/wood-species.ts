import type { WoodName } from "./wood-name.js";

/** A figure for the two directions across the grain. */
export interface AcrossGrain {
  /** Square to the growth rings. */
  readonly radial: number;
  /** Along the growth rings. */
  readonly tangential: number;
}

/**
 * How a figure of the table was had: read in print, read in a copy that does not name its source, or recalled without the
 * print at hand.
 */
export type FigureSource = "print" | "copy" | "recalled";

/** A wood, with every figure that is known of it. */
export interface WoodSpecies {
  /** Its name; `null` where it was given none. */
  readonly name: string | null;
  /** Radial shrinkage from green to ovendry in percent of the green size, 0 to 30. */
  readonly radial: number;
  /** Tangential shrinkage from green to ovendry in percent of the green size, 0 to 30. */
  readonly tangential: number;
  /** Change per percent of moisture, as a fraction of the size at 10 %; as printed where it is, else from the shrinkage. */
  readonly coefficients: AcrossGrain;
  /** Moisture content in percent below which the wood shrinks, 15 to 40. */
  readonly fiberSaturation: number;
  /** Ovendry mass over the mass of water of the wood's volume at 12 % moisture content; `null` where it is not known. */
  readonly specificGravity: number | null;
  /** Where the figures of a wood in the table come from; `null` for those it has not, which are computed or missing. */
  readonly seen: {
    /** Of the shrinkage. */
    readonly shrinkage: FigureSource | null;
    /** Of the coefficients. */
    readonly coefficients: FigureSource | null;
    /** Of the specific gravity. */
    readonly specificGravity: FigureSource | null;
  };
}

/** What any wood given by hand may also have. */
interface AnyWood {
  /** A name; default none. */
  readonly name?: string | null | undefined;
  /** Moisture content in percent below which the wood shrinks, 15 to 40; default 30. */
  readonly fiberSaturation?: number | undefined;
  /** Ovendry mass over the mass of water of the wood's volume at 12 % moisture content, 0.01 to 2. Needed for masses alone. */
  readonly specificGravity?: number | null | undefined;
}

/** A wood given by its shrinkage, in percent from green to ovendry, 0 to 30. */
export interface ShrinkingWood extends AnyWood, AcrossGrain {
  /** Change per percent of moisture, 0 to 0.01; by default computed from the shrinkage. */
  readonly coefficients?: AcrossGrain | undefined;
}

/** A wood given by its change coefficients alone, as handbooks list woods whose shrinkage they do not. */
export interface CoefficientWood extends AnyWood {
  /** Change per percent of moisture, as a fraction of the size at 10 %, 0 to 0.01. */
  readonly coefficients: AcrossGrain;
  /** Not given: it is computed from the coefficient. */
  readonly radial?: undefined;
  /** Not given: it is computed from the coefficient. */
  readonly tangential?: undefined;
}

/** A wood, by its name in the table or by figures of one's own. */
export type Wood = WoodName | ShrinkingWood | CoefficientWood;
