import { checkObject, checkRange, checkText, inOrder, refuse, type RunChecks } from "../core/check.js";
import { readField, type Field, type FieldCheck, type Fields, type NumberField } from "../core/field.js";
import { findWood } from "./find-wood.js";
import { coefficientOf, shrinkageOf } from "./shrinkage.js";
import type { AcrossGrain, FigureSource, Wood, WoodSpecies } from "./wood-species.js";
import { WOOD_TABLE } from "./wood-table.js";

/** Moisture content at which most woods start to shrink, in percent: what turns table 4-3 of the Wood Handbook into its table 13-5. */
const FIBER_SATURATION: number = 30;
/** Radial or tangential shrinkage in percent; no wood of the handbook's tables comes near the largest that is taken. */
const SHRINKAGE: NumberField = { kind: "number", min: 0, max: 30 };
const COEFFICIENT: NumberField = { kind: "number", min: 0, max: 0.01 };
const SATURATION: NumberField = { kind: "number", min: 15, max: 40 };
const GRAVITY: NumberField = { kind: "number", min: 0.01, max: 2 };

/** The figures of a wood that are read. */
type GivenWood = Partial<{ readonly [K in Exclude<keyof WoodSpecies, "seen">]: WoodSpecies[K] | undefined }>;
const COEFFICIENTS: Fields<AcrossGrain> = { radial: COEFFICIENT, tangential: COEFFICIENT };
const FIGURES: Fields<GivenWood> = {
  name: { kind: "optional", of: { kind: "nullable", of: { kind: "text" } } },
  radial: { kind: "optional", of: SHRINKAGE },
  tangential: { kind: "optional", of: SHRINKAGE },
  coefficients: { kind: "optional", of: { kind: "record", fields: COEFFICIENTS } },
  fiberSaturation: { kind: "optional", of: SATURATION },
  specificGravity: { kind: "optional", of: { kind: "nullable", of: GRAVITY } },
};
/** What a wood may have that is given by hand: all that `woodSpecies` gives, so that its result will do. */
const KNOWN: readonly (keyof WoodSpecies)[] = [
  "name",
  "radial",
  "tangential",
  "coefficients",
  "fiberSaturation",
  "specificGravity",
  "seen",
];

const SOURCES: Readonly<Record<string, FigureSource>> = { p: "print", c: "copy", r: "recalled" };

function sourceOf(letter: string | undefined): FigureSource | null {
  return SOURCES[letter ?? ""] ?? null;
}

/** A wood of the table, with what is computed filled in. */
export function tableWood(text: string, path: string): WoodSpecies {
  const name = findWood(text, path);
  const [radial, tangential, radialC, tangentialC, specificGravity, seen, saturation] = WOOD_TABLE[name];
  const fiberSaturation = saturation ?? FIBER_SATURATION;
  // Hundred-thousandths as integers: the quotient is the double nearest to the printed decimal.
  const shrinkage = (percent: number | null, coefficient: number | null): number =>
    percent ?? shrinkageOf(coefficient! / 1e5, fiberSaturation);
  const coefficient = (percent: number | null, printed: number | null): number =>
    printed === null ? coefficientOf(percent!, fiberSaturation) : printed / 1e5;
  return {
    name,
    radial: shrinkage(radial, radialC),
    tangential: shrinkage(tangential, tangentialC),
    coefficients: { radial: coefficient(radial, radialC), tangential: coefficient(tangential, tangentialC) },
    fiberSaturation,
    specificGravity,
    seen: {
      shrinkage: sourceOf(seen[0]),
      coefficients: sourceOf(seen[1]),
      specificGravity: sourceOf(seen[2]),
    },
  };
}

function checkPair(value: unknown, path: string, figure: NumberField, run: RunChecks): AcrossGrain {
  const given = checkObject(value, path);
  const [radial, tangential] = run([
    () => checkRange(given["radial"], `${path}.radial`, figure),
    () => checkRange(given["tangential"], `${path}.tangential`, figure),
  ]);
  return { radial: radial!, tangential: tangential! };
}

/** A wood given by hand. */
function ownWood(value: unknown, path: string, run: RunChecks): WoodSpecies {
  const given = checkObject(value, path);
  const saturation = given["fiberSaturation"] ?? FIBER_SATURATION;
  const fiberSaturation = checkRange(saturation, `${path}.fiberSaturation`, SATURATION);
  const listed = given["coefficients"];
  const coefficients = listed === undefined ? undefined : checkPair(listed, `${path}.coefficients`, COEFFICIENT, run);
  const hasShrinkage = given["radial"] !== undefined || given["tangential"] !== undefined || coefficients === undefined;
  const { radial, tangential } = hasShrinkage
    ? checkPair(given, path, SHRINKAGE, run)
    : {
        radial: shrinkageOf(coefficients.radial, fiberSaturation),
        tangential: shrinkageOf(coefficients.tangential, fiberSaturation),
      };
  const gravity = given["specificGravity"] ?? null;
  return {
    name: given["name"] === undefined || given["name"] === null ? null : checkText(given["name"], `${path}.name`),
    radial,
    tangential,
    coefficients: coefficients ?? {
      radial: coefficientOf(radial, fiberSaturation),
      tangential: coefficientOf(tangential, fiberSaturation),
    },
    fiberSaturation,
    specificGravity: gravity === null ? null : checkRange(gravity, `${path}.specificGravity`, GRAVITY),
    seen: { shrinkage: null, coefficients: null, specificGravity: null },
  };
}

/** A wood by name or by its figures, with every figure that is known of it. */
export function readWood(value: unknown, path: string = "species", run: RunChecks = inOrder): WoodSpecies {
  if (typeof value === "string") return tableWood(value, path);
  if (typeof value !== "object") return refuse("type", path, value, "the name of a wood or an object with its figures");
  return ownWood(value, path, run);
}

/** How the figures of a wood are read, each for itself. */
export const WOOD_FIGURES: Field<GivenWood> = { kind: "record", fields: FIGURES, known: KNOWN };

/** Reads a wood as it was given; what its figures say together is looked at once each is sound. */
export const readGivenWood: FieldCheck<Wood> = (value, path, run) => {
  const given = typeof value === "object" ? readField(WOOD_FIGURES, value, path, run) : value;
  readWood(given, path, run);
  return given as Wood;
};
