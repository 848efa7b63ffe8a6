import { checkArray, checkLength, checkNumber, checkObject, checkText } from "../../core/check.js";
import type { OwnSheetMaterial } from "../../wood/index.js";
import { sheetFigure } from "../../wood/internal.js";
import type { ContentsLayer, LayerMaterial, SolidWoodLayer } from "./brief.js";
import { checkCost } from "./read-cost.js";
import { readGrain, readSpecies } from "./read-species.js";
import { fieldsTogether, ifGiven, together, type FieldCheck } from "../../core/together.js";

/** Solid wood where it has a species, else a sheet with figures of its own. */
function readOwnMaterial(value: unknown, path: string): LayerMaterial {
  const given = checkObject(value, path);
  if ("species" in given) {
    return fieldsTogether<SolidWoodLayer>(given, path, {
      species: readSpecies,
      grain: ifGiven(readGrain),
      grainDirection: ifGiven((direction, at) => checkNumber(direction, at, -360, 360, "degrees from -360 to 360")),
    });
  }
  const figure = (name: "density" | "expansion"): FieldCheck<number | undefined> =>
    ifGiven(() => sheetFigure(given, path, name));
  return fieldsTogether<OwnSheetMaterial>(given, path, {
    density: figure("density"),
    expansion: figure("expansion"),
  });
}

function readMaterial(value: unknown, path: string): LayerMaterial {
  if (typeof value !== "string") return readOwnMaterial(value, path);
  sheetFigure(value, path, "density");
  return value as LayerMaterial;
}

function readLayer(value: unknown, path: string): ContentsLayer {
  return fieldsTogether<ContentsLayer>(value, path, {
    name: checkText,
    thickness: checkLength,
    material: ifGiven(readMaterial),
    cost: ifGiven((cost, at) => checkCost(cost, at, ["square-meter", "square-foot"])),
  });
}

/**
 * Checks the layers that a rabbet is to hold.
 *
 * @param value - the layers
 * @returns the checked layers
 */
export function readContents(value: unknown): readonly ContentsLayer[] {
  const layers = checkArray(value, "contents", "an array of layers, each with a name and a thickness");
  return together(layers.map((layer, index) => () => readLayer(layer, `contents[${index}]`)));
}
