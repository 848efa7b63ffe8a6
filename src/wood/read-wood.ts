import { checkNumber, checkObject, checkText, refuse } from "../core/check.js";
import { findWood } from "./find-wood.js";
import { coefficientOf, shrinkageOf } from "./shrinkage.js";
import type { AcrossGrain, FigureSource, WoodSpecies } from "./wood-species.js";
import { WOOD_TABLE } from "./wood-table.js";

/** Moisture content at which most woods start to shrink, in percent: what turns table 4-3 of the Wood Handbook into its table 13-5. */
const FIBER_SATURATION: number = 30;
/** Largest shrinkage that is taken, in percent; no wood of the handbook's tables comes near it. */
const MAX_SHRINKAGE: number = 30;
/** Largest coefficient that is taken. */
const MAX_COEFFICIENT: number = 0.01;

const SOURCES: Readonly<Record<string, FigureSource>> = { p: "print", c: "copy", r: "recalled" };

function sourceOf(letter: string | undefined): FigureSource | null {
  return SOURCES[letter ?? ""] ?? null;
}

/**
 * A wood of the table, with what is computed filled in.
 *
 * @param text - its name
 * @param path - its name in error texts
 * @returns the wood
 */
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

function checkPair(given: Readonly<Record<string, unknown>>, path: string, max: number): AcrossGrain {
  return {
    radial: checkNumber(given["radial"], `${path}.radial`, 0, max),
    tangential: checkNumber(given["tangential"], `${path}.tangential`, 0, max),
  };
}

/** A wood given by hand. */
function ownWood(value: unknown, path: string): WoodSpecies {
  const given = checkObject(value, path);
  const saturation = given["fiberSaturation"] ?? FIBER_SATURATION;
  const fiberSaturation = checkNumber(saturation, `${path}.fiberSaturation`, 15, 40);
  const listed = given["coefficients"];
  const coefficients =
    listed === undefined
      ? undefined
      : checkPair(checkObject(listed, `${path}.coefficients`), `${path}.coefficients`, MAX_COEFFICIENT);
  const hasShrinkage = given["radial"] !== undefined || given["tangential"] !== undefined || coefficients === undefined;
  const { radial, tangential } = hasShrinkage
    ? checkPair(given, path, MAX_SHRINKAGE)
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
    specificGravity: gravity === null ? null : checkNumber(gravity, `${path}.specificGravity`, 0.01, 2),
    seen: { shrinkage: null, coefficients: null, specificGravity: null },
  };
}

/**
 * A wood by name or by its figures.
 *
 * @param value - the unchecked wood
 * @param path - its name in error texts
 * @returns the wood with every figure that is known of it
 */
export function readWood(value: unknown, path = "species"): WoodSpecies {
  if (typeof value === "string") return tableWood(value, path);
  if (typeof value !== "object") return refuse("type", path, value, "the name of a wood or an object with its figures");
  return ownWood(value, path);
}
