import { readWood, sheetFigure } from "../../wood/internal.js";
import { woodDensity, type Moisture, type Wood } from "../../wood/index.js";
import type { LayerMaterial } from "../brief/brief.js";

/** What a layer is, in one word. */
export type LayerKind = "glass" | "acrylic" | "sheet" | "wood";

/** What a layer is, in one word. `null` where the brief says nothing. */
export function layerKind(material: LayerMaterial | undefined): LayerKind | null {
  if (material === undefined) return null;
  if (typeof material === "string") return material;
  return "species" in material ? "wood" : "sheet";
}

/**
 * The density of a wood when the frame is made. In kilograms per cubic meter; `null` where the wood or its specific gravity is not known.
 */
export function densityOfWood(species: Wood | undefined, moisture: Moisture): number | null {
  if (species === undefined || readWood(species).specificGravity === null) return null;
  return woodDensity({ species, moisture });
}

/** The density of a layer when the frame is made. In kilograms per cubic meter; `null` where it is not known. */
export function densityOfLayer(material: LayerMaterial | undefined, moisture: Moisture): number | null {
  if (material === undefined) return null;
  if (typeof material === "object" && "species" in material) return densityOfWood(material.species, moisture);
  if (typeof material === "object" && material.density === undefined) return null;
  return sheetFigure(material, "material", "density");
}
