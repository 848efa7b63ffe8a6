import { LENGTH, LENGTH_OR_ZERO, MAX_FRAME_SIDES } from "../../core/check.js";
import type { Field, Fields, NumberField } from "../../core/field.js";
import type { Box, Pose } from "../../core/geometry-types.js";
import { readProfile } from "../../profile/internal.js";
import type { Profile } from "../../profile/index.js";
import type {
  Contained,
  ContentsLayer,
  GivenBrief,
  LayerSize,
  MeasuredMolding,
  Opening,
  OpeningValues,
  SizingBrief,
} from "./brief.js";

/** A length that may be missing. */
export const MAYBE_LENGTH: Field<number | undefined> = { kind: "optional", of: LENGTH };
/** A length that may be zero or missing. */
export const MAYBE_ZERO: Field<number | undefined> = { kind: "optional", of: LENGTH_OR_ZERO };

const BOX: Fields<Box> = { width: LENGTH, height: LENGTH };
const CONTAINED: Fields<Contained> = { width: LENGTH, height: LENGTH, allowance: MAYBE_ZERO };
const SIZES: Fields<OpeningValues> = {
  contains: { kind: "record", fields: CONTAINED },
  cutFrom: { kind: "record", fields: BOX },
  side: LENGTH,
  apothem: LENGTH,
  circumradius: LENGTH,
  acrossFlats: LENGTH,
  acrossCorners: LENGTH,
  perimeter: LENGTH,
  area: { kind: "number", min: 1e-200, max: 1e200, what: "a positive area (1e-200 to 1e200)" },
};

const LEVEL_MEASURES: Fields<MeasuredMolding> = { levelWidth: LENGTH, lap: MAYBE_ZERO, depth: MAYBE_LENGTH };

/** The fields of a layer that a rabbet's seating asks for. */
const LAYER_SIZE: Fields<LayerSize> = { name: { kind: "text" }, thickness: LENGTH };
const LAYER_KEYS: readonly (keyof ContentsLayer)[] = ["name", "thickness", "material", "cost"];

/** Number of sides. */
export const SIDES: NumberField = { kind: "integer", min: 3, max: MAX_FRAME_SIDES };
const DEGREES: NumberField = { kind: "number", min: -90, max: 90, what: "degrees from -90 to 90" };
/** Slope of the sides. */
export const SLOPE: Field<number | undefined> = { kind: "optional", of: DEGREES };
/** How the frame stands. */
export const POSE: Field<Pose | undefined> = {
  kind: "optional",
  of: { kind: "word", words: ["side-down", "corner-down"] },
};
/** What decides the size. */
export const OPENING: Field<Opening> = { kind: "record", fields: SIZES, single: true };
/** The molding's section. */
export const PROFILE: Field<Profile | undefined> = { kind: "optional", of: readProfile };
/** The molding's level measures. */
export const MEASURED: Field<MeasuredMolding | undefined> = {
  kind: "optional",
  of: { kind: "record", fields: LEVEL_MEASURES },
};
/** Where the opening is measured. Which arrises there are is up to the molding. */
export const AT: Field<string | undefined> = { kind: "optional", of: { kind: "text" } };
const LAYER_SIZES: Field<readonly LayerSize[] | undefined> = {
  kind: "optional",
  of: {
    kind: "list",
    of: { kind: "record", fields: LAYER_SIZE, known: LAYER_KEYS },
    what: "an array of layers, each with a name and a thickness",
  },
};

/** How the part of a brief is read that decides a frame's geometry. */
export const GEOMETRY_FIELDS: Fields<SizingBrief> = {
  sides: SIDES,
  slope: SLOPE,
  pose: POSE,
  opening: OPENING,
  profile: PROFILE,
  measured: MEASURED,
  at: AT,
  contents: LAYER_SIZES,
  clearance: MAYBE_ZERO,
};

/** All that a brief may have. */
export const BRIEF_KEYS: readonly (keyof GivenBrief)[] = [
  "sides",
  "slope",
  "pose",
  "opening",
  "profile",
  "measured",
  "at",
  "contents",
  "clearance",
  "unit",
  "saw",
  "kerf",
  "rough",
  "shows",
  "lay",
  "sticks",
  "acceptedGap",
  "fastenerRoom",
  "species",
  "grain",
  "moisture",
  "cost",
  "hanging",
  "schemaVersion",
];
