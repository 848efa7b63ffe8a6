import { checkArray, checkLength, checkNumber, checkObject, checkText } from "../core/check.js";
import { checkGrain } from "../wood/grain.js";
import { readWood } from "../wood/read-wood.js";
import { sheetFigure } from "../wood/sheet-material.js";
import type { ContentsLayer, LayerMaterial } from "./brief.js";
import { checkPrice } from "./read-price.js";

function readMaterial(value: unknown, path: string): LayerMaterial {
  if (typeof value === "object" && value !== null && "species" in value) {
    const layer = value as Readonly<Record<string, unknown>>;
    readWood(layer["species"], `${path}.species`);
    if (layer["grain"] !== undefined) checkGrain(layer["grain"], `${path}.grain`);
    if (layer["grainDirection"] !== undefined) {
      checkNumber(layer["grainDirection"], `${path}.grainDirection`, -360, 360, "degrees from -360 to 360");
    }
    return value as LayerMaterial;
  }
  if (typeof value === "string") sheetFigure(value, path, "density");
  else {
    const sheet = checkObject(value, path);
    for (const figure of ["density", "expansion"] as const) {
      if (sheet[figure] !== undefined) sheetFigure(sheet, path, figure);
    }
  }
  return value as LayerMaterial;
}

/**
 * Checks the layers that a rabbet is to hold.
 *
 * @param value - the layers
 * @returns the checked layers
 */
export function readContents(value: unknown): readonly ContentsLayer[] {
  return checkArray(value, "contents", "an array of layers, each with a name and a thickness").map((item, index) => {
    const path = `contents[${index}]`;
    const layer = checkObject(item, path);
    const { material, price } = layer;
    return {
      name: checkText(layer["name"], `${path}.name`),
      thickness: checkLength(layer["thickness"], `${path}.thickness`),
      ...(material === undefined ? {} : { material: readMaterial(material, `${path}.material`) }),
      ...(price === undefined
        ? {}
        : { price: checkPrice(price, `${path}.price`, ["piece", "square meter", "square foot"]) }),
    };
  });
}
