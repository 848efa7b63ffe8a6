import { checkArray, checkLength, checkNumber, checkObject, checkText } from "../core/check.js";
import { checkGrain } from "../wood/grain.js";
import { readWood } from "../wood/read-wood.js";
import { sheetFigure } from "../wood/sheet-material.js";
import type { ContentsLayer, LayerMaterial } from "./brief.js";
import { checkPrice } from "./read-price.js";
import { fieldsTogether, ifGiven, together } from "./together.js";

function checkSolidWood(layer: Readonly<Record<string, unknown>>, path: string): void {
  together<unknown>([
    () => readWood(layer["species"], `${path}.species`),
    ifGiven(layer["grain"], (grain) => checkGrain(grain, `${path}.grain`)),
    ifGiven(layer["grainDirection"], (direction) =>
      checkNumber(direction, `${path}.grainDirection`, -360, 360, "degrees from -360 to 360"),
    ),
  ]);
}

function readMaterial(value: unknown, path: string): LayerMaterial {
  if (typeof value === "string") sheetFigure(value, path, "density");
  else {
    const given = checkObject(value, path);
    if ("species" in given) checkSolidWood(given, path);
    else {
      together(
        (["density", "expansion"] as const).map((figure) =>
          ifGiven(given[figure], () => sheetFigure(given, path, figure)),
        ),
      );
    }
  }
  return value as LayerMaterial;
}

function readLayer(value: unknown, path: string): ContentsLayer {
  const layer = checkObject(value, path);
  const { name, thickness, material, price } = layer;
  return fieldsTogether<ContentsLayer>({
    name: () => checkText(name, `${path}.name`),
    thickness: () => checkLength(thickness, `${path}.thickness`),
    material: ifGiven(material, (given) => readMaterial(given, `${path}.material`)),
    price: ifGiven(price, (given) => checkPrice(given, `${path}.price`, ["piece", "square meter", "square foot"])),
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
